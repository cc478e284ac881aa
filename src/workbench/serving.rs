//! What is said of a drink as it is served: how it cools or stands, what is declared of it, what is asked, what is left over.
//!
//! Everything that the screen draws of it.

use crate::balance::{
    Balance, Cooling, CoolingBasis, CoolingError, Margin, Measurand, MeltRate, NutritionRow,
    Standing, StatementFinding, YardstickReading, cooling, declaration, margin, measured_cooling,
    standing, statement_findings_of, yardstick_reading,
};
use crate::book::{Book, CoolingReading, Vessel, Yardstick};
use crate::quantity::Uncertain;

/// Minutes after which a drink with ice is looked at.
pub const STANDING_MINUTES: [f64; 4] = [0.0, 5.0, 10.0, 20.0];

/// How many pieces a drawn curve has.
const PIECES: u32 = 96;

/// The shortest and the longest time that a cooling curve is drawn for, minutes.
const DRAWN_MINUTES: (f64, f64) = (15.0, 360.0);

/// What a curve goes on for behind the last line that it passes, as a part of the time until then.
const BEYOND: f64 = 0.1;

/// A drink as it is served.
#[derive(Clone, Debug, PartialEq)]
pub struct Serving {
    /// How it cools in its cup, or why that is not known.
    pub cooling: Result<CoolingCourse, NoCooling>,
    /// The thermometer readings of its cup, if there are any.
    pub run: Option<RunCourse>,
    /// How fast ice melts in this shop.
    pub melt_rate: MeltRate,
    /// The drink after each of [`STANDING_MINUTES`]; empty when no ice is left in it.
    pub standing: Vec<Standing>,
    /// The nutrition declaration.
    pub declaration: Vec<NutritionRow>,
    /// Every yardstick, turned on or not, in the order of [`Yardstick::ALL`].
    pub yardsticks: Vec<YardstickReading>,
    /// What the statements of its ingredients ask.
    pub questions: Vec<StatementFinding>,
    /// What is left of the menu price; `None` without one.
    pub margin: Option<Margin>,
}

/// A point of a curve that is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoursePoint {
    /// Minutes since it was handed over, or since the first look.
    pub minutes: f64,
    /// Temperature, °C.
    pub celsius: f64,
    /// Its standard uncertainty, K.
    pub u: f64,
    /// Between which temperatures it is in 95 of 100 cases, °C.
    pub interval: [f64; 2],
}

/// How a hot drink cools, with its curve ready to be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingCourse {
    /// The curve and the lines that it passes.
    pub cooling: Cooling,
    /// Points of the curve, from the handing over on.
    pub points: Vec<CoursePoint>,
}

/// Thermometer readings of a cup, and the curve through them.
#[derive(Clone, Debug, PartialEq)]
pub struct RunCourse {
    /// The readings.
    pub readings: Vec<CoolingReading>,
    /// Points of the curve through them; empty while there is none.
    pub points: Vec<CoursePoint>,
    /// Why there is no curve through them.
    pub error: Option<CoolingError>,
}

/// Why nothing is said of how a drink cools.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoCooling {
    /// A drink with ice.
    Iced,
    /// It is no warmer than the room.
    NoWarmerThanRoom,
    /// The serving temperature itself is not known.
    NotWarm,
    /// The version names no cup.
    NoCup,
    /// The cup holds nothing.
    NoCapacity,
}

impl NoCooling {
    /// The message on it in the catalogues.
    pub fn message(self) -> &'static str {
        match self {
            Self::Iced => "cooling-iced",
            Self::NoWarmerThanRoom => "cooling-no-warmer",
            Self::NotWarm => "cooling-not-known",
            Self::NoCup => "cooling-no-cup",
            Self::NoCapacity => "serving-no-capacity",
        }
    }
}

/// What is said of the drink of a balance as it is served.
pub(super) fn serving(book: &Book, balance: &Balance) -> Serving {
    let cup = balance.resolved.cup.as_ref().and_then(|id| book.vessel(id));
    Serving {
        cooling: cooling_course(book, balance, cup.map(AsRef::as_ref)),
        run: cup.and_then(|cup| run_course(cup)),
        melt_rate: MeltRate::of(&book.settings),
        standing: standing(book, balance, &STANDING_MINUTES),
        declaration: declaration(balance),
        yardsticks: Yardstick::ALL
            .map(|yardstick| yardstick_reading(yardstick, book, balance))
            .to_vec(),
        questions: statement_findings_of(book, &balance.resolved),
        margin: margin(book, balance),
    }
}

fn cooling_course(
    book: &Book,
    balance: &Balance,
    cup: Option<&Vessel>,
) -> Result<CoolingCourse, NoCooling> {
    if balance.iced {
        return Err(NoCooling::Iced);
    }
    let served = balance
        .reported(Measurand::ServingTemperature)
        .value
        .ok_or(NoCooling::NotWarm)?;
    if served <= book.settings.room_temperature.celsius() {
        return Err(NoCooling::NoWarmerThanRoom);
    }
    let cup = cup.ok_or(NoCooling::NoCup)?;
    let cooling = cooling(book, balance).ok_or(NoCooling::NoCapacity)?;
    let last_line = cooling
        .milestones
        .iter()
        .filter_map(|milestone| Some(milestone.minutes?.value))
        .fold(0.0, f64::max);
    // Readings are drawn beside the curve, so there must be room for the last of them.
    let readings = cup
        .cooling_run
        .iter()
        .filter(|_| matches!(cooling.basis, CoolingBasis::Readings(_)))
        .flat_map(|run| &run.readings);
    let last = readings
        .map(|reading| reading.minutes)
        .fold(last_line, f64::max);
    let points = points(last, |minutes| {
        let at = cooling.curve.temperature_at(minutes);
        (at, cooling.curve.interval_at(minutes))
    });
    Ok(CoolingCourse { cooling, points })
}

fn run_course(cup: &Vessel) -> Option<RunCourse> {
    let run = cup.cooling_run.as_ref()?;
    let last = run
        .readings
        .iter()
        .map(|reading| reading.minutes)
        .fold(0.0, f64::max);
    let (points, error) = match measured_cooling(cup, run) {
        Ok(measured) => (
            points(last, |minutes| {
                let at = measured.temperature_at(minutes);
                (at, [at.value - 2.0 * at.u, at.value + 2.0 * at.u])
            }),
            None,
        ),
        Err(error) => (Vec::new(), Some(error)),
    };
    Some(RunCourse {
        readings: run.readings.clone(),
        points,
        error,
    })
}

fn points(last: f64, temperature: impl Fn(f64) -> (Uncertain, [f64; 2])) -> Vec<CoursePoint> {
    let until = (last * (1.0 + BEYOND)).clamp(DRAWN_MINUTES.0, DRAWN_MINUTES.1);
    (0..=PIECES)
        .map(|piece| {
            let minutes = until * f64::from(piece) / f64::from(PIECES);
            let (at, interval) = temperature(minutes);
            CoursePoint {
                minutes,
                celsius: at.value,
                u: at.u,
                interval,
            }
        })
        .collect()
}
