//! What is looked for in the background, and what was found.

use std::sync::Arc;

use super::action::Shown;
use super::measure_first::MeasureFirst;
use super::search::Search;
use super::whole_menu::WholeMenu;
use crate::balance::{Difference, level_difference};
use crate::book::{Book, IngredientId, Level, VesselId};
use crate::cups::Cups;
use crate::say::Language;
use crate::swap::{
    Adapted, Answer, Demands, Drifted, Ladder, Matrix, Nearby, Question, ReviewItem, Unadaptable,
    WalkStep, walk,
};

/// A swap with what goes with it.
#[derive(Clone, Debug, PartialEq)]
pub struct SwapFound {
    /// The answer.
    pub answer: Answer,
    /// The steps to each suggestion, in their order.
    pub walks: Vec<Vec<WalkStep>>,
    /// The standard held to itself: no step off on any axis.
    pub level: Difference,
}

impl SwapFound {
    /// An answer with its steps.
    pub fn new(book: &Book, answer: Answer) -> Self {
        let walks = answer
            .suggestions
            .iter()
            .map(|suggestion| walk(book, &answer, suggestion))
            .collect();
        let standard = &answer.standard;
        Self {
            level: level_difference(&book.settings, standard),
            answer,
            walks,
        }
    }
}

/// One swap over the whole book, as it is asked.
#[derive(Clone, Debug, PartialEq)]
pub struct Review {
    /// What goes.
    pub replace: IngredientId,
    /// What comes.
    pub with: IngredientId,
    /// What holds for every recipe.
    pub demands: Demands,
}

/// The drink made otherwise.
#[derive(Clone, Debug, PartialEq)]
pub enum VariationKind {
    /// In another cup.
    Size(VesselId),
    /// With ice, in a cup.
    Iced(VesselId),
    /// Hot, in a cup.
    Hot(VesselId),
    /// With so much of its ice.
    Ice(Level),
}

/// A variation, or why there is none.
#[derive(Clone, Debug, PartialEq)]
pub struct Variation {
    /// Which.
    pub kind: VariationKind,
    /// The drink.
    pub drink: Result<Adapted, Unadaptable>,
}

/// Amounts set by hand, with the swap that they belong to.
pub(super) type KnownNearby = (Arc<Option<SwapFound>>, Option<Arc<Nearby>>);

/// The searches of a workbench.
#[derive(Default)]
pub(super) struct Searches {
    pub(super) swap: Search<(Question, Demands), Option<SwapFound>>,
    pub(super) review: Search<Review, Vec<ReviewItem>>,
    pub(super) review_beside: Search<Review, Vec<ReviewItem>>,
    pub(super) menu: Search<Language, WholeMenu>,
    pub(super) ladder: Search<Shown, Option<Ladder>>,
    pub(super) variations: Search<Shown, Vec<Variation>>,
    pub(super) matrix: Search<Shown, Option<Matrix>>,
    pub(super) cups: Search<Shown, Option<Cups>>,
    pub(super) drifted: Search<(), Vec<Drifted>>,
    pub(super) measure_first: Search<(), MeasureFirst>,
    pub(super) brought_back: Search<Demands, Vec<ReviewItem>>,
    pub(super) nearby: Option<KnownNearby>,
}
