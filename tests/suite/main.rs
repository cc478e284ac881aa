//! All integration tests in one binary.

#![allow(clippy::unwrap_used, reason = "a test may panic")]

mod arbitrary_book;
mod bad_books;
mod book_files;
mod book_laws;
mod card_files;
mod card_pages;
mod card_screens;
mod cards;
mod check_findings;
mod commands;
mod conservation;
mod cooling_reference;
mod copied_tables;
mod counter;
mod engine_reference;
mod exchange;
mod first_drink;
mod habits;
mod hardening;
mod headings;
mod holes;
mod hostile_books;
mod import_rule;
#[path = "../instances/mod.rs"]
mod instances;
mod jobs;
mod kept_work;
mod labels;
mod ladder_screen;
mod look_up;
mod monte_carlo;
mod nothing_lost;
mod opening;
mod picture;
mod pictures;
mod prices;
mod published_cases;
mod safekeeping;
mod sample;
mod sample_drinks;
mod saving;
mod screens;
mod serving;
mod side_by_side;
mod signs;
mod swap_proofs;
mod swap_screen;
mod swap_steps;
mod swaps;
mod teas;
mod widgets;
mod window;
