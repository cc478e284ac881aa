//! Every sentence in the JSON of the commands has its fact beside it: a kind, and the arguments of that kind.

use std::path::Path;

use serde_json::{Map, Value};

use crate::commands::{SAMPLE, SWAP, evensip};

/// Keys whose text is a sentence or a part of one, however short it is.
const SAID: [&str; 8] = [
    "text",
    "question",
    "cause",
    "explanation",
    "definition",
    "what",
    "outcome",
    "words",
];

/// Keys whose texts are those of a person or of the law, or names for programs that consist of words.
const NOT_SAID: [&str; 11] = [
    "name",
    "note",
    "model",
    "line",
    "path",
    "book",
    "unit",
    "contains",
    "may_contain",
    "us_contains",
    "us_may_contain",
];

/// The document that a command prints, whatever it ends with; `None` when it prints none.
fn document(arguments: &[&str]) -> Option<Value> {
    let output = evensip(&[arguments, &["--json"]].concat());
    serde_json::from_slice(&output.stdout).ok()
}

fn is_sentence(text: &str) -> bool {
    let words = text.split_whitespace();
    words.filter(|word| word.len() > 1).count() > 2
}

/// A kind is for programs: small letters with hyphens. Those of suggestions have been words with spaces from the beginning.
fn assert_kind(kind: &Value, about: &str) {
    let kind = kind.as_str().unwrap_or_else(|| panic!("{about}: no kind"));
    let is_key = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-' || c == ' ';
    assert!(
        !kind.is_empty() && kind.chars().all(is_key),
        "{about}: {kind}"
    );
}

fn assert_fact(object: &Map<String, Value>, about: &str) {
    let kind = object.get("kind").unwrap_or(&Value::Null);
    assert_kind(kind, about);
    let arguments = object.get("arguments");
    assert!(
        arguments.is_some_and(Value::is_object),
        "{about}: {object:?}"
    );
}

/// Goes through a document; how many sentences it has.
fn sentences(value: &Value, path: &str) -> usize {
    match value {
        Value::Array(items) => items.iter().map(|item| sentences(item, path)).sum(),
        Value::Object(object) => of_object(object, path),
        _ => 0,
    }
}

fn of_object(object: &Map<String, Value>, path: &str) -> usize {
    // The day, the person and the reason of an approval are as they were written.
    let is_written = object.contains_key("tasted_at");
    let mut count = 0;
    for (key, value) in object {
        if key == "arguments" || key.ends_with("_arguments") {
            continue;
        }
        let about = format!("{path}.{key}");
        match value {
            Value::String(text) => {
                let is_said = SAID.contains(&key.as_str()) || is_sentence(text);
                if is_said && !is_written && !NOT_SAID.contains(&key.as_str()) {
                    assert_fact(object, &about);
                    count += 1;
                }
            }
            Value::Array(items)
                if !NOT_SAID.contains(&key.as_str())
                    && items
                        .iter()
                        .any(|item| item.as_str().is_some_and(is_sentence)) =>
            {
                let one = key.trim_end_matches('s');
                for beside in ["kinds", "arguments"] {
                    let facts = &object.get(&format!("{one}_{beside}"));
                    let facts = facts.and_then(Value::as_array);
                    let facts = facts.unwrap_or_else(|| panic!("{about}: no {beside}"));
                    assert_eq!(facts.len(), items.len(), "{about}: {beside}");
                    if beside == "kinds" {
                        for kind in facts {
                            assert_kind(kind, &about);
                        }
                    } else {
                        assert!(facts.iter().all(Value::is_object), "{about}");
                    }
                }
                count += items.len();
            }
            other => count += sentences(other, &about),
        }
    }
    count
}

fn count_of(arguments: &[&str]) -> usize {
    let document = document(arguments);
    let document = document.unwrap_or_else(|| panic!("{arguments:?}: no document"));
    sentences(&document, &arguments.join(" "))
}

