//! What a refractometer reading says: soluble solids at 20 °C, of a drink or of the product in a solution, with their uncertainty.
//!
//! A product of `p` grams in `w` grams of water that reads `B` °Brix holds `s = B·(p + w)/p` grams of soluble solids in 100 g. Its
//! uncertainty is the sum of squares of JCGM 100:2008, 5.1.2, cause by cause.

use crate::balance::published::refraction::{
    BRIX_RANGE, CELSIUS_RANGE, CORRECTION_RELATIVE_UNCERTAINTY, corrected_brix,
};
use crate::quantity::{RECTANGULAR, Uncertain};

/// What a refractometer of a shop is off by at most, °Brix, where it states nothing (common practice, no source).
pub const USUAL_LIMITS_BRIX: f64 = 0.2;

/// Standard uncertainty of the temperature of the sample, K (assumed: it changes on the prism).
const THERMOMETER_KELVIN: f64 = 1.0;

/// Standard uncertainty of a weighing, g (assumed: a kitchen scale that shows whole grams, twice).
const SCALE_GRAMS: f64 = 0.5;

/// Standard uncertainty because not all solids refract as sucrose, as a share of the reading (assumed).
///
/// Glucose and fructose read within 2 % of sucrose (value from memory), dried glucose syrup 5 % too much (ISO 1743:1973, at 20 %; value from memory).
const OTHER_SOLIDS: f64 = 0.02;

/// The same where milk solids, fat or fibre are in it (assumed): they blur the edge and read by a scale of their own.
const MISLEADING_SOLIDS: f64 = 0.1;

/// The share of a reading from which its uncertainty says that it measures next to nothing.
const TOO_WEAK: f64 = 0.2;

/// What leads a refractometer astray.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Misleading {
    /// Milk, creamer: proteins and fat.
    Dairy,
    /// Fruit pulp, fibre, cocoa, starch.
    Fibre,
}

/// A reading as it was taken.
#[derive(Clone, Debug, PartialEq)]
pub struct BrixReading {
    /// What it shows, °Brix.
    pub brix: f64,
    /// The temperature of the sample, °C; `None` where the instrument corrects by itself.
    pub celsius: Option<f64>,
    /// What the instrument is off by at most, °Brix, either way.
    pub limits: f64,
    /// What is in the sample that misleads it.
    pub misleading: Vec<Misleading>,
}

/// Why soluble solids are not known better.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum BrixCause {
    /// The instrument.
    Instrument,
    /// The temperature of the sample.
    Thermometer,
    /// The correction to 20 °C itself.
    Correction,
    /// Solids that refract otherwise than sucrose.
    OtherSolids,
    /// The scale.
    Scale,
}

/// Soluble solids with what makes them uncertain.
#[derive(Clone, Debug, PartialEq)]
pub struct SolubleSolids {
    /// °Brix: g in 100 g.
    pub solids: Uncertain,
    /// What was added to the reading for its temperature, °Brix.
    pub correction: f64,
    /// The standard uncertainty by each cause, °Brix.
    pub causes: Vec<(BrixCause, f64)>,
}

/// A caution that goes with a reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BrixCaution {
    /// Something in it misleads a refractometer.
    Misled(Misleading),
    /// The reading is hardly more than its uncertainty, as that of plain tea is.
    TooWeak {
        /// The reading with its standard uncertainty, °Brix.
        solids: Uncertain,
    },
    /// More solids than product: something was weighed or read wrongly.
    MoreThanAll,
}

/// Why a reading says nothing: outside the range, from and to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BrixOutside {
    /// The reading is outside the scale, °Brix.
    Reading(f64, f64),
    /// The temperature is outside that of the corrections, °C.
    Temperature(f64, f64),
}

/// A solution that was made to be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TestSolution {
    /// The product, g.
    pub product_g: f64,
    /// The water, g.
    pub water_g: f64,
}

/// Whether two figures agree within two standard uncertainties of their difference.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BrixComparison {
    /// What was read.
    pub read: Uncertain,
    /// What was stated or computed.
    pub expected: Uncertain,
    /// How far it is above, in standard uncertainties of the difference; negative below.
    pub apart: f64,
}

