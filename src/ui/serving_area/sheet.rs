//! What the sheets of this area are set with: headings, paragraphs, rows with one figure, tables of figures.

use egui::{
    Align2, Button, Color32, Label, Popup, PopupCloseBehavior, Rect, Response, RichText, Role,
    Sense, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2,
};

use crate::balance::Measurand;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{self, Cell, Table};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
use crate::ui::widgets::why_ui;
use crate::ui::words::{self, speaker};

/// Height of a row with one line of text, in points.
const ROW: f32 = 6.0 * grid::STEP;
/// The widest row of figures, in points: beyond it the eye loses the row.
pub(super) const MOST_WIDTH: f32 = 125.0 * grid::STEP;
/// Room for the unit behind a figure, in points.
const UNIT: f32 = 15.0 * grid::STEP;
/// Room for the decimals and the uncertainty, in points.
const AFTER_DECIMAL: f32 = 19.0 * grid::STEP;
/// Where the uncertainty stands behind the decimal sign, in points.
const UNCERTAINTY: f32 = 9.0 * grid::STEP;
/// How far a row is set in that is part of the one above it, in points.
const INDENT: f32 = grid::EASY;
/// Room behind the decimal sign of a cell in a table, in points.
const CELL_DECIMALS: f32 = 5.5 * grid::STEP;
/// Where the uncertainty of such a cell stands behind its decimal sign, in points.
const CELL_UNCERTAINTY: f32 = 5.0 * grid::STEP;
/// Width of the head of a column under the pointer, in points.
const HEAD: f32 = 15.0 * grid::STEP;
/// Room for the uncertainty of such a cell, in points.
const CELL_DOUBT: f32 = 10.0 * grid::STEP;
/// Width of the answer to "how this is worked out", in points.
const WHY_WIDTH: f32 = 100.0 * grid::STEP;

/// A paragraph.
pub(super) fn words_ui(ui: &mut Ui, words: impl Into<String>) -> Response {
    paragraph(ui, RichText::new(words))
}

/// A paragraph that can be passed over: sources, hints.
pub(super) fn quiet_ui(ui: &mut Ui, text: impl Into<String>) {
    narrow(ui, |ui| words::quiet_ui(ui, &text.into()));
}

/// A paragraph that must not be passed over.
pub(super) fn off_ui(ui: &mut Ui, words: impl Into<String>) -> Response {
    let palette = theme::palette(ui.visuals());
    paragraph(ui, RichText::new(words).color(palette.off_level))
}

fn paragraph(ui: &mut Ui, text: RichText) -> Response {
    narrow(ui, |ui| ui.add(Label::new(text).wrap()))
}

/// No wider than is read with ease.
fn narrow(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> Response) -> Response {
    ui.scope(|ui| {
        ui.set_max_width(ui.available_width().min(MOST_WIDTH));
        add(ui)
    })
    .inner
}

/// Words in a row of which one is chosen.
pub(super) fn choice_ui<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    chosen: &mut T,
    among: &[(T, String)],
) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(grid::TIGHT, 0.0);
        for (value, words) in among {
            if chosen_word_ui(ui, name, words, *chosen == *value).clicked() {
                *chosen = value.clone();
            }
        }
    });
}

/// One of such words.
pub(super) fn chosen_word_ui(ui: &mut Ui, name: &str, words: &str, is_chosen: bool) -> Response {
    let palette = theme::palette(ui.visuals());
    let (colour, fill) = if is_chosen {
        (palette.text_strong, palette.selection)
    } else {
        (palette.text_quiet, Color32::TRANSPARENT)
    };
    let button = Button::selectable(is_chosen, RichText::new(words).color(colour))
        .frame_when_inactive(false)
        .fill(fill);
    let speaker = speaker(ui.ctx());
    let name = say!(speaker, "choice-named", name: name, word: words);
    ui.add(button).accessible_name(name)
}

/// A row with one figure: "to drinking temperature, 58 °C   7.4 ± 1.1 min".
pub(super) fn fact_ui(ui: &mut Ui, name: &str, value: &Value, unit: &str) {
    row_ui(ui, name, value, unit, Sense::hover());
}

