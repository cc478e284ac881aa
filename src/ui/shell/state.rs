//! What the frame round the areas remembers, and from which width on it shows what.

use std::collections::BTreeSet;

use super::drink_rows::{DrinkPlaces, DrinksFor};
use crate::book::RecipeId;
use crate::cups::Cups;
use crate::ui::theme::grid;
use crate::workbench::{Look, Shown, Workbench};

/// Below this width of the window, in points, the drinks are hidden until they are asked for, and the level stands below the recipe.
pub(super) const SLIM: f32 = 860.0;

/// What the frame remembers between frames.
#[derive(Default)]
pub(in crate::ui) struct ShellState {
    /// What is searched for in the list of drinks.
    pub(super) wanted: DrinksFor,
    /// Where the rows of that list are.
    pub(super) places: DrinkPlaces,
    /// Drinks whose versions stay in the list: those that were in hand. Were they folded away when another is opened, that one
    /// would move from under the pointer.
    pub(super) unfolded: BTreeSet<RecipeId>,
    /// Height of the buttons below the drink in hand, in points: what was there stays free.
    pub(super) buttons: f32,
    /// Height of what is told at the foot, in the last frame, in points.
    pub(super) told_height: f32,
    /// Whether the cautions that may be folded are shown.
    pub(super) cautions_open: bool,
    /// The cups of the drink in hand.
    pub(super) cups: CupsState,
}

impl ShellState {
    /// Asks for what is shown beside the level, in each frame in which it is in sight.
    pub(in crate::ui) fn look(&mut self, workbench: &mut Workbench, shown: Option<&Shown>) {
        let shown = shown.filter(|_| self.cups.is_open);
        self.cups.look = shown.map_or_else(Look::default, |shown| workbench.cups(shown));
    }
}

/// The cups of the drink in hand.
pub(super) struct CupsState {
    /// Whether they are shown.
    pub(super) is_open: bool,
    /// What was drawn.
    pub(super) look: Look<Option<Cups>>,
    /// How high they were when they were last shown, in points.
    pub(super) height: f32,
}

impl Default for CupsState {
    fn default() -> Self {
        Self {
            is_open: false,
            look: Look::default(),
            height: USUAL_HEIGHT,
        }
    }
}

/// Height of the cups of a usual drink, in points.
const USUAL_HEIGHT: f32 = 130.0 * grid::STEP;
