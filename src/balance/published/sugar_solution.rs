//! Sugar in water, and dry: density, specific heat, enthalpy, solubility and heats of solution.
//!
//! The specific heat is split into a part of the water and a part of the sugar, so that it adds up over masses like everything
//! else in a drink:
//!
//! `m·cp = m_water·cp_water(t) + m_sugar·cp_sugar(t)`
//!
//! Bubnik et al. print, for purity `P` and dry matter `B` as fractions, `cp = 4184 − 2971·B + 460·B·P + 7.5·B·t` J/kg/K. With `P = 1`
//! that is `(1 − B)·4184 + B·(1673 + 7.5·t)`: the bracket is the sugar's own part, and the constant 4184 is a rounded specific heat of
//! water, which [`super::water`] knows better. The result departs from the printed formula by just that rounding, at most 0.9 % at 0 °C.

use super::water;
use crate::balance::number::Number;

/// Coefficients of the ICUMSA density polynomial, kg/m³: row `j`, place `i` multiplies `xʲ·wⁱ⁺¹` with `x = (t − 20 °C)/100 K`.
///
/// ICUMSA SPS-4, in Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual (Bartens 1995), p. 164. Part of the coefficients is recalled
/// from memory; the whole set reproduces 100 tabulated values (0–70 %, 0–90 °C) to their last digit, 0.001 kg/m³.
const DENSITY_COEFFICIENTS: [[f64; 6]; 5] = [
    [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890],
    [-46.2720, -7.1720, 1.1597, 5.1126, 17.5254, 0.0],
    [59.7712, 7.2491, 12.3630, -35.4791, 0.0, 0.0],
    [-47.2207, -21.6977, 27.6301, 0.0, 0.0, 0.0],
    [18.3184, 12.3081, 0.0, 0.0, 0.0, 0.0],
];

/// Specific heat of dissolved sugar at 0 °C (kJ/kg/K) and its slope (kJ/kg/K²).
///
/// Bubnik et al. 1995, purity 1: `(4184 − 2971 + 460) + 7.5·t` J/kg/K; see the head of this file. Valid 0–100 °C and up to 70 % by mass;
/// outside, the specific heat keeps its end value.
const DISSOLVED_SPECIFIC_HEAT: [f64; 3] = [1.673, 0.0075, 0.0];

/// Specific heat of crystalline sucrose at 0 °C (kJ/kg/K) and its slope (kJ/kg/K²).
///
/// Mohos, Confectionery and Chocolate Engineering (2010), Appendix 2, after Maczelka 1962: `0.2712 + 0.00103·t` kcal/kg/°C, with
/// 4.1868 kJ/kcal. Valid 0–100 °C; outside, the specific heat keeps its end value.
const CRYSTAL_SPECIFIC_HEAT: [f64; 3] = [1.1355, 0.004_312, 0.0];

/// Range of the specific heats and of the solubility, °C.
const RANGE_CELSIUS: (f64, f64) = (0.0, 100.0);

/// Temperature at which heats of solution are tabulated, °C.
const HEAT_OF_SOLUTION_CELSIUS: f64 = 25.0;

/// Heat taken up when crystalline sucrose dissolves at 25 °C, kJ/kg: the middle of +17 to +18 (Jasra & Ahluwalia 1982, value from memory).
pub const SUCROSE_HEAT_OF_SOLUTION_KJ_PER_KG: f64 = 17.5;

/// Heat taken up when anhydrous glucose dissolves at 25 °C, kJ/kg (handbook tables, value from memory).
pub const GLUCOSE_ANHYDROUS_HEAT_OF_SOLUTION_KJ_PER_KG: f64 = 61.0;

/// Heat taken up when glucose monohydrate (dextrose) dissolves at 25 °C, kJ/kg (handbook tables, value from memory).
pub const GLUCOSE_MONOHYDRATE_HEAT_OF_SOLUTION_KJ_PER_KG: f64 = 105.0;

/// Density of a sucrose solution, kg/m³: ICUMSA SPS-4.
///
/// `ρ(w, t) = ρ_water(t) + Σⱼ xʲ Σᵢ aⱼᵢ wⁱ` with the mass fraction `w` and `x = (t − 20)/100`. Valid for 0–0.70 and 0–90 °C. Beyond 0.70 the
/// polynomial goes on to 1 (0.04 % above the CRC table at 0.82, 20 °C), and up to 100 °C; outside these the ends are kept.
/// Other sugars of the same mass fraction are within 0.5 % of sucrose up to 20 % by mass (common practice, no source).
pub fn density_kg_per_m3<N: Number>(mass_fraction: N, t_celsius: N) -> N {
    let w = mass_fraction.clamp(0.0, 1.0);
    let x = (t_celsius.clamp(0.0, 100.0) - 20.0) / 100.0;
    let excess = N::of_two(w, x, excess_density, slopes_of_excess_density);
    water::density_kg_per_m3(t_celsius) + excess
}

/// By how much a solution is denser than water, kg/m³.
fn excess_density(w: f64, x: f64) -> f64 {
    DENSITY_COEFFICIENTS.iter().rev().fold(0.0, |sum, row| {
        let in_fraction = row.iter().rev().fold(0.0, |inner, a| (inner + *a) * w);
        sum * x + in_fraction
    })
}