/// The same for a figure of the balance; a click tells why it is what it is.
pub(super) fn figure_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    name: &str,
    value: &Value,
    unit: &str,
    measurand: Measurand,
) {
    let response = row_ui(ui, name, value, unit, Sense::click());
    let speaker = screen.speaker;
    let click = speaker.word("serving-how-worked-out");
    let response = response.explained_with(Term::of_measurand(measurand), click);
    Popup::from_toggle_button_response(&response)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(WHY_WIDTH)
        .accessible_name(say!(speaker, "serving-why", figure: name))
        .show(|ui| why_ui(ui, screen, measurand));
}

fn row_ui(ui: &mut Ui, name: &str, value: &Value, unit: &str, sense: Sense) -> Response {
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width().min(MOST_WIDTH);
    let figure_from = width - UNIT - AFTER_DECIMAL;
    let gap = value.gap.as_deref().map(|gap| {
        let font = TypeStyle::Small.font_id();
        ui.painter()
            .layout(gap.to_owned(), font, palette.text_quiet, width)
    });
    let named = ui.painter().layout(
        name.to_owned(),
        TypeStyle::Body.font_id(),
        palette.text_normal,
        (figure_from - 12.0 * grid::STEP).max(20.0 * grid::STEP),
    );
    let line = named.size().y.max(ROW - grid::TIGHT) + grid::TIGHT;
    let height = line + gap.as_ref().map_or(0.0, |gap| gap.size().y + grid::TIGHT);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), sense);
    let role = if sense.senses_click() {
        Role::Button
    } else {
        Role::Label
    };
    let speaker = speaker(ui.ctx());
    response.widget_info(|| WidgetInfo::labeled(role, true, value.sentence(speaker, name, unit)));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    frame(ui, rect, &response);
    let y = rect.top() + line / 2.0;
    ui.painter().galley(
        pos2(rect.left(), y - named.size().y / 2.0),
        named,
        palette.text_normal,
    );
    figure(
        ui,
        pos2(rect.left() + figure_from, y),
        value,
        TypeStyle::Body,
        UNCERTAINTY,
    );
    let at = pos2(rect.left() + width - UNIT, y);
    if value.text.is_some() {
        quiet_text(ui, at, unit);
    }
    if let Some(gap) = gap {
        ui.painter().galley(
            pos2(rect.left(), rect.top() + line),
            gap,
            palette.text_quiet,
        );
    }
    response
}

/// What shows that a row is under the pointer or has the keyboard.
fn frame(ui: &Ui, rect: Rect, response: &Response) {
    if !response.sense.senses_click() {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let rect = rect.expand2(vec2(grid::TIGHT, 0.0));
    if response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, grid::CORNER, palette.hover);
    }
    if response.has_focus() {
        let ring = Stroke::new(grid::FOCUS_RING, palette.focus_ring);
        ui.painter()
            .rect_stroke(rect, grid::CORNER, ring, StrokeKind::Inside);
    }
}

fn quiet_text(ui: &Ui, at: egui::Pos2, text: &str) {
    let palette = theme::palette(ui.visuals());
    ui.painter().text(
        at,
        Align2::LEFT_CENTER,
        text,
        TypeStyle::Small.font_id(),
        palette.text_quiet,
    );
}

/// Draws a value with its decimal sign at a place, and its uncertainty so many points behind it.
fn figure(ui: &Ui, at: egui::Pos2, value: &Value, style: TypeStyle, uncertainty: f32) {
    let palette = theme::palette(ui.visuals());
    let painter = ui.painter();
    let Some(text) = &value.text else {
        let font = TypeStyle::Small.font_id();
        painter.text(
            at,
            Align2::CENTER_CENTER,
            speaker(ui.ctx()).word("serving-not-known"),
            font,
            palette.text_quiet,
        );
        return;
    };
    let text = digits_of(speaker(ui.ctx()), text);
    let (whole, decimals) = text.split_at(text.find(['.', ',']).unwrap_or(text.len()));
    let colour = palette.text_strong;
    painter.text(at, Align2::RIGHT_CENTER, whole, style.font_id(), colour);
    let end = painter.text(at, Align2::LEFT_CENTER, decimals, style.font_id(), colour);
    if let Some(u) = &value.u {
        let x = (at.x + uncertainty).max(end.right() + grid::TIGHT);
        quiet_text(
            ui,
            pos2(x, at.y),
            &format!("± {}", speaker(ui.ctx()).digits(u)),
        );
    }
}

