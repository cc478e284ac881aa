//! A lesson: what a group expects of each step of a swap, and what came of it. Knows no screen.

use std::collections::BTreeMap;

use crate::balance::{AxisDifference, Taste};
use crate::book::{Axis, IngredientId, Lineages, Recipe, RecipeId, State};
use crate::swap::WalkStep;
use crate::workbench::{Answers, BookQuestion, Shown};

/// Most learners of a group.
pub(super) const MOST_LEARNERS: u32 = 40;

/// How many learners expect what of each step and axis: where the drink will lie to the band around its standard.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Guesses {
    learners: u32,
    /// For each of `Taste::ALL`, how many learners expect it.
    hands: BTreeMap<(usize, String), [u32; 3]>,
}

/// One prediction for the whole group, until somebody says how many they are.
impl Default for Guesses {
    fn default() -> Self {
        Self {
            learners: 1,
            hands: BTreeMap::new(),
        }
    }
}

impl Guesses {
    /// How many learners predict.
    pub(super) fn learners(&self) -> u32 {
        self.learners
    }

    /// Another number of learners; what more of them expected than there are now is taken back.
    pub(super) fn set_learners(&mut self, learners: u32) {
        self.learners = learners.clamp(1, MOST_LEARNERS);
        let most = self.learners;
        self.hands
            .retain(|_, hands| hands.iter().sum::<u32>() <= most);
    }

    /// The same group, which has predicted nothing yet.
    pub(super) fn begin_again(&mut self) {
        self.hands.clear();
    }

    fn on(&self, step: usize, axis: &Axis) -> [u32; 3] {
        let key = (step, axis.word().to_owned());
        self.hands.get(&key).copied().unwrap_or_default()
    }

    /// How many learners expect this.
    pub(super) fn get(&self, step: usize, axis: &Axis, guess: Taste) -> u32 {
        self.on(step, axis)[guess as usize]
    }

    /// One more learner expects this. When all have predicted, those who expect it take it back, or one of the others changes
    /// sides.
    pub(super) fn raise(&mut self, step: usize, axis: &Axis, guess: Taste) {
        let mut hands = self.on(step, axis);
        let at = guess as usize;
        if hands.iter().sum::<u32>() < self.learners {
            hands[at] += 1;
        } else if hands[at] > 0 {
            hands[at] = 0;
        } else if let Some(most) = hands.iter_mut().max() {
            *most -= 1;
            hands[at] = 1;
        }
        self.hands.insert((step, axis.word().to_owned()), hands);
    }

    /// How many predictions were right; `None` where none was made or nothing is known.
    pub(super) fn judged(&self, step: usize, came: &AxisDifference) -> Option<Score> {
        let hands = self.on(step, &came.axis);
        let of = hands.iter().sum();
        let right = hands[came.taste()? as usize];
        (of > 0).then_some(Score { right, of })
    }

    /// How many predictions on these steps were right, and how many there were of which it is known.
    pub(super) fn score(&self, steps: &[WalkStep], which: impl Iterator<Item = usize>) -> Score {
        let mut score = Score::default();
        for at in which {
            let came = steps[at].difference.counted();
            for Score { right, of } in came.filter_map(|came| self.judged(at, came)) {
                score.right += right;
                score.of += of;
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
            guesses.raise(1, &axis, guess);
        }
        let judged = |guesses: &Guesses, axis, steps| {
            let score = guesses.judged(1, &came(axis, steps))?;
            Some((score.right, score.of))
        };
        for (axis, steps, right) in [
            (Axis::Sweetness, Some(1.9), Some((1, 1))),
            (Axis::Body, Some(0.7), Some((0, 1))),
            (Axis::Creaminess, None, None),
            (Axis::Acidity, Some(3.0), None),
        ] {
            assert_eq!(judged(&guesses, axis, steps), right);
        }
        // Another guess takes the place of the one before, and the same one again is taken back.
        guesses.raise(1, &Axis::Body, Taste::Same);
        assert_eq!(judged(&guesses, Axis::Body, Some(-1.0)), Some((1, 1)));
        guesses.raise(1, &Axis::Body, Taste::Same);
        assert_eq!(judged(&guesses, Axis::Body, Some(-1.0)), None);
    }

    #[test]
    fn each_learner_has_one_prediction_however_often_it_is_clicked() {
        let mut guesses = Guesses::default();
        guesses.set_learners(4);
        for guess in [Taste::More, Taste::More, Taste::More, Taste::Same] {
            guesses.raise(1, &Axis::Sweetness, guess);
        }
        let sweeter = came(Axis::Sweetness, Some(1.9));
        let score = guesses.judged(1, &sweeter).unwrap();
        assert_eq!((score.right, score.of), (3, 4));
        // A fifth hand is one of the four that changes sides.
        guesses.raise(1, &Axis::Sweetness, Taste::Less);
        let hands = Taste::ALL.map(|guess| guesses.get(1, &Axis::Sweetness, guess));
        assert_eq!(hands, [1, 1, 2]);
        for clicks in 0..50 {
            guesses.raise(1, &Axis::Sweetness, Taste::ALL[clicks % 3]);
            let hands = Taste::ALL.map(|guess| guesses.get(1, &Axis::Sweetness, guess));
            assert!(hands.iter().sum::<u32>() <= 4, "{hands:?}");
        }
        guesses.set_learners(1);
        let hands = Taste::ALL.map(|guess| guesses.get(1, &Axis::Sweetness, guess));
        assert!(hands.iter().sum::<u32>() <= 1, "{hands:?}");
    }
}
