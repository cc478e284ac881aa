//! A cooling curve: one or two exponentials with the uncertainty of their parameters, stated or fitted to readings.

use super::fit::{Covariance, PARAMETERS, fit};
use crate::book::CoolingReading;
use crate::quantity::Uncertain;

/// Readings that one constant needs: two determine it, the third shows whether they agree.
pub const READINGS_FOR_ONE: usize = 3;

/// Readings that two constants need.
pub const READINGS_FOR_TWO: usize = 6;

/// Two constants need readings that fall at least to this part of the first excess over the room (assumed).
const SPREAD_FOR_TWO: f64 = 0.7;

/// Two constants are taken when they bring the scatter of the residuals below this part of that of one (assumed).
const BETTER_BY: f64 = 0.7;

/// Scatter of a kitchen thermometer from reading to reading, K (assumed). Readings that agree better do so by luck.
const THERMOMETER_SCATTER: f64 = 0.3;

/// A drink is not followed for longer than this, minutes.
const LONGEST: f64 = 100_000.0;

/// How many exponentials a curve has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CoolingModel {
    /// Newton's law with one constant.
    OneConstant,
    /// The drink and the wall of the cup.
    TwoConstants,
}

impl CoolingModel {
    pub(super) fn parameters(self) -> usize {
        match self {
            Self::OneConstant => 2,
            Self::TwoConstants => 4,
        }
    }

    /// The words in reports.
    pub fn words(self) -> &'static str {
        match self {
            Self::OneConstant => "one constant (Newton's law of cooling)",
            Self::TwoConstants => "two constants (drink and wall of the cup)",
        }
    }
}

/// Why readings give no curve.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CoolingError {
    /// Too few readings.
    #[error(
        "{found} usable readings; expected at least {READINGS_FOR_ONE} above the {room} °C of the room"
    )]
    TooFew {
        /// Readings that are finite and above the room.
        found: usize,
        /// Temperature of the room, °C.
        room: f64,
    },
    /// They do not fall.
    #[error(
        "the readings do not fall towards the {room} °C of the room; expected a drink that cools"
    )]
    NotFalling {
        /// Temperature of the room, °C.
        room: f64,
    },
}

/// One exponential.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Term {
    /// Excess over the room at time 0, K.
    pub(super) excess: f64,
    /// Rate, 1/min.
    pub(super) rate: f64,
}

impl Term {
    pub(super) const NONE: Self = Self {
        excess: 0.0,
        rate: 1.0,
    };

    pub(super) fn at(self, minutes: f64) -> f64 {
        self.excess * (-self.rate * minutes).exp()
    }

    pub(super) fn sum(terms: &[Self; 2], minutes: f64) -> f64 {
        terms.iter().map(|term| term.at(minutes)).sum()
    }

    /// Derivatives with respect to excess and logarithm of the rate, term by term.
    pub(super) fn gradient(terms: &[Self; 2], minutes: f64) -> [f64; PARAMETERS] {
        let of = |term: Self| {
            (
                (-term.rate * minutes).exp(),
                -term.rate * minutes * term.at(minutes),
            )
        };
        let ((a, k), (b, l)) = (of(terms[0]), of(terms[1]));
        [a, k, b, l]
    }

    pub(super) fn move_by(&mut self, parameter: usize, step: f64) {
        if parameter == 0 {
            self.excess += step;
        } else {
            // A step of more than a factor of ten is a guess too far.
            self.rate *= step.clamp(-2.3, 2.3).exp();
        }
    }
}

/// Where a drink enters a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Entry {
    /// Minutes on the curve.
    minutes: f64,
    /// Standard uncertainty of the temperature at which it begins, K.
    u: f64,
}

/// A cooling curve with its uncertainty. Time counts in minutes from where it begins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingCurve {
    room: f64,
    model: CoolingModel,
    terms: [Term; 2],
    covariance: Covariance,
    scatter: f64,
    largest_miss: f64,
    entry: Option<Entry>,
}

