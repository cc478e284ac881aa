//! Two hands on one book: the file was changed by another program, and what can be done about it.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant};

use super::action::Message;
use super::file_watch::{FileWatch, SETTLED};
use super::job::Job;
use super::open_book::Workbench;
use super::theirs::{DiskChange, FileState, Found, Seen, Theirs};
use crate::book::{Book, MergeNote, Part, Side, difference_of_books, merge};
use crate::book_file::{Fingerprint, LoadError, OnDisk};
use crate::edit::WholeBook;
use crate::say::{Speaker, say};
use crate::swap::Watch;
use jiff::ZonedDateTime;

/// How often the file is looked at where the system does not tell of changes.
const LOOK_EVERY: Duration = Duration::from_secs(2);

/// How often it is looked at where the system does: a network disk may be silent.
const LOOK_SELDOM: Duration = Duration::from_secs(20);

impl Workbench {
    /// Takes what has come from the disk, and looks at the file every few seconds.
    pub(super) fn poll_file(&mut self) {
        self.poll_saving(Duration::ZERO);
        self.poll_look();
        self.keep_watching();
        let is_due = |looked: Instant| looked.elapsed() >= self.look_every();
        if self.disk.looked.is_none_or(is_due) {
            self.look_at_disk();
        }
        let watch = self.disk.hearing.watch();
        let touched = watch.and_then(FileWatch::touched);
        // A look that is under way may have been too early; what comes during a save is looked at behind it.
        let is_free = self.disk.look.is_none() && !self.is_saving();
        if is_free && touched.is_some_and(|touched| touched >= SETTLED) {
            if let Some(watch) = watch {
                watch.answer();
            }
            self.look_at_disk();
        }
    }

    /// Watches the file of the book that is open, wherever that is now.
    fn keep_watching(&mut self) {
        let file = &self.document.file;
        // A folder that is gone is another one when it comes back.
        let path = file.path().filter(|_| !file.is_gone());
        self.disk.hearing.follow(path, &self.jobs.wake);
    }

    fn look_every(&self) -> Duration {
        let file = &self.document.file;
        let is_steady = file.change().is_none() && !file.is_gone();
        match self.disk.hearing.watch() {
            Some(watch) if is_steady && watch.is_active() => LOOK_SELDOM,
            _ => LOOK_EVERY,
        }
    }

    /// When the window has to ask again though nothing happens in it; `None` when it need not.
    pub fn next_look(&self) -> Option<Duration> {
        self.document.file.path()?;
        let touched = self.disk.hearing.watch().and_then(FileWatch::touched);
        let settles = touched.map(|touched| SETTLED.saturating_sub(touched));
        Some(settles.unwrap_or(self.look_every()))
    }

    /// Looks on a thread whether the file was changed by another program; what is found comes with a later [`Workbench::poll`].
    /// The window may call it when it gets the focus.
    pub fn look_at_disk(&mut self) {
        let file = &self.document.file;
        let Some((path, known)) = file.path().zip(file.known) else {
            return;
        };
        // A file that is away or half-written may be whole again in a moment; another book waits for its answer.
        let waits = file
            .change()
            .is_some_and(|change| change.at_save || matches!(change.theirs, Theirs::Book { .. }));
        if self.disk.look.is_some() || waits || self.is_saving() {
            return;
        }
        self.disk.looked = Some(Instant::now());
        let (disk, path) = (self.disk.access.clone(), path.clone());
        let left = file.left();
        let is_missed = file.is_gone() || file.change().is_some();
        let work = move |_: &Watch| match disk.look(&path, &known) {
            Ok(OnDisk::Changed(now)) if left.is_none_or(|left| !left.has_content_of(&now)) => {
                Seen::Another(Found::read(disk.as_ref(), &path, Some(&known)))
            }
            Ok(OnDisk::Gone) => Seen::Gone,
            Ok(OnDisk::Same) => Seen::Same,
            // A folder that is away for the moment (a network) is no change; saving will say so.
            Ok(OnDisk::Changed(_)) | Err(_) => Seen::Nothing,
        };
        let is_news = move |seen: &Seen| is_missed || !matches!(seen, Seen::Nothing | Seen::Same);
        self.disk.look = Some(Job::start_for_news((), &self.jobs.wake, is_news, work));
    }

    fn poll_look(&mut self) {
        let ended = Job::take_ended(&mut self.disk.look, Duration::ZERO);
        let Some(((), Ok(seen))) = ended else { return };
        if self.is_saving() {
            return;
        }
        match seen {
            Seen::Nothing => {}
            Seen::Same => {
                if self.document.file.note_back() {
                    self.keep_unsaved_work();
                }
            }
            Seen::Gone if self.document.file.is_gone() => {}
            Seen::Gone => self.note_disk_change(Found::gone(), false),
            Seen::Another(theirs) => {
                // A save that was done meanwhile is not another hand, and what is asked about already is no news.
                let is_own = theirs.fingerprint.is_some_and(|now| self.is_known(&now));
                let asked = self.disk_change().map(|change| change.fingerprint);
                if !is_own && asked != Some(theirs.fingerprint) {
                    self.note_disk_change(theirs, false);
                }
            }
        }
    }

