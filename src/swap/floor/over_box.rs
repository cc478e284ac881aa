//! One box of the search: which limits it may break, what each axis costs at least, and the squares of the minorant.

use crate::optimiser::{Coefficients, LinearProgram, MOST_VARIABLES};

use super::certificate::{MOST_ROWS, Square};
use super::curved::Curved;
use super::enclosure::Enclosed;
use super::form::{Bounds, Form, Interval, least_ratio};
use super::rows::{Per, Row, Rows};

/// A list on the stack: a search looks at millions of boxes.
pub(super) struct Few<T> {
    items: [T; MOST_ROWS],
    count: usize,
}

impl<T: Copy> Few<T> {
    fn new(filler: T) -> Self {
        Self {
            items: [filler; MOST_ROWS],
            count: 0,
        }
    }

    /// Leaves out what has no room: a floor with fewer rows is lower, not wrong.
    fn push(&mut self, item: T) {
        if self.count < MOST_ROWS {
            self.items[self.count] = item;
            self.count += 1;
        }
    }

    pub(super) fn as_slice(&self) -> &[T] {
        &self.items[..self.count]
    }

    fn as_mut_slice(&mut self) -> &mut [T] {
        &mut self.items[..self.count]
    }
}

/// One box, and what encloses the drink over it.
pub(super) struct OverBox<'search> {
    pub(super) rows: &'search Rows,
    pub(super) enclosed: &'search Enclosed,
    pub(super) bounds: &'search Bounds,
    pub(super) volume: Interval,
    /// Greatest heat capacity, in J/K.
    pub(super) capacity: f64,
}

/// The distance over a box.
pub(super) struct Squares<'search> {
    pub(super) kept: Few<Square<'search>>,
    /// Sum of what each axis costs at least.
    pub(super) by_axis: f64,
    /// What the squares leave out, with its sign.
    pub(super) besides: f64,
}

impl<'search> OverBox<'search> {
    /// The least of what should be small, under the limits of the box.
    pub(super) fn smallest(
        &self,
        objective: &Form,
        limits: &[(&Row, f64)],
        hint: &mut [f64],
    ) -> f64 {
        const NONE: Coefficients = [0.0; MOST_VARIABLES];
        let mut rows = Few::new((&NONE, 0.0));
        for (row, offset) in limits {
            rows.push((
                row.form.per.first_chunk().unwrap_or(&NONE),
                -(row.form.constant + offset),
            ));
        }
        let program = LinearProgram {
            cost: objective.per.first_chunk().unwrap_or(&NONE),
            limits: rows.as_slice(),
            low: &self.bounds.low[..hint.len()],
            high: &self.bounds.high[..hint.len()],
        };
        objective.constant + program.bound(hint)
    }

    /// The limits that part of the box breaks; none if all of it breaks one.
    pub(super) fn limits(&self, curved: &'search Curved) -> Option<Few<(&'search Row, f64)>> {
        let mut limits = Few::new((&self.rows.volume, 0.0));
        for row in self.rows.limits.iter().take(MOST_ROWS) {
            let offset = row.offset(self.enclosed).low;
            let range = row.form.range(self.bounds);
            if range.low + offset > 1e-7 {
                return None;
            }
            // A limit that the whole box keeps says nothing.
            if range.high + offset > 0.0 {
                limits.push((row, offset));
            }
        }
        for (row, offset) in curved.limits.iter().flatten() {
            if row.form.range(self.bounds).low + offset > 1e-7 {
                return None;
            }
            limits.push((row, *offset));
        }
        Some(limits)
    }

