//! Energy factors for nutrition labels: Regulation (EU) 1169/2011, Annex XIV.
//!
//! The kilojoule and kilocalorie factors are both the law's own: neither is the other converted, so a label adds each column up by itself.
//! The factors hold for any amount; they are conventions, not measurements, and carry no uncertainty.

use crate::balance::mix::{Component, Mix};
use crate::book::PolyolKind;

/// Energy of one gram of a nutrient, as the law states it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EnergyFactor {
    /// Kilojoules a gram.
    pub kj_per_g: f64,
    /// Kilocalories a gram.
    pub kcal_per_g: f64,
}

/// Carbohydrate except polyols, sugars included; fibre not included.
pub const CARBOHYDRATE: EnergyFactor = factor(17.0, 4.0);
/// Polyols except erythritol.
pub const POLYOLS: EnergyFactor = factor(10.0, 2.4);
/// Erythritol.
pub const ERYTHRITOL: EnergyFactor = factor(0.0, 0.0);
/// Protein.
pub const PROTEIN: EnergyFactor = factor(17.0, 4.0);
/// Fat.
pub const FAT: EnergyFactor = factor(37.0, 9.0);
/// Salatrims, a kind of reduced-energy fat.
pub const SALATRIMS: EnergyFactor = factor(25.0, 6.0);
/// Alcohol (ethanol).
pub const ALCOHOL: EnergyFactor = factor(29.0, 7.0);
/// Organic acid.
pub const ORGANIC_ACID: EnergyFactor = factor(13.0, 3.0);
/// Fibre.
pub const FIBRE: EnergyFactor = factor(8.0, 2.0);

/// Factor of a polyol; of one whose kind is not known that of all but erythritol.
pub const fn of_polyol(kind: Option<PolyolKind>) -> EnergyFactor {
    match kind {
        Some(PolyolKind::Erythritol) => ERYTHRITOL,
        _ => POLYOLS,
    }
}

/// Energy of the known parts of a mix; polyols are part of carbohydrate and count by their own factor.
pub(in crate::balance) fn of(
    mix: &Mix,
    per_gram: impl Fn(&EnergyFactor) -> f64,
    polyol: Option<PolyolKind>,
) -> f64 {
    let polyols = mix.get(Component::Polyols);
    (mix.get(Component::Carbohydrate) - polyols) * per_gram(&CARBOHYDRATE)
        + polyols * per_gram(&of_polyol(polyol))
        + mix.get(Component::Protein) * per_gram(&PROTEIN)
        + mix.get(Component::Fat) * per_gram(&FAT)
        + mix.get(Component::Fibre) * per_gram(&FIBRE)
        + mix.get(Component::Acid) * per_gram(&ORGANIC_ACID)
}

const fn factor(kj_per_g: f64, kcal_per_g: f64) -> EnergyFactor {
    EnergyFactor {
        kj_per_g,
        kcal_per_g,
    }
}
