//! A name that was typed belongs to a file already: it is replaced only when a person says so.

use egui::Context;

use super::sheet::{button_ui, command, sentence_ui, sheet_ui, size_words};
use crate::say::say;
use crate::ui::dialog::Dialog;
use crate::ui::modal::{main_button_ui, title_ui};
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::ui::words::speaker;
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
    let speaker = speaker(ctx);
    let stays = sheet_ui(ctx, "replace a file", |ui| {
        title_ui(ui, speaker.word("safekeeping-replace"));
        sentence_ui(ui, &replacing.path.display().to_string());
        let size = size_words(speaker, replacing.bytes);
        quiet_ui(
            ui,
            &match replacing.changed {
                Some(changed) => {
                    let moment = moment_words(speaker, changed);
                    say!(speaker, "safekeeping-replace-changed", size: size, moment: moment)
                }
                None => size,
            },
        );
        ui.add_space(grid::NEAR);
        sentence_ui(ui, speaker.word("safekeeping-replace-question"));
        ui.add_space(grid::NEAR);
        ui.horizontal(|ui| {
            if main_button_ui(ui, speaker.word("safekeeping-replace-another"), true) {
                command(actions, Command::LeaveFile);
                view.dialog = Some(Dialog::save_as(&Home::File(replacing.path.clone())));
            }
            if button_ui(
                ui,
                speaker.word("safekeeping-replace-now"),
                speaker.word("safekeeping-replace-now-hint"),
            ) {
                command(actions, Command::ReplaceFile);
            }
            if ui.button(speaker.word("safekeeping-cancel")).clicked() {
                command(actions, Command::LeaveFile);
            }
        });
    });
    if !stays {
        command(actions, Command::LeaveFile);
    }
}
