//! `evensip supply`: which supplier for the whole menu.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::json::uncertain;
use super::{
    Failure, SupplyArguments, ingredient_called, open, print, print_json, recipe_called,
    report_errors, speaker, version_called,
};
use crate::book::{Allergen, Book, IngredientId, VersionId};
use crate::book_file;
use crate::exchange::read_table;
use crate::quantity::{Uncertain, parse_number};
use crate::say::{Speaker, say};
use crate::swap::{
    MenuDrink, Needed, NoSupplies, NotKnownOf, Supplies, Supply, WEEKS_OF_A_YEAR, Watch, supplies,
};

/// Combinations that are printed for people.
const ROWS: usize = 12;
/// Most cups of a drink in a week.
const MOST_CUPS: f64 = 1e6;

pub(super) fn run(arguments: &SupplyArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let needed: Vec<Needed> = arguments
        .offer
        .iter()
        .map(|text| needed(&book, text))
        .collect::<Result<_, _>>()?;
    let mut cups = BTreeMap::new();
    if let Some(file) = &arguments.cups {
        cups = cups_of_file(&book, file)?;
    }
    for text in &arguments.sold {
        let (drink, number) = text.rsplit_once('=').ok_or_else(|| enter_sold(text))?;
        cups.insert(drink_text(&book, drink)?, cups_in(number, text)?);
    }
    let found = supplies(&book, &needed, &cups, &Watch::default()).map_err(|none| {
        Failure::Usage(match none {
            NoSupplies::NotUsed | NoSupplies::Stopped => {
                speaker().word("command-supply-not-used").to_owned()
            }
            NoSupplies::TooMany(count) => say!(speaker(), "command-supply-too-many", count: count),
        })
    })?;
    if arguments.json {
        print_json(&document(&needed, &found, !cups.is_empty()))?;
    } else {
        print(&sheet(&book, &needed, &found, !cups.is_empty()))?;
    }
    Ok(report_errors(&book, &findings))
}

/// "ID" is an ingredient with all that is sold of its kind, "ID=ID,ID" one with what is offered for it.
fn needed(book: &Book, text: &str) -> Result<Needed, Failure> {
    let Some((ingredient, offered)) = text.split_once('=') else {
        let id = ingredient_called(book, text)?;
        return Needed::of_its_kind(book, &id)
            .filter(|needed| !needed.offered.is_empty())
            .ok_or_else(|| {
                Failure::Usage(say!(speaker(), "command-supply-nothing-offered", id: id.as_str()))
            });
    };
    let mut ids = Vec::new();
    for text in offered.split(',') {
        let id = ingredient_called(book, text.trim())?;
        if !ids.contains(&id) {
            ids.push(id);
        }
    }
    Ok(Needed {
        ingredient: ingredient_called(book, ingredient.trim())?,
        offered: ids,
    })
}

/// "ID" is the recipe itself, "ID/VERSION" one of its versions.
fn drink_text(book: &Book, text: &str) -> Result<MenuDrink, Failure> {
    let (recipe, version) = match text.trim().split_once('/') {
        Some((recipe, version)) => (recipe, Some(version)),
        None => (text.trim(), None),
    };
    let recipe = recipe_called(book, recipe)?;
    Ok((recipe.id.clone(), version_called(recipe, version)?))
}

fn enter_sold(text: &str) -> Failure {
    let text = text.escape_debug().to_string();
    Failure::Usage(say!(speaker(), "command-enter-sold", text: text))
}

fn cups_in(number: &str, text: &str) -> Result<f64, Failure> {
    let cups = parse_number(number.trim()).ok();
    let cups = cups.filter(|cups| (0.0..=MOST_CUPS).contains(cups));
    cups.ok_or_else(|| enter_sold(text))
}