    pub(super) fn squares(&self, curved: &'search Curved, taste_weight: f64) -> Squares<'search> {
        let least_curved = curved.least * taste_weight;
        let mut kept = Few::new(Square {
            row: &self.rows.volume,
            weight: 0.0,
            offset: Interval::ZERO,
            per_volume: false,
        });
        let (mut by_axis, mut concentrations) = (least_curved, 0.0);
        let mut volume_axis = None;
        for square in self.rows.squares.iter().take(MOST_ROWS - 2) {
            let offset = square.row.offset(self.enclosed);
            let range = square.row.form.range(self.bounds).plus(offset);
            let least = range.least_distance_from_zero();
            let weight = square.weight * taste_weight;
            let (deviation, scaled) = match square.per {
                Per::One => (least, weight),
                Per::HeatCapacity => (
                    least / self.capacity,
                    weight / (self.capacity * self.capacity),
                ),
                Per::Volume if least > 0.0 => (self.ratio_from_zero(&square.row, offset), weight),
                Per::Volume => (0.0, weight),
            };
            by_axis += weight * deviation * deviation;
            if square.per == Per::One {
                volume_axis = Some(kept.count);
            }
            let per_volume = square.per == Per::Volume;
            if per_volume {
                concentrations += weight * range.greatest_distance_from_zero().powi(2);
            }
            kept.push(Square {
                row: &square.row,
                weight: scaled,
                offset,
                per_volume,
            });
        }
        // In the minorant the curved axis is a square or, failing that, its own least.
        let mut besides = least_curved;
        if let Some((row, weight, offset)) = &curved.square {
            let weight = weight * taste_weight;
            let range = row.form.range(self.bounds).plus(*offset);
            concentrations += weight * range.greatest_distance_from_zero().powi(2);
            kept.push(Square {
                row,
                weight,
                offset: *offset,
                per_volume: true,
            });
            besides = 0.0;
        }
        let concentrations = concentrations / (self.volume.low * self.volume.low);
        besides += keep_convex(&mut kept, volume_axis, concentrations, self.volume);
        Squares {
            kept,
            by_axis,
            besides,
        }
    }

    /// The least that a deviation per volume is from zero, for a deviation of one sign over the box.
    fn ratio_from_zero(&self, row: &Row, offset: Interval) -> f64 {
        let positive = row.form.range(self.bounds).low + offset.low > 0.0;
        let deviation = if positive {
            row.form.plus_constant(offset.low)
        } else {
            row.form.plus_constant(offset.high).times(-1.0)
        };
        let volume = &self.rows.volume;
        let volume = volume.form.plus_constant(volume.offset(self.enclosed).high);
        least_ratio(&deviation, &volume, self.bounds).max(0.0)
    }
}

/// Sees to it that the squares are convex together over the box; what that costs the bound.
///
/// The curvature comes from a part φ of the volume axis's square, which must then count everywhere, also within its
/// enclosure of half-width `e`: `(x + δ)² ≥ ½x² − δ²` for `|δ| ≤ e`, so that part is half a square without an enclosure less `φ·q·e²`.
/// With φ = 2·Σ q·D²/V² / (`q_v`·V²) the condition at the head of [`super::certificate`] holds. Where φ would be more than a half, the
/// concentrations are divided by the greatest volume instead.
fn keep_convex(
    kept: &mut Few<Square<'_>>,
    volume_axis: Option<usize>,
    concentrations: f64,
    volume: Interval,
) -> f64 {
    let needed = volume_axis.map(|at| {
        (
            at,
            2.0 * concentrations / (kept.items[at].weight * volume.low * volume.low),
        )
    });
    if let Some((at, part)) = needed
        && part <= 0.5
    {
        let whole = kept.items[at];
        kept.items[at].weight = whole.weight * (1.0 - part);
        let (middle, half) = (whole.offset.middle(), whole.offset.width() / 2.0);
        let weight = 0.5 * part * whole.weight;
        kept.push(Square {
            weight,
            offset: Interval::new(middle, middle),
            ..whole
        });
        return -part * whole.weight * half * half;
    }
    for square in kept
        .as_mut_slice()
        .iter_mut()
        .filter(|square| square.per_volume)
    {
        square.weight /= volume.high * volume.high;
        square.per_volume = false;
    }
    0.0
}
