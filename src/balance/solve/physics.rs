//! Heat and volume of a mix: enthalpy at a temperature, the temperature at which two sums meet, freezing, density.
//!
//! Reference state: liquid water, dissolved sugars and every other solid at 0 °C have enthalpy 0. Ice enters with its
//! own specific heat and its heat of fusion, dry crystals with their heat of solution. Because every component has its
//! own enthalpy per gram, the enthalpy of a drink is the sum over its components: heat of mixing beyond that of dissolving
//! crystals is left out.

use crate::balance::mix::{Component, Mix};
use crate::balance::number::{Number, crossing};
use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::freezing::{
    LOWEST_FREEZING_POINT_CELSIUS, freezing_point_of_particles, liquid_water_g,
};
use crate::balance::published::{sugar_solution, water};

/// Range in which a temperature is searched, °C.
const TEMPERATURE_RANGE: (f64, f64) = (-60.0, 130.0);

/// A bracket is narrow enough below this, K.
const TEMPERATURE_TOLERANCE: f64 = 1e-9;

/// Newton stops behind a step that is smaller than this, K: specific heats change by less than 0.01 of themselves in a kelvin, so
/// what is left is below 1e-10 K.
const LAST_STEP_KELVIN: f64 = 1e-4;

/// A bracket is narrow enough below this, g of ice.
const ICE_TOLERANCE: f64 = 1e-9;

/// Newton stops behind a step that is smaller than this, g of ice: the freezing point of what is liquid bends so little that what is
/// left is below 1e-9 g, unless there is less than a gram of it.
const LAST_STEP_GRAMS: f64 = 1e-5;

/// Heat that may be left over when all water is ice, kJ; more means that everything is frozen and colder still.
const FROZEN_THROUGH_KJ: f64 = 1e-6;

/// The masses that hold heat and take room, g; ice apart.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Substances<N> {
    water: N,
    sugar: N,
    carbohydrate: N,
    protein: N,
    fat: N,
    fibre: N,
    mineral: N,
}

impl<N: Number> Substances<N> {
    /// Nothing, which nothing moves.
    const NONE: Self = Self {
        water: N::ZERO,
        sugar: N::ZERO,
        carbohydrate: N::ZERO,
        protein: N::ZERO,
        fat: N::ZERO,
        fibre: N::ZERO,
        mineral: N::ZERO,
    };

    /// Reads the masses of a mix; `melted` grams of its ice count as water.
    fn of(mix: &Mix<N>, melted: N) -> Self {
        let sugar = mix.get(Component::Sugars) + mix.get(Component::Polyols);
        let starch = (mix.get(Component::Carbohydrate) - sugar).max(N::ZERO);
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

    /// The plain numbers.
    fn plain(&self) -> Substances<f64> {
        Substances {
            water: self.water.value(),
            sugar: self.sugar.value(),
            carbohydrate: self.carbohydrate.value(),
            protein: self.protein.value(),
            fat: self.fat.value(),
            fibre: self.fibre.value(),
            mineral: self.mineral.value(),
        }
    }

    fn foods(&self) -> [(FoodComponent, N); 5] {
        [
            (FoodComponent::Carbohydrate, self.carbohydrate),
            (FoodComponent::Protein, self.protein),
            (FoodComponent::Fat, self.fat),
            (FoodComponent::Fibre, self.fibre),
            (FoodComponent::Ash, self.mineral),
        ]
    }

    /// Enthalpy at a temperature, kJ.
    fn enthalpy(&self, celsius: N) -> N {
        let foods = self.foods().iter().fold(N::ZERO, |sum, (food, grams)| {
            sum + *grams * food.enthalpy_kj_per_kg(celsius)
        });
        (self.water * water::enthalpy_kj_per_kg(celsius)
            + self.sugar * sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(celsius)
            + foods)
            / 1000.0
    }

    /// Volume at a temperature, ml: sugar with all the water by the sugar-solution relation, the rest beside it.
    fn volume(&self, celsius: N) -> N {
        if *self == Self::NONE {
            return N::ZERO;
        }
        let solution = self.water + self.sugar;
        let foods = self.foods().iter().fold(N::ZERO, |sum, (food, grams)| {
            sum + *grams / food.density_kg_per_m3(celsius)
        });
        let solution = if solution.value() > 0.0 {
            solution / sugar_solution::density_kg_per_m3(self.sugar / solution, celsius)
        } else {
            solution.bend_at_zero()
        };
        (solution + foods) * 1000.0
    }
}

/// Enthalpy of a mix at a temperature, kJ, with all its ice frozen.
pub fn enthalpy<N: Number>(mix: &Mix<N>, celsius: N) -> N {
    Substances::of(mix, N::ZERO).enthalpy(celsius)
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
pub fn liquid_volume<N: Number>(mix: &Mix<N>, melted: N, celsius: N) -> N {
    Substances::of(mix, melted).volume(celsius)
}

/// Volume that grams of ice displace at a temperature, ml.
pub fn ice_volume<N: Number>(grams: N, celsius: N) -> N {
    // Above 0 °C the density is that at 0: where there is ice to speak of, it is no warmer.
    grams / water::ice_density_kg_per_m3(celsius) * 1000.0
}

/// How the freezing point departs from the law of dilute solutions; not at all, unless its uncertainty is tried out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freezing<N = f64> {
    /// Factor on how far dissolved particles lower it.
    pub factor: N,
    /// By how much undeclared minerals lower it further, K.
    pub kelvin: N,
}

impl<N: Number> Default for Freezing<N> {
    fn default() -> Self {
        Self {
            factor: N::from(1.0),
            kelvin: N::ZERO,
        }
    }
}

/// Freezing point of the liquid of a mix, °C, when so many grams of its ice have melted: 1.86 K·kg/mol times the molality
/// of dissolved sugars, polyols, acid, and salt twice for its ions.
pub fn freezing_point<N: Number>(mix: &Mix<N>, melted: N, freezing: Freezing<N>) -> N {
    let by_law = freezing_point_of_particles(
        freezing.factor * mix.get(Component::Particles),
        mix.get(Component::Water) + melted,
    );
    (by_law - freezing.kelvin).max(N::from(LOWEST_FREEZING_POINT_CELSIUS))
}

/// A vessel or anything else of constant heat capacity that takes part in the exchange.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Wall<N = f64> {
    /// Heat capacity, kJ/K.
    pub heat_capacity: N,
    /// Temperature before, °C.
    pub celsius: N,
}

