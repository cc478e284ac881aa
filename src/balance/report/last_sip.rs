//! From the counter to the last sip: temperature, ice, strength and sweetness of a drink while it stands and is drunk.
//!
//! A hot drink follows the cooling curve of its cup. A drink with ice takes heat from the room at the rate at which its ice melts
//! ([`MeltRate`]), stays at the freezing point of what is left while there is ice, and warms by the same heat afterwards, in proportion to
//! what it is cooler than the room: `dT/dt = r·L/C·(R − T)/R` in a room of R °C, with the melt rate r, 333.55 kJ/kg for L and the heat capacity C of the
//! drink. A cold drink without ice warms in the same way. Sweetness is that of each moment's own temperature.
//!
//! # Limitations
//!
//! - What is drunk meanwhile is left out: the rest of a hot drink cools faster than a full cup.
//! - Toppings and what floats on top stay as they are.

use super::axes::noticeable_step;
use super::balance::{Balance, balance};
use super::milestones::cooling;
use super::parts::{Parts, parts};
use super::standing::MeltRate;
use super::taste_difference::overall_distance;
use crate::balance::measurand::Measurand;
use crate::balance::mix::{Component, Mix};
use crate::balance::prepare::setup::sweetness_at;
use crate::balance::published::water::HEAT_OF_FUSION_KJ_PER_KG;
use crate::balance::solve::cooling::CoolingCurve;
use crate::balance::solve::figures::{REFERENCE_CELSIUS, sweetness_of};
use crate::balance::solve::physics::{Freezing, enthalpy, freezing_point, liquid_volume};
use crate::book::{Axis, Book, Change, ClosureKind, Place, Resolved, Role};
use crate::quantity::Uncertain;

/// Temperatures at which a drink is tasted, °C: beyond them sweetness is that of the nearest one.
const TASTED: [f64; 2] = [0.0, 75.0];

/// A drink at a moment.
#[derive(Clone, Debug, PartialEq)]
pub struct Sip {
    /// Minutes since it was handed over.
    pub minutes: f64,
    /// Its temperature, °C.
    pub temperature: Uncertain,
    /// Ice in it, g.
    pub ice: Uncertain,
    /// Sucrose-equivalent concentration at that temperature, g/100 ml; `None` when it is not known.
    pub sweetness: Option<Uncertain>,
    /// Tea solids, g/100 ml; `None` when they are not known.
    pub tea_strength: Option<Uncertain>,
    /// How far it is from what it is held to on each of [`LastSip::AXES`], in noticeable steps; `None` where that is not known.
    pub steps: [Option<f64>; 3],
    /// The root of the sum of their squares over the known ones; `None` when none is.
    pub distance: Option<f64>,
}

impl Sip {
    /// Whether it is within a step on every axis that is known; `None` when none is.
    pub fn is_level(&self) -> Option<bool> {
        self.distance?;
        Some(self.steps.iter().flatten().all(|steps| steps.abs() <= 1.0))
    }
}

/// A drink from the counter to the last sip.
#[derive(Clone, Debug, PartialEq)]
pub struct LastSip {
    /// The drink at each of the minutes asked for, in their order.
    pub sips: Vec<Sip>,
    /// How fast ice melts and, with it, a cold drink warms; `None` for a hot one.
    pub melt_rate: Option<MeltRate>,
    /// What the drink is held to on each of [`Self::AXES`].
    pub aims: [Option<f64>; 3],
    /// The noticeable steps around them.
    pub step: [f64; 3],
}

impl LastSip {
    /// What changes while a drink stands.
    pub const AXES: [Axis; 3] = [Axis::Temperature, Axis::Sweetness, Axis::TeaStrength];

    /// The sip that is nearest to what the drink is held to.
    pub fn best(&self) -> Option<&Sip> {
        self.sips.get(self.best_at()?)
    }

    fn best_at(&self) -> Option<usize> {
        self.best_at_from(0.0)
    }

    /// Where the best of the sips is that are drunk no earlier.
    fn best_at_from(&self, minutes: f64) -> Option<usize> {
        let distances = self.sips.iter().enumerate();
        let later = distances.filter(|(_, sip)| sip.minutes >= minutes);
        let known = later.filter_map(|(at, sip)| Some((at, sip.distance?)));
        let best = known.min_by(|(_, a), (_, b)| a.total_cmp(b));
        best.map(|(at, _)| at)
    }

