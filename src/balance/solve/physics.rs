//! Heat and volume of a mix: enthalpy at a temperature, the temperature at which two sums meet, freezing, density.
//!
//! Reference state: liquid water, dissolved sugars and every other solid at 0 °C have enthalpy 0. Ice enters with its
//! own specific heat and its heat of fusion, dry crystals with their heat of solution. Because every component has its
//! own enthalpy per gram, the enthalpy of a drink is the sum over its components: heat of mixing beyond that of dissolving
//! crystals is left out.

use crate::balance::mix::{Component, Mix};
use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::freezing::{
    LOWEST_FREEZING_POINT_CELSIUS, freezing_point_of_particles, liquid_water_g,
};
use crate::balance::published::{sugar_solution, water};

/// Range in which a temperature is searched, °C.
const TEMPERATURE_RANGE: (f64, f64) = (-60.0, 130.0);

/// Newton stops when a step is smaller than this, K.
const TEMPERATURE_TOLERANCE: f64 = 1e-9;

/// Newton stops when a step is smaller than this, g of ice.
const ICE_TOLERANCE: f64 = 1e-9;

/// Heat that may be left over when all water is ice, kJ; more means that everything is frozen and colder still.
const FROZEN_THROUGH_KJ: f64 = 1e-6;

/// The masses that hold heat and take room, g; ice apart.
#[derive(Clone, Copy, Debug)]
struct Substances {
    water: f64,
    sugar: f64,
    carbohydrate: f64,
    protein: f64,
    fat: f64,
    fibre: f64,
    mineral: f64,
}

impl Substances {
    /// Reads the masses of a mix; `melted` grams of its ice count as water.
    fn of(mix: &Mix, melted: f64) -> Self {
        let sugar = mix.get(Component::Sugars) + mix.get(Component::Polyols);
        let starch = (mix.get(Component::Carbohydrate) - sugar).max(0.0);
        Self {
            water: mix.get(Component::Water) + melted,
            sugar,
            // Acid and tea solids, and what nobody states, are taken for carbohydrate: their own figures are within 20 %.
            carbohydrate: starch
                + mix.get(Component::Acid)
                + mix.get(Component::TeaSolids)
                + mix.undeclared_solids(),
            protein: mix.get(Component::Protein),
            fat: mix.get(Component::Fat),
            fibre: mix.get(Component::Fibre),
            mineral: mix.get(Component::Salt),
        }
    }

    fn foods(&self) -> [(FoodComponent, f64); 5] {
        [
            (FoodComponent::Carbohydrate, self.carbohydrate),
            (FoodComponent::Protein, self.protein),
            (FoodComponent::Fat, self.fat),
            (FoodComponent::Fibre, self.fibre),
            (FoodComponent::Ash, self.mineral),
        ]
    }

    /// Enthalpy at a temperature, kJ.
    fn enthalpy(&self, celsius: f64) -> f64 {
        let foods: f64 = self
            .foods()
            .iter()
            .map(|(food, grams)| grams * food.enthalpy_kj_per_kg(celsius))
            .sum();
        (self.water * water::enthalpy_kj_per_kg(celsius)
            + self.sugar * sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(celsius)
            + foods)
            / 1000.0
    }

    /// Heat capacity at a temperature, kJ/K.
    fn heat_capacity(&self, celsius: f64) -> f64 {
        let foods: f64 = self
            .foods()
            .iter()
            .map(|(food, grams)| grams * food.specific_heat_kj_per_kg_k(celsius))
            .sum();
        (self.water * water::specific_heat_kj_per_kg_k(celsius)
            + self.sugar * sugar_solution::dissolved_sugar_specific_heat_kj_per_kg_k(celsius)
            + foods)
            / 1000.0
    }

    /// Volume at a temperature, ml: sugar with all the water by the sugar-solution relation, the rest beside it.
    fn volume(&self, celsius: f64) -> f64 {
        let solution = self.water + self.sugar;
        let foods: f64 = self
            .foods()
            .iter()
            .map(|(food, grams)| grams / food.density_kg_per_m3(celsius))
            .sum();
        let solution = if solution > 0.0 {
            solution / sugar_solution::density_kg_per_m3(self.sugar / solution, celsius)
        } else {
            0.0
        };
        (solution + foods) * 1000.0
    }
}

