//! What is asked of a drink and can't be held against it, because what it is held against is not known.

use crate::balance::{Balance, Measurand};
use crate::book::{IngredientId, TemperatureWindow};

use super::demands::Demands;

/// A bound whose figure is known only in part, or not at all.
#[derive(Clone, Debug, PartialEq)]
pub struct Unheld {
    /// What is asked.
    pub bound: Bound,
    /// Ingredients that do not state what it needs; empty when something else does not.
    pub missing: Vec<IngredientId>,
}

/// Something that is asked of a drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bound {
    /// At most so much sugar, g/100 ml.
    Sugar(f64),
    /// At most so much energy, kJ.
    Energy(f64),
    /// At most so much money.
    Cost(f64),
    /// Handed over within a window.
    Temperature(TemperatureWindow),
    /// No more than the cup holds.
    Cup,
}

impl Bound {
    const fn measurand(self) -> Measurand {
        match self {
            Self::Sugar(_) => Measurand::SugarPer100Ml,
            Self::Energy(_) => Measurand::EnergyKj,
            Self::Cost(_) => Measurand::Cost,
            Self::Temperature(_) => Measurand::ServingTemperature,
            Self::Cup => Measurand::Fill,
        }
    }
}

/// What is asked of a drink that its balance can't tell.
pub(super) fn unheld(
    balance: &Balance,
    demands: &Demands,
    window: TemperatureWindow,
) -> Vec<Unheld> {
    let asked = [
        demands.most_sugar_per_100_ml.map(Bound::Sugar),
        demands.most_energy_kj.map(Bound::Energy),
        demands.most_cost.map(Bound::Cost),
        Some(Bound::Temperature(window)),
        balance.resolved.cup.is_some().then_some(Bound::Cup),
    ];
    let is_known = |bound: &Bound| balance.figures.complete(bound.measurand()).is_some();
    let unknown = asked.into_iter().flatten().filter(|bound| !is_known(bound));
    unknown
        .map(|bound| Unheld {
            bound,
            missing: balance.reported(bound.measurand()).missing,
        })
        .collect()
}
