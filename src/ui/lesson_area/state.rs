//! What the lesson remembers, and what is taught.

use super::model::Guesses;
use super::wall::View;
use crate::say::Speaker;
use crate::swap::{Answer, WalkStep};
use crate::ui::Screen;
use crate::ui::swap_area::SwapState;
use crate::workbench::{Look, SwapFound};

/// What this area remembers between frames.
#[derive(Default)]
pub(in crate::ui) struct LessonState {
    /// The step that is in hand; the standard is 0, and the first to be expected 1.
    pub(super) step: usize,
    /// Whether the step in hand has been revealed.
    pub(super) is_revealed: bool,
    pub(super) guesses: Guesses,
    /// Whether it is shown to a room.
    pub(super) is_on_wall: bool,
    /// The swap that is taught, as it is chosen here.
    pub(super) swap: SwapState,
    pub(super) look: Look<Option<SwapFound>>,
}

impl LessonState {
    pub(super) fn begin_again(&mut self) {
        self.step = 1;
        self.is_revealed = false;
        self.guesses.begin_again();
    }

    pub(super) fn view(&self) -> View {
        if self.is_on_wall {
            View::Wall
        } else {
            View::Window
        }
    }
}

/// What is taught: a swap with the steps to its first suggestion.
pub(super) struct Lesson<'frame> {
    pub(super) screen: &'frame Screen<'frame>,
    pub(super) answer: &'frame Answer,
    pub(super) steps: &'frame [WalkStep],
}

impl<'frame> Lesson<'frame> {
    pub(super) fn speaker(&self) -> Speaker<'frame> {
        self.screen.speaker
    }

    pub(super) fn last(&self) -> usize {
        self.steps.len() - 1
    }

    pub(super) fn step(&self, at: usize) -> &'frame WalkStep {
        &self.steps[at]
    }
}
