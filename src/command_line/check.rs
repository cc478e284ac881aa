//! `evensip check`: every problem of one or more books, with its place; on request the approvals of its recipes and what changed.

use std::fmt::Write as _;
use std::path::Path;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::record::wrong_doubts;
use super::{
    CheckArguments, Failure, complain, facts, json, print, print_json, recipe_called, speaker,
};
use crate::balance::{Concern, StatementFinding, statement_findings};
use crate::book::{ApprovalRecord, Book, Place, Recipe, Severity, VersionId};
use crate::book_file::{self, LoadError, Loaded};
use crate::quantity::{excerpt, show_number};
use crate::say::{Speaker, say};
use crate::swap::{Drifted, drifted};

/// Longest name or reason in a line of the history, in characters.
const TEXT: usize = 120;

/// What was found in one book.
struct Checked {
    /// For people, a line a finding, the summary last; empty when the book does not open.
    text: String,
    /// The same as data.
    document: Value,
    errors: usize,
    warnings: usize,
    /// Why the recipe whose history is asked for is not told of.
    without_recipe: Option<Failure>,
}

pub(super) fn run(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    let several = arguments.books.len() > 1;
    let mut documents = Vec::new();
    let (mut errors, mut warnings) = (0, 0);
    let (mut opened, mut lacking) = (0, 0);
    for path in &arguments.books {
        let mut checked = match book_file::load(path) {
            Ok(loaded) => {
                opened += 1;
                checked(&loaded, arguments.history.as_deref())
            }
            Err(error) => {
                complain(&speaker().load_error(&error));
                unopened(&error)
            }
        };
        match checked.without_recipe.take() {
            Some(failure) if !several => return Err(failure),
            Some(failure) => {
                complain(&format!("{}: {}", path.display(), failure.words()));
                lacking += 1;
            }
            None => {}
        }
        errors += checked.errors;
        warnings += checked.warnings;
        if arguments.json {
            if let (true, Some(object)) = (several, checked.document.as_object_mut()) {
                object.insert("book".to_owned(), json!(path.display().to_string()));
            }
            documents.push(checked.document);
        } else if several {
            print_named(path, &checked.text)?;
        } else if !checked.text.is_empty() {
            print(&checked.text)?;
        }
    }
    if arguments.json {
        print_json(&match documents.pop() {
            Some(only) if !several => only,
            last => {
                documents.extend(last);
                json!({ "books": documents, "errors": errors, "warnings": warnings })
            }
        })?;
    }
    Ok(match errors {
        // A recipe that no book has was asked for by a wrong name.
        _ if opened > 0 && lacking == opened => ExitCode::from(2),
        0 => ExitCode::SUCCESS,
        _ => ExitCode::from(1),
    })
}

/// Prints with the file before each line, so that a line can be told apart wherever it lands.
fn print_named(path: &Path, text: &str) -> Result<(), Failure> {
    let name = path.display();
    let lines = text.lines().filter(|line| !line.is_empty());
    let named = lines.fold(String::new(), |mut named, line| {
        let _ = writeln!(named, "{name}: {line}");
        named
    });
    if named.is_empty() {
        return Ok(());
    }
    print(&named)
}

/// A book that does not open is one or more errors; they are told on standard error.
fn unopened(error: &LoadError) -> Checked {
    let lines = error.lines();
    let problems: Vec<String> = lines
        .iter()
        .map(|line| speaker().load_error_line(line))
        .collect();
    let errors = problems.len();
    let mut document =
        json!({ "opens": false, "problems": problems, "errors": errors, "warnings": 0 });
    facts::beside_each(&mut document, "problem", facts::load_error(error));
    Checked {
        text: String::new(),
        document,
        errors,
        warnings: 0,
        without_recipe: None,
    }
}

