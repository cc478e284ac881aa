//! A lesson: what a group expects of each step of a swap, and what came of it. Knows no screen.

use std::collections::BTreeMap;

use crate::balance::{AxisDifference, Taste};
use crate::book::{Axis, IngredientId, Lineages, Recipe, RecipeId, State};
use crate::swap::WalkStep;
use crate::workbench::{Answers, BookQuestion, Shown};

/// What the group expects, by step and axis: where the drink will lie to the band around its standard.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Guesses(BTreeMap<(usize, String), Taste>);

impl Guesses {
    pub(super) fn get(&self, step: usize, axis: &Axis) -> Option<Taste> {
        self.0.get(&(step, axis.word().to_owned())).copied()
    }

    /// Takes a guess, or takes it back when it is the one that stands.
    pub(super) fn toggle(&mut self, step: usize, axis: &Axis, guess: Taste) {
        let key = (step, axis.word().to_owned());
        if self.0.get(&key) == Some(&guess) {
            self.0.remove(&key);
        } else {
            self.0.insert(key, guess);
        }
    }

    /// Whether a guess was right; `None` where none was made or nothing is known.
    pub(super) fn is_right(&self, step: usize, came: &AxisDifference) -> Option<bool> {
        Some(self.get(step, &came.axis)? == came.taste()?)
    }

    /// How many guesses on these steps were right, and how many there were of which it is known.
    pub(super) fn score(&self, steps: &[WalkStep], which: impl Iterator<Item = usize>) -> Score {
        let mut score = Score::default();
        for at in which {
            for came in steps[at].difference.counted() {
                let is_right = self.is_right(at, came);
                score.of += u32::from(is_right.is_some());
                score.right += u32::from(is_right == Some(true));
            }
        }
        score
    }
}

/// How many predictions were right.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Score {
    pub(super) right: u32,
    pub(super) of: u32,
}

/// The drink to go on with behind a recipe, round and round: the next in which the same ingredient can go, else the next there is.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub(super) struct NextDrink {
    pub(super) after: RecipeId,
    pub(super) ingredient: IngredientId,
}

impl BookQuestion for NextDrink {
    type Answer = Option<Shown>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let recipes: Vec<&Recipe> = answers.book().recipes.iter().map(AsRef::as_ref).collect();
        let at = recipes.iter().position(|recipe| recipe.id == self.after)?;
        let others = recipes[at + 1..].iter().chain(&recipes[..at]);
        let served = others.filter(|recipe| recipe.state != State::Retired);
        let with_ingredient = |recipe: &&Recipe| version_with(recipe, &self.ingredient);
        served.clone().find_map(with_ingredient).or_else(|| {
            let recipe = served.clone().next()?;
            Some(Shown {
                recipe: recipe.id.clone(),
                version: None,
            })
        })
    }
}

/// The first version of a recipe, itself before all, that has an ingredient.
fn version_with(recipe: &Recipe, ingredient: &IngredientId) -> Option<Shown> {
    let mut lineages = Lineages::new(recipe);
    let versions = recipe.versions.iter();
    let versions = versions.filter(|version| version.state != State::Retired);
    let mut all = std::iter::once(None).chain(versions.map(|version| Some(version.id.clone())));
    let version = all.find(|version| {
        let (resolved, _) = lineages.resolve(version.as_ref());
        resolved.lines().any(|line| line.ingredient == *ingredient)
    })?;
    Some(Shown {
        recipe: recipe.id.clone(),
        version,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn came(axis: Axis, steps: Option<f64>) -> AxisDifference {
        AxisDifference {
            axis,
            standard: Some(1.0),
            value: steps.map(|steps| 1.0 + steps),
            step: 1.0,
            weight: 1.0,
            steps,
            u_steps: None,
            scatter_steps: None,
        }
    }

    #[test]
    fn what_the_band_holds_is_the_same_and_what_is_not_known_is_not_judged() {
        let mut guesses = Guesses::default();
        for (axis, guess) in [
            (Axis::Sweetness, Taste::More),
            (Axis::Body, Taste::More),
            (Axis::Creaminess, Taste::Less),
        ] {
            guesses.toggle(1, &axis, guess);
        }
        for (axis, steps, right) in [
            (Axis::Sweetness, Some(1.9), Some(true)),
            (Axis::Body, Some(0.7), Some(false)),
            (Axis::Creaminess, None, None),
            (Axis::Acidity, Some(3.0), None),
        ] {
            assert_eq!(guesses.is_right(1, &came(axis, steps)), right);
        }
        guesses.toggle(1, &Axis::Body, Taste::Same);
        assert_eq!(
            guesses.is_right(1, &came(Axis::Body, Some(-1.0))),
            Some(true)
        );
        guesses.toggle(1, &Axis::Body, Taste::Same);
        assert_eq!(guesses.is_right(1, &came(Axis::Body, Some(-1.0))), None);
    }
}
