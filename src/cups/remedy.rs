//! What would help most at the counter: each thing that can be done is tried out with the same draws.

use super::aim::{Aim, Held, stated_temperature};
use super::counter::Counter;
use super::drawn::{DrawnCause, When, when_drawn};
use crate::balance::{Balance, Cause, LEVEL_STEPS, temperature_uncertainty};
use crate::book::{
    Amount, Book, Change, Line, LineId, Measure, MeasureId, MeasureKind, Resolved, Stage,
};
use crate::quantity::{RECTANGULAR, Uncertain};

/// What a thermometer at the counter may be off by, K, where the shop states none (assumed: a common probe).
const THERMOMETER: f64 = 0.5;

/// What a thermometer at the counter may be off by, K.
pub(super) fn thermometer_limits(book: &Book) -> f64 {
    let stated = book.settings.instruments.thermometer_kelvin;
    stated.unwrap_or(THERMOMETER)
}

/// A scoop of half the size, twice: each use scatters by the same part of what it holds (assumed), so that two of them scatter by the
/// root of a half of one.
const TWICE: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// Something that can be done about cups that do not taste like the standard.
#[derive(Clone, Debug, PartialEq)]
pub enum Remedy {
    /// The recipe itself is off, if within a step: bring it level.
    BringLevel,
    /// Weigh a line, so many grams, in place of measuring it.
    Weigh(LineId, f64),
    /// Take a scoop or spoon of half the size twice.
    SmallerTwice(LineId, MeasureId),
    /// Set a measure to what the standard was tasted with, and so on every day.
    Recalibrate(MeasureId),
    /// Hold a temperature with a thermometer that is off by at most so many K.
    Thermometer(Cause, f64),
}

impl Remedy {
    /// The word for it.
    pub const fn word(&self) -> &'static str {
        match self {
            Self::BringLevel => "bring-level",
            Self::Weigh(..) => "weigh",
            Self::SmallerTwice(..) => "smaller-twice",
            Self::Recalibrate(_) => "recalibrate",
            Self::Thermometer(..) => "thermometer",
        }
    }
}

/// A remedy with what it does.
#[derive(Clone, Debug, PartialEq)]
pub struct Helps {
    /// What is done.
    pub remedy: Remedy,
    /// The share of cups within a step on every axis with it.
    pub share: f64,
    /// By how much that is more than without, with its uncertainty: the same draws are compared cup by cup.
    pub gain: Uncertain,
}

/// A gain counts when it is more than so many of its standard uncertainties, and more than so much of all cups.
const COVERAGE: f64 = 2.0;
const LEAST_GAIN: f64 = 0.005;

impl Helps {
    /// What a remedy does, cup by cup; `None` when it does not help.
    pub(super) fn compared(remedy: Remedy, before: &[bool], with: &[bool]) -> Option<Self> {
        let cups = before.len().max(1) as f64;
        let count = |was: bool, is: bool| {
            let pairs = before.iter().zip(with);
            pairs.filter(|pair| *pair == (&was, &is)).count() as f64 / cups
        };
        let (gained, lost) = (count(false, true), count(true, false));
        let value = gained - lost;
        let u = ((gained + lost - value * value).max(0.0) / cups).sqrt();
        let is_gain = value >= LEAST_GAIN && value > COVERAGE * u;
        is_gain.then(|| Self {
            remedy,
            share: with.iter().filter(|inside| **inside).count() as f64 / cups,
            gain: Uncertain { value, u },
        })
    }
}

/// A remedy, and the counter with it; none for what needs no new cups.
pub(super) struct Trial {
    pub(super) remedy: Remedy,
    pub(super) counter: Option<Counter>,
}

/// Causes by which what can be done is tried, those that move an axis most first: each is another draw of all cups.
const TRIED: usize = 12;

