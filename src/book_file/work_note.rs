//! Whose unsaved work it is, and why some can't be read.

use std::io;
use std::path::PathBuf;
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use super::error::{LoadError, LoadProblem};
use super::fingerprint::Fingerprint;

/// Whose work it is.
#[derive(Clone, Debug, PartialEq)]
pub struct RecoveryNote {
    /// The file that the book was opened from; `None` when it was in none, or its path is not Unicode.
    pub home: Option<PathBuf>,
    /// The name of the book on the screen.
    pub name: String,
    /// The file as it was when it was last read or written.
    pub known: Option<Fingerprint>,
    /// When the work was kept.
    pub kept: Timestamp,
}

/// The note of a record of changes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct NoteInFile {
    kept: String,
    home: Option<String>,
    name: String,
    known: Option<Known>,
}

impl NoteInFile {
    pub(super) fn new(note: &RecoveryNote) -> Self {
        Self {
            kept: note.kept.to_string(),
            home: note
                .home
                .as_ref()
                .and_then(|home| home.to_str())
                .map(str::to_owned),
            name: note.name.clone(),
            known: note.known.map(Known::new),
        }
    }

    /// The note; `None` when its time is damaged.
    pub(super) fn to_note(&self) -> Option<RecoveryNote> {
        Some(RecoveryNote {
            home: self.home.clone().map(PathBuf::from),
            name: self.name.clone(),
            known: self.known.as_ref().map(Known::to_fingerprint),
            kept: self.kept.parse().ok()?,
        })
    }
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Known {
    length: u64,
    content: u64,
    modified_nanoseconds: Option<u128>,
}

impl Known {
    pub(super) fn new(known: Fingerprint) -> Self {
        let since = known
            .modified
            .and_then(|time| time.duration_since(UNIX_EPOCH).ok());
        Self {
            length: known.length,
            content: known.content,
            modified_nanoseconds: since.map(|since| since.as_nanos()),
        }
    }

    pub(super) fn to_fingerprint(&self) -> Fingerprint {
        Fingerprint {
            length: self.length,
            modified: self.modified_nanoseconds.and_then(time_of),
            content: self.content,
        }
    }
}

/// Why unsaved work, or a part of it, can't be read.
#[derive(Debug)]
pub enum WorkFault {
    /// There is no whole change in it.
    NoWholeChange,
    /// It ends after its first line.
    EndsEarly,
    /// Its first line does not say whose work it is.
    NoOwner,
    /// Its first line is damaged.
    FirstLineDamaged,
    /// A part is missing or was changed.
    PartMissing,
    /// The time of the work is damaged.
    TimeDamaged,
    /// A change in the middle is damaged; those behind it are left out.
    ChangeDamaged,
    /// Its text is no book.
    NoBook(Vec<LoadProblem>),
    /// The file can't be read.
    Unreadable(LoadError),
    /// What the system says.
    System(io::Error),
}

fn time_of(nanoseconds: u128) -> Option<SystemTime> {
    const SECOND: u128 = 1_000_000_000;
    let seconds = u64::try_from(nanoseconds / SECOND).ok()?;
    let rest = u32::try_from(nanoseconds % SECOND).ok()?;
    UNIX_EPOCH.checked_add(Duration::new(seconds, rest))
}
