//! How a speaker tells the texts of a book: as they are written, or in its language where they have words in it.

use std::collections::BTreeSet;
use std::sync::Mutex;

use super::{Language, Speaker};
use crate::book::{ItemId, Recipe, Translation, translated};

/// How the texts of a book are told.
#[derive(Clone, Copy, Debug, Default)]
pub(super) enum BookTexts<'book> {
    /// As they are written: what somebody works on.
    #[default]
    AsWritten,
    /// In the language of the speaker where they have words in it. What has none is told as it is, and noted if anybody wants to
    /// know.
    Translated(Option<&'book Untranslated>),
}

/// A text of a book that was told as it is written, because it has no words in the language that is spoken.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct UntranslatedText {
    /// Whose text it is.
    pub item: ItemId,
    /// The text.
    pub text: String,
}

/// Takes note of the texts that a speaker found no words for, each once.
#[derive(Debug, Default)]
pub struct Untranslated(Mutex<BTreeSet<UntranslatedText>>);

impl Untranslated {
    /// What was noted, by item.
    pub fn into_texts(self) -> Vec<UntranslatedText> {
        let noted = self.0.into_inner();
        // A note is taken in one step: what panicked elsewhere has left the list whole.
        let noted = noted.unwrap_or_else(std::sync::PoisonError::into_inner);
        noted.into_iter().collect()
    }

    fn note(&self, item: ItemId, text: &str) {
        let noted = self.0.lock();
        let mut noted = noted.unwrap_or_else(std::sync::PoisonError::into_inner);
        noted.insert(UntranslatedText {
            item,
            text: text.to_owned(),
        });
    }
}

impl<'book> Speaker<'book> {
    /// The same, with the texts of the book in its language; those without words in it are noted.
    #[must_use]
    pub fn translating(self, noting: &'book Untranslated) -> Self {
        Self {
            texts: BookTexts::Translated(Some(noting)),
            ..self
        }
    }

    /// The same in English, for what stands beside the words of another language: what lacks English is not noted.
    #[must_use]
    pub fn in_english(self) -> Self {
        let texts = match self.texts {
            BookTexts::AsWritten => BookTexts::AsWritten,
            BookTexts::Translated(_) => BookTexts::Translated(None),
        };
        let language = Language::ENGLISH;
        Self {
            language,
            texts,
            ..self
        }
    }

    /// What a text of an item is in the language that is spoken; `None` where it is told as it is written.
    pub(super) fn translation<'list>(
        &self,
        item: impl FnOnce() -> ItemId,
        translations: &'list [Translation],
        text: &str,
    ) -> Option<&'list str> {
        let BookTexts::Translated(noting) = self.texts else {
            return None;
        };
        let code = self.language.code();
        let found = translated(translations, code, text);
        if found.is_none()
            && let Some(noting) = noting
            && self.book.lacks_words_in(code, text)
        {
            noting.note(item(), text);
        }
        found
    }

    /// A text of a recipe: an instruction, a note, the name of a version.
    pub fn recipe_text<'text>(&self, recipe: &'text Recipe, text: &'text str) -> &'text str {
        let item = || ItemId::Recipe(recipe.id.clone());
        self.translation(item, &recipe.translations, text)
            .unwrap_or(text)
    }

    /// A word of the whole shop: a level, a flavour.
    pub fn shop_word<'text>(&self, word: &'text str) -> &'text str
    where
        'book: 'text,
    {
        let translations = &self.book.settings.translations;
        self.translation(|| ItemId::Settings, translations, word)
            .unwrap_or(word)
    }
}
