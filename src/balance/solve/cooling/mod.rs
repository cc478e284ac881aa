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

use std::rc::Rc;

use crate::balance::recalled::Recalled;
use crate::book::{ClosureKind, CoolingRun, Vessel, VesselId};
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

/// A curve with what it rests on, of the vessel that it was worked out for.
type OfVessel = (Rc<Vessel>, Option<(CoolingCurve, CoolingBasis)>);

thread_local! {
    static KNOWN: Recalled<VesselId, OfVessel> = const { Recalled::new() };
}

/// The curve of a vessel as it is open, before its fill and the room are known.
fn of_open_cup(vessel: &Vessel) -> Option<(CoolingCurve, CoolingBasis)> {
    let is_same = |(known, _): &OfVessel| **known == *vessel;
    let fitted = || (Rc::new(vessel.clone()), fitted_to(vessel));
    KNOWN
        .with(|known| known.answer(&vessel.id, is_same, fitted))
        .1
}

fn fitted_to(vessel: &Vessel) -> Option<(CoolingCurve, CoolingBasis)> {
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
    read().or_else(stated).or_else(published)
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
    let (curve, basis) = of_open_cup(vessel)?;
    let curve = curve
        .under(vessel.usual_closure())
        .filled(fill)
        .in_room(room);
    Some((curve, basis))
}
