//! One swap over the whole book: every recipe and version that uses the ingredient, each with a compensation of its own.

use crate::book::{Book, IngredientId, Lineages, RecipeId, VersionId};

use super::answer::answer_watched;
use super::demands::Demands;
use super::drifted::{Drifted, drifted_watched};
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
    let questions = users.into_iter().map(|(recipe, version)| Question {
        recipe: recipe.id.clone(),
        version,
        replace: replace.clone(),
        with: with.clone(),
        adjust: None,
    });
    each_answered(book, questions.collect(), demands, watch)
}

/// The approved drinks that have drifted, each with what brings it back to its standard.
pub fn all_brought_back(book: &Book, demands: &Demands, watch: &Watch) -> Vec<ReviewItem> {
    let drifted = drifted_watched(book, watch);
    let questions = drifted.iter().filter_map(Drifted::question).collect();
    each_answered(book, questions, demands, watch)
}

fn each_answered(
    book: &Book,
    questions: Vec<Question>,
    demands: &Demands,
    watch: &Watch,
) -> Vec<ReviewItem> {
    watch.expect(questions.len());
    let mut items = Vec::new();
    for question in questions {
        if watch.is_stopped() {
            break;
        }
        let answer = answer_watched(book, &question, demands, watch);
        items.extend(answer.map(|answer| ReviewItem {
            recipe: question.recipe,
            version: question.version,
            answer,
        }));
        watch.done();
    }
    items
}
