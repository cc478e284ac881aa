//! The whole menu as it is worked out in the background: its figures, and the words that its drinks are found and sorted by.
//!
//! The words are made beside the figures: a frame that sorts or searches ten thousand drinks only compares what is there.

use crate::book::{Book, DrinkWords, WantedWords, folded};
use crate::cards::{MenuRow, menu_figures_watched};
use crate::say::Speaker;
use crate::swap::Watch;

/// The drinks of the menu.
#[derive(Clone, Debug, Default)]
pub struct WholeMenu {
    /// Their figures.
    pub rows: Vec<MenuRow>,
    names: Vec<RowName>,
    words: DrinkWords,
}

/// What a row is called.
#[derive(Clone, Debug)]
struct RowName {
    /// The place of its recipe in the book.
    recipe: Option<usize>,
    /// By which it is sorted, in small letters.
    small: String,
    /// By which it is found, see [`folded`].
    folded: String,
}

impl WholeMenu {
    /// That of the book of a speaker, watched from outside.
    pub fn of(speaker: Speaker<'_>, watch: &Watch) -> Self {
        let rows = menu_figures_watched(speaker.book, watch);
        let places = speaker.book.recipes.iter().enumerate();
        let places: std::collections::BTreeMap<_, _> =
            places.map(|(at, recipe)| (&recipe.id, at)).collect();
        let name = |row: &MenuRow| {
            let (recipe, version) = (&row.drink.recipe, row.drink.version.as_ref());
            let name = speaker.drink(recipe, version);
            RowName {
                recipe: places.get(recipe).copied(),
                folded: folded(&name),
                small: name.to_lowercase(),
            }
        };
        let names = rows.iter().map(name).collect();
        let words = words_of(speaker.book, watch);
        Self { rows, names, words }
    }

    /// Whether a row is found by its name or by what is in the drink.
    pub fn is_found(&self, row: usize, wanted: &WantedWords) -> bool {
        let Some(name) = self.names.get(row) else {
            return false;
        };
        let by_recipe = |at| self.words.found_by(at, wanted).is_some();
        name.recipe.is_some_and(by_recipe) || wanted.are_in_folded(&name.folded)
    }

    /// The name that a row is sorted by.
    pub fn sorted_by(&self, row: usize) -> &str {
        self.names.get(row).map_or("", |name| &name.small)
    }
}

/// What the recipes are found by; nothing once nobody waits.
fn words_of(book: &Book, watch: &Watch) -> DrinkWords {
    if watch.is_stopped() {
        DrinkWords::default()
    } else {
        DrinkWords::of(book)
    }
}
