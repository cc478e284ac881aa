//! `evensip swap`: one ingredient replaced by another, and what brings the taste back.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::{
    Failure, SwapArguments, facts, ingredient_called, json as documents, open, print, print_json,
    recipe_called, report_errors, speaker, text, unknown, version_called,
};
use crate::book::{
    Allergen, Amount, Book, IngredientId, Line, LineId, Recipe, Resolved, TemperatureWindow,
    resolve,
};
use crate::quantity::parse_number;
use crate::say::{Speaker, say};
use crate::swap::{
    Answer, Demands, LineLimit, LineMove, Question, Suggestion, SuggestionKind, answer_with,
};

pub(super) fn run(arguments: &SwapArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let question = Question {
        recipe: recipe.id.clone(),
        version: version_called(recipe, arguments.version.as_deref())?,
        replace: ingredient_called(&book, &arguments.replace)?,
        with: ingredient_called(&book, &arguments.with)?,
        adjust: Some(lines(&arguments.adjust)?).filter(|lines| !lines.is_empty()),
    };
    let demands = demands(&book, arguments)?;
    let (resolved, _) = resolve(recipe, question.version.as_ref());
    let also = demands.also.iter().map(|(old, _)| old);
    for id in std::iter::once(&question.replace).chain(also) {
        is_in_version(&book, &resolved, id)?;
    }
    let named = question.adjust.iter().flatten();
    let limited = demands.limits.iter().map(|limit| &limit.line);
    for id in named
        .chain(&demands.locked)
        .chain(&demands.unlocked)
        .chain(limited)
    {
        is_line(&resolved, id)?;
    }
    let Some(answer) = answer_with(&book, &question, &demands) else {
        return Err(Failure::Usage(
            speaker().word("command-no-such-version").to_owned(),
        ));
    };
    if arguments.json {
        print_json(&document(&book, recipe, &answer))?;
    } else {
        print(&sheet(&book, recipe, &answer))?;
    }
    Ok(report_errors(&book, &findings))
}

fn lines(texts: &[String]) -> Result<Vec<LineId>, Failure> {
    let ids: Result<Vec<LineId>, _> = texts.iter().map(|text| LineId::new(text)).collect();
    ids.map_err(|error| Failure::Usage(speaker().id_error(&error)))
}

/// An ingredient that goes has to be there.
fn is_in_version(book: &Book, resolved: &Resolved, id: &IngredientId) -> Result<(), Failure> {
    if resolved.lines().any(|line| line.ingredient == *id) {
        return Ok(());
    }
    let brought = |line: &Line| {
        let carried = line.carried.as_ref();
        carried.is_some_and(|carried| carried.ingredient == *id)
    };
    if resolved.lines().any(brought) {
        return Err(Failure::Usage(
            say!(speaker(), "command-only-comes-along", id: id.as_str()),
        ));
    }
    let mut known: Vec<&str> = resolved
        .lines()
        .map(|line| line.ingredient.as_str())
        .collect();
    known.sort_unstable();
    known.dedup();
    let message = if book.ingredient(id).is_some() {
        "command-not-in-drink"
    } else {
        "command-no-ingredient"
    };
    Err(unknown(message, id.as_str(), known.into_iter()))
}

/// A line that is named has to be one.
fn is_line(resolved: &Resolved, id: &LineId) -> Result<(), Failure> {
    if resolved.line(id).is_some() {
        return Ok(());
    }
    if resolved.entries.iter().any(|entry| entry.id() == id) {
        return Err(Failure::Usage(
            say!(speaker(), "command-is-instruction", id: id.as_str()),
        ));
    }
    let known: Vec<&str> = resolved.lines().map(|line| line.id.as_str()).collect();
    Err(unknown("command-no-line", id.as_str(), known.into_iter()))
}