fn checked(loaded: &Loaded, history: Option<&str>) -> Checked {
    let book = &loaded.book;
    let (recipes, without_recipe) = match recipes_with_history(book, history) {
        Ok(recipes) => (recipes, None),
        Err(failure) => (Vec::new(), Some(failure)),
    };
    let statements = contradictions(book);
    let count = |severity| {
        let findings = loaded.findings.iter();
        findings
            .filter(|finding| finding.severity == severity)
            .count()
    };
    let errors = count(Severity::Error);
    let warnings = count(Severity::Warning) + statements.len();
    let mut problems: Vec<_> = loaded
        .findings
        .iter()
        .map(|finding| json::finding(book, finding))
        .collect();
    problems.extend(
        statements
            .iter()
            .map(|finding| statement_json(book, finding)),
    );
    let mut document =
        json!({ "opens": true, "problems": problems, "errors": errors, "warnings": warnings });
    let drifted = drifted(book);
    if let (false, Some(object)) = (drifted.is_empty(), document.as_object_mut()) {
        let drinks: Vec<Value> = drifted.iter().map(drifted_json).collect();
        object.insert("drifted".to_owned(), json!(drinks));
    }
    let wrong = wrong_doubts(book);
    if let (false, Some(object)) = (wrong.is_empty(), document.as_object_mut()) {
        let about = Speaker::new(book);
        let doubts = wrong.iter().map(|one| {
            facts::record_verdict(one)
                .beside(json!({ "class": one.class.word(), "text": about.record_verdict(one) }))
        });
        object.insert("doubts".to_owned(), json!(doubts.collect::<Vec<_>>()));
    }
    if let (true, Some(object)) = (history.is_some(), document.as_object_mut()) {
        let history = recipes.iter().map(|recipe| history_json(book, recipe));
        // A book without the recipe has no history of it, which is not an empty one.
        let history = without_recipe
            .is_none()
            .then(|| history.collect::<Vec<_>>());
        object.insert("history".to_owned(), json!(history));
    }
    let mut text = String::new();
    for finding in &loaded.findings {
        let said = Speaker::new(book).finding(finding);
        let _ = writeln!(text, "{}: {said}", speaker().severity(finding.severity));
    }
    for finding in &statements {
        let _ = writeln!(
            text,
            "{}: {}: {}",
            speaker().severity(Severity::Warning),
            statement_place(finding),
            Speaker::new(book).question(finding)
        );
    }
    for drink in &drifted {
        let _ = writeln!(text, "{}", drifted_text(book, drink));
    }
    for one in &wrong {
        let about = Speaker::new(book);
        let (count, verdict) = (about.record_count(one), about.record_verdict(one));
        let _ = writeln!(
            text,
            "{}: {count} {verdict}",
            speaker().severity(Severity::Warning)
        );
    }
    text.push_str(&summary(book, errors, warnings));
    text.extend(recipes.iter().map(|recipe| history_text(book, recipe)));
    Checked {
        text,
        document,
        errors,
        warnings,
        without_recipe,
    }
}

/// Statements of ingredients that say the opposite of what is entered beside them.
fn contradictions(book: &Book) -> Vec<StatementFinding> {
    let found = book
        .ingredients
        .iter()
        .flat_map(|item| statement_findings(item));
    found
        .filter(|finding| finding.concern == Concern::Contradicts)
        .collect()
}

fn statement_place(finding: &StatementFinding) -> String {
    say!(speaker(), "command-statement-place", id: finding.ingredient.as_str())
}

fn statement_json(book: &Book, finding: &StatementFinding) -> Value {
    let place = Place::Ingredient(finding.ingredient.clone(), "statement");
    facts::statement(finding).beside(json!({
        "severity": Severity::Warning.word(),
        "place": statement_place(finding),
        "at": facts::place(&place),
        "text": Speaker::new(book).question(finding),
    }))
}

/// An approved drink that no longer tastes as it was approved: no fault of the book, but what its owner would want to know.
fn drifted_text(book: &Book, drink: &Drifted) -> String {
    let (about, speaker) = (Speaker::new(book), speaker());
    let named = about.drink(&drink.recipe, drink.version.as_ref());
    let causes: Vec<String> = drink.causes.iter().map(|item| about.item(item)).collect();
    let causes = about.and(&causes);
    match drink.difference.distance {
        Some(steps) => say!(speaker, "command-check-drifted",
            drink: named, steps: about.number(steps, 1), causes: causes),
        None => say!(speaker, "command-check-drifted-unknown", drink: named, causes: causes),
    }
}

fn drifted_json(drink: &Drifted) -> Value {
    let causes = drink.causes.iter();
    let causes = causes.map(|item| json!({ "kind": item.key(), "id": item.id() }));
    json!({
        "recipe": drink.recipe.as_str(),
        "version": drink.version.as_ref().map(VersionId::as_str),
        "distance": drink.difference.distance,
        "changed": causes.collect::<Vec<Value>>(),
    })
}

