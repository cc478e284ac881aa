//! Which drinks the list on the left holds.

use std::collections::{BTreeSet, HashSet};
use std::sync::Arc;

use crate::book::{Recipe, RecipeId, WantedWords};
use crate::ui::tall_list::TallList;
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED};

/// The rows of the list, by the words that are searched for.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub(super) struct DrinksFor {
    pub(super) search: String,
}

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Row {
    /// A drink or a batch, with its versions while it is in hand.
    Recipe(RecipeId),
    /// The heading of what is made in the house.
    Batches,
}

impl BookQuestion for DrinksFor {
    type Answer = Arc<Vec<Row>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let wanted = WantedWords::of(&self.search);
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
        let rows = drinks.into_iter().map(row).chain(heading);
        Arc::new(rows.chain(batches.into_iter().map(row)).collect())
    }
}

/// Where the rows are on the screen.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct DrinkPlaces {
    pub(super) list: TallList,
    /// The drink that was in hand in the last frame.
    shown: Option<RecipeId>,
}

impl DrinkPlaces {
    /// Seeks the row of the drink in hand when that has just become another one, and unfolds it.
    pub(super) fn seek(
        &mut self,
        rows: &[Row],
        shown: Option<RecipeId>,
        unfolded: &mut BTreeSet<RecipeId>,
    ) {
        if shown == self.shown {
            return;
        }
        unfolded.extend(shown.clone());
        self.shown = shown;
        let is_shown = |row: &Row| match (row, &self.shown) {
            (Row::Recipe(id), Some(shown)) => id == shown,
            _ => false,
        };
        self.list.seek(rows.iter().position(is_shown));
    }
}