/// Enthalpy of a mix at a temperature, kJ, with all its ice frozen.
pub fn enthalpy(mix: &Mix, celsius: f64) -> f64 {
    Substances::of(mix, 0.0).enthalpy(celsius)
        + mix.get(Component::Ice) * water::ice_enthalpy_kj_per_kg(celsius) / 1000.0
}

/// Relative standard uncertainty of the volume that the components of a liquid give.
///
/// The parts of milk have other densities in dairy science than in Choi & Okos and in sugar solutions: fat 918, protein 1400, lactose
/// 1780 and the rest 1850 kg/m³ at 20 °C (Walstra, Wouters & Geurts, Dairy Science and Technology 2006; values from memory). By these,
/// milk and cream are 0.3 to 0.5 % denser.
pub(in crate::balance) const MODEL_VOLUME_UNCERTAINTY: f64 = 0.004;

/// What a gram of fat may take up less in a cold drink than as oil, as standard uncertainty, ml: fat shrinks by some 0.09 ml/g as it
/// sets, and half of milk fat is set in a refrigerator (values from memory). The end of a rectangular distribution from nothing.
const SET_FAT_ML_PER_G: f64 = 0.026;

/// The temperature below which half of milk fat is set, °C, and that above which all of it is liquid (values from memory).
const FAT_MELTS_CELSIUS: (f64, f64) = (10.0, 37.0);

/// Relative standard uncertainty of the volume that a liquid takes up at a temperature by its components.
pub(in crate::balance) fn volume_uncertainty(mix: &Mix, celsius: f64) -> f64 {
    let (half_set, melted) = FAT_MELTS_CELSIUS;
    let set = ((melted - celsius) / (melted - half_set)).clamp(0.0, 1.0);
    let volume = liquid_volume(mix, 0.0, celsius).max(1e-9);
    let of_fat = SET_FAT_ML_PER_G * set * mix.get(Component::Fat) / volume;
    MODEL_VOLUME_UNCERTAINTY.hypot(of_fat)
}

/// Volume of the liquid of a mix at a temperature, ml, when so many grams of its ice have melted.
pub fn liquid_volume(mix: &Mix, melted: f64, celsius: f64) -> f64 {
    Substances::of(mix, melted).volume(celsius)
}

/// Volume that grams of ice displace at a temperature, ml.
pub fn ice_volume(grams: f64, celsius: f64) -> f64 {
    grams / water::ice_density_kg_per_m3(celsius.min(0.0)) * 1000.0
}

/// How the freezing point departs from the law of dilute solutions; not at all, unless its uncertainty is tried out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freezing {
    /// Factor on how far dissolved particles lower it.
    pub factor: f64,
    /// By how much undeclared minerals lower it further, K.
    pub kelvin: f64,
}

impl Default for Freezing {
    fn default() -> Self {
        Self {
            factor: 1.0,
            kelvin: 0.0,
        }
    }
}

/// Freezing point of the liquid of a mix, °C, when so many grams of its ice have melted: 1.86 K·kg/mol times the molality
/// of dissolved sugars, polyols, acid, and salt twice for its ions.
pub fn freezing_point(mix: &Mix, melted: f64, freezing: Freezing) -> f64 {
    let by_law = freezing_point_of_particles(
        freezing.factor * mix.get(Component::Particles),
        mix.get(Component::Water) + melted,
    );
    (by_law - freezing.kelvin).max(LOWEST_FREEZING_POINT_CELSIUS)
}

/// A vessel or anything else of constant heat capacity that takes part in the exchange.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Wall {
    /// Heat capacity, kJ/K.
    pub heat_capacity: f64,
    /// Temperature before, °C.
    pub celsius: f64,
}

/// What a mix and its walls come to when no heat leaves them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Equilibrium {
    /// The common temperature, °C.
    pub celsius: f64,
    /// Ice that is left, g; more than there was when the drink itself begins to freeze.
    pub ice_left: f64,
}

