//! Unsaved work that was found at the start: whose it is, from when, what differs, and what becomes of it.

use egui::{Context, ScrollArea, Ui};

use super::differences::differences_ui;
use super::sheet::{button_ui, command, room_for_list, sentence_ui, sheet_ui};
use super::state::{RecoveryAsked, SafekeepingState};
use crate::say::{Speaker, say};
use crate::ui::modal::{main_button_ui, title_ui};
use crate::ui::theme::grid;
use crate::ui::words::speaker;
use crate::ui::words::{quiet_ui, subheading_ui};
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
    let speaker = speaker(ctx);
    let stays = sheet_ui(ctx, "unsaved work", |ui| {
        whose_ui(ui, speaker, offered);
        subheading_ui(ui, speaker.word("safekeeping-found-difference"));
        ScrollArea::vertical()
            .max_height(room_for_list(ctx))
            .auto_shrink([false, true])
            .show(ui, |ui| {
                differences_ui(
                    ui,
                    "recovery",
                    &offered.difference,
                    &mut state.unfolded,
                    |item| offered.item_differences(speaker, item),
                );
            });
        ui.add_space(grid::EASY);
        if !may_take_back {
            quiet_ui(ui, speaker.word("safekeeping-found-unsaved"));
        }
        if state.recovery == RecoveryAsked::Delete {
            delete_ui(ui, speaker, offered, state, actions);
        } else {
            choices_ui(ui, speaker, may_take_back, state, actions);
        }
    });
    if !stays {
        state.recovery = RecoveryAsked::Later;
    }
}

fn choices_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    may_take_back: bool,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    ui.horizontal(|ui| {
        if main_button_ui(ui, speaker.word("safekeeping-found-restore"), may_take_back) {
            command(actions, Command::AcceptRecovery);
        }
        if button_ui(
            ui,
            speaker.word("safekeeping-found-ask-again"),
            speaker.word("safekeeping-found-ask-again-hint"),
        ) {
            state.recovery = RecoveryAsked::Later;
        }
        if button_ui(
            ui,
            speaker.word("safekeeping-found-delete"),
            speaker.word("safekeeping-found-delete-hint"),
        ) {
            state.recovery = RecoveryAsked::Delete;
        }
    });
}

/// The second step before work is deleted: nothing brings it back.
fn delete_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    offered: &OfferedRecovery,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    let moment = moment_words(speaker, offered.kept);
    let question = if offered.home.is_none() || offered.stands_alone {
        say!(speaker, "safekeeping-found-delete-whole", moment: moment)
    } else {
        say!(speaker, "safekeeping-found-delete-part", moment: moment)
    };
    sentence_ui(ui, &question);
    ui.add_space(grid::TIGHT);
    ui.horizontal(|ui| {
        if main_button_ui(ui, speaker.word("safekeeping-found-keep"), true) {
            state.recovery = RecoveryAsked::Offered;
        }
        if button_ui(
            ui,
            speaker.word("safekeeping-found-delete-now"),
            speaker.word("safekeeping-found-delete-now-hint"),
        ) {
            command(actions, Command::DiscardRecovery);
            // The next work that was found is asked about anew.
            state.recovery = RecoveryAsked::Offered;
        }
    });
}

fn whose_ui(ui: &mut Ui, speaker: Speaker<'_>, offered: &OfferedRecovery) {
    title_ui(ui, speaker.word("safekeeping-found"));
    let moment = moment_words(speaker, offered.kept);
    let what = say!(speaker, "safekeeping-found-what", name: &offered.name, moment: moment);
    sentence_ui(ui, &what);
    let home = offered.home.as_ref().map(|path| path.display().to_string());
    let nowhere = speaker.word("safekeeping-found-no-file");
    quiet_ui(ui, home.as_deref().unwrap_or(nowhere));
    if offered.home.is_some() && offered.stands_alone {
        sentence_ui(ui, speaker.word("safekeeping-found-unreadable"));
    }
    if offered.file_changed {
        sentence_ui(ui, speaker.word("safekeeping-found-file-changed"));
    }
}
