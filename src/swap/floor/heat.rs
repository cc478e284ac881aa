//! The heat of a drink as linear forms: its excess over a temperature, the ice that melts, and what a shaker's wall gives.
//!
//! **Melted ice.** With ice left at a freezing point `τ` the heat balance gives the melted mass
//! `m(τ) = (H − E(τ) − C·τ) / (h_water(τ) − h_ice(τ))`, where `H` and `E` (everything as it was, cooled to `τ`) are linear in the
//! counts at fixed `τ`. So `m(τ*)` is a form, and by the mean value theorem `|m(τ) − m(τ*)| ≤ κ·|τ − τ*|` with
//! `κ = C_total / (h_water − h_ice)`: differentiating `m` gives the heat capacity of what there is over the heat of fusion. The freezing
//! point of the box lies between the law of dilute solutions with most particles in least water and the reverse.
//!
//! **Shaker.** Its wall leaves with the temperature of the first mixing, which is bounded once for the whole grid; its heat
//! widens the interval of the heat balance.

use crate::balance::published::freezing::{
    CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL, LOWEST_FREEZING_POINT_CELSIUS,
};
use crate::balance::published::water;
use crate::balance::{Component, Wall};

use super::drink::{IceAs, Lines, Over};
use super::form::{Bounds, Form, Interval};

/// What the mass of melted ice depends on.
#[derive(Clone, Debug)]
pub(super) struct Melting {
    /// Melted ice if ice is left at the reference freezing point, g.
    pub(super) melted: Form,
    /// The reference, °C.
    reference: f64,
    /// Heat that melts a gram at the reference, kJ.
    heat_of_fusion: f64,
    /// Water that the freezing point depends on, g.
    water: Form,
    particles_most: Form,
    particles_least: Form,
    /// Greatest heat capacity of all that takes part, kJ/K.
    capacity: Form,
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
        let (most, least) = (lines.particles(over, true), lines.particles(over, false));
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
        let reference = freezing(most.at(reference), liquid);
        let (melted, heat_of_fusion) = at(reference);
        let mut capacity = lines.heat_capacity(over, true);
        capacity.constant += wall.heat_capacity;
        Self {
            melted,
            reference,
            heat_of_fusion,
            water,
            particles_most: most,
            particles_least: least,
            capacity,
            strained,
        }
    }

    /// How far the melted ice can be from its form, g, and the least water of the box; `None` when the drink itself would
    /// freeze nearly solid.
    pub(super) fn offset(
        &self,
        bounds: &Bounds,
        heat: Interval,
        ice: &Form,
    ) -> Option<(Interval, f64)> {
        // On the way from one freezing point to another no more melts than 1.12 times what is there; see κ above.
        let kappa = 1.12 * self.capacity.range(bounds).high / (self.heat_of_fusion - 0.031);
        let from_heat = heat.times(1.0 / self.heat_of_fusion);
        let with_all = self.water.plus(ice, 1.0).range(bounds);
        let with_melted = self.water.plus(&self.melted, 1.0).range(bounds).low
            + from_heat.low
            + kappa * self.reference;
        let least_water = with_all.low.min(with_melted);
        let lowest = freezing(self.particles_most.range(bounds).high, least_water);
        let highest = freezing(self.particles_least.range(bounds).low, with_all.high);
        let offset = Interval::new(
            from_heat.low - kappa * (highest - self.reference).max(0.0),
            from_heat.high + kappa * (self.reference - lowest).max(0.0),
        );
        let solid = self.melted.plus(&self.water, 0.99).range(bounds).low + offset.low < 0.0;
        (!solid).then_some((offset, least_water))
    }
}

fn freezing(particles: f64, water: f64) -> f64 {
    if water <= 0.0 {
        return LOWEST_FREEZING_POINT_CELSIUS;
    }
    let depression = CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL * particles.max(0.0) / water * 1000.0;
    (-depression).max(LOWEST_FREEZING_POINT_CELSIUS)
}

/// `H − E(τ) + C·(T − τ)` with all ice melted, kJ: positive exactly where the common temperature is above `τ`, because the
/// enthalpy of everything rises with temperature.
pub(super) fn excess(lines: &Lines, over: Over, wall: Wall, celsius: f64) -> Form {
    let heat = lines.component(over, Component::Heat);
    let cooled = lines.enthalpy(over, celsius, IceAs::Melted);
    heat.plus(&cooled, -1.0)
        .plus_constant(wall.heat_capacity * (wall.celsius - celsius))
}

/// The same for the first mixing, in the shaker.
pub(super) fn excess_of_shaking(lines: &Lines, shaker: Wall, celsius: f64) -> Form {
    excess(lines, Over::Mixed, shaker, celsius)
}

/// Heat that the shaker's wall gives to the drink, kJ, anywhere on the grid.
pub(super) fn shaker_heat(
    lines: &Lines,
    shaker: Option<Wall>,
    root: &Bounds,
    has_ice: bool,
) -> Interval {
    let Some(wall) = shaker else {
        return Interval::ZERO;
    };
    let (mut coldest, mut warmest) = (-60.0_f64, 130.0_f64);
    for step in -4_i32..=13 {
        let celsius = f64::from(step) * 10.0;
        let range = excess_of_shaking(lines, wall, celsius).range(root);
        if range.low >= 0.0 {
            coldest = celsius;
        }
        if range.high <= 0.0 {
            warmest = warmest.min(celsius.max(0.0));
        }
    }
    if has_ice || coldest < 0.0 {
        coldest = LOWEST_FREEZING_POINT_CELSIUS;
    }
    Interval::new(
        wall.heat_capacity * (wall.celsius - warmest),
        wall.heat_capacity * (wall.celsius - coldest),
    )
}
