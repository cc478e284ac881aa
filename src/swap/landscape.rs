//! The cost of a candidate: how far it is from the standard, in noticeable steps.
//!
//! `cost(n) = Σ_axes w · ((p(n) − p*) / step)² + 0.01 for each line that moves from the standard's amount`. Every cost is
//! evaluated by the real balance. Forbidden are candidates that do not fit the cup or leave the temperature window.

use crate::balance::{
    Balance, Figures, Fill, Measurand, Prepared, PreparedLine, figures_with, flavour_figure, noticeable_step,
};
use crate::book::{Axis, Settings, TemperatureWindow};
use crate::optimiser::Landscape;

/// What a line costs that moves from the standard's amount, in squared steps.
const COST_OF_A_MOVE: f64 = 0.01;

/// How far beyond the window a standard may itself be served before the window is widened to it, K.
const WINDOW_SLACK: f64 = 0.5;

/// One axis on which a candidate is compared.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Target {
    slot: usize,
    value: f64,
    step: f64,
    weight: f64,
}

/// A line that may move.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Dimension {
    /// Index among the prepared lines.
    line: usize,
    /// One step, in units of the line.
    step: f64,
    /// The standard's amount, in units of the line.
    standard: f64,
}

/// The taste of every candidate against the standard.
#[derive(Clone, Debug)]
pub struct TasteLandscape {
    prepared: Prepared,
    targets: Vec<Target>,
    dimensions: Vec<Dimension>,
    window: TemperatureWindow,
}

impl TasteLandscape {
    /// The landscape of a prepared candidate. `moves` gives, for each line that may move, its index among the prepared
    /// lines, its step, and the standard's amount in the same unit. Axes that `plain` or the standard does not know are
    /// left out.
    pub fn new(
        settings: &Settings,
        standard: &Balance,
        plain: &Balance,
        prepared: Prepared,
        moves: &[(usize, f64, f64)],
    ) -> Self {
        let known = |balance: &Balance, axis: &Axis| balance.axis(axis).map_or(Some(0.0), |value| value.value);
        let targets = plain
            .axes
            .iter()
            .filter_map(|axis| {
                let value = known(standard, &axis.axis)?;
                axis.value?;
                let (step, weight) = noticeable_step(settings, &axis.axis, value);
                Some(Target { slot: slot(&plain.flavours, &axis.axis)?, value, step, weight })
            })
            .collect();
        let dimensions =
            moves.iter().map(|&(line, step, standard)| Dimension { line, step, standard }).collect();
        let asked = if prepared.setup.iced { settings.iced_window } else { settings.hot_window };
        let served = standard.figures.of[Measurand::ServingTemperature.slot()];
        let window = TemperatureWindow {
            from: asked.from.min(served - WINDOW_SLACK),
            to: asked.to.max(served + WINDOW_SLACK),
        };
        Self { prepared, targets, dimensions, window }
    }

    /// The figures of a candidate.
    pub fn figures(&self, point: &[i32]) -> Figures {
        figures_with(&self.prepared, &|line: &PreparedLine, at| {
            let moved = self.dimensions.iter().position(|dimension| dimension.line == at);
            match moved {
                Some(dimension) => f64::from(point[dimension]) * self.dimensions[dimension].step,
                None => line.count,
            }
        })
    }

    /// Why a candidate is forbidden, if it is.
    pub fn obstacle(&self, figures: &Figures) -> Option<Obstacle> {
        let setup = &self.prepared.setup;
        if let (Some(fill), Some(capacity)) = (figures.get(Measurand::Fill), setup.capacity) {
            let room = (capacity - setup.head_room) / capacity * 100.0;
            // An amount that fills to the rim ends exactly there.
            if fill > room + 0.01 {
                return Some(Obstacle::Cup { fill, room });
            }
        }
        let celsius = figures.get(Measurand::ServingTemperature)?;
        (!(self.window.from..=self.window.to).contains(&celsius))
            .then_some(Obstacle::Temperature { celsius, window: self.window })
    }

    fn moves(&self, point: &[i32]) -> f64 {
        let moved = self
            .dimensions
            .iter()
            .zip(point)
            .filter(|(dimension, at)| (f64::from(**at) * dimension.step - dimension.standard).abs() > 1e-9);
        COST_OF_A_MOVE * moved.count() as f64
    }

    /// Whether a line fills what the others leave, so that its own amount is no choice.
    pub fn fills_volume(&self) -> bool {
        self.prepared.lines.iter().any(|line| matches!(line.fill, Some(Fill::Volume(_))))
    }
}

/// Why a candidate is forbidden.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Obstacle {
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
}

fn slot(flavours: &[String], axis: &Axis) -> Option<usize> {
    let measurand = match axis {
        Axis::Flavour(name) => return flavours.iter().position(|known| known == name).map(flavour_figure),
        Axis::Sweetness => Measurand::Sweetness,
        Axis::TeaStrength => Measurand::TeaStrength,
        Axis::Creaminess => Measurand::Creaminess,
        Axis::Acidity => Measurand::Acidity,
        Axis::Body => Measurand::Body,
        Axis::Temperature => Measurand::ServingTemperature,
        Axis::Volume => Measurand::Volume,
    };
    Some(measurand.slot())
}

impl Landscape for TasteLandscape {
    fn cost(&self, point: &[i32]) -> Option<f64> {
        let figures = self.figures(point);
        if self.obstacle(&figures).is_some() {
            return None;
        }
        let taste: f64 = self
            .targets
            .iter()
            .map(|target| target.weight * ((figures.of[target.slot] - target.value) / target.step).powi(2))
            .sum();
        Some(taste + self.moves(point))
    }

    /// The moves that the box forces: a line whose standard amount lies outside its range has moved. Valid because every
    /// other term is a weighted square, hence not negative.
    fn floor(&self, low: &[i32], high: &[i32]) -> f64 {
        let forced = self.dimensions.iter().zip(low.iter().zip(high)).filter(|(dimension, (low, high))| {
            let range = f64::from(**low) * dimension.step - 1e-9..=f64::from(**high) * dimension.step + 1e-9;
            !range.contains(&dimension.standard)
        });
        COST_OF_A_MOVE * forced.count() as f64
    }
}
