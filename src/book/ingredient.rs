//! Ingredients: form, composition with evidence, price, allergens and diet.

use super::composition::{Composition, FlavourStrength};
use super::nutrient::Figure;
use super::{
    AllergenStatement, Article, EarlierPrice, EarlierStates, IngredientId, Item, Price, RecipeId,
    Role, Stage, TastedFactor, TastedFigure, Temperature, Translation,
};

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

    /// Its key in reports and in the names of messages.
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
    /// How long it steeps, minutes; none where nothing does, or nobody has said.
    pub steep_minutes: Option<f64>,
    /// How long it keeps, hours.
    pub shelf_life_hours: Option<f64>,
    /// What is thrown away of a batch, percent.
    pub waste_percent: f64,
}

impl HouseMade {
    /// What one batch leaves to use, g.
    pub fn usable_grams(&self) -> f64 {
        self.yield_grams.value * self.usable_part()
    }

    /// Part of a batch that is not thrown away, 0 to 1.
    pub fn usable_part(&self) -> f64 {
        1.0 - self.waste_percent / 100.0
    }
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
    /// Temperature at which it goes into a drink; that of the room when none is stated.
    pub temperature: Option<Temperature>,
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
    /// What suppliers call it, so that their next list finds it.
    pub articles: Vec<Article>,
    /// Whether nobody sells it any more: what is left of it is used up, and no drink is begun with it.
    pub no_longer_sold: bool,
    /// Set when the house makes it.
    pub house_made: Option<HouseMade>,
    /// What tastings have shown of it, the oldest first.
    pub tasted: Vec<TastedFigure>,
    /// A note.
    pub note: String,
    /// What it was before its figures changed, as far as a drink was approved with that.
    pub earlier: EarlierStates<Self>,
    /// What its texts are in other languages.
    pub translations: Vec<Translation>,
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
            articles: Vec::new(),
            no_longer_sold: false,
            house_made: None,
            tasted: Vec::new(),
            note: String::new(),
            earlier: EarlierStates::default(),
            translations: Vec::new(),
        }
    }

    /// Where it usually ends up in a drink: a foam floats, leaf is taken out again.
    pub fn usual_stage(&self) -> Stage {
        match (self.form, self.role) {
            (Form::Foam, Role::Topping | Role::Creamer) | (_, Role::Garnish) => Stage::OnTop,
            (Form::Leaf, Role::Tea) => Stage::Steeped,
            (_, Role::Topping) => Stage::Topping,
            _ => Stage::Mixed,
        }
    }

    /// Its brand before what it is called in another language, as [`Self::full_name`] says it.
    pub fn full_name_as(&self, name: &str) -> String {
        if self.brand.is_empty() || name.starts_with(&self.brand) {
            name.to_owned()
        } else {
            format!("{} {name}", self.brand)
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

impl Ingredient {
    /// The figure of tastings that holds: the last one that was taken over.
    pub fn tasted_figure(&self, what: &TastedFactor) -> Option<&TastedFigure> {
        self.tasted.iter().rev().find(|tasted| tasted.what == *what)
    }

    /// The strength of a flavour that is used: the stated or assumed one, as often as tastings say.
    pub fn strength(&self, flavour: &FlavourStrength) -> Figure {
        let stated = flavour.figure();
        let what = TastedFactor::Flavour(flavour.name.clone());
        match self.tasted_figure(&what) {
            None => stated,
            Some(tasted) => Figure {
                value: stated.value * tasted.times,
                u: Some((stated.value * tasted.u).abs()),
                ..stated
            },
        }
    }

    /// The same with nothing taken over from tastings: what they are weighed against.
    #[must_use]
    pub fn untasted(&self) -> Self {
        Self {
            tasted: Vec::new(),
            ..self.clone()
        }
    }
}

impl Item for Ingredient {
    type Id = IngredientId;
    fn id(&self) -> &IngredientId {
        &self.id
    }
}
