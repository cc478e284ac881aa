//! What the engine gives a figure of.

use super::mix::{Component, FLAVOUR_SLOTS};
use crate::book::Nutrient;

const NAMED: usize = 48;

/// Number of figures.
pub const MEASURANDS: usize = NAMED + FLAVOUR_SLOTS;

/// What a figure is of. Masses are of the whole drink as it is handed over, toppings included; concentrations, °Brix and
/// density are of the mixed drink, with the ice that has melted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Measurand {
    /// Mass of the whole drink, g.
    Mass,
    /// Volume of the mixed drink at 20 °C, ml.
    Volume,
    /// Sugars, g.
    TotalSugar,
    /// Free sugars, g.
    FreeSugars,
    /// Sucrose, g.
    Sucrose,
    /// Glucose, g.
    Glucose,
    /// Fructose, g.
    Fructose,
    /// Lactose, g.
    Lactose,
    /// Maltose, g.
    Maltose,
    /// Other sugars, g.
    OtherSugar,
    /// Sucrose-equivalent concentration at the drinking temperature, g/100 ml.
    Sweetness,
    /// Soluble solids, mass percent.
    Brix,
    /// Density at 20 °C, g/ml.
    Density,
    /// Water, ice and tea per gram of everything else, g/g.
    Dilution,
    /// Temperature as it is handed over, °C.
    ServingTemperature,
    /// Ice that is left, g.
    IceLeft,
    /// Minutes until the drinking temperature is reached.
    MinutesToDrinkable,
    /// Energy, kJ.
    EnergyKj,
    /// Energy, kcal.
    EnergyKcal,
    /// Fat, g.
    Fat,
    /// Saturates, g.
    Saturates,
    /// Carbohydrate, g.
    Carbohydrate,
    /// Polyols, g.
    Polyols,
    /// Fibre, g.
    Fibre,
    /// Protein, g.
    Protein,
    /// Salt, g.
    Salt,
    /// Caffeine, mg.
    Caffeine,
    /// Tea solids, g.
    TeaSolids,
    /// Organic acid as citric, g.
    Acid,
    /// Cost with cup, closure and serviceware, in the book's currency.
    Cost,
    /// Part of the cup that is full, percent.
    Fill,
    /// Tea solids of the mixed drink, g/100 ml.
    TeaStrength,
    /// Fat of the mixed drink, g/100 ml.
    Creaminess,
    /// Acid of the mixed drink, g/100 ml.
    Acidity,
    /// Solids of the mixed drink that are not sugars, g/100 ml.
    Body,
    /// Everything but water and ice, g.
    DryMatter,
    /// Sugar of the mixed drink, g/100 ml.
    SugarPer100Ml,
    /// Free sugars of the mixed drink, g/100 ml.
    FreeSugarsPer100Ml,
    /// Energy of the mixed drink, kJ/100 ml.
    EnergyKjPer100Ml,
    /// Energy of the mixed drink, kcal/100 ml.
    EnergyKcalPer100Ml,
    /// Fat of the mixed drink, g/100 ml.
    FatPer100Ml,
    /// Saturates of the mixed drink, g/100 ml.
    SaturatesPer100Ml,
    /// Carbohydrate of the mixed drink, g/100 ml.
    CarbohydratePer100Ml,
    /// Polyols of the mixed drink, g/100 ml.
    PolyolsPer100Ml,
    /// Fibre of the mixed drink, g/100 ml.
    FibrePer100Ml,
    /// Protein of the mixed drink, g/100 ml.
    ProteinPer100Ml,
    /// Salt of the mixed drink, g/100 ml.
    SaltPer100Ml,
    /// Caffeine of the mixed drink, mg/100 ml.
    CaffeinePer100Ml,
}

