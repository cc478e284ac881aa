//! Variations of one drink that taste like it: less sugar, another size, hot or iced, less ice.

mod levels;
mod model;
mod rungs;
mod sizes;

use egui::{RichText, Ui};

use super::Screen;
use super::theme::{self, TypeStyle, grid};
use super::view_state::{Area, ViewState};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::swap::{Adapted, Ladder};
use crate::workbench::{Action, Look, Shown, Variation, Workbench};

pub(super) use levels::Kind;

/// From this width of the sheet on there are two columns, in points.
const TWO_COLUMNS: f32 = 250.0 * grid::STEP;
/// The widest column, in points.
const COLUMN: f32 = 190.0 * grid::STEP;

/// What this area remembers between frames.
#[derive(Clone, Debug, Default)]
pub(super) struct LadderState {
    /// Whether the names of the levels are open.
    levels_open: bool,
}

/// Shows a level of sugar or ice, by its number from 0, with the keyboard on its name.
pub(super) fn show_level(view: &mut ViewState, kind: Kind, at: usize) {
    view.area = Area::Variations;
    view.ladder.levels_open = true;
    view.focus_wanted = Some(levels::name_key(kind, at));
}

/// What was looked for in the background for this area.
#[derive(Default)]
pub(super) struct LadderLooks {
    ladder: Look<Option<Ladder>>,
    variations: Look<Vec<Variation>>,
}

impl LadderLooks {
    /// Asks the workbench for what the area shows.
    pub(super) fn take(workbench: &mut Workbench, shown: &Shown) -> Self {
        Self {
            ladder: workbench.ladder(shown),
            variations: workbench.variations(shown),
        }
    }
}

/// The variations of the version in hand.
pub(super) fn ladder_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    looks: &LadderLooks,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let name = RichText::new(name_as_shown(&screen.recipe.name)).font(TypeStyle::Title.font_id());
    ui.label(name.color(palette.text_strong));
    let version = screen
        .shown
        .version
        .as_ref()
        .and_then(|id| screen.recipe.version(id));
    let speaker = screen.speaker;
    let version = version.map_or(speaker.word("version-original").into(), |version| {
        name_as_shown(&version.name)
    });
    let words = match screen.standard {
        Some(standard) => {
            say!(speaker, "variations-compared-with-standard", version: version, day: &standard.date)
        }
        None => say!(speaker, "variations-compared-with-itself", version: version),
    };
    ui.label(RichText::new(words).color(palette.text_quiet));
    ui.add_space(grid::EASY);
    if ui.available_width() >= TWO_COLUMNS {
        let room = ui.available_width() - grid::FAR - grid::EASY;
        let each = (room / 2.0).min(COLUMN);
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::FAR;
            ui.vertical(|ui| {
                ui.set_width(each);
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                rungs::rungs_ui(ui, screen, &looks.ladder, view, actions);
                levels::levels_ui(ui, screen, view, actions);
            });
            ui.vertical(|ui| {
                ui.set_width(each);
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                sizes::sizes_ui(ui, screen, &looks.variations, view, actions);
            });
        });
    } else {
        rungs::rungs_ui(ui, screen, &looks.ladder, view, actions);
        levels::levels_ui(ui, screen, view, actions);
        ui.add_space(grid::APART);
        sizes::sizes_ui(ui, screen, &looks.variations, view, actions);
    }
    ui.add_space(grid::APART);
}

/// A paragraph.
fn words_ui(ui: &mut Ui, words: impl Into<String>, colour: egui::Color32) {
    ui.add(egui::Label::new(RichText::new(words).color(colour)).wrap());
}

/// A name in a room of its own, so that what stands behind it is aligned.
fn name_ui(ui: &mut Ui, name: &str, room: f32) {
    let size = egui::vec2(room, grid::TARGET);
    let layout = egui::Layout::left_to_right(egui::Align::Center);
    ui.allocate_ui_with_layout(size, layout, |ui| {
        ui.set_min_size(size);
        let palette = theme::palette(ui.visuals());
        let name = RichText::new(name).font(TypeStyle::Strong.font_id());
        ui.add(egui::Label::new(name.color(palette.text_strong)).truncate());
    });
}

/// Keeps a drink as a new version, and shows it.
fn keep(
    screen: &Screen<'_>,
    drink: &Adapted,
    wanted: &str,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let name = super::swap_area::version_name(screen.recipe, wanted);
    let (edit, id) = drink.accept(screen.recipe, screen.shown.version.as_ref(), &name);
    actions.push(Action::edit(edit, format!("recipe {}", screen.recipe.id)));
    view.swap.show_version = Some(id);
}
