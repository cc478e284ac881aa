//! Recipes, versions and approvals from a file.

use super::{Checker, file};
use crate::book::{
    Amount, Approval, Carried, Change, Entry, Instruction, Line, Recipe, Resolved, Role, Version,
};

pub(super) fn recipe(checker: &mut Checker<'_>, found: file::Recipe) -> Recipe {
    Recipe {
        id: checker.id("id", &found.id),
        name: found.name,
        state: found.state.map(Into::into).unwrap_or_default(),
        entries: checker.bounded("entries", found.entries, entry_id, entry),
        cup: checker.optional_id("cup", found.cup.as_ref()),
        shaker: checker.optional_id("shaker", found.shaker.as_ref()),
        strained: found.strained,
        drinking_temperature: checker
            .optional_number("drinking_temperature", found.drinking_temperature),
        menu_price: checker.optional_number("menu_price", found.menu_price),
        versions: checker.items("versions", found.versions, |version| &version.id, version),
        approvals: checker.items("approvals", found.approvals, |_| "", approval),
        note: found.note,
    }
}

fn version(checker: &mut Checker<'_>, found: file::Version) -> Version {
    Version {
        id: checker.id("id", &found.id),
        name: found.name,
        builds_on: checker.optional_id("builds_on", found.builds_on.as_ref()),
        state: found.state.map(Into::into).unwrap_or_default(),
        season: found.season,
        changes: checker.bounded("changes", found.changes, |_| "", change),
    }
}

fn approval(checker: &mut Checker<'_>, found: file::Approval) -> Approval {
    Approval {
        version: checker.optional_id("version", found.version.as_ref()),
        date: found.date,
        by: found.by,
        reason: found.reason,
        tasted_at: checker.optional_number("tasted_at", found.tasted_at),
        resolved: checker.within("resolved", |checker| resolved(checker, found.resolved)),
    }
}

fn resolved(checker: &mut Checker<'_>, found: file::Resolved) -> Resolved {
    Resolved {
        entries: checker.bounded("entries", found.entries, entry_id, entry),
        cup: checker.optional_id("cup", found.cup.as_ref()),
        shaker: checker.optional_id("shaker", found.shaker.as_ref()),
        strained: found.strained,
        drinking_temperature: checker
            .optional_number("drinking_temperature", found.drinking_temperature),
        menu_price: checker.optional_number("menu_price", found.menu_price),
    }
}

fn entry_id(found: &file::Entry) -> &str {
    match found {
        file::Entry::Line { id, .. } | file::Entry::Instruction { id, .. } => id,
    }
}

fn entry(checker: &mut Checker<'_>, found: file::Entry) -> Entry {
    match found {
        file::Entry::Instruction { id, text } => Entry::Instruction(Instruction {
            id: checker.id("id", &id),
            text,
        }),
        file::Entry::Line {
            id,
            ingredient,
            amount: how_much,
            temperature,
            role,
            stage,
            carried: comes_along,
            note,
        } => Entry::Line(Line {
            id: checker.id("id", &id),
            ingredient: checker.id("ingredient", &ingredient),
            amount: amount(checker, &how_much),
            temperature: checker.optional_number("temperature", temperature),
            role: role.into(),
            stage: stage.map(Into::into).unwrap_or_default(),
            carried: comes_along.map(|found| carried(checker, &found)),
            note,
        }),
    }
}

fn amount(checker: &mut Checker<'_>, found: &file::Amount) -> Amount {
    match found {
        file::Amount::Grams(grams) => Amount::Grams(checker.number("amount", *grams)),
        file::Amount::Millilitres(millilitres) => {
            Amount::Millilitres(checker.number("amount", *millilitres))
        }
        file::Amount::Count(uses, measure) => Amount::Count(
            checker.number("amount", *uses),
            checker.id("amount", measure),
        ),
        file::Amount::FillTo(millilitres) => Amount::FillTo(checker.number("amount", *millilitres)),
        file::Amount::FillToRim => Amount::FillToRim,
    }
}

fn carried(checker: &mut Checker<'_>, found: &file::Carried) -> Carried {
    checker.within("carried", |checker| Carried {
        ingredient: checker.id("ingredient", &found.ingredient),
        grams: checker.number("grams", found.grams),
    })
}

fn change(checker: &mut Checker<'_>, found: file::Change) -> Change {
    use file::Change as Found;
    match found {
        Found::Ingredient(id, to) => {
            Change::Ingredient(checker.id("id", &id), checker.id("ingredient", &to))
        }
        Found::Amount(id, to) => Change::Amount(checker.id("id", &id), amount(checker, &to)),
        Found::Temperature(id, to) => Change::Temperature(
            checker.id("id", &id),
            checker.optional_number("temperature", to),
        ),
        Found::Role(id, to) => Change::Role(checker.id("id", &id), Role::from(to)),
        Found::Stage(id, to) => Change::Stage(checker.id("id", &id), to.into()),
        Found::Carried(id, to) => {
            Change::Carried(checker.id("id", &id), to.map(|to| carried(checker, &to)))
        }
        Found::Note(id, to) => Change::Note(checker.id("id", &id), to),
        Found::Instruction(id, to) => Change::Instruction(checker.id("id", &id), to),
        Found::Add {
            after,
            entry: added,
        } => {
            let after = checker.optional_id("after", after.as_ref());
            Change::Add(
                after,
                checker.within("entry", |checker| entry(checker, added)),
            )
        }
        Found::Remove(id) => Change::Remove(checker.id("id", &id)),
        Found::Move { id, after } => Change::Move(
            checker.id("id", &id),
            checker.optional_id("after", after.as_ref()),
        ),
        Found::Cup(to) => Change::Cup(checker.id("cup", &to)),
        Found::Shaker(to) => Change::Shaker(checker.optional_id("shaker", to.as_ref())),
        Found::Strained(to) => Change::Strained(to),
        Found::DrinkingTemperature(to) => {
            Change::DrinkingTemperature(checker.optional_number("drinking_temperature", to))
        }
        Found::MenuPrice(to) => Change::MenuPrice(checker.optional_number("menu_price", to)),
    }
}