fn demands(book: &Book, arguments: &SwapArguments) -> Result<Demands, Failure> {
    Ok(Demands {
        locked: lines(&arguments.lock)?,
        unlocked: lines(&arguments.unlock)?,
        limits: arguments
            .limit
            .iter()
            .map(|text| limit(text))
            .collect::<Result<_, _>>()?,
        keep_vegan: arguments.vegan,
        without: arguments
            .without
            .iter()
            .map(|text| allergen(text))
            .collect::<Result<_, _>>()?,
        most_sugar_per_100_ml: arguments.most_sugar,
        most_energy_kj: arguments.most_energy,
        most_cost: arguments.most_cost,
        most_fill: arguments.most_fill,
        temperature: arguments.temperature.as_deref().map(window).transpose()?,
        also: arguments
            .also
            .iter()
            .map(|text| pair(book, text))
            .collect::<Result<_, _>>()?,
        ..Demands::default()
    })
}

/// Refuses a text, with the form that it should have.
fn expected(text: &str, message: &'static str) -> Failure {
    let text = text.escape_debug().to_string();
    Failure::Usage(speaker().say(message, &[("text", text.into())]))
}

/// `FROM..TO`; each end may be left out.
fn range(text: &str) -> Option<(Option<f64>, Option<f64>)> {
    let (from, to) = text.split_once("..")?;
    let end = |text: &str| match text.trim() {
        "" => Some(None),
        number => parse_number(number).ok().map(Some),
    };
    Some((end(from)?, end(to)?))
}

fn limit(text: &str) -> Result<LineLimit, Failure> {
    let failure = || expected(text, "command-enter-limit");
    let (line, amounts) = text.split_once('=').ok_or_else(failure)?;
    let (least, most) = range(amounts).ok_or_else(failure)?;
    let line = LineId::new(line).map_err(|error| Failure::Usage(speaker().id_error(&error)))?;
    Ok(LineLimit {
        line,
        least,
        most,
        increment: None,
    })
}

fn window(text: &str) -> Result<TemperatureWindow, Failure> {
    match range(text) {
        Some((Some(from), Some(to))) if from <= to => Ok(TemperatureWindow { from, to }),
        _ => Err(expected(text, "command-enter-temperature")),
    }
}

fn pair(book: &Book, text: &str) -> Result<(IngredientId, IngredientId), Failure> {
    let (old, new) = text
        .split_once('=')
        .ok_or_else(|| expected(text, "command-enter-pair"))?;
    Ok((ingredient_called(book, old)?, ingredient_called(book, new)?))
}

fn allergen(text: &str) -> Result<Allergen, Failure> {
    let wanted = text.to_lowercase();
    let known = || Allergen::ALL.into_iter();
    // "cereals containing gluten" is asked for as gluten.
    let short = |allergen: Allergen| match allergen {
        Allergen::Gluten => "gluten",
        other => other.word(),
    };
    known()
        .find(|allergen| short(*allergen) == wanted || allergen.word() == wanted)
        .ok_or_else(|| {
            let words: Vec<&str> = known().map(short).collect();
            Failure::Usage(say!(
                speaker(),
                "command-enter-allergen",
                text: text.escape_debug().to_string(),
                words: words.join(", "),
            ))
        })
}

fn document(book: &Book, recipe: &Recipe, answer: &Answer) -> Value {
    let version = answer.question.version.as_ref();
    let id = recipe.id.as_str();
    let with_distance = |mut balance: Value, distance: Value| {
        if let Value::Object(map) = &mut balance {
            map.insert("distance".to_owned(), distance);
        }
        balance
    };
    let plain = documents::balance(
        book,
        id,
        version,
        &answer.plain,
        Some(&answer.plain_difference),
    );
    let mut document = json!({
        "recipe": id,
        "version": version.map(crate::book::VersionId::as_str),
        "replace": answer.question.replace.as_str(),
        "with": answer.question.with.as_str(),
        "standard": documents::balance(book, id, version, &answer.standard, None),
        "standard_is_approved": answer.standard_is_approved,
        "plain_swap": with_distance(plain, documents::distance(&answer.plain_difference)),
        "suggestions": answer.suggestions.iter().map(|one| suggestion(book, recipe, answer, one)).collect::<Vec<_>>(),
        "reasons": answer.reasons.iter().map(|one| Speaker::new(book).swap_reason(one)).collect::<Vec<_>>(),
        "proven_optimal": answer.proven_optimal,
        "evaluated": answer.evaluated,
        "nodes": answer.nodes,
        "candidates": answer.candidates,
    });
    let reasons = answer.reasons.iter().map(facts::swap_reason).collect();
    facts::beside_each(&mut document, "reason", reasons);
    document
}

