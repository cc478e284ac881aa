//! The open book with its history and its file.

use std::sync::Arc;

use super::action::{Home, Unfiled};
use super::derived::BookStamp;
use super::kept_file::KeptFile;
use super::moments::today;
use crate::book::Book;
use crate::book_file;
use crate::edit::History;

/// The open book with its history and its file.
pub(super) struct Document {
    pub(super) history: History,
    pub(super) stamp: BookStamp,
    pub(super) file: KeptFile,
}

impl Default for Document {
    fn default() -> Self {
        Self::new(Book::default(), Home::Nowhere(Unfiled::New), false)
    }
}

impl Document {
    /// A book as it was just read, or begun.
    pub(super) fn new(book: Book, home: Home, text_has_comments: bool) -> Self {
        let book = Arc::new(book);
        Self {
            history: History::new(book.clone())
                .measured_by(book_file::text_measure())
                .dated_by(today),
            stamp: BookStamp(1),
            file: KeptFile::new(home, book, text_has_comments),
        }
    }

    /// Puts another book in place of this one; stamps go on.
    pub(super) fn replace(&mut self, by: Self) {
        let stamp = BookStamp(self.stamp.0 + 1);
        *self = Self { stamp, ..by };
    }

    /// The book as it is now.
    pub(super) fn book(&self) -> &Arc<Book> {
        self.history.book()
    }

    /// Whether there is anything that no file holds: changes, or the whole book when its file is gone.
    pub(super) fn has_unsaved_changes(&self) -> bool {
        let (book, saved) = (self.book(), &self.file.saved);
        self.file.is_gone() || !Arc::ptr_eq(book, saved) && **book != **saved
    }
}
