//! Checks of measures and vessels.

use std::collections::BTreeMap;

use super::NAME;
use super::called_size::miscalled;
use super::checklist::Checklist;
use crate::book::{
    Book, FindingKind, IngredientId, Measure, MeasureKind, Nominal, Place, Reading, Vessel,
};
use crate::quantity::excerpt;

/// Readings whose uses differ by more than this factor are not of one measure used one way (assumed: a heaped spoon holds up
/// to twice a level one).
const DISAGREEING: f64 = 3.0;

/// Prices of what goes over the counter, and of drinks, in any currency.
pub(super) const PRICES: (f64, f64) = (0.0, 1e5);
pub(super) const PRICES_IN_WORDS: &str = "0 to 100 000";

/// How fast a closed vessel may cool beside the open one: a vacuum flask a hundredth of it, and nothing that closes twice as fast.
const COOLING_FACTORS: (f64, f64) = (0.01, 2.0);

pub(super) fn check_measure(book: &Book, item: &Measure, list: &mut Checklist) {
    let place = |field| Place::Measure(item.id.clone(), field);
    list.name(place("name"), &item.name);
    match item.nominal {
        Some(Nominal::Volume(millilitres)) => {
            list.in_range(
                place("nominal"),
                "its volume",
                millilitres,
                (0.01, 5000.0),
                "0.01 to 5000 ml",
            );
        }
        Some(Nominal::Mass(grams)) => {
            list.in_range(
                place("nominal"),
                "its mass",
                grams,
                (0.01, 5000.0),
                "0.01 to 5000 g",
            );
        }
        None => {}
    }
    if let Some(celsius) = item.temperature {
        list.in_range(
            place("temperature"),
            "the temperature",
            celsius,
            (0.0, 100.0),
            "0 to 100 °C",
        );
    }
    if let Some(increment) = item.increment {
        list.in_range(
            place("increment"),
            "the increment",
            increment,
            (0.01, 100.0),
            "0.01 to 100 uses",
        );
    }
    for reading in &item.readings {
        if let Some(id) = &reading.ingredient {
            list.dangling(place("readings"), "ingredient", &book.ingredients, id);
        }
        let (what, expected) = ("a reading", "more than 0 g");
        if reading.grams == 0.0 {
            list.unfinished(place("readings"), what, "0".to_owned(), expected);
        } else {
            list.in_range(
                place("readings"),
                what,
                reading.grams,
                (1e-3, 1e5),
                expected,
            );
        }
        list.in_range(
            place("readings"),
            "uses in a reading",
            f64::from(reading.uses),
            (1.0, 1e4),
            "1 or more",
        );
        list.date(place("readings"), reading.date.as_deref());
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
        let grams = reading.grams / f64::from(reading.uses);
        (reading.uses > 0 && grams.is_finite() && grams > 0.0).then_some(grams)
    };
    let mut ends: BTreeMap<Option<&IngredientId>, (f64, f64)> = BTreeMap::new();
    for reading in &item.readings {
        if let Some(grams) = per_use(reading) {
            let (least, most) = ends
                .entry(reading.ingredient.as_ref())
                .or_insert((grams, grams));
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
    list.in_range(
        place("capacity"),
        "the capacity",
        item.capacity,
        (1.0, 20_000.0),
        "1 to 20 000 ml",
    );
    for (field, value, range, expected) in [
        ("mass", item.mass, (0.0, 5000.0), "0 to 5000 g"),
        (
            "specific_heat",
            item.specific_heat,
            (0.0, 5.0),
            "0 to 5 kJ/(kg K)",
        ),
        (
            "temperature",
            item.temperature,
            (-40.0, 100.0),
            "−40 to 100 °C",
        ),
        (
            "cooling_minutes",
            item.cooling_minutes,
            (0.5, 2000.0),
            "0.5 to 2000 min",
        ),
        ("price", item.price, PRICES, PRICES_IN_WORDS),
    ] {
        if let Some(value) = value {
            list.in_range(
                place(field),
                &format!("the {}", field.replace('_', " ")),
                value,
                range,
                expected,
            );
        }
    }
    check_cooling_run(item, list);
    if let Some(shape) = item.shape {
        for (what, millimetres) in [
            ("the height", shape.height),
            ("the bottom", shape.bottom),
            ("the top", shape.top),
        ] {
            list.in_range(
                place("shape"),
                what,
                millimetres,
                (1.0, 1000.0),
                "1 to 1000 mm",
            );
        }
    }
    check_what_goes_with(item, list);
}

fn check_cooling_run(item: &Vessel, list: &mut Checklist) {
    let place = |field| Place::Vessel(item.id.clone(), field);
    if let Some(run) = &item.cooling_run {
        let at = || place("cooling_run");
        list.in_range(
            at(),
            "the room temperature",
            run.room,
            (-10.0, 60.0),
            "−10 to 60 °C",
        );
        if let Some(millilitres) = run.millilitres {
            list.in_range(
                at(),
                "the volume",
                millilitres,
                (1.0, 20_000.0),
                "1 to 20 000 ml",
            );
        }
        for reading in &run.readings {
            list.in_range(
                at(),
                "the time of a reading",
                reading.minutes,
                (0.0, 1440.0),
                "0 to 1440 min",
            );
            list.in_range(
                at(),
                "a reading",
                reading.celsius,
                (-10.0, 110.0),
                "−10 to 110 °C",
            );
        }
    }
}

/// Lids, straws and sleeves.
fn check_what_goes_with(item: &Vessel, list: &mut Checklist) {
    let place = |field| Place::Vessel(item.id.clone(), field);
    for ware in &item.serviceware {
        if let Some(price) = ware.price {
            let at = place("serviceware");
            list.in_range(at, "the price", price, PRICES, PRICES_IN_WORDS);
        }
    }
    for closure in &item.closures {
        if let Some(price) = closure.price {
            let at = place("closures");
            list.in_range(at, "the price", price, PRICES, PRICES_IN_WORDS);
        }
        if let Some(factor) = closure.cooling_factor {
            let (at, what) = (place("closures"), "the cooling factor");
            list.in_range(at, what, factor, COOLING_FACTORS, "0.01 to 2");
        }
        let room = closure.head_room;
        list.in_range(
            place("closures"),
            "the head room",
            room,
            (0.0, item.capacity),
            "0 to the capacity",
        );
    }
}
