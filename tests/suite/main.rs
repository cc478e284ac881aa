//! All integration tests in one binary.

mod bad_books;
mod book_files;
mod picture;
mod published_cases;
