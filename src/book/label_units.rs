//! In which units a label prints what may be printed in two ways.

use super::Nutrient;
use crate::quantity::KILOJOULES_PER_KILOCALORIE;

/// Salt is sodium times this: Regulation (EU) 1169/2011, Annex I, point 11.
pub const SALT_PER_SODIUM: f64 = 2.5;

/// How a label prints its energy.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum EnergyUnit {
    /// In kilojoules.
    #[default]
    Kilojoules,
    /// In kilocalories.
    Kilocalories,
}

/// How a label prints its salt.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SaltUnit {
    /// Grams of salt.
    #[default]
    Salt,
    /// Milligrams of sodium.
    SodiumMilligrams,
}

/// In which units a label prints what may be printed in two ways.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct LabelUnits {
    /// The energy.
    pub energy: EnergyUnit,
    /// The salt.
    pub salt: SaltUnit,
}

impl LabelUnits {
    /// What a printed figure is multiplied with to be in [`Nutrient::unit`].
    pub fn factor(self, nutrient: Nutrient) -> f64 {
        match (nutrient, self.energy, self.salt) {
            (Nutrient::Energy, EnergyUnit::Kilocalories, _) => KILOJOULES_PER_KILOCALORIE,
            (Nutrient::Salt, _, SaltUnit::SodiumMilligrams) => SALT_PER_SODIUM / 1000.0,
            _ => 1.0,
        }
    }
}
