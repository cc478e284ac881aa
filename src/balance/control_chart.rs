//! The control chart of a measure: whether it still doses as it did, day by day (ISO 7870-2).
//!
//! The readings of a day with one ingredient are a subgroup. A chart has two halves: the mean of one use, and how far the readings
//! of a day lie apart. The spread within days gives the limits of both, three standard deviations from the centre:
//!
//! - days of equally many readings, each of equally many uses, by their ranges: `x̄ ± A2·R̄`, and `D3·R̄` to `D4·R̄`;
//! - days of two readings or more that differ in that, by their standard deviations: `x̄ ± 3·σ/√N` with `N` uses a day, and `B3·c4·σ`
//!   to `B4·c4·σ`, where `σ` of one use is the mean of `s/c4`;
//! - days of a single reading at first, by the difference from the day before: `σ` is the mean of `|x − x′|/√(1/N + 1/N′)`, over `d2/√2`
//!   for two values, and its limit `D4` times what is expected (for equal `N` that is `x̄ ± 2.66·R̄m` and `3.267·R̄m`).
//!
//! No spread is smaller than the digits of the scale let it be: a reading is uncertain by `step/√12`, with the step that its readings
//! show (JCGM 100:2008, F.2.2.1).
//!
//! Readings of `n` uses weighed together have `1/√n` of the spread of one use, as in [`Measure::calibration`].
//!
//! Limits rest on the first days and on every later one but the last that lies within those before it, so that a change neither
//! moves nor widens them: a measure that was set anew has its readings begin anew ([`since_day`]). What the standard counts as a signal: a point outside the limits; [`RUN`] days in a row on one side of the centre; [`RUN`] days in a row
//! that each rise, or each fall (ISO 7870-2:2013, 8; values from memory).
//!
//! Limitations: limits from fewer than [`FIRM`] days are rough, and find more differences than there are. What changes from one day
//! to the next and not within a day (a powder that takes up water) is a signal: it is a change of the dose. A reading of a volume
//! counts as that of as much water.

use super::calibration::{self, dates, of};
use super::published::control_limits::{LIMITS, RangeConstants, deviation_limits, mean_deviation};
use crate::book::{IngredientId, Measure, Reading};
use crate::quantity::Uncertain;

/// So many days in a row on one side, or rising or falling, are a signal.
pub const RUN: usize = 7;

/// From so many days on limits are firm (ISO 7870-2 asks for twenty to twenty-five; value from memory).
pub const FIRM: usize = 20;

/// Fewest days that limits rest on: with several readings a day, and with one.
const FEWEST_DAYS: (usize, usize) = (3, 5);

/// Most readings a day whose range is used: of more, ends alone tell little (ISO 7870-2; value from memory).
const MOST_IN_RANGE: usize = 10;

/// What the spread is read off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ChartKind {
    /// The range of each day.
    Range,
    /// The standard deviation of each day.
    Deviation,
    /// The difference of a day from the one before.
    MovingRange,
}

/// What a day shows that chance hardly does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Signal {
    /// The mean lies outside its limits.
    Outside,
    /// It is the last of so many in a row on one side.
    OneSide,
    /// It is the last of so many in a row that each rise, or each fall.
    Trend,
    /// The readings of the day lie too far apart, or are suspiciously alike.
    Spread,
}

impl Signal {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Outside => "outside",
            Self::OneSide => "one-side",
            Self::Trend => "trend",
            Self::Spread => "spread",
        }
    }
}

/// A figure with the limits that chance keeps within.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limited {
    /// The figure, g a use.
    pub value: f64,
    /// The lower and the upper limit, g a use.
    pub limits: [f64; 2],
}

impl Limited {
    /// Whether it is outside.
    pub fn is_outside(&self) -> bool {
        self.value < self.limits[0] || self.value > self.limits[1]
    }
}

/// One day of a chart.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartDay {
    /// The day, `2026-05-04`.
    pub date: String,
    /// How many readings.
    pub readings: usize,
    /// Uses that were weighed.
    pub uses: u32,
    /// Grams of one use.
    pub mean: Limited,
    /// How far the readings lie apart, as the kind of chart has it; `None` where the day says nothing of it.
    pub spread: Option<Limited>,
    /// Whether the limits rest on it.
    pub is_base: bool,
    /// What it shows.
    pub signals: Vec<Signal>,
}

/// The chart of a measure with one ingredient, or with water.
#[derive(Clone, Debug, PartialEq)]
pub struct ControlChart {
    /// What was measured; `None` for water.
    pub ingredient: Option<IngredientId>,
    /// What the spread is read off.
    pub kind: ChartKind,
    /// Grams of one use, the mean of the days that the limits rest on.
    pub centre: f64,
    /// Standard deviation of one use, g.
    pub scatter: f64,
    /// The days, the first one first.
    pub days: Vec<ChartDay>,
}

