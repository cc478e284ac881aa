//! The frame round every area: the strip on top, the drinks on the left, the level on the right, the cautions below, and what
//! is told at the foot.

mod book_commands;
mod cups_sheet;
mod drink_rows;
mod foot;
mod level_column;
mod shelf_list;
mod state;
mod top_strip;

pub(super) use self::book_commands::carry_out;
pub(super) use self::state::ShellState;

use egui::{CentralPanel, Frame, Margin, Panel, Rect, ScrollArea, Ui, UiBuilder};

use self::state::{CupsState, SLIM};
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::book_in_hand::BookInHand;
use super::commands::UiCommand;
use super::dialog::Dialog;
use super::starter_kit_offer::starter_kit_ui;
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::cautions::Cautions;
use crate::workbench::Action;

/// Below this width of the window, in points, the list of drinks is narrow.
const NARROW: f32 = 1240.0;
/// From this width on the cup stands between the recipe and the level.
const WIDE: f32 = 1600.0;
/// The widest sheet of a recipe, in points: in a wider one the eye loses the row.
const WIDEST_SHEET: f32 = 800.0;

/// The whole window, with the area in front in its place.
pub(super) fn shell_ui(
    ui: &mut Ui,
    desk: Desk<'_>,
    area: &mut dyn AreaOfWork,
    state: &mut ShellState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Desk { in_hand, drink } = desk;
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width();
    let place = area.place();
    if place == Place::Alone {
        let sheet = Frame::new()
            .fill(palette.sheet)
            .inner_margin(Margin::same(8));
        CentralPanel::default()
            .frame(sheet)
            .show(ui, |ui| area.ui(ui, desk, view, actions));
        return;
    }
    let paper = |margin| Frame::new().fill(palette.ground).inner_margin(margin);
    Panel::top("strip")
        .exact_size(46.0)
        .frame(paper(Margin::symmetric(16, 8)))
        .resizable(false)
        .show(ui, |ui| top_strip::top_strip_ui(ui, in_hand, view, actions));
    let line = foot::foot_ui(ui, in_hand);
    if place == Place::Window {
        let told = (line, line.top());
        foot::told_ui(ui, in_hand, told, &mut state.told_height, view, actions);
        area.ui(ui, desk, view, actions);
        return;
    }
    if let Some(screen) = drink {
        let cautions = Cautions::of_drink(ui, screen, state.cautions_open);
        Panel::bottom("cautions")
            .exact_size(cautions.height())
            .resizable(false)
            .frame(paper(Margin::ZERO))
            .show_separator_line(false)
            .show(ui, |ui| cautions.show(ui, &mut state.cautions_open));
    }
    let told = (line, ui.available_rect_before_wrap().bottom());
    foot::told_ui(ui, in_hand, told, &mut state.told_height, view, actions);
    if view.list_open.unwrap_or(width >= SLIM) {
        Panel::left("drinks")
            .exact_size(if width < NARROW { 180.0 } else { 240.0 })
            .resizable(false)
            .frame(paper(Margin {
                left: 12,
                right: 8,
                top: 12,
                bottom: 8,
            }))
            .show(ui, |ui| {
                shelf_list::shelf_list_ui(ui, in_hand, state, view, actions);
            });
    }
    // The columns on the right get their places first and are drawn last: the keyboard goes through the sheet before them.
    let mut level_room = None;
    let mut cup_room = None;
    if drink.is_some() && place == Place::BesideTheLevel && width >= SLIM {
        let level = Panel::right("level")
            .exact_size(if width < NARROW { 360.0 } else { 376.0 })
            .resizable(false)
            .frame(paper(Margin {
                left: 14,
                right: 2,
                top: 12,
                bottom: 0,
            }))
            .show(ui, take_room);
        level_room = Some(level.inner);
        if width >= WIDE {
            let beside = ui.available_width() - WIDEST_SHEET;
            let cup = Panel::right("cup")
                .exact_size(beside.clamp(240.0, 480.0))
                .resizable(false)
                .show_separator_line(false)
                .frame(
                    Frame::new()
                        .fill(palette.sheet)
                        .inner_margin(Margin::symmetric(12, 20)),
                )
                .show(ui, take_room);
            cup_room = Some(cup.inner);
        }
    }
    sheet_ui(ui, desk, area, (&mut state.cups, view), actions, width);
    if let (Some(screen), Some(room)) = (drink, cup_room) {
        let mut column = ui.new_child(UiBuilder::new().id_salt("cup column").max_rect(room));
        level_column::cup_column_ui(&mut column, screen, view);
    }
    if let (Some(screen), Some(room)) = (drink, level_room) {
        let mut column = ui.new_child(UiBuilder::new().id_salt("level column").max_rect(room));
        level_column::level_column_ui(
            &mut column,
            screen,
            width < WIDE,
            (&mut state.cups, view),
            actions,
        );
    }
}

/// The sheet in the middle.
fn sheet_ui(
    ui: &mut Ui,
    desk: Desk<'_>,
    area: &mut dyn AreaOfWork,
    (cups, view): (&mut CupsState, &mut ViewState),
    actions: &mut Vec<Action>,
    width: f32,
) {
    let left = if width < NARROW { 12 } else { 20 };
    let sheet = Frame::new()
        .fill(theme::palette(ui.visuals()).sheet)
        .inner_margin(Margin {
            left,
            right: 4,
            top: 12,
            bottom: 0,
        });
    let place = area.place();
    let is_empty = desk.drink.is_none() && area.needs_drink();
    CentralPanel::default().frame(sheet).show(ui, |ui| {
        if place == Place::SheetOfItsOwn && !is_empty {
            area.ui(ui, desk, view, actions);
            return;
        }
        ScrollArea::vertical()
            .id_salt(("centre", view.area as u8, area.page()))
            .auto_shrink(false)
            .show(ui, |ui| {
                let room = ui.available_width();
                ui.set_width(if place == Place::BesideTheLevel {
                    room.min(WIDEST_SHEET)
                } else {
                    room
                });
                if is_empty {
                    empty_book_ui(ui, desk.in_hand, view, actions);
                    return;
                }
                area.ui(ui, desk, view, actions);
                if let (Place::BesideTheLevel, Some(screen)) = (place, desk.drink)
                    && width < SLIM
                {
                    ui.add_space(grid::APART);
                    level_column::level_below_ui(ui, screen, (cups, view), actions);
                }
            });
    });
}

/// Takes the whole of a panel, to be drawn in later.
fn take_room(ui: &mut Ui) -> Rect {
    ui.set_min_size(ui.available_size());
    ui.max_rect()
}

/// A book without recipes says what comes first.
fn empty_book_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = in_hand.speaker;
    ui.add_space(grid::FAR);
    ui.label(
        egui::RichText::new(speaker.word("shell-no-recipes"))
            .font(TypeStyle::Title.font_id())
            .color(palette.text_strong),
    );
    ui.label(speaker.word("shell-no-recipes-what"));
    ui.horizontal(|ui| {
        if ui.button(UiCommand::NewRecipe.label(speaker)).clicked() {
            shelf_list::add_recipe(in_hand.book, view, actions);
        }
        if ui.button(UiCommand::OpenBook.label(speaker)).clicked() {
            view.dialog = Some(Dialog::open_book(in_hand.home));
        }
    });
    ui.add_space(grid::NEAR);
    starter_kit_ui(ui, in_hand.speaker, in_hand.answers, actions);
}
