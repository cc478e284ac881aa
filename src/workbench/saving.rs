//! Saving the book: on a thread of its own, because a disk may be at the other end of a network.
//!
//! A save that ends at once looks as if it had been done in place. One that takes longer leaves the window alive; what is
//! changed meanwhile is unsaved.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use super::action::{Home, Message};
use super::disk::Disk;
use super::disk_desk::{Outcome, Replacing, Saving};
use super::file_watch::Hearing;
use super::job::{BrokeDown, Job};
use super::open_book::Workbench;
use super::picker::PickRequest;
use super::save_outcome::{ELSEWHERE, way_out};
use super::theirs::Found;
use crate::book::Book;
use crate::book_file::{Fingerprint, SaveError, Saved, book_of_earlier_copy};
use crate::edit::{Edit, Focus, WholeBook};
use crate::say::say;
use crate::swap::Watch;
use jiff::Timestamp;

impl Workbench {
    /// Sets the disk; that of the system by default.
    #[must_use]
    pub fn with_disk(mut self, disk: Arc<dyn Disk>) -> Self {
        self.disk.access = disk;
        self
    }

    /// Hears of changes of the file by the means of the system; without it the file is looked at every few seconds.
    #[must_use]
    pub fn with_file_watch(mut self) -> Self {
        self.disk.hearing = Hearing::IsTold(None);
        self
    }

    /// Sets how long a book may take to be read or written before the screen goes on without it.
    #[must_use]
    pub fn with_patience(mut self, patience: Duration) -> Self {
        self.disk.patience = patience;
        self
    }

    /// Whether a save is under way that takes longer than usual.
    pub fn is_saving(&self) -> bool {
        self.disk.saving.is_some()
    }

    /// Puts another state of the whole book in place as one step.
    pub(super) fn put_book(&mut self, book: &Book, reason: WholeBook) {
        let book = Arc::new(book.sharing_with(self.book()));
        self.edit(vec![Edit::PutBook { book, reason }], Focus::Book);
        self.document.history.close_step();
    }

    pub(super) fn save(&mut self) {
        match self.document.file.home.clone() {
            Home::File(path) => self.save_as(path),
            Home::Nowhere(_) => self.ask(PickRequest::Save),
        }
    }

    /// A file that a save would replace: an answer is needed before anything is written.
    pub fn replacing(&self) -> Option<&Replacing> {
        self.disk.replacing.as_ref()
    }

    /// A name without the ending of a book gets it, unless it is that of the open book.
    fn with_ending(&self, path: PathBuf) -> PathBuf {
        let has_ending = path
            .extension()
            .is_some_and(|ending| ending.eq_ignore_ascii_case("ron"));
        if has_ending || path.file_name().is_none() || path.is_dir() || self.is_home(&path) {
            return path;
        }
        let mut named = path.into_os_string();
        named.push(".ron");
        named.into()
    }

    /// Saves under a name that the dialog of the system gave. It has asked about a file of that name, not about one with the
    /// ending that was left out.
    pub(super) fn save_as_picked(&mut self, path: PathBuf) {
        if self.with_ending(path.clone()) == path {
            self.save_as(path);
        } else {
            self.save_as_asking(path);
        }
    }

    /// Saves under a name that was typed. A file that has the name already is not replaced unasked.
    pub(super) fn save_as_asking(&mut self, path: PathBuf) {
        let path = self.with_ending(whole_path(path));
        if !self.is_home(&path)
            && let Ok(metadata) = path.metadata()
            && metadata.is_file()
            && book_of_earlier_copy(&path).is_none()
        {
            let changed = metadata.modified().ok();
            self.disk.replacing = Some(Replacing {
                path,
                changed: changed.and_then(|time| Timestamp::try_from(time).ok()),
                bytes: metadata.len(),
            });
            return;
        }
        self.save_as(path);
    }

    pub(super) fn replace_file(&mut self) {
        if let Some(replacing) = self.disk.replacing.take() {
            self.save_as(replacing.path);
        }
    }

