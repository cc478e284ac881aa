//! What the readings of a measure say: grams of one use, scatter, drift, and what more weighing would bring.

use egui::{Label, RichText, Ui};

use crate::balance::{bulk_density_from, drift, more_weighing, volume_of_use};
use crate::book::{IngredientId, Measure, Reading, miscalled};
use crate::quantity::{rounded, show_number};
use crate::say::Speaker;
use crate::ui::counter_area::Counter;
use crate::ui::counter_area::sheet::section_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::wording::ingredient_name;
use crate::ui::words::capitalised;
use crate::ui::words::quiet_ui;

pub(super) fn results_ui(ui: &mut Ui, counter: Counter<'_>, measure: &Measure) {
    section_ui(ui, "What it says");
    let groups = groups(measure);
    if groups.is_empty() {
        let (_, uses) = measure.words();
        quiet_ui(
            ui,
            &format!(
                "No readings yet. Weigh ten {uses} together, three times, and add the weights."
            ),
        );
        let assumed = show_number(100.0 * measure.assumed_relative_uncertainty(), 0);
        quiet_ui(
            ui,
            &format!("Until then, Evensip uses the stated size, ± {assumed} %."),
        );
    }
    for ingredient in groups {
        result_ui(ui, counter, measure, ingredient.as_ref());
    }
    warning_ui(ui, counter, measure);
}

/// What was weighed, each once, in the order of the readings.
fn groups(measure: &Measure) -> Vec<Option<IngredientId>> {
    let mut groups = Vec::new();
    for Reading { ingredient, .. } in &measure.readings {
        if !groups.contains(ingredient) {
            groups.push(ingredient.clone());
        }
    }
    groups
}

fn result_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    measure: &Measure,
    ingredient: Option<&IngredientId>,
) {
    let palette = theme::palette(ui.visuals());
    let (one, many) = measure.words();
    let name = ingredient.map_or("water".to_owned(), |id| ingredient_name(counter.book, id));
    let Some(found) = measure.calibration(ingredient) else {
        quiet_ui(ui, &format!("{name}: weighed, but without a mass yet"));
        return;
    };
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let figure = rounded(found.grams, found.u_mean);
        ui.label(
            RichText::new(format!("1 {one} = {}", figure.value)).font(TypeStyle::Strong.font_id()),
        );
        ui.label(
            RichText::new("g")
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        if let Some(u) = figure.u {
            quiet_ui(ui, &format!("± {u}"));
        }
        ui.label(format!("of {name}"));
    });
    for sentence in sentences(counter, measure, ingredient, one, many) {
        let text = RichText::new(sentence)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        ui.add(Label::new(text).wrap());
    }
    if let Some(found) = drift(measure, ingredient).filter(|found| found.is_significant) {
        let words = format!(
            "Drift: {} g on {}, {} g on {}, {} %, more than the readings scatter. If the {} is worn or was reset, add it as a new measure.",
            show_number(found.before.grams.value, 2),
            found.before.date,
            show_number(found.now.grams.value, 2),
            found.now.date,
            show_number(100.0 * found.relative, 1),
            measure.kind.word()
        );
        let text = RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.off_level);
        ui.add(Label::new(text).wrap());
    }
    ui.add_space(grid::NEAR);
}

/// Scatter, count, and what would narrow it.
fn sentences(
    counter: Counter<'_>,
    measure: &Measure,
    ingredient: Option<&IngredientId>,
    one: &str,
    many: &str,
) -> Vec<String> {
    let Some(found) = measure.calibration(ingredient) else {
        return Vec::new();
    };
    let advice = more_weighing(measure, ingredient);
    let mut sentences = Vec::new();
    match found.scatter {
        Some(scatter) => {
            let percent = 100.0 * scatter / found.grams;
            let shown = rounded(scatter, Some(scatter)).value;
            sentences.push(format!(
                "one {one} varies by {shown} g ({} %); {} readings with {} {many} in total",
                show_number(percent, 1),
                found.readings,
                advice.uses
            ));
            sentences.push(format!(
                "weigh {} {many} more to halve the uncertainty",
                advice.more_uses
            ));
        }
        None => sentences.push(format!(
            "one reading of {} {many} shows no scatter: weigh {} {many} more in readings of ten",
            advice.uses, advice.more_uses
        )),
    }
    match ingredient {
        None => {
            if let Some(volume) = volume_of_use(measure) {
                let unit = counter.units.of("ml");
                let volume = unit.uncertain(volume);
                let digits = rounded(volume.value, Some(volume.u)).value;
                sentences.push(format!("holds {digits} {}", unit.symbol));
            }
        }
        Some(id) => {
            if let Some(density) = bulk_density_from(measure, id) {
                let density = rounded(density.value, density.u);
                sentences.push(format!(
                    "with the readings in water: {} g/ml as it lies in it",
                    density.value
                ));
            }
        }
    }
    sentences
}

/// A measure that is not of the size that it is called.
fn warning_ui(ui: &mut Ui, counter: Counter<'_>, measure: &Measure) {
    let Some(found) = miscalled(counter.book, measure) else {
        return;
    };
    let palette = theme::palette(ui.visuals());
    let speaker = Speaker::new(counter.book).in_units(counter.units);
    let words = capitalised(&speaker.miscalled(found));
    ui.add(Label::new(RichText::new(words).color(palette.off_level)).wrap());
}
