//! How a figure is painted: its decimal sign at a place that the figures below it share, its uncertainty behind it.

use egui::{Align2, Color32, Pos2, Rect, Response, Ui, pos2, vec2};

use super::share_bar::decimal_place;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
use crate::ui::words::speaker;

/// Digits with their decimal sign at a place; tells where they end, in points.
pub(in crate::ui) fn digits(
    ui: &Ui,
    at: Pos2,
    text: &str,
    (style, colour): (TypeStyle, Color32),
) -> f32 {
    let (whole, decimals) = text.split_at(decimal_place(text));
    let put = |align, text: &str| ui.painter().text(at, align, text, style.font_id(), colour);
    put(Align2::RIGHT_CENTER, whole);
    put(Align2::LEFT_CENTER, decimals).right()
}

/// What can be passed over beside a figure: its unit, its uncertainty.
pub(in crate::ui) fn quiet(ui: &Ui, at: Pos2, text: &str) {
    let colour = theme::palette(ui.visuals()).text_quiet;
    let font = TypeStyle::Small.font_id();
    ui.painter()
        .text(at, Align2::LEFT_CENTER, text, font, colour);
}

/// Draws a value with its decimal sign at a place, and its uncertainty so many points behind it.
pub(in crate::ui) fn figure(ui: &Ui, at: Pos2, value: &Value, uncertainty: f32) {
    let palette = theme::palette(ui.visuals());
    let painter = ui.painter();
    let speaker = speaker(ui.ctx());
    let Some(text) = value.digits_in(speaker) else {
        let words = speaker.word("serving-not-known");
        let font = TypeStyle::Small.font_id();
        painter.text(at, Align2::CENTER_CENTER, words, font, palette.text_quiet);
        return;
    };
    let end = digits(ui, at, &text, (TypeStyle::Body, palette.text_strong));
    if let Some(u) = &value.u {
        let x = (at.x + uncertainty).max(end + grid::TIGHT);
        quiet(ui, pos2(x, at.y), &format!("± {}", speaker.digits(u)));
    }
}

/// The ground of a row of figures that can be clicked: under the pointer, with the keyboard, or the one that is meant.
pub(in crate::ui) fn ground(ui: &Ui, rect: Rect, response: &Response, is_meant: bool) {
    if !response.sense.senses_click() {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let rect = rect.expand2(vec2(grid::TIGHT, 0.0));
    let colour = if response.hovered() || response.has_focus() {
        Some(palette.hover)
    } else {
        is_meant.then_some(palette.selection)
    };
    if let Some(colour) = colour {
        ui.painter().rect_filled(rect, grid::CORNER, colour);
    }
    if response.has_focus() {
        theme::focus_ring(ui, rect);
    }
}