impl CoolingCurve {
    /// The curve of one time constant, from a temperature down to that of the room.
    pub fn from_time_constant(
        start: f64,
        room: f64,
        minutes: f64,
        relative_uncertainty: f64,
    ) -> Self {
        let mut covariance = [[0.0; PARAMETERS]; PARAMETERS];
        covariance[1][1] = relative_uncertainty.powi(2);
        Self {
            room,
            model: CoolingModel::OneConstant,
            terms: [
                Term {
                    excess: start - room,
                    rate: 1.0 / minutes.max(0.01),
                },
                Term::NONE,
            ],
            covariance,
            scatter: 0.0,
            largest_miss: 0.0,
            entry: None,
        }
    }

    /// The curve through readings: one constant from three of them on; two from six on, when the readings fall far enough
    /// and the residuals ask for it.
    pub fn through(room: f64, readings: &[CoolingReading]) -> Result<Self, CoolingError> {
        let one = Self::through_with(room, readings, CoolingModel::OneConstant)?;
        let points = usable(room, readings);
        let excesses = points.iter().map(|point| point.1);
        let (least, most) = excesses.fold((f64::MAX, 0.0_f64), |(low, high), value| {
            (low.min(value), high.max(value))
        });
        let enough = points.len() >= READINGS_FOR_TWO && least < SPREAD_FOR_TWO * most;
        if !enough || one.scatter <= THERMOMETER_SCATTER {
            return Ok(one);
        }
        match Self::through_with(room, readings, CoolingModel::TwoConstants) {
            Ok(two) if two.scatter < BETTER_BY * one.scatter => Ok(two),
            _ => Ok(one),
        }
    }

    /// The curve of a given model through readings.
    pub fn through_with(
        room: f64,
        readings: &[CoolingReading],
        model: CoolingModel,
    ) -> Result<Self, CoolingError> {
        let points = usable(room, readings);
        let needed = model.parameters() + 1;
        if points.len() < needed {
            return Err(CoolingError::TooFew {
                found: points.len(),
                room,
            });
        }
        let found = fit(&points, model).ok_or(CoolingError::NotFalling { room })?;
        let freedom = (points.len() - model.parameters()) as f64;
        let scatter = (found.squares / freedom).sqrt().max(THERMOMETER_SCATTER);
        let misses = points
            .iter()
            .map(|(minutes, excess)| (excess - Term::sum(&found.terms, *minutes)).abs());
        Ok(Self {
            room,
            model,
            terms: found.terms,
            covariance: found
                .inverse
                .map(|row| row.map(|value| value * scatter * scatter)),
            scatter,
            largest_miss: misses.fold(0.0, f64::max),
            entry: None,
        })
    }

    /// The same vessel with a drink that begins at a temperature (with its standard uncertainty), in a room of another one.
    #[must_use]
    pub fn starting_at(self, start: Uncertain, room: f64) -> Self {
        let excess = start.value - room;
        let most = Term::sum(&self.terms, 0.0);
        let mut curve = Self { room, ..self };
        if excess > most && most > 0.0 {
            let factor = excess / most;
            for term in &mut curve.terms {
                term.excess *= factor;
            }
            for (row, values) in curve.covariance.iter_mut().enumerate() {
                for (column, value) in values.iter_mut().enumerate() {
                    *value *= if row % 2 == 0 { factor } else { 1.0 }
                        * if column % 2 == 0 { factor } else { 1.0 };
                }
            }
            curve.entry = Some(Entry {
                minutes: 0.0,
                u: start.u,
            });
        } else {
            let minutes = time_of(&self.terms, excess).unwrap_or(LONGEST);
            curve.entry = Some(Entry {
                minutes,
                u: start.u,
            });
        }
        curve
    }

    /// The same vessel with another closure: every rate is multiplied with a factor.
    #[must_use]
    pub fn with_rate_factor(mut self, factor: f64) -> Self {
        for term in &mut self.terms {
            term.rate *= factor.max(0.05);
        }
        self
    }

