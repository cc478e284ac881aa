//! A list for a person to review: what would be new, what would change, what is left out and why.

use std::sync::Arc;

use super::doubt::{Doubt, Skip};
use super::field::Field;
use crate::book::{Book, Ingredient, Nutrient, Price};
use crate::edit::{Edit, EditError, WholeBook, apply_soundly};

/// What would become of one row.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// An ingredient that the book does not have.
    New(Box<Ingredient>),
    /// An ingredient with other figures than now.
    Changed {
        /// The ingredient as it would be.
        ingredient: Box<Ingredient>,
        /// Which, and what they are now.
        changes: Vec<FieldChange>,
    },
    /// The book has it just so.
    Same,
    /// It is left out.
    Skipped(Skip),
}

/// A field of an ingredient that a row changes.
#[derive(Clone, Debug, PartialEq)]
pub enum FieldChange {
    /// A figure of the label, in its unit for 100 g.
    Figure {
        /// Which.
        nutrient: Nutrient,
        /// Before; `None` when it was not stated.
        before: Option<f64>,
        /// After.
        after: f64,
    },
    /// The density, g/ml.
    Density {
        /// Before; `None` when it was not stated.
        before: Option<f64>,
        /// After.
        after: f64,
    },
    /// The price of a pack.
    Price {
        /// Before; `None` when it was not stated.
        before: Option<Price>,
        /// After.
        after: Price,
    },
    /// A text.
    Text {
        /// Which.
        field: Field,
        /// After, shortened.
        after: String,
    },
}

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct ReviewLine {
    /// Line in the file, from 1.
    pub line: u64,
    /// What the row is about.
    pub name: String,
    /// What would become of it.
    pub outcome: Outcome,
    /// What could not be read in it, cell by cell; the rest is taken.
    pub doubts: Vec<Doubt>,
}

impl ReviewLine {
    /// Whether it would change the book.
    pub fn is_change(&self) -> bool {
        matches!(self.outcome, Outcome::New(_) | Outcome::Changed { .. })
    }

    /// Whether a number in it may be a thousand or one.
    pub fn is_ambiguous(&self) -> bool {
        let mut doubts = self.doubts.iter();
        doubts.any(|doubt| matches!(doubt, Doubt::Ambiguous { .. }))
    }
}

/// What a file would do to the book.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Review {
    /// A line for each row of the file.
    pub lines: Vec<ReviewLine>,
}

impl Review {
    /// How many lines are new, changed, the same, skipped.
    pub fn counts(&self) -> [usize; 4] {
        let mut counts = [0; 4];
        for line in &self.lines {
            let at = match line.outcome {
                Outcome::New(_) => 0,
                Outcome::Changed { .. } => 1,
                Outcome::Same => 2,
                Outcome::Skipped(_) => 3,
            };
            counts[at] += 1;
        }
        counts
    }
}

/// What accepting lines of a review does: one edit, so that it is one step back. `accepted` tells by position
/// which lines are; `None` when none of them changes anything.
pub fn edits_of(
    book: &Book,
    review: &Review,
    accepted: impl Fn(usize) -> bool,
) -> Result<Option<Edit>, EditError> {
    let lines = review.lines.iter().enumerate();
    let edits: Vec<Edit> = lines
        .filter_map(|(at, line)| match &line.outcome {
            Outcome::New(ingredient) | Outcome::Changed { ingredient, .. } if accepted(at) => {
                Some(Edit::PutIngredient((**ingredient).clone()))
            }
            _ => None,
        })
        .collect();
    if edits.is_empty() {
        return Ok(None);
    }
    let after = apply_soundly(book, &edits)?;
    Ok(Some(Edit::PutBook {
        book: Arc::new(after),
        reason: WholeBook::Ingredients(edits.len()),
    }))
}
