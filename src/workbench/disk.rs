//! The disk, apart from the workbench so that tests can be slow, full or read-only on purpose.

use std::io;
use std::path::Path;

use crate::book::Book;
use crate::book_file::{self, Fingerprint, LoadError, Loaded, OnDisk, SaveError, Saved};

/// Reads and writes the file of a book. Each call may block for as long as a network takes.
pub trait Disk: Send + Sync {
    /// Reads a book.
    fn load(&self, path: &Path) -> Result<Loaded, LoadError>;
    /// Writes a book; with a fingerprint only if the file is still what it was.
    fn save(
        &self,
        path: &Path,
        book: &Book,
        known: Option<&Fingerprint>,
    ) -> Result<Saved, SaveError>;
    /// Looks, cheaply, whether a file is still what it was.
    fn look(&self, path: &Path, known: &Fingerprint) -> io::Result<OnDisk>;
}

/// The disk of the system.
#[derive(Clone, Copy, Debug, Default)]
pub struct SystemDisk;

impl Disk for SystemDisk {
    fn load(&self, path: &Path) -> Result<Loaded, LoadError> {
        book_file::load(path)
    }

    fn save(
        &self,
        path: &Path,
        book: &Book,
        known: Option<&Fingerprint>,
    ) -> Result<Saved, SaveError> {
        match known {
            Some(known) => book_file::save_over(path, book, known),
            None => book_file::save(path, book),
        }
    }

    fn look(&self, path: &Path, known: &Fingerprint) -> io::Result<OnDisk> {
        book_file::look(path, known)
    }
}
