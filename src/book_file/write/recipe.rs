//! Recipes, versions and approvals as text.

use super::file;
use super::layout::{Layout, quoted};
use crate::book::{
    Amount, Approval, Carried, Change, Entry, Instruction, Line, LineId, Recipe, Resolved, Stage,
    State, Version,
};

pub(super) fn recipe(layout: &mut Layout, recipe: &Recipe) {
    let Recipe {
        id,
        name,
        state,
        entries,
        cup,
        shaker,
        strained,
        drinking_temperature,
        menu_price,
        versions,
        approvals,
        note,
    } = recipe;
    layout.text("id", id.as_str());
    layout.text("name", name);
    state_unless_draft(layout, *state);
    layout.list("entries", entries, |layout, found| entry(layout, "", found));
    layout.optional_id("cup", cup.as_ref());
    layout.optional_id("shaker", shaker.as_ref());
    strained_if(layout, *strained);
    layout.optional_number("drinking_temperature", *drinking_temperature);
    layout.optional_number("menu_price", *menu_price);
    layout.list("versions", versions, |layout, item| {
        layout.group("", |layout| version(layout, item));
    });
    layout.list("approvals", approvals, |layout, item| {
        layout.group("", |layout| approval(layout, item));
    });
    layout.text_unless_empty("note", note);
}

fn state_unless_draft(layout: &mut Layout, state: State) {
    if state != State::default() {
        layout.field("state", file::State::word(state));
    }
}

fn strained_if(layout: &mut Layout, strained: bool) {
    if strained {
        layout.field("strained", "true");
    }
}

fn version(layout: &mut Layout, version: &Version) {
    let Version {
        id,
        name,
        builds_on,
        state,
        season,
        changes,
    } = version;
    layout.text("id", id.as_str());
    layout.text("name", name);
    layout.optional_id("builds_on", builds_on.as_ref());
    state_unless_draft(layout, *state);
    layout.text_unless_empty("season", season);
    layout.list("changes", changes, change);
}

fn approval(layout: &mut Layout, approval: &Approval) {
    let Approval {
        version,
        date,
        by,
        reason,
        tasted_at,
        resolved,
    } = approval;
    layout.optional_id("version", version.as_ref());
    layout.text("date", date);
    layout.text_unless_empty("by", by);
    layout.text_unless_empty("reason", reason);
    layout.optional_number("tasted_at", *tasted_at);
    let Resolved {
        entries,
        cup,
        shaker,
        strained,
        drinking_temperature,
        menu_price,
    } = resolved;
    layout.group("resolved: ", |layout| {
        layout.list("entries", entries, |layout, found| entry(layout, "", found));
        layout.optional_id("cup", cup.as_ref());
        layout.optional_id("shaker", shaker.as_ref());
        strained_if(layout, *strained);
        layout.optional_number("drinking_temperature", *drinking_temperature);
        layout.optional_number("menu_price", *menu_price);
    });
}

fn entry(layout: &mut Layout, head: &str, entry: &Entry) {
    match entry {
        Entry::Instruction(Instruction { id, text }) => {
            layout.group(&format!("{head}Instruction"), |layout| {
                layout.text("id", id.as_str());
                layout.text("text", text);
            });
        }
        Entry::Line(found) => layout.group(&format!("{head}Line"), |layout| line(layout, found)),
    }
}

fn line(layout: &mut Layout, line: &Line) {
    let Line {
        id,
        ingredient,
        amount: how_much,
        temperature,
        role,
        stage,
        carried: comes_along,
        note,
    } = line;
    layout.text("id", id.as_str());
    layout.text("ingredient", ingredient.as_str());
    let value = amount(layout, how_much);
    layout.field("amount", &value);
    layout.optional_number("temperature", *temperature);
    layout.field("role", file::Role::word(*role));
    if *stage != Stage::default() {
        layout.field("stage", file::Stage::word(*stage));
    }
    if let Some(comes_along) = comes_along {
        let value = carried(layout, comes_along);
        layout.field("carried", &value);
    }
    layout.text_unless_empty("note", note);
}

fn amount(layout: &mut Layout, amount: &Amount) -> String {
    match amount {
        Amount::Grams(grams) => format!("Grams({})", layout.figures(*grams)),
        Amount::Millilitres(millilitres) => {
            format!("Millilitres({})", layout.figures(*millilitres))
        }
        Amount::Count(uses, measure) => format!(
            "Count({}, {})",
            layout.figures(*uses),
            quoted(measure.as_str())
        ),
        Amount::FillTo(millilitres) => format!("FillTo({})", layout.figures(*millilitres)),
        Amount::FillToRim => "FillToRim".to_owned(),
    }
}

fn carried(layout: &mut Layout, carried: &Carried) -> String {
    let Carried { ingredient, grams } = carried;
    let fields = [
        ("ingredient", Some(quoted(ingredient.as_str()))),
        ("grams", Some(layout.figures(*grams))),
    ];
    Layout::inline(&fields)
}

/// The word of what a version takes back to nothing.
const NONE: &str = "None";

fn change(layout: &mut Layout, change: &Change) {
    let of_line =
        |word: &str, id: &LineId, value: &str| format!("{word}({}, {value})", quoted(id.as_str()));
    let value = match change {
        Change::Ingredient(id, to) => of_line("Ingredient", id, &quoted(to.as_str())),
        Change::Amount(id, to) => of_line("Amount", id, &amount(layout, to)),
        Change::Temperature(id, to) => of_line(
            "Temperature",
            id,
            &layout
                .optional_figures(*to)
                .unwrap_or_else(|| NONE.to_owned()),
        ),
        Change::Role(id, to) => of_line("Role", id, file::Role::word(*to)),
        Change::Stage(id, to) => of_line("Stage", id, file::Stage::word(*to)),
        Change::Carried(id, to) => {
            let value = to
                .as_ref()
                .map_or_else(|| NONE.to_owned(), |to| carried(layout, to));
            of_line("Carried", id, &value)
        }
        Change::Note(id, to) => of_line("Note", id, &quoted(to)),
        Change::Instruction(id, to) => of_line("Instruction", id, &quoted(to)),
        Change::Add(after, added) => {
            return layout.group("Add", |layout| {
                layout.optional_id("after", after.as_ref());
                entry(layout, "entry: ", added);
            });
        }
        Change::Remove(id) => format!("Remove({})", quoted(id.as_str())),
        Change::Move(id, after) => {
            let after = after.as_ref().map(|after| quoted(after.as_str()));
            format!(
                "Move{}",
                Layout::inline(&[("id", Some(quoted(id.as_str()))), ("after", after)])
            )
        }
        Change::Cup(to) => format!("Cup({})", quoted(to.as_str())),
        Change::Shaker(to) => {
            format!(
                "Shaker({})",
                to.as_ref()
                    .map_or_else(|| NONE.to_owned(), |to| quoted(to.as_str()))
            )
        }
        Change::Strained(to) => format!("Strained({to})"),
        Change::DrinkingTemperature(to) => optional_change(layout, "DrinkingTemperature", *to),
        Change::MenuPrice(to) => optional_change(layout, "MenuPrice", *to),
    };
    layout.item(&value);
}

fn optional_change(layout: &mut Layout, word: &str, to: Option<f64>) -> String {
    format!(
        "{word}({})",
        layout
            .optional_figures(to)
            .unwrap_or_else(|| NONE.to_owned())
    )
}
