//! What the solver counts with: plain numbers, or numbers that carry along how they move when causes move.
//!
//! The formulas of a drink are written once. With [`Slopes`] the very same code gives the derivatives of every figure by several
//! causes at once (forward accumulation: each operation applies the rule of its own derivative).
//!
//! A slope means something where the formula is smooth as far as a cause reaches. Where a bend lies within one standard uncertainty
//! (ice that just melts, a bed of ice as high as the drink), the slope is no number, and so is that of everything that rests on
//! it: whoever asks has to try the cause out instead.

use std::fmt::Debug;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

/// A slope below this moves nothing over a bend, in the unit of the value: it is what rounding leaves.
const NO_SLOPE: f64 = 1e-11;

/// A number that a drink can be worked out with.
pub trait Number:
    Copy
    + Debug
    + Default
    + PartialEq
    + From<f64>
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
    + Add<f64, Output = Self>
    + Sub<f64, Output = Self>
    + Mul<f64, Output = Self>
    + Div<f64, Output = Self>
    + AddAssign
{
    /// Nothing.
    const ZERO: Self;

    /// The number itself.
    fn value(self) -> f64;

    /// The larger one.
    #[must_use]
    fn max(self, other: Self) -> Self;

    /// The smaller one.
    #[must_use]
    fn min(self, other: Self) -> Self {
        -(-self).max(-other)
    }

    /// Held between two ends.
    #[must_use]
    fn clamp(self, least: f64, most: f64) -> Self {
        self.max(Self::from(least)).min(Self::from(most))
    }

    /// Nothing; its slope is no number when the sign of this number may change within one standard uncertainty.
    #[must_use]
    fn bend_at_zero(self) -> Self {
        self.max(Self::ZERO) - if self.value() > 0.0 { self } else { Self::ZERO }
    }

    /// The root of an equation, once its value is known: what the equation leaves over there, and its slope by the unknown there, say
    /// how the root moves (implicit function theorem).
    #[must_use]
    fn root(
        value: f64,
        left_over: impl FnOnce(Self) -> Self,
        slope: impl FnOnce(f64) -> f64,
    ) -> Self;

    /// A smooth function of it, and the slope of that.
    #[must_use]
    fn through(self, function: impl FnOnce(f64) -> f64, slope: impl FnOnce(f64) -> f64) -> Self;

    /// A smooth function of two, and its slopes by each.
    #[must_use]
    fn of_two(
        one: Self,
        other: Self,
        function: impl FnOnce(f64, f64) -> f64,
        slopes: impl FnOnce(f64, f64) -> [f64; 2],
    ) -> Self;
}

impl Number for f64 {
    const ZERO: Self = 0.0;

    fn value(self) -> f64 {
        self
    }

    fn max(self, other: Self) -> Self {
        Self::max(self, other)
    }

    fn min(self, other: Self) -> Self {
        Self::min(self, other)
    }

    fn clamp(self, least: f64, most: f64) -> Self {
        Self::clamp(self, least, most)
    }

    fn bend_at_zero(self) -> Self {
        0.0
    }

    fn root(value: f64, _: impl FnOnce(Self) -> Self, _: impl FnOnce(f64) -> f64) -> Self {
        value
    }

    fn through(self, function: impl FnOnce(f64) -> f64, _: impl FnOnce(f64) -> f64) -> Self {
        function(self)
    }

    fn of_two(
        one: Self,
        other: Self,
        function: impl FnOnce(f64, f64) -> f64,
        _: impl FnOnce(f64, f64) -> [f64; 2],
    ) -> Self {
        function(one, other)
    }
}

/// A number with its slopes by several causes, each per standard uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::balance) struct Slopes<const CAUSES: usize> {
    /// The number.
    pub(in crate::balance) value: f64,
    /// How it moves when each of the causes is off by its standard uncertainty.
    pub(in crate::balance) by: [f64; CAUSES],
}

impl<const CAUSES: usize> Slopes<CAUSES> {
    /// Nothing that moves with one of the causes as that is off.
    pub(in crate::balance) fn cause(at: usize) -> Self {
        let mut by = [0.0; CAUSES];
        by[at] = 1.0;
        Self { value: 0.0, by }
    }

    fn each(self, other: Self, value: f64, slope: impl Fn(f64, f64) -> f64) -> Self {
        let mut by = self.by;
        for (own, others) in by.iter_mut().zip(other.by) {
            *own = slope(*own, others);
        }
        Self { value, by }
    }

    fn product(self, other: Self) -> Self {
        let (value, with) = (self.value, other.value);
        self.each(other, value * with, |own, others| {
            own * with + others * value
        })
    }

