//! What is brought in: a price list, a schema.org recipe, a recipe of another shop. Each is reviewed before it is taken.

use std::path::PathBuf;

use egui::{Button, ComboBox, Grid, Label, RichText, ScrollArea, TextEdit, Ui};

use super::CardFrame;
use super::model::CardState;
use super::review::{self, ReviewState, working_ui};
use crate::exchange::{DecimalSign, Delimiter, Field, ReadRecipe, TextTable};
use crate::quantity::{excerpt, name_as_shown};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{heading_ui, quiet_ui};
use crate::workbench::{Action, Command, ListContent, ListInHand, Look, RecipeReview, TableReview};

/// Rows of a table that are previewed below its headings.
const PREVIEW_ROWS: usize = 4;

/// Longest cell that is previewed, in characters.
const CELL: usize = 28;

/// Where the file is asked for.
pub(super) fn begin_ui(
    ui: &mut Ui,
    frame: &CardFrame,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
    heading_ui(ui, "Bring in");
    if let Some(path) = &frame.being_read {
        working_ui(ui, &format!("Reading {} …", path.display()));
        away_ui(ui, "Stop reading", actions);
        return;
    }
    quiet_ui(
        ui,
        "A price list (CSV), a schema.org recipe (JSON) or another shop's recipe (RON). You review it before anything changes.",
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
    frame: &CardFrame,
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
    state.review.follow(list);
    let failed = match &list.content {
        ListContent::Table(_) => {
            table_ui(ui, frame, state, actions);
            None
        }
        ListContent::Recipe(Ok(recipe)) => {
            recipe_ui(ui, recipe, &frame.review.recipe, actions);
            None
        }
        ListContent::OtherShop(Ok(foreign)) => {
            let look = &frame.review.arrival;
            review::other_shop_ui(ui, screen, foreign, look, &mut state.review, actions);
            None
        }
        ListContent::Recipe(Err(reason)) | ListContent::OtherShop(Err(reason)) => Some(reason),
    };
    state.review.show_what_was_chosen(ui);
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

fn table_ui(ui: &mut Ui, frame: &CardFrame, state: &mut CardState, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    let look = &frame.review.table;
    let reviewed = look.found.as_ref();
    if let Some(Err(error)) = reviewed.map(AsRef::as_ref) {
        let words = RichText::new(error).color(palette.off_level);
        ui.add(Label::new(words).wrap());
    }
    let table = reviewed.and_then(|reviewed| reviewed.as_ref().as_ref().ok());
    if reviewed.is_some() {
        reading_ui(ui, table, &mut state.review);
        ui.add_space(grid::EASY);
    }
    if look.current().is_none() {
        working_ui(ui, "Looking through the list …");
    }
    if let Some(table) = table {
        heading_ui(ui, "What the columns mean");
        mapping_ui(ui, table, &mut state.review);
        ui.add_space(grid::EASY);
    }
    match reviewed.filter(|_| table.is_some()) {
        Some(reviewed) => review::list_ui(ui, &frame.review, reviewed, &mut state.review, actions),
        None => away_ui(ui, "Back to the cards", actions),
    }
}

/// How the file is read: the sign between cells and the decimal sign.
fn reading_ui(ui: &mut Ui, now: Option<&TableReview>, review: &mut ReviewState) {
    ui.horizontal_wrapped(|ui| {
        ui.label("Cell separator");
        let delimiter = now.map(|now| now.table.delimiter);
        let combo = ComboBox::from_id_salt("delimiter")
            .selected_text(
                delimiter.map_or("not known", |sign| Speaker::without_book().delimiter(sign)),
            )
            .show_ui(ui, |ui| {
                for other in Delimiter::ALL {
                    let is_now = delimiter == Some(other);
                    if ui
                        .selectable_label(is_now, Speaker::without_book().delimiter(other))
                        .clicked()
                    {
                        review.read_with(other);
                    }
                }
            });
        combo.response.accessible_name("Cell separator");
        ui.add_space(grid::EASY);
        ui.label("Decimal sign");
        let signs = now.map(|now| &now.signs);
        let sign = signs.and_then(|signs| signs.chosen.or(signs.found));
        for other in DecimalSign::ALL {
            if ui
                .radio(
                    sign == Some(other),
                    Speaker::without_book().decimal_sign(other),
                )
                .clicked()
            {
                review.set_sign(other);
            }
        }
        if let Some(now) = now {
            ui.add_space(grid::EASY);
            quiet_ui(ui, Speaker::without_book().encoding(now.table.encoding));
        }
    });
}

/// The headings with what each means, over the first rows.
fn mapping_ui(ui: &mut Ui, now: &TableReview, review: &mut ReviewState) {
    let palette = theme::palette(ui.visuals());
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
                        .selected_text(
                            now.map_or("left out", |field| Speaker::without_book().field(field)),
                        )
                        .width(130.0)
                        .show_ui(ui, |ui| {
                            if ui.selectable_label(now.is_none(), "left out").clicked() {
                                chosen = Some((at, None));
                            }
                            for field in Field::all() {
                                if ui
                                    .selectable_label(
                                        now == Some(field),
                                        Speaker::without_book().field(field),
                                    )
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
    copy_ui(ui, "columns", || as_table(table, columns));
    if let Some((at, field)) = chosen {
        review.map(now, at, field);
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
        let meaning = meaning.map_or("left out", |field| Speaker::without_book().field(field));
        let cells = previewed().map(|(_, cells)| cells.get(at).map_or("", String::as_str));
        let row = [heading.as_str(), meaning].into_iter().chain(cells);
        table.row(row.map(Cell::words));
    }
    table
}

fn recipe_ui(
    ui: &mut Ui,
    recipe: &ReadRecipe,
    look: &Look<RecipeReview>,
    actions: &mut Vec<Action>,
) {
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
    match look.current() {
        None => {
            working_ui(ui, "Looking for its ingredients …");
            away_ui(ui, "Leave it", actions);
        }
        Some(Err(error)) => {
            ui.colored_label(palette.off_level, error);
        }
        Some(Ok((edit, questions))) => {
            heading_ui(ui, "To look at");
            for question in questions {
                let words = Speaker::without_book().recipe_question(question);
                ui.add(Label::new(words).wrap());
            }
            for left in &recipe.left_out {
                quiet_ui(ui, &format!("Left out: {left}"));
            }
            ui.add_space(grid::EASY);
            ui.horizontal(|ui| {
                let words = RichText::new("Add the recipe as a draft").color(palette.on_accent);
                if ui.add(Button::new(words).fill(palette.accent)).clicked() {
                    actions.push(Action::edit(edit.clone(), "book"));
                    actions.push(Action::Command(Command::CloseStep));
                    actions.push(Action::Command(Command::PutListAway));
                }
                away_ui(ui, "Leave it", actions);
            });
        }
    }
}
