//! Checks of the figures of a composition among each other.

use super::checklist::Checklist;
use crate::book::{
    Basis, CarbohydrateKind, Composition, FigureName, FigureRange, FindingKind, Ingredient,
    Nutrient, Place, SugarProfile, Unfinished,
};

pub(super) fn check(item: &Ingredient, list: &mut Checklist) {
    let composition = &item.composition;
    let place = || Place::Ingredient(item.id.clone(), "composition");
    for nutrient in composition.printed.keys() {
        let Some(figure) = composition.get(*nutrient) else {
            continue;
        };
        let range = range_of(*nutrient);
        list.in_range(
            place(),
            FigureName::Nutrient(*nutrient),
            figure.value,
            range,
        );
        list.uncertainty(place(), figure, range);
    }
    parts_within_wholes(item, list);
    sum_within_basis(item, list);
    water_and_solids(item, list);
    sugar_profile(item, list);
    if let Some(fraction) = composition.free_sugar_fraction {
        list.in_range(place(), FigureName::FreeSugarFraction, fraction, FRACTION);
    }
}

/// A part of a whole.
const FRACTION: FigureRange = FigureRange::new(0.0, 1.0, "");

/// Dextrose equivalents of glucose syrups.
const DEXTROSE_EQUIVALENTS: FigureRange = FigureRange::new(0.0, 100.0, "");

/// What a nutrient can be in the basis of its composition.
fn range_of(nutrient: Nutrient) -> FigureRange {
    let most = match nutrient {
        Nutrient::Energy => 4000.0,
        Nutrient::Caffeine => 100_000.0,
        // A syrup per 100 ml or a serving may hold more than 100 g in its basis.
        _ => 200.0,
    };
    FigureRange::new(0.0, most, nutrient.unit())
}

fn value(composition: &Composition, nutrient: Nutrient) -> Option<f64> {
    composition.get(nutrient).map(|figure| figure.value)
}

fn parts_within_wholes(item: &Ingredient, list: &mut Checklist) {
    let composition = &item.composition;
    let with_fibre = composition.carbohydrate_kind == CarbohydrateKind::WithFibre;
    let pairs = [
        (Nutrient::Sugars, Nutrient::Carbohydrate, true),
        (Nutrient::Saturates, Nutrient::Fat, true),
        (Nutrient::Polyols, Nutrient::Carbohydrate, true),
        (Nutrient::Fibre, Nutrient::Carbohydrate, with_fibre),
    ];
    for (part, whole, _) in pairs.into_iter().filter(|(_, _, is_part)| *is_part) {
        if let (Some(part_value), Some(whole_value)) =
            (value(composition, part), value(composition, whole))
            && part_value > whole_value
        {
            let kind = FindingKind::PartOverWhole {
                part,
                part_value,
                whole,
                whole_value,
            };
            list.warning(Place::Ingredient(item.id.clone(), "composition"), kind);
        }
    }
}

/// Per 100 g or a serving, the parts can't weigh more than the whole. Each printed figure may be rounded up by half a unit.
fn sum_within_basis(item: &Ingredient, list: &mut Checklist) {
    let composition = &item.composition;
    let whole = match (composition.basis, item.density) {
        (Basis::Per100Grams, _) => 100.0,
        (Basis::PerServing(grams), _) if grams > 0.0 => grams,
        // 100 ml of a syrup weigh more than 100 g; how much, only its density tells.
        (Basis::Per100Millilitres, Some(density)) if (0.5..=2.0).contains(&density.value) => {
            100.0 * density.value
        }
        _ => return,
    };
    let mut parts = vec![
        Nutrient::Water,
        Nutrient::Fat,
        Nutrient::Carbohydrate,
        Nutrient::Protein,
        Nutrient::Salt,
    ];
    if composition.carbohydrate_kind == CarbohydrateKind::WithoutFibre {
        parts.push(Nutrient::Fibre);
    }
    let stated: Vec<(Nutrient, f64)> = parts
        .into_iter()
        .filter_map(|part| Some((part, value(composition, part)?)))
        .filter(|(_, value)| *value > 0.0)
        .collect();
    let sum: f64 = stated.iter().map(|(_, value)| value).sum();
    if sum > whole + 2.0 {
        let kind = FindingKind::SumOverWhole {
            parts: stated.iter().map(|(part, _)| *part).collect(),
            sum,
            whole,
        };
        list.warning(Place::Ingredient(item.id.clone(), "composition"), kind);
    }
}

/// Water and dissolved solids (°Brix is g in 100 g, whatever the basis of the rest) can't weigh more than the whole either.
fn water_and_solids(item: &Ingredient, list: &mut Checklist) {
    let composition = &item.composition;
    let whole = match composition.basis {
        Basis::Per100Grams => 100.0,
        Basis::PerServing(grams) if grams > 0.0 => grams,
        Basis::PerServing(_) | Basis::Per100Millilitres => return,
    };
    let (Some(water), Some(brix)) = (
        value(composition, Nutrient::Water),
        value(composition, Nutrient::Brix),
    ) else {
        return;
    };
    let sum = water + brix * whole / 100.0;
    if sum > whole + 2.0 {
        let kind = FindingKind::SumOverWhole {
            parts: vec![Nutrient::Water, Nutrient::Brix],
            sum,
            whole,
        };
        list.warning(Place::Ingredient(item.id.clone(), "composition"), kind);
    }
}

fn sugar_profile(item: &Ingredient, list: &mut Checklist) {
    let place = || Place::Ingredient(item.id.clone(), "composition");
    match item.composition.sugar_profile {
        Some(SugarProfile::Own {
            sucrose,
            glucose,
            fructose,
            lactose,
            maltose,
            other,
        }) => {
            let fractions = [sucrose, glucose, fructose, lactose, maltose, other];
            let sum: f64 = fractions.iter().sum();
            if let Some(fraction) = fractions
                .into_iter()
                .find(|fraction| !FRACTION.contains(*fraction))
            {
                list.in_range(place(), FigureName::SugarFraction, fraction, FRACTION);
            } else if (sum - 1.0).abs() > 0.011 {
                list.unfinished(place(), Unfinished::SugarFractions { sum });
            }
        }
        Some(SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        }) => {
            let what = FigureName::DextroseEquivalent;
            list.in_range(place(), what, dextrose_equivalent, DEXTROSE_EQUIVALENTS);
        }
        _ => {}
    }
}
