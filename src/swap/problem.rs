//! From a question to a search: the lines that may move, the targets, and what the drink must keep.

use crate::balance::{Balance, Fill, Measurand, Prepared, Slots, noticeable_step, prepare};
use crate::book::{Axis, Book, Place, RecipeId, Resolved, Settings, TemperatureWindow};
use crate::optimiser::{BranchAndBound, Outcome, Range};

use super::changes::{standard_amount, with_added_lines};
use super::demands::Demands;
use super::landscape::{Bounds, Dimension, HOT_WATER_PER_GRAM_OF_POWDER, Target, TasteLandscape};
use super::obstacle::powder_and_hot_water;
use super::question::Adjustable;
use super::watch::Watch;

/// How far beyond the window a standard may itself be served before the window is widened to it, K.
const WINDOW_SLACK: f64 = 0.5;

/// What a drink with ice in it may be colder than ice that melts in water, K: far more than its sugars make it.
const ICE_KEEPS_TO: f64 = 10.0;

/// How much cooler than the hottest line water may be and still dissolve powders, K (assumed).
const HOT_WITHIN: f64 = 20.0;

/// A search that is ready to run.
#[derive(Clone, Debug)]
pub struct Problem {
    /// What every candidate costs.
    pub landscape: TasteLandscape,
    /// The lines that may move, in the order of the variables.
    pub adjustable: Vec<Adjustable>,
    /// The lines of the candidate, those that may be added among them.
    pub lines: Resolved,
}

/// What a problem is made of.
pub(super) struct ProblemInput<'question> {
    pub(super) book: &'question Book,
    pub(super) recipe: &'question RecipeId,
    /// The drink whose taste is aimed at.
    pub(super) standard: &'question Balance,
    /// The drink as it is before anything moves.
    pub(super) start: &'question Balance,
    pub(super) adjustable: Vec<Adjustable>,
    pub(super) demands: &'question Demands,
}

impl Problem {
    pub(super) fn new(input: &ProblemInput<'_>) -> Self {
        let ProblemInput {
            book,
            standard,
            start,
            adjustable,
            demands,
            ..
        } = input;
        let lines = with_added_lines(&start.resolved, adjustable);
        let place = Place::Recipe(input.recipe.clone(), "lines");
        let mut slots = Slots {
            flavours: start.flavours.clone(),
            sweeteners: Vec::new(),
        };
        let mut prepared = prepare(book, &lines, &mut slots, &place);
        limit_fill(&mut prepared, demands);
        let mut kept: Vec<Adjustable> = Vec::new();
        let mut dimensions = Vec::new();
        for adjustable in adjustable {
            if let Some(line) = prepared.position(&adjustable.line.id) {
                let standard = standard_amount(&standard.resolved, adjustable);
                dimensions.push(Dimension {
                    line,
                    step: adjustable.step,
                    standard,
                    range: adjustable.range,
                });
                kept.push(adjustable.clone());
            }
        }
        let targets = targets(&book.settings, standard, start);
        let bounds = bounds(&book.settings, standard, &prepared, demands);
        let landscape = TasteLandscape::new(prepared, targets, dimensions, bounds);
        Self {
            landscape,
            adjustable: kept,
            lines,
        }
    }

    /// The whole numbers that each line may take.
    pub fn ranges(&self) -> Vec<Range> {
        self.landscape.ranges()
    }
}

/// Boxes between two looks at whether the search is still wanted: about a millisecond.
const BETWEEN_LOOKS: u64 = 256;

/// Runs a search to its end, its limit or until it is no longer wanted; the problem never has more variables than a search
/// holds.
pub(super) fn run(
    landscape: &TasteLandscape,
    limit: u64,
    known: Option<&[i32]>,
    watch: &Watch,
) -> Option<Outcome> {
    let mut search = BranchAndBound::new(landscape, &landscape.ranges()).ok()?;
    if let Some(point) = known {
        search.offer(point);
    }
    let mut left = limit;
    while left > 0 && !watch.is_stopped() {
        let boxes = left.min(BETWEEN_LOOKS);
        let has_ended = search.advance(boxes);
        watch.count_boxes(boxes);
        left -= boxes;
        if has_ended {
            break;
        }
    }
    Some(search.outcome())
}

/// The axes that both drinks know, with what the standard aims at.
fn targets(settings: &Settings, standard: &Balance, start: &Balance) -> Vec<Target> {
    let target = |axis: &crate::balance::AxisValue| {
        axis.value?;
        let value = standard.aim_on(&axis.axis)?;
        let (step, mut weight) = noticeable_step(settings, &axis.axis, value);
        if axis.axis == Axis::Temperature && standard.iced != start.iced {
            weight = 0.0;
        }
        let slot = Target::slot_of(&start.flavours, &axis.axis)?;
        Some(Target {
            axis: axis.axis.clone(),
            slot,
            value,
            step,
            weight,
            limit: None,
        })
    };
    start.axes.iter().filter_map(target).collect()
}

fn bounds(
    settings: &Settings,
    standard: &Balance,
    prepared: &Prepared,
    demands: &Demands,
) -> Bounds {
    let asked = if prepared.setup.iced {
        settings.iced_window
    } else {
        settings.hot_window
    };
    let mut window = asked;
    if standard.iced == prepared.setup.iced {
        let served = standard.figures.of[Measurand::ServingTemperature.slot()];
        window.from = window.from.min(served - WINDOW_SLACK);
        window.to = window.to.max(served + WINDOW_SLACK);
    }
    if demands.least_ice_left.is_some() {
        // Where ice is left the drink is as cold as its freezing point.
        window.to = window.to.min(0.0);
        window.from = window.from.min(-ICE_KEEPS_TO);
    }
    if let Some(TemperatureWindow { from, to }) = demands.temperature {
        window = TemperatureWindow { from, to };
    }
    let hottest = prepared
        .lines
        .iter()
        .map(|line| line.celsius)
        .fold(f64::NEG_INFINITY, f64::max);
    let hot_from = hottest - HOT_WITHIN;
    let poured_hot = prepared.setup.iced && hottest >= 60.0;
    // A shop that gets its powder dissolved in less needs no more.
    let there = dissolving(prepared, hot_from);
    Bounds {
        window,
        sugar_per_100_ml: demands.most_sugar_per_100_ml,
        energy_kj: demands.most_energy_kj,
        cost: demands.most_cost,
        ice_left: demands.least_ice_left,
        hot_water: there
            .filter(|_| poured_hot)
            .map(|ratio| ratio.min(HOT_WATER_PER_GRAM_OF_POWDER)),
        hot_from,
    }
}

/// A cup that is to be filled less has more head room. An amount that fills to the rim ends at the rim all the same.
fn limit_fill(prepared: &mut Prepared, demands: &Demands) {
    let fills_to_rim = prepared
        .lines
        .iter()
        .any(|line| line.fill == Some(Fill::Rim));
    if let (Some(most), Some(capacity), false) =
        (demands.most_fill, prepared.setup.capacity, fills_to_rim)
    {
        let head_room = capacity * (1.0 - most / 100.0);
        prepared.setup.head_room = prepared.setup.head_room.max(head_room);
    }
}

/// Grams of hot water for a gram of powder, before anything moves; `None` without powder.
fn dissolving(prepared: &Prepared, hot_from: f64) -> Option<f64> {
    let (powder, hot) = powder_and_hot_water(prepared, hot_from, |at| prepared.lines[at].count);
    (powder > 0.0).then(|| hot / powder)
}
