//! What more than one benchmark works on.

use evensip::book::{Book, Ingredient, IngredientId, Recipe, RecipeId};
use evensip::book_file::built_in_book;

/// The sample book with its ingredients and recipes over and over, up to so many of each.
pub(crate) fn large_book(ingredients: usize, recipes: usize) -> Book {
    let mut book = built_in_book().expect("the book is part of the program");
    let originals: Vec<_> = book.ingredients.iter().cloned().collect();
    let missing = ingredients.saturating_sub(originals.len());
    for (number, ingredient) in originals.iter().cycle().take(missing).enumerate() {
        let id = IngredientId::new(&format!("ingredient-{number}")).expect("an id");
        book.ingredients.put(Ingredient {
            id,
            name: format!("{} {number}", ingredient.name),
            ..ingredient.as_ref().clone()
        });
    }
    let originals: Vec<_> = book.recipes.iter().cloned().collect();
    let missing = recipes.saturating_sub(originals.len());
    for (number, recipe) in originals.iter().cycle().take(missing).enumerate() {
        let id = RecipeId::new(&format!("recipe-{number}")).expect("an id");
        book.recipes.put(Recipe {
            id,
            name: format!("{} {number}", recipe.name),
            ..recipe.as_ref().clone()
        });
    }
    book
}
