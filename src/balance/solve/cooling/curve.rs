//! How a drink cools in a cup: the law with the parameters of the cup, and what it may be off by.

use super::cover::Cover;
use super::fit::{PARAMETERS, Parameters, fit};
use super::law::{Filled, Law, NOTHING};
use super::prior::CupPrior;
use super::run::{BEYOND, DRY, EVAPORATION, MeasuredCooling, USUAL_FILL};
use crate::balance::number::Number;
use crate::book::Closure;
use crate::quantity::Uncertain;

/// A temperature at which hot drinks are poured, °C, from which time constants count (assumed).
pub const POURED_CELSIUS: f64 = 85.0;

/// A room, °C, in which a time constant is stated (assumed).
const USUAL_ROOM: f64 = 22.0;

/// Standard uncertainty of the logarithm of a time constant that is stated for a vessel (assumed).
const STATED: f64 = 0.15;

/// How far a rate moves from run to run of the same cup, as a part of it: pooled from three runs of a small can (MPC: 18 %) and
/// three pairs of runs, cold and pre-heated, of ceramic cups (Keskitalo: 10 %).
const RUN_TO_RUN: f64 = 0.14;

/// What a rate is off by for each unit of the logarithm of how much fuller or emptier the cup is than the one that is known
/// (assumed): shape and warmth of the wall above the drink are not reckoned with.
const OTHER_FILL: f64 = 0.1;

/// What a rate is off by when the volume of the readings or of the drink is not known: a usual fill is known within a quarter
/// (assumed), and a rate goes with about its power of −0.6.
const FILL_NOT_NOTED: f64 = 0.25 * 0.6;

/// Standard uncertainty of the temperature of the room in which a drink cools, K (assumed).
const ROOM_UNCERTAINTY: f64 = 1.5;

/// A drink is not followed for longer than this, minutes.
const LONGEST: f64 = 100_000.0;

/// An interval reaches so many standard uncertainties to either side: 95 %.
const COVERAGE: f64 = 2.0;

/// A cooling curve with its uncertainty. Time counts in minutes from where it begins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingCurve {
    /// Logarithms of the conductances of surface and of open top, W/(m² K).
    cup: [f64; 2],
    /// Their covariance.
    covariance: [[f64; 2]; 2],
    /// The fill that is known, and that of the drink.
    known: Filled,
    fill: f64,
    cover: Cover,
    /// What the rates are off by, whatever the fill.
    doubt: f64,
    /// The excesses that have been seen, from the highest to the lowest; all of them without readings.
    seen: (f64, f64),
    largest_miss: f64,
    start: Uncertain,
    room: f64,
}

impl CoolingCurve {
    /// Of a cup of which nothing is known but what it holds, ml. `None` for a cup that holds nothing.
    pub(super) fn of_a_cup(capacity: f64, prior: &CupPrior) -> Option<Self> {
        Some(Self {
            cup: [prior.mean[0], prior.mean[1]],
            covariance: [[prior.u[0].powi(2), 0.0], [0.0, prior.u[1].powi(2)]],
            known: Filled::new(capacity, USUAL_FILL)?,
            fill: USUAL_FILL,
            cover: Cover::NONE,
            doubt: 0.0,
            seen: (f64::INFINITY, 0.0),
            largest_miss: 0.0,
            start: Uncertain::exact(POURED_CELSIUS),
            room: USUAL_ROOM,
        })
    }

