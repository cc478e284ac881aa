//! How a list is read: the signs between cells and before decimals, the row of the headings, what the columns mean.

use egui::{ComboBox, Grid, RichText, ScrollArea, TextEdit, Ui};

use super::review::ReviewState;
use crate::book::Form;
use crate::exchange::{DecimalSign, Delimiter, Field, TextTable};
use crate::quantity::excerpt;
use crate::say::{Speaker, say};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{quiet_ui, speaker};
use crate::workbench::TableReview;

/// Rows of a table that are previewed below its headings.
const PREVIEW_ROWS: usize = 4;

/// Longest cell that is previewed, in characters.
const CELL: usize = 28;

/// Longest row that is offered as headings, in characters.
const LINE: usize = 60;

/// Rows that are offered as headings.
const MOST_HEADINGS: usize = 40;

/// How the file is read: the sign between cells and the decimal sign.
pub(super) fn reading_ui(ui: &mut Ui, now: Option<&TableReview>, review: &mut ReviewState) {
    let speaker = speaker(ui.ctx());
    ui.horizontal_wrapped(|ui| {
        let name = speaker.word("cards-screen-delimiter");
        ui.label(name);
        let delimiter = now.map(|now| now.table.delimiter);
        let not_known = speaker.word("cards-screen-not-known");
        let combo = ComboBox::from_id_salt("delimiter")
            .selected_text(delimiter.map_or(not_known, |sign| speaker.delimiter(sign)))
            .show_ui(ui, |ui| {
                for other in Delimiter::ALL {
                    let is_now = delimiter == Some(other);
                    let words = speaker.delimiter(other);
                    if ui.selectable_label(is_now, words).clicked() {
                        review.read_with(other);
                    }
                }
            });
        combo.response.accessible_name(name);
        ui.add_space(grid::EASY);
        heading_line_ui(ui, now, review);
        ui.label(speaker.word("cards-screen-decimal-sign"));
        let signs = now.map(|now| &now.signs);
        let sign = signs.and_then(|signs| signs.chosen.or(signs.found));
        for other in DecimalSign::ALL {
            let words = speaker.decimal_sign(other);
            if ui.radio(sign == Some(other), words).clicked() {
                review.set_sign(other);
            }
        }
        if let Some(now) = now {
            ui.add_space(grid::EASY);
            quiet_ui(ui, speaker.encoding(now.table.encoding));
        }
    });
}

/// The row that the headings stand in; what stands above it is skipped.
fn heading_line_ui(ui: &mut Ui, now: Option<&TableReview>, review: &mut ReviewState) {
    let Some(now) = now else { return };
    let speaker = speaker(ui.ctx());
    let table = &now.table;
    let name = speaker.word("cards-screen-heading-line");
    ui.label(name);
    let words = |line: u64, cells: &[String]| {
        let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
        let cells = excerpt(&cells.join(" · "), LINE);
        say!(speaker, "cards-screen-heading-line-of", line: line.to_string(), cells: cells)
    };
    let combo = ComboBox::from_id_salt("heading line")
        .selected_text(say!(speaker, "cards-screen-line", line: table.heading_line.to_string()))
        .show_ui(ui, |ui| {
            let above = table.above.iter().map(|(line, cells)| (*line, cells));
            let below = table
                .rows
                .iter()
                .take(PREVIEW_ROWS)
                .map(|(line, cells)| (*line, cells));
            let rows = above
                .chain([(table.heading_line, &table.headings)])
                .chain(below);
            for (line, cells) in rows.take(MOST_HEADINGS) {
                let is_now = line == table.heading_line;
                if ui.selectable_label(is_now, words(line, cells)).clicked() {
                    review.set_heading_line(line);
                }
            }
        });
    combo.response.accessible_name(name);
    if !table.above.is_empty() {
        let count = table.above.len();
        quiet_ui(
            ui,
            &say!(speaker, "cards-screen-above-skipped", count: count),
        );
    }
    ui.add_space(grid::EASY);
}

