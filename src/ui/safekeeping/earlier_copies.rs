//! Earlier copies of the book: when each was saved, how it differs from the book on the screen, and what can be done with it.

use egui::{Align, Button, Context, Layout, RichText, ScrollArea, Ui, vec2};

use super::differences::differences_ui;
use super::sheet::{button_ui, command, sentence_ui, size_words, wide_sheet_ui};
use super::state::SafekeepingState;
use crate::say::{Speaker, say};
use crate::ui::modal::title_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::speaker;
use crate::ui::words::{quiet_ui, subheading_ui};
use crate::workbench::{
    Action, ChangesSince, Command, EarlierBook, EarlierCopy, Home, Intent, Snapshot, Workbench,
    exact_moment_words,
};

/// Width of the list and height of both columns, in points.
const LIST: f32 = 264.0;
const HEIGHT: f32 = 340.0;

pub(super) fn earlier_ui(
    ctx: &Context,
    workbench: &Workbench,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) {
    let (speaker, mut close) = (speaker(ctx), false);
    let stays = wide_sheet_ui(ctx, "earlier copies", |ui| {
        title_ui(ui, speaker.word("safekeeping-earlier"));
        match workbench.earlier_list() {
            None => sentence_ui(ui, speaker.word("safekeeping-earlier-looking")),
            Some(Err(reason)) => sentence_ui(ui, reason),
            Some(Ok(copies)) if copies.is_empty() => none_ui(ui, speaker, workbench.home()),
            Some(Ok(copies)) => {
                quiet_ui(ui, speaker.word("safekeeping-earlier-what"));
                ui.add_space(grid::NEAR);
                ui.horizontal_top(|ui| {
                    column_ui(ui, LIST, |ui| {
                        list_ui(ui, speaker, workbench, copies, actions);
                    });
                    ui.add_space(grid::EASY);
                    let rest = ui.available_width();
                    column_ui(ui, rest, |ui| {
                        close |= copy_ui(ui, speaker, workbench, state, actions);
                    });
                });
            }
        }
        ui.add_space(grid::EASY);
        close |= ui.button(speaker.word("safekeeping-close")).clicked();
    });
    if close || !stays {
        state.earlier_open = false;
    }
}

fn column_ui(ui: &mut Ui, width: f32, contents: impl FnOnce(&mut Ui)) {
    let layout = Layout::top_down(Align::Min);
    ui.allocate_ui_with_layout(vec2(width, HEIGHT), layout, |ui| {
        ui.set_width(width);
        contents(ui);
    });
}

fn none_ui(ui: &mut Ui, speaker: Speaker<'_>, home: &Home) {
    let words = speaker.word(match home {
        Home::File(_) => "safekeeping-earlier-none",
        Home::Nowhere(_) => "safekeeping-earlier-no-file",
    });
    sentence_ui(ui, words);
}

fn list_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    workbench: &Workbench,
    copies: &[EarlierCopy],
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let looked_at = workbench.earlier_book().map(|(path, _)| path);
    ScrollArea::vertical()
        .id_salt("earlier list")
        .max_height(HEIGHT)
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for copy in copies {
                let chosen = looked_at == Some(copy.path.as_path());
                let moment = exact_moment_words(speaker, copy.saved);
                let text = RichText::new(moment).color(palette.text_strong);
                let button = Button::selectable(chosen, text)
                    .right_text(
                        RichText::new(size_words(speaker, copy.bytes))
                            .font(TypeStyle::Small.font_id())
                            .color(palette.text_quiet),
                    )
                    .min_size(vec2(LIST - grid::EASY, grid::TARGET));
                if ui.add(button).clicked() {
                    command(actions, Command::LookAtEarlier(copy.path.clone()));
                }
            }
        });
}

/// The copy in hand beside the book on the screen; `true` when the sheet should close.
fn copy_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    workbench: &Workbench,
    state: &mut SafekeepingState,
    actions: &mut Vec<Action>,
) -> bool {
    let Some((path, look)) = workbench.earlier_book() else {
        quiet_ui(ui, speaker.word("safekeeping-earlier-choose"));
        return false;
    };
    let earlier = match look {
        EarlierBook::Reading => {
            quiet_ui(ui, speaker.word("safekeeping-earlier-reading"));
            return false;
        }
        EarlierBook::Unreadable(reason) => {
            sentence_ui(ui, reason);
            return false;
        }
        EarlierBook::Read(book) => book,
    };
    let difference = workbench
        .answers()
        .to(&ChangesSince(Snapshot(earlier.clone())));
    let mut close = false;
    let holds = say!(
        speaker,
        "safekeeping-earlier-holds",
        recipes: earlier.recipes.len(),
        ingredients: earlier.ingredients.len(),
        measures: earlier.measures.len(),
        vessels: earlier.vessels.len(),
    );
    quiet_ui(ui, &holds);
    subheading_ui(ui, speaker.word("safekeeping-earlier-since"));
    ScrollArea::vertical()
        .id_salt("earlier differences")
        .max_height(HEIGHT - 110.0)
        .auto_shrink([false, true])
        .show(ui, |ui| {
            differences_ui(ui, "earlier", &difference, &mut state.unfolded, |item| {
                let speaker = speaker.about(workbench.book());
                speaker.item_changes(earlier, item, &[])
            });
        });
    ui.add_space(grid::NEAR);
    ui.horizontal(|ui| {
        ui.add_enabled_ui(!difference.is_empty(), |ui| {
            if button_ui(
                ui,
                speaker.word("safekeeping-earlier-restore"),
                speaker.word("safekeeping-earlier-restore-hint"),
            ) {
                command(actions, Command::RestoreEarlier(path.to_owned()));
                close = true;
            }
        });
        if button_ui(
            ui,
            speaker.word("safekeeping-earlier-open"),
            speaker.word("safekeeping-earlier-open-hint"),
        ) {
            command(actions, Command::Do(Intent::Open(path.to_owned())));
            close = true;
        }
    });
    close
}
