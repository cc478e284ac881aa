//! Why a recipe can't leave or enter a shop.

use super::in_grams::LineWithoutGrams;
use crate::book::{IngredientId, RecipeId};
use crate::edit::EditError;

/// Why a recipe can't leave or enter a shop.
#[derive(Clone, Debug, PartialEq)]
pub enum RecipeExchangeError {
    /// The recipe is not in the book.
    NoRecipe(RecipeId),
    /// Only what has been approved is passed on. Its name.
    NotApproved(String),
    /// Nobody knows what a line of this ingredient weighs.
    NoWeight(IngredientId),
    /// A line of this ingredient has a weight or temperature that is none.
    BeyondMeasure(IngredientId),
    /// Lines of the other shop that nobody can weigh here.
    NotInGrams {
        /// Name of the recipe.
        recipe: String,
        /// The lines.
        lines: Vec<LineWithoutGrams>,
    },
    /// The book that is brought in has so many recipes with a cup instead of a single one.
    NotOneRecipe(usize),
    /// A mapping names an ingredient that is not there.
    NoIngredient(IngredientId),
    /// The change could not be put together.
    Edit(EditError),
}

impl From<EditError> for RecipeExchangeError {
    fn from(error: EditError) -> Self {
        Self::Edit(error)
    }
}
