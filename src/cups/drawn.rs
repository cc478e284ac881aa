//! When each cause of doubt is drawn: for every cup, once a shift, or not at all.

use crate::balance::{Balance, Cause, between_days};
use crate::book::{Axis, Book};

use super::aim::Aim;

/// When a cause is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// For every cup: hands, the eye at a mark, how long a cup is stirred and stands before it is handed over.
    EachCup,
    /// Once a shift: temperatures, what a batch turned out to be, how a measure is set that day.
    EachShift,
    /// Never: a figure that is the same in every cup, however well it is known. The standard was tasted with it, too.
    Held,
}

impl When {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::EachCup => "cup",
            Self::EachShift => "shift",
            Self::Held => "held",
        }
    }
}

/// When a cause is drawn, and by how many of its standard uncertainties it scatters then.
///
/// A calibration is what a use weighs on the mean. That nobody knows it well makes no two cups differ. That a measure weighs something
/// else on another day does, and it is drawn where the readings show it ([`between_days`]).
pub fn when_drawn(book: &Book, cause: &Cause) -> (When, f64) {
    match cause {
        Cause::UseScatter(_) | Cause::Reading(_) | Cause::Melting | Cause::HeatModel => {
            (When::EachCup, 1.0)
        }
        Cause::RoomTemperature
        | Cause::Temperature(_)
        | Cause::MeasureTemperature(_)
        | Cause::LineTemperature(_)
        | Cause::Batch(..) => (When::EachShift, 1.0),
        Cause::Calibration(..) => match drift_in_uncertainties(book, cause) {
            Some(times) if times > 0.0 => (When::EachShift, times),
            _ => (When::Held, 0.0),
        },
        Cause::Composition(..)
        | Cause::SugarSplit(_)
        | Cause::Undeclared(_)
        | Cause::Flavour(..)
        | Cause::HighPotency(..)
        | Cause::Density(_)
        | Cause::BulkDensity(_)
        | Cause::Extraction(_)
        | Cause::Retention(_)
        | Cause::Yield(_)
        | Cause::FreeSugars(_)
        | Cause::VesselHeat(_)
        | Cause::Cooling(_)
        | Cause::RelativeSweetness(_)
        | Cause::PolyolSweetness(_)
        | Cause::TastedSweetness(_)
        | Cause::PolyolEnergy(_)
        | Cause::Potency(_)
        | Cause::SweetenerMixture
        | Cause::FreezingPoint
        | Cause::DensityModel => (When::Held, 0.0),
    }
}

/// What a measure weighs more or less on another day, in standard uncertainties of its calibration.
fn drift_in_uncertainties(book: &Book, cause: &Cause) -> Option<f64> {
    let Cause::Calibration(id, with) = cause else {
        return None;
    };
    let measure = book.measure(id)?;
    let calibration = measure.calibration(with.as_ref())?;
    let days = between_days(measure, with.as_ref())?;
    let times = days * calibration.grams / calibration.u_mean?;
    times.is_finite().then_some(times)
}

/// A cause that is drawn, with the axis that it moves most.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCause {
    /// The cause.
    pub cause: Cause,
    /// When it is drawn; never [`When::Held`].
    pub when: When,
    /// The axis that it moves by most steps.
    pub axis: Axis,
    /// The standard deviation that it alone gives that axis, in noticeable steps.
    pub steps: f64,
}

/// The causes of a drink that are drawn and move an axis that counts, those that move it most first.
pub(super) fn drawn_causes(book: &Book, balance: &Balance, aims: &[Aim]) -> Vec<DrawnCause> {
    let found = balance.contributions.iter().filter_map(|contribution| {
        let (when, times) = when_drawn(book, &contribution.cause);
        if when == When::Held {
            return None;
        }
        let moved = |aim: &Aim| {
            let effect = aim.slot.map_or(0.0, |slot| contribution.effect[slot]);
            (times * effect / aim.step).abs()
        };
        let counted = aims.iter().filter(|aim| aim.counts());
        let most = counted.max_by(|a, b| moved(a).total_cmp(&moved(b)))?;
        Some(DrawnCause {
            cause: contribution.cause.clone(),
            when,
            axis: most.axis.clone(),
            steps: moved(most),
        })
    });
    let mut found: Vec<DrawnCause> = found.filter(|drawn| drawn.steps > 0.0).collect();
    found.sort_by(|a, b| b.steps.total_cmp(&a.steps));
    found
}
