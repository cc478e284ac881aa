//! Unsaved work that was found at the start: whose it is, from when, what differs, and what becomes of it.

use egui::{Context, ScrollArea, Ui};

use super::differences::differences_ui;
use super::{
    SafekeepingState, button_ui, command, heading_ui, room_for_list, sentence_ui, sheet_ui,
};
use crate::ui::dialogs::{main_button_ui, quiet_ui, title_ui};
use crate::ui::theme::grid;
use crate::workbench::{Action, Command, OfferedRecovery, Workbench, moment_words};

pub(super) fn recovery_ui(
    ctx: &Context,
    workbench: &Workbench,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    let Some(offered) = workbench.offered_recovery() else {
        return;
    };
    let may_take_back = !workbench.has_unsaved_changes();
    let stays = sheet_ui(ctx, "unsaved work", |ui| {
        whose_ui(ui, offered);
        heading_ui(ui, "What is in it and not in the file");
        ScrollArea::vertical()
            .max_height(room_for_list(ctx))
            .auto_shrink([false, true])
            .show(ui, |ui| {
                differences_ui(
                    ui,
                    "recovery",
                    &offered.difference,
                    &mut state.unfolded,
                    |item| offered.item_differences(item),
                );
            });
        ui.add_space(grid::EASY);
        if !may_take_back {
            quiet_ui(
                ui,
                "Save or undo what is unsaved in the open book first; then this work can be taken back.",
            );
        }
        ui.horizontal(|ui| {
            if main_button_ui(ui, "Take it back", may_take_back) {
                command(actions, Command::AcceptRecovery);
            }
            if button_ui(ui, "Leave it", "Delete this work; the file stays as it is") {
                command(actions, Command::DiscardRecovery);
            }
            if button_ui(
                ui,
                "Later",
                "It is offered again from the menu of the book and at the next start",
            ) {
                state.recovery_later = true;
            }
        });
    });
    if !stays {
        state.recovery_later = true;
    }
}

fn whose_ui(ui: &mut Ui, offered: &OfferedRecovery) {
    title_ui(ui, "Unsaved work was found");
    sentence_ui(
        ui,
        &format!(
            "Evensip did not end as it should. The work on “{}” was kept on {}.",
            offered.name,
            moment_words(offered.kept)
        ),
    );
    let home = offered.home.as_ref().map(|path| path.display().to_string());
    quiet_ui(ui, home.as_deref().unwrap_or("It was in no file yet."));
    if offered.home.is_some() && offered.stands_alone {
        sentence_ui(
            ui,
            "That file can’t be read now; all of the book is in the work.",
        );
    }
    if offered.file_changed {
        sentence_ui(
            ui,
            "The file was changed after this work was begun. Both are put together, item by item, before anything is saved.",
        );
    }
}
