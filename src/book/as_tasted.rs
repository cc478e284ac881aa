//! The book as it was when a drink was tasted: an approval freezes a taste, not the lines alone.
//!
//! What enters a drink is told apart here from what does not: a price, a note or the size of a step may change without the
//! drink being another one.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::earlier::{EarlierStates, TastedWith};
use super::{
    Amount, Approval, Book, Entry, Ingredient, IngredientId, Item, ItemId, Line, Measure, Recipe,
    RecipeId, Resolved, Settings, Shelf, Vessel,
};

/// What enters drinks, with what it was before.
pub trait Tasted: Clone {
    /// What is kept of it: everything that may enter a drink, and what names it.
    type Kept: Clone + PartialEq;

    /// The states that were kept.
    fn earlier(&self) -> &EarlierStates<Self::Kept>;

    /// The same, to be changed.
    fn earlier_mut(&mut self) -> &mut EarlierStates<Self::Kept>;

    /// What is kept of it as it is now.
    fn for_keeping(&self) -> Self::Kept;

    /// It as it was; what enters no drink is as it is now.
    #[must_use]
    fn as_it_was(&self, was: &Self::Kept) -> Self;

    /// A book of it alone, with what it names of another one, in which two states of it can be compared.
    fn alone(self, named_in: &Book) -> Book;

    /// Whether a drink may come out otherwise with the other one.
    fn is_another_in_drinks(&self, other: &Self) -> bool {
        self.for_keeping() != other.for_keeping()
    }
}

/// How an item that has a field `earlier` is kept: some fields are emptied first, and taken from the item of today later.
macro_rules! tasted {
    ($type:ident by $put:expr, without { $($field:ident: $nothing:expr),+ $(,)? }) => {
        impl Tasted for $type {
            type Kept = Self;

            fn earlier(&self) -> &EarlierStates<Self> {
                &self.earlier
            }

            fn earlier_mut(&mut self) -> &mut EarlierStates<Self> {
                &mut self.earlier
            }

            fn for_keeping(&self) -> Self {
                Self {
                    earlier: EarlierStates::default(),
                    $($field: $nothing,)+
                    ..self.clone()
                }
            }

            fn as_it_was(&self, was: &Self) -> Self {
                Self {
                    earlier: EarlierStates::default(),
                    $($field: self.$field.clone(),)+
                    ..was.clone()
                }
            }

            fn alone(self, _: &Book) -> Book {
                let mut book = Book::default();
                let put: fn(&mut Book, Self) = $put;
                put(&mut book, self);
                book
            }
        }
    };
}

tasted!(Ingredient by |book, item| book.ingredients.put(item), without {
    supplier: String::new(),
    lot: String::new(),
    opened_life_hours: None,
    price: None,
    earlier_prices: Vec::new(),
    articles: Vec::new(),
    no_longer_sold: false,
    note: String::new(),
    translations: Vec::new(),
});

tasted!(Measure by |book, item| book.measures.put(item), without {
    increment: None,
    note: String::new(),
    translations: Vec::new(),
});

tasted!(Vessel by |book, item| book.vessels.put(item), without {
    price: None,
    serviceware: Vec::new(),
    note: String::new(),
    translations: Vec::new(),
});

tasted!(Settings by |book, settings| book.settings = settings, without {
    shop: String::new(),
    note: String::new(),
    currency: String::new(),
    hot_window: Settings::default().hot_window,
    iced_window: Settings::default().iced_window,
    ice_melt_rate: None,
    ice_left: None,
    sales_tax_percent: None,
    doubts: Vec::new(),
    steps: Vec::new(),
    yardsticks: Vec::new(),
    sugar_levels: Vec::new(),
    ice_levels: Vec::new(),
    language: None,
    translations: Vec::new(),
    confirmations: Vec::new(),
    allergen_lists: Vec::new(),
});

/// Of a recipe of a batch, its lines. What it is made in enters nothing.
impl Tasted for Recipe {
    type Kept = Resolved;

    fn earlier(&self) -> &EarlierStates<Resolved> {
        &self.earlier
    }

    fn earlier_mut(&mut self) -> &mut EarlierStates<Resolved> {
        &mut self.earlier
    }

    fn for_keeping(&self) -> Resolved {
        Resolved {
            entries: self.entries.clone(),
            ..Resolved::default()
        }
    }

