//! By how much the doubts of a class would have to be multiplied, from readings beside what had been foretold.
//!
//! A reading is off by `d = √ρ·s·b + e`: its doubt of the class is `s = k·(doubt as assumed)`, of which the part `ρ` is the same in every
//! reading of one group (all cups of a drink hold the same syrup), and `e` has what is left of it, the doubts of other classes and the
//! instrument. With `b` and `e` normal the readings of a group are jointly normal around what was foretold, with a covariance of rank
//! one beside its diagonal (Sherman & Morrison 1950). Nobody knows `ρ`: it is integrated out, each value being as likely as another,
//! so that thirty readings of one drink that agree with each other are not taken for thirty of different ones.
//!
//! Before any reading `ln k` is normal around 0 with the standard deviation `ln 2`: doubts are rather off by less than twice than by
//! more (assumed). The posterior is worked out on a grid of `ln k` (Bayes' theorem on a grid: exact but for its spacing). The factor
//! is its median, and what is said of it is its central 95 %.

/// Points of the grid, an odd number; 1 is the one in the middle.
pub const POINTS: usize = 129;

/// The largest factor that is looked at; the smallest is its reciprocal.
const LARGEST: f64 = 10.0;

/// Standard deviation of `ln k` before any reading (assumed).
const BEFORE: f64 = std::f64::consts::LN_2;

/// Parts of a doubt that may be the same in all readings of a group.
const SHARED: [f64; 9] = [0.0, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 0.98, 1.0];

/// The least variance of a reading beside what it shares, as a part of that of the class as it is assumed: readings have digits,
/// whatever the class turns out to be.
const LEAST: f64 = 1e-4;

/// A reading beside what was foretold, in one unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OffBy {
    /// What was read less what was foretold.
    pub off: f64,
    /// Standard uncertainty of the class as it is assumed without a record.
    pub of_class: f64,
    /// All other standard uncertainties, that of the instrument among them.
    pub rest: f64,
}

impl OffBy {
    /// The standard uncertainty of all when that of the class is multiplied.
    pub fn u(self, times: f64) -> f64 {
        (times * self.of_class).hypot(self.rest)
    }

    /// Whether it lies within two standard uncertainties.
    pub fn is_inside(self, times: f64) -> bool {
        self.off.abs() <= 2.0 * self.u(times)
    }
}

/// The logarithm of a likelihood at each factor of the grid.
pub type LogLikelihood = [f64; POINTS];

/// The factors of the grid.
pub fn factors() -> [f64; POINTS] {
    std::array::from_fn(|at| log_at(at).exp())
}

fn log_at(at: usize) -> f64 {
    let middle = (POINTS / 2) as f64;
    (at as f64 / middle - 1.0) * LARGEST.ln()
}

/// What the readings of one group say of the factor.
pub fn of_group(group: &[OffBy]) -> LogLikelihood {
    factors().map(|times| {
        let each = SHARED.map(|shared| log_density(group, times, shared));
        let most = each.into_iter().fold(f64::NEG_INFINITY, f64::max);
        let sum: f64 = each.iter().map(|one| (one - most).exp()).sum();
        most + (sum / SHARED.len() as f64).ln()
    })
}

/// The logarithm of the density of a group of readings, up to a constant.
fn log_density(group: &[OffBy], times: f64, shared: f64) -> f64 {
    let (mut logs, mut squares, mut along, mut reach) = (0.0, 0.0, 0.0, 0.0);
    for one in group {
        let s = times * one.of_class;
        let own = (1.0 - shared) * s * s + one.rest * one.rest;
        let own = own
            .max(LEAST * one.of_class * one.of_class)
            .max(f64::MIN_POSITIVE);
        let loading = shared.sqrt() * s;
        logs += own.ln();
        squares += one.off * one.off / own;
        along += loading * one.off / own;
        reach += loading * loading / own;
    }
    -0.5 * (logs + reach.ln_1p() + squares - along * along / (1.0 + reach))
}

/// A likelihood that is known at every `step`-th factor of the grid, drawn out to all of them by straight lines.
pub fn drawn_out(known: &[f64], step: usize) -> LogLikelihood {
    std::array::from_fn(|at| {
        let (low, part) = (at / step, (at % step) as f64 / step as f64);
        let from = known.get(low).copied().unwrap_or(0.0);
        let to = known.get(low + 1).copied().unwrap_or(from);
        from + part * (to - from)
    })
}

/// What is known of a factor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// Its median.
    pub times: f64,
    /// From here on lie all but 2½ %.
    pub low: f64,
    /// Up to here lie all but 2½ %.
    pub high: f64,
}

/// What all likelihoods together say of the factor; independent of each other.
pub fn scale<'one>(likelihoods: impl IntoIterator<Item = &'one LogLikelihood>) -> Scale {
    let mut logs: LogLikelihood = std::array::from_fn(|at| -0.5 * (log_at(at) / BEFORE).powi(2));
    for likelihood in likelihoods {
        for (sum, one) in logs.iter_mut().zip(likelihood) {
            *sum += one;
        }
    }
    let most = logs.into_iter().fold(f64::NEG_INFINITY, f64::max);
    let weights = logs.map(|log| (log - most).exp());
    let all: f64 = weights.iter().sum();
    let below = |part: f64| {
        let mut sum = 0.0;
        for (at, weight) in weights.iter().enumerate() {
            let next = sum + weight / all;
            if next >= part {
                // Half of what lies at a point lies on either side of it.
                let within = (part - sum) / (next - sum) - 0.5;
                let step = log_at(1) - log_at(0);
                return (log_at(at) + within * step).exp();
            }
            sum = next;
        }
        LARGEST
    };
    Scale {
        times: below(0.5),
        low: below(0.025),
        high: below(0.975),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_readings_the_doubts_stay_as_they_are() {
        let nothing = scale([]);
        assert!((nothing.times - 1.0).abs() < 1e-3, "{nothing:?}");
        // By hand: exp(±1.96 ln 2) = 3.89 and its reciprocal.
        assert!((nothing.high - 3.89).abs() < 0.1 && (nothing.low - 0.257).abs() < 0.01);
    }

    #[test]
    fn readings_of_one_drink_that_agree_say_little() {
        let agreeing = |count: usize| {
            vec![
                OffBy {
                    off: 0.1,
                    of_class: 1.0,
                    rest: 0.0
                };
                count
            ]
        };
        let one_drink = scale([&of_group(&agreeing(30))]);
        let many: Vec<LogLikelihood> = (0..30).map(|_| of_group(&agreeing(1))).collect();
        let many = scale(&many);
        assert!(many.high < 0.3, "{many:?}");
        assert!(one_drink.high > 0.6, "{one_drink:?}");
    }
}