/// Digits as the language writes them, with what stands before them when something is missing.
fn digits_of(speaker: Speaker<'_>, text: &str) -> String {
    for bound in ["≥ ", "≤ "] {
        if let Some(digits) = text.strip_prefix(bound) {
            return format!("{bound}{}", speaker.digits(digits));
        }
    }
    speaker.digits(text)
}

/// A column of figures.
pub(super) struct Column {
    /// Its heading.
    pub(super) name: String,
    /// Its unit; empty when the rows say it.
    pub(super) unit: String,
    /// The term that it is headed by.
    pub(super) term: Option<Term>,
}

/// A row of a table.
pub(super) struct TableRow {
    /// What it is of.
    pub(super) name: String,
    /// Whether it is part of the row above.
    pub(super) is_part: bool,
    /// Its figures, one for each column.
    pub(super) cells: Vec<Value>,
    /// The unit, where the columns have none.
    pub(super) unit: String,
}

/// The table for a spreadsheet; `first` heads the column of names. Units that differ by row get a column of their own.
pub(super) fn as_table(
    speaker: Speaker<'_>,
    first: &str,
    columns: &[Column],
    rows: &[TableRow],
) -> Table {
    let with_units = rows.iter().any(|row| !row.unit.is_empty());
    let unit = with_units.then(|| speaker.word("serving-head-unit").to_owned());
    let heads = columns.iter().flat_map(|column| {
        [
            spreadsheet::head(&column.name, &column.unit),
            "±".to_owned(),
        ]
    });
    let mut table = Table::new(std::iter::once(first.to_owned()).chain(unit).chain(heads));
    for row in rows {
        let unit = with_units.then(|| Cell::words(&row.unit));
        let cells = row.cells.iter().flat_map(Cell::figure_and_doubt);
        table.row(
            std::iter::once(Cell::words(&row.name))
                .chain(unit)
                .chain(cells),
        );
    }
    table
}

/// A fact as it is drawn and copied: name, figure, unit.
pub(super) type Fact<'fact> = (String, Value, &'fact str);

/// The facts of a sheet for a spreadsheet.
pub(super) fn facts_as_table<'fact>(
    speaker: Speaker<'_>,
    facts: impl IntoIterator<Item = Fact<'fact>>,
) -> Table {
    let mut table = Table::new([
        "",
        speaker.word("serving-head-unit"),
        speaker.word("serving-head-value"),
        "±",
        speaker.word("serving-head-remark"),
    ]);
    for (name, value, unit) in facts {
        let [figure, doubt] = Cell::figure_and_doubt(&value);
        let remark = Cell::words(value.gap.as_deref().unwrap_or_default());
        table.row([Cell::words(&name), Cell::words(unit), figure, doubt, remark]);
    }
    table
}

/// A table of figures; the first column takes `name_width` points.
pub(super) fn table_ui(ui: &mut Ui, columns: &[Column], name_width: f32, rows: &[TableRow]) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let width = ui.available_width().min(MOST_WIDTH);
        let unit_room = if rows.iter().any(|row| !row.unit.is_empty()) {
            UNIT / 2.0
        } else {
            0.0
        };
        let each = (width - name_width - unit_room) / columns.len() as f32;
        let doubt_room = |column: usize| {
            let has_doubt = rows
                .iter()
                .any(|row| row.cells.get(column).is_some_and(|cell| cell.u.is_some()));
            if has_doubt { CELL_DOUBT } else { 0.0 }
        };
        let decimal = |column: usize| {
            name_width + each * (column + 1) as f32 - CELL_DECIMALS - doubt_room(column)
        };
        columns_ui(ui, columns, width, &decimal);
        for row in rows {
            table_row_ui(ui, columns, row, width, &decimal);
        }
    });
}

