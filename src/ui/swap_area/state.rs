//! What the swap remembers between frames: what is asked, what is being chosen, and how the answer is looked at.

use std::collections::BTreeMap;

use super::coming::Coming;
use crate::book::{IngredientId, RecipeId, VersionId};
use crate::swap::Question;
use crate::ui::tall_list::TallList;
use crate::ui::view_state::AskedSwap;

/// What is being chosen.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) enum Choosing {
    /// Nothing.
    #[default]
    Nothing,
    /// The two ingredients of the swap, although both are known.
    Main,
    /// A pair that goes with it: what goes once that is chosen.
    Another(Option<IngredientId>),
}

/// How an answer is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Way {
    /// Standard, plain swap and suggestion.
    #[default]
    SideBySide,
    /// One change at a time.
    Steps,
    /// Amounts are set by hand around the suggestion.
    ByHand,
    /// In every recipe that uses what goes.
    Everywhere,
}

/// A recipe or version of the reviewed list.
pub(super) type Reviewed = (RecipeId, Option<VersionId>);

/// What somebody has ticked (`true`) or unticked.
pub(super) type Chosen = BTreeMap<Reviewed, bool>;

/// What the swap area remembers between frames.
#[derive(Clone, Debug, Default)]
pub struct SwapState {
    /// The swap that is asked for.
    pub asked: AskedSwap,
    /// A version that was just kept and should be shown.
    pub show_version: Option<VersionId>,
    pub(super) choosing: Choosing,
    /// The ingredients that may come.
    pub(super) coming: Coming,
    /// Whether every reason is shown.
    pub(super) all_reasons: bool,
    /// Whether the conditions are open.
    pub(super) conditions_open: bool,
    pub(super) way: Way,
    /// Which of the suggestions is looked at.
    pub(super) suggestion: usize,
    /// The step that is shown.
    pub(super) step: usize,
    /// The amounts that are set by hand, in steps; the suggestion's own for `None`.
    pub(super) point: Option<Vec<i32>>,
    /// What was ticked and unticked by hand in the reviewed list.
    pub(super) chosen: Chosen,
    /// Another ingredient that might come, whose answers stand beside those in the reviewed list.
    pub(super) beside: Option<IngredientId>,
    /// What is typed to find it.
    pub(super) find_beside: String,
    pub(super) review_rows: TallList,
    /// How many versions were just taken from the reviewed list, and how many the book has had since.
    pub(super) taken: Option<(usize, usize)>,
    /// The name that is being typed for the suggestion.
    pub(super) suggestion_name: Option<String>,
    /// The name that is being typed for the plain swap.
    pub(super) plain_name: Option<String>,
}

impl SwapState {
    /// The area as it begins with a question.
    pub fn asking(question: Question) -> Self {
        Self {
            asked: AskedSwap::asking(question),
            ..Self::default()
        }
    }

    /// Begins anew when another swap has been asked for elsewhere.
    pub(in crate::ui) fn take_asked(&mut self, asked: &AskedSwap) {
        if self.asked != *asked {
            *self = Self {
                asked: asked.clone(),
                conditions_open: self.conditions_open,
                way: if asked.everywhere {
                    Way::Everywhere
                } else {
                    Way::default()
                },
                ..Self::default()
            };
        }
    }

    /// Tells the other areas which swap is asked for.
    pub(in crate::ui) fn hand_asked(&self, asked: &mut AskedSwap) {
        if self.asked != *asked {
            asked.clone_from(&self.asked);
        }
    }

    /// Another suggestion, or another answer, is looked at from its beginning.
    pub(super) fn begin_anew(&mut self) {
        self.step = 1;
        self.point = None;
        self.suggestion_name = None;
        self.all_reasons = false;
        self.taken = None;
    }
}
