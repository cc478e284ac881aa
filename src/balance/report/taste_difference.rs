//! The difference of two drinks, axis by axis, in noticeable steps.
//!
//! The distance of two drinks is the root of the weighted sum of squared steps.

use super::axes::{axes_of, noticeable_step, slot_of};
use super::balance::{Balance, Contribution};
use crate::balance::measurand::Measurand;
use crate::book::{Axis, Settings};
use crate::quantity::Uncertain;

/// How two drinks differ on one axis.
#[derive(Clone, Debug, PartialEq)]
pub struct AxisDifference {
    /// The axis.
    pub axis: Axis,
    /// Value of the standard.
    pub standard: Option<f64>,
    /// Value of the other drink.
    pub value: Option<f64>,
    /// The noticeable step around the standard's value.
    pub step: f64,
    /// Weight of the axis; 0 when the difference is meant (hot turned iced).
    pub weight: f64,
    /// (value − standard) / step; `None` when one of them is not known.
    pub steps: Option<f64>,
    /// Standard uncertainty of the difference, in steps: what both drinks share cancels.
    pub u_steps: Option<f64>,
    /// Standard deviation of the difference by the counter's own scatter alone, in steps.
    pub scatter_steps: Option<f64>,
}

/// What a taster says of an axis beside the standard, by the band of one noticeable step: the one yardstick of the level, of
/// lessons and of exercises.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taste {
    /// More than a step below.
    Less,
    /// At most a step away, which nobody tastes.
    Same,
    /// More than a step above.
    More,
}

impl Taste {
    /// All of them, from less to more.
    pub const ALL: [Self; 3] = [Self::Less, Self::Same, Self::More];
}

impl AxisDifference {
    /// What a taster says of it; `None` when that is not known.
    pub fn taste(&self) -> Option<Taste> {
        let steps = self.steps.filter(|steps| steps.is_finite())?;
        Some(if steps.abs() <= 1.0 {
            Taste::Same
        } else if steps > 0.0 {
            Taste::More
        } else {
            Taste::Less
        })
    }
}

/// How two drinks differ.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// Axis by axis.
    pub axes: Vec<AxisDifference>,
    /// Root of the weighted sum of squared steps over the axes that are known; `None` when none is.
    pub distance: Option<f64>,
}

/// Noticeable steps below which a difference is none (assumed).
pub const LEVEL_STEPS: f64 = 0.05;

impl Difference {
    /// Whether every axis that is known lies within one step; `None` when an axis is not known.
    pub fn within_one_step(&self) -> Option<bool> {
        self.all(|axis| Some(axis.taste()? == Taste::Same))
    }

    /// Whether every axis that is known lies within twice the counter's own scatter; `None` when an axis is not known.
    pub fn within_scatter(&self) -> Option<bool> {
        self.all(|axis| Some(axis.steps?.abs() <= 2.0 * axis.scatter_steps? + 1e-9))
    }

    /// Whether something holds on every axis that counts: not when it fails on one, not known when it is not known of one.
    fn all(&self, holds: impl Fn(&AxisDifference) -> Option<bool>) -> Option<bool> {
        let mut is_known = true;
        for axis in self.counted() {
            match holds(axis) {
                Some(true) => {}
                Some(false) => return Some(false),
                None => is_known = false,
            }
        }
        is_known.then_some(true)
    }

    /// The axes that count.
    pub fn counted(&self) -> impl Iterator<Item = &AxisDifference> {
        self.axes.iter().filter(|axis| axis.weight > 0.0)
    }

    /// Axes that can't be compared because something is not stated.
    pub fn not_compared(&self) -> impl Iterator<Item = &Axis> {
        self.axes
            .iter()
            .filter(|axis| axis.steps.is_none())
            .map(|axis| &axis.axis)
    }

    /// Whether nothing is known to differ, and nothing that counts is unknown.
    pub fn is_level(&self) -> bool {
        self.all(|axis| Some(axis.steps?.abs() < LEVEL_STEPS)) == Some(true)
    }
}

/// The distance of steps with their weights; `None` when none is known. A weight below nothing, which is a finding of the book,
/// counts as none.
pub fn overall_distance(steps: impl Iterator<Item = (Option<f64>, f64)>) -> Option<f64> {
    let mut known = steps
        .filter_map(|(steps, weight)| steps.map(|steps| weight.max(0.0) * steps * steps))
        .peekable();
    known.peek()?;
    Some(known.sum::<f64>().sqrt())
}

fn effect(contribution: &Contribution, slot: Option<usize>) -> f64 {
    slot.map_or(0.0, |slot| contribution.effect[slot])
}

