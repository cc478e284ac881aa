//! Ingredients as they stand in a file.

use serde::de::{Deserialize, Deserializer, Error as _, SeqAccess, Visitor};
use serde::ser::{Serialize, Serializer};

use super::super::checker::Checker;
use super::super::error::LoadProblem;
use super::earlier::EarlierStates;
use super::stored::{Stored, file_group, in_file};
use super::{
    Allergen, CarbohydrateKind, EnergyUnit, Evidence, Form, HighPotencySweetener, PolyolKind, Role,
    SaltUnit, Temperature, Translation,
};
use crate::book::{self, LabelUnits, Nutrient};
use crate::quantity::{Pack, PackUnit};

in_file! {
    struct Ingredient named by id {
        id: String,
        name: String,
        brand: String = nothing,
        supplier: String = nothing,
        lot: String = nothing,
        form: Form,
        role: Role,
        composition: Composition = nothing,
        density: Option<Figure> = nothing,
        bulk_density: Option<Figure> = nothing,
        temperature: Option<Temperature> = nothing,
        statement: String = nothing,
        allergens: Option<AllergenStatement> = nothing,
        diet: Diet = nothing,
        opened_life_hours: Option<f64> = nothing,
        price: Option<Price> = nothing,
        earlier_prices: Vec<EarlierPrice> = nothing,
        articles: Vec<Article> = nothing,
        no_longer_sold: bool = nothing,
        house_made: Option<HouseMade> = nothing,
        tasted: Vec<TastedFigure> = nothing,
        note: String = nothing,
        earlier: EarlierStates<Ingredient> = nothing,
        translations: Vec<Translation> = nothing,
    }
}

file_group! {
    #[derive(Default)]
    struct Composition {
        basis: Option<Basis> = nothing,
        carbohydrate_kind: Option<CarbohydrateKind> = nothing,
        energy_in: Option<EnergyUnit> = nothing,
        salt_as: Option<SaltUnit> = nothing,
        energy: Option<Figure> = nothing,
        water: Option<Figure> = nothing,
        fat: Option<Figure> = nothing,
        saturates: Option<Figure> = nothing,
        carbohydrate: Option<Figure> = nothing,
        sugars: Option<Figure> = nothing,
        polyols: Option<Figure> = nothing,
        fibre: Option<Figure> = nothing,
        protein: Option<Figure> = nothing,
        salt: Option<Figure> = nothing,
        acid: Option<Figure> = nothing,
        tea_solids: Option<Figure> = nothing,
        insoluble: Option<Figure> = nothing,
        caffeine: Option<Figure> = nothing,
        brix: Option<Figure> = nothing,
        polyol: Option<PolyolKind> = nothing,
        sugar_profile: Option<SugarProfile> = nothing,
        free_sugar_fraction: Option<f64> = nothing,
        flavours: Vec<FlavourStrength> = nothing,
        high_potency: Vec<HighPotencyAmount> = nothing,
    }
}

impl Composition {
    /// The field that holds a figure, and its name.
    fn figure(&mut self, nutrient: Nutrient) -> (&mut Option<Figure>, &'static str) {
        match nutrient {
            Nutrient::Energy => (&mut self.energy, "energy"),
            Nutrient::Water => (&mut self.water, "water"),
            Nutrient::Fat => (&mut self.fat, "fat"),
            Nutrient::Saturates => (&mut self.saturates, "saturates"),
            Nutrient::Carbohydrate => (&mut self.carbohydrate, "carbohydrate"),
            Nutrient::Sugars => (&mut self.sugars, "sugars"),
            Nutrient::Polyols => (&mut self.polyols, "polyols"),
            Nutrient::Fibre => (&mut self.fibre, "fibre"),
            Nutrient::Protein => (&mut self.protein, "protein"),
            Nutrient::Salt => (&mut self.salt, "salt"),
            Nutrient::Acid => (&mut self.acid, "acid"),
            Nutrient::TeaSolids => (&mut self.tea_solids, "tea_solids"),
            Nutrient::Insoluble => (&mut self.insoluble, "insoluble"),
            Nutrient::Caffeine => (&mut self.caffeine, "caffeine"),
            Nutrient::Brix => (&mut self.brix, "brix"),
        }
    }
}

