//! The file was changed by another program: a strip says so at once, and a sheet asks what is done about it.

use std::collections::BTreeSet;
use std::sync::Arc;

use egui::{Align, Button, Context, Frame, Label, Layout, Margin, RichText, ScrollArea, Ui, vec2};

use super::differences::{change_word, differences_ui, item_name, kind_word, sentences_ui};
use super::sheet::{button_ui, command, room_for_list, sentence_ui, sheet_ui};
use super::state::SafekeepingState;
use crate::book::{Book, Conflict, ItemId, Part};
use crate::say::{Speaker, say};
use crate::ui::area::Navigation;
use crate::ui::book_in_hand::BookInHand;
use crate::ui::dialog::Dialog;
use crate::ui::modal::{main_button_ui, title_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::speaker;
use crate::ui::words::{quiet_ui, subheading_ui};
use crate::workbench::{
    Action, Answers, ChangesSince, Command, ConflictsWith, DiskChange, Home, Snapshot, Theirs,
    Workbench,
};

/// The messages of what "Later" and "Decide…" mean.
const IF_CHANGED: [&str; 2] = [
    "safekeeping-later-changed-hint",
    "safekeeping-decide-changed-hint",
];
const IF_GONE: [&str; 2] = [
    "safekeeping-later-gone-hint",
    "safekeeping-decide-gone-hint",
];

/// Whether there is something to tell.
pub(in crate::ui) fn has_strip(in_hand: &BookInHand<'_>) -> bool {
    let change = in_hand.disk_change;
    change.is_some_and(|change| !change.at_save)
}

/// Tells of it and asks, where what is told stands.
pub(in crate::ui) fn strip_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Some(change) = in_hand.disk_change.filter(|change| !change.at_save) else {
        return;
    };
    let (palette, speaker) = (theme::palette(ui.visuals()), speaker(ui.ctx()));
    let frame = Frame::new()
        .fill(palette.caution_fill)
        .inner_margin(Margin::symmetric(16, 0));
    frame.show(ui, |ui| {
        let line = vec2(ui.available_width(), grid::TARGET);
        ui.allocate_ui_with_layout(line, Layout::right_to_left(Align::Min), |ui| {
            let is_gone = matches!(change.theirs, Theirs::Gone);
            let hints = if is_gone { IF_GONE } else { IF_CHANGED };
            let [later, decide] = hints.map(|hint| speaker.word(hint));
            if button_ui(ui, speaker.word("safekeeping-later"), later) {
                command(actions, Command::LeaveDiskChange);
            }
            if button_ui(ui, speaker.word("safekeeping-decide"), decide) {
                view.navigation.push(Navigation::DiskChange);
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                let text = RichText::new(strip_words(speaker, in_hand, change))
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

/// What the book on the screen and the one in the file have both changed.
fn conflicts(answers: Answers<'_>, base: &Arc<Book>, theirs: &Arc<Book>) -> Arc<Vec<Conflict>> {
    let [theirs, base] = [theirs, base].map(|book| Snapshot(book.clone()));
    answers.to(&ConflictsWith { theirs, base })
}

fn strip_words(speaker: Speaker<'_>, in_hand: &BookInHand<'_>, change: &DiskChange) -> String {
    let name = name_of(change);
    match &change.theirs {
        Theirs::Book { book, difference } => {
            let conflicts = conflicts(in_hand.answers, in_hand.saved, book);
            let difference = speaker.book_difference(difference);
            if conflicts.is_empty() {
                say!(speaker, "safekeeping-strip-changed", name: name, difference: difference)
            } else {
                say!(
                    speaker,
                    "safekeeping-strip-changed-both",
                    name: name,
                    difference: difference,
                    count: items_of(&conflicts),
                )
            }
        }
        Theirs::Unreadable { .. } => say!(speaker, "safekeeping-strip-unreadable", name: name),
        Theirs::Gone => say!(speaker, "safekeeping-strip-gone", name: name),
    }
}

/// How many items the conflicts are about.
fn items_of(conflicts: &[Conflict]) -> usize {
    let items: BTreeSet<&ItemId> = conflicts.iter().map(|one| &one.part.item).collect();
    items.len()
}

/// The sheet in which it is decided.
pub(super) fn disk_change_ui(
    ctx: &Context,
    workbench: &Workbench,
    state: &mut SafekeepingState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Some(change) = workbench.disk_change() else {
        return;
    };
    let (speaker, mut done) = (speaker(ctx), false);
    let (answers, base) = (workbench.answers(), workbench.saved_book());
    let stays = sheet_ui(ctx, "changed on disk", |ui| {
        heading_of_change_ui(ui, speaker, change);
        match &change.theirs {
            Theirs::Book { book, difference } => {
                let conflicts = conflicts(answers, base, book);
                let mine = answers.to(&ChangesSince(Snapshot(base.clone())));
                ScrollArea::vertical()
                    .max_height(room_for_list(ctx))
                    .auto_shrink([false, true])
                    .show(ui, |ui| {
                        if !conflicts.is_empty() {
                            subheading_ui(ui, speaker.word("safekeeping-changed-both"));
                        }
                        for conflict in conflicts.iter() {
                            let books: [&Book; 3] = [base, workbench.book(), book];
                            conflict_ui(ui, speaker, conflict, books, state);
                        }
                        subheading_ui(ui, speaker.word("safekeeping-changed-in-file"));
                        differences_ui(ui, "theirs", difference, &mut state.unfolded, |item| {
                            speaker.about(book).item_changes(base, item, &[])
                        });
                        subheading_ui(ui, speaker.word("safekeeping-changed-here"));
                        differences_ui(ui, "mine", &mine, &mut state.unfolded, |item| {
                            let speaker = speaker.about(workbench.book());
                            speaker.item_changes(base, item, &[])
                        });
                    });
                ui.add_space(grid::EASY);
                done = choices_ui(ui, speaker, !mine.is_empty(), &conflicts, state, actions);
            }
            Theirs::Unreadable { reason } => {
                sentence_ui(ui, reason);
                ui.add_space(grid::EASY);
                ui.horizontal(|ui| done = unreadable_choices_ui(ui, speaker, actions));
            }
            Theirs::Gone => {
                sentence_ui(ui, speaker.word("safekeeping-gone"));
                ui.add_space(grid::NEAR);
                ui.horizontal(|ui| done = gone_choices_ui(ui, speaker, change, view, actions));
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
        state.disk_change_open = false;
        state.take_theirs.clear();
    }
}

fn heading_of_change_ui(ui: &mut Ui, speaker: Speaker<'_>, change: &DiskChange) {
    let name = name_of(change);
    let title = match &change.theirs {
        Theirs::Book { .. } => say!(speaker, "safekeeping-title-changed", name: name),
        Theirs::Unreadable { .. } => say!(speaker, "safekeeping-title-unreadable", name: name),
        Theirs::Gone => say!(speaker, "safekeeping-title-gone", name: name),
    };
    title_ui(ui, &title);
    quiet_ui(ui, &change.path.display().to_string());
    if change.at_save {
        sentence_ui(ui, speaker.word("safekeeping-nothing-saved"));
    }
}

/// What both have changed: what each did, and whose is taken.
fn conflict_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    conflict: &Conflict,
    [base, mine, theirs]: [&Book; 3],
    state: &mut SafekeepingState,
) {
    let palette = theme::palette(ui.visuals());
    let Part { item, fields } = &conflict.part;
    let name = item_name(speaker, item, &conflict.name);
    let kind = kind_word(speaker, item);
    let (kind, spoken_name) = if fields.is_empty() {
        (kind.to_owned(), name.clone())
    } else {
        let fields = speaker.and(&speaker.item_fields(&conflict.fields));
        (
            say!(speaker, "safekeeping-fields", kind: kind, fields: &fields),
            say!(speaker, "safekeeping-fields-of", fields: &fields, name: &name),
        )
    };
    let takes_theirs = state.take_theirs.contains(&conflict.part);
    ui.add_space(grid::TIGHT);
    ui.horizontal_wrapped(|ui| {
        ui.label(RichText::new(&name).color(palette.text_strong));
        quiet_ui(ui, &kind);
        ui.add_space(grid::EASY);
        let words = speaker.word("safekeeping-here");
        let spoken = say!(speaker, "safekeeping-here-of", name: &spoken_name);
        let mine = choice_ui(ui, words, !takes_theirs, &spoken);
        let words = speaker.word("safekeeping-in-file");
        let spoken = say!(speaker, "safekeeping-in-file-of", name: &spoken_name);
        let theirs = choice_ui(ui, words, takes_theirs, &spoken);
        if theirs {
            state.take_theirs.insert(conflict.part.clone());
        } else if mine {
            state.take_theirs.remove(&conflict.part);
        }
    });
    let change = change_word(speaker, conflict.mine);
    let did_here = say!(speaker, "safekeeping-did-here", change: change);
    let change = change_word(speaker, conflict.theirs);
    let did_in_file = say!(speaker, "safekeeping-did-in-file", change: change);
    for (whose, did, book) in [("mine", did_here, mine), ("theirs", did_in_file, theirs)] {
        let sentences = speaker.about(book).item_changes(base, item, fields);
        ui.indent((whose, &spoken_name), |ui| {
            quiet_ui(ui, &did);
            if !sentences.is_empty() {
                sentences_ui(ui, &sentences);
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
    speaker: Speaker<'_>,
    unsaved: bool,
    conflicts: &[Conflict],
    state: &SafekeepingState,
    actions: &mut Vec<Action>,
) -> bool {
    let before = actions.len();
    ui.horizontal_wrapped(|ui| {
        if unsaved {
            if main_button_ui(ui, speaker.word("safekeeping-merge"), true) {
                let is_asked =
                    |part: &&Part| conflicts.iter().any(|conflict| conflict.part == **part);
                let take_theirs = state.take_theirs.iter().filter(is_asked).cloned().collect();
                command(actions, Command::MergeWithDisk { take_theirs });
            }
            if button_ui(
                ui,
                speaker.word("safekeeping-use-file"),
                speaker.word("safekeeping-use-file-hint"),
            ) {
                command(actions, Command::TakeTheirs);
            }
            keep_copy_ui(ui, speaker, actions);
            save_over_ui(ui, speaker, actions);
        } else if main_button_ui(ui, speaker.word("safekeeping-reload"), true) {
            command(actions, Command::TakeTheirs);
        }
        later_ui(ui, speaker, actions);
    });
    let words = speaker.word(if unsaved {
        "safekeeping-merge-undo"
    } else {
        "safekeeping-reload-undo"
    });
    quiet_ui(ui, words);
    actions.len() > before
}

fn unreadable_choices_ui(ui: &mut Ui, speaker: Speaker<'_>, actions: &mut Vec<Action>) -> bool {
    let before = actions.len();
    if main_button_ui(ui, speaker.word("safekeeping-keep-copy"), true) {
        command(actions, Command::KeepMineAsCopy);
    }
    save_over_ui(ui, speaker, actions);
    later_ui(ui, speaker, actions);
    actions.len() > before
}

fn gone_choices_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    change: &DiskChange,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let before = actions.len();
    if main_button_ui(ui, speaker.word("safekeeping-save-again"), true) {
        command(actions, Command::OverwriteDisk);
    }
    if ui.button(speaker.word("safekeeping-save-as")).clicked() {
        command(actions, Command::LeaveDiskChange);
        view.dialog = Some(Dialog::save_as(&Home::File(change.path.clone())));
    }
    let [later, _] = IF_GONE.map(|hint| speaker.word(hint));
    if button_ui(ui, speaker.word("safekeeping-later"), later) {
        command(actions, Command::LeaveDiskChange);
    }
    actions.len() > before
}

fn keep_copy_ui(ui: &mut Ui, speaker: Speaker<'_>, actions: &mut Vec<Action>) {
    if button_ui(
        ui,
        speaker.word("safekeeping-keep-copy"),
        speaker.word("safekeeping-keep-copy-hint"),
    ) {
        command(actions, Command::KeepMineAsCopy);
    }
}

fn save_over_ui(ui: &mut Ui, speaker: Speaker<'_>, actions: &mut Vec<Action>) {
    if button_ui(
        ui,
        speaker.word("safekeeping-save-over"),
        speaker.word("safekeeping-save-over-hint"),
    ) {
        command(actions, Command::OverwriteDisk);
    }
}

fn later_ui(ui: &mut Ui, speaker: Speaker<'_>, actions: &mut Vec<Action>) {
    let [later, _] = IF_CHANGED.map(|hint| speaker.word(hint));
    if button_ui(ui, speaker.word("safekeeping-later"), later) {
        command(actions, Command::LeaveDiskChange);
    }
}