/// A table with headings, whose first column has drinks and whose second has cups a week.
fn cups_of_file(book: &Book, file: &Path) -> Result<BTreeMap<MenuDrink, f64>, Failure> {
    let bytes =
        book_file::read_bytes(file).map_err(|error| Failure::Book(speaker().read_error(&error)))?;
    let table = read_table(&bytes, None, None)
        .map_err(|error| Failure::Book(speaker().table_error(&error)))?;
    let mut cups = BTreeMap::new();
    for (line, cells) in &table.rows {
        let row = || -> Result<(MenuDrink, f64), Failure> {
            let [drink, number, ..] = cells.as_slice() else {
                return Err(enter_sold(&cells.join(" ")));
            };
            let text = format!("{drink}={number}");
            Ok((drink_text(book, drink)?, cups_in(number, &text)?))
        };
        let (drink, number) = row().map_err(|failure| {
            let reason = failure.words();
            Failure::Book(say!(speaker(), "command-supply-line", line: *line, reason: reason))
        })?;
        if cups.insert(drink, number).is_some() {
            let reason = speaker().word("command-supply-twice");
            return Err(Failure::Book(
                say!(speaker(), "command-supply-line", line: *line, reason: reason),
            ));
        }
    }
    Ok(cups)
}

fn drink_json((recipe, version): &MenuDrink) -> Value {
    json!({ "recipe": recipe.as_str(), "version": version.as_ref().map(VersionId::as_str) })
}

