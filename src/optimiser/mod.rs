//! Search over whole numbers. Knows only integers and costs, nothing of drinks.

mod branch_and_bound;
mod exhaustive;
mod linear_bound;

pub use branch_and_bound::{BranchAndBound, MOST_VARIABLES, TooManyVariables, branch_and_bound};
pub use exhaustive::exhaustive;
pub use linear_bound::{Coefficients, LinearProgram, MOST_LIMITS};

/// What a search knows of a problem: a cost at a point, and a floor that no point of a box goes below.
pub trait Landscape {
    /// Cost at a point; `None` when the point is forbidden. Never NaN.
    fn cost(&self, point: &[i32]) -> Option<f64>;

    /// A number that no allowed point of the box `low..=high` costs less than; infinite when no point of it is allowed.
    fn floor(&self, low: &[i32], high: &[i32]) -> f64;

    /// The same, for a search that refines its boxes. `hint` holds where the floor of the surrounding box was lowest; on
    /// return it holds where that of this box is, as far as the landscape knows. A hint speeds a search up and never
    /// changes what it finds.
    fn floor_near(&self, low: &[i32], high: &[i32], hint: &mut [f64]) -> f64 {
        for ((hint, low), high) in hint.iter_mut().zip(low).zip(high) {
            *hint = f64::midpoint(f64::from(*low), f64::from(*high));
        }
        self.floor(low, high)
    }

    /// Differences of cost that do not matter: a proof that nothing is better by more than this will do.
    fn tolerance(&self) -> f64 {
        0.0
    }

    /// How much a step of one variable weighs when a search chooses which one to divide; any positive numbers will do.
    fn weight(&self, _variable: usize) -> f64 {
        1.0
    }
}

/// The whole numbers that a variable may take.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range {
    /// Smallest.
    pub low: i32,
    /// Largest; a range with `high < low` is empty.
    pub high: i32,
}

impl Range {
    /// How many numbers there are.
    pub fn len(self) -> u64 {
        u64::try_from(i64::from(self.high) - i64::from(self.low) + 1).unwrap_or(0)
    }

    /// Whether there is none.
    pub fn is_empty(self) -> bool {
        self.high < self.low
    }
}

/// How a search ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Status {
    /// The best point is proven: no allowed point costs less (by more than the tolerance of the landscape).
    Optimal,
    /// A limit stopped the search; the best point so far is given.
    Feasible,
    /// A limit stopped the search before any allowed point was found.
    NoAnswerYet,
    /// No point is allowed.
    Infeasible,
}

/// A point and its cost.
#[derive(Clone, Debug, PartialEq)]
pub struct Best {
    /// The point.
    pub point: Vec<i32>,
    /// Its cost.
    pub cost: f64,
}

/// What a search found.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// How it ended.
    pub status: Status,
    /// The best allowed point that was seen; of equal ones the first in lexicographic order.
    pub best: Option<Best>,
    /// How many points were evaluated.
    pub evaluated: u64,
    /// No allowed point costs less than this: the cost of the best when it is proven; infinite when no point is allowed.
    pub bound: f64,
    /// How many boxes were looked at.
    pub nodes: u64,
}
