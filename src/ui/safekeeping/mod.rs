//! What keeps a shop's work safe, as far as a person has to decide: unsaved work that was found, a file that another program
//! has changed, a file that would be replaced, earlier copies of the book, and the approvals of a recipe.

mod approvals;
mod changed_on_disk;
mod differences;
mod earlier_copies;
mod recovered_work;
mod replace_file;

use std::collections::BTreeSet;

use egui::{Context, Ui};

use super::area::Navigation;
use super::dialogs;
use super::view_state::ViewState;
use super::words::{speaker, subheading_ui as heading_ui};
use crate::book::{ItemId, Part};
use crate::say::{Speaker, say};
use crate::workbench::{Action, Command, Workbench};

pub(super) use self::approvals::{ComparedApprovals, approval_focus, approvals_ui};
pub(super) use self::changed_on_disk::strip_ui;

/// Width of the sheets, in points.
const WIDTH: f32 = 640.0;
const WIDTH_OF_TWO: f32 = 820.0;

/// Height of a sheet without its list, and of what is seen of the window around it, in points.
const REST_OF_SHEET: f32 = 340.0;

/// What is looked at and chosen, neither undone nor saved.
#[derive(Default)]
pub(super) struct SafekeepingState {
    /// How far the question about unsaved work that was found is.
    recovery: RecoveryAsked,
    /// The sheet about the change on the disk is open.
    disk_change_open: bool,
    /// What both sides have changed and of which theirs is taken.
    take_theirs: BTreeSet<Part>,
    /// The sheet of the earlier copies is open.
    earlier_open: bool,
    /// Items whose details are open, by the list that they stand in.
    unfolded: BTreeSet<(&'static str, ItemId)>,
}

/// The question about unsaved work that was found.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
enum RecoveryAsked {
    /// What becomes of it.
    #[default]
    Offered,
    /// Whether it is deleted for good: the second step before it is done.
    Delete,
    /// It is decided about later.
    Later,
}

impl SafekeepingState {
    /// Opens the sheet that somebody wants to be led to.
    pub(super) fn go(&mut self, to: &Navigation) {
        match to {
            Navigation::EarlierCopies => self.earlier_open = true,
            Navigation::FoundWork => self.recovery = RecoveryAsked::Offered,
            Navigation::DiskChange => self.disk_change_open = true,
            _ => {}
        }
    }

    /// Another book is open.
    pub(super) fn forget_book(&mut self) {
        *self = Self {
            recovery: self.recovery,
            ..Self::default()
        };
    }
}

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

/// Height of a list in a sheet, in points: what the window has, less the rest of the sheet.
fn room_for_list(ctx: &Context) -> f32 {
    (ctx.content_rect().height() - REST_OF_SHEET).max(120.0)
}

/// A button that is not the one that Enter means.
fn button_ui(ui: &mut Ui, words: &str, explanation: &str) -> bool {
    ui.button(words).on_hover_text(explanation).clicked()
}

fn command(actions: &mut Vec<Action>, command: Command) {
    actions.push(Action::Command(command));
}

/// "41 kB".
fn size_words(speaker: Speaker<'_>, bytes: u64) -> String {
    const KILO: u64 = 1000;
    match bytes {
        0..1_000 => say!(speaker, "safekeeping-bytes", count: bytes),
        1_000..1_000_000 => {
            let size = bytes.div_ceil(KILO).to_string();
            say!(speaker, "safekeeping-kilobytes", size: size)
        }
        _ => {
            let digits = format!("{}.{}", bytes / (KILO * KILO), bytes / 100_000 % 10);
            say!(speaker, "safekeeping-megabytes", size: speaker.digits(&digits))
        }
    }
}

fn sentence_ui(ui: &mut Ui, words: &str) {
    ui.add(egui::Label::new(words).wrap());
}

/// A sheet with two columns.
fn wide_sheet_ui(ctx: &Context, name: &str, contents: impl FnOnce(&mut Ui)) -> bool {
    dialogs::wide_sheet(ctx, name, WIDTH_OF_TWO, |ui| {
        contents(ui);
        true
    })
}

fn sheet_ui(ctx: &Context, name: &str, contents: impl FnOnce(&mut Ui)) -> bool {
    dialogs::wide_sheet(ctx, name, WIDTH, |ui| {
        contents(ui);
        true
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_said_in_the_unit_that_fits() {
        for (bytes, words) in [
            (0, "0 bytes"),
            (1, "1 byte"),
            (999, "999 bytes"),
            (1_001, "2\u{a0}kB"),
            (5_242_880, "5.2\u{a0}MB"),
        ] {
            assert_eq!(size_words(Speaker::without_book(), bytes), words);
        }
    }
}
