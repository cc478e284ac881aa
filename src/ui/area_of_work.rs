//! What an area of work is to the window around it.

use egui::{Context, Ui};

use super::Screen;
use super::area::Navigation;
use super::book_in_hand::BookInHand;
use super::commands::UiCommand;
use super::view_state::ViewState;
use crate::edit::Focus;
use crate::workbench::{Action, Shown, Workbench};

/// How an area stands in the window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Place {
    /// On the sheet, which the window scrolls.
    #[default]
    Sheet,
    /// The same, no wider than a recipe, and beside it the level and the cup.
    BesideTheLevel,
    /// On the sheet, and it scrolls its parts itself.
    SheetOfItsOwn,
    /// The whole window, without anything of the frame round it.
    Alone,
    /// The whole window below the strip: no drink, no level and no cautions of a drink beside it.
    Window,
}

/// What an area may read in a frame.
#[derive(Clone, Copy)]
pub(super) struct Desk<'frame> {
    /// The book.
    pub in_hand: &'frame BookInHand<'frame>,
    /// The drink in hand; an empty book has none.
    pub drink: Option<&'frame Screen<'frame>>,
}

/// An area of work with what it remembers between frames.
pub(super) trait AreaOfWork {
    /// How it stands in the window.
    fn place(&self) -> Place {
        Place::Sheet
    }

    /// Which of its pages it shows: each keeps a place of its own where it was scrolled to.
    fn page(&self) -> u8 {
        0
    }

    /// Whether there is nothing to be done in it without a drink.
    fn needs_drink(&self) -> bool {
        true
    }

    /// Asks the workbench for what will be shown, in each frame in which the area is in front.
    fn look(&mut self, _workbench: &mut Workbench, _shown: Option<&Shown>, _view: &mut ViewState) {}

    /// Draws it.
    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>);

    /// Another area is in front.
    fn leave(&mut self, _ctx: &Context, _view: &mut ViewState) {}

    /// Somebody wants to be led somewhere, perhaps into this area.
    fn go(&mut self, _to: &Navigation) {}

    /// Opens what a place of this area is in: undo or redo goes there.
    fn open(&mut self, _focus: &Focus) {}

    /// Carries out a command that is about what this area holds; `false` when it is not.
    fn carry_out(
        &mut self,
        _command: UiCommand,
        _drink: &Screen<'_>,
        _view: &mut ViewState,
        _actions: &mut Vec<Action>,
    ) -> bool {
        false
    }

    /// One step back inside the area; `false` when there is none.
    fn step_back(&mut self, _view: &mut ViewState) -> bool {
        false
    }

    /// Another book is open.
    fn forget_book(&mut self);
}
