//! Names of what is in the book.

use crate::book::{Book, IngredientId};
use crate::quantity::name_as_shown;

/// Brand and name of an ingredient; its id when it is no longer in the book.
pub fn ingredient_name(book: &Book, id: &IngredientId) -> String {
    book.ingredient(id).map_or_else(
        || id.to_string(),
        |ingredient| name_as_shown(&ingredient.full_name()).into_owned(),
    )
}
