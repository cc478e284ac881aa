//! What nearly every counter has, for a book that begins empty: kept, changed or removed like anything else.

use super::published::published_ingredients;
use crate::book::{
    Book, Closure, ClosureKind, Form, Ingredient, IngredientId, Measure, MeasureId, MeasureKind,
    Nominal, Role, Vessel, VesselId, VesselKind,
};
use crate::edit::Edit;
use crate::say::Speaker;

/// The ingredients of the kit with their names: the id of the published table that each has its figures from.
const INGREDIENTS: [(&str, &str); 4] = [
    ("water", "kit-water"),
    ("ice", "kit-ice"),
    ("granulated-sugar", "kit-sugar"),
    ("whole-milk", "kit-milk"),
];

/// Measures of usual sizes in millilitres (common practice, no source); a spoon of 5 ml is that of US labels (21 CFR
/// 101.9(b)(5)(viii)).
const MEASURES: [(&str, &str, MeasureKind, f64); 4] = [
    ("kit-scoop", "kit-scoop", MeasureKind::Scoop, 15.0),
    ("kit-pump", "kit-pump", MeasureKind::Pump, 8.0),
    ("kit-spoon", "kit-spoon", MeasureKind::Spoon, 5.0),
    (
        "kit-ice-scoop",
        "kit-ice-scoop",
        MeasureKind::IceScoop,
        180.0,
    ),
];

/// Vessels of usual sizes (common practice, no source): capacity in millilitres, mass in grams, specific heat in kJ/(kg K), which
/// is that of paper and of stainless steel (values from memory).
const VESSELS: [(&str, &str, VesselKind, f64, f64, f64); 3] = [
    (
        "kit-cup-500",
        "kit-cup-500",
        VesselKind::Cup,
        500.0,
        12.0,
        1.4,
    ),
    (
        "kit-cup-700",
        "kit-cup-700",
        VesselKind::Cup,
        700.0,
        16.0,
        1.4,
    ),
    (
        "kit-shaker",
        "kit-shaker",
        VesselKind::Shaker,
        700.0,
        240.0,
        0.5,
    ),
];

/// Room below the lid of a cup, ml (common practice, no source).
const HEAD_ROOM: f64 = 12.0;

/// An ingredient with the figures of its table; milk comes from the refrigerator.
fn ingredient(book: &Book, id: &str, name: &str, voice: Speaker<'_>) -> Option<Ingredient> {
    let published = published_ingredients().ok()?;
    let table_id = if id == "ice" { "water" } else { id };
    let from = published.ingredient(&IngredientId::new(table_id).ok()?)?;
    let mut item = Ingredient {
        id: IngredientId::new(id).ok()?,
        name: voice.word(name).to_owned(),
        ..from.as_ref().clone()
    };
    match item.role {
        Role::Water if id == "ice" => (item.form, item.role) = (Form::Ice, Role::Ice),
        Role::Creamer => item.temperature = Some(book.settings.refrigerator_temperature.into()),
        _ => {}
    }
    Some(item)
}

fn measure(
    (id, name, kind, millilitres): (&str, &str, MeasureKind, f64),
    voice: Speaker<'_>,
) -> Option<Measure> {
    Some(Measure {
        nominal: Some(Nominal::Volume(millilitres)),
        note: voice.word("kit-assumed-measure").to_owned(),
        ..Measure::new(MeasureId::new(id).ok()?, voice.word(name).to_owned(), kind)
    })
}

fn vessel(
    (id, name, kind, capacity, mass, specific_heat): (&str, &str, VesselKind, f64, f64, f64),
    voice: Speaker<'_>,
) -> Option<Vessel> {
    let lid = Closure {
        kind: ClosureKind::Lid,
        price: None,
        head_room: HEAD_ROOM,
        cooling_factor: None,
    };
    let is_cup = kind == VesselKind::Cup;
    Some(Vessel {
        mass: Some(mass),
        specific_heat: Some(specific_heat),
        closures: is_cup.then_some(lid).into_iter().collect(),
        note: voice.word("kit-assumed-vessel").to_owned(),
        ..Vessel::new(
            VesselId::new(id).ok()?,
            voice.word(name).to_owned(),
            kind,
            capacity,
        )
    })
}

/// Whether the book lacks the kind of thing that a part of the kit is: who has scoops needs none of the kit.
fn lacks<T>(mut items: impl Iterator<Item = T>, is_like: impl Fn(&T) -> bool) -> bool {
    !items.any(|item| is_like(&item))
}

/// The kit as one step: what the book has nothing of yet. Empty when it has all of it.
pub fn starter_kit(book: &Book, voice: Speaker<'_>) -> Vec<Edit> {
    let ingredients = INGREDIENTS.into_iter().filter_map(|(id, name)| {
        let item = ingredient(book, id, name, voice)?;
        let is_there = book.ingredients.contains(&item.id);
        let same_kind = |known: &&std::sync::Arc<Ingredient>| {
            let plain = matches!(item.role, Role::Water | Role::Ice);
            plain && known.role == item.role
        };
        (!is_there && lacks(book.ingredients.iter(), same_kind))
            .then_some(Edit::PutIngredient(item))
    });
    let measures = MEASURES.into_iter().filter_map(|kit| {
        let item = measure(kit, voice)?;
        lacks(book.measures.iter(), |known| known.kind == item.kind)
            .then_some(Edit::PutMeasure(item))
    });
    let vessels = VESSELS.into_iter().filter_map(|kit| {
        let item = vessel(kit, voice)?;
        lacks(book.vessels.iter(), |known| known.kind == item.kind).then_some(Edit::PutVessel(item))
    });
    ingredients.chain(measures).chain(vessels).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Figure, Nutrient, Severity};
    use crate::say::Language;

    #[test]
    fn the_kit_is_whole_in_every_language_of_the_window_and_is_put_in_once() {
        for code in ["en", "de"] {
            let voice = Speaker::without_book().in_language(Language::from_code(code).unwrap());
            let mut book = Book::default();
            let kit = starter_kit(&book, voice);
            assert_eq!(
                kit.len(),
                INGREDIENTS.len() + MEASURES.len() + VESSELS.len()
            );
            for edit in &kit {
                book = crate::edit::apply(&book, edit).unwrap();
            }
            assert!(starter_kit(&book, voice).is_empty(), "{code}");
            let errors = crate::book::findings(&book);
            let is_error = |found: &&crate::book::Finding| found.severity == Severity::Error;
            assert_eq!(errors.iter().find(is_error), None);
            let water = book
                .ingredient(&IngredientId::new("water").unwrap())
                .unwrap();
            let figure: Option<Figure> = water.composition.get(Nutrient::Sugars);
            assert!(figure.is_some() && !water.note.is_empty());
        }
    }
}
