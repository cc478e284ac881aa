//! When the drink of a balance passes the temperatures that matter while it cools in its cup.

use super::balance::Balance;
use crate::balance::measurand::Measurand;
use crate::balance::published::serving::{LUKEWARM_CELSIUS, VERY_HOT_CELSIUS};
use crate::balance::solve::cooling::CoolingCurve;
use crate::balance::solve::cooling::{CoolingBasis, curve_of};
use crate::balance::solve::figures::fill_of;
use crate::book::Book;
use crate::quantity::Uncertain;

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
    let room = book.settings.room_temperature.celsius();
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
