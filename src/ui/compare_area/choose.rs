//! Which drinks stand beside the one in hand.

use egui::{Button, RichText, Ui};

use super::menu_state::MOST_BESIDE;
use super::state::CompareState;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::drink_menu::drinks_ui;
use crate::ui::theme::{self, TypeStyle};
use crate::workbench::Shown;

/// The other versions of the recipe as buttons, and every other drink in a list.
pub(super) fn choose_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut CompareState) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let is_full = state.beside.len() >= MOST_BESIDE;
    ui.horizontal_wrapped(|ui| {
        let words = RichText::new(speaker.word("compare-beside-it"));
        let words = words.font(TypeStyle::Small.font_id());
        ui.label(words.color(palette.text_quiet));
        let as_written = std::iter::once((None, speaker.word("version-original")));
        let versions = screen.recipe.versions.iter();
        let versions = versions.map(|version| (Some(version.id.clone()), version.name.as_str()));
        for (version, name) in as_written.chain(versions) {
            let shown = Shown {
                recipe: screen.recipe.id.clone(),
                version,
            };
            if shown != *screen.shown {
                toggle_ui(ui, speaker, name, shown, is_full, state);
            }
        }
        let another = speaker.word("compare-another");
        let another = ui.add_enabled_ui(!is_full, |ui| {
            let CompareState { beside, find, .. } = &mut *state;
            let name = |drink: &str| say!(speaker, "compare-beside-it-named", drink: drink);
            let is_chosen = |shown: &Shown| beside.contains(shown);
            ui.menu_button(another, |ui| drinks_ui(ui, screen, find, is_chosen, name))
        });
        if let Some(shown) = another.inner.inner.flatten() {
            state.toggle(shown);
        }
        if is_full {
            let words = RichText::new(speaker.word("compare-full"));
            ui.label(words.color(palette.text_quiet));
        }
    });
}

fn toggle_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    name: &str,
    shown: Shown,
    is_full: bool,
    state: &mut CompareState,
) {
    let is_beside = state.beside.contains(&shown);
    let name = name_as_shown(name);
    let button = Button::selectable(is_beside, name.as_ref());
    if ui
        .add_enabled(is_beside || !is_full, button)
        .accessible_name(say!(speaker, "compare-beside-it-named", drink: name))
        .clicked()
    {
        state.toggle(shown);
    }
}
