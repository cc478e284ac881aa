//! Pure water and ice at 101.325 kPa: enthalpy, specific heat and density.
//!
//! Enthalpy counts from liquid water at 0 °C. The IAPWS-95 formulation itself takes a page of coefficients and an iteration
//! on the density; its table every 5 K, joined by cubic Hermite pieces (enthalpy as value, specific heat as slope), stays within
//! 0.001 kJ/kg of it, which is less than a thousandth of a kelvin in a drink.

use crate::balance::number::Number;

/// Spacing of [`LIQUID_NODES`], K.
const NODE_SPACING_KELVIN: f64 = 5.0;

/// Enthalpy (kJ/kg) and specific heat (kJ/kg/K) of liquid water at 0, 5, … 100 °C.
///
/// IAPWS R6-95(2018) (Wagner & Pruss 2002, J. Phys. Chem. Ref. Data 31:387) at 101.325 kPa, computed with the library iapws 1.5.5.
/// The row of 100 °C is that of the saturated liquid at 101.418 kPa: water boils at 99.974 °C under 101.325 kPa, and the difference in
/// pressure is worth less than 0.0001 kJ/kg. Valid 0–100 °C; outside, the enthalpy goes straight on with the end slope.
const LIQUID_NODES: [(f64, f64); 21] = [
    (0.0610, 4.21944),
    (21.1200, 4.20504),
    (42.1189, 4.19516),
    (63.0768, 4.18846),
    (84.0073, 4.18405),
    (104.9201, 4.18131),
    (125.8225, 4.17982),
    (146.7199, 4.17926),
    (167.6163, 4.17941),
    (188.5150, 4.18014),
    (209.4185, 4.18134),
    (230.3291, 4.18296),
    (251.2487, 4.18495),
    (272.1792, 4.18732),
    (293.1225, 4.19007),
    (314.0805, 4.19320),
    (335.0553, 4.19675),
    (356.0488, 4.20074),
    (377.0635, 4.20521),
    (398.1017, 4.21017),
    (419.1662, 4.21567),
];

/// Enthalpy of liquid water at 0 °C on the IAPWS scale, kJ/kg.
///
/// IAPWS sets the internal energy to zero at the triple point. The engine wants zero at 0 °C, so this is taken off.
const IAPWS_ENTHALPY_AT_ZERO_KJ_PER_KG: f64 = LIQUID_NODES[0].0;

/// Range of the liquid correlations, °C.
const LIQUID_RANGE_CELSIUS: (f64, f64) = (0.0, 100.0);

/// Heat of fusion of ice at 0 °C, kJ/kg.
///
/// CRC Handbook of Chemistry and Physics, 6.0095 kJ/mol (value from memory). IAPWS R10-06(2009) gives 333.43: 0.04 % less, or 0.01 K
/// in a drink of 300 g with 100 g of ice.
pub const HEAT_OF_FUSION_KJ_PER_KG: f64 = 333.55;

/// Specific heat of ice at 0 °C (kJ/kg/K) and its slope (kJ/kg/K²).
///
/// The line through 0 and −20 °C of IAPWS R10-06(2009), Equation of State for H2O Ice Ih; it stays within 0.002 kJ/kg/K of that
/// source over −40–0 °C. Chosen over the Choi & Okos line 2.0623 + 0.0060769·t, which warms ice from −18 °C with 1.1 % too little heat.
/// Above 0 °C, where there is no ice, and below −40 °C the same line goes on; it is positive down to absolute zero.
const ICE_SPECIFIC_HEAT: [f64; 3] = [2.09670, 0.007_343_5, 0.0];

/// Where the line of [`ICE_SPECIFIC_HEAT`] is followed, °C: absolute zero up to any warmth.
const ICE_LINE_CELSIUS: (f64, f64) = (-273.15, 1000.0);

/// Enthalpy of liquid water, kJ/kg, from liquid water at 0 °C.
pub fn enthalpy_kj_per_kg<N: Number>(t_celsius: N) -> N {
    let celsius = t_celsius.value();
    let inside = celsius.clamp(LIQUID_RANGE_CELSIUS.0, LIQUID_RANGE_CELSIUS.1);
    if (LIQUID_RANGE_CELSIUS.0..=LIQUID_RANGE_CELSIUS.1).contains(&celsius) {
        return t_celsius.through(
            |t| liquid_enthalpy_and_slope(t).0 - IAPWS_ENTHALPY_AT_ZERO_KJ_PER_KG,
            |t| liquid_enthalpy_and_slope(t).1,
        );
    }
    let (enthalpy, slope) = liquid_enthalpy_and_slope(inside);
    (t_celsius - inside) * slope + (enthalpy - IAPWS_ENTHALPY_AT_ZERO_KJ_PER_KG)
}

/// Specific heat of liquid water, kJ/kg/K: the exact derivative of [`enthalpy_kj_per_kg`].
pub fn specific_heat_kj_per_kg_k(t_celsius: f64) -> f64 {
    let inside = t_celsius.clamp(LIQUID_RANGE_CELSIUS.0, LIQUID_RANGE_CELSIUS.1);
    liquid_enthalpy_and_slope(inside).1
}

