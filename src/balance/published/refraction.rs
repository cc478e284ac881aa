//! How sucrose solutions refract light, and what a refractometer therefore reads in °Brix.
//!
//! At 20 °C the scale is ICUMSA's, as a polynomial of the index. At other temperatures the index follows from the density, by the relation
//! of Lorentz and Lorenz: `(n² − 1)/(n² + 2) = r·ρ(w, t)`. The specific refraction `r` is that of 20 °C, and the water in the solution
//! changes its own as pure water does: `r(w, t) = r(w, 20 °C) + (1 − w)·(r_water(t) − r_water(20 °C))`.
//! The constants of ICUMSA's own formula for other temperatures (Rosenbruch, in ICUMSA SPS-3) could not be confirmed. Its density
//! (SPS-4) and the index of water (IAPWS) could, and lead to the corrections of the handbooks within what these differ among
//! themselves: see [`CORRECTION_RELATIVE_UNCERTAINTY`].
//!
//! Index of refraction in air, at the sodium D line, 589.3 nm.

use super::{sugar_solution, water};
use crate::balance::number::crossing;

/// °Brix at 20 °C from the index, coefficients from the fifth power down.
///
/// A fit to the ICUMSA table of 20 °C, 589 nm (value from memory). It has the CRC table within 0.04 up to 50 % and within 0.07 up
/// to 76 %, where an index of four decimals is worth ±0.03; at 82 % it is 0.09 low.
const BRIX_OF_INDEX: [f64; 6] = [
    11_758.74,
    -88_885.21,
    270_177.93,
    -413_145.80,
    318_417.95,
    -99_127.453_6,
];

/// Indices between which the polynomial only rises: below water at 100 °C, and 88 °Brix.
const INDICES: (f64, f64) = (1.315, 1.515);

/// Where the scale is trusted, °Brix.
pub const BRIX_RANGE: (f64, f64) = (0.0, 85.0);

/// Where corrections are trusted, °C.
pub const CELSIUS_RANGE: (f64, f64) = (5.0, 60.0);

/// The temperature at which a refractometer is right, °C.
pub const SCALE_CELSIUS: f64 = 20.0;

/// Standard uncertainty of a correction, as a share of it.
///
/// Published tables differ by a seventh: the CRC Handbook adds 0.70 at 15 °Brix and 30 °C, this relation 0.82, the international
/// table of 1936 about 0.79 (value from memory). What the prism of an instrument does with the temperature is part of it.
pub const CORRECTION_RELATIVE_UNCERTAINTY: f64 = 0.1;

/// Air at 20 °C and 101.325 kPa (Edlén; value from memory): IAPWS gives the index against vacuum.
const INDEX_OF_AIR: f64 = 1.000_272;

/// °Brix that belongs to an index at 20 °C.
pub fn brix_of_index(index: f64) -> f64 {
    BRIX_OF_INDEX.iter().fold(0.0, |sum, a| sum * index + a)
}

/// The index of a solution of so many °Brix at 20 °C.
pub fn index_at_20_celsius(brix: f64) -> f64 {
    crossing(INDICES, brix, brix_of_index)
}

/// The index of pure water at 101.325 kPa: IAPWS R9-97 with the density of [`water`].
///
/// Valid 0–100 °C; at 589.3 nm the same as the library iapws 1.5.5 to 2·10⁻⁶.
pub fn water_index(t_celsius: f64) -> f64 {
    let refraction = water_refraction(t_celsius) * water::density_kg_per_m3(t_celsius);
    index_of_molar(refraction) / INDEX_OF_AIR
}

/// The index of a sucrose solution: of so many °Brix (percent by mass), at a temperature.
pub fn index(brix: f64, t_celsius: f64) -> f64 {
    let fraction = brix / 100.0;
    let density = |celsius: f64| sugar_solution::density_kg_per_m3(fraction, celsius);
    let at_20 = molar_of_index(index_at_20_celsius(brix) * INDEX_OF_AIR) / density(SCALE_CELSIUS);
    let of_water = water_refraction(t_celsius) - water_refraction(SCALE_CELSIUS);
    let refraction = at_20 + (1.0 - fraction) * of_water;
    index_of_molar(refraction * density(t_celsius)) / INDEX_OF_AIR
}

