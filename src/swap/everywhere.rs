//! One swap over the whole book: every recipe and version that uses the ingredient, each with a compensation of its own.

use crate::book::{Book, IngredientId, Lineages, Recipe, RecipeId, VersionId};

use super::answer::answer_watched;
use super::demands::Demands;
use super::question::Question;
use super::suggestion::Answer;
use super::watch::Watch;

/// One recipe or version of a reviewed list.
#[derive(Clone, Debug, PartialEq)]
pub struct ReviewItem {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version; the recipe itself for `None`.
    pub version: Option<VersionId>,
    /// The answer for it.
    pub answer: Answer,
}

/// Every recipe and version that uses an ingredient, with what takes its place.
///
/// A version inherits its recipe's lines, so each is answered for itself: a swap that is right hot can be wrong iced.
pub fn everywhere(book: &Book, replace: &IngredientId, with: &IngredientId) -> Vec<ReviewItem> {
    everywhere_with(book, replace, with, &Demands::default())
}

/// The same, with demands that hold for every recipe.
pub fn everywhere_with(
    book: &Book,
    replace: &IngredientId,
    with: &IngredientId,
    demands: &Demands,
) -> Vec<ReviewItem> {
    everywhere_watched(book, replace, with, demands, &Watch::default())
}

/// The same, watched from outside.
pub fn everywhere_watched(
    book: &Book,
    replace: &IngredientId,
    with: &IngredientId,
    demands: &Demands,
    watch: &Watch,
) -> Vec<ReviewItem> {
    let mut users = Vec::new();
    for recipe in &book.recipes {
        let mut lineages = Lineages::new(recipe);
        let versions = std::iter::once(None).chain(
            recipe
                .versions
                .iter()
                .map(|version| Some(version.id.clone())),
        );
        for version in versions {
            let uses = lineages
                .resolve(version.as_ref())
                .0
                .lines()
                .any(|line| line.ingredient == *replace);
            if uses {
                users.push((recipe, version));
            }
        }
    }
    watch.expect(users.len());
    let mut items = Vec::new();
    for (recipe, version) in users {
        if watch.is_stopped() {
            break;
        }
        let question = Question {
            recipe: recipe.id.clone(),
            version,
            replace: replace.clone(),
            with: with.clone(),
            adjust: None,
        };
        items.extend(review(book, recipe, question, demands, watch));
        watch.done();
    }
    items
}

fn review(
    book: &Book,
    recipe: &Recipe,
    question: Question,
    demands: &Demands,
    watch: &Watch,
) -> Option<ReviewItem> {
    let answer = answer_watched(book, &question, demands, watch)?;
    Some(ReviewItem {
        recipe: recipe.id.clone(),
        version: question.version,
        answer,
    })
}
