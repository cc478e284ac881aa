//! What is brought in: a price list, a schema.org recipe, a recipe of another shop. Each is reviewed before it is taken.

use std::path::PathBuf;

use egui::{Button, ComboBox, Grid, Label, RichText, ScrollArea, TextEdit, Ui};

use super::model::CardState;
use super::review::{self, ReviewState};
use crate::exchange::{DecimalSign, Delimiter, Field, ReadRecipe, TextTable};
use crate::quantity::{excerpt, name_as_shown};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{heading_ui, quiet_ui};
use crate::workbench::{Action, Command, ListContent, ListInHand};

/// Rows of a table that are previewed below its headings.
const PREVIEW_ROWS: usize = 4;

/// Longest cell that is previewed, in characters.
const CELL: usize = 28;

/// Where the file is asked for.
pub(super) fn begin_ui(ui: &mut Ui, state: &mut CardState, actions: &mut Vec<Action>) {
    heading_ui(ui, "Bring in");
    quiet_ui(
        ui,
        "A price list (CSV), a schema.org recipe (JSON), or a recipe of another shop (RON). You review it first.",
    );
    ui.add_space(grid::TIGHT);
    let field = TextEdit::singleline(&mut state.list_path)
        .hint_text("/home/me/prices.csv")
        .desired_width(f32::INFINITY);
    let response = ui.add(field).accessible_name("Path of what is brought in");
    let entered = response.lost_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter));
    ui.horizontal(|ui| {
        let has_path = !state.list_path.trim().is_empty();
        let read = ui.add_enabled(has_path, Button::new("Review"));
        if (read.clicked() || entered) && has_path {
            let path = PathBuf::from(state.list_path.trim());
            actions.push(Action::Command(Command::ReadList(path)));
        }
        if ui
            .button("Choose…")
            .on_hover_text("Asks with the dialog of your system; without one, type the path")
            .clicked()
        {
            actions.push(Action::Command(Command::PickList));
        }
    });
}

pub(super) fn bring_in_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    list: &ListInHand,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let name = RichText::new("Bring in").font(TypeStyle::Title.font_id());
    ui.label(name.color(palette.text_strong));
    let path = RichText::new(list.path.display().to_string()).color(palette.text_quiet);
    ui.add(Label::new(path).truncate());
    ui.add_space(grid::EASY);
    state.review.follow(screen.book, list);
    let failed = match &list.content {
        ListContent::Table(_) => {
            table_ui(ui, list, state, actions);
            None
        }
        ListContent::Recipe(Ok(recipe)) => {
            recipe_ui(ui, screen, recipe, actions);
            None
        }
        ListContent::OtherShop(Ok(foreign)) => {
            review::other_shop_ui(ui, screen, foreign, &mut state.review, actions);
            None
        }
        ListContent::Recipe(Err(reason)) | ListContent::OtherShop(Err(reason)) => Some(reason),
    };
    if let Some(reason) = failed {
        let words = RichText::new(reason).color(palette.off_level);
        ui.add(Label::new(words).wrap());
        away_ui(ui, "Back to the cards", actions);
    }
}

/// Puts the list away without taking anything.
pub(super) fn away_ui(ui: &mut Ui, words: &str, actions: &mut Vec<Action>) {
    if ui.button(words).clicked() {
        actions.push(Action::Command(Command::PutListAway));
    }
}

fn table_ui(ui: &mut Ui, list: &ListInHand, state: &mut CardState, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    if let Some(error) = state.review.table_error() {
        let words = RichText::new(error).color(palette.off_level);
        ui.add(Label::new(words).wrap());
    }
    reading_ui(ui, list, &mut state.review);
    ui.add_space(grid::EASY);
    heading_ui(ui, "What the columns mean");
    mapping_ui(ui, &mut state.review);
    ui.add_space(grid::EASY);
    review::list_ui(ui, &mut state.review, actions);
}

