//! What the window finds again tomorrow: the last book, the books before it, how the screen looked. Books keep none of it.

use std::path::PathBuf;

use eframe::Storage;
use egui::Context;

use super::theme::Appearance;
use super::view_state::ViewState;
use crate::balance::Lens;
use crate::book::{RecipeId, VersionId};
use crate::quantity::{TemperatureUnit, VolumeUnit};
use crate::say::Language;
use crate::workbench::{Home, Shown};

const BOOK: &str = "book";
const RECENT: &str = "recent books";
const APPEARANCE: &str = "appearance";
const ZOOM: &str = "zoom";
const WINDOW_ZOOM: &str = "zoom of the window";
const LENS: &str = "lens";
const TEMPERATURE: &str = "temperature unit";
const VOLUME: &str = "volume unit";
const LANGUAGE: &str = "language";
const RECIPE: &str = "recipe";
const VERSION: &str = "version";

const DARK: &str = "dark";
const LIGHT: &str = "light";
const CONTRAST: &str = "contrast";
const CONTRAST_BY_DAY: &str = "contrast by day";

/// Zoom factors that leave the window readable; others are taken for a damaged file.
const ZOOMS: std::ops::RangeInclusive<f32> = 0.5..=3.0;

/// The zoom at which the size of the window was kept: that is counted in points, and the window is made before it is zoomed.
pub(super) fn window_zoom(storage: &dyn Storage) -> Option<f32> {
    let zoom = storage.get_string(WINDOW_ZOOM)?.parse().ok()?;
    Some(zoom).filter(|zoom| ZOOMS.contains(zoom))
}

/// Reads what was kept into the view; the last book comes back. What can't be read is left as it is.
pub(super) fn read(storage: &dyn Storage, view: &mut ViewState, ctx: &Context) -> Option<PathBuf> {
    let text = |key: &str| storage.get_string(key).filter(|text| !text.is_empty());
    match text(APPEARANCE).as_deref() {
        Some(DARK) => view.appearance = Appearance::Dark,
        Some(CONTRAST) => view.appearance = Appearance::Contrast,
        Some(CONTRAST_BY_DAY) => view.appearance = Appearance::ContrastByDay,
        _ => {}
    }
    if let Some(zoom) = text(ZOOM)
        .and_then(|text| text.parse().ok())
        .filter(|zoom| ZOOMS.contains(zoom))
    {
        ctx.set_zoom_factor(zoom);
    }
    if let Some(word) = text(LENS) {
        view.lens = Lens::ALL
            .into_iter()
            .find(|lens| lens.word() == word)
            .unwrap_or_default();
    }
    if let Some(symbol) = text(TEMPERATURE) {
        let mut all = TemperatureUnit::ALL.into_iter();
        view.units.temperature = all.find(|unit| unit.symbol() == symbol).unwrap_or_default();
    }
    if let Some(symbol) = text(VOLUME) {
        let mut all = VolumeUnit::ALL.into_iter();
        view.units.volume = all.find(|unit| unit.symbol() == symbol).unwrap_or_default();
    }
    if let Some(code) = text(LANGUAGE) {
        view.language = Language::from_code(&code)
            .filter(|language| language.is_whole())
            .unwrap_or_default();
    }
    view.shown = text(RECIPE)
        .and_then(|recipe| RecipeId::new(&recipe).ok())
        .map(|recipe| Shown {
            recipe,
            version: text(VERSION).and_then(|version| VersionId::new(&version).ok()),
        });
    view.recent = text(RECENT)
        .map(|paths| paths.lines().map(PathBuf::from).collect())
        .unwrap_or_default();
    text(BOOK).map(PathBuf::from)
}

