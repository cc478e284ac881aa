//! What the engine answers to the questions of `published-cases/honesty.ron`, with its standard uncertainty.

use evensip::balance::published::freezing::{
    CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL, RELATIVE_UNCERTAINTY, UNDECLARED_MINERALS_KELVIN,
};
use evensip::balance::published::sweetness::{self, RelativeSweetness};
use evensip::balance::published::{polyol, sugar_solution};
use evensip::balance::{
    Assumed, Balance, Component, Measurand, PerGram, Slots, balance, per_gram, portion,
};
use evensip::book::{
    Amount, Basis, Entry, Evidence, Figure, Form, Ingredient, Nutrient, Place, PolyolKind,
    Resolved, Role, Stage, SugarProfile,
};
use evensip::quantity::Uncertain;
use serde::Deserialize;

use crate::published_cases::high_potency;
use crate::sample::{book, figure, ingredient, line, recipe, water};

/// What a liquid holds, g per 100 g.
#[derive(Debug, Deserialize)]
pub(crate) struct Liquid {
    water: f64,
    protein: f64,
    fat: f64,
    carbohydrate: f64,
    sugars: f64,
}

/// A dry ingredient by what it plainly is.
#[derive(Clone, Copy, Debug, Deserialize)]
pub(crate) enum Dry {
    Creamer,
    Flavour,
    Tea,
    Sugar,
    Pieces,
}

/// Pieces by what they are made of.
#[derive(Clone, Copy, Debug, Deserialize)]
pub(crate) enum Made {
    /// Fruit and roots.
    Fresh,
    /// Boiled beans.
    Cooked,
    /// Dry coconut with sugar.
    Dry,
    /// Raw coconut.
    Nut,
}

/// A question whose answer has an uncertainty.
#[derive(Debug, Deserialize)]
pub(crate) enum Ask {
    Density(Liquid),
    Weight {
        celsius: f64,
        of: Liquid,
    },
    /// A label per 100 ml of a liquid of this density, g/ml.
    Label {
        density: f64,
        of: Liquid,
    },
    Solution {
        solute: String,
        mass_percent: f64,
    },
    Fruit {
        sugar_g_per_l: f64,
    },
    Intense {
        sweetener: String,
        mg_per_l: (f64, f64),
    },
    Mixture {
        sugar_percent: f64,
        sweeteners: Vec<(String, f64)>,
    },
    Moisture(Dry),
    Pieces(Made),
    Ice,
    Foam,
    Brewed {
        water: f64,
        leaf: (f64, f64),
    },
    /// A brew of water and leaf, g.
    Caffeine {
        water: f64,
        leaf: (f64, f64),
    },
    Fructose(f64),
    Sweetness(String),
    /// A figure that a published table prints.
    Printed(f64),
}

const ONE_OVER_SQRT_3: f64 = 0.577_350_269_189_625_8;

