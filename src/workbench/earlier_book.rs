//! The earlier copies of the open book: found and read on threads, as the disk may be slow.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use super::action::{Home, Message};
use super::earlier_shelf::EarlierBook;
use super::job::{BrokeDown, Job};
use super::moments::moment_words;
use super::open_book::Workbench;
use crate::book_file::{EarlierCopy, book_of_earlier_copy, earlier_copies};
use crate::edit::WholeBook;
use crate::say::{Speaker, say};
use crate::swap::Watch;

impl Workbench {
    /// The earlier copies, the newest first; `None` until they were asked for and found.
    pub fn earlier_list(&self) -> Option<&Result<Vec<EarlierCopy>, String>> {
        self.disk.earlier.list.as_ref()
    }

    /// The earlier copy that is looked at.
    pub fn earlier_book(&self) -> Option<(&Path, &EarlierBook)> {
        let (path, book) = self.disk.earlier.looked_at.as_ref()?;
        Some((path, book))
    }

    pub(super) fn list_earlier(&mut self) {
        let Home::File(path) = self.document.file.home.clone() else {
            self.disk.earlier.list = Some(Ok(Vec::new()));
            return;
        };
        let voice = self.voice;
        let work = move |_: &Watch| {
            earlier_copies(&path)
                .map_err(|error| say!(voice, "earlier-not-listed", error: error.to_string()))
        };
        self.disk.earlier.listing = Some(Job::start((), &self.jobs.wake, work));
    }

    /// A save has made one more copy.
    pub(super) fn list_earlier_again(&mut self) {
        if self.disk.earlier.list.is_some() {
            self.list_earlier();
        }
    }

    pub(super) fn look_at_earlier(&mut self, path: PathBuf) {
        let (disk, now) = (self.disk.access.clone(), self.book().clone());
        let (of, voice) = (path.clone(), self.voice);
        let work = move |_: &Watch| match disk.load(&of) {
            Ok(loaded) => EarlierBook::Read(Arc::new(loaded.book.sharing_with(&now))),
            Err(error) => EarlierBook::Unreadable(voice.load_error(&error)),
        };
        self.disk.earlier.looked_at = Some((path, EarlierBook::Reading));
        self.disk.earlier.reading = Some(Job::start((), &self.jobs.wake, work));
    }

    /// Puts the copy that was looked at in place of what is on the screen.
    pub(super) fn restore_earlier(&mut self, path: &Path) {
        let earlier = match self.earlier_book() {
            Some((of, EarlierBook::Read(book))) if of == path => book.clone(),
            _ => {
                let text = self.voice.word("earlier-not-read");
                self.told.message = Some(Message::Failed(text.to_owned()));
                return;
            }
        };
        self.put_book(
            &earlier,
            WholeBook::EarlierCopy(earlier_words(self.voice, path)),
        );
    }

    pub(super) fn poll_earlier(&mut self) {
        let shelf = &mut self.disk.earlier;
        if let Some(((), Ok(list))) = Job::take_ended(&mut shelf.listing, Duration::ZERO) {
            shelf.list = Some(list);
        }
        let ended = Job::take_ended(&mut shelf.reading, Duration::ZERO);
        if let (Some(((), book)), Some((_, looked_at))) = (ended, &mut shelf.looked_at) {
            *looked_at = book.unwrap_or_else(|BrokeDown| {
                EarlierBook::Unreadable(self.voice.word("earlier-broke-down").to_owned())
            });
        }
    }
}

fn earlier_words(voice: Speaker<'_>, path: &Path) -> Option<String> {
    let book = book_of_earlier_copy(path)?;
    let copies = earlier_copies(&book).ok()?;
    copies
        .iter()
        .find(|copy| copy.path == path)
        .map(|copy| moment_words(voice, copy.saved))
}

/// The name of a copy that is opened by itself.
pub(super) fn earlier_name(voice: Speaker<'_>, book: &Path, copy: &Path) -> String {
    let name = book
        .file_name()
        .map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    earlier_words(voice, copy).map_or_else(
        || say!(voice, "earlier-name", name: &name),
        |when| say!(voice, "earlier-name-of", name: &name, moment: when),
    )
}