/// Solves the enthalpy balance `Σ mᵢ hᵢ(Tᵢ) + C·T_wall = H(T) + C·T` for the common temperature.
///
/// Without ice H is monotone and a bracketed Newton iteration finds T to 1e-9 K. When everything would come out colder
/// than its freezing point, ice is left: then T is the freezing point of what has melted, and the mass of ice follows from
/// the same balance in the same way. An empty mix has the temperature of the wall.
pub fn equilibrium(mix: &Mix, wall: Wall, freezing: Freezing) -> Equilibrium {
    if mix.get(Component::Mass) <= 0.0 {
        return Equilibrium {
            celsius: wall.celsius,
            ice_left: 0.0,
        };
    }
    let heat = mix.get(Component::Heat) + wall.heat_capacity * wall.celsius;
    let ice = mix.get(Component::Ice);
    let all_melted = Substances::of(mix, ice);
    // What is melted holds more heat the warmer it is: there is ice when it would hold too much where it freezes.
    let freezes = freezing_point(mix, ice, freezing);
    let too_much = all_melted.enthalpy(freezes) + wall.heat_capacity * freezes - heat;
    if too_much <= 0.0 {
        return Equilibrium {
            celsius: temperature(&all_melted, wall.heat_capacity, heat),
            ice_left: 0.0,
        };
    }
    part_frozen(mix, wall.heat_capacity, heat, freezing)
}

/// The temperature of the liquid while so many grams of ice have not melted yet, °C: ice at its melting point beside a liquid that
/// is warmer, with the heat of both conserved.
pub(super) fn temperature_beside_ice(mix: &Mix, wall: Wall, ice_left: f64) -> f64 {
    let heat = mix.get(Component::Heat) + wall.heat_capacity * wall.celsius
        - ice_left * water::ice_enthalpy_kj_per_kg(0.0) / 1000.0;
    let liquid = Substances::of(mix, mix.get(Component::Ice) - ice_left);
    temperature(&liquid, wall.heat_capacity, heat)
}

/// A mix at a temperature: below its freezing point part of its water is ice, as much as leaves a solution that freezes there.
pub(in crate::balance) fn frozen_at(mix: &Mix, celsius: f64) -> Mix {
    let water = mix.get(Component::Water);
    if celsius >= freezing_point(mix, 0.0, Freezing::default()) {
        return *mix;
    }
    let liquid = liquid_water_g(mix.get(Component::Particles), celsius).min(water);
    let mut frozen = *mix;
    frozen.set(Component::Water, liquid);
    frozen.set(Component::Ice, mix.get(Component::Ice) + water - liquid);
    frozen
}

fn temperature(substances: &Substances, wall: f64, heat: f64) -> f64 {
    let (mut low, mut high) = TEMPERATURE_RANGE;
    let mut celsius = 20.0_f64;
    for _ in 0..80 {
        let excess = substances.enthalpy(celsius) + wall * celsius - heat;
        if excess > 0.0 {
            high = celsius;
        } else {
            low = celsius;
        }
        let newton = celsius - excess / (substances.heat_capacity(celsius) + wall);
        let next = if newton > low && newton < high {
            newton
        } else {
            f64::midpoint(low, high)
        };
        let step = (next - celsius).abs();
        celsius = next;
        if step < TEMPERATURE_TOLERANCE {
            break;
        }
    }
    celsius
}

/// Ice beside what has melted: the mass of ice by a Newton iteration in a bracket.
fn part_frozen(mix: &Mix, wall: f64, heat: f64, freezing: Freezing) -> Equilibrium {
    let ice = mix.get(Component::Ice);
    let water = mix.get(Component::Water) + ice;
    // The temperature, how much more heat there would be than there is, kJ, and how that grows with the ice, kJ/g.
    let excess = |left: f64| {
        let celsius = freezing_point(mix, ice - left, freezing);
        let liquid = Substances::of(mix, ice - left);
        let of_ice = water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        let heat_capacity = liquid.heat_capacity(celsius)
            + left * water::ice_specific_heat_kj_per_kg_k(celsius) / 1000.0
            + wall;
        // The particles stay in less and less water.
        let colder = if celsius > LOWEST_FREEZING_POINT_CELSIUS {
            (celsius + freezing.kelvin) / (water - left)
        } else {
            0.0
        };
        let slope =
            of_ice - water::enthalpy_kj_per_kg(celsius) / 1000.0 + heat_capacity * colder;
        let more = liquid.enthalpy(celsius) + left * of_ice + wall * celsius - heat;
        (celsius, more, slope)
    };
    // More ice holds less heat, so the excess falls as `left` grows.
    let (coldest, left_over, _) = excess(water);
    if left_over > FROZEN_THROUGH_KJ {
        return frozen_through(mix, wall, heat, coldest);
    }
    let (mut least, mut most) = (0.0, water);
    let mut left = ice.min(water) / 2.0;
    for _ in 0..80 {
        let (celsius, more, slope) = excess(left);
        if more > 0.0 {
            least = left;
        } else {
            most = left;
        }
        let newton = left - more / slope;
        let next = if newton > least && newton < most {
            newton
        } else {
            f64::midpoint(least, most)
        };
        let step = (next - left).abs();
        left = next;
        if step < ICE_TOLERANCE {
            // The temperature moves with the last step by less than a step is worth.
            return Equilibrium {
                celsius,
                ice_left: left,
            };
        }
    }
    Equilibrium {
        celsius: freezing_point(mix, ice - left, freezing),
        ice_left: left,
    }
}

