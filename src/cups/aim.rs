//! What a cup is held to: the standard of its drink axis by axis, or the recipe itself where nothing has been approved.

use crate::balance::{
    Balance, Cause, Difference, Figures, Measurand, difference, level_difference, slot_of,
    standard_balance,
};
use crate::book::{Approval, Axis, Book, Recipe, Resolved, Temperature, VersionId};

/// What the cups are held to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum HeldTo {
    /// The standard that was approved on a day.
    Standard(String),
    /// The recipe as it is written: nothing has been approved yet.
    Itself,
}

/// What is wanted on an axis.
#[derive(Clone, Debug)]
pub(super) struct Aim {
    pub(super) axis: Axis,
    /// The value that is held to; `None` when it is not known of the standard or of the drink.
    pub(super) value: Option<f64>,
    pub(super) step: f64,
    pub(super) weight: f64,
    /// The place of the axis among the figures of the drink; `None` for a flavour that is not in it.
    pub(super) slot: Option<usize>,
    /// How far the drink is off when nothing scatters, in steps.
    pub(super) nominal: Option<f64>,
}

impl Aim {
    /// Whether it counts for "tastes like the standard".
    pub(super) fn counts(&self) -> bool {
        self.weight > 0.0 && self.value.is_some()
    }

    /// How far a cup is off, in steps; infinite where the cup has no such figure.
    pub(super) fn steps(&self, figures: &Figures) -> Option<f64> {
        let value = self.value?;
        let of_cup = match self.slot {
            None => 0.0,
            Some(slot) if figures.not_given & (1 << slot) != 0 => return Some(f64::INFINITY),
            Some(slot) => figures.of[slot],
        };
        Some((of_cup - value) / self.step)
    }
}

/// A drink with what its cups are held to.
pub(super) struct Held<'book> {
    pub(super) to: HeldTo,
    pub(super) aims: Vec<Aim>,
    /// The approval behind it.
    pub(super) approval: Option<&'book Approval>,
}

/// What the cups of a version are held to.
pub(super) fn held<'book>(
    book: &Book,
    recipe: &'book Recipe,
    version: Option<&VersionId>,
    balance: &Balance,
) -> Held<'book> {
    let standard = standard_balance(book, recipe, version);
    let (to, found, approval) = match &standard {
        Some((standard, approval)) => (
            HeldTo::Standard(approval.date.clone()),
            difference(&book.settings, standard, balance),
            Some(*approval),
        ),
        None => (
            HeldTo::Itself,
            level_difference(&book.settings, balance),
            None,
        ),
    };
    Held {
        to,
        aims: aims(&found, balance),
        approval,
    }
}

fn aims(difference: &Difference, balance: &Balance) -> Vec<Aim> {
    let axes = difference.axes.iter();
    axes.map(|axis| Aim {
        slot: slot_of(&balance.flavours, &axis.axis),
        value: axis.standard.filter(|_| axis.steps.is_some()),
        step: axis.step,
        weight: axis.weight,
        nominal: axis.steps,
        axis: axis.axis.clone(),
    })
    .collect()
}

/// Whether the recipe itself, without any scatter, is within a step on every axis that counts.
pub(super) fn is_level(aims: &[Aim]) -> bool {
    let mut counted = aims.iter().filter(|aim| aim.counts());
    counted.all(|aim| aim.nominal.is_some_and(|steps| steps.abs() <= 1.0))
}

/// Whether a drink comes to a cup at all.
pub(super) fn is_there(balance: &Balance) -> bool {
    balance
        .figures
        .complete(Measurand::Volume)
        .is_some_and(|volume| volume > 0.0)
}

/// The temperature that a cause is about, where a shop can hold it: not that of the room or of ice.
pub(super) fn stated_temperature(
    book: &Book,
    lines: &Resolved,
    cause: &Cause,
) -> Option<Temperature> {
    match cause {
        Cause::MeasureTemperature(id) => book.measure(id)?.temperature,
        Cause::LineTemperature(id) => lines.line(id)?.temperature,
        Cause::Temperature(id) => book.ingredient(id)?.temperature,
        _ => None,
    }
}
