//! Draws the workbench and returns what the person wants; decides nothing about drinks and touches no disk.

mod app;
pub mod card_area;
mod commands;
pub mod counter_area;
mod dialogs;
mod field;
pub mod icons;
mod recipe_area;
mod remembered;
mod screen;
mod serving_area;
mod shell;
pub mod swap_area;
pub mod theme;
mod view_state;
pub mod widgets;
pub mod wording;

pub use app::{App, Opening, WindowError, run};
pub use commands::UiCommand;
pub use screen::Screen;
pub use view_state::{Area, Draft, Drafts, ViewState};