    /// What there is to say of a drink that is on the way for so many minutes; `None` when nobody knows, or it is on the way for longer
    /// than it was followed.
    pub fn arrival(&self, minutes: f64) -> Option<LastSipRemark> {
        let sip = self.sips.iter().find(|sip| sip.minutes >= minutes)?;
        let best = &self.sips[self.best_at_from(minutes)?];
        Some(LastSipRemark::Arrives {
            sip: sip.clone(),
            best_minutes: best.minutes,
        })
    }

    /// The first and the last of the sips around the best one that are within a step on every axis; `None` when even the best is not.
    pub fn level_between(&self) -> Option<[f64; 2]> {
        let at = self.best_at()?;
        let is_level = |sip: &&Sip| sip.is_level() == Some(true);
        let before = self.sips[..=at].iter().rev().take_while(is_level).last()?;
        let after = self.sips[at..].iter().take_while(is_level).last()?;
        Some([before.minutes, after.minutes])
    }
}

/// A fact about a drink from the counter to the last sip.
#[derive(Clone, Debug, PartialEq)]
pub enum LastSipRemark {
    /// It is within a step on every axis that is known between these minutes.
    Level([f64; 2]),
    /// It never is.
    NeverLevel,
    /// When it is nearest to what it is held to, and how many steps are left in all.
    Best {
        /// Minutes since it was handed over.
        minutes: f64,
        /// The distance then.
        distance: f64,
    },
    /// What it is held to is not known on any axis.
    NothingKnown,
    /// What has become of it in the end.
    End(Sip),
    /// How fast its ice melts and it warms.
    Melts(MeltRate),
    /// What it is when it comes to its guest, and when it is at its best from then on, in minutes since it was handed over.
    Arrives {
        /// The sip then.
        sip: Sip,
        /// The minutes of the best one.
        best_minutes: f64,
    },
}

impl LastSip {
    /// What there is to say, in the order in which it is read.
    pub fn remarks(&self) -> Vec<LastSipRemark> {
        let Some((best, distance)) = self.best().and_then(|best| Some((best, best.distance?)))
        else {
            return vec![LastSipRemark::NothingKnown];
        };
        let level = self.level_between();
        let mut remarks = vec![level.map_or(LastSipRemark::NeverLevel, LastSipRemark::Level)];
        remarks.push(LastSipRemark::Best {
            minutes: best.minutes,
            distance,
        });
        remarks.extend(self.sips.last().cloned().map(LastSipRemark::End));
        remarks.extend(self.melt_rate.map(LastSipRemark::Melts));
        remarks
    }
}

/// The drink of a balance at each of these minutes, held to the taste of a standard, or of itself; `None` for an empty cup, or a
/// hot drink whose cup nobody knows.
pub fn last_sip(
    book: &Book,
    balance: &Balance,
    standard: Option<&Balance>,
    minutes: &[f64],
) -> Option<LastSip> {
    let served = balance.figures.complete(Measurand::ServingTemperature)?;
    let volume = balance.figures.complete(Measurand::Volume)?;
    if volume <= 0.0 {
        return None;
    }
    let room = book.settings.room_temperature.celsius();
    let is_hot = !balance.iced && served > room;
    let parts = parts(book, &balance.resolved);
    let course = if is_hot {
        Course::Cools(cooling(book, balance)?.curve)
    } else {
        Course::Warms(Box::new(Warming::of(book, &parts, room)))
    };
    let tasting = Tasting { balance, parts };
    let held = standard.unwrap_or(balance);
    let aims = [
        Some(wanted_temperature(balance, held, served)),
        held.aim_on(&Axis::Sweetness),
        held.aim_on(&Axis::TeaStrength),
    ];
    let step = std::array::from_fn(|at| {
        let aim = aims[at].unwrap_or(0.0);
        noticeable_step(&book.settings, &LastSip::AXES[at], aim).0
    });
    let sips = minutes
        .iter()
        .map(|minutes| course.at(&tasting, minutes.max(0.0)).held_to(aims, step));
    Some(LastSip {
        sips: sips.collect(),
        melt_rate: (!is_hot).then(|| MeltRate::of(&book.settings)),
        aims,
        step,
    })
}

