//! The look-ups of one book as they go on: what is being made, what has been made.

use std::collections::BTreeMap;

use super::per_gram::PerGram;
use crate::balance::mix::{COMPONENTS, Mix};
use crate::book::{Book, Finding, IngredientId, Place};

/// A mix of which nothing is known.
pub(super) fn unknown_mix() -> Mix {
    Mix {
        of: [0.0; COMPONENTS],
        unknown: (1 << COMPONENTS) - 1,
    }
}

pub(super) struct Preparation<'book> {
    pub(super) book: &'book Book,
    pub(super) place: Place,
    /// House-made ingredients that are being worked out, to notice a circle.
    pub(super) making: Vec<IngredientId>,
    /// House-made ingredients that have been worked out: a batch may be part of many.
    pub(super) made: BTreeMap<IngredientId, PerGram>,
    /// What is wrong with batches.
    pub(super) findings: Vec<Finding>,
    /// Whether it takes batches that are kept, and keeps them.
    pub(super) remembers: bool,
}

impl<'book> Preparation<'book> {
    pub(super) fn of(book: &'book Book) -> Self {
        Self {
            book,
            place: Place::Settings,
            making: Vec::new(),
            made: BTreeMap::new(),
            findings: Vec::new(),
            remembers: true,
        }
    }
}
