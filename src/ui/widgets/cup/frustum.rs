//! The inside of a cup as a frustum: which height a volume reaches.
//!
//! With diameter `d(h) = b + s·h` and slope `s = (t − b)/H`, the volume below `h` is `π/12 · h · (b² + b·d + d²)`, which is
//! `π/(12 s) · (d³ − b³)`; the height of a volume follows by a cube root.

use std::f64::consts::PI;

use crate::book::{Shape, Vessel};

/// Slope below which a cup counts as straight, mm/mm: the cube root loses its digits there.
const STRAIGHT: f64 = 1e-6;

/// Volume of a cubic millimetre, ml.
const ML_PER_CUBIC_MM: f64 = 1e-3;

/// Proportions of the plain cup that stands for one whose shape nobody has stated, mm (common practice, no source).
const PLAIN: Shape = Shape {
    height: 130.0,
    bottom: 60.0,
    top: 90.0,
};

/// Capacity of the plain cup when no cup is named, ml (common practice, no source).
const PLAIN_CAPACITY: f64 = 500.0;

/// A cup whose volumes add up to its stated capacity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frustum {
    shape: Shape,
    capacity: f64,
    /// Whether the vessel states this shape.
    pub is_stated: bool,
}

impl Frustum {
    /// The inside of a vessel; a plain cup of its capacity when it states no usable shape.
    pub fn of(vessel: Option<&Vessel>) -> Self {
        let capacity = vessel
            .map(|vessel| vessel.capacity)
            .filter(|capacity| is_positive(*capacity))
            .unwrap_or(PLAIN_CAPACITY);
        let stated = vessel.and_then(|vessel| vessel.shape).filter(|shape| {
            [shape.height, shape.bottom, shape.top]
                .into_iter()
                .all(is_positive)
        });
        Self {
            shape: stated.unwrap_or(PLAIN),
            capacity,
            is_stated: stated.is_some(),
        }
    }

    /// Volume to the rim, ml.
    pub fn capacity(&self) -> f64 {
        self.capacity
    }

    /// Inner height, mm.
    pub fn height(&self) -> f64 {
        self.shape.height
    }

    /// The widest inner diameter, mm.
    pub fn widest(&self) -> f64 {
        self.shape.top.max(self.shape.bottom)
    }

    /// Inner diameter at a height, mm.
    pub fn diameter_at(&self, height: f64) -> f64 {
        self.shape.bottom + self.slope() * height
    }

    /// Volume below a height, ml, on the scale on which the cup holds its stated capacity.
    pub fn volume_below(&self, height: f64) -> f64 {
        self.geometric_volume(height.clamp(0.0, self.shape.height)) * self.scale()
    }

    /// Height that a volume reaches, mm; the rim for what does not fit.
    pub fn height_of(&self, millilitres: f64) -> f64 {
        let volume = millilitres.clamp(0.0, self.capacity) / self.scale() / ML_PER_CUBIC_MM;
        let (bottom, slope) = (self.shape.bottom, self.slope());
        let height = if slope.abs() < STRAIGHT {
            4.0 * volume / (PI * bottom.powi(2))
        } else {
            ((bottom.powi(3) + 12.0 * slope * volume / PI).cbrt() - bottom) / slope
        };
        height.clamp(0.0, self.shape.height)
    }

    fn slope(&self) -> f64 {
        (self.shape.top - self.shape.bottom) / self.shape.height
    }

    fn geometric_volume(&self, height: f64) -> f64 {
        let (bottom, top) = (self.shape.bottom, self.diameter_at(height));
        PI / 12.0 * height * (bottom * bottom + bottom * top + top * top) * ML_PER_CUBIC_MM
    }

    /// The measured capacity is trusted over the measured shape: real cups have a rolled rim and a raised bottom.
    fn scale(&self) -> f64 {
        self.capacity / self.geometric_volume(self.shape.height)
    }
}

fn is_positive(value: f64) -> bool {
    value.is_finite() && value > 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cup(height: f64, bottom: f64, top: f64, capacity: f64) -> Frustum {
        Frustum {
            shape: Shape {
                height,
                bottom,
                top,
            },
            capacity,
            is_stated: true,
        }
    }

    const CUPS: [(f64, f64, f64, f64); 4] = [
        (132.0, 60.0, 88.0, 500.0),
        (96.0, 80.0, 80.0, 420.0),
        (80.0, 90.0, 60.0, 300.0),
        (100.0, 70.0, 70.000_001, 380.0),
    ];

    #[test]
    fn the_height_of_a_volume_holds_that_volume() {
        for (height, bottom, top, capacity) in CUPS {
            let cup = cup(height, bottom, top, capacity);
            for part in 0..=20 {
                let volume = capacity * f64::from(part) / 20.0;
                let back = cup.volume_below(cup.height_of(volume));
                assert!(
                    (back - volume).abs() < 1e-4 * capacity,
                    "{volume} ml came back as {back}"
                );
            }
        }
    }

    #[test]
    fn more_reaches_higher_and_never_over_the_rim() {
        for (height, bottom, top, capacity) in CUPS {
            let cup = cup(height, bottom, top, capacity);
            let heights: Vec<f64> = (0..=24)
                .map(|part| cup.height_of(capacity * f64::from(part) / 20.0))
                .collect();
            assert!(
                heights[..21].windows(2).all(|pair| pair[0] < pair[1]),
                "{heights:?}"
            );
            assert!(
                heights[20..]
                    .iter()
                    .all(|reached| (reached - height).abs() < 1e-6)
            );
        }
    }

    // By hand: a straight cup of 80 mm across and 100 mm high is π/4 · 64 · 10 = 502.65 ml.
    #[test]
    fn a_straight_cup_fills_in_proportion() {
        let cup = cup(100.0, 80.0, 80.0, 502.65);
        assert!((cup.scale() - 1.0).abs() < 1e-4);
        assert!((cup.height_of(251.325) - 50.0).abs() < 1e-6);
    }

    #[test]
    fn a_cup_without_a_usable_shape_is_plain_and_says_so() {
        let plain = Frustum::of(None);
        assert!(!plain.is_stated);
        assert!((plain.volume_below(plain.height()) - PLAIN_CAPACITY).abs() < 1e-9);
    }
}
