//! The rows of the table of the menu: only those in sight are worded and drawn.

use egui::{
    Checkbox, EventFilter, Key, Modifiers, Rect, Response, ScrollArea, Sense, Ui, UiBuilder,
    WidgetInfo, vec2,
};

use super::menu_state::{
    COLUMNS, CONTAINS, COST, ENERGY, Known, MARGIN, MenuState, OFF, PRICE, STATE, SUGAR, drink_of,
    known,
};
use crate::balance::{Measurand, Reported};
use crate::book::ApprovalMark;
use crate::cards::MenuRow;
use crate::quantity::Uncertain;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::area::Area;
use crate::ui::sorted_list::{Column, ListCell, cell_ui, neighbour, offset_to, places, take_focus};
use crate::ui::spreadsheet::{self, Table};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::{Value, gap_words};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name::painted;

/// Room for the tick before a row, in points.
pub(super) const TICK: f32 = grid::TARGET;
/// Height of a row, in points.
const ROW: f32 = grid::TARGET;

/// The rows in sight.
pub(super) fn rows_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    (rows, order): (&[MenuRow], &[usize]),
    (shown, width): (&[(usize, Column)], f32),
    state: &mut MenuState,
    view: &mut ViewState,
) {
    state.row = state.row.min(order.len() - 1);
    let mut area = ScrollArea::vertical()
        .id_salt("rows of the menu")
        .auto_shrink(false);
    if state.focus_row {
        let offset = offset_to(state.row, ROW, state.scrolled, ui.available_height());
        area = area.vertical_scroll_offset(offset);
    }
    let output = area.show_rows(ui, ROW, order.len(), |ui, range| {
        ui.set_max_width(width);
        for place in range {
            let row = &rows[order[place]];
            let response = row_ui(ui, screen, row, place, shown, state);
            if response.clicked() {
                state.row = place;
                view.show(drink_of(row));
                view.area = Area::Recipe;
            }
            if response.has_focus() {
                row_keys(ui, state, &response, row, (place, order.len()));
            }
        }
    });
    state.scrolled = output.state.clamped_offset().y;
}

/// Arrows to the neighbours; a blank ticks, Enter opens.
fn row_keys(
    ui: &Ui,
    state: &mut MenuState,
    response: &Response,
    row: &MenuRow,
    (place, count): (usize, usize),
) {
    let filter = EventFilter {
        vertical_arrows: true,
        ..EventFilter::default()
    };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    if let Some(to) = neighbour(ui, place, count) {
        state.row = to;
        state.focus_row = true;
        ui.ctx().request_repaint();
    }
    if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Space)) {
        state.toggle(&drink_of(row));
    }
}

fn row_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &MenuRow,
    place: usize,
    shown: &[(usize, Column)],
    state: &mut MenuState,
) -> Response {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let (whole, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    if place % 2 == 1 {
        ui.painter().rect_filled(whole, 0.0, palette.stripe);
    }
    let drink = drink_of(row);
    let name = speaker.drink(&drink.recipe, drink.version.as_ref());
    tick_ui(
        ui,
        speaker,
        whole.with_max_x(whole.left() + TICK),
        &name,
        &drink,
        state,
    );
    let rect = whole.with_min_x(whole.left() + TICK);
    let id = egui::Id::unique(("row of the menu", &drink.recipe, &drink.version));
    let response = ui.interact(rect, id, Sense::click());
    let cells: Vec<ListCell> = (0..COLUMNS.len())
        .map(|column| cell(speaker, row, column))
        .collect();
    let sentence = sentence(speaker, &name, &cells);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, sentence.as_str()));
    if state.focus_row && state.row == place {
        state.focus_row = false;
        take_focus(ui, &response);
    }
    if response.hovered() {
        let corner = egui::CornerRadius::same(grid::CORNER);
        ui.painter().rect_filled(rect, corner, palette.hover);
    }
    if response.has_focus() {
        theme::focus_ring(ui, rect);
    }
    let (at, of_cells) = places(rect, shown);
    let is_cut = painted(ui, at, &name, TypeStyle::Body, palette.text_strong);
    for ((column, look), at) in shown.iter().zip(of_cells) {
        cell_ui(ui, &cells[*column], look, at);
    }
    let whole = is_cut.then_some(name);
    let told = whole.into_iter().chain(missing(speaker, row));
    match told.reduce(|before, after| format!("{before}\n{after}")) {
        Some(words) => response.on_hover_text(words),
        None => response,
    }
}

