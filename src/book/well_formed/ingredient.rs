//! Checks of an ingredient outside its composition.

use super::checklist::Checklist;
use super::{claims, composition, density, energy};
use crate::book::{Book, Form, Ingredient, Place};

pub(super) fn check(book: &Book, item: &Ingredient, list: &mut Checklist) {
    let place = |field| Place::Ingredient(item.id.clone(), field);
    list.name(place("name"), &item.name);
    list.name(place("brand"), &item.brand);
    composition::check(item, list);
    let (lightest, of_density) = if item.form == Form::Foam {
        (0.05, "0.05 to 2 g/ml")
    } else {
        (0.5, "0.5 to 2 g/ml")
    };
    for (field, figure, expected, range) in [
        ("density", item.density, of_density, (lightest, 2.0)),
        (
            "bulk density",
            item.bulk_density,
            "0.02 to 1.6 g/ml",
            (0.02, 1.6),
        ),
    ] {
        if let Some(figure) = figure {
            list.in_range(
                place(field),
                &format!("the {field}"),
                figure.value,
                range,
                expected,
            );
            list.uncertainty(place(field), figure, range.1);
        }
    }
    if let Some(celsius) = item.temperature {
        list.in_range(
            place("temperature"),
            "the temperature",
            celsius,
            (-40.0, 100.0),
            "−40 to 100 °C",
        );
    }
    if let Some(price) = &item.price {
        list.in_range(
            place("price"),
            "the price of a pack",
            price.pack,
            (0.0, 1e6),
            "0 or more",
        );
        list.in_range(
            place("price"),
            "the content of a pack",
            price.grams,
            (1e-3, 1e7),
            "more than 0 g",
        );
        list.in_range(
            place("price"),
            "waste",
            price.waste_percent,
            (0.0, 99.0),
            "0 to 99 %",
        );
        list.date(place("price"), price.date.as_deref());
    }
    for price in &item.earlier_prices {
        let at = || place("earlier_prices");
        let what = "an earlier price of a pack";
        list.in_range(at(), what, price.pack, (0.0, 1e6), "0 or more");
        let what = "the content of a pack";
        list.in_range(at(), what, price.grams, (1e-3, 1e7), "more than 0 g");
        list.date(at(), price.date.as_deref());
    }
    check_batch(book, item, list);
    density::check(item, list);
    energy::check(item, list);
    claims::check(book, item, list);
}

fn check_batch(book: &Book, item: &Ingredient, list: &mut Checklist) {
    let Some(made) = &item.house_made else {
        return;
    };
    let place = || Place::Ingredient(item.id.clone(), "house_made");
    list.dangling(place(), "recipe", &book.recipes, &made.recipe);
    list.in_range(
        place(),
        "the yield",
        made.yield_grams.value,
        (1e-3, 1e6),
        "more than 0 g",
    );
    list.uncertainty(place(), made.yield_grams, 1e6);
    if let Some(extraction) = made.extraction {
        list.in_range(
            place(),
            "what steeped leaf gives",
            100.0 * extraction.value,
            (0.0, 100.0),
            "0 to 100 %",
        );
        list.uncertainty(place(), extraction, 1.0);
    }
    list.in_range(
        place(),
        "waste",
        made.waste_percent,
        (0.0, 99.0),
        "0 to 99 %",
    );
}
