//! Looking something up in the whole book: what there is to be found, and what fits what was typed, the best first.
//!
//! An index belongs to one snapshot of a book. It holds folded text and where that stands; what is shown of a hit is read from
//! the book, so that a hundred thousand things to be found need no second copy of the book.

mod drinks;
mod folded;
mod found;
mod texts;
mod things;

pub use drinks::{DrinkWords, FoundBy};
pub use folded::{Fit, WantedWords, folded};
pub use found::{FoundKind, Hit, KindWord, Spot};

use super::Book;
use found::Thing;

/// What fits.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Hits {
    /// The best.
    pub best: Vec<Hit>,
    /// How many there are in all.
    pub count: usize,
}

/// What there is to be found in one snapshot of a book.
#[derive(Clone, Debug, Default)]
pub struct LookUpIndex {
    things: Vec<Thing>,
}

impl LookUpIndex {
    /// Everything in this book, found by its own words and by those for kinds that a book is written in.
    pub fn of(book: &Book) -> Self {
        Self::with_words(book, &|_| None)
    }

    /// The same, found by further words for kinds, too: those of the language that is read.
    pub fn with_words(book: &Book, further: &dyn Fn(KindWord) -> Option<String>) -> Self {
        Self {
            things: things::all(book, further),
        }
    }

    /// What fits, the best first and at most `most` of it. `book` is the one that the index was made of.
    pub fn find(&self, book: &Book, typed: &str, most: usize) -> Hits {
        let wanted = WantedWords::of(typed);
        if wanted.is_empty() {
            return Hits::default();
        }
        let mut fitting: Vec<(Fit, FoundKind, usize)> = self
            .things
            .iter()
            .enumerate()
            .filter_map(|(at, thing)| {
                let words = thing.words.as_str();
                let fit = wanted.fit(
                    &words[..thing.name_ends],
                    &words[..thing.beside_ends],
                    words,
                )?;
                // A flavour is one word that its ingredients begin with: it does not stand before them.
                let fit = match thing.kind {
                    FoundKind::Flavour => fit.max(Fit::BeginsName),
                    _ => fit,
                };
                Some((fit, thing.kind, at))
            })
            .collect();
        fitting.sort_unstable();
        let hit = |(fit, _, at): &(Fit, FoundKind, usize)| {
            things::hit(book, &self.things[*at], *fit, &wanted)
        };
        Hits {
            best: fitting.iter().take(most).filter_map(hit).collect(),
            count: fitting.len(),
        }
    }
}
