//! The floor under the cost of a box of candidates: no allowed candidate of the box costs less.
//!
//! The floor holds for the real model, not for a linearised one. Masses are linear in the counts; volume, melted ice and the
//! amount that fills are enclosed between linear forms ([`enclosure`]), and every term of the cost is bounded through them
//! ([`rows`]). Two floors are taken, and the larger counts:
//!
//! - **By axis.** Each deviation is a ratio of linear forms, whose exact least over a box is at a vertex and is found in a few
//!   steps ([`form::least_ratio`]). Squared and summed over the axes: valid, because each term is bounded by its own least.
//! - **All at once.** The deviation times the volume is linear, so the cost is at least a convex quadratic over the square of the
//!   greatest volume of the box ([`certificate`]). This one holds up when many lines move, because it sees that one amount
//!   can't serve two axes.
//!
//! # Where the floor is weaker, not wrong
//!
//! - The temperature of a drink with ice left is its freezing point; its axis is left out there.
//! - Sweetness with high-potency sweeteners follows a curve: it is monotone in the concentrations, so its range over the box
//!   counts, by axis only.
//! - An iced drink has no lower limit of temperature in the floor, and a level in the cup leaves ice and toppings out.
//! - Where no enclosure holds, only the lines that must have moved count.

mod certificate;
mod curved;
mod drink;
mod enclosure;
mod expansion;
mod filling;
mod form;
mod heat;
mod rows;

pub(super) use rows::{Cap, Of, Term};

use crate::balance::{Component, HIGH_POTENCY_SLOTS, Prepared};
use crate::book::HighPotencySweetener;
use crate::optimiser::{Coefficients, LinearProgram, MOST_VARIABLES, Range};

use certificate::{Minorant, Square};
use curved::{Curved, curved};
use drink::{Lines, Over};
use enclosure::{Enclosed, Enclosure, Regime};
use form::{Bounds, Form, Interval, least_ratio};
use rows::{Per, Row, RowMaker, Rows};

/// What rounding may have done to a floor, in squared steps.
const ROUNDING: f64 = 1e-10;

/// Most rows that one box looks at.
const MOST_ROWS: usize = 40;

/// What a candidate should make small besides the taste.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Small {
    /// The cost of the ingredients.
    Cost,
    /// The sugars of the whole drink.
    Sugar,
}

/// What the floor has to know of a question.
pub(super) struct FloorInput<'question> {
    pub(super) prepared: &'question Prepared,
    /// Index among the prepared lines and step of each line that may move.
    pub(super) dimensions: &'question [(usize, f64)],
    pub(super) ranges: &'question [Range],
    /// The standard's amounts, in steps.
    pub(super) standard: &'question [f64],
    pub(super) terms: &'question [Term],
    pub(super) caps: &'question [Cap],
    pub(super) small: Option<Small>,
    /// What every candidate costs besides.
    pub(super) constant: f64,
    /// Weight of the squared distance in the cost.
    pub(super) taste_weight: f64,
    /// What each line costs that moves.
    pub(super) move_cost: f64,
}

/// The floor of one question.
#[derive(Clone, Debug)]
pub(super) struct Floor {
    model: Option<Model>,
    standard: Vec<f64>,
    taste_weight: f64,
    move_cost: f64,
    constant: f64,
    stiffness: f64,
    weights: Vec<f64>,
}

#[derive(Clone, Debug)]
struct Model {
    enclosure: Enclosure,
    melted: Rows,
    partly: Rows,
    bed: Option<Rows>,
    sweeteners: [Option<HighPotencySweetener>; HIGH_POTENCY_SLOTS],
}

impl Floor {
    pub(super) fn new(input: &FloorInput<'_>) -> Self {
        let model = Model::new(input);
        let count = input.dimensions.len();
        let weights = (0..count)
            .map(|at| model.as_ref().map_or(1.0, |model| model.weight(at)))
            .collect();
        let steepest = model
            .as_ref()
            .and_then(|model| model.melted.objective.as_ref())
            .map_or(0.0, |row| {
                row.form
                    .per
                    .iter()
                    .take(count)
                    .map(|per| per.abs())
                    .fold(0.0, f64::max)
            });
        Self {
            model,
            standard: input.standard.to_vec(),
            constant: input.constant,
            taste_weight: input.taste_weight,
            move_cost: input.move_cost,
            stiffness: (input.taste_weight * 300.0)
                .max(steepest * 1000.0)
                .max(input.move_cost * 300.0),
            weights,
        }
    }

    /// How much a step of a line weighs in the distance.
    pub(super) fn weight(&self, variable: usize) -> f64 {
        self.weights.get(variable).copied().unwrap_or(1.0)
    }

