//! What the house makes, kept as long as nothing changes that it rests on: few brews and batches are in many drinks, and each of
//! them is otherwise worked out again for every drink and every candidate of a swap.
//!
//! A batch rests on values alone, so what was kept is what would be worked out again, to the last bit.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;

use super::batch::IN_EACH_OTHER;
use super::larder::{Places, Stock, Taken};
use super::per_gram::PerGram;
use super::preparation::Preparation;
use crate::balance::slots::Slots;
use crate::book::{
    Amount, Book, Entry, Finding, Ingredient, IngredientId, Measure, MeasureId, Place, Recipe,
    RecipeId, Settings,
};

/// Most batches that are kept; a shop with more has some of them worked out again.
const MOST_KEPT: usize = 1024;

/// States of a batch that are kept: as it is, and as it was when standards were tasted.
const STATES: usize = 4;

thread_local! {
    static KEPT: RefCell<BTreeMap<IngredientId, Vec<Rc<Kept>>>> = const { RefCell::new(BTreeMap::new()) };
}

/// A batch, with everything that it rests on.
struct Kept {
    rests_on: RestsOn,
    /// `None` where it has to be worked out in its drink.
    made: Option<Made>,
}

/// What a batch came to by itself.
struct Made {
    /// One gram of it, with what drinks take of it.
    stock: Rc<Stock>,
    /// One gram of it, and of everything house-made that is in it, with the slots that it has.
    grams: BTreeMap<IngredientId, Rc<PerGram>>,
    /// What is wrong with it and with those.
    findings: Vec<Finding>,
}

impl Preparation<'_> {
    /// One gram of what the house makes, as it was kept or to be kept. `None` in a circle of batches, deep in others, and for
    /// something else than what the book has under this id.
    pub(super) fn kept(&mut self, item: &Ingredient, slots: &mut Slots) -> Option<Taken> {
        let in_book = self.book.ingredient(&item.id)?;
        let is_of_book = std::ptr::eq(in_book.as_ref(), item) || **in_book == *item;
        if !self.remembers || !is_of_book {
            return None;
        }
        let kept = match known(self.book, &item.id) {
            Some(kept) => kept,
            None => keep(self.book, item)?,
        };
        let made = kept.made.as_ref()?;
        if self.making.len() + kept.rests_on.depth >= IN_EACH_OTHER {
            return None;
        }
        let places = Places::of(made.stock.slots(), slots)?;
        for finding in &made.findings {
            if let Place::Ingredient(id, _) = &finding.place
                && !self.made.contains_key(id)
            {
                self.findings.push(finding.clone());
            }
        }
        for (id, gram) in &made.grams {
            if !self.made.contains_key(id) {
                let taken = if *id == item.id {
                    Taken::with_places(&made.stock, places.clone())
                } else {
                    Taken::of_gram(places.moved(gram))
                };
                self.made.insert(id.clone(), taken);
            }
        }
        self.made.get(&item.id).cloned()
    }
}

/// What is kept of a batch and holds in this book.
fn known(book: &Book, id: &IngredientId) -> Option<Rc<Kept>> {
    KEPT.with_borrow(|kept| {
        let mut states = kept.get(id)?.iter();
        states.find(|kept| kept.rests_on.holds_in(book)).cloned()
    })
}

/// Works a batch out by itself and keeps it; `None` in a circle of batches.
fn keep(book: &Book, item: &Ingredient) -> Option<Rc<Kept>> {
    let rests_on = RestsOn::of(book, &item.id)?;
    let kept = Rc::new(Kept {
        rests_on,
        made: Made::of(book, item),
    });
    KEPT.with_borrow_mut(|all| {
        if all.len() >= MOST_KEPT && !all.contains_key(&item.id) {
            all.clear();
        }
        let states = all.entry(item.id.clone()).or_default();
        states.truncate(STATES - 1);
        states.insert(0, kept.clone());
    });
    Some(kept)
}

