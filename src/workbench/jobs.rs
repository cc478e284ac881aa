//! What is done in the background, apart from the disk of the open book.

use std::path::PathBuf;
use std::sync::Arc;

use super::card_previews::CardDesk;
use super::job::{Job, Wake};
use super::list_in_hand::BringingIn;
use super::picker::{FilePicker, NoPicker, PickRequest};
use super::searches::Searches;

/// What is done in the background, apart from the disk of the open book.
pub(super) struct Jobs {
    /// Wakes the screen when something has come that was waited for.
    pub(super) wake: Wake,
    pub(super) picker: Arc<dyn FilePicker>,
    /// A question to the picker that is still open.
    pub(super) asking: Option<Job<PickRequest, Option<PathBuf>>>,
    pub(super) searches: Searches,
    pub(super) cards: CardDesk,
    pub(super) bringing_in: BringingIn,
}

impl Default for Jobs {
    fn default() -> Self {
        Self {
            wake: Arc::new(|| ()),
            picker: Arc::new(NoPicker),
            asking: None,
            searches: Searches::default(),
            cards: CardDesk::default(),
            bringing_in: BringingIn::default(),
        }
    }
}

impl Jobs {
    /// Another book is open from now on.
    pub(super) fn forget_book(&mut self) {
        // The name was asked for another book.
        self.asking
            .take_if(|asking| asking.about == PickRequest::Save);
    }
}
