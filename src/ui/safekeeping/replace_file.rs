//! A name that was typed belongs to a file already: it is replaced only when a person says so.

use egui::Context;

use super::{button_ui, command, sentence_ui, sheet_ui, size_words};
use crate::ui::dialogs::{Dialog, main_button_ui, quiet_ui, title_ui};
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::workbench::{Action, Command, Home, Workbench, moment_words};

pub(super) fn replace_ui(
    ctx: &Context,
    workbench: &Workbench,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Some(replacing) = workbench.replacing() else {
        return;
    };
    let stays = sheet_ui(ctx, "replace a file", |ui| {
        title_ui(ui, "A file with this name already exists");
        sentence_ui(ui, &replacing.path.display().to_string());
        let size = size_words(replacing.bytes);
        quiet_ui(
            ui,
            &match replacing.changed {
                Some(changed) => format!("{size}, changed last on {}", moment_words(changed)),
                None => size,
            },
        );
        ui.add_space(grid::NEAR);
        sentence_ui(
            ui,
            "Replace it with this book? Evensip keeps the present file as an earlier copy.",
        );
        ui.add_space(grid::NEAR);
        ui.horizontal(|ui| {
            if main_button_ui(ui, "Another name…", true) {
                command(actions, Command::LeaveFile);
                view.dialog = Some(Dialog::save_as(&Home::File(replacing.path.clone())));
            }
            if button_ui(ui, "Replace it", "Save this book over the file") {
                command(actions, Command::ReplaceFile);
            }
            if ui.button("Cancel").clicked() {
                command(actions, Command::LeaveFile);
            }
        });
    });
    if !stays {
        command(actions, Command::LeaveFile);
    }
}
