//! Words as every area sets them: headings, and what can be passed over.

use egui::{Label, Response, RichText, Role, Sense, Ui, WidgetInfo, vec2};

use super::theme::{self, TypeStyle, grid};

/// The heading of an area or a sheet; a heading to screen readers, too.
pub(super) fn heading_ui(ui: &mut Ui, words: &str) -> Response {
    heading_in(ui, words, TypeStyle::Heading)
}

/// The heading of a part of a sheet.
pub(super) fn subheading_ui(ui: &mut Ui, words: &str) -> Response {
    ui.add_space(grid::NEAR);
    heading_in(ui, words, TypeStyle::Strong)
}

fn heading_in(ui: &mut Ui, words: &str, style: TypeStyle) -> Response {
    let palette = theme::palette(ui.visuals());
    let galley = ui.painter().layout(
        words.to_owned(),
        style.font_id(),
        palette.text_strong,
        ui.available_width(),
    );
    let size = vec2(ui.available_width(), galley.size().y + grid::TIGHT);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Heading, true, words));
    ui.painter()
        .galley(rect.left_top(), galley, palette.text_strong);
    response
}

/// A paragraph that can be passed over: sources, hints.
pub(super) fn quiet_ui(ui: &mut Ui, words: &str) -> Response {
    let palette = theme::palette(ui.visuals());
    let words = RichText::new(words).font(TypeStyle::Small.font_id());
    ui.add(Label::new(words.color(palette.text_quiet)).wrap())
}

/// A clause as a sentence of its own, or a word as the first of one: its first letter large.
pub(super) fn capitalised(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
