//! What is taken for granted of an ingredient because nobody states it, and why.

use super::measurand::Measurand;
use super::mix::Component;
use crate::book::Nutrient;
use crate::quantity::Uncertain;

/// What an ingredient plainly is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// Water and ice: by definition nothing else.
    Water,
    /// Sugar, plain syrup, honey: what is there to sweeten, and sweetens by its sugars.
    Sugar,
    /// Something that is there to sweeten, by other means or by what nobody has stated.
    Sweetener,
    /// Milk and cream.
    Milk,
    /// Powdered creamers and plant drinks.
    Creamer,
    /// Tea that is brewed.
    BrewedTea,
    /// Dry leaf.
    Leaf,
    /// Tea as powder, concentrate or paste.
    TeaPowder,
    /// A syrup with a flavour.
    FlavourSyrup,
    /// A liquid that flavours or carries a drink: juice, purée.
    Juice,
    /// A powder that flavours or carries a drink.
    FlavourPowder,
    /// A paste.
    Paste,
    /// Pieces.
    Pieces,
}

/// Why a figure that nobody has stated is taken for this.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Because {
    /// It is of this kind.
    Kind(Kind),
    /// The statement of ingredients names none.
    StatementNamesNone,
    /// What is stated adds up to the whole.
    NothingLeft,
    /// The whole that it is a part of is nothing.
    PartOfNothing,
}

/// What can be taken for granted of an ingredient.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Assumed {
    /// A figure of its composition, per 100 g in [`Nutrient::unit`].
    Figure(Nutrient),
    /// The moisture of a powder, g per 100 g.
    Moisture,
    /// How its sugars divide.
    SugarSplit,
    /// The part of its sugars that counts as free.
    FreeSugars,
    /// That no high-potency sweetener is in it, mg.
    NoSweetener,
    /// What the rest of it is: water in a liquid, and solids like carbohydrate otherwise.
    Rest,
    /// Its density, g/ml.
    Density,
    /// The part of a measure that pieces of it fill.
    Packing,
    /// The density of leaf as it is poured, g/ml.
    PouredDensity,
    /// Which polyol it holds.
    PolyolKind,
    /// How strong one of its flavours is, by its place among them, house units per gram.
    Flavour(usize),
}

/// Something that nobody has stated and that is taken for granted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Assumption {
    /// What.
    pub what: Assumed,
    /// What it is taken for; `None` for what is no single number.
    pub figure: Option<Uncertain>,
    /// Why.
    pub because: Because,
}

impl Assumption {
    /// Whether a figure of a drink rests on it directly; what weighs and takes room touches everything a little.
    pub fn concerns(&self, measurand: Measurand) -> bool {
        use Component as C;
        let bits = match self.what {
            Assumed::Figure(nutrient) => match nutrient {
                Nutrient::Energy => C::EnergyKj.bit() | C::EnergyKcal.bit(),
                Nutrient::Water => C::Water.bit(),
                Nutrient::Fat => C::Fat.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit(),
                Nutrient::Saturates => C::Saturates.bit(),
                Nutrient::Carbohydrate => {
                    C::Carbohydrate.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit()
                }
                Nutrient::Sugars => C::Sugars.bit() | C::Sucrose.bit(),
                Nutrient::Polyols => C::Polyols.bit() | C::PolyolSweetness.bit(),
                Nutrient::Fibre => C::Fibre.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit(),
                Nutrient::Protein => C::Protein.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit(),
                Nutrient::Salt => C::Salt.bit(),
                Nutrient::Acid => C::Acid.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit(),
                Nutrient::TeaSolids => C::TeaSolids.bit(),
                Nutrient::Insoluble => C::Insoluble.bit(),
                Nutrient::Caffeine => C::Caffeine.bit(),
                Nutrient::Brix => 0,
            },
            Assumed::Moisture | Assumed::Rest => C::Water.bit(),
            Assumed::SugarSplit => C::Sucrose.bit(),
            Assumed::FreeSugars => C::FreeSugars.bit(),
            Assumed::NoSweetener => C::HiddenSweetener.bit(),
            Assumed::Density | Assumed::Packing | Assumed::PouredDensity | Assumed::Flavour(_) => 0,
            Assumed::PolyolKind => {
                C::PolyolSweetness.bit() | C::EnergyKj.bit() | C::EnergyKcal.bit()
            }
        };
        measurand.needs() & bits != 0
    }
}
