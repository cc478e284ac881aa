//! What is looked at and chosen in the sheets of this folder.

use std::collections::BTreeSet;

use crate::book::{ItemId, Part};
use crate::ui::area::Navigation;

/// What is looked at and chosen, neither undone nor saved.
#[derive(Default)]
pub(in crate::ui) struct SafekeepingState {
    /// How far the question about unsaved work that was found is.
    pub(super) recovery: RecoveryAsked,
    /// The sheet about the change on the disk is open.
    pub(super) disk_change_open: bool,
    /// What both sides have changed and of which theirs is taken.
    pub(super) take_theirs: BTreeSet<Part>,
    /// The sheet of the earlier copies is open.
    pub(super) earlier_open: bool,
    /// Items whose details are open, by the list that they stand in.
    pub(super) unfolded: BTreeSet<(&'static str, ItemId)>,
}

/// The question about unsaved work that was found.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub(super) enum RecoveryAsked {
    /// What becomes of it.
    #[default]
    Offered,
    /// Whether it is deleted for good: the second step before it is done.
    Delete,
    /// It is decided about later.
    Later,
}

impl SafekeepingState {
    /// Opens the sheet that somebody wants to be led to.
    pub(in crate::ui) fn go(&mut self, to: &Navigation) {
        match to {
            Navigation::EarlierCopies => self.earlier_open = true,
            Navigation::FoundWork => self.recovery = RecoveryAsked::Offered,
            Navigation::DiskChange => self.disk_change_open = true,
            _ => {}
        }
    }

    /// Another book is open.
    pub(in crate::ui) fn forget_book(&mut self) {
        *self = Self {
            recovery: self.recovery,
            ..Self::default()
        };
    }
}
