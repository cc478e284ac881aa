//! The published correlations and constants that the engine rests on, one topic a file.
//!
//! Everything here is a pure function of plain numbers, or of numbers that carry their slopes along ([`super::number`]): no book, no
//! files, no allocation.
//! Names carry the unit; percentages are spelt `_percent`, mass fractions run from 0 to 1.
//!
//! | quantity | source | valid range | outside the range | file |
//! |---|---|---|---|---|
//! | enthalpy, specific heat of water | IAPWS-95 table, 101.325 kPa | 0–100 °C | straight on with the end slope | [`water`] |
//! | density of water | Kell 1975, in the ICUMSA form | 0–100 °C | held at the end value | [`water`] |
//! | enthalpy, specific heat, density of ice | IAPWS-06, fitted linearly; fusion from the CRC Handbook | −40–0 °C | the same line | [`water`] |
//! | density of sugar solutions | ICUMSA SPS-4, Bubnik et al. 1995 | 0–70 % by mass, 0–90 °C | polynomial up to 100 % and 100 °C, then held | [`sugar_solution`] |
//! | index of refraction of water | IAPWS R9-97 | 0–100 °C | goes on | [`refraction`] |
//! | index of refraction of sucrose solutions, °Brix | ICUMSA at 20 °C, by density elsewhere | 0–85 °Brix, 5–60 °C | goes on | [`refraction`] |
//! | specific heat of dissolved sugar | Bubnik et al. 1995 | 0–70 % by mass, 0–100 °C | straight on with the end slope | [`sugar_solution`] |
//! | solubility of sucrose | Bubnik & Kadlec 1995 | 0–100 °C | held at the end value | [`sugar_solution`] |
//! | specific heat of crystalline sucrose | Mohos 2010 | 0–100 °C | straight on with the end slope | [`sugar_solution`] |
//! | heats of solution | handbook tables, value from memory | 25 °C | no dependence on temperature | [`sugar_solution`] |
//! | specific heat, density of food components | Choi & Okos 1986 | −40–150 °C | straight on with the end slope; density held | [`food_components`] |
//! | relative sweetness | five published tables | drinks of 2–15 % | no dependence on concentration | [`sweetness`] |
//! | sweetness of fructose by temperature | Tsuzuki & Yamazaki 1953, value from memory | 5–60 °C | held, with a growing uncertainty | [`sweetness`] |
//! | polyols: sweetness, heat of solution | tables of each, values from memory | 25 °C | no dependence on temperature | [`polyol`] |
//! | high-potency sweeteners | `DuBois` et al. 1991, value from memory | 0–`Rm` | no answer at or above `Rm` | [`sweetness`] |
//! | freezing point | cryoscopic constant of water | up to 1 mol/kg | the same line, not below −14 °C | [`freezing`] |
//! | noticeable steps | the source of each constant, or assumed | drinks | a floor near zero | [`noticeable`] |
//! | lines for heat, holding and caffeine | the source of each constant | by guidance | — | [`serving`] |
//! | time until hot water scalds | tables after Moritz & Henriques 1947, a hospital's page, and others | 44–70 °C | less than that of the hottest row; none below | [`serving`] |
//! | constants of control charts | the distributions of range and standard deviation, checked by ISO 7870-2 | from 2 readings | — | [`control_limits`] |
//! | energy factors | Regulation (EU) 1169/2011, Annex XIV | by law | — | [`energy`] |
//!
//! **Reference of enthalpy.** Water and every component have enthalpy 0 as (dissolved in) the liquid at 0 °C and 101.325 kPa.
//! Ice and dry crystals are below that by their heat of fusion or of solution.
//!
//! # Limitations
//!
//! - The specific heats are additive in the masses; the excess enthalpy of mixing two solutions is left out.
//! - All dissolved sugars and polyols take the specific heat of sucrose; crystals other than sucrose take that of crystalline sucrose.
//! - Choi & Okos describes foods as mixtures of whole components. Against a handbook's average for whole milk it is 2 % off.
//!   It carries no melting of fat between 0 and 40 °C; for cream no consistent published figure was found to check it by.
//! - The freezing point is that of an ideal dilute solution: at 20 % sucrose it is 0.1 K too high, at 30 % 0.3 K.
//! - Sweetness adds up without synergy, suppression by bitterness or fat, or the dulling of all sweetness in the cold.
//! - Values marked as from memory were not confirmed in their source.

use super::number::Number;

pub mod control_limits;
pub mod energy;
pub mod food_components;
pub mod freezing;
pub mod noticeable;
pub mod polyol;
pub mod refraction;
pub mod serving;
pub mod sugar_solution;
pub mod sweetness;
pub mod water;

/// The integral of `a0 + a1·t + a2·t²` from 0 °C, which continues with the end slope outside `range_celsius`.
///
/// One place for it, so that every enthalpy is the exact integral of the specific heat of [`polynomial_within`]
/// and a Newton step on the enthalpy balance never overshoots for that reason.
fn integral_from_zero<N: Number>(
    coefficients: [f64; 3],
    range_celsius: (f64, f64),
    t_celsius: N,
) -> N {
    let [a0, a1, a2] = coefficients;
    // The end slope goes on, so there is no bend at the ends.
    let beyond = t_celsius.value() - t_celsius.value().clamp(range_celsius.0, range_celsius.1);
    let inside = t_celsius - beyond;
    let up_to_inside = inside.through(
        |t| t * (t * (t * (a2 / 3.0) + a1 / 2.0) + a0),
        |t| t * (t * a2 + a1) + a0,
    );
    if beyond == 0.0 {
        return up_to_inside;
    }
    let end = inside.value();
    let slope = polynomial_within(coefficients, range_celsius, end);
    let up_to_end = up_to_inside.value();
    (t_celsius - end) * slope + up_to_end
}

/// `a0 + a1·t + a2·t²`, held at its end value outside `range_celsius`.
fn polynomial_within<N: Number>(
    coefficients: [f64; 3],
    range_celsius: (f64, f64),
    t_celsius: N,
) -> N {
    let [a0, a1, a2] = coefficients;
    let inside = t_celsius.clamp(range_celsius.0, range_celsius.1);
    inside.through(|t| t * (t * a2 + a1) + a0, |t| t * (2.0 * a2) + a1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_integral_has_the_polynomial_as_its_slope_inside_and_outside_the_range() {
        let coefficients = [1.9842, 1.4733e-3, -4.8008e-6];
        let range = (-40.0, 150.0);
        for t in [-90.0, -20.0, 0.0, 37.0, 149.0, 200.0] {
            let rise = integral_from_zero(coefficients, range, t + 0.01)
                - integral_from_zero(coefficients, range, t - 0.01);
            let slope = rise / 0.02;
            let polynomial = polynomial_within(coefficients, range, t);
            assert!(
                (slope - polynomial).abs() < 1e-7,
                "at {t} °C: slope {slope}, polynomial {polynomial}"
            );
        }
    }
}