#[test]
fn every_sentence_about_the_sample_books_has_its_fact_beside_it() {
    let books = [SAMPLE, "sample-books/unread-labels.ron"];
    for book in books {
        assert!(count_of(&["balance", book, "--all"]) > 0);
        count_of(&["check", book]);
    }
    assert!(count_of(&["check", SAMPLE, "--history"]) > 0);
    let swap = |more: &[&str]| count_of(&[&SWAP, more].concat());
    let free = swap(&[]);
    for more in [
        &["--most-fill", "5"][..],
        &["--most-sugar", "0.1"],
        &["--most-energy", "1"],
        &["--most-cost", "0"],
        &["--temperature", "90..95"],
        &["--vegan"],
        &["--without", "milk"],
        &["--lock", "sweetener"],
    ] {
        assert!(swap(more) > 0, "{more:?}");
    }
    assert!(free > 0);
    for recipe in ["hob-and-ember", "hazelthwaite"] {
        assert!(count_of(&["ladder", SAMPLE, "--recipe", recipe]) > 0);
    }
}

#[test]
fn every_sentence_about_a_tasting_or_a_reading_has_its_fact_beside_it() {
    for arguments in [
        &[
            "blind",
            "plan",
            "--test",
            "triangle",
            "--people",
            "6",
            "--d-prime",
            "1.5",
        ][..],
        &[
            "blind",
            "plan",
            "--test",
            "pair",
            "--people",
            "8",
            "--similar",
            "30",
            "--stop-early",
        ],
        &[
            "blind",
            "plan",
            "--test",
            "pair-either-way",
            "--people",
            "4",
            "--stop-early",
        ],
        &["blind", "plan", "--test", "duo-trio", "--share", "1"],
        &[
            "blind", "serve", "--test", "triangle", "--people", "7", "--seed", "3",
        ],
        &[
            "blind",
            "verdict",
            "--test",
            "triangle",
            "--people",
            "6",
            "--right",
            "5",
            "--similar",
            "30",
        ],
        &[
            "blind",
            "verdict",
            "--test",
            "duo-trio",
            "--answer",
            "Ada=right",
            "--answer",
            "Ada=right",
        ],
        &[
            "brix",
            "13.4",
            "--celsius",
            "26",
            "--product",
            "20",
            "--water",
            "80",
            "--label",
            "75",
        ],
        &["brix", "0.3", "--holds", "dairy", "--holds", "fibre"],
        &["brix", "8", "--book", SAMPLE, "--recipe", "hob-and-ember"],
        &["brix", "8", "--book", SAMPLE, "--recipe", "pear-drift"],
    ] {
        assert!(count_of(arguments) > 0, "{arguments:?}");
    }
}

#[test]
fn every_sentence_about_cups_has_its_fact_beside_it() {
    for recipe in ["hob-and-ember", "brindlecote", "pear-drift"] {
        let cups = &["cups", SAMPLE, "--recipe", recipe, "--shifts", "2"][..];
        assert!(count_of(cups) > 2, "{recipe}");
        assert!(
            count_of(&["last-sip", SAMPLE, "--recipe", recipe]) > 2,
            "{recipe}"
        );
        let why_off = ["why-off", SAMPLE, "--recipe", recipe, "--weight"];
        for read in [
            &["350"][..],
            &["9000"],
            &["410", "--celsius", "50", "--brix", "9"],
        ] {
            assert!(
                count_of(&[&why_off, read].concat()) > 2,
                "{recipe} {read:?}"
            );
        }
    }
}

#[test]
fn every_problem_of_a_bad_book_has_its_fact_beside_it() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bad-books");
    let mut count = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|ending| ending == "ron") {
            let sentences = count_of(&["check", path.to_str().unwrap()]);
            assert!(sentences > 0, "{}", path.display());
            count += sentences;
        }
    }
    assert!(count > 40, "{count}");
}
