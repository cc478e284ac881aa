//! A search that takes longer than a frame: how far it is, and the way to stop it.

use egui::{RichText, Ui};

use crate::say::{Speaker, say};
use crate::ui::{theme, words};
use crate::workbench::{Action, Command, LookState};

/// How often the figures are drawn anew, in seconds.
const EVERY: f32 = 0.1;

/// What a search does one after the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Parts {
    /// Combinations of amounts of one drink.
    Amounts,
    /// A swap in each recipe that uses an ingredient.
    Recipes,
    /// The figures of each recipe of the menu.
    Menu,
    /// Sugar levels of a drink.
    Levels,
    /// Sizes, hot or iced, and ice levels of a drink.
    Variations,
}

impl Parts {
    /// The key by which a message chooses.
    fn key(self) -> &'static str {
        match self {
            Self::Amounts => "amounts",
            Self::Recipes => "recipes",
            Self::Menu => "menu",
            Self::Levels => "levels",
            Self::Variations => "variations",
        }
    }
}

/// Says how far a search is; nothing when it has ended.
pub(in crate::ui) fn progress_ui(
    ui: &mut Ui,
    state: LookState,
    parts: Parts,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = words::speaker(ui.ctx());
    match state {
        LookState::Idle | LookState::Done => {}
        LookState::Running { .. } => {
            let words = running_words(speaker, state, parts);
            ui.horizontal(|ui| {
                ui.label(RichText::new(words).color(palette.text_quiet));
                if ui.button(speaker.word("swap-screen-stop")).clicked() {
                    actions.push(Action::Command(Command::StopSearching));
                }
            });
            ui.request_repaint_after(std::time::Duration::from_secs_f32(EVERY));
        }
        LookState::Stopped => {
            ui.horizontal(|ui| {
                let words = speaker.word("swap-screen-stopped");
                ui.label(RichText::new(words).color(palette.caution));
                if ui
                    .button(speaker.word("swap-screen-search-again"))
                    .clicked()
                {
                    actions.push(Action::Command(Command::SearchAgain));
                }
            });
        }
    }
}

fn running_words(speaker: Speaker<'_>, state: LookState, parts: Parts) -> String {
    match state {
        LookState::Running {
            parts: Some((done, all)),
            ..
        } => say!(speaker, "swap-screen-searching-parts", parts: parts.key(), done: done, all: all),
        LookState::Running { boxes, .. } if boxes > 0 => {
            say!(speaker, "swap-screen-searching-groups", count: boxes)
        }
        _ => speaker.word("swap-screen-searching").to_owned(),
    }
}
