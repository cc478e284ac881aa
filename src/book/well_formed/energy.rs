//! Whether the printed energy fits the printed composition: Regulation (EU) 1169/2011, Annex XIV.
//!
//! The energy of a label is reckoned from its other figures by fixed factors, so the two can only differ by rounding, by what
//! the label need not state (fibre, polyols, organic acid), or because a figure was mistyped. What is not stated widens the
//! range; it is never taken for zero.

use super::checklist::Checklist;
use crate::book::{
    Basis, CarbohydrateKind, Composition, Evidence, Figure, FindingKind, Ingredient, Nutrient,
    Place,
};
use crate::quantity::KILOJOULES_PER_KILOCALORIE;

// kJ a gram; conventions of the annex. A test holds them against those of the engine.
const FAT: f64 = 37.0;
const CARBOHYDRATE: f64 = 17.0;
const PROTEIN: f64 = 17.0;
const POLYOLS: f64 = 10.0;
const FIBRE: f64 = 8.0;
const ORGANIC_ACID: f64 = 13.0;

/// Organic acid that a liquid or a syrup may hold without stating it, g per 100 g: lemon juice has 5 to 8 (value from memory).
const UNSTATED_ACID: f64 = 8.0;

/// What the stated energy may be off beside the rounding of the other figures, as a part of it (assumed: makers reckon from
/// unrounded figures and sometimes with factors of their own).
const TOLERANCE: f64 = 0.05;

/// The same for an energy from a food table: tables reckon with factors of the food itself, which for fruit and its acids are
/// a quarter below those of the annex (value from memory: Merrill & Watt, Energy value of foods, 1973).
const TABLE_TOLERANCE: f64 = 0.35;

/// The same for a label of hardly any energy, kJ (assumed).
const SMALLEST_TOLERANCE: f64 = 8.0;

/// What the energy of a composition can be, kJ in its basis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EnergyRange {
    /// Least.
    pub from: f64,
    /// Most.
    pub to: f64,
}

/// What the energy can be by the other figures of a composition; `None` when fat, carbohydrate or protein is not stated.
///
/// `rest_is_water` says that what is not stated is mostly water, as in a liquid.
pub fn energy_of_composition(
    composition: &Composition,
    rest_is_water: bool,
) -> Option<EnergyRange> {
    let value = |nutrient| composition.get(nutrient).map(|figure| figure.value);
    let rounding = |nutrient| rounding_of(value(nutrient).unwrap_or(0.0));
    let fat = value(Nutrient::Fat)?;
    let protein = value(Nutrient::Protein)?;
    let carbohydrate = value(Nutrient::Carbohydrate)?;
    let fibre = value(Nutrient::Fibre);
    let polyols = value(Nutrient::Polyols);
    let with_fibre = composition.carbohydrate_kind == CarbohydrateKind::WithFibre;
    let sugars = value(Nutrient::Sugars).unwrap_or(0.0);
    // The part of carbohydrate that may be polyols or, in the US, fibre when neither is stated.
    let not_sugars = (carbohydrate - sugars - polyols.unwrap_or(0.0)).max(0.0);
    let known_fibre = fibre.unwrap_or(0.0);
    let in_carbohydrate = if with_fibre { known_fibre } else { 0.0 };
    let base = FAT * fat
        + PROTEIN * protein
        + CARBOHYDRATE * (carbohydrate - polyols.unwrap_or(0.0) - in_carbohydrate)
        + POLYOLS * polyols.unwrap_or(0.0)
        + FIBRE * known_fibre
        + ORGANIC_ACID * value(Nutrient::Acid).unwrap_or(0.0);
    let doubt = FAT * rounding(Nutrient::Fat)
        + PROTEIN * rounding(Nutrient::Protein)
        + CARBOHYDRATE * rounding(Nutrient::Carbohydrate)
        + FIBRE * rounding(Nutrient::Fibre);
    let below = match (polyols, fibre) {
        (_, None) if with_fibre => (CARBOHYDRATE - FIBRE) * not_sugars,
        (None, _) => (CARBOHYDRATE - POLYOLS) * not_sugars,
        _ => 0.0,
    };
    let salt = value(Nutrient::Salt).unwrap_or(0.0);
    let water = value(Nutrient::Water).unwrap_or(0.0);
    let separate_fibre = if with_fibre { 0.0 } else { known_fibre };
    let rest = (whole(composition) - fat - protein - carbohydrate - separate_fibre - salt - water)
        .max(0.0);
    let hidden = if rest_is_water {
        rest.min(UNSTATED_ACID)
    } else {
        rest
    };
    let above = match (value(Nutrient::Acid), fibre) {
        (None, _) => ORGANIC_ACID * hidden,
        (Some(_), None) => FIBRE * hidden,
        _ => 0.0,
    };
    // Tables and some makers count the solids of tea as carbohydrate by difference; here they stand apart.
    let tea = CARBOHYDRATE * value(Nutrient::TeaSolids).unwrap_or(0.0);
    Some(EnergyRange {
        from: base - doubt - below,
        to: base + doubt + above + tea,
    })
}

