//! Format 1 as it stands in a file: what serde reads and writes, and both ways between it and the book.
//!
//! A field that may be absent is `Option` or has a default that says nothing (no text, no items). A number that would be
//! invented by a default (the waste of a pack, the head room of a lid) has none and must be stated.

mod counter;
mod earlier;
mod ingredient;
mod reading;
mod recipe;
mod settings;
mod stored;
mod tasting;
mod temperature;
mod translation;
mod words;

pub(crate) use counter::{Measure, Vessel};
pub(crate) use ingredient::{Basis, FIGURE, Ingredient};
pub(crate) use recipe::Recipe;
pub(crate) use settings::Settings;
pub(crate) use stored::Stored;
pub(crate) use tasting::{Tasting, TastingOutcome};
pub(crate) use temperature::{TEMPERATURE, Temperature};
pub(crate) use translation::Translation;
pub(crate) use words::{
    Allergen, AllergenList, CarbohydrateKind, ClosureKind, CupQuantity, DoubtClass, EnergyUnit,
    Evidence, Filling, Form, HighPotencySweetener, MeasureKind, PolyolKind, Role, SaltUnit, Stage,
    State, VesselKind, Yardstick,
};

use serde::Deserialize;

use super::checker::Checker;
use super::error::LoadProblem;
use crate::book::{self, IdKind, Item, Shelf};

/// The whole file. It is written item by item.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Book {
    /// Read before everything else; here so that it is a known field.
    #[serde(rename = "format")]
    _format: u64,
    #[serde(default)]
    settings: Settings,
    #[serde(default)]
    ingredients: Vec<Ingredient>,
    #[serde(default)]
    measures: Vec<Measure>,
    #[serde(default)]
    vessels: Vec<Vessel>,
    #[serde(default)]
    recipes: Vec<Recipe>,
    #[serde(default)]
    tastings: Vec<Tasting>,
}

impl Book {
    /// The book of a file with this text, or every id and number that can't be taken.
    pub(crate) fn into_book(self, text: &str) -> Result<book::Book, Vec<LoadProblem>> {
        let mut checker = Checker::new(text);
        duplicates(
            &mut checker,
            IdKind::Ingredient,
            "ingredients",
            &self.ingredients,
        );
        duplicates(&mut checker, IdKind::Measure, "measures", &self.measures);
        duplicates(&mut checker, IdKind::Vessel, "vessels", &self.vessels);
        duplicates(&mut checker, IdKind::Recipe, "recipes", &self.recipes);
        duplicates(&mut checker, IdKind::Tasting, "tastings", &self.tastings);
        let book = book::Book {
            settings: checker.within("settings", |checker| self.settings.into_book(checker)),
            ingredients: shelf(&mut checker, "ingredients", self.ingredients),
            measures: shelf(&mut checker, "measures", self.measures),
            vessels: shelf(&mut checker, "vessels", self.vessels),
            recipes: shelf(&mut checker, "recipes", self.recipes),
            tastings: shelf(&mut checker, "tastings", self.tastings),
        };
        checker.finish(book)
    }
}

fn duplicates<F: Stored<T>, T: Item>(
    checker: &mut Checker<'_>,
    kind: IdKind,
    list: &'static str,
    items: &[F],
) {
    checker.duplicates(kind, list, items.iter().map(F::label));
}

/// The items as a shelf. It can only fail for ids that have been reported before, and then the shelf is not used.
fn shelf<F: Stored<T>, T: Item>(
    checker: &mut Checker<'_>,
    list: &'static str,
    items: Vec<F>,
) -> Shelf<T> {
    let items = checker.within(list, |checker| items.into_book(checker));
    Shelf::from_items(items).unwrap_or_default()
}
