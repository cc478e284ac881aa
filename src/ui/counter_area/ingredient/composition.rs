//! The label as it is printed: per 100 g, per 100 ml or per serving, in kJ or kcal, with salt or sodium.

use egui::Ui;

use super::checks::per_100_grams;
use super::group_ui;
use crate::book::{
    Basis, CarbohydrateKind, EnergyUnit, Evidence, Figure, Ingredient, LabelUnits, Nutrient,
    SaltUnit,
};
use crate::quantity::{parse_in_unit, parse_number, show_number};
use crate::ui::counter_area::sheet::{Asked, Sheet, Spot, plain, plain_to, words_ui};
use crate::ui::field::TypingError as _;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::grid;
use crate::ui::words::quiet_ui;

/// The word and the unit that a figure is printed with.
fn printed_as(units: LabelUnits, nutrient: Nutrient) -> (&'static str, &'static str) {
    match (nutrient, units.energy, units.salt) {
        (Nutrient::Energy, EnergyUnit::Kilocalories, _) => (nutrient.word(), "kcal"),
        (Nutrient::Salt, _, SaltUnit::SodiumMilligrams) => ("sodium", "mg"),
        _ => (nutrient.word(), nutrient.unit()),
    }
}

/// Serving that a label is per until somebody reads its size, g (common practice, no source).
const FIRST_SERVING: f64 = 16.0;

/// Width of the word of a figure, in points.
const WORD: f32 = 27.0 * grid::STEP;
/// Width of its unit, in points.
const UNIT: f32 = 7.0 * grid::STEP;

pub(super) fn composition_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    group_ui(ui, "The label as printed");
    basis_ui(ui, sheet);
    let before = sheet.item.clone();
    let converts = before.composition.basis != Basis::Per100Grams;
    let factor = per_100_grams(&before).filter(|_| converts);
    for nutrient in Nutrient::ALL {
        let (word, unit) = printed_as(before.composition.units, nutrient);
        let name = format!("label: {word}");
        let field = format!("label {}", nutrient.word());
        let asked = Asked {
            field: &field,
            name: &name,
            unit,
            unit_width: UNIT,
            factor: 1.0,
            first: Evidence::Label,
        };
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            words_ui(ui, &indented(nutrient, word), WORD);
            let figure = before.composition.printed.get(&nutrient).copied();
            sheet.figure(ui, &asked, figure, |item, figure| {
                match figure {
                    Some(figure) => item.composition.printed.insert(nutrient, figure),
                    None => item.composition.printed.remove(&nutrient),
                };
            });
            if let Some(figure) = converted(figure, nutrient, factor) {
                quiet_ui(ui, &format!("{figure} per 100 g"));
            }
        });
        sheet.errors_ui(ui, WORD);
    }
    copy_ui(ui, "label", || as_table(&before, factor));
}

/// A figure per 100 g, in digits, where the label is per something else.
fn converted(figure: Option<Figure>, nutrient: Nutrient, factor: Option<f64>) -> Option<String> {
    let (figure, factor) = figure.zip(factor).filter(|_| nutrient != Nutrient::Brix)?;
    Some(show_number(figure.value * factor, 1))
}

