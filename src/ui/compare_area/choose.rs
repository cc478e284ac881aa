//! Which drinks stand beside the one in hand.

use egui::{Button, RichText, ScrollArea, TextEdit, Ui};

use super::state::{CompareState, MOST_BESIDE};
use crate::book::WantedWords;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::workbench::Shown;

/// Most drinks that the list shows at once.
const MOST_FOUND: usize = 60;
/// Height of the list, in points.
const LIST: f32 = 80.0 * grid::STEP;

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
        ui.menu_button(another, |ui| list_ui(ui, screen, is_full, state));
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
        if is_beside {
            state.beside.retain(|other| *other != shown);
        } else {
            state.beside.push(shown);
        }
    }
}

fn list_ui(ui: &mut Ui, screen: &Screen<'_>, is_full: bool, state: &mut CompareState) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    ui.set_min_width(260.0);
    let hint = speaker.word("compare-find-hint");
    let field = TextEdit::singleline(&mut state.find).hint_text(hint);
    ui.add(field).on_hover_text(speaker.word("compare-find"));
    let wanted = WantedWords::of(&state.find);
    let mut found = 0;
    ScrollArea::vertical().max_height(LIST).show(ui, |ui| {
        'drinks: for recipe in &screen.book.recipes {
            if recipe.id == screen.recipe.id || recipe.cup.is_none() {
                continue;
            }
            let versions = recipe.versions.iter();
            let versions =
                versions.map(|version| (Some(version.id.clone()), version.name.as_str()));
            let as_written = std::iter::once((None, speaker.word("version-original")));
            for (version, name) in as_written.chain(versions) {
                if found >= MOST_FOUND {
                    break 'drinks;
                }
                let name = say!(speaker, "compare-drink", recipe: &recipe.name, version: name);
                if !wanted.are_in(&name) {
                    continue;
                }
                found += 1;
                let shown = Shown {
                    recipe: recipe.id.clone(),
                    version,
                };
                toggle_ui(ui, speaker, &name, shown, is_full, state);
            }
        }
        let words = match found {
            0 => "compare-none",
            MOST_FOUND => "compare-more",
            _ => return,
        };
        ui.label(RichText::new(speaker.word(words)).color(palette.text_quiet));
    });
}