/// The book keeps the figures in a map.
impl Stored<book::Composition> for Composition {
    fn from_book(value: &book::Composition) -> Self {
        let book::Composition {
            basis,
            carbohydrate_kind,
            printed,
            units: LabelUnits { energy, salt },
            polyol,
            sugar_profile,
            free_sugar_fraction,
            flavours,
            high_potency,
        } = value;
        let mut found = Self {
            basis: Stored::from_book(basis),
            carbohydrate_kind: Stored::from_book(carbohydrate_kind),
            energy_in: Stored::from_book(energy),
            salt_as: Stored::from_book(salt),
            polyol: Stored::from_book(polyol),
            sugar_profile: Stored::from_book(sugar_profile),
            free_sugar_fraction: *free_sugar_fraction,
            flavours: Stored::from_book(flavours),
            high_potency: Stored::from_book(high_potency),
            ..Self::default()
        };
        for (nutrient, figure) in printed {
            *found.figure(*nutrient).0 = Some(Figure::from_book(figure));
        }
        found
    }

    fn into_book(mut self, checker: &mut Checker<'_>) -> book::Composition {
        let basis = checker.within("basis", |checker| self.basis.take().into_book(checker));
        let stated = |nutrient| {
            let (field, name) = self.figure(nutrient);
            let figure = field.take()?;
            let figure = checker.within(name, |checker| figure.into_book(checker));
            Some((nutrient, figure))
        };
        let printed = Nutrient::ALL.into_iter().filter_map(stated).collect();
        book::Composition {
            basis,
            carbohydrate_kind: self.carbohydrate_kind.into_book(checker),
            printed,
            units: LabelUnits {
                energy: self.energy_in.into_book(checker),
                salt: self.salt_as.into_book(checker),
            },
            polyol: self.polyol.into_book(checker),
            sugar_profile: checker.within("sugar_profile", |checker| {
                self.sugar_profile.into_book(checker)
            }),
            free_sugar_fraction: checker.within("free_sugar_fraction", |checker| {
                self.free_sugar_fraction.into_book(checker)
            }),
            flavours: checker.within("flavours", |checker| self.flavours.into_book(checker)),
            high_potency: checker.within("high_potency", |checker| {
                self.high_potency.into_book(checker)
            }),
        }
    }
}

in_file! {
    enum Basis with parts here {
        Per100Grams,
        Per100Millilitres,
        PerServing(grams: f64),
    }
}

in_file! {
    /// Own fractions sum to 1, which is checked, so that one left out can only be 0.
    enum SugarProfile with parts here {
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
        Own {
            sucrose: f64 = nothing,
            glucose: f64 = nothing,
            fructose: f64 = nothing,
            lactose: f64 = nothing,
            maltose: f64 = nothing,
            other: f64 = nothing,
        },
    }
}

in_file! {
    struct TastedFigure {
        what: TastedFactor,
        times: f64,
        u: f64,
        date: String = nothing,
        by: String = nothing,
        reason: String = nothing,
        tastings: Vec<String> = nothing,
    }
}

in_file! {
    enum TastedFactor with parts here {
        Sweetness,
        Flavour(name: String),
    }
}

in_file! {
    struct FlavourStrength named by name {
        name: String,
        per_gram: Option<Figure> = nothing,
    }
}

in_file! {
    struct HighPotencyAmount {
        sweetener: HighPotencySweetener,
        milligrams: Option<Figure> = nothing,
    }
}

in_file! {
    /// An empty "contains" is written: it states that there are none, which is not the same as no statement.
    struct AllergenStatement {
        #[serde(default)]
        contains: Vec<Allergen>,
        may_contain: Vec<Allergen> = nothing,
        free_of: Vec<Allergen> = nothing,
    }
}

in_file! {
    #[derive(Default)]
    struct Diet {
        vegan: Option<bool> = nothing,
        dairy_free: Option<bool> = nothing,
    }
}

file_group! {
    /// What the pack holds is in grams or in millilitres; `count` is how many of these it has.
    struct Price {
        pack: f64,
        count: Option<f64> = nothing,
        grams: Option<f64> = nothing,
        millilitres: Option<f64> = nothing,
        waste_percent: f64,
        date: Option<String> = nothing,
    }
}

