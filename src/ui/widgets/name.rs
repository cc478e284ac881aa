//! A name in one line: whole where there is room for it, else cut by the middle, with the whole of it under the pointer.

use std::sync::Arc;

use egui::text::LayoutJob;
use egui::{
    Align, Button, Color32, FontId, Galley, Layout, Rect, Response, Role, Sense, TextFormat, Ui,
    UiBuilder, WidgetInfo, vec2,
};

use crate::quantity::{cut_in_the_middle, name_as_shown};
use crate::ui::theme::{TypeStyle, grid};

/// Width of some words in one line, in points.
pub(in crate::ui) fn width_of(ui: &Ui, words: &str, font: &FontId) -> f32 {
    let (words, colour) = (words.to_owned(), Color32::PLACEHOLDER);
    let galley = ui.painter().layout_no_wrap(words, font.clone(), colour);
    galley.size().x
}

/// A text in one line, cut by the middle where it has no room.
pub(in crate::ui) fn elided(
    ui: &Ui,
    text: &str,
    font: &FontId,
    colour: Color32,
    room: f32,
) -> Arc<Galley> {
    cut_to(ui, whole(ui, text, font, colour), font, colour, room)
}

/// A text in one line, however long.
fn whole(ui: &Ui, text: &str, font: &FontId, colour: Color32) -> Arc<Galley> {
    let text = text.replace('\n', " ");
    ui.painter().layout_no_wrap(text, font.clone(), colour)
}

/// What is left of a line where there is so much room.
fn cut_to(ui: &Ui, line: Arc<Galley>, font: &FontId, colour: Color32, room: f32) -> Arc<Galley> {
    if line.size().x <= room {
        return line;
    }
    let laid = |text: &str| whole(ui, text, font, colour);
    let shown = cut_in_the_middle(line.text(), |text| laid(text).size().x <= room);
    laid(&shown)
}

/// Paints a text in one line into its place, on the left and at half its height; tells whether it had to be cut.
pub(in crate::ui) fn painted(
    ui: &Ui,
    place: Rect,
    text: &str,
    style: TypeStyle,
    colour: Color32,
) -> bool {
    let galley = elided(ui, text, &style.font_id(), colour, place.width());
    let is_cut = galley.text() != text;
    let at = place.left_center() - vec2(0.0, galley.size().y / 2.0);
    ui.painter().galley(at, galley, colour);
    is_cut
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

/// A name in a place of its own, on the side where the layout begins.
pub(in crate::ui) fn name_at(
    ui: &mut Ui,
    place: Rect,
    layout: Layout,
    name: &str,
    style: TypeStyle,
    colour: Color32,
) -> Response {
    let mut child = ui.new_child(UiBuilder::new().max_rect(place).layout(layout));
    name_ui(&mut child, name, style, colour, place.width())
}

/// A button that a name stands on, in the room that is left.
pub(in crate::ui) fn name_button_ui(
    ui: &mut Ui,
    name: &str,
    style: TypeStyle,
    colour: Color32,
    has_frame: bool,
) -> Response {
    let name = name_as_shown(name);
    let around = 2.0 * ui.spacing().button_padding.x;
    let font = style.font_id();
    let line = whole(ui, &name, &font, colour);
    if ui.layout().main_wrap && line.size().x + around > ui.available_size_before_wrap().x {
        ui.end_row();
    }
    let room = ui.available_size_before_wrap().x - around;
    let galley = cut_to(ui, line, &font, colour, room);
    let is_cut = galley.text() != name;
    let button = Button::new(galley).frame_when_inactive(has_frame);
    let response = ui.add(button).accessible_name(&*name);
    if is_cut {
        return response.on_hover_text(&*name);
    }
    response
}

/// A name, quieter behind it what tells more, and a mark: in one line. The mark is always whole, and the name comes before what
/// tells more. Tells whether something had to be cut.
pub(in crate::ui) fn elided_with_more(
    ui: &Ui,
    (name, colour): (&str, Color32),
    (more, quiet): (&str, Color32),
    mark: Option<(&str, Color32)>,
    room: f32,
) -> (Arc<Galley>, bool) {
    let (body, small) = (TypeStyle::Body.font_id(), TypeStyle::Small.font_id());
    let room = match mark {
        Some((mark, _)) => room - grid::NEAR - width_of(ui, mark, &small),
        None => room,
    };
    let shown = elided(ui, name, &body, colour, room);
    let mut is_cut = shown.text() != name;
    let mut job = LayoutJob::default();
    let set = |font_id: FontId, color| TextFormat {
        font_id,
        color,
        valign: Align::BOTTOM,
        ..TextFormat::default()
    };
    job.append(shown.text(), 0.0, set(body, colour));
    if !more.is_empty() {
        let left = room - shown.size().x - grid::NEAR;
        let behind = elided(ui, more, &small, quiet, left);
        is_cut |= behind.text() != more;
        if behind.size().x <= left {
            job.append(behind.text(), grid::NEAR, set(small.clone(), quiet));
        }
    }
    if let Some((mark, colour)) = mark {
        job.append(mark, grid::NEAR, set(small, colour));
    }
    (ui.painter().layout_job(job), is_cut)
}
