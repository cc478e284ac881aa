//! A cup that was read with a thermometer: what the readings say of it, and what they say of its later temperatures.

use super::fit::{Covariance, Fit, PARAMETERS, Parameters, fit};
use super::law::{Filled, Law};
use super::prior::{CUP_PARAMETERS, CupPrior};
use crate::book::{CoolingReading, CoolingRun};
use crate::quantity::Uncertain;

/// Readings that a curve needs: fewer say nothing that the published cups do not.
pub const LEAST_READINGS: usize = 3;

/// Standard uncertainty of a reading of a kitchen thermometer, K (assumed). Readings that scatter more count for less.
const READING: f64 = 0.3;

/// A reading that is off by more than so many standard uncertainties is not the thermometer's fault.
const NO_THERMOMETER: f64 = 3.0;

/// What a rate is off by, as a part of it, where a law that was fitted above or below is taken on (assumed): the power of free
/// convection is known within 0.1, and draughts and the moisture of the air change over an hour.
pub(super) const BEYOND: f64 = 0.1;

/// Standard uncertainty of the temperature of a room that was noted with readings, K (assumed).
pub const NOTED_ROOM: f64 = 1.0;

/// Part of a cup that is full when nobody noted it (assumed).
pub(super) const USUAL_FILL: f64 = 0.8;

/// What a lid leaves of the evaporation, and the standard uncertainty of its logarithm: a foam lid stretched the first 15 K from
/// 82 °C from 13 to 21 minutes (an experiment with a temperature logger, 2012), which is 0.3 to 0.5 for the published cups; a
/// report without a source has a cup cool half as fast with its lid on, which is 0.1 to 0.3.
pub(super) const UNDER_A_LID: (f64, f64) = (0.3, 0.6);

pub(super) const DRY: usize = 1;
pub(super) const EVAPORATION: usize = 2;
const ROOM: usize = 5;

/// Why readings give no curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CoolingError {
    /// Too few readings.
    TooFew {
        /// Minutes with a reading that is finite and above the room.
        found: usize,
        /// Temperature of the room, °C.
        room: f64,
    },
    /// They do not fall.
    NotFalling {
        /// Temperature of the room, °C.
        room: f64,
    },
    /// The cup states no volume that it holds.
    NoCapacity,
}

/// What was noted beside the readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReadCup {
    /// What the cup holds to its rim, ml.
    pub capacity: f64,
    /// What was in it, ml.
    pub millilitres: Option<f64>,
    /// Whether it was covered.
    pub covered: bool,
    /// Temperature of the room, °C.
    pub room: Uncertain,
}

impl ReadCup {
    /// The cup with what was in it, or with what is usual.
    pub(super) fn filled(&self) -> Option<Filled> {
        let fill = self
            .millilitres
            .map_or(USUAL_FILL, |millilitres| millilitres / self.capacity);
        Filled::new(self.capacity, fill)
    }
}

/// What readings say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredCooling {
    pub(super) cup: Filled,
    pub(super) room: f64,
    /// Minutes of the first reading.
    begin: f64,
    /// Minutes of the last reading, counted from the first.
    pub(super) last: f64,
    pub(super) parameters: Parameters,
    pub(super) covariance: Covariance,
    readings: usize,
    largest_miss: f64,
}

impl MeasuredCooling {
    /// The likeliest cup for readings and for what is known of other cups.
    pub fn of(
        cup: &ReadCup,
        readings: &[CoolingReading],
        prior: &CupPrior,
    ) -> Result<Self, CoolingError> {
        let filled = cup.filled().ok_or(CoolingError::NoCapacity)?;
        let room = cup.room.value;
        let mut points: Vec<(f64, f64)> = usable(room, readings).collect();
        points.sort_by(|one, other| one.0.total_cmp(&other.0));
        let found = different_minutes(&points);
        if found < LEAST_READINGS {
            return Err(CoolingError::TooFew { found, room });
        }
        let begin = points[0].0;
        for (minutes, _) in &mut points {
            *minutes -= begin;
        }
        let mut cups = *prior;
        if cup.covered {
            cups.mean[EVAPORATION - 1] += UNDER_A_LID.0.ln();
            cups.u[EVAPORATION - 1] = cups.u[EVAPORATION - 1].hypot(UNDER_A_LID.1);
        }
        let [dry, evaporation, wall, wall_minutes] = cups.mean;
        let start = [points[0].1.ln(), dry, evaporation, wall, wall_minutes, 0.0];
        let found = fit(start, |parameters, residuals| {
            residuals.clear();
            let mut course = Course::of(parameters, filled, room);
            let misses = points.iter().map(|(minutes, excess)| {
                (parameters[ROOM] + course.excess_at(*minutes) - excess) / READING
            });
            residuals.extend(misses);
            for (at, (mean, u)) in cups.mean.iter().zip(cups.u).enumerate() {
                residuals.push((parameters[at + 1] - mean) / u);
            }
            residuals.push(parameters[ROOM] / cup.room.u.max(0.01));
        });
        let Fit {
            parameters,
            covariance,
            squares,
        } = found.ok_or(CoolingError::NotFalling { room })?;
        // Readings that are off by more than a thermometer is make everything as much less sure.
        let worse = (squares / points.len() as f64).max(1.0);
        let mut course = Course::of(&parameters, filled, room);
        let misses = points.iter().map(|(minutes, excess)| {
            (parameters[ROOM] + course.excess_at(*minutes) - excess).abs()
        });
        let largest_miss = misses.fold(0.0, f64::max);
        // The curve falls; readings that do not may still be as far from it as a thermometer is off.
        if largest_miss > NO_THERMOMETER * READING && !falls(&points) {
            return Err(CoolingError::NotFalling { room });
        }
        Ok(Self {
            cup: filled,
            room,
            begin,
            last: points[points.len() - 1].0,
            parameters,
            covariance: covariance.map(|row| row.map(|value| value * worse)),
            readings: points.len(),
            largest_miss,
        })
    }

