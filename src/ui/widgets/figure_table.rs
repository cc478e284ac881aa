//! The one table of figures, both drawn and copied: a row a thing, a column a figure with its uncertainty.

use egui::{Align2, Rect, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::facts::{MOST_WIDTH, ROW, UNIT};
use super::figure;
use crate::say::Speaker;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
use crate::ui::words::speaker;

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

/// A column of figures.
pub(in crate::ui) struct Column {
    /// Its heading.
    pub(in crate::ui) name: String,
    /// Its unit; empty when the rows say it.
    pub(in crate::ui) unit: String,
    /// The term that it is headed by.
    pub(in crate::ui) term: Option<Term>,
}

/// A row of a table.
pub(in crate::ui) struct TableRow {
    /// What it is of.
    pub(in crate::ui) name: String,
    /// Whether it is part of the row above.
    pub(in crate::ui) is_part: bool,
    /// Its figures, one for each column.
    pub(in crate::ui) cells: Vec<Value>,
    /// The unit, where the columns have none.
    pub(in crate::ui) unit: String,
}

/// A table of figures and the button that copies it, `of` which it is; `first` heads the column of names, which takes
/// `name_width` points.
pub(in crate::ui) fn figure_table_ui(
    ui: &mut Ui,
    of: &str,
    (first, name_width): (&str, f32),
    columns: &[Column],
    rows: &[TableRow],
) {
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
    let speaker = speaker(ui.ctx());
    copy_ui(ui, of, || as_table(speaker, first, columns, rows));
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
        figure::quiet(
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
        figure::figure(ui, at, cell, CELL_UNCERTAINTY);
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

/// The table for a spreadsheet; `first` heads the column of names. Units that differ by row get a column of their own.
fn as_table(speaker: Speaker<'_>, first: &str, columns: &[Column], rows: &[TableRow]) -> Table {
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
