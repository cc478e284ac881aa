//! What each line brings to a figure: the lens through which a drink is looked at.

use crate::balance::measurand::Measurand;
use crate::balance::mix::{Component, Mix, flavour_slot};
use crate::balance::solve::figures::{heat_brought, intense_share};
use crate::balance::solve::prepared::{Prepared, PreparedLine};
use crate::book::{Axis, IngredientId, LineId, Role, Stage};

/// What a person looks at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Lens {
    /// Grams of sugar.
    #[default]
    Sugar,
    /// Grams of sucrose that would be as sweet.
    Sweetness,
    /// Heat that a line brings or takes, kJ.
    Heat,
    /// Cost, in the book's currency.
    Cost,
    /// Energy, kJ.
    Energy,
    /// Tea solids, g.
    Tea,
    /// What a line adds to the uncertainty of the sugar, g.
    Uncertainty,
}

impl Lens {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 7] = [
        Self::Sugar,
        Self::Sweetness,
        Self::Heat,
        Self::Cost,
        Self::Energy,
        Self::Tea,
        Self::Uncertainty,
    ];

    /// Its key in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Sugar => "sugar",
            Self::Sweetness => "sweetness",
            Self::Heat => "heat",
            Self::Cost => "cost",
            Self::Energy => "energy",
            Self::Tea => "tea",
            Self::Uncertainty => "uncertainty",
        }
    }

    /// The unit of a share; that of cost is the book's currency.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Sugar | Self::Sweetness | Self::Tea | Self::Uncertainty => "g",
            Self::Heat | Self::Energy => "kJ",
            Self::Cost => "",
        }
    }

    /// The figure that the shares belong to.
    pub fn measurand(self) -> Measurand {
        match self {
            Self::Sugar | Self::Uncertainty => Measurand::TotalSugar,
            Self::Sweetness => Measurand::Sweetness,
            Self::Heat => Measurand::ServingTemperature,
            Self::Cost => Measurand::Cost,
            Self::Energy => Measurand::EnergyKj,
            Self::Tea => Measurand::TeaSolids,
        }
    }
}

/// What one line brings.
#[derive(Clone, Debug, PartialEq)]
pub struct LineShare {
    /// The line.
    pub line: LineId,
    /// Whether this is what a topping brings along.
    pub carried: bool,
    /// Its ingredient.
    pub ingredient: IngredientId,
    /// Its role.
    pub role: Role,
    /// Where it ends up.
    pub stage: Stage,
    /// Its count, solved when it fills.
    pub count: f64,
    /// Its mass, g; `None` when nobody knows what a use weighs.
    pub grams: Option<f64>,
    /// Standard uncertainty of the mass, g.
    pub u_grams: Option<f64>,
    /// Its volume at its own temperature as a liquid, ml.
    pub millilitres: Option<f64>,
    /// Everything in it: the known part where something is not stated.
    pub mix: Mix,
    /// Its temperature, °C.
    pub celsius: f64,
    /// Sugar, g; `None` when it is not stated.
    pub sugar: Option<f64>,
    /// Sucrose that would be as sweet, g.
    pub sweetness: Option<f64>,
    /// Heat that it brings to the drink as served, kJ.
    pub heat: Option<f64>,
    /// Cost.
    pub cost: Option<f64>,
    /// Energy, kJ.
    pub energy: Option<f64>,
    /// Tea solids, g.
    pub tea: Option<f64>,
    /// Standard uncertainty that it adds to the sugar, g.
    pub sugar_uncertainty: Option<f64>,
}

impl LineShare {
    /// Its energy, kJ, as far as it is known: what it adds to the energy of the drink.
    pub fn known_energy(&self) -> f64 {
        self.mix.get(Component::EnergyKj)
    }

    /// The share through a lens.
    pub fn through(&self, lens: Lens) -> Option<f64> {
        match lens {
            Lens::Sugar => self.sugar,
            Lens::Sweetness => self.sweetness,
            Lens::Heat => self.heat,
            Lens::Cost => self.cost,
            Lens::Energy => self.energy,
            Lens::Tea => self.tea,
            Lens::Uncertainty => self.sugar_uncertainty,
        }
    }

    /// What it brings to an axis of taste, in the unit of the amount behind it (g, ml, units of a flavour); `None` when that is
    /// not known, and for the temperature, which is no sum of what lines bring.
    pub fn brings_to(&self, axis: &Axis, flavours: &[String]) -> Option<f64> {
        self.grams?;
        let known =
            |component: Component| self.mix.knows(component).then(|| self.mix.get(component));
        match axis {
            Axis::Sweetness => self.sweetness,
            Axis::TeaStrength => self.tea,
            Axis::Creaminess => known(Component::Fat),
            Axis::Acidity => known(Component::Acid),
            Axis::Body => (self.mix.unknown & Measurand::Body.needs() == 0)
                .then(|| self.mix.dry_matter() - self.mix.get(Component::Sugars)),
            Axis::Volume => self.millilitres,
            Axis::Temperature => None,
            Axis::Flavour(name) => {
                let slot = flavours.iter().position(|known| known == name);
                Some(slot.map_or(0.0, |slot| self.mix.of[flavour_slot(slot)]))
            }
        }
    }
}

