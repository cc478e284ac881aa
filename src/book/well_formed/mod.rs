//! Everything that is wrong with a book, in the order of the book.
//!
//! The list is bounded, and so is the work: a book of many megabytes that somebody made on purpose costs seconds, not hours.

mod called_size;
mod checklist;
mod claims;
mod composition;
mod counter;
mod density;
mod energy;
mod house_made;
mod ingredient;
mod nearest;
mod prices;
mod ranges;
mod recipe;
mod since;
mod tasting;

pub use super::named_size::{CalledSize, Held, Miscalled, NamedUnit};
pub use called_size::{millilitres_in_name, miscalled};
pub use energy::{EnergyRange, energy_of_composition};
pub(super) use house_made::each_circle;
pub use nearest::nearest;
pub use ranges::FOOD_TEMPERATURE;
pub use recipe::LARGEST_AMOUNT;
pub use since::{new_errors, new_errors_of};

use super::{Book, FigureName, FigureRange, Finding, Instruments, Place, Tasted, Unfinished};
use crate::quantity::excerpt;
use checklist::Checklist;
use ranges::{DRINKING_TEMPERATURE, LEVEL, NAME};

/// Every finding of a book.
pub fn findings(book: &Book) -> Vec<Finding> {
    let mut list = Checklist::new();
    settings(book, &mut list);
    for item in &book.ingredients {
        ingredient::check(book, item, &mut list);
    }
    for item in &book.measures {
        counter::check_measure(book, item, &mut list);
    }
    for item in &book.vessels {
        counter::check_vessel(item, &mut list);
    }
    for item in &book.recipes {
        recipe::check(book, item, &mut list);
    }
    for item in &book.tastings {
        tasting::check(book, item, &mut list);
    }
    house_made::check_circles(book, &mut list);
    prices::check_age(book, &mut list);
    earlier_states(book, &mut list);
    list.finish()
}

/// The days from which on items have been as they are now.
fn earlier_states(book: &Book, list: &mut Checklist) {
    fn dates<T: Tasted>(item: &T, place: impl Fn() -> Place, list: &mut Checklist) {
        for state in &item.earlier().states {
            list.date(place(), state.until.as_deref());
        }
    }
    const FIELD: &str = "earlier";
    dates(&book.settings, || Place::Settings, list);
    for item in &book.ingredients {
        let place = || Place::Ingredient(item.id.clone(), FIELD);
        dates(item.as_ref(), place, list);
    }
    for item in &book.measures {
        let place = || Place::Measure(item.id.clone(), FIELD);
        dates(item.as_ref(), place, list);
    }
    for item in &book.vessels {
        let place = || Place::Vessel(item.id.clone(), FIELD);
        dates(item.as_ref(), place, list);
    }
    for item in &book.recipes {
        let place = || Place::Recipe(item.id.clone(), FIELD);
        dates(item.as_ref(), place, list);
    }
}

/// Temperatures of ice.
const ICE_TEMPERATURE: FigureRange = FigureRange::new(-40.0, 0.0, "°C");

/// Temperatures at which drinks are served, slush among them.
const SERVING_TEMPERATURE: FigureRange = FigureRange::new(-20.0, 100.0, "°C");

/// Densities of ice as it is poured; solid ice has 0.917.
const ICE_BULK_DENSITY: FigureRange = FigureRange::new(0.2, 0.917, "g/ml");

/// How fast ice melts.
const ICE_MELT_RATE: FigureRange = FigureRange::new(0.0, 100.0, "g/min");

/// Ice that is left in the cup.
const ICE_LEFT: FigureRange = FigureRange::new(0.0, 90.0, "%");

/// Sales taxes.
const SALES_TAX: FigureRange = FigureRange::new(0.0, 100.0, "%");

/// Steps of scales.
const SCALE_STEP: FigureRange = FigureRange::new(0.0, 100.0, "g");

/// What thermometers may be off.
const THERMOMETER_ERROR: FigureRange = FigureRange::new(0.0, 20.0, "K");

/// What marks may be off.
const MARK_ERROR: FigureRange = FigureRange::new(0.0, 50.0, "%");

/// Noticeable steps, as a part of the figure.
const NOTICEABLE_STEP: FigureRange = FigureRange::new(0.0, 2.0, "");

/// The least that noticeable steps can be, in the unit of the axis.
const STEP_FLOOR: FigureRange = FigureRange::new(0.0, 1000.0, "");

