//! The document: a shop's settings, ingredients, measures, vessels and recipes, as plain values.
//!
//! A book may be ill-formed (half-typed, or edited by hand); [`findings`] lists what is wrong with it.
//! Everything is `Clone + PartialEq`; items are shared, so a copy of a book costs a pointer per item.

mod allergen;
mod amount_words;
mod approval_history;
mod as_tasted;
mod change;
mod changes_between;
mod composition;
mod contents;
mod day;
mod difference;
mod earlier;
mod field_differences;
mod figure_name;
mod finding;
mod id;
mod ingredient;
mod inheritance;
mod label_units;
mod limits;
mod line;
mod lineage;
mod lineages;
mod look_up;
mod measure;
mod merge;
mod merged_histories;
mod named_size;
mod nutrient;
mod price;
mod price_change;
mod printed;
mod recipe;
mod references;
mod resolve;
mod resolved;
mod score;
mod settings;
mod shelf;
mod standing;
mod stated_temperature;
mod tasted_cup;
mod tasted_figure;
mod tasting_record;
mod texts;
mod translation;
mod version_edit;
mod vessel;
mod well_formed;

pub use allergen::{Allergen, AllergenList, AllergenStatement, Declared};
pub use amount_words::AmountWordError;
pub use approval_history::ApprovalRecord;
pub use as_tasted::Tasted;
pub use change::{Change, ChangeRefused, ChangedField};
pub use changes_between::{Differences, differences_between};
pub use composition::{
    Basis, CarbohydrateKind, Composition, FlavourStrength, HighPotencyAmount, HighPotencySweetener,
    PolyolKind, SugarProfile,
};
pub use contents::EverythingIn;
pub use day::Day;
pub use difference::{BookDifference, ItemChange, ItemDifference, ItemId, difference_of_books};
pub use earlier::{EarlierState, EarlierStates, TastedWith};
pub use field_differences::{ItemDetail, Side, Together};
pub use figure_name::{FigureName, FigureRange};
pub use finding::{
    AgainstClaim, Finding, FindingKind, IdKind, Place, Severity, SlotKind, StatedClaim, Unfinished,
    YieldLimit,
};
pub use id::{
    IdError, IngredientId, LONGEST_ID, LanguageId, LineId, MeasureId, RecipeId, TastingId,
    VersionId, VesselId,
};
pub use ingredient::{Diet, Form, HouseMade, Ingredient};
pub use label_units::{EnergyUnit, LabelUnits, SALT_PER_SODIUM, SaltUnit};
pub use limits::{LimitPassed, LimitedList, TextMeasure, Written};
pub use line::{Amount, Carried, Entry, Instruction, Line, Role, Stage};
pub use lineages::Lineages;
pub use look_up::{
    DrinkWords, Fit, FoundBy, FoundKind, Hit, Hits, KindWord, LookUpIndex, Spot, WantedWords,
    folded,
};
pub use measure::{
    Calibration, Filling, Measure, MeasureKind, Nominal, Reading, ReadingAmount, WATER_DENSITY,
};
pub use merge::{Conflict, Merge, MergeNote, Part, merge};
pub use nutrient::{Evidence, Figure, Nutrient};
pub use price::{Article, EarlierPrice, Price};
pub use price_change::{PriceInTime, dearer_by, is_same_content, is_same_figure};
pub use recipe::{Approval, MOST_LINES, Recipe, State, Version};
pub use resolve::resolve;
pub use resolved::Resolved;
pub use score::{CupQuantity, DoubtClass, FiledReading, RescaledDoubt};
pub use settings::{
    Axis, Confirmation, Instruments, Level, LevelName, NamedLevel, Settings, StepSetting,
    TemperatureWindow, UsualIce, Yardstick,
};
pub use shelf::{Item, Shelf};
pub use standing::{ApprovalMark, Standing};
pub use tasted_figure::{TastedFactor, TastedFigure};
pub use tasting_record::{MOST_CUPS, TasteNote, TastedCup, Tasting, TastingOutcome};
pub use texts::TextKind;
pub use translation::{Translation, put_translation, translated};
pub use version_edit::put_change;
pub use vessel::{
    Closure, ClosureKind, CoolingReading, CoolingRun, Serviceware, ServicewareKind, Shape, Vessel,
    VesselKind,
};
pub use well_formed::{
    CalledSize, EnergyRange, FOOD_TEMPERATURE, Held, LARGEST_AMOUNT, Miscalled, NamedUnit,
    energy_of_composition, findings, millilitres_in_name, miscalled, nearest, new_errors,
    new_errors_of,
};

pub use crate::quantity::Temperature;

use std::sync::Arc;

/// A shop's book.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Book {
    /// What holds for the whole shop.
    pub settings: Settings,
    /// Everything that can go into a drink.
    pub ingredients: Shelf<Ingredient>,
    /// Scoops, pumps, spoons, jugs and buttons.
    pub measures: Shelf<Measure>,
    /// Cups, shakers and jugs.
    pub vessels: Shelf<Vessel>,
    /// The drinks, and the recipes of what the house makes.
    pub recipes: Shelf<Recipe>,
    /// What was tasted, and what came out.
    pub tastings: Shelf<Tasting>,
}

impl Book {
    /// The ingredient of this id.
    pub fn ingredient(&self, id: &IngredientId) -> Option<&Arc<Ingredient>> {
        self.ingredients.get(id)
    }

    /// The measure of this id.
    pub fn measure(&self, id: &MeasureId) -> Option<&Arc<Measure>> {
        self.measures.get(id)
    }

    /// The vessel of this id.
    pub fn vessel(&self, id: &VesselId) -> Option<&Arc<Vessel>> {
        self.vessels.get(id)
    }

    /// The recipe of this id.
    pub fn recipe(&self, id: &RecipeId) -> Option<&Arc<Recipe>> {
        self.recipes.get(id)
    }

    /// The tasting of this id.
    pub fn tasting(&self, id: &TastingId) -> Option<&Arc<Tasting>> {
        self.tastings.get(id)
    }
}
