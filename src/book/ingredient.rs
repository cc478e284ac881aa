//! Ingredients: form, composition with evidence, price, allergens and diet.

use std::collections::BTreeMap;

use super::{EarlierPrice, IngredientId, Item, LabelUnits, Price, RecipeId, Role};

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Evidence {
    /// Printed on the pack.
    Label,
    /// From the maker's specification sheet.
    SpecSheet,
    /// Measured in the shop.
    Measured,
    /// From a published table.
    Published,
    /// Nobody has measured or printed it.
    Assumed,
}

impl Evidence {
    /// All kinds, the strongest first.
    pub const ALL: [Self; 5] = [
        Self::Measured,
        Self::SpecSheet,
        Self::Label,
        Self::Published,
        Self::Assumed,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Label => "label",
            Self::SpecSheet => "specification sheet",
            Self::Measured => "measured",
            Self::Published => "published table",
            Self::Assumed => "assumed",
        }
    }

    /// Relative standard uncertainty of a figure that states none (assumed).
    ///
    /// For a label this is the fifth by which the law lets most figures be off, as a rectangular distribution: 0.2/√3 = 0.115.
    /// [`super::Composition::standard_uncertainty`] knows the rule of each figure.
    pub fn usual_relative_uncertainty(self) -> f64 {
        match self {
            Self::Measured => 0.03,
            Self::SpecSheet => 0.05,
            Self::Label => 0.115,
            Self::Published => 0.10,
            Self::Assumed => 0.25,
        }
    }
}

/// A figure with its evidence and, where stated, its standard uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// The value; the unit goes with what it is a figure of.
    pub value: f64,
    /// Where it comes from.
    pub evidence: Evidence,
    /// Standard uncertainty in the unit of `value`; the usual one of the evidence when not stated.
    pub u: Option<f64>,
}

impl Figure {
    /// A figure that states no uncertainty of its own.
    pub fn new(value: f64, evidence: Evidence) -> Self {
        Self {
            value,
            evidence,
            u: None,
        }
    }

    /// Standard uncertainty: the stated one, else the usual one of the evidence.
    pub fn standard_uncertainty(&self) -> f64 {
        let usual = (self.value * self.evidence.usual_relative_uncertainty()).abs();
        self.u.unwrap_or(usual)
    }
}

/// The physical form of an ingredient, which decides what the rest of its composition is taken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Form {
    /// Pours like water: tea, milk, juice, purée. What is not stated is water.
    Liquid,
    /// Thick sugar solution. What is not stated is water.
    Syrup,
    /// Dry powder, with some moisture.
    Powder,
    /// Dry crystals that cool a drink as they dissolve.
    Crystals,
    /// Oil-rich or solid-rich paste.
    Paste,
    /// Tea leaf and the like.
    Leaf,
    /// Frozen water.
    Ice,
    /// Pieces that sit in the cup: pearls, jelly, fruit.
    Pieces,
    /// A liquid full of air: whipped cream, milk foam. Its density is that of the foam.
    Foam,
}

impl Form {
    /// All forms.
    pub const ALL: [Self; 9] = [
        Self::Liquid,
        Self::Syrup,
        Self::Powder,
        Self::Crystals,
        Self::Paste,
        Self::Leaf,
        Self::Ice,
        Self::Pieces,
        Self::Foam,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Liquid => "liquid",
            Self::Syrup => "syrup",
            Self::Powder => "powder",
            Self::Crystals => "crystals",
            Self::Paste => "paste",
            Self::Leaf => "leaf",
            Self::Ice => "ice",
            Self::Pieces => "pieces",
            Self::Foam => "foam",
        }
    }

    /// Whether what is left to 100 g is water.
    pub fn rest_is_water(self) -> bool {
        matches!(self, Self::Liquid | Self::Syrup | Self::Ice | Self::Foam)
    }

    /// Whether it is dry.
    pub fn is_dry(self) -> bool {
        matches!(self, Self::Powder | Self::Crystals | Self::Leaf)
    }

    /// Whether a measure of it has gaps in it, so that its bulk density counts.
    pub fn lies_in_pieces(self) -> bool {
        self.is_dry() || matches!(self, Self::Pieces | Self::Ice)
    }
}