    fn quotient(self, other: Self) -> Self {
        let (value, inverse) = (self.value / other.value, other.value.recip());
        self.each(other, value, |own, others| (own - value * others) * inverse)
    }

    fn scaled(self, value: f64, factor: f64) -> Self {
        Self {
            value,
            by: self.by.map(|slope| slope * factor),
        }
    }
}

impl<const CAUSES: usize> Default for Slopes<CAUSES> {
    fn default() -> Self {
        Self::ZERO
    }
}

impl<const CAUSES: usize> From<f64> for Slopes<CAUSES> {
    fn from(value: f64) -> Self {
        Self {
            value,
            by: [0.0; CAUSES],
        }
    }
}

impl<const CAUSES: usize> Add for Slopes<CAUSES> {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        self.each(other, self.value + other.value, |own, others| own + others)
    }
}

impl<const CAUSES: usize> Sub for Slopes<CAUSES> {
    type Output = Self;

    fn sub(self, other: Self) -> Self {
        self.each(other, self.value - other.value, |own, others| own - others)
    }
}

impl<const CAUSES: usize> Mul for Slopes<CAUSES> {
    type Output = Self;

    fn mul(self, other: Self) -> Self {
        self.product(other)
    }
}

impl<const CAUSES: usize> Div for Slopes<CAUSES> {
    type Output = Self;

    fn div(self, other: Self) -> Self {
        self.quotient(other)
    }
}

impl<const CAUSES: usize> Neg for Slopes<CAUSES> {
    type Output = Self;

    fn neg(self) -> Self {
        self.scaled(-self.value, -1.0)
    }
}

impl<const CAUSES: usize> Add<f64> for Slopes<CAUSES> {
    type Output = Self;

    fn add(self, other: f64) -> Self {
        Self {
            value: self.value + other,
            ..self
        }
    }
}

impl<const CAUSES: usize> Sub<f64> for Slopes<CAUSES> {
    type Output = Self;

    fn sub(self, other: f64) -> Self {
        self + -other
    }
}

impl<const CAUSES: usize> Mul<f64> for Slopes<CAUSES> {
    type Output = Self;

    fn mul(self, factor: f64) -> Self {
        self.scaled(self.value * factor, factor)
    }
}

impl<const CAUSES: usize> Div<f64> for Slopes<CAUSES> {
    type Output = Self;

    fn div(self, divisor: f64) -> Self {
        self.scaled(self.value / divisor, divisor.recip())
    }
}

impl<const CAUSES: usize> AddAssign for Slopes<CAUSES> {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl<const CAUSES: usize> Number for Slopes<CAUSES> {
    const ZERO: Self = Self {
        value: 0.0,
        by: [0.0; CAUSES],
    };

    fn value(self) -> f64 {
        self.value
    }

    fn max(self, other: Self) -> Self {
        let apart = self.value - other.value;
        let own_is_larger = apart > 0.0;
        // Nearly everywhere no cause comes near the bend, and one of them is taken whole.
        let is_far = |far, (own, others): (&f64, &f64)| {
            let closing = (own - others).abs();
            far & ((closing <= NO_SLOPE) | (closing < apart.abs()))
        };
        if self.by.iter().zip(&other.by).fold(true, is_far) {
            let by = if own_is_larger { self.by } else { other.by };
            let value = self.value.max(other.value);
            return Self { value, by };
        }
        self.each(other, self.value.max(other.value), |own, others| {
            let closing = (own - others).abs();
            // What has no slope may reach any bend.
            if closing.is_nan() || (closing > NO_SLOPE && closing >= apart.abs()) {
                f64::NAN
            } else if own_is_larger {
                own
            } else {
                others
            }
        })
    }

    fn clamp(self, least: f64, most: f64) -> Self {
        let room = (self.value - least).min(most - self.value);
        if self
            .by
            .iter()
            .fold(true, |far, slope| far & (slope.abs() < room))
        {
            return self;
        }
        self.max(Self::from(least)).min(Self::from(most))
    }

    fn root(
        value: f64,
        left_over: impl FnOnce(Self) -> Self,
        slope: impl FnOnce(f64) -> f64,
    ) -> Self {
        left_over(Self::from(value)).scaled(value, -slope(value).recip())
    }

    fn through(self, function: impl FnOnce(f64) -> f64, slope: impl FnOnce(f64) -> f64) -> Self {
        self.scaled(function(self.value), slope(self.value))
    }

