//! Ingredients and prices from a table, as a list for review.
//!
//! A cell that is empty states nothing and changes nothing; it is never zero. Units are taken as found: in the cell, else
//! in the heading; where neither states one and the field has several, the row says so and leaves the figure out.

use std::collections::{BTreeMap, BTreeSet};

use super::doubt::Skip;
use super::field::{Field, Mapping};
use super::known_names::{Found, KnownNames};
use super::list_choices::{ListChoices, RowMatch};
use super::number::DecimalSigns;
use super::review::{Outcome, Review, ReviewLine};
use super::row_reader::{NAME, RowReader};
use super::table::TextTable;
use crate::book::{Article, Book, IngredientId, new_errors_of};
use crate::quantity::excerpt;

/// What a table would do to a book, with its numbers read by the decimal signs and with what a person says of it.
pub fn review_price_list(
    book: &Book,
    table: &TextTable,
    mapping: &Mapping,
    signs: &DecimalSigns,
    choices: &ListChoices,
) -> Review {
    let known = KnownNames::of(book);
    let mut rows = Rows {
        book,
        known: &known,
        table,
        choices,
        seen: BTreeMap::new(),
        matched: BTreeMap::new(),
        taken: BTreeSet::new(),
    };
    let columns = mapping.by_field();
    let lines = table.rows.iter().map(|(line, cells)| {
        let row = RowReader::new(table, mapping, &columns, cells, signs);
        rows.line(*line, row)
    });
    Review {
        lines: lines.collect(),
    }
}

/// The rows so far.
struct Rows<'list> {
    book: &'list Book,
    known: &'list KnownNames<'list>,
    table: &'list TextTable,
    choices: &'list ListChoices,
    /// Lines by brand and name, in small letters.
    seen: BTreeMap<(String, String), u64>,
    /// Lines by the ingredient of the book that they are about.
    matched: BTreeMap<IngredientId, u64>,
    /// Ids of new ingredients.
    taken: BTreeSet<IngredientId>,
}

impl Rows<'_> {
    fn line(&mut self, line: u64, mut row: RowReader<'_>) -> ReviewLine {
        let (brand, name) = (row.text(Field::Brand), row.text(Field::Name));
        let full = if brand.is_empty() {
            name.clone()
        } else {
            [brand.as_str(), name.as_str()].join(" ")
        };
        let supplier = match row.text(Field::Supplier) {
            supplier if supplier.is_empty() => self.choices.supplier.trim().to_owned(),
            supplier => supplier,
        };
        let article = match row.text(Field::Article) {
            number if number.is_empty() => full.clone(),
            number => number,
        };
        let article = Article { supplier, article };
        let mut about = None;
        let called = (brand.to_lowercase(), name.to_lowercase());
        let outcome = if let Some(skip) = self.not_read(line, &row, &called) {
            Outcome::Skipped(skip)
        } else {
            self.seen.insert(called, line);
            self.outcome(line, &mut row, (&brand, &name), &article, &mut about)
        };
        ReviewLine {
            line,
            name: excerpt(&full, NAME),
            outcome: without_errors(self.book, outcome),
            about,
            article,
            doubts: row.doubts,
        }
    }

    /// Why a row is not read at all; `called` is its brand and name in small letters.
    fn not_read(&self, line: u64, row: &RowReader<'_>, called: &(String, String)) -> Option<Skip> {
        if let Some(fault) = self.table.faults.get(&line) {
            Some(Skip::Row(fault.clone()))
        } else if !row.has_column(Field::Name) {
            Some(Skip::NoNameColumn)
        } else if called.1.is_empty() {
            Some(Skip::NoName)
        } else if let Some(before) = self.seen.get(called) {
            Some(Skip::Again { before: *before })
        } else if self.choices.rows.get(&line) == Some(&RowMatch::LeftOut) {
            Some(Skip::LeftOut)
        } else {
            None
        }
    }

    fn outcome(
        &mut self,
        line: u64,
        row: &mut RowReader<'_>,
        (brand, name): (&str, &str),
        article: &Article,
        about: &mut Option<IngredientId>,
    ) -> Outcome {
        let chosen = self.choices.rows.get(&line);
        let by_hand = match chosen {
            Some(RowMatch::Ours(id)) => self.book.ingredient(id),
            _ => None,
        };
        let found = match (by_hand, chosen) {
            (Some(known), _) => Found::One(known),
            (None, Some(RowMatch::New(_))) => Found::None,
            _ => self.known.find(article, brand, name),
        };
        match found {
            Found::One(known) => {
                *about = Some(known.id.clone());
                if let Some(before) = self.matched.get(&known.id) {
                    return Outcome::Skipped(Skip::SameIngredient { before: *before });
                }
                self.matched.insert(known.id.clone(), line);
                // What is remembered from before needs not be remembered again.
                let with_article = self.known.with_article(article);
                let is_known = with_article.iter().any(|item| item.id == known.id);
                let newly = by_hand.is_some() && !is_known;
                let held_by = with_article.iter().map(|item| item.id.clone()).collect();
                let remembered = newly.then_some((article, held_by));
                row.changed(
                    self.book,
                    known,
                    &article.supplier,
                    remembered,
                    &self.choices.date,
                )
            }
            Found::None => {
                let form = match chosen {
                    Some(RowMatch::New(form)) => Some(*form),
                    _ => self.choices.form,
                };
                let id = IngredientId::from_name(&[brand, name].join(" "), |id| {
                    self.book.ingredient(id).is_some() || self.taken.contains(id)
                });
                self.taken.insert(id.clone());
                let date = &self.choices.date;
                let new = row.new_ingredient(self.book, id, (brand, name), article, form, date);
                new.map_or_else(Outcome::Skipped, |new| Outcome::New(Box::new(new)))
            }
            Found::Several(ingredients) => Outcome::Skipped(Skip::Several { ingredients }),
        }
    }
}

/// A row that would bring an error into the book is left out, with the reason: the others can be taken.
fn without_errors(book: &Book, outcome: Outcome) -> Outcome {
    let (Outcome::New(ingredient) | Outcome::Changed { ingredient, .. }) = &outcome else {
        return outcome;
    };
    match new_errors_of(book, ingredient).into_iter().next() {
        Some(error) => Outcome::Skipped(Skip::Error(Box::new(error.kind))),
        None => outcome,
    }
}