    /// Of a cup with a stated time constant: minutes in which it falls 63 % of the way from 85 to 22 °C, full and open. It is
    /// weighed against other cups by its own doubt.
    pub(super) fn with_time_constant(
        minutes: f64,
        capacity: f64,
        prior: &CupPrior,
    ) -> Option<Self> {
        let known = Filled::new(capacity, 1.0)?;
        let excess = POURED_CELSIUS - USUAL_ROOM;
        let mut start: Parameters = [0.0; PARAMETERS];
        start[DRY] = prior.mean[0];
        start[EVAPORATION] = prior.mean[1];
        let found = fit(start, |parameters, residuals| {
            let (dry, evaporation) = (parameters[DRY], parameters[EVAPORATION]);
            let law = Law::of(dry.exp(), evaporation.exp(), known, USUAL_ROOM);
            let fallen = law.minutes(excess, excess / std::f64::consts::E);
            residuals.clear();
            residuals.extend(parameters);
            residuals[DRY] = (dry - prior.mean[0]) / prior.u[0];
            residuals[EVAPORATION] = (evaporation - prior.mean[1]) / prior.u[1];
            residuals.push((fallen / minutes).ln() / STATED);
        })?;
        Some(Self {
            cup: [found.parameters[DRY], found.parameters[EVAPORATION]],
            covariance: part(&found.covariance),
            known,
            doubt: RUN_TO_RUN,
            ..Self::of_a_cup(capacity, prior)?
        })
    }

    /// Of a cup that was read.
    pub(super) fn of_readings(measured: &MeasuredCooling, noted: bool) -> Self {
        let not_noted = if noted { 0.0 } else { FILL_NOT_NOTED };
        Self {
            cup: [measured.parameters[DRY], measured.parameters[EVAPORATION]],
            covariance: part(&measured.covariance),
            known: measured.cup,
            fill: measured.cup.fill,
            cover: Cover::NONE,
            doubt: RUN_TO_RUN.hypot(not_noted),
            seen: measured.seen(),
            largest_miss: measured.largest_miss(),
            start: Uncertain::exact(POURED_CELSIUS),
            room: measured.room,
        }
    }

    /// The same cup with what it is closed with.
    #[must_use]
    pub(super) fn under(self, closure: Option<&Closure>) -> Self {
        Self {
            cover: Cover::of(closure),
            ..self
        }
    }

    /// The same cup with so much in it, as a part of what it holds; a usual fill, with its doubt, when that is not known.
    #[must_use]
    pub(super) fn filled(self, fill: Option<f64>) -> Self {
        let filled = fill.and_then(|fill| Filled::new(self.known.capacity, fill));
        Self {
            fill: filled.map_or(USUAL_FILL, |filled| filled.fill),
            doubt: self.doubt.hypot(if filled.is_some() {
                0.0
            } else {
                FILL_NOT_NOTED
            }),
            ..self
        }
    }

    /// The same cup with a drink that begins at a temperature (with its standard uncertainty), in a room of another one.
    #[must_use]
    pub fn starting_at(self, start: Uncertain, room: f64) -> Self {
        Self {
            start,
            room,
            ..self
        }
    }

    /// The same cup in a room of so many °C.
    #[must_use]
    pub(super) fn in_room(self, room: f64) -> Self {
        Self { room, ..self }
    }

    /// Temperature of the room, °C.
    pub fn room(&self) -> f64 {
        self.room
    }

    /// The part of the cup that is full.
    pub fn fill(&self) -> f64 {
        self.fill
    }

    /// The largest distance of a reading from the curve, K; 0 without readings.
    pub fn largest_miss(&self) -> f64 {
        self.largest_miss
    }

    /// Minutes in which a drink falls 63 % of the way from 85 °C to the room, with their standard uncertainty.
    pub fn time_constant(&self) -> Option<Uncertain> {
        let to = self.room + (POURED_CELSIUS - self.room) / std::f64::consts::E;
        let minutes = self.minutes_between(POURED_CELSIUS, to, self.room)?;
        Some(Uncertain::relative(
            minutes,
            self.doubt_between(POURED_CELSIUS, to),
        ))
    }

    /// Temperature after so many minutes, °C, with its standard uncertainty to the first order; [`Self::interval_at`] reaches
    /// as far as it may be off.
    pub fn temperature_at(&self, minutes: f64) -> Uncertain {
        let excess = self.start.value - self.room;
        if excess <= NOTHING || minutes <= 0.0 {
            return self.start;
        }
        let value = self.room + self.law(self.room).after(excess, minutes);
        let late = self.slope(value) * minutes * self.doubts(self.start.value, value).0;
        Uncertain {
            value,
            u: late.hypot(self.effect_of_ends(value, minutes)),
        }
    }

