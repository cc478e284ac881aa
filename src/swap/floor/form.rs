//! Linear forms in the counts of the lines, boxes, and intervals: what every enclosure of the floor is made of.

use crate::optimiser::MOST_VARIABLES;

/// Places of a form: one for each line that may move and one behind them for the amount that fills.
pub(super) const PLACES: usize = MOST_VARIABLES + 1;

/// A closed interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Interval {
    pub(super) low: f64,
    pub(super) high: f64,
}

impl Interval {
    pub(super) const ZERO: Self = Self {
        low: 0.0,
        high: 0.0,
    };

    pub(super) fn new(low: f64, high: f64) -> Self {
        Self { low, high }
    }

    /// The interval times a number; nothing times anything is nothing.
    pub(super) fn times(self, factor: f64) -> Self {
        if factor == 0.0 {
            return Self::ZERO;
        }
        let (one, other) = (self.low * factor, self.high * factor);
        if factor > 0.0 {
            Self::new(one, other)
        } else {
            Self::new(other, one)
        }
    }

    /// The interval times one without negative numbers.
    pub(super) fn times_positive(self, other: Self) -> Self {
        let (least, most) = (other.low.max(0.0), other.high.max(0.0));
        Self::new(
            (self.low * least).min(self.low * most),
            (self.high * least).max(self.high * most),
        )
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self::new(self.low + other.low, self.high + other.high)
    }

    /// The greatest distance of a number of the interval from zero.
    pub(super) fn greatest_distance_from_zero(self) -> f64 {
        self.low.abs().max(self.high.abs())
    }

    pub(super) fn middle(self) -> f64 {
        f64::midpoint(self.low, self.high)
    }

    pub(super) fn width(self) -> f64 {
        self.high - self.low
    }

    pub(super) fn is_finite(self) -> bool {
        self.low.is_finite() && self.high.is_finite()
    }

    /// The least distance of a number of the interval from zero.
    pub(super) fn least_distance_from_zero(self) -> f64 {
        self.low.max(-self.high).max(0.0)
    }
}

/// A box of counts; the last place in use is the amount that fills.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bounds {
    pub(super) low: [f64; PLACES],
    pub(super) high: [f64; PLACES],
    /// Places in use.
    pub(super) width: usize,
}

impl Bounds {
    /// A box of whole numbers, with this interval for the amount that fills.
    pub(super) fn new(low: &[i32], high: &[i32], fill: Interval) -> Self {
        let mut bounds = Self {
            low: [0.0; PLACES],
            high: [0.0; PLACES],
            width: low.len() + 1,
        };
        for (at, (low, high)) in low.iter().zip(high).enumerate() {
            (bounds.low[at], bounds.high[at]) = (f64::from(*low), f64::from(*high));
        }
        bounds.set_fill(fill);
        bounds
    }

    pub(super) fn set_fill(&mut self, fill: Interval) {
        (self.low[self.width - 1], self.high[self.width - 1]) = (fill.low, fill.high);
    }
}

/// `constant + Σ per · count`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Form {
    pub(super) constant: f64,
    pub(super) per: [f64; PLACES],
}

impl Form {
    pub(super) const ZERO: Self = Self {
        constant: 0.0,
        per: [0.0; PLACES],
    };

    /// This form with so much of another added.
    #[must_use]
    pub(super) fn plus(mut self, other: &Self, times: f64) -> Self {
        self.constant += other.constant * times;
        for (own, other) in self.per.iter_mut().zip(&other.per) {
            *own += other * times;
        }
        self
    }

    #[must_use]
    pub(super) fn plus_constant(mut self, constant: f64) -> Self {
        self.constant += constant;
        self
    }

    #[must_use]
    pub(super) fn times(self, factor: f64) -> Self {
        Self::ZERO.plus(&self, factor)
    }

