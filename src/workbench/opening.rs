//! Opening a book: read on a thread of its own, because a large book or a slow disk takes longer than a frame.
//!
//! A book that is there at once is opened in place. One that takes longer can be given up; until it is there the book on the
//! screen stays as it is.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use super::action::{Home, Intent, Message, Unfiled};
use super::disk_desk::Reading;
use super::document::Document;
use super::earlier_book::earlier_name;
use super::job::{BrokeDown, Job};
use super::open_book::Workbench;
use super::saving::whole_path;
use crate::book_file::{Loaded, book_of_earlier_copy};
use crate::say::say;
use crate::swap::Watch;

impl Workbench {
    /// The file that is being opened and since when, while that takes longer than usual.
    pub fn opening(&self) -> Option<(&Path, Instant)> {
        let Reading { path, since, .. } = &self.disk.reading.as_ref()?.about;
        Some((path, *since))
    }

    pub(super) fn open(&mut self, path: PathBuf) {
        let path = whole_path(path);
        let (disk, of) = (self.disk.access.clone(), path.clone());
        let reading = Reading {
            path,
            since: Instant::now(),
            asked_at: self.stamp(),
        };
        let work = move |_: &Watch| disk.load(&of);
        self.disk.reading = Some(Job::start(reading, &self.jobs.wake, work));
        self.poll_opening(self.disk.patience);
    }

    /// The book on the screen stays; what is still being read is dropped when it comes.
    pub(super) fn stop_opening(&mut self) {
        if let Some(reading) = self.disk.reading.take() {
            let path = reading.about.path.display().to_string();
            let text = say!(self.voice, "open-stopped", path: path);
            self.told.message = Some(Message::Done(text));
        }
    }

    pub(super) fn poll_opening(&mut self, patience: Duration) {
        let ended = Job::take_ended(&mut self.disk.reading, patience);
        let Some((Reading { path, asked_at, .. }, loaded)) = ended else {
            return;
        };
        let reason = match loaded {
            // What was changed while the book was read has not been asked about.
            Ok(Ok(_)) if self.stamp() != asked_at => return self.intend(Intent::Open(path)),
            Ok(Ok(loaded)) => return self.put_on_the_desk(path, loaded),
            Ok(Err(error)) => self.voice.load_error(&error),
            Err(BrokeDown) => {
                let path = path.display().to_string();
                say!(self.voice, "open-broke-down", path: path)
            }
        };
        self.told.message = Some(Message::Failed(reason));
    }

    fn put_on_the_desk(&mut self, path: PathBuf, loaded: Loaded) {
        if let Some(book) = book_of_earlier_copy(&path) {
            // Saving must not change what was.
            let name = earlier_name(self.voice, &book, &path);
            let home = Home::Nowhere(Unfiled::Called(name));
            self.replace(Document::new(loaded.book, home, false));
        } else {
            let (home, has_comments) = (Home::File(path), loaded.text_has_comments);
            self.replace(Document::new(loaded.book, home, has_comments));
            self.document.file.known = Some(loaded.fingerprint);
        }
    }
}
