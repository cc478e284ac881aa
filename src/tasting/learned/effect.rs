//! What a figure that is taken over does to the drinks of a book.

use super::weighing::Factor;
use crate::balance::{AxisDifference, VersionBalances, difference};
use crate::book::{Book, RecipeId, VersionId, resolve};

/// What becomes of a drink.
#[derive(Clone, Debug, PartialEq)]
pub struct DrinkEffect {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version; the recipe itself for `None`.
    pub version: Option<VersionId>,
    /// Its own taste on the axis: before as the standard, afterwards as the value, with the step around the former.
    pub taste: AxisDifference,
    /// Noticeable steps from its standard before; `None` where there is none, or it is not known.
    pub off_before: Option<f64>,
    /// The same afterwards.
    pub off_after: Option<f64>,
}

/// What becomes of every drink with an ingredient in it, of all versions, in the order of the book. `after` is the book in which the
/// figure has been taken over.
pub fn effects(before: &Book, after: &Book, factor: &Factor) -> Vec<DrinkEffect> {
    let axis = factor.what.axis();
    let mut effects = Vec::new();
    for recipe in &before.recipes {
        let Some(now) = after.recipe(&recipe.id) else {
            continue;
        };
        let mut was = VersionBalances::new(before, recipe);
        let mut is = VersionBalances::new(after, now);
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions) {
            let (lines, _) = resolve(recipe, version);
            let mut within = before.everything_in(lines.ingredients());
            if !within.any(|item| item.id == factor.ingredient) {
                continue;
            }
            let (Some(old), Some(new)) = (was.balance(version), is.balance(version)) else {
                continue;
            };
            let on_axis = |standard: &_, drink: &_, book: &Book| {
                let between = difference(&book.settings, standard, drink);
                between.axes.into_iter().find(|one| one.axis == axis)
            };
            let Some(taste) = on_axis(&old, &new, before) else {
                continue;
            };
            let off_before = was
                .standard(version)
                .and_then(|standard| on_axis(&standard, &old, before)?.steps);
            let off_after = is
                .standard(version)
                .and_then(|standard| on_axis(&standard, &new, after)?.steps);
            effects.push(DrinkEffect {
                recipe: recipe.id.clone(),
                version: version.cloned(),
                taste,
                off_before,
                off_after,
            });
        }
    }
    effects
}
