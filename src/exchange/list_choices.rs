//! What a person says of a list beside what stands in it.

use std::collections::BTreeMap;

use crate::book::{Form, IngredientId};

/// What a person says of a list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ListChoices {
    /// Day of the prices that state none; empty for none.
    pub date: String,
    /// Who the list is of, where no column says.
    pub supplier: String,
    /// Form of new ingredients of which the list states none.
    pub form: Option<Form>,
    /// What rows are about, by their line in the file.
    pub rows: BTreeMap<u64, RowMatch>,
}

impl ListChoices {
    /// Prices of this day, and nothing else is said.
    pub fn of_day(date: &str) -> Self {
        Self {
            date: date.to_owned(),
            ..Self::default()
        }
    }
}

/// What a row is about, as a person says.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum RowMatch {
    /// An ingredient of the book, which is found by this article from then on.
    Ours(IngredientId),
    /// A new ingredient of this form.
    New(Form),
    /// Nothing that goes into a drink.
    LeftOut,
}
