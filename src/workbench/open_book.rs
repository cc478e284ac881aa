//! The workbench: one open book, its history and its file.

use std::path::PathBuf;
use std::sync::Arc;
use std::time::Duration;

use super::derived::{BookStamp, Derived, Standard};
use super::disk_change::DiskChange;
use super::picker::{Asking, FilePicker, NoPicker, PickRequest, Polled};
use super::redirect::redirect_from_approved;
use super::saving::BookFile;
use super::serving::Serving;
use super::variations::Searches;
use crate::balance::Balance;
use crate::book::{
    Approval, Book, Change, Finding, Part, Recipe, RecipeId, Settings, Version, VersionId, resolve,
};
use crate::book_file;
use crate::edit::{Edit, History};
use crate::say::{Speaker, say};

/// Where the book is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Home {
    /// Nowhere yet.
    Nowhere(Unfiled),
    /// In a file.
    File(PathBuf),
}

/// A book that is in no file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unfiled {
    /// A new one.
    New,
    /// One that is built in.
    Sample(Sample),
    /// One that has a name of its own: an earlier copy, or work that was brought back.
    Called(String),
}

impl Unfiled {
    /// Its name for the title of the window.
    fn name(&self, voice: Speaker<'_>) -> String {
        match self {
            Self::New => voice.word("new-book").to_owned(),
            Self::Sample(sample) => sample.name(voice).to_owned(),
            Self::Called(name) => name.clone(),
        }
    }
}

/// The books that are built in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sample {
    /// The book of the invented shop.
    Harrowmere,
    /// A small book to begin with.
    FirstSteps,
    /// A book whose labels are incomplete.
    UnreadLabels,
}

impl Sample {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Harrowmere, Self::FirstSteps, Self::UnreadLabels];

    /// Its name.
    pub fn name(self, voice: Speaker<'_>) -> &'static str {
        voice.word(match self {
            Self::Harrowmere => "sample-harrowmere",
            Self::FirstSteps => "sample-first-steps",
            Self::UnreadLabels => "sample-unread-labels",
        })
    }

    fn text(self) -> &'static str {
        match self {
            Self::Harrowmere => include_str!("../../sample-books/harrowmere.ron"),
            Self::FirstSteps => include_str!("../../sample-books/first-steps.ron"),
            Self::UnreadLabels => include_str!("../../sample-books/unread-labels.ron"),
        }
    }
}

/// What would lose unsaved changes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Intent {
    /// Open another file.
    Open(PathBuf),
    /// Open a built-in book.
    OpenSample(Sample),
    /// Begin an empty book.
    New,
    /// Close the window.
    Quit,
}