impl BrixComparison {
    /// Compares; two exact figures that differ are infinitely far apart.
    pub fn new(read: Uncertain, expected: Uncertain) -> Self {
        let difference = read.value - expected.value;
        let apart = if difference == 0.0 {
            0.0
        } else {
            difference / read.u.hypot(expected.u)
        };
        Self {
            read,
            expected,
            apart,
        }
    }

    /// Whether they agree.
    pub fn agrees(&self) -> bool {
        self.apart.abs() <= 2.0
    }
}

impl Misleading {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Dairy => "dairy",
            Self::Fibre => "fibre",
        }
    }
}

impl BrixCause {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Instrument => "instrument",
            Self::Thermometer => "thermometer",
            Self::Correction => "correction",
            Self::OtherSolids => "other-solids",
            Self::Scale => "scale",
        }
    }
}

/// The soluble solids of what was read.
///
/// # Errors
/// Outside the scale, or outside the temperatures that it can be corrected for.
pub fn soluble_solids(reading: &BrixReading) -> Result<SolubleSolids, BrixOutside> {
    let is_outside = |value: f64, (least, most): (f64, f64)| !(least..=most).contains(&value);
    if is_outside(reading.brix, BRIX_RANGE) {
        return Err(BrixOutside::Reading(BRIX_RANGE.0, BRIX_RANGE.1));
    }
    if reading
        .celsius
        .is_some_and(|celsius| is_outside(celsius, CELSIUS_RANGE))
    {
        return Err(BrixOutside::Temperature(CELSIUS_RANGE.0, CELSIUS_RANGE.1));
    }
    let at = |celsius: f64| corrected_brix(reading.brix, celsius);
    let brix = reading.celsius.map_or(reading.brix, at);
    let correction = brix - reading.brix;
    let slope = reading
        .celsius
        .map_or(0.0, |celsius| (at(celsius + 0.5) - at(celsius - 0.5)).abs());
    // Limits without more are a rectangle (JCGM 100:2008, 4.3.7).
    let instrument = reading.limits * RECTANGULAR;
    let other = if reading.misleading.is_empty() {
        OTHER_SOLIDS
    } else {
        MISLEADING_SOLIDS
    };
    let causes = vec![
        (BrixCause::Instrument, instrument),
        (BrixCause::Thermometer, slope * THERMOMETER_KELVIN),
        (
            BrixCause::Correction,
            correction.abs() * CORRECTION_RELATIVE_UNCERTAINTY,
        ),
        (BrixCause::OtherSolids, brix.abs() * other),
    ];
    Ok(SolubleSolids {
        solids: Uncertain {
            value: brix,
            u: root_of_squares(&causes),
        },
        correction,
        causes,
    })
}

/// The soluble solids of a product, g in 100 g, from those of a solution of it; `None` without product.
pub fn product_solids(read: &SolubleSolids, solution: TestSolution) -> Option<SolubleSolids> {
    let TestSolution { product_g, water_g } = solution;
    if product_g <= 0.0 || water_g < 0.0 {
        return None;
    }
    let dilution = (product_g + water_g) / product_g;
    let value = read.solids.value * dilution;
    let by_product = read.solids.value * water_g / product_g.powi(2) * SCALE_GRAMS;
    let by_water = read.solids.value / product_g * SCALE_GRAMS;
    let scaled = read.causes.iter().map(|(cause, u)| (*cause, u * dilution));
    let mut causes: Vec<(BrixCause, f64)> = scaled.collect();
    causes.push((BrixCause::Scale, by_product.hypot(by_water)));
    Some(SolubleSolids {
        solids: Uncertain {
            value,
            u: root_of_squares(&causes),
        },
        correction: read.correction,
        causes,
    })
}

