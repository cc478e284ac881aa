//! Why an axis is not reached: what the amounts next to the closest ones run into.

use crate::book::{Amount, Axis, IngredientId, LineId};

use super::obstacle::Obstacle;
use super::problem::Problem;

/// A smaller change of an axis than this, in noticeable steps, brings nobody nearer.
const NOTHING: f64 = 0.02;

/// Most axes that are named.
const NAMED: usize = 2;

/// An axis that the closest amounts miss by more than a noticeable step.
#[derive(Clone, Debug, PartialEq)]
pub struct Shortfall {
    /// The axis.
    pub axis: Axis,
    /// How far it is off, in noticeable steps; more than aimed at when positive.
    pub steps: f64,
    /// What stands in the way.
    pub why: Hindrance,
}

/// What stands in the way of an axis.
#[derive(Clone, Debug, PartialEq)]
pub enum Hindrance {
    /// The line is at the most that it may be.
    AtMost {
        /// The line.
        line: LineId,
        /// Its ingredient.
        ingredient: IngredientId,
        /// That amount.
        amount: Amount,
    },
    /// The line is at the least that it may be.
    AtLeast {
        /// The line.
        line: LineId,
        /// Its ingredient.
        ingredient: IngredientId,
        /// That amount.
        amount: Amount,
    },
    /// Another step of the line is not allowed.
    Forbidden {
        /// The line.
        line: LineId,
        /// Its ingredient.
        ingredient: IngredientId,
        /// Whether the step is one up.
        more: bool,
        /// What forbids it.
        obstacle: Obstacle,
    },
    /// Another step of the line takes other axes further off.
    PushesOthers {
        /// The line.
        line: LineId,
        /// Its ingredient.
        ingredient: IngredientId,
        /// Whether the step is one up.
        more: bool,
        /// Those axes, the one that suffers most first.
        axes: Vec<Axis>,
    },
    /// Another step of the line goes as far beyond.
    TooCoarse {
        /// The line.
        line: LineId,
        /// Its ingredient.
        ingredient: IngredientId,
        /// The step.
        step: Amount,
    },
    /// An ingredient that can't be taken back brings more of the sugar than any other.
    BringsSugar {
        /// The ingredient.
        ingredient: IngredientId,
        /// Sugar that it brings, g.
        grams: f64,
    },
    /// No line that may move changes the axis.
    NoLine,
}

/// The axes that a point misses by more than a noticeable step, with what stands in the way of each.
pub(super) fn shortfalls(problem: &Problem, point: &[i32]) -> Vec<Shortfall> {
    let landscape = &problem.landscape;
    let here = landscape.deviations(&landscape.figures(point));
    let targets = landscape.targets().iter().zip(&here).enumerate();
    targets
        .filter(|(_, (target, steps))| target.weight > 0.0 && steps.abs() > 1.0)
        .map(|(at, (target, steps))| Shortfall {
            axis: target.axis.clone(),
            steps: *steps,
            why: hindrance(problem, point, &here, at),
        })
        .collect()
}

/// One step of one line away from a point, in the direction that the axis needs.
struct Neighbour {
    /// How far it takes the axis, in noticeable steps.
    effect: f64,
    why: Hindrance,
}

/// The hindrance of the line that moves the axis most.
fn hindrance(problem: &Problem, point: &[i32], here: &[f64], axis: usize) -> Hindrance {
    let steps = (0..point.len()).flat_map(|at| [(at, -1), (at, 1)]);
    let neighbours: Vec<Neighbour> = steps
        .filter_map(|(at, step)| neighbour(problem, point, here, axis, (at, step)))
        .collect();
    let most = neighbours
        .iter()
        .map(|next| next.effect)
        .fold(0.0, f64::max);
    let is_bound =
        |why: &Hindrance| matches!(why, Hindrance::AtMost { .. } | Hindrance::AtLeast { .. });
    // A bound comes first where it matters nearly as much: a person can widen it.
    neighbours
        .into_iter()
        .filter(|next| next.effect >= most / 2.0)
        .max_by(|one, other| {
            is_bound(&one.why)
                .cmp(&is_bound(&other.why))
                .then(one.effect.total_cmp(&other.effect))
        })
        .map_or(Hindrance::NoLine, |next| next.why)
}

/// What a step of a line runs into; `None` when it does not take the axis nearer, or runs into nothing.
fn neighbour(
    problem: &Problem,
    point: &[i32],
    here: &[f64],
    axis: usize,
    (at, step): (usize, i32),
) -> Option<Neighbour> {
    let adjustable = &problem.adjustable[at];
    let mut next = point.to_vec();
    next[at] += step;
    if next[at] < 0 {
        return None;
    }
    let figures = problem.landscape.figures(&next);
    let there = problem.landscape.deviations(&figures);
    let effect = (here[axis] - there[axis]) * here[axis].signum();
    if effect.is_nan() || effect <= NOTHING {
        return None;
    }
    let (line, more) = (adjustable.line.id.clone(), step > 0);
    let ingredient = adjustable.line.ingredient.clone();
    let why = if there[axis].abs() > here[axis].abs() - NOTHING {
        let step = adjustable.amount(1);
        Hindrance::TooCoarse {
            line,
            ingredient,
            step,
        }
    } else if next[at] > adjustable.range.high {
        let amount = adjustable.amount(point[at]);
        Hindrance::AtMost {
            line,
            ingredient,
            amount,
        }
    } else if next[at] < adjustable.range.low {
        let amount = adjustable.amount(point[at]);
        Hindrance::AtLeast {
            line,
            ingredient,
            amount,
        }
    } else if let Some(obstacle) = problem.landscape.obstacle(&next, &figures) {
        Hindrance::Forbidden {
            line,
            ingredient,
            more,
            obstacle,
        }
    } else {
        let axes = further_off(problem, here, &there, axis);
        if axes.is_empty() {
            return None;
        }
        Hindrance::PushesOthers {
            line,
            ingredient,
            more,
            axes,
        }
    };
    Some(Neighbour { effect, why })
}

/// The axes but this one that are further off there than here, the worst first.
fn further_off(problem: &Problem, here: &[f64], there: &[f64], axis: usize) -> Vec<Axis> {
    let mut worse: Vec<(f64, &Axis)> = problem
        .landscape
        .targets()
        .iter()
        .enumerate()
        .filter(|(at, target)| *at != axis && target.weight > 0.0)
        .map(|(at, target)| (there[at].abs() - here[at].abs(), &target.axis))
        .filter(|(by, _)| *by > NOTHING)
        .collect();
    worse.sort_by(|one, other| other.0.total_cmp(&one.0));
    let worse = worse.into_iter().take(NAMED);
    worse.map(|(_, axis)| axis.clone()).collect()
}
