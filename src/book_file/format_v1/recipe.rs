//! Recipes, versions and approvals as they stand in a file.

use serde::Deserialize;

use super::{Role, Stage, State};

#[derive(Deserialize)]
pub(crate) enum Amount {
    Grams(f64),
    Millilitres(f64),
    Count(f64, String),
    FillTo(f64),
    FillToRim,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Carried {
    pub(crate) ingredient: String,
    pub(crate) grams: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum Entry {
    Line {
        id: String,
        ingredient: String,
        amount: Amount,
        temperature: Option<f64>,
        role: Role,
        stage: Option<Stage>,
        carried: Option<Carried>,
        #[serde(default)]
        note: String,
    },
    Instruction {
        id: String,
        text: String,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum Change {
    Ingredient(String, String),
    Amount(String, Amount),
    Temperature(String, Option<f64>),
    Role(String, Role),
    Stage(String, Stage),
    Carried(String, Option<Carried>),
    Note(String, String),
    Instruction(String, String),
    /// Behind another entry; at the beginning when `after` is absent.
    Add {
        after: Option<String>,
        entry: Entry,
    },
    Remove(String),
    /// Behind another entry; to the beginning when `after` is absent.
    Move {
        id: String,
        after: Option<String>,
    },
    Cup(String),
    Shaker(Option<String>),
    Strained(bool),
    DrinkingTemperature(Option<f64>),
    MenuPrice(Option<f64>),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Version {
    pub(crate) id: String,
    pub(crate) name: String,
    pub(crate) builds_on: Option<String>,
    pub(crate) state: Option<State>,
    #[serde(default)]
    pub(crate) season: String,
    #[serde(default)]
    pub(crate) changes: Vec<Change>,
}

/// The lines of an approval as they were.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Resolved {
    #[serde(default)]
    pub(crate) entries: Vec<Entry>,
    pub(crate) cup: Option<String>,
    pub(crate) shaker: Option<String>,
    #[serde(default)]
    pub(crate) strained: bool,
    pub(crate) drinking_temperature: Option<f64>,
    pub(crate) menu_price: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Approval {
    pub(crate) version: Option<String>,
    pub(crate) date: String,
    #[serde(default)]
    pub(crate) by: String,
    #[serde(default)]
    pub(crate) reason: String,
    pub(crate) tasted_at: Option<f64>,
    pub(crate) resolved: Resolved,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Recipe {
    pub(crate) id: String,
    pub(crate) name: String,
    pub(crate) state: Option<State>,
    #[serde(default)]
    pub(crate) entries: Vec<Entry>,
    pub(crate) cup: Option<String>,
    pub(crate) shaker: Option<String>,
    #[serde(default)]
    pub(crate) strained: bool,
    pub(crate) drinking_temperature: Option<f64>,
    pub(crate) menu_price: Option<f64>,
    #[serde(default)]
    pub(crate) versions: Vec<Version>,
    #[serde(default)]
    pub(crate) approvals: Vec<Approval>,
    #[serde(default)]
    pub(crate) note: String,
}
