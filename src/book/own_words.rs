//! What a person has written in a book.

use crate::quantity::OwnWords;

use super::{Book, Change, Entry, Ingredient, Measure, Recipe, Vessel};

impl Book {
    /// Every text of a person that names a unit of temperature or volume.
    pub fn own_words(&self) -> OwnWords {
        let settings = &self.settings;
        let levels = settings.sugar_levels.iter().chain(&settings.ice_levels);
        OwnWords::of(
            [settings.shop.as_str(), &settings.note]
                .into_iter()
                .chain(levels.map(|level| level.name.as_str()))
                .chain(self.ingredients.iter().flat_map(|item| of_ingredient(item)))
                .chain(self.measures.iter().flat_map(|item| of_measure(item)))
                .chain(self.vessels.iter().flat_map(|item| of_vessel(item)))
                .chain(self.recipes.iter().flat_map(|item| of_recipe(item))),
        )
    }
}

fn of_ingredient(item: &Ingredient) -> impl Iterator<Item = &str> {
    let flavours = item.composition.flavours.iter();
    [
        item.name.as_str(),
        &item.brand,
        &item.supplier,
        &item.lot,
        &item.statement,
        &item.note,
    ]
    .into_iter()
    .chain(flavours.map(|flavour| flavour.name.as_str()))
}

fn of_measure(item: &Measure) -> impl Iterator<Item = &str> {
    [item.name.as_str(), &item.note].into_iter()
}

fn of_vessel(item: &Vessel) -> impl Iterator<Item = &str> {
    [item.name.as_str(), &item.note].into_iter()
}

fn of_recipe(recipe: &Recipe) -> impl Iterator<Item = &str> {
    let versions = recipe.versions.iter().flat_map(|version| {
        let texts = [version.name.as_str(), &version.season];
        let changes = version.changes.iter().filter_map(of_change);
        texts.into_iter().chain(changes)
    });
    let approvals = recipe.approvals.iter().flat_map(|approval| {
        let entries = approval.resolved.entries.iter().map(of_entry);
        [approval.reason.as_str(), &approval.by]
            .into_iter()
            .chain(entries)
    });
    [recipe.name.as_str(), &recipe.note]
        .into_iter()
        .chain(recipe.entries.iter().map(of_entry))
        .chain(versions)
        .chain(approvals)
}

fn of_entry(entry: &Entry) -> &str {
    match entry {
        Entry::Line(line) => &line.note,
        Entry::Instruction(instruction) => &instruction.text,
    }
}

fn of_change(change: &Change) -> Option<&str> {
    match change {
        Change::Add(_, entry) => Some(of_entry(entry)),
        Change::Note(_, text) | Change::Instruction(_, text) => Some(text),
        _ => None,
    }
}
