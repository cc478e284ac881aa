//! The commands that need nothing but the line in hand.

use super::model;
use crate::book::{Change, LineId, Resolved};
use crate::ui::Screen;
use crate::ui::area::Area;
use crate::ui::commands::UiCommand;
use crate::ui::view_state::ViewState;
use crate::workbench::{Action, Shown};

/// Carries out a command that needs nothing but the line in hand; `false` when there is none, or it needs more.
pub(super) fn line_command(
    command: UiCommand,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let (shown, resolved) = (screen.shown, &screen.balance.resolved);
    let Some(id) = view.line_in_hand.clone() else {
        return false;
    };
    let change = match command {
        UiCommand::MoveLineUp => model::move_up(&resolved.entries, &id),
        UiCommand::MoveLineDown => model::move_down(&resolved.entries, &id),
        UiCommand::RemoveLine => Some(Change::Remove(id.clone())),
        UiCommand::SwapLine => {
            ask_for_swap(shown, resolved, &id, view);
            None
        }
        _ => return false,
    };
    if let Some(change) = change {
        actions.push(Action::edit(shown.change(change), screen.row(&id)));
    }
    if matches!(command, UiCommand::MoveLineUp | UiCommand::MoveLineDown) {
        view.focus_wanted = Some(screen.row(&id));
    }
    true
}

/// Opens the swap with the ingredient of a line; the ingredient that comes is chosen there.
fn ask_for_swap(shown: &Shown, resolved: &Resolved, id: &LineId, view: &mut ViewState) {
    let Some(line) = resolved.line(id) else {
        return;
    };
    let (recipe, version) = (shown.recipe.clone(), shown.version.clone());
    view.swap.goes(recipe, version, line.ingredient.clone());
    view.area = Area::Swap;
}
