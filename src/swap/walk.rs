//! A suggestion taken apart: the plain swap, then one compensation after the other, each with its own balance.

use std::sync::Arc;

use crate::balance::{Balance, Difference, balance, difference};
use crate::book::{Book, Change, Line, LineId, Place, Resolved};

use super::answer::{Answer, Suggestion};
use super::changes::{LineMove, with_added_lines};

/// What one step of a walk does.
#[derive(Clone, Debug, PartialEq)]
pub enum WalkMove {
    /// Nothing yet: the standard.
    Standard,
    /// The other ingredient by equal measures.
    PlainSwap,
    /// One line moves.
    Line(LineMove),
}

/// A move smaller than this, in noticeable steps, counts as none when it is taught: half a step is not tasted.
pub const NOT_TASTED: f64 = 0.5;

/// One step of a walk, and the drink after it.
#[derive(Clone, Debug, PartialEq)]
pub struct WalkStep {
    /// What it does.
    pub does: WalkMove,
    /// The drink after it.
    pub balance: Arc<Balance>,
    /// How that differs from the standard.
    pub difference: Difference,
}

/// From the standard over the plain swap to a suggestion, one line at a time, in the order of the recipe.
pub fn walk(book: &Book, answer: &Answer, suggestion: &Suggestion) -> Vec<WalkStep> {
    let settings = &book.settings;
    let mut steps = vec![
        WalkStep {
            does: WalkMove::Standard,
            balance: answer.standard.clone(),
            difference: difference(settings, &answer.standard, &answer.standard),
        },
        WalkStep {
            does: WalkMove::PlainSwap,
            balance: answer.plain.clone(),
            difference: answer.plain_difference.clone(),
        },
    ];
    let mut lines = with_added_lines(&answer.plain.resolved, &answer.adjustable);
    let place = Place::Recipe(answer.question.recipe.clone(), "lines");
    for moved in moves(&answer.plain.resolved, &suggestion.balance.resolved, &lines) {
        let change = match &moved.to {
            Some(amount) => Change::Amount(moved.line.clone(), amount.clone()),
            None => Change::Remove(moved.line.clone()),
        };
        lines.apply(&change);
        let balance = balance(book, without_nothing(&lines), &place);
        steps.push(WalkStep {
            does: WalkMove::Line(moved),
            difference: difference(settings, &answer.standard, &balance),
            balance: Arc::new(balance),
        });
    }
    steps
}

/// The lines that differ between the plain swap and the suggestion; `all` has every line of either.
fn moves(plain: &Resolved, suggested: &Resolved, all: &Resolved) -> Vec<LineMove> {
    let amount = |lines: &Resolved, id: &LineId| lines.line(id).map(|line| line.amount.clone());
    let moved = |line: &Line| {
        let (from, to) = (amount(plain, &line.id), amount(suggested, &line.id));
        let line = line.id.clone();
        (from != to).then_some(LineMove { line, from, to })
    };
    all.lines().filter_map(moved).collect()
}

/// A line that could be added and is not there yet is no line.
fn without_nothing(lines: &Resolved) -> Resolved {
    let nothing = |line: &&Line| !line.amount.fills() && line.amount.number() == Some(0.0);
    let gone: Vec<LineId> = lines
        .lines()
        .filter(nothing)
        .map(|line| line.id.clone())
        .collect();
    let mut left = lines.clone();
    for id in gone {
        left.apply(&Change::Remove(id));
    }
    left
}
