//! Painted widgets that several work areas share: the level, the cup, bars of shares, the list of figures.

pub(super) mod asked_figure;
pub(super) mod cautions;
pub mod cup;
pub(super) mod cup_strip;
pub(super) mod facts;
mod figure;
pub mod figure_list;
mod figure_rows;
pub(super) mod figure_table;
pub(super) mod form;
pub mod level;
pub(super) mod name;
pub(super) mod pick_list;
pub mod share_bar;
pub(super) mod still_plot;
pub mod why;
mod word_menu;

pub use cup::cup_ui;
pub use figure_list::figure_list_ui;
pub use level::{
    LevelWords, level_height, level_moved_ui, level_strip_ui, level_ui, level_with_ui,
};
pub use share_bar::share_bar_ui;
pub use why::why_ui;
pub(super) use word_menu::{choice_ui, word_menu_ui};

use egui::Color32;

use crate::book::Role;
use crate::ui::theme::Palette;

/// The colour of a role.
pub fn role_colour(palette: &Palette, role: Role) -> Color32 {
    let roles = &palette.roles;
    match role {
        Role::Base => roles.base,
        Role::Flavour => roles.flavour,
        Role::Creamer => roles.creamer,
        Role::Sweetener => roles.sweetener,
        Role::Tea => roles.tea,
        Role::Water => roles.water,
        Role::Ice => roles.ice,
        Role::Topping => roles.topping,
        Role::Garnish => roles.garnish,
    }
}
