//! The look-ups of one book as they go on: what is being made, what has been made.

use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::larder::{Larder, Taken};
use crate::book::{Book, Finding, IngredientId, Place};

pub(super) struct Preparation<'book> {
    pub(super) book: &'book Book,
    pub(super) place: Place,
    /// House-made ingredients that are being worked out, to notice a circle.
    pub(super) making: Vec<IngredientId>,
    /// House-made ingredients that have been worked out: a batch may be part of many.
    pub(super) made: BTreeMap<IngredientId, Taken>,
    /// What is wrong with batches.
    pub(super) findings: Vec<Finding>,
    /// Whether it takes what is kept of ingredients and batches, and keeps them.
    pub(super) remembers: bool,
    /// What is kept of ingredients under the settings of the book, once it is asked for.
    larder: OnceCell<Rc<Larder>>,
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
            larder: OnceCell::new(),
        }
    }

    /// What is kept of the ingredients of the book.
    pub(super) fn larder(&self) -> &Rc<Larder> {
        self.larder.get_or_init(|| Larder::of(&self.book.settings))
    }
}
