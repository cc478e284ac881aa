//! Painted widgets that several work areas share: the level, the cup, bars of shares, the list of figures.

pub mod cup;
pub mod figure_list;
pub mod level;
pub mod share_bar;
pub mod why;

pub use cup::cup_ui;
pub use figure_list::figure_list_ui;
pub use level::{level_strip_ui, level_ui};
pub use share_bar::share_bar_ui;
pub use why::why_ui;
