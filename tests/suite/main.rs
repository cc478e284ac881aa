//! All integration tests in one binary.

mod bad_books;
mod book_files;
mod commands;
mod conservation;
mod import_rule;
mod picture;
mod pictures;
mod published_cases;
mod screens;
mod sample;
mod sample_drinks;
mod widgets;