    /// The temperatures, °C, between which the drink is after so many minutes in 95 of 100 cases. They may lie below the room,
    /// which is not known for sure, either.
    pub fn interval_at(&self, minutes: f64) -> [f64; 2] {
        let value = self.temperature_at(minutes).value;
        let excess = self.start.value - self.room;
        let ends = COVERAGE * self.effect_of_ends(value, minutes);
        if excess <= NOTHING || minutes <= 0.0 {
            return [value - ends, value + ends];
        }
        let law = self.law(self.room);
        let times = (COVERAGE * self.doubts(self.start.value, value).0).exp();
        let colder = value - (self.room + law.after(excess, minutes * times));
        let hotter = self.room + law.after(excess, minutes / times) - value;
        [value - colder.hypot(ends), value + hotter.hypot(ends)]
    }

    /// Minutes until a temperature is reached, with their standard uncertainty to the first order. 0 when it is that cool
    /// already; `None` when the room is no cooler.
    pub fn minutes_until(&self, celsius: f64) -> Option<Uncertain> {
        if self.start.value <= celsius {
            return Some(Uncertain::exact(0.0));
        }
        let minutes = self.minutes_between(self.start.value, celsius, self.room)?;
        let rate = minutes * self.doubt_between(self.start.value, celsius);
        Some(Uncertain {
            value: minutes,
            u: rate.hypot(self.start_minutes()),
        })
    }

    /// The minutes between which a temperature is reached in 95 of 100 cases. Rates are known within factors, which is why the
    /// late end is farther off than the early one.
    pub fn interval_until(&self, celsius: f64) -> Option<[f64; 2]> {
        let start = COVERAGE * self.start_minutes();
        if self.start.value <= celsius {
            // It may have been handed over hotter than that.
            let hotter = self.start.value + COVERAGE * self.start.u;
            let latest = self.minutes_between(hotter, celsius, self.room);
            return Some([0.0, latest.unwrap_or(0.0)]);
        }
        let minutes = self.minutes_between(self.start.value, celsius, self.room)?;
        let times = (COVERAGE * self.doubt_between(self.start.value, celsius)).exp();
        let (early, late) = (minutes - minutes / times, minutes * times - minutes);
        Some([
            (minutes - early.hypot(start)).max(0.0),
            (minutes + late.hypot(start)).min(LONGEST),
        ])
    }

    /// Minutes from one temperature to another in a room, as [`Self::starting_at`] and [`Self::minutes_until`] together but
    /// without uncertainty: the search asks this for every candidate.
    pub(in crate::balance) fn minutes_between<N: Number>(
        &self,
        from: N,
        to: f64,
        room: f64,
    ) -> Option<N> {
        let (from, to) = (from - room, to - room);
        if to <= 0.0 {
            return None;
        }
        let law = self.law(room);
        let minutes = from.max(N::from(to)).through(
            |from| law.minutes(from, to),
            |from| 1.0 / (from * law.rate(from)),
        );
        let is_finite = minutes.value().is_finite();
        is_finite.then(|| minutes.min(N::from(LONGEST)))
    }

    /// What the minutes between two temperatures in the room may be off by, as a part of them.
    pub(in crate::balance) fn doubt_between(&self, from: f64, to: f64) -> f64 {
        let (rates, room) = self.doubts(from, to);
        rates.hypot(room)
    }

