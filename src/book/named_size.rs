//! A measure that does not hold what its name says.

use super::MeasureKind;

/// A unit that a measure may be named after.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NamedUnit {
    /// Millilitres, and litres and their parts.
    Millilitre,
    /// A teaspoon.
    Teaspoon,
    /// A tablespoon.
    Tablespoon,
    /// A cup of a recipe, not one that a drink is served in.
    Cup,
    /// A fluid ounce.
    FluidOunce,
    /// A pint.
    Pint,
    /// A quart.
    Quart,
}

impl NamedUnit {
    /// What it holds where it is in use, ml: labelling values of 21 CFR 101.9(b)(5)(viii), US customary ones of NIST Handbook 44,
    /// imperial ones of the UK Weights and Measures Act 1985; metric, Australian and Japanese ones by national usage (from memory).
    pub(super) fn values(self) -> &'static [f64] {
        match self {
            Self::Millilitre => &[1.0],
            Self::Teaspoon => &[4.928_9, 5.0],
            Self::Tablespoon => &[14.786_8, 15.0, 20.0],
            Self::Cup => &[200.0, 236.588_2, 240.0, 250.0],
            Self::FluidOunce => &[28.413_1, 29.573_5, 30.0],
            Self::Pint => &[473.176_5, 568.261],
            Self::Quart => &[946.352_9, 1_136.522],
        }
    }
}

/// What a measure is called to hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CalledSize {
    /// How many.
    pub number: f64,
    /// Of what.
    pub unit: NamedUnit,
}

impl CalledSize {
    /// The least and the most that it may be, ml.
    pub(super) fn range(self) -> (f64, f64) {
        let values = || self.unit.values().iter().map(|value| value * self.number);
        (
            values().fold(f64::INFINITY, f64::min) * (1.0 - TOLERANCE),
            values().fold(0.0, f64::max) * (1.0 + TOLERANCE),
        )
    }
}

/// Where it is stated what a measure holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// Its readings say so.
    ByReadings,
    /// It is set down so; there are no readings.
    AsSetDown,
}

/// A measure that is not of the size that it is called.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Miscalled {
    /// The kind of measure.
    pub kind: MeasureKind,
    /// What it is called.
    pub called: CalledSize,
    /// What it holds, ml.
    pub found_ml: f64,
    /// By what.
    pub held: Held,
}

/// How far a measure may be from what it is called before the check says so, as a part of that (assumed).
pub(super) const TOLERANCE: f64 = 0.15;
