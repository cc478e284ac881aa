//! Doubts as the shop's own record re-scales them: the standard uncertainty of every cause of a class is multiplied by what
//! somebody accepted, see [`crate::book::RescaledDoubt`].
//!
//! Every cause is scaled once, when a drink is prepared; whatever looks at a drink afterwards (its ±, a swap, drawn cups) has it.

use crate::balance::cause::Cause;
use crate::balance::solve::prepared::{Prepared, SetupChange};
use crate::book::{Book, DoubtClass, TastedFactor};

/// The class of a cause in a book; `None` for what no record tells of.
pub fn doubt_class(book: &Book, cause: &Cause) -> Option<DoubtClass> {
    Some(match cause {
        Cause::Calibration(..)
        | Cause::UseScatter(_)
        | Cause::Reading(_)
        | Cause::Density(_)
        | Cause::BulkDensity(_)
        | Cause::Batch(..)
        | Cause::DensityModel => DoubtClass::Dose,
        Cause::RoomTemperature
        | Cause::Temperature(_)
        | Cause::MeasureTemperature(_)
        | Cause::LineTemperature(_)
        | Cause::VesselHeat(_)
        | Cause::FreezingPoint
        | Cause::Melting
        | Cause::HeatModel => DoubtClass::Temperature,
        Cause::Composition(..)
        | Cause::SugarSplit(_)
        | Cause::Undeclared(_)
        | Cause::HighPotency(..)
        | Cause::Extraction(_)
        | Cause::Retention(_)
        | Cause::Yield(_) => DoubtClass::Composition,
        Cause::RelativeSweetness(_)
        | Cause::PolyolSweetness(_)
        | Cause::Potency(_)
        | Cause::SweetenerMixture => DoubtClass::Sweetness,
        // What tastings have shown is as sure as they make it.
        Cause::Flavour(id, at) => {
            let item = book.ingredient(id)?;
            let name = &item.composition.flavours.get(*at)?.name;
            let taken = item.tasted_figure(&TastedFactor::Flavour(name.clone()));
            return taken.is_none().then_some(DoubtClass::Flavour);
        }
        Cause::TastedSweetness(_)
        | Cause::FreeSugars(_)
        | Cause::PolyolEnergy(_)
        | Cause::Cooling(_) => return None,
    })
}

/// Multiplies what each cause does by what was accepted for its class.
pub(super) fn rescale(book: &Book, prepared: &mut Prepared) {
    if book.settings.doubts.is_empty() {
        return;
    }
    let times: Vec<f64> = prepared
        .causes
        .iter()
        .map(|cause| doubt_class(book, cause).map_or(1.0, |class| book.settings.doubt_times(class)))
        .collect();
    for line in &mut prepared.lines {
        for sensitivity in &mut line.sensitivities {
            sensitivity.change = sensitivity.change.times(times[sensitivity.cause]);
        }
    }
    for (cause, change) in &mut prepared.setup_changes {
        *change = change.times(times[*cause]);
    }
}

impl SetupChange {
    /// The same when the cause is off by so many times as much.
    fn times(self, times: f64) -> Self {
        match self {
            Self::CupHeat(heat) => Self::CupHeat(heat * times),
            Self::ShakerHeat(heat) => Self::ShakerHeat(heat * times),
            Self::WallTemperature {
                cup,
                shaker,
                kelvin,
            } => Self::WallTemperature {
                cup,
                shaker,
                kelvin: kelvin * times,
            },
            Self::Sweetness(slot, by) => Self::Sweetness(slot, by * times),
            Self::CoolingTime(part) => Self::CoolingTime(part * times),
            Self::Potency(slot, part) => Self::Potency(slot, part * times),
            Self::Mixture(part) => Self::Mixture(part * times),
            Self::Freezing { relative, kelvin } => Self::Freezing {
                relative: relative * times,
                kelvin: kelvin * times,
            },
            Self::Unmelted(part) => Self::Unmelted(part * times),
            Self::HeatLost(part) => Self::HeatLost(part * times),
            Self::Volume(part) => Self::Volume(part * times),
        }
    }
}
