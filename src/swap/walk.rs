//! A suggestion taken apart: the plain swap, then one compensation after the other, each with its own balance.

use std::sync::Arc;

use crate::balance::{
    AxisDifference, Balance, Difference, balance, difference, level_difference,
};
use crate::book::{Axis, Book, Change, Line, LineId, Place, Resolved};

use super::changes::{LineMove, with_added_lines};
use super::suggestion::{Answer, Suggestion};

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

/// How far one axis moved between two drinks that are held to the same standard.
#[derive(Clone, Debug, PartialEq)]
pub struct AxisMove {
    /// The axis.
    pub axis: Axis,
    /// How far, in noticeable steps; `None` when it is not known.
    pub moved: Option<f64>,
}

/// How far each axis that counts moved. A flavour that only one of the drinks has was or is level in the other: neither that
/// drink nor the standard has any of it.
pub fn axis_moves(before: &Difference, after: &Difference) -> Vec<AxisMove> {
    let steps_on = |difference: &Difference, axis: &Axis| {
        let found = difference.axes.iter().find(|other| other.axis == *axis);
        found.map_or(Some(0.0), |found| found.steps)
    };
    let is_gone = |axis: &&AxisDifference| !after.axes.iter().any(|other| other.axis == axis.axis);
    let gone = before.axes.iter().filter(is_gone);
    after
        .axes
        .iter()
        .chain(gone)
        .filter(|axis| axis.weight > 0.0)
        .map(|axis| AxisMove {
            axis: axis.axis.clone(),
            moved: steps_on(after, &axis.axis)
                .zip(steps_on(before, &axis.axis))
                .map(|(after, before)| after - before),
        })
        .collect()
}

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
            difference: level_difference(settings, &answer.standard),
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

#[cfg(test)]
mod tests {
    use super::*;

    fn held(axes: &[(Axis, f64)]) -> Difference {
        let axis = |(axis, steps): &(Axis, f64)| AxisDifference {
            axis: axis.clone(),
            standard: Some(0.0),
            value: Some(*steps),
            step: 1.0,
            weight: 1.0,
            steps: Some(*steps),
            u_steps: None,
            scatter_steps: None,
        };
        Difference {
            axes: axes.iter().map(axis).collect(),
            distance: None,
        }
    }

    #[test]
    fn a_flavour_that_comes_or_goes_moves_from_or_to_the_level_and_shifts_no_other_axis() {
        let plum = Axis::Flavour("plum".to_owned());
        let without = held(&[(Axis::Sweetness, 0.2), (Axis::Body, 0.1)]);
        let with = held(&[
            (Axis::Sweetness, 1.2),
            (plum.clone(), 3.0),
            (Axis::Body, 0.1),
        ]);
        let moved = |before: &Difference, after: &Difference| -> Vec<(Axis, f64)> {
            let moves = axis_moves(before, after);
            let rounded = |steps: f64| (steps * 10.0).round() / 10.0;
            moves
                .into_iter()
                .map(|moved| (moved.axis, rounded(moved.moved.unwrap())))
                .collect()
        };
        assert_eq!(
            moved(&without, &with),
            [
                (Axis::Sweetness, 1.0),
                (plum.clone(), 3.0),
                (Axis::Body, 0.0)
            ]
        );
        assert_eq!(
            moved(&with, &without),
            [(Axis::Sweetness, -1.0), (Axis::Body, 0.0), (plum, -3.0)]
        );
    }
}
