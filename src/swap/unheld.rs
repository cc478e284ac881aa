//! What is asked of a drink and can't be held against it, because what it is held against is not known.

use crate::balance::{Balance, Measurand};
use crate::book::{Book, IngredientId, TemperatureWindow};
use crate::quantity::show_number;

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

    fn words(self, book: &Book) -> String {
        match self {
            Self::Sugar(most) => {
                format!(
                    "it has at most {} g of sugar in 100 ml",
                    show_number(most, 1)
                )
            }
            Self::Energy(most) => format!("it has at most {} kJ", show_number(most, 0)),
            Self::Cost(most) => format!(
                "it costs at most {} {}",
                show_number(most, 2),
                book.settings.currency
            ),
            Self::Temperature(window) => format!(
                "it is served at {} to {} °C",
                show_number(window.from, 0),
                show_number(window.to, 0)
            ),
            Self::Cup => "it fits the cup".to_owned(),
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

impl Unheld {
    /// "whether it costs at most 1.20 EUR is not known: House syrup does not state what that takes".
    pub fn words(&self, book: &Book) -> String {
        let bound = self.bound.words(book);
        let name = |id: &IngredientId| {
            book.ingredient(id)
                .map_or_else(|| id.to_string(), |item| item.full_name())
        };
        let names: Vec<String> = self.missing.iter().map(name).collect();
        let lead = format!("whether {bound} is not known");
        match (self.bound, names.as_slice()) {
            (Bound::Cost(_), []) => format!("{lead}: the cup or what goes with it has no price"),
            (_, []) => lead,
            (Bound::Cost(_), _) => format!("{lead}: there is no price for {}", names.join(" and ")),
            (Bound::Cup | Bound::Temperature(_), _) => {
                format!(
                    "{lead}: nothing says how much {} weighs",
                    names.join(" and ")
                )
            }
            (Bound::Sugar(_) | Bound::Energy(_), _) => {
                format!("{lead}: it is not stated of {}", names.join(" and "))
            }
        }
    }
}