impl Measurand {
    /// Every named one, in the order of the slots; flavours follow.
    pub const ALL: [Self; NAMED] = [
        Self::Mass,
        Self::Volume,
        Self::TotalSugar,
        Self::FreeSugars,
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::Lactose,
        Self::Maltose,
        Self::OtherSugar,
        Self::Sweetness,
        Self::Brix,
        Self::Density,
        Self::Dilution,
        Self::ServingTemperature,
        Self::IceLeft,
        Self::MinutesToDrinkable,
        Self::EnergyKj,
        Self::EnergyKcal,
        Self::Fat,
        Self::Saturates,
        Self::Carbohydrate,
        Self::Polyols,
        Self::Fibre,
        Self::Protein,
        Self::Salt,
        Self::Caffeine,
        Self::TeaSolids,
        Self::Acid,
        Self::Cost,
        Self::Fill,
        Self::TeaStrength,
        Self::Creaminess,
        Self::Acidity,
        Self::Body,
        Self::DryMatter,
        Self::SugarPer100Ml,
        Self::FreeSugarsPer100Ml,
        Self::EnergyKjPer100Ml,
        Self::EnergyKcalPer100Ml,
        Self::FatPer100Ml,
        Self::SaturatesPer100Ml,
        Self::CarbohydratePer100Ml,
        Self::PolyolsPer100Ml,
        Self::FibrePer100Ml,
        Self::ProteinPer100Ml,
        Self::SaltPer100Ml,
        Self::CaffeinePer100Ml,
    ];

    /// What there is of a component in 100 ml of the mixed drink at 20 °C, what sits in it or floats on it left out: the one meaning
    /// of "per 100 ml" wherever it is said.
    pub const PER_100_ML: [(Self, Component); 12] = [
        (Self::SugarPer100Ml, Component::Sugars),
        (Self::FreeSugarsPer100Ml, Component::FreeSugars),
        (Self::EnergyKjPer100Ml, Component::EnergyKj),
        (Self::EnergyKcalPer100Ml, Component::EnergyKcal),
        (Self::FatPer100Ml, Component::Fat),
        (Self::SaturatesPer100Ml, Component::Saturates),
        (Self::CarbohydratePer100Ml, Component::Carbohydrate),
        (Self::PolyolsPer100Ml, Component::Polyols),
        (Self::FibrePer100Ml, Component::Fibre),
        (Self::ProteinPer100Ml, Component::Protein),
        (Self::SaltPer100Ml, Component::Salt),
        (Self::CaffeinePer100Ml, Component::Caffeine),
    ];

    /// The figure per 100 ml that goes with one of the whole drink.
    pub fn per_100_ml(self) -> Option<Self> {
        Some(match self {
            Self::TotalSugar => Self::SugarPer100Ml,
            Self::FreeSugars => Self::FreeSugarsPer100Ml,
            Self::EnergyKj => Self::EnergyKjPer100Ml,
            Self::EnergyKcal => Self::EnergyKcalPer100Ml,
            Self::Fat => Self::FatPer100Ml,
            Self::Saturates => Self::SaturatesPer100Ml,
            Self::Carbohydrate => Self::CarbohydratePer100Ml,
            Self::Polyols => Self::PolyolsPer100Ml,
            Self::Fibre => Self::FibrePer100Ml,
            Self::Protein => Self::ProteinPer100Ml,
            Self::Salt => Self::SaltPer100Ml,
            Self::Caffeine => Self::CaffeinePer100Ml,
            Self::TeaSolids => Self::TeaStrength,
            Self::Acid => Self::Acidity,
            _ => return None,
        })
    }

    /// The figure of a composition that it is made of; `None` when it is made of several.
    pub const fn nutrient(self) -> Option<Nutrient> {
        Some(match self {
            Self::TotalSugar | Self::FreeSugars | Self::Sweetness => Nutrient::Sugars,
            Self::Fat | Self::Creaminess => Nutrient::Fat,
            Self::Saturates => Nutrient::Saturates,
            Self::Carbohydrate => Nutrient::Carbohydrate,
            Self::Polyols => Nutrient::Polyols,
            Self::Fibre => Nutrient::Fibre,
            Self::Protein => Nutrient::Protein,
            Self::Salt => Nutrient::Salt,
            Self::Caffeine => Nutrient::Caffeine,
            Self::TeaSolids | Self::TeaStrength => Nutrient::TeaSolids,
            Self::Acid | Self::Acidity => Nutrient::Acid,
            Self::Brix => Nutrient::Water,
            _ => return None,
        })
    }

    /// Its place in the vector of figures.
    pub const fn slot(self) -> usize {
        self as usize
    }

