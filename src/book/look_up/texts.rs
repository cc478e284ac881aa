//! Texts of a book as they are looked up: in all their languages, and the names of what is in a drink.

use std::borrow::Cow;

use crate::book::{Book, Ingredient, IngredientId, Translation};

/// A text and what it is in other languages.
pub(super) fn in_all_languages<'text>(
    text: &'text str,
    translations: &[Translation],
) -> Cow<'text, str> {
    let mut all = Cow::Borrowed(text);
    if !text.is_empty() {
        for known in translations.iter().filter(|known| known.of == text) {
            let all = all.to_mut();
            all.push('\n');
            all.push_str(&known.text);
        }
    }
    all
}

/// The same without the text itself.
pub(super) fn in_other_languages(text: &str, translations: &[Translation]) -> String {
    let all = in_all_languages(text, translations);
    all.strip_prefix(text).unwrap_or_default().to_owned()
}

/// The names of these ingredients and of what the house makes them from.
pub(super) fn contents<'book>(
    book: &'book Book,
    ids: impl IntoIterator<Item = &'book IngredientId>,
) -> String {
    let names = book.everything_in(ids).map(Ingredient::full_name);
    names.collect::<Vec<_>>().join(", ")
}

/// The same with their names in other languages.
pub(super) fn words_of_contents<'book>(
    book: &'book Book,
    ids: impl IntoIterator<Item = &'book IngredientId>,
) -> String {
    let mut words = String::new();
    for item in book.everything_in(ids) {
        words.push_str(&item.full_name());
        words.push_str(&in_other_languages(&item.name, &item.translations));
        words.push('\n');
    }
    words
}
