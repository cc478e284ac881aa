//! What the recipe remembers between frames.

use super::finder::FinderState;
use crate::book::{LineId, RecipeId, TastingId};
use crate::ui::safekeeping::ComparedApprovals;

/// What the recipe remembers between frames.
#[derive(Default)]
pub(in crate::ui) struct RecipeState {
    /// The list in which an ingredient is found.
    pub(super) finder: FinderState,
    /// The recipe that the list belongs to.
    finder_of: Option<RecipeId>,
    /// The line that is being dragged.
    pub(super) dragged: Option<LineId>,
    /// The two approvals that are compared.
    pub(super) approvals: ComparedApprovals,
    /// The tasting whose entry is open.
    pub(super) tasting: Option<TastingId>,
}

impl RecipeState {
    /// Closes the list of another recipe, before anything is opened for this one.
    pub(super) fn follow(&mut self, recipe: Option<&RecipeId>) {
        if self.finder_of.as_ref() != recipe {
            self.finder_of = recipe.cloned();
            self.finder.close();
        }
    }
}
