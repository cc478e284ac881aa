//! `evensip swap`: one ingredient replaced by another, and what brings the taste back.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::{
    Failure, SwapArguments, ingredient_called, json as documents, open, print, print_json, recipe_called,
    report_errors, text, version_called,
};
use crate::book::{Amount, Book, LineId, Recipe};
use crate::swap::{Answer, LineMove, Question, Suggestion, answer, move_words};

pub(super) fn run(arguments: &SwapArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let question = Question {
        recipe: recipe.id.clone(),
        version: version_called(recipe, arguments.version.as_deref())?,
        replace: ingredient_called(&book, &arguments.replace)?,
        with: ingredient_called(&book, &arguments.with)?,
        adjust: adjusted(arguments)?,
    };
    let Some(answer) = answer(&book, &question) else {
        return Err(Failure::Usage("there is no such version".to_owned()));
    };
    if arguments.json {
        print_json(&document(&book, recipe, &answer))?;
    } else {
        print(&sheet(&book, recipe, &answer))?;
    }
    Ok(report_errors(&findings))
}

fn adjusted(arguments: &SwapArguments) -> Result<Option<Vec<LineId>>, Failure> {
    if arguments.adjust.is_empty() {
        return Ok(None);
    }
    if arguments.adjust.len() > 2 {
        return Err(Failure::Usage(format!("{} lines to adjust; at most two may move", arguments.adjust.len())));
    }
    let ids: Result<Vec<LineId>, _> = arguments.adjust.iter().map(|text| LineId::new(text)).collect();
    ids.map(Some).map_err(|error| Failure::Usage(error.to_string()))
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
    let plain = documents::balance(book, id, version, &answer.plain, Some(&answer.plain_difference));
    json!({
        "recipe": id,
        "version": version.map(crate::book::VersionId::as_str),
        "replace": answer.question.replace.as_str(),
        "with": answer.question.with.as_str(),
        "standard": documents::balance(book, id, version, &answer.standard, None),
        "standard_is_approved": answer.standard_is_approved,
        "plain_swap": with_distance(plain, documents::distance(&answer.plain_difference)),
        "suggestions": answer.suggestions.iter().map(|one| suggestion(book, recipe, answer, one)).collect::<Vec<_>>(),
        "reasons": answer.reasons,
        "proven_optimal": answer.proven_optimal,
        "evaluated": answer.evaluated,
    })
}

fn suggestion(book: &Book, recipe: &Recipe, answer: &Answer, suggestion: &Suggestion) -> Value {
    let changes: Vec<Value> = suggestion.moves.iter().map(|moved| change(book, moved)).collect();
    let version = answer.question.version.as_ref();
    json!({
        "kind": suggestion.kind.word(),
        "changes": changes,
        "balance": documents::balance(
            book, recipe.id.as_str(), version, &suggestion.balance, Some(&suggestion.difference)
        ),
        "distance": documents::distance(&suggestion.difference),
        "within_scatter": suggestion.within_scatter,
        "explanation": suggestion.explanation,
    })
}

fn change(book: &Book, moved: &LineMove) -> Value {
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
        book.ingredient(id).map_or_else(|| id.to_string(), |item| item.full_name())
    };
    let standard = if answer.standard_is_approved { "the approved standard" } else { "the version as it stands" };
    let mut sheet = format!(
        "{}: {} for {}, against {standard}\n\n",
        recipe.name,
        name(&answer.question.with),
        name(&answer.question.replace)
    );
    sheet.push_str(&text::distance("plain swap, equal measures", &answer.plain_difference));
    for suggestion in &answer.suggestions {
        let lines = [&suggestion.balance.resolved, &answer.plain.resolved, &answer.standard.resolved];
        let moves: Vec<String> = suggestion.moves.iter().map(|moved| move_words(book, moved, &lines)).collect();
        let moves = if moves.is_empty() { "nothing moves".to_owned() } else { moves.join(", ") };
        let _ = writeln!(sheet, "{}: {moves}", suggestion.kind.word());
        sheet.push_str(&text::distance("  then", &suggestion.difference));
        let scatter = if suggestion.within_scatter { "within" } else { "beyond" };
        let _ = writeln!(sheet, "  {} The difference left is {scatter} the counter's own scatter.", suggestion.explanation);
    }
    for reason in &answer.reasons {
        let _ = writeln!(sheet, "{reason}");
    }
    let proof = if answer.proven_optimal { "every candidate was evaluated" } else { "a limit stopped the search" };
    let _ = writeln!(sheet, "{} candidates: {proof}", answer.evaluated);
    sheet
}
