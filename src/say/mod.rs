//! The one place where Evensip speaks: sentences, names, numbers with their units, lists and plurals.
//!
//! Everything below hands over facts: enums of ids, quantities and ranges. A [`Speaker`] knows the book that the ids belong to, the
//! units that a person reads and the language, and turns facts into text. The texts themselves stand in the catalogues of
//! `assets/languages`, one folder per language and one file per subject, in the notation of Project Fluent.

mod allergens;
mod amounts;
mod assumption;
mod book_file;
mod book_texts;
mod brewing;
mod catalogue;
mod cause;
mod caution;
mod control;
mod cooling;
mod cups;
mod differences;
mod edits;
mod exchange;
mod figure;
mod findings;
mod item_value;
mod kinds;
mod language;
mod last_sip;
mod lists;
mod look_up;
mod names;
mod numbers;
mod pack;
mod record;
mod refractometer;
mod stage;
mod statement;
mod swap;
mod taste;
mod tasting;
mod tasting_record;
mod typing;
mod variation;
mod why_off;
mod written;
mod yardstick;

pub use book_texts::{Untranslated, UntranslatedText};
pub use cause::CauseWords;
pub use language::Language;

use std::borrow::Cow;
use std::sync::LazyLock;

use self::book_texts::BookTexts;
use self::catalogue::Catalogue;
use crate::book::Book;
use crate::quantity::DisplayUnits;

/// A clause as a sentence of its own, or a word as the first of one: its first letter large.
pub fn capitalised(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// Says a message with its arguments: `say!(speaker, "cup-too-small", cup: name, count: 3)`.
macro_rules! say {
    ($speaker:expr, $message:expr $(, $name:ident : $value:expr)* $(,)?) => {
        $speaker.say($message, &[$((stringify!($name), $crate::say::Argument::from($value))),*])
    };
}
pub(crate) use say;

static NO_BOOK: LazyLock<Book> = LazyLock::new(Book::default);

/// Speaks about a book, in one language and with the units that a person reads.
#[derive(Clone, Copy, Debug)]
pub struct Speaker<'book> {
    /// The book that ids belong to.
    pub book: &'book Book,
    /// What temperatures and volumes are told in.
    pub units: DisplayUnits,
    /// The language.
    pub language: Language,
    /// How the texts of the book are told.
    texts: BookTexts<'book>,
}

/// What stands in a message at a place with a name.
#[derive(Clone, Debug, PartialEq)]
pub enum Argument<'text> {
    /// A text that is put in as it is: a name, a figure with its unit, a list. A message may choose by it.
    Text(Cow<'text, str>),
    /// A count, by which a message chooses its plural. Shown without decimals; a count with a fraction comes as text beside it.
    Count(f64),
}

impl<'book> Speaker<'book> {
    /// Speaks English and metric units.
    pub fn new(book: &'book Book) -> Self {
        Self {
            book,
            units: DisplayUnits::METRIC,
            language: Language::ENGLISH,
            texts: BookTexts::AsWritten,
        }
    }

    /// Speaks of what needs no book: an id is then told as it is.
    pub fn without_book() -> Speaker<'static> {
        Speaker::new(&NO_BOOK)
    }

    /// The same about another book, whose texts are told as they are written.
    #[must_use]
    pub fn about(self, book: &Book) -> Speaker<'_> {
        Speaker {
            book,
            units: self.units,
            language: self.language,
            texts: BookTexts::AsWritten,
        }
    }

    /// The same in other units.
    #[must_use]
    pub fn in_units(self, units: DisplayUnits) -> Self {
        Self { units, ..self }
    }

    /// The same in another language.
    #[must_use]
    pub fn in_language(self, language: Language) -> Self {
        Self { language, ..self }
    }

    /// A message without arguments.
    pub fn word(&self, message: &str) -> &'static str {
        let found = self.catalogue().word(message);
        found
            .or_else(|| Language::ENGLISH.catalogue().word(message))
            .unwrap_or_else(|| {
                debug_assert!(false, "no message `{message}` without arguments");
                ""
            })
    }

    /// A message with arguments; [`say!`] reads better.
    pub fn say(&self, message: &str, arguments: &[(&'static str, Argument<'_>)]) -> String {
        let said = self.catalogue().say(message, arguments);
        said.or_else(|| Language::ENGLISH.catalogue().say(message, arguments))
            .unwrap_or_else(|| {
                debug_assert!(false, "no message `{message}`");
                message.to_owned()
            })
    }

    fn catalogue(&self) -> &'static Catalogue {
        self.language.catalogue()
    }
}

impl<'text> From<&'text str> for Argument<'text> {
    fn from(text: &'text str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'text> From<&'text String> for Argument<'text> {
    fn from(text: &'text String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Argument<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl<'text> From<Cow<'text, str>> for Argument<'text> {
    fn from(text: Cow<'text, str>) -> Self {
        Self::Text(text)
    }
}

impl From<usize> for Argument<'_> {
    fn from(count: usize) -> Self {
        Self::Count(count as f64)
    }
}

impl From<u64> for Argument<'_> {
    fn from(count: u64) -> Self {
        Self::Count(count as f64)
    }
}

impl From<u32> for Argument<'_> {
    fn from(count: u32) -> Self {
        Self::Count(f64::from(count))
    }
}
