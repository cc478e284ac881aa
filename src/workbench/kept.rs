//! What stands between the open book and the disk.

use std::path::PathBuf;
use std::sync::Arc;
use std::time::{Duration, Instant};

use super::derived::BookStamp;
use super::disk::{Disk, SystemDisk};
use super::earlier_shelf::EarlierShelf;
use super::file_watch::FileWatch;
use super::job::Job;
use super::keeper::Keeper;
use super::left_work::{FoundWork, LooksForWork, OfferedRecovery};
use super::theirs::{DiskChange, Found, Seen};
use crate::book::Book;
use crate::book_file::{Fingerprint, LoadError, Loaded, SaveError, Saved};
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
pub(super) struct BookFile {
    pub(super) disk: Arc<dyn Disk>,
    pub(super) patience: Duration,
    /// The file as it was when it was last read or written.
    pub(super) known: Option<Fingerprint>,
    pub(super) saving: Option<Job<Saving, Outcome>>,
    /// The book that is being opened.
    pub(super) reading: Option<Job<Reading, Result<Loaded, LoadError>>>,
    /// What is being looked at.
    pub(super) look: Option<Job<(), Seen>>,
    pub(super) looked: Option<Instant>,
    /// How the file was changed by another program.
    pub(super) change: Option<DiskChange>,
    /// A change that the person wants to decide about later.
    pub(super) left: Option<Fingerprint>,
    /// The file was there and is gone: no file holds the book, whether or not it was changed.
    pub(super) gone: bool,
    /// Whether the file is watched by the means of the system, and the watch.
    pub(super) is_watched: bool,
    pub(super) watch: Option<FileWatch>,
    pub(super) keeper: Option<Keeper>,
    /// The look for left work that comes before anything is kept.
    pub(super) looks_for_work: Option<Job<LooksForWork, FoundWork>>,
    /// It was said that unsaved work can't be kept.
    pub(super) keeper_fails: bool,
    /// A file that a save would replace, until the person has answered.
    pub(super) replacing: Option<Replacing>,
    /// The earlier copies as far as they were asked for.
    pub(super) earlier: EarlierShelf,
    /// Work that other programs have left, the newest last.
    pub(super) offered: Vec<OfferedRecovery>,
}

impl Default for BookFile {
    fn default() -> Self {
        Self {
            disk: Arc::new(SystemDisk),
            patience: PATIENCE,
            known: None,
            saving: None,
            reading: None,
            look: None,
            looked: None,
            change: None,
            left: None,
            gone: false,
            is_watched: false,
            watch: None,
            keeper: None,
            looks_for_work: None,
            keeper_fails: false,
            replacing: None,
            earlier: EarlierShelf::default(),
            offered: Vec::new(),
        }
    }
}

impl BookFile {
    /// Another book is open from now on.
    pub(super) fn forget(&mut self) {
        self.known = None;
        self.look = None;
        self.change = None;
        self.left = None;
        self.gone = false;
        self.replacing = None;
        self.reading = None;
        // What is still being written is a book that is no longer open.
        if let Some(saving) = &mut self.saving {
            saving.about.left_behind = true;
        }
        self.earlier = EarlierShelf::default();
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
    /// The person wanted the changed file overwritten.
    pub(super) insisted: bool,
    /// Another book was opened meanwhile: the end of the save is told and concerns nothing else.
    pub(super) left_behind: bool,
}

pub(super) struct Outcome {
    pub(super) saved: Result<Saved, SaveError>,
    /// What stands in the file when it was changed by another program.
    pub(super) theirs: Option<Found>,
}
