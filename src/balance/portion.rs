//! From an amount to grams: what one unit of it weighs, and how sure that is.

use super::composition::density_at;
use super::mix::Mix;
use crate::book::{Amount, Book, Evidence, Figure, Form, Ingredient, Measure, Nominal};

/// Density of water at 20 °C, g/ml: readings without an ingredient are of water.
pub(super) const WATER_DENSITY: f64 = 0.998_2;

/// Standard uncertainty of a kitchen scale that shows whole grams: rectangular ±0.5 g.
const SCALE_UNCERTAINTY: f64 = 0.29;

/// Standard uncertainty of a volume poured to a mark, as a part of it (assumed).
pub(super) const MARK_UNCERTAINTY: f64 = 0.02;

/// Relative uncertainty of a calibration that rests on one reading (assumed).
pub(super) const ONE_READING_UNCERTAINTY: f64 = 0.05;

/// Scatter of one use of a measure whose readings show none, as a part of it (assumed).
pub(super) const ASSUMED_SCATTER: f64 = 0.04;

/// What one unit of an amount (a gram, a millilitre, a use of a measure) weighs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portion {
    /// Grams of one unit.
    pub grams: f64,
    /// Relative standard uncertainty that every unit shares through the calibration of its measure.
    pub calibration: f64,
    /// Relative standard uncertainty that comes in through the density, and whether it is the poured bulk density.
    pub density: Option<(f64, bool)>,
    /// Grams by which one unit scatters for itself.
    pub scatter: f64,
    /// Grams by which the whole amount is off, whatever its size.
    pub offset: f64,
    /// What the figure rests on.
    pub evidence: Evidence,
}

/// What one unit of an amount weighs; `None` when a dry ingredient is measured by volume and its bulk density is not known,
/// or nobody knows what the measure holds.
pub fn portion(
    book: &Book,
    ingredient: &Ingredient,
    per_gram: &Mix,
    amount: &Amount,
    celsius: f64,
) -> Option<Portion> {
    match amount {
        Amount::Grams(_) => Some(exact(1.0, SCALE_UNCERTAINTY)),
        Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => {
            let poured = by_volume(
                1.0,
                0.0,
                0.0,
                density_for(book, ingredient, per_gram, celsius)?,
            );
            // A mark is read once, whatever the volume: the reading is off by a part of the whole.
            let millilitres = amount.number().unwrap_or(0.0);
            Some(Portion {
                offset: MARK_UNCERTAINTY * millilitres * poured.grams,
                ..poured
            })
        }
        Amount::Count(_, measure) => {
            counted(book, book.measure(measure)?, ingredient, per_gram, celsius)
        }
    }
}

fn exact(grams: f64, offset: f64) -> Portion {
    Portion {
        grams,
        calibration: 0.0,
        density: None,
        scatter: 0.0,
        offset,
        evidence: Evidence::Measured,
    }
}

/// Density that turns a volume into grams, and whether it is the poured bulk density of a dry ingredient.
fn density_for(
    book: &Book,
    ingredient: &Ingredient,
    per_gram: &Mix,
    celsius: f64,
) -> Option<(Figure, bool)> {
    if ingredient.form.is_dry() || ingredient.bulk_density.is_some() {
        return ingredient.bulk_density.map(|figure| (figure, true));
    }
    if ingredient.form == Form::Ice {
        // A millilitre of ice is a millilitre of the bed that it makes.
        let value = book.settings.ice_bulk_density;
        return Some((
            Figure {
                value,
                evidence: Evidence::Assumed,
                u: Some(0.1 * value),
            },
            true,
        ));
    }
    Some((density_at(ingredient, per_gram, celsius), false))
}

fn by_volume(millilitres: f64, calibration: f64, scatter: f64, density: (Figure, bool)) -> Portion {
    let (figure, bulk) = density;
    let grams = millilitres * figure.value;
    Portion {
        grams,
        calibration,
        density: Some((figure.standard_uncertainty() / figure.value.max(1e-6), bulk)),
        scatter: scatter * grams,
        offset: 0.0,
        evidence: figure.evidence,
    }
}

fn counted(
    book: &Book,
    measure: &Measure,
    ingredient: &Ingredient,
    per_gram: &Mix,
    celsius: f64,
) -> Option<Portion> {
    if let Some(weighed) = measure.calibration(Some(&ingredient.id)) {
        return Some(Portion {
            grams: weighed.grams,
            calibration: weighed
                .u_mean
                .map_or(ONE_READING_UNCERTAINTY, |u| u / weighed.grams),
            density: None,
            scatter: weighed.scatter.unwrap_or(ASSUMED_SCATTER * weighed.grams),
            offset: 0.0,
            evidence: Evidence::Measured,
        });
    }
    if let Some(weighed) = measure.calibration(None) {
        let relative = weighed
            .u_mean
            .map_or(ONE_READING_UNCERTAINTY, |u| u / weighed.grams);
        let scatter = weighed
            .scatter
            .map_or(ASSUMED_SCATTER, |scatter| scatter / weighed.grams);
        let density = density_for(book, ingredient, per_gram, celsius)?;
        return Some(by_volume(
            weighed.grams / WATER_DENSITY,
            relative,
            scatter,
            density,
        ));
    }
    let assumed = measure.assumed_relative_uncertainty();
    match measure.nominal? {
        Nominal::Mass(grams) => Some(Portion {
            grams,
            calibration: assumed,
            density: None,
            scatter: ASSUMED_SCATTER * grams,
            offset: 0.0,
            evidence: Evidence::Assumed,
        }),
        Nominal::Volume(millilitres) => {
            let density = density_for(book, ingredient, per_gram, celsius)?;
            let portion = by_volume(millilitres, assumed, ASSUMED_SCATTER, density);
            Some(Portion {
                evidence: Evidence::Assumed,
                ..portion
            })
        }
    }
}
