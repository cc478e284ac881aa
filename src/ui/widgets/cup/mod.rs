//! The cup: a section to the vessel's true shape, with what stands in it by volume.

mod frustum;
mod layers;
mod names;
mod paint;

pub use frustum::Frustum;
pub use layers::{Filling, Layer, Texture, filling};

use std::fmt::Write as _;

use egui::{Response, Role, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo};

use self::names::Labels;
use self::paint::Drawing;
use crate::balance::{Lens, Measurand};
use crate::book::LineId;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::screen::Screen;
use crate::ui::theme::{self, grid};

/// The cup of the version in hand. Returns the line whose layer or name was clicked.
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
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
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

/// What is written beside the cup.
pub(super) struct Notes {
    /// "58 °C", or that it is not known.
    temperature: Option<String>,
    /// "500 ml paper cup".
    cup: String,
    /// "92 % full".
    fill: Option<String>,
    /// What the strength of the colours stands for.
    colours: &'static str,
    /// Why the layers do not add up.
    poured: [&'static str; 2],
    /// What does not fit, or is not stated, or not known.
    remarks: Vec<String>,
    /// The most that the cup may hold below its head room, ml.
    most: f64,
}

impl Notes {
    fn new(screen: &Screen<'_>, cup: &Frustum, filling: &Filling, has_cup: bool) -> Self {
        let speaker = screen.speaker;
        let figure = |measurand| screen.balance.figures.get(measurand);
        let vessel = screen
            .balance
            .resolved
            .cup
            .as_ref()
            .and_then(|id| screen.book.vessel(id));
        let head_room = vessel
            .and_then(|vessel| vessel.usual_closure())
            .map_or(0.0, |closure| closure.head_room);
        let mut remarks = Vec::new();
        let over = filling.filled - cup.capacity();
        if over > 0.5 {
            let volume = speaker.volume(over, 0);
            remarks.push(say!(speaker, "widget-cup-overfull", volume: volume));
        } else if filling.filled > cup.capacity() - head_room + 0.5 {
            let volume = speaker.volume(head_room, 0);
            remarks.push(say!(speaker, "widget-cup-head-room", volume: volume));
        }
        if !has_cup {
            remarks.push(speaker.word("widget-cup-not-chosen").to_owned());
        } else if !cup.is_stated {
            remarks.push(speaker.word("widget-cup-no-shape").to_owned());
        }
        if !filling.not_known.is_empty() {
            let ingredients = filling.not_known.join(", ");
            remarks.push(say!(speaker, "widget-cup-not-known", ingredients: ingredients));
        }
        Self {
            temperature: figure(Measurand::ServingTemperature)
                .map(|celsius| speaker.temperature(celsius, 0)),
            cup: vessel.map_or_else(
                || speaker.word("widget-cup-none").to_owned(),
                |vessel| {
                    let volume = speaker.volume(vessel.capacity, 0);
                    let name = name_as_shown(&vessel.name);
                    say!(speaker, "widget-cup-of-volume", cup: name, volume: volume)
                },
            ),
            fill: figure(Measurand::Fill).map(
                |percent| say!(speaker, "widget-cup-full", percent: speaker.number(percent, 0)),
            ),
            colours: colours(screen),
            poured: POURED.map(|message| speaker.word(message)),
            remarks,
            most: cup.capacity() - head_room,
        }
    }
}

/// Why the layers do not add up to the volume of the drink.
const POURED: [&str; 2] = ["widget-cup-as-poured", "widget-cup-sum-differs"];

/// What the strength of the colours stands for.
fn colours(screen: &Screen<'_>) -> &'static str {
    screen.speaker.word(match screen.lens {
        Lens::Sugar => "widget-cup-colours-sugar",
        Lens::Sweetness => "widget-cup-colours-sweetness",
        Lens::Heat => "widget-cup-colours-heat",
        Lens::Cost => "widget-cup-colours-cost",
        Lens::Energy => "widget-cup-colours-energy",
        Lens::Tea => "widget-cup-colours-tea",
        Lens::Uncertainty => "widget-cup-colours-uncertainty",
    })
}

impl Notes {
    /// Lines of text under the cup.
    fn lines(&self) -> usize {
        2 + self.poured.len() + self.remarks.len()
    }

    /// "58 °C, 92 % full", for a cup without names beside it.
    fn state(&self) -> String {
        let parts: Vec<&str> = self
            .temperature
            .iter()
            .chain(&self.fill)
            .map(String::as_str)
            .collect();
        parts.join(", ")
    }
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
                    let ring =
                        Stroke::new(grid::FOCUS_RING, theme::palette(ui.visuals()).focus_ring);
                    ui.painter()
                        .rect_stroke(area, grid::CORNER, ring, StrokeKind::Outside);
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
