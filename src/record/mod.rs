//! The book keeps score of itself: what was read beside what had been foretold, and what that says of the doubts.
//!
//! - A reading of a cup ([`crate::book::FiledReading`]) stands with the recipe, beside what was foretold of it on that day.
//! - A weighing of a measure is held to what the weighings of the days before, or the measure's own label, foretold.
//! - A tasting that counts is held to what packs and the tastings before it foretold.
//!
//! [`record`] counts them by class of doubt and says by how much the doubts of a class would have to be multiplied ([`scale`]).
//! Nothing is re-scaled by itself: somebody accepts a factor, which is an entry in the settings of the book, and gives it up again.

mod filed;
mod gathered;
pub mod scale;

pub use filed::{filed_reading, foretold};
pub use gathered::{ClassRecord, FROM_READINGS, Record, RecordVerdict, Scored, Source, record};
