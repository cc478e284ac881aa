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
//! The folders of these steps are `prepare`, `solve` and `report`; a batch is solved while the drink is prepared that it goes into.
//!
//! Enthalpy counts from liquid water and dissolved solids at 0 °C. Concentrations are per 100 ml at 20 °C.

mod assumption;
mod brewing;
mod calibration;
mod cause;
mod control_chart;
mod diet;
mod house_made;
mod measurand;
mod mix;
pub mod number;
mod prepare;
pub mod published;
mod recalled;
mod report;
mod shopping;
mod slots;
mod solve;
mod statement;
pub mod wording;

pub use assumption::{Assumed, Assumption, Because, Kind};
pub use brewing::{
    Batches, Brew, BrewAmount, BrewError, BrewMethod, BrewTimes, BrewYield, DayMinute, Infusion,
    LEAF_BULK_DENSITY, REFERENCE_LEAF_PER_100_ML, RETENTION, brew_for, brew_times, brew_yield,
    in_batches,
};
pub use calibration::{
    DayCalibration, Drift, ForetoldWeighing, MoreWeighing, between_days, bulk_density_from, drift,
    grams_from_bulk_density, measure_foretold, more_weighing, volume_of_use,
};
pub use cause::{Cause, Sweet};
pub use control_chart::{
    ChartDay, ChartKind, ControlChart, FIRM, Limited, RUN, Shift, Signal, TooFewDays,
    control_charts, since_day,
};
pub use diet::{
    Against, AllergenSummary, Claim, Claims, Contradiction, Verdict, claims_of_ingredient,
};
pub use house_made::{
    BatchPart, BatchesFor, GramCost, HouseBrew, batches_for, cost_of_gram, house_brew, yield_of,
};
pub use measurand::{MEASURANDS, Measurand, flavour_figure};
pub use mix::{
    COMPONENTS, Component, FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
pub use prepare::pack::{pack_grams, usable_grams};
pub use prepare::per_gram::{PerGram, label_sweetness, per_gram};
pub use prepare::portion::{Portion, one_weighs, portion, scale_uncertainty};
pub use prepare::rescale::doubt_class;
pub use prepare::setup::temperature_uncertainty;
pub use prepare::{Kitchen, prepare, prepare_afresh};
pub use published::serving::{ScaldBound, ScaldTime};
pub use report::axes::{AxisValue, noticeable_step, slot_of};
pub use report::balance::{
    Balance, Contribution, Layer, Layers, NoFigure, Reported, Unweighed, balance, balance_version,
};
pub use report::caution::{
    CaffeineDose, Caution, CautionFact, CautionKind, HOT_FOR_A_WIDE_STRAW, Hot, KeptAt, Mention,
    NamedWords, NotKnown, Since, UseWithin,
};
pub use report::every_version::VersionBalances;
pub use report::held::{held_standard, level_aims, room_of, standard_balance, without_sweeteners};
pub use report::last_sip::{LastSip, LastSipRemark, OtherWay, Sip, last_sip, other_ways};
pub use report::margin::{Margin, margin};
pub use report::milestones::{Cooling, CoolingLine, CoolingMilestone, cooling};
pub use report::narrowing::{Doubtful, Narrowing, ToMeasure};
pub use report::nutrition::{NutritionRow, PrintedValue, declaration, printed};
pub use report::share::{Lens, LineShare};
pub use report::standing::{ASSUMED_MELT_RATE, MeltRate, Standing, standing};
pub use report::taste_difference::{
    AxisDifference, Difference, LEVEL_STEPS, Taste, difference, figure_difference,
    level_difference, overall_distance,
};
pub use report::unstated::Unstated;
pub use report::yardsticks::{
    Band, DayLimit, Grade, LARGE_PORTION, Level, Outcome, YardstickLine, YardstickPart,
    YardstickReading, yardstick_reading, yardsticks,
};
pub use shopping::{
    BatchToMake, FromTap, LeafAndWater, Need, Packs, Purchase, Shopping, TeaToBrew, shopping,
};
pub use slots::Slots;
pub use solve::cooling::{
    CoolingBasis, CoolingCurve, CoolingError, CoolingQuestion, CupPrior, LEAST_READINGS,
    MeasuredCooling, NOTED_ROOM, POURED_CELSIUS, PUBLISHED_CUPS, PublishedCup, ReadCup, curve_of,
    measured_cooling,
};
pub use solve::figures::{
    Figures, Poured, Sums, figures, figures_when_all_off, figures_with, pour, solved_count, sums,
};
pub use solve::physics::{
    Equilibrium, Freezing, Wall, enthalpy, equilibrium, freezing_point, ice_volume, liquid_volume,
};
pub use solve::prepared::{Fill, Prepared, PreparedLine, Scaling, Setup, SetupChange};
pub use solve::slopes::{Effect, effects};
pub use statement::{
    Concern, HintKind, Hints, NamedPolyol, NamedSweetener, StatementFinding, StatementKind,
    StatementMatch, hints_of, read_statement, statement_findings, statement_findings_of,
};
