//! The recipe: its heading, the lens, its lines and instructions, and what belongs to the line in hand.

mod amount_cell;
mod commands;
mod detail;
mod finder;
mod found;
mod heading;
mod history;
mod lens_row;
mod line_command;
mod lines;
mod model;
mod row;
mod state;
mod tastings;

pub(super) use self::state::RecipeState;

use egui::Ui;

use super::Screen;
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::commands::UiCommand;
use super::theme::grid;
use super::view_state::ViewState;
use crate::book::ItemId;
use crate::edit::Focus;
use crate::workbench::{Action, Shown, Workbench};

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

    fn carry_out(
        &mut self,
        command: UiCommand,
        drink: &Screen<'_>,
        view: &mut ViewState,
        actions: &mut Vec<Action>,
    ) -> bool {
        self.follow(Some(&drink.shown.recipe));
        commands::carry_out(command, drink, &mut self.finder, view, actions)
    }

    fn open(&mut self, focus: &Focus) {
        if let Focus::Item(ItemId::Tasting(id)) | Focus::Field(ItemId::Tasting(id), _) = focus {
            self.tasting = Some(id.clone());
        }
    }

    fn step_back(&mut self, view: &mut ViewState) -> bool {
        view.line_in_hand.take().is_some() || self.tasting.take().is_some()
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
    tastings::tastings_ui(ui, screen, &mut state.tasting, view, actions);
    ui.add_space(grid::APART);
}
