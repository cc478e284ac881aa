//! Search over whole numbers. Knows only integers and costs, nothing of drinks.

mod exhaustive;

pub use exhaustive::exhaustive;

/// What a search knows of a problem: a cost at a point, and a floor that no point of a box goes below.
pub trait Landscape {
    /// Cost at a point; `None` when the point is forbidden. Never NaN.
    fn cost(&self, point: &[i32]) -> Option<f64>;

    /// A number that no allowed point of the box `low..=high` costs less than.
    fn floor(&self, low: &[i32], high: &[i32]) -> f64;
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
    /// The best point is proven: no allowed point costs less.
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
}
