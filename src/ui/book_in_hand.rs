//! What the frame round every area shows of the book as a whole.

use std::sync::Arc;

use crate::book::{Book, Finding};
use crate::say::Speaker;
use crate::swap::Drifted;
use crate::workbench::{Answers, DiskChange, FileState, Home, Message};

/// The book, its name and its file.
pub(super) struct BookInHand<'frame> {
    /// The book.
    pub book: &'frame Arc<Book>,
    /// Answers to what is asked about it.
    pub answers: Answers<'frame>,
    /// Speaks about it in the units and the language of the window.
    pub speaker: Speaker<'frame>,
    /// Its name.
    pub title: String,
    /// Whether there are changes that no file holds.
    pub unsaved: bool,
    /// The step that undo would take back.
    pub undo: Option<&'frame str>,
    /// The step that redo would repeat.
    pub redo: Option<&'frame str>,
    /// The last message.
    pub message: Option<&'frame Message>,
    /// What is wrong with the book.
    pub findings: &'frame [Finding],
    /// The approved drinks that no longer taste as they were approved.
    pub drifted: &'frame [Drifted],
    /// Where it is kept.
    pub home: &'frame Home,
    /// The book as it was last read or written.
    pub saved: &'frame Arc<Book>,
    /// How its file was changed by another program.
    pub disk_change: Option<&'frame DiskChange>,
    /// Whether its file is gone, or being written.
    pub file_state: FileState,
    /// Whether there is unsaved work of a program that did not end as it should.
    pub has_left_work: bool,
}
