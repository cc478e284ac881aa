//! How a hot drink cools in its cup: one or two exponentials towards the temperature of the room.
//!
//! `T(t) = room + a·e^(−kt)` is Newton's law of cooling with one constant. A drink and the wall of its cup are two bodies
//! that exchange heat with each other and with the room; the solution of their two linear equations is
//! `T(t) = room + a·e^(−kt) + b·e^(−lt)`. One constant misses a measured curve by 2.7 K in a glass cup and by 9 K in a mug,
//! two by 1.3 K in the mug; so two are fitted where there are enough readings and they say so.
//!
//! # Limitations
//!
//! - A curve holds for the vessel, the fill and the closure of its readings. Less drink cools faster; nothing here scales that.
//! - Evaporation makes every drink cool faster while it is hot; two exponentials take a part of that in.
//! - A drink that is handed over cooler than the readings began enters the curve where the readings were that far above the
//!   room. One that is hotter is taken to cool in proportion.

mod curve;
mod fit;

pub use curve::{CoolingCurve, CoolingError, CoolingModel, READINGS_FOR_ONE, READINGS_FOR_TWO};

use super::measurand::Measurand;
use super::published::serving::{LUKEWARM_CELSIUS, VERY_HOT_CELSIUS};
use super::report::Balance;
use crate::book::{Book, Vessel};
use crate::quantity::Uncertain;
use curve::usable;

/// Relative standard uncertainty of a time constant that is stated for a vessel (assumed).
pub(super) const TIME_CONSTANT_UNCERTAINTY: f64 = 0.15;

/// What a curve rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CoolingBasis {
    /// So many readings of the vessel.
    Readings(usize),
    /// The time constant that is stated for the vessel.
    TimeConstant,
}

/// The curve of a vessel with its usual closure, and what it rests on; `None` when nothing is known of its cooling.
/// Readings that give no curve are passed over for the stated time constant.
pub fn curve_of(vessel: &Vessel, room: f64) -> Option<(CoolingCurve, CoolingBasis)> {
    let factor = vessel
        .usual_closure()
        .and_then(|closure| closure.cooling_factor)
        .unwrap_or(1.0);
    let fitted = vessel.cooling_run.as_ref().and_then(|run| {
        let curve = CoolingCurve::through(run.room, &run.readings).ok()?;
        Some((
            curve,
            CoolingBasis::Readings(usable(run.room, &run.readings).len()),
        ))
    });
    let stated = || {
        let minutes = vessel.cooling_minutes.filter(|minutes| *minutes > 0.0)?;
        let curve =
            CoolingCurve::from_time_constant(100.0, room, minutes, TIME_CONSTANT_UNCERTAINTY);
        Some((curve, CoolingBasis::TimeConstant))
    };
    fitted
        .or_else(stated)
        .map(|(curve, basis)| (curve.with_rate_factor(factor), basis))
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

impl CoolingLine {
    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::VeryHot => "below very hot",
            Self::Drinking => "drinking temperature",
            Self::Lukewarm => "lukewarm",
        }
    }
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

/// How the drink of a balance cools in its cup; `None` for a drink with ice or no cooler room, or when nothing is known of
/// the cooling of its cup.
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
    let (curve, basis) = curve_of(cup, room)?;
    let curve = curve.starting_at(start, room);
    let milestone = |line, celsius| CoolingMilestone {
        line,
        celsius,
        minutes: curve.minutes_until(celsius),
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
