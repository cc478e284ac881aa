//! A share of cups, and how sure the draws make it.

/// A share of all cups.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// The share, 0 to 1.
    pub value: f64,
    /// Its standard uncertainty by the number of draws alone: that of a binomial count, or the spread of the shifts where that is
    /// more, because the cups of a shift are alike.
    pub u: f64,
}

impl Share {
    /// The share of the cups of several shifts; `counts` says how many of each are in it.
    pub(super) fn of(counts: &[usize], per_shift: usize) -> Self {
        let cups = (counts.len() * per_shift).max(1) as f64;
        let inside: usize = counts.iter().sum();
        let value = inside as f64 / cups;
        Self {
            value,
            u: binomial(inside, cups).max(clustered(counts, per_shift)),
        }
    }
}

/// Standard error of a share. A count of none or all is taken as one cup away from that (the rule of succession): no number of
/// draws makes it certain.
fn binomial(inside: usize, cups: f64) -> f64 {
    let likely = (inside as f64 + 1.0) / (cups + 2.0);
    (likely * (1.0 - likely) / cups).sqrt()
}

/// Standard error of the mean of the shares of shifts.
fn clustered(counts: &[usize], per_shift: usize) -> f64 {
    let shifts = counts.len() as f64;
    if counts.len() < 2 {
        return 0.0;
    }
    let shares = || counts.iter().map(|count| *count as f64 / per_shift as f64);
    let mean = shares().sum::<f64>() / shifts;
    let squares: f64 = shares().map(|share| (share - mean).powi(2)).sum();
    (squares / (shifts - 1.0) / shifts).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_share_of_all_cups_is_not_certain() {
        let share = Share::of(&[100, 100, 100], 100);
        assert!((share.value - 1.0).abs() < 1e-12);
        assert!(share.u > 0.002 && share.u < 0.01, "{}", share.u);
    }

    #[test]
    fn shifts_that_differ_make_a_share_less_sure_than_their_cups_would() {
        // By hand: the binomial error of 150 of 200 is √(0.7475·0.2525/200) = 0.0307; the shifts 0.5 and 1 have √(0.125/2) = 0.25.
        assert!((Share::of(&[50, 100], 100).u - 0.25).abs() < 1e-12);
        assert!((Share::of(&[75, 75], 100).u - 0.030_72).abs() < 1e-4);
    }
}