pub(crate) fn answer(ask: &Ask) -> Uncertain {
    match ask {
        Ask::Density(of) => density_of_drink(of),
        Ask::Weight { celsius, of } => weight_of_millilitre(&liquid(of), *celsius),
        Ask::Label { density, of } => {
            let mut item = liquid(of);
            item.composition.basis = Basis::Per100Millilitres;
            item.composition.printed.remove(&Nutrient::Water);
            for figure in item.composition.printed.values_mut() {
                figure.value *= density;
            }
            weight_of_millilitre(&item, 20.0)
        }
        Ask::Solution {
            solute,
            mass_percent,
        } => freezing_point(&solution(solute, *mass_percent)),
        Ask::Fruit { sugar_g_per_l } => freezing_point(&fruit(*sugar_g_per_l)),
        Ask::Intense {
            sweetener,
            mg_per_l: (low, high),
        } => {
            let sweetener = high_potency(sweetener);
            let value = sweetener.response_percent(f64::midpoint(*low, *high));
            let spread = sweetener.response_percent(*high) - sweetener.response_percent(*low);
            let u = sweetness::POTENCY_UNCERTAINTY * value;
            Uncertain {
                value,
                u: u.hypot(spread / 2.0 * ONE_OVER_SQRT_3),
            }
        }
        Ask::Mixture {
            sugar_percent,
            sweeteners,
        } => mixture(*sugar_percent, sweeteners),
        Ask::Moisture(dry) => moisture(*dry),
        Ask::Pieces(made) => weight_of_millilitre(&pieces(*made), 20.0),
        Ask::Ice => weight_of_millilitre(&ingredient("it", Form::Ice, Role::Ice, &[]), 0.0),
        Ask::Foam => weight_of_millilitre(&ingredient("it", Form::Foam, Role::Topping, &[]), 20.0),
        Ask::Brewed { water, leaf } => brewed(Measurand::TeaStrength, *water, *leaf),
        Ask::Caffeine { water, leaf } => brewed(Measurand::CaffeinePer100Ml, *water, *leaf),
        Ask::Fructose(celsius) => of_relative(sweetness::fructose(*celsius)),
        Ask::Sweetness(name) => of_relative(relative_sweetness(name)),
        Ask::Printed(value) => {
            let figure = Figure::new(*value, Evidence::Published);
            Uncertain {
                value: *value,
                u: figure.standard_uncertainty(),
            }
        }
    }
}

fn of_relative(relative: RelativeSweetness) -> Uncertain {
    Uncertain {
        value: relative.typical,
        u: relative.standard_uncertainty,
    }
}

fn relative_sweetness(name: &str) -> RelativeSweetness {
    match name {
        "glucose" => sweetness::GLUCOSE,
        "lactose" => sweetness::LACTOSE,
        "maltose" => sweetness::MALTOSE,
        "isomaltulose" => sweetness::ISOMALTULOSE,
        polyol => {
            let kind = PolyolKind::ALL
                .into_iter()
                .find(|kind| format!("{kind:?}").eq_ignore_ascii_case(polyol));
            assert!(kind.is_some(), "{polyol} is no polyol");
            polyol::relative_sweetness(kind)
        }
    }
}

/// An ingredient whose figures are exact: what is left to doubt is the model's.
fn exact(mut item: Ingredient) -> Ingredient {
    for figure in item.composition.printed.values_mut() {
        figure.u = Some(0.0);
    }
    item
}

fn liquid(of: &Liquid) -> Ingredient {
    let figures = [
        (Nutrient::Water, of.water),
        (Nutrient::Protein, of.protein),
        (Nutrient::Fat, of.fat),
        (Nutrient::Carbohydrate, of.carbohydrate),
        (Nutrient::Sugars, of.sugars),
    ];
    exact(ingredient("it", Form::Liquid, Role::Base, &figures))
}

fn balance_of(item: Ingredient) -> Balance {
    let book = book(vec![item], Vec::new(), recipe(Vec::new()));
    // So much that the step of the scale is nothing.
    let entries = vec![line("it", "it", 10_000.0, 20.0, Role::Base)];
    let resolved = Resolved {
        entries,
        ..Resolved::default()
    };
    balance(&book, resolved, &Place::Settings)
}

fn density_of_drink(of: &Liquid) -> Uncertain {
    let found = balance_of(liquid(of));
    Uncertain {
        value: figure(&found, Measurand::Density),
        u: found.uncertainty(Measurand::Density.slot()),
    }
}

fn of_one_gram(item: &Ingredient) -> PerGram {
    per_gram(item, &mut Slots::default())
}

/// What a millilitre of it weighs, without the doubt of reading a mark.
fn weight_of_millilitre(item: &Ingredient, celsius: f64) -> Uncertain {
    let book = book(vec![item.clone()], Vec::new(), recipe(Vec::new()));
    let mix = of_one_gram(item).mix;
    let found = portion(&book, item, &mix, &Amount::Millilitres(1.0), celsius)
        .expect("a millilitre of it has a weight");
    let (relative, _) = found.density.expect("a volume has a density");
    Uncertain {
        value: found.grams,
        u: relative * found.grams,
    }
}

