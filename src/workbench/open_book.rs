//! The workbench: one open book, its history and its file.

use std::path::PathBuf;
use std::sync::Arc;
use std::time::Instant;

use super::action::{Home, Intent, Message, Sample, Shown};
use super::derived::{Answers, BookStamp, Derived};
use super::disk_desk::DiskDesk;
use super::document::Document;
use super::job::{Job, Wake};
use super::jobs::Jobs;
use super::picker::{FilePicker, PickRequest};
use super::redirect::redirect_from_approved;
use super::theirs::DiskChange;
use crate::book::Book;
use crate::edit::{Edit, Focus};
use crate::say::Speaker;
use crate::swap::Watch;

/// One open book.
pub struct Workbench {
    /// Speaks as the window does, about no book.
    pub(super) voice: Speaker<'static>,
    /// The book, its history and its file.
    pub(super) document: Document,
    /// What stands between the book and the disk.
    pub(super) disk: DiskDesk,
    /// What is done in the background.
    pub(super) jobs: Jobs,
    /// What is computed from the book.
    pub(super) derived: Derived,
    /// What the screen is told.
    pub(super) told: Told,
}

/// What the screen is told.
#[derive(Default)]
pub(super) struct Told {
    /// What waits for an answer about unsaved changes.
    pub(super) pending: Option<Intent>,
    pub(super) message: Option<Message>,
    pub(super) show: Option<Shown>,
    pub(super) focus: Option<Focus>,
    pub(super) quit: bool,
    /// A folder that was picked, until the screen takes it.
    pub(super) folder: Option<PathBuf>,
    /// Whether a place to save has to be typed, because the system has no dialog for it.
    pub(super) wants_typed_path: bool,
    /// When the file dialog of the system was last asked for.
    pub(super) asked: Option<Instant>,
}

impl Default for Workbench {
    fn default() -> Self {
        Self {
            voice: Speaker::without_book(),
            document: Document::default(),
            disk: DiskDesk::default(),
            jobs: Jobs::default(),
            derived: Derived::default(),
            told: Told::default(),
        }
    }
}

impl Workbench {
    /// A workbench with this book, saved as it is.
    pub fn with_book(book: Book, home: Home) -> Self {
        Self {
            document: Document::new(book, home, false),
            ..Self::default()
        }
    }

    /// A workbench with the built-in book.
    pub fn with_sample() -> Self {
        let mut workbench = Self::default();
        workbench.open_sample(Sample::Harrowmere);
        workbench
    }

    /// Sets how files are asked for.
    #[must_use]
    pub fn with_picker(mut self, picker: Arc<dyn FilePicker>) -> Self {
        self.jobs.picker = picker;
        self
    }

    /// Sets how the screen is woken when something has come that was waited for.
    #[must_use]
    pub fn with_wake(mut self, wake: Wake) -> Self {
        self.jobs.wake = wake;
        self
    }

    /// Sets the units and the language in which it says what has been done and what has failed.
    pub fn speak(&mut self, voice: Speaker<'static>) {
        self.voice = voice;
    }

    /// The book as it is now.
    pub fn book(&self) -> &Arc<Book> {
        self.document.history.book()
    }

    /// Changes whenever the book does.
    pub fn stamp(&self) -> BookStamp {
        self.document.stamp
    }

    /// Where the book is kept.
    pub fn home(&self) -> &Home {
        &self.document.file.home
    }

    /// The name of the book for the title of the window.
    pub fn title(&self) -> String {
        match &self.document.file.home {
            Home::Nowhere(unfiled) => unfiled.name(self.voice),
            Home::File(path) => path.file_name().map_or_else(
                || path.display().to_string(),
                |name| name.to_string_lossy().into_owned(),
            ),
        }
    }

