//! A sheet over the window, and what every such sheet has: its title, and the button that it is there for.

use egui::{Area, Button, Id, Modal, RichText, Ui};

use super::theme::{self, TypeStyle, grid};

/// Width of a sheet, in points.
pub(super) const WIDTH: f32 = 480.0;

/// A sheet over the window; `false` when it should go: the contents say so, Escape, or a click beside it.
pub(super) fn sheet(
    ctx: &egui::Context,
    name: &str,
    contents: impl FnOnce(&mut Ui) -> bool,
) -> bool {
    wide_sheet(ctx, name, WIDTH, contents)
}

/// The same with a width of its own, in points.
pub(super) fn wide_sheet(
    ctx: &egui::Context,
    name: &str,
    width: f32,
    contents: impl FnOnce(&mut Ui) -> bool,
) -> bool {
    let area = Modal::default_area(Id::unique(name));
    sheet_in(ctx, area, width, contents)
}

pub(super) fn sheet_in(
    ctx: &egui::Context,
    area: Area,
    width: f32,
    contents: impl FnOnce(&mut Ui) -> bool,
) -> bool {
    let id = area.layer().id;
    let size_of = || ctx.memory(|memory| memory.area_rect(id).map(|rect| rect.size()));
    let before = size_of();
    let response = Modal::new(id).area(area).show(ctx, |ui| {
        ui.set_width(width.min(ctx.content_rect().width() - 2.0 * grid::FAR));
        egui::Frame::new()
            .inner_margin(egui::Margin::same(12))
            .show(ui, contents)
            .inner
    });
    if size_of() != before {
        // A sheet is placed by the size that it had: without another frame it would jump as soon as the pointer moves, and a
        // click would miss what it was meant for.
        ctx.request_repaint();
    }
    let keep = response.inner;
    keep && !response.should_close()
}

pub(super) fn title_ui(ui: &mut Ui, words: &str) {
    let palette = theme::palette(ui.visuals());
    ui.label(
        RichText::new(words)
            .font(TypeStyle::Heading.font_id())
            .color(palette.text_strong),
    );
    ui.add_space(grid::TIGHT);
}

/// The button that does what the dialog is for.
pub(super) fn main_button_ui(ui: &mut Ui, words: &str, enabled: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let button = Button::new(RichText::new(words).color(palette.on_accent)).fill(palette.accent);
    let response = ui.add_enabled(enabled, button);
    // Enter means this button as long as nothing else has the keyboard.
    if enabled && ui.memory(|memory| memory.focused().is_none()) {
        response.request_focus();
    }
    response.clicked()
}