    fn as_it_was(&self, was: &Resolved) -> Self {
        Self {
            entries: was.entries.clone(),
            versions: Vec::new(),
            approvals: Vec::new(),
            earlier: EarlierStates::default(),
            ..self.clone()
        }
    }

    fn alone(self, named_in: &Book) -> Book {
        let named = Walk::of(named_in, None, &self.for_keeping());
        let mut book = Book {
            ingredients: named.ingredients.into_shelf(),
            measures: named.measures.into_shelf(),
            ..Book::default()
        };
        book.recipes.put(self);
        book
    }
}

impl Book {
    /// The book as it was when an approved drink was tasted, as far as that drink goes: the book itself when nothing that
    /// enters the drink has changed since.
    ///
    /// An approval that does not say what it was tasted with is from before figures were kept: it has the first that were.
    pub fn as_tasted(&self, approval: &Approval) -> Cow<'_, Self> {
        self.as_tasted_with(&approval.resolved, approval.tasted_with.as_ref())
    }

    /// The same of any cup that was tasted, by its lines and the revisions of what entered it.
    pub fn as_tasted_with(&self, lines: &Resolved, with: Option<&TastedWith>) -> Cow<'_, Self> {
        let then = Walk::tasted(self, lines, with);
        let settings = state_of(&self.settings, then.revision(|with| with.settings));
        if !then.is_otherwise() && settings.is_none() {
            return Cow::Borrowed(self);
        }
        Cow::Owned(Self {
            settings: settings.unwrap_or_else(|| self.settings.clone()),
            ingredients: then.ingredients.into_shelf(),
            measures: then.measures.into_shelf(),
            vessels: then.vessels.into_shelf(),
            recipes: then.recipes.into_shelf(),
            tastings: Shelf::default(),
        })
    }

    /// Whether anything in it is otherwise than it was when a drink was tasted.
    pub fn keeps_earlier_states(&self) -> bool {
        fn has_some<T: Item + Tasted>(shelf: &Shelf<T>) -> bool {
            shelf.iter().any(|item| item.earlier().latest().is_some())
        }
        self.settings.earlier.latest().is_some()
            || has_some(&self.ingredients)
            || has_some(&self.measures)
            || has_some(&self.vessels)
            || has_some(&self.recipes)
    }

    /// What enters an approved drink and has changed since it was tasted, in the order in which it is met.
    pub fn changed_since(&self, approval: &Approval) -> Vec<ItemId> {
        self.changed_since_tasted(&approval.resolved, approval.tasted_with.as_ref())
    }

    /// The same of any cup that was tasted.
    pub fn changed_since_tasted(&self, lines: &Resolved, with: Option<&TastedWith>) -> Vec<ItemId> {
        let then = Walk::tasted(self, lines, with);
        let is_as_it_was = then.revision_of(&ItemId::Settings).is_some();
        let settings = (!is_as_it_was).then_some(ItemId::Settings);
        let ingredients = then.ingredients.changed().map(ItemId::Ingredient);
        let measures = then.measures.changed().map(ItemId::Measure);
        let vessels = then.vessels.changed().map(ItemId::Vessel);
        let recipes = then.recipes.changed().map(ItemId::Recipe);
        let items = ingredients.chain(measures).chain(vessels).chain(recipes);
        items.chain(settings).collect()
    }

    /// Everything that entered a cup that was tasted, the settings among it.
    pub(super) fn entered(&self, lines: &Resolved, with: Option<&TastedWith>) -> BTreeSet<ItemId> {
        let then = Walk::tasted(self, lines, with);
        let ingredients = then.ingredients.known.into_iter().map(ItemId::Ingredient);
        let measures = then.measures.known.into_iter().map(ItemId::Measure);
        let vessels = then.vessels.known.into_iter().map(ItemId::Vessel);
        let recipes = then.recipes.known.into_iter().map(ItemId::Recipe);
        let items = ingredients.chain(measures).chain(vessels).chain(recipes);
        items.chain([ItemId::Settings]).collect()
    }

    /// The revisions of everything that enters these lines now.
    pub fn tasted_with(&self, lines: &Resolved) -> TastedWith {
        let now = Walk::of(self, None, lines);
        TastedWith {
            settings: self.settings.earlier.revision,
            ingredients: now.ingredients.revisions(),
            measures: now.measures.revisions(),
            vessels: now.vessels.revisions(),
            recipes: now.recipes.revisions(),
        }
    }

    /// The latest revision by which an approved drink, or a cup of a tasting, has an item as it is now in it; `None` when none
    /// has.
    ///
    /// That may be later than the item's own one, when a merge took the item from one side and the approval from the other.
    pub fn revision_tasted(&self, item: &ItemId) -> Option<u32> {
        let within = self.batches_with(item);
        let may_be_in = |lines: &Resolved| match item {
            ItemId::Settings => true,
            ItemId::Vessel(id) => {
                lines.cup.as_ref() == Some(id) || lines.shaker.as_ref() == Some(id)
            }
            _ => lines.lines().any(|line| is_in_line(item, &within, line)),
        };
        let approvals = self.recipes.iter().flat_map(|recipe| &recipe.approvals);
        let approvals = approvals.map(|one| (&one.resolved, one.tasted_with.as_ref()));
        let cups = self.tastings.iter().flat_map(|tasting| &tasting.cups);
        let cups = cups.map(|cup| (&cup.lines, cup.tasted_with.as_ref()));
        let with_it = approvals.chain(cups).filter(|(lines, _)| may_be_in(lines));
        with_it
            .filter_map(|(lines, with)| Walk::tasted(self, lines, with).revision_of(item))
            .max()
    }

    /// The ingredients in whose batches an item is, to any depth, as the batches are or were.
    fn batches_with(&self, item: &ItemId) -> BTreeSet<IngredientId> {
        let made: Vec<(&IngredientId, &RecipeId)> = self
            .ingredients
            .iter()
            .flat_map(|made| {
                let kept = made.earlier.states.iter().map(|state| &state.was);
                let states = std::iter::once(made.as_ref()).chain(kept);
                states.filter_map(|state| Some((&made.id, &state.house_made.as_ref()?.recipe)))
            })
            .collect();
        let mut within = BTreeSet::new();
        loop {
            let before = within.len();
            for (id, recipe) in &made {
                let is_made_so = matches!(item, ItemId::Recipe(id) if id == *recipe)
                    || self.recipe(recipe).is_some_and(|recipe| {
                        let kept = recipe
                            .earlier
                            .states
                            .iter()
                            .flat_map(|state| &state.was.entries);
                        let mut lines = recipe.entries.iter().chain(kept).filter_map(Entry::line);
                        lines.any(|line| is_in_line(item, &within, line))
                    });
                if is_made_so {
                    within.insert((*id).clone());
                }
            }
            if within.len() == before {
                return within;
            }
        }
    }
}

