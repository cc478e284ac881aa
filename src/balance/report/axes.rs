//! The axes of taste and their noticeable steps.
//!
//! A noticeable step is a Weber fraction of the standard's value with a floor: `step = max(fraction · |standard|, floor)`.

use crate::balance::measurand::{Measurand, flavour_figure};
use crate::balance::published::noticeable;
use crate::book::{Axis, Settings};

/// Where a drink stands on one axis.
#[derive(Clone, Debug, PartialEq)]
pub struct AxisValue {
    /// The axis.
    pub axis: Axis,
    /// The value, in [`Axis::unit`]; `None` when something that it needs is not stated.
    pub value: Option<f64>,
    /// Its standard uncertainty.
    pub u: Option<f64>,
    /// The noticeable step around this value.
    pub step: f64,
    /// Weight of the axis in a distance.
    pub weight: f64,
}

/// The noticeable step of an axis around a value, and the weight of the axis: the shop's own, else the published default.
pub fn noticeable_step(settings: &Settings, axis: &Axis, standard: f64) -> (f64, f64) {
    if let Some(own) = settings.steps.iter().find(|own| own.axis == *axis) {
        let step = (own.fraction * standard.abs()).max(own.floor);
        return (step.max(f64::MIN_POSITIVE), own.weight);
    }
    let default = match axis {
        Axis::Sweetness => noticeable::SWEETNESS,
        Axis::TeaStrength => noticeable::TEA_STRENGTH,
        Axis::Flavour(_) => noticeable::FLAVOUR,
        Axis::Creaminess => noticeable::CREAMINESS,
        Axis::Acidity => noticeable::ACIDITY,
        Axis::Body => noticeable::BODY,
        Axis::Temperature => noticeable::TEMPERATURE,
        Axis::Volume => noticeable::VOLUME,
    };
    // Sugar counts in sweetness and in body alike; body has therefore a low weight (assumed).
    let weight = if *axis == Axis::Body { 0.25 } else { 1.0 };
    (default.around(standard), weight)
}

/// The figure behind a fixed axis; `None` for a flavour.
pub(super) fn measurand_of(axis: &Axis) -> Option<Measurand> {
    match axis {
        Axis::Sweetness => Some(Measurand::Sweetness),
        Axis::TeaStrength => Some(Measurand::TeaStrength),
        Axis::Creaminess => Some(Measurand::Creaminess),
        Axis::Acidity => Some(Measurand::Acidity),
        Axis::Body => Some(Measurand::Body),
        Axis::Temperature => Some(Measurand::ServingTemperature),
        Axis::Volume => Some(Measurand::Volume),
        Axis::Flavour(_) => None,
    }
}

/// The slot of an axis among the figures of a drink; `None` for a flavour that the drink does not name.
pub fn slot_of(flavours: &[String], axis: &Axis) -> Option<usize> {
    match axis {
        Axis::Flavour(name) => flavours
            .iter()
            .position(|known| known == name)
            .map(flavour_figure),
        fixed => measurand_of(fixed).map(Measurand::slot),
    }
}

/// The axes of a drink: sweetness, tea, its flavours, then the others.
pub(super) fn axes_of(flavours: &[String]) -> Vec<Axis> {
    let mut axes = vec![Axis::Sweetness, Axis::TeaStrength];
    axes.extend(flavours.iter().cloned().map(Axis::Flavour));
    axes.extend([
        Axis::Creaminess,
        Axis::Acidity,
        Axis::Body,
        Axis::Temperature,
        Axis::Volume,
    ]);
    axes
}