    /// Components that it needs, as bits of [`super::Mix::unknown`].
    ///
    /// What no label states can still weigh, warm and take room, so mass alone decides of volume, density, dilution and
    /// temperature; the gap is one of their causes of uncertainty.
    pub const fn needs(self) -> u64 {
        use Component as C;
        match self {
            Self::Mass
            | Self::Volume
            | Self::Density
            | Self::Dilution
            | Self::ServingTemperature
            | Self::IceLeft
            | Self::MinutesToDrinkable
            | Self::Fill => C::Mass.bit(),
            Self::TotalSugar => C::Sugars.bit(),
            Self::FreeSugars => C::FreeSugars.bit(),
            Self::Sucrose => C::Sucrose.bit(),
            Self::Glucose => C::Glucose.bit(),
            Self::Fructose => C::Fructose.bit(),
            Self::Lactose => C::Lactose.bit(),
            Self::Maltose => C::Maltose.bit(),
            Self::OtherSugar => C::OtherSugar.bit(),
            Self::Sweetness => {
                C::Mass.bit()
                    | C::Sugars.bit()
                    | C::Sucrose.bit()
                    | C::Glucose.bit()
                    | C::Fructose.bit()
                    | C::Lactose.bit()
                    | C::Maltose.bit()
                    | C::OtherSugar.bit()
                    | C::PolyolSweetness.bit()
                    | C::HiddenSweetener.bit()
            }
            Self::Brix => C::Mass.bit() | C::Water.bit() | C::Fat.bit() | C::Insoluble.bit(),
            Self::EnergyKj => C::EnergyKj.bit(),
            Self::EnergyKcal => C::EnergyKcal.bit(),
            Self::Fat => C::Fat.bit(),
            Self::Saturates => C::Saturates.bit(),
            Self::Carbohydrate => C::Carbohydrate.bit(),
            Self::Polyols => C::Polyols.bit(),
            Self::Fibre => C::Fibre.bit(),
            Self::Protein => C::Protein.bit(),
            Self::Salt => C::Salt.bit(),
            Self::Caffeine => C::Caffeine.bit(),
            Self::TeaSolids => C::TeaSolids.bit(),
            Self::TeaStrength => C::Mass.bit() | C::TeaSolids.bit(),
            Self::Acid => C::Acid.bit(),
            Self::Acidity => C::Mass.bit() | C::Acid.bit(),
            Self::Cost => C::Cost.bit(),
            Self::Body => C::Mass.bit() | C::Water.bit() | C::Sugars.bit(),
            Self::DryMatter => C::Mass.bit() | C::Water.bit(),
            Self::SugarPer100Ml => C::Mass.bit() | C::Sugars.bit(),
            Self::FreeSugarsPer100Ml => C::Mass.bit() | C::FreeSugars.bit(),
            Self::EnergyKjPer100Ml => C::Mass.bit() | C::EnergyKj.bit(),
            Self::EnergyKcalPer100Ml => C::Mass.bit() | C::EnergyKcal.bit(),
            Self::Creaminess | Self::FatPer100Ml => C::Mass.bit() | C::Fat.bit(),
            Self::SaturatesPer100Ml => C::Mass.bit() | C::Saturates.bit(),
            Self::CarbohydratePer100Ml => C::Mass.bit() | C::Carbohydrate.bit(),
            Self::PolyolsPer100Ml => C::Mass.bit() | C::Polyols.bit(),
            Self::FibrePer100Ml => C::Mass.bit() | C::Fibre.bit(),
            Self::ProteinPer100Ml => C::Mass.bit() | C::Protein.bit(),
            Self::SaltPer100Ml => C::Mass.bit() | C::Salt.bit(),
            Self::CaffeinePer100Ml => C::Mass.bit() | C::Caffeine.bit(),
        }
    }

    /// Whether the known part is worth giving when something is missing ("at least"); otherwise the figure is not given.
    pub const fn is_additive(self) -> bool {
        !matches!(
            self,
            Self::Volume
                | Self::Density
                | Self::Dilution
                | Self::ServingTemperature
                | Self::IceLeft
                | Self::MinutesToDrinkable
                | Self::Fill
                | Self::Brix
                | Self::Body
                | Self::DryMatter
        )
    }

