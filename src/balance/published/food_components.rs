//! Specific heat, enthalpy and density of the dry components of food, by Choi & Okos.
//!
//! `cp = a0 + a1·t + a2·t²` kJ/kg/K and `ρ = b0 + b1·t` kg/m³, with `t` in °C. A mixture has the mass-weighted sum of the specific heats and
//! the sum of the volumes. Choi & Okos 1986, as tabulated in the ASHRAE Handbook—Refrigeration, thermal properties of foods, tables 1 and 2;
//! stated range −40–150 °C.
//!
//! Water and ice are left out on purpose: Choi & Okos print two constants for water that differ by 1.3 %, and [`super::water`] follows IAPWS.
//! Sugars in solution belong to [`super::sugar_solution`]: as a Choi & Okos carbohydrate they would be 0.8 % low in specific heat at
//! 10 % sugar and 20 °C, 9 % low at 50 % and 80 °C.

use crate::balance::number::Number;

/// Range of the correlations, °C. Outside, specific heat and density keep their end value and the enthalpy goes straight on.
const RANGE_CELSIUS: (f64, f64) = (-40.0, 150.0);

/// A dry component of food.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FoodComponent {
    /// Protein.
    Protein,
    /// Fat, liquid or solid: the correlation carries no heat of melting.
    Fat,
    /// Carbohydrate that is not a sugar in solution, such as starch and maltodextrin.
    Carbohydrate,
    /// Dietary fibre.
    Fibre,
    /// Ash: the minerals, salt among them.
    Ash,
}

impl FoodComponent {
    /// Every component, in the order of the published table.
    pub const ALL: [Self; 5] = [
        Self::Protein,
        Self::Fat,
        Self::Carbohydrate,
        Self::Fibre,
        Self::Ash,
    ];

    /// Specific heat, kJ/kg/K.
    pub fn specific_heat_kj_per_kg_k<N: Number>(self, t_celsius: N) -> N {
        super::polynomial_within(self.specific_heat_coefficients(), RANGE_CELSIUS, t_celsius)
    }

    /// Enthalpy, kJ/kg, from 0 °C: the exact integral of [`Self::specific_heat_kj_per_kg_k`].
    pub fn enthalpy_kj_per_kg<N: Number>(self, t_celsius: N) -> N {
        super::integral_from_zero(self.specific_heat_coefficients(), RANGE_CELSIUS, t_celsius)
    }

    /// Density, kg/m³.
    pub fn density_kg_per_m3<N: Number>(self, t_celsius: N) -> N {
        super::polynomial_within(self.density_coefficients(), RANGE_CELSIUS, t_celsius)
    }

    /// `a0` (kJ/kg/K), `a1` (kJ/kg/K²), `a2` (kJ/kg/K³) of the specific heat.
    fn specific_heat_coefficients(self) -> [f64; 3] {
        match self {
            Self::Protein => [2.0082, 1.2089e-3, -1.3129e-6],
            // One public copy prints 1.4733e-4 as the slope; five others agree on e-3.
            Self::Fat => [1.9842, 1.4733e-3, -4.8008e-6],
            Self::Carbohydrate => [1.5488, 1.9625e-3, -5.9399e-6],
            Self::Fibre => [1.8459, 1.8306e-3, -4.6509e-6],
            Self::Ash => [1.0926, 1.8896e-3, -3.6817e-6],
        }
    }

    /// `b0` (kg/m³) and `b1` (kg/m³/K) of the density; the third place, a square term, is zero for all.
    fn density_coefficients(self) -> [f64; 3] {
        match self {
            Self::Protein => [1329.9, -0.5184, 0.0],
            Self::Fat => [925.59, -0.417_57, 0.0],
            Self::Carbohydrate => [1599.1, -0.310_46, 0.0],
            Self::Fibre => [1311.5, -0.365_89, 0.0],
            Self::Ash => [2423.8, -0.280_63, 0.0],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn enthalpy_is_zero_at_0_degrees_and_always_rises() {
        for component in FoodComponent::ALL {
            assert!(component.enthalpy_kj_per_kg(0.0).abs() < 1e-12);
            for step in -50_i32..180 {
                let t = f64::from(step);
                assert!(
                    component.enthalpy_kj_per_kg(t + 1.0) > component.enthalpy_kj_per_kg(t),
                    "{component:?} at {t} °C"
                );
            }
        }
    }
}