/// How the file is read: the sign between cells and the decimal sign.
fn reading_ui(ui: &mut Ui, list: &ListInHand, review: &mut ReviewState) {
    ui.horizontal_wrapped(|ui| {
        ui.label("Between cells");
        let now = review.delimiter();
        let combo = ComboBox::from_id_salt("delimiter")
            .selected_text(now.map_or("not known", Delimiter::words))
            .show_ui(ui, |ui| {
                for delimiter in Delimiter::ALL {
                    if ui
                        .selectable_label(now == Some(delimiter), delimiter.words())
                        .clicked()
                    {
                        review.read_with(list, delimiter);
                    }
                }
            });
        combo.response.accessible_name("Between cells");
        ui.add_space(grid::EASY);
        ui.label("Decimal sign");
        for sign in DecimalSign::ALL {
            if ui
                .radio(review.sign() == Some(sign), sign.words())
                .clicked()
            {
                review.set_sign(sign);
            }
        }
        if let Some(encoding) = review.encoding() {
            ui.add_space(grid::EASY);
            let palette = theme::palette(ui.visuals());
            ui.label(RichText::new(encoding.words()).color(palette.text_quiet));
        }
    });
}

/// The headings with what each means, over the first rows.
fn mapping_ui(ui: &mut Ui, review: &mut ReviewState) {
    let palette = theme::palette(ui.visuals());
    let Some(table) = review.table().cloned() else {
        return;
    };
    let columns = review.mapping().columns.clone();
    let mut chosen = None;
    ScrollArea::horizontal().id_salt("columns").show(ui, |ui| {
        Grid::new("mapping")
            .striped(true)
            .spacing(egui::vec2(grid::EASY, grid::TIGHT))
            .show(ui, |ui| {
                for (at, heading) in table.headings.iter().enumerate() {
                    let now = columns.get(at).copied().flatten();
                    let combo = ComboBox::from_id_salt(("field", at))
                        .selected_text(now.map_or("left out", Field::words))
                        .width(130.0)
                        .show_ui(ui, |ui| {
                            if ui.selectable_label(now.is_none(), "left out").clicked() {
                                chosen = Some((at, None));
                            }
                            for field in Field::all() {
                                if ui
                                    .selectable_label(now == Some(field), field.words())
                                    .clicked()
                                {
                                    chosen = Some((at, Some(field)));
                                }
                            }
                        });
                    combo
                        .response
                        .accessible_name(format!("Meaning of {heading}"));
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
    copy_ui(ui, "columns", || as_table(&table, &columns));
    if let Some((at, field)) = chosen {
        review.map(at, field);
    }
}

/// A row for each column of the file: its heading, what it means, and what stands in it in the rows that are previewed.
fn as_table(file: &TextTable, meanings: &[Option<Field>]) -> Table {
    let previewed = || file.rows.iter().take(PREVIEW_ROWS);
    let heads = ["column".to_owned(), "meaning".to_owned()];
    let rows = previewed().map(|(line, _)| format!("line {line}"));
    let mut table = Table::new(heads.into_iter().chain(rows));
    for (at, heading) in file.headings.iter().enumerate() {
        let meaning = meanings.get(at).copied().flatten();
        let meaning = meaning.map_or("left out", Field::words);
        let cells = previewed().map(|(_, cells)| cells.get(at).map_or("", String::as_str));
        let row = [heading.as_str(), meaning].into_iter().chain(cells);
        table.row(row.map(Cell::words));
    }
    table
}

fn recipe_ui(ui: &mut Ui, screen: &Screen<'_>, recipe: &ReadRecipe, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    heading_ui(ui, &name_as_shown(&recipe.name));
    for ingredient in &recipe.ingredients {
        ui.label(&ingredient.text);
    }
    for instruction in &recipe.instructions {
        let words = RichText::new(instruction).color(palette.text_quiet);
        ui.add(Label::new(words).wrap());
    }
    ui.add_space(grid::EASY);
    match recipe.edit(screen.book) {
        Err(error) => {
            ui.colored_label(palette.off_level, error.to_string());
        }
        Ok((edit, questions)) => {
            heading_ui(ui, "To look at");
            for question in &questions {
                ui.add(Label::new(question).wrap());
            }
            for left in &recipe.left_out {
                quiet_ui(ui, &format!("Left out: {left}"));
            }
            ui.add_space(grid::EASY);
            ui.horizontal(|ui| {
                let words = RichText::new("Add the recipe as a draft").color(palette.on_accent);
                if ui.add(Button::new(words).fill(palette.accent)).clicked() {
                    actions.push(Action::edit(edit, "book"));
                    actions.push(Action::Command(Command::CloseStep));
                    actions.push(Action::Command(Command::PutListAway));
                }
                away_ui(ui, "Leave it", actions);
            });
        }
    }
}