    /// What it fits best, in the order of [`super::PublishedCup::parameters`], each with the standard uncertainty of its logarithm.
    pub fn cup_parameters(&self) -> [(f64, f64); CUP_PARAMETERS] {
        std::array::from_fn(|at| {
            let variance = self.covariance[at + 1][at + 1];
            (self.parameters[at + 1].exp(), variance.sqrt())
        })
    }

    /// How many readings it rests on.
    pub fn readings(&self) -> usize {
        self.readings
    }

    /// The largest distance of a reading from the curve, K.
    pub fn largest_miss(&self) -> f64 {
        self.largest_miss
    }

    /// Excesses over the room at the first and at the last reading, K: what lies between has been seen.
    pub(super) fn seen(&self) -> (f64, f64) {
        let mut course = Course::of(&self.parameters, self.cup, self.room);
        (course.excess_at(0.0), course.excess_at(self.last))
    }

    /// Temperature of the cup that was read at a minute of the readings, °C, with its standard uncertainty: that of the cup, of
    /// the room and of the start, and beyond the last reading that of the law.
    pub fn temperature_at(&self, minutes: f64) -> Uncertain {
        let minutes = (minutes - self.begin).max(0.0);
        let at = |parameters: &Parameters| {
            let mut course = Course::of(parameters, self.cup, self.room);
            parameters[ROOM] + course.excess_at(minutes)
        };
        let gradient: Parameters = std::array::from_fn(|parameter| {
            let moved = |by: f64| {
                let mut moved = self.parameters;
                moved[parameter] += by;
                at(&moved)
            };
            (moved(1e-3) - moved(-1e-3)) / 2e-3
        });
        let excess = at(&self.parameters) - self.parameters[ROOM];
        let (_, last) = self.seen();
        let beyond = BEYOND * excess * (last / excess).ln().max(0.0);
        Uncertain {
            value: self.room + at(&self.parameters),
            u: variance(&self.covariance, &gradient).sqrt().hypot(beyond),
        }
    }
}

/// What a gradient and a covariance make of a figure.
fn variance(covariance: &Covariance, gradient: &Parameters) -> f64 {
    let mut sum = 0.0;
    for row in 0..PARAMETERS {
        for column in 0..PARAMETERS {
            sum += gradient[row] * covariance[row][column] * gradient[column];
        }
    }
    sum.max(0.0)
}

/// A cup that is followed from its first reading on, minute by minute.
struct Course {
    law: Law,
    wall: f64,
    wall_minutes: f64,
    minutes: f64,
    excess: f64,
}

impl Course {
    fn of(parameters: &Parameters, cup: Filled, room: f64) -> Self {
        let [excess, dry, evaporation, wall, wall_minutes, off] = *parameters;
        Self {
            law: Law::of(dry.exp(), evaporation.exp(), cup, room + off),
            wall: wall.exp(),
            wall_minutes: wall_minutes.exp(),
            minutes: 0.0,
            excess: excess.exp(),
        }
    }

    /// Excess over the room at a minute, K, not before the one that was asked last: what cools, and what the wall still takes.
    fn excess_at(&mut self, minutes: f64) -> f64 {
        self.excess = self.law.after(self.excess, minutes - self.minutes);
        self.minutes = minutes;
        self.excess + self.wall * (-minutes / self.wall_minutes).exp()
    }
}

/// The largest excess over a room that a drink can have, K.
const LARGEST_EXCESS: f64 = 150.0;

/// Readings that say something: above the room and not hotter than any drink, as (minutes, excess).
pub(super) fn usable(
    room: f64,
    readings: &[CoolingReading],
) -> impl Iterator<Item = (f64, f64)> + '_ {
    readings
        .iter()
        .map(move |reading| (reading.minutes, reading.celsius - room))
        .filter(|(minutes, excess)| {
            minutes.is_finite() && *excess > 0.0 && *excess <= LARGEST_EXCESS
        })
}

/// At how many minutes something was read, of readings in order.
fn different_minutes(points: &[(f64, f64)]) -> usize {
    points.chunk_by(|one, other| one.0 >= other.0).count()
}

/// Whether the readings of a run are enough for a curve, as far as that is seen without looking for it.
pub(super) fn give_a_curve(run: &CoolingRun) -> bool {
    let mut points: Vec<(f64, f64)> = usable(run.room, &run.readings).collect();
    points.sort_by(|one, other| one.0.total_cmp(&other.0));
    different_minutes(&points) >= LEAST_READINGS && falls(&points)
}

/// Whether the line through the readings falls.
fn falls(points: &[(f64, f64)]) -> bool {
    let count = points.len() as f64;
    let minutes = points.iter().map(|point| point.0).sum::<f64>() / count;
    let together: f64 = points
        .iter()
        .map(|point| (point.0 - minutes) * point.1)
        .sum();
    together < 0.0
}
