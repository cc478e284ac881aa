//! Polyols by kind: how sweet, how cold as they dissolve, and how they lower the freezing point.
//!
//! Energy by kind is a matter of law and stands in [`super::energy`]. A polyol whose kind is not known takes the middle of all.

use super::freezing::Solute;
use super::sweetness::{self, RelativeSweetness};
use crate::book::PolyolKind;

/// Sweetness against sucrose; of an unknown kind with a spread that covers them all.
pub const fn relative_sweetness(kind: Option<PolyolKind>) -> RelativeSweetness {
    match kind {
        Some(PolyolKind::Erythritol) => sweetness::ERYTHRITOL,
        Some(PolyolKind::Xylitol) => sweetness::XYLITOL,
        Some(PolyolKind::Sorbitol) => sweetness::SORBITOL,
        Some(PolyolKind::Mannitol) => sweetness::MANNITOL,
        Some(PolyolKind::Maltitol) => sweetness::MALTITOL,
        Some(PolyolKind::Lactitol) => sweetness::LACTITOL,
        Some(PolyolKind::Isomalt) => sweetness::ISOMALT,
        None => sweetness::OTHER_POLYOL,
    }
}

/// What it counts as in the freezing point. Lactitol and isomalt are disaccharide alcohols like maltitol.
pub const fn solute(kind: Option<PolyolKind>) -> Solute {
    match kind {
        Some(PolyolKind::Erythritol) => Solute::Erythritol,
        Some(PolyolKind::Xylitol) => Solute::Xylitol,
        Some(PolyolKind::Maltitol | PolyolKind::Lactitol | PolyolKind::Isomalt) => Solute::Maltitol,
        Some(PolyolKind::Sorbitol | PolyolKind::Mannitol) | None => Solute::Sorbitol,
    }
}

/// Heat taken up when its crystals dissolve at 25 °C, kJ/kg (polyol tables, values from memory; erythritol 180 was seen on a maker's
/// page, where another prints 97, and maltitol runs from 23 to 79). Of an unknown kind that of sorbitol (assumed).
pub const fn heat_of_solution_kj_per_kg(kind: Option<PolyolKind>) -> f64 {
    match kind {
        Some(PolyolKind::Erythritol) => 180.0,
        Some(PolyolKind::Xylitol) => 153.0,
        Some(PolyolKind::Sorbitol) | None => 111.0,
        Some(PolyolKind::Mannitol) => 121.0,
        Some(PolyolKind::Maltitol) => 51.0,
        // The monohydrate; the anhydrous crystal takes up 35.
        Some(PolyolKind::Lactitol) => 53.0,
        Some(PolyolKind::Isomalt) => 39.0,
    }
}
