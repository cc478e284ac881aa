//! Whether the stated densities fit the composition.
//!
//! The volumes of the components add up: water and the dry components of Choi & Okos 1986 (ASHRAE Handbook—Refrigeration,
//! thermal properties of foods) at 20 °C. In solution sugars take some 2 % less room than that, so that the tolerance is wide;
//! it still finds a density in kg/m³ of another syrup, a °Brix typed as a density, and a mass typed as a volume.

use super::checklist::Checklist;
use crate::book::{
    Basis, CarbohydrateKind, Figure, FigureName, FindingKind, Form, Ingredient, Nutrient, Place,
};

// g/ml at 20 °C; the dry ones from ρ = b0 + b1·t of the source.
const WATER: f64 = 0.9982;
const FAT: f64 = 0.9172;
const CARBOHYDRATE: f64 = 1.5929;
const PROTEIN: f64 = 1.3195;
const ASH: f64 = 2.4182;
const FIBRE: f64 = 1.3042;

/// How far a stated density may be from the reckoned one, as a part of it (assumed: 2 % of the additive volumes, air in a
/// purée, and the tolerance of the label).
const TOLERANCE: f64 = 0.08;

/// The part of the room that grains fill at most when poured: shaken equal spheres reach 0.64, mixed sizes and fines somewhat
/// more (common practice, no source).
const CLOSEST_PACKING: f64 = 0.80;

/// The least that a poured powder fills; agglomerated instant powders have 0.1 to 0.2 (common practice, no source).
const LOOSEST_PACKING: f64 = 0.04;

pub(super) fn check(item: &Ingredient, list: &mut Checklist) {
    if item.house_made.is_some() {
        return;
    }
    // A foam is as light as its air makes it.
    let is_solution = item.form.rest_is_water() && item.form != Form::Foam;
    if let Some(density) = item.density.filter(|_| is_solution)
        && let Some(reckoned) = solution_density(item, density)
    {
        let (low, high) = (reckoned * (1.0 - TOLERANCE), reckoned * (1.0 + TOLERANCE));
        report(item, FigureName::Density, density, (low, high), list);
    }
    if let Some(bulk) = item.bulk_density.filter(|_| item.form.is_dry())
        && let Some(grain) = grain_density(item)
    {
        report(
            item,
            FigureName::BulkDensity,
            bulk,
            (grain * LOOSEST_PACKING, grain * CLOSEST_PACKING),
            list,
        );
    }
}

fn report(
    item: &Ingredient,
    what: FigureName,
    stated: Figure,
    (low, high): (f64, f64),
    list: &mut Checklist,
) {
    // Figures beyond all measure give no range; each has a finding of its own.
    if !(low.is_finite() && high.is_finite()) {
        return;
    }
    let doubt = 2.0 * stated.u.unwrap_or(0.0);
    if (low - doubt..=high + doubt).contains(&stated.value) {
        return;
    }
    let field = match what {
        FigureName::BulkDensity => "bulk_density",
        _ => "density",
    };
    let kind = FindingKind::DensityNotOfComposition {
        what,
        stated: stated.value,
        low,
        high,
    };
    list.warning(Place::Ingredient(item.id.clone(), field), kind);
}

/// Grams and millilitres of the dry components in the basis; `None` when carbohydrate (or °Brix) or fat is not stated.
fn dry_parts(item: &Ingredient) -> Option<(f64, f64)> {
    let composition = &item.composition;
    let value = |nutrient| composition.get(nutrient).map(|figure| figure.value);
    let known = |nutrient| value(nutrient).unwrap_or(0.0);
    // A syrup may be given by its °Brix alone: then all that dissolves counts as carbohydrate.
    let carbohydrate = match value(Nutrient::Carbohydrate) {
        Some(carbohydrate) => carbohydrate,
        None if composition.basis == Basis::Per100Grams => value(Nutrient::Brix)?,
        None => return None,
    };
    let fat = if item.form == crate::book::Form::Syrup {
        known(Nutrient::Fat)
    } else {
        value(Nutrient::Fat)?
    };
    let fibre = match composition.carbohydrate_kind {
        CarbohydrateKind::WithoutFibre => known(Nutrient::Fibre),
        CarbohydrateKind::WithFibre => 0.0,
    };
    let others = known(Nutrient::TeaSolids) + known(Nutrient::Acid);
    let parts = [
        (fat, FAT),
        (carbohydrate + others, CARBOHYDRATE),
        (known(Nutrient::Protein), PROTEIN),
        (known(Nutrient::Salt), ASH),
        (fibre, FIBRE),
    ];
    let grams: f64 = parts.iter().map(|(grams, _)| grams).sum();
    Some((
        grams,
        parts.iter().map(|(grams, density)| grams / density).sum(),
    ))
}

/// Density of a liquid whose rest is water, g/ml.
fn solution_density(item: &Ingredient, stated: Figure) -> Option<f64> {
    let (grams, millilitres) = dry_parts(item)?;
    let whole_grams = match item.composition.basis {
        Basis::Per100Grams => 100.0,
        Basis::PerServing(serving) => serving,
        // 100 ml: what the dry parts leave of the room is water.
        Basis::Per100Millilitres => {
            let water = WATER * (100.0 - millilitres);
            return (water >= 0.0).then(|| (grams + water) / 100.0);
        }
    };
    let water = whole_grams - grams;
    // More than the whole is a finding of its own.
    (water >= 0.0 && stated.value > 0.0).then(|| whole_grams / (millilitres + water / WATER))
}

/// Density of the grains of a powder, g/ml; what is not stated counts like carbohydrate.
fn grain_density(item: &Ingredient) -> Option<f64> {
    let (grams, millilitres) = dry_parts(item)?;
    (grams > 1.0 && millilitres > 0.0).then(|| grams / millilitres)
}