/// What a person asks of the workbench as a whole.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Take back the last step.
    Undo,
    /// Repeat the step that was taken back.
    Redo,
    /// Save where the book is kept; asks where when it is kept nowhere.
    Save,
    /// Save to this file from now on; asks first when another file has the name.
    SaveAs(PathBuf),
    /// Save over the file that was asked about.
    ReplaceFile,
    /// Leave the file that was asked about as it is.
    LeaveFile,
    /// Ask the system for a file to open.
    PickOpen,
    /// Ask the system for a place to save.
    PickSave,
    /// Do what may lose unsaved changes; asks first when there are any.
    Do(Intent),
    /// Give up the book that is being opened.
    StopOpening,
    /// Save, then do what was asked.
    SaveThenDo,
    /// Do what was asked and let the changes go.
    DiscardThenDo,
    /// Neither save nor do what was asked.
    StayHere,
    /// The field has lost the focus: the next change is a step of its own.
    CloseStep,
    /// What was typed in this field since the keyboard came to it is given up.
    Withdraw(String),
    /// Stop what is looked for in the background.
    StopSearching,
    /// Look again for what was stopped.
    SearchAgain,
    /// The message has been read.
    DismissMessage,
    /// Approve a version as it stands.
    Approve {
        /// The recipe.
        recipe: RecipeId,
        /// The version, or the recipe itself.
        version: Option<VersionId>,
        /// Who.
        by: String,
        /// Why.
        reason: String,
        /// Temperature at which it was tasted, °C.
        tasted_at: Option<f64>,
    },
    /// Make a new draft with the lines of an approval, and show it.
    GoBackToApproval {
        /// The recipe.
        recipe: RecipeId,
        /// Number of the approval, from 1.
        number: usize,
    },
    /// Look for the earlier copies of the book; what is found is in [`Workbench::earlier_list`].
    ListEarlier,
    /// Read an earlier copy; it is in [`Workbench::earlier_book`] when it is there.
    LookAtEarlier(PathBuf),
    /// Put the earlier copy that was looked at in place of what is on the screen, as one step that can be undone.
    RestoreEarlier(PathBuf),
    /// The file was changed by another program: take what stands there, as one step that can be undone.
    TakeTheirs,
    /// The file was changed by another program: save what is on the screen beside it, under another name.
    KeepMineAsCopy,
    /// The file was changed by another program: put both together, as one step that can be undone.
    MergeWithDisk {
        /// What both have changed and of which theirs is taken; of the rest mine is.
        take_theirs: Vec<Part>,
    },
    /// The file was changed by another program: save over it. What stands there is kept as an earlier copy.
    OverwriteDisk,
    /// The file was changed by another program: go on and decide when it comes to saving.
    LeaveDiskChange,
    /// Bring back the unsaved work that is offered.
    AcceptRecovery,
    /// Delete the unsaved work that is offered.
    DiscardRecovery,
    /// Write cards to files, beside the window.
    ExportCards(super::ExportOrder),
    /// Stop writing cards after the one in hand.
    StopExport,
    /// Show a file in the viewer of the system.
    ShowFile(PathBuf),
    /// Read a list or recipe that is to be brought in; nothing is written.
    ReadList(PathBuf),
    /// Ask the system for such a file.
    PickList,
    /// Take lines of the list into the book, as one step that can be undone.
    TakeList(super::ListTaking),
    /// The list has been dealt with, or is not wanted: what is read or looked for is given up.
    PutListAway,
}

/// What the screen wants done, in the order in which it is emitted.
#[derive(Clone, Debug, PartialEq)]
pub enum Action {
    /// A change of the book: one step with a label; `focus` is where undo goes back to.
    Edit {
        /// The edits.
        edits: Vec<Edit>,
        /// Where the person is.
        focus: String,
    },
    /// A command.
    Command(Command),
}

impl Action {
    /// A single edit.
    pub fn edit(edit: Edit, focus: impl Into<String>) -> Self {
        Self::Edit {
            edits: vec![edit],
            focus: focus.into(),
        }
    }
}

/// A sentence for the person.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Message {
    /// Something went well.
    Done(String),
    /// Something did not.
    Failed(String),
}

/// What the screen should show next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
}