fn solution(solute: &str, mass_percent: f64) -> Ingredient {
    let water = (Nutrient::Water, 100.0 - mass_percent);
    let sugars = [
        water,
        (Nutrient::Carbohydrate, mass_percent),
        (Nutrient::Sugars, mass_percent),
    ];
    let mut item = match solute {
        "salt" => ingredient(
            "it",
            Form::Liquid,
            Role::Base,
            &[water, (Nutrient::Salt, mass_percent)],
        ),
        // Milk of so much lactose, with what else is in it (USDA SR28, NDB 01211).
        "lactose in milk" => ingredient(
            "it",
            Form::Liquid,
            Role::Creamer,
            &[
                (Nutrient::Water, 88.1),
                (Nutrient::Fat, 3.25),
                (Nutrient::Protein, 3.15),
                (Nutrient::Carbohydrate, mass_percent),
                (Nutrient::Sugars, mass_percent),
                (Nutrient::Salt, 0.0),
            ],
        ),
        _ => ingredient("it", Form::Syrup, Role::Sweetener, &sugars),
    };
    item.composition.sugar_profile = Some(match solute {
        "lactose in milk" => SugarProfile::Lactose,
        _ => SugarProfile::Sucrose,
    });
    exact(item)
}

/// Juice of so much sugar, g/l, of which nobody says what sugar it is.
fn fruit(sugar_g_per_l: f64) -> Ingredient {
    let mut part = sugar_g_per_l / 1000.0;
    for _ in 0..20 {
        part = sugar_g_per_l / sugar_solution::density_kg_per_m3(part, 20.0);
    }
    let percent = 100.0 * part;
    let figures = [
        (Nutrient::Water, 100.0 - percent),
        (Nutrient::Carbohydrate, percent),
        (Nutrient::Sugars, percent),
    ];
    let mut item = ingredient("it", Form::Liquid, Role::Base, &figures);
    item.composition.sugar_profile = None;
    for figure in item.composition.printed.values_mut() {
        figure.evidence = Evidence::Measured;
    }
    item
}

fn freezing_point(item: &Ingredient) -> Uncertain {
    let PerGram {
        mix, sensitivities, ..
    } = of_one_gram(item);
    let lowering = |particles: f64, water: f64| {
        CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL * particles / water.max(1e-9)
    };
    let (particles, water) = (mix.get(Component::Particles), mix.get(Component::Water));
    let lowered = lowering(particles, water);
    // One cause moves both in the engine.
    let model = RELATIVE_UNCERTAINTY * lowered + UNDECLARED_MINERALS_KELVIN;
    let squares: f64 = sensitivities
        .iter()
        .map(|of| {
            let more = lowering(
                particles + of.change.get(Component::Particles),
                water + of.change.get(Component::Water),
            );
            (more - lowered).powi(2)
        })
        .sum();
    Uncertain {
        value: 0.0 - lowered,
        u: model.hypot(squares.sqrt()),
    }
}

fn mixture(sugar_percent: f64, sweeteners: &[(String, f64)]) -> Uncertain {
    let named: Vec<_> = sweeteners
        .iter()
        .map(|(name, amount)| (high_potency(name), *amount))
        .collect();
    let value = sweetness::combined(sugar_percent, &named);
    let mut squares = 0.0;
    for (sweetener, amount) in &named {
        let alone = sweetener.response_percent(*amount);
        squares += (alone * sweetness::POTENCY_UNCERTAINTY).powi(2);
    }
    if named.len() > 1 {
        squares += ((value - sugar_percent) * sweetness::MIXTURE_UNCERTAINTY).powi(2);
    }
    Uncertain {
        value,
        u: squares.sqrt(),
    }
}

