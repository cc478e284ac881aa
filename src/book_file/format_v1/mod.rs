//! Format 1 as it stands in a file: what serde reads, before any id or number has been checked.
//!
//! A field that may be absent is `Option` or has a default that says nothing (no text, no items). A number that would be
//! invented by a default (the waste of a pack, the head room of a lid) has none and must be stated.

mod ingredient;
mod recipe;
mod words;

pub(crate) use ingredient::{
    Basis, Composition, EarlierPrice, FIGURE, Figure, HouseMade, Ingredient, Price, SugarProfile,
};
pub(crate) use recipe::{Amount, Approval, Carried, Change, Entry, Recipe, Resolved, Version};
pub(crate) use words::{
    Allergen, CarbohydrateKind, ClosureKind, EnergyUnit, Evidence, Filling, Form,
    HighPotencySweetener, MeasureKind, PolyolKind, Role, SaltUnit, Stage, State, VesselKind,
    Yardstick,
};

use serde::Deserialize;

/// The whole file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Book {
    /// Read before everything else; here so that it is a known field.
    #[serde(rename = "format")]
    _format: u64,
    #[serde(default)]
    pub(crate) settings: Settings,
    #[serde(default)]
    pub(crate) ingredients: Vec<Ingredient>,
    #[serde(default)]
    pub(crate) measures: Vec<Measure>,
    #[serde(default)]
    pub(crate) vessels: Vec<Vessel>,
    #[serde(default)]
    pub(crate) recipes: Vec<Recipe>,
}

/// What is present overrides the defaults of [`crate::book::Settings`].
#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(crate) struct Settings {
    pub(crate) shop: String,
    pub(crate) note: String,
    pub(crate) currency: Option<String>,
    pub(crate) room_temperature: Option<f64>,
    pub(crate) refrigerator_temperature: Option<f64>,
    pub(crate) ice_temperature: Option<f64>,
    pub(crate) hot_drinking_temperature: Option<f64>,
    pub(crate) iced_drinking_temperature: Option<f64>,
    pub(crate) hot_window: Option<TemperatureWindow>,
    pub(crate) iced_window: Option<TemperatureWindow>,
    pub(crate) ice_bulk_density: Option<f64>,
    pub(crate) ice_melt_rate: Option<f64>,
    pub(crate) sales_tax_percent: Option<f64>,
    pub(crate) instruments: Instruments,
    pub(crate) steps: Vec<StepSetting>,
    pub(crate) yardsticks: Vec<Yardstick>,
    pub(crate) sugar_levels: Vec<NamedLevel>,
    pub(crate) ice_levels: Vec<NamedLevel>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(crate) struct Instruments {
    pub(crate) scale_grams: Option<f64>,
    pub(crate) thermometer_kelvin: Option<f64>,
    pub(crate) jug_percent: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NamedLevel {
    pub(crate) name: String,
    pub(crate) percent: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TemperatureWindow {
    pub(crate) from: f64,
    pub(crate) to: f64,
}

#[derive(Deserialize)]
pub(crate) enum Axis {
    Sweetness,
    TeaStrength,
    Flavour(String),
    Creaminess,
    Acidity,
    Body,
    Temperature,
    Volume,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StepSetting {
    pub(crate) axis: Axis,
    pub(crate) fraction: f64,
    pub(crate) floor: f64,
    pub(crate) weight: f64,
}

#[derive(Deserialize)]
pub(crate) enum Nominal {
    Volume(f64),
    Mass(f64),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Reading {
    pub(crate) ingredient: Option<String>,
    pub(crate) uses: u32,
    pub(crate) grams: f64,
    pub(crate) date: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Measure {
    pub(crate) id: String,
    pub(crate) name: String,
    pub(crate) kind: MeasureKind,
    pub(crate) nominal: Option<Nominal>,
    pub(crate) filling: Option<Filling>,
    pub(crate) increment: Option<f64>,
    pub(crate) temperature: Option<f64>,
    #[serde(default)]
    pub(crate) readings: Vec<Reading>,
    #[serde(default)]
    pub(crate) note: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Shape {
    pub(crate) height: f64,
    pub(crate) bottom: f64,
    pub(crate) top: f64,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Closure {
    pub(crate) kind: ClosureKind,
    pub(crate) price: Option<f64>,
    pub(crate) head_room: f64,
    pub(crate) cooling_factor: Option<f64>,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum ServicewareKind {
    Straw { wide: bool },
    Sleeve,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Serviceware {
    pub(crate) kind: ServicewareKind,
    pub(crate) price: Option<f64>,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CoolingReading {
    pub(crate) minutes: f64,
    pub(crate) celsius: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CoolingRun {
    pub(crate) room: f64,
    pub(crate) millilitres: Option<f64>,
    #[serde(default)]
    pub(crate) readings: Vec<CoolingReading>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Vessel {
    pub(crate) id: String,
    pub(crate) name: String,
    pub(crate) kind: VesselKind,
    pub(crate) capacity: f64,
    pub(crate) shape: Option<Shape>,
    pub(crate) mass: Option<f64>,
    pub(crate) specific_heat: Option<f64>,
    pub(crate) temperature: Option<f64>,
    pub(crate) cooling_minutes: Option<f64>,
    pub(crate) cooling_run: Option<CoolingRun>,
    pub(crate) price: Option<f64>,
    #[serde(default)]
    pub(crate) closures: Vec<Closure>,
    #[serde(default)]
    pub(crate) serviceware: Vec<Serviceware>,
    #[serde(default)]
    pub(crate) note: String,
}
