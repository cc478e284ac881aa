//! Ingredients of public tables, to begin an ingredient with.

use std::sync::OnceLock;

use crate::book::Book;
use crate::book_file::{self, LoadProblem};

/// Milks, sugars, syrups, tea, pearls and fruit of public tables as a book of ingredients alone; every figure is published, and
/// each note names the table and the food's number in it.
///
/// # Errors
/// None that a person can meet: the book is built in, and a test opens it.
pub fn published_ingredients() -> Result<&'static Book, &'static Vec<LoadProblem>> {
    static BOOK: OnceLock<Result<Book, Vec<LoadProblem>>> = OnceLock::new();
    BOOK.get_or_init(|| {
        book_file::parse(include_str!("../../assets/published-ingredients.ron"))
            .map(|(book, _)| book)
    })
    .as_ref()
}