/// A figure of a composition.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Nutrient {
    /// Energy as printed, kJ: counts where the other figures don't give it.
    Energy,
    /// Water, g.
    Water,
    /// Fat, g.
    Fat,
    /// Saturated fatty acids, g, part of fat.
    Saturates,
    /// Carbohydrate, g; whether fibre is part of it the composition says.
    Carbohydrate,
    /// Sugars (mono- and disaccharides), g, part of carbohydrate.
    Sugars,
    /// Polyols, g, part of carbohydrate.
    Polyols,
    /// Dietary fibre, g.
    Fibre,
    /// Protein, g.
    Protein,
    /// Salt (sodium × 2.5), g.
    Salt,
    /// Organic acid as citric acid, g.
    Acid,
    /// Solids extracted from tea leaf, g.
    TeaSolids,
    /// Solids that do not dissolve (cocoa, sesame, leaf), g; part of the others.
    Insoluble,
    /// Caffeine, mg.
    Caffeine,
    /// Soluble solids by refractometer, mass percent.
    Brix,
}

impl Nutrient {
    /// All of them, in the order of a label.
    pub const ALL: [Self; 15] = [
        Self::Energy,
        Self::Water,
        Self::Fat,
        Self::Saturates,
        Self::Carbohydrate,
        Self::Sugars,
        Self::Polyols,
        Self::Fibre,
        Self::Protein,
        Self::Salt,
        Self::Acid,
        Self::TeaSolids,
        Self::Insoluble,
        Self::Caffeine,
        Self::Brix,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Energy => "energy",
            Self::Water => "water",
            Self::Fat => "fat",
            Self::Saturates => "saturates",
            Self::Carbohydrate => "carbohydrate",
            Self::Sugars => "sugars",
            Self::Polyols => "polyols",
            Self::Fibre => "fibre",
            Self::Protein => "protein",
            Self::Salt => "salt",
            Self::Acid => "acid",
            Self::TeaSolids => "tea solids",
            Self::Insoluble => "insoluble solids",
            Self::Caffeine => "caffeine",
            Self::Brix => "°Brix",
        }
    }

    /// Whether it is a mass in grams, so that 100 g hold 100 of it at most.
    pub fn is_mass(self) -> bool {
        !matches!(self, Self::Energy | Self::Caffeine | Self::Brix)
    }

    /// The unit of the figure, per 100 g or per 100 ml.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Energy => "kJ",
            Self::Caffeine => "mg",
            Self::Brix => "%",
            _ => "g",
        }
    }
}

/// What the figures of a composition are per.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Basis {
    /// Per 100 g.
    #[default]
    Per100Grams,
    /// Per 100 ml; needs a density.
    Per100Millilitres,
    /// Per serving of so many grams.
    PerServing(f64),
}

/// Whether "carbohydrate" on the label has the fibre in it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CarbohydrateKind {
    /// Without fibre (Regulation (EU) 1169/2011).
    #[default]
    WithoutFibre,
    /// With fibre in it (21 CFR 101.9).
    WithFibre,
}

/// How the one figure "sugars" divides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SugarProfile {
    /// Table sugar.
    Sucrose,
    /// Half glucose, half fructose.
    Invert,
    /// High-fructose corn syrup with 42 % fructose in its solids.
    Hfcs42,
    /// High-fructose corn syrup with 55 % fructose in its solids.
    Hfcs55,
    /// Fructose syrup or crystals: fructose alone.
    Fructose,
    /// Dextrose.
    Glucose,
    /// Milk sugar.
    Lactose,
    /// Honey.
    Honey,
    /// Glucose syrup or maltodextrin of this dextrose equivalent: its sugars are glucose and maltose.
    GlucoseSyrup {
        /// Dextrose equivalent, 0–100.
        dextrose_equivalent: f64,
    },
    /// The shop's own fractions of the sugars; they sum to 1.
    Own {
        /// Fraction that is sucrose.
        sucrose: f64,
        /// Fraction that is glucose.
        glucose: f64,
        /// Fraction that is fructose.
        fructose: f64,
        /// Fraction that is lactose.
        lactose: f64,
        /// Fraction that is maltose.
        maltose: f64,
        /// Fraction that is another sugar.
        other: f64,
    },
}

/// High-potency sweeteners whose concentration curves are published.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HighPotencySweetener {
    /// E 955.
    Sucralose,
    /// E 951, a source of phenylalanine.
    Aspartame,
    /// E 950.
    AcesulfameK,
    /// E 960, the rebaudioside A part.
    RebaudiosideA,
    /// E 960, the stevioside part.
    Stevioside,
    /// E 954.
    Saccharin,
}

/// How much of a high-potency sweetener is in an ingredient.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HighPotencyAmount {
    /// Which one.
    pub sweetener: HighPotencySweetener,
    /// Milligrams per 100 g (or per the basis of the composition); `None` where the pack names it without an amount.
    pub milligrams: Option<Figure>,
}