fn columns_ui(ui: &mut Ui, columns: &[Column], width: f32, decimal: &dyn Fn(usize) -> f32) {
    let palette = theme::palette(ui.visuals());
    let has_units = columns.iter().any(|column| !column.unit.is_empty());
    let height = if has_units { 1.5 * ROW } else { ROW };
    let (rect, whole) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let font = TypeStyle::Small.font_id();
    for (at, column) in columns.iter().enumerate() {
        let x = rect.left() + decimal(at) + CELL_DECIMALS;
        if column.term.is_some() {
            let room = Rect::from_x_y_ranges(x - HEAD..=x, rect.y_range());
            let head = ui.interact(room, whole.id.with(("head", at)), Sense::hover());
            head.widget_info(|| WidgetInfo::labeled(Role::Label, true, &column.name));
            head.explained(column.term);
        }
        let top = pos2(x, rect.top() + ROW / 2.0);
        let painter = ui.painter();
        painter.text(
            top,
            Align2::RIGHT_CENTER,
            &column.name,
            font.clone(),
            palette.text_quiet,
        );
        let below = pos2(x, rect.top() + ROW + grid::TIGHT / 2.0);
        painter.text(
            below,
            Align2::RIGHT_CENTER,
            &column.unit,
            font.clone(),
            palette.text_quiet,
        );
    }
}

fn table_row_ui(
    ui: &mut Ui,
    columns: &[Column],
    row: &TableRow,
    width: f32,
    decimal: &dyn Fn(usize) -> f32,
) {
    let palette = theme::palette(ui.visuals());
    let gap = row
        .cells
        .iter()
        .rev()
        .find_map(|cell| cell.gap.clone())
        .map(|gap| {
            let font = TypeStyle::Small.font_id();
            ui.painter()
                .layout(gap, font, palette.text_quiet, width - INDENT)
        });
    let height = ROW + gap.as_ref().map_or(0.0, |gap| gap.size().y + grid::TIGHT);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let speaker = speaker(ui.ctx());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, row.sentence(speaker, columns)));
    if !ui.is_rect_visible(rect) {
        return;
    }
    let y = rect.top() + ROW / 2.0;
    let left = rect.left() + if row.is_part { INDENT } else { 0.0 };
    let font = TypeStyle::Body.font_id();
    ui.painter().text(
        pos2(left, y),
        Align2::LEFT_CENTER,
        &row.name,
        font,
        palette.text_normal,
    );
    for (at, cell) in row.cells.iter().enumerate() {
        cell_ui(ui, pos2(rect.left() + decimal(at), y), cell);
    }
    if row.cells.iter().any(|cell| cell.text.is_some()) {
        quiet_text(
            ui,
            pos2(rect.right() - UNIT / 2.0 + grid::TIGHT, y),
            &row.unit,
        );
    }
    if let Some(gap) = gap {
        ui.painter()
            .galley(pos2(left, rect.top() + ROW), gap, palette.text_quiet);
    }
}

fn cell_ui(ui: &Ui, at: egui::Pos2, cell: &Value) {
    if cell.text.is_some() {
        figure(ui, at, cell, TypeStyle::Body, CELL_UNCERTAINTY);
        return;
    }
    let palette = theme::palette(ui.visuals());
    let right = pos2(at.x + CELL_DECIMALS, at.y);
    let font = TypeStyle::Small.font_id();
    ui.painter().text(
        right,
        Align2::RIGHT_CENTER,
        speaker(ui.ctx()).word("serving-not-known"),
        font,
        palette.text_quiet,
    );
}

impl TableRow {
    /// The row in one sentence.
    fn sentence(&self, speaker: Speaker<'_>, columns: &[Column]) -> String {
        let cells = columns.iter().zip(&self.cells).map(|(column, cell)| {
            let unit = if column.unit.is_empty() {
                &self.unit
            } else {
                &column.unit
            };
            cell.short(speaker, &column.name, unit)
        });
        let mut sentence = format!("{}: {}", self.name, cells.collect::<Vec<_>>().join(", "));
        if let Some(gap) = self.cells.iter().rev().find_map(|cell| cell.gap.as_ref()) {
            sentence.push_str("; ");
            sentence.push_str(gap);
        }
        sentence
    }
}
