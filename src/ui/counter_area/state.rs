//! What the counter remembers between frames.

use super::item::{CounterItem, Kind};
use crate::book::{IngredientId, MeasureId};
use crate::ui::sorted_list::Sort;
use crate::workbench::{Look, MeasureFirst};

/// What the counter remembers between frames.
#[derive(Default)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a wish that the next frame carries out"
)]
pub struct CounterState {
    /// What is looked at.
    pub kind: Kind,
    /// The item that is open.
    pub open: Option<CounterItem>,
    /// What is typed to find an item.
    pub find: String,
    pub(super) sort: Option<Sort>,
    /// The row that the keyboard is on.
    pub(super) row: usize,
    pub(super) focus_row: bool,
    /// Whether the keyboard goes into the field that finds.
    pub(super) focus_find: bool,
    pub(super) enter_row: bool,
    /// Whether the keyboard goes into the item that has just been opened.
    pub(super) enter_field: bool,
    pub(super) scroll_to_row: bool,
    pub(super) find_row: Option<CounterItem>,
    /// An item that opens as soon as the book has it.
    pub(super) wanted: Option<CounterItem>,
    pub(super) scrolled: f32,
    /// What the readings are of that are typed next.
    pub(super) next_readings: NextReadings,
    /// What to measure first, as far as it has been looked for.
    pub(super) measure_first: Look<MeasureFirst>,
    /// The item that was to be deleted although it is used.
    pub(super) refused: Option<CounterItem>,
}

/// What the readings of a measure are of that are typed next, where somebody has said so.
#[derive(Default)]
pub(super) struct NextReadings {
    /// The measure.
    pub(super) of: Option<MeasureId>,
    /// An ingredient, or water.
    pub(super) ingredient: Option<Option<IngredientId>>,
    /// How many uses are read together.
    pub(super) uses: Option<u32>,
}

impl CounterState {
    /// Opens an item.
    pub fn show(&mut self, item: CounterItem) {
        if self.kind != item.kind() {
            self.look_at(item.kind());
        }
        self.find_row = Some(item.clone());
        self.open = Some(item);
        self.refused = None;
    }

    /// Opens an item and puts the keyboard on its row.
    pub(super) fn show_in_list(&mut self, item: CounterItem) {
        self.show(item);
        self.find.clear();
        self.focus_row = true;
    }

    /// Puts the keyboard into the field that finds: whoever came by key goes on by key.
    pub(super) fn take_keyboard(&mut self) {
        self.focus_find = self.kind != Kind::Shop;
    }

    /// Looks at another kind.
    pub fn look_at(&mut self, kind: Kind) {
        if self.kind != kind {
            *self = Self {
                kind,
                ..Self::default()
            };
        }
    }

    /// One step back: closes the item, or lets go what is typed to find one; `false` when there is nothing to go back from.
    pub fn step_back(&mut self) -> bool {
        if self.open.take().is_some() {
            self.refused = None;
            return true;
        }
        !std::mem::take(&mut self.find).is_empty()
    }
}