    /// Whether only the mixed drink counts, not what sits in it or on top.
    pub const fn is_of_mixed_drink(self) -> bool {
        matches!(
            self,
            Self::Volume
                | Self::Sweetness
                | Self::Brix
                | Self::Density
                | Self::Dilution
                | Self::TeaStrength
                | Self::Creaminess
                | Self::Acidity
                | Self::Body
                | Self::SugarPer100Ml
                | Self::FreeSugarsPer100Ml
                | Self::EnergyKjPer100Ml
                | Self::EnergyKcalPer100Ml
                | Self::FatPer100Ml
                | Self::SaturatesPer100Ml
                | Self::CarbohydratePer100Ml
                | Self::PolyolsPer100Ml
                | Self::FibrePer100Ml
                | Self::ProteinPer100Ml
                | Self::SaltPer100Ml
                | Self::CaffeinePer100Ml
        )
    }

    /// Its name in machine-readable output; a figure per 100 ml has that of the whole drink.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Mass => "mass",
            Self::Volume => "volume",
            Self::TotalSugar => "total_sugar",
            Self::FreeSugars | Self::FreeSugarsPer100Ml => "free_sugars",
            Self::Sucrose => "sucrose",
            Self::Glucose => "glucose",
            Self::Fructose => "fructose",
            Self::Lactose => "lactose",
            Self::Maltose => "maltose",
            Self::OtherSugar => "other_sugars",
            Self::Sweetness => "sweetness",
            Self::Brix => "soluble_solids",
            Self::Density => "density",
            Self::Dilution => "dilution",
            Self::ServingTemperature => "serving_temperature",
            Self::IceLeft => "ice_left",
            Self::MinutesToDrinkable => "minutes_to_drinkable",
            Self::EnergyKj
            | Self::EnergyKcal
            | Self::EnergyKjPer100Ml
            | Self::EnergyKcalPer100Ml => "energy",
            Self::Fat | Self::FatPer100Ml => "fat",
            Self::Saturates | Self::SaturatesPer100Ml => "saturates",
            Self::Carbohydrate | Self::CarbohydratePer100Ml => "carbohydrate",
            Self::Polyols | Self::PolyolsPer100Ml => "polyols",
            Self::Fibre | Self::FibrePer100Ml => "fibre",
            Self::Protein | Self::ProteinPer100Ml => "protein",
            Self::Salt | Self::SaltPer100Ml => "salt",
            Self::Caffeine | Self::CaffeinePer100Ml => "caffeine",
            Self::TeaSolids => "tea_solids",
            Self::Acid => "acid",
            Self::Cost => "cost",
            Self::Fill => "fill",
            Self::TeaStrength => "tea_strength",
            Self::Creaminess => "creaminess",
            Self::Acidity => "acidity",
            Self::Body => "body",
            Self::DryMatter => "dry_matter",
            Self::SugarPer100Ml => "sugar",
        }
    }

    /// The unit; that of cost is the book's currency and stands in the book.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Volume => "ml",
            Self::EnergyKjPer100Ml => "kJ/100 ml",
            Self::EnergyKcalPer100Ml => "kcal/100 ml",
            Self::CaffeinePer100Ml => "mg/100 ml",
            Self::Sweetness
            | Self::TeaStrength
            | Self::Creaminess
            | Self::Acidity
            | Self::Body
            | Self::SugarPer100Ml
            | Self::FreeSugarsPer100Ml
            | Self::FatPer100Ml
            | Self::SaturatesPer100Ml
            | Self::CarbohydratePer100Ml
            | Self::PolyolsPer100Ml
            | Self::FibrePer100Ml
            | Self::ProteinPer100Ml
            | Self::SaltPer100Ml => "g/100 ml",
            Self::Brix => "°Brix",
            Self::Density => "g/ml",
            Self::Dilution => "g/g",
            Self::ServingTemperature => "°C",
            Self::MinutesToDrinkable => "min",
            Self::EnergyKj => "kJ",
            Self::EnergyKcal => "kcal",
            Self::Caffeine => "mg",
            Self::Cost => "",
            Self::Fill => "%",
            _ => "g",
        }
    }
}

/// Place of a flavour in the vector of figures, in house units per 100 ml of the mixed drink.
pub const fn flavour_figure(flavour: usize) -> usize {
    NAMED + flavour
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_measurand_has_its_own_place() {
        assert_eq!(
            Measurand::ALL.map(Measurand::slot).to_vec(),
            (0..NAMED).collect::<Vec<_>>()
        );
        const { assert!(MEASURANDS <= 64) };
    }
}
