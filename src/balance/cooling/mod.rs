//! How a hot drink cools in its cup.
//!
//! Heat leaves through wall and surface and by evaporation ([`law`]). What a cup is like is known beforehand from physics and
//! published cups ([`prior`]); thermometer readings ([`run`]) or a stated time constant move that as far as they are sure. Both
//! ways depend on how full the cup is, on the room, and on a lid, which keeps vapour in.
//!
//! # Limitations
//!
//! - A cup is an upright cylinder, and the warmth that its wall holds is not told apart from how well it insulates: a rate that
//!   is taken from one fill to another is doubted more the farther they are apart.
//! - What a cold wall takes at first belongs to the serving temperature, where mass and specific heat of the cup are stated.
//!   Where they are not, a drink is cooler in the first minutes than is said here.
//! - Milk drinks cool a little more slowly than water and tea. Nothing here tells them apart.
//! - Air is taken as saturated: near the room a drink in dry air is a degree or two cooler than is said here.

mod cover;
mod curve;
mod fit;
mod law;
mod prior;
mod run;

pub use curve::{CoolingCurve, POURED_CELSIUS};
pub use prior::{CupPrior, PUBLISHED_CUPS, PublishedCup};
pub use run::{CoolingError, LEAST_READINGS, MeasuredCooling, NOTED_ROOM, ReadCup};

use super::figures::Figures;
use super::measurand::Measurand;
use super::published::serving::{LUKEWARM_CELSIUS, VERY_HOT_CELSIUS};
use super::report::Balance;
use crate::book::{Book, ClosureKind, CoolingRun, Vessel};
use crate::quantity::Uncertain;
use run::{give_a_curve, usable};

/// Rooms in which a drink may be left to cool, °C.
const ROOMS: std::ops::RangeInclusive<f64> = -90.0..=70.0;

/// What a curve rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CoolingBasis {
    /// So many readings of the vessel.
    Readings(usize),
    /// The time constant that is stated for the vessel.
    TimeConstant,
    /// Nothing but its capacity: published cups.
    PublishedCups,
}

/// What would tell more of how a vessel cools.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CoolingQuestion {
    /// There are no readings that give a curve.
    Readings,
    /// Nobody noted how much was in it when it was read.
    Volume,
    /// Its usual lid or film states no factor.
    Cover,
    /// The readings end above the temperature at which drinks are tasted.
    LaterReadings,
    /// Another run of the same cup.
    AnotherRun,
}

impl CoolingQuestion {
    /// What of a vessel is worth the most, for drinks that are tasted at so many °C.
    pub fn of(vessel: &Vessel, drinking: f64) -> Self {
        let read = vessel.cooling_run.as_ref().filter(|run| give_a_curve(run));
        let Some(run) = read else {
            return Self::Readings;
        };
        let coldest = usable(run.room, &run.readings)
            .map(|(_, excess)| run.room + excess)
            .fold(f64::MAX, f64::min);
        let cover = vessel.usual_closure().is_some_and(|closure| {
            closure.kind != ClosureKind::Open && closure.cooling_factor.is_none()
        });
        if run.millilitres.is_none() {
            Self::Volume
        } else if cover {
            Self::Cover
        } else if coldest > drinking {
            Self::LaterReadings
        } else {
            Self::AnotherRun
        }
    }
}

/// What the readings of a vessel say of it.
pub fn measured_cooling(
    vessel: &Vessel,
    run: &CoolingRun,
) -> Result<MeasuredCooling, CoolingError> {
    let cup = ReadCup {
        capacity: vessel.capacity,
        millilitres: run.millilitres,
        covered: false,
        room: Uncertain {
            value: run.room,
            u: NOTED_ROOM,
        },
    };
    MeasuredCooling::of(&cup, &run.readings, CupPrior::published())
}

