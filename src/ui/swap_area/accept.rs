//! Keeping a swap: it becomes a new version with a name; neither the version in hand nor anything approved changes.

use egui::{TextEdit, Ui};

use super::model::version_name;
use super::state::SwapState;
use crate::book::{Change, ItemId};
use crate::edit::Focus;
use crate::say::say;
use crate::swap::{Answer, Suggestion};
use crate::ui::Screen;
use crate::ui::theme::{self, grid};
use crate::workbench::Action;

/// Width of the field for the name, in points.
const NAME: f32 = 80.0 * grid::STEP;

/// The name that a suggestion is given when nobody types another.
pub(super) fn wanted_name(
    screen: &Screen<'_>,
    answer: &Answer,
    suggestion: &Suggestion,
    state: &SwapState,
) -> String {
    let speaker = screen.speaker;
    let with = speaker.ingredient(&answer.question.with);
    if state.suggestion > 0 {
        let kind = speaker.suggestion_kind(suggestion.kind);
        say!(speaker, "swap-screen-name-with-kind", ingredient: with, kind: kind)
    } else {
        say!(speaker, "swap-version-name", ingredient: with)
    }
}

/// Name and main button that keep a drink with these changes.
pub(super) fn main_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    changes: &[Change],
    wanted: &str,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let mut name = state.suggestion_name.take();
    let palette = theme::palette(ui.visuals());
    let words = screen.speaker.word("swap-screen-keep");
    let words = egui::RichText::new(words).color(palette.on_accent);
    let button = egui::Button::new(words).fill(palette.accent);
    let field_name = screen.speaker.word("swap-screen-keep-name");
    let kept = keep_ui(ui, screen, wanted, &mut name, field_name, button);
    state.suggestion_name = name;
    if let Some(name) = kept {
        keep(screen, answer, changes, &name, state, actions);
    }
}

/// Name and button that keep the plain swap.
pub(super) fn plain_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    if answer.plain_changes.is_empty() {
        return;
    }
    let speaker = screen.speaker;
    let with = speaker.ingredient(&answer.question.with);
    let wanted = say!(speaker, "swap-screen-name-plain", ingredient: with);
    let mut name = state.plain_name.take();
    let button = egui::Button::new(speaker.word("swap-screen-keep-plain"));
    let field_name = speaker.word("swap-screen-keep-plain-name");
    let kept = keep_ui(ui, screen, &wanted, &mut name, field_name, button);
    state.plain_name = name;
    if let Some(name) = kept {
        keep(screen, answer, &answer.plain_changes, &name, state, actions);
    }
}

/// The name once the button is pressed. An empty name can't be kept.
fn keep_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    wanted: &str,
    name: &mut Option<String>,
    field_name: &str,
    button: egui::Button<'_>,
) -> Option<String> {
    let mut text = name
        .clone()
        .unwrap_or_else(|| version_name(screen.recipe, wanted));
    let field = TextEdit::singleline(&mut text).desired_width(NAME.min(ui.available_width()));
    if ui.add(field).accessible_name(field_name).changed() {
        *name = Some(text.clone());
    }
    let trimmed = text.trim();
    let pressed = ui.add_enabled(!trimmed.is_empty(), button).clicked();
    pressed.then(|| trimmed.to_owned())
}

fn keep(
    screen: &Screen<'_>,
    answer: &Answer,
    changes: &[Change],
    name: &str,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let (edit, id) = answer.accept(screen.recipe, changes, name);
    let item = ItemId::Recipe(screen.recipe.id.clone());
    actions.push(Action::edit(edit, Focus::Item(item)));
    *state = SwapState {
        show_version: Some(id),
        ..SwapState::default()
    };
}