    /// What the minutes between two temperatures may be off by, as a part of them: first by the rates (the cup, its cover and
    /// fill, and the law where nothing has been seen), then by the room.
    fn doubts(&self, from: f64, to: f64) -> (f64, f64) {
        let from = from - self.room;
        // No way at all is as doubtful as the first part of it.
        let to = (to - self.room).min(0.999 * from).max(1e-3 * from);
        if from.is_nan() || from <= NOTHING {
            return (self.doubt, 0.0);
        }
        let law = self.law(self.room);
        let minutes = law.minutes(from, to);
        let moved = |dry: f64, evaporation: f64| {
            let law = Law {
                dry: law.dry * dry,
                evaporation: law.evaporation * evaporation,
                ..law
            };
            law.minutes(from, to)
        };
        let (less, more) = (1.0 - 1e-3, 1.0 + 1e-3);
        let slope = |more: f64, less: f64| (more - less) / (2e-3 * minutes);
        let gradient = [
            slope(moved(more, 1.0), moved(less, 1.0)),
            slope(moved(1.0, more), moved(1.0, less)),
        ];
        let [[dry, both], [_, evaporation]] = self.covariance;
        let cup = gradient[0].powi(2) * dry
            + 2.0 * gradient[0] * gradient[1] * both
            + gradient[1].powi(2) * evaporation;
        let cover = self.cover.doubt.0.hypot(gradient[1] * self.cover.doubt.1);
        let fill = OTHER_FILL * (self.fill / self.known.fill).ln();
        let kelvin = 0.01 * to;
        let in_room = |by: f64| {
            let law = law.in_room(self.room + by);
            law.minutes(from - by, to - by)
        };
        let room =
            ROOM_UNCERTAINTY * (in_room(kelvin) - in_room(-kelvin)) / (2.0 * kelvin * minutes);
        let unseen = |high: f64, low: f64| {
            if high > low {
                law.minutes(high, low)
            } else {
                0.0
            }
        };
        let (first, last) = self.seen;
        let beyond = BEYOND * (unseen(from, first.max(to)) + unseen(last.min(from), to)) / minutes;
        let parts = [cover, fill, beyond, self.doubt];
        let rates = cup.max(0.0) + parts.map(|part| part * part).iter().sum::<f64>();
        if rates.is_finite() && room.is_finite() {
            (rates.sqrt(), room.abs())
        } else {
            // A cup that takes longer than numbers go does not cool.
            (self.doubt, 0.0)
        }
    }

    fn law(&self, room: f64) -> Law {
        let filled = Filled {
            fill: self.fill,
            ..self.known
        };
        let [dry, evaporation] = self.cup;
        let cover = self.cover;
        Law::of(
            dry.exp() * cover.rate,
            evaporation.exp() * cover.rate * cover.evaporation,
            filled,
            room,
        )
    }

    /// What the uncertainties of start and room do once a temperature is reached after so many minutes, K.
    fn effect_of_ends(&self, celsius: f64, minutes: f64) -> f64 {
        let first = self.slope(self.start.value);
        if first <= 0.0 || minutes <= 0.0 {
            return self.start.u;
        }
        let start = self.start.u * self.slope(celsius) / first;
        // A tenth of a kelvin, but not past the drink itself.
        let moved = 0.1_f64.min(0.01 * (self.start.value - self.room));
        let in_room = |by: f64| {
            let excess = self.start.value - self.room - by;
            by + self.law(self.room + by).after(excess, minutes)
        };
        let room = ROOM_UNCERTAINTY * (in_room(moved) - in_room(-moved)) / (2.0 * moved);
        start.hypot(room)
    }

    /// The uncertainty of the start in minutes.
    fn start_minutes(&self) -> f64 {
        match self.slope(self.start.value) {
            0.0 => 0.0,
            slope => self.start.u / slope,
        }
    }

    /// How fast it falls at a temperature, K/min; 0 at that of the room.
    fn slope(&self, celsius: f64) -> f64 {
        let excess = celsius - self.room;
        if excess > NOTHING {
            self.law(self.room).rate(excess) * excess
        } else {
            0.0
        }
    }
}

/// The part of a covariance that belongs to the conductances.
fn part(covariance: &super::fit::Covariance) -> [[f64; 2]; 2] {
    [DRY, EVAPORATION].map(|row| [DRY, EVAPORATION].map(|column| covariance[row][column]))
}