/// Whether an item, or something of the house that it is in, is in a line.
fn is_in_line(item: &ItemId, within: &BTreeSet<IngredientId>, line: &Line) -> bool {
    let is_it = |id: &IngredientId| match item {
        ItemId::Ingredient(wanted) => wanted == id,
        _ => false,
    };
    let measures_it = match (&line.amount, item) {
        (Amount::Count(_, measure), ItemId::Measure(id)) => measure == id,
        _ => false,
    };
    measures_it || ingredients_of(line).any(|id| is_it(id) || within.contains(id))
}

fn ingredients_of(line: &Line) -> impl Iterator<Item = &IngredientId> {
    let carried = line.carried.as_ref().map(|carried| &carried.ingredient);
    std::iter::once(&line.ingredient).chain(carried)
}

/// An item as it was at a revision; `None` when that is how it is now.
fn state_of<T: Tasted>(now: &T, revision: u32) -> Option<T> {
    now.earlier().at(revision).map(|was| now.as_it_was(was))
}

/// What enters a drink, taken down to what is bought.
struct Walk<'book> {
    book: &'book Book,
    /// The revisions; none for everything as it is now.
    with: Option<TastedWith>,
    ingredients: Found<Ingredient>,
    measures: Found<Measure>,
    vessels: Found<Vessel>,
    recipes: Found<Recipe>,
}

/// Items of a kind in the order in which they were met.
struct Found<T: Item> {
    items: Vec<Arc<T>>,
    known: BTreeSet<T::Id>,
    /// Those that are not as they are now.
    otherwise: BTreeSet<T::Id>,
}

impl<T: Item + Tasted> Found<T> {
    fn new() -> Self {
        Self {
            items: Vec::new(),
            known: BTreeSet::new(),
            otherwise: BTreeSet::new(),
        }
    }

    /// The item of a shelf at a revision, the first time that it is met.
    fn meet(&mut self, shelf: &Shelf<T>, id: &T::Id, revision: u32) -> Option<Arc<T>> {
        if self.known.contains(id) {
            return None;
        }
        let now = shelf.get(id)?;
        self.known.insert(id.clone());
        let then = match state_of(now.as_ref(), revision) {
            None => now.clone(),
            Some(then) => {
                self.otherwise.insert(id.clone());
                Arc::new(then)
            }
        };
        self.items.push(then.clone());
        Some(then)
    }