/// The label for a spreadsheet, as it is printed; with the figures per 100 g beside those that are per something else.
fn as_table(item: &Ingredient, factor: Option<f64>) -> Table {
    let per = match item.composition.basis {
        Basis::Per100Grams => "per 100 g".to_owned(),
        Basis::Per100Millilitres => "per 100 ml".to_owned(),
        Basis::PerServing(grams) => format!("per {} g", plain(grams)),
    };
    let heads = ["figure", "unit", per.as_str(), "±", "evidence"];
    let more = factor.map(|_| "per 100 g");
    let mut table = Table::new(heads.into_iter().chain(more));
    for nutrient in Nutrient::ALL {
        let units = item.composition.units;
        let (word, unit) = printed_as(units, nutrient);
        let figure = item.composition.printed.get(&nutrient).copied();
        let value = figure.map_or_else(
            || Cell::words("not stated"),
            |figure| Cell::figure(&plain(figure.value)),
        );
        let doubt = figure.map(|figure| {
            let usual = item.composition.standard_uncertainty(nutrient);
            let usual = usual.unwrap_or(0.0) / units.factor(nutrient);
            figure.u.map_or_else(|| plain_to(usual), plain)
        });
        let evidence = figure.map_or("", |figure| figure.evidence.word());
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

fn basis_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    let before = sheet.item.composition.clone();
    let kind = match before.basis {
        Basis::Per100Grams => BasisKind::Grams,
        Basis::Per100Millilitres => BasisKind::Millilitres,
        Basis::PerServing(_) => BasisKind::Serving,
    };
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = egui::vec2(grid::TIGHT, 0.0);
        quiet_ui(ui, "per");
        let all = [BasisKind::Grams, BasisKind::Millilitres, BasisKind::Serving];
        let word = |kind: &BasisKind| match kind {
            BasisKind::Grams => "100 g",
            BasisKind::Millilitres => "100 ml",
            BasisKind::Serving => "serving",
        };
        let spot = Spot::wide("basis", "Figures are per");
        sheet.choice(
            ui,
            spot,
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
            quiet_ui(ui, "of");
            let density = sheet.item.density.map(|figure| figure.value);
            let spot = Spot::number("serving", "Grams of a serving").width(52.0);
            sheet.measured(
                ui,
                spot,
                plain(grams),
                |text| serving(text, density),
                |item, grams| {
                    item.composition.basis = Basis::PerServing(grams);
                },
            );
            quiet_ui(ui, "g");
        }
        quiet_ui(ui, "energy in");
        sheet.choice(
            ui,
            Spot::wide("energy unit", "Energy is printed in"),
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
        quiet_ui(ui, "salt as");
        sheet.choice(
            ui,
            Spot::wide("salt unit", "Salt is printed as"),
            &before.units.salt,
            &[SaltUnit::Salt, SaltUnit::SodiumMilligrams],
            |unit| match unit {
                SaltUnit::Salt => "salt".to_owned(),
                SaltUnit::SodiumMilligrams => "sodium".to_owned(),
            },
            |item, salt| {
                let units = item.composition.units;
                item.composition.print_in(LabelUnits { salt, ..units });
            },
        );
        quiet_ui(ui, "carbohydrate");
        let all = [CarbohydrateKind::WithoutFibre, CarbohydrateKind::WithFibre];
        let word = |kind: &CarbohydrateKind| match kind {
            CarbohydrateKind::WithoutFibre => "without fibre".to_owned(),
            CarbohydrateKind::WithFibre => "with fibre in it".to_owned(),
        };
        let spot = Spot::wide("fibre kind", "Carbohydrate is printed");
        sheet.choice(
            ui,
            spot,
            &before.carbohydrate_kind,
            &all,
            word,
            |item, kind| {
                item.composition.carbohydrate_kind = kind;
            },
        );
    });
    sheet.errors_ui(ui, 0.0);
}

/// Grams of a serving; one in millilitres is weighed with the density.
fn serving(text: &str, density: Option<f64>) -> Result<f64, String> {
    let grams = match (text.trim().strip_suffix("ml"), density) {
        (None, _) => parse_in_unit(text, "g"),
        (Some(millilitres), Some(density)) => {
            parse_number(millilitres).map(|millilitres| millilitres * density)
        }
        (Some(_), None) => {
            return Err("a serving in ml needs a density: weigh 100 ml and state it".to_owned());
        }
    };
    match grams {
        Ok(grams) if grams > 0.0 => Ok(grams),
        Ok(_) => Err(format!("a serving is more than 0 g; found `{text}`")),
        Err(error) => Err(error.said(crate::say::Speaker::without_book())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_serving_in_millilitres_is_weighed_with_the_density() {
        assert_eq!(serving("250 ml", Some(1.02)), Ok(255.0));
        assert_eq!(serving("16 g", None), Ok(16.0));
        assert_eq!(serving("16", None), Ok(16.0));
        assert!(serving("250 ml", None).unwrap_err().contains("density"));
        assert!(serving("0", None).is_err());
    }
}
