//! The record of the open book, and accepting what it says of doubts.

use std::sync::Arc;

use super::derived::{Answers, BookQuestion};
use crate::book::{Book, DoubtClass, RescaledDoubt};
use crate::edit::Edit;
use crate::record::{ClassRecord, Record, record};

/// What was read beside what had been foretold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct RecordOfBook;

impl BookQuestion for RecordOfBook {
    type Answer = Arc<Record>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(record(answers.book()))
    }
}

/// The edit that multiplies the doubts of a class with what its record says; `None` while the book agrees with it.
pub fn rescaling(
    book: &Book,
    found: &ClassRecord,
    date: &str,
    by: &str,
    reason: &str,
) -> Option<Edit> {
    let count = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let doubt = RescaledDoubt {
        class: found.class,
        times: found.offered()?,
        date: date.to_owned(),
        by: by.to_owned(),
        reason: reason.to_owned(),
        readings: count(found.readings.len()),
        inside: count(found.inside()),
    };
    Some(Edit::SetSettings(
        book.settings.rescaled(found.class, Some(doubt)),
    ))
}

/// The edit that gives up what was accepted for a class; `None` where nothing was.
pub fn rescaling_given_up(book: &Book, class: DoubtClass) -> Option<Edit> {
    let is_rescaled = book.settings.doubts.iter().any(|one| one.class == class);
    is_rescaled.then(|| Edit::SetSettings(book.settings.rescaled(class, None)))
}
