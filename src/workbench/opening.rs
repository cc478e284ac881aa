//! Opening a book: read on a thread of its own, because a large book or a slow disk takes longer than a frame.
//!
//! A book that is there at once is opened in place. One that takes longer can be given up; until it is there the book on the
//! screen stays as it is.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use super::action::{Home, Intent, Message, Unfiled};
use super::earlier_book::earlier_name;
use super::kept::Reading;
use super::open_book::Workbench;
use super::saving::whole_path;
use crate::book_file::{Loaded, book_of_earlier_copy};
use crate::say::say;

impl Workbench {
    /// The file that is being opened and since when, while that takes longer than usual.
    pub fn opening(&self) -> Option<(&Path, Instant)> {
        let reading = self.file.reading.as_ref()?;
        Some((&reading.path, reading.since))
    }

    pub(super) fn open(&mut self, path: PathBuf) {
        let path = whole_path(path);
        let (sender, outcome) = channel();
        let (disk, wake, of) = (self.file.disk.clone(), self.wake.clone(), path.clone());
        std::thread::spawn(move || {
            let loaded = disk.load(&of);
            // Nobody waits for a book that was given up.
            if sender.send(loaded).is_ok() {
                wake();
            }
        });
        self.file.reading = Some(Reading {
            path,
            since: Instant::now(),
            asked_at: self.stamp(),
            outcome,
        });
        self.poll_opening(self.file.patience);
    }

    /// The book on the screen stays; what is still being read is dropped when it comes.
    pub(super) fn stop_opening(&mut self) {
        if let Some(reading) = self.file.reading.take() {
            let path = reading.path.display().to_string();
            let text = say!(self.voice, "open-stopped", path: path);
            self.message = Some(Message::Done(text));
        }
    }

    pub(super) fn poll_opening(&mut self, patience: Duration) {
        let Some(reading) = &self.file.reading else {
            return;
        };
        let loaded = match reading.outcome.recv_timeout(patience) {
            Ok(loaded) => loaded.map_err(|error| self.voice.load_error(&error)),
            Err(RecvTimeoutError::Timeout) => return,
            Err(RecvTimeoutError::Disconnected) => {
                let path = reading.path.display().to_string();
                Err(say!(self.voice, "open-broke-down", path: path))
            }
        };
        let Some(Reading { path, asked_at, .. }) = self.file.reading.take() else {
            return;
        };
        match loaded {
            // What was changed while the book was read has not been asked about.
            Ok(_) if self.stamp() != asked_at => self.intend(Intent::Open(path)),
            Ok(loaded) => self.put_on_the_desk(path, loaded),
            Err(reason) => self.message = Some(Message::Failed(reason)),
        }
    }

    fn put_on_the_desk(&mut self, path: PathBuf, loaded: Loaded) {
        if let Some(book) = book_of_earlier_copy(&path) {
            // Saving must not change what was.
            let name = earlier_name(self.voice, &book, &path);
            self.replace(loaded.book, Home::Nowhere(Unfiled::Called(name)), false);
        } else {
            self.replace(loaded.book, Home::File(path), loaded.text_has_comments);
            self.file.known = Some(loaded.fingerprint);
        }
    }
}
