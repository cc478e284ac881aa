//! Two to four drinks side by side: vegan and dairy, brand and brand, hot and iced, sizes.

mod choose;
mod menu;
mod menu_rows;
mod menu_state;
mod model;
mod state;
mod table;

pub(super) use self::state::CompareState;

use egui::{Label, RichText, ScrollArea, Ui};

use super::Screen;
use super::area::Area;
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::icons::{Icon, icon_button};
use super::spreadsheet;
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::level_ui;
use super::widgets::name::{name_button_ui, name_ui};
use super::words::{paragraph_ui, quiet_ui};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::workbench::{Action, Shown, Workbench};

use model::Drink;
use state::{Columns, CompareLooks, CompareView};

/// The narrowest level, in points.
const LEVEL: f32 = 75.0 * grid::STEP;
/// The widest level, in points.
const MOST_LEVEL: f32 = 130.0 * grid::STEP;

impl AreaOfWork for CompareState {
    fn place(&self) -> Place {
        Place::SheetOfItsOwn
    }

    fn look(&mut self, workbench: &mut Workbench, _: Option<&Shown>, _: &mut ViewState) {
        if self.look_at == CompareView::WholeMenu {
            self.menu.look = workbench.whole_menu();
        }
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        let Some(screen) = desk.drink else { return };
        view_ui(ui, screen, self);
        ui.add_space(grid::TIGHT);
        match self.look_at {
            CompareView::SideBySide => {
                let looks = screen.answers.to(&Columns::of(screen, &self.beside));
                compare_area_ui(ui, screen, &looks, self, view);
            }
            CompareView::WholeMenu => menu::menu_ui(ui, screen, self, view, actions),
        }
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// The two things to look at.
fn view_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut CompareState) {
    let looked_at = state.look_at;
    ui.horizontal_wrapped(|ui| {
        for (view, words) in [
            (CompareView::SideBySide, "compare-side-by-side"),
            (CompareView::WholeMenu, "compare-whole-menu"),
        ] {
            let words = screen.speaker.word(words);
            if ui.selectable_label(looked_at == view, words).clicked() {
                state.look_at = view;
            }
        }
    });
    if state.look_at != looked_at {
        // What is shown is asked for in the next frame.
        ui.request_repaint();
    }
}

/// The drink in hand and those beside it. Their names stay in sight while the figures are scrolled.
fn compare_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    looks: &CompareLooks,
    state: &mut CompareState,
    view: &mut ViewState,
) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let title = RichText::new(name_as_shown(&screen.recipe.name)).font(TypeStyle::Title.font_id());
    ui.label(title.color(palette.text_strong));
    ui.add_space(grid::TIGHT);
    choose::choose_ui(ui, screen, state);
    ui.add_space(grid::NEAR);
    let drinks = &looks.drinks;
    if drinks.len() < 2 {
        paragraph_ui(ui, speaker.word("compare-add"), palette.text_normal);
        ui.add_space(grid::NEAR);
        if ui.button(speaker.word("compare-add-menu")).clicked() {
            state.look_at = CompareView::WholeMenu;
            ui.request_repaint();
        }
        return;
    }
    let bar = ui.spacing().scroll.allocated_width();
    let widths = table::Widths::of(ui.available_width() - grid::EASY - bar, drinks.len());
    heads_ui(ui, speaker, drinks, widths, state, view);
    table::rule_ui(ui, widths.whole(drinks.len()));
    let scrolled = ScrollArea::vertical()
        .id_salt("drinks side by side")
        .auto_shrink(false);
    scrolled.show(ui, |ui| {
        apart_ui(ui, speaker, looks);
        // What it costs and who may drink it comes before how it tastes.
        let mut parts = looks.parts.iter();
        if let Some(cost) = parts.next() {
            table::part_ui(ui, speaker, cost, widths);
            ui.add_space(grid::EASY);
        }
        levels_ui(ui, drinks, speaker);
        for part in parts {
            ui.add_space(grid::NEAR);
            table::part_ui(ui, speaker, part, widths);
        }
        ui.add_space(grid::NEAR);
        quiet_ui(ui, speaker.word("compare-uncertainty"));
        ui.add_space(grid::NEAR);
        let names = drinks.iter().map(|drink| drink.name(speaker));
        let names = names
            .reduce(|before, after| say!(speaker, "compare-table", before: before, after: after));
        spreadsheet::copy_ui(ui, &names.unwrap_or_default(), || {
            model::as_table(speaker, drinks, &looks.parts)
        });
        ui.add_space(grid::APART);
    });
}

