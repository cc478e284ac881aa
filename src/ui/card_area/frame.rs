//! What the workbench knows of cards in a frame.

use super::model::CardState;
use super::review::ReviewLooks;
use crate::workbench::{ExportState, ListInHand, PreviewOrder, PreviewShown, Workbench};

/// What the workbench knows of cards in this frame.
#[derive(Clone, Debug, Default)]
pub struct CardFrame {
    /// The preview.
    pub preview: PreviewShown,
    /// How far the export is.
    pub export: Option<ExportState>,
    /// The list that is being brought in.
    pub list: Option<ListInHand>,
    /// The file that is being read.
    pub being_read: Option<std::path::PathBuf>,
    /// What the list in hand would do.
    pub review: ReviewLooks,
    /// Today.
    pub today: String,
}

impl CardFrame {
    /// Asks the workbench for what the area shows.
    pub(super) fn take(
        workbench: &mut Workbench,
        order: Option<&PreviewOrder>,
        state: &CardState,
    ) -> Self {
        Self {
            preview: order
                .map(|order| workbench.card_preview(order))
                .unwrap_or_default(),
            export: workbench.export_state(),
            list: workbench.list_in_hand().cloned(),
            being_read: workbench.list_being_read().map(ToOwned::to_owned),
            review: ReviewLooks::take(workbench, &state.review),
            today: crate::workbench::today(),
        }
    }
}