    fn of_two(
        one: Self,
        other: Self,
        function: impl FnOnce(f64, f64) -> f64,
        slopes: impl FnOnce(f64, f64) -> [f64; 2],
    ) -> Self {
        let [by_one, by_other] = slopes(one.value, other.value);
        let value = function(one.value, other.value);
        one.each(other, value, |one, other| one * by_one + other * by_other)
    }
}

/// Halvings after which a bracket is narrower than the spacing of numbers within it.
const HALVINGS: u32 = 60;

/// Where a function that rises between two ends crosses a value: an end, where it lies on one side throughout.
pub fn crossing(ends: (f64, f64), value: f64, rising: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = ends;
    for _ in 0..HALVINGS {
        let middle = low.midpoint(high);
        if rising(middle) < value {
            low = middle;
        } else {
            high = middle;
        }
    }
    low.midpoint(high)
}

/// The integral of a smooth function between two ends by Simpson's rule, in an even number of steps.
pub fn integral((from, to): (f64, f64), steps: u32, of: impl Fn(f64) -> f64) -> f64 {
    let step = (to - from) / f64::from(steps);
    let weighted = (0..=steps).map(|place| {
        let weight = match place {
            end if end == 0 || end == steps => 1.0,
            odd if odd % 2 == 1 => 4.0,
            _ => 2.0,
        };
        weight * of(f64::from(place).mul_add(step, from))
    });
    weighted.sum::<f64>() * step / 3.0
}

#[cfg(test)]
mod tests {
    use super::*;

    type Two = Slopes<2>;

    fn close(found: f64, expected: f64) {
        assert!((found - expected).abs() < 1e-9, "{found} for {expected}");
    }

    #[test]
    fn slopes_follow_the_rules_of_derivatives() {
        let x = Two::cause(0) + 3.0;
        let y = Two::cause(1) * 2.0 + 5.0;
        let product = x * y;
        assert_eq!((product.value, product.by), (15.0, [5.0, 6.0]));
        let quotient = x / y;
        close(quotient.by[0], 1.0 / 5.0);
        close(quotient.by[1], -3.0 * 2.0 / 25.0);
        let sum = -(x - y) * 2.0 / 4.0 + 1.0;
        assert_eq!((sum.value, sum.by), (2.0, [-0.5, 1.0]));
        close(x.through(|x| x.powi(3), |x| 3.0 * x * x).by[0], 27.0);
        let both = Two::of_two(x, y, |x, y| x * x * y, |x, y| [2.0 * x * y, x * x]);
        assert_eq!((both.value, both.by), (45.0, [30.0, 18.0]));
    }

    #[test]
    fn a_root_moves_by_the_implicit_function_theorem() {
        // t² = x at x = 9: t = 3, dt/dx = 1/6.
        let x = Two::cause(0) + 9.0;
        let root = Two::root(3.0, |t| t * t - x, |t| 2.0 * t);
        close(root.value, 3.0);
        close(root.by[0], 1.0 / 6.0);
    }

    #[test]
    fn a_bend_within_a_standard_uncertainty_has_no_slope() {
        let near = Two::cause(0) * 2.0 + 1.0;
        assert!(near.max(Two::ZERO).by[0].is_nan());
        close(near.max(Two::ZERO).by[1], 0.0);
        let far = Two::cause(0) * 2.0 + 3.0;
        assert_eq!(far.max(Two::ZERO), far);
        assert_eq!(far.min(Two::ZERO), Two::ZERO);
        assert_eq!(far.clamp(0.0, 10.0), far);
        assert!(far.clamp(0.0, 4.0).by[0].is_nan());
        assert_eq!(far.clamp(0.0, 0.5), Two::from(0.5));
        assert_eq!(far.bend_at_zero(), Two::ZERO);
        assert!(near.bend_at_zero().by[0].is_nan());
        assert!((-near).bend_at_zero().by[0].is_nan());
    }

    #[test]
    fn an_integral_of_a_cubic_is_exact() {
        // ∫ x³ from 1 to 3 is (81 − 1)/4.
        assert!((integral((1.0, 3.0), 2, |x| x.powi(3)) - 20.0).abs() < 1e-12);
        assert!((integral((0.0, 1.0), 64, f64::exp) - (1f64.exp() - 1.0)).abs() < 1e-9);
    }

    #[test]
    fn a_crossing_is_found_and_an_end_is_kept() {
        assert!((crossing((0.0, 4.0), 2.0, |x| x * x) - 2f64.sqrt()).abs() < 1e-12);
        assert!((crossing((0.0, 4.0), 20.0, |x| x * x) - 4.0).abs() < 1e-12);
        assert!(crossing((0.0, 4.0), -1.0, |x| x * x).abs() < 1e-12);
    }
}
