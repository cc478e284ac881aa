//! By day, by night, or with the most contrast.

use super::palette::{self, Palette};

/// Which set of colours the window wears.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Appearance {
    /// Dark ink on warm paper, for a counter in daylight.
    #[default]
    Light,
    /// Warm light on dark brown, for a bar at night.
    Dark,
    /// White on black, for whoever needs the most contrast.
    Contrast,
}

impl Appearance {
    /// All of them, in the order in which a button goes through them.
    pub const ALL: [Self; 3] = [Self::Light, Self::Dark, Self::Contrast];

    /// The one after this one, round and round.
    #[must_use]
    pub fn next(self) -> Self {
        match self {
            Self::Light => Self::Dark,
            Self::Dark => Self::Contrast,
            Self::Contrast => Self::Light,
        }
    }

    /// The colours of this appearance.
    pub fn palette(self) -> &'static Palette {
        match self {
            Self::Light => &palette::LIGHT,
            Self::Dark => &palette::DARK,
            Self::Contrast => &palette::CONTRAST,
        }
    }

    pub(super) fn egui_theme(self) -> egui::Theme {
        match self {
            Self::Light => egui::Theme::Light,
            // egui knows two themes: this look takes the place of the one by night while it is worn.
            Self::Dark | Self::Contrast => egui::Theme::Dark,
        }
    }
}
