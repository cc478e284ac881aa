//! What standing does to a drink with ice: the ice melts on, and the drink thins.
//!
//! A drink with ice stays near its freezing point and takes heat from the room at a steady rate, so its ice melts by so many
//! grams a minute: `ice(t) = ice(0) − r·t`. The rate is the shop's own figure or an assumed one.

use super::balance::Balance;
use super::parts::{Parts, parts};
use crate::balance::measurand::Measurand;
use crate::balance::mix::Component;
use crate::balance::solve::figures::{REFERENCE_CELSIUS, sweetness_of};
use crate::balance::solve::physics::liquid_volume;
use crate::book::{Book, Settings};
use crate::quantity::Uncertain;

/// Melt rate of ice in a cup of a third of a litre to half a litre in a room of 22 °C, g/min (assumed: some 8 W reach it, and
/// 334 J melt a gram).
pub const ASSUMED_MELT_RATE: f64 = 1.5;

/// Its standard uncertainty, g/min (assumed: rectangular, 0.5 to 2.5).
const ASSUMED_MELT_RATE_UNCERTAINTY: f64 = 0.6;

/// Relative standard uncertainty of a rate that the shop states (assumed).
const STATED_MELT_RATE_UNCERTAINTY: f64 = 0.15;

/// How fast ice melts in a standing drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeltRate {
    /// The rate, g/min.
    pub grams_per_minute: Uncertain,
    /// Whether the shop states it; an assumed one otherwise.
    pub is_stated: bool,
}

impl MeltRate {
    /// The rate of a shop.
    pub fn of(settings: &Settings) -> Self {
        match settings.ice_melt_rate {
            Some(rate) => Self {
                grams_per_minute: Uncertain::relative(rate, STATED_MELT_RATE_UNCERTAINTY),
                is_stated: true,
            },
            None => Self {
                grams_per_minute: Uncertain {
                    value: ASSUMED_MELT_RATE,
                    u: ASSUMED_MELT_RATE_UNCERTAINTY,
                },
                is_stated: false,
            },
        }
    }

    /// The rate from weighings of (minutes, grams of ice left, drained), by the straight line through them; its uncertainty
    /// from three weighings on. `None` for fewer than two times or ice that does not melt.
    pub fn from_weighings(weighings: &[(f64, f64)]) -> Option<(f64, Option<f64>)> {
        let count = weighings.len() as f64;
        let mean = |of: fn(&(f64, f64)) -> f64| weighings.iter().map(of).sum::<f64>() / count;
        let (minutes, grams) = (mean(|at| at.0), mean(|at| at.1));
        let spread: f64 = weighings.iter().map(|at| (at.0 - minutes).powi(2)).sum();
        let together: f64 = weighings
            .iter()
            .map(|at| (at.0 - minutes) * (at.1 - grams))
            .sum();
        let rate = -together / spread;
        if !rate.is_finite() || rate <= 0.0 {
            return None;
        }
        let squares: f64 = weighings
            .iter()
            .map(|at| (at.1 - grams + rate * (at.0 - minutes)).powi(2))
            .sum();
        let u = (weighings.len() > 2).then(|| (squares / (count - 2.0) / spread).sqrt());
        Some((rate, u))
    }
}

/// A drink with ice after it has stood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standing {
    /// How long, minutes.
    pub minutes: f64,
    /// Ice that melted while it stood, g.
    pub melted: Uncertain,
    /// Ice that is left, g.
    pub ice_left: Uncertain,
    /// Water, ice melt and tea per gram of everything else, g/g; `None` when there is nothing else.
    pub dilution: Option<Uncertain>,
    /// Sucrose-equivalent concentration, g/100 ml; `None` when it is not known.
    pub sweetness: Option<Uncertain>,
    /// Tea solids, g/100 ml; `None` when they are not known.
    pub tea_strength: Option<Uncertain>,
    /// Volume of the liquid at 20 °C, ml.
    pub volume: Uncertain,
    /// Minutes until no ice is left.
    pub ice_gone_after: Uncertain,
}

