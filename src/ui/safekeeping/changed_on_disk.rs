//! The file was changed by another program: a strip says so at once, and a sheet asks what is done about it.

use egui::{Align, Button, Context, Frame, Label, Layout, Margin, Panel, RichText, ScrollArea, Ui};

use super::differences::{differences_ui, item_name, sentences_ui};
use super::{
    SafekeepingState, button_ui, command, heading_ui, room_for_list, sentence_ui, sheet_ui,
};
use crate::book::{Book, Conflict, ItemId};
use crate::say::Speaker;
use crate::ui::dialogs::{Dialog, main_button_ui, quiet_ui, title_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::workbench::{Action, Command, DiskChange, Home, Theirs, Workbench};

/// What "Later" and "Decide…" mean.
const IF_CHANGED: [&str; 2] = [
    "Nothing is overwritten. Evensip asks again before it saves.",
    "See what differs, and reload, merge or keep a copy",
];
const IF_GONE: [&str; 2] = [
    "The book counts as unsaved until a file holds it again; saving writes it there",
    "Save it there again, or under another name",
];

/// The strip below the top of the window.
pub(in crate::ui) fn strip_ui(
    ui: &mut Ui,
    change: Option<&DiskChange>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Some(change) = change.filter(|change| !change.at_save) else {
        return;
    };
    let palette = theme::palette(ui.visuals());
    let frame = Frame::new()
        .fill(palette.caution_fill)
        .inner_margin(Margin::symmetric(16, 4));
    Panel::top("disk change")
        .resizable(false)
        .show_separator_line(false)
        .frame(frame)
        .show(ui, |ui| {
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                let is_gone = matches!(change.theirs, Theirs::Gone);
                let [later, decide] = if is_gone { IF_GONE } else { IF_CHANGED };
                if button_ui(ui, "Later", later) {
                    command(actions, Command::LeaveDiskChange);
                }
                if button_ui(ui, "Decide…", decide) {
                    view.safekeeping.disk_change_open = true;
                }
                ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                    let text = RichText::new(strip_words(change))
                        .font(TypeStyle::Body.font_id())
                        .color(palette.text_strong);
                    ui.add(Label::new(text).wrap());
                });
            });
        });
}

fn name_of(change: &DiskChange) -> String {
    change.path.file_name().map_or_else(
        || change.path.display().to_string(),
        |name| name.to_string_lossy().into_owned(),
    )
}

fn strip_words(change: &DiskChange) -> String {
    let name = name_of(change);
    match &change.theirs {
        Theirs::Book {
            difference,
            conflicts,
            ..
        } => {
            let both = match conflicts.len() {
                0 => String::new(),
                1 => "; you have changed one of them, too".to_owned(),
                several => format!("; you have changed {several} of them, too"),
            };
            let difference = Speaker::without_book().book_difference(difference);
            format!("Another program has changed “{name}”: {difference}{both}")
        }
        Theirs::Unreadable { .. } => {
            format!("Another program has made “{name}” something that is no book")
        }
        Theirs::Gone => format!(
            "“{name}” was deleted, renamed or moved. The book is still open but unsaved: save it again, here or elsewhere"
        ),
    }
}

/// The sheet in which it is decided.
pub(super) fn disk_change_ui(
    ctx: &Context,
    workbench: &Workbench,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Some(change) = workbench.disk_change() else {
        return;
    };
    let mut done = false;
    let stays = sheet_ui(ctx, "changed on disk", |ui| {
        heading_of_change_ui(ui, change);
        match &change.theirs {
            Theirs::Book {
                book,
                difference,
                conflicts,
            } => {
                let base = workbench.saved_book();
                let state = &mut view.safekeeping;
                ScrollArea::vertical()
                    .max_height(room_for_list(ctx))
                    .auto_shrink([false, true])
                    .show(ui, |ui| {
                        if !conflicts.is_empty() {
                            heading_ui(ui, "Changed here and in the file");
                        }
                        for conflict in conflicts {
                            conflict_ui(ui, conflict, [base, workbench.book(), book], state);
                        }
                        heading_ui(ui, "Changed in the file");
                        differences_ui(ui, "theirs", difference, &mut state.unfolded, |item| {
                            Speaker::new(book)
                                .item_details(&Book::item_differences(base, book, item))
                        });
                        heading_ui(ui, "Changed here and not saved");
                        differences_ui(ui, "mine", &change.mine, &mut state.unfolded, |item| {
                            let mine = workbench.book();
                            Speaker::new(mine)
                                .item_details(&Book::item_differences(base, mine, item))
                        });
                    });
                ui.add_space(grid::EASY);
                done = choices_ui(ui, change, conflicts, state, actions);
            }
            Theirs::Unreadable { reason } => {
                sentence_ui(ui, reason);
                ui.add_space(grid::EASY);
                ui.horizontal(|ui| done = unreadable_choices_ui(ui, actions));
            }
            Theirs::Gone => {
                sentence_ui(
                    ui,
                    "The file was deleted, renamed or moved. The whole book is still open with all your changes, but it is unsaved. If the file was only renamed, open it under its new name, or put it back: Evensip will notice.",
                );
                ui.add_space(grid::NEAR);
                ui.horizontal(|ui| done = gone_choices_ui(ui, change, view, actions));
            }
        }
    });
    if !stays && !done {
        if change.at_save {
            command(actions, Command::LeaveDiskChange);
        }
        done = true;
    }
    if done {
        view.safekeeping.disk_change_open = false;
        view.safekeeping.take_theirs.clear();
    }
}