    /// How many exponentials it has.
    pub fn model(&self) -> CoolingModel {
        self.model
    }

    /// Temperature of the room, °C.
    pub fn room(&self) -> f64 {
        self.room
    }

    /// Time constants, minutes, the shortest first, each with its standard uncertainty.
    pub fn time_constants(&self) -> Vec<Uncertain> {
        let count = self.model.parameters() / 2;
        let mut constants: Vec<Uncertain> = (0..count)
            .map(|at| {
                Uncertain::relative(
                    1.0 / self.terms[at].rate,
                    self.covariance[2 * at + 1][2 * at + 1].sqrt(),
                )
            })
            .collect();
        constants.sort_by(|one, other| one.value.total_cmp(&other.value));
        constants
    }

    /// Standard deviation of the readings about the curve, K, at least that of a thermometer; 0 without readings.
    pub fn scatter(&self) -> f64 {
        self.scatter
    }

    /// The largest distance of a reading from the curve, K.
    pub fn largest_miss(&self) -> f64 {
        self.largest_miss
    }

    /// Temperature after so many minutes, °C, with its standard uncertainty (that of the curve and, beyond the start, the
    /// scatter of the readings about it).
    pub fn temperature_at(&self, minutes: f64) -> Uncertain {
        let at = self.begins() + minutes;
        let variance =
            self.variance(&self.temperature_gradient(at)) + self.start_effect(at).powi(2);
        let scatter = if minutes > 0.0 || self.entry.is_none() {
            self.scatter
        } else {
            0.0
        };
        Uncertain {
            value: self.room + Term::sum(&self.terms, at),
            u: variance.sqrt().hypot(scatter),
        }
    }

    /// Minutes until a temperature is reached, with their standard uncertainty. 0 when it is that cool already; `None`
    /// when the room is no cooler.
    pub fn minutes_until(&self, celsius: f64) -> Option<Uncertain> {
        let excess = celsius - self.room;
        if Term::sum(&self.terms, self.begins()) <= excess {
            return Some(Uncertain::exact(0.0));
        }
        let at = time_of(&self.terms, excess)?;
        let reached = self.temperature_at(at - self.begins());
        Some(Uncertain {
            value: at - self.begins(),
            u: reached.u / self.slope(at).abs(),
        })
    }

    /// Minutes from one temperature to another in a room, as [`Self::starting_at`] and [`Self::minutes_until`] together but
    /// without uncertainty: the search asks this for every candidate.
    pub(in crate::balance) fn minutes_between(&self, from: f64, to: f64, room: f64) -> Option<f64> {
        let most = Term::sum(&self.terms, 0.0);
        // Hotter than the curve begins: it cools in proportion.
        let scale = ((from - room) / most).max(1.0);
        let begin = if scale > 1.0 {
            0.0
        } else {
            time_of(&self.terms, from - room)?
        };
        Some((time_of(&self.terms, (to - room) / scale)? - begin).max(0.0))
    }

    fn begins(&self) -> f64 {
        self.entry.map_or(0.0, |entry| entry.minutes)
    }

    /// Slope at a time of the curve, K/min.
    fn slope(&self, at: f64) -> f64 {
        -self
            .terms
            .iter()
            .map(|term| term.rate * term.at(at))
            .sum::<f64>()
    }

    /// How the temperature at a time moves with the parameters, when the temperature at the entry is held.
    fn temperature_gradient(&self, at: f64) -> [f64; PARAMETERS] {
        let mut gradient = Term::gradient(&self.terms, at);
        if let Some(entry) = self.entry {
            let ratio = self.slope(at) / self.slope(entry.minutes);
            for (value, held) in gradient
                .iter_mut()
                .zip(Term::gradient(&self.terms, entry.minutes))
            {
                *value -= ratio * held;
            }
        }
        gradient
    }

