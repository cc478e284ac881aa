//! Tails of the binomial distribution, the normal distribution, and the first count that something holds of.

use statrs::distribution::{
    Binomial, Continuous as _, ContinuousCDF as _, Discrete as _, DiscreteCDF as _, Normal,
};

/// The probability of `least` or more of `count` independent answers, each with the probability `each`.
pub(super) fn at_least(count: u32, least: u32, each: f64) -> f64 {
    match least.checked_sub(1) {
        None => 1.0,
        Some(_) if least > count => 0.0,
        Some(below) => of(count, each).map_or(f64::NAN, |answers| answers.sf(u64::from(below))),
    }
}

/// The probability of `most` or fewer.
pub(super) fn at_most(count: u32, most: u32, each: f64) -> f64 {
    if most >= count {
        return 1.0;
    }
    of(count, each).map_or(f64::NAN, |answers| answers.cdf(u64::from(most)))
}

/// The probability of exactly so many.
pub(super) fn exactly(count: u32, wanted: u32, each: f64) -> f64 {
    of(count, each).map_or(f64::NAN, |answers| answers.pmf(u64::from(wanted)))
}

/// `None` where `each` is no probability.
fn of(count: u32, each: f64) -> Option<Binomial> {
    Binomial::new(each, u64::from(count)).ok()
}

/// The probability of a standard normal value below `z`.
pub(super) fn normal_below(z: f64) -> f64 {
    Normal::standard().cdf(z)
}

/// How dense standard normal values lie around `z`.
pub(super) fn normal_density(z: f64) -> f64 {
    Normal::standard().pdf(z)
}

/// The standard normal value below which a share `p` of all lies, 0 to 1 without its ends.
pub(super) fn normal_quantile(p: f64) -> f64 {
    Normal::standard().inverse_cdf(p)
}

/// The first count from one on that something holds of, and of all after it; `end` where it holds of none before.
pub(super) fn first(from: u32, end: u32, holds: impl Fn(u32) -> bool) -> u32 {
    let (mut least, mut most) = (from, end);
    while least < most {
        let middle = u32::midpoint(least, most);
        if holds(middle) {
            most = middle;
        } else {
            least = middle + 1;
        }
    }
    least
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tails_are_whole_at_their_ends() {
        for each in [0.0, 1.0 / 3.0, 1.0] {
            assert!((at_least(6, 0, each) - 1.0).abs() < 1e-15);
            assert!((at_most(6, 6, each) - 1.0).abs() < 1e-15);
            assert!(at_least(6, 7, each).abs() < 1e-15);
        }
        assert!((at_least(6, 6, 1.0) - 1.0).abs() < 1e-12);
        assert!(at_least(6, 1, 0.0).abs() < 1e-12);
    }
}
