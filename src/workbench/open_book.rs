//! The workbench: one open book, its history and its file.

use std::sync::Arc;

use super::action::{Home, Intent, Message, Sample, Shown, Unfiled};
use super::derived::{BookStamp, Derived, Standard};
use super::kept::BookFile;
use super::picker::{Asking, FilePicker, NoPicker, PickRequest};
use super::redirect::redirect_from_approved;
use super::searches::Searches;
use super::serving::Serving;
use super::theirs::DiskChange;
use crate::balance::Balance;
use crate::book::{Book, Finding, RecipeId, VersionId};
use crate::book_file;
use crate::edit::{Edit, Focus, History};
use crate::say::Speaker;

/// One open book.
pub struct Workbench {
    pub(super) history: History,
    /// Speaks as the window does, about no book.
    pub(super) voice: Speaker<'static>,
    pub(super) stamp: BookStamp,
    pub(super) home: Home,
    pub(super) saved: Arc<Book>,
    pub(super) text_has_comments: bool,
    pub(super) comments_agreed: bool,
    /// What stands between the book and the disk.
    pub(super) file: BookFile,
    pub(super) derived: Derived,
    pub(super) searches: Searches,
    pub(super) picker: Arc<dyn FilePicker>,
    pub(super) wake: Arc<dyn Fn() + Send + Sync>,
    pub(super) asking: Option<Asking>,
    pub(super) cards: super::card_previews::CardDesk,
    pub(super) bringing_in: super::list_in_hand::BringingIn,
    pub(super) pending: Option<Intent>,
    pub(super) message: Option<Message>,
    pub(super) show: Option<Shown>,
    pub(super) focus: Option<Focus>,
    pub(super) quit: bool,
}

impl Default for Workbench {
    fn default() -> Self {
        Self::with_book(Book::default(), Home::Nowhere(Unfiled::New))
    }
}

