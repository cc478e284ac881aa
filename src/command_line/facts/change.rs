//! What leads from one approval to the next.

use serde_json::{Value, json};

use super::{Fact, amount};
use crate::book::{Amount, Carried, Change, Differences, Entry, LineId, Temperature, VesselId};

/// The changes from one state of a recipe to another, in the order in which they are told.
pub(in crate::command_line) fn changes(differences: &Differences) -> Vec<Fact> {
    let changes = differences.changes.iter();
    let mut facts: Vec<Fact> = changes
        .map(|change| self::change(differences, change))
        .collect();
    if differences.cup_taken_away {
        let before = id(differences.before.cup.as_ref());
        facts.push(Fact::new("cup-taken-away", json!({ "before": before })));
    }
    facts
}

/// A temperature, or both ends of a range.
fn celsius(stated: Temperature) -> Value {
    match stated.ends() {
        [from, to] if stated.is_range() => json!([from, to]),
        _ => json!(stated.celsius()),
    }
}

fn change(of: &Differences, change: &Change) -> Fact {
    let before = |id: &LineId| of.before.line(id);
    let arguments = match change {
        Change::Ingredient(line, to) => json!({
            "line": line.as_str(),
            "after": to.as_str(),
            "before": before(line).map(|line| line.ingredient.as_str()),
        }),
        Change::Amount(line, to) => json!({
            "line": line.as_str(),
            "after": amount(to),
            "before": before(line).map(|line| amount(&line.amount)),
        }),
        Change::Temperature(line, to) => json!({
            "line": line.as_str(),
            "after_celsius": to.map(celsius),
            "before_celsius": before(line).and_then(|line| line.temperature).map(celsius),
        }),
        Change::Role(line, to) => json!({
            "line": line.as_str(),
            "after": to.word(),
            "before": before(line).map(|line| line.role.word()),
        }),
        Change::Stage(line, to) => json!({
            "line": line.as_str(),
            "after": to.word(),
            "before": before(line).map(|line| line.stage.word()),
        }),
        Change::Carried(line, to) => json!({
            "line": line.as_str(),
            "after": carried(to.as_ref()),
            "before": carried(before(line).and_then(|line| line.carried.as_ref())),
        }),
        Change::Note(line, to) => json!({
            "line": line.as_str(),
            "after": to,
            "before": before(line).map(|line| line.note.as_str()),
        }),
        Change::Instruction(line, to) => json!({
            "line": line.as_str(),
            "after": to,
            "before": of.instruction(line),
        }),
        Change::Add(behind, entry) => {
            let behind = behind.as_ref().map(LineId::as_str);
            match entry {
                Entry::Line(line) => json!({
                    "line": line.id.as_str(),
                    "behind": behind,
                    "ingredient": line.ingredient.as_str(),
                    "amount": amount(&line.amount),
                }),
                Entry::Instruction(added) => json!({
                    "line": added.id.as_str(),
                    "behind": behind,
                    "text": added.text,
                }),
            }
        }
        Change::Remove(line) => match before(line) {
            Some(removed) => json!({
                "line": line.as_str(),
                "ingredient": removed.ingredient.as_str(),
                "amount": amount(&removed.amount),
            }),
            None => json!({ "line": line.as_str(), "text": of.instruction(line) }),
        },
        Change::Move(line, behind) => json!({
            "line": line.as_str(),
            "behind": behind.as_ref().map(LineId::as_str),
        }),
        Change::Cup(to) => {
            json!({ "after": to.as_str(), "before": id(of.before.cup.as_ref()) })
        }
        Change::Shaker(to) => {
            json!({ "after": id(to.as_ref()), "before": id(of.before.shaker.as_ref()) })
        }
        Change::Strained(to) => json!({ "after": to }),
        Change::DrinkingTemperature(to) => json!({
            "after_celsius": to,
            "before_celsius": of.before.drinking_temperature,
        }),
        Change::MenuPrice(to) => json!({ "after": to, "before": of.before.menu_price }),
        Change::SugarLevel(to) => {
            json!({ "after_percent": to, "before_percent": of.before.sugar_level })
        }
    };
    Fact::new(kind(change), arguments)
}

fn id(vessel: Option<&VesselId>) -> Option<&str> {
    vessel.map(VesselId::as_str)
}

fn carried(carried: Option<&Carried>) -> Value {
    carried.map_or(Value::Null, |carried| {
        let amount = amount(&Amount::Grams(carried.grams));
        json!({ "ingredient": carried.ingredient.as_str(), "amount": amount })
    })
}

/// The name of a change.
fn kind(change: &Change) -> &'static str {
    match change {
        Change::Ingredient(..) => "ingredient",
        Change::Amount(..) => "amount",
        Change::Temperature(..) => "temperature",
        Change::Role(..) => "role",
        Change::Stage(..) => "stage",
        Change::Carried(..) => "carried",
        Change::Note(..) => "note",
        Change::Instruction(..) => "instruction",
        Change::Add(..) => "add",
        Change::Remove(..) => "remove",
        Change::Move(..) => "move",
        Change::Cup(..) => "cup",
        Change::Shaker(..) => "shaker",
        Change::Strained(..) => "strained",
        Change::DrinkingTemperature(..) => "drinking-temperature",
        Change::MenuPrice(..) => "menu-price",
        Change::SugarLevel(..) => "sugar-level",
    }
}
