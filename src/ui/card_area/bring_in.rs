//! What is brought in: a price list, a schema.org recipe, a recipe of another shop. Each is reviewed before it is taken.

use std::path::PathBuf;

use egui::style::ScrollAnimation;
use egui::{Align, Button, Label, RichText, TextEdit, Ui};

use super::frame::CardFrame;
use super::list_reading::{mapping_ui, reading_ui, rows_said_ui};
use super::list_review;
use super::model::CardState;
use super::other_shop::other_shop_ui;
use super::review::{away_ui, working_ui};
use super::written_recipe::recipe_ui;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::name_ui;
use crate::ui::words::{heading_ui, quiet_ui, speaker};
use crate::workbench::{Action, Answers, Command, ListContent, ListInHand};

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
    let title = ui.label(name.color(palette.text_strong));
    if state.review.follow(list) {
        // The list before was left somewhere further down.
        title.scroll_to_me_animation(Some(Align::TOP), ScrollAnimation::none());
    }
    let (path, colour) = (list.path.display().to_string(), palette.text_quiet);
    name_ui(ui, &path, TypeStyle::Body, colour, f32::INFINITY);
    ui.add_space(grid::EASY);
    let failed = match &list.content {
        ListContent::Table(_) => {
            table_ui(ui, screen.answers, frame, state, actions);
            None
        }
        ListContent::Recipe(Ok(recipe)) => {
            let look = &frame.review.recipe;
            recipe_ui(ui, screen, recipe, look, &mut state.review, actions);
            None
        }
        ListContent::OtherShop(Ok(foreign)) => {
            let look = &frame.review.arrival;
            other_shop_ui(ui, screen, foreign, look, &mut state.review, actions);
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

fn table_ui(
    ui: &mut Ui,
    answers: Answers<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
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
        rows_said_ui(ui, table, &mut state.review);
        ui.add_space(grid::EASY);
    }
    match reviewed.filter(|_| table.is_some()) {
        Some(reviewed) => {
            list_review::list_ui(
                ui,
                answers,
                &frame.review,
                reviewed,
                &mut state.review,
                actions,
            );
        }
        None => away_ui(ui, speaker.word("cards-screen-back"), actions),
    }
}