impl Workbench {
    /// A workbench with this book, saved as it is.
    pub fn with_book(book: Book, home: Home) -> Self {
        let book = Arc::new(book);
        Self {
            voice: Speaker::without_book(),
            history: History::new(book.clone()).measured_by(book_file::text_measure()),
            stamp: BookStamp(1),
            home,
            saved: book,
            text_has_comments: false,
            comments_agreed: false,
            file: BookFile::default(),
            derived: Derived::default(),
            searches: Searches::default(),
            picker: Arc::new(NoPicker),
            wake: Arc::new(|| ()),
            asking: None,
            cards: super::card_previews::CardDesk::default(),
            bringing_in: super::list_in_hand::BringingIn::default(),
            pending: None,
            message: None,
            show: None,
            focus: None,
            quit: false,
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
        self.picker = picker;
        self
    }

    /// Sets how the screen is woken when something has come that was waited for.
    #[must_use]
    pub fn with_wake(mut self, wake: Arc<dyn Fn() + Send + Sync>) -> Self {
        self.wake = wake;
        self
    }

    /// Sets the units and the language in which it says what has been done and what has failed.
    pub fn speak(&mut self, voice: Speaker<'static>) {
        self.voice = voice;
    }

    /// The book as it is now.
    pub fn book(&self) -> &Arc<Book> {
        self.history.book()
    }

    /// Changes whenever the book does.
    pub fn stamp(&self) -> BookStamp {
        self.stamp
    }

    /// Where the book is kept.
    pub fn home(&self) -> &Home {
        &self.home
    }

    /// The name of the book for the title of the window.
    pub fn title(&self) -> String {
        match &self.home {
            Home::Nowhere(unfiled) => unfiled.name(self.voice),
            Home::File(path) => path.file_name().map_or_else(
                || path.display().to_string(),
                |name| name.to_string_lossy().into_owned(),
            ),
        }
    }

    /// Whether there is anything that no file holds: changes, or the whole book when its file is gone.
    pub fn has_unsaved_changes(&self) -> bool {
        self.file.gone || !Arc::ptr_eq(self.book(), &self.saved) && **self.book() != *self.saved
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<String> {
        let step = self.history.next_undo()?;
        Some(self.voice.about(&step.before).step_label(&step.edits))
    }

    /// What redo would repeat.
    pub fn redo_label(&self) -> Option<String> {
        let step = self.history.next_redo()?;
        // Undone, a step keeps the book behind it; the one before it is that on the screen.
        Some(self.voice.about(self.book()).step_label(&step.edits))
    }

    /// What waits for an answer about unsaved changes.
    pub fn pending(&self) -> Option<&Intent> {
        self.pending.as_ref()
    }

    /// Whether the next save drops text comments from the file, and nobody has agreed to that yet.
    pub fn save_drops_comments(&self) -> bool {
        self.text_has_comments && !self.comments_agreed
    }

    /// The last message.
    pub fn message(&self) -> Option<&Message> {
        self.message.as_ref()
    }

    /// Whether the window should close.
    pub fn wants_to_quit(&self) -> bool {
        self.quit
    }

    /// What should be shown next, told once.
    pub fn take_show(&mut self) -> Option<Shown> {
        self.show.take()
    }

    /// Where the keyboard should be after undo or redo, told once.
    pub fn take_focus(&mut self) -> Option<Focus> {
        self.focus.take()
    }

    /// How often the engine has been asked since the start.
    pub fn engine_calls(&self) -> u64 {
        self.derived.engine_calls()
    }

    /// The balance of a version.
    pub fn balance(
        &mut self,
        recipe: &RecipeId,
        version: Option<&VersionId>,
    ) -> Option<Arc<Balance>> {
        self.derived
            .balance(self.history.book(), self.stamp, recipe, version)
    }

    /// The standard of a version, and the difference from it.
    pub fn standard(&mut self, recipe: &RecipeId, version: Option<&VersionId>) -> Option<Standard> {
        self.derived
            .standard(self.history.book(), self.stamp, recipe, version)
    }

    /// What is said of a version as it is served.
    pub fn serving(
        &mut self,
        recipe: &RecipeId,
        version: Option<&VersionId>,
    ) -> Option<Arc<Serving>> {
        self.derived
            .serving(self.history.book(), self.stamp, recipe, version)
    }

    pub(super) fn count_engine_calls(&mut self, was_asked: bool) {
        if was_asked {
            self.derived.count_call();
        }
    }

    /// What is wrong with the book.
    pub fn findings(&mut self) -> Arc<Vec<Finding>> {
        self.derived.findings(self.history.book(), self.stamp)
    }

    /// Whether the file dialog of the system is open.
    pub fn is_asking(&self) -> bool {
        self.asking.is_some()
    }

    pub(super) fn edit(&mut self, edits: Vec<Edit>, focus: Focus) {
        let (edits, draft) = redirect_from_approved(self.voice.about(self.book()), edits);
        // What was asked for last names the step; before it stands the draft that it goes into.
        if edits.is_empty() {
            return;
        }
        let before = self.book().clone();
        match self.history.perform(edits, focus) {
            Ok(()) => {
                self.show = draft.or(self.show.take());
                self.note_change(&before);
            }
            Err(error) => {
                let said = self.voice.about(&before).edit_error(&error);
                self.message = Some(Message::Failed(said));
            }
        }
    }

    pub(super) fn note_change(&mut self, before: &Arc<Book>) {
        if !Arc::ptr_eq(before, self.book()) {
            self.stamp.0 += 1;
            self.keep_unsaved_work();
            self.compare_with_disk_again();
        }
    }

    /// How the file was changed by another program, until something is done about it.
    pub fn disk_change(&self) -> Option<&DiskChange> {
        self.file.change.as_ref()
    }

    pub(super) fn ask(&mut self, request: PickRequest) {
        if self.asking.is_none() {
            let beside = match &self.home {
                Home::File(path) => Some(path.clone()),
                Home::Nowhere(_) => None,
            };
            self.asking = Some(Asking::start(
                self.picker.clone(),
                request,
                beside,
                self.voice,
                self.wake.clone(),
            ));
        }
    }

    pub(super) fn replace(&mut self, book: Book, home: Home, text_has_comments: bool) {
        let book = Arc::new(book);
        self.history = History::new(book.clone()).measured_by(book_file::text_measure());
        self.saved = book;
        self.home = home;
        self.text_has_comments = text_has_comments;
        self.comments_agreed = false;
        self.stamp.0 += 1;
        self.message = None;
        self.pending = None;
        if self
            .asking
            .as_ref()
            .is_some_and(|asking| asking.request == PickRequest::Save)
        {
            // The name was asked for another book.
            self.asking = None;
        }
        self.file.forget();
        self.drop_unsaved_work();
    }
}
