//! A list for a person to review: what would be new, what would change, what is left out and why.

use std::sync::Arc;

use super::doubt::{Doubt, Skip};
use super::field::Field;
use super::known_names::folded_article;
use crate::book::{Article, Book, Ingredient, IngredientId, Nutrient, Price};
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
        /// By how much a gram becomes dearer, in percent; `None` for a first price, and where that can't be told.
        percent: Option<f64>,
    },
    /// What a supplier calls it, which a person has said.
    Article {
        /// The article.
        article: Article,
        /// The ingredients that it stood for before, and does no more.
        held_by: Vec<IngredientId>,
    },
    /// It is marked as no longer sold, and the list has a price of it: the mark goes.
    SoldAgain,
    /// A text.
    Text {
        /// Which.
        field: Field,
        /// After, shortened.
        after: String,
    },
}

impl FieldChange {
    /// By how much a gram becomes dearer, in percent; `None` for what is no price, and where that can't be told.
    pub fn percent(&self) -> Option<f64> {
        match self {
            Self::Price { percent, .. } => *percent,
            _ => None,
        }
    }

    /// Whether it moves a price further than lists usually do, see [`FAR`]: more often than not the pack is another one.
    fn moves_price_far(&self) -> bool {
        match self {
            Self::Price {
                before: Some(_), ..
            } => self.percent().is_none_or(|percent| percent.abs() > FAR),
            _ => false,
        }
    }
}

/// A price that moves by more than a third is looked at before it is taken, in percent.
pub const FAR: f64 = 100.0 / 3.0;

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct ReviewLine {
    /// Line in the file, from 1.
    pub line: u64,
    /// What the row is about.
    pub name: String,
    /// What would become of it.
    pub outcome: Outcome,
    /// The ingredient of the book that it is about; `None` for a new one and where nobody knows.
    pub about: Option<IngredientId>,
    /// What the supplier calls it.
    pub article: Article,
    /// What could not be read in it, cell by cell.
    pub doubts: Vec<Doubt>,
}

impl ReviewLine {
    /// Whether it would change the book.
    pub fn is_change(&self) -> bool {
        matches!(self.outcome, Outcome::New(_) | Outcome::Changed { .. })
    }

    /// Whether it is taken unless somebody says otherwise: it changes the book, all of it was read, no price moves far, and
    /// nobody has said that it is no longer sold.
    pub fn is_sure(&self) -> bool {
        let is_doubtful = self.moves_price_far() || self.sells_again();
        self.is_change() && self.doubts.is_empty() && !is_doubtful
    }

    /// Whether taking it says that something is sold again which is marked as no longer sold.
    pub fn sells_again(&self) -> bool {
        match &self.outcome {
            Outcome::Changed { changes, .. } => changes.contains(&FieldChange::SoldAgain),
            _ => false,
        }
    }

    /// Whether it moves a price further than lists usually do.
    pub fn moves_price_far(&self) -> bool {
        match &self.outcome {
            Outcome::Changed { changes, .. } => changes.iter().any(FieldChange::moves_price_far),
            _ => false,
        }
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
    let taken = || {
        let lines = review.lines.iter().enumerate();
        lines.filter_map(|(at, line)| {
            match &line.outcome {
                Outcome::New(ingredient) => Some((ingredient, &[][..])),
                Outcome::Changed {
                    ingredient,
                    changes,
                } => Some((ingredient, changes.as_slice())),
                Outcome::Same | Outcome::Skipped(_) => None,
            }
            .filter(|_| accepted(at))
        })
    };
    let mut items: Vec<Ingredient> = taken().map(|(item, _)| (**item).clone()).collect();
    let count = items.len();
    if count == 0 {
        return Ok(None);
    }
    for change in taken().flat_map(|(_, changes)| changes) {
        let FieldChange::Article { article, held_by } = change else {
            continue;
        };
        let known = folded_article(article);
        for id in held_by {
            let at = items.iter().position(|item| item.id == *id).or_else(|| {
                items.push((**book.ingredient(id)?).clone());
                Some(items.len() - 1)
            });
            if let Some(at) = at {
                let articles = &mut items[at].articles;
                articles.retain(|other| folded_article(other) != known);
            }
        }
    }
    let edits: Vec<Edit> = items.into_iter().map(Edit::PutIngredient).collect();
    let after = apply_soundly(book, &edits)?;
    Ok(Some(Edit::PutBook {
        book: Arc::new(after),
        reason: WholeBook::Ingredients(count),
    }))
}
