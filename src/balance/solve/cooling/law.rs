//! The law by which a hot drink cools: heat through the wall and by evaporation, both carried off by air that rises.
//!
//! `dΔ/dt = −(Δ/40 K)^¼ · [dry · Δ + evaporation · E(Δ)]` with `Δ` the excess over the room.
//!
//! - The power ¼ is that of laminar free convection: Nusselt's number goes with the fourth root of the Rayleigh number, which is
//!   proportional to `Δ` (any textbook of heat transfer). Radiation, which also grows with `Δ`, is taken in.
//! - `E(Δ)` is the excess of the pressure of saturated vapour at the drink over that at the room, in kelvins: 40 at 40 K above a
//!   room of 22 °C. Air is taken as saturated at the room's temperature, which holds the drink above the room; in dry air a drink
//!   ends a little below it.

/// The excess that the rates belong to, K.
const REFERENCE_EXCESS: f64 = 40.0;

/// Excess of vapour pressure between 62 and 22 °C, Pa.
const REFERENCE_PRESSURE: f64 = 19_296.0;

/// Heat that a cubic metre of drink gives off per kelvin, J/(m³ K): water at 60 °C, 983 kg/m³ (IAPWS-95) and 4185 J/(kg K).
const HEAT_OF_A_CUBIC_METRE: f64 = 4.11e6;

/// Height of a cup as a part of its width (assumed: mugs and paper cups have 1 to 1.4). Only how the wetted wall grows with the
/// fill depends on it.
const HEIGHT_PER_WIDTH: f64 = 1.15;

/// The least part of a cup that is reckoned with: a film on the bottom is no drink that cools.
const LEAST_FILL: f64 = 0.05;

/// What a cup can hold, ml.
const CAPACITIES: std::ops::RangeInclusive<f64> = 0.1..=1e6;

/// Excesses below this are the room, K.
pub(super) const NOTHING: f64 = 1e-6;

/// How far the logarithm of the excess moves in one step of the integration.
const STEP: f64 = 0.25;

/// Nodes and weights of the Gauss–Legendre rule with eight points on (−1, 1), the positive half.
const GAUSS: [(f64, f64); 4] = [
    (0.183_434_642_495_649_8, 0.362_683_783_378_362),
    (0.525_532_409_916_329, 0.313_706_645_877_887_3),
    (0.796_666_477_413_626_7, 0.222_381_034_453_374_48),
    (0.960_289_856_497_536_3, 0.101_228_536_290_376_26),
];

/// Pressure of saturated water vapour, Pa: Magnus's formula with the constants of Sonntag 1990, within 0.3 % to 60 °C and 2.5 %
/// high at 100 °C. Held to −40 to 150 °C.
fn vapour_pressure(celsius: f64) -> f64 {
    let celsius = celsius.clamp(-40.0, 150.0);
    611.2 * (17.62 * celsius / (243.12 + celsius)).exp()
}

/// A cup that holds so much: an upright cylinder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Filled {
    /// Volume to the rim, ml.
    pub(super) capacity: f64,
    /// Part of it that the drink takes up.
    pub(super) fill: f64,
}

impl Filled {
    /// A cup and the part of it that is full; `None` without a capacity that a cup can have.
    pub(super) fn new(capacity: f64, fill: f64) -> Option<Self> {
        let sound = CAPACITIES.contains(&capacity) && fill.is_finite();
        sound.then(|| Self {
            capacity,
            fill: fill.clamp(LEAST_FILL, 1.0),
        })
    }

    /// Rates in 1/min for each W/(m² K) through the whole surface and through the open top. Both fall as the cup fills: the top
    /// stays what it is, and the wall grows more slowly than the volume.
    fn rates(self) -> (f64, f64) {
        let cubic_metres = self.capacity * 1e-6;
        let width = (4.0 * cubic_metres / (std::f64::consts::PI * HEIGHT_PER_WIDTH)).cbrt();
        let depth = HEIGHT_PER_WIDTH * width * self.fill;
        let top = 60.0 / (HEAT_OF_A_CUBIC_METRE * depth);
        (top * (2.0 + 4.0 * HEIGHT_PER_WIDTH * self.fill), top)
    }
}

/// Both ways that heat leaves a cup, in a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Law {
    /// Through wall and surface without evaporation at 40 K, 1/min.
    pub(super) dry: f64,
    /// By evaporation at 40 K in a room of 22 °C, 1/min.
    pub(super) evaporation: f64,
    /// Temperature of the room, °C.
    pub(super) room: f64,
    /// Pressure of saturated vapour at the room, Pa.
    pub(super) pressure: f64,
}

