//! The parts of a drink as it is handed over: what is mixed, what sits in the cup, and what floats on top.

use crate::balance::mix::Mix;
use crate::balance::prepare::prepare;
use crate::balance::slots::Slots;
use crate::balance::solve::figures::{Poured, REFERENCE_CELSIUS, pour, sums};
use crate::balance::solve::physics::liquid_volume;
use crate::balance::solve::prepared::Prepared;
use crate::book::{Book, Place, Resolved};

/// The parts of a drink.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Parts {
    /// The version with its look-ups done.
    pub(super) prepared: Prepared,
    /// The mixed drink in the cup.
    pub(super) poured: Poured,
    /// What sits in the cup.
    pub(super) toppings: Mix,
    /// What floats on top.
    pub(super) on_top: Mix,
}

impl Parts {
    /// Volume of the liquid of the mixed drink at 20 °C, ml; ice that is left does not count.
    pub(super) fn volume(&self) -> f64 {
        liquid_volume(&self.poured.drink, self.poured.melted, REFERENCE_CELSIUS)
    }
}

/// Works the parts of plain lines out. What could not be looked up is a finding of the balance, not of this.
pub(super) fn parts(book: &Book, resolved: &Resolved) -> Parts {
    let prepared = prepare(book, resolved, &mut Slots::default(), &Place::Settings);
    let sums = sums(&prepared);
    let poured = pour(&sums, &prepared.setup);
    Parts {
        poured,
        toppings: sums.toppings,
        on_top: sums.on_top,
        prepared,
    }
}