/// The drink that a line is part of.
pub(super) struct WholeDrink<'drink> {
    /// What is mixed in it.
    pub(super) mixed: &'drink Mix,
    /// Its volume, ml.
    pub(super) volume: f64,
    /// Temperature at which it is served, °C.
    pub(super) served: f64,
}

/// The share of one prepared line with its solved count; of one that fills and never does, nothing is known.
pub(super) fn line_share(
    prepared: &Prepared,
    line: &PreparedLine,
    count: Option<f64>,
    drink: &WholeDrink<'_>,
) -> LineShare {
    let is_solved = count.is_some();
    let count = count.unwrap_or(0.0);
    let mix = line.per_unit.times(count);
    let known =
        |component: Component| (is_solved && mix.knows(component)).then(|| mix.get(component));
    let weighed = is_solved && mix.knows(Component::Mass);
    let sweetness_known = is_solved && mix.unknown & Measurand::Sweetness.needs() == 0;
    LineShare {
        line: line.id.clone(),
        carried: line.carried,
        ingredient: line.ingredient.clone(),
        role: line.role,
        stage: line.stage,
        count,
        grams: weighed.then(|| weighed_out(line, count, &mix)),
        u_grams: weighed.then(|| spread_of_weight(prepared, line, count)),
        millilitres: weighed.then(|| {
            crate::balance::solve::physics::liquid_volume(&mix, 0.0, line.celsius)
                + crate::balance::solve::physics::ice_volume(mix.get(Component::Ice), line.celsius)
        }),
        mix,
        celsius: line.celsius,
        sugar: known(Component::Sugars),
        sweetness: sweetness_known.then(|| sucrose_equivalent(prepared, &mix, drink)),
        heat: weighed.then(|| heat_brought(line, count, drink.served)),
        cost: known(Component::Cost),
        energy: known(Component::EnergyKj),
        tea: known(Component::TeaSolids),
        sugar_uncertainty: known(Component::Sugars).map(|_| spread(line, count, Component::Sugars)),
    }
}

/// What the scale shows of a line, g. Leaf that is steeped is weighed dry, whatever of it gets into the water and out of it.
fn weighed_out(line: &PreparedLine, count: f64, mix: &Mix) -> f64 {
    match line.stage {
        Stage::Steeped => count * line.grams_per_unit,
        _ => mix.get(Component::Mass),
    }
}

fn spread_of_weight(prepared: &Prepared, line: &PreparedLine, count: f64) -> f64 {
    let per_gram = line.per_unit.get(Component::Mass) / line.grams_per_unit;
    if line.stage != Stage::Steeped || !per_gram.is_normal() {
        return spread(line, count, Component::Mass);
    }
    // What the leaf gives and keeps back is no doubt of its weight.
    let of_amount = line
        .sensitivities
        .iter()
        .filter(|sensitivity| prepared.causes[sensitivity.cause].is_of_amount());
    of_amount
        .map(|sensitivity| {
            sensitivity.change.get(Component::Mass) * sensitivity.scaling.of(count) / per_gram
        })
        .fold(0.0, f64::hypot)
}

fn sucrose_equivalent(prepared: &Prepared, mix: &Mix, drink: &WholeDrink<'_>) -> f64 {
    let kinds = [
        Component::Glucose,
        Component::Fructose,
        Component::Lactose,
        Component::Maltose,
        Component::OtherSugar,
    ];
    let weights = prepared.setup.sweetness;
    let others: f64 = kinds
        .into_iter()
        .zip(weights)
        .map(|(kind, weight)| mix.get(kind) * weight)
        .sum();
    let intense = intense_share(mix, drink.mixed, drink.volume, &prepared.setup);
    let tasted = mix.get(Component::PolyolSweetness) + mix.get(Component::TastedSweetness);
    mix.get(Component::Sucrose) + others + tasted + intense
}

/// Root of the summed squares of what the causes do to one component of a line.
fn spread(line: &PreparedLine, count: f64, component: Component) -> f64 {
    let squares: f64 = line
        .sensitivities
        .iter()
        .map(|sensitivity| {
            (sensitivity.change.get(component) * sensitivity.scaling.of(count)).powi(2)
        })
        .sum();
    squares.sqrt()
}
