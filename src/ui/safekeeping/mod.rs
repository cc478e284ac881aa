//! What keeps a shop's work safe, as far as a person has to decide: unsaved work that was found, a file that another program
//! has changed, a file that would be replaced, earlier copies of the book, and the approvals of a recipe.

mod approvals;
mod changed_on_disk;
mod differences;
mod earlier_copies;
mod recovered_work;
mod replace_file;
mod sheet;
mod state;

use egui::{Context, Ui};

use super::area::Navigation;
use super::view_state::ViewState;
use super::words::speaker;
use crate::workbench::{Action, Command, Workbench};

pub(super) use self::approvals::{ComparedApprovals, approvals_ui};
pub(super) use self::changed_on_disk::{has_strip, strip_ui};
pub(super) use self::state::SafekeepingState;

use self::state::RecoveryAsked;

/// The question that comes first.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Asked {
    Replace,
    DiskChange,
    Recovery,
    Earlier,
}

fn first_question(workbench: &Workbench, state: &SafekeepingState) -> Option<Asked> {
    if workbench.replacing().is_some() {
        return Some(Asked::Replace);
    }
    let stops_a_save = workbench.disk_change().map(|change| change.at_save);
    if stops_a_save.is_some_and(|stops| stops || state.disk_change_open) {
        return Some(Asked::DiskChange);
    }
    // What waits is asked about first: opening a book changes what there is to bring back.
    if workbench.pending().is_some() {
        return None;
    }
    if workbench.offered_recovery().is_some() && state.recovery != RecoveryAsked::Later {
        return Some(Asked::Recovery);
    }
    state.earlier_open.then_some(Asked::Earlier)
}

/// Whether a sheet of this module is open.
pub(super) fn asks(workbench: &Workbench, state: &SafekeepingState) -> bool {
    first_question(workbench, state).is_some()
}

/// Shows the sheet that is open, if any; `false` when there is none.
pub(super) fn asks_ui(
    ctx: &Context,
    workbench: &Workbench,
    state: &mut SafekeepingState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    if view.dialog.is_some() {
        return false;
    }
    let Some(asked) = first_question(workbench, state) else {
        return false;
    };
    match asked {
        Asked::Replace => replace_file::replace_ui(ctx, workbench, view, actions),
        Asked::DiskChange => changed_on_disk::disk_change_ui(ctx, workbench, state, view, actions),
        Asked::Recovery => {
            recovered_work::recovery_ui(ctx, workbench, state, actions);
        }
        Asked::Earlier => {
            earlier_copies::earlier_ui(ctx, workbench, state, actions);
        }
    }
    true
}

/// The entries of the book's menu.
pub(super) fn menu_items_ui(
    ui: &mut Ui,
    has_left_work: bool,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = speaker(ui.ctx());
    if ui
        .button(speaker.word("safekeeping-earlier-menu"))
        .clicked()
    {
        view.navigation.push(Navigation::EarlierCopies);
        actions.push(Action::Command(Command::ListEarlier));
    }
    if has_left_work && ui.button(speaker.word("safekeeping-found-menu")).clicked() {
        view.navigation.push(Navigation::FoundWork);
    }
}

/// Has the file looked at every few seconds and at once when the window gets the focus, although nobody moves the mouse.
pub(super) fn keep_looking(ctx: &Context, workbench: &mut Workbench) {
    let Some(next_look) = workbench.next_look() else {
        return;
    };
    let comes_back = ctx.input(|input| {
        input
            .raw
            .events
            .iter()
            .any(|event| matches!(event, egui::Event::WindowFocused(true)))
    });
    if comes_back {
        workbench.look_at_disk();
    }
    ctx.request_repaint_after(next_look);
}
