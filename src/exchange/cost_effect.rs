//! What other prices do to the cost of the drinks, before they are taken.

use crate::balance::{Measurand, Slots, figures, prepare};
use crate::book::{Book, Place, Recipe, RecipeId, VersionId, resolve};

/// The cost of a drink before and after a change of prices.
#[derive(Clone, Debug, PartialEq)]
pub struct CostEffect {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
    /// What it costs now; `None` while a price is missing.
    pub before: Option<f64>,
    /// What it would cost.
    pub after: Option<f64>,
}

impl CostEffect {
    /// By how much it becomes dearer.
    pub fn difference(&self) -> Option<f64> {
        Some(self.after? - self.before?)
    }
}

/// Every drink whose cost is another one, the largest rise first; those of which a cost is not known are last.
pub fn cost_effects(before: &Book, after: &Book) -> Vec<CostEffect> {
    let served = before.recipes.iter().filter(|recipe| recipe.cup.is_some());
    let mut effects: Vec<CostEffect> = served
        .flat_map(|recipe| {
            let versions = recipe
                .versions
                .iter()
                .map(|version| Some(version.id.clone()));
            let all = std::iter::once(None).chain(versions);
            all.map(|version| effect(before, after, recipe, version))
        })
        .filter(|effect| effect.before != effect.after)
        .collect();
    let rise = |effect: &CostEffect| effect.difference().unwrap_or(f64::NEG_INFINITY);
    effects.sort_by(|one, other| rise(other).total_cmp(&rise(one)));
    effects
}

fn effect(before: &Book, after: &Book, recipe: &Recipe, version: Option<VersionId>) -> CostEffect {
    let lines = resolve(recipe, version.as_ref()).0;
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let cost = |book: &Book| {
        let prepared = prepare(book, &lines, &mut Slots::default(), &place);
        figures(&prepared).complete(Measurand::Cost)
    };
    CostEffect {
        before: cost(before),
        after: cost(after),
        recipe: recipe.id.clone(),
        version,
    }
}
