//! Checks of an ingredient outside its composition.

use super::checklist::Checklist;
use super::ranges::FOOD_TEMPERATURE;
use super::{claims, composition, density, energy};
use crate::book::{Book, Figure, FigureName, FigureRange, Form, IdKind, Ingredient, Place};
use crate::quantity::{Pack, PackUnit};

/// How many times what is stated an ingredient was tasted to have: from nothing of it to a hundred times as much.
const TASTED_TIMES: FigureRange = FigureRange::new(0.0, 100.0, "");

/// Densities of what is poured, from oil to the thickest syrup, with room.
const DENSITIES: FigureRange = FigureRange::new(0.5, 2.0, "g/ml");

/// A foam is as light as its air makes it.
const DENSITIES_OF_FOAM: FigureRange = FigureRange::new(0.05, 2.0, "g/ml");

/// Densities of what is heaped.
const BULK_DENSITIES: FigureRange = FigureRange::new(0.02, 1.6, "g/ml");

/// Prices of a pack, in any currency.
const PACK_PRICES: FigureRange = FigureRange::new(0.0, 1e6, "");

/// What packs hold, from a milligram of a flavour to a tank.
const PACK_CONTENTS: FigureRange = FigureRange::new(1e-3, 1e7, "g");
const PACK_VOLUMES: FigureRange = FigureRange::new(1e-3, 1e7, "ml");

/// What is lost before it gets into a drink.
const WASTE: FigureRange = FigureRange::new(0.0, 99.0, "%");

/// What batches weigh.
const YIELDS: FigureRange = FigureRange::new(1e-3, 1e6, "g");

/// What steeped leaf gives of its mass.
const EXTRACTIONS: FigureRange = FigureRange::new(0.0, 100.0, "%");

/// How long something steeps: a week at most.
const STEEPING_TIMES: FigureRange = FigureRange::new(0.0, 10_080.0, "min");

pub(super) fn check(book: &Book, item: &Ingredient, list: &mut Checklist) {
    let place = |field| Place::Ingredient(item.id.clone(), field);
    list.name(place("name"), &item.name);
    list.name(place("brand"), &item.brand);
    composition::check(item, list);
    let densities = if item.form == Form::Foam {
        DENSITIES_OF_FOAM
    } else {
        DENSITIES
    };
    for (field, what, figure, range) in [
        ("density", FigureName::Density, item.density, densities),
        (
            "bulk_density",
            FigureName::BulkDensity,
            item.bulk_density,
            BULK_DENSITIES,
        ),
    ] {
        if let Some(figure) = figure {
            list.in_range(place(field), what, figure.value, range);
            list.uncertainty(place(field), figure, range);
        }
    }
    if let Some(stated) = item.temperature {
        let (at, what) = (place("temperature"), FigureName::Temperature);
        list.temperature_in_range(&at, &what, stated, FOOD_TEMPERATURE);
    }
    if let Some(price) = &item.price {
        let at = || place("price");
        list.in_range(at(), FigureName::PackPrice, price.pack, PACK_PRICES);
        content(list, at, price.content);
        list.in_range(at(), FigureName::Waste, price.waste_percent, WASTE);
        list.date(at(), price.date.as_deref());
    }
    for price in &item.earlier_prices {
        let at = || place("earlier_prices");
        list.in_range(at(), FigureName::EarlierPackPrice, price.pack, PACK_PRICES);
        content(list, at, price.content);
        list.date(at(), price.date.as_deref());
    }
    for tasted in &item.tasted {
        let at = || place("tasted");
        list.in_range(at(), FigureName::TastedTimes, tasted.times, TASTED_TIMES);
        list.in_range(at(), FigureName::Uncertainty, tasted.u, TASTED_TIMES);
        list.date(at(), Some(&tasted.date));
    }
    check_batch(book, item, list);
    density::check(item, list);
    energy::check(item, list);
    claims::check(book, item, list);
}

fn content(list: &mut Checklist, at: impl Fn() -> Place, content: Pack) {
    let range = match content.unit {
        PackUnit::Grams => PACK_CONTENTS,
        PackUnit::Millilitres => PACK_VOLUMES,
    };
    // Both: two of less than nothing hold less than nothing, too.
    for content in [content.each, content.whole()] {
        if !range.contains(content) {
            return list.in_range(at(), FigureName::PackContent, content, range);
        }
    }
}

fn check_batch(book: &Book, item: &Ingredient, list: &mut Checklist) {
    let Some(made) = &item.house_made else {
        return;
    };
    let place = || Place::Ingredient(item.id.clone(), "house_made");
    list.dangling(place(), IdKind::Recipe, &book.recipes, &made.recipe);
    list.in_range(place(), FigureName::Yield, made.yield_grams.value, YIELDS);
    list.uncertainty(place(), made.yield_grams, YIELDS);
    if let Some(extraction) = made.extraction {
        let percent = 100.0 * extraction.value;
        list.in_range(place(), FigureName::Extraction, percent, EXTRACTIONS);
        let percent = Figure {
            value: percent,
            u: extraction.u.map(|u| 100.0 * u),
            ..extraction
        };
        list.uncertainty(place(), percent, EXTRACTIONS);
    }
    if let Some(minutes) = made.steep_minutes {
        list.in_range(place(), FigureName::SteepingTime, minutes, STEEPING_TIMES);
    }
    list.in_range(place(), FigureName::Waste, made.waste_percent, WASTE);
}