/// How a measure has changed, as far as its last day shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct Shift {
    /// What the last day shows.
    pub signal: Signal,
    /// From this day on.
    pub since: String,
    /// Grams of one use before: those that the limits rest on.
    pub before: Uncertain,
    /// Grams of one use from that day on.
    pub now: Uncertain,
}

impl Shift {
    /// The change as a part of what it was before.
    pub fn relative(&self) -> f64 {
        self.now.value / self.before.value - 1.0
    }
}

/// Why there is no chart yet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TooFewDays {
    /// What was measured; `None` for water.
    pub ingredient: Option<IngredientId>,
    /// Days with readings.
    pub days: usize,
    /// How many it takes.
    pub wanted: usize,
}

/// The charts of a measure, one for each ingredient that it was weighed with on two days or more, in the order of the readings.
pub fn control_charts(measure: &Measure) -> Vec<Result<ControlChart, TooFewDays>> {
    let mut weighed: Vec<Option<&IngredientId>> = Vec::new();
    for reading in dated(measure) {
        if !weighed.contains(&reading.weighed()) {
            weighed.push(reading.weighed());
        }
    }
    let charts = weighed.into_iter().map(|one| chart(measure, one));
    charts
        .filter(|chart| {
            chart
                .as_ref()
                .map_or_else(|few| few.days, |chart| chart.days.len())
                > 1
        })
        .collect()
}

/// Readings that say something and when.
fn dated(measure: &Measure) -> impl Iterator<Item = &Reading> {
    let readings = measure.readings.iter();
    readings.filter(|reading| reading.is_usable() && reading.date.is_some())
}

fn chart(measure: &Measure, ingredient: Option<&IngredientId>) -> Result<ControlChart, TooFewDays> {
    let readings: Vec<&Reading> = of(measure, ingredient)
        .filter(|reading| reading.date.is_some())
        .collect();
    let days: Vec<Day> = dates(measure, ingredient)
        .into_iter()
        .map(|date| Day::of(&calibration::Day::of(measure, ingredient, date), &readings))
        .collect();
    let kind = kind_of(&days);
    let fewest = match kind {
        ChartKind::MovingRange => FEWEST_DAYS.1,
        ChartKind::Range | ChartKind::Deviation => FEWEST_DAYS.0,
    };
    let few = || TooFewDays {
        ingredient: ingredient.cloned(),
        days: days.len(),
        wanted: fewest + 1,
    };
    if days.len() <= fewest {
        return Err(few());
    }
    let range = RangeConstants::of(match kind {
        ChartKind::Range => days.first().map_or(2, |day| count_of(day.readings)),
        ChartKind::Deviation | ChartKind::MovingRange => 2,
    });
    let least_uses = readings.iter().map(|reading| reading.uses).min();
    let least_uses = f64::from(least_uses.unwrap_or(1).max(1));
    let least_scatter = scale_step(&readings) / 12f64.sqrt() / least_uses.sqrt();
    let read_off = (range, least_scatter);
    let mut base: Vec<bool> = (0..days.len()).map(|at| at < fewest).collect();
    let mut limits = Limits::of(kind, read_off, &days, &base).ok_or_else(few)?;
    for at in fewest..days.len() - 1 {
        base[at] = !limits.is_outside(&days, at);
        limits = Limits::of(kind, read_off, &days, &base).ok_or_else(few)?;
    }
    let charted = (0..days.len()).map(|at| ChartDay {
        date: days[at].date.to_owned(),
        readings: days[at].readings,
        uses: days[at].uses,
        mean: limits.mean(&days[at]),
        spread: limits.spread(&days, at),
        is_base: base[at],
        signals: limits.signals(&days, at),
    });
    Ok(ControlChart {
        ingredient: ingredient.cloned(),
        kind,
        centre: limits.centre,
        scatter: limits.scatter,
        days: charted.collect(),
    })
}

struct Day<'date> {
    date: &'date str,
    readings: usize,
    uses: u32,
    /// Uses of each reading, where all have the same.
    uses_of_each: Option<u32>,
    /// Grams of one use.
    mean: f64,
    /// The largest less the smallest reading, g a use.
    range: f64,
    /// Standard deviation of one use, g; `None` of a single reading.
    deviation: Option<f64>,
}

