//! What is doubtful about a row, and why a row is left out: facts, and one sentence for each.

use super::row_fault::RowFault;
use crate::book::FindingKind;

/// A cell that is left out of what is taken, or an assumption about its row.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Doubt {
    /// The cell does not say what its column wants.
    #[error("{heading} “{cell}”: {why}")]
    Cell {
        /// The heading of its column, shortened.
        heading: String,
        /// What stands in it, shortened.
        cell: String,
        /// What is wrong with it.
        why: String,
    },
    /// The number may be a thousand or one.
    #[error("{heading} “{cell}”: {thousands} or {decimals}? choose the decimal sign of the list")]
    Ambiguous {
        /// The heading of its column, shortened.
        heading: String,
        /// What stands in it, shortened.
        cell: String,
        /// The number without a sign between thousands.
        thousands: String,
        /// The number with decimals.
        decimals: String,
    },
    /// A new ingredient whose form nobody states: it decides what the rest to 100 g is.
    #[error("no form is stated: taken for a powder; set it at the counter")]
    NoForm,
}

/// Why a row is left out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Skip {
    /// Nobody knows which column is the name.
    #[error("no column is the name; choose one above")]
    NoNameColumn,
    /// The name is empty.
    #[error("the name is empty")]
    NoName,
    /// The same ingredient stands in an earlier row.
    #[error("the same brand and name stand in line {before}")]
    Again {
        /// The line of that row, from 1.
        before: u64,
    },
    /// The book has several ingredients of this name.
    #[error("it could be {}; add a column for the brand", .names.join(" or "))]
    Several {
        /// Their full names.
        names: Vec<String>,
    },
    /// The row would bring an error into the book.
    #[error("{0}")]
    Error(Box<FindingKind>),
    /// The row is not what it seems.
    #[error("{0}")]
    Row(RowFault),
}
