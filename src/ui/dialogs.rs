//! What the window asks in a sheet of its own: which book, where to save, what becomes of changes, what is approved.

use std::path::PathBuf;

use egui::{Align2, Button, Id, Key, Label, Modal, RichText, TextEdit, Ui, vec2};

use super::book_in_hand::BookInHand;
use super::commands::UiCommand;
use super::dialog::{Approving, Dialog};
use super::field::select_when_pressed;
use super::keys_sheet;
use super::look_up::{self, LookUpState};
use super::modal::{WIDTH, main_button_ui, sheet, sheet_in, title_ui};
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::name::name_button_ui;
use super::words::quiet_ui;
use crate::say::{Speaker, say};
use crate::workbench::{Action, Command, FileState, Home, Intent, Message, Sample};

/// Shows the dialog that is open, if any.
pub(super) fn dialogs_ui(
    ctx: &egui::Context,
    in_hand: &BookInHand<'_>,
    pending: Option<&Intent>,
    found: &mut LookUpState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if let Some(mut dialog) = view.dialog.take() {
        let area = Modal::default_area(Id::unique("dialog"));
        let (area, width) = if dialog == Dialog::LookUp {
            let top = Align2::CENTER_TOP;
            (area.anchor(top, vec2(0.0, look_up::TOP)), look_up::WIDTH)
        } else if dialog == Dialog::Keys {
            (area, keys_sheet::width(ctx.content_rect().width()))
        } else {
            (area, WIDTH)
        };
        let keep = sheet_in(ctx, area, width, |ui| match &mut dialog {
            Dialog::Open { path } => open_ui(ui, path, in_hand.speaker, view, actions),
            Dialog::SaveAs { path } => save_as_ui(ui, path, in_hand.speaker, actions),
            Dialog::Approve(approving) => approve_ui(ui, approving, in_hand.speaker, actions),
            Dialog::LookUp => look_up::look_up_ui(ui, in_hand, found, view),
            Dialog::Keys => keys_sheet::keys_ui(ui, in_hand.speaker),
        });
        if keep {
            view.dialog = Some(dialog);
        }
    } else if let Some(pending) = pending {
        let stays = sheet(ctx, "unsaved", |ui| {
            unsaved_ui(ui, in_hand, pending, actions)
        });
        let answered = actions.iter().any(|action| {
            matches!(
                action,
                Action::Command(
                    Command::SaveThenDo
                        | Command::DiscardThenDo
                        | Command::StayHere
                        | Command::PickSave
                )
            )
        });
        if !stays && !answered && view.dialog.is_none() {
            actions.push(Action::Command(Command::StayHere));
        }
    }
}

/// A field for a path that takes the keyboard when the dialog opens; `true` when Enter was pressed in it.
fn path_ui(ui: &mut Ui, path: &mut String, name: &str, speaker: Speaker<'_>) -> bool {
    let field = TextEdit::singleline(path)
        .hint_text(speaker.word("dialog-path-hint"))
        .desired_width(f32::INFINITY);
    let response = ui.add(field).accessible_name(name);
    if ui.memory(|memory| memory.focused().is_none()) && !response.lost_focus() {
        response.request_focus();
    }
    response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter))
}

fn path_of(text: &str) -> PathBuf {
    PathBuf::from(text.trim())
}

