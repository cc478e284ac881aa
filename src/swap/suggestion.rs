//! What an answer says: the standard, the plain swap, and the suggestions that bring the taste back.

use std::sync::Arc;

use crate::balance::{Balance, Difference, Measurand};
use crate::book::{Change, LineId, Recipe, VersionId};
use crate::edit::Edit;
use crate::optimiser::{Outcome, Status};

use super::adapt::new_version;
use super::changes::LineMove;
use super::demands::Demands;
use super::question::{Adjustable, Question};
use super::reason::Reason;
use super::shortfall::Shortfall;

/// What a suggestion is best at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SuggestionKind {
    /// As few lines as can be that move; of equal ones the closest taste.
    FewestChanges,
    /// The closest taste.
    ClosestTaste,
    /// The cheapest within one noticeable step on every axis.
    Cheapest,
    /// The least sugar within one noticeable step on every axis.
    LeastSugar,
}

/// Changes that bring the taste back.
#[derive(Clone, Debug, PartialEq)]
pub struct Suggestion {
    /// What it is best at.
    pub kind: SuggestionKind,
    /// What it is best at besides.
    pub also: Vec<SuggestionKind>,
    /// Whole steps of each line that was let move, in the order of [`Answer::adjustable`].
    pub point: Vec<i32>,
    /// Lines that move, the swapped ones among them when their amount changes.
    pub moves: Vec<LineMove>,
    /// The version that accepting it adds.
    pub changes: Vec<Change>,
    /// Its balance.
    pub balance: Arc<Balance>,
    /// How it differs from the standard.
    pub difference: Difference,
    /// The axes that it misses by more than a noticeable step, with what stands in the way.
    pub shortfalls: Vec<Shortfall>,
    /// Whether the difference is within the counter's own scatter.
    pub within_scatter: Option<bool>,
}

/// The answer to a swap.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The question.
    pub question: Question,
    /// What was asked beside it.
    pub demands: Demands,
    /// The standard: the latest approval or, when there is none, the version as it stands.
    pub standard: Arc<Balance>,
    /// Whether the standard has been approved.
    pub standard_is_approved: bool,
    /// The plain swap.
    pub plain: Arc<Balance>,
    /// How the plain swap differs from the standard.
    pub plain_difference: Difference,
    /// The changes that make the plain swap.
    pub plain_changes: Vec<Change>,
    /// Lines that the plain swap changes.
    pub swapped: Vec<LineId>,
    /// The lines that were let move, with their increments; empty where nothing was searched.
    pub adjustable: Vec<Adjustable>,
    /// What brings the taste back; the fewest changes first.
    pub suggestions: Vec<Suggestion>,
    /// Why nothing, or not enough, can be suggested.
    pub reasons: Vec<Reason>,
    /// Whether the suggestions are proven best.
    pub proven_optimal: bool,
    /// Candidates that were evaluated.
    pub evaluated: u64,
    /// Boxes of the grid that were looked at.
    pub nodes: u64,
    /// Candidates of the whole grid.
    pub candidates: f64,
}

impl Answer {
    /// The edit that keeps a suggestion as a new version with this name, and the id of that version.
    ///
    /// The version builds on the one that the question started from; neither that one nor anything approved changes.
    pub fn accept(&self, recipe: &Recipe, changes: &[Change], name: &str) -> (Edit, VersionId) {
        new_version(recipe, self.question.version.as_ref(), changes, name)
    }

    /// Enters what a search took; its best point.
    pub(super) fn enter(&mut self, outcome: Option<Outcome>) -> Option<Vec<i32>> {
        let outcome = outcome?;
        self.evaluated += outcome.evaluated;
        self.nodes += outcome.nodes;
        self.proven_optimal &= matches!(outcome.status, Status::Optimal | Status::Infeasible);
        outcome.best.map(|best| best.point)
    }

    /// Extra sugar of the plain swap against the standard, g; `None` when one of them is not known.
    pub fn extra_sugar(&self) -> Option<f64> {
        let sugar = |balance: &Balance| balance.figures.complete(Measurand::TotalSugar);
        Some(sugar(&self.plain)? - sugar(&self.standard)?)
    }

    /// The part of the grid that was neither evaluated nor looked at box by box, 0 to 1.
    pub fn pruned(&self) -> f64 {
        let looked_at = (self.evaluated + self.nodes) as f64;
        if self.candidates > 0.0 {
            (1.0 - looked_at / self.candidates).max(0.0)
        } else {
            0.0
        }
    }
}
