//! How much everything in a drink expands between 20 °C and its serving temperature.

use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::sugar_solution;

use super::form::Interval;

/// How much a food expands at most between 0 and 100 °C, as a part of its volume at 20 °C a kelvin: fat by 0.00045
/// (see [`FoodComponent::density_kg_per_m3`]).
pub(super) const MOST_OF_FOODS: f64 = 0.000_6;

/// Ratio of the volume of a sugar solution at a temperature to that at 20 °C.
pub(super) fn of_solution(sugar_fraction: f64, celsius: f64) -> f64 {
    sugar_solution::density_kg_per_m3(sugar_fraction, 20.0)
        / sugar_solution::density_kg_per_m3(sugar_fraction, celsius)
}

/// The same anywhere between two mass fractions and two temperatures: the corners, and how far it bends between them (tested
/// below over the range of a drink).
pub(super) fn of_solutions(sugar_fractions: Interval, celsius: Interval) -> Interval {
    let corners = [
        of_solution(sugar_fractions.low, celsius.low),
        of_solution(sugar_fractions.low, celsius.high),
        of_solution(sugar_fractions.high, celsius.low),
        of_solution(sugar_fractions.high, celsius.high),
    ];
    let furthest = (celsius.low - 20.0).abs().max((celsius.high - 20.0).abs());
    // Water is densest at 4 °C: 0.00013 denser than at 0 °C.
    let densest = if celsius.low < 8.0 && celsius.high > 0.0 {
        0.000_14_f64.min(celsius.width() * 0.000_07)
    } else {
        0.0
    };
    let bends = sugar_fractions.width().powi(2) * furthest * 0.000_3 + densest + 1e-9;
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for corner in corners {
        (low, high) = (low.min(corner), high.max(corner));
    }
    Interval::new(low - bends, high + bends)
}

/// Spacing of the table, K.
const SPACING: f64 = 5.0;

/// Places of the table: 0, 5, … 100 °C; densities are held outside.
const TABLE_PLACES: usize = 21;

/// What the table may be off between its places and between its mass fractions, as a part of the volume: over 5 K and
/// over a tenth of sugar the ratio bends by less than half of this.
const MARGIN: f64 = 0.000_4;

/// Ratio of the volume at a temperature to that at 20 °C: the least and the greatest of any substance of a drink.
///
/// The volume of a drink is the sum of the volumes of its sugar solution and its foods, so its ratio lies between theirs.
#[derive(Clone, Debug)]
pub(super) struct Expansion {
    ratios: [Interval; TABLE_PLACES],
}

impl Expansion {
    pub(super) fn new() -> Self {
        let at = |place: usize| {
            let celsius = place as f64 * SPACING;
            let solutions = (0..=10).map(|tenths| of_solution(f64::from(tenths) / 10.0, celsius));
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
    (celsius / SPACING)
        .floor()
        .clamp(0.0, (TABLE_PLACES - 1) as f64) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_solution_between_two_others_expands_within_their_range() {
        let (fractions, temperatures) = (
            [0.0, 0.03, 0.08, 0.15, 0.25, 0.4, 0.6, 0.8, 1.0],
            [
                -14.0, -3.0, 0.0, 1.0, 3.0, 4.5, 8.0, 15.0, 20.0, 30.0, 50.0, 75.0, 100.0,
            ],
        );
        let mut least_room = f64::INFINITY;
        for (at, from) in fractions.iter().enumerate() {
            for to in &fractions[at..] {
                for (place, coldest) in temperatures.iter().enumerate() {
                    for warmest in &temperatures[place..] {
                        let range = of_solutions(
                            Interval::new(*from, *to),
                            Interval::new(*coldest, *warmest),
                        );
                        for (part, other) in
                            (0..=20).flat_map(|part| (0..=20).map(move |other| (part, other)))
                        {
                            let fraction = from + (to - from) * f64::from(part) / 20.0;
                            let celsius = coldest + (warmest - coldest) * f64::from(other) / 20.0;
                            let ratio = of_solution(fraction, celsius);
                            let room = (ratio - range.low).min(range.high - ratio);
                            least_room = least_room.min(room);
                            assert!(
                                room >= 0.0,
                                "{fraction} at {celsius} °C of {from}–{to}, {coldest}–{warmest}: {room}"
                            );
                        }
                    }
                }
            }
        }
        assert!(least_room < 1e-3);
    }

    #[test]
    fn foods_expand_no_more_than_stated() {
        for food in FoodComponent::ALL {
            for celsius in 0_i32..100 {
                let at =
                    |celsius: f64| food.density_kg_per_m3(20.0) / food.density_kg_per_m3(celsius);
                let by = at(f64::from(celsius) + 1.0) - at(f64::from(celsius));
                assert!(
                    (0.0..=MOST_OF_FOODS).contains(&by),
                    "{food:?} at {celsius} °C: {by}"
                );
            }
        }
    }

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
