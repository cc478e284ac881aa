//! The label as it is printed: per 100 g, per 100 ml or per serving, in kJ or kcal, with salt or sodium.

use egui::Ui;

use super::checks::per_100_grams;
use crate::book::{
    Basis, CarbohydrateKind, EnergyUnit, Evidence, Figure, Ingredient, LabelUnits, Nutrient,
    SaltUnit,
};
use crate::edit::{FieldName, Which};
use crate::quantity::{excerpt, parse_in_unit, parse_number, show_number};
use crate::say::{Speaker, say};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{TypeStyle, grid};
use crate::ui::widgets::asked_figure::{Asked, EVIDENCE, SPREAD, VALUE};
use crate::ui::widgets::form::{Entry, REPEATED, Sheet, plain, plain_to, section_ui, words_ui};
use crate::ui::widgets::name::width_of;
use crate::ui::words::quiet_ui;

/// The word and the unit that a figure is printed with.
fn printed_as(
    speaker: Speaker<'_>,
    units: LabelUnits,
    nutrient: Nutrient,
) -> (&'static str, &'static str) {
    let word = speaker.nutrient(nutrient);
    match (nutrient, units.energy, units.salt) {
        (Nutrient::Energy, EnergyUnit::Kilocalories, _) => (word, "kcal"),
        (Nutrient::Salt, _, SaltUnit::SodiumMilligrams) => {
            (speaker.word("ingredient-sodium"), "mg")
        }
        _ => (word, nutrient.unit()),
    }
}

/// Serving that a label is per until somebody reads its size, g (common practice, no source).
const FIRST_SERVING: f64 = 16.0;

/// Least width of the word of a figure, in points.
const WORD: f32 = 27.0 * grid::STEP;
/// Width of its unit, in points.
const UNIT: f32 = 7.0 * grid::STEP;
/// Width of what stands behind the word: the figure with its unit, its evidence and its uncertainty, in points.
const FIGURE: f32 = VALUE + UNIT + EVIDENCE + SPREAD + 9.0 * grid::STEP;

pub(super) fn composition_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    section_ui(ui, speaker.word("ingredient-label"));
    basis_ui(ui, speaker, sheet);
    let before = sheet.item.clone();
    let converts = before.composition.basis != Basis::Per100Grams;
    let factor = per_100_grams(&before).filter(|_| converts);
    let width = word_width(ui, speaker, before.composition.units);
    for nutrient in Nutrient::ALL {
        let (word, unit) = printed_as(speaker, before.composition.units, nutrient);
        let name = say!(speaker, "ingredient-label-figure", figure: word);
        let field = FieldName::of("label", Which::Nutrient(nutrient));
        let asked = Asked {
            field,
            name: &name,
            unit,
            unit_width: UNIT,
            factor: 1.0,
            first: Evidence::Label,
        };
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            words_ui(ui, &indented(nutrient, word), width);
            let figure = before.composition.printed.get(&nutrient).copied();
            let usual = before.composition.standard_uncertainty(nutrient);
            let usual = usual.unwrap_or(0.0) / before.composition.units.factor(nutrient);
            sheet.figure_as_sure_as(ui, &asked, figure, usual, |item, figure| {
                match figure {
                    Some(figure) => item.composition.printed.insert(nutrient, figure),
                    None => item.composition.printed.remove(&nutrient),
                };
            });
            if let Some(figure) = converted(figure, nutrient, factor) {
                let figure = speaker.digits(&figure);
                quiet_ui(
                    ui,
                    &say!(speaker, "ingredient-per-100-grams", figure: figure),
                );
            }
        });
        sheet.errors_ui(ui, width);
    }
    copy_ui(ui, speaker.word("ingredient-label-table"), || {
        as_table(speaker, &before, factor)
    });
}

/// Width of the longest word of a figure in this language, as far as the column has room for it.
fn word_width(ui: &Ui, speaker: Speaker<'_>, units: LabelUnits) -> f32 {
    let font = TypeStyle::Small.font_id();
    let longest = Nutrient::ALL
        .into_iter()
        .map(|nutrient| {
            let (word, _) = printed_as(speaker, units, nutrient);
            width_of(ui, &indented(nutrient, word), &font)
        })
        .fold(WORD, f32::max);
    longest.ceil().min(ui.available_width() - FIGURE).max(WORD)
}

