//! The whole menu as one table: which drinks are shown, how they are sorted, and what becomes of those that are ticked.

use egui::containers::menu::{MenuButton, MenuConfig};
use egui::{Button, Checkbox, PopupCloseBehavior, RichText, ScrollArea, TextEdit, Ui};

use super::menu_rows::{TICK, as_table, rows_ui};
use super::menu_state::{COLUMNS, OrderOfMenu, RowsOfMenu, Shows};
use super::state::{CompareState, CompareView};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::sorted_list::{Column, columns_from, headings_ui};
use crate::ui::spreadsheet::copy_ui;
use crate::ui::swap_area::{Parts, progress_ui};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::{paragraph_ui, quiet_ui};
use crate::workbench::{Action, LookState};

/// The widest field that finds, in points.
const FIND: f32 = 60.0 * grid::STEP;

/// A table of fewer rows than this is no table: in a lower window the sheet is scrolled.
const LEAST_ROWS: f32 = 5.0 * grid::TARGET;
/// What stands above the rows and below them, in points.
const AROUND_ROWS: f32 = 4.0 * grid::TARGET + grid::APART;

pub(super) fn menu_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut CompareState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if ui.available_height() >= LEAST_ROWS + AROUND_ROWS {
        return table_ui(ui, screen, state, view, actions);
    }
    let sheet = ScrollArea::vertical()
        .id_salt("the whole menu")
        .auto_shrink(false);
    sheet.show(ui, |ui| table_ui(ui, screen, state, view, actions));
}

fn table_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut CompareState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    filters_ui(ui, screen, state);
    ui.add_space(grid::TIGHT);
    progress_ui(ui, state.menu.look.state, Parts::Menu, actions);
    let Some(rows) = state.menu.look.found.clone() else {
        return;
    };
    let rows = RowsOfMenu(rows);
    let menu = &state.menu;
    let order = screen.answers.to(&OrderOfMenu {
        rows: rows.clone(),
        shows: menu.shows,
        find: menu.find.clone(),
        without: menu.without.clone(),
        sort: menu.sort,
    });
    let width = ui.available_width() - ui.spacing().scroll.allocated_width();
    let shown = columns_from(&COLUMNS, width - TICK, state.menu.first_column);
    let counts = (order.len(), rows.0.rows.len());
    commands_ui(ui, screen, counts, &shown, state, view);
    ui.add_space(grid::TIGHT);
    if order.is_empty() {
        nothing_ui(ui, screen, rows.0.rows.is_empty(), state);
        return;
    }
    let is_current = state.menu.look.state == LookState::Done;
    ui.scope(|ui| {
        // What was worked out before stands there, quieter, while the book of now is.
        if !is_current {
            ui.multiply_opacity(0.6);
        }
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 0.0;
            ui.add_space(TICK);
            let first = speaker.word("column-drink");
            headings_ui(ui, &mut state.menu.sort, first, &shown, width - TICK);
        });
        ui.add_space(grid::TIGHT);
        let foot = grid::TARGET + grid::NEAR;
        // What is scrolled has no end of its own.
        let height = ui.available_height() - foot;
        let height = if height.is_finite() {
            height.max(LEAST_ROWS)
        } else {
            LEAST_ROWS
        };
        let room = egui::vec2(ui.available_width(), height);
        ui.allocate_ui(room, |ui| {
            rows_ui(
                ui,
                screen,
                (&rows.0.rows, &order),
                (&shown, width),
                &mut state.menu,
                view,
            );
        });
    });
    let of = speaker.word("compare-menu-table");
    copy_ui(ui, of, || {
        as_table(speaker, order.iter().map(|at| &rows.0.rows[*at]))
    });
}