/// How much axes count.
const AXIS_WEIGHT: FigureRange = FigureRange::new(0.0, 100.0, "");

fn settings(book: &Book, list: &mut Checklist) {
    let settings = &book.settings;
    list.temperature_in_range(
        &Place::Settings,
        &FigureName::RoomTemperature,
        settings.room_temperature,
        DRINKING_TEMPERATURE,
    );
    for (what, value, range) in [
        (
            FigureName::RefrigeratorTemperature,
            settings.refrigerator_temperature,
            DRINKING_TEMPERATURE,
        ),
        (
            FigureName::HotDrinkingTemperature,
            settings.hot_drinking_temperature,
            DRINKING_TEMPERATURE,
        ),
        (
            FigureName::IcedDrinkingTemperature,
            settings.iced_drinking_temperature,
            DRINKING_TEMPERATURE,
        ),
        (
            FigureName::IceTemperature,
            settings.ice_temperature,
            ICE_TEMPERATURE,
        ),
    ] {
        list.in_range(Place::Settings, what, value, range);
    }
    windows(book, list);
    let (what, bulk) = (FigureName::IceBulkDensity, settings.ice_bulk_density);
    list.in_range(Place::Settings, what, bulk, ICE_BULK_DENSITY);
    if let Some(rate) = settings.ice_melt_rate {
        list.in_range(
            Place::Settings,
            FigureName::IceMeltRate,
            rate,
            ICE_MELT_RATE,
        );
    }
    if let Some(percent) = settings.ice_left {
        list.in_range(Place::Settings, FigureName::IceLeft, percent, ICE_LEFT);
    }
    for level in settings.sugar_levels.iter().chain(&settings.ice_levels) {
        let what = FigureName::Level(excerpt(&level.name, NAME));
        list.in_range(Place::Settings, what, level.percent, LEVEL);
    }
    for doubt in &settings.doubts {
        list.in_range(
            Place::Settings,
            FigureName::DoubtTimes,
            doubt.times,
            ranges::DOUBT_TIMES,
        );
        list.date(Place::Settings, Some(&doubt.date));
    }
    instruments(book, list);
    steps(book, list);
}

/// The temperatures that the shop serves at, and the tax in its prices.
fn windows(book: &Book, list: &mut Checklist) {
    let settings = &book.settings;
    for (what, window) in [
        (FigureName::HotWindow, settings.hot_window),
        (FigureName::IcedWindow, settings.iced_window),
    ] {
        let (from, to) = (window.from, window.to);
        for celsius in [from, to] {
            list.in_range(Place::Settings, what.clone(), celsius, SERVING_TEMPERATURE);
        }
        if from > to {
            list.unfinished(Place::Settings, Unfinished::Window { what, from, to });
        }
    }
    if let Some(percent) = settings.sales_tax_percent {
        list.in_range(Place::Settings, FigureName::SalesTax, percent, SALES_TAX);
    }
}

/// How well the shop measures.
fn instruments(book: &Book, list: &mut Checklist) {
    let Instruments {
        scale_grams,
        thermometer_kelvin,
        jug_percent,
    } = book.settings.instruments;
    for (what, stated, range) in [
        (FigureName::ScaleStep, scale_grams, SCALE_STEP),
        (
            FigureName::ThermometerError,
            thermometer_kelvin,
            THERMOMETER_ERROR,
        ),
        (FigureName::MarkError, jug_percent, MARK_ERROR),
    ] {
        if let Some(found) = stated {
            list.in_range(Place::Settings, what, found, range);
        }
    }
}

/// The shop's own noticeable steps.
fn steps(book: &Book, list: &mut Checklist) {
    for step in &book.settings.steps {
        let axis = || step.axis.clone();
        for (what, value, range) in [
            (
                FigureName::NoticeableStep(axis()),
                step.fraction,
                NOTICEABLE_STEP,
            ),
            (FigureName::AxisWeight(axis()), step.weight, AXIS_WEIGHT),
            (FigureName::StepFloor(axis()), step.floor, STEP_FLOOR),
        ] {
            list.in_range(Place::Settings, what, value, range);
        }
        if step.fraction <= 0.0 && step.floor <= 0.0 {
            list.unfinished(Place::Settings, Unfinished::NoStep(axis()));
        }
    }
}