    fn changed(&self) -> impl Iterator<Item = T::Id> {
        let items = self.items.iter().map(|item| item.id().clone());
        items.filter(|id| self.otherwise.contains(id))
    }

    fn has_as_now(&self, id: &T::Id) -> bool {
        self.known.contains(id) && !self.otherwise.contains(id)
    }

    fn revisions(&self) -> BTreeMap<T::Id, u32> {
        let revised = self
            .items
            .iter()
            .map(|item| (item.id().clone(), item.earlier().revision));
        revised.filter(|(_, revision)| *revision > 0).collect()
    }

    fn into_shelf(self) -> Shelf<T> {
        Shelf::from_shared(self.items).unwrap_or_default()
    }
}

impl<'book> Walk<'book> {
    fn tasted(book: &'book Book, lines: &Resolved, with: Option<&TastedWith>) -> Self {
        Self::of(book, Some(with.cloned().unwrap_or_default()), lines)
    }

    fn of(book: &'book Book, with: Option<TastedWith>, lines: &Resolved) -> Self {
        let mut walk = Self {
            book,
            with,
            ingredients: Found::new(),
            measures: Found::new(),
            vessels: Found::new(),
            recipes: Found::new(),
        };
        for id in [&lines.cup, &lines.shaker].into_iter().flatten() {
            let revision = walk.revision(|with| of(&with.vessels, id));
            walk.vessels.meet(&book.vessels, id, revision);
        }
        let mut open: Vec<IngredientId> = Vec::new();
        walk.meet_lines(lines.lines(), &mut open);
        while let Some(id) = open.pop() {
            let revision = walk.revision(|with| of(&with.ingredients, &id));
            let met = walk.ingredients.meet(&book.ingredients, &id, revision);
            let made = met.as_ref().and_then(|item| item.house_made.as_ref());
            let Some(id) = made.map(|made| &made.recipe) else {
                continue;
            };
            let revision = walk.revision(|with| of(&with.recipes, id));
            if let Some(recipe) = walk.recipes.meet(&book.recipes, id, revision) {
                walk.meet_lines(recipe.entries.iter().filter_map(Entry::line), &mut open);
            }
        }
        walk
    }

    fn meet_lines<'line>(
        &mut self,
        lines: impl Iterator<Item = &'line Line>,
        open: &mut Vec<IngredientId>,
    ) {
        for line in lines {
            open.extend(ingredients_of(line).cloned());
            if let Amount::Count(_, id) = &line.amount {
                let revision = self.revision(|with| of(&with.measures, id));
                self.measures.meet(&self.book.measures, id, revision);
            }
        }
    }

    fn revision(&self, of: impl FnOnce(&TastedWith) -> u32) -> u32 {
        self.with.as_ref().map_or(u32::MAX, of)
    }

    fn is_otherwise(&self) -> bool {
        !(self.ingredients.otherwise.is_empty()
            && self.measures.otherwise.is_empty()
            && self.vessels.otherwise.is_empty()
            && self.recipes.otherwise.is_empty())
    }

    /// By which revision an item is in it as it is now; `None` when it is not.
    fn revision_of(&self, item: &ItemId) -> Option<u32> {
        let (is_as_now, revision) = match item {
            ItemId::Settings => {
                let revision = self.revision(|with| with.settings);
                (self.book.settings.earlier.at(revision).is_none(), revision)
            }
            ItemId::Ingredient(id) => (
                self.ingredients.has_as_now(id),
                self.revision(|with| of(&with.ingredients, id)),
            ),
            ItemId::Measure(id) => (
                self.measures.has_as_now(id),
                self.revision(|with| of(&with.measures, id)),
            ),
            ItemId::Vessel(id) => (
                self.vessels.has_as_now(id),
                self.revision(|with| of(&with.vessels, id)),
            ),
            ItemId::Recipe(id) => (
                self.recipes.has_as_now(id),
                self.revision(|with| of(&with.recipes, id)),
            ),
            ItemId::Tasting(_) => return None,
        };
        is_as_now.then_some(revision)
    }
}

fn of<Id: Ord>(revisions: &BTreeMap<Id, u32>, id: &Id) -> u32 {
    revisions.get(id).copied().unwrap_or(0)
}