/// What is typed, the state of the drinks, and what they must be free of.
fn filters_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut CompareState) {
    let speaker = screen.speaker;
    let menu = &mut state.menu;
    ui.horizontal_wrapped(|ui| {
        let field = TextEdit::singleline(&mut menu.find)
            .id(egui::Id::unique("find on the menu"))
            .hint_text(speaker.word("compare-menu-find"))
            .desired_width(FIND.min(ui.available_width()));
        let field = ui.add(field);
        if field.changed() {
            (menu.row, menu.scrolled) = (0, 0.0);
        }
        field.accessible_name(speaker.word("compare-menu-find-named"));
        for shows in Shows::ALL {
            let words = speaker.word(shows.message());
            if ui.selectable_label(menu.shows == shows, words).clicked() {
                menu.shows = shows;
                (menu.row, menu.scrolled) = (0, 0.0);
            }
        }
        let words = if menu.without.is_empty() {
            speaker.word("compare-menu-without-any").to_owned()
        } else {
            say!(speaker, "compare-menu-without", allergens: speaker.allergens(&menu.without))
        };
        // Several can be ticked one after the other.
        let config = MenuConfig::new().close_behavior(PopupCloseBehavior::CloseOnClickOutside);
        MenuButton::new(words).config(config).ui(ui, |ui| {
            egui::ScrollArea::vertical().show(ui, |ui| {
                for allergen in screen.book.settings.listed_allergens() {
                    let mut is_out = menu.without.contains(&allergen);
                    let name = speaker.allergen(allergen);
                    let named = say!(speaker, "compare-menu-without", allergens: name);
                    let checkbox = ui.add(Checkbox::new(&mut is_out, name));
                    if checkbox.accessible_name(named).changed() {
                        if is_out {
                            menu.without.insert(allergen);
                        } else {
                            menu.without.remove(&allergen);
                        }
                    }
                }
                quiet_ui(ui, speaker.word("compare-menu-without-about"));
            });
        });
    });
}

/// How many there are, and what can be done with them.
fn commands_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    (shown, all): (usize, usize),
    columns: &[(usize, Column)],
    state: &mut CompareState,
    view: &mut ViewState,
) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    ui.horizontal_wrapped(|ui| {
        let words = say!(speaker, "compare-menu-count", shown: shown, all: all);
        ui.label(RichText::new(words).color(palette.text_quiet));
        ui.add_space(grid::NEAR);
        let ticked = state.menu.ticked.len();
        let words = say!(speaker, "compare-menu-side-by-side", count: ticked);
        let button = Button::new(words);
        let button = ui.add_enabled(ticked >= 2, button);
        let hint = speaker.word("compare-menu-side-by-side-hint");
        let button = button.on_hover_text(hint).on_disabled_hover_text(hint);
        if button.clicked() {
            let mut drinks = state.menu.ticked.clone().into_iter();
            if let Some(first) = drinks.next() {
                view.show(first);
                state.beside = drinks.collect();
                state.look_at = CompareView::SideBySide;
            }
        }
        if ticked > 0 && ui.button(speaker.word("compare-menu-untick")).clicked() {
            state.menu.ticked.clear();
        }
        let print = ui.button(speaker.word("compare-menu-print"));
        if print
            .on_hover_text(speaker.word("compare-menu-print-hint"))
            .clicked()
        {
            let also_unapproved = state.menu.shows != Shows::Approved;
            view.go(Area::Cards, Navigation::FiguresCard(also_unapproved));
        }
        columns_ui(ui, speaker, columns, &mut state.menu.first_column);
    });
}

/// The ways to the columns that there is no room for; the name stays where it is.
fn columns_ui(ui: &mut Ui, speaker: Speaker<'_>, shown: &[(usize, Column)], first: &mut usize) {
    let (Some((from, _)), Some((to, _))) = (shown.first(), shown.last()) else {
        return;
    };
    let (before, behind) = (&COLUMNS[..*from], &COLUMNS[to + 1..]);
    if before.is_empty() && behind.is_empty() {
        return;
    }
    let named = |columns: &[Column]| {
        let names: Vec<&str> = columns
            .iter()
            .map(|column| speaker.word(column.title))
            .collect();
        speaker.and(&names)
    };
    for (columns, words, leads_to) in [
        (
            before,
            "compare-menu-columns-before",
            from.saturating_sub(shown.len()),
        ),
        (behind, "compare-menu-columns-behind", to + 1),
    ] {
        let button = Button::new(speaker.word(words));
        let button = ui.add_enabled(!columns.is_empty(), button);
        if button.on_hover_text(named(columns)).clicked() {
            *first = leads_to;
        }
    }
}

/// A table with nothing in it says why, and what to do.
fn nothing_ui(ui: &mut Ui, screen: &Screen<'_>, is_empty: bool, state: &mut CompareState) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let menu = &mut state.menu;
    let is_filtered = !menu.find.trim().is_empty() || !menu.without.is_empty();
    let words = match (is_empty, is_filtered, menu.shows) {
        (true, ..) => "compare-menu-empty",
        (_, true, _) => "compare-menu-none-match",
        (_, _, Shows::Approved) => "compare-menu-none-approved",
        _ => "compare-menu-none-of-state",
    };
    paragraph_ui(ui, speaker.word(words), palette.text_normal);
    if !is_empty && ui.button(speaker.word("compare-menu-show-all")).clicked() {
        menu.find.clear();
        menu.without.clear();
        menu.shows = Shows::All;
    }
}
