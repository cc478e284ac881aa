//! What 100 g or 100 ml of an ingredient hold, as its pack says it.

use std::collections::BTreeMap;

use super::LabelUnits;
use super::nutrient::{Evidence, Figure, Nutrient};

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

    /// Its key in reports and in the names of messages.
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
