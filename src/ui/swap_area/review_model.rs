//! The reviewed list as plain values: what may be taken, and the edits that take it in one step.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use super::model::{changes_in_words, distance_cell, version_name};
use super::state::Reviewed;
use crate::book::{Book, Recipe, RecipeId};
use crate::edit::Edit;
use crate::say::{Speaker, say};
use crate::swap::{Demands, ReviewItem, Suggestion};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table};
use crate::ui::widgets::level::overall_words;

/// Demands that mean something in every recipe: those on single lines belong to one.
pub(super) fn demands_for_all(demands: &Demands) -> Demands {
    Demands {
        locked: Vec::new(),
        unlocked: Vec::new(),
        limits: Vec::new(),
        ..demands.clone()
    }
}

/// The recipe or version of an item.
pub(super) fn place(item: &ReviewItem) -> Reviewed {
    (item.recipe.clone(), item.version.clone())
}

/// "Hazelthwaite, iced" and "approved".
pub(super) fn title(speaker: Speaker<'_>, item: &ReviewItem) -> (String, &'static str) {
    let name = speaker.drink(&item.recipe, item.version.as_ref());
    let Some(recipe) = speaker.book.recipe(&item.recipe) else {
        return (name, "");
    };
    let state = recipe.state_of(item.version.as_ref());
    (name, state.map_or("", |state| speaker.state(state)))
}

/// How many versions the book has.
pub(super) fn versions(book: &Book) -> usize {
    let recipes = book.recipes.iter();
    recipes.map(|recipe| recipe.versions.len()).sum()
}

/// Whether anything can be taken.
pub(super) fn can_be_taken(item: &ReviewItem) -> bool {
    !item.answer.suggestions.is_empty()
}

/// What a suggestion changes of the recipe or version of an item, in counter measures.
pub(super) fn changes(
    screen: &Screen<'_>,
    item: &ReviewItem,
    suggestion: &Suggestion,
) -> Vec<String> {
    let Some(recipe) = screen.book.recipe(&item.recipe) else {
        return Vec::new();
    };
    let (before, _) = crate::book::resolve(recipe, item.version.as_ref());
    let after = &suggestion.balance.resolved;
    changes_in_words(screen.speaker, &before, after)
}

/// The list for a spreadsheet, with what is ticked and why there is no suggestion.
pub(super) fn as_table(
    screen: &Screen<'_>,
    items: &[ReviewItem],
    left_out: &BTreeSet<Reviewed>,
) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "swap-screen-table-drink",
        "swap-screen-table-state",
        "swap-screen-table-selected",
        "swap-screen-table-overall",
        "swap-screen-table-result",
        "swap-screen-table-changes",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for item in items {
        let (name, state) = title(speaker, item);
        let suggestion = item.answer.suggestions.first();
        let distance = suggestion.and_then(|suggestion| suggestion.difference.distance);
        let in_words = suggestion.map_or_else(
            || {
                let reasons = speaker.swap_reasons(&item.answer.reasons);
                say!(speaker, "swap-screen-table-no-suggestion", reason: reasons)
            },
            |suggestion| overall_words(&suggestion.difference, screen.speaker),
        );
        let changes = suggestion.map(|suggestion| changes(screen, item, suggestion).join(", "));
        let taken = match (can_be_taken(item), left_out.contains(&place(item))) {
            (false, _) => "",
            (true, true) => speaker.word("swap-screen-no"),
            (true, false) => speaker.word("swap-screen-yes"),
        };
        table.row([
            Cell::words(&name),
            Cell::words(state),
            Cell::words(taken),
            distance_cell(speaker, distance),
            Cell::words(&in_words),
            Cell::words(&changes.unwrap_or_default()),
        ]);
    }
    table
}

/// What is ticked, each with the suggestion that is taken.
fn taken<'item>(
    items: &'item [ReviewItem],
    left_out: &BTreeSet<Reviewed>,
) -> impl Iterator<Item = (&'item ReviewItem, &'item Suggestion)> {
    let ticked = items
        .iter()
        .filter(|item| can_be_taken(item) && !left_out.contains(&place(item)));
    ticked.filter_map(|item| Some((item, item.answer.suggestions.first()?)))
}

/// How many new versions taking what is ticked makes.
pub(super) fn count(items: &[ReviewItem], left_out: &BTreeSet<Reviewed>) -> usize {
    taken(items, left_out).count()
}

/// The edits of everything that is ticked, each a new version with a name that no other has. Nothing that is there changes.
pub(super) fn edits(
    speaker: Speaker<'_>,
    items: &[ReviewItem],
    left_out: &BTreeSet<Reviewed>,
) -> Vec<Edit> {
    // The recipes with what was added to them so far.
    let mut grown: BTreeMap<&RecipeId, Recipe> = BTreeMap::new();
    let mut edits = Vec::new();
    for (item, suggestion) in taken(items, left_out) {
        let recipe = match grown.entry(&item.recipe) {
            Entry::Occupied(known) => known.into_mut(),
            Entry::Vacant(new) => {
                let Some(recipe) = speaker.book.recipe(&item.recipe) else {
                    continue;
                };
                new.insert(recipe.as_ref().clone())
            }
        };
        let name = version_name(recipe, &speaker.swapped_version(&item.answer));
        let (edit, _) = item.answer.accept(recipe, &suggestion.changes, &name);
        if let Edit::AddVersion { version, .. } = &edit {
            recipe.versions.push(version.clone());
        }
        edits.push(edit);
    }
    edits
}
