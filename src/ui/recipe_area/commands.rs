//! The commands of the recipe that open something or put something in.

use super::finder::FinderState;
use super::line_command::line_command;
use crate::book::{Change, Entry, Instruction, LineId};
use crate::edit::LineField;
use crate::ui::Screen;
use crate::ui::area::Area;
use crate::ui::commands::UiCommand;
use crate::ui::view_state::ViewState;
use crate::workbench::Action;

/// Carries out a command about the line in hand; `false` when it is about something else.
pub(super) fn carry_out(
    command: UiCommand,
    screen: &Screen<'_>,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    if command == UiCommand::AddLine {
        view.area = Area::Recipe;
        finder.open_to_add(view.line_in_hand.clone());
        return true;
    }
    if command == UiCommand::AddInstruction {
        view.area = Area::Recipe;
        add_instruction(screen, view, actions);
        return true;
    }
    line_command(command, screen, view, actions)
}

/// An empty instruction behind the line in hand; it is gone again when nothing is typed.
pub(super) fn add_instruction(
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let entries = &screen.balance.resolved.entries;
    let taken = |id: &LineId| {
        screen.recipe.has_entry_id(id) || entries.iter().any(|entry| entry.id() == id)
    };
    let id = LineId::from_name("step", taken);
    let after = view
        .line_in_hand
        .clone()
        .filter(|id| entries.iter().any(|entry| entry.id() == id))
        .or_else(|| entries.last().map(|entry| entry.id().clone()));
    let instruction = Instruction {
        id: id.clone(),
        text: String::new(),
    };
    let change = Change::Add(after, Entry::Instruction(instruction));
    actions.push(Action::edit(screen.shown.change(change), screen.row(&id)));
    view.focus_wanted = Some(screen.field_of(&id, LineField::Instruction));
}
