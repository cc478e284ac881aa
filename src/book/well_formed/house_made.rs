//! House-made ingredients that need each other in a circle.

use std::collections::BTreeSet;

use super::checklist::Checklist;
use crate::book::{Book, Entry, FindingKind, IngredientId, Place, RecipeId};

/// A walk down the recipes of house-made ingredients that visits each recipe once, so that its work is that of reading the book.
struct Walk<'book> {
    book: &'book Book,
    finished: BTreeSet<&'book RecipeId>,
    /// The recipes that are being walked, outermost first, each with the ingredient that led to it.
    open: Vec<Open<'book>>,
    is_open: BTreeSet<&'book RecipeId>,
}

struct Open<'book> {
    ingredient: &'book IngredientId,
    recipe: &'book RecipeId,
    entries: std::slice::Iter<'book, Entry>,
}

/// Reports each circle once, at the ingredient where the walk enters it.
pub(super) fn check_circles(book: &Book, list: &mut Checklist) {
    let mut walk = Walk {
        book,
        finished: BTreeSet::new(),
        open: Vec::new(),
        is_open: BTreeSet::new(),
    };
    for item in &book.ingredients {
        walk.enter(&item.id, list);
        while let Some(innermost) = walk.open.last_mut() {
            match innermost.entries.next() {
                Some(Entry::Line(line)) => walk.enter(&line.ingredient, list),
                Some(Entry::Instruction(_)) => {}
                None => walk.leave(),
            }
        }
    }
}

impl<'book> Walk<'book> {
    /// Begins with the recipe of an ingredient, if it has one that has not been walked.
    fn enter(&mut self, id: &'book IngredientId, list: &mut Checklist) {
        let made = self
            .book
            .ingredient(id)
            .and_then(|item| item.house_made.as_ref());
        let Some(recipe) = made.and_then(|made| self.book.recipe(&made.recipe)) else {
            return;
        };
        if self.is_open.contains(&recipe.id) {
            self.report(&recipe.id, id, list);
        } else if !self.finished.contains(&recipe.id) {
            self.is_open.insert(&recipe.id);
            self.open.push(Open {
                ingredient: id,
                recipe: &recipe.id,
                entries: recipe.entries.iter(),
            });
        }
    }

    fn leave(&mut self) {
        if let Some(done) = self.open.pop() {
            self.is_open.remove(done.recipe);
            self.finished.insert(done.recipe);
        }
    }

    fn report(&self, recipe: &RecipeId, last: &IngredientId, list: &mut Checklist) {
        let from = self
            .open
            .iter()
            .position(|open| open.recipe == recipe)
            .unwrap_or(0);
        let members = self.open[from..].iter().map(|open| open.ingredient);
        let chain: Vec<String> = members.chain([last]).map(ToString::to_string).collect();
        let place = Place::Ingredient(self.open[from].ingredient.clone(), "house_made");
        list.error(place, FindingKind::HouseMadeCycle { chain });
    }
}