/// The tick that sets a drink beside others.
fn tick_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    rect: Rect,
    name: &str,
    drink: &crate::workbench::Shown,
    state: &mut MenuState,
) {
    let mut is_ticked = state.ticked.contains(drink);
    let can_be_ticked = is_ticked || state.has_room();
    let builder = UiBuilder::new()
        .id_salt(("tick", &drink.recipe, &drink.version))
        .max_rect(rect)
        .layout(egui::Layout::left_to_right(egui::Align::Center));
    let mut child = ui.new_child(builder);
    let checkbox = child.add_enabled(can_be_ticked, Checkbox::without_text(&mut is_ticked));
    let named = say!(speaker, "compare-menu-tick", drink: name);
    if checkbox.accessible_name(named).changed() {
        state.toggle(drink);
    }
}

/// What a column says of a row.
fn cell(speaker: Speaker<'_>, row: &MenuRow, column: usize) -> ListCell {
    let shown = |value: &Value, unit: &str| match known(row, column) {
        Known::Not => ListCell::Gap,
        Known::Whole(number) | Known::Bound(number) => {
            let doubt = value
                .u
                .as_deref()
                .map(|u| format!(" ± {}", speaker.digits(u)));
            let digits = value.digits_in(speaker).unwrap_or_default() + &doubt.unwrap_or_default();
            ListCell::Number(
                number,
                format!("{digits}\u{a0}{unit}").trim_end().to_owned(),
            )
        }
    };
    match column {
        STATE => ListCell::Word(state_words(speaker, row).to_owned()),
        CONTAINS => ListCell::Word(contains(speaker, row)),
        OFF if row.distance.is_none() && !row.has_standard => {
            ListCell::Word(speaker.word("compare-menu-no-standard").to_owned())
        }
        _ => {
            let (value, unit) = figure(speaker, row, column);
            shown(&value, &unit)
        }
    }
}

/// A figure of a row with its unit.
fn figure(speaker: Speaker<'_>, row: &MenuRow, column: usize) -> (Value, String) {
    let currency = || speaker.book.settings.currency.clone();
    let exact = |value: Option<f64>, decimals| {
        let known = |value| Value::known(Uncertain { value, u: 0.0 }, decimals);
        value.map_or_else(Value::default, known)
    };
    match column {
        COST => (of_drink(speaker, &row.cost, Measurand::Cost, 2), currency()),
        PRICE => {
            let digits = row
                .menu_price
                .map(|price| crate::quantity::show_number(price, 2));
            (
                digits.map_or_else(Value::default, Value::digits),
                currency(),
            )
        }
        MARGIN => (
            row.margin
                .as_ref()
                .map_or_else(Value::default, Value::of_margin),
            currency(),
        ),
        SUGAR => of_measurand(speaker, &row.sugar, Measurand::TotalSugar, 1),
        ENERGY => of_measurand(speaker, &row.energy, Measurand::EnergyKj, 0),
        OFF if row.distance_is_least => (exact(row.distance, 1).at_least(), String::new()),
        OFF => (exact(row.distance, 1), String::new()),
        _ => (Value::default(), String::new()),
    }
}

fn of_measurand(
    speaker: Speaker<'_>,
    reported: &Reported,
    measurand: Measurand,
    decimals: i32,
) -> (Value, String) {
    let unit = speaker.units.of(measurand.unit()).symbol.to_owned();
    (of_drink(speaker, reported, measurand, decimals), unit)
}

fn of_drink(
    speaker: Speaker<'_>,
    reported: &Reported,
    measurand: Measurand,
    decimals: i32,
) -> Value {
    Value::of_reported(speaker, reported, measurand, decimals)
}

