//! How much everything in a drink expands between 20 °C and its serving temperature.

use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::sugar_solution;

use super::form::Interval;

/// Spacing of the table, K.
const SPACING: f64 = 5.0;

/// Places of the table: 0, 5, … 100 °C; densities are held outside.
const PLACES: usize = 21;

/// What the table may be off between its places and between its mass fractions, as a part of the volume: over 5 K and
/// over a tenth of sugar the ratio bends by less than half of this.
const MARGIN: f64 = 0.000_4;

/// Ratio of the volume at a temperature to that at 20 °C: the least and the greatest of any substance of a drink.
///
/// The volume of a drink is the sum of the volumes of its sugar solution and its foods, so its ratio lies between theirs.
#[derive(Clone, Debug)]
pub(super) struct Expansion {
    ratios: [Interval; PLACES],
}

impl Expansion {
    pub(super) fn new() -> Self {
        let at = |place: usize| {
            let celsius = place as f64 * SPACING;
            let solutions = (0..=10).map(|tenths| {
                let fraction = f64::from(tenths) / 10.0;
                sugar_solution::density_kg_per_m3(fraction, 20.0)
                    / sugar_solution::density_kg_per_m3(fraction, celsius)
            });
            let foods = FoodComponent::ALL
                .into_iter()
                .map(|food| food.density_kg_per_m3(20.0) / food.density_kg_per_m3(celsius));
            solutions.chain(foods).fold(
                Interval::new(f64::INFINITY, f64::NEG_INFINITY),
                |range, ratio| {
                    Interval::new(
                        range.low.min(ratio - MARGIN),
                        range.high.max(ratio + MARGIN),
                    )
                },
            )
        };
        Self {
            ratios: std::array::from_fn(at),
        }
    }

    /// The ratio anywhere between two temperatures. Below 0 °C foods go on shrinking, by less than 0.05 % a kelvin.
    pub(super) fn between(&self, coldest: f64, warmest: f64) -> Interval {
        let (first, last) = (place_below(coldest), place_below(warmest + SPACING));
        let mut range = self.ratios[first];
        for ratio in &self.ratios[first..=last.max(first)] {
            range = Interval::new(range.low.min(ratio.low), range.high.max(ratio.high));
        }
        range.low -= (-coldest).clamp(0.0, 40.0) * 0.000_5;
        range
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to the table"
)]
fn place_below(celsius: f64) -> usize {
    (celsius / SPACING).floor().clamp(0.0, (PLACES - 1) as f64) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_solution_expands_within_the_range() {
        let expansion = Expansion::new();
        for tenth in 0_i32..1000 {
            let celsius = f64::from(tenth) / 10.0;
            let range = expansion.between(celsius, celsius);
            for percent in (0_i32..=100).step_by(3) {
                let fraction = f64::from(percent) / 100.0;
                let ratio = sugar_solution::density_kg_per_m3(fraction, 20.0)
                    / sugar_solution::density_kg_per_m3(fraction, celsius);
                assert!(
                    range.low <= ratio && ratio <= range.high,
                    "{percent} % at {celsius} °C"
                );
            }
        }
    }
}
