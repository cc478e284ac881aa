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
    each_circle(book, &mut |first, circle| {
        let place = Place::Ingredient(first.clone(), "house_made");
        let chain = std::iter::once(&first).chain(circle);
        let chain = chain.map(ToString::to_string).collect();
        list.error(place, FindingKind::HouseMadeCycle { chain });
    });
}

/// Hears of a circle.
type Tell<'call, 'book> = dyn FnMut(&'book IngredientId, &[&'book IngredientId]) + 'call;

/// Tells of circles: ingredients that are each made from the next one, and the last one from the first; with the ingredient by
/// whose recipe the walk got in, which is the last one or is made as that is.
pub(in crate::book) fn each_circle<'book>(book: &'book Book, tell: &mut Tell<'_, 'book>) {
    let mut walk = Walk {
        book,
        finished: BTreeSet::new(),
        open: Vec::new(),
        is_open: BTreeSet::new(),
    };
    for item in &book.ingredients {
        walk.enter(&item.id, tell);
        while let Some(innermost) = walk.open.last_mut() {
            match innermost.entries.next() {
                Some(Entry::Line(line)) => walk.enter(&line.ingredient, tell),
                Some(Entry::Instruction(_)) => {}
                None => walk.leave(),
            }
        }
    }
}

impl<'book> Walk<'book> {
    /// Begins with the recipe of an ingredient, if it has one that has not been walked.
    fn enter(&mut self, id: &'book IngredientId, tell: &mut Tell<'_, 'book>) {
        let made = self
            .book
            .ingredient(id)
            .and_then(|item| item.house_made.as_ref());
        let Some(recipe) = made.and_then(|made| self.book.recipe(&made.recipe)) else {
            return;
        };
        if self.is_open.contains(&recipe.id) {
            let is_of = |open: &Open<'_>| open.recipe == &recipe.id;
            let from = self.open.iter().position(is_of).unwrap_or(0);
            let within = self.open[from + 1..].iter().map(|open| open.ingredient);
            let circle: Vec<_> = within.chain([id]).collect();
            tell(self.open[from].ingredient, &circle);
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
}