/// Another way to hand a drink over.
#[derive(Clone, Debug, PartialEq)]
pub enum OtherWay {
    /// With another closure of its cup.
    Closure(ClosureKind),
    /// With so much of its loose ice, percent.
    Ice(f64),
}

/// Parts of the ice that are tried, percent.
const LESS_ICE: [f64; 2] = [75.0, 50.0];

/// What other closures of the cup change for a hot drink, and less ice for one with ice.
pub fn other_ways(
    book: &Book,
    drink: &Balance,
    standard: Option<&Balance>,
    minutes: &[f64],
) -> Vec<(OtherWay, LastSip)> {
    let mut found = Vec::new();
    if drink.iced {
        for percent in LESS_ICE {
            let lines = with_ice(&drink.resolved, percent / 100.0);
            let other = lines.map(|lines| balance(book, lines, &Place::Settings));
            let course = other.and_then(|other| last_sip(book, &other, standard, minutes));
            found.extend(course.map(|course| (OtherWay::Ice(percent), course)));
        }
        return found;
    }
    let cup = drink.resolved.cup.as_ref().and_then(|id| book.vessel(id));
    for at in 1..cup.map_or(0, |cup| cup.closures.len()) {
        let Some(mut cup) = cup.map(|cup| cup.as_ref().clone()) else {
            continue;
        };
        cup.closures.swap(0, at);
        let kind = cup.closures[0].kind;
        let mut otherwise = book.clone();
        otherwise.vessels.put(cup);
        let course = last_sip(&otherwise, drink, standard, minutes);
        found.extend(course.map(|course| (OtherWay::Closure(kind), course)));
    }
    found
}

/// The lines with a part of their loose ice; `None` where none is measured.
fn with_ice(lines: &Resolved, part: f64) -> Option<Resolved> {
    let mut less = lines.clone();
    let mut is_less = false;
    for line in lines.lines().filter(|line| line.role == Role::Ice) {
        let amount = line.amount.number().filter(|_| !line.amount.fills());
        if let Some(number) = amount {
            let amount = line.amount.with_number(number * part);
            is_less |= less.apply(&Change::Amount(line.id.clone(), amount));
        }
    }
    is_less.then_some(less)
}

/// The temperature at which a drink tastes as it should: that at which it was tasted, or its drinking temperature, unless it is
/// handed over cooler; a drink with ice is as it is handed over. A standard that is hot says nothing of an iced drink.
fn wanted_temperature(balance: &Balance, held: &Balance, served: f64) -> f64 {
    let of_held = held
        .aim_on(&Axis::Temperature)
        .filter(|_| held.iced == balance.iced);
    let handed_over = of_held.unwrap_or(served);
    let tasted = balance.tasted_at.unwrap_or(balance.drinking_temperature);
    if balance.iced {
        handed_over
    } else {
        handed_over.min(tasted)
    }
}

impl Sip {
    fn held_to(mut self, aims: [Option<f64>; 3], step: [f64; 3]) -> Self {
        let values = [
            Some(self.temperature.value),
            self.sweetness.map(|known| known.value),
            self.tea_strength.map(|known| known.value),
        ];
        for (at, steps) in self.steps.iter_mut().enumerate() {
            *steps = values[at]
                .zip(aims[at])
                .map(|(value, aim)| (value - aim) / step[at]);
        }
        self.distance = overall_distance(self.steps.iter().map(|steps| (*steps, 1.0)));
        self
    }
}

/// What becomes of the temperature.
enum Course {
    Cools(CoolingCurve),
    Warms(Box<Warming>),
}

impl Course {
    fn at(&self, tasting: &Tasting<'_>, minutes: f64) -> Sip {
        match self {
            Self::Cools(curve) => {
                let nothing = Uncertain::exact(0.0);
                tasting.sip(minutes, curve.temperature_at(minutes), [nothing; 2])
            }
            Self::Warms(warming) => {
                let (temperature, ice, melted) = warming.at(minutes);
                let slot = Measurand::ServingTemperature.slot();
                let served = tasting.balance.uncertainty(slot);
                let temperature = Uncertain {
                    u: temperature.u.hypot(served),
                    ..temperature
                };
                tasting.sip(minutes, temperature, [ice, melted])
            }
        }
    }
}