fn suggestion(book: &Book, recipe: &Recipe, answer: &Answer, suggestion: &Suggestion) -> Value {
    let changes: Vec<Value> = suggestion
        .moves
        .iter()
        .map(|moved| change(book, moved))
        .collect();
    let version = answer.question.version.as_ref();
    json!({
        "kind": key(suggestion.kind),
        "also": suggestion.also.iter().map(|kind| key(*kind)).collect::<Vec<_>>(),
        "changes": changes,
        "balance": documents::balance(
            book, recipe.id.as_str(), version, &suggestion.balance, Some(&suggestion.difference)
        ),
        "distance": documents::distance(&suggestion.difference),
        "within_scatter": suggestion.within_scatter,
        "explanation": Speaker::new(book).suggestion(answer, suggestion),
        "arguments": facts::suggestion(answer, suggestion),
    })
}

/// What programs know a suggestion by.
fn key(kind: SuggestionKind) -> &'static str {
    match kind {
        SuggestionKind::FewestChanges => "fewest changes",
        SuggestionKind::ClosestTaste => "closest taste",
        SuggestionKind::Cheapest => "cheapest",
        SuggestionKind::LeastSugar => "least sugar",
    }
}

pub(super) fn change(book: &Book, moved: &LineMove) -> Value {
    let number = |amount: &Option<Amount>| amount.as_ref().map_or(Some(0.0), Amount::number);
    let unit = match moved.to.as_ref().or(moved.from.as_ref()) {
        Some(Amount::Count(_, id)) => book.measure(id).map_or("use", |measure| measure.words().0),
        Some(Amount::Grams(_)) => "g",
        _ => "ml",
    };
    json!({ "line": moved.line.as_str(), "from": number(&moved.from), "to": number(&moved.to), "unit": unit })
}

fn sheet(book: &Book, recipe: &Recipe, answer: &Answer) -> String {
    let name = |id: &crate::book::IngredientId| {
        book.ingredient(id)
            .map_or_else(|| id.to_string(), |item| item.full_name())
    };
    let speaker = Speaker::new(book);
    let title = say!(
        speaker,
        "command-swap-title",
        standard: if answer.standard_is_approved { "approved" } else { "version" },
        recipe: &recipe.name,
        with: name(&answer.question.with),
        replace: name(&answer.question.replace),
    );
    let mut sheet = format!("{title}\n\n");
    sheet.push_str(&text::distance(
        speaker.word("command-plain-swap"),
        &answer.plain_difference,
    ));
    for suggestion in &answer.suggestions {
        let lines = [
            &suggestion.balance.resolved,
            &answer.plain.resolved,
            &answer.standard.resolved,
        ];
        let moves: Vec<String> = suggestion
            .moves
            .iter()
            .map(|moved| speaker.line_move(moved, &lines))
            .collect();
        let moves = if moves.is_empty() {
            speaker.word("command-nothing-moves").to_owned()
        } else {
            moves.join(", ")
        };
        let kinds: Vec<&str> = std::iter::once(suggestion.kind)
            .chain(suggestion.also.iter().copied())
            .map(|kind| speaker.suggestion_kind(kind))
            .collect();
        let _ = writeln!(sheet, "{}: {moves}", kinds.join(", "));
        let then = format!("  {}", speaker.word("command-then"));
        sheet.push_str(&text::distance(&then, &suggestion.difference));
        let explained = say!(
            speaker,
            "command-scatter",
            scatter: match suggestion.within_scatter {
                Some(true) => "within",
                Some(false) => "beyond",
                None => "partly-known",
            },
            explanation: speaker.suggestion(answer, suggestion),
        );
        let _ = writeln!(sheet, "  {explained}");
    }
    for reason in &answer.reasons {
        let _ = writeln!(sheet, "{}", speaker.swap_reason(reason));
    }
    let search = say!(
        speaker,
        "command-search",
        proven: if answer.proven_optimal { "yes" } else { "no" },
        candidates: format!("{:.0}", answer.candidates),
        evaluated: answer.evaluated.to_string(),
        groups: answer.nodes.to_string(),
    );
    let _ = writeln!(sheet, "{search}");
    sheet
}
