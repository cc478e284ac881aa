//! Where a command writes: a file that is there gives way to the same card, and to anything else only when a person says so.

use std::path::{Path, PathBuf};

use super::{CardArguments, Failure};
use crate::book_file;
use crate::cards::is_card_like;
use crate::say::Speaker;

/// Why a file stays as it is.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
enum OutFault {
    /// The file is the book that the card is made from.
    #[error("this would replace the book itself; name another file with --out: {}", .0.display())]
    TheBookItself(PathBuf),
    /// The file is a book.
    #[error("there is a book of this name; name another file with --out, or add --overwrite to replace it: {}", .0.display())]
    Book(PathBuf),
    /// The file is no card of this kind.
    #[error(
        "there is a file of this name that is no such card; name another with --out, or add --overwrite to replace it: {}", .0.display()
    )]
    NoSuchCard(PathBuf),
}

impl From<OutFault> for Failure {
    fn from(fault: OutFault) -> Self {
        Self::Usage(fault.to_string())
    }
}

/// Refuses to write over the book that the card is made from.
pub(super) fn is_not_the_book(arguments: &CardArguments) -> Result<(), Failure> {
    let whole = |path: &Path| path.canonicalize().ok();
    match whole(&arguments.out) {
        Some(out) if whole(&arguments.book).as_ref() == Some(&out) => {
            Err(OutFault::TheBookItself(arguments.out.clone()).into())
        }
        _ => Ok(()),
    }
}

/// Writes a card to the file that a person named.
pub(super) fn write(arguments: &CardArguments, card: &[u8]) -> Result<(), Failure> {
    let path = &arguments.out;
    if !arguments.overwrite && path.is_file() {
        // A file that can't be read, or is longer than any card, is none.
        let before = book_file::read_bytes(path).ok();
        match before {
            Some(before) if before == card => {}
            Some(before) if book_file::begins_as_book(&before) => {
                return Err(OutFault::Book(path.clone()).into());
            }
            Some(before) if is_card_like(&before, card) => {}
            _ => return Err(OutFault::NoSuchCard(path.clone()).into()),
        }
    }
    book_file::replace_file(path, card)
        .map_err(|error| Failure::Book(Speaker::without_book().save_error(&error)))
}