impl Law {
    /// The law of a cup, from its conductances in W/(m² K) of surface and of open top.
    pub(super) fn of(dry: f64, evaporation: f64, cup: Filled, room: f64) -> Self {
        let (surface, top) = cup.rates();
        Self {
            dry: dry * surface,
            evaporation: evaporation * top,
            room,
            pressure: vapour_pressure(room),
        }
    }

    /// The same cup in another room.
    pub(super) fn in_room(self, room: f64) -> Self {
        Self {
            room,
            pressure: vapour_pressure(room),
            ..self
        }
    }

    /// −d ln Δ/dt at an excess, 1/min.
    pub(super) fn rate(&self, excess: f64) -> f64 {
        let pressure = vapour_pressure(self.room + excess) - self.pressure;
        let evaporation = REFERENCE_EXCESS / REFERENCE_PRESSURE * pressure / excess;
        (excess / REFERENCE_EXCESS).sqrt().sqrt() * (self.dry + self.evaporation * evaporation)
    }

    /// Minutes from one excess down to another, both above 0: ∫ d ln Δ / rate by Gauss and Legendre. Negative when the second is
    /// the larger.
    pub(super) fn minutes(&self, from: f64, to: f64) -> f64 {
        let (high, low) = (from.ln(), to.ln());
        let (middle, half) = (f64::midpoint(high, low), (high - low) / 2.0);
        let at = |node: f64| 1.0 / self.rate((middle + half * node).exp());
        let sum: f64 = GAUSS
            .iter()
            .map(|(node, weight)| weight * (at(*node) + at(-node)))
            .sum();
        sum * half
    }

    /// The excess after so many minutes (Runge–Kutta on its logarithm, which never crosses the room).
    pub(super) fn after(&self, excess: f64, minutes: f64) -> f64 {
        let mut left = minutes;
        let mut excess = excess;
        while left > 0.0 && excess > NOTHING {
            let first = self.rate(excess);
            let step = left.min(STEP / first);
            let at = |rate: f64, part: f64| self.rate(excess * (-rate * step * part).exp());
            let second = at(first, 0.5);
            let third = at(second, 0.5);
            let fourth = at(third, 1.0);
            excess *= (-step * (first + 2.0 * second + 2.0 * third + fourth) / 6.0).exp();
            left -= step;
        }
        excess
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mug(fill: f64) -> Law {
        Law::of(7.0, 45.0, Filled::new(300.0, fill).unwrap(), 22.0)
    }

    #[test]
    fn the_reference_is_40_kelvins_above_22_degrees() {
        let pressure = vapour_pressure(62.0) - vapour_pressure(22.0);
        assert!(
            (pressure / REFERENCE_PRESSURE - 1.0).abs() < 1e-3,
            "{pressure}"
        );
        let law = mug(0.8);
        assert!((law.rate(40.0) / (law.dry + law.evaporation) - 1.0).abs() < 1e-3);
        // Steam at 100 °C has an atmosphere.
        assert!((vapour_pressure(100.0) / 101_325.0 - 1.0).abs() < 0.03);
    }

    #[test]
    fn the_two_ways_through_the_law_agree() {
        for (from, to) in [(75.0, 36.0), (60.0, 58.0), (78.0, 15.0), (40.0, 2.0)] {
            let law = mug(0.8);
            let reached = law.after(from, law.minutes(from, to));
            assert!(
                (reached / to - 1.0).abs() < 1e-4,
                "{from} to {to}: {reached}"
            );
        }
    }

    #[test]
    fn a_cup_without_evaporation_or_drift_follows_a_power_law() {
        // dΔ/dt = −k Δ^(5/4)/40^(1/4) has the closed solution Δ^(−1/4) = Δ₀^(−1/4) + k t/(4·40^(1/4)).
        let law = Law {
            evaporation: 0.0,
            ..mug(1.0)
        };
        let expected =
            4.0 * 40.0_f64.powf(0.25) / law.dry * (20.0_f64.powf(-0.25) - 70.0_f64.powf(-0.25));
        assert!((law.minutes(70.0, 20.0) / expected - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_drink_is_at_the_room_after_a_very_long_time() {
        let end = mug(0.8).after(70.0, 1e12);
        assert!((0.0..1e-3).contains(&end), "{end}");
    }
}
