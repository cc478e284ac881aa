//! What may come for an ingredient that goes: found once for a book and what is typed, drawn as far as it is in sight.

use std::sync::Arc;

use crate::book::{Book, Ingredient, IngredientId, Role, WantedWords};
use crate::say::{Language, Speaker};
use crate::ui::Screen;
use crate::ui::widgets::pick_list::PickList;

/// The ingredients that fit what is typed.
#[derive(Clone, Debug, Default)]
pub(super) struct Coming {
    asked: Option<Asked>,
    pub(super) found: Vec<Arc<Ingredient>>,
    /// What is typed, and the row that the keyboard is on.
    pub(super) list: PickList,
}

/// What was looked for.
#[derive(Clone, Debug)]
struct Asked {
    book: Arc<Book>,
    language: Language,
    replace: IngredientId,
    role: Role,
    typed: String,
}

impl Coming {
    /// Looks again when the book, the language, what goes or what is typed is another.
    pub(super) fn follow(&mut self, screen: &Screen<'_>, replace: &IngredientId, role: Role) {
        let typed = self.list.text.as_str();
        let is_same = |asked: &Asked| {
            Arc::ptr_eq(&asked.book, screen.book)
                && asked.language == screen.speaker.language
                && asked.replace == *replace
                && asked.role == role
                && asked.typed == typed
        };
        if self.asked.as_ref().is_some_and(is_same) {
            return;
        }
        self.found = coming(screen.speaker, replace, role, typed);
        self.asked = Some(Asked {
            book: screen.book.clone(),
            language: screen.speaker.language,
            replace: replace.clone(),
            role,
            typed: typed.to_owned(),
        });
        self.list.begin();
    }
}

/// Ingredients that can come for one that goes: those of its role first, then in the order of the book. Every word that is
/// typed must be in the name, the brand or the word of the role.
fn coming(
    speaker: Speaker<'_>,
    replace: &IngredientId,
    role: Role,
    typed: &str,
) -> Vec<Arc<Ingredient>> {
    let wanted = WantedWords::of(typed);
    let fits = |ingredient: &&Arc<Ingredient>| {
        let role = speaker.role(ingredient.role);
        let words = format!("{} {role}", ingredient.full_name());
        ingredient.id != *replace && wanted.are_in(&words)
    };
    let ingredients = speaker.book.ingredients.iter();
    let mut found: Vec<_> = ingredients.filter(fits).cloned().collect();
    found.sort_by_key(|ingredient| ingredient.role != role);
    found
}
