//! Variations of one drink that taste like it: less sugar, another size, hot or iced, less ice.

mod kept;
mod levels;
mod matrix;
mod model;
mod rungs;
mod sizes;

use egui::{RichText, Ui};

use super::Screen;
use super::area::Navigation;
use super::area_of_work::{AreaOfWork, Desk};
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use crate::edit::Focus;
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::swap::{Ladder, Matrix};
use crate::workbench::{Action, Look, Shown, Variation, Workbench};

/// From this width of the sheet on there are two columns, in points.
const TWO_COLUMNS: f32 = 250.0 * grid::STEP;
/// The widest column, in points.
const COLUMN: f32 = 190.0 * grid::STEP;

/// What this area remembers between frames.
#[derive(Default)]
pub(super) struct LadderState {
    /// Whether the names of the levels are open.
    levels_open: bool,
    matrix: matrix::MatrixState,
    looks: LadderLooks,
}

impl AreaOfWork for LadderState {
    fn look(&mut self, workbench: &mut Workbench, shown: Option<&Shown>, _: &mut ViewState) {
        self.matrix.follow(shown);
        self.looks = shown.map_or_else(LadderLooks::default, |shown| {
            LadderLooks::take(workbench, shown, self.matrix.is_open)
        });
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        if let Some(screen) = desk.drink {
            ladder_area_ui(ui, screen, self, view, actions);
        }
    }

    fn go(&mut self, to: &Navigation) {
        self.levels_open |= matches!(to, Navigation::Levels);
    }

    fn open(&mut self, focus: &Focus) {
        self.levels_open |= matches!(focus, Focus::Level(_));
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// What was looked for in the background for this area.
#[derive(Default)]
struct LadderLooks {
    ladder: Look<Option<Ladder>>,
    variations: Look<Vec<Variation>>,
    matrix: Look<Option<Matrix>>,
}

impl LadderLooks {
    /// Asks the workbench for what the area shows.
    fn take(workbench: &mut Workbench, shown: &Shown, matrix: bool) -> Self {
        Self {
            ladder: workbench.ladder(shown),
            variations: workbench.variations(shown),
            matrix: if matrix {
                workbench.matrix(shown)
            } else {
                Look::default()
            },
        }
    }
}

/// The variations of the version in hand.
fn ladder_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut LadderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let LadderState {
        levels_open,
        matrix,
        looks,
    } = state;
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
                levels::levels_ui(ui, screen, levels_open, view, actions);
            });
            ui.vertical(|ui| {
                // The words of a button may make the first column wider in another language.
                ui.set_width(each.min(ui.available_width() - grid::EASY));
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                sizes::sizes_ui(ui, screen, &looks.variations, view, actions);
            });
        });
    } else {
        rungs::rungs_ui(ui, screen, &looks.ladder, view, actions);
        levels::levels_ui(ui, screen, levels_open, view, actions);
        ui.add_space(grid::APART);
        sizes::sizes_ui(ui, screen, &looks.variations, view, actions);
    }
    ui.add_space(grid::APART);
    matrix::matrix_ui(ui, screen, &looks.matrix, matrix, view, actions);
    ui.add_space(grid::APART);
}