impl<'date> Day<'date> {
    fn of(day: &calibration::Day<'date>, readings: &[&Reading]) -> Self {
        let readings: Vec<&&Reading> = readings
            .iter()
            .filter(|reading| reading.date.as_deref() == Some(day.date))
            .collect();
        let of_one = |reading: &&&Reading| reading.grams() / f64::from(reading.uses);
        let ends = readings
            .iter()
            .map(of_one)
            .fold((f64::MAX, f64::MIN), |(low, high), one| {
                (low.min(one), high.max(one))
            });
        let uses_of_first = readings.first().map(|reading| reading.uses);
        let is_equal = |reading: &&&Reading| Some(reading.uses) == uses_of_first;
        Self {
            date: day.date,
            readings: day.readings,
            uses: day.uses,
            uses_of_each: uses_of_first.filter(|_| readings.iter().all(is_equal)),
            mean: day.grams,
            range: ends.1 - ends.0,
            deviation: (day.readings > 1).then(|| (day.squares / (day.readings - 1) as f64).sqrt()),
        }
    }
}

/// The step of the scale as the readings show it, 1 to 0.001 (of g or ml).
fn scale_step(readings: &[&Reading]) -> f64 {
    let is_whole = |step: f64| {
        let mut steps = readings
            .iter()
            .map(|reading| reading.amount.number() / step);
        steps.all(|steps| (steps - steps.round()).abs() < 1e-6 * steps.max(1.0))
    };
    [1.0, 0.1, 0.01]
        .into_iter()
        .find(|step| is_whole(*step))
        .unwrap_or(0.001)
}

fn kind_of(days: &[Day<'_>]) -> ChartKind {
    let first = days.first();
    let is_like_first = |day: &Day<'_>| {
        first.is_some_and(|first| {
            day.readings == first.readings
                && day.uses_of_each.is_some()
                && day.uses_of_each == first.uses_of_each
        })
    };
    let several = days.iter().filter(|day| day.readings > 1).count();
    let first_several = days.iter().take(FEWEST_DAYS.0);
    let first_several = first_several.filter(|day| day.readings > 1).count();
    if several == days.len()
        && days.iter().all(is_like_first)
        && first.is_some_and(|first| first.readings <= MOST_IN_RANGE)
    {
        ChartKind::Range
    } else if first_several > 1 || several > 0 && days.len() < FEWEST_DAYS.0 {
        ChartKind::Deviation
    } else {
        ChartKind::MovingRange
    }
}

/// Centre and spread, from the days that the limits rest on.
struct Limits {
    kind: ChartKind,
    centre: f64,
    scatter: f64,
    /// Of the range of a day, or of two days beside each other.
    range: RangeConstants,
}

