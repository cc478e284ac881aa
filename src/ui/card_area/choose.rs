//! What the card is for, on which paper, with which day.

use std::borrow::Cow;

use egui::{ComboBox, TextEdit, Ui};

use super::batch;
use super::model::{CardState, others};
use super::named_row::{LABEL, row_ui};
use super::tasting::tasting_ui;
use crate::book::VersionId;
use crate::cards::{CardKind, Paper};
use crate::quantity::name_as_shown;
use crate::say::Language;
use crate::ui::Screen;
use crate::ui::field::select_when_pressed;
use crate::ui::theme::grid;
use crate::ui::words::{capitalised, heading_ui, quiet_ui};

/// Most versions that are compared with the one in hand.
const MOST_BESIDE: usize = 3;

pub(super) fn choose_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut CardState) {
    let speaker = screen.speaker;
    let width = ui.available_width();
    for kind in CardKind::ALL {
        let words = capitalised(kind.words(&speaker));
        if ui.radio(state.kind == kind, words).clicked() {
            state.kind = kind;
            state.page = 0;
        }
    }
    ui.add_space(grid::EASY);
    if state.kind == CardKind::Comparison {
        beside_ui(ui, screen, state, MOST_BESIDE);
    }
    if matches!(state.kind, CardKind::Scores | CardKind::Pouring) {
        tasting_ui(ui, screen, &mut state.tasting);
        let others = state.tasting.design.samples() - 1;
        beside_ui(ui, screen, state, others);
    }
    let is_of_swap = matches!(state.kind, CardKind::Exercise | CardKind::Answers);
    if is_of_swap && state.exercise.is_none() {
        quiet_ui(ui, speaker.word("cards-screen-choose-swap"));
    }
    if matches!(state.kind, CardKind::Menu | CardKind::Figures) {
        let words = speaker.word("cards-screen-also-unapproved");
        if ui.checkbox(&mut state.also_unapproved, words).clicked() {
            state.page = 0;
        }
    }
    if state.kind == CardKind::Batch {
        batch::batch_ui(ui, screen, &mut state.batch);
    }
    let name = speaker.word("cards-screen-paper");
    row_ui(ui, name, |ui| {
        let chosen = state.paper();
        let combo = ComboBox::from_id_salt("paper")
            .selected_text(chosen.words(&speaker))
            .width((width - LABEL).min(180.0))
            .show_ui(ui, |ui| {
                for paper in Paper::ALL {
                    let words = paper.words(&speaker);
                    if ui.selectable_label(chosen == paper, words).clicked() {
                        state.paper = Some(paper);
                        state.inches = paper.is_in_inches();
                        state.page = 0;
                    }
                }
            });
        combo.response.accessible_name(name);
    });
    row_ui(ui, speaker.word("cards-screen-day"), |ui| {
        if let Some(date) = &mut state.date {
            let field = TextEdit::singleline(date)
                .desired_width(120.0)
                .hint_text(speaker.word("cards-screen-no-day"));
            let response = ui.add(field);
            select_when_pressed(ui, &response, date);
            response.accessible_name(speaker.word("cards-screen-day-field"));
        }
    });
    row_ui(ui, speaker.word("cards-screen-language"), |ui| {
        let combo = ComboBox::from_id_salt("language")
            .selected_text(state.language.name())
            .width((width - LABEL).min(180.0))
            .show_ui(ui, |ui| {
                for language in Language::all() {
                    ui.selectable_value(&mut state.language, language, language.name());
                }
            });
        combo
            .response
            .accessible_name(speaker.word("cards-screen-language-field"));
    });
}

/// The name of a version of the recipe in hand.
pub(super) fn version_name<'frame>(
    screen: &Screen<'frame>,
    version: Option<&VersionId>,
) -> Cow<'frame, str> {
    let version = version.and_then(|id| screen.recipe.version(id));
    let original = screen.speaker.word("version-original");
    version.map_or(original.into(), |version| name_as_shown(&version.name))
}

/// The versions that stand beside the one in hand.
fn beside_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut CardState, most: usize) {
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("cards-screen-beside"));
    let others = others(screen.recipe, screen.shown.version.as_ref());
    if others.is_empty() {
        quiet_ui(ui, speaker.word("cards-screen-one-version"));
    }
    for other in others {
        let name = version_name(screen, other.as_ref());
        let mut chosen = state.beside.contains(&other);
        let is_full = state.beside.len() >= most && !chosen;
        let clicked = ui
            .add_enabled_ui(!is_full, |ui| {
                ui.checkbox(&mut chosen, name.as_ref()).clicked()
            })
            .inner;
        if clicked && chosen {
            state.beside.push(other);
        } else if clicked {
            state.beside.retain(|kept| *kept != other);
        }
    }
    ui.add_space(grid::EASY);
}
