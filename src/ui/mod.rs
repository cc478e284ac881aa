//! Draws the workbench and returns what the person wants; decides nothing about drinks and touches no disk.

mod app;
pub mod card_area;
mod commands;
mod compare_area;
pub mod counter_area;
mod dialogs;
mod field;
mod glossary;
pub mod icons;
mod keys_sheet;
mod ladder_area;
mod lesson_area;
mod look_up;
mod recipe_area;
mod remembered;
mod safekeeping;
mod screen;
mod serving_area;
mod shell;
mod spreadsheet;
pub mod swap_area;
mod tall_list;
pub mod theme;
mod unseen;
mod value;
mod view_state;
pub mod widgets;
mod words;
pub use crate::balance::wording;

pub use app::{App, Opening, WindowError, run};
pub use commands::UiCommand;
pub use screen::Screen;
pub use view_state::{Area, Draft, Drafts, ViewState};
