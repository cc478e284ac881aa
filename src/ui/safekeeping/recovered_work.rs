//! Unsaved work that was found at the start: whose it is, from when, what differs, and what becomes of it.

use egui::{Context, ScrollArea, Ui};

use super::differences::differences_ui;
use super::{
    RecoveryAsked, SafekeepingState, button_ui, command, heading_ui, room_for_list, sentence_ui,
    sheet_ui,
};
use crate::ui::dialogs::{main_button_ui, quiet_ui, title_ui};
use crate::ui::theme::grid;
use crate::ui::words;
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
                    |item| offered.item_differences(words::speaker(ctx), item),
                );
            });
        ui.add_space(grid::EASY);
        if !may_take_back {
            quiet_ui(
                ui,
                "Save or undo the changes in the open book first, then restore this work.",
            );
        }
        if state.recovery == RecoveryAsked::Delete {
            delete_ui(ui, offered, state, actions);
        } else {
            choices_ui(ui, may_take_back, state, actions);
        }
    });
    if !stays {
        state.recovery = RecoveryAsked::Later;
    }
}

fn choices_ui(
    ui: &mut Ui,
    may_take_back: bool,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    ui.horizontal(|ui| {
        if main_button_ui(ui, "Restore this work", may_take_back) {
            command(actions, Command::AcceptRecovery);
        }
        if button_ui(
            ui,
            "Ask again next time",
            "The work is kept; it is offered from the menu of the book and at the next start",
        ) {
            state.recovery = RecoveryAsked::Later;
        }
        if button_ui(
            ui,
            "Delete it…",
            "Asks once more before the work is deleted",
        ) {
            state.recovery = RecoveryAsked::Delete;
        }
    });
}

/// The second step before work is deleted: nothing brings it back.
fn delete_ui(
    ui: &mut Ui,
    offered: &OfferedRecovery,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    let file = if offered.home.is_none() || offered.stands_alone {
        "No file holds it, so the whole book is lost."
    } else {
        "The file stays as it is."
    };
    sentence_ui(
        ui,
        &format!(
            "Delete this work of {} for good? {file}",
            moment_words(offered.kept)
        ),
    );
    ui.add_space(grid::TIGHT);
    ui.horizontal(|ui| {
        if main_button_ui(ui, "Keep it", true) {
            state.recovery = RecoveryAsked::Offered;
        }
        if button_ui(ui, "Delete it for good", "It can’t be brought back") {
            command(actions, Command::DiscardRecovery);
            // The next work that was found is asked about anew.
            state.recovery = RecoveryAsked::Offered;
        }
    });
}

fn whose_ui(ui: &mut Ui, offered: &OfferedRecovery) {
    title_ui(ui, "Unsaved work was found");
    sentence_ui(
        ui,
        &format!(
            "Evensip closed unexpectedly. Your work on “{}” was kept on {}.",
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
            "The file changed after you began this work. Evensip merges the two, item by item, before anything is saved.",
        );
    }
}