/// How another drink differs from the standard, in noticeable steps.
///
/// Causes that both share (a pump, a label, a sugar's sweetness) cancel as far as they act alike; the scatter of the uses
/// is drawn anew for each drink and adds.
pub fn difference(settings: &Settings, standard: &Balance, other: &Balance) -> Difference {
    let mut flavours = standard.flavours.clone();
    flavours.extend(
        other
            .flavours
            .iter()
            .filter(|name| !standard.flavours.contains(name))
            .cloned(),
    );
    let causes = Causes::of(standard, other);
    let axes: Vec<AxisDifference> = axes_of(&flavours)
        .into_iter()
        .map(|axis| axis_difference(settings, &causes, axis))
        .collect();
    let distance = overall_distance(axes.iter().map(|axis| (axis.steps, axis.weight)));
    Difference { axes, distance }
}

/// A standard that differs on no axis from what it is held to: the level itself.
pub fn level_difference(settings: &Settings, standard: &Balance) -> Difference {
    if standard.aims.is_empty() {
        return difference(settings, standard, standard);
    }
    let itself = Balance {
        aims: Vec::new(),
        ..standard.clone()
    };
    difference(settings, &itself, &itself)
}

fn axis_difference(settings: &Settings, causes: &Causes<'_>, axis: Axis) -> AxisDifference {
    let (standard, other) = (causes.standard, causes.other);
    let (from, to) = (standard.aim_on(&axis), other.value_on(&axis));
    let (step, mut weight) = noticeable_step(settings, &axis, from.unwrap_or(0.0));
    // A hot drink turned iced is colder on purpose: the difference is shown and does not count.
    if axis == Axis::Temperature && standard.iced != other.iced {
        weight = 0.0;
    }
    let slots = (
        slot_of(&standard.flavours, &axis),
        slot_of(&other.flavours, &axis),
    );
    let aimed_from = from.zip(standard.value_on(&axis));
    let scale = aimed_from
        .filter(|(_, known)| known.abs() > f64::MIN_POSITIVE)
        .map_or(1.0, |(aim, known)| aim / known);
    let (squares, own_squares) = causes.variance(scale, slots);
    let steps = from.zip(to).map(|(from, to)| (to - from) / step);
    AxisDifference {
        standard: from,
        value: to,
        step,
        weight,
        u_steps: steps.map(|_| (squares + own_squares).sqrt() / step),
        scatter_steps: steps.map(|_| own_squares.sqrt() / step),
        steps,
        axis,
    }
}

/// The causes of two drinks: which of them are the same.
struct Causes<'balance> {
    standard: &'balance Balance,
    other: &'balance Balance,
    /// For each cause of the standard its place among those of the other drink, where it is there and acts on both.
    shared: Vec<Option<usize>>,
    /// For each cause of the other drink whether it is one of those.
    is_shared: Vec<bool>,
}

impl<'balance> Causes<'balance> {
    fn of(standard: &'balance Balance, other: &'balance Balance) -> Self {
        let others = &other.contributions;
        let mut is_shared = vec![false; others.len()];
        // Two versions of a drink have their causes in nearly the same order: the next one is nearly always where the last one was.
        let mut next = 0;
        let shared = standard.contributions.iter().map(|contribution| {
            if contribution.cause.is_own() {
                return None;
            }
            let mut places = (next..others.len()).chain(0..next);
            let same = places.find(|at| others[*at].cause == contribution.cause)?;
            next = same + 1;
            is_shared[same] = true;
            Some(same)
        });
        let shared = shared.collect();
        Self {
            standard,
            other,
            shared,
            is_shared,
        }
    }

    /// Variance of a difference by the causes that are not a use's own, and by those that are. What the standard is aimed at as a
    /// part of it, or as a multiple, is as doubtful in proportion.
    fn variance(&self, scale: f64, slots: (Option<usize>, Option<usize>)) -> (f64, f64) {
        let (mut squares, mut own_squares) = (0.0, 0.0);
        let others = &self.other.contributions;
        for (contribution, shared) in self.standard.contributions.iter().zip(&self.shared) {
            let here = effect(contribution, slots.0) * scale;
            if contribution.cause.is_own() {
                own_squares += here * here;
            } else {
                let there = shared.map_or(0.0, |same| effect(&others[same], slots.1));
                squares += (here - there).powi(2);
            }
        }
        for (contribution, is_shared) in others.iter().zip(&self.is_shared) {
            let there = effect(contribution, slots.1);
            if contribution.cause.is_own() {
                own_squares += there * there;
            } else if !is_shared {
                squares += there * there;
            }
        }
        (squares, own_squares)
    }
}

/// How much more of a figure another drink has than the standard, in the figure's unit; `None` when one of them is not known
/// whole.
///
/// As in [`difference`], causes that both share cancel as far as they act alike.
pub fn figure_difference(
    standard: &Balance,
    other: &Balance,
    measurand: Measurand,
) -> Option<Uncertain> {
    let (from, to) = (
        standard.figures.complete(measurand)?,
        other.figures.complete(measurand)?,
    );
    let slot = Some(measurand.slot());
    let (shared, own) = Causes::of(standard, other).variance(1.0, (slot, slot));
    Some(Uncertain {
        value: to - from,
        u: (shared + own).sqrt(),
    })
}
