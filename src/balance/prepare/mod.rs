//! All look-ups happen here: measures, labels and profiles become mixes per unit, and [`super::solve::figures`] then allocates nothing.

mod batch;
mod densities;
mod kept;
pub(super) mod kind;
mod label;
mod larder;
mod line;
pub(super) mod pack;
pub(super) mod per_gram;
pub(super) mod portion;
mod preparation;
pub(super) mod rescale;
pub(super) mod setup;
mod sugar_profile;
mod unit;

use super::mix::{HIGH_POTENCY_SLOTS, Mix};
use super::slots::Slots;
use super::solve::prepared::Prepared;
use crate::book::{
    Book, Finding, FindingKind, HighPotencySweetener, Ingredient, Place, Recipe, Resolved,
    SlotKind, VersionId, resolve,
};
use preparation::Preparation;
pub(super) use setup::is_iced_drink;

/// Prepares a version. `place` says where its findings belong.
///
/// `slots` gives flavours and sweeteners their places; two versions that will be compared are prepared with the same.
pub fn prepare(book: &Book, resolved: &Resolved, slots: &mut Slots, place: &Place) -> Prepared {
    prepared(&mut Preparation::of(book), resolved, slots, place)
}

/// The same, with every ingredient, brew and batch worked out anew: what those that are kept are held to.
pub fn prepare_afresh(
    book: &Book,
    resolved: &Resolved,
    slots: &mut Slots,
    place: &Place,
) -> Prepared {
    let mut preparation = Preparation::of(book);
    preparation.remembers = false;
    prepared(&mut preparation, resolved, slots, place)
}

/// The recipes of a house, one after the other: what one batch is made of is worked out once for all of them.
pub struct Kitchen<'book> {
    preparation: Preparation<'book>,
    slots: Slots,
}

impl<'book> Kitchen<'book> {
    /// The kitchen of a book.
    pub fn new(book: &'book Book) -> Self {
        Self {
            preparation: Preparation::of(book),
            slots: Slots::default(),
        }
    }

    /// Prepares a version of a recipe, or the recipe as it is written.
    pub fn prepare(&mut self, recipe: &Recipe, version: Option<&VersionId>) -> Prepared {
        let place = match version {
            None => Place::Recipe(recipe.id.clone(), "lines"),
            Some(version) => Place::Version(recipe.id.clone(), version.clone()),
        };
        let lines = resolve(recipe, version).0;
        prepared(&mut self.preparation, &lines, &mut self.slots, &place)
    }

    /// One gram of an ingredient, made by its recipe when the house makes it.
    pub fn gram(&mut self, item: &Ingredient) -> Mix {
        self.preparation.one_gram(item, &mut self.slots).mix
    }
}

fn prepared(
    preparation: &mut Preparation<'_>,
    resolved: &Resolved,
    slots: &mut Slots,
    place: &Place,
) -> Prepared {
    let book = preparation.book;
    preparation.place = place.clone();
    let setup = setup::setup(book, resolved);
    let mut prepared = preparation.lines(resolved, &setup, slots);
    for (slot, sweetener) in slots.sweeteners.iter().enumerate() {
        prepared.setup.sweeteners[slot] = Some(*sweetener);
    }
    prepared.slots.clone_from(slots);
    prepared.setup.cooling = setup::cooling(book, resolved, &prepared);
    setup::add_causes(book, resolved, &mut prepared);
    prepared.findings.append(&mut preparation.findings);
    add_slot_findings(book, resolved, place, &mut prepared.findings);
    rescale::rescale(book, &mut prepared);
    prepared
}

fn add_slot_findings(book: &Book, resolved: &Resolved, place: &Place, findings: &mut Vec<Finding>) {
    let ingredients: Vec<&Ingredient> = resolved
        .lines()
        .filter_map(|line| book.ingredient(&line.ingredient))
        .map(AsRef::as_ref)
        .collect();
    let mut flavours: Vec<&str> = ingredients
        .iter()
        .flat_map(|item| &item.composition.flavours)
        .map(|flavour| flavour.name.as_str())
        .collect();
    flavours.sort_unstable();
    flavours.dedup();
    let mut sweeteners: Vec<HighPotencySweetener> = ingredients
        .iter()
        .flat_map(|item| &item.composition.high_potency)
        .map(|amount| amount.sweetener)
        .collect();
    sweeteners.sort_unstable();
    sweeteners.dedup();
    for (kind, count, limit) in [
        (
            SlotKind::Flavours,
            flavours.len(),
            super::mix::FLAVOUR_SLOTS,
        ),
        (
            SlotKind::HighPotencySweeteners,
            sweeteners.len(),
            HIGH_POTENCY_SLOTS,
        ),
    ] {
        if count > limit {
            findings.push(Finding::warning(
                place.clone(),
                FindingKind::TooManySlots { kind, count, limit },
            ));
        }
    }
}
