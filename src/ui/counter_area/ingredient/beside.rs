//! Beside the fields of an ingredient: what is missing, what does not add up, what one use weighs, where it is used.

use egui::{Label, RichText, Ui};

use super::{checks, group_ui};
use crate::balance::{Slots, per_gram, portion};
use crate::book::{Amount, Book, Ingredient, Measure};
use crate::quantity::{Rounded, name_as_shown, rounded};
use crate::ui::counter_area::removal::{Going, uses_ui};
use crate::ui::counter_area::sheet::link_ui;
use crate::ui::counter_area::uses::{Use, Uses};
use crate::ui::counter_area::{Counter, ItemId};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::quiet_ui;

pub(super) fn beside_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    item: &Ingredient,
    uses: &Uses,
) -> Option<Going> {
    let palette = theme::palette(ui.visuals());
    let places = uses.list(&ItemId::Ingredient(item.id.clone()));
    sentences_ui(
        ui,
        "Check these figures",
        &checks::contradictions(counter.book, item, counter.findings),
        palette.off_level,
    );
    sentences_ui(ui, "Missing", &checks::missing(item), palette.text_normal);
    let going = weights_ui(ui, counter.book, item, places);
    group_ui(ui, "Used in");
    going.or(uses_ui(ui, counter, places))
}

/// Sentences under a heading; nothing when there are none.
fn sentences_ui(ui: &mut Ui, heading: &str, sentences: &[String], colour: egui::Color32) {
    if sentences.is_empty() {
        return;
    }
    group_ui(ui, heading);
    for sentence in sentences {
        let text = RichText::new(sentence)
            .font(TypeStyle::Small.font_id())
            .color(colour);
        ui.add(Label::new(text).wrap());
        ui.add_space(grid::TIGHT);
    }
}

/// What one use weighs, for the measures that were weighed with it or that its recipes count in.
fn weights_ui(ui: &mut Ui, book: &Book, item: &Ingredient, places: &[Use]) -> Option<Going> {
    group_ui(ui, "One use weighs");
    let mut going = None;
    let measures: Vec<&Measure> = book
        .measures
        .iter()
        .map(AsRef::as_ref)
        .filter(|measure| goes_with(book, measure, item, places))
        .collect();
    if measures.is_empty() {
        quiet_ui(
            ui,
            "No measure has readings for this ingredient. Open a measure to add some.",
        );
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
            if link_ui(ui, &name_as_shown(&measure.name)).clicked() {
                going = Some(Going::Item(ItemId::Measure(measure.id.clone())));
            }
            match weighed(measure) {
                Some(figure) => {
                    ui.label(figure.value);
                    quiet_ui(
                        ui,
                        &format!(
                            "g {}",
                            figure.u.map(|u| format!("± {u}")).unwrap_or_default()
                        ),
                    );
                }
                None => {
                    quiet_ui(ui, "not known");
                }
            }
        });
    }
    if !measures.is_empty() {
        copy_ui(ui, "one use weighs", || {
            let mass = spreadsheet::head("one use", "g");
            let mut table = Table::new(["measure", mass.as_str(), "±"]);
            for measure in &measures {
                let figure = weighed(measure);
                let value = figure.as_ref().map_or("not known", |figure| &figure.value);
                let u = figure.as_ref().and_then(|figure| figure.u.as_deref());
                table.row([
                    Cell::words(&name_as_shown(&measure.name)),
                    Cell::figure(value),
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
