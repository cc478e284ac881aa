//! What other prices do to the cost of the drinks, before they are taken.

use std::collections::BTreeMap;

use crate::balance::{Component, Kitchen, Measurand, Prepared, figures};
use crate::book::{Book, Recipe, RecipeId, VersionId};

/// What a drink costs, as far as the prices are known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownCost {
    /// The known part, in the book's currency.
    pub known: f64,
    /// Whether a price is missing.
    pub is_partial: bool,
}

/// The cost of a drink before and after a change of prices.
#[derive(Clone, Debug, PartialEq)]
pub struct CostEffect {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
    /// What it costs now; `None` where nobody can say.
    pub before: Option<KnownCost>,
    /// What it would cost.
    pub after: Option<KnownCost>,
    /// By how much it becomes dearer; `None` where another part of the cost is known than before.
    pub difference: Option<f64>,
}

/// Every drink whose cost is another one, the largest rise first; those of which the difference is not known are last.
pub fn cost_effects(before: &Book, after: &Book) -> Vec<CostEffect> {
    let mut prices = [Prices::of(before), Prices::of(after)];
    let served = before.recipes.iter().filter(|recipe| recipe.cup.is_some());
    let mut effects: Vec<CostEffect> = served
        .flat_map(|recipe| {
            let versions = recipe
                .versions
                .iter()
                .map(|version| Some(version.id.clone()));
            let all = std::iter::once(None).chain(versions);
            all.map(|version| effect(&mut prices, recipe, version))
                .collect::<Vec<CostEffect>>()
        })
        .filter(|effect| effect.before != effect.after)
        .collect();
    let rise = |effect: &CostEffect| effect.difference.unwrap_or(f64::NEG_INFINITY);
    effects.sort_by(|a, b| rise(b).total_cmp(&rise(a)));
    effects
}

fn effect(prices: &mut [Prices<'_>; 2], recipe: &Recipe, version: Option<VersionId>) -> CostEffect {
    let [(before, priced_before), (after, priced_after)] = prices
        .each_mut()
        .map(|prices| prices.of_drink(recipe, version.as_ref()));
    let difference = before.zip(after).and_then(|(before, after)| {
        let is_whole = !before.is_partial && !after.is_partial;
        (is_whole || priced_before == priced_after).then_some(after.known - before.known)
    });
    CostEffect {
        recipe: recipe.id.clone(),
        version,
        before,
        after,
        difference,
    }
}

/// The prices of a book, and what is priced of its batches.
struct Prices<'book> {
    book: &'book Book,
    kitchen: Kitchen<'book>,
    of_batches: BTreeMap<RecipeId, Vec<bool>>,
}

impl<'book> Prices<'book> {
    fn of(book: &'book Book) -> Self {
        Self {
            book,
            kitchen: Kitchen::new(book),
            of_batches: BTreeMap::new(),
        }
    }

    /// What a drink costs, and which of its lines are priced: its own, then those of each batch that it holds. The cost of two
    /// books can be compared where the same lines are.
    fn of_drink(
        &mut self,
        recipe: &Recipe,
        version: Option<&VersionId>,
    ) -> (Option<KnownCost>, Vec<bool>) {
        let prepared = self.kitchen.prepare(recipe, version);
        let figures = figures(&prepared);
        let cost = figures.get(Measurand::Cost).map(|known| KnownCost {
            known,
            is_partial: figures.missing(Measurand::Cost) != 0,
        });
        let mut priced = priced_lines(&prepared);
        let own = prepared.lines.iter().map(|line| &line.ingredient);
        for item in self.book.everything_in(own) {
            let Some(batch) = item.recipe_in(self.book) else {
                continue;
            };
            let kitchen = &mut self.kitchen;
            let of_batch = self
                .of_batches
                .entry(batch.id.clone())
                .or_insert_with(|| priced_lines(&kitchen.prepare(batch, None)));
            priced.extend_from_slice(of_batch);
        }
        (cost, priced)
    }
}

/// Whether the cost of each line is known.
fn priced_lines(prepared: &Prepared) -> Vec<bool> {
    let lines = prepared.lines.iter();
    lines
        .map(|line| line.per_unit.knows(Component::Cost))
        .collect()
}