    /// Whether a path leads to the file of the open book, however it is spelled.
    fn is_home(&self, path: &Path) -> bool {
        let Some(home) = self.document.file.path() else {
            return false;
        };
        let whole = |path: &Path| path.canonicalize().ok();
        home == path || whole(home).is_some_and(|home| whole(path) == Some(home))
    }

    pub(super) fn save_as(&mut self, path: PathBuf) {
        let path = whole_path(path);
        let same_file = self.is_home(&path);
        if same_file && self.save_drops_comments() {
            self.document.file.give_up_comments();
            let text = self.voice.word("save-drops-comments");
            self.told.message = Some(Message::Failed(text.to_owned()));
            return;
        }
        if book_of_earlier_copy(&path).is_some() {
            let text = self.voice.word("save-over-earlier-copy");
            self.told.message = Some(Message::Failed(text.to_owned()));
            return;
        }
        let known = self.document.file.known.filter(|_| same_file);
        self.start_saving(path, known);
    }

    pub(super) fn start_saving(&mut self, path: PathBuf, known: Option<Fingerprint>) {
        if let Some(saving) = &self.disk.saving {
            let path = saving.about.path.display().to_string();
            let text = say!(self.voice, "save-still-running", path: path);
            self.told.message = Some(Message::Failed(text));
            return;
        }
        let saving = Saving {
            path: path.clone(),
            book: self.book().clone(),
            left_behind: false,
        };
        let (disk, book) = (self.disk.access.clone(), saving.book.clone());
        // Nothing stops a save that has begun: half of a book helps nobody.
        let work = move |_: &Watch| {
            let saved = disk.save(&path, &book, known.as_ref());
            let changed = matches!(saved, Err(SaveError::ChangedOnDisk { .. }));
            let theirs = changed.then(|| Found::read(disk.as_ref(), &path, known.as_ref()));
            Outcome { saved, theirs }
        };
        self.disk.saving = Some(Job::start(saving, &self.jobs.wake, work));
        self.poll_saving(self.disk.patience);
        if let Some(saving) = &self.disk.saving {
            let path = saving.about.path.display().to_string();
            let text = say!(self.voice, "save-takes-long", path: path);
            self.told.message = Some(Message::Done(text));
        }
    }

    pub(super) fn poll_saving(&mut self, patience: Duration) {
        let ended = Job::take_ended(&mut self.disk.saving, patience);
        let Some((saving, outcome)) = ended else {
            return;
        };
        if saving.left_behind {
            let saved = outcome.map(|outcome| outcome.saved);
            self.say_of_book_left_behind(&saving.path, saved);
            return;
        }
        match outcome {
            Ok(Outcome {
                saved: Ok(saved), ..
            }) => self.note_saved(saving, &saved),
            Ok(Outcome {
                saved: Err(SaveError::ChangedOnDisk { .. }),
                theirs: Some(theirs),
            }) => {
                self.note_disk_change(theirs, true);
            }
            Ok(Outcome {
                saved: Err(error), ..
            }) => self.say_unsaved(&self.voice.save_error(&error), way_out(&error)),
            Err(BrokeDown) => self.say_unsaved(self.voice.word("save-broke-down"), ELSEWHERE),
        }
    }

    fn note_saved(&mut self, saving: Saving, saved: &Saved) {
        let (speaker, path) = (self.voice, saving.path.display().to_string());
        let text = match &saved.earlier {
            Ok(_) => say!(speaker, "save-done", path: path),
            Err(error) => {
                say!(speaker, "save-without-earlier", path: path, error: error.to_string())
            }
        };
        self.told.message = Some(Message::Done(text));
        self.document.history.close_step();
        let Saving { path, book, .. } = saving;
        self.document.file.note_saved(path, book, saved.fingerprint);
        self.keep_unsaved_work();
        self.list_earlier_again();
    }
}

/// A path from the root: the program may be started from another folder when the book is next opened or its work brought back.
pub(super) fn whole_path(path: PathBuf) -> PathBuf {
    std::path::absolute(&path).unwrap_or(path)
}
