//! A drink that grows or shrinks as a whole: each line by the same ratio, then to whole measures.

use crate::book::{Amount, Book, Carried, Change, Line, Resolved, Role, Stage};
use crate::optimiser::Range;

use super::question::{Adjustable, steps_in};

/// Most lines that move.
const MOST_LINES: usize = 8;

/// Lines that have grown, and those of them that may move to whole measures.
pub(super) struct Grown {
    pub(super) lines: Resolved,
    pub(super) adjustable: Vec<Adjustable>,
}

/// Whether a line gives a drink a taste that is on no axis, because nobody has named it: only its amount can be kept.
pub(super) fn tastes_of_itself(book: &Book, line: &Line) -> bool {
    let item = book.ingredient(&line.ingredient);
    line.role == Role::Flavour && item.is_none_or(|item| item.composition.flavours.is_empty())
}

/// Grows every line; a mixed one may end up to `reach` steps from its grown amount, and one whose taste is on no axis one step.
pub(super) fn grown(book: &Book, lines: &Resolved, ratio: f64, reach: i32) -> Grown {
    let mut changed = lines.clone();
    let mut adjustable = Vec::new();
    for line in lines.lines() {
        let Some(number) = line.amount.number() else {
            continue;
        };
        if let Amount::FillTo(millilitres) = line.amount {
            let mark = Amount::FillTo((millilitres * ratio).round());
            changed.apply(&Change::Amount(line.id.clone(), mark));
            continue;
        }
        let Some(mut found) = Adjustable::new(book, line, false) else {
            continue;
        };
        let steps = steps_in(number * ratio - found.step / 2.0, found.step).max(0);
        let reach = if tastes_of_itself(book, line) {
            1
        } else {
            reach
        };
        found.range = Range {
            low: (steps - reach).max(i32::from(number > 0.0)),
            high: steps + reach,
        };
        let amount = found.amount(steps.max(found.range.low));
        changed.apply(&Change::Amount(line.id.clone(), amount.clone()));
        // What clings to a topping grows with it.
        let growth = amount.number().unwrap_or(0.0) / number;
        if let Some(carried) = line.carried.clone().filter(|_| growth.is_finite()) {
            let grams = carried.grams * growth;
            let carried = Carried { grams, ..carried };
            changed.apply(&Change::Carried(line.id.clone(), Some(carried)));
        }
        found.line.amount = amount;
        // Toppings and what floats on top are a matter of the cup alone, and grow as they are.
        if line.stage == Stage::Mixed && adjustable.len() < MOST_LINES {
            adjustable.push(found);
        }
    }
    Grown {
        lines: changed,
        adjustable,
    }
}
