//! The heat of a drink as linear forms: its excess over a temperature, the ice that melts, and what a shaker's wall gives.
//!
//! **Melted ice.** With ice left at a freezing point `τ` the heat balance gives the melted mass
//! `m(τ) = (H − E(τ) − C·τ) / (h_water(τ) − h_ice(τ))`, where `H` and `E` (everything as it was, cooled to `τ`) are linear in the
//! counts at fixed `τ`. So `m(τ*)` is a form, and by the mean value theorem `m(τ) − m(τ*) = −κ·(τ − τ*)` for a `κ` between the least
//! and the greatest of `C / (h_water − h_ice)`: differentiating `m` gives the heat capacity of what there is (what has melted as
//! water, the rest as ice) over the heat of fusion. The freezing point of the box lies between the law of dilute solutions with
//! most particles in least water and the reverse.
//!
//! **Shaker.** Its wall leaves with the temperature of the first mixing: the excess of heat over 0 °C by the heat capacity or,
//! where that is below zero, between the lowest freezing point and 0 °C. Its heat widens the interval of the heat balance.

use crate::balance::published::freezing::{
    LOWEST_FREEZING_POINT_CELSIUS, freezing_point_of_particles,
};
use crate::balance::published::water;
use crate::balance::{Component, Wall};

use super::drink::{IceAs, Lines, Over};
use super::form::{Bounds, Form, Interval};

/// By how much water and ice differ in heat capacity between −14 and 0 °C, kJ/g/K: 4.218 to 4.22 less 1.99 to 2.10 (IAPWS-95 and
/// IAPWS-06), with room on either side.
const HEAT_CAPACITY_OF_MELTING: Interval = Interval {
    low: 0.002_05,
    high: 0.002_35,
};

/// What the mass of melted ice depends on.
#[derive(Clone, Debug)]
pub(super) struct Melting {
    /// Melted ice if ice is left at the reference freezing point, g.
    pub(super) melted: Form,
    /// The reference, °C.
    reference: f64,
    /// Heat that melts a gram at the reference, kJ.
    heat_of_fusion: f64,
    /// Water that the freezing point depends on, g: that of the toppings too.
    water: Form,
    /// Water of the solution alone, g.
    mixed_water: Form,
    /// Dissolved particles, mmol.
    particles: Form,
    /// Heat capacity of all that takes part, its ice melted, kJ/K.
    capacity_most: Form,
    capacity_least: Form,
    /// Whether what is left of the ice stays behind in the shaker.
    pub(super) strained: bool,
}

impl Melting {
    pub(super) fn new(
        lines: &Lines,
        strained: bool,
        cup: Wall,
        shaker: Wall,
        reference: &[f64],
    ) -> Self {
        // A strained drink is parted from its ice before it meets the cup.
        let (over, wall) = if strained {
            (Over::Mixed, shaker)
        } else {
            (Over::InCup, cup)
        };
        let water = lines.component(over, Component::Water);
        let particles = lines.component(over, Component::Particles);
        let at = |celsius: f64| {
            let fusion = (water::enthalpy_kj_per_kg(celsius)
                - water::ice_enthalpy_kj_per_kg(celsius))
                / 1000.0;
            let cooled = lines.enthalpy(over, celsius, IceAs::Frozen);
            let heat = lines.component(over, Component::Heat).plus(&cooled, -1.0);
            let walls = wall.heat_capacity * (wall.celsius - celsius);
            (heat.plus_constant(walls).times(1.0 / fusion), fusion)
        };
        let ice = lines.component(over, Component::Ice).at(reference);
        let liquid = water.at(reference) + at(-0.5).0.at(reference).clamp(0.0, ice.max(0.0));
        let reference = freezing_point_of_particles(particles.at(reference), liquid);
        let (melted, heat_of_fusion) = at(reference);
        let capacity = |greatest: bool| {
            let heat = lines.heat_capacity(over, greatest);
            heat.plus_constant(wall.heat_capacity)
        };
        Self {
            melted,
            reference,
            heat_of_fusion,
            water,
            mixed_water: lines.component(Over::Mixed, Component::Water),
            particles,
            capacity_most: capacity(true),
            capacity_least: capacity(false),
            strained,
        }
    }

    /// The freezing point that the form holds at, °C.
    pub(super) fn reference(&self) -> f64 {
        self.reference
    }

