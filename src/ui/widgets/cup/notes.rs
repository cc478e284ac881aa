//! What is written beside and below the cup.

use super::frustum::Frustum;
use super::layers::Filling;
use crate::balance::{Lens, Measurand};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::screen::Screen;

/// What is written beside the cup.
pub(super) struct Notes {
    /// "58 °C", or that it is not known.
    pub(super) temperature: Option<String>,
    /// "500 ml paper cup".
    pub(super) cup: String,
    /// "92 % full".
    pub(super) fill: Option<String>,
    /// What the strength of the colours stands for.
    pub(super) colours: &'static str,
    /// Why the layers do not add up.
    pub(super) poured: [&'static str; 2],
    /// What does not fit, or is not stated, or not known.
    pub(super) remarks: Vec<String>,
    /// The most that the cup may hold below its head room, ml.
    pub(super) most: f64,
}

impl Notes {
    pub(super) fn new(
        screen: &Screen<'_>,
        cup: &Frustum,
        filling: &Filling,
        has_cup: bool,
    ) -> Self {
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
    pub(super) fn lines(&self) -> usize {
        2 + self.poured.len() + self.remarks.len()
    }

    /// "58 °C, 92 % full", for a cup without names beside it.
    pub(super) fn state(&self) -> String {
        let parts: Vec<&str> = self
            .temperature
            .iter()
            .chain(&self.fill)
            .map(String::as_str)
            .collect();
        parts.join(", ")
    }
}