/// A figure per 100 g, in digits, where the label is per something else.
fn converted(figure: Option<Figure>, nutrient: Nutrient, factor: Option<f64>) -> Option<String> {
    let (figure, factor) = figure.zip(factor).filter(|_| nutrient != Nutrient::Brix)?;
    Some(show_number(figure.value * factor, 1))
}

/// The label for a spreadsheet, as it is printed; with the figures per 100 g beside those that are per something else.
fn as_table(speaker: Speaker<'_>, item: &Ingredient, factor: Option<f64>) -> Table {
    let per_100_grams = speaker.word("ingredient-head-per-100-grams");
    let per = match item.composition.basis {
        Basis::Per100Grams => per_100_grams.to_owned(),
        Basis::Per100Millilitres => speaker
            .word("ingredient-head-per-100-millilitres")
            .to_owned(),
        Basis::PerServing(grams) => {
            let grams = speaker.digits(&plain(grams));
            say!(speaker, "ingredient-head-per-serving", grams: grams)
        }
    };
    let heads = [
        speaker.word("ingredient-head-figure"),
        speaker.word("ingredient-head-unit"),
        per.as_str(),
        "±",
        speaker.word("ingredient-head-evidence"),
    ];
    let more = factor.map(|_| per_100_grams);
    let mut table = Table::new(heads.into_iter().chain(more));
    for nutrient in Nutrient::ALL {
        let units = item.composition.units;
        let (word, unit) = printed_as(speaker, units, nutrient);
        let figure = item.composition.printed.get(&nutrient).copied();
        let value = figure.map_or_else(
            || Cell::words(speaker.word("ingredient-not-stated")),
            |figure| Cell::figure(&plain(figure.value)),
        );
        let doubt = figure.map(|figure| {
            let usual = item.composition.standard_uncertainty(nutrient);
            let usual = usual.unwrap_or(0.0) / units.factor(nutrient);
            figure.u.map_or_else(|| plain_to(usual), plain)
        });
        let evidence = figure.map_or("", |figure| speaker.evidence_kind(figure.evidence));
        let in_grams = converted(figure, nutrient, factor);
        let in_grams = factor.map(|_| Cell::figure(&in_grams.unwrap_or_default()));
        let cells = [
            Cell::words(word),
            Cell::words(unit),
            value,
            Cell::figure(&doubt.unwrap_or_default()),
            Cell::words(evidence),
        ];
        table.row(cells.into_iter().chain(in_grams));
    }
    table
}

/// Parts of another figure stand in a little.
fn indented(nutrient: Nutrient, word: &str) -> String {
    let is_part = matches!(
        nutrient,
        Nutrient::Saturates | Nutrient::Sugars | Nutrient::Polyols
    );
    if is_part {
        format!("\u{2007}\u{2007}{word}")
    } else {
        word.to_owned()
    }
}

#[derive(Clone, Copy, PartialEq)]
enum BasisKind {
    Grams,
    Millilitres,
    Serving,
}

fn basis_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let before = sheet.item.composition.clone();
    let kind = match before.basis {
        Basis::Per100Grams => BasisKind::Grams,
        Basis::Per100Millilitres => BasisKind::Millilitres,
        Basis::PerServing(_) => BasisKind::Serving,
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing = egui::vec2(grid::TIGHT, 0.0);
        quiet_ui(ui, speaker.word("ingredient-basis"));
        let all = [BasisKind::Grams, BasisKind::Millilitres, BasisKind::Serving];
        let word = |kind: &BasisKind| {
            speaker.word(match kind {
                BasisKind::Grams => "ingredient-basis-grams",
                BasisKind::Millilitres => "ingredient-basis-millilitres",
                BasisKind::Serving => "ingredient-basis-serving",
            })
        };
        let spot = Entry::wide("basis", speaker.word("ingredient-basis-named"));
        sheet.choice(
            ui,
            &spot,
            &kind,
            &all,
            |kind| word(kind).to_owned(),
            |item, kind| {
                item.composition.basis = match kind {
                    BasisKind::Grams => Basis::Per100Grams,
                    BasisKind::Millilitres => Basis::Per100Millilitres,
                    BasisKind::Serving => Basis::PerServing(FIRST_SERVING),
                };
            },
        );
        if let Basis::PerServing(grams) = before.basis {
            quiet_ui(ui, speaker.word("ingredient-serving-of"));
            let density = sheet.item.density.map(|figure| figure.value);
            let spot =
                Entry::number("serving", speaker.word("ingredient-serving-named")).width(52.0);
            sheet.read(
                ui,
                &spot,
                &plain(grams),
                |text| serving(speaker, text, density),
                |item, grams| {
                    item.composition.basis = Basis::PerServing(grams);
                },
            );
            quiet_ui(ui, "g");
        }
        quiet_ui(ui, speaker.word("ingredient-energy-in"));
        sheet.choice(
            ui,
            &Entry::wide("energy-unit", speaker.word("ingredient-energy-in-named")),
            &before.units.energy,
            &[EnergyUnit::Kilojoules, EnergyUnit::Kilocalories],
            |unit| match unit {
                EnergyUnit::Kilojoules => "kJ".to_owned(),
                EnergyUnit::Kilocalories => "kcal".to_owned(),
            },
            |item, energy| {
                let units = item.composition.units;
                item.composition.print_in(LabelUnits { energy, ..units });
            },
        );
    });
    sheet.errors_ui(ui, 0.0);
    // All of it in one row is wider than the column.
    printed_kinds_ui(ui, speaker, sheet);
}

