//! The drink as linear forms in the counts of its lines.
//!
//! Masses, heat and cost add up, so each is a form exactly. Two parts of the engine have a kink: carbohydrate that is not
//! sugar, and solids that nobody states, are never taken below zero for the whole drink. Where a single line is below zero
//! (a label's rounding) the form takes it with its sign and `slack` bounds what the kink can add: for any numbers
//! `Σ vᵢ ≤ max(0, Σ vᵢ) ≤ Σ vᵢ + Σ max(0, −vᵢ)`.

use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::{sugar_solution, water};
use crate::balance::{Component, Mix, Prepared, PreparedLine};
use crate::book::Stage;

use super::form::Form;

/// Which stages a form is taken over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Over {
    /// What dissolves into the drink.
    Mixed,
    /// What exchanges heat in the cup: the drink and its toppings.
    InCup,
    /// Toppings alone.
    Toppings,
    /// What floats on top.
    OnTop,
    /// Everything.
    Whole,
}

impl Over {
    fn takes(self, stage: Stage) -> bool {
        match self {
            Self::Mixed => matches!(stage, Stage::Mixed | Stage::Steeped),
            Self::InCup => stage != Stage::OnTop,
            Self::Toppings => stage == Stage::Topping,
            Self::OnTop => stage == Stage::OnTop,
            Self::Whole => true,
        }
    }
}

/// The lines of a question: those that stay, one step of each that may move, and one unit of the amount that fills.
#[derive(Clone, Debug)]
pub(super) struct Lines {
    parts: Vec<(Part, Stage, Mix)>,
    /// Lines that may move.
    pub(super) dimensions: usize,
}

#[derive(Clone, Copy, Debug)]
enum Part {
    Fixed,
    Place(usize),
}

impl Lines {
    /// `dimensions` gives the line and the step of each that may move; `filling` is the line that fills.
    pub(super) fn new(
        prepared: &Prepared,
        dimensions: &[(usize, f64)],
        filling: Option<usize>,
    ) -> Self {
        let part = |(at, line): (usize, &PreparedLine)| {
            // Loose ice melts into the drink wherever it lies.
            let stage = if line.is_ice {
                Stage::Mixed
            } else {
                line.stage
            };
            if let Some(place) = dimensions.iter().position(|(line, _)| *line == at) {
                return (
                    Part::Place(place),
                    stage,
                    line.per_unit.times(dimensions[place].1),
                );
            }
            if filling == Some(at) {
                return (Part::Place(dimensions.len()), stage, line.per_unit);
            }
            // A second amount that fills takes nothing.
            let count = if line.fill.is_some() { 0.0 } else { line.count };
            (Part::Fixed, stage, line.per_unit.times(count))
        };
        Self {
            parts: prepared.lines.iter().enumerate().map(part).collect(),
            dimensions: dimensions.len(),
        }
    }

    /// The form of anything that adds up.
    pub(super) fn form(&self, over: Over, of: impl Fn(&Mix) -> f64) -> Form {
        let mut form = Form::ZERO;
        for (part, stage, mix) in &self.parts {
            if !over.takes(*stage) {
                continue;
            }
            match part {
                Part::Fixed => form.constant += of(mix),
                Part::Place(place) => form.per[*place] += of(mix),
            }
        }
        form
    }

    pub(super) fn component(&self, over: Over, component: Component) -> Form {
        self.form(over, |mix| mix.get(component))
    }

    /// Enthalpy at a temperature, kJ; its ice frozen or melted.
    pub(super) fn enthalpy(&self, over: Over, celsius: f64, ice: IceAs) -> Form {
        let of_ice = match ice {
            IceAs::Frozen => water::ice_enthalpy_kj_per_kg(celsius),
            IceAs::Melted => water::enthalpy_kj_per_kg(celsius),
        };
        let of_water = water::enthalpy_kj_per_kg(celsius);
        let of_sugar = sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(celsius);
        let of_food = FOODS.map(|food| food.enthalpy_kj_per_kg(celsius));
        self.form(over, |mix| {
            let foods: f64 = foods(mix)
                .iter()
                .zip(of_food)
                .map(|(grams, enthalpy)| grams * enthalpy)
                .sum();
            let liquid = mix.get(Component::Water) * of_water + sugar(mix) * of_sugar;
            (liquid + mix.get(Component::Ice) * of_ice + foods) / 1000.0
        })
    }

