//! Any text as a typed amount: never a panic, and what is understood is said and understood the same again.

#![no_main]

use std::sync::LazyLock;

use evensip::book::{Amount, Book};
use evensip::book_file::built_in_book;
use libfuzzer_sys::fuzz_target;

static BOOK: LazyLock<Book> = LazyLock::new(|| built_in_book().unwrap_or_default());

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    for ingredient in [None, BOOK.ingredients.iter().next().map(AsRef::as_ref)] {
        for current in [None, Some(Amount::Grams(1.0)), Some(Amount::FillToRim)] {
            match BOOK.amount_from_text(text, ingredient, current.as_ref()) {
                Ok(amount) => {
                    let number = amount.number().unwrap_or(0.0);
                    assert!(number.is_finite() && number >= 0.0, "{text:?} became {amount:?}");
                    let words = BOOK.amount_words(&amount);
                    let again = BOOK.amount_from_text(&words, ingredient, Some(&amount));
                    let again = again.unwrap_or_else(|error| panic!("{text:?} is said {words:?}: {error}"));
                    assert_eq!(BOOK.amount_words(&again), words, "{text:?}");
                }
                Err(error) => assert!(!error.to_string().is_empty()),
            }
        }
    }
});