    /// The floor of a box; `hint` as in [`crate::optimiser::Landscape::floor_near`].
    pub(super) fn of(&self, low: &[i32], high: &[i32], hint: &mut [f64], rounds: usize) -> f64 {
        let moved = self.constant + self.forced_moves(low, high);
        let Some(model) = &self.model else {
            return moved - ROUNDING;
        };
        let Some(enclosed) = model.enclosure.enclose(low, high) else {
            return moved - ROUNDING;
        };
        let rows = match (enclosed.regime, &model.bed) {
            (Regime::Melted, _) => &model.melted,
            (Regime::Bed, Some(bed)) => bed,
            (Regime::Partly | Regime::Bed, _) => &model.partly,
        };
        let bounds = Bounds::new(low, high, Interval::ZERO);
        let volume = rows
            .volume
            .form
            .range(&bounds)
            .plus(rows.volume.offset(&enclosed));
        let capacity = rows
            .capacity
            .form
            .range(&bounds)
            .plus(rows.capacity.offset(&enclosed))
            .high;
        if volume.low <= 0.0 {
            return moved - ROUNDING;
        }
        let over = OverBox {
            rows,
            enclosed: &enclosed,
            bounds: &bounds,
            volume,
            capacity,
        };
        let curved = curved(rows, model.sweeteners, &enclosed, &bounds, volume);
        let Some(limits) = over.limits(&curved) else {
            return f64::INFINITY;
        };
        let squares = over.squares(&curved, self.taste_weight);
        let besides = self.constant + squares.besides;
        let divisor = rows
            .volume
            .form
            .plus_constant(rows.volume.offset(&enclosed).high);
        if let Some(row) = &rows.objective {
            let objective = row.form.plus_constant(row.offset(&enclosed).low);
            let small = smallest(&objective, limits.as_slice(), &bounds, hint);
            if small == f64::INFINITY {
                return small;
            }
            let floor = small + moved + squares.by_axis;
            return floor - ROUNDING - 1e-12 * floor.abs();
        }
        let minorant = Minorant {
            squares: squares.kept.as_slice(),
            volume: &divisor,
            limits: limits.as_slice(),
            objective: None,
            stiffness: self.stiffness,
            low,
            high,
            standard: &self.standard,
            move_cost: self.move_cost,
            rounds,
        };
        let all_at_once = minorant.bound(hint) + besides;
        let floor = all_at_once.max(squares.by_axis + moved);
        floor - ROUNDING - 1e-12 * floor.abs()
    }

    /// Whether it rests on enclosures of the drink.
    pub(super) fn is_modelled(&self) -> bool {
        self.model.is_some()
    }

    fn forced_moves(&self, low: &[i32], high: &[i32]) -> f64 {
        let forced =
            self.standard
                .iter()
                .zip(low.iter().zip(high))
                .filter(|(standard, (low, high))| {
                    !(f64::from(**low) - 1e-9..=f64::from(**high) + 1e-9).contains(*standard)
                });
        self.move_cost * forced.count() as f64
    }
}

/// The least of what should be small, under the limits of the box.
fn smallest(objective: &Form, limits: &[(&Row, f64)], bounds: &Bounds, hint: &mut [f64]) -> f64 {
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
        low: &bounds.low[..hint.len()],
        high: &bounds.high[..hint.len()],
    };
    objective.constant + program.bound(hint)
}

/// A list on the stack: a search looks at millions of boxes.
struct Few<T> {
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

    fn as_slice(&self) -> &[T] {
        &self.items[..self.count]
    }

    fn as_mut_slice(&mut self) -> &mut [T] {
        &mut self.items[..self.count]
    }
}

/// One box, and what encloses the drink over it.
struct OverBox<'search> {
    rows: &'search Rows,
    enclosed: &'search Enclosed,
    bounds: &'search Bounds,
    volume: Interval,
    /// Greatest heat capacity, in J/K.
    capacity: f64,
}

/// The distance over a box.
struct Squares<'search> {
    kept: Few<Square<'search>>,
    /// Sum of what each axis costs at least.
    by_axis: f64,
    /// What the squares leave out, with its sign.
    besides: f64,
}

impl<'search> OverBox<'search> {
    /// The limits that part of the box breaks; none if all of it breaks one.
    fn limits(&self, curved: &'search Curved) -> Option<Few<(&'search Row, f64)>> {
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

    fn squares(&self, curved: &'search Curved, taste_weight: f64) -> Squares<'search> {
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
/// With φ = 2·Σ q·D²/V² / (`q_v`·V²) the condition at the head of [`certificate`] holds. Where φ would be more than a half, the
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

impl Model {
    fn new(input: &FloorInput<'_>) -> Option<Self> {
        let filling = input
            .prepared
            .lines
            .iter()
            .position(|line| line.fill.is_some());
        let lines = Lines::new(input.prepared, input.dimensions, filling);
        let celsius = input
            .terms
            .iter()
            .find(|term| term.of == Of::Temperature)
            .map_or(20.0, |term| term.value);
        let mut reference: Vec<f64> = input
            .standard
            .iter()
            .zip(input.ranges)
            .map(|(at, range)| at.clamp(f64::from(range.low), f64::from(range.high.max(range.low))))
            .collect();
        reference.push(0.0);
        let enclosure = Enclosure::new(input.prepared, &lines, input.ranges, &reference, celsius)?;
        let has_ice =
            !lines.component(Over::InCup, Component::Ice).is_zero() || enclosure.may_freeze();
        let objective = input.small.map(|small| match small {
            Small::Cost => lines.component(Over::Whole, Component::Cost),
            Small::Sugar => lines.component(Over::Whole, Component::Sugars),
        });
        let rows = |regime| {
            let maker = RowMaker {
                prepared: input.prepared,
                lines: &lines,
                enclosure: &enclosure,
                regime,
            };
            maker.rows(input.terms, input.caps, objective.as_ref(), has_ice)
        };
        Some(Self {
            melted: rows(Regime::Melted),
            partly: rows(Regime::Partly),
            bed: enclosure.has_bed().then(|| rows(Regime::Bed)),
            sweeteners: input.prepared.setup.sweeteners,
            enclosure,
        })
    }

    /// Root of the curvature of the distance along one line.
    fn weight(&self, variable: usize) -> f64 {
        let of = |per: Per| match per {
            Per::Volume => 300.0,
            Per::HeatCapacity | Per::One => 1.0,
        };
        let squares = self.melted.squares.iter();
        let curvature: f64 = squares
            .map(|square| square.weight * (square.row.form.per[variable] / of(square.per)).powi(2))
            .sum();
        curvature.sqrt().max(1e-3)
    }
}
