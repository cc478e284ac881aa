//! The recipe: its heading, the lens, its lines and instructions, and what belongs to the line in hand.

mod amount_cell;
mod detail;
mod finder;
mod found;
mod heading;
mod history;
mod lens_row;
mod lines;
mod model;
mod row;

use egui::Ui;

use super::Screen;
use super::commands::UiCommand;
use super::theme::grid;
use super::view_state::{Area, ViewState};
use crate::book::{Change, Recipe, Resolved};
use crate::swap::Question;
use crate::workbench::{Action, Shown};

pub(super) use finder::FinderState;
pub(super) use heading::name_focus;
pub(super) use history::note_focus;
pub(super) use lines::{ANY_ROW, recipe_of_focus, row_focus};

/// The recipe in hand.
pub(super) fn recipe_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    heading::heading_ui(ui, screen, view, actions);
    ui.add_space(grid::EASY);
    lens_row::lens_row_ui(ui, view);
    ui.add_space(grid::TIGHT);
    lines::lines_ui(ui, screen, view, actions);
    ui.add_space(grid::NEAR);
    history::history_ui(ui, screen, view, actions);
    ui.add_space(grid::APART);
}

/// Carries out a command about the line in hand.
pub(super) fn carry_out(
    command: UiCommand,
    recipe: &Recipe,
    shown: &Shown,
    resolved: &Resolved,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if command == UiCommand::AddLine {
        view.area = Area::Recipe;
        view.finder.open_to_add(view.line_in_hand.clone());
        return;
    }
    if command == UiCommand::AddInstruction {
        view.area = Area::Recipe;
        lines::add_instruction(recipe, shown, resolved, view, actions);
        return;
    }
    let Some(id) = view.line_in_hand.clone() else {
        return;
    };
    let change = match command {
        UiCommand::MoveLineUp => model::move_up(&resolved.entries, &id),
        UiCommand::MoveLineDown => model::move_down(&resolved.entries, &id),
        UiCommand::RemoveLine => Some(Change::Remove(id.clone())),
        UiCommand::SwapLine => {
            ask_for_swap(shown, resolved, &id, view);
            None
        }
        _ => None,
    };
    if let Some(change) = change {
        actions.push(Action::edit(
            shown.change(change),
            lines::row_focus(&shown.recipe, &id),
        ));
    }
    if matches!(command, UiCommand::MoveLineUp | UiCommand::MoveLineDown) {
        view.focus_wanted = Some(lines::row_focus(&shown.recipe, &id));
    }
}

/// Opens the swap with the ingredient of a line; the ingredient that comes is chosen there.
fn ask_for_swap(
    shown: &Shown,
    resolved: &Resolved,
    id: &crate::book::LineId,
    view: &mut ViewState,
) {
    let Some(line) = resolved.line(id) else {
        return;
    };
    let replace = line.ingredient.clone();
    view.swap.question = Some(Question {
        recipe: shown.recipe.clone(),
        version: shown.version.clone(),
        with: replace.clone(),
        replace,
        adjust: None,
    });
    view.area = Area::Swap;
}