/// Half of the last digit that guidance prints: whole grams from 10 g on, tenths below (EU guidance on tolerances, 2012).
fn rounding_of(grams: f64) -> f64 {
    if grams >= 10.0 { 0.5 } else { 0.05 }
}

/// Grams in the basis; of 100 ml as much as the heaviest syrup weighs.
fn whole(composition: &Composition) -> f64 {
    match composition.basis {
        Basis::Per100Grams => 100.0,
        Basis::Per100Millilitres => 145.0,
        Basis::PerServing(grams) => grams,
    }
}

pub(super) fn check(item: &Ingredient, list: &mut Checklist) {
    let composition = &item.composition;
    let Some(Figure {
        value: stated,
        evidence,
        ..
    }) = composition.get(Nutrient::Energy)
    else {
        return;
    };
    let Some(range) = energy_of_composition(composition, item.form.rest_is_water()) else {
        return;
    };
    // Figures beyond all measure give no range; each has a finding of its own.
    if !(range.from.is_finite() && range.to.is_finite()) {
        return;
    }
    let relative = if evidence == Evidence::Published {
        TABLE_TOLERANCE
    } else {
        TOLERANCE
    };
    let tolerance = (relative * stated.abs()).max(SMALLEST_TOLERANCE);
    let nearest = if stated < range.from - tolerance {
        range.from
    } else if stated > range.to + tolerance {
        range.to
    } else {
        return;
    };
    let in_kilojoules = stated * KILOJOULES_PER_KILOCALORIE;
    let tolerance = (relative * in_kilojoules.abs()).max(SMALLEST_TOLERANCE);
    let fits_as_kilocalories =
        (range.from - tolerance..=range.to + tolerance).contains(&in_kilojoules);
    let place = Place::Ingredient(item.id.clone(), "composition");
    let kind = FindingKind::EnergyNotOfComposition {
        stated,
        from: range.from.max(0.0),
        to: range.to.max(0.0),
        percent: (nearest.abs() > 1.0).then(|| (stated / nearest - 1.0) * 100.0),
        fits_as_kilocalories,
    };
    list.warning(place, kind);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn label(figures: &[(Nutrient, f64)]) -> Composition {
        let figures = figures
            .iter()
            .map(|&(nutrient, value)| (nutrient, Figure::new(value, Evidence::Label)));
        Composition {
            printed: figures.collect(),
            ..Composition::default()
        }
    }

    #[test]
    fn a_full_label_leaves_only_the_rounding_open() {
        // By hand: 37 × 32.0 + 17 × 55.0 + 17 × 8.0 + 8 × 1.0 = 2263 kJ; rounding 37 × 0.5 + 17 × 0.5 + 17 × 0.05 + 8 × 0.05.
        let range = energy_of_composition(
            &label(&[
                (Nutrient::Fat, 32.0),
                (Nutrient::Carbohydrate, 55.0),
                (Nutrient::Protein, 8.0),
                (Nutrient::Fibre, 1.0),
                (Nutrient::Polyols, 0.0),
                (Nutrient::Acid, 0.0),
            ]),
            false,
        )
        .unwrap();
        assert!((range.from - (2263.0 - 28.25)).abs() < 1e-9, "{range:?}");
        assert!((range.to - (2263.0 + 28.25)).abs() < 1e-9, "{range:?}");
    }

    #[test]
    fn what_is_not_stated_widens_the_range_and_never_narrows_it() {
        let full = [
            (Nutrient::Fat, 10.0),
            (Nutrient::Carbohydrate, 60.0),
            (Nutrient::Protein, 5.0),
            (Nutrient::Sugars, 20.0),
            (Nutrient::Polyols, 0.0),
            (Nutrient::Fibre, 0.0),
            (Nutrient::Acid, 0.0),
        ];
        let whole = energy_of_composition(&label(&full), false).unwrap();
        for left_out in 4..full.len() {
            let mut figures = full.to_vec();
            figures.remove(left_out);
            let wider = energy_of_composition(&label(&figures), false).unwrap();
            assert!(
                wider.from <= whole.from && wider.to >= whole.to,
                "{left_out}: {wider:?} {whole:?}"
            );
        }
        assert_eq!(energy_of_composition(&label(&full[1..]), false), None);
    }
}
