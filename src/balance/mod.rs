//! The engine: from the lines of a version to everything that is said of the drink. Pure: no files, clock, randomness or
//! screen; the same book gives the same figures.
//!
//! One drink is a sum. Each line becomes a [`Mix`], mixes add, and every figure is a function of the sum:
//!
//! 1. [`prepare`] does every look-up and turns measures and labels into mixes per unit, with what is uncertain in them.
//! 2. [`figures()`] adds the lines up and evaluates the sum; it allocates nothing.
//! 3. [`balance`] repeats that with every cause of uncertainty off by its standard uncertainty, and puts names to what is
//!    missing.
//!
//! Enthalpy counts from liquid water and dissolved solids at 0 °C. Concentrations are per 100 ml at 20 °C.

mod axes;
mod brewing;
mod calibration;
mod cause;
mod caution;
mod composition;
mod cooling;
mod diet;
mod every_version;
mod figures;
mod kind;
mod label;
mod margin;
mod measurand;
mod mix;
mod nutrition;
mod parts;
mod physics;
mod portion;
mod prepare;
pub mod published;
mod report;
mod share;
mod standing;
mod statement;
pub mod wording;
mod yardsticks;

pub use axes::{
    AxisDifference, AxisValue, Difference, LEVEL_STEPS, difference, figure_difference,
    noticeable_step, overall_distance,
};
pub use brewing::{
    Batches, Brew, BrewAmount, BrewError, BrewMethod, BrewTimes, BrewYield, DayMinute, Infusion,
    REFERENCE_LEAF_PER_100_ML, RETENTION, brew_for, brew_times, brew_yield, in_batches,
};
pub use calibration::{
    DayCalibration, Drift, MoreWeighing, bulk_density_from, drift, grams_from_bulk_density,
    more_weighing, volume_of_use,
};
pub use cause::{Cause, Sweet};
pub use caution::{
    CaffeineDose, Caution, CautionFact, CautionKind, HOT_FOR_A_WIDE_STRAW, Hot, KeptAt, Mention,
    NamedWords, NotKnown, Since, UseWithin,
};
pub use composition::{PerGram, Slots, per_gram};
pub use cooling::{
    Cooling, CoolingBasis, CoolingCurve, CoolingError, CoolingLine, CoolingMilestone,
    CoolingQuestion, CupPrior, LEAST_READINGS, MeasuredCooling, NOTED_ROOM, POURED_CELSIUS,
    PUBLISHED_CUPS, PublishedCup, ReadCup, cooling, curve_of, measured_cooling,
};
pub use diet::{
    Against, AllergenSummary, Claim, Claims, Contradiction, Verdict, claims_of_ingredient,
};
pub use every_version::VersionBalances;
pub use figures::{
    Figures, Poured, Sums, figures, figures_when_all_off, figures_with, pour, solved_count, sums,
};
pub use kind::{Assumed, Assumption, Because, Kind};
pub use margin::{Margin, margin};
pub use measurand::{MEASURANDS, Measurand, flavour_figure};
pub use mix::{
    COMPONENTS, Component, FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
pub use nutrition::{NutritionRow, PrintedValue, declaration, printed};
pub use physics::{
    Equilibrium, Freezing, Wall, enthalpy, equilibrium, freezing_point, ice_volume, liquid_volume,
};
pub use portion::{Portion, portion};
pub use prepare::{Fill, Kitchen, Prepared, PreparedLine, Scaling, Setup, SetupChange, prepare};
pub use published::serving::{ScaldBound, ScaldTime};
pub use report::{
    Balance, Contribution, Layer, Layers, NoFigure, Reported, Unstated, balance, balance_version,
    standard_balance,
};
pub use share::{Lens, LineShare};
pub use standing::{ASSUMED_MELT_RATE, MeltRate, Standing, standing};
pub use statement::{
    Concern, HintKind, Hints, NamedPolyol, NamedSweetener, StatementFinding, StatementKind,
    StatementMatch, hints_of, read_statement, statement_findings, statement_findings_of,
};
pub use yardsticks::{
    Band, DayLimit, Grade, LARGE_PORTION, Level, Outcome, YardstickLine, YardstickPart,
    YardstickReading, yardstick_reading, yardsticks,
};
