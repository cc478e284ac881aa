//! The earlier copies of a book that are listed and looked at.

use std::path::PathBuf;
use std::sync::Arc;

use super::job::Job;
use crate::book::Book;
use crate::book_file::EarlierCopy;

/// An earlier copy that is looked at.
#[derive(Clone, Debug)]
pub enum EarlierBook {
    /// It is being read.
    Reading,
    /// The book as it was; items that are the same are shared with the book on the screen.
    Read(Arc<Book>),
    /// It can't be read, and why.
    Unreadable(String),
}

/// The list of the copies, or why it can't be had.
pub(super) type Listed = Result<Vec<EarlierCopy>, String>;

/// What has been asked for of the earlier copies.
#[derive(Default)]
pub(super) struct EarlierShelf {
    pub(super) list: Option<Listed>,
    pub(super) listing: Option<Job<(), Listed>>,
    pub(super) looked_at: Option<(PathBuf, EarlierBook)>,
    pub(super) reading: Option<Job<(), EarlierBook>>,
}
