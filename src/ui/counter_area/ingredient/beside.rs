//! Beside the fields of an ingredient: what is missing, what does not add up, what one use weighs, where it is used.

use std::collections::BTreeSet;
use std::sync::Arc;

use egui::{Label, RichText, Ui};

use super::checks::{self, Gap, Known};
use crate::book::{Amount, Ingredient, IngredientId, Measure, MeasureId, Temperature, resolve};
use crate::quantity::{Rounded, rounded};
use crate::say::Speaker;
use crate::ui::counter_area::item::{Counter, CounterItem};
use crate::ui::counter_area::removal::{Going, uses_ui};
use crate::ui::counter_area::uses::{Use, UsesOfBook};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::{link_ui, section_ui, wrapped_link_ui};
use crate::ui::words::quiet_ui;
use crate::workbench::{Answers, BookQuestion, CostOfGram, GramOf, OneUseOf};

pub(super) fn beside_ui(ui: &mut Ui, counter: Counter<'_>, item: &Ingredient) -> Option<Going> {
    let palette = theme::palette(ui.visuals());
    let speaker = counter.speaker;
    sentences_ui(
        ui,
        speaker.word("ingredient-check"),
        &checks::contradictions(speaker, item, counter.findings),
        palette.off_level,
    );
    let gram = counter.answers.to(&GramOf(item.id.clone()));
    let mix = gram.as_deref().map(|gram| &gram.mix);
    let measures = counter.answers.to(&MeasuresOf(item.id.clone()));
    let mut measures = measures.iter().filter_map(|id| counter.book.measure(id));
    let cost = counter.answers.to(&CostOfGram(item.id.clone()));
    let known = Known {
        is_weighed: measures.any(|measure| is_weighed_with(measure, &item.id)),
        is_priced: cost.is_some_and(|cost| cost.is_complete),
    };
    let gaps = checks::missing(speaker, item, mix, known);
    let going = missing_ui(ui, speaker, &gaps);
    let going = going.or(weights_ui(ui, counter, item));
    section_ui(ui, speaker.word("ingredient-used-in"));
    let uses = counter.answers.to(&UsesOfBook);
    let places = uses.list(&CounterItem::Ingredient(item.id.clone()));
    going.or(uses_ui(ui, counter, places))
}

/// What is missing, each leading to the field where it is entered.
fn missing_ui(ui: &mut Ui, speaker: Speaker<'_>, gaps: &[Gap]) -> Option<Going> {
    if gaps.is_empty() {
        return None;
    }
    let mut going = None;
    section_ui(ui, speaker.word("ingredient-missing"));
    for gap in gaps {
        if wrapped_link_ui(ui, gap.words).clicked() {
            going = Some(Going::Field(gap.field.clone()));
        }
    }
    going
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
fn weights_ui(ui: &mut Ui, counter: Counter<'_>, item: &Ingredient) -> Option<Going> {
    let (answers, speaker) = (counter.answers, counter.speaker);
    section_ui(ui, speaker.word("ingredient-one-use"));
    let mut going = None;
    let measures = answers.to(&MeasuresOf(item.id.clone()));
    if measures.is_empty() {
        quiet_ui(ui, speaker.word("ingredient-no-readings"));
    }
    let room = counter.book.settings.room_temperature.celsius();
    let celsius = item.temperature.map_or(room, Temperature::celsius);
    let weighed = |measure: &MeasureId| -> Option<Rounded> {
        let portion = answers.to(&OneUseOf::new(&item.id, measure, celsius))?;
        let density = portion.density.map_or(0.0, |(relative, _)| relative);
        let u = portion.grams * portion.calibration.hypot(density);
        Some(rounded(portion.grams, Some(u)))
    };
    for measure in measures.iter() {
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            if link_ui(ui, &speaker.measure(measure)).clicked() {
                going = Some(Going::Item(CounterItem::Measure(measure.clone())));
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
            for measure in measures.iter() {
                let figure = weighed(measure);
                let value = figure.as_ref().map_or_else(
                    || Cell::words(speaker.word("ingredient-not-known")),
                    |figure| Cell::figure(&figure.value),
                );
                let u = figure.as_ref().and_then(|figure| figure.u.as_deref());
                table.row([
                    Cell::words(&speaker.measure(measure)),
                    value,
                    Cell::figure(u.unwrap_or_default()),
                ]);
            }
            table
        });
    }
    going
}

fn is_weighed_with(measure: &Measure, item: &IngredientId) -> bool {
    let mut readings = measure.readings.iter();
    readings.any(|reading| reading.ingredient.as_ref() == Some(item))
}

/// The measures that were weighed with an ingredient or that its recipes count it in, in the order of the book.
#[derive(Clone, PartialEq, Eq, Hash)]
struct MeasuresOf(IngredientId);

impl BookQuestion for MeasuresOf {
    type Answer = Arc<Vec<MeasureId>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let (book, item) = (answers.book(), &self.0);
        let uses = answers.to(&UsesOfBook);
        let mut counted = BTreeSet::new();
        for place in uses.list(&CounterItem::Ingredient(item.clone())) {
            let Use::Recipe(recipe, version) = place else {
                continue;
            };
            let Some(recipe) = book.recipe(recipe) else {
                continue;
            };
            let resolved = resolve(recipe, version.as_ref()).0;
            for line in resolved.lines().filter(|line| line.ingredient == *item) {
                if let Amount::Count(_, measure) = &line.amount {
                    counted.insert(measure.clone());
                }
            }
        }
        let measures = book.measures.iter();
        let measures =
            measures.filter(|one| counted.contains(&one.id) || is_weighed_with(one, item));
        Arc::new(measures.map(|measure| measure.id.clone()).collect())
    }
}
