//! The floor under the cost of a box of candidates: no allowed candidate of the box costs less.
//!
//! The floor holds for the real model, not for a linearised one. Masses are linear in the counts; volume, melted ice and the
//! amount that fills are enclosed between linear forms ([`enclosure`]), and every term of the cost is bounded through them
//! ([`rows`]). Two floors are taken, and the larger counts:
//!
//! - **By axis.** Each deviation is a ratio of linear forms, whose exact least over a box is at a vertex and is found in a few
//!   steps ([`form::least_ratio`]). Squared and summed over the axes: valid, because each term is bounded by its own least.
//! - **All at once.** The deviation times the volume is linear, so the cost is at least a convex function of the counts
//!   ([`certificate`]). This one holds up when many lines move, because it sees that one amount
//!   can't serve two axes.
//!
//! Where something should be small within a step of every axis (the cost, the sugar) the rows are limits, and the floor is that of
//! a linear program over them ([`crate::optimiser::LinearProgram`]) with the axes' own least on top.
//!
//! # Where the floor is weaker, not wrong
//!
//! - The temperature of a drink with ice left is its freezing point; its axis is left out there.
//! - Ice that meets a shaken drink in its cup, frozen toppings, and a purée that is frozen beside an amount that fills have no
//!   enclosure.
//! - An iced drink has no lower limit of temperature in the floor, and a level in the cup leaves ice and toppings out.
//! - Where no enclosure holds, only the lines that must have moved count.

mod certificate;
mod curved;
mod drink;
mod enclosure;
mod expansion;
mod filled;
mod filling;
mod filling_line;
mod form;
mod heat;
mod over_box;
mod rows;

pub(super) use rows::{Cap, Of, Term};

use crate::balance::{Component, HIGH_POTENCY_SLOTS, Prepared};
use crate::book::HighPotencySweetener;
use crate::optimiser::{MOST_VARIABLES, Range};

use certificate::Minorant;
use curved::curved;
use drink::{Lines, Over};
use enclosure::Regime;
use filled::FilledEnclosure;
use form::{Bounds, Interval};
use over_box::OverBox;
use rows::{Per, RowMaker, Rows};

/// What rounding may have done to a floor, in squared steps; of an amount to be made small, as a part of it.
const ROUNDING: f64 = 1e-10;

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
    /// Weight of the squared distance in the cost.
    pub(super) taste_weight: f64,
    /// What each line costs that moves.
    pub(super) move_cost: f64,
}

/// The floor of one question.
#[derive(Clone, Debug, Default)]
pub(super) struct Floor {
    model: Option<Model>,
    standard: Vec<f64>,
    taste_weight: f64,
    move_cost: f64,
    rounding: f64,
    stiffness: f64,
    weights: Vec<f64>,
}

#[derive(Clone, Debug)]
struct Model {
    enclosure: FilledEnclosure,
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
        let scale = model
            .as_ref()
            .map_or(1.0, |model| model.scale(input.ranges));
        Self {
            model,
            standard: input.standard.to_vec(),
            rounding: ROUNDING * scale,
            taste_weight: input.taste_weight,
            move_cost: input.move_cost,
            stiffness: (input.taste_weight * 300.0).max(input.move_cost * 300.0),
            weights,
        }
    }

    /// How much a step of a line weighs in the distance.
    pub(super) fn weight(&self, variable: usize) -> f64 {
        self.weights.get(variable).copied().unwrap_or(1.0)
    }

    /// The floor of a box; `hint` as in [`crate::optimiser::Landscape::floor_near`].
    pub(super) fn of(&self, low: &[i32], high: &[i32], hint: &mut [f64], rounds: usize) -> f64 {
        let moved = self.forced_moves(low, high);
        let unknown = moved - self.rounding;
        let Some(model) = &self.model else {
            return unknown;
        };
        let Some(enclosed) = model.enclosure.enclose(low, high) else {
            return unknown;
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
        if !(volume.low > 0.0 && volume.is_finite() && capacity.is_finite()) {
            return unknown;
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
        let divisor = rows
            .volume
            .form
            .plus_constant(rows.volume.offset(&enclosed).high);
        if let Some(row) = &rows.objective {
            let objective = row.form.plus_constant(row.offset(&enclosed).low);
            let small = over.smallest(&objective, limits.as_slice(), hint);
            if small == f64::INFINITY {
                return small;
            }
            return small - self.rounding;
        }
        let minorant = Minorant {
            squares: squares.kept.as_slice(),
            volume: &divisor,
            limits: limits.as_slice(),
            stiffness: self.stiffness,
            low,
            high,
            standard: &self.standard,
            move_cost: self.move_cost,
            rounds,
        };
        let all_at_once = minorant.bound(hint) + squares.besides;
        let floor = all_at_once.max(squares.by_axis + moved);
        floor - self.rounding - 1e-12 * floor.abs()
    }

    /// What rounding may have done to it.
    pub(super) fn rounding(&self) -> f64 {
        self.rounding
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

impl Model {
    fn new(input: &FloorInput<'_>) -> Option<Self> {
        if input.dimensions.len() > MOST_VARIABLES {
            return None;
        }
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
        let enclosure =
            FilledEnclosure::new(input.prepared, &lines, input.ranges, &reference, celsius)?;
        let has_ice =
            !lines.component(Over::InCup, Component::Ice).is_zero() || enclosure.drink.may_freeze();
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

    /// How large what should be small can be; 1 where nothing should.
    fn scale(&self, ranges: &[Range]) -> f64 {
        let Some(row) = &self.melted.objective else {
            return 1.0;
        };
        let (low, high): (Vec<i32>, Vec<i32>) =
            ranges.iter().map(|range| (range.low, range.high)).unzip();
        let range = row.form.range(&Bounds::new(&low, &high, Interval::ZERO));
        range.low.abs().max(range.high.abs())
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
