//! The causes of uncertainty: one per physical cause, so that what two lines or two versions share is counted once.

use crate::book::{
    HighPotencySweetener, IngredientId, LineId, MeasureId, Nutrient, PolyolKind, VesselId,
};

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
}

impl Sweet {
    /// All of them, in the order of their slots.
    pub const ALL: [Self; 5] = [
        Self::Glucose,
        Self::Fructose,
        Self::Lactose,
        Self::Maltose,
        Self::OtherSugar,
    ];
}

/// A physical cause of uncertainty. Equal causes in two drinks are the same cause, unless [`Cause::is_own`].
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
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
    /// The calibration of a measure: with an ingredient that was weighed in it, or of the measure itself, for all that it doses.
    Calibration(MeasureId, Option<IngredientId>),
    /// How much of leaf that is steeped dissolves.
    Extraction(IngredientId),
    /// How much water leaf keeps back.
    Retention(IngredientId),
    /// The yield of a house-made ingredient.
    Yield(IngredientId),
    /// The part of an ingredient's sugars that counts as free.
    FreeSugars(IngredientId),
    /// The temperature of the room and of what stands in it.
    RoomTemperature,
    /// The temperature at which an ingredient comes.
    Temperature(IngredientId),
    /// The temperature at which a measure pours.
    MeasureTemperature(MeasureId),
    /// The temperature that a line states.
    LineTemperature(LineId),
    /// The heat capacity of a vessel.
    VesselHeat(VesselId),
    /// How fast a drink cools in a vessel.
    Cooling(VesselId),
    /// The relative sweetness of a sugar.
    RelativeSweetness(Sweet),
    /// The relative sweetness of a polyol.
    PolyolSweetness(Option<PolyolKind>),
    /// How sweet an ingredient was tasted to be.
    TastedSweetness(IngredientId),
    /// Whether a polyol of no known kind has energy.
    PolyolEnergy(IngredientId),
    /// How sweet a high-potency sweetener is.
    Potency(HighPotencySweetener),
    /// What several high-potency sweeteners taste of together.
    SweetenerMixture,
    /// How far the freezing point is lowered.
    FreezingPoint,
    /// How far the ice has melted when the drink is handed over.
    Melting,
    /// The specific heat of what is dissolved.
    HeatModel,
    /// The volume of what is dissolved.
    DensityModel,
    /// The scatter and the readings of one line of a batch of a house-made ingredient.
    Batch(IngredientId, LineId),
    /// The scatter of the uses of a measure in one line of one drink.
    UseScatter(LineId),
    /// What the scale or the eye at a mark is off in one line of one drink.
    Reading(LineId),
}

impl Cause {
    /// Whether it is about how much of something goes in, not about what it is.
    pub(super) fn is_of_amount(&self) -> bool {
        matches!(
            self,
            Self::Calibration(..)
                | Self::UseScatter(_)
                | Self::Reading(_)
                | Self::Density(_)
                | Self::BulkDensity(_)
        )
    }

    /// Whether it is drawn anew for every drink that is made: the counter's own scatter.
    pub fn is_own(&self) -> bool {
        matches!(self, Self::UseScatter(_) | Self::Reading(_))
    }
}
