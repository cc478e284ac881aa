//! Swaps: one ingredient replaced by another, and the changes to other lines that bring the taste back.
//!
//! A [`Question`] becomes a search over whole increments of the counter's measures ([`landscape`]), the outcome becomes
//! [`Suggestion`]s with the edits to accept them. Nothing is applied here.

mod answer;
mod explain;
mod landscape;
mod plain;
mod question;

pub use answer::{Answer, LineMove, Suggestion, SuggestionKind, answer};
pub use explain::move_words;
pub use landscape::{Obstacle, TasteLandscape};
pub use plain::{add_line_for, measure_for, plain_swap};
pub use question::{Adjustable, Question, adjustable_lines};
