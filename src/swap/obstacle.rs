//! Why a candidate is forbidden.

use crate::balance::{Component, Prepared};
use crate::book::{Stage, TemperatureWindow};

/// A figure that a cap is set on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CapKind {
    /// Sugars per 100 ml.
    Sugar,
    /// Energy of the drink.
    Energy,
    /// Cost of the drink.
    Cost,
}

/// Why a candidate is forbidden.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Obstacle {
    /// What fills it up never gets there.
    FillOutOfReach,
    /// It does not fit the cup.
    Cup {
        /// Part of the cup that it fills, percent.
        fill: f64,
        /// Part that may be filled, percent.
        room: f64,
    },
    /// It is served outside the window.
    Temperature {
        /// Its serving temperature, °C.
        celsius: f64,
        /// The window.
        window: TemperatureWindow,
    },
    /// Less ice is left than the shop wants in the cup.
    IceLeft {
        /// Ice that is left, g.
        left: f64,
        /// Ice that is wanted, g.
        wanted: f64,
    },
    /// It breaks a cap.
    Cap {
        /// Which one.
        kind: CapKind,
        /// What the drink has.
        found: f64,
        /// The most that it may have.
        most: f64,
    },
    /// The powders do not dissolve.
    HotWater {
        /// Hot water, g.
        hot: f64,
        /// Powder, g.
        powder: f64,
        /// Hot water that a gram of powder needs, g.
        needed: f64,
    },
}

impl Obstacle {
    /// A word for programs that read what is said.
    pub fn word(&self) -> &'static str {
        match self {
            Self::FillOutOfReach => "fill-out-of-reach",
            Self::Cup { .. } => "cup-overfilled",
            Self::Temperature { .. } => "outside-serving-window",
            Self::IceLeft { .. } => "ice-melts",
            Self::Cap { kind, .. } => match kind {
                CapKind::Sugar => "over-sugar-limit",
                CapKind::Energy => "over-energy-limit",
                CapKind::Cost => "over-cost-limit",
            },
            Self::HotWater { .. } => "powder-undissolved",
        }
    }
}

/// Grams of what is dry in the mixed drink, and of the water in what is poured hot.
pub(super) fn powder_and_hot_water(
    prepared: &Prepared,
    hot_from: f64,
    count: impl Fn(usize) -> f64,
) -> (f64, f64) {
    let (mut powder, mut hot) = (0.0, 0.0);
    for (at, line) in prepared
        .lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.stage == Stage::Mixed)
    {
        let grams = count(at) * line.grams_per_unit;
        let water = count(at) * line.per_unit.get(Component::Water);
        if water < 0.2 * grams && line.per_unit.get(Component::Ice) == 0.0 {
            powder += grams;
        } else if line.celsius >= hot_from {
            hot += water;
        }
    }
    (powder, hot)
}