fn open_ui(
    ui: &mut Ui,
    path: &mut String,
    speaker: Speaker<'_>,
    view: &ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    title_ui(ui, speaker.word("dialog-open-title"));
    let mut intent = None;
    let entered = path_ui(ui, path, speaker.word("dialog-open-path"), speaker);
    let has_path = !path.trim().is_empty();
    let mut keep = true;
    ui.horizontal(|ui| {
        if (main_button_ui(ui, speaker.word("dialog-open"), has_path) || entered) && has_path {
            intent = Some(Intent::Open(path_of(path)));
        }
        if ui
            .button(speaker.word("dialog-browse"))
            .on_hover_text(speaker.word("dialog-browse-does"))
            .clicked()
        {
            actions.push(Action::Command(Command::PickOpen));
            keep = false;
        }
        if ui.button(speaker.word("dialog-cancel")).clicked() {
            keep = false;
        }
    });
    if !view.recent.is_empty() {
        ui.add_space(grid::NEAR);
        quiet_ui(ui, speaker.word("dialog-recent"));
    }
    for recent in &view.recent {
        let name = recent.display().to_string();
        let colour = theme::palette(ui.visuals()).text_normal;
        if name_button_ui(ui, &name, TypeStyle::Body, colour, false).clicked() {
            intent = Some(Intent::Open(recent.clone()));
        }
    }
    ui.add_space(grid::NEAR);
    quiet_ui(ui, speaker.word("dialog-samples"));
    for sample in Sample::ALL {
        if ui
            .add(Button::new(sample.name(speaker)).frame_when_inactive(false))
            .clicked()
        {
            intent = Some(Intent::OpenSample(sample));
        }
    }
    if let Some(intent) = intent {
        actions.push(Action::Command(Command::Do(intent)));
        keep = false;
    }
    keep
}

fn save_as_ui(
    ui: &mut Ui,
    path: &mut String,
    speaker: Speaker<'_>,
    actions: &mut Vec<Action>,
) -> bool {
    title_ui(ui, speaker.word("dialog-save-title"));
    let entered = path_ui(ui, path, speaker.word("dialog-save-path"), speaker);
    quiet_ui(ui, speaker.word("dialog-save-kind"));
    let has_path = !path.trim().is_empty();
    let mut keep = true;
    ui.horizontal(|ui| {
        if (main_button_ui(ui, speaker.word("dialog-save-here"), has_path) || entered) && has_path {
            actions.push(Action::Command(Command::SaveAs(path_of(path))));
            keep = false;
        }
        if ui
            .button(speaker.word("dialog-browse"))
            .on_hover_text(speaker.word("dialog-browse-does"))
            .clicked()
        {
            actions.push(Action::Command(Command::PickSave));
            keep = false;
        }
        if ui.button(speaker.word("dialog-cancel")).clicked() {
            keep = false;
        }
    });
    keep
}

fn approve_ui(
    ui: &mut Ui,
    approving: &mut Approving,
    speaker: Speaker<'_>,
    actions: &mut Vec<Action>,
) -> bool {
    title_ui(
        ui,
        &say!(speaker, "dialog-approve-title", drink: &approving.name),
    );
    quiet_ui(ui, speaker.word("dialog-approve-keeps"));
    let celsius = speaker.units.of("°C");
    let tasted_at = celsius.read(&approving.tasted_at);
    let tasted_name = say!(speaker, "dialog-tasted-at", unit: celsius.symbol);
    let nothing_typed = approving.tasted_at.trim().is_empty();
    let mut entered = false;
    for (name, hint, text) in [
        (
            speaker.word("dialog-approved-by"),
            speaker.word("dialog-approved-by-hint"),
            &mut approving.by,
        ),
        (
            speaker.word("dialog-reason"),
            speaker.word("dialog-reason-hint"),
            &mut approving.reason,
        ),
        (
            tasted_name.as_str(),
            speaker.word("dialog-tasted-at-hint"),
            &mut approving.tasted_at,
        ),
    ] {
        ui.add_space(grid::TIGHT);
        quiet_ui(ui, name);
        let field = TextEdit::singleline(text)
            .hint_text(hint)
            .desired_width(f32::INFINITY);
        let response = ui.add(field).accessible_name(name);
        if name == tasted_name {
            select_when_pressed(ui, &response, text);
        }
        let entered_here = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        entered |= entered_here;
        if ui.memory(|memory| memory.focused().is_none()) && !response.lost_focus() {
            response.request_focus();
        }
    }
    if let Err(error) = &tasted_at
        && !nothing_typed
    {
        let palette = theme::palette(ui.visuals());
        let said = speaker.number_error(error);
        ui.label(RichText::new(said).color(palette.off_level));
    }
    let complete = !approving.by.trim().is_empty() && (nothing_typed || tasted_at.is_ok());
    let mut keep = true;
    ui.add_space(grid::NEAR);
    ui.horizontal(|ui| {
        if main_button_ui(ui, speaker.word("dialog-approve"), complete) || entered && complete {
            actions.push(Action::Command(Command::Approve {
                recipe: approving.recipe.clone(),
                version: approving.version.clone(),
                by: approving.by.trim().to_owned(),
                reason: approving.reason.trim().to_owned(),
                tasted_at: tasted_at.ok(),
            }));
            keep = false;
        }
        if ui.button(speaker.word("dialog-cancel")).clicked() {
            keep = false;
        }
    });
    keep
}

