//! All integration tests in one binary.

mod bad_books;
mod book_files;
mod conservation;
mod import_rule;
mod picture;
mod published_cases;
mod sample;
