//! What the readings of a measure say: grams of one use, scatter, drift, and what more weighing would bring.

use egui::{Label, RichText, Ui};

use crate::balance::{bulk_density_from, drift, more_weighing, volume_of_use};
use crate::book::{IngredientId, Measure, Reading, ReadingAmount, miscalled};
use crate::quantity::rounded;
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::counter_area::measure::readings::weighed;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::section_ui;
use crate::ui::words::capitalised;
use crate::ui::words::quiet_ui;

pub(super) fn results_ui(ui: &mut Ui, counter: Counter<'_>, measure: &Measure) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-results"));
    let groups = groups(measure);
    if groups.is_empty() {
        let uses = speaker.uses_word(measure.kind);
        quiet_ui(ui, &say!(speaker, "counter-results-none", uses: uses));
        let assumed = percent(speaker, measure.assumed_relative_uncertainty(), 0);
        quiet_ui(
            ui,
            &say!(speaker, "counter-results-assumed", percent: assumed),
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
    for ingredient in measure.readings.iter().map(Reading::weighed) {
        let ingredient = ingredient.cloned();
        if !groups.contains(&ingredient) {
            groups.push(ingredient);
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
    let speaker = counter.speaker;
    let name = weighed(speaker, ingredient);
    let Some(found) = measure.calibration(ingredient) else {
        quiet_ui(
            ui,
            &say!(speaker, "counter-result-no-mass", ingredient: name),
        );
        return;
    };
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        // What was read as a volume is told as one.
        let unit = speaker.units.of("ml");
        let volume = volume_of_use(measure).filter(|_| is_read_as_volume(measure, ingredient));
        let (figure, symbol) = match volume.map(|volume| unit.uncertain(volume)) {
            Some(volume) => {
                let u = found.u_mean.map(|_| volume.u);
                (rounded(volume.value, u), unit.symbol)
            }
            None => (rounded(found.grams, found.u_mean), "g"),
        };
        let figure_words = say!(
            speaker,
            "counter-result",
            measured: speaker.uses(1.0, Some(measure.kind)),
            mass: speaker.digits(&figure.value),
        );
        ui.label(RichText::new(figure_words).font(TypeStyle::Strong.font_id()));
        ui.label(
            RichText::new(symbol)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        if let Some(u) = figure.u {
            quiet_ui(ui, &format!("± {}", speaker.digits(&u)));
        }
        if volume.is_none() {
            ui.label(say!(speaker, "counter-result-of", ingredient: name));
        }
    });
    for sentence in sentences(counter, measure, ingredient) {
        let text = RichText::new(sentence)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        ui.add(Label::new(text).wrap());
    }
    if let Some(found) = drift(measure, ingredient).filter(|found| found.is_significant) {
        let words = say!(
            speaker,
            "counter-result-drift",
            before: speaker.in_unit(found.before.grams.value, "g", 2),
            first: &found.before.date,
            now: speaker.in_unit(found.now.grams.value, "g", 2),
            last: &found.now.date,
            percent: percent(speaker, found.relative, 1),
            measure: speaker.measure_kind(measure.kind),
        );
        let text = RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.off_level);
        ui.add(Label::new(text).wrap());
    }
    ui.add_space(grid::NEAR);
}

/// Whether some of what was read of water was a volume.
fn is_read_as_volume(measure: &Measure, ingredient: Option<&IngredientId>) -> bool {
    let is_volume = |reading: &Reading| matches!(reading.amount, ReadingAmount::Millilitres(_));
    ingredient.is_none() && measure.readings.iter().any(is_volume)
}

/// A part of one in percent, without its sign.
fn percent(speaker: Speaker<'_>, part: f64, decimals: usize) -> String {
    speaker.number(100.0 * part, decimals)
}

/// Scatter, count, and what would narrow it.
fn sentences(
    counter: Counter<'_>,
    measure: &Measure,
    ingredient: Option<&IngredientId>,
) -> Vec<String> {
    let speaker = counter.speaker;
    let uses = |count: f64| speaker.uses(count, Some(measure.kind));
    let kind = measure.kind.word().replace(' ', "-");
    let Some(found) = measure.calibration(ingredient) else {
        return Vec::new();
    };
    let advice = more_weighing(measure, ingredient);
    let mut sentences = Vec::new();
    match found.scatter {
        Some(scatter) => {
            sentences.push(say!(
                speaker,
                "counter-result-scatter",
                measured: say!(speaker, "counter-one-use", kind: kind),
                scatter: speaker.digits(&rounded(scatter, Some(scatter)).value),
                percent: percent(speaker, scatter / found.grams, 1),
                count: found.readings,
                total: uses(advice.uses.into()),
            ));
            sentences.push(say!(
                speaker,
                "counter-result-weigh-more",
                more: uses(advice.more_uses.into()),
            ));
        }
        None => sentences.push(say!(
            speaker,
            "counter-result-no-scatter",
            total: uses(advice.uses.into()),
            more: uses(advice.more_uses.into()),
        )),
    }
    match ingredient {
        None => {
            let is_told = is_read_as_volume(measure, ingredient);
            if let Some(volume) = volume_of_use(measure).filter(|_| !is_told) {
                let unit = speaker.units.of("ml");
                let volume = unit.uncertain(volume);
                let digits = speaker.digits(&rounded(volume.value, Some(volume.u)).value);
                sentences.push(say!(
                    speaker,
                    "counter-result-volume",
                    volume: format!("{digits}\u{a0}{}", unit.symbol),
                ));
            }
        }
        Some(id) => {
            if let Some(density) = bulk_density_from(measure, id) {
                let density = rounded(density.value, density.u);
                sentences.push(say!(
                    speaker,
                    "counter-result-density",
                    density: speaker.digits(&density.value),
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
    let words = capitalised(&counter.speaker.miscalled(found));
    ui.add(Label::new(RichText::new(words).color(palette.off_level)).wrap());
}
