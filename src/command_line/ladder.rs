//! `evensip ladder`: the sugar levels of a drink, and the floor that its powders carry.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::swap::change;
use super::{
    Failure, LadderArguments, facts, json as documents, open, print, print_json, recipe_called,
    report_errors, speaker, version_called,
};
use crate::balance::{Balance, Measurand};
use crate::book::{Book, Level, LevelName, Recipe, VersionId};
use crate::quantity::{parse_up_to, show_number};
use crate::say::{Speaker, say};
use crate::swap::{Ladder, Offer, Rung, ladder};

pub(super) fn run(arguments: &LadderArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let version = version_called(recipe, arguments.version.as_deref())?;
    let levels = levels(&book, &arguments.levels)?;
    let Some(ladder) = ladder(&book, recipe, version.as_ref(), &levels) else {
        return Err(Failure::Usage(
            speaker().word("command-no-such-version").to_owned(),
        ));
    };
    if arguments.json {
        print_json(&document(&book, recipe, version.as_ref(), &ladder))?;
    } else {
        print(&sheet(&book, recipe, &ladder))?;
    }
    Ok(report_errors(&book, &findings))
}

fn levels(book: &Book, texts: &[String]) -> Result<Vec<Level>, Failure> {
    if texts.is_empty() {
        return Ok(book.settings.sugar_levels());
    }
    let level = |text: &String| {
        let parts = text
            .split_once('=')
            .and_then(|(name, percent)| Some((name, parse_up_to(percent, 200.0).ok()?)));
        match parts {
            Some((name, percent)) if (0.0..=200.0).contains(&percent) => Ok(Level {
                name: LevelName::OfShop(name.to_owned()),
                percent,
            }),
            _ => Err(Failure::Usage(say!(
                speaker(),
                "command-enter-level",
                text: text.escape_debug().to_string(),
            ))),
        }
    };
    texts.iter().map(level).collect()
}

fn document(book: &Book, recipe: &Recipe, version: Option<&VersionId>, ladder: &Ladder) -> Value {
    let balance =
        |balance: &Balance| documents::balance(book, recipe.id.as_str(), version, balance, None);
    let mut document = json!({
        "recipe": recipe.id.as_str(),
        "version": version.map(VersionId::as_str),
        "standard": balance(&ladder.standard),
        "floor": balance(&ladder.floor),
        "levels": ladder.rungs.iter().map(|one| rung(book, recipe, version, one)).collect::<Vec<_>>(),
        "reasons": ladder.reasons.iter().map(|one| Speaker::new(book).no_levels(one)).collect::<Vec<_>>(),
    });
    let reasons = ladder.reasons.iter().map(facts::no_levels).collect();
    facts::beside_each(&mut document, "reason", reasons);
    document
}

fn rung(book: &Book, recipe: &Recipe, version: Option<&VersionId>, rung: &Rung) -> Value {
    let mut value = json!({ "name": Speaker::new(book).level_name(&rung.level), "percent": rung.level.percent, "sweetness_aimed_at": rung.aim });
    let rest = match &rung.drink {
        Ok(drink) => facts::adapted(drink).beside(json!({
            "changes": drink.moves.iter().map(|moved| change(book, moved)).collect::<Vec<_>>(),
            "balance": documents::balance(
                book, recipe.id.as_str(), version, &drink.balance, Some(&drink.difference)
            ),
            "distance": documents::distance(&drink.difference),
            "explanation": Speaker::new(book).adapted(drink),
            "proven_optimal": drink.proven_optimal,
        })),
        Err(reason) => {
            let mut rest = json!({ "reasons": [Speaker::new(book).unadaptable(reason)] });
            facts::beside_each(&mut rest, "reason", vec![facts::unadaptable(reason)]);
            let offers: Vec<Value> = rung
                .offers
                .iter()
                .map(|one| offer(book, recipe, version, rung, one))
                .collect();
            rest["offers"] = Value::Array(offers);
            rest
        }
    };
    if let (Value::Object(map), Value::Object(rest)) = (&mut value, rest) {
        map.extend(rest);
    }
    value
}

/// What comes near a level that whole measures miss.
fn offer(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    rung: &Rung,
    offer: &Offer,
) -> Value {
    let drink = &offer.drink;
    let lines = &drink.balance.resolved;
    let said = Speaker::new(book).offer(&rung.level, offer, lines);
    facts::means(&offer.means).beside(json!({
        "changes": drink.moves.iter().map(|moved| change(book, moved)).collect::<Vec<_>>(),
        "balance": documents::balance(
            book, recipe.id.as_str(), version, &drink.balance, Some(&drink.difference)
        ),
        "distance": documents::distance(&drink.difference),
        "explanation": said,
    }))
}

fn sheet(book: &Book, recipe: &Recipe, ladder: &Ladder) -> String {
    let figure = |balance: &Balance, measurand: Measurand, decimals: usize| {
        let known = balance.figures.complete(measurand);
        known.map_or_else(
            || speaker().word("command-not-known").to_owned(),
            |value| show_number(value, decimals),
        )
    };
    let speaker = Speaker::new(book);
    let title = say!(
        speaker,
        "command-ladder-title",
        recipe: &recipe.name,
        sugar: figure(&ladder.floor, Measurand::TotalSugar, 1),
        sweetness: figure(&ladder.floor, Measurand::Sweetness, 1),
    );
    let mut sheet = format!("{title}\n\n");
    for rung in &ladder.rungs {
        match &rung.drink {
            Ok(drink) => {
                let lines = [&drink.balance.resolved, &ladder.standard.resolved];
                let moves: Vec<String> = drink
                    .moves
                    .iter()
                    .map(|moved| speaker.line_move(moved, &lines))
                    .collect();
                let moves = if moves.is_empty() {
                    speaker.word("command-as-it-is").to_owned()
                } else {
                    moves.join(", ")
                };
                let reached = say!(
                    speaker,
                    "command-rung",
                    aim: show_number(rung.aim, 1),
                    reached: figure(&drink.balance, Measurand::Sweetness, 1),
                    moves: moves,
                );
                let _ = writeln!(
                    sheet,
                    "{:<8}{reached}\n        {}",
                    speaker.level_name(&rung.level),
                    speaker.adapted(drink)
                );
            }
            Err(reason) => {
                let reason = speaker.unadaptable(reason);
                let _ = writeln!(sheet, "{:<8}{reason}", speaker.level_name(&rung.level));
                for offer in &rung.offers {
                    let words = speaker.offer(&rung.level, offer, &ladder.standard.resolved);
                    let _ = writeln!(sheet, "        {words}");
                }
            }
        }
    }
    for reason in &ladder.reasons {
        let _ = writeln!(sheet, "{}", speaker.no_levels(reason));
    }
    sheet
}
