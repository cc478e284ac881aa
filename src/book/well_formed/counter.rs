//! Checks of measures and vessels.

use std::collections::BTreeMap;

use super::called_size::miscalled;
use super::checklist::Checklist;
use super::ranges::{FOOD_TEMPERATURE, NAME};
use crate::book::{
    Book, FigureName, FigureRange, FindingKind, IdKind, IngredientId, Measure, MeasureKind,
    Nominal, Place, Reading, ReadingAmount, Unfinished, Vessel,
};
use crate::quantity::excerpt;

/// Readings whose uses differ by more than this factor are not of one measure used one way (assumed: a heaped spoon holds up
/// to twice a level one).
const DISAGREEING: f64 = 3.0;

/// Prices of what goes over the counter, and of drinks, in any currency.
pub(super) const PRICES: FigureRange = FigureRange::new(0.0, 1e5, "");

/// How fast a closed vessel may cool beside the open one: a vacuum flask a hundredth of it, and nothing that closes twice as fast.
const COOLING_FACTORS: FigureRange = FigureRange::new(0.01, 2.0, "");

/// What measures hold.
const VOLUMES_OF_MEASURES: FigureRange = FigureRange::new(0.01, 5000.0, "ml");

/// What measures dose.
const MASSES_OF_MEASURES: FigureRange = FigureRange::new(0.01, 5000.0, "g");

/// Temperatures of what comes from a button or a pump.
const TEMPERATURES_OF_MEASURES: FigureRange = FigureRange::new(0.0, 100.0, "°C");

/// The smallest parts of a measure that are counted, in uses.
const INCREMENTS: FigureRange = FigureRange::new(0.01, 100.0, "");

/// What scales show.
const READINGS: FigureRange = FigureRange::new(1e-3, 1e5, "g");

/// What graduated jugs show.
const VOLUMES_READ: FigureRange = FigureRange::new(1e-3, 1e5, "ml");

/// Uses that are weighed together.
const USES: FigureRange = FigureRange::new(1.0, 1e4, "");

/// What vessels hold.
const CAPACITIES: FigureRange = FigureRange::new(1.0, 20_000.0, "ml");

/// What vessels weigh.
const MASSES_OF_VESSELS: FigureRange = FigureRange::new(0.0, 5000.0, "g");

/// Heat that materials take up; water has 4.2.
const SPECIFIC_HEATS: FigureRange = FigureRange::new(0.0, 5.0, "kJ/(kg K)");

/// Cooling times, from a thimble to a vacuum flask.
const COOLING_TIMES: FigureRange = FigureRange::new(0.5, 2000.0, "min");

/// Rooms in which somebody looks at a thermometer.
const ROOMS_OF_RUNS: FigureRange = FigureRange::new(-10.0, 60.0, "°C");

/// A day of minutes.
const TIMES_OF_RUNS: FigureRange = FigureRange::new(0.0, 1440.0, "min");

/// What thermometers show in a drink.
const READINGS_OF_RUNS: FigureRange = FigureRange::new(-10.0, 110.0, "°C");

/// Sides of a vessel.
const LENGTHS: FigureRange = FigureRange::new(1.0, 1000.0, "mm");

pub(super) fn check_measure(book: &Book, item: &Measure, list: &mut Checklist) {
    let place = |field| Place::Measure(item.id.clone(), field);
    list.name(place("name"), &item.name);
    let nominal = item.nominal.map(|nominal| match nominal {
        Nominal::Volume(value) => (FigureName::Volume, value, VOLUMES_OF_MEASURES),
        Nominal::Mass(value) => (FigureName::Mass, value, MASSES_OF_MEASURES),
    });
    if let Some((what, value, range)) = nominal {
        list.in_range(place("nominal"), what, value, range);
    }
    if let Some(stated) = item.temperature {
        let (at, what) = (place("temperature"), FigureName::Temperature);
        list.temperature_in_range(&at, &what, stated, TEMPERATURES_OF_MEASURES);
    }
    if let Some(increment) = item.increment {
        let what = FigureName::Increment;
        list.in_range(place("increment"), what, increment, INCREMENTS);
    }
    for reading in &item.readings {
        let at = || place("readings");
        if let Some(id) = &reading.ingredient {
            list.dangling(at(), IdKind::Ingredient, &book.ingredients, id);
        }
        let (number, range) = match reading.amount {
            ReadingAmount::Grams(grams) => (grams, READINGS),
            ReadingAmount::Millilitres(millilitres) => (millilitres, VOLUMES_READ),
        };
        if number == 0.0 {
            list.unfinished(at(), Unfinished::EmptyReading);
        } else {
            list.in_range(at(), FigureName::Reading, number, range);
        }
        let uses = f64::from(reading.uses);
        list.in_range(at(), FigureName::UsesInReading, uses, USES);
        list.date(at(), reading.date.as_deref());
    }
    if item.readings.is_empty() && item.kind != MeasureKind::Button {
        list.warning(place("readings"), FindingKind::NeverCalibrated);
    }
    check_agreement(item, list);
    if let Some(miscalled) = miscalled(book, item) {
        let kind = FindingKind::SizeNotAsCalled {
            name: excerpt(&item.name, NAME),
            miscalled,
        };
        list.warning(place("readings"), kind);
    }
}

