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
mod ladder_area;
mod lesson_area;
mod look_up;
mod opening_page;
mod recipe_area;
mod remembered;
mod safekeeping;
mod screen;
mod serving_area;
mod shell;
mod spreadsheet;
mod start;
pub mod swap_area;
mod tall_list;
pub mod theme;
mod unseen;
mod value;
mod view_state;
pub mod widgets;
mod window_icon;
mod words;
pub use crate::balance::wording;

pub use app::{App, Opening, WindowError, run};
pub use commands::UiCommand;
pub use screen::Screen;
pub use start::{Start, window_options};
pub use view_state::{Area, Draft, Drafts, ViewState};
