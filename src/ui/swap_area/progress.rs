//! A search that takes longer than a frame: how far it is, and the way to stop it.

use egui::{RichText, Ui};

use crate::quantity::show_number;
use crate::ui::theme;
use crate::workbench::{Action, Command, LookState};

/// How often the figures are drawn anew, in seconds.
const EVERY: f32 = 0.1;

/// Says how far a search is; nothing when it has ended. `parts` says what its parts are.
pub(in crate::ui) fn progress_ui(
    ui: &mut Ui,
    state: LookState,
    parts: &str,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    match state {
        LookState::Idle | LookState::Done => {}
        LookState::Running { .. } => {
            let words = running_words(state, parts);
            ui.horizontal(|ui| {
                ui.label(RichText::new(words).color(palette.text_quiet));
                if ui.button("Stop the search").clicked() {
                    actions.push(Action::Command(Command::StopSearching));
                }
            });
            ui.request_repaint_after(std::time::Duration::from_secs_f32(EVERY));
        }
        LookState::Stopped => {
            ui.horizontal(|ui| {
                let words = "Search stopped. Start it again to see suggestions.";
                ui.label(RichText::new(words).color(palette.caution));
                if ui.button("Look again").clicked() {
                    actions.push(Action::Command(Command::SearchAgain));
                }
            });
        }
    }
}

fn running_words(state: LookState, parts: &str) -> String {
    match state {
        LookState::Running {
            parts: Some((done, all)),
            ..
        } => format!("Looking: {done} of {all} {parts} done."),
        LookState::Running { boxes, .. } if boxes > 0 => {
            let boxes = u32::try_from(boxes).unwrap_or(u32::MAX);
            let boxes = show_number(f64::from(boxes), 0);
            format!("Searching: {boxes} groups of amounts checked.")
        }
        _ => "Looking.".to_owned(),
    }
}