    /// What has melted in a box; `None` when the drink itself would freeze nearly solid.
    pub(super) fn within(&self, bounds: &Bounds, heat: Interval, ice: &Form) -> Option<Melted> {
        let capacity = self.capacity_most.range(bounds).high;
        // Wherever the freezing point is, between here and the reference no more melts than 1.12 times what there is.
        let kappa = 1.12 * capacity / (self.heat_of_fusion - 0.031);
        let from_heat = heat.times(1.0 / self.heat_of_fusion);
        let with_all = self.water.plus(ice, 1.0).range(bounds);
        let water_at_least = |water: &Form| {
            let with_melted = water.plus(&self.melted, 1.0).range(bounds).low;
            let with_melted = with_melted + from_heat.low + kappa * self.reference;
            water.plus(ice, 1.0).range(bounds).low.min(with_melted)
        };
        let freezing = Interval::new(
            freezing_point_of_particles(
                self.particles.range(bounds).high,
                water_at_least(&self.water),
            ),
            freezing_point_of_particles(self.particles.range(bounds).low, with_all.high),
        );
        let away = Interval::new(
            freezing.low - self.reference,
            freezing.high - self.reference,
        );
        let furthest = away.greatest_distance_from_zero();
        let fusion = HEAT_CAPACITY_OF_MELTING.high * furthest;
        // Ice that is left, wherever the freezing point lies: its heat capacity is less than that of the water that it becomes.
        let left = ice.plus(&self.melted, -1.0).range(bounds);
        let change = kappa * furthest;
        let left = Interval::new(
            left.low - from_heat.high - change,
            left.high - from_heat.low + change,
        );
        let most_capacity = if left.low >= 0.0 {
            capacity - HEAT_CAPACITY_OF_MELTING.low * left.low
        } else {
            1.12 * capacity
        };
        let least_capacity = self.capacity_least.range(bounds).low
            - HEAT_CAPACITY_OF_MELTING.high * left.high.max(0.0);
        let most = most_capacity / (self.heat_of_fusion - fusion);
        let least = (least_capacity / (self.heat_of_fusion + fusion)).max(0.0);
        let by = |kelvin: f64, towards_more: bool| {
            if (kelvin < 0.0) == towards_more {
                -most * kelvin
            } else {
                -least * kelvin
            }
        };
        let offset = Interval::new(
            from_heat.low + by(away.high, false),
            from_heat.high + by(away.low, true),
        );
        let solid = self.melted.plus(&self.water, 0.99).range(bounds).low + offset.low < 0.0;
        (!solid).then_some(Melted {
            offset,
            least_water: water_at_least(&self.mixed_water),
            freezing,
        })
    }
}

/// What has melted in a box.
#[derive(Clone, Copy, Debug)]
pub(super) struct Melted {
    /// Melted ice against its form, where ice is left, g.
    pub(super) offset: Interval,
    /// Least water of the solution, g.
    pub(super) least_water: f64,
    /// Freezing points, °C.
    pub(super) freezing: Interval,
}

/// `H − E(τ) + C·(T − τ)` with all ice melted, kJ: positive exactly where the common temperature is above `τ`, because the
/// enthalpy of everything rises with temperature.
pub(super) fn excess(lines: &Lines, over: Over, wall: Wall, celsius: f64) -> Form {
    let heat = lines.component(over, Component::Heat);
    let cooled = lines.enthalpy(over, celsius, IceAs::Melted);
    heat.plus(&cooled, -1.0)
        .plus_constant(wall.heat_capacity * (wall.celsius - celsius))
}

/// The wall of the shaker, and the first mixing in it.
#[derive(Clone, Debug)]
pub(super) struct Shaking {
    wall: Wall,
    /// Excess of heat over 0 °C with all ice melted, and with all of it frozen, kJ.
    melted: Form,
    frozen: Form,
    capacity_most: Form,
    capacity_least: Form,
    water: Form,
    particles: Form,
}

impl Shaking {
    pub(super) fn new(lines: &Lines, wall: Wall) -> Self {
        let heat = lines.component(Over::Mixed, Component::Heat);
        let cooled = lines.enthalpy(Over::Mixed, 0.0, IceAs::Frozen);
        let warm = wall.heat_capacity * wall.celsius;
        let capacity = |greatest: bool| {
            let heat = lines.heat_capacity(Over::Mixed, greatest);
            heat.plus_constant(wall.heat_capacity)
        };
        Self {
            wall,
            melted: excess(lines, Over::Mixed, wall, 0.0),
            frozen: heat.plus(&cooled, -1.0).plus_constant(warm),
            capacity_most: capacity(true),
            capacity_least: capacity(false),
            water: lines.component(Over::Mixed, Component::Water),
            particles: lines.component(Over::Mixed, Component::Particles),
        }
    }

    /// Whether ice may form of the drink's own water, or be left, in a box.
    pub(super) fn may_freeze(&self, bounds: &Bounds) -> bool {
        self.melted.range(bounds).low < 0.0
    }

    /// Whether ice may form of the drink's own water in a box: heat is short even with all ice frozen.
    pub(super) fn may_form_ice(&self, bounds: &Bounds) -> bool {
        self.frozen.range(bounds).low < 0.0
    }

    /// Heat that the wall gives to the drink, kJ, anywhere in a box.
    pub(super) fn heat(&self, bounds: &Bounds) -> Interval {
        let excess = self.melted.range(bounds);
        let warmest = excess.high.max(0.0) / self.capacity_least.range(bounds).low.max(1e-9);
        let coldest = if excess.low >= 0.0 {
            excess.low / self.capacity_most.range(bounds).high.max(1e-9)
        } else if self.frozen.range(bounds).low >= 0.0 {
            // There is heat enough for the ice at 0 °C: no more of it forms, so the drink has at least its own water.
            let water = self.water.range(bounds).low;
            freezing_point_of_particles(self.particles.range(bounds).high, water)
        } else {
            LOWEST_FREEZING_POINT_CELSIUS
        };
        let by = |celsius: f64| self.wall.heat_capacity * (self.wall.celsius - celsius);
        Interval::new(by(warmest), by(coldest))
    }
}