/// A kind of polyol: they differ in energy, sweetness and the chill of dissolving.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PolyolKind {
    /// E 968, without energy by law.
    Erythritol,
    /// E 967.
    Xylitol,
    /// E 420.
    Sorbitol,
    /// E 421.
    Mannitol,
    /// E 965.
    Maltitol,
    /// E 966.
    Lactitol,
    /// E 953.
    Isomalt,
}

impl PolyolKind {
    /// All kinds.
    pub const ALL: [Self; 7] = [
        Self::Erythritol,
        Self::Xylitol,
        Self::Sorbitol,
        Self::Mannitol,
        Self::Maltitol,
        Self::Lactitol,
        Self::Isomalt,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Erythritol => "erythritol",
            Self::Xylitol => "xylitol",
            Self::Sorbitol => "sorbitol",
            Self::Mannitol => "mannitol",
            Self::Maltitol => "maltitol",
            Self::Lactitol => "lactitol",
            Self::Isomalt => "isomalt",
        }
    }
}

/// A named flavour and its strength.
#[derive(Clone, Debug, PartialEq)]
pub struct FlavourStrength {
    /// The flavour: "chestnut".
    pub name: String,
    /// House units per gram; 1 per gram, assumed ±25 %, when nobody has tasted it against another.
    pub per_gram: Option<Figure>,
}

impl FlavourStrength {
    /// The strength that is used: the stated one, or equal per gram with its assumed uncertainty.
    pub fn figure(&self) -> Figure {
        self.per_gram.unwrap_or(Figure::new(1.0, Evidence::Assumed))
    }
}

/// What an ingredient consists of. A figure that is absent is not stated; it is never zero.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Composition {
    /// What the figures are per.
    pub basis: Basis,
    /// Whether carbohydrate has the fibre in it.
    pub carbohydrate_kind: CarbohydrateKind,
    /// The figures that are stated, each in the unit of `units`: what a person read off the pack. [`Self::get`] gives them in
    /// [`Nutrient::unit`].
    pub printed: BTreeMap<Nutrient, Figure>,
    /// In which units energy and salt are printed.
    pub units: LabelUnits,
    /// Which polyol it is, where that is known.
    pub polyol: Option<PolyolKind>,
    /// How the sugars divide.
    pub sugar_profile: Option<SugarProfile>,
    /// The part of the sugars that counts as free sugars (added, or in honey, syrup and juice); 1 for a syrup, 0 for milk.
    pub free_sugar_fraction: Option<f64>,
    /// Flavours, at most 8 over one drink.
    pub flavours: Vec<FlavourStrength>,
    /// High-potency sweeteners, at most 4 over one drink.
    pub high_potency: Vec<HighPotencyAmount>,
}

/// The allergens of Regulation (EU) 1169/2011 Annex II; the nine major ones of the US are among them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Allergen {
    /// Cereals containing gluten.
    Gluten,
    /// Crustaceans.
    Crustaceans,
    /// Eggs.
    Eggs,
    /// Fish.
    Fish,
    /// Peanuts.
    Peanuts,
    /// Soybeans.
    Soybeans,
    /// Milk, lactose included.
    Milk,
    /// Nuts.
    Nuts,
    /// Celery.
    Celery,
    /// Mustard.
    Mustard,
    /// Sesame seeds.
    Sesame,
    /// Sulphur dioxide and sulphites.
    Sulphites,
    /// Lupin.
    Lupin,
    /// Molluscs.
    Molluscs,
}

impl Allergen {
    /// All fourteen, in the order of the annex.
    pub const ALL: [Self; 14] = [
        Self::Gluten,
        Self::Crustaceans,
        Self::Eggs,
        Self::Fish,
        Self::Peanuts,
        Self::Soybeans,
        Self::Milk,
        Self::Nuts,
        Self::Celery,
        Self::Mustard,
        Self::Sesame,
        Self::Sulphites,
        Self::Lupin,
        Self::Molluscs,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Gluten => "cereals containing gluten",
            Self::Crustaceans => "crustaceans",
            Self::Eggs => "eggs",
            Self::Fish => "fish",
            Self::Peanuts => "peanuts",
            Self::Soybeans => "soybeans",
            Self::Milk => "milk",
            Self::Nuts => "nuts",
            Self::Celery => "celery",
            Self::Mustard => "mustard",
            Self::Sesame => "sesame",
            Self::Sulphites => "sulphites",
            Self::Lupin => "lupin",
            Self::Molluscs => "molluscs",
        }
    }

    /// Whether it is an animal or comes from one.
    pub const fn is_animal(self) -> bool {
        matches!(
            self,
            Self::Milk | Self::Eggs | Self::Fish | Self::Crustaceans | Self::Molluscs
        )
    }

    /// What the US law calls it, for the nine that it names (Food Allergen Labeling and Consumer Protection Act of 2004, with
    /// sesame by the FASTER Act of 2021). Of the cereals it names wheat alone; a pack that says "gluten" may mean another one.
    pub fn us_word(self) -> Option<&'static str> {
        match self {
            Self::Gluten => Some("wheat, unless the cereal is another one"),
            Self::Crustaceans => Some("crustacean shellfish"),
            Self::Eggs => Some("eggs"),
            Self::Fish => Some("fish"),
            Self::Peanuts => Some("peanuts"),
            Self::Soybeans => Some("soybeans"),
            Self::Milk => Some("milk"),
            Self::Nuts => Some("tree nuts"),
            Self::Sesame => Some("sesame"),
            Self::Celery | Self::Mustard | Self::Sulphites | Self::Lupin | Self::Molluscs => None,
        }
    }
}

