//! The cup: a section to the vessel's true shape, with what stands in it by volume.

mod frustum;
mod layers;
mod names;
mod notes;
mod paint;

pub use frustum::Frustum;
pub use layers::{Filling, Layer, Texture, filling};

use std::fmt::Write as _;

use egui::{Response, Role, Sense, Ui, Vec2, WidgetInfo, vec2};

use self::names::Labels;
use self::notes::Notes;
use self::paint::Drawing;
use crate::book::LineId;
use crate::say::{Speaker, say};
use crate::ui::screen::Screen;
use crate::ui::theme::{self, grid};

/// The cup of the version in hand, higher than asked for where the names of its layers want that. Returns the line whose layer or
/// name was clicked.
pub fn cup_ui(ui: &mut Ui, screen: &Screen<'_>, size: Vec2) -> Option<LineId> {
    let vessel = screen
        .balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| screen.book.vessel(id));
    let cup = Frustum::of(vessel.map(AsRef::as_ref));
    let filling = filling(screen.book, screen.balance, screen.lens, &cup);
    let notes = Notes::new(screen, &cup, &filling, vessel.is_some());
    let height = size.y.max(paint::room_for_names(size.x, &filling, &notes));
    let (rect, response) = ui.allocate_exact_size(vec2(size.x, height), Sense::hover());
    response.widget_info(|| {
        WidgetInfo::labeled(
            Role::Image,
            true,
            cup_words(&filling, &notes, screen.speaker),
        )
    });
    let drawing = Drawing::new(rect, &cup, &filling, &notes);
    let labels = Labels::arrange(ui, &drawing, screen);
    if ui.is_rect_visible(rect) {
        let palette = theme::palette(ui.visuals());
        drawing.paint(ui.painter(), palette, screen.lit);
        if let Some(labels) = &labels {
            labels.paint(ui.painter(), palette);
        }
    }
    clicked_line(ui, &response, &drawing, labels.as_ref(), screen.speaker)
}

fn cup_words(filling: &Filling, notes: &Notes, speaker: Speaker<'_>) -> String {
    let layers = filling.layers.iter().map(|layer| {
        let volume = speaker.volume(layer.millilitres, 0);
        format!("{} {volume}", layer.name)
    });
    let layers: Vec<String> = layers.collect();
    let mut words = say!(speaker, "widget-cup", cup: &notes.cup, layers: layers.join(", "));
    if filling.ice > 0.5 {
        let volume = speaker.volume(filling.ice, 0);
        words.push(' ');
        words.push_str(&say!(speaker, "widget-cup-ice", volume: volume));
    }
    for note in notes
        .fill
        .iter()
        .chain(&notes.temperature)
        .chain(&notes.remarks)
    {
        let _ = write!(words, " {note}.");
    }
    words
}

fn clicked_line(
    ui: &Ui,
    whole: &Response,
    drawing: &Drawing<'_>,
    labels: Option<&Labels>,
    speaker: Speaker<'_>,
) -> Option<LineId> {
    let mut clicked = None;
    for (index, (layer, band)) in drawing.bands().enumerate() {
        let name = format!("{} {}", layer.name, speaker.volume(layer.millilitres, 1));
        let areas = std::iter::once(band).chain(labels.and_then(|labels| labels.area(index)));
        for (part, area) in areas.enumerate() {
            let response = ui.interact(area, whole.id.with((index, part)), Sense::click());
            if part == 0 {
                response.widget_info(|| {
                    WidgetInfo::labeled(
                        Role::Button,
                        true,
                        say!(speaker, "widget-cup-go-to", layer: &name),
                    )
                });
                if response.has_focus() {
                    theme::focus_ring(ui, area.expand(grid::FOCUS_RING));
                }
            }
            let response = response
                .on_hover_text(&name)
                .on_hover_cursor(egui::CursorIcon::PointingHand);
            if response.clicked() {
                clicked = Some(layer.line.clone());
            }
        }
    }
    clicked
}
