//! What the screen wants done, and what it is told.

use std::path::PathBuf;

use crate::book::{Change, Part, RecipeId, VersionId};
use crate::edit::{Edit, Focus};
use crate::say::Speaker;

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
    pub(super) fn name(&self, voice: Speaker<'_>) -> String {
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
    /// A book in which a label has changed since drinks were approved with it.
    ChangedLabel,
}

impl Sample {
    /// All of them.
    pub const ALL: [Self; 4] = [
        Self::Harrowmere,
        Self::FirstSteps,
        Self::UnreadLabels,
        Self::ChangedLabel,
    ];

    /// Its name.
    pub fn name(self, voice: Speaker<'_>) -> &'static str {
        voice.word(match self {
            Self::Harrowmere => "sample-harrowmere",
            Self::FirstSteps => "sample-first-steps",
            Self::UnreadLabels => "sample-unread-labels",
            Self::ChangedLabel => "sample-changed-label",
        })
    }

    pub(super) fn text(self) -> &'static str {
        match self {
            Self::Harrowmere => include_str!("../../sample-books/harrowmere.ron"),
            Self::FirstSteps => include_str!("../../sample-books/first-steps.ron"),
            Self::UnreadLabels => include_str!("../../sample-books/unread-labels.ron"),
            Self::ChangedLabel => include_str!("../../sample-books/changed-label.ron"),
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
    /// Ask the system for a folder for files, beginning with this one.
    PickFolder(PathBuf),
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
    Withdraw(Focus),
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
        focus: Focus,
    },
    /// A command.
    Command(Command),
}

impl Action {
    /// A single edit.
    pub fn edit(edit: Edit, focus: Focus) -> Self {
        Self::Edit {
            edits: vec![edit],
            focus,
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
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Shown {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
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
