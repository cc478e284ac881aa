//! Default noticeable steps: how large a difference on an axis of taste must be before a taster notices it.
//!
//! `step = max(fraction · |standard value|, floor)`. The fraction is a Weber fraction; the floor keeps the step above zero where the standard
//! itself is near zero, because Weber's law fails near the threshold. All floors are assumed: no published floor for drinks was found. A
//! shop may put its own steps in their place. Outside the range of ordinary drinks the same rule holds for want of a better one.

/// How a difference on one axis is judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoticeableStep {
    /// Difference just noticed, as a fraction of the standard's value; zero where only the floor counts.
    pub fraction: f64,
    /// Smallest difference just noticed, in the axis's own unit.
    pub floor: f64,
}

impl NoticeableStep {
    /// The step around a standard's value, in the axis's own unit.
    pub fn around(&self, standard_value: f64) -> f64 {
        (self.fraction * standard_value.abs()).max(self.floor)
    }
}

/// Sweetness, g of sucrose equivalent in 100 ml.
///
/// Published Weber fractions run from 0.09 (12.00 % against 10.89 % sucrose in cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) to 0.17 (mean over tasters,
/// Schutz & Pilgrim 1957, value from memory). 0.10 is near the lower end: a step that is too fine asks for one more small change, one that is too
/// coarse calls two drinks alike which regular guests tell apart.
pub const SWEETNESS: NoticeableStep = NoticeableStep {
    fraction: 0.10,
    floor: 0.3,
};

/// Acidity, g of citric acid equivalent in 100 ml.
///
/// Weber fraction of citric acid 0.22 (Schutz & Pilgrim 1957, value from memory); floor assumed.
pub const ACIDITY: NoticeableStep = NoticeableStep {
    fraction: 0.22,
    floor: 0.02,
};

/// Creaminess, g of fat in 100 ml.
///
/// Weber fraction of creaminess in dairy emulsions 0.20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521); floor assumed.
pub const CREAMINESS: NoticeableStep = NoticeableStep {
    fraction: 0.20,
    floor: 0.2,
};

/// Body, g of solids that are not sugars in 100 ml.
///
/// The published fraction is of viscosity between 10 and 100 mPa·s, thicker than most tea drinks, and is taken over to the solids.
///
/// Weber fraction of thickness 0.26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), of
/// viscosity, taken over to solids; floor assumed.
pub const BODY: NoticeableStep = NoticeableStep {
    fraction: 0.26,
    floor: 0.3,
};

/// Tea strength, g of tea solids in 100 ml.
///
/// Only the bitterness of caffeine has a published fraction, 0.30 (Schutz & Pilgrim 1957, value from memory). Strength is judged by colour, aroma and astringency too, and several cues
/// together are finer than one, hence 0.20 (assumed).
pub const TEA_STRENGTH: NoticeableStep = NoticeableStep {
    fraction: 0.20,
    floor: 0.02,
};

/// One named flavour, house units in 100 ml.
///
/// Assumed: no published figure for flavours of drinks found.
pub const FLAVOUR: NoticeableStep = NoticeableStep {
    fraction: 0.20,
    floor: 0.05,
};

/// Temperature, K. Only the floor counts: a fraction of a Celsius figure means nothing.
///
/// Assumed 3 K: no published figure found; 10, 22 and 35 °C are told apart (Engelen et al. 2002, Eur. J. Oral Sci. 110:412).
pub const TEMPERATURE: NoticeableStep = NoticeableStep {
    fraction: 0.0,
    floor: 3.0,
};

/// Volume of the drink, ml.
///
/// Assumed 5 %: no published figure found; floor assumed.
pub const VOLUME: NoticeableStep = NoticeableStep {
    fraction: 0.05,
    floor: 10.0,
};

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_is_the_fraction_of_the_standard_but_never_below_the_floor() {
        assert!((SWEETNESS.around(6.0) - 0.6).abs() < 1e-12);
        assert!((SWEETNESS.around(0.0) - 0.3).abs() < 1e-12);
        assert!((TEMPERATURE.around(65.0) - 3.0).abs() < 1e-12);
        assert!((TEMPERATURE.around(-4.0) - 3.0).abs() < 1e-12);
    }

    #[test]
    fn no_default_step_is_ever_zero() {
        for step in [
            SWEETNESS,
            ACIDITY,
            CREAMINESS,
            BODY,
            TEA_STRENGTH,
            FLAVOUR,
            TEMPERATURE,
            VOLUME,
        ] {
            assert!(step.floor > 0.0, "{step:?}");
        }
    }
}
