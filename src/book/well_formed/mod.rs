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
mod recipe;
mod since;

pub use called_size::{CalledSize, Held, Miscalled, NamedUnit, miscalled};
pub use energy::{EnergyRange, energy_of_composition};
pub use nearest::nearest;
pub(super) use recipe::LARGEST_AMOUNT;
pub use since::{new_errors, new_errors_of};

use checklist::Checklist;

use super::{Book, Finding, Instruments, Place};
use crate::quantity::{excerpt, show_compact};

/// Longest name that is repeated in a finding, in characters.
const NAME: usize = 60;

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
    house_made::check_circles(book, &mut list);
    prices::check_age(book, &mut list);
    list.finish()
}

fn settings(book: &Book, list: &mut Checklist) {
    let settings = &book.settings;
    for (what, celsius) in [
        ("the room temperature", settings.room_temperature),
        (
            "the refrigerator temperature",
            settings.refrigerator_temperature,
        ),
        (
            "the hot drinking temperature",
            settings.hot_drinking_temperature,
        ),
        (
            "the iced drinking temperature",
            settings.iced_drinking_temperature,
        ),
    ] {
        list.in_range(
            Place::Settings,
            what,
            celsius,
            (-10.0, 100.0),
            "−10 to 100 °C",
        );
    }
    list.in_range(
        Place::Settings,
        "the ice temperature",
        settings.ice_temperature,
        (-40.0, 0.0),
        "−40 to 0 °C",
    );
    windows(book, list);
    let bulk = settings.ice_bulk_density;
    list.in_range(
        Place::Settings,
        "the bulk density of ice",
        bulk,
        (0.2, 0.917),
        "0.2 to 0.917 g/ml",
    );
    if let Some(rate) = settings.ice_melt_rate {
        list.in_range(
            Place::Settings,
            "the melt rate of ice",
            rate,
            (0.0, 100.0),
            "0 to 100 g/min",
        );
    }
    for level in settings.sugar_levels.iter().chain(&settings.ice_levels) {
        let what = format!("the level {}", excerpt(&level.name, NAME));
        list.in_range(
            Place::Settings,
            &what,
            level.percent,
            (0.0, 200.0),
            "0 to 200 %",
        );
    }
    instruments(book, list);
    steps(book, list);
}

/// The temperatures that the shop serves at, and the tax in its prices.
fn windows(book: &Book, list: &mut Checklist) {
    let settings = &book.settings;
    for (what, window) in [
        ("the window of hot drinks", settings.hot_window),
        ("the window of iced drinks", settings.iced_window),
    ] {
        for celsius in [window.from, window.to] {
            list.in_range(
                Place::Settings,
                what,
                celsius,
                (-20.0, 100.0),
                "−20 to 100 °C",
            );
        }
        if window.from > window.to {
            let found = format!(
                "{} to {} °C",
                show_compact(window.from),
                show_compact(window.to)
            );
            list.unfinished(Place::Settings, what, found, "the cooler end first");
        }
    }
    if let Some(percent) = settings.sales_tax_percent {
        list.in_range(
            Place::Settings,
            "the sales tax",
            percent,
            (0.0, 100.0),
            "0 to 100 %",
        );
    }
}

/// How well the shop measures.
fn instruments(book: &Book, list: &mut Checklist) {
    let Instruments {
        scale_grams,
        thermometer_kelvin,
        jug_percent,
    } = book.settings.instruments;
    for (what, stated, most, expected) in [
        ("the step of the scale", scale_grams, 100.0, "0 to 100 g"),
        (
            "what a thermometer may be off",
            thermometer_kelvin,
            20.0,
            "0 to 20 K",
        ),
        ("what a mark may be off", jug_percent, 50.0, "0 to 50 %"),
    ] {
        if let Some(found) = stated {
            list.in_range(Place::Settings, what, found, (0.0, most), expected);
        }
    }
}

/// The shop's own noticeable steps.
fn steps(book: &Book, list: &mut Checklist) {
    let settings = &book.settings;
    for step in &settings.steps {
        let what = format!("the noticeable step of {}", excerpt(step.axis.word(), NAME));
        list.in_range(Place::Settings, &what, step.fraction, (0.0, 2.0), "0 to 2");
        let weight = format!("the weight of {}", excerpt(step.axis.word(), NAME));
        list.in_range(
            Place::Settings,
            &weight,
            step.weight,
            (0.0, 100.0),
            "0 to 100",
        );
        list.in_range(
            Place::Settings,
            &what,
            step.floor,
            (0.0, 1000.0),
            "0 or more",
        );
        if step.fraction <= 0.0 && step.floor <= 0.0 {
            list.unfinished(
                Place::Settings,
                &what,
                "0".to_owned(),
                "a fraction or a floor above 0",
            );
        }
    }
}
