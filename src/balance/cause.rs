//! The causes of uncertainty: one per physical cause, so that what two lines or two versions share is counted once.

use crate::book::{IngredientId, LineId, MeasureId, Nutrient, VesselId};

/// Sugars whose relative sweetness is uncertain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sweet {
    /// Glucose.
    Glucose,
    /// Fructose.
    Fructose,
    /// Lactose.
    Lactose,
    /// Maltose.
    Maltose,
    /// Another sugar.
    OtherSugar,
    /// Polyols.
    Polyol,
}

impl Sweet {
    /// All of them, in the order of their slots.
    pub const ALL: [Self; 6] = [
        Self::Glucose,
        Self::Fructose,
        Self::Lactose,
        Self::Maltose,
        Self::OtherSugar,
        Self::Polyol,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Glucose => "glucose",
            Self::Fructose => "fructose",
            Self::Lactose => "lactose",
            Self::Maltose => "maltose",
            Self::OtherSugar => "other sugars",
            Self::Polyol => "polyols",
        }
    }
}

/// A physical cause of uncertainty. Equal causes in two drinks are the same cause, unless [`Cause::is_own`].
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cause {
    /// A figure of an ingredient's composition.
    Composition(IngredientId, Nutrient),
    /// How an ingredient's sugars divide.
    SugarSplit(IngredientId),
    /// What an ingredient does not state: water or solids.
    Undeclared(IngredientId),
    /// The strength of a flavour in an ingredient.
    Flavour(IngredientId, usize),
    /// A high-potency sweetener in an ingredient.
    HighPotency(IngredientId, usize),
    /// The density of an ingredient.
    Density(IngredientId),
    /// The poured bulk density of an ingredient.
    BulkDensity(IngredientId),
    /// The calibration of a measure with an ingredient.
    Calibration(MeasureId, IngredientId),
    /// The yield of a house-made ingredient.
    Yield(IngredientId),
    /// The temperature of the room and of what stands in it.
    RoomTemperature,
    /// The temperature at which an ingredient comes.
    Temperature(IngredientId),
    /// The heat capacity of a vessel.
    VesselHeat(VesselId),
    /// How fast a drink cools in a vessel.
    Cooling(VesselId),
    /// The relative sweetness of a sugar.
    RelativeSweetness(Sweet),
    /// The scatter of the uses of a measure in one line of one drink.
    UseScatter(LineId),
    /// What the scale or the eye at a mark is off in one line of one drink.
    Reading(LineId),
}

impl Cause {
    /// Whether it is drawn anew for every drink that is made: the counter's own scatter.
    pub fn is_own(&self) -> bool {
        matches!(self, Self::UseScatter(_) | Self::Reading(_))
    }
}