    /// Exact range over a box: each count at one end of its own interval, whatever the others are.
    pub(super) fn range(&self, bounds: &Bounds) -> Interval {
        let (mut low, mut high) = (self.constant, self.constant);
        for at in 0..bounds.width {
            let (one, other) = (
                self.per[at] * bounds.low[at],
                self.per[at] * bounds.high[at],
            );
            low += one.min(other);
            high += one.max(other);
        }
        Interval::new(low, high)
    }

    /// The value at a point, the amount that fills last.
    pub(super) fn at(&self, point: &[f64]) -> f64 {
        self.constant
            + self
                .per
                .iter()
                .zip(point)
                .map(|(per, count)| per * count)
                .sum::<f64>()
    }

    /// The form with the count at `place` replaced by another form.
    #[must_use]
    pub(super) fn substitute(mut self, place: usize, by: &Self) -> Self {
        let factor = self.per[place];
        self.per[place] = 0.0;
        if factor == 0.0 {
            self
        } else {
            self.plus(by, factor)
        }
    }

    /// Whether it is the same everywhere.
    pub(super) fn is_zero(&self) -> bool {
        self.constant == 0.0 && self.per.iter().all(|per| *per == 0.0)
    }

    /// Whether no place and no constant is below zero (beyond rounding).
    pub(super) fn is_nonnegative(&self) -> bool {
        self.constant >= -1e-12 && self.per.iter().all(|per| *per >= -1e-12)
    }
}

/// The least of `upper / lower` over a box, for a `lower` that is positive there.
///
/// A ratio of linear forms is monotone along every edge, so its least is at a vertex. With λ the ratio at some vertex, the
/// vertex that minimises `upper − λ·lower` has a ratio no greater, and when that minimum is zero λ is the least (Dinkelbach
/// 1967, Management Science 13:492). Each round ends at another vertex with a smaller ratio, so it ends; it is stopped early
/// with a value that is still below: for `upper − λ·lower ≥ −r` on the box, the ratio is at least `λ − r / least lower`.
pub(super) fn least_ratio(upper: &Form, lower: &Form, bounds: &Bounds) -> f64 {
    let least_lower = lower.range(bounds).low;
    if least_lower <= 0.0 {
        return f64::NEG_INFINITY;
    }
    let mut ratio = upper.range(bounds).low / least_lower;
    for _ in 0..3 {
        let (mut numerator, mut denominator) = (upper.constant, lower.constant);
        for at in 0..bounds.width {
            let slope = upper.per[at] - ratio * lower.per[at];
            let count = if slope > 0.0 {
                bounds.low[at]
            } else {
                bounds.high[at]
            };
            numerator += upper.per[at] * count;
            denominator += lower.per[at] * count;
        }
        let next = numerator / denominator;
        let settled = (next - ratio).abs() <= 1e-12 * ratio.abs();
        ratio = next;
        if settled {
            break;
        }
    }
    let short = upper.plus(lower, -ratio).range(bounds).low;
    ratio + short.min(0.0) / least_lower
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ratio_is_least_at_a_vertex_and_no_point_goes_below() {
        let mut upper = Form {
            constant: 3.0,
            ..Form::ZERO
        };
        let mut lower = Form {
            constant: 10.0,
            ..Form::ZERO
        };
        for (at, (up, down)) in [(1.0, 4.0), (-0.7, 2.0), (0.2, 0.1), (2.0, 9.0)]
            .into_iter()
            .enumerate()
        {
            (upper.per[at], lower.per[at]) = (up, down);
        }
        let bounds = Bounds::new(&[0, 0, 1], &[5, 3, 4], Interval::new(0.0, 2.5));
        let least = least_ratio(&upper, &lower, &bounds);
        let mut seen = f64::INFINITY;
        for corner in 0..16_usize {
            let point: Vec<f64> = (0..4)
                .map(|at| {
                    if corner >> at & 1 == 1 {
                        bounds.high[at]
                    } else {
                        bounds.low[at]
                    }
                })
                .collect();
            seen = seen.min(upper.at(&point) / lower.at(&point));
        }
        assert!((least - seen).abs() < 1e-12, "{least} {seen}");
    }
}
