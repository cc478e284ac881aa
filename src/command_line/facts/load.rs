//! Why a book does not open.

use serde_json::{Value, json};

use super::Fact;
use crate::book::{IdError, MOST_LINES};
use crate::book_file::{
    FORMAT, FilePlace, Found, LONGEST_TEXT, LoadError, LoadErrorLine, LoadProblem, Step, TextFault,
    Wanted,
};

/// Why a book does not open, a fact for each line that is said.
pub(in crate::command_line) fn load_error(error: &LoadError) -> Vec<Fact> {
    error.lines().iter().map(line).collect()
}

fn line(line: &LoadErrorLine<'_>) -> Fact {
    match line {
        LoadErrorLine::Whole(error) => whole(error),
        LoadErrorLine::Only(problem, path) => {
            let mut fact = self::problem(problem);
            if let Value::Object(map) = &mut fact.arguments {
                map.insert("path".to_owned(), json!(path.display().to_string()));
            }
            fact
        }
        LoadErrorLine::Count(count) => Fact::new("problems", json!({ "count": count })),
        LoadErrorLine::Problem(problem) => self::problem(problem),
        LoadErrorLine::More(count) => Fact::new("more-problems", json!({ "count": count })),
        LoadErrorLine::File(path) => {
            Fact::new("file", json!({ "path": path.display().to_string() }))
        }
    }
}

fn whole(error: &LoadError) -> Fact {
    let (kind, path) = match error {
        LoadError::Missing { path } => ("missing", path),
        LoadError::Directory { path } => ("directory", path),
        LoadError::NotAFile { path } => ("not-a-file", path),
        LoadError::NoPermission { path } => ("no-permission", path),
        LoadError::Read { path, .. } => ("read", path),
        LoadError::NotUtf8 { path, .. } => ("not-utf8", path),
        LoadError::Problems { path, .. } => ("problems", path),
    };
    let mut arguments = json!({ "path": path.display().to_string() });
    if let Value::Object(map) = &mut arguments {
        if let LoadError::Read { source, .. } = error {
            map.insert("system".to_owned(), json!(source.to_string()));
        }
        if let LoadError::NotUtf8 { line, .. } = error {
            map.insert("line".to_owned(), json!(line));
        }
    }
    Fact::new(kind, arguments)
}

fn problem(problem: &LoadProblem) -> Fact {
    match problem {
        LoadProblem::TooLong { bytes } => Fact::new(
            "too-long",
            json!({ "bytes": bytes, "most_bytes": LONGEST_TEXT }),
        ),
        LoadProblem::NoFormat => Fact::new("no-format", json!({ "newest": FORMAT })),
        LoadProblem::BadFormat { found } => {
            Fact::new("bad-format", json!({ "found": found, "newest": FORMAT }))
        }
        LoadProblem::NewerFormat { found } => {
            Fact::new("newer-format", json!({ "found": found, "newest": FORMAT }))
        }
        LoadProblem::Text {
            fault,
            line,
            column,
        } => {
            let mut fact = text_fault(fault);
            if let Value::Object(map) = &mut fact.arguments {
                map.insert("line".to_owned(), json!(line));
                map.insert("column".to_owned(), json!(column));
            }
            fact
        }
        LoadProblem::DuplicateId {
            kind,
            id,
            first,
            second,
        } => Fact::new(
            "duplicate-id",
            json!({
                "names": kind.key(),
                "id": id,
                "first": place(first),
                "second": place(second),
            }),
        ),
        LoadProblem::BadId { error, place } => {
            let why = match error {
                IdError::Empty => json!({ "why": "empty" }),
                IdError::TooLong { found, length } => {
                    json!({ "why": "too-long", "found": found, "length": length })
                }
                IdError::Character { found, character } => {
                    json!({ "why": "character", "found": found, "character": character })
                }
            };
            Fact::new("bad-id", json!({ "id": why, "place": self::place(place) }))
        }
        LoadProblem::TooMany { count, place } => Fact::new(
            "too-many",
            json!({ "count": count, "most": MOST_LINES, "place": self::place(place) }),
        ),
        LoadProblem::PackContent { place } => {
            Fact::new("pack-content", json!({ "place": self::place(place) }))
        }
        // JSON has no word for a number that is none.
        LoadProblem::NotFinite { found, place } => Fact::new(
            "not-finite",
            json!({ "found": found.to_string(), "place": self::place(place) }),
        ),
    }
}

fn text_fault(fault: &TextFault) -> Fact {
    match fault {
        TextFault::Ended => Fact::alone("ended"),
        TextFault::OpenString => Fact::alone("open-string"),
        TextFault::OpenComment => Fact::alone("open-comment"),
        TextFault::TooDeep => Fact::alone("too-deep"),
        TextFault::UnknownField { found, known } => {
            Fact::new("unknown-field", json!({ "found": found, "known": known }))
        }
        TextFault::UnknownWord { found, known } => {
            Fact::new("unknown-word", json!({ "found": found, "known": known }))
        }
        TextFault::MissingField { field } => Fact::new("missing-field", json!({ "field": field })),
        TextFault::FieldTwice { field } => Fact::new("field-twice", json!({ "field": field })),
        TextFault::WrongKind { found, wanted } => Fact::new(
            "wrong-kind",
            json!({ "found": self::found(found), "wanted": self::wanted(wanted) }),
        ),
    }
}

fn found(found: &Found) -> Value {
    match found {
        Found::Text(text) => json!({ "text": text }),
        Found::Values(count) => json!({ "values": count }),
        Found::NoWholeNumber => json!({ "number": "not-whole" }),
        Found::Reader(words) => json!({ "words": words }),
    }
}

/// Where in a file something stands: its line, and the fields and items on the way to it, which count from 0.
fn place(place: &FilePlace) -> Value {
    let steps = place.steps.iter().map(|step| match step {
        Step::Field(name) => json!({ "field": name }),
        Step::Item { index, label } => json!({ "index": index, "id": label }),
    });
    json!({ "line": place.line, "steps": steps.collect::<Vec<_>>() })
}

/// What should stand in a text.
fn wanted(wanted: &Wanted) -> &'static str {
    match wanted {
        Wanted::List => "list",
        Wanted::EndOfList => "end-of-list",
        Wanted::Group => "group",
        Wanted::EndOfGroup => "end-of-group",
        Wanted::Colon => "colon",
        Wanted::Comma => "comma",
        Wanted::Number => "number",
        Wanted::WholeNumber => "whole-number",
        Wanted::Count => "count",
        Wanted::Text => "text",
        Wanted::Word => "word",
        Wanted::YesOrNo => "yes-or-no",
        Wanted::EndOfBook => "end-of-book",
        Wanted::Figure => "figure",
        Wanted::Reader(..) => "other",
    }
}
