//! A name in one line: whole where there is room for it, else cut by the middle, with the whole of it under the pointer.

use std::sync::Arc;

use egui::{Color32, FontId, Galley, Response, Role, Sense, Ui, WidgetInfo};

use crate::quantity::{cut_in_the_middle, name_as_shown};
use crate::ui::theme::{TypeStyle, grid};

/// A text in one line, cut by the middle where it has no room.
pub(in crate::ui) fn elided(
    ui: &Ui,
    text: &str,
    font: &FontId,
    colour: Color32,
    room: f32,
) -> Arc<Galley> {
    let text = text.replace('\n', " ");
    let laid = |text: &str| {
        let text = text.to_owned();
        ui.painter().layout_no_wrap(text, font.clone(), colour)
    };
    let shown = cut_in_the_middle(&text, |text| laid(text).size().x <= room);
    laid(&shown)
}

/// A name in the room that is left, or in so much of it.
pub(in crate::ui) fn name_ui(
    ui: &mut Ui,
    name: &str,
    style: TypeStyle,
    colour: Color32,
    most: f32,
) -> Response {
    let name = name_as_shown(name);
    let room = ui.available_width().min(most).max(grid::FAR);
    let galley = elided(ui, &name, &style.font_id(), colour, room);
    let is_cut = galley.text() != name;
    let (rect, response) = ui.allocate_exact_size(galley.size(), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &*name));
    if ui.is_rect_visible(rect) {
        ui.painter().galley(rect.min, galley, colour);
    }
    if is_cut {
        return response.on_hover_text(&*name);
    }
    response
}
