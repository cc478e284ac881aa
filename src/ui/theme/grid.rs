//! Distances: everything stands on a grid of four points.

/// The step of the grid, in points.
pub const STEP: f32 = 4.0;
/// Between a figure and its unit, an icon and its word.
pub const TIGHT: f32 = STEP;
/// Between things that belong together: fields of one row.
pub const NEAR: f32 = 2.0 * STEP;
/// Inside panels and windows, and between rows that are read one by one.
pub const EASY: f32 = 3.0 * STEP;
/// Between groups.
pub const APART: f32 = 6.0 * STEP;
/// Between the work areas of a screen.
pub const FAR: f32 = 10.0 * STEP;

/// Height of anything that can be pressed, in points; above the 24 that WCAG 2.2 asks for in 2.5.8.
pub const TARGET: f32 = 7.0 * STEP;
/// Side of an icon's drawing, in points.
pub const ICON: f32 = 4.0 * STEP;

/// Corner radius of buttons and fields, in points.
pub const CORNER: u8 = 4;
/// Corner radius of windows and menus, in points.
pub const CORNER_WINDOW: u8 = 8;

/// Width of a rule or an outline, in points.
pub const HAIRLINE: f32 = 1.0;
/// Width of the focus ring, in points.
pub const FOCUS_RING: f32 = 2.0;
