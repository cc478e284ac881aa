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
use super::area::Area;
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::commands::UiCommand;
use super::safekeeping::ComparedApprovals;
use super::theme::grid;
use super::view_state::ViewState;
use crate::book::{Book, Change, LineId, RecipeId, Resolved};
use crate::swap::Question;
use crate::workbench::{Action, Shown, Workbench};

pub(super) use heading::name_focus;
pub(super) use history::{note_focus, words_focus};
pub(super) use lines::{ANY_ROW, row_focus};

use finder::FinderState;

/// What the recipe remembers between frames.
#[derive(Default)]
pub(super) struct RecipeState {
    /// The list in which an ingredient is found.
    finder: FinderState,
    /// The recipe that the list belongs to.
    finder_of: Option<RecipeId>,
    /// The line that is being dragged.
    dragged: Option<LineId>,
    /// The two approvals that are compared.
    approvals: ComparedApprovals,
}

impl RecipeState {
    /// Closes the list of another recipe, before anything is opened for this one.
    fn follow(&mut self, recipe: Option<&RecipeId>) {
        if self.finder_of.as_ref() != recipe {
            self.finder_of = recipe.cloned();
            self.finder.close();
        }
    }
}

impl AreaOfWork for RecipeState {
    fn place(&self) -> Place {
        Place::BesideTheLevel
    }

    fn look(&mut self, _: &mut Workbench, shown: Option<&Shown>, _: &mut ViewState) {
        self.follow(shown.map(|shown| &shown.recipe));
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        if let Some(screen) = desk.drink {
            recipe_area_ui(ui, screen, self, view, actions);
        }
    }

    fn go_to_focus(&mut self, focus: &str, book: &Book, view: &mut ViewState) -> bool {
        let recipe = lines::recipe_of_focus(focus);
        let known = recipe.filter(|recipe| book.recipe(recipe).is_some());
        let is_here = known.is_some();
        if let Some(recipe) = known {
            view.show_recipe(book, recipe);
        }
        is_here
    }

    fn carry_out(
        &mut self,
        command: UiCommand,
        drink: &Screen<'_>,
        view: &mut ViewState,
        actions: &mut Vec<Action>,
    ) -> bool {
        self.follow(Some(&drink.shown.recipe));
        carry_out(command, drink, &mut self.finder, view, actions)
    }

    fn step_back(&mut self, view: &mut ViewState) -> bool {
        view.line_in_hand.take().is_some()
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

fn recipe_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut RecipeState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    heading::heading_ui(ui, screen, view, actions);
    ui.add_space(grid::EASY);
    lens_row::lens_row_ui(ui, view);
    ui.add_space(grid::TIGHT);
    lines::lines_ui(ui, screen, state, view, actions);
    ui.add_space(grid::NEAR);
    history::history_ui(ui, screen, &mut state.approvals, view, actions);
    ui.add_space(grid::APART);
}

/// Carries out a command about the line in hand; `false` when it is about something else.
fn carry_out(
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
        let (recipe, resolved) = (screen.recipe, &screen.balance.resolved);
        lines::add_instruction(recipe, screen.shown, resolved, view, actions);
        return true;
    }
    line_command(command, screen, view, actions)
}

/// Carries out a command that needs nothing but the line in hand; `false` when there is none, or it needs more.
fn line_command(
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
        actions.push(Action::edit(
            shown.change(change),
            lines::row_focus(&shown.recipe, &id),
        ));
    }
    if matches!(command, UiCommand::MoveLineUp | UiCommand::MoveLineDown) {
        view.focus_wanted = Some(lines::row_focus(&shown.recipe, &id));
    }
    true
}

/// Opens the swap with the ingredient of a line; the ingredient that comes is chosen there.
fn ask_for_swap(shown: &Shown, resolved: &Resolved, id: &LineId, view: &mut ViewState) {
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
