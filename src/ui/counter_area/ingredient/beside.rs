//! Beside the fields of an ingredient: what is missing, what does not add up, what one use weighs, where it is used.

use egui::{Label, RichText, Ui};

use super::checks;
use crate::balance::{Slots, per_gram, portion};
use crate::book::{Amount, Book, Ingredient, Measure};
use crate::quantity::{Rounded, rounded};
use crate::say::Speaker;
use crate::ui::counter_area::item::{Counter, CounterItem};
use crate::ui::counter_area::removal::{Going, uses_ui};
use crate::ui::counter_area::uses::{Use, Uses};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::{link_ui, section_ui};
use crate::ui::words::quiet_ui;

pub(super) fn beside_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    item: &Ingredient,
    uses: &Uses,
) -> Option<Going> {
    let palette = theme::palette(ui.visuals());
    let places = uses.list(&CounterItem::Ingredient(item.id.clone()));
    let speaker = counter.speaker;
    sentences_ui(
        ui,
        speaker.word("ingredient-check"),
        &checks::contradictions(speaker, item, counter.findings),
        palette.off_level,
    );
    sentences_ui(
        ui,
        speaker.word("ingredient-missing"),
        &checks::missing(speaker, item),
        palette.text_normal,
    );
    let going = weights_ui(ui, speaker, item, places);
    section_ui(ui, speaker.word("ingredient-used-in"));
    going.or(uses_ui(ui, counter, places))
}

/// Sentences under a heading; nothing when there are none.
fn sentences_ui(ui: &mut Ui, heading: &str, sentences: &[impl AsRef<str>], colour: egui::Color32) {
    if sentences.is_empty() {
        return;
    }
    section_ui(ui, heading);
    for sentence in sentences {
        let text = RichText::new(sentence.as_ref())
            .font(TypeStyle::Small.font_id())
            .color(colour);
        ui.add(Label::new(text).wrap());
        ui.add_space(grid::TIGHT);
    }
}

/// What one use weighs, for the measures that were weighed with it or that its recipes count in.
fn weights_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    item: &Ingredient,
    places: &[Use],
) -> Option<Going> {
    let book = speaker.book;
    section_ui(ui, speaker.word("ingredient-one-use"));
    let mut going = None;
    let measures: Vec<&Measure> = book
        .measures
        .iter()
        .map(AsRef::as_ref)
        .filter(|measure| goes_with(book, measure, item, places))
        .collect();
    if measures.is_empty() {
        quiet_ui(ui, speaker.word("ingredient-no-readings"));
    }
    let mix = per_gram(item, &mut Slots::default()).mix;
    let celsius = item.temperature.unwrap_or(book.settings.room_temperature);
    let weighed = |measure: &Measure| -> Option<Rounded> {
        let amount = Amount::Count(1.0, measure.id.clone());
        let portion = portion(book, item, &mix, &amount, celsius)?;
        let density = portion.density.map_or(0.0, |(relative, _)| relative);
        let u = portion.grams * portion.calibration.hypot(density);
        Some(rounded(portion.grams, Some(u)))
    };
    for measure in &measures {
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            if link_ui(ui, &speaker.measure(&measure.id)).clicked() {
                going = Some(Going::Item(CounterItem::Measure(measure.id.clone())));
            }
            match weighed(measure) {
                Some(figure) => {
                    ui.label(speaker.digits(&figure.value));
                    let u = figure.u.map(|u| format!("± {} ", speaker.digits(&u)));
                    quiet_ui(ui, &format!("{}g", u.unwrap_or_default()));
                }
                None => {
                    quiet_ui(ui, speaker.word("ingredient-not-known"));
                }
            }
        });
    }
    if !measures.is_empty() {
        copy_ui(ui, speaker.word("ingredient-one-use-table"), || {
            let mass = spreadsheet::head(speaker.word("ingredient-head-one-use"), "g");
            let measure = speaker.word("ingredient-head-measure");
            let mut table = Table::new([measure, mass.as_str(), "±"]);
            for measure in &measures {
                let figure = weighed(measure);
                let value = figure.as_ref().map_or_else(
                    || Cell::words(speaker.word("ingredient-not-known")),
                    |figure| Cell::figure(&figure.value),
                );
                let u = figure.as_ref().and_then(|figure| figure.u.as_deref());
                table.row([
                    Cell::words(&speaker.measure(&measure.id)),
                    value,
                    Cell::figure(u.unwrap_or_default()),
                ]);
            }
            table
        });
    }
    going
}

/// Whether a measure was weighed with an ingredient, or a line of one of its recipes counts it in that measure.
fn goes_with(book: &Book, measure: &Measure, item: &Ingredient, places: &[Use]) -> bool {
    let weighed = measure
        .readings
        .iter()
        .any(|reading| reading.ingredient.as_ref() == Some(&item.id));
    weighed
        || places.iter().any(|place| {
            let Use::Recipe(recipe, version) = place else {
                return false;
            };
            let Some(recipe) = book.recipe(recipe) else {
                return false;
            };
            let resolved = crate::book::resolve(recipe, version.as_ref()).0;
            resolved.lines().any(|line| {
                let counts =
                    matches!(&line.amount, Amount::Count(_, counted) if *counted == measure.id);
                counts && line.ingredient == item.id
            })
        })
}
