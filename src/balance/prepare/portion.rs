//! From an amount to grams: what one unit of it weighs, and how sure that is.

use super::densities::{PACKING, density_at, density_uncertainty};
use super::per_gram::per_gram;
use crate::balance::brewing::LEAF_BULK_DENSITY;
use crate::balance::cause::Cause;
use crate::balance::mix::Mix;
use crate::balance::slots::Slots;
use crate::book::{
    Amount, Book, Evidence, Figure, Form, Ingredient, IngredientId, Measure, MeasureKind, Nominal,
    WATER_DENSITY,
};
use crate::quantity::RECTANGULAR;

/// Steps of the display of a kitchen scale, g, where the shop does not say (common practice, no source).
const SCALE_STEP: f64 = 1.0;

/// Standard uncertainty of a volume poured to a mark, as a part of it (assumed).
const MARK_UNCERTAINTY: f64 = 0.02;

/// Relative uncertainty of a calibration that rests on one reading (assumed).
pub(in crate::balance) const ONE_READING_UNCERTAINTY: f64 = 0.05;

/// Scatter of one use of a measure whose readings show none, as a part of it (assumed).
pub(in crate::balance) const ASSUMED_SCATTER: f64 = 0.04;

/// What one unit of an amount (a gram, a millilitre, a use of a measure) weighs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portion {
    /// Grams of one unit.
    pub grams: f64,
    /// Relative standard uncertainty that every unit shares through the calibration of its measure.
    pub calibration: f64,
    /// Whether the measure was calibrated with this ingredient; its calibration is shared by all that it doses otherwise.
    pub is_weighed_with_it: bool,
    /// Relative standard uncertainty that comes in through the density, and whether it is the poured bulk density.
    pub density: Option<(f64, bool)>,
    /// Grams by which one unit scatters for itself.
    pub scatter: f64,
    /// Grams by which the whole amount is off, whatever its size.
    pub offset: f64,
    /// What the figure rests on.
    pub evidence: Evidence,
}

impl Portion {
    /// What is uncertain in its density, for an ingredient; `None` where none is needed.
    pub(super) fn density_cause(&self, ingredient: &IngredientId) -> Option<(f64, Cause)> {
        let (relative, is_bulk) = self.density?;
        let id = ingredient.clone();
        let cause = if is_bulk {
            Cause::BulkDensity(id)
        } else {
            Cause::Density(id)
        };
        Some((relative, cause))
    }
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
        Amount::Grams(_) => Some(exact(1.0, offset(book, amount, 1.0))),
        Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => {
            let poured = by_volume(
                1.0,
                0.0,
                0.0,
                density_for(book, ingredient, per_gram, celsius)?,
            );
            Some(Portion {
                offset: offset(book, amount, poured.grams),
                ..poured
            })
        }
        Amount::Count(_, measure) => {
            counted(book, book.measure(measure)?, ingredient, per_gram, celsius)
        }
    }
}

/// Grams by which a whole amount is off, whatever its size, when a unit of it weighs so many grams.
pub(super) fn offset(book: &Book, amount: &Amount, unit: f64) -> f64 {
    match amount {
        Amount::Grams(_) => scale_uncertainty(book),
        // A mark is read once, whatever the volume: the reading is off by a part of the whole.
        Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => {
            mark_uncertainty(book) * amount.number().unwrap_or(0.0) * unit
        }
        Amount::Count(..) => 0.0,
    }
}

/// What one unit of an amount weighs of an ingredient as its label states it, g; `None` where nobody knows, or it weighs nothing.
pub fn one_weighs(book: &Book, item: &Ingredient, amount: &Amount, celsius: f64) -> Option<f64> {
    let mix = per_gram(item, &mut Slots::default()).mix;
    let grams = portion(book, item, &mix, amount, celsius)?.grams;
    (grams > 0.0).then_some(grams)
}

/// Standard uncertainty of one reading of the scale, g: half of its step, as a rectangular distribution.
pub fn scale_uncertainty(book: &Book) -> f64 {
    let step = book.settings.instruments.scale_grams.unwrap_or(SCALE_STEP);
    step / 2.0 * RECTANGULAR
}

/// Standard uncertainty of a volume poured to a mark, as a part of it.
pub(super) fn mark_uncertainty(book: &Book) -> f64 {
    let stated = book.settings.instruments.jug_percent;
    stated.map_or(MARK_UNCERTAINTY, |percent| percent / 100.0 * RECTANGULAR)
}

fn exact(grams: f64, offset: f64) -> Portion {
    Portion {
        grams,
        calibration: 0.0,
        is_weighed_with_it: false,
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
    if let Some(bulk) = ingredient.bulk_density {
        return Some((bulk, true));
    }
    if ingredient.form == Form::Leaf {
        let figure = Figure {
            value: LEAF_BULK_DENSITY.value,
            evidence: Evidence::Assumed,
            u: Some(LEAF_BULK_DENSITY.u),
        };
        return Some((figure, true));
    }
    if ingredient.form.is_dry() {
        return None;
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
    let density = density_at(ingredient, per_gram, celsius);
    if ingredient.form != Form::Pieces {
        return Some((density, false));
    }
    // A measure of pieces holds air, too: what the pieces themselves weigh is not what a measure of them does.
    let value = PACKING.value * density.value;
    let bulk = Figure {
        value,
        evidence: Evidence::Assumed,
        u: Some(PACKING.u * density.value),
    };
    Some((bulk, true))
}

fn by_volume(millilitres: f64, calibration: f64, scatter: f64, density: (Figure, bool)) -> Portion {
    let (figure, bulk) = density;
    let u = if bulk {
        figure.standard_uncertainty()
    } else {
        density_uncertainty(figure)
    };
    let grams = millilitres * figure.value;
    Portion {
        grams,
        calibration,
        is_weighed_with_it: false,
        density: Some((u / figure.value.max(1e-6), bulk)),
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
            is_weighed_with_it: true,
            density: None,
            scatter: weighed.scatter.unwrap_or(ASSUMED_SCATTER * weighed.grams),
            offset: 0.0,
            evidence: Evidence::Measured,
        });
    }
    // A piece holds nothing: it weighs what pieces of this ingredient weigh, and water has none.
    if measure.kind == MeasureKind::Piece && !matches!(measure.nominal, Some(Nominal::Mass(_))) {
        return None;
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
            is_weighed_with_it: false,
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
