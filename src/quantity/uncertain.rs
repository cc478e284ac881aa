//! A value with its standard uncertainty.

/// Half-width of a rectangular distribution to standard deviation: 1/√3 (JCGM 100:2008, 4.3.7).
pub const RECTANGULAR: f64 = 0.577_350_269_189_625_8;

/// A value and its standard uncertainty (one standard deviation), both in the same unit.
///
/// The vocabulary is that of JCGM 100:2008 (GUM).
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Uncertain {
    /// The best estimate.
    pub value: f64,
    /// Standard uncertainty, in the unit of `value`; never negative.
    pub u: f64,
}

impl Uncertain {
    /// A value that is exact by definition.
    pub const fn exact(value: f64) -> Self {
        Self { value, u: 0.0 }
    }

    /// A value with a relative standard uncertainty (0.1 is 10 %).
    pub fn relative(value: f64, fraction: f64) -> Self {
        Self {
            value,
            u: (value * fraction).abs(),
        }
    }

    /// Mean and standard uncertainty of the mean (GUM 4.2, Type A); `None` for no readings.
    /// One reading has no spread of its own, so its uncertainty is reported as `None` inside.
    pub fn mean_of(readings: &[f64]) -> Option<(f64, Option<f64>)> {
        if readings.is_empty() {
            return None;
        }
        let count = readings.len() as f64;
        let mean = readings.iter().sum::<f64>() / count;
        if readings.len() < 2 {
            return Some((mean, None));
        }
        let squares: f64 = readings
            .iter()
            .map(|reading| (reading - mean).powi(2))
            .sum();
        Some((mean, Some((squares / (count - 1.0) / count).sqrt())))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn uncertainty_of_the_mean_falls_with_the_root_of_the_count() {
        // s of (1, 3) is √2; of the mean it is √2/√2 = 1.
        assert_eq!(Uncertain::mean_of(&[1.0, 3.0]), Some((2.0, Some(1.0))));
        assert_eq!(Uncertain::mean_of(&[2.5]), Some((2.5, None)));
        assert_eq!(Uncertain::mean_of(&[]), None);
    }
}
