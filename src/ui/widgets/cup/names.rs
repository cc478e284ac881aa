//! The names beside the cup, each with a line to its layer, under the temperature.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{Galley, Painter, Pos2, Rect, Shape, Stroke, Ui, pos2, vec2};

use super::layers::Layer;
use super::paint::{ABOVE, Drawing, LIP, TEXT_LINE};
use crate::say::{Speaker, say};
use crate::ui::screen::Screen;
use crate::ui::theme::{self, Palette, TypeStyle, grid};

/// A name beside the cup, with a line to its layer.
struct Label {
    layer: usize,
    galley: Arc<Galley>,
    place: Pos2,
    foot: Pos2,
    lit: bool,
}

impl Label {
    /// Height that it takes among the others, in points.
    fn height(&self) -> f32 {
        self.galley.size().y.max(TEXT_LINE)
    }
}

/// The names beside the cup, and the temperature above them.
pub(super) struct Labels {
    names: Vec<Label>,
    head: Pos2,
    temperature: Option<Arc<Galley>>,
    state: Arc<Galley>,
}

impl Labels {
    /// None where there is no room.
    pub(super) fn arrange(ui: &Ui, drawing: &Drawing<'_>, screen: &Screen<'_>) -> Option<Self> {
        if !drawing.has_names() {
            return None;
        }
        let palette = theme::palette(ui.visuals());

        let left = drawing.foot.x + drawing.half_at(drawing.rim()) + LIP + grid::APART;
        let room = (drawing.rect.right() - left).max(1.0);
        let mut labels: Vec<Label> = drawing
            .spans()
            .enumerate()
            .map(|(index, (layer, (top, bottom)))| {
                let middle = f32::midpoint(top, bottom);
                let is_lit = screen.lit == Some(&layer.line);
                let foot = pos2(drawing.foot.x + drawing.half_at(middle), middle);
                let galley = name_of(ui, layer, room, is_lit, screen.speaker);
                Label {
                    layer: index,
                    galley,
                    place: pos2(left, middle),
                    foot,
                    lit: is_lit,
                }
            })
            .collect();
        let lay = |text: String, style: TypeStyle, colour| {
            ui.painter().layout(text, style.font_id(), colour, room)
        };
        let notes = drawing.notes;
        let temperature = notes
            .temperature
            .clone()
            .map(|text| lay(text, TypeStyle::Figure, palette.text_strong));
        let state = match &notes.fill {
            Some(fill) => say!(screen.speaker, "widget-cup-served-full", fill: fill),
            None => screen.speaker.word("widget-cup-served").to_owned(),
        };
        let state = lay(state, TypeStyle::Small, palette.text_quiet);
        let head_height =
            temperature.as_ref().map_or(0.0, |galley| galley.size().y) + state.size().y;
        let names_from = head_height + grid::NEAR;
        let names: f32 = labels.iter().map(Label::height).sum();
        // A cup that is low leaves less room beside it than there is above.
        let top = (drawing.rim() - ABOVE).min(drawing.foot.y - names - names_from);
        let head = pos2(left, top.max(drawing.rect.top()));
        spread(&mut labels, head.y + names_from, drawing.foot.y);
        Some(Self {
            names: labels,
            head,
            temperature,
            state,
        })
    }

    /// The place of the name of a layer.
    pub(super) fn area(&self, layer: usize) -> Option<Rect> {
        let label = self.names.iter().find(|label| label.layer == layer)?;
        let size = label.galley.size();
        Some(Rect::from_min_size(
            label.place - vec2(0.0, size.y / 2.0),
            size,
        ))
    }

    pub(super) fn paint(&self, painter: &Painter, palette: &Palette) {
        for label in &self.names {
            let colour = if label.lit {
                palette.text_strong
            } else {
                palette.line
            };
            let knee = pos2(label.place.x - grid::EASY, label.place.y);
            let points = vec![label.foot, knee, label.place - vec2(grid::TIGHT, 0.0)];
            painter.add(Shape::line(points, Stroke::new(grid::HAIRLINE, colour)));
            let at = label.place - vec2(0.0, label.galley.size().y / 2.0);
            painter.galley(at, label.galley.clone(), palette.text_normal);
        }
        let mut at = self.head;
        if let Some(temperature) = &self.temperature {
            painter.galley(at, temperature.clone(), palette.text_strong);
            at.y += temperature.size().y;
        }
        painter.galley(at, self.state.clone(), palette.text_quiet);
    }
}

fn name_of(ui: &Ui, layer: &Layer, room: f32, lit: bool, speaker: Speaker<'_>) -> Arc<Galley> {
    let palette = theme::palette(ui.visuals());
    let colour = if lit {
        palette.text_strong
    } else {
        palette.text_normal
    };
    let small = |colour| egui::TextFormat::simple(TypeStyle::Small.font_id(), colour);
    let mut job = LayoutJob::default();
    job.append(
        &format!("{}  ", speaker.volume(layer.millilitres, 0)),
        0.0,
        small(palette.text_quiet),
    );
    job.append(&layer.name, 0.0, small(colour));
    job.wrap = TextWrapping {
        max_rows: 2,
        ..TextWrapping::wrap_at_width(room)
    };
    ui.painter().layout_job(job)
}

/// Moves names apart, from the bottom up, so that none lies on another; the order stays.
fn spread(labels: &mut [Label], top: f32, bottom: f32) {
    let half = |label: &Label| label.height() / 2.0;
    let mut limit = bottom;
    for label in labels.iter_mut() {
        label.place.y = label.place.y.min(limit - half(label));
        limit = label.place.y - half(label);
    }
    let mut limit = top;
    for label in labels.iter_mut().rev() {
        label.place.y = label.place.y.max(limit + half(label));
        limit = label.place.y + half(label);
    }
}
