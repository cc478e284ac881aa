//! Ingredients as they stand in a file.

use serde::Deserialize;
use serde::de::{Deserializer, Error as _, SeqAccess, Visitor};

use super::{
    Allergen, CarbohydrateKind, EnergyUnit, Evidence, Form, HighPotencySweetener, PolyolKind, Role,
    SaltUnit,
};

/// `(8.0, Label)`, or with its standard uncertainty `(8.0, Measured, 0.2)`.
pub(crate) struct Figure {
    pub(crate) value: f64,
    pub(crate) evidence: Evidence,
    pub(crate) u: Option<f64>,
}

impl<'de> Deserialize<'de> for Figure {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_tuple(3, FigureVisitor)
    }
}

/// What the reader says it wanted where a figure does not have its two or three parts.
pub(crate) const FIGURE: &str = "figure";

struct FigureVisitor;

impl<'de> Visitor<'de> for FigureVisitor {
    type Value = Figure;

    fn expecting(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter.write_str(FIGURE)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut parts: A) -> Result<Figure, A::Error> {
        let missing = |count| A::Error::invalid_length(count, &self);
        let value = parts.next_element()?.ok_or_else(|| missing(0))?;
        let evidence = parts.next_element()?.ok_or_else(|| missing(1))?;
        Ok(Figure {
            value,
            evidence,
            u: parts.next_element()?,
        })
    }
}

#[derive(Deserialize)]
pub(crate) enum Basis {
    Per100Grams,
    Per100Millilitres,
    PerServing(f64),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum SugarProfile {
    Sucrose,
    Invert,
    Hfcs42,
    Hfcs55,
    Fructose,
    Glucose,
    Lactose,
    Honey,
    GlucoseSyrup {
        dextrose_equivalent: f64,
    },
    /// The fractions sum to 1, which is checked, so that one left out can only be 0.
    Own {
        #[serde(default)]
        sucrose: f64,
        #[serde(default)]
        glucose: f64,
        #[serde(default)]
        fructose: f64,
        #[serde(default)]
        lactose: f64,
        #[serde(default)]
        maltose: f64,
        #[serde(default)]
        other: f64,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct FlavourStrength {
    pub(crate) name: String,
    pub(crate) per_gram: Option<Figure>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct HighPotencyAmount {
    pub(crate) sweetener: HighPotencySweetener,
    pub(crate) milligrams: Option<Figure>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(crate) struct Composition {
    pub(crate) basis: Option<Basis>,
    pub(crate) carbohydrate_kind: Option<CarbohydrateKind>,
    pub(crate) energy_in: Option<EnergyUnit>,
    pub(crate) salt_as: Option<SaltUnit>,
    pub(crate) polyol: Option<PolyolKind>,
    pub(crate) energy: Option<Figure>,
    pub(crate) water: Option<Figure>,
    pub(crate) fat: Option<Figure>,
    pub(crate) saturates: Option<Figure>,
    pub(crate) carbohydrate: Option<Figure>,
    pub(crate) sugars: Option<Figure>,
    pub(crate) polyols: Option<Figure>,
    pub(crate) fibre: Option<Figure>,
    pub(crate) protein: Option<Figure>,
    pub(crate) salt: Option<Figure>,
    pub(crate) acid: Option<Figure>,
    pub(crate) tea_solids: Option<Figure>,
    pub(crate) insoluble: Option<Figure>,
    pub(crate) caffeine: Option<Figure>,
    pub(crate) brix: Option<Figure>,
    pub(crate) sugar_profile: Option<SugarProfile>,
    pub(crate) free_sugar_fraction: Option<f64>,
    pub(crate) flavours: Vec<FlavourStrength>,
    pub(crate) high_potency: Vec<HighPotencyAmount>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AllergenStatement {
    #[serde(default)]
    pub(crate) contains: Vec<Allergen>,
    #[serde(default)]
    pub(crate) may_contain: Vec<Allergen>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(crate) struct Diet {
    pub(crate) vegan: Option<bool>,
    pub(crate) dairy_free: Option<bool>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Price {
    pub(crate) pack: f64,
    pub(crate) grams: f64,
    pub(crate) waste_percent: f64,
    pub(crate) date: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EarlierPrice {
    pub(crate) pack: f64,
    pub(crate) grams: f64,
    pub(crate) date: Option<String>,
    #[serde(default)]
    pub(crate) supplier: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct HouseMade {
    pub(crate) recipe: String,
    pub(crate) yield_grams: Figure,
    pub(crate) extraction: Option<Figure>,
    pub(crate) shelf_life_hours: Option<f64>,
    pub(crate) waste_percent: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Ingredient {
    pub(crate) id: String,
    pub(crate) name: String,
    #[serde(default)]
    pub(crate) brand: String,
    #[serde(default)]
    pub(crate) supplier: String,
    #[serde(default)]
    pub(crate) lot: String,
    pub(crate) form: Form,
    pub(crate) role: Role,
    #[serde(default)]
    pub(crate) composition: Composition,
    pub(crate) density: Option<Figure>,
    pub(crate) bulk_density: Option<Figure>,
    pub(crate) temperature: Option<f64>,
    #[serde(default)]
    pub(crate) statement: String,
    pub(crate) allergens: Option<AllergenStatement>,
    #[serde(default)]
    pub(crate) diet: Diet,
    pub(crate) opened_life_hours: Option<f64>,
    pub(crate) price: Option<Price>,
    #[serde(default)]
    pub(crate) earlier_prices: Vec<EarlierPrice>,
    pub(crate) house_made: Option<HouseMade>,
    #[serde(default)]
    pub(crate) note: String,
}