/// What is said of all rows: who the list is of, and what new ingredients are like.
pub(super) fn rows_said_ui(ui: &mut Ui, now: &TableReview, review: &mut ReviewState) {
    let speaker = speaker(ui.ctx());
    let has = |field| now.mapping.column(field).is_some();
    if has(Field::Supplier) && has(Field::Form) {
        return;
    }
    ui.add_space(grid::TIGHT);
    ui.horizontal_wrapped(|ui| {
        if !has(Field::Supplier) {
            let name = speaker.word("cards-screen-list-supplier");
            ui.label(name);
            let mut supplier = review.choices().supplier.clone();
            let field = TextEdit::singleline(&mut supplier)
                .hint_text(speaker.word("cards-screen-list-supplier-hint"))
                .desired_width(160.0);
            if ui.add(field).accessible_name(name).changed() {
                review.set_supplier(supplier);
            }
            if !now.suppliers.is_empty() {
                let combo = ComboBox::from_id_salt("known suppliers")
                    .selected_text(speaker.word("cards-screen-list-supplier-known"))
                    .show_ui(ui, |ui| {
                        for known in &now.suppliers {
                            let is_now = review.choices().supplier == *known;
                            if ui.selectable_label(is_now, known).clicked() {
                                review.set_supplier(known.clone());
                            }
                        }
                    });
                combo
                    .response
                    .accessible_name(speaker.word("cards-screen-list-supplier-known"));
            }
            ui.add_space(grid::EASY);
        }
        if !has(Field::Form) {
            let name = speaker.word("cards-screen-list-form");
            ui.label(name);
            let chosen = review.choices().form;
            let not_stated = speaker.word("cards-screen-list-form-not-stated");
            let words = |form: Option<Form>| form.map_or(not_stated, |form| speaker.form(form));
            let combo = ComboBox::from_id_salt("form of new ones")
                .selected_text(words(chosen))
                .show_ui(ui, |ui| {
                    let all = std::iter::once(None).chain(Form::ALL.map(Some));
                    for form in all {
                        if ui.selectable_label(chosen == form, words(form)).clicked() {
                            review.set_form(form);
                        }
                    }
                });
            combo.response.accessible_name(name);
        }
    });
}

/// The headings with what each means, over the first rows.
pub(super) fn mapping_ui(ui: &mut Ui, now: &TableReview, review: &mut ReviewState) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
    let (table, columns) = (&now.table, &now.mapping.columns);
    let mut chosen = None;
    ScrollArea::horizontal().id_salt("columns").show(ui, |ui| {
        Grid::new("mapping")
            .striped(true)
            .spacing(egui::vec2(grid::EASY, grid::TIGHT))
            .show(ui, |ui| {
                for (at, heading) in table.headings.iter().enumerate() {
                    let now = columns.get(at).copied().flatten();
                    let combo = ComboBox::from_id_salt(("field", at))
                        .selected_text(meaning(speaker, now))
                        .width(130.0)
                        .show_ui(ui, |ui| {
                            let fields = Field::all().into_iter().map(Some);
                            for field in std::iter::once(None).chain(fields) {
                                let words = meaning(speaker, field);
                                if ui.selectable_label(now == field, words).clicked() {
                                    chosen = Some((at, field));
                                }
                            }
                        });
                    let name = say!(speaker, "cards-screen-column-meaning", heading: heading);
                    combo.response.accessible_name(name);
                }
                ui.end_row();
                for heading in &table.headings {
                    ui.label(
                        RichText::new(excerpt(heading, CELL))
                            .font(TypeStyle::Strong.font_id())
                            .color(palette.text_strong),
                    );
                }
                ui.end_row();
                for (_, cells) in table.rows.iter().take(PREVIEW_ROWS) {
                    for cell in cells.iter().take(table.headings.len()) {
                        ui.label(excerpt(cell, CELL));
                    }
                    ui.end_row();
                }
            });
    });
    let of = speaker.word("cards-screen-columns-table");
    copy_ui(ui, of, || as_table(speaker, table, columns));
    if let Some((at, field)) = chosen {
        review.map(now, at, field);
    }
}

/// What a column means; `None` for one that is not taken.
fn meaning(speaker: Speaker<'_>, field: Option<Field>) -> &'static str {
    field.map_or_else(
        || speaker.word("cards-screen-column-left-out"),
        |field| speaker.field(field),
    )
}

/// A row for each column of the file: its heading, what it means, and what stands in it in the rows that are previewed.
fn as_table(speaker: Speaker<'_>, file: &TextTable, meanings: &[Option<Field>]) -> Table {
    let previewed = || file.rows.iter().take(PREVIEW_ROWS);
    let heads = [
        "cards-screen-columns-table-column",
        "cards-screen-columns-table-meaning",
    ];
    let heads = heads.map(|head| speaker.word(head).to_owned());
    let rows =
        previewed().map(|(line, _)| say!(speaker, "cards-screen-line", line: line.to_string()));
    let mut table = Table::new(heads.into_iter().chain(rows));
    for (at, heading) in file.headings.iter().enumerate() {
        let meaning = meaning(speaker, meanings.get(at).copied().flatten());
        let cells = previewed().map(|(_, cells)| cells.get(at).map_or("", String::as_str));
        let row = [heading.as_str(), meaning].into_iter().chain(cells);
        table.row(row.map(Cell::words));
    }
    table
}
