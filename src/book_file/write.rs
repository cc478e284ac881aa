//! From a book to text, always in the same order and layout.

use serde::Serialize;

use super::format_v1::{self as file, Stored};
use super::layout::Layout;
use super::{FORMAT, LONGEST_TEXT};
use crate::book::{Book, Item, Shelf, TextMeasure, Written};

/// The text of a book. The same book gives the same text, and reading it gives the same book.
pub fn write(book: &Book) -> String {
    write_counting(book).0
}

/// The text of a book, and how many of its numbers are not finite and could not be read back.
pub(super) fn write_counting(book: &Book) -> (String, usize) {
    /// Item by item, so that no second book is made on the way.
    fn list<F: Stored<T> + Serialize, T: Item>(layout: &mut Layout, name: &str, shelf: &Shelf<T>) {
        if !shelf.is_empty() {
            layout.list(name, |layout| {
                for item in shelf {
                    layout.item(&F::from_book(item));
                }
            });
        }
    }
    let Book {
        settings,
        ingredients,
        measures,
        vessels,
        recipes,
        tastings,
    } = book;
    let mut layout = Layout::default();
    layout.book(|layout| {
        layout.field("format", &FORMAT);
        layout.field("settings", &file::Settings::from_book(settings));
        list::<file::Ingredient, _>(layout, "ingredients", ingredients);
        list::<file::Measure, _>(layout, "measures", measures);
        list::<file::Vessel, _>(layout, "vessels", vessels);
        list::<file::Recipe, _>(layout, "recipes", recipes);
        list::<file::Tasting, _>(layout, "tastings", tastings);
    });
    layout.finish()
}

/// How the text of a book is measured, and the longest that can be opened again.
pub fn text_measure() -> TextMeasure {
    TextMeasure {
        written,
        most: LONGEST_TEXT,
    }
}

/// What [`write`] would give, item by item: nothing that a known book has just so is written again.
fn written(book: &Book, known: Option<(&Book, Written)>) -> Written {
    let nothing = Book::default();
    let other = known.map_or(&nothing, |(other, _)| other);
    let (frame, items) = (frame(book), items_unlike(book, other));
    let Some((_, before)) = known else {
        return Written {
            bytes: frame.bytes + items.bytes,
            not_finite: frame.not_finite + items.not_finite,
        };
    };
    let (old_frame, gone) = (self::frame(other), items_unlike(other, book));
    Written {
        bytes: (before.bytes + frame.bytes + items.bytes)
            .saturating_sub(old_frame.bytes + gone.bytes),
        not_finite: (before.not_finite + frame.not_finite + items.not_finite)
            .saturating_sub(old_frame.not_finite + gone.not_finite),
    }
}

/// The text of a book without the items of its shelves.
fn frame(book: &Book) -> Written {
    let without_items = Book {
        settings: book.settings.clone(),
        ..Book::default()
    };
    let (text, not_finite) = write_counting(&without_items);
    let mut lists = Layout::at_depth(1);
    for (name, is_empty) in [
        ("ingredients", book.ingredients.is_empty()),
        ("measures", book.measures.is_empty()),
        ("vessels", book.vessels.is_empty()),
        ("recipes", book.recipes.is_empty()),
        ("tastings", book.tastings.is_empty()),
    ] {
        if !is_empty {
            lists.list(name, |_| ());
        }
    }
    Written {
        bytes: (text.len() + lists.finish().0.len()) as u64,
        not_finite,
    }
}

/// The text of the items that another book does not have just so.
fn items_unlike(book: &Book, other: &Book) -> Written {
    fn add<F: Stored<T> + Serialize, T: Item>(
        written: &mut Written,
        shelf: &Shelf<T>,
        other: &Shelf<T>,
    ) {
        for item in shelf.unlike(other) {
            let mut layout = Layout::at_depth(2);
            layout.item(&F::from_book(item));
            let (text, not_finite) = layout.finish();
            written.bytes += text.len() as u64;
            written.not_finite += not_finite;
        }
    }
    let mut written = Written {
        bytes: 0,
        not_finite: 0,
    };
    add::<file::Ingredient, _>(&mut written, &book.ingredients, &other.ingredients);
    add::<file::Measure, _>(&mut written, &book.measures, &other.measures);
    add::<file::Vessel, _>(&mut written, &book.vessels, &other.vessels);
    add::<file::Recipe, _>(&mut written, &book.recipes, &other.recipes);
    add::<file::Tasting, _>(&mut written, &book.tastings, &other.tastings);
    written
}
