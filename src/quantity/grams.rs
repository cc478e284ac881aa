//! A mass that can't be taken for a number of scoops.

/// A mass in grams: none or more, and finite.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Grams(f64);

impl Grams {
    /// A mass; `None` for less than nothing and for what is no number.
    pub fn new(grams: f64) -> Option<Self> {
        (grams.is_finite() && grams >= 0.0).then_some(Self(grams))
    }

    /// The number of grams.
    pub fn value(self) -> f64 {
        self.0
    }
}