/// The drink of a balance after each of these minutes; empty for a drink without ice left in it.
///
/// What is uncertain in the drink as it is handed over goes on as the same part of the figure, beside the melt rate.
pub fn standing(book: &Book, balance: &Balance, minutes: &[f64]) -> Vec<Standing> {
    let ice = balance.figures.get(Measurand::IceLeft).unwrap_or(0.0);
    if ice <= 0.0 {
        return Vec::new();
    }
    let rate = MeltRate::of(&book.settings).grams_per_minute;
    let parts = parts(book, &balance.resolved);
    minutes
        .iter()
        .map(|minutes| after(balance, &parts, rate, minutes.max(0.0)))
        .collect()
}

fn after(balance: &Balance, parts: &Parts, rate: Uncertain, minutes: f64) -> Standing {
    let Parts {
        prepared, poured, ..
    } = parts;
    let ice = poured.served.ice_left;
    let melted_at = |rate: f64| (rate * minutes).clamp(0.0, ice);
    let spread = |of: &dyn Fn(f64) -> f64| {
        let (low, high) = (
            of(melted_at(rate.value - rate.u)),
            of(melted_at(rate.value + rate.u)),
        );
        Uncertain {
            value: of(melted_at(rate.value)),
            u: (high - low).abs() / 2.0,
        }
    };
    let drink = &poured.drink;
    let volume = |more: f64| liquid_volume(drink, poured.melted + more, REFERENCE_CELSIUS);
    let tea = drink.get(Component::TeaSolids);
    let dilution = |more: f64| {
        let mass = drink.get(Component::Mass) - ice + more;
        let diluting = drink.get(Component::Diluting) - ice + more;
        diluting / (mass - diluting)
    };
    // The uncertainty of the figure as handed over, scaled to what has become of it, and that of the standing.
    let grown = |measurand: Measurand, stood: Uncertain| {
        let handed_over = balance.figures.of[measurand.slot()];
        let part = if handed_over == 0.0 {
            0.0
        } else {
            balance.uncertainty(measurand.slot()) / handed_over
        };
        Uncertain {
            u: stood.u.hypot(part * stood.value),
            ..stood
        }
    };
    let known = |measurand: Measurand| balance.figures.complete(measurand).is_some();
    Standing {
        minutes,
        melted: spread(&|more| more),
        ice_left: grown(Measurand::IceLeft, spread(&|more| ice - more)),
        dilution: (known(Measurand::Dilution) && dilution(0.0).is_finite())
            .then(|| grown(Measurand::Dilution, spread(&dilution))),
        sweetness: known(Measurand::Sweetness).then(|| {
            grown(
                Measurand::Sweetness,
                spread(&|more| sweetness_of(drink, volume(more), &prepared.setup)),
            )
        }),
        tea_strength: known(Measurand::TeaStrength).then(|| {
            grown(
                Measurand::TeaStrength,
                spread(&|more| tea / volume(more) * 100.0),
            )
        }),
        volume: grown(Measurand::Volume, spread(&volume)),
        ice_gone_after: Uncertain {
            value: ice / rate.value,
            u: (ice / rate.value * rate.u / rate.value)
                .hypot(balance.uncertainty(Measurand::IceLeft.slot()) / rate.value),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_rate_is_the_slope_of_the_weighings() {
        // 100, 92, 83, 76 g after 0, 5, 10, 15 min: slope by hand −(7.5·12.25 + 2.5·4.25 + 2.5·4.75 + 7.5·11.75)/125.
        let (rate, u) =
            MeltRate::from_weighings(&[(0.0, 100.0), (5.0, 92.0), (10.0, 83.0), (15.0, 76.0)])
                .unwrap();
        assert!((rate - 1.62).abs() < 1e-9, "{rate}");
        assert!(u.is_some_and(|u| u > 0.0 && u < 0.1));
        assert_eq!(MeltRate::from_weighings(&[(0.0, 100.0)]), None);
        assert_eq!(MeltRate::from_weighings(&[(0.0, 50.0), (5.0, 60.0)]), None);
        assert_eq!(MeltRate::from_weighings(&[(5.0, 50.0), (5.0, 40.0)]), None);
    }

    #[test]
    fn a_shop_that_states_a_rate_is_believed_more_than_the_assumption() {
        let assumed = MeltRate::of(&Settings::default());
        let stated = MeltRate::of(&Settings {
            ice_melt_rate: Some(1.5),
            ..Settings::default()
        });
        assert!(!assumed.is_stated && stated.is_stated);
        assert!(stated.grams_per_minute.u < assumed.grams_per_minute.u);
    }
}
