//! Which drinks hold what was typed: by their name, or by what is in them in any version, batches looked into.

use super::folded::{WantedWords, folded};
use super::texts::words_of_contents;
use crate::book::Book;

/// What the recipes of one snapshot of a book are found by.
#[derive(Clone, Debug, Default)]
pub struct DrinkWords {
    /// Name and contents of each recipe, folded, in the order of the book.
    recipes: Vec<(String, String)>,
}

/// Why a recipe is found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FoundBy {
    /// Its name says it.
    Name,
    /// Something in it does.
    Contents,
}

impl DrinkWords {
    /// Those of a book.
    pub fn of(book: &Book) -> Self {
        let words = book.recipes.iter().map(|recipe| {
            let brought = recipe.versions.iter();
            let brought = brought.flat_map(super::super::recipe::Version::ingredients_brought);
            let ids = recipe.ingredients().chain(brought);
            (folded(&recipe.name), folded(&words_of_contents(book, ids)))
        });
        Self {
            recipes: words.collect(),
        }
    }

    /// Why the recipe of this number is found; `None` when it is not.
    pub fn found_by(&self, recipe: usize, wanted: &WantedWords) -> Option<FoundBy> {
        let (name, contents) = self.recipes.get(recipe)?;
        if wanted.are_in_folded(name) {
            return Some(FoundBy::Name);
        }
        // One word may stand in the name and another in what is in it.
        let is_found = wanted.are_in_either(name, contents);
        is_found.then_some(FoundBy::Contents)
    }
}
