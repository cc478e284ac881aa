//! What other prices do to the cost of the drinks, before they are taken.

use crate::balance::{Measurand, Slots, figures, prepare};
use crate::book::{Book, Place, Recipe, RecipeId, VersionId, resolve};

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
    let same_are_priced = before.ingredients.iter().all(|item| {
        let then = after.ingredient(&item.id);
        then.is_none_or(|then| then.price.is_some() == item.price.is_some())
    });
    let served = before.recipes.iter().filter(|recipe| recipe.cup.is_some());
    let mut effects: Vec<CostEffect> = served
        .flat_map(|recipe| {
            let versions = recipe
                .versions
                .iter()
                .map(|version| Some(version.id.clone()));
            let all = std::iter::once(None).chain(versions);
            all.map(|version| effect([before, after], recipe, version, same_are_priced))
        })
        .filter(|effect| effect.before != effect.after)
        .collect();
    let rise = |effect: &CostEffect| effect.difference.unwrap_or(f64::NEG_INFINITY);
    effects.sort_by(|one, other| rise(other).total_cmp(&rise(one)));
    effects
}

fn effect(
    books: [&Book; 2],
    recipe: &Recipe,
    version: Option<VersionId>,
    same_are_priced: bool,
) -> CostEffect {
    let lines = resolve(recipe, version.as_ref()).0;
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let [before, after] = books.map(|book| {
        let prepared = prepare(book, &lines, &mut Slots::default(), &place);
        let figures = figures(&prepared);
        figures.get(Measurand::Cost).map(|known| KnownCost {
            known,
            is_partial: figures.missing(Measurand::Cost) != 0,
        })
    });
    let difference = before.zip(after).and_then(|(before, after)| {
        let is_whole = !before.is_partial && !after.is_partial;
        (is_whole || same_are_priced).then_some(after.known - before.known)
    });
    CostEffect {
        recipe: recipe.id.clone(),
        version,
        before,
        after,
        difference,
    }
}
