//! What another program did to the file of the book.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::disk::Disk;
use crate::book::{Book, BookDifference};
use crate::book_file::{Fingerprint, LoadError, Loaded, OnDisk};

/// What another program has made of the file.
#[derive(Clone, Debug)]
pub enum Theirs {
    /// Another book.
    Book {
        /// The book.
        book: Arc<Book>,
        /// How it differs from the one that was opened here.
        difference: BookDifference,
    },
    /// Something that is no book.
    Unreadable {
        /// What is wrong with it.
        reason: String,
    },
    /// There is no such file any more.
    Gone,
}

/// What is up with the file of the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileState {
    /// Nothing.
    Steady,
    /// It was there and is gone, so that no file holds the book.
    Gone,
    /// It is being written, which takes a while.
    Saving,
}

/// A change of the file by another program.
#[derive(Clone, Debug)]
pub struct DiskChange {
    /// The file.
    pub path: PathBuf,
    /// What it is now.
    pub theirs: Theirs,
    /// It stopped a save: an answer is needed before anything is written.
    pub at_save: bool,
    pub(super) fingerprint: Option<Fingerprint>,
    pub(super) text_has_comments: bool,
}

/// What stands in a file that was changed by another program.
pub(super) struct Found {
    pub(super) book: Box<Result<Loaded, LoadError>>,
    /// The file as it was read, or as it was looked at when it is no book.
    pub(super) fingerprint: Option<Fingerprint>,
}

impl Found {
    /// Reads a file that is no longer what it was.
    pub(super) fn read(disk: &dyn Disk, path: &Path, known: Option<&Fingerprint>) -> Self {
        let book = Box::new(disk.load(path));
        let fingerprint = match (book.as_ref(), known) {
            (Ok(loaded), _) => Some(loaded.fingerprint),
            (Err(_), Some(known)) => match disk.look(path, known) {
                Ok(OnDisk::Changed(now)) => Some(now),
                _ => None,
            },
            (Err(_), None) => None,
        };
        Self { book, fingerprint }
    }

    pub(super) fn gone() -> Self {
        let path = PathBuf::new();
        Self {
            book: Box::new(Err(LoadError::Missing { path })),
            fingerprint: None,
        }
    }
}

/// What a look has seen.
pub(super) enum Seen {
    /// Nothing new.
    Nothing,
    /// What was read or written last.
    Same,
    /// There is no such file any more.
    Gone,
    /// Another content.
    Another(Found),
}
