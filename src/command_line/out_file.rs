//! Where a command writes: a file that is there gives way to the same card, and to anything else only when a person says so.

use std::path::{Path, PathBuf};

use super::{CardArguments, Failure, speaker};
use crate::book_file;
use crate::cards::is_card_like;
use crate::say::say;

/// Why a file stays as it is.
#[derive(Debug, PartialEq, Eq)]
enum OutFault {
    /// The file is the book that the card is made from.
    TheBookItself(PathBuf),
    /// The file is a book.
    Book(PathBuf),
    /// The file is no card of this kind.
    NoSuchCard(PathBuf),
}

impl From<OutFault> for Failure {
    fn from(fault: OutFault) -> Self {
        let path = |path: &Path| path.display().to_string();
        Self::Usage(match &fault {
            OutFault::TheBookItself(at) => {
                say!(speaker(), "command-out-is-the-book", path: path(at))
            }
            OutFault::Book(at) => say!(speaker(), "command-out-is-a-book", path: path(at)),
            OutFault::NoSuchCard(at) => {
                say!(speaker(), "command-out-is-no-such-card", path: path(at))
            }
        })
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
    book_file::replace_file(path, card).map_err(|error| Failure::Book(speaker().save_error(&error)))
}