    /// Whether there is anything that no file holds: changes, or the whole book when its file is gone.
    pub fn has_unsaved_changes(&self) -> bool {
        self.document.has_unsaved_changes()
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<String> {
        let step = self.document.history.next_undo()?;
        Some(self.voice.about(&step.before).step_label(&step.edits))
    }

    /// What redo would repeat.
    pub fn redo_label(&self) -> Option<String> {
        let step = self.document.history.next_redo()?;
        // Undone, a step keeps the book behind it; the one before it is that on the screen.
        Some(self.voice.about(self.book()).step_label(&step.edits))
    }

    /// What waits for an answer about unsaved changes.
    pub fn pending(&self) -> Option<&Intent> {
        self.told.pending.as_ref()
    }

    /// Whether the next save drops text comments from the file, and nobody has agreed to that yet.
    pub fn save_drops_comments(&self) -> bool {
        self.document.file.save_drops_comments()
    }

    /// The last message.
    pub fn message(&self) -> Option<&Message> {
        self.told.message.as_ref()
    }

    /// Whether the window should close.
    pub fn wants_to_quit(&self) -> bool {
        self.told.quit
    }

    /// What should be shown next, told once.
    pub fn take_show(&mut self) -> Option<Shown> {
        self.told.show.take()
    }

    /// Where the keyboard should be after undo or redo, told once.
    pub fn take_focus(&mut self) -> Option<Focus> {
        self.told.focus.take()
    }

    /// How often something was worked out from the book since the start, by the memo or by a search.
    pub fn engine_calls(&self) -> u64 {
        self.derived.engine_calls()
    }

    /// The book with everything that can be asked about it.
    pub fn answers(&self) -> Answers<'_> {
        self.derived
            .answers(self.document.history.book(), self.document.stamp)
    }

    pub(super) fn count_engine_calls(&mut self, was_asked: bool) {
        if was_asked {
            self.derived.count_call();
        }
    }

    /// Whether the file dialog of the system is open.
    pub fn is_asking(&self) -> bool {
        self.jobs.asking.is_some()
    }

    pub(super) fn edit(&mut self, edits: Vec<Edit>, focus: Focus) {
        let (edits, draft) = redirect_from_approved(self.voice.about(self.book()), edits);
        // What was asked for last names the step; before it stands the draft that it goes into.
        if edits.is_empty() {
            return;
        }
        let before = self.book().clone();
        match self.document.history.perform(edits, focus) {
            Ok(()) => {
                self.told.show = draft.or(self.told.show.take());
                self.note_change(&before);
            }
            Err(error) => {
                let said = self.voice.about(&before).edit_error(&error);
                self.told.message = Some(Message::Failed(said));
            }
        }
    }

    pub(super) fn note_change(&mut self, before: &Arc<Book>) {
        if !Arc::ptr_eq(before, self.book()) {
            self.document.stamp.0 += 1;
            self.keep_unsaved_work();
        }
    }

    /// How the file was changed by another program, until something is done about it.
    pub fn disk_change(&self) -> Option<&DiskChange> {
        self.document.file.change()
    }

    /// A folder that was picked in the dialog of the system, told once.
    pub fn take_folder(&mut self) -> Option<PathBuf> {
        self.told.folder.take()
    }

    /// Whether a place to save has to be typed, because the system has no dialog for it; told once.
    pub fn take_wants_typed_path(&mut self) -> bool {
        std::mem::take(&mut self.told.wants_typed_path)
    }

    pub(super) fn ask(&mut self, request: PickRequest) {
        self.ask_beside(request, self.document.file.path().cloned());
    }

    pub(super) fn ask_beside(&mut self, request: PickRequest, beside: Option<PathBuf>) {
        if request == PickRequest::Save && !self.jobs.picker.has_dialog() {
            self.told.wants_typed_path = true;
            (self.jobs.wake)();
        } else if self.jobs.asking.is_none() {
            self.told.asked = Some(Instant::now());
            let (picker, voice) = (self.jobs.picker.clone(), self.voice);
            let work = move |_: &Watch| picker.pick(request, beside.as_deref(), voice);
            self.jobs.asking = Some(Job::start(request, &self.jobs.wake, work));
        }
    }

    pub(super) fn replace(&mut self, by: Document) {
        self.document.replace(by);
        self.told.message = None;
        self.told.pending = None;
        self.jobs.forget_book();
        self.disk.forget_book();
        self.drop_unsaved_work();
    }
}