/// Keeps what should be there again.
pub(super) fn write(storage: &mut dyn Storage, view: &ViewState, home: &Home, ctx: &Context) {
    let book = match home {
        Home::File(path) => path.display().to_string(),
        Home::Nowhere(_) => String::new(),
    };
    let recent: Vec<String> = view
        .recent
        .iter()
        .map(|path| path.display().to_string())
        .collect();
    let appearance = match view.appearance {
        Appearance::Light => LIGHT,
        Appearance::Dark => DARK,
        Appearance::Contrast => CONTRAST,
        Appearance::ContrastByDay => CONTRAST_BY_DAY,
    };
    let shown = view.shown.as_ref();
    let version = shown.and_then(|shown| shown.version.as_ref());
    storage.set_string(BOOK, book);
    storage.set_string(RECENT, recent.join("\n"));
    storage.set_string(APPEARANCE, appearance.to_owned());
    let zoom = ctx.zoom_factor();
    storage.set_string(ZOOM, view.own_zoom.unwrap_or(zoom).to_string());
    storage.set_string(WINDOW_ZOOM, zoom.to_string());
    storage.set_string(LENS, view.lens.word().to_owned());
    storage.set_string(TEMPERATURE, view.units.temperature.symbol().to_owned());
    storage.set_string(VOLUME, view.units.volume.symbol().to_owned());
    storage.set_string(LANGUAGE, view.language.code().to_owned());
    storage.set_string(
        RECIPE,
        shown
            .map(|shown| shown.recipe.to_string())
            .unwrap_or_default(),
    );
    storage.set_string(
        VERSION,
        version.map(ToString::to_string).unwrap_or_default(),
    );
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::*;
    use crate::quantity::DisplayUnits;

    #[derive(Default)]
    struct Memory(BTreeMap<String, String>);

    impl Storage for Memory {
        fn get_string(&self, key: &str) -> Option<String> {
            self.0.get(key).cloned()
        }
        fn set_string(&mut self, key: &str, value: String) {
            self.0.insert(key.to_owned(), value);
        }
        fn remove_string(&mut self, key: &str) {
            self.0.remove(key);
        }
        fn flush(&mut self) {}
    }

    #[test]
    fn what_was_kept_comes_back() {
        let ctx = Context::default();
        let mut before = ViewState {
            lens: Lens::Heat,
            appearance: Appearance::Dark,
            units: DisplayUnits {
                temperature: TemperatureUnit::Fahrenheit,
                volume: VolumeUnit::FluidOunces,
            },
            ..ViewState::default()
        };
        before.remember_book(PathBuf::from("/books/one.ron"));
        before.remember_book(PathBuf::from("/books/two.ron"));
        before.shown = Some(Shown {
            recipe: RecipeId::new("tea").unwrap(),
            version: VersionId::new("iced").ok(),
        });
        let mut memory = Memory::default();
        write(
            &mut memory,
            &before,
            &Home::File(PathBuf::from("/books/two.ron")),
            &ctx,
        );
        let mut after = ViewState::default();
        assert_eq!(
            read(&memory, &mut after, &ctx),
            Some(PathBuf::from("/books/two.ron"))
        );
        assert_eq!(
            (after.lens, after.appearance),
            (Lens::Heat, Appearance::Dark)
        );
        assert_eq!(after.units, before.units);
        assert_eq!((after.recent, after.shown), (before.recent, before.shown));
    }

    #[test]
    fn what_is_larger_on_a_wall_is_not_at_the_next_start() {
        let ctx = Context::default();
        let zoom_to = |zoom: f32| {
            ctx.set_zoom_factor(zoom);
            ctx.run_ui(egui::RawInput::default(), |_| {})
                .drop_without_applying_deltas();
        };
        zoom_to(2.25);
        let view = ViewState {
            own_zoom: Some(1.25),
            ..ViewState::default()
        };
        let mut memory = Memory::default();
        write(
            &mut memory,
            &view,
            &Home::Nowhere(crate::workbench::Unfiled::New),
            &ctx,
        );
        assert_eq!(
            window_zoom(&memory),
            Some(2.25),
            "the window is made as large as it was"
        );
        zoom_to(1.0);
        let mut after = ViewState::default();
        read(&memory, &mut after, &ctx);
        zoom_to(ctx.zoom_factor());
        assert!(
            (ctx.zoom_factor() - 1.25).abs() < 1e-6,
            "{}",
            ctx.zoom_factor()
        );
        assert_eq!(after.own_zoom, None);
    }

    #[test]
    fn damaged_entries_are_passed_over() {
        let ctx = Context::default();
        let mut memory = Memory::default();
        for key in [ZOOM, LENS, RECIPE, APPEARANCE, TEMPERATURE, VOLUME] {
            memory.set_string(key, "Ünsinn 99".to_owned());
        }
        let mut view = ViewState::default();
        assert_eq!(read(&memory, &mut view, &ctx), None);
        assert_eq!((view.lens, view.shown), (Lens::Sugar, None));
        assert_eq!(view.units, DisplayUnits::METRIC);
    }
}