impl Made {
    /// `None` where nothing comes of it, or where it may not leave a slot for what it does not have.
    fn of(book: &Book, item: &Ingredient) -> Option<Self> {
        let mut alone = Preparation::of(book);
        alone.remembers = false;
        let mut slots = Slots::default();
        alone.one_gram(item, &mut slots);
        let made = alone.made.into_iter();
        let grams: BTreeMap<_, _> = made.map(|(id, taken)| (id, taken.gram)).collect();
        let gram = grams.get(&item.id)?.clone();
        Some(Self {
            stock: Rc::new(Stock::new(slots, gram)?),
            grams,
            findings: alone.findings,
        })
    }
}

/// Everything of a book that a batch is worked out from; what is not there is a part of it, too.
struct RestsOn {
    settings: Settings,
    ingredients: BTreeMap<IngredientId, Option<Arc<Ingredient>>>,
    recipes: BTreeMap<RecipeId, Option<Arc<Recipe>>>,
    measures: BTreeMap<MeasureId, Option<Arc<Measure>>>,
    /// How many batches are in each other.
    depth: usize,
}

impl RestsOn {
    /// `None` in a circle of batches, and where more of them are in each other than are worked out from the outside.
    fn of(book: &Book, id: &IngredientId) -> Option<Self> {
        let mut rests_on = Self {
            settings: book.settings.clone(),
            ingredients: BTreeMap::new(),
            recipes: BTreeMap::new(),
            measures: BTreeMap::new(),
            depth: 0,
        };
        rests_on.depth = rests_on.add(book, id, &mut Vec::new(), &mut BTreeMap::new())?;
        Some(rests_on)
    }

    /// Adds what an ingredient rests on, and tells how many batches are in each other there.
    fn add(
        &mut self,
        book: &Book,
        id: &IngredientId,
        above: &mut Vec<IngredientId>,
        depths: &mut BTreeMap<IngredientId, usize>,
    ) -> Option<usize> {
        if above.contains(id) || above.len() >= IN_EACH_OTHER {
            return None;
        }
        if let Some(depth) = depths.get(id) {
            return Some(*depth);
        }
        let item = book.ingredient(id);
        self.ingredients.insert(id.clone(), item.cloned());
        let mut depth = 0;
        if let Some(made) = item.and_then(|item| item.house_made.as_ref()) {
            let recipe = book.recipe(&made.recipe);
            self.recipes.insert(made.recipe.clone(), recipe.cloned());
            above.push(id.clone());
            let entries = recipe.into_iter().flat_map(|recipe| &recipe.entries);
            for line in entries.filter_map(Entry::line) {
                if let Amount::Count(_, id) = &line.amount {
                    self.measures.insert(id.clone(), book.measure(id).cloned());
                }
                let carried = line.carried.as_ref().map(|carried| &carried.ingredient);
                for part in std::iter::once(&line.ingredient).chain(carried) {
                    depth = depth.max(self.add(book, part, above, depths)?);
                }
            }
            above.pop();
            depth += 1;
        }
        depths.insert(id.clone(), depth);
        Some(depth)
    }

    fn holds_in(&self, book: &Book) -> bool {
        let mut ingredients = self.ingredients.iter();
        let mut recipes = self.recipes.iter();
        let mut measures = self.measures.iter();
        ingredients.all(|(id, kept)| is_same(kept.as_ref(), book.ingredient(id)))
            && recipes.all(|(id, kept)| is_same(kept.as_ref(), book.recipe(id)))
            && measures.all(|(id, kept)| is_same(kept.as_ref(), book.measure(id)))
            && self.settings == book.settings
    }
}

fn is_same<T: PartialEq>(kept: Option<&Arc<T>>, now: Option<&Arc<T>>) -> bool {
    match (kept, now) {
        (Some(kept), Some(now)) => Arc::ptr_eq(kept, now) || kept == now,
        (None, None) => true,
        _ => false,
    }
}
