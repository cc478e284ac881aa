//! What the sheets of this area are set with: paragraphs, and words of which one is chosen.

use egui::{Button, Color32, Label, Response, RichText, Ui, vec2};

use crate::balance::Measurand;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::theme::{self, grid};
use crate::ui::value::gap_words;
use crate::ui::widgets::facts::MOST_WIDTH;
use crate::ui::words::{self, speaker};

/// A paragraph.
pub(super) fn words_ui(ui: &mut Ui, words: impl Into<String>) -> Response {
    paragraph(ui, RichText::new(words))
}

/// A paragraph that can be passed over: sources, hints.
pub(super) fn quiet_ui(ui: &mut Ui, text: impl Into<String>) {
    narrow(ui, |ui| words::quiet_ui(ui, &text.into()));
}

/// A paragraph that must not be passed over.
pub(super) fn off_ui(ui: &mut Ui, words: impl Into<String>) -> Response {
    let palette = theme::palette(ui.visuals());
    paragraph(ui, RichText::new(words).color(palette.off_level))
}

fn paragraph(ui: &mut Ui, text: RichText) -> Response {
    narrow(ui, |ui| ui.add(Label::new(text).wrap()))
}

/// No wider than is read with ease.
fn narrow(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> Response) -> Response {
    ui.scope(|ui| {
        ui.set_max_width(ui.available_width().min(MOST_WIDTH));
        add(ui)
    })
    .inner
}

/// Why figures are not there, those of which nothing is known.
pub(super) fn gaps_ui(ui: &mut Ui, screen: &Screen<'_>, figures: &[(bool, Measurand)]) {
    let speaker = screen.speaker;
    for (_, measurand) in figures.iter().filter(|(is_known, _)| !is_known) {
        let gap = gap_words(speaker, &screen.balance.reported(*measurand));
        let reason = gap.unwrap_or_else(|| speaker.word("serving-not-known").to_owned());
        let name = speaker.measurand(*measurand);
        quiet_ui(
            ui,
            say!(speaker, "serving-gap", figure: name, reason: reason),
        );
    }
}

/// Words in a row of which one is chosen.
pub(super) fn choice_ui<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    chosen: &mut T,
    among: &[(T, String)],
) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(grid::TIGHT, 0.0);
        for (value, words) in among {
            if chosen_word_ui(ui, name, words, *chosen == *value).clicked() {
                *chosen = value.clone();
            }
        }
    });
}

/// One of such words.
pub(super) fn chosen_word_ui(ui: &mut Ui, name: &str, words: &str, is_chosen: bool) -> Response {
    let palette = theme::palette(ui.visuals());
    let (colour, fill) = if is_chosen {
        (palette.text_strong, palette.selection)
    } else {
        (palette.text_quiet, Color32::TRANSPARENT)
    };
    let button = Button::selectable(is_chosen, RichText::new(words).color(colour))
        .frame_when_inactive(false)
        .fill(fill);
    let speaker = speaker(ui.ctx());
    let name = say!(speaker, "choice-named", name: name, word: words);
    ui.add(button).accessible_name(name)
}
