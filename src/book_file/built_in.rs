//! The book that is part of the program.

use super::error::LoadProblem;
use super::parse::parse;
use crate::book::Book;

/// The text of the book that the program opens when none is named: an invented shop.
pub fn built_in() -> &'static str {
    include_str!("../../sample-books/harrowmere.ron")
}

/// The built-in book. Its text is part of the program and a test reads it, so a problem in it is a fault of the build.
pub fn built_in_book() -> Result<Book, Vec<LoadProblem>> {
    parse(built_in()).map(|(book, _)| book)
}
