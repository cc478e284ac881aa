//! What tastings have shown of an ingredient, beside what its pack says.

use super::{Axis, DoubtClass, TastingId};

/// What of an ingredient a tasting can tell better than its pack.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TastedFactor {
    /// How sweet it is by its sugars and polyols.
    Sweetness,
    /// The strength of a flavour, by its name.
    Flavour(String),
}

impl TastedFactor {
    /// The axis that it is tasted on.
    pub fn axis(&self) -> Axis {
        match self {
            Self::Sweetness => Axis::Sweetness,
            Self::Flavour(name) => Axis::Flavour(name.clone()),
        }
    }

    /// What of an ingredient is tasted on an axis; `None` for an axis on which tastings correct no figure.
    pub fn of_axis(axis: &Axis) -> Option<Self> {
        match axis {
            Axis::Sweetness => Some(Self::Sweetness),
            Axis::Flavour(name) => Some(Self::Flavour(name.clone())),
            _ => None,
        }
    }

    /// The doubts that a tasting of it tells of.
    pub const fn doubts(&self) -> DoubtClass {
        match self {
            Self::Sweetness => DoubtClass::Sweetness,
            Self::Flavour(_) => DoubtClass::Flavour,
        }
    }

    /// Its key in reports; a flavour's own name.
    pub fn word(&self) -> &str {
        match self {
            Self::Sweetness => "sweetness",
            Self::Flavour(name) => name,
        }
    }
}

/// A figure that somebody took over from tastings. What the pack says, or what is assumed, stays beside it and is multiplied, so
/// that the tastings can be weighed anew with every further one and are never counted twice.
#[derive(Clone, Debug, PartialEq)]
pub struct TastedFigure {
    /// What of the ingredient.
    pub what: TastedFactor,
    /// How many times what is stated or assumed.
    pub times: f64,
    /// Standard uncertainty of `times`.
    pub u: f64,
    /// The day on which it was taken over, `2026-05-04`.
    pub date: String,
    /// Who took it over.
    pub by: String,
    /// Why.
    pub reason: String,
    /// The tastings that it rests on.
    pub tastings: Vec<TastingId>,
}
