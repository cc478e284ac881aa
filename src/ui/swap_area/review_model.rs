//! The reviewed list as plain values: what may be taken, and the edits that take it in one step.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use super::Place;
use super::model::{changes_in_words, version_name};
use crate::book::{Book, Recipe, RecipeId, State};
use crate::edit::Edit;
use crate::quantity::{name_as_shown, show_number};
use crate::say::Speaker;
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
pub(super) fn place(item: &ReviewItem) -> Place {
    (item.recipe.clone(), item.version.clone())
}

/// "Hazelthwaite, iced" and "approved".
pub(super) fn title(book: &Book, item: &ReviewItem) -> (String, &'static str) {
    let Some(recipe) = book.recipe(&item.recipe) else {
        return (item.recipe.to_string(), "");
    };
    let version = item.version.as_ref().and_then(|id| recipe.version(id));
    let name = match version {
        Some(version) => name_as_shown(&format!("{}, {}", recipe.name, version.name)).into_owned(),
        None => name_as_shown(&recipe.name).into_owned(),
    };
    let state = recipe.state_of(item.version.as_ref());
    (name, state.map_or("", State::word))
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
    changes_in_words(screen.book, screen.units, &before, after)
}

/// The list for a spreadsheet, with what is ticked and why there is no suggestion.
pub(super) fn as_table(
    screen: &Screen<'_>,
    items: &[ReviewItem],
    left_out: &BTreeSet<Place>,
) -> Table {
    let heads = ["drink", "state", "taken", "distance, noticeable steps"];
    let mut table = Table::new(heads.into_iter().chain(["in words", "changes"]));
    for item in items {
        let (name, state) = title(screen.book, item);
        let suggestion = item.answer.suggestions.first();
        let distance = suggestion.and_then(|suggestion| suggestion.difference.distance);
        let distance = distance.map_or_else(|| "not known".to_owned(), |far| show_number(far, 2));
        let in_words = suggestion.map_or_else(
            || {
                let speaker = Speaker::new(screen.book).in_units(screen.units);
                let reasons = speaker.swap_reasons(&item.answer.reasons);
                format!("no suggestion: {reasons}")
            },
            |suggestion| overall_words(&suggestion.difference),
        );
        let changes = suggestion.map(|suggestion| changes(screen, item, suggestion).join(", "));
        let taken = match (can_be_taken(item), left_out.contains(&place(item))) {
            (false, _) => "",
            (true, true) => "no",
            (true, false) => "yes",
        };
        table.row([
            Cell::words(&name),
            Cell::words(state),
            Cell::words(taken),
            Cell::figure(&distance),
            Cell::words(&in_words),
            Cell::words(&changes.unwrap_or_default()),
        ]);
    }
    table
}

/// What is ticked, each with the suggestion that is taken.
fn taken<'item>(
    items: &'item [ReviewItem],
    left_out: &BTreeSet<Place>,
) -> impl Iterator<Item = (&'item ReviewItem, &'item Suggestion)> {
    let ticked = items
        .iter()
        .filter(|item| can_be_taken(item) && !left_out.contains(&place(item)));
    ticked.filter_map(|item| Some((item, item.answer.suggestions.first()?)))
}

/// How many new versions taking what is ticked makes.
pub(super) fn count(items: &[ReviewItem], left_out: &BTreeSet<Place>) -> usize {
    taken(items, left_out).count()
}

/// The edits of everything that is ticked, each a new version with a name that no other has. Nothing that is there changes.
pub(super) fn edits(book: &Book, items: &[ReviewItem], left_out: &BTreeSet<Place>) -> Vec<Edit> {
    // The recipes with what was added to them so far.
    let mut grown: BTreeMap<&RecipeId, Recipe> = BTreeMap::new();
    let mut edits = Vec::new();
    for (item, suggestion) in taken(items, left_out) {
        let recipe = match grown.entry(&item.recipe) {
            Entry::Occupied(known) => known.into_mut(),
            Entry::Vacant(new) => {
                let Some(recipe) = book.recipe(&item.recipe) else {
                    continue;
                };
                new.insert(recipe.as_ref().clone())
            }
        };
        let name = version_name(recipe, &Speaker::new(book).swapped_version(&item.answer));
        let (edit, _) = item.answer.accept(recipe, &suggestion.changes, &name);
        if let Edit::AddVersion { version, .. } = &edit {
            recipe.versions.push(version.clone());
        }
        edits.push(edit);
    }
    edits
}
