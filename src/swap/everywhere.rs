//! One swap over the whole book: every recipe and version that uses the ingredient, each with a compensation of its own.

use crate::balance::{Measurand, balance_version, figure_difference};
use crate::book::{Book, IngredientId, Lineages, Recipe, RecipeId, VersionId};
use crate::quantity::Uncertain;

use super::answer::answer_watched;
use super::demands::Demands;
use super::drifted::{Drifted, drifted_watched};
use super::question::Question;
use super::suggestion::{Answer, Suggestion};
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
    /// How much more than now the first suggestion costs, in the book's currency; `None` when that can't be told.
    pub more_cost: Option<Uncertain>,
    /// The version of the recipe that is the first suggestion already, line by line.
    pub already: Option<VersionId>,
}

impl ReviewItem {
    /// An answer with what a list says beside it; `None` when the recipe or version is not in the book.
    fn of(book: &Book, question: Question, demands: &Demands, watch: &Watch) -> Option<Self> {
        let answer = answer_watched(book, &question, demands, watch)?;
        let recipe = book.recipe(&question.recipe)?;
        let suggestion = answer.suggestions.first();
        let more_cost = suggestion.and_then(|suggestion| {
            let after = &suggestion.balance;
            if answer.standard_is_approved {
                let now = balance_version(book, recipe, question.version.as_ref())?;
                figure_difference(&now, after, Measurand::Cost)
            } else {
                figure_difference(&answer.standard, after, Measurand::Cost)
            }
        });
        let already = suggestion.and_then(|suggestion| made_already(recipe, suggestion));
        Some(Self {
            recipe: question.recipe,
            version: question.version,
            answer,
            more_cost,
            already,
        })
    }

    /// Whether the first suggestion can be taken as a new version: there is one, and the recipe does not have it.
    pub fn can_be_taken(&self) -> bool {
        !self.answer.suggestions.is_empty() && self.already.is_none()
    }

    /// Whether the first suggestion is within one noticeable step on every axis, each of them known.
    pub fn is_level(&self) -> bool {
        let first = self.answer.suggestions.first();
        first.is_some_and(|first| first.difference.within_one_step() == Some(true))
    }
}

/// The first version of a recipe with the very lines of a suggestion.
fn made_already(recipe: &Recipe, suggestion: &Suggestion) -> Option<VersionId> {
    let wanted = &suggestion.balance.resolved;
    let mut found = None;
    recipe.each_resolved(|version, lines, _| {
        if found.is_none() && lines == wanted {
            found = Some(version.id.clone());
        }
    });
    found
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
        items.extend(ReviewItem::of(book, question, demands, watch));
        watch.done();
    }
    items
}