/// A cup of ice that is colder than any liquid in it could be: all water is frozen, and the temperature follows.
fn frozen_through(mix: &Mix, wall: f64, heat: f64, at_most: f64) -> Equilibrium {
    let ice_left = mix.get(Component::Water) + mix.get(Component::Ice);
    let solids = Substances {
        water: 0.0,
        ..Substances::of(mix, 0.0)
    };
    let excess = |celsius: f64| {
        let frozen = ice_left * water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        solids.enthalpy(celsius) + frozen + wall * celsius - heat
    };
    let (mut low, mut high) = (TEMPERATURE_RANGE.0, at_most);
    for _ in 0..60 {
        let celsius = f64::midpoint(low, high);
        if excess(celsius) > 0.0 {
            high = celsius;
        } else {
            low = celsius;
        }
    }
    Equilibrium {
        celsius: f64::midpoint(low, high),
        ice_left,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::published::freezing::Solute;

    /// So many grams of water at a temperature.
    fn water_at(grams: f64, celsius: f64) -> Mix {
        let mut mix = Mix::EMPTY;
        mix.set(Component::Mass, grams);
        mix.set(Component::Water, grams);
        mix.set(Component::Heat, enthalpy(&mix, celsius));
        mix
    }

    fn ice_at(grams: f64, celsius: f64) -> Mix {
        let mut mix = Mix::EMPTY;
        mix.set(Component::Mass, grams);
        mix.set(Component::Ice, grams);
        mix.set(Component::Heat, enthalpy(&mix, celsius));
        mix
    }

    fn together(parts: &[Mix]) -> Equilibrium {
        let mut sum = Mix::EMPTY;
        for part in parts {
            sum += part;
        }
        equilibrium(&sum, Wall::default(), Freezing::default())
    }

    #[test]
    fn waters_meet_where_iapws_says() {
        // IAPWS-95 enthalpies, worked by hand: 200 g at 95 °C (398.1017) + 100 g at 5 °C (21.1200) → 272.4411 kJ/kg, 65.06 °C;
        // 150 g at 90 (377.0635) + 150 g at 20 (84.0073) → 230.5354 kJ/kg, 55.05 °C.
        for (parts, expected) in [
            (vec![water_at(200.0, 95.0), water_at(100.0, 5.0)], 65.06),
            (vec![water_at(150.0, 90.0), water_at(150.0, 20.0)], 55.05),
        ] {
            let found = together(&parts).celsius;
            assert!((found - expected).abs() < 0.01, "{found}");
        }
    }

    #[test]
    fn ice_that_does_not_all_melt_leaves_the_freezing_point() {
        // IAPWS-95 and IAPWS-06: 300 g at 25 °C with 100 g of ice at 0 °C → 0.0 °C and 5.7 g left
        // (104.86 kJ/kg × 300 g = 31.46 kJ; /333.55 = 94.3 g melted).
        let found = together(&[water_at(300.0, 25.0), ice_at(100.0, 0.0)]);
        assert!(found.celsius.abs() < 1e-6, "{found:?}");
        assert!((found.ice_left - 5.7).abs() < 0.05, "{found:?}");
    }

    #[test]
    fn salt_lowers_the_freezing_point_twice() {
        // 5.844 g of NaCl in 1 kg of water: 0.1 mol × 2 ions × 1.86 = 0.372 K.
        let mut brine = water_at(1000.0, 5.0);
        brine.set(Component::Salt, 5.844);
        brine.set(Component::Particles, Solute::Salt.particles_mmol(5.844));
        let found = freezing_point(&brine, 0.0, Freezing::default());
        assert!((found + 0.372).abs() < 1e-3);
    }

    #[test]
    fn nothing_in_a_cup_has_the_temperature_of_the_cup() {
        let wall = Wall {
            heat_capacity: 0.3,
            celsius: 21.0,
        };
        assert_eq!(
            equilibrium(&Mix::EMPTY, wall, Freezing::default()),
            Equilibrium {
                celsius: 21.0,
                ice_left: 0.0
            }
        );
    }
}
