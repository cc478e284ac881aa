//! A plot that is a picture: it stands still, and its words are read aloud.

use egui::{AsIdSalt, RichText, Sense, Vec2};
use egui_plot::Plot;

use crate::ui::theme::{Palette, TypeStyle};

/// A plot between two ends of each axis that can't be moved and says nothing under the pointer.
pub(in crate::ui) fn still_plot<'plot>(
    id: impl AsIdSalt,
    size: Vec2,
    x: (f64, f64),
    y: (f64, f64),
    palette: &Palette,
) -> Plot<'plot> {
    Plot::new(id)
        .width(size.x)
        .height(size.y)
        .default_x_bounds(x.0, x.1)
        .default_y_bounds(y.0, y.1)
        .auto_bounds(false)
        .reset()
        .allow_drag(false)
        .allow_zoom(false)
        .allow_scroll(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .show_background(false)
        .show_grid(false)
        .sense(Sense::hover())
        .cursor_color(palette.line)
        .label_formatter(|_| None)
}

/// What an axis is called.
pub(in crate::ui) fn axis_name(words: &str, palette: &Palette) -> RichText {
    let words = RichText::new(words).font(TypeStyle::Small.font_id());
    words.color(palette.text_quiet)
}
