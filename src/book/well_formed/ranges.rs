//! What numbers of a book can be at all, where several checks ask for it.

use crate::book::FigureRange;

/// Longest name that is repeated in a finding, in characters.
pub(super) const NAME: usize = 60;

/// Temperatures of ingredients, vessels and lines.
pub const FOOD_TEMPERATURE: FigureRange = FigureRange::new(-40.0, 100.0, "°C");

/// Temperatures at which drinks are drunk, and of rooms.
pub(super) const DRINKING_TEMPERATURE: FigureRange = FigureRange::new(-10.0, 100.0, "°C");

/// Sugar and ice levels.
pub(super) const LEVEL: FigureRange = FigureRange::new(0.0, 200.0, "%");

/// What doubts are multiplied by.
pub(super) const DOUBT_TIMES: FigureRange = FigureRange::new(0.05, 20.0, "");
