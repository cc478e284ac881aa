//! What may come for an ingredient that goes: found once for a book and what is typed, drawn as far as it is in sight.

use std::sync::Arc;

use crate::book::{Book, Ingredient, IngredientId, Role, WantedWords};
use crate::ui::tall_list::TallList;

/// The ingredients that fit what is typed.
#[derive(Clone, Debug, Default)]
pub(super) struct Coming {
    asked: Option<Asked>,
    pub(super) found: Vec<Arc<Ingredient>>,
    pub(super) list: TallList,
    /// The row that the keyboard is on.
    pub(super) row: usize,
}

/// What was looked for.
#[derive(Clone, Debug)]
struct Asked {
    book: Arc<Book>,
    replace: IngredientId,
    role: Role,
    typed: String,
}

impl Coming {
    /// Looks again when the book, what goes or what is typed is another.
    pub(super) fn follow(
        &mut self,
        book: &Arc<Book>,
        replace: &IngredientId,
        role: Role,
        typed: &str,
    ) {
        let is_same = |asked: &Asked| {
            Arc::ptr_eq(&asked.book, book)
                && asked.replace == *replace
                && asked.role == role
                && asked.typed == typed
        };
        if self.asked.as_ref().is_some_and(is_same) {
            return;
        }
        self.found = coming(book, replace, role, typed);
        self.asked = Some(Asked {
            book: book.clone(),
            replace: replace.clone(),
            role,
            typed: typed.to_owned(),
        });
        self.go_to(0);
    }

    /// Puts the keyboard on a row and brings it into sight.
    pub(super) fn go_to(&mut self, row: usize) {
        self.row = row.min(self.found.len().saturating_sub(1));
        self.list.seek(Some(self.row));
    }
}

/// Ingredients that can come for one that goes: those of its role first, then in the order of the book. Every word that is
/// typed must be in the name, the brand or the word of the role.
fn coming(book: &Book, replace: &IngredientId, role: Role, typed: &str) -> Vec<Arc<Ingredient>> {
    let wanted = WantedWords::of(typed);
    let fits = |ingredient: &&Arc<Ingredient>| {
        let words = format!("{} {}", ingredient.full_name(), ingredient.role.word());
        ingredient.id != *replace && wanted.are_in(&words)
    };
    let mut found: Vec<_> = book.ingredients.iter().filter(fits).cloned().collect();
    found.sort_by_key(|ingredient| ingredient.role != role);
    found
}