/// What a mix and its walls come to when no heat leaves them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Equilibrium<N = f64> {
    /// The common temperature, °C.
    pub celsius: N,
    /// Ice that is left, g; more than there was when the drink itself begins to freeze.
    pub ice_left: N,
}

/// Solves the enthalpy balance `Σ mᵢ hᵢ(Tᵢ) + C·T_wall = H(T) + C·T` for the common temperature.
///
/// Without ice H is monotone and a bracketed Newton iteration finds T to 1e-9 K. When everything would come out colder
/// than its freezing point, ice is left: then T is the freezing point of what has melted, and the mass of ice follows from
/// the same balance in the same way. An empty mix has the temperature of the wall.
pub fn equilibrium<N: Number>(
    mix: &Mix<N>,
    wall: Wall<N>,
    freezing: Freezing<N>,
) -> Equilibrium<N> {
    if mix.get(Component::Mass).value() <= 0.0 {
        return Equilibrium {
            celsius: wall.celsius,
            ice_left: N::ZERO,
        };
    }
    let heat = mix.get(Component::Heat) + wall.heat_capacity * wall.celsius;
    let ice = mix.get(Component::Ice);
    let all_melted = Substances::of(mix, ice);
    // What is melted holds more heat the warmer it is: there is ice when it would hold too much where it freezes.
    let freezes = freezing_point(mix, ice, freezing);
    let too_much = all_melted.enthalpy(freezes) + wall.heat_capacity * freezes - heat;
    let bend = too_much.bend_at_zero();
    let found = if too_much.value() <= 0.0 {
        Equilibrium {
            celsius: temperature(&all_melted, wall.heat_capacity, heat),
            ice_left: N::ZERO,
        }
    } else {
        part_frozen(mix, wall.heat_capacity, heat, freezing)
    };
    Equilibrium {
        celsius: found.celsius + bend,
        ice_left: found.ice_left + bend,
    }
}

/// The temperature of the liquid while so many grams of ice have not melted yet, °C: ice at its melting point beside a liquid that
/// is warmer, with the heat of both conserved.
pub(super) fn temperature_beside_ice<N: Number>(mix: &Mix<N>, wall: Wall<N>, ice_left: N) -> N {
    let heat = mix.get(Component::Heat) + wall.heat_capacity * wall.celsius
        - ice_left * (water::ice_enthalpy_kj_per_kg(0.0) / 1000.0);
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

impl Substances<f64> {
    /// Heat capacity at a temperature, kJ/K: the slope of the enthalpy.
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
}

fn temperature<N: Number>(substances: &Substances<N>, wall: N, heat: N) -> N {
    let plain = substances.plain();
    let celsius = plain_temperature(&plain, wall.value(), heat.value());
    N::root(
        celsius,
        |celsius| substances.enthalpy(celsius) + wall * celsius - heat,
        |celsius| plain.heat_capacity(celsius) + wall.value(),
    )
}

fn plain_temperature(substances: &Substances<f64>, wall: f64, heat: f64) -> f64 {
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
        let is_newton = newton > low && newton < high;
        let (next, close) = if is_newton {
            (newton, LAST_STEP_KELVIN)
        } else {
            (f64::midpoint(low, high), TEMPERATURE_TOLERANCE)
        };
        let step = (next - celsius).abs();
        celsius = next;
        if step < close {
            break;
        }
    }
    celsius
}