fn document(needed: &[Needed], found: &Supplies, is_weighted: bool) -> Value {
    let drinks = |drinks: &[MenuDrink]| drinks.iter().map(drink_json).collect::<Vec<_>>();
    let allergens = |found: &[(MenuDrink, Allergen)]| {
        let found = found.iter().map(
            |(drink, allergen)| json!({ "drink": drink_json(drink), "allergen": allergen.word() }),
        );
        found.collect::<Vec<_>>()
    };
    let combination = |supply: &Supply| {
        let not_known = supply.not_known.iter().map(|(drink, what)| {
            let what = match what {
                NotKnownOf::Cost => "cost",
                NotKnownOf::Distance => "distance",
                NotKnownOf::Cups => "cups",
            };
            json!({ "drink": drink_json(drink), "figure": what })
        });
        let year = |week: Uncertain| {
            uncertain(Uncertain {
                value: WEEKS_OF_A_YEAR * week.value,
                u: WEEKS_OF_A_YEAR * week.u,
            })
        };
        json!({
            "with": supply.with.iter().map(IngredientId::as_str).collect::<Vec<_>>(),
            "cost_a_week": uncertain(supply.cost),
            "more_a_week": uncertain(supply.more),
            "more_a_year": year(supply.more),
            "worst_distance": supply.worst,
            "mean_distance": supply.mean,
            "cards": supply.cards,
            "habits": supply.habits,
            "allergens_gained": allergens(&supply.gained),
            "allergens_lost": allergens(&supply.lost),
            "becomes_vegan": drinks(&supply.vegan),
            "no_longer_vegan": drinks(&supply.no_longer_vegan),
            "not_known": not_known.collect::<Vec<_>>(),
            "impossible": drinks(&supply.impossible),
            "unbeaten": supply.is_unbeaten,
        })
    };
    json!({
        "needed": needed.iter().map(|needed| json!({
            "ingredient": needed.ingredient.as_str(),
            "offered": needed.offered.iter().map(IngredientId::as_str).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
        "weighted_by_cups": is_weighted,
        "drinks": drinks(&found.drinks),
        "searches": found.searches,
        "combinations": found.combinations.iter().map(combination).collect::<Vec<_>>(),
    })
}

fn sheet(book: &Book, needed: &[Needed], found: &Supplies, is_weighted: bool) -> String {
    let speaker = Speaker::new(book);
    let mut sheet = String::new();
    let basis = if is_weighted { "stated" } else { "one-each" };
    let title = say!(
        speaker,
        "command-supply-title",
        drinks: found.drinks.len(),
        combinations: found.combinations.len(),
        basis: basis
    );
    let _ = writeln!(sheet, "{title}");
    // What no other beats is what one chooses among: it is never cut off.
    let shown = found.combinations.iter().enumerate();
    let shown = shown.filter(|(at, supply)| *at < ROWS || supply.is_unbeaten);
    let shown: Vec<&Supply> = shown.map(|(_, supply)| supply).collect();
    for supply in &shown {
        let _ = writeln!(sheet, "\n{}", row(&speaker, needed, supply));
    }
    let left = found.combinations.len() - shown.len();
    if left > 0 {
        let left = say!(speaker, "command-supply-more", count: left);
        let _ = writeln!(sheet, "\n{left}");
    }
    sheet
}

fn row(speaker: &Speaker<'_>, needed: &[Needed], supply: &Supply) -> String {
    let mut lines = Vec::new();
    let chosen = needed.iter().zip(&supply.with).map(|(needed, with)| {
        let (old, new) = (
            speaker.ingredient(&needed.ingredient),
            speaker.ingredient(with),
        );
        if needed.ingredient == *with {
            say!(speaker, "command-supply-stays", name: old)
        } else {
            say!(speaker, "command-supply-swap", from: old, to: new)
        }
    });
    let mark = if supply.is_unbeaten { "* " } else { "  " };
    lines.push(format!("{mark}{}", chosen.collect::<Vec<_>>().join("; ")));
    let unknown = || speaker.word("command-not-known").to_owned();
    let steps = |steps: Option<f64>| steps.map_or_else(unknown, |steps| speaker.steps(steps));
    lines.push(say!(
        speaker,
        "command-supply-figures",
        week: speaker.money(supply.cost.value),
        more: signed(speaker, supply.more.value),
        u: speaker.money(supply.more.u),
        year: signed(speaker, WEEKS_OF_A_YEAR * supply.more.value),
        mean: steps(supply.mean),
        worst: steps(supply.worst),
        cards: supply.cards,
        habits: supply.habits
    ));
    let drinks = |drinks: &[MenuDrink]| {
        let names = drinks.iter();
        let names = names.map(|(recipe, version)| speaker.drink(recipe, version.as_ref()));
        names.collect::<Vec<_>>().join(", ")
    };
    let by_allergen = |found: &[(MenuDrink, Allergen)]| {
        let mut names: BTreeMap<Allergen, Vec<MenuDrink>> = BTreeMap::new();
        for (drink, allergen) in found {
            names.entry(*allergen).or_default().push(drink.clone());
        }
        let names = names.iter().map(|(allergen, found)| {
            format!("{} ({})", speaker.allergen(*allergen), drinks(found))
        });
        names.collect::<Vec<_>>().join(", ")
    };
    let mut say_of = |message: &'static str, is_empty: bool, what: String| {
        if !is_empty {
            lines.push(speaker.say(message, &[("what", what.into())]));
        }
    };
    let (gained, lost) = (by_allergen(&supply.gained), by_allergen(&supply.lost));
    say_of("command-supply-gained", supply.gained.is_empty(), gained);
    say_of("command-supply-lost", supply.lost.is_empty(), lost);
    let (vegan, no_longer) = (drinks(&supply.vegan), drinks(&supply.no_longer_vegan));
    say_of("command-supply-vegan", supply.vegan.is_empty(), vegan);
    say_of(
        "command-supply-no-longer-vegan",
        supply.no_longer_vegan.is_empty(),
        no_longer,
    );
    for (what, message) in [
        (NotKnownOf::Cost, "command-supply-no-cost"),
        (NotKnownOf::Distance, "command-supply-no-distance"),
        (NotKnownOf::Cups, "command-supply-no-cups"),
    ] {
        let found = supply.not_known.iter().filter(|(_, of)| *of == what);
        let found: Vec<MenuDrink> = found.map(|(drink, _)| drink.clone()).collect();
        say_of(message, found.is_empty(), drinks(&found));
    }
    let impossible = drinks(&supply.impossible);
    say_of(
        "command-supply-impossible",
        supply.impossible.is_empty(),
        impossible,
    );
    lines.join("\n    ")
}

/// Money with its sign.
fn signed(speaker: &Speaker<'_>, amount: f64) -> String {
    let sign = if amount < 0.0 { "−" } else { "+" };
    format!("{sign}{}", speaker.money(amount.abs()))
}