/// What is asked before changes that no file holds are left, or a book that is still being saved.
fn unsaved_words(in_hand: &BookInHand<'_>, pending: &Intent) -> (String, &'static str) {
    let (speaker, title) = (in_hand.speaker, &in_hand.title);
    let (saving, gone, unsaved) = match pending {
        Intent::Quit => (
            "dialog-saving-quit",
            "dialog-gone-quit",
            "dialog-unsaved-quit",
        ),
        Intent::New => ("dialog-saving-new", "dialog-gone-new", "dialog-unsaved-new"),
        Intent::Open(_) | Intent::OpenSample(_) => (
            "dialog-saving-open",
            "dialog-gone-open",
            "dialog-unsaved-open",
        ),
    };
    match in_hand.file_state {
        FileState::Saving => (
            say!(speaker, "dialog-saving-title", book: title),
            speaker.word(saving),
        ),
        FileState::Gone => (
            say!(speaker, "dialog-gone-title", book: title),
            speaker.word(gone),
        ),
        FileState::Steady => (
            say!(speaker, "dialog-unsaved-title", book: title),
            speaker.word(unsaved),
        ),
    }
}

/// What happens to changes that no file holds.
fn unsaved_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    pending: &Intent,
    actions: &mut Vec<Action>,
) -> bool {
    let speaker = in_hand.speaker;
    let (title, question) = unsaved_words(in_hand, pending);
    title_ui(ui, &title);
    ui.add(Label::new(question).wrap());
    // A save that failed is said behind the sheet, too, where it is easily missed.
    let failed = in_hand
        .message
        .filter(|_| in_hand.file_state != FileState::Saving);
    let mut may_save_elsewhere = false;
    if let Some(Message::Failed(reason)) = failed {
        may_save_elsewhere = matches!(in_hand.home, Home::File(_));
        let palette = theme::palette(ui.visuals());
        ui.add_space(grid::TIGHT);
        ui.add(Label::new(RichText::new(reason).color(palette.off_level)).wrap());
    }
    ui.add_space(grid::NEAR);
    let mut keep = true;
    ui.horizontal(|ui| {
        if main_button_ui(
            ui,
            speaker.word("dialog-save"),
            in_hand.file_state != FileState::Saving,
        ) {
            match in_hand.home {
                Home::File(_) => actions.push(Action::Command(Command::SaveThenDo)),
                // What waits goes on as soon as the book has a place.
                Home::Nowhere(_) => actions.push(Action::Command(Command::PickSave)),
            }
            keep = false;
        }
        if may_save_elsewhere && ui.button(UiCommand::SaveAs.label(speaker)).clicked() {
            actions.push(Action::Command(Command::PickSave));
            keep = false;
        }
        let (words, explanation) = if in_hand.file_state == FileState::Saving {
            ("dialog-do-not-wait", "dialog-do-not-wait-does")
        } else if in_hand.file_state == FileState::Gone {
            ("dialog-discard", "dialog-discard-book-does")
        } else {
            ("dialog-discard", "dialog-discard-changes-does")
        };
        let button = ui.button(speaker.word(words));
        if button.on_hover_text(speaker.word(explanation)).clicked() {
            actions.push(Action::Command(Command::DiscardThenDo));
            keep = false;
        }
        if ui.button(speaker.word("dialog-cancel")).clicked() {
            actions.push(Action::Command(Command::StayHere));
            keep = false;
        }
    });
    keep
}
