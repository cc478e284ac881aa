//! What a number of a book is, and what it can be: the facts of a finding about a number.

use super::{Axis, Nutrient};

/// Names a number of a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FigureName {
    /// Amount of a line.
    Amount,
    /// Temperature of a line, an ingredient, a measure or a vessel.
    Temperature,
    /// Syrup that sticks to what a line adds.
    CarriedSyrup,
    /// Price of a drink on the menu.
    MenuPrice,
    /// Temperature at which a drink is compared.
    DrinkingTemperature,
    /// The part of the added sweetness that a drink is made with.
    SugarLevel,
    /// A nutrient of a composition.
    Nutrient(Nutrient),
    /// Standard uncertainty of any figure.
    Uncertainty,
    /// The part of the sugars that counts as free.
    FreeSugarFraction,
    /// A sugar, as a part of all sugars.
    SugarFraction,
    /// Dextrose equivalent of a glucose syrup.
    DextroseEquivalent,
    /// Density of an ingredient.
    Density,
    /// Density of an ingredient as it is poured.
    BulkDensity,
    /// Price of a pack.
    PackPrice,
    /// Price of a pack at an earlier day.
    EarlierPackPrice,
    /// What a pack holds.
    PackContent,
    /// What is lost on the way.
    Waste,
    /// What a batch weighs.
    Yield,
    /// What a steeped leaf gives to the water.
    Extraction,
    /// How long something steeps.
    SteepingTime,
    /// Volume of a measure, or of the water of a cooling run.
    Volume,
    /// Mass of what a measure doses, or of a vessel.
    Mass,
    /// The smallest part of a measure that is counted.
    Increment,
    /// A reading of a measure or a thermometer.
    Reading,
    /// Uses that were weighed together.
    UsesInReading,
    /// Time of a reading of a cooling run.
    ReadingTime,
    /// What a vessel holds to its rim.
    Capacity,
    /// Heat that a vessel takes up.
    SpecificHeat,
    /// Cooling time of a vessel.
    CoolingTime,
    /// How fast a closed vessel cools beside the open one.
    CoolingFactor,
    /// Price of a vessel, a lid or a straw.
    Price,
    /// Height of a vessel.
    Height,
    /// Diameter of a vessel at its bottom.
    BottomDiameter,
    /// Diameter of a vessel at its top.
    TopDiameter,
    /// Room that a lid leaves below the rim.
    HeadRoom,
    /// Temperature of the shop.
    RoomTemperature,
    /// Temperature of the refrigerator.
    RefrigeratorTemperature,
    /// Temperature at which hot drinks are drunk.
    HotDrinkingTemperature,
    /// Temperature at which iced drinks are drunk.
    IcedDrinkingTemperature,
    /// Temperature of ice from the bin.
    IceTemperature,
    /// Density of ice as it is poured.
    IceBulkDensity,
    /// How fast ice melts.
    IceMeltRate,
    /// How much ice is left in the cup.
    IceLeft,
    /// A sugar or ice level, by its name as far as it is shown.
    Level(String),
    /// Temperatures that hot drinks are served at.
    HotWindow,
    /// Temperatures that iced drinks are served at.
    IcedWindow,
    /// Sales tax in the prices of the menu.
    SalesTax,
    /// People in a tasting.
    Tasters,
    /// How many times as much one cup has as another.
    TimesAsMuch,
    /// How many times what is stated an ingredient was tasted to have.
    TastedTimes,
    /// What doubts are multiplied by.
    DoubtTimes,
    /// The smallest step of the scale.
    ScaleStep,
    /// What a thermometer may be off.
    ThermometerError,
    /// What the mark of a jug may be off.
    MarkError,
    /// The noticeable step of an axis, as a part of the figure.
    NoticeableStep(Axis),
    /// The least that a noticeable step of an axis can be.
    StepFloor(Axis),
    /// How much an axis counts.
    AxisWeight(Axis),
}

/// The least and the most that a number can be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FigureRange {
    /// The least, in the unit.
    pub least: f64,
    /// The most, in the unit.
    pub most: f64,
    /// The metric unit of both; empty when there is none.
    pub unit: &'static str,
}

impl FigureRange {
    /// From the least to the most, in a metric unit.
    pub const fn new(least: f64, most: f64, unit: &'static str) -> Self {
        Self { least, most, unit }
    }

    /// Whether a number lies in it; what is no number does not.
    pub fn contains(&self, value: f64) -> bool {
        (self.least..=self.most).contains(&value)
    }
}