/// What to be careful about.
pub fn brix_cautions(
    reading: &BrixReading,
    read: &SolubleSolids,
    product: Option<&SolubleSolids>,
) -> Vec<BrixCaution> {
    let mut cautions: Vec<BrixCaution> = Vec::new();
    if read.solids.u > TOO_WEAK * read.solids.value {
        cautions.push(BrixCaution::TooWeak {
            solids: read.solids,
        });
    }
    if product.is_some_and(|product| product.solids.value - 2.0 * product.solids.u > 100.0) {
        cautions.push(BrixCaution::MoreThanAll);
    }
    let misled = reading.misleading.iter().copied();
    cautions.extend(misled.map(BrixCaution::Misled));
    cautions
}

fn root_of_squares(causes: &[(BrixCause, f64)]) -> f64 {
    causes.iter().map(|(_, u)| *u).fold(0.0, f64::hypot)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reading(brix: f64, celsius: Option<f64>) -> BrixReading {
        BrixReading {
            brix,
            celsius,
            limits: USUAL_LIMITS_BRIX,
            misleading: Vec::new(),
        }
    }

    #[test]
    fn twenty_grams_of_a_syrup_in_eighty_of_water_give_back_its_solids() {
        let read = soluble_solids(&reading(13.4, Some(20.0))).unwrap();
        assert!(read.correction.abs() < 1e-9);
        let solution = TestSolution {
            product_g: 20.0,
            water_g: 80.0,
        };
        let product = product_solids(&read, solution).unwrap();
        assert!((product.solids.value - 67.0).abs() < 1e-6, "{product:?}");
        // By hand: 0.1155·5, 0.2·5 (1 K at 20 °C is 0.073 °Brix), 2 % of 67, 13.4·80/400·0.5 and 13.4/20·0.5.
        let by_hand = [0.577, 0.073 * 5.0, 1.34, 1.34f64.hypot(0.335)];
        let by_hand = by_hand.iter().map(|u| u * u).sum::<f64>().sqrt();
        assert!((product.solids.u - by_hand).abs() < 0.03, "{product:?}");
    }

    #[test]
    fn plain_tea_is_too_weak_and_syrup_is_not() {
        let cautions = |brix: f64| {
            let reading = reading(brix, Some(24.0));
            brix_cautions(&reading, &soluble_solids(&reading).unwrap(), None)
        };
        assert!(matches!(cautions(0.3)[..], [BrixCaution::TooWeak { .. }]));
        assert!(matches!(cautions(0.0)[..], [BrixCaution::TooWeak { .. }]));
        assert_eq!(cautions(12.0), []);
        let outside = |brix: f64, celsius: f64| soluble_solids(&reading(brix, Some(celsius)));
        assert_eq!(outside(86.0, 20.0), Err(BrixOutside::Reading(0.0, 85.0)));
        assert_eq!(
            outside(12.0, 70.0),
            Err(BrixOutside::Temperature(5.0, 60.0))
        );
    }

    #[test]
    fn milk_makes_a_reading_less_sure_and_more_solids_than_product_are_told() {
        let mut milky = reading(30.0, None);
        milky.misleading = vec![Misleading::Dairy];
        let read = soluble_solids(&milky).unwrap();
        assert!(read.solids.u > soluble_solids(&reading(30.0, None)).unwrap().solids.u);
        let solution = TestSolution {
            product_g: 10.0,
            water_g: 90.0,
        };
        let product = product_solids(&read, solution);
        let cautions = brix_cautions(&milky, &read, product.as_ref());
        assert_eq!(
            cautions,
            [
                BrixCaution::MoreThanAll,
                BrixCaution::Misled(Misleading::Dairy)
            ]
        );
        let none = TestSolution {
            product_g: 0.0,
            water_g: 90.0,
        };
        assert_eq!(product_solids(&read, none), None);
    }

    #[test]
    fn figures_agree_within_two_uncertainties() {
        let figure = |value: f64, u: f64| Uncertain { value, u };
        assert!(BrixComparison::new(figure(12.4, 0.3), figure(13.1, 0.2)).agrees());
        let below = BrixComparison::new(figure(12.0, 0.3), figure(13.1, 0.2));
        assert!(!below.agrees() && below.apart < 0.0);
        assert!(BrixComparison::new(figure(1.0, 0.0), figure(1.0, 0.0)).agrees());
        assert!(!BrixComparison::new(figure(1.0, 0.0), figure(1.1, 0.0)).agrees());
    }
}