/// Readings of one measure with one ingredient that can't both be right.
fn check_agreement(item: &Measure, list: &mut Checklist) {
    let per_use = |reading: &Reading| {
        let grams = reading.grams() / f64::from(reading.uses);
        reading.is_usable().then_some(grams)
    };
    let mut ends: BTreeMap<Option<&IngredientId>, (f64, f64)> = BTreeMap::new();
    for reading in &item.readings {
        if let Some(grams) = per_use(reading) {
            let (least, most) = ends.entry(reading.weighed()).or_insert((grams, grams));
            (*least, *most) = (least.min(grams), most.max(grams));
        }
    }
    for (least, most) in ends.into_values() {
        if most > least * DISAGREEING {
            let kind = FindingKind::ReadingsDisagree { least, most };
            list.warning(Place::Measure(item.id.clone(), "readings"), kind);
        }
    }
}

pub(super) fn check_vessel(item: &Vessel, list: &mut Checklist) {
    let place = |field| Place::Vessel(item.id.clone(), field);
    list.name(place("name"), &item.name);
    let what = FigureName::Capacity;
    list.in_range(place("capacity"), what, item.capacity, CAPACITIES);
    for (field, what, value, range) in [
        ("mass", FigureName::Mass, item.mass, MASSES_OF_VESSELS),
        (
            "specific_heat",
            FigureName::SpecificHeat,
            item.specific_heat,
            SPECIFIC_HEATS,
        ),
        (
            "temperature",
            FigureName::Temperature,
            item.temperature,
            FOOD_TEMPERATURE,
        ),
        (
            "cooling_minutes",
            FigureName::CoolingTime,
            item.cooling_minutes,
            COOLING_TIMES,
        ),
        ("price", FigureName::Price, item.price, PRICES),
    ] {
        if let Some(value) = value {
            list.in_range(place(field), what, value, range);
        }
    }
    check_cooling_run(item, list);
    if let Some(shape) = item.shape {
        for (what, millimetres) in [
            (FigureName::Height, shape.height),
            (FigureName::BottomDiameter, shape.bottom),
            (FigureName::TopDiameter, shape.top),
        ] {
            list.in_range(place("shape"), what, millimetres, LENGTHS);
        }
    }
    check_what_goes_with(item, list);
}

fn check_cooling_run(item: &Vessel, list: &mut Checklist) {
    let Some(run) = &item.cooling_run else {
        return;
    };
    let at = || Place::Vessel(item.id.clone(), "cooling_run");
    list.in_range(at(), FigureName::RoomTemperature, run.room, ROOMS_OF_RUNS);
    if let Some(millilitres) = run.millilitres {
        list.in_range(at(), FigureName::Volume, millilitres, CAPACITIES);
    }
    for reading in &run.readings {
        let (minutes, celsius) = (reading.minutes, reading.celsius);
        list.in_range(at(), FigureName::ReadingTime, minutes, TIMES_OF_RUNS);
        list.in_range(at(), FigureName::Reading, celsius, READINGS_OF_RUNS);
    }
}

/// Lids, straws and sleeves.
fn check_what_goes_with(item: &Vessel, list: &mut Checklist) {
    let place = |field| Place::Vessel(item.id.clone(), field);
    for ware in &item.serviceware {
        if let Some(price) = ware.price {
            let at = place("serviceware");
            list.in_range(at, FigureName::Price, price, PRICES);
        }
    }
    for closure in &item.closures {
        if let Some(price) = closure.price {
            let at = place("closures");
            list.in_range(at, FigureName::Price, price, PRICES);
        }
        if let Some(factor) = closure.cooling_factor {
            let (at, what) = (place("closures"), FigureName::CoolingFactor);
            list.in_range(at, what, factor, COOLING_FACTORS);
        }
        let room = closure.head_room;
        let (at, what) = (place("closures"), FigureName::HeadRoom);
        list.in_range(at, what, room, FigureRange::new(0.0, item.capacity, "ml"));
    }
}
