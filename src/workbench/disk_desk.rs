//! What stands between the open book and the disk: what is being read and written, watched and looked for.

use std::path::PathBuf;
use std::sync::Arc;
use std::time::{Duration, Instant};

use super::derived::BookStamp;
use super::disk::{Disk, SystemDisk};
use super::earlier_shelf::EarlierShelf;
use super::file_watch::Hearing;
use super::job::Job;
use super::keeper::Keeper;
use super::left_work::{FoundWork, LooksForWork, OfferedRecovery};
use super::theirs::{Found, Seen};
use crate::book::Book;
use crate::book_file::{LoadError, Loaded, SaveError, Saved};
use jiff::Timestamp;

/// A book that is being read.
pub(super) struct Reading {
    pub(super) path: PathBuf,
    pub(super) since: Instant,
    /// The book on the screen as it was when this one was asked for.
    pub(super) asked_at: BookStamp,
}

/// How long a book may take to be read or written before the window goes on without it: what is done by then looks as if it
/// had been done at once.
pub(super) const PATIENCE: Duration = Duration::from_millis(150);

/// What stands between the open book and the disk.
pub(super) struct DiskDesk {
    pub(super) access: Arc<dyn Disk>,
    pub(super) patience: Duration,
    pub(super) saving: Option<Job<Saving, Outcome>>,
    /// The book that is being opened.
    pub(super) reading: Option<Job<Reading, Result<Loaded, LoadError>>>,
    /// A look at the file, and when the last one was.
    pub(super) look: Option<Job<(), Seen>>,
    pub(super) looked: Option<Instant>,
    pub(super) hearing: Hearing,
    /// A file that a save would replace, until the person has answered.
    pub(super) replacing: Option<Replacing>,
    /// The earlier copies as far as they were asked for.
    pub(super) earlier: EarlierShelf,
    pub(super) work: UnsavedWork,
    /// Work that other programs have left, the newest last.
    pub(super) offered: Vec<OfferedRecovery>,
}

/// How unsaved work is kept in case the program ends without warning.
#[derive(Default)]
pub(super) enum UnsavedWork {
    /// It is not: nobody has said where, or that place can't be had.
    #[default]
    NotKept,
    /// First it is looked whether other programs have left any.
    Looking(Job<LooksForWork, FoundWork>),
    /// By a thread of its own.
    Kept {
        keeper: Keeper,
        /// It was said that it fails.
        failure_is_said: bool,
    },
}

impl Default for DiskDesk {
    fn default() -> Self {
        Self {
            access: Arc::new(SystemDisk),
            patience: PATIENCE,
            saving: None,
            reading: None,
            look: None,
            looked: None,
            hearing: Hearing::default(),
            replacing: None,
            earlier: EarlierShelf::default(),
            work: UnsavedWork::default(),
            offered: Vec::new(),
        }
    }
}

impl DiskDesk {
    /// Another book is open from now on.
    pub(super) fn forget_book(&mut self) {
        self.look = None;
        self.replacing = None;
        self.reading = None;
        // What is still being written is a book that is no longer open.
        if let Some(saving) = &mut self.saving {
            saving.about.left_behind = true;
        }
        self.earlier = EarlierShelf::default();
    }

    /// The thread that keeps unsaved work, once it runs.
    pub(super) fn keeper(&self) -> Option<&Keeper> {
        match &self.work {
            UnsavedWork::Kept { keeper, .. } => Some(keeper),
            UnsavedWork::NotKept | UnsavedWork::Looking(_) => None,
        }
    }
}

/// A file that is there already and that the book would replace.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Replacing {
    /// Where it is.
    pub path: PathBuf,
    /// When it was changed last, where the system says so.
    pub changed: Option<Timestamp>,
    /// Its length, bytes.
    pub bytes: u64,
}

/// A save that is under way.
pub(super) struct Saving {
    pub(super) path: PathBuf,
    pub(super) book: Arc<Book>,
    /// Another book was opened meanwhile: the end of the save is told and concerns nothing else.
    pub(super) left_behind: bool,
}

/// How a save has ended.
pub(super) struct Outcome {
    pub(super) saved: Result<Saved, SaveError>,
    /// What stands in the file when it was changed by another program.
    pub(super) theirs: Option<Found>,
}
