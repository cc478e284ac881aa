//! Draws the workbench and returns what the person wants; decides nothing about drinks and touches no disk.

pub mod icons;
mod screen;
pub mod theme;
pub mod widgets;

pub use screen::Screen;
