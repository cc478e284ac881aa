//! Constants of control charts for subgroups of normal readings (ISO 7870-2), worked out from the distributions that they belong to.
//!
//! With `W` the range of `n` standard normal values, `P(W ≤ w) = n·∫ φ(x)·[Φ(x + w) − Φ(x)]ⁿ⁻¹ dx`: `d2` is its mean and `d3` its
//! standard deviation. `c4 = √(2/(n − 1))·Γ(n/2)/Γ((n − 1)/2)` is the mean of the standard deviation of `n` such values. Limits lie
//! three standard deviations from the centre. The printed tables of the standard are met by the tests of this file.

use std::sync::OnceLock;

use statrs::distribution::{Continuous as _, ContinuousCDF as _, Normal};
use statrs::function::gamma::ln_gamma;

use crate::balance::number::integral;

/// How many standard deviations limits lie from the centre.
pub const LIMITS: f64 = 3.0;

/// How far the values and their range are followed, in standard deviations: beyond lies less than 1e-12.
const FAR: f64 = 8.0;
const WIDEST: f64 = 12.0;

/// Steps of each integral.
const STEPS: u32 = 120;

/// The range of `n` standard normal values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RangeConstants {
    /// Its mean, `d2`.
    pub mean: f64,
    /// Its standard deviation, `d3`.
    pub deviation: f64,
}

impl RangeConstants {
    /// Of so many values, 2 or more.
    pub fn of(values: u32) -> Self {
        // The integrals take longer than all the rest of a chart, and few numbers of readings are used.
        static KNOWN: [OnceLock<RangeConstants>; 16] = [const { OnceLock::new() }; 16];
        let known = usize::try_from(values).ok().and_then(|at| KNOWN.get(at));
        known.map_or_else(
            || Self::worked_out(values),
            |known| *known.get_or_init(|| Self::worked_out(values)),
        )
    }

    fn worked_out(values: u32) -> Self {
        let wider = |width: f64| 1.0 - range_within(values, width);
        let mean = integral((0.0, WIDEST), STEPS, wider);
        let square = integral((0.0, WIDEST), STEPS, |width| 2.0 * width * wider(width));
        Self {
            mean,
            deviation: (square - mean * mean).max(0.0).sqrt(),
        }
    }

    /// `A2`: how far the limits of a mean of so many values lie from the centre, in mean ranges.
    pub fn mean_limit(&self, values: u32) -> f64 {
        LIMITS / (self.mean * f64::from(values).sqrt())
    }

    /// `D3` and `D4`: the limits of a range, in mean ranges.
    pub fn limits(&self) -> [f64; 2] {
        around_one(self.deviation / self.mean)
    }
}

/// `c4`: the mean of the standard deviation of so many values, 2 or more, in standard deviations of one.
pub fn mean_deviation(values: u32) -> f64 {
    let freedom = f64::from(values) - 1.0;
    (2.0 / freedom).sqrt() * (ln_gamma(f64::midpoint(freedom, 1.0)) - ln_gamma(freedom / 2.0)).exp()
}

/// `B3` and `B4`: the limits of the standard deviation of so many values, in mean standard deviations.
pub fn deviation_limits(values: u32) -> [f64; 2] {
    let mean = mean_deviation(values);
    around_one((1.0 - mean * mean).max(0.0).sqrt() / mean)
}

/// What has the mean 1 and this standard deviation, and can't be negative.
fn around_one(deviation: f64) -> [f64; 2] {
    [
        (1.0 - LIMITS * deviation).max(0.0),
        1.0 + LIMITS * deviation,
    ]
}

fn range_within(values: u32, width: f64) -> f64 {
    let normal = Normal::standard();
    let power = i32::try_from(values - 1).unwrap_or(i32::MAX);
    let within = integral((-FAR, FAR), STEPS, |x| {
        normal.pdf(x) * (normal.cdf(x + width) - normal.cdf(x)).powi(power)
    });
    f64::from(values) * within
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO 7870-2:2013, table 2, and ISO 8258:1991, table 2 (values from memory): n, A2, D3, D4, d2, d3, c4, B3, B4.
    const PRINTED: [(u32, [f64; 8]); 9] = [
        (2, [1.880, 0.0, 3.267, 1.128, 0.853, 0.7979, 0.0, 3.267]),
        (3, [1.023, 0.0, 2.575, 1.693, 0.888, 0.8862, 0.0, 2.568]),
        (4, [0.729, 0.0, 2.282, 2.059, 0.880, 0.9213, 0.0, 2.266]),
        (5, [0.577, 0.0, 2.114, 2.326, 0.864, 0.9400, 0.0, 2.089]),
        (6, [0.483, 0.0, 2.004, 2.534, 0.848, 0.9515, 0.030, 1.970]),
        (7, [0.419, 0.076, 1.924, 2.704, 0.833, 0.9594, 0.118, 1.882]),
        (8, [0.373, 0.136, 1.864, 2.847, 0.820, 0.9650, 0.185, 1.815]),
        (9, [0.337, 0.184, 1.816, 2.970, 0.808, 0.9693, 0.239, 1.761]),
        (
            10,
            [0.308, 0.223, 1.777, 3.078, 0.797, 0.9727, 0.284, 1.716],
        ),
    ];

    #[test]
    fn constants_are_those_of_the_standard_to_the_last_digit() {
        for (values, printed) in PRINTED {
            let range = RangeConstants::of(values);
            let ([d3, d4], [b3, b4]) = (range.limits(), deviation_limits(values));
            let found = [
                range.mean_limit(values),
                d3,
                d4,
                range.mean,
                range.deviation,
                mean_deviation(values),
                b3,
                b4,
            ];
            for (found, printed) in found.into_iter().zip(printed) {
                // Printed limits were worked out from rounded constants: a unit of the last digit.
                assert!(
                    (found - printed).abs() < 0.0012,
                    "{values}: {found}, {printed}"
                );
            }
        }
        // The range of two: 2/√π, and √(2 − 4/π).
        let two = RangeConstants::of(2);
        let pi = std::f64::consts::PI;
        assert!((two.mean - 2.0 / pi.sqrt()).abs() < 1e-6, "{two:?}");
        assert!((two.deviation - (2.0 - 4.0 / pi).sqrt()).abs() < 1e-6);
    }
}
