//! Cups of a tasting, made of what a book holds.

use std::borrow::Cow;

use super::{
    Amount, Book, Entry, IngredientId, Line, LineId, RecipeId, Resolved, Role, Stage, TastedCup,
    VersionId, resolve,
};

impl TastedCup {
    /// A drink of the book as it is now; `None` when the book lacks it.
    pub fn of_drink(book: &Book, recipe: &RecipeId, version: Option<&VersionId>) -> Option<Self> {
        let found = book.recipe(recipe)?;
        if version.is_some_and(|id| found.version(id).is_none()) {
            return None;
        }
        Some(Self {
            recipe: Some(recipe.clone()),
            version: version.cloned(),
            lines: resolve(found, version).0,
            tasted_with: None,
        })
    }

    /// A cup that was mixed for the tasting: so much of each ingredient, in the order in which it is told.
    pub fn mixed(book: &Book, parts: impl IntoIterator<Item = (IngredientId, Amount)>) -> Self {
        let mut lines = Resolved::default();
        for (ingredient, amount) in parts {
            let item = book.ingredient(&ingredient);
            let line = Line {
                id: LineId::from_name(ingredient.as_str(), |taken| lines.has_entry(taken)),
                role: item.map_or(Role::Flavour, |item| item.role),
                ingredient,
                amount,
                temperature: None,
                stage: Stage::Mixed,
                carried: None,
                note: String::new(),
            };
            lines.entries.push(Entry::Line(line));
        }
        Self {
            lines,
            ..Self::default()
        }
    }

    /// The book as it was when the cup was tasted, see [`Book::as_tasted`].
    pub fn in_its_book<'book>(&self, book: &'book Book) -> Cow<'book, Book> {
        book.as_tasted_with(&self.lines, self.tasted_with.as_ref())
    }
}
