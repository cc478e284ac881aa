//! A list for a person to review: what would be new, what would change, what is left out and why.

use std::sync::Arc;

use super::doubt::{Doubt, Skip};
use crate::book::{Book, Ingredient, Nutrient, Price};
use crate::edit::{Edit, EditError, apply_soundly};
use crate::quantity::{show_compact, show_number};

/// What would become of one row.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// An ingredient that the book does not have.
    New(Box<Ingredient>),
    /// An ingredient with other figures than now; the sentences say which.
    Changed {
        /// The ingredient as it would be.
        ingredient: Box<Ingredient>,
        /// "fat: 30.0 g → 32.0 g".
        changes: Vec<String>,
    },
    /// The book has it just so.
    Same,
    /// It is left out.
    Skipped(Skip),
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

    /// What is new, what changes, or why it is left out; empty for what stays the same.
    pub fn details(&self) -> String {
        match &self.outcome {
            Outcome::New(ingredient) => figures_of(ingredient).join("; "),
            Outcome::Changed { changes, .. } => changes.join("; "),
            Outcome::Skipped(why) => why.to_string(),
            Outcome::Same => String::new(),
        }
    }

    /// The word on screens.
    pub fn word(&self) -> &'static str {
        match self.outcome {
            Outcome::New(_) => "new",
            Outcome::Changed { .. } => "changed",
            Outcome::Same => "the same",
            Outcome::Skipped(_) => "skipped",
        }
    }
}

/// The figures of a new ingredient: "sugars: 71.0 g", "price: 9.50 for 1000 g".
fn figures_of(ingredient: &Ingredient) -> Vec<String> {
    let mut figures = Vec::new();
    for nutrient in Nutrient::ALL {
        if let Some(figure) = ingredient.composition.get(nutrient) {
            let value = show_compact((figure.value * 1000.0).round() / 1000.0);
            figures.push(format!("{}: {value} {}", nutrient.word(), nutrient.unit()));
        }
    }
    if let Some(density) = ingredient.density {
        figures.push(format!("density: {} g/ml", show_compact(density.value)));
    }
    if let Some(price) = &ingredient.price {
        figures.push(format!("price: {}", price_words(price)));
    }
    if figures.is_empty() {
        figures.push("no figures".to_owned());
    }
    figures
}

/// "9.50 for 1000 g".
pub(super) fn price_words(price: &Price) -> String {
    let (pack, grams) = (show_number(price.pack, 2), show_compact(price.grams));
    format!("{pack} for {grams} g")
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

/// What accepting lines of a review does: one edit with a label, so that it is one step back. `accepted` tells by position
/// which lines are; `None` when none of them changes anything.
pub fn edits_of(
    book: &Book,
    review: &Review,
    accepted: impl Fn(usize) -> bool,
    label: impl Into<String>,
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
        label: label.into(),
    }))
}
