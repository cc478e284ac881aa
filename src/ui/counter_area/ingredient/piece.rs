//! What one piece weighs of something that is counted: a slice, a leaf, a pearl.

use egui::Ui;

use crate::book::{Form, Ingredient, Measure, MeasureId, MeasureKind, Reading, ReadingAmount};
use crate::edit::Edit;
use crate::say::say;
use crate::ui::counter_area::item::Counter;
use crate::ui::widgets::form::{Entry, Sheet};
use crate::ui::words::quiet_ui;
use crate::workbench::today;

/// The weight of a piece, which is a reading of the measure that counts pieces; the first makes that measure.
pub(super) fn piece_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
) {
    let speaker = counter.speaker;
    let pieces = || {
        let measures = counter.book.measures.iter().map(AsRef::as_ref);
        measures.filter(|measure: &&Measure| measure.kind == MeasureKind::Piece)
    };
    let weighed = pieces().find(|measure| measure.calibration(Some(&before.id)).is_some());
    if weighed.is_none() && before.form != Form::Pieces {
        return;
    }
    let measure = weighed.or_else(|| pieces().next()).cloned();
    let measure = measure.unwrap_or_else(|| {
        let name = speaker.measure_kind(MeasureKind::Piece);
        let id = MeasureId::from_name(name, |id| counter.book.measures.contains(id));
        Measure::new(id, name.to_owned(), MeasureKind::Piece)
    });
    let of_this = |reading: &Reading| reading.ingredient.as_ref() == Some(&before.id);
    let readings = measure.readings.iter().filter(|reading| of_this(reading));
    let readings = readings.count();
    let weight = measure.calibration(Some(&before.id));
    sheet.row(ui, speaker.word("ingredient-piece"), |sheet, ui| {
        let name = speaker.word("ingredient-piece-named");
        if readings > 1 {
            // Several weighings say more than a number typed over them would.
            if let Some(weight) = weight {
                quiet_ui(ui, &speaker.figure(weight.grams, weight.u_mean, "g"));
                quiet_ui(
                    ui,
                    &say!(speaker, "ingredient-piece-readings", count: readings),
                );
            }
            return;
        }
        let mut sheet = sheet.beside(measure, Edit::PutMeasure);
        let spot = Entry::number("piece", name).hint("–").metric("g");
        let grams = weight.map(|weight| weight.grams);
        sheet.number(ui, &spot, grams, |measure, grams| {
            measure.readings.retain(|reading| !of_this(reading));
            let grams = grams.filter(|grams| *grams > 0.0);
            measure.readings.extend(grams.map(|grams| Reading {
                ingredient: Some(before.id.clone()),
                uses: 1,
                amount: ReadingAmount::Grams(grams),
                date: Some(today()),
            }));
        });
        sheet.errors_ui(ui, 0.0);
    });
}