/// One open book.
pub struct Workbench {
    pub(super) history: History,
    /// Speaks as the window does, about no book.
    pub(super) voice: Speaker<'static>,
    stamp: BookStamp,
    pub(super) home: Home,
    pub(super) saved: Arc<Book>,
    pub(super) text_has_comments: bool,
    pub(super) comments_agreed: bool,
    /// What stands between the book and the disk.
    pub(super) file: BookFile,
    derived: Derived,
    pub(super) searches: Searches,
    picker: Arc<dyn FilePicker>,
    pub(super) wake: Arc<dyn Fn() + Send + Sync>,
    asking: Option<Asking>,
    pub(super) cards: super::card_desk::CardDesk,
    pub(super) bringing_in: super::bringing_in::BringingIn,
    pending: Option<Intent>,
    pub(super) message: Option<Message>,
    pub(super) show: Option<Shown>,
    focus: Option<String>,
    quit: bool,
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
            cards: super::card_desk::CardDesk::default(),
            bringing_in: super::bringing_in::BringingIn::default(),
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
    pub fn take_focus(&mut self) -> Option<String> {
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

    /// Does what the screen wants.
    pub fn perform(&mut self, action: Action) {
        match action {
            Action::Edit { edits, focus } => self.edit(edits, focus),
            Action::Command(command) => self.command(command),
        }
    }

    /// Takes what has come meanwhile: an answer of the file dialog, the end of a save, a change of the file by another
    /// program. Called once a frame.
    pub fn poll(&mut self) {
        self.poll_opening(Duration::ZERO);
        self.poll_file();
        self.poll_left_work(Duration::ZERO);
        self.poll_recovery();
        self.poll_earlier();
        self.poll_picker();
        self.poll_list(Duration::ZERO);
        self.poll_taking(Duration::ZERO);
    }

    fn poll_picker(&mut self) {
        let Some(asking) = &self.asking else { return };
        let Polled::Answered(answer) = asking.poll() else {
            return;
        };
        let request = asking.request;
        self.asking = None;
        match (request, answer) {
            (PickRequest::Open, Some(path)) => self.intend(Intent::Open(path)),
            (PickRequest::Save, Some(path)) => self.save_as(path),
            (PickRequest::List, Some(path)) => self.read_list(path),
            (_, None) => {}
        }
    }

    /// Whether the file dialog of the system is open.
    pub fn is_asking(&self) -> bool {
        self.asking.is_some()
    }

    pub(super) fn edit(&mut self, edits: Vec<Edit>, focus: String) {
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

    fn command(&mut self, command: Command) {
        match command {
            Command::Undo | Command::Redo => {
                let before = self.book().clone();
                if command == Command::Undo {
                    let edits = self.history.next_undo().map(|step| step.edits.clone());
                    self.show_what_was_built_on(&edits.unwrap_or_default());
                }
                let focus = if command == Command::Undo {
                    self.history.undo()
                } else {
                    self.history.redo()
                };
                self.focus = focus;
                self.note_change(&before);
            }
            Command::Save => self.save(),
            Command::SaveAs(path) => self.save_as_asking(path),
            Command::ReplaceFile => self.replace_file(),
            Command::LeaveFile => self.file.replacing = None,
            Command::PickOpen => self.ask(PickRequest::Open),
            Command::PickSave => self.ask(PickRequest::Save),
            Command::Do(intent) => self.intend(intent),
            Command::StopOpening => self.stop_opening(),
            Command::SaveThenDo => {
                if !self.is_saving() {
                    self.save();
                }
                if !self.has_unsaved_changes()
                    && !self.is_saving()
                    && let Some(intent) = self.pending.take()
                {
                    self.carry_out(intent);
                }
            }
            Command::DiscardThenDo => {
                if let Some(intent) = self.pending.take() {
                    self.carry_out(intent);
                }
            }
            Command::StayHere => self.pending = None,
            Command::Withdraw(focus) => {
                let before = self.book().clone();
                if let Some(edits) = self.history.withdraw(&focus) {
                    self.show_what_was_built_on(&edits);
                    self.note_change(&before);
                }
            }
            Command::CloseStep => self.history.close_step(),
            Command::StopSearching => self.stop_searching(),
            Command::SearchAgain => self.search_again(),
            Command::DismissMessage => self.message = None,
            Command::Approve {
                recipe,
                version,
                by,
                reason,
                tasted_at,
            } => {
                self.approve(&recipe, version, by, reason, tasted_at);
            }
            Command::GoBackToApproval { recipe, number } => {
                self.go_back_to_approval(&recipe, number);
            }
            Command::ListEarlier => self.list_earlier(),
            Command::LookAtEarlier(path) => self.look_at_earlier(path),
            Command::RestoreEarlier(path) => self.restore_earlier(&path),
            Command::TakeTheirs => self.take_theirs(),
            Command::KeepMineAsCopy => self.keep_mine_as_copy(),
            Command::MergeWithDisk { take_theirs } => self.merge_with_disk(&take_theirs),
            Command::OverwriteDisk => self.overwrite_disk(),
            Command::LeaveDiskChange => self.leave_disk_change(),
            Command::AcceptRecovery => self.accept_recovery(),
            Command::DiscardRecovery => self.discard_recovery(),
            Command::ExportCards(order) => self.export_cards(order),
            Command::StopExport => self.stop_export(),
            Command::ShowFile(path) => self.show_file(&path),
            Command::ReadList(path) => self.read_list(path),
            Command::PickList => self.ask(PickRequest::List),
            Command::TakeList(taking) => self.take_list(taking),
            Command::PutListAway => self.put_list_away(),
        }
    }

    /// A version that is taken back can't be shown any more: what it was built on is shown instead.
    fn show_what_was_built_on(&mut self, taken_back: &[Edit]) {
        if let Some((recipe, version)) = taken_back.iter().find_map(|edit| match edit {
            Edit::AddVersion { recipe, version } => Some((recipe, version)),
            _ => None,
        }) {
            self.show = Some(Shown {
                recipe: recipe.clone(),
                version: version.builds_on.clone(),
            });
        }
    }

    fn approve(
        &mut self,
        id: &RecipeId,
        version: Option<VersionId>,
        by: String,
        reason: String,
        tasted_at: Option<f64>,
    ) {
        let Some(recipe) = self.book().recipe(id) else {
            return;
        };
        let resolved = resolve(recipe, version.as_ref()).0;
        let date = jiff::ZonedDateTime::now().date().to_string();
        let approval = Approval {
            version,
            date,
            by,
            reason,
            tasted_at,
            resolved,
        };
        self.edit(
            vec![Edit::Approve {
                recipe: id.clone(),
                approval,
            }],
            ["recipe", id.as_str()].join(" "),
        );
        self.history.close_step();
    }

    fn go_back_to_approval(&mut self, id: &RecipeId, number: usize) {
        let voice = self.voice;
        let name = |approval: &Approval| say!(voice, "version-as-approved", day: &approval.date);
        let Some(version) = self
            .book()
            .recipe(id)
            .and_then(|recipe| recipe.version_like_approval(number, name))
        else {
            return;
        };
        self.show = Some(Shown {
            recipe: id.clone(),
            version: Some(version.id.clone()),
        });
        self.edit(
            vec![Edit::AddVersion {
                recipe: id.clone(),
                version,
            }],
            ["recipe", id.as_str()].join(" "),
        );
        self.history.close_step();
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

    pub(super) fn intend(&mut self, intent: Intent) {
        if self.has_unsaved_changes() || self.is_saving() {
            self.pending = Some(intent);
        } else {
            self.carry_out(intent);
        }
    }

    fn carry_out(&mut self, intent: Intent) {
        match intent {
            Intent::Open(path) => self.open(path),
            Intent::OpenSample(sample) => self.open_sample(sample),
            Intent::New => {
                let settings = Settings {
                    shop: self.voice.word("new-shop").to_owned(),
                    ..Settings::default()
                };
                let book = Book {
                    settings,
                    ..Book::default()
                };
                self.replace(book, Home::Nowhere(Unfiled::New), false);
            }
            Intent::Quit => {
                // Saved or given up: there is nothing to bring back.
                self.drop_unsaved_work();
                self.quit = true;
            }
        }
    }

    fn open_sample(&mut self, sample: Sample) {
        match book_file::parse(sample.text()) {
            Ok((book, _)) => self.replace(book, Home::Nowhere(Unfiled::Sample(sample)), false),
            Err(problems) => {
                let said = self.voice.load_problems(&problems);
                self.message = Some(Message::Failed(said));
            }
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

/// A new draft that builds on a version, and its id. The recipe as written is the first version, so names begin with
/// "version 2".
pub fn draft_on(
    recipe: &Recipe,
    on: Option<&VersionId>,
    speaker: Speaker<'_>,
) -> (VersionId, Version) {
    let is_taken = |name: &str| recipe.versions.iter().any(|version| version.name == name);
    let name = |number: usize| {
        let number = number.to_string();
        say!(speaker, "version-name", number: number)
    };
    let names = (2_usize..).map(name);
    let name = names
        .into_iter()
        .find(|name| !is_taken(name))
        .unwrap_or_default();
    let id = VersionId::from_name(&name, |taken| recipe.version(taken).is_some());
    let version = Version::draft(id.clone(), name, on.cloned());
    (id, version)
}

/// The change of one line or field as an action on a recipe or version.
impl Shown {
    /// An edit of this version.
    pub fn change(&self, change: Change) -> Edit {
        Edit::Change {
            recipe: self.recipe.clone(),
            version: self.version.clone(),
            change,
        }
    }
}