impl Limits {
    /// `None` without anything to read the spread off.
    fn of(
        kind: ChartKind,
        (range, least_scatter): (RangeConstants, f64),
        days: &[Day<'_>],
        base: &[bool],
    ) -> Option<Self> {
        let based = || days.iter().zip(base).filter(|(_, is_base)| **is_base);
        let uses: f64 = based().map(|(day, _)| f64::from(day.uses)).sum();
        let centre = based()
            .map(|(day, _)| day.mean * f64::from(day.uses))
            .sum::<f64>()
            / uses;
        let scatters: Vec<f64> = match kind {
            ChartKind::Range => based()
                .filter_map(|(day, _)| {
                    let uses = f64::from(day.uses_of_each?);
                    Some(day.range / range.mean * uses.sqrt())
                })
                .collect(),
            ChartKind::Deviation => based()
                .filter_map(|(day, _)| {
                    Some(day.deviation? / mean_deviation(count_of(day.readings)))
                })
                .collect(),
            ChartKind::MovingRange => {
                let based: Vec<&Day<'_>> = based().map(|(day, _)| day).collect();
                let pairs = based.windows(2);
                pairs
                    .map(|pair| {
                        let apart = (pair[1].mean - pair[0].mean).abs();
                        apart / between(pair[0], pair[1]) / (range.mean / 2f64.sqrt())
                    })
                    .collect()
            }
        };
        let scatter = scatters.iter().sum::<f64>() / scatters.len() as f64;
        if !scatter.is_finite() {
            return None;
        }
        let scatter = scatter.max(least_scatter);
        centre.is_finite().then_some(Self {
            kind,
            centre,
            scatter,
            range,
        })
    }

    fn mean(&self, day: &Day<'_>) -> Limited {
        let away = LIMITS * self.scatter / f64::from(day.uses).sqrt();
        Limited {
            value: day.mean,
            limits: [self.centre - away, self.centre + away],
        }
    }

    fn spread(&self, days: &[Day<'_>], at: usize) -> Option<Limited> {
        let day = &days[at];
        let (value, expected, limits) = match self.kind {
            ChartKind::Range => {
                let of_one = self.scatter / f64::from(day.uses_of_each?).sqrt();
                (day.range, of_one * self.range.mean, self.range.limits())
            }
            ChartKind::Deviation => {
                let count = count_of(day.readings);
                let deviation = day.deviation?;
                let expected = self.scatter * mean_deviation(count);
                (deviation, expected, deviation_limits(count))
            }
            ChartKind::MovingRange => {
                let before = &days[at.checked_sub(1)?];
                let of_two = self.scatter * between(before, day) / 2f64.sqrt();
                let apart = (day.mean - before.mean).abs();
                (apart, of_two * self.range.mean, self.range.limits())
            }
        };
        Some(Limited {
            value,
            limits: limits.map(|limit| limit * expected),
        })
    }

    fn is_outside(&self, days: &[Day<'_>], at: usize) -> bool {
        let spread = self.spread(days, at);
        // A difference of two days says of neither that it is the one that is off.
        let spread = spread.filter(|_| self.kind != ChartKind::MovingRange);
        self.mean(&days[at]).is_outside() || spread.is_some_and(|spread| spread.is_outside())
    }

    fn signals(&self, days: &[Day<'_>], at: usize) -> Vec<Signal> {
        let mut signals = Vec::new();
        if self.mean(&days[at]).is_outside() {
            signals.push(Signal::Outside);
        }
        if self.one_side(days, at) >= RUN {
            signals.push(Signal::OneSide);
        }
        if trend(days, at) >= RUN {
            signals.push(Signal::Trend);
        }
        if self
            .spread(days, at)
            .is_some_and(|spread| spread.is_outside())
        {
            signals.push(Signal::Spread);
        }
        signals
    }

    /// How many days in a row, up to this one, lie on its side of the centre.
    fn one_side(&self, days: &[Day<'_>], at: usize) -> usize {
        let side = |day: &Day<'_>| day.mean.total_cmp(&self.centre);
        let own = side(&days[at]);
        if own.is_eq() {
            return 0;
        }
        let before = days[..=at].iter().rev();
        before.take_while(|day| side(day) == own).count()
    }
}

/// How many days in a row, up to this one, each lie above the day before, or each below it.
fn trend(days: &[Day<'_>], at: usize) -> usize {
    let pairs = days[..=at].windows(2).rev();
    let mut steps = pairs.map(|pair| pair[1].mean.total_cmp(&pair[0].mean));
    let Some(first) = steps.next().filter(|step| !step.is_eq()) else {
        return 1;
    };
    2 + steps.take_while(|step| *step == first).count()
}

/// Standard deviation of the difference of two days, in standard deviations of one use.
fn between(a: &Day<'_>, b: &Day<'_>) -> f64 {
    (1.0 / f64::from(a.uses) + 1.0 / f64::from(b.uses)).sqrt()
}

fn count_of(readings: usize) -> u32 {
    u32::try_from(readings).unwrap_or(u32::MAX)
}

impl ControlChart {
    /// How many days the limits rest on.
    pub fn base_days(&self) -> usize {
        self.days.iter().filter(|day| day.is_base).count()
    }

    /// Whether they rest on so many that they are firm.
    pub fn is_firm(&self) -> bool {
        self.base_days() >= FIRM
    }

    /// How the measure has changed; `None` while the mean of its last day shows nothing.
    ///
    /// A mean outside its limits counts from the first of the days in a row up to the last one that are outside on the same side, a
    /// run from its first day, and a trend from the last day alone, as the days before it were on the way.
    pub fn shift(&self) -> Option<Shift> {
        let last = self.days.last()?;
        let signal = *last
            .signals
            .iter()
            .find(|signal| **signal != Signal::Spread)?;
        let side = |day: &ChartDay| day.mean.value.total_cmp(&self.centre);
        let stays = |day: &&ChartDay| match signal {
            Signal::Outside => day.mean.is_outside() && side(day) == side(last),
            Signal::OneSide => side(day) == side(last),
            Signal::Trend | Signal::Spread => day.date == last.date,
        };
        let since: Vec<&ChartDay> = self.days.iter().rev().take_while(stays).collect();
        let base: u32 = of_uses(self.days.iter().filter(|day| day.is_base));
        let uses = of_uses(since.iter().copied());
        let grams: f64 = since
            .iter()
            .map(|day| day.mean.value * f64::from(day.uses))
            .sum();
        let u = |uses: u32| self.scatter / f64::from(uses.max(1)).sqrt();
        Some(Shift {
            signal,
            since: since.last()?.date.clone(),
            before: Uncertain {
                value: self.centre,
                u: u(base),
            },
            now: Uncertain {
                value: grams / f64::from(uses.max(1)),
                u: u(uses),
            },
        })
    }
}

fn of_uses<'day>(days: impl Iterator<Item = &'day ChartDay>) -> u32 {
    days.fold(0, |sum, day| sum.saturating_add(day.uses))
}

/// A measure as it doses since a day: without its dated readings of this ingredient from before, and without undated ones.
pub fn since_day(measure: &Measure, ingredient: Option<&IngredientId>, day: &str) -> Measure {
    let mut measure = measure.clone();
    measure.readings.retain(|reading| {
        let is_of_it = reading.weighed() == ingredient;
        !is_of_it || reading.date.as_deref().is_some_and(|date| date >= day)
    });
    measure
}
