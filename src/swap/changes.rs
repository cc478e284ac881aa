//! From amounts to lines: the lines of a candidate, and what moved.

use crate::book::{Amount, Change, Entry, LineId, Resolved, Stage};

use super::question::Adjustable;

/// How one line moves between the standard and a suggestion.
#[derive(Clone, Debug, PartialEq)]
pub struct LineMove {
    /// The line.
    pub line: LineId,
    /// Its amount before; `None` when the line is added.
    pub from: Option<Amount>,
    /// Its amount after; `None` when the line is left out.
    pub to: Option<Amount>,
}

/// The lines with those added that may be added, behind the last that is mixed.
pub(super) fn with_added_lines(plain: &Resolved, adjustable: &[Adjustable]) -> Resolved {
    let mut resolved = plain.clone();
    for adjustable in adjustable.iter().filter(|adjustable| adjustable.added) {
        let mixed = |entry: &&Entry| entry.line().is_some_and(|line| line.stage == Stage::Mixed);
        let last = resolved
            .entries
            .iter()
            .rev()
            .find(mixed)
            .map(|entry| entry.id().clone());
        resolved.apply(&Change::Add(last, Entry::Line(adjustable.line.clone())));
    }
    resolved
}

/// The lines with the amounts of a point; a line of nothing is left out.
pub(super) fn with_amounts(
    resolved: &Resolved,
    adjustable: &[Adjustable],
    point: &[i32],
) -> Resolved {
    let mut resolved = resolved.clone();
    for (adjustable, steps) in adjustable.iter().zip(point) {
        let id = adjustable.line.id.clone();
        let change = if *steps == 0 {
            Change::Remove(id)
        } else {
            Change::Amount(id, adjustable.amount(*steps))
        };
        resolved.apply(&change);
    }
    resolved
}

/// The amount of a line in the standard, in the unit of the adjustable line; none when the standard does not have it.
pub(super) fn standard_amount(standard: &Resolved, adjustable: &Adjustable) -> f64 {
    let same_unit = |amount: &Amount| match (amount, &adjustable.line.amount) {
        // Another scoop or pump of the same line is counted the same way.
        (Amount::Count(..), Amount::Count(..)) => true,
        (one, other) => std::mem::discriminant(one) == std::mem::discriminant(other),
    };
    standard
        .line(&adjustable.line.id)
        .filter(|line| same_unit(&line.amount))
        .and_then(|line| line.amount.number())
        .unwrap_or(0.0)
}

/// Lines whose amount differs from the standard's (or, where the standard does not have the line, from before).
pub(super) fn line_moves(
    standard: &Resolved,
    before: &Resolved,
    after: &Resolved,
) -> Vec<LineMove> {
    let reference = |id: &LineId| {
        standard
            .line(id)
            .or_else(|| before.line(id))
            .map(|line| line.amount.clone())
    };
    let mut moves: Vec<LineMove> = after
        .lines()
        .map(|line| LineMove {
            line: line.id.clone(),
            from: reference(&line.id),
            to: Some(line.amount.clone()),
        })
        .collect();
    let gone = before.lines().filter(|line| after.line(&line.id).is_none());
    moves.extend(gone.map(|line| LineMove {
        line: line.id.clone(),
        from: reference(&line.id),
        to: None,
    }));
    moves.retain(|moved| {
        moved.from.as_ref().and_then(Amount::number) != moved.to.as_ref().and_then(Amount::number)
    });
    moves
}