fn heading_of_change_ui(ui: &mut Ui, change: &DiskChange) {
    let name = name_of(change);
    title_ui(
        ui,
        &match &change.theirs {
            Theirs::Book { .. } => format!("“{name}” was changed by another program"),
            Theirs::Unreadable { .. } => format!("“{name}” is no book any more"),
            Theirs::Gone => format!("“{name}” is no longer in its folder"),
        },
    );
    quiet_ui(ui, &change.path.display().to_string());
    if change.at_save {
        sentence_ui(ui, "Nothing was saved, and your changes are still here.");
    }
}

/// One item that both have changed: what each did, and whose is taken.
fn conflict_ui(
    ui: &mut Ui,
    conflict: &Conflict,
    [base, mine, theirs]: [&Book; 3],
    state: &mut SafekeepingState,
) {
    let palette = theme::palette(ui.visuals());
    let name = item_name(&conflict.item, &conflict.name);
    let takes_theirs = state.take_theirs.contains(&conflict.item);
    ui.add_space(grid::TIGHT);
    ui.horizontal(|ui| {
        ui.label(RichText::new(&name).color(palette.text_strong));
        quiet_ui(ui, conflict.item.words().0);
        ui.add_space(grid::EASY);
        let mine = choice_ui(ui, "Mine", !takes_theirs, &format!("Keep mine of {name}"));
        let theirs = choice_ui(
            ui,
            "Theirs",
            takes_theirs,
            &format!("Take theirs of {name}"),
        );
        if theirs {
            state.take_theirs.insert(conflict.item.clone());
        } else if mine {
            state.take_theirs.remove(&conflict.item);
        }
    });
    for (whose, change, book) in [
        ("mine", conflict.mine, mine),
        ("theirs", conflict.theirs, theirs),
    ] {
        let details = Book::item_differences(base, book, &conflict.item);
        let sentences = Speaker::new(book).item_details(&details);
        ui.indent((whose, &name), |ui| {
            quiet_ui(ui, &format!("{whose}: {}", change.word()));
            if !sentences.is_empty() {
                sentences_ui(ui, &sentences, str::to_owned);
            }
        });
    }
}

fn choice_ui(ui: &mut Ui, words: &str, chosen: bool, name: &str) -> bool {
    let palette = theme::palette(ui.visuals());
    // Bold and with a frame: the choice is not told by its colour alone.
    let style = if chosen {
        TypeStyle::Strong
    } else {
        TypeStyle::Body
    };
    let text = RichText::new(words)
        .font(style.font_id())
        .color(palette.text_strong);
    ui.add(Button::selectable(chosen, text))
        .accessible_name(name)
        .clicked()
}

/// What can be done when both are books; `true` when something was chosen.
fn choices_ui(
    ui: &mut Ui,
    change: &DiskChange,
    conflicts: &[Conflict],
    state: &SafekeepingState,
    actions: &mut Vec<Action>,
) -> bool {
    let before = actions.len();
    let unsaved = !change.mine.is_empty();
    ui.horizontal_wrapped(|ui| {
        if unsaved {
            if main_button_ui(ui, "Merge", true) {
                let is_asked =
                    |item: &&ItemId| conflicts.iter().any(|conflict| conflict.item == **item);
                let take_theirs = state.take_theirs.iter().filter(is_asked).cloned().collect();
                command(actions, Command::MergeWithDisk { take_theirs });
            }
            if button_ui(
                ui,
                "Use the file",
                "The book of the file comes in place of what is on the screen",
            ) {
                command(actions, Command::TakeTheirs);
            }
            keep_copy_ui(ui, actions);
            save_over_ui(ui, actions);
        } else if main_button_ui(ui, "Reload", true) {
            command(actions, Command::TakeTheirs);
        }
        later_ui(ui, actions);
    });
    let words = if unsaved {
        "Merging and taking theirs are one step each, which undo takes back."
    } else {
        "Reloading is one step, which undo takes back."
    };
    quiet_ui(ui, words);
    actions.len() > before
}

fn unreadable_choices_ui(ui: &mut Ui, actions: &mut Vec<Action>) -> bool {
    let before = actions.len();
    if main_button_ui(ui, "Keep mine as a copy", true) {
        command(actions, Command::KeepMineAsCopy);
    }
    save_over_ui(ui, actions);
    later_ui(ui, actions);
    actions.len() > before
}

fn gone_choices_ui(
    ui: &mut Ui,
    change: &DiskChange,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let before = actions.len();
    if main_button_ui(ui, "Save it there again", true) {
        command(actions, Command::OverwriteDisk);
    }
    if ui.button("Save as…").clicked() {
        command(actions, Command::LeaveDiskChange);
        view.dialog = Some(Dialog::save_as(&Home::File(change.path.clone())));
    }
    if button_ui(ui, "Later", IF_GONE[0]) {
        command(actions, Command::LeaveDiskChange);
    }
    actions.len() > before
}

fn keep_copy_ui(ui: &mut Ui, actions: &mut Vec<Action>) {
    if button_ui(
        ui,
        "Keep mine as a copy",
        "Save what is on the screen beside the file, under another name, and go on there",
    ) {
        command(actions, Command::KeepMineAsCopy);
    }
}

fn save_over_ui(ui: &mut Ui, actions: &mut Vec<Action>) {
    if button_ui(
        ui,
        "Save over it",
        "The present file is kept as an earlier copy",
    ) {
        command(actions, Command::OverwriteDisk);
    }
}

fn later_ui(ui: &mut Ui, actions: &mut Vec<Action>) {
    if button_ui(ui, "Later", IF_CHANGED[0]) {
        command(actions, Command::LeaveDiskChange);
    }
}