/// "approved"; of a version that was approved and has changed since, or that is only marked so, just that.
fn state_words(speaker: Speaker<'_>, row: &MenuRow) -> &'static str {
    match row.mark {
        Some(ApprovalMark::Nothing) => speaker.word("state-marked-only"),
        Some(ApprovalMark::ChangedSince) => speaker.word("compare-menu-changed"),
        Some(ApprovalMark::AsApproved) | None => speaker.state(row.state),
    }
}

fn contains(speaker: Speaker<'_>, row: &MenuRow) -> String {
    let summary = &row.allergens;
    let named = (!summary.contains.is_empty()).then(|| speaker.allergens(&summary.contains));
    let silent =
        (!summary.is_complete()).then(|| speaker.word("compare-menu-some-silent").to_owned());
    let words = named.into_iter().chain(silent);
    let words =
        words.reduce(|before, after| say!(speaker, "clauses", before: before, after: after));
    words.unwrap_or_else(|| speaker.word("compare-none-named").to_owned())
}

/// What is missing for the figures of a row.
fn missing(speaker: Speaker<'_>, row: &MenuRow) -> Option<String> {
    let of = [
        (&row.cost, Measurand::Cost),
        (&row.sugar, Measurand::TotalSugar),
        (&row.energy, Measurand::EnergyKj),
    ];
    let gaps = of.into_iter().filter_map(|(reported, measurand)| {
        let gap = gap_words(speaker, reported)?;
        Some(say!(speaker, "value-known", name: speaker.measurand(measurand), figure: gap))
    });
    gaps.reduce(|before, after| format!("{before}\n{after}"))
}

/// The row in one sentence.
fn sentence(speaker: Speaker<'_>, name: &str, cells: &[ListCell]) -> String {
    let said = COLUMNS.iter().zip(cells).map(|(column, cell)| {
        let text = match cell {
            ListCell::Word(text) | ListCell::Number(_, text) => text.as_str(),
            ListCell::Gap => column.gap_words(speaker),
        };
        say!(speaker, "value-known", name: speaker.word(column.title), figure: text)
    });
    let said = said.reduce(|before, after| say!(speaker, "clauses", before: before, after: after));
    say!(speaker, "value-known", name: name, figure: said.unwrap_or_default())
}

/// The rows for a spreadsheet, every column with its unit in the heading and its doubt beside it.
pub(super) fn as_table<'row>(
    speaker: Speaker<'_>,
    rows: impl Iterator<Item = &'row MenuRow>,
) -> Table {
    let currency = &speaker.book.settings.currency;
    let unit = |measurand: Measurand| speaker.units.of(measurand.unit()).symbol.to_owned();
    let units = [
        (COST, currency.clone()),
        (PRICE, currency.clone()),
        (MARGIN, currency.clone()),
        (SUGAR, unit(Measurand::TotalSugar)),
        (ENERGY, unit(Measurand::EnergyKj)),
    ];
    let mut heads = vec![speaker.word("column-drink").to_owned()];
    for (at, column) in COLUMNS.iter().enumerate() {
        let unit = units.iter().find(|(of, _)| *of == at);
        let unit = unit.map_or("", |(_, unit)| unit.as_str());
        heads.push(spreadsheet::head(speaker.word(column.title), unit));
        if matches!(at, COST | MARGIN | SUGAR | ENERGY) {
            heads.push("±".to_owned());
        }
    }
    let mut table = Table::new(heads);
    for row in rows {
        let name = speaker.drink(&row.drink.recipe, row.drink.version.as_ref());
        let mut cells = vec![spreadsheet::Cell::words(&name)];
        for column in 0..COLUMNS.len() {
            match column {
                STATE => cells.push(spreadsheet::Cell::words(state_words(speaker, row))),
                CONTAINS => cells.push(spreadsheet::Cell::words(&contains(speaker, row))),
                PRICE | OFF => {
                    let [value, _] =
                        spreadsheet::Cell::figure_and_doubt(&figure(speaker, row, column).0);
                    cells.push(value);
                }
                _ => cells.extend(spreadsheet::Cell::figure_and_doubt(
                    &figure(speaker, row, column).0,
                )),
            }
        }
        table.row(cells);
    }
    table
}
