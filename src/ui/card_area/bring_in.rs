//! What is brought in: a price list, a schema.org recipe, a recipe of another shop. Each is reviewed before it is taken.

use std::path::PathBuf;

use egui::{Button, ComboBox, Grid, Label, RichText, ScrollArea, TextEdit, Ui};

use super::frame::CardFrame;
use super::model::CardState;
use super::review::{self, ReviewState, away_ui, working_ui};
use crate::edit::Focus;
use crate::exchange::{DecimalSign, Delimiter, Field, ReadRecipe, TextTable};
use crate::quantity::{excerpt, name_as_shown};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{heading_ui, quiet_ui, speaker};
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
    let speaker = speaker(ui.ctx());
    heading_ui(ui, speaker.word("cards-screen-bring-in"));
    if let Some(path) = &frame.being_read {
        let path = path.display().to_string();
        working_ui(ui, &say!(speaker, "cards-screen-reading", path: path));
        away_ui(ui, speaker.word("cards-screen-stop-reading"), actions);
        return;
    }
    quiet_ui(ui, speaker.word("cards-screen-bring-in-what"));
    ui.add_space(grid::TIGHT);
    let field = TextEdit::singleline(&mut state.list_path)
        .hint_text(speaker.word("cards-screen-bring-in-path-hint"))
        .desired_width(f32::INFINITY);
    let name = speaker.word("cards-screen-bring-in-path");
    let response = ui.add(field).accessible_name(name);
    let entered = response.lost_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter));
    ui.horizontal(|ui| {
        let has_path = !state.list_path.trim().is_empty();
        let words = speaker.word("cards-screen-bring-in-review");
        let read = ui.add_enabled(has_path, Button::new(words));
        if (read.clicked() || entered) && has_path {
            let path = PathBuf::from(state.list_path.trim());
            actions.push(Action::Command(Command::ReadList(path)));
        }
        if ui
            .button(speaker.word("cards-screen-bring-in-choose"))
            .on_hover_text(speaker.word("cards-screen-bring-in-choose-does"))
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
    let speaker = screen.speaker;
    let name =
        RichText::new(speaker.word("cards-screen-bring-in")).font(TypeStyle::Title.font_id());
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
        away_ui(ui, speaker.word("cards-screen-back"), actions);
    }
}

fn table_ui(ui: &mut Ui, frame: &CardFrame, state: &mut CardState, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
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
        working_ui(ui, speaker.word("cards-screen-list-looking"));
    }
    if let Some(table) = table {
        heading_ui(ui, speaker.word("cards-screen-columns"));
        mapping_ui(ui, table, &mut state.review);
        ui.add_space(grid::EASY);
    }
    match reviewed.filter(|_| table.is_some()) {
        Some(reviewed) => review::list_ui(ui, &frame.review, reviewed, &mut state.review, actions),
        None => away_ui(ui, speaker.word("cards-screen-back"), actions),
    }
}

/// How the file is read: the sign between cells and the decimal sign.
fn reading_ui(ui: &mut Ui, now: Option<&TableReview>, review: &mut ReviewState) {
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

/// The headings with what each means, over the first rows.
fn mapping_ui(ui: &mut Ui, now: &TableReview, review: &mut ReviewState) {
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

fn recipe_ui(
    ui: &mut Ui,
    recipe: &ReadRecipe,
    look: &Look<RecipeReview>,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
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
            working_ui(ui, speaker.word("cards-screen-recipe-looking"));
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Err(error)) => {
            ui.add(Label::new(RichText::new(error).color(palette.off_level)).wrap());
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Ok((edit, questions))) => {
            heading_ui(ui, speaker.word("cards-screen-to-look-at"));
            for question in questions {
                let words = speaker.recipe_question(question);
                ui.add(Label::new(words).wrap());
            }
            for left in &recipe.left_out {
                quiet_ui(ui, &say!(speaker, "cards-screen-left-out", text: left));
            }
            ui.add_space(grid::EASY);
            ui.horizontal(|ui| {
                let words = RichText::new(speaker.word("cards-screen-add-recipe"));
                let words = words.color(palette.on_accent);
                if ui.add(Button::new(words).fill(palette.accent)).clicked() {
                    actions.push(Action::edit(edit.clone(), Focus::Book));
                    actions.push(Action::Command(Command::CloseStep));
                    actions.push(Action::Command(Command::PutListAway));
                }
                away_ui(ui, speaker.word("cards-screen-leave"), actions);
            });
        }
    }
}
