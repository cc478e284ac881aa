//! By day, by night, and either with the most contrast.

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
    /// Black on white, for whoever needs it in daylight.
    ContrastByDay,
}

impl Appearance {
    /// All of them, in the order in which a button goes through them.
    pub const ALL: [Self; 4] = [Self::Light, Self::Dark, Self::Contrast, Self::ContrastByDay];

    /// The one after this one, round and round.
    #[must_use]
    pub fn next(self) -> Self {
        match self {
            Self::Light => Self::Dark,
            Self::Dark => Self::Contrast,
            Self::Contrast => Self::ContrastByDay,
            Self::ContrastByDay => Self::Light,
        }
    }

    /// The colours of this appearance.
    pub fn palette(self) -> &'static Palette {
        match self {
            Self::Light => &palette::LIGHT,
            Self::Dark => &palette::DARK,
            Self::Contrast => &palette::CONTRAST,
            Self::ContrastByDay => &palette::CONTRAST_BY_DAY,
        }
    }

    pub(super) fn egui_theme(self) -> egui::Theme {
        match self {
            // egui knows two themes: high contrast takes the place of the one by day or by night while it is worn.
            Self::Light | Self::ContrastByDay => egui::Theme::Light,
            Self::Dark | Self::Contrast => egui::Theme::Dark,
        }
    }
}

/// What is marked beside the text field that is typed in, which always is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Marks {
    /// What has the keyboard.
    #[default]
    Keyboard,
    /// Nothing: the window is used by the pointer, which shows where it is itself.
    Nothing,
}

impl Marks {
    /// What is marked after these events: what has the keyboard from the first key on until the pointer is used again.
    pub(in crate::ui) fn after(self, events: &[egui::Event]) -> Self {
        use egui::Event;
        events.iter().fold(self, |marks, event| match event {
            Event::Key { pressed: true, .. } | Event::AccessKitActionRequest(_) => Self::Keyboard,
            Event::PointerButton { pressed: true, .. } | Event::Touch { .. } => Self::Nothing,
            _ => marks,
        })
    }
}
