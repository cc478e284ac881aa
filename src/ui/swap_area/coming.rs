//! What may come for an ingredient that goes: found once for a book and what is typed, drawn as far as it is in sight.

use std::sync::Arc;

use crate::book::{Ingredient, IngredientId, Role, WantedWords};
use crate::say::{Language, Speaker};
use crate::ui::Screen;
use crate::ui::widgets::pick_list::PickList;
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED};

/// Ingredients that can come for one that goes: those of its role first, then in the order of the book. Every word that is
/// typed must be in the name, the brand or the word of the role. What is no longer sold is listed only for those who type it,
/// and last.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub(super) struct ComingFor {
    pub(super) replace: IngredientId,
    pub(super) role: Role,
    pub(super) typed: String,
    pub(super) language: Language,
}

impl BookQuestion for ComingFor {
    type Answer = Arc<Vec<Arc<Ingredient>>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let speaker = Speaker::new(answers.book()).in_language(self.language);
        let wanted = WantedWords::of(&self.typed);
        let fits = |ingredient: &&Arc<Ingredient>| {
            let role = speaker.role(ingredient.role);
            let words = format!("{} {role}", ingredient.full_name());
            let is_offered = !ingredient.no_longer_sold || !wanted.is_empty();
            ingredient.id != self.replace && is_offered && wanted.are_in(&words)
        };
        let ingredients = answers.book().ingredients.iter();
        let mut found: Vec<_> = ingredients.filter(fits).cloned().collect();
        found.sort_by_key(|ingredient| (ingredient.no_longer_sold, ingredient.role != self.role));
        Arc::new(found)
    }
}

/// The list of what may come.
#[derive(Clone, Debug, Default)]
pub(super) struct Coming {
    /// What is listed in this frame.
    pub(super) found: Arc<Vec<Arc<Ingredient>>>,
    /// What is typed, and the row that the keyboard is on.
    pub(super) list: PickList,
}

impl Coming {
    /// Lists what may come; another list is looked at from its beginning.
    pub(super) fn follow(&mut self, screen: &Screen<'_>, wanted: &ComingFor) {
        let found = screen.answers.to(wanted);
        if !Arc::ptr_eq(&found, &self.found) {
            self.found = found;
            self.list.begin();
        }
    }
}
