//! Which drinks the list on the left holds.

use std::collections::HashSet;
use std::sync::Arc;

use crate::book::{Book, Recipe, RecipeId, WantedWords};
use crate::ui::tall_list::TallList;

/// The rows of the list, worked out once for a book and what is searched for.
#[derive(Clone, Debug, Default, PartialEq)]
pub(in crate::ui) struct DrinkRows {
    book: Option<Arc<Book>>,
    search: String,
    pub(super) rows: Vec<Row>,
    pub(super) list: TallList,
    /// The drink that was in hand in the last frame.
    shown: Option<RecipeId>,
}

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Row {
    /// A drink or a batch, with its versions while it is in hand.
    Recipe(RecipeId),
    /// The heading of what is made in the house.
    Batches,
}

impl DrinkRows {
    /// Works the rows out anew when the book or the search is another.
    pub(super) fn follow(&mut self, book: &Arc<Book>, search: &str) {
        let is_same = |known: &Arc<Book>| Arc::ptr_eq(known, book);
        if self.book.as_ref().is_some_and(is_same) && self.search == search {
            return;
        }
        let wanted = WantedWords::of(search);
        let made_here: HashSet<&RecipeId> = book
            .ingredients
            .iter()
            .filter_map(|ingredient| ingredient.house_made.as_ref())
            .map(|made| &made.recipe)
            .collect();
        let (drinks, batches): (Vec<_>, Vec<_>) = book
            .recipes
            .iter()
            .filter(|recipe| wanted.are_in(&recipe.name))
            .partition(|recipe| recipe.cup.is_some() || !made_here.contains(&recipe.id));
        let row = |recipe: &Arc<Recipe>| Row::Recipe(recipe.id.clone());
        let heading = (!batches.is_empty()).then_some(Row::Batches);
        self.rows = drinks
            .into_iter()
            .map(row)
            .chain(heading)
            .chain(batches.into_iter().map(row))
            .collect();
        self.book = Some(book.clone());
        search.clone_into(&mut self.search);
    }

    /// Seeks the row of the drink in hand when that has just become another one.
    pub(super) fn seek(&mut self, shown: Option<RecipeId>) {
        if shown == self.shown {
            return;
        }
        self.shown = shown;
        let is_shown = |row: &Row| match (row, &self.shown) {
            (Row::Recipe(id), Some(shown)) => id == shown,
            _ => false,
        };
        self.list.seek(self.rows.iter().position(is_shown));
    }
}