/// What the other model makes of a mixture, % sucrose equivalent: every part as the concentration of the first sweetener that would
/// be as sweet, and their sum read off its one curve.
pub(crate) fn by_concentration(ask: &Ask) -> Option<f64> {
    let Ask::Mixture {
        sugar_percent,
        sweeteners,
    } = ask
    else {
        return None;
    };
    let first = high_potency(&sweeteners.first()?.0);
    let mut concentration = first.equivalent_concentration_mg_per_l(*sugar_percent)?;
    for (name, amount) in sweeteners {
        let alone = high_potency(name).response_percent(*amount);
        concentration += first.equivalent_concentration_mg_per_l(alone)?;
    }
    Some(first.response_percent(concentration))
}

fn moisture(dry: Dry) -> Uncertain {
    let sugars = [(Nutrient::Sugars, 60.0)];
    let (form, role) = match dry {
        Dry::Creamer => (Form::Powder, Role::Creamer),
        Dry::Flavour => (Form::Powder, Role::Flavour),
        Dry::Tea => (Form::Powder, Role::Tea),
        Dry::Sugar => (Form::Crystals, Role::Sweetener),
        Dry::Pieces => (Form::Pieces, Role::Topping),
    };
    let found = of_one_gram(&ingredient("it", form, role, &sugars));
    found
        .assumptions
        .iter()
        .filter(|(_, assumption)| assumption.what == Assumed::Moisture)
        .find_map(|(_, assumption)| assumption.figure)
        .expect("a dry ingredient has an assumed moisture")
}

/// Pieces with the composition of their kind: fruit of 85 % water (within 2 % of the density of any from 75 to 92 %; value from memory),
/// the others by USDA SR28, NDB 16002, 12110 and 12104.
fn pieces(made: Made) -> Ingredient {
    let (water, protein, fat, carbohydrate, sugars) = match made {
        Made::Fresh => (85.0, 1.0, 0.0, 14.0, 10.0),
        Made::Cooked => (66.3, 7.5, 0.1, 24.8, 0.3),
        Made::Dry => (15.5, 3.3, 32.0, 47.0, 37.0),
        Made::Nut => (47.0, 3.3, 33.5, 15.2, 6.2),
    };
    let of = liquid(&Liquid {
        water,
        protein,
        fat,
        carbohydrate,
        sugars,
    });
    Ingredient {
        form: Form::Pieces,
        role: Role::Topping,
        ..of
    }
}

/// A figure of tea from so much leaf that states nothing; how much leaf it was is part of the doubt.
fn brewed(measurand: Measurand, water_g: f64, (least, most): (f64, f64)) -> Uncertain {
    let of = |leaf_g: f64| {
        let leaf = ingredient("leaf", Form::Leaf, Role::Tea, &[]);
        let mut book = book(vec![water(), leaf], Vec::new(), recipe(Vec::new()));
        // The scale that weighed the leaf is not what is asked after.
        book.settings.instruments.scale_grams = Some(0.0);
        let mut steeped = line("leaf", "leaf", leaf_g, 20.0, Role::Tea);
        if let Entry::Line(line) = &mut steeped {
            line.stage = Stage::Steeped;
        }
        let hot = line("water", "water", water_g, 95.0, Role::Water);
        let resolved = Resolved {
            entries: vec![hot, steeped],
            ..Resolved::default()
        };
        let found = balance(&book, resolved, &Place::Settings);
        Uncertain {
            value: figure(&found, measurand),
            u: found.uncertainty(measurand.slot()),
        }
    };
    let middle = of(f64::midpoint(least, most));
    let spread = (of(most).value - of(least).value) / 2.0 * ONE_OVER_SQRT_3;
    Uncertain {
        value: middle.value,
        u: middle.u.hypot(spread),
    }
}