/// Ice beside what has melted.
fn part_frozen<N: Number>(mix: &Mix<N>, wall: N, heat: N, freezing: Freezing<N>) -> Equilibrium<N> {
    let ice = mix.get(Component::Ice);
    let celsius_with = |left: N| freezing_point(mix, ice - left, freezing);
    let excess = |left: N| {
        let celsius = celsius_with(left);
        let of_ice = water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        Substances::of(mix, ice - left).enthalpy(celsius) + left * of_ice + wall * celsius - heat
    };
    let plain = Frozen {
        mix: &Mix {
            of: mix.of.map(N::value),
            unknown: mix.unknown,
        },
        wall: wall.value(),
        heat: heat.value(),
        freezing: Freezing {
            factor: freezing.factor.value(),
            kelvin: freezing.kelvin.value(),
        },
    };
    let water = mix.get(Component::Water) + ice;
    // More ice holds less heat; what is left over when all is ice says whether it is colder still.
    let (coldest, left_over, _) = plain.excess(water.value());
    if left_over > FROZEN_THROUGH_KJ {
        return frozen_through(mix, wall, heat, coldest);
    }
    let left = N::root(plain.ice_left(), excess, |left| plain.excess(left).2);
    Equilibrium {
        celsius: celsius_with(left),
        ice_left: left,
    }
}

/// A mix part of which is frozen, in plain numbers.
struct Frozen<'mix> {
    mix: &'mix Mix,
    wall: f64,
    heat: f64,
    freezing: Freezing,
}

impl Frozen<'_> {
    /// The temperature with so much ice, how much more heat there would be than there is, kJ, and how that grows with the ice, kJ/g.
    fn excess(&self, left: f64) -> (f64, f64, f64) {
        let ice = self.mix.get(Component::Ice);
        let water = self.mix.get(Component::Water) + ice;
        let celsius = freezing_point(self.mix, ice - left, self.freezing);
        let liquid = Substances::of(self.mix, ice - left);
        let of_ice = water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        let heat_capacity = liquid.heat_capacity(celsius)
            + left * water::ice_specific_heat_kj_per_kg_k(celsius) / 1000.0
            + self.wall;
        // The particles stay in less and less water.
        let colder = if celsius > LOWEST_FREEZING_POINT_CELSIUS {
            (celsius + self.freezing.kelvin) / (water - left)
        } else {
            0.0
        };
        let slope = of_ice - water::enthalpy_kj_per_kg(celsius) / 1000.0 + heat_capacity * colder;
        let more = liquid.enthalpy(celsius) + left * of_ice + self.wall * celsius - self.heat;
        (celsius, more, slope)
    }

    /// The mass of ice by a Newton iteration in a bracket, g.
    fn ice_left(&self) -> f64 {
        let ice = self.mix.get(Component::Ice);
        let water = self.mix.get(Component::Water) + ice;
        let (mut least, mut most) = (0.0, water);
        let mut left = ice.min(water) / 2.0;
        let mut at = self.excess(left);
        for _ in 0..80 {
            // The excess falls as the ice grows.
            let (_, more, slope) = at;
            if more > 0.0 {
                least = left;
            } else {
                most = left;
            }
            let newton = left - more / slope;
            let is_newton = newton > least && newton < most;
            let (next, close) = if is_newton {
                (newton, LAST_STEP_GRAMS)
            } else {
                (f64::midpoint(least, most), ICE_TOLERANCE)
            };
            let step = (next - left).abs();
            left = next;
            if step < close {
                break;
            }
            at = self.excess(left);
        }
        left
    }
}

/// A cup of ice that is colder than any liquid in it could be: all water is frozen, and the temperature follows.
fn frozen_through<N: Number>(mix: &Mix<N>, wall: N, heat: N, at_most: f64) -> Equilibrium<N> {
    let ice_left = mix.get(Component::Water) + mix.get(Component::Ice);
    let solids = Substances {
        water: N::ZERO,
        ..Substances::of(mix, N::ZERO)
    };
    let plain = solids.plain();
    let (plain_wall, plain_heat, plain_ice) = (wall.value(), heat.value(), ice_left.value());
    let excess = |celsius: f64| {
        let frozen = plain_ice * water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        plain.enthalpy(celsius) + frozen + plain_wall * celsius - plain_heat
    };
    let celsius = crossing((TEMPERATURE_RANGE.0, at_most), 0.0, excess);
    let slope = |celsius: f64| {
        let of_ice = water::ice_specific_heat_kj_per_kg_k(celsius) / 1000.0;
        plain.heat_capacity(celsius) + plain_ice * of_ice + plain_wall
    };
    let left_over = |celsius: N| {
        let frozen = ice_left * water::ice_enthalpy_kj_per_kg(celsius) / 1000.0;
        solids.enthalpy(celsius) + frozen + wall * celsius - heat
    };
    Equilibrium {
        celsius: N::root(celsius, left_over, slope),
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