/// The curve of a vessel with its usual closure, so full of its capacity (0 to 1), in a room, and what it rests on. Readings
/// that give no curve are passed over for the stated time constant, and without one for published cups. A fill that is not
/// known is taken as a usual one. `None` when the vessel holds nothing or no room is like that.
pub fn curve_of(
    vessel: &Vessel,
    room: f64,
    fill: Option<f64>,
) -> Option<(CoolingCurve, CoolingBasis)> {
    if !ROOMS.contains(&room) {
        return None;
    }
    let prior = CupPrior::published();
    let read = || {
        let run = vessel.cooling_run.as_ref()?;
        let measured = measured_cooling(vessel, run).ok()?;
        let curve = CoolingCurve::of_readings(&measured, run.millilitres.is_some());
        Some((curve, CoolingBasis::Readings(measured.readings())))
    };
    let stated = || {
        let minutes = vessel
            .cooling_minutes
            .filter(|minutes| minutes.is_finite() && *minutes > 0.0)?;
        let curve = CoolingCurve::with_time_constant(minutes, vessel.capacity, prior)?;
        Some((curve, CoolingBasis::TimeConstant))
    };
    let published = || {
        let curve = CoolingCurve::of_a_cup(vessel.capacity, prior)?;
        Some((curve, CoolingBasis::PublishedCups))
    };
    let (curve, basis) = read().or_else(stated).or_else(published)?;
    let curve = curve
        .under(vessel.usual_closure())
        .filled(fill)
        .in_room(room);
    Some((curve, basis))
}

/// A temperature that a cooling drink passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CoolingLine {
    /// Very hot ends here.
    VeryHot,
    /// The temperature at which this drink is tasted and compared.
    Drinking,
    /// Neither warm nor cold.
    Lukewarm,
}

/// When a drink passes a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingMilestone {
    /// Which line.
    pub line: CoolingLine,
    /// Its temperature, °C.
    pub celsius: f64,
    /// Minutes until then; `None` when the room is no cooler.
    pub minutes: Option<Uncertain>,
    /// The minutes between which that happens in 95 of 100 cases.
    pub interval: Option<[f64; 2]>,
}

/// How the drink of a balance cools in its cup.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cooling {
    /// From the serving temperature on.
    pub curve: CoolingCurve,
    /// What it rests on.
    pub basis: CoolingBasis,
    /// The named lines, the hottest first unless the shop drinks hotter than 65 °C or cooler than 37 °C.
    pub milestones: [CoolingMilestone; 3],
}

impl Cooling {
    /// When it passes a line.
    pub fn milestone(&self, line: CoolingLine) -> &CoolingMilestone {
        let [very_hot, drinking, lukewarm] = &self.milestones;
        match line {
            CoolingLine::VeryHot => very_hot,
            CoolingLine::Drinking => drinking,
            CoolingLine::Lukewarm => lukewarm,
        }
    }
}

/// How the drink of a balance cools in its cup; `None` for a drink with ice or no cooler room, or without a cup that holds
/// something.
pub fn cooling(book: &Book, balance: &Balance) -> Option<Cooling> {
    let cup = balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| book.vessel(id))?;
    let room = book.settings.room_temperature;
    let served = balance.reported(Measurand::ServingTemperature);
    let start = Uncertain {
        value: served.value?,
        u: served.u.unwrap_or(0.0),
    };
    if balance.iced || start.value <= room {
        return None;
    }
    let fill = fill_of(&balance.figures);
    let (curve, basis) = curve_of(cup, room, fill)?;
    let curve = curve.starting_at(start, room);
    let milestone = |line, celsius| CoolingMilestone {
        line,
        celsius,
        minutes: curve.minutes_until(celsius),
        interval: curve.interval_until(celsius),
    };
    Some(Cooling {
        curve,
        basis,
        milestones: [
            milestone(CoolingLine::VeryHot, VERY_HOT_CELSIUS),
            milestone(CoolingLine::Drinking, balance.drinking_temperature),
            milestone(CoolingLine::Lukewarm, LUKEWARM_CELSIUS),
        ],
    })
}

/// The part of the cup that a drink fills; `None` when something in it has no known volume.
pub(super) fn fill_of(figures: &Figures) -> Option<f64> {
    let percent = figures.complete(Measurand::Fill)?;
    (percent.is_finite() && percent > 0.0).then_some(percent / 100.0)
}