    /// What the uncertainty of the starting temperature does at a time of the curve, K.
    fn start_effect(&self, at: f64) -> f64 {
        self.entry.map_or(0.0, |entry| {
            entry.u * self.slope(at) / self.slope(entry.minutes)
        })
    }

    fn variance(&self, gradient: &[f64; PARAMETERS]) -> f64 {
        let of_row =
            |row: &[f64; PARAMETERS]| row.iter().zip(gradient).map(|(a, b)| a * b).sum::<f64>();
        let sum: f64 = self
            .covariance
            .iter()
            .zip(gradient)
            .map(|(row, value)| value * of_row(row))
            .sum();
        sum.max(0.0)
    }
}

/// Readings that say something: finite and above the room, as (minutes, excess).
pub(super) fn usable(room: f64, readings: &[CoolingReading]) -> Vec<(f64, f64)> {
    readings
        .iter()
        .map(|reading| (reading.minutes, reading.celsius - room))
        .filter(|(minutes, excess)| minutes.is_finite() && excess.is_finite() && *excess > 0.0)
        .collect()
}

/// When the sum of exponentials falls to an excess: it falls all the way, so Newton in a bracket finds it.
fn time_of(terms: &[Term; 2], excess: f64) -> Option<f64> {
    if excess <= 0.0 || !excess.is_finite() {
        return None;
    }
    if terms[1].excess == 0.0 {
        return Some((terms[0].excess / excess).ln() / terms[0].rate)
            .filter(|minutes| minutes.is_finite());
    }
    let (mut low, mut high) = (0.0, LONGEST);
    let mut minutes = 0.0;
    for _ in 0..200 {
        let over = Term::sum(terms, minutes) - excess;
        if over > 0.0 {
            low = minutes;
        } else {
            high = minutes;
        }
        let slope: f64 = terms.iter().map(|term| term.rate * term.at(minutes)).sum();
        let newton = minutes + over / slope;
        let next = if newton > low && newton < high {
            newton
        } else {
            f64::midpoint(low, high)
        };
        let step = (next - minutes).abs();
        minutes = next;
        if step < 1e-9 {
            break;
        }
    }
    Some(minutes)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn readings(points: &[(f64, f64)]) -> Vec<CoolingReading> {
        points
            .iter()
            .map(|&(minutes, celsius)| CoolingReading { minutes, celsius })
            .collect()
    }

    #[test]
    fn after_one_time_constant_the_excess_is_divided_by_e() {
        let curve = CoolingCurve::from_time_constant(82.0, 22.0, 40.0, 0.1);
        let expected = 22.0 + 60.0 / std::f64::consts::E;
        assert!((curve.temperature_at(40.0).value - expected).abs() < 1e-9);
        let until = curve.minutes_until(expected).unwrap();
        assert!((until.value - 40.0).abs() < 1e-9);
        // t = τ·ln(…): a relative uncertainty of τ is that of the minutes.
        assert!((until.u - 4.0).abs() < 1e-9, "{until:?}");
    }

    #[test]
    fn no_drink_becomes_colder_than_the_room_and_one_that_is_cool_needs_no_time() {
        let curve = CoolingCurve::from_time_constant(70.0, 22.0, 40.0, 0.1);
        assert_eq!(curve.minutes_until(22.0), None);
        assert_eq!(curve.minutes_until(10.0), None);
        assert_eq!(curve.minutes_until(75.0), Some(Uncertain::exact(0.0)));
    }

    #[test]
    fn a_drink_enters_the_curve_where_it_is_as_hot() {
        let curve = CoolingCurve::from_time_constant(90.0, 20.0, 40.0, 0.0);
        let later = curve.starting_at(
            Uncertain {
                value: 70.0,
                u: 1.0,
            },
            20.0,
        );
        assert!((later.temperature_at(0.0).value - 70.0).abs() < 1e-9);
        assert!((later.temperature_at(0.0).u - 1.0).abs() < 1e-9);
        let hotter = curve.starting_at(Uncertain::exact(97.0), 20.0);
        assert!((hotter.temperature_at(0.0).value - 97.0).abs() < 1e-9);
        // A kelvin more at the start is dt = τ/(T − room) more: 40/50 min.
        let exact = curve
            .starting_at(Uncertain::exact(71.0), 20.0)
            .minutes_until(50.0)
            .unwrap()
            .value;
        let more = exact - later.minutes_until(50.0).unwrap().value;
        assert!(
            (later.minutes_until(50.0).unwrap().u - more).abs() < 0.02,
            "{more}"
        );
    }

    #[test]
    fn the_short_way_gives_the_same_minutes() {
        let points: Vec<CoolingReading> = (0..12)
            .map(|at| f64::from(at) * 5.0)
            .map(|minutes| {
                let celsius = 20.0 + 20.0 * (-minutes / 6.0).exp() + 45.0 * (-minutes / 60.0).exp();
                CoolingReading { minutes, celsius }
            })
            .collect();
        let curve = CoolingCurve::through_with(20.0, &points, CoolingModel::TwoConstants).unwrap();
        for (from, to, room) in [
            (84.0, 58.0, 20.0),
            (70.0, 58.0, 23.0),
            (95.0, 40.0, 20.0),
            (60.0, 65.0, 20.0),
        ] {
            let long = curve
                .starting_at(Uncertain::exact(from), room)
                .minutes_until(to)
                .unwrap()
                .value;
            let short = curve.minutes_between(from, to, room).unwrap();
            assert!(
                (long - short).abs() < 1e-6,
                "{from} to {to} at {room}: {long} {short}"
            );
        }
        assert_eq!(curve.minutes_between(60.0, 15.0, 20.0), None);
    }

    #[test]
    fn a_colder_room_and_an_open_cup_cool_faster() {
        let start = Uncertain::exact(75.0);
        let curve = CoolingCurve::from_time_constant(90.0, 20.0, 40.0, 0.1);
        let minutes = |curve: CoolingCurve, room| {
            curve
                .starting_at(start, room)
                .minutes_until(58.0)
                .unwrap()
                .value
        };
        assert!(minutes(curve, 15.0) < minutes(curve, 20.0));
        assert!(minutes(curve, 20.0) < minutes(curve.with_rate_factor(0.6), 20.0));
    }

    #[test]
    fn few_readings_are_refused_with_what_is_missing() {
        let two = readings(&[(0.0, 80.0), (10.0, 70.0)]);
        assert_eq!(
            CoolingCurve::through(20.0, &two),
            Err(CoolingError::TooFew {
                found: 2,
                room: 20.0
            })
        );
        let cold = readings(&[(0.0, 18.0), (5.0, 17.0), (9.0, f64::NAN), (12.0, 16.0)]);
        assert_eq!(
            CoolingCurve::through(20.0, &cold),
            Err(CoolingError::TooFew {
                found: 0,
                room: 20.0
            })
        );
        let warming = readings(&[(0.0, 50.0), (5.0, 55.0), (10.0, 60.0)]);
        assert_eq!(
            CoolingCurve::through(20.0, &warming),
            Err(CoolingError::NotFalling { room: 20.0 })
        );
    }

    #[test]
    fn readings_of_one_constant_stay_with_one_constant() {
        let curve = CoolingCurve::from_time_constant(85.0, 21.0, 35.0, 0.0);
        let points: Vec<(f64, f64)> = (0..10)
            .map(|at| {
                (
                    f64::from(at) * 4.0,
                    curve.temperature_at(f64::from(at) * 4.0).value,
                )
            })
            .collect();
        let fitted = CoolingCurve::through(21.0, &readings(&points)).unwrap();
        assert_eq!(fitted.model(), CoolingModel::OneConstant);
        assert!((fitted.time_constants()[0].value - 35.0).abs() < 1e-3);
    }
}