file_group! {
    struct EarlierPrice {
        pack: f64,
        count: Option<f64> = nothing,
        grams: Option<f64> = nothing,
        millilitres: Option<f64> = nothing,
        date: Option<String> = nothing,
        supplier: String = nothing,
    }
}

impl Stored<book::Price> for Price {
    fn from_book(value: &book::Price) -> Self {
        let book::Price {
            pack,
            content,
            waste_percent,
            date,
        } = value;
        let (count, grams, millilitres) = content_in_file(*content);
        Self {
            pack: *pack,
            count,
            grams,
            millilitres,
            waste_percent: *waste_percent,
            date: date.clone(),
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::Price {
        book::Price {
            pack: checker.within("pack", |checker| self.pack.into_book(checker)),
            content: content_in_book(self.count, self.grams, self.millilitres, checker),
            waste_percent: checker.within("waste_percent", |checker| {
                self.waste_percent.into_book(checker)
            }),
            date: self.date,
        }
    }
}

impl Stored<book::EarlierPrice> for EarlierPrice {
    fn from_book(value: &book::EarlierPrice) -> Self {
        let book::EarlierPrice {
            pack,
            content,
            date,
            supplier,
        } = value;
        let (count, grams, millilitres) = content_in_file(*content);
        Self {
            pack: *pack,
            count,
            grams,
            millilitres,
            date: date.clone(),
            supplier: supplier.clone(),
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::EarlierPrice {
        book::EarlierPrice {
            pack: checker.within("pack", |checker| self.pack.into_book(checker)),
            content: content_in_book(self.count, self.grams, self.millilitres, checker),
            date: self.date,
            supplier: self.supplier,
        }
    }
}

/// The count, where there are several, and what each holds in grams or in millilitres.
#[expect(clippy::float_cmp, reason = "one pack is exactly one")]
fn content_in_file(content: Pack) -> (Option<f64>, Option<f64>, Option<f64>) {
    let count = (content.count != 1.0).then_some(content.count);
    match content.unit {
        PackUnit::Grams => (count, Some(content.each), None),
        PackUnit::Millilitres => (count, None, Some(content.each)),
    }
}

fn content_in_book(
    count: Option<f64>,
    grams: Option<f64>,
    millilitres: Option<f64>,
    checker: &mut Checker<'_>,
) -> Pack {
    let count = checker.within("count", |checker| count.into_book(checker));
    let grams: Option<f64> = checker.within("grams", |checker| grams.into_book(checker));
    let millilitres: Option<f64> =
        checker.within("millilitres", |checker| millilitres.into_book(checker));
    let pack = match (grams, millilitres) {
        (Some(grams), None) => Pack::of_grams(grams),
        (None, Some(millilitres)) => Pack::of_millilitres(millilitres),
        (None, None) | (Some(_), Some(_)) => {
            checker.report(|place| LoadProblem::PackContent { place });
            Pack::of_grams(1.0)
        }
    };
    Pack {
        count: count.unwrap_or(1.0),
        ..pack
    }
}

in_file! {
    struct Article {
        supplier: String = nothing,
        article: String,
    }
}

in_file! {
    struct HouseMade {
        recipe: String,
        yield_grams: Figure,
        extraction: Option<Figure> = nothing,
        steep_minutes: Option<f64> = nothing,
        shelf_life_hours: Option<f64> = nothing,
        waste_percent: f64,
    }
}

/// `(8.0, Label)`, or with its standard uncertainty `(8.0, Measured, 0.2)`.
#[derive(PartialEq)]
pub(crate) struct Figure {
    value: f64,
    evidence: Evidence,
    u: Option<f64>,
}

impl Stored<book::Figure> for Figure {
    fn from_book(value: &book::Figure) -> Self {
        let book::Figure { value, evidence, u } = value;
        Self {
            value: *value,
            evidence: Stored::from_book(evidence),
            u: *u,
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::Figure {
        book::Figure {
            value: self.value.into_book(checker),
            evidence: self.evidence.into_book(checker),
            u: self.u.into_book(checker),
        }
    }
}

impl Serialize for Figure {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let Self { value, evidence, u } = self;
        match u {
            Some(u) => (value, evidence, u).serialize(serializer),
            None => (value, evidence).serialize(serializer),
        }
    }
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