/// What sets each drink apart from the first, in a sentence.
fn apart_ui(ui: &mut Ui, speaker: Speaker<'_>, looks: &CompareLooks) {
    let palette = theme::palette(ui.visuals());
    let Some((first, others)) = looks.drinks.split_first() else {
        return;
    };
    for (other, words) in others.iter().zip(&looks.apart) {
        let name = if other.recipe.id == first.recipe.id {
            other.version(speaker).into_owned()
        } else {
            other.name(speaker)
        };
        let mut job = egui::text::LayoutJob::default();
        let format = |style: TypeStyle, colour| egui::TextFormat::simple(style.font_id(), colour);
        job.append(
            &format!("{name}: "),
            0.0,
            format(TypeStyle::Strong, palette.text_strong),
        );
        job.append(words, 0.0, format(TypeStyle::Body, palette.text_normal));
        ui.add(Label::new(job).wrap());
    }
    ui.add_space(grid::EASY);
}

/// The level of each drink, the first being the line.
fn levels_ui(ui: &mut Ui, drinks: &[Drink], speaker: Speaker<'_>) {
    let palette = theme::palette(ui.visuals());
    let Some((first, others)) = drinks.split_first() else {
        return;
    };
    let line = first.name(speaker);
    let room = ui.available_width() - grid::EASY;
    let in_a_row = ((room + grid::APART) / (LEVEL + grid::APART))
        .floor()
        .max(1.0);
    let fitting = in_a_row.min(others.len().max(1) as f32);
    let width = ((room - (fitting - 1.0) * grid::APART) / fitting).min(MOST_LEVEL);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a small whole number"
    )]
    let fitting = fitting as usize;
    for row in others.chunks(fitting) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            for drink in row {
                ui.vertical(|ui| {
                    ui.set_width(width);
                    let name = drink.name(speaker);
                    name_ui(ui, &name, TypeStyle::Strong, palette.text_strong, width);
                    if let Some(difference) = &drink.difference {
                        level_ui(ui, difference, &line, speaker);
                    }
                });
            }
        });
        ui.add_space(grid::EASY);
    }
}

/// The names of the columns, each with a way to it and a way to take it away.
fn heads_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    drinks: &[Drink],
    widths: table::Widths,
    state: &mut CompareState,
    view: &mut ViewState,
) {
    let palette = theme::palette(ui.visuals());
    let mut shown = None;
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        ui.allocate_space(egui::vec2(table::NAME, grid::TARGET));
        let column = widths.drink;
        for (at, drink) in drinks.iter().enumerate() {
            ui.vertical(|ui| {
                ui.set_width(column);
                ui.set_max_width(column - grid::EASY);
                let (recipe, room) = (&drink.recipe.name, column - grid::EASY);
                name_ui(ui, recipe, TypeStyle::Small, palette.text_quiet, room);
                ui.horizontal(|ui| {
                    ui.spacing_mut().item_spacing.x = grid::TIGHT;
                    let name = drink.name(speaker);
                    let open = say!(speaker, "compare-open", drink: &name);
                    let words = drink.version(speaker);
                    let room = column - grid::EASY - grid::TARGET - grid::NEAR;
                    let link = ui
                        .scope(|ui| {
                            ui.set_max_width(room);
                            let colour = palette.text_normal;
                            name_button_ui(ui, &words, TypeStyle::Strong, colour, false)
                        })
                        .inner
                        .accessible_name(&open)
                        .on_hover_text(&open);
                    if link.clicked() {
                        shown = Some(drink.shown.clone());
                    }
                    let remove = say!(speaker, "compare-remove", drink: name);
                    if at > 0 && icon_button(ui, Icon::Delete, &remove, &remove).clicked() {
                        state.beside.retain(|other| *other != drink.shown);
                    }
                });
            });
            if at > 0 {
                ui.vertical(|ui| {
                    ui.set_width(widths.difference);
                    ui.add_space(grid::APART);
                    let (words, room) = (speaker.word("compare-difference"), widths.difference);
                    name_ui(ui, words, TypeStyle::Small, palette.text_quiet, room);
                });
            }
        }
    });
    if let Some(shown) = shown {
        view.show(shown);
        view.area = Area::Recipe;
    }
}