/// What a sip is tasted by.
struct Tasting<'drink> {
    balance: &'drink Balance,
    parts: Parts,
}

impl Tasting<'_> {
    /// Sweetness and tea strength at a temperature, when so much more ice has melted.
    fn taste(&self, celsius: f64, melted: f64) -> [f64; 2] {
        let Parts {
            prepared, poured, ..
        } = &self.parts;
        let mut setup = prepared.setup;
        setup.sweetness = sweetness_at(celsius.clamp(TASTED[0], TASTED[1]));
        let drink = &poured.drink;
        let volume = liquid_volume(drink, poured.melted + melted, REFERENCE_CELSIUS);
        let tea = drink.get(Component::TeaSolids) / volume * 100.0;
        [sweetness_of(drink, volume, &setup), tea]
    }

    /// A sip at a temperature, with the ice left in it and what has melted since it was handed over.
    fn sip(&self, minutes: f64, temperature: Uncertain, [ice, melted]: [Uncertain; 2]) -> Sip {
        let value = self.taste(temperature.value, melted.value);
        let thinner = self.taste(temperature.value, melted.value + melted.u);
        let warmer = self.taste(temperature.value + temperature.u, melted.value);
        let figure = |at: usize, measurand: Measurand| {
            let handed_over = self.balance.figures.complete(measurand)?;
            let part = if handed_over == 0.0 {
                0.0
            } else {
                self.balance.uncertainty(measurand.slot()) / handed_over * value[at]
            };
            Some(Uncertain {
                value: value[at],
                u: part
                    .hypot(thinner[at] - value[at])
                    .hypot(warmer[at] - value[at]),
            })
        };
        Sip {
            minutes,
            temperature,
            ice,
            sweetness: figure(0, Measurand::Sweetness),
            tea_strength: figure(1, Measurand::TeaStrength),
            steps: [None; 3],
            distance: None,
        }
    }
}

/// A cold drink in a warmer room.
struct Warming {
    drink: Mix,
    /// Temperature as it is handed over, °C.
    served: f64,
    /// Ice that has melted by then, and that is left, g.
    melted: f64,
    ice: f64,
    room: f64,
    rate: Uncertain,
}

impl Warming {
    fn of(book: &Book, parts: &Parts, room: f64) -> Self {
        let poured = &parts.poured;
        Self {
            drink: poured.drink,
            served: poured.served.celsius,
            melted: poured.melted,
            ice: poured.served.ice_left,
            room,
            rate: MeltRate::of(&book.settings).grams_per_minute,
        }
    }

    /// Temperature, ice that is left, and what has melted since it was handed over.
    fn at(&self, minutes: f64) -> (Uncertain, Uncertain, Uncertain) {
        let by_rate = |rate: f64| {
            let melted = (rate * minutes).clamp(0.0, self.ice);
            [self.temperature(rate, minutes), self.ice - melted, melted]
        };
        let [low, value, high] =
            [-1.0, 0.0, 1.0].map(|times| by_rate((self.rate.value + times * self.rate.u).max(0.0)));
        let figure = |at: usize| Uncertain {
            value: value[at],
            u: (high[at] - low[at]).abs() / 2.0,
        };
        (figure(0), figure(1), figure(2))
    }

    fn temperature(&self, rate: f64, minutes: f64) -> f64 {
        let freezing = Freezing::default();
        let gone_after = if self.ice <= 0.0 {
            0.0
        } else {
            self.ice / rate
        };
        if minutes < gone_after {
            return freezing_point(&self.drink, self.melted + rate * minutes, freezing);
        }
        let from = if self.ice > 0.0 {
            freezing_point(&self.drink, self.melted + self.ice, freezing)
        } else {
            self.served
        };
        let liquid = self.drink.melted();
        let capacity = enthalpy(&liquid, from + 0.5) - enthalpy(&liquid, from - 0.5);
        let per_minute =
            rate * HEAT_OF_FUSION_KJ_PER_KG / 1000.0 / capacity.max(1e-9) / self.room.max(1.0);
        let excess = (self.room - from) * (-per_minute * (minutes - gone_after)).exp();
        self.room - excess
    }
}