    /// The greatest or least heat capacity that these masses have at any temperature, ice melted, kJ/K.
    ///
    /// Over −60…130 °C, where the engine looks for a temperature, the specific heat of water (IAPWS) lies between 4.178 and
    /// 4.2195 kJ/kg/K, that of dissolved sugar rises from 1.673 to 2.423, and those of the foods rise up to 130 °C.
    pub(super) fn heat_capacity(&self, over: Over, greatest: bool) -> Form {
        let (of_water, of_sugar, celsius) = if greatest {
            (4.219_5, 2.423, 130.0)
        } else {
            (4.178, 1.673, -40.0)
        };
        let of_food = FOODS.map(|food| food.specific_heat_kj_per_kg_k(celsius));
        self.form(over, |mix| {
            let foods: f64 = foods(mix)
                .iter()
                .zip(of_food)
                .map(|(grams, heat)| grams * heat)
                .sum();
            let foods = if greatest {
                foods + slack_of(mix) * of_food[0]
            } else {
                foods
            };
            let water = (mix.get(Component::Water) + mix.get(Component::Ice)) * of_water;
            (water + sugar(mix) * of_sugar + foods) / 1000.0
        })
    }

    /// Volume at a temperature of all but water, ice and sugar, ml.
    pub(super) fn volume_of_foods(&self, over: Over, celsius: f64) -> Form {
        let density = FOODS.map(|food| food.density_kg_per_m3(celsius));
        self.form(over, |mix| {
            foods(mix)
                .iter()
                .zip(density)
                .map(|(grams, density)| grams / density * 1000.0)
                .sum()
        })
    }

    /// Grams that the kinks can add at most; see the head of this file.
    pub(super) fn slack(&self, over: Over) -> Form {
        self.form(over, slack_of)
    }
}

/// What the ice of a mix is taken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum IceAs {
    Frozen,
    Melted,
}

/// The foods in the order of [`foods`].
const FOODS: [FoodComponent; 5] = [
    FoodComponent::Carbohydrate,
    FoodComponent::Protein,
    FoodComponent::Fat,
    FoodComponent::Fibre,
    FoodComponent::Ash,
];

/// Grams of each food with their sign, as the engine sorts them.
fn foods(mix: &Mix) -> [f64; 5] {
    let carbohydrate =
        starch(mix) + mix.get(Component::Acid) + mix.get(Component::TeaSolids) + undeclared(mix);
    [
        carbohydrate,
        mix.get(Component::Protein),
        mix.get(Component::Fat),
        mix.get(Component::Fibre),
        mix.get(Component::Salt),
    ]
}

/// Sugars and polyols, g.
pub(super) fn sugar(mix: &Mix) -> f64 {
    mix.get(Component::Sugars) + mix.get(Component::Polyols)
}

fn slack_of(mix: &Mix) -> f64 {
    (-starch(mix)).max(0.0) + (-undeclared(mix)).max(0.0)
}

fn starch(mix: &Mix) -> f64 {
    mix.get(Component::Carbohydrate) - sugar(mix)
}

fn undeclared(mix: &Mix) -> f64 {
    let stated = [
        Component::Water,
        Component::Ice,
        Component::Carbohydrate,
        Component::Fibre,
        Component::Protein,
        Component::Fat,
        Component::Salt,
        Component::Acid,
        Component::TeaSolids,
    ];
    mix.get(Component::Mass)
        - stated
            .into_iter()
            .map(|component| mix.get(component))
            .sum::<f64>()
}
