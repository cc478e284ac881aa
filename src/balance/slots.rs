//! The flavours and high-potency sweeteners that have a place in the mixes of one question.

use super::mix::{FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS};
use crate::book::HighPotencySweetener;

/// The flavours and high-potency sweeteners that have a slot in one question, in the order of their slots.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Slots {
    /// Names of flavours.
    pub flavours: Vec<String>,
    /// High-potency sweeteners.
    pub sweeteners: Vec<HighPotencySweetener>,
}

impl Slots {
    /// The slot of a flavour, given one if there is room.
    pub(super) fn flavour(&mut self, name: &str) -> Option<usize> {
        slot_in(
            &mut self.flavours,
            FLAVOUR_SLOTS,
            |known| known == name,
            || name.to_owned(),
        )
    }

    /// The slot of a sweetener, given one if there is room.
    pub(super) fn sweetener(&mut self, sweetener: HighPotencySweetener) -> Option<usize> {
        slot_in(
            &mut self.sweeteners,
            HIGH_POTENCY_SLOTS,
            |known| *known == sweetener,
            || sweetener,
        )
    }
}

fn slot_in<T>(
    taken: &mut Vec<T>,
    limit: usize,
    same: impl Fn(&T) -> bool,
    new: impl Fn() -> T,
) -> Option<usize> {
    taken.iter().position(same).or_else(|| {
        (taken.len() < limit).then(|| {
            taken.push(new());
            taken.len() - 1
        })
    })
}