/// The slopes of [`excess_density`] by `w` and by `x`.
fn slopes_of_excess_density(w: f64, x: f64) -> [f64; 2] {
    let (mut by_w, mut sum, mut by_x) = (0.0, 0.0, 0.0);
    for row in DENSITY_COEFFICIENTS.iter().rev() {
        let (mut in_fraction, mut rise) = (0.0, 0.0);
        for a in row.iter().rev() {
            rise = rise * w + (in_fraction + a);
            in_fraction = (in_fraction + a) * w;
        }
        by_w = by_w * x + rise;
        by_x = by_x * x + sum;
        sum = sum * x + in_fraction;
    }
    [by_w, by_x]
}

/// Specific heat of the dissolved sugar alone, kJ/kg of sugar/K.
pub fn dissolved_sugar_specific_heat_kj_per_kg_k<N: Number>(t_celsius: N) -> N {
    super::polynomial_within(DISSOLVED_SPECIFIC_HEAT, RANGE_CELSIUS, t_celsius)
}

/// Enthalpy of the dissolved sugar alone, kJ/kg of sugar, from 0 °C in solution.
pub fn dissolved_sugar_enthalpy_kj_per_kg<N: Number>(t_celsius: N) -> N {
    super::integral_from_zero(DISSOLVED_SPECIFIC_HEAT, RANGE_CELSIUS, t_celsius)
}

/// Specific heat of dry crystalline sucrose, kJ/kg/K.
pub fn crystal_specific_heat_kj_per_kg_k(t_celsius: f64) -> f64 {
    super::polynomial_within(CRYSTAL_SPECIFIC_HEAT, RANGE_CELSIUS, t_celsius)
}

/// Enthalpy of a dry crystal that will dissolve, kJ/kg, on the scale of [`dissolved_sugar_enthalpy_kj_per_kg`].
///
/// `h(t) = h_dissolved(25 °C) − q + ∫₂₅ᵗ cp_crystal`, with the heat of solution `q` at 25 °C (endothermic positive). Because dissolved sugar
/// and crystal differ in specific heat, the heat of solution changes with temperature by itself. Crystals other than sucrose are given
/// the specific heat of sucrose.
pub fn crystal_enthalpy_kj_per_kg(t_celsius: f64, heat_of_solution_kj_per_kg: f64) -> f64 {
    let crystal =
        |t_celsius| super::integral_from_zero(CRYSTAL_SPECIFIC_HEAT, RANGE_CELSIUS, t_celsius);
    dissolved_sugar_enthalpy_kj_per_kg(HEAT_OF_SOLUTION_CELSIUS) - heat_of_solution_kj_per_kg
        + crystal(t_celsius)
        - crystal(HEAT_OF_SOLUTION_CELSIUS)
}

/// Sucrose in a saturated solution in water, as mass fraction.
///
/// `64.447 + 0.08222·t + 0.0016169·t² − 1.558e-6·t³ − 4.63e-8·t⁴` percent: Bubnik & Kadlec in Mathlouthi & Reiser (eds), Sucrose: Properties
/// and Applications (1995), pp. 101–125. Valid 0–100 °C; held at the end value outside.
pub fn sucrose_solubility_mass_fraction(t_celsius: f64) -> f64 {
    let t = t_celsius.clamp(RANGE_CELSIUS.0, RANGE_CELSIUS.1);
    let percent = 64.447 + t * (0.082_22 + t * (0.001_616_9 + t * (-1.558e-6 - t * 4.63e-8)));
    percent / 100.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn density_of_no_sugar_is_the_density_of_water() {
        for t in [0.0, 20.0, 55.0, 100.0] {
            let difference = density_kg_per_m3(0.0, t) - water::density_kg_per_m3(t);
            assert!(difference.abs() < 1e-12, "at {t} °C");
        }
    }

    #[test]
    fn the_slopes_of_the_density_are_those_of_its_polynomial() {
        let close = |slope: f64, more: f64, less: f64| {
            let tried = (more - less) / 2e-5;
            assert!(
                (slope - tried).abs() < 1e-5 * tried.abs().max(1.0),
                "{slope} {tried}"
            );
        };
        for (w, x) in [(0.0, 0.0), (0.13, 0.35), (0.5, -0.15), (0.7, 0.7)] {
            let [by_w, by_x] = slopes_of_excess_density(w, x);
            close(
                by_w,
                excess_density(w + 1e-5, x),
                excess_density(w - 1e-5, x),
            );
            close(
                by_x,
                excess_density(w, x + 1e-5),
                excess_density(w, x - 1e-5),
            );
        }
    }

    #[test]
    fn density_rises_with_sugar_and_falls_with_temperature_above_five_degrees() {
        for step in 0_i32..20 {
            let fraction = f64::from(step) * 0.05;
            for t in [5.0, 20.0, 60.0, 95.0] {
                assert!(density_kg_per_m3(fraction + 0.05, t) > density_kg_per_m3(fraction, t));
                assert!(density_kg_per_m3(fraction, t + 1.0) < density_kg_per_m3(fraction, t));
            }
        }
    }

    #[test]
    fn dissolving_a_crystal_at_25_degrees_takes_up_its_heat_of_solution() {
        let taken_up = dissolved_sugar_enthalpy_kj_per_kg(25.0)
            - crystal_enthalpy_kj_per_kg(25.0, SUCROSE_HEAT_OF_SOLUTION_KJ_PER_KG);
        assert!((taken_up - 17.5).abs() < 1e-9);
    }
}