/// Whether salt or sodium is printed, and what is counted as carbohydrate.
fn printed_kinds_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let before = sheet.item.composition.clone();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing = egui::vec2(grid::TIGHT, 0.0);
        quiet_ui(ui, speaker.word("ingredient-salt-as"));
        sheet.choice(
            ui,
            &Entry::wide("salt-unit", speaker.word("ingredient-salt-as-named")),
            &before.units.salt,
            &[SaltUnit::Salt, SaltUnit::SodiumMilligrams],
            |unit| {
                let word = speaker.word(match unit {
                    SaltUnit::Salt => "ingredient-salt-as-salt",
                    SaltUnit::SodiumMilligrams => "ingredient-sodium",
                });
                word.to_owned()
            },
            |item, salt| {
                let units = item.composition.units;
                item.composition.print_in(LabelUnits { salt, ..units });
            },
        );
        quiet_ui(ui, speaker.word("ingredient-carbohydrate"));
        let all = [CarbohydrateKind::WithoutFibre, CarbohydrateKind::WithFibre];
        let word = |kind: &CarbohydrateKind| {
            let word = speaker.word(match kind {
                CarbohydrateKind::WithoutFibre => "ingredient-without-fibre",
                CarbohydrateKind::WithFibre => "ingredient-with-fibre",
            });
            word.to_owned()
        };
        let spot = Entry::wide("fibre-kind", speaker.word("ingredient-carbohydrate-named"));
        sheet.choice(
            ui,
            &spot,
            &before.carbohydrate_kind,
            &all,
            word,
            |item, kind| {
                item.composition.carbohydrate_kind = kind;
            },
        );
    });
}

/// Grams of a serving; one in millilitres is weighed with the density.
fn serving(speaker: Speaker<'_>, text: &str, density: Option<f64>) -> Result<f64, String> {
    let grams = match (text.trim().strip_suffix("ml"), density) {
        (None, _) => parse_in_unit(text, "g"),
        (Some(millilitres), Some(density)) => {
            parse_number(millilitres).map(|millilitres| millilitres * density)
        }
        (Some(_), None) => {
            return Err(speaker.word("ingredient-serving-needs-density").to_owned());
        }
    };
    match grams {
        Ok(grams) if grams > 0.0 => Ok(grams),
        Ok(_) => Err(
            say!(speaker, "ingredient-serving-out-of-range", found: excerpt(text.trim(), REPEATED)),
        ),
        Err(error) => Err(speaker.number_error(&error)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_serving_in_millilitres_is_weighed_with_the_density() {
        let speaker = Speaker::without_book();
        assert_eq!(serving(speaker, "250 ml", Some(1.02)), Ok(255.0));
        assert_eq!(serving(speaker, "16 g", None), Ok(16.0));
        assert_eq!(serving(speaker, "16", None), Ok(16.0));
        assert!(
            serving(speaker, "250 ml", None)
                .unwrap_err()
                .contains("density")
        );
        assert!(serving(speaker, "0", None).is_err());
    }
}
