//! Shifts of cups, drawn and held to the standard.

use rayon::prelude::*;

use super::aim::{Aim, HeldTo, held, is_level, is_there};
use super::counter::Counter;
use super::drawn::{DrawnCause, drawn_causes};
use super::normal::NormalDraws;
use super::remedy::{Helps, Trial, trials};
use super::share::Share;
use crate::balance::{Balance, balance_version};
use crate::book::{Axis, Book, Recipe, VersionId};

/// How many cups stand for the distribution of an axis.
pub const QUANTILES: usize = 100;

/// Which cups are drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CupsQuestion {
    /// Equal seeds give equal cups.
    pub seed: u64,
    /// How many shifts.
    pub shifts: usize,
    /// How many cups in each.
    pub per_shift: usize,
    /// The part of the scatter that there is: 1 as the counter has it, 0 for none.
    pub scatter: f64,
}

impl Default for CupsQuestion {
    /// Enough cups that their number adds less than half a cup of a hundred to the doubt, and enough shifts to tell a good one from a
    /// bad one.
    fn default() -> Self {
        Self {
            seed: 1,
            shifts: 50,
            per_shift: 100,
            scatter: 1.0,
        }
    }
}

/// What the cups of a drink are on one axis.
#[derive(Clone, Debug, PartialEq)]
pub struct AxisCups {
    /// The axis.
    pub axis: Axis,
    /// The value that they are held to, in the unit of the axis; `None` when it is not known.
    pub aim: Option<f64>,
    /// The noticeable step around it.
    pub step: f64,
    /// Whether the axis counts; not when it is not known, or meant to differ.
    pub counts: bool,
    /// How far the recipe is off without any scatter, in steps.
    pub nominal: Option<f64>,
    /// A hundred cups that stand for all of them, from the lowest to the highest, in steps: the middles of a hundred equal parts.
    pub quantiles: Vec<f64>,
    /// The share within a step.
    pub within: Option<Share>,
    /// The shares more than a step below and above.
    pub off: [f64; 2],
}

/// The cups of a drink.
#[derive(Clone, Debug, PartialEq)]
pub struct Cups {
    /// What was drawn.
    pub question: CupsQuestion,
    /// What they are held to.
    pub held_to: HeldTo,
    /// Axis by axis.
    pub axes: Vec<AxisCups>,
    /// The share that is within a step on every axis that counts; `None` when no axis is known.
    pub within: Option<Share>,
    /// The same of one shift in ten, at most, and of nine in ten: how much one shift differs from another.
    pub shifts: Option<[f64; 2]>,
    /// Whether the recipe without any scatter is within a step on every axis that counts.
    pub recipe_is_level: bool,
    /// What varies, and when, what matters most first.
    pub drawn: Vec<DrawnCause>,
    /// What would help, the best first. Only what helps more cups than chance would.
    pub helps: Vec<Helps>,
    /// The drink when nothing scatters.
    pub balance: Balance,
}

impl Cups {
    /// Axes that count for the shop and are not known, so that the share may be too high.
    pub fn not_known(&self) -> impl Iterator<Item = &Axis> {
        let axes = self.axes.iter();
        axes.filter(|axis| axis.aim.is_none())
            .map(|axis| &axis.axis)
    }
}

/// The cups of a version; `None` when there is no such version, nothing in its cup, or when it was asked to stop.
pub fn draw_cups(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    question: CupsQuestion,
    is_stopped: &(dyn Fn() -> bool + Sync),
) -> Option<Cups> {
    let balance = balance_version(book, recipe, version).filter(is_there)?;
    let held = held(book, recipe, version, &balance);
    let counter = Counter::of(book, &balance.resolved);
    let draws = Draws::of(question, counter.draws());
    let made = draws.made(&counter, &held.aims, is_stopped)?;
    let drawn = drawn_causes(book, &balance, &held.aims);
    let inside = made.inside(&held.aims);
    let mut helps = Vec::new();
    for Trial { remedy, counter } in trials(book, &balance, &held, &drawn, &counter) {
        let with = match &counter {
            Some(counter) => draws.made(counter, &held.aims, is_stopped)?,
            None => made.brought_level(&held.aims),
        };
        helps.extend(Helps::compared(remedy, &inside, &with.inside(&held.aims)));
    }
    helps.sort_by(|a, b| b.gain.value.total_cmp(&a.gain.value));
    let counts = per_shift(&inside, question.per_shift);
    let is_known = held.aims.iter().any(Aim::counts);
    Some(Cups {
        question,
        axes: made.axes(&held.aims, question),
        within: is_known.then(|| Share::of(&counts, question.per_shift)),
        shifts: is_known.then(|| low_and_high(counts, question.per_shift)),
        recipe_is_level: is_level(&held.aims),
        drawn,
        held_to: held.to,
        helps,
        balance,
    })
}

/// How many of the cups of each shift are in.
fn per_shift(inside: &[bool], per_shift: usize) -> Vec<usize> {
    let shifts = inside.chunks(per_shift.max(1));
    shifts
        .map(|shift| shift.iter().filter(|inside| **inside).count())
        .collect()
}

/// The share that one shift in ten does not reach, and that which one in ten exceeds.
fn low_and_high(mut counts: Vec<usize>, per_shift: usize) -> [f64; 2] {
    counts.sort_unstable();
    let at = |tenth: usize| {
        let place = counts.len().saturating_sub(1) * tenth / 10;
        counts.get(place).copied().unwrap_or(0) as f64 / per_shift.max(1) as f64
    };
    [at(1), at(9)]
}

