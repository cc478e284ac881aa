//! A suggestion taken apart: the plain swap, then one compensation after the other, each with its own balance.

use std::sync::Arc;

use crate::balance::{AxisDifference, Balance, Difference, balance, difference, level_difference};
use crate::book::{Book, Change, IngredientId, Line, LineId, Place, Resolved, Stage};

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

/// The line behind most of a difference: what it brings to an axis in the standard and in the other drink, in the unit of
/// [`LineShare::brings_to`], each with its ingredient; `None` in the drink that has no such line.
#[derive(Clone, Debug, PartialEq)]
pub struct Driver {
    /// In the standard.
    pub before: Option<(IngredientId, f64)>,
    /// In the other drink.
    pub now: Option<(IngredientId, f64)>,
}

/// The line that moved a drink away from its standard on an axis the most, in the direction in which it moved; `None` when no
/// line did: the cup is less full, or what a line brings is not known.
pub fn driver(standard: &Balance, drink: &Balance, axis: &AxisDifference) -> Option<Driver> {
    let sign = axis.steps?.signum();
    let brings = |balance: &Balance, id: &LineId| -> Option<(IngredientId, f64)> {
        // What a topping brings along is part of the drink, the topping itself is not.
        let mut shares = balance.lines.iter();
        let share = shares
            .find(|share| share.line == *id && (share.carried || share.stage == Stage::Mixed))?;
        let amount = share.brings_to(&axis.axis, &balance.flavours)?;
        Some((share.ingredient.clone(), amount))
    };
    let mut lines: Vec<&LineId> = Vec::new();
    for share in standard.lines.iter().chain(&drink.lines) {
        if !lines.contains(&&share.line) {
            lines.push(&share.line);
        }
    }
    let drivers = lines.into_iter().map(|id| Driver {
        before: brings(standard, id),
        now: brings(drink, id),
    });
    let moved = |driver: &Driver| {
        let amount =
            |side: &Option<(IngredientId, f64)>| side.as_ref().map_or(0.0, |(_, amount)| *amount);
        sign * (amount(&driver.now) - amount(&driver.before))
    };
    drivers
        .max_by(|one, other| moved(one).total_cmp(&moved(other)))
        .filter(|driver| moved(driver) > 0.0)
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