/// What a pack says of allergens.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AllergenStatement {
    /// Contains.
    pub contains: Vec<Allergen>,
    /// May contain traces.
    pub may_contain: Vec<Allergen>,
}

/// What a pack says of diets; `None` is not stated.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Diet {
    /// Suitable for vegans.
    pub vegan: Option<bool>,
    /// Without milk and what is made from it.
    pub dairy_free: Option<bool>,
}

/// An ingredient that the house makes by a recipe of the book.
#[derive(Clone, Debug, PartialEq)]
pub struct HouseMade {
    /// The recipe of one batch.
    pub recipe: RecipeId,
    /// What one batch yields, g. Water makes up the difference to what went in; where something is steeped and taken out, the
    /// difference is what it keeps back.
    pub yield_grams: Figure,
    /// Part of what is steeped that dissolves, 0 to 1; that of a hot brew when none is stated.
    pub extraction: Option<Figure>,
    /// How long it keeps, hours.
    pub shelf_life_hours: Option<f64>,
    /// What is thrown away of a batch, percent.
    pub waste_percent: f64,
}

/// Anything that goes into a drink.
#[derive(Clone, Debug, PartialEq)]
pub struct Ingredient {
    /// Its id.
    pub id: IngredientId,
    /// Its name, in any script.
    pub name: String,
    /// Its brand.
    pub brand: String,
    /// Who sells it.
    pub supplier: String,
    /// Lot of the open pack.
    pub lot: String,
    /// Its form.
    pub form: Form,
    /// The role that it usually plays.
    pub role: Role,
    /// What it consists of; for a house-made one what its recipe does not give (a flavour, say).
    pub composition: Composition,
    /// Density at 20 °C, g/ml, for a liquid.
    pub density: Option<Figure>,
    /// Poured bulk density, g/ml, for a powder.
    pub bulk_density: Option<Figure>,
    /// Temperature at which it goes into a drink, °C; that of the room when none is stated.
    pub temperature: Option<f64>,
    /// The statement of ingredients as printed.
    pub statement: String,
    /// What the pack says of allergens; `None` is not stated.
    pub allergens: Option<AllergenStatement>,
    /// What the pack says of diets.
    pub diet: Diet,
    /// How long an opened pack keeps, hours.
    pub opened_life_hours: Option<f64>,
    /// What it costs.
    pub price: Option<Price>,
    /// What it cost before, the oldest first.
    pub earlier_prices: Vec<EarlierPrice>,
    /// Set when the house makes it.
    pub house_made: Option<HouseMade>,
    /// A note.
    pub note: String,
}

impl Ingredient {
    /// A powder of which nothing is stated yet.
    pub fn new(id: IngredientId, name: String) -> Self {
        Self {
            id,
            name,
            brand: String::new(),
            supplier: String::new(),
            lot: String::new(),
            form: Form::Powder,
            role: Role::Flavour,
            composition: Composition::default(),
            density: None,
            bulk_density: None,
            temperature: None,
            statement: String::new(),
            allergens: None,
            diet: Diet::default(),
            opened_life_hours: None,
            price: None,
            earlier_prices: Vec::new(),
            house_made: None,
            note: String::new(),
        }
    }

    /// Brand and name, as one says it: "Tambrel chestnut powder". A brand that the name begins with is not said twice.
    pub fn full_name(&self) -> String {
        if self.brand.is_empty() || self.name.starts_with(&self.brand) {
            return self.name.clone();
        }
        let mut name = self.name.chars();
        // "Chestnut powder" behind a brand reads "chestnut powder"; other scripts have no case and stay as they are.
        let first: String = name
            .next()
            .map(|first| first.to_lowercase().collect())
            .unwrap_or_default();
        format!("{} {first}{}", self.brand, name.as_str())
    }
}

impl Item for Ingredient {
    type Id = IngredientId;
    fn id(&self) -> &IngredientId {
        &self.id
    }
}