/// Density of liquid water, kg/m³.
///
/// `(a0 + a1·t + … + a5·t⁵) / (1 + b·t)`: Kell 1975 (J. Chem. Eng. Data 20:97) with the coefficients that ICUMSA SPS-4 uses beside
/// its sugar polynomial (Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual, 1995, p. 164).
/// Valid 0–100 °C; held at the end value outside.
pub fn density_kg_per_m3<N: Number>(t_celsius: N) -> N {
    const NUMERATOR: [f64; 6] = [
        999.839_52,
        16.952_577,
        -7.990_512_7e-3,
        -46.241_757e-6,
        105.846_01e-9,
        -281.030_06e-12,
    ];
    const DENOMINATOR_SLOPE: f64 = 16.887_236e-3;
    let inside = t_celsius.clamp(LIQUID_RANGE_CELSIUS.0, LIQUID_RANGE_CELSIUS.1);
    let numerator = |t: f64| NUMERATOR.iter().rev().fold(0.0, |sum, a| sum * t + *a);
    let denominator = |t: f64| t * DENOMINATOR_SLOPE + 1.0;
    let slope = |t: f64| {
        let powers = NUMERATOR.iter().enumerate().skip(1).rev();
        let rise = powers.fold(0.0, |sum, (power, a)| sum * t + power as f64 * a);
        (rise - numerator(t) / denominator(t) * DENOMINATOR_SLOPE) / denominator(t)
    };
    inside.through(|t| numerator(t) / denominator(t), slope)
}

/// Enthalpy of ice, kJ/kg, from liquid water at 0 °C: minus the heat of fusion at 0 °C, less as it is colder.
pub fn ice_enthalpy_kj_per_kg<N: Number>(t_celsius: N) -> N {
    super::integral_from_zero(ICE_SPECIFIC_HEAT, ICE_LINE_CELSIUS, t_celsius)
        - HEAT_OF_FUSION_KJ_PER_KG
}

/// Specific heat of ice, kJ/kg/K: the derivative of [`ice_enthalpy_kj_per_kg`].
pub fn ice_specific_heat_kj_per_kg_k<N: Number>(t_celsius: N) -> N {
    super::polynomial_within(ICE_SPECIFIC_HEAT, ICE_LINE_CELSIUS, t_celsius)
}

/// Density of solid ice without bubbles, kg/m³.
///
/// The line through 0 and −20 °C of IAPWS R10-06(2009): 916.722 and 919.565. Valid −40–0 °C; held at the end value outside.
pub fn ice_density_kg_per_m3<N: Number>(t_celsius: N) -> N {
    super::polynomial_within([916.722, -0.142_17, 0.0], (-40.0, 0.0), t_celsius)
}

/// Enthalpy on the IAPWS scale and its slope at a temperature within the table.
fn liquid_enthalpy_and_slope(t_celsius: f64) -> (f64, f64) {
    let position = t_celsius / NODE_SPACING_KELVIN;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "the callers clamp the temperature to the table"
    )]
    let left = (position.floor() as usize).min(LIQUID_NODES.len() - 2);
    let (left_enthalpy, left_slope) = LIQUID_NODES[left];
    let (right_enthalpy, right_slope) = LIQUID_NODES[left + 1];

    // Cubic Hermite piece in its Newton form: h = h₀ + s·(m₀ + s·(c + s·d)), s the distance from the left node.
    let chord = (right_enthalpy - left_enthalpy) / NODE_SPACING_KELVIN;
    let quadratic = (3.0 * chord - 2.0 * left_slope - right_slope) / NODE_SPACING_KELVIN;
    let cubic = (left_slope + right_slope - 2.0 * chord) / NODE_SPACING_KELVIN.powi(2);
    let distance = t_celsius - left as f64 * NODE_SPACING_KELVIN;
    (
        distance * (distance * (distance * cubic + quadratic) + left_slope) + left_enthalpy,
        distance * (distance * (3.0 * cubic) + 2.0 * quadratic) + left_slope,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn specific_heat_is_the_slope_of_enthalpy() {
        for step in -20_i32..=240 {
            // Off the nodes by a little: at the two ends the slope itself has a kink.
            let t = f64::from(step) * 0.5 + 0.1;
            let slope = (enthalpy_kj_per_kg(t + 1e-4) - enthalpy_kj_per_kg(t - 1e-4)) / 2e-4;
            let specific_heat = specific_heat_kj_per_kg_k(t);
            assert!(
                (slope - specific_heat).abs() < 1e-6,
                "at {t} °C: slope {slope}, specific heat {specific_heat}"
            );
        }
    }

    #[test]
    fn enthalpy_always_rises_with_temperature() {
        let mut before = enthalpy_kj_per_kg(-30.1);
        for step in -300_i32..=1300 {
            let now = enthalpy_kj_per_kg(f64::from(step) * 0.1);
            assert!(now > before, "at {} °C", f64::from(step) * 0.1);
            before = now;
        }
    }

    #[test]
    fn a_temperature_that_is_no_number_gives_no_number_and_no_panic() {
        assert!(enthalpy_kj_per_kg(f64::NAN).is_nan());
        assert!(specific_heat_kj_per_kg_k(f64::NAN).is_nan());
        assert!(density_kg_per_m3(f64::NAN).is_nan());
    }
}
