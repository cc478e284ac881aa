//! What the frame round the areas remembers, and from which width on it shows what.

use super::drink_rows::{DrinkPlaces, DrinksFor};

/// Below this width of the window, in points, the drinks are hidden until they are asked for, and the level stands below the recipe.
pub(super) const SLIM: f32 = 860.0;

/// What the frame remembers between frames.
#[derive(Default)]
pub(in crate::ui) struct ShellState {
    /// What is searched for in the list of drinks.
    pub(super) wanted: DrinksFor,
    /// Where the rows of that list are.
    pub(super) places: DrinkPlaces,
}
