//! The neighbourhood of an answer: other amounts of the lines that may move, chosen by hand.

use std::sync::Arc;

use crate::balance::{Balance, Difference, balance, difference};
use crate::book::{Book, Change, Place, differences_between, resolve};

use super::changes::with_amounts;
use super::impossible::forbidden;
use super::problem::{Problem, ProblemInput};
use super::reason::Forbidden;
use super::suggestion::Answer;

/// A drink near a suggestion. It is neither searched nor proven; it is what a person has set.
#[derive(Clone, Debug, PartialEq)]
pub struct Nearby {
    /// Whole steps of each line that may move, in the order of [`Answer::adjustable`].
    pub point: Vec<i32>,
    /// The version that keeping it adds.
    pub changes: Vec<Change>,
    /// Its balance.
    pub balance: Arc<Balance>,
    /// How it differs from the standard.
    pub difference: Difference,
    /// Whether the difference is within the counter's own scatter.
    pub within_scatter: Option<bool>,
    /// Which condition it does not keep, with figures.
    pub obstacle: Option<Forbidden>,
}

impl Answer {
    /// The drink with these steps of the lines that may move; `None` when the recipe is gone or the steps are not those of
    /// this answer. The amounts may lie outside the ranges that were searched.
    pub fn nearby(&self, book: &Book, point: &[i32]) -> Option<Nearby> {
        let recipe = book.recipe(&self.question.recipe)?;
        if point.len() != self.adjustable.len() {
            return None;
        }
        let problem = Problem::new(&ProblemInput {
            book,
            recipe: &recipe.id,
            standard: &self.standard,
            start: &self.plain,
            adjustable: self.adjustable.clone(),
            demands: &self.demands,
        });
        let figures = problem.landscape.figures(point);
        let obstacle = problem.landscape.obstacle(point, &figures);
        let lines = with_amounts(&problem.lines, &problem.adjustable, point);
        let place = Place::Recipe(recipe.id.clone(), "lines");
        let balance = balance(book, lines, &place);
        let difference = difference(&book.settings, &self.standard, &balance);
        let (before, _) = resolve(recipe, self.question.version.as_ref());
        Some(Nearby {
            point: point.to_vec(),
            changes: differences_between(&before, &balance.resolved).changes,
            within_scatter: difference.within_scatter(),
            obstacle: obstacle.map(|obstacle| forbidden(obstacle, &balance)),
            difference,
            balance: Arc::new(balance),
        })
    }
}
