//! What is in a drink or a batch: lines of nothing left out, what a topping brings along taken in, and what the house makes
//! followed down to what is bought.

use std::collections::{BTreeSet, VecDeque};

use super::{
    Amount, Axis, Book, Carried, Change, Entry, Ingredient, IngredientId, Line, Recipe, Resolved,
    Version,
};

impl Amount {
    /// Whether it is none at all. A line of nothing is not in the drink, whatever its ingredient is.
    pub fn is_nothing(&self) -> bool {
        self.number() == Some(0.0)
    }
}

impl Line {
    /// What it brings into the drink: its ingredient, unless there is none of it, and what comes along.
    pub fn ingredients(&self) -> impl Iterator<Item = &IngredientId> {
        let own = (!self.amount.is_nothing()).then_some(&self.ingredient);
        let carried = self.carried.as_ref().filter(|carried| carried.grams != 0.0);
        own.into_iter()
            .chain(carried.map(|Carried { ingredient, .. }| ingredient))
    }
}

impl Resolved {
    /// The ingredients of its lines, in order; one that stands in several lines comes several times.
    pub fn ingredients(&self) -> impl Iterator<Item = &IngredientId> {
        self.lines().flat_map(Line::ingredients)
    }
}

impl Recipe {
    /// The ingredients of the recipe itself, without its versions: what the house makes a batch from.
    pub fn ingredients(&self) -> impl Iterator<Item = &IngredientId> {
        let lines = self.entries.iter().filter_map(Entry::line);
        lines.flat_map(Line::ingredients)
    }
}

impl Version {
    /// The ingredients that its own changes bring, without those of what it builds on.
    pub fn ingredients_brought(&self) -> impl Iterator<Item = &IngredientId> {
        self.changes.iter().flat_map(|change| {
            let line = match change {
                Change::Add(_, entry) => entry.line(),
                _ => None,
            };
            let own = match change {
                Change::Ingredient(_, id) => Some(id),
                Change::Carried(_, Some(carried)) if carried.grams != 0.0 => {
                    Some(&carried.ingredient)
                }
                _ => None,
            };
            own.into_iter()
                .chain(line.into_iter().flat_map(Line::ingredients))
        })
    }
}

impl Ingredient {
    /// The recipe of the book that makes it; `None` when it is bought or the book lacks the recipe.
    pub fn recipe_in<'book>(&self, book: &'book Book) -> Option<&'book Recipe> {
        let made = self.house_made.as_ref()?;
        book.recipe(&made.recipe).map(AsRef::as_ref)
    }
}

impl Book {
    /// The fixed axes of taste, then every flavour that an ingredient names or a step is set for.
    pub fn axes(&self) -> Vec<Axis> {
        let mut axes = Axis::FIXED.to_vec();
        let ingredients = self.ingredients.iter();
        let named = ingredients.flat_map(|ingredient| &ingredient.composition.flavours);
        let named = named.map(|flavour| Axis::Flavour(flavour.name.clone()));
        let stepped = self.settings.steps.iter().map(|step| step.axis.clone());
        for axis in named.chain(stepped) {
            let is_unnamed = matches!(&axis, Axis::Flavour(name) if name.trim().is_empty());
            if !is_unnamed && !axes.contains(&axis) {
                axes.push(axis);
            }
        }
        axes
    }

    /// These ingredients and whatever the house makes them from, to any depth, each once and the nearest first. Those that the
    /// book lacks are left out.
    pub fn everything_in<'book>(
        &'book self,
        ids: impl IntoIterator<Item = &'book IngredientId>,
    ) -> EverythingIn<'book> {
        let mut everything = EverythingIn {
            book: self,
            most: usize::MAX,
            seen: BTreeSet::new(),
            waiting: VecDeque::new(),
        };
        everything.add(ids);
        everything
    }
}

/// A walk through ingredients and what they are made from; see [`Book::everything_in`].
pub struct EverythingIn<'book> {
    book: &'book Book,
    most: usize,
    seen: BTreeSet<&'book IngredientId>,
    waiting: VecDeque<&'book IngredientId>,
}

impl<'book> EverythingIn<'book> {
    /// Looks at so many ingredients at most, and at so many lines of each recipe: bounded work, whatever the book is like.
    #[must_use]
    pub fn at_most(mut self, most: usize) -> Self {
        self.most = most;
        self
    }

    fn add(&mut self, ids: impl IntoIterator<Item = &'book IngredientId>) {
        for id in ids.into_iter().take(self.most) {
            if self.seen.len() < self.most && self.seen.insert(id) {
                self.waiting.push_back(id);
            }
        }
    }
}

impl<'book> Iterator for EverythingIn<'book> {
    type Item = &'book Ingredient;

    fn next(&mut self) -> Option<&'book Ingredient> {
        while let Some(id) = self.waiting.pop_front() {
            let Some(ingredient) = self.book.ingredient(id) else {
                continue;
            };
            if let Some(recipe) = ingredient.recipe_in(self.book) {
                self.add(recipe.ingredients());
            }
            return Some(ingredient);
        }
        None
    }
}
