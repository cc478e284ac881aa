//! What to measure first, over all drinks of the book, looked for in the background.

use std::sync::Arc;

use crate::balance::{Narrowing, ToMeasure, VersionBalances};
use crate::book::{Book, Recipe, State, VersionId};
use crate::swap::Watch;

/// What to measure first.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MeasureFirst {
    /// What does most for the drinks first; before it what nobody can weigh yet.
    pub found: Vec<ToMeasure>,
    /// How many drinks were looked at.
    pub drinks: usize,
    /// Whether these are the approved ones: while none is, all that are not retired are looked at.
    pub are_approved: bool,
}

/// The recipe itself and its versions.
fn versions(recipe: &Recipe) -> impl Iterator<Item = Option<&VersionId>> {
    let versions = recipe.versions.iter().map(|version| Some(&version.id));
    std::iter::once(None).chain(versions)
}

/// Drinks are what is served in a cup; a batch is part of the drinks that it goes into.
fn drinks(book: &Book) -> impl Iterator<Item = &Arc<Recipe>> {
    book.recipes.iter().filter(|recipe| recipe.cup.is_some())
}

/// Looks at every drink, watched from outside.
pub(super) fn measure_first(book: &Book, watch: &Watch) -> MeasureFirst {
    let is = |recipe: &Recipe, version: Option<&VersionId>, state| {
        recipe.state_of(version) == Some(state)
    };
    let is_approved = |recipe: &Recipe, version: Option<&VersionId>| {
        is(recipe, version, State::Approved) && !recipe.is_only_marked(version)
    };
    let are_approved =
        drinks(book).any(|recipe| versions(recipe).any(|version| is_approved(recipe, version)));
    let mut sums = Narrowing::of(book);
    let mut count = 0;
    for recipe in drinks(book) {
        let mut balances = VersionBalances::new(book, recipe);
        for version in versions(recipe) {
            let counts = if are_approved {
                is_approved(recipe, version)
            } else {
                !is(recipe, version, State::Retired)
            };
            if !counts || watch.is_stopped() {
                continue;
            }
            if let Some(balance) = balances.balance(version) {
                sums.add(&Arc::new(balance));
                count += 1;
            }
        }
    }
    MeasureFirst {
        found: sums.ranked(),
        drinks: count,
        are_approved,
    }
}
