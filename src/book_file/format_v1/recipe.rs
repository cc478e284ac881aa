//! Recipes, versions and approvals as they stand in a file.

use super::super::checker::Checker;
use super::earlier::EarlierStates;
use super::stored::{Stored, file_group, in_file};
use super::{CupQuantity, Role, Stage, State, Temperature, Translation};
use crate::book::MOST_LINES;

in_file! {
    struct Recipe named by id {
        id: String,
        name: String,
        state: Option<State> = nothing,
        entries: Vec<Entry> = nothing,
        cup: Option<String> = nothing,
        shaker: Option<String> = nothing,
        strained: bool = nothing,
        drinking_temperature: Option<f64> = nothing,
        menu_price: Option<f64> = nothing,
        sugar_level: Option<f64> = nothing,
        versions: Vec<Version> = nothing,
        approvals: Vec<Approval> = nothing,
        readings: Vec<FiledReading> = nothing,
        note: String = nothing,
        earlier: EarlierStates<Resolved> = nothing,
        translations: Vec<Translation> = nothing,
    }
}

in_file! {
    enum Entry with parts here {
        Line {
            id: String,
            ingredient: String,
            amount: Amount,
            temperature: Option<Temperature> = nothing,
            role: Role,
            stage: Option<Stage> = nothing,
            carried: Option<Carried> = nothing,
            note: String = nothing,
        } as Line,
        Instruction {
            id: String,
            text: String,
        } as Instruction,
        ;
        const MOST: usize = MOST_LINES;

        fn label(&self) -> &str {
            match self {
                Self::Line { id, .. } | Self::Instruction { id, .. } => id,
            }
        }
    }
}

in_file! {
    enum Amount with parts here {
        Grams(grams: f64),
        Millilitres(millilitres: f64),
        Count(uses: f64, measure: String),
        FillTo(millilitres: f64),
        FillToRim,
    }
}

in_file! {
    struct Carried {
        ingredient: String,
        grams: f64,
    }
}

in_file! {
    struct Version named by id {
        id: String,
        name: String,
        builds_on: Option<String> = nothing,
        state: Option<State> = nothing,
        season: String = nothing,
        changes: Vec<Change> = nothing,
    }
}

in_file! {
    /// What stands behind another entry stands at the beginning when `after` is absent.
    enum Change with parts within {
        Ingredient(id: String, ingredient: String),
        Amount(id: String, amount: Amount),
        Temperature(id: String, temperature: Option<Temperature>),
        Role(id: String, role: Role),
        Stage(id: String, stage: Stage),
        Carried(id: String, carried: Option<Carried>),
        Note(id: String, note: String),
        Instruction(id: String, text: String),
        Add {
            after: Option<String> = nothing,
            entry: Entry,
        } as tuple,
        Remove(id: String),
        Move {
            id: String,
            after: Option<String> = nothing,
        } as tuple,
        Cup(cup: String),
        Shaker(shaker: Option<String>),
        Strained(strained: bool),
        DrinkingTemperature(drinking_temperature: Option<f64>),
        MenuPrice(menu_price: Option<f64>),
        SugarLevel(sugar_level: Option<f64>),
        ;
        const MOST: usize = MOST_LINES;
    }
}

in_file! {
    struct FiledReading {
        version: Option<String> = nothing,
        date: String,
        by: String = nothing,
        what: CupQuantity,
        value: f64,
        u: f64,
        foretold: f64,
        foretold_u: f64,
        of_class: f64,
        times: f64,
    }
}

in_file! {
    struct Approval {
        version: Option<String> = nothing,
        date: String,
        by: String = nothing,
        reason: String = nothing,
        tasted_at: Option<f64> = nothing,
        resolved: Resolved,
        tasted_with: Option<TastedWith> = nothing,
    }
}

in_file! {
    /// Revisions of what an approval was tasted with; the first one is left out.
    struct TastedWith {
        settings: u32 = nothing,
        ingredients: Vec<(String, u32)> = nothing,
        measures: Vec<(String, u32)> = nothing,
        vessels: Vec<(String, u32)> = nothing,
        recipes: Vec<(String, u32)> = nothing,
    }
}

in_file! {
    /// The lines of an approval as they were.
    struct Resolved {
        entries: Vec<Entry> = nothing,
        cup: Option<String> = nothing,
        shaker: Option<String> = nothing,
        strained: bool = nothing,
        drinking_temperature: Option<f64> = nothing,
        menu_price: Option<f64> = nothing,
        sugar_level: Option<f64> = nothing,
    }
}
