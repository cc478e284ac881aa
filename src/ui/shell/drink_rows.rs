//! Which drinks the list on the left holds.

use std::collections::{BTreeSet, HashSet};
use std::sync::Arc;

use crate::book::{FoundBy, Recipe, RecipeId, WantedWords};
use crate::ui::drink_menu::WordsOfDrinks;
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
    /// The heading of drinks that are found by what is in them.
    Within,
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
        let words = (!wanted.is_empty()).then(|| answers.to(&WordsOfDrinks));
        let found_by = |at| match &words {
            Some(words) => words.found_by(at, &wanted),
            None => Some(FoundBy::Name),
        };
        let is_batch = |recipe: &Recipe| recipe.cup.is_none() && made_here.contains(&recipe.id);
        let (mut named, mut holding, mut batches) = (Vec::new(), Vec::new(), Vec::new());
        for (at, recipe) in book.recipes.iter().enumerate() {
            let Some(found_by) = found_by(at) else {
                continue;
            };
            let place = match found_by {
                _ if is_batch(recipe) => &mut batches,
                FoundBy::Name => &mut named,
                FoundBy::Contents => &mut holding,
            };
            place.push(Row::Recipe(recipe.id.clone()));
        }
        let headed = |heading, rows: Vec<Row>| {
            let heading = (!rows.is_empty()).then_some(heading);
            heading.into_iter().chain(rows)
        };
        named.extend(headed(Row::Within, holding));
        named.extend(headed(Row::Batches, batches));
        Arc::new(named)
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