fn summary(book: &Book, errors: usize, warnings: usize) -> String {
    let speaker = speaker();
    let summary = say!(
        speaker,
        "command-check-summary",
        ingredients: say!(speaker, "command-count-ingredients", count: book.ingredients.len()),
        measures: say!(speaker, "command-count-measures", count: book.measures.len()),
        vessels: say!(speaker, "command-count-vessels", count: book.vessels.len()),
        recipes: say!(speaker, "command-count-recipes", count: book.recipes.len()),
        errors: say!(speaker, "command-count-errors", count: errors),
        warnings: say!(speaker, "command-count-warnings", count: warnings),
    );
    format!("{summary}\n")
}

/// The recipes whose history is asked for: all that have one for an empty text, else the one of this id.
fn recipes_with_history<'book>(
    book: &'book Book,
    asked: Option<&str>,
) -> Result<Vec<&'book Recipe>, Failure> {
    match asked {
        None => Ok(Vec::new()),
        Some("") => Ok(book
            .recipes
            .iter()
            .map(AsRef::as_ref)
            .filter(|recipe| !recipe.approvals.is_empty())
            .collect()),
        Some(id) => Ok(vec![recipe_called(book, id)?]),
    }
}

/// The approvals of a recipe, the oldest first, and what changed since the one that each follows.
fn history_text(book: &Book, recipe: &Recipe) -> String {
    let speaker = Speaker::new(book);
    let name = excerpt(&recipe.name, TEXT);
    let title = say!(speaker, "command-history", name: name, id: recipe.id.as_str());
    let mut text = format!("\n{title}\n");
    if recipe.approvals.is_empty() {
        let _ = writeln!(text, "  {}", speaker.word("command-history-empty"));
    }
    for record in recipe.approval_history() {
        let _ = writeln!(text, "  {}", record_line(recipe, &record));
        let Some((differences, follows)) = record.differences.as_ref().zip(record.follows) else {
            continue;
        };
        if differences.is_empty() {
            let same = say!(speaker, "command-history-same", follows: follows);
            let _ = writeln!(text, "     {same}");
        }
        for sentence in speaker.differences(differences) {
            let since = say!(
                speaker,
                "command-history-since",
                follows: follows,
                difference: sentence,
            );
            let _ = writeln!(text, "     {since}");
        }
    }
    text
}

/// "2. 2026-06-01, version `iced`, by Ada, tasted at 5.0 °C: less sweet on ice".
fn record_line(recipe: &Recipe, record: &ApprovalRecord<'_>) -> String {
    let approval = record.approval;
    let speaker = speaker();
    let day = excerpt(&approval.date, TEXT);
    let mut line = say!(speaker, "command-history-day", number: record.number, day: day);
    if let Some(id) = &approval.version {
        let version = recipe.version(id);
        line = say!(
            speaker,
            "command-history-version",
            before: line,
            id: id.as_str(),
            named: if version.is_some() { "yes" } else { "no" },
            name: version.map_or_else(String::new, |version| excerpt(&version.name, TEXT)),
        );
    }
    if !approval.by.is_empty() {
        let by = excerpt(&approval.by, TEXT);
        line = say!(speaker, "command-history-by", before: line, by: by);
    }
    if let Some(celsius) = approval.tasted_at {
        let celsius = show_number(celsius, 1);
        line = say!(speaker, "command-history-tasted-at", before: line, celsius: celsius);
    }
    if !approval.reason.is_empty() {
        let reason = excerpt(&approval.reason, TEXT);
        line = say!(speaker, "command-history-reason", before: line, reason: reason);
    }
    line
}

fn history_json(book: &Book, recipe: &Recipe) -> Value {
    let approvals = recipe.approval_history().into_iter().map(|record| {
        let approval = record.approval;
        let facts = record.differences.as_ref().map(facts::changes);
        let mut document = json!({
            "number": record.number,
            "date": approval.date,
            "version": approval.version.as_ref().map(AsRef::<str>::as_ref),
            "by": approval.by,
            "reason": approval.reason,
            "tasted_at": approval.tasted_at,
            "follows": record.follows,
            "changes": record.differences.map(|one| Speaker::new(book).differences(&one)),
        });
        if let Some(facts) = facts {
            facts::beside_each(&mut document, "change", facts);
        }
        document
    });
    json!({ "recipe": recipe.id.as_str(), "approvals": approvals.collect::<Vec<_>>() })
}