/// What can be tried with a drink, for the causes that matter most to it.
pub(super) fn trials(
    book: &Book,
    balance: &Balance,
    held: &Held<'_>,
    drawn: &[DrawnCause],
    counter: &Counter,
) -> Vec<Trial> {
    let lines = &balance.resolved;
    let tried = &drawn[..drawn.len().min(TRIED)];
    let matters = |cause: &Cause| tried.iter().any(|drawn| drawn.cause == *cause);
    let mut trials = Vec::new();
    let is_off =
        |aim: &Aim| aim.counts() && aim.nominal.is_some_and(|steps| steps.abs() > LEVEL_STEPS);
    if held.aims.iter().any(is_off) {
        trials.push(Trial {
            remedy: Remedy::BringLevel,
            counter: None,
        });
    }
    let mut push = |remedy, counter| {
        trials.push(Trial {
            remedy,
            counter: Some(counter),
        });
    };
    let varies = |line: &&Line| {
        let id = || line.id.clone();
        matters(&Cause::UseScatter(id())) || matters(&Cause::Reading(id()))
    };
    for line in lines.lines().filter(varies) {
        if let Some((grams, weighed)) = weighed(book, balance, line) {
            let hands = hands_of(line);
            push(
                Remedy::Weigh(line.id.clone(), grams),
                counter.made_otherwise(book, &weighed, &hands),
            );
        }
        if let Some(measure) = scooped(book, line) {
            push(
                Remedy::SmallerTwice(line.id.clone(), measure.id.clone()),
                counter.with_cause(&Cause::UseScatter(line.id.clone()), TWICE),
            );
        }
    }
    for (id, recalibrated) in recalibrated(book, balance, held) {
        let mut other = counter.made_otherwise(&recalibrated, lines, &[]);
        for contribution in &balance.contributions {
            if matches!(&contribution.cause, Cause::Calibration(of, _) if *of == id) {
                other = other.with_cause(&contribution.cause, 0.0);
            }
        }
        push(Remedy::Recalibrate(id), other);
    }
    for DrawnCause { cause, .. } in tried {
        if let Some((limits, part)) = held_by_thermometer(book, lines, cause) {
            push(
                Remedy::Thermometer(cause.clone(), limits),
                counter.with_cause(cause, part),
            );
        }
    }
    trials
}

/// The lines with one of them weighed, and its grams. What is weighed already, fills, or is steeped can't be.
fn weighed(book: &Book, balance: &Balance, line: &Line) -> Option<(f64, Resolved)> {
    let of_measure = match &line.amount {
        Amount::Count(_, id) => book.measure(id)?.temperature,
        Amount::Millilitres(_) => None,
        _ => return None,
    };
    if line.stage == Stage::Steeped {
        return None;
    }
    let mut shares = balance.lines.iter();
    let share = shares.find(|share| share.line == line.id && !share.carried)?;
    let grams = share.grams.filter(|grams| *grams > 0.0)?;
    let mut weighed = balance.resolved.clone();
    let id = || line.id.clone();
    // It still comes from the same dispenser.
    let celsius = line.temperature.or(of_measure);
    weighed.apply(&Change::Temperature(id(), celsius));
    let change = Change::Amount(id(), Amount::Grams(grams));
    weighed.apply(&change).then_some((grams, weighed))
}

/// What the causes of a weighed line are in place of: the eye at the scale has the draws of the hand at the measure.
fn hands_of(line: &Line) -> Vec<(Cause, Cause)> {
    let id = || line.id.clone();
    let mut hands = vec![(Cause::Reading(id()), Cause::UseScatter(id()))];
    if let Amount::Count(_, measure) = &line.amount {
        let of_measure = Cause::MeasureTemperature(measure.clone());
        hands.push((Cause::LineTemperature(id()), of_measure));
    }
    hands
}

/// The scoop or spoon that a line is measured with.
fn scooped<'book>(book: &'book Book, line: &Line) -> Option<&'book Measure> {
    let Amount::Count(_, id) = &line.amount else {
        return None;
    };
    let is_scoop = |kind| {
        matches!(
            kind,
            MeasureKind::Scoop | MeasureKind::Spoon | MeasureKind::IceScoop
        )
    };
    let measure = book.measure(id)?.as_ref();
    is_scoop(measure.kind).then_some(measure)
}

/// The measures of a drink that weigh something else than when the standard was tasted, or from day to day, each with the book
/// in which it does not.
fn recalibrated(book: &Book, balance: &Balance, held: &Held<'_>) -> Vec<(MeasureId, Book)> {
    let mut found: Vec<(MeasureId, Book)> = Vec::new();
    let then = held.approval.map(|approval| book.as_tasted(approval));
    for contribution in &balance.contributions {
        let Cause::Calibration(id, with) = &contribution.cause else {
            continue;
        };
        if found.iter().any(|(known, _)| known == id) {
            continue;
        }
        let now = book.measure(id);
        let was = then.as_ref().and_then(|then| then.measure(id));
        let grams = |measure: &Measure| Some(measure.calibration(with.as_ref())?.grams);
        let is_set_otherwise = now
            .zip(was)
            .is_some_and(|(now, was)| grams(now) != grams(was));
        let drifts = when_drawn(book, &contribution.cause).0 == When::EachShift;
        if let (true, Some(was)) = (is_set_otherwise || drifts, was.or(now)) {
            let mut recalibrated = book.clone();
            recalibrated.measures.put(was.as_ref().clone());
            found.push((id.clone(), recalibrated));
        }
    }
    found
}

/// What a thermometer leaves of the doubt of a temperature: what it may be off by, K, and the part that is left.
fn held_by_thermometer(book: &Book, lines: &Resolved, cause: &Cause) -> Option<(f64, f64)> {
    let stated = stated_temperature(book, lines, cause)?;
    let limits = thermometer_limits(book);
    let part = limits * RECTANGULAR / temperature_uncertainty(book, stated);
    (part < 1.0).then_some((limits, part))
}