/// The °Brix of a solution that a refractometer for 20 °C reads at another temperature without correcting it.
///
/// Outside [`CELSIUS_RANGE`] and [`BRIX_RANGE`] nothing that comes out is to be trusted.
pub fn corrected_brix(reading: f64, t_celsius: f64) -> f64 {
    let seen = index_at_20_celsius(reading);
    // A correction is below 6 °Brix over the whole range of temperatures.
    let bracket = (reading - 10.0, reading + 10.0);
    crossing(bracket, seen, |brix| index(brix, t_celsius))
}

/// Specific refraction of water, m³/kg: IAPWS R9-97 (Release on the refractive index of ordinary water substance), confirmed with
/// the library iapws 1.5.5, at 0.5893 µm.
fn water_refraction(t_celsius: f64) -> f64 {
    const A: [f64; 8] = [
        0.244_257_733,
        9.746_344_76e-3,
        -3.732_349_96e-3,
        2.686_784_72e-4,
        1.589_205_70e-3,
        2.459_342_59e-3,
        0.900_704_920,
        -1.666_262_19e-2,
    ];
    const ULTRAVIOLET: f64 = 0.229_202;
    const INFRARED: f64 = 5.432_937;
    let density = water::density_kg_per_m3(t_celsius) / 1000.0;
    let warmth = (t_celsius + 273.15) / 273.15;
    let length = (0.5893_f64 / 0.589).powi(2);
    let sum = A[0]
        + A[1] * density
        + A[2] * warmth
        + A[3] * length * warmth
        + A[4] / length
        + A[5] / (length - ULTRAVIOLET.powi(2))
        + A[6] / (length - INFRARED.powi(2))
        + A[7] * density.powi(2);
    sum / 1000.0
}

/// `(n² − 1)/(n² + 2)`.
fn molar_of_index(index: f64) -> f64 {
    (index.powi(2) - 1.0) / (index.powi(2) + 2.0)
}

fn index_of_molar(molar: f64) -> f64 {
    ((1.0 + 2.0 * molar) / (1.0 - molar)).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_scale_rises_over_the_whole_bracket() {
        let (first, last) = INDICES;
        let steps = (0..=2000).map(|step| first + (last - first) * f64::from(step) / 2000.0);
        let brix: Vec<f64> = steps.map(brix_of_index).collect();
        assert!(brix.windows(2).all(|pair| pair[0] < pair[1]));
        assert!(
            brix[0] < -10.0 && brix[2000] > BRIX_RANGE.1 + 2.0,
            "{brix:?}"
        );
    }

    #[test]
    fn index_and_brix_lead_to_each_other_at_every_temperature() {
        for brix in [0.0, 0.3, 5.0, 12.5, 30.0, 65.0, 85.0] {
            assert!((brix_of_index(index_at_20_celsius(brix)) - brix).abs() < 1e-9);
            assert!((index(brix, 20.0) - index_at_20_celsius(brix)).abs() < 1e-12);
            for celsius in [5.0, 15.0, 20.0, 33.0, 60.0] {
                let reading = brix_of_index(index(brix, celsius));
                let back = corrected_brix(reading, celsius);
                assert!((back - brix).abs() < 1e-8, "{brix} at {celsius}: {back}");
            }
        }
    }

    #[test]
    fn warm_solutions_read_too_little_and_cold_ones_too_much() {
        for brix in [1.0, 10.0, 40.0, 70.0] {
            let corrections =
                [5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 60.0].map(|t| corrected_brix(brix, t) - brix);
            assert!(
                corrections.windows(2).all(|pair| pair[0] < pair[1]),
                "{corrections:?}"
            );
            assert!(corrections[3].abs() < 1e-9);
        }
    }
}
