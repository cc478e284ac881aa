//! Unsaved work that was found when the program began.

use std::path::PathBuf;
use std::time::Duration;

use crate::book::{Book, BookDifference, ItemId, difference_of_books};
use crate::book_file::{
    Fingerprint, LeftWork, Loaded, RecoveryNote, RecoveryPlace, SetAside, earlier_state, load,
};
use crate::say::Speaker;
use jiff::Timestamp;

/// Unsaved work that a program has left which did not end as it should.
#[derive(Debug)]
pub struct OfferedRecovery {
    /// The file of the book; `None` when it was in none.
    pub home: Option<PathBuf>,
    /// The name of the book.
    pub name: String,
    /// When the work was kept.
    pub kept: Timestamp,
    /// How it differs from the book in the file as it is now; from an empty book when there is no file.
    pub difference: BookDifference,
    /// The file can't be read any more, or was in none: all of the book is in the work.
    pub stands_alone: bool,
    /// The file was changed after the work was begun; what both did is put together before it is saved.
    pub file_changed: bool,
    pub(super) book: Book,
    pub(super) on_disk: Book,
    pub(super) base: Option<Loaded>,
    pub(super) known: Option<Fingerprint>,
    pub(super) place: RecoveryPlace,
}

impl OfferedRecovery {
    pub(super) fn new(work: LeftWork) -> Self {
        let LeftWork {
            note:
                RecoveryNote {
                    home,
                    name,
                    known,
                    kept,
                },
            book,
            place,
        } = work;
        let on_disk = home.as_deref().and_then(|path| load(path).ok());
        let file_changed = match (&on_disk, &known) {
            (Some(loaded), Some(known)) => !loaded.fingerprint.has_content_of(known),
            _ => false,
        };
        let base = if file_changed {
            // The state that the work was begun on is among the earlier copies when it was Evensip that saved over it.
            let begun_on = home
                .as_deref()
                .zip(known.as_ref())
                .and_then(|(path, known)| earlier_state(path, known));
            begun_on.or_else(|| on_disk.clone())
        } else {
            on_disk.clone()
        };
        let stands_alone = on_disk.is_none();
        let on_disk = on_disk.map_or_else(Book::default, |loaded| loaded.book);
        let difference = difference_of_books(&on_disk, &book);
        Self {
            home,
            name,
            kept,
            difference,
            stands_alone,
            file_changed,
            book,
            on_disk,
            base,
            known,
            place,
        }
    }

    /// What differs inside an item from the book in the file, a clause each.
    pub fn item_differences(&self, voice: Speaker<'_>, item: &ItemId) -> Vec<String> {
        voice
            .about(&self.book)
            .item_changes(&self.on_disk, item, &[])
    }
}

/// What the folder of unsaved work holds, and the place in it that is ours.
pub(super) struct FoundWork {
    pub(super) offered: Vec<OfferedRecovery>,
    pub(super) set_aside: Vec<SetAside>,
    pub(super) place: Result<RecoveryPlace, String>,
}

/// A look into the folder of unsaved work.
#[derive(Clone)]
pub(super) struct LooksForWork {
    pub(super) folder: PathBuf,
    pub(super) pause: Duration,
}
