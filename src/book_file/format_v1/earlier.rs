//! What items were before, as it stands in a file.

use super::super::checker::Checker;
use super::stored::Stored;
use crate::book;

/// The states of an item that approved drinks were tasted with.
#[derive(serde::Deserialize, PartialEq, serde::Serialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EarlierStates<F> {
    revision: u32,
    states: Vec<EarlierState<F>>,
}

impl<F> Default for EarlierStates<F> {
    fn default() -> Self {
        Self {
            revision: 0,
            states: Vec::new(),
        }
    }
}

#[derive(serde::Deserialize, PartialEq, serde::Serialize)]
#[serde(deny_unknown_fields)]
struct EarlierState<F> {
    revision: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    until: Option<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    until_lot: String,
    was: F,
}

impl<F: Stored<B>, B> Stored<book::EarlierStates<B>> for EarlierStates<F> {
    fn from_book(value: &book::EarlierStates<B>) -> Self {
        Self {
            revision: value.revision,
            states: Stored::from_book(&value.states),
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::EarlierStates<B> {
        book::EarlierStates {
            revision: self.revision,
            states: checker.within("states", |checker| self.states.into_book(checker)),
        }
    }
}

impl<F: Stored<B>, B> Stored<book::EarlierState<B>> for EarlierState<F> {
    fn from_book(value: &book::EarlierState<B>) -> Self {
        Self {
            revision: value.revision,
            until: value.until.clone(),
            until_lot: value.until_lot.clone(),
            was: F::from_book(&value.was),
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::EarlierState<B> {
        book::EarlierState {
            revision: self.revision,
            until: self.until,
            until_lot: self.until_lot,
            was: checker.within("was", |checker| self.was.into_book(checker)),
        }
    }
}
