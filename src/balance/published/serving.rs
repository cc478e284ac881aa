//! Lines of temperature, time and dose that published guidance draws for drinks, each with its source.

/// Above this a drink counts as very hot, °C: IARC Monographs vol. 116 (2018), very hot beverages, group 2A.
pub const VERY_HOT_CELSIUS: f64 = 65.0;

/// Lukewarm, °C: the temperature of the body, at which a drink feels neither warm nor cold (assumed).
pub const LUKEWARM_CELSIUS: f64 = 37.0;

/// Hot water and the seconds in which it burns adult skin to the second and to the third degree: Moritz & Henriques 1947,
/// Am. J. Pathol. 23:695, in a table based on it. Children burn faster; another list (US CPSC document 5098, value from memory)
/// has half the time at 49 °C.
pub const SCALD_TIMES: [(f64, f64, f64); 7] = [
    (60.0, 3.0, 5.0),
    (55.0, 17.0, 30.0),
    (51.0, 120.0, 252.0),
    (49.0, 480.0, 600.0),
    (48.0, 900.0, 1200.0),
    (47.0, 1200.0, 2700.0),
    (45.0, 7200.0, 10_800.0),
];

/// Hot holding not below this, °C: Food Hygiene Regulations (UK), Schedule 4.
pub const HOT_HOLDING_UK_CELSIUS: f64 = 63.0;

/// Hot holding not below this, °C: FDA Food Code 3-501.16 (135 °F).
pub const HOT_HOLDING_US_CELSIUS: f64 = 57.0;

/// Cold holding not above this, °C: Food Standards Agency, England, Wales and Northern Ireland.
pub const COLD_HOLDING_UK_CELSIUS: f64 = 8.0;

/// Cold holding not above this, °C: FDA Food Code 3-501.16 (41 °F).
pub const COLD_HOLDING_US_CELSIUS: f64 = 5.0;

/// Brewed tea is not held longer than this, hours: Tea Council of the USA fact sheet after the CDC memo on iced tea, 1996.
/// A state trade body says 12; the shorter time is taken.
pub const BREWED_TEA_HOURS: f64 = 8.0;

/// A single dose of caffeine that raises no concern in adults, mg: EFSA Journal 2015;13(5):4102.
pub const CAFFEINE_SINGLE_DOSE_MG: f64 = 200.0;

/// Caffeine that may disturb sleep, mg: EFSA Journal 2015;13(5):4102.
pub const CAFFEINE_SLEEP_MG: f64 = 100.0;

/// Above this a drink that is not named after tea or coffee bears "High caffeine content", mg/l: Regulation (EU) 1169/2011,
/// Annex III, 4.1 (value from memory).
pub const HIGH_CAFFEINE_MG_PER_LITRE: f64 = 150.0;

/// The seconds to a burn of the second degree at a temperature or the next cooler one of the table; `None` below 45 °C.
pub fn scald_seconds(celsius: f64) -> Option<f64> {
    SCALD_TIMES
        .iter()
        .find(|(line, _, _)| celsius >= *line)
        .map(|(_, seconds, _)| *seconds)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hotter_water_scalds_sooner() {
        for pair in SCALD_TIMES.windows(2) {
            assert!(pair[0].0 > pair[1].0 && pair[0].1 < pair[1].1 && pair[0].2 < pair[1].2);
        }
        assert_eq!(scald_seconds(72.0), Some(3.0));
        assert_eq!(scald_seconds(57.0), Some(17.0));
        assert_eq!(scald_seconds(40.0), None);
    }
}