/// The draws of all shifts.
struct Draws {
    question: CupsQuestion,
    count: usize,
}

/// Cups that were made: how far each is off on each axis, cup by cup in the order of the axes.
struct Made {
    axes: usize,
    steps: Vec<f64>,
}

impl Draws {
    fn of(question: CupsQuestion, count: usize) -> Self {
        Self { question, count }
    }

    /// Makes the cups of a counter; `None` when it was asked to stop.
    fn made(
        &self,
        counter: &Counter,
        aims: &[Aim],
        is_stopped: &(dyn Fn() -> bool + Sync),
    ) -> Option<Made> {
        let shifts: Option<Vec<Vec<f64>>> = (0..self.question.shifts)
            .into_par_iter()
            .map(|shift| (!is_stopped()).then(|| self.shift(shift, counter, aims)))
            .collect();
        Some(Made {
            axes: aims.len(),
            steps: shifts?.concat(),
        })
    }

    fn shift(&self, shift: usize, counter: &Counter, aims: &[Aim]) -> Vec<f64> {
        let mut draws = NormalDraws::new(self.question.seed, shift as u64);
        let mut of_shift = vec![0.0; self.count];
        let scatter = |values: &mut [f64]| {
            for value in values {
                *value *= self.question.scatter;
            }
        };
        draws.fill(&mut of_shift);
        scatter(&mut of_shift);
        let (mut of_cup, mut times) = (vec![0.0; self.count], Vec::new());
        let mut steps = Vec::with_capacity(self.question.per_shift * aims.len());
        for _ in 0..self.question.per_shift {
            draws.fill(&mut of_cup);
            scatter(&mut of_cup);
            let figures = counter.cup(&of_shift, &of_cup, &mut times);
            steps.extend(aims.iter().map(|aim| aim.steps(&figures).unwrap_or(0.0)));
        }
        steps
    }
}

impl Made {
    fn cups(&self) -> impl Iterator<Item = &[f64]> {
        self.steps.chunks(self.axes.max(1))
    }

    /// Of each cup whether it is within a step on every axis that counts.
    fn inside(&self, aims: &[Aim]) -> Vec<bool> {
        let is_inside = |cup: &[f64]| {
            let mut axes = aims.iter().zip(cup);
            axes.all(|(aim, steps)| !aim.counts() || steps.abs() <= 1.0)
        };
        self.cups().map(is_inside).collect()
    }

    /// The same cups of a recipe that is off by nothing on any axis.
    fn brought_level(&self, aims: &[Aim]) -> Self {
        let level = |cup: &[f64]| -> Vec<f64> {
            let axes = aims.iter().zip(cup);
            axes.map(|(aim, steps)| steps - aim.nominal.unwrap_or(0.0))
                .collect()
        };
        Self {
            axes: self.axes,
            steps: self.cups().flat_map(level).collect(),
        }
    }

    fn axes(&self, aims: &[Aim], question: CupsQuestion) -> Vec<AxisCups> {
        let axes = aims.iter().enumerate();
        axes.map(|(at, aim)| {
            let steps: Vec<f64> = self.cups().map(|cup| cup[at]).collect();
            let is_known = aim.value.is_some();
            let inside: Vec<bool> = steps.iter().map(|steps| steps.abs() <= 1.0).collect();
            let counts = per_shift(&inside, question.per_shift);
            let share = |is_off: &dyn Fn(f64) -> bool| {
                let off = steps.iter().filter(|steps| is_off(**steps)).count();
                off as f64 / steps.len().max(1) as f64
            };
            AxisCups {
                axis: aim.axis.clone(),
                aim: aim.value,
                step: aim.step,
                counts: aim.counts(),
                nominal: aim.nominal,
                within: is_known.then(|| Share::of(&counts, question.per_shift)),
                off: if is_known {
                    [share(&|steps| steps < -1.0), share(&|steps| steps > 1.0)]
                } else {
                    [0.0; 2]
                },
                quantiles: if is_known {
                    quantiles(steps)
                } else {
                    Vec::new()
                },
            }
        })
        .collect()
    }
}

/// The middles of a hundred equal parts.
fn quantiles(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_unstable_by(f64::total_cmp);
    let middle = |part: usize| {
        let place = (2 * part + 1) * values.len() / (2 * QUANTILES);
        values
            .get(place.min(values.len().saturating_sub(1)))
            .copied()
    };
    (0..QUANTILES).filter_map(middle).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hundred_cups_stand_for_all_of_them() {
        let found = quantiles((0..1000).rev().map(f64::from).collect());
        assert_eq!(found.len(), QUANTILES);
        assert!((found[0] - 5.0).abs() < 1e-12 && (found[99] - 995.0).abs() < 1e-12);
        assert_eq!(quantiles(vec![2.0]).len(), QUANTILES);
    }

    #[test]
    fn the_worst_and_the_best_shift_in_ten_are_told() {
        let counts: Vec<usize> = (1..=11).rev().collect();
        let [low, high] = low_and_high(counts, 100);
        assert!((low - 0.02).abs() < 1e-12 && (high - 0.10).abs() < 1e-12);
    }
}