    /// Whether the file of the book is gone, or being written.
    pub fn file_state(&self) -> FileState {
        if self.is_saving() {
            FileState::Saving
        } else if self.document.file.is_gone() {
            FileState::Gone
        } else {
            FileState::Steady
        }
    }

    fn is_known(&self, found: &Fingerprint) -> bool {
        let known = self.document.file.known;
        known.is_some_and(|known| known.has_content_of(found))
    }

    /// Notes what another program has made of the file.
    pub(super) fn note_disk_change(&mut self, found: Found, at_save: bool) {
        let Some(path) = self.document.file.path().cloned() else {
            return;
        };
        let Found { book, fingerprint } = found;
        let mut text_has_comments = false;
        let theirs = match *book {
            Err(LoadError::Missing { .. }) => Theirs::Gone,
            Err(error) => Theirs::Unreadable {
                reason: self.voice.load_error(&error),
            },
            Ok(loaded) => {
                text_has_comments = loaded.text_has_comments;
                let saved = &self.document.file.saved;
                let book = Arc::new(loaded.book.sharing_with(saved));
                let difference = difference_of_books(saved, &book);
                Theirs::Book { book, difference }
            }
        };
        self.document.file.note_change(DiskChange {
            path,
            theirs,
            at_save,
            fingerprint,
            text_has_comments,
        });
        // A book that no file holds any more is kept like a change.
        self.keep_unsaved_work();
    }

    /// The book as it was when it was last read or written: what the changes on the screen and on the disk are held against.
    pub fn saved_book(&self) -> &Arc<Book> {
        &self.document.file.saved
    }

    pub(super) fn take_theirs(&mut self) {
        self.put_with_theirs(WholeBook::FileOnDisk, |_, theirs| {
            (theirs.as_ref().clone(), Vec::new())
        });
    }

    pub(super) fn merge_with_disk(&mut self, take_theirs: &[Part]) {
        self.put_with_theirs(WholeBook::Merge, |workbench, theirs| {
            let choose = |part: &Part| {
                if take_theirs.contains(part) {
                    Side::Theirs
                } else {
                    Side::Mine
                }
            };
            let merged = merge(
                &workbench.document.file.saved,
                workbench.book(),
                theirs,
                choose,
            );
            (merged.book, merged.notes)
        });
    }

    /// Puts a book in place that holds what they did; from now on the file is what it is.
    fn put_with_theirs(
        &mut self,
        reason: WholeBook,
        book: impl Fn(&Self, &Arc<Book>) -> (Book, Vec<MergeNote>),
    ) {
        let Some(DiskChange {
            theirs: Theirs::Book { book: theirs, .. },
            fingerprint,
            text_has_comments,
            ..
        }) = self.document.file.take_change()
        else {
            return;
        };
        let (book, notes) = book(self, &theirs);
        self.document
            .file
            .hold(theirs, fingerprint, text_has_comments);
        self.put_book(&book, reason);
        if !notes.is_empty() && !matches!(self.told.message, Some(Message::Failed(_))) {
            let sentences: Vec<String> = notes
                .iter()
                .map(|note| self.voice.merge_note(note))
                .collect();
            self.told.message = Some(Message::Done(sentences.join("\n")));
        }
        self.keep_unsaved_work();
    }

    pub(super) fn keep_mine_as_copy(&mut self) {
        let Some(change) = self.document.file.take_change() else {
            return;
        };
        // The file stays theirs; from now on the copy is the book.
        self.start_saving(free_name_beside(self.voice, &change.path), None);
        if matches!(self.told.message, Some(Message::Failed(_))) {
            self.document.file.note_change(change);
        }
    }

    pub(super) fn overwrite_disk(&mut self) {
        let Some(change) = self.document.file.take_change() else {
            return;
        };
        // What has come after the change that the person was shown is not overwritten unseen.
        self.start_saving(change.path, change.fingerprint);
    }

    pub(super) fn leave_disk_change(&mut self) {
        self.document.file.leave_change();
    }
}

/// A name beside a file that is not taken: `winter (mine, 2026-05-04 10.22.31).ron`.
fn free_name_beside(voice: Speaker<'_>, path: &Path) -> PathBuf {
    let stem = path.file_stem().map_or_else(
        || "book".to_owned(),
        |stem| stem.to_string_lossy().into_owned(),
    );
    let now = ZonedDateTime::now()
        .strftime("%Y-%m-%d %H.%M.%S")
        .to_string();
    let named = |number: u32| {
        let name = say!(voice, "file-of-mine", name: &stem, moment: &now, number: number);
        path.with_file_name(format!("{name}.ron"))
    };
    // A name with the second in it is hardly ever taken.
    (1..100)
        .map(named)
        .find(|name| !name.exists())
        .unwrap_or_else(|| named(100))
}
