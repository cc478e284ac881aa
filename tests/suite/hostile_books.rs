//! Books that somebody made on purpose, old books, and what the fuzzers have found.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "a test tells what it measured, and ends at the first surprise"
)]

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use evensip::balance::balance_version;
use evensip::book::{Severity, findings};
use evensip::book_file::{LONGEST_TEXT, LoadProblem, parse, write};
use evensip::say::Speaker;

use super::arbitrary_book as arbitrary;

/// Generous: a slow machine that does other work; what is bounded takes seconds, what is not takes days.
const BOUND: Duration = Duration::from_mins(2);

fn files(folder: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut files: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    files.sort();
    files
}

/// A text that is as long as is read, of so many copies of an item.
fn full_text(before: &str, item: impl Fn(usize) -> String, after: &str) -> String {
    let most = usize::try_from(LONGEST_TEXT).unwrap() - after.len() - 200;
    let mut text = before.to_owned();
    let mut number = 0;
    while text.len() < most {
        text.push_str(&item(number));
        number += 1;
    }
    text + after
}

/// `opens` says whether the text is a book, so that a slip in it does not pass for a quick answer.
fn is_answered_in_time(what: &str, text: &str, opens: bool) {
    let started = Instant::now();
    match parse(text) {
        Ok((_, found)) => assert!(
            opens && found.len() <= 2001,
            "{what}: {} findings",
            found.len()
        ),
        Err(problems) => assert!(!opens && problems.len() <= 2000, "{what}: {problems:?}"),
    }
    let took = started.elapsed();
    println!("{what}: {} MB in {took:.1?}", text.len() >> 20);
    assert!(took < BOUND, "{what}: {took:?}");
}

#[test]
fn as_many_small_items_as_fit_are_answered_in_bounded_time() {
    const LINE: &str = "role: Water)";
    const MOST: usize = evensip::book::MOST_LINES;
    // As many recipes with as many lines as a recipe may have.
    is_answered_in_time(
        "full recipes of nothing",
        &full_text(
            "(format: 1, recipes: [(id: \"a\", name: \"\", entries: [",
            |number| {
                let next = if number % MOST == MOST - 1 {
                    format!("]), (id: \"r{number}\", name: \"\", entries: [")
                } else {
                    String::new()
                };
                format!(
                    "Line(id: \"l{number}\", ingredient: \"x{number}\", amount: Grams(1.0), {LINE},{next}"
                )
            },
            "])])",
        ),
        true,
    );
    is_answered_in_time(
        "one recipe with far too many lines",
        &full_text(
            "(format: 1, recipes: [(id: \"a\", name: \"\", entries: [",
            |number| {
                format!(
                    "Line(id: \"l{number}\", ingredient: \"x{number}\", amount: Grams(1.0), {LINE},"
                )
            },
            "])])",
        ),
        false,
    );
}

#[test]
fn versions_in_a_long_row_are_answered_in_bounded_time() {
    is_answered_in_time(
        "versions on versions",
        &full_text(
            "(format: 1, recipes: [(id: \"a\", name: \"\", versions: [",
            |number| {
                format!(
                    "(id: \"v{number}\", name: \"\", builds_on: \"v{}\", changes: [Strained(true)]),",
                    number + 1
                )
            },
            "])])",
        ),
        true,
    );
}

#[test]
fn house_made_items_in_one_great_circle_are_answered_in_bounded_time() {
    let mut text = "(format: 1, ingredients: [".to_owned();
    let mut recipes = String::new();
    let count = 100_000;
    for number in 0..count {
        let _ = write!(
            text,
            "(id: \"i{number}\", name: \"\", form: Syrup, role: Base, house_made: (recipe: \"r{number}\", yield_grams: (1.0, Label), waste_percent: 0.0)),"
        );
        let next = (number + 1) % count;
        let _ = write!(
            recipes,
            "(id: \"r{number}\", name: \"\", entries: [Line(id: \"l\", ingredient: \"i{next}\", amount: Grams(1.0), role: Base)]),"
        );
    }
    let text = format!("{text}], recipes: [{recipes}])");
    let started = Instant::now();
    let (_, found) = parse(&text).unwrap();
    let speaker = Speaker::without_book();
    let errors: Vec<String> = found
        .iter()
        .filter(|finding| finding.severity == Severity::Error)
        .map(|finding| speaker.finding(finding))
        .collect();
    assert_eq!(errors.len(), 1, "{errors:?}");
    assert!(
        errors[0].contains("in a loop") && errors[0].len() < 500,
        "{}",
        errors[0]
    );
    assert!(started.elapsed() < BOUND, "{:?}", started.elapsed());
}

#[test]
fn an_empty_list_item_is_not_worth_a_byte_of_trust() {
    is_answered_in_time(
        "empty items",
        &full_text("(format: 1, recipes: [", |_| "(),".to_owned(), "])"),
        false,
    );
    is_answered_in_time(
        "allergens",
        &full_text(
            "(format: 1, ingredients: [(id: \"a\", name: \"\", form: Syrup, role: Base, allergens: (contains: [",
            |_| "Milk,".to_owned(),
            "]))])",
        ),
        true,
    );
}

#[test]
fn numbers_at_the_edges_give_findings_and_no_nonsense() {
    for seed in 0..400 {
        let book = arbitrary::book(seed);
        for finding in findings(&book) {
            let sentence = Speaker::new(&book).finding(&finding);
            assert!(sentence.chars().count() < 1500, "seed {seed}: {sentence}");
            assert!(
                !sentence.contains(['\u{202e}', '\0']),
                "seed {seed}: {sentence:?}"
            );
        }
        for recipe in &book.recipes {
            let versions = recipe.versions.iter().map(|version| Some(&version.id));
            for version in std::iter::once(None).chain(versions) {
                // No panic; whether a figure is any good is the engine's own test.
                let _ = balance_version(&book, recipe, version);
            }
        }
    }
    for number in [
        "1e308",
        "-1e308",
        "5e-324",
        "1.7976931348623157e308",
        "-0.0",
        "1e-400",
    ] {
        let text = format!(
            "(format: 1, vessels: [(id: \"a\", name: \"\", kind: Cup, capacity: {number})])"
        );
        let (book, _) = parse(&text).unwrap();
        assert!(parse(&write(&book)).unwrap().0 == book, "{number}");
    }
    for number in ["1e309", "-1e999", "NaN", "inf", "-inf"] {
        let text = format!(
            "(format: 1, vessels: [(id: \"a\", name: \"\", kind: Cup, capacity: {number})])"
        );
        assert!(parse(&text).is_err(), "{number}");
    }
}

#[test]
fn ids_with_hidden_characters_or_paths_are_refused_and_shown_harmless() {
    for id in [
        "../../etc/passwd",
        "a/b",
        "a\\\\b",
        "a\\u{202e}b",
        "a\\u{0}b",
        "a\\nb",
        "con.ron",
        "=1+1",
        " a",
        "a\\u{200b}",
    ] {
        let text =
            format!("(format: 1, vessels: [(id: \"{id}\", name: \"\", kind: Cup, capacity: 1.0)])");
        let problems = parse(&text).expect_err(id);
        let sentence = Speaker::without_book().load_problem(&problems[0]);
        assert!(
            matches!(problems[0], LoadProblem::BadId { .. }),
            "{sentence}"
        );
        assert!(
            sentence
                .chars()
                .all(|c| !c.is_control() && c != '\u{202e}' && c != '\u{200b}'),
            "{sentence:?}"
        );
    }
}

#[test]
fn books_of_every_format_open_for_ever() {
    let files = files("tests/old-books");
    assert!(files.iter().any(|path| path.ends_with("format-1.ron")));
    for path in files {
        let before = fs::read(&path).unwrap();
        let loaded = evensip::book_file::load(&path).unwrap_or_else(|error| panic!("{error:?}"));
        let errors: Vec<_> = loaded
            .findings
            .iter()
            .filter(|finding| finding.severity == Severity::Error)
            .collect();
        assert!(errors.is_empty(), "{}: {errors:?}", path.display());
        assert!(
            loaded.book.recipes.len() >= 2 && loaded.book.ingredients.len() >= 3,
            "{}",
            path.display()
        );
        assert!(
            parse(&write(&loaded.book)).unwrap().0 == loaded.book,
            "{}",
            path.display()
        );
        assert_eq!(fs::read(&path).unwrap(), before);
    }
}

/// What must stay readable is told by the book itself: every word and field of the format stands in it.
#[test]
fn the_book_of_format_1_uses_every_field() {
    let text = fs::read_to_string(
        Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/old-books/format-1.ron"),
    )
    .unwrap();
    for word in [
        "Per100Millilitres",
        "PerServing",
        "WithFibre",
        "Hfcs42",
        "Own(",
        "GlucoseSyrup(",
        "high_potency",
        "per_gram",
        "may_contain",
        "house_made",
        "cooling_run",
        "closures",
        "serviceware",
        "Straw(wide",
        "Sleeve",
        "carried",
        "FillTo(",
        "FillToRim",
        "Count(",
        "Add(",
        "Remove(",
        "Move(",
        "Cup(",
        "Shaker(",
        "Strained(",
        "DrinkingTemperature(",
        "MenuPrice(",
        "SugarLevel(",
        "builds_on",
        "season",
        "tasted_at",
        "yardsticks",
        "steps",
        "Instruction",
    ] {
        assert!(text.contains(word), "{word}");
    }
}

#[test]
fn what_the_fuzzers_found_stays_found() {
    for (name, law) in crate::fuzz_laws::ALL {
        for path in files(&format!("tests/fuzz/corpus/{name}")) {
            println!("{}", path.display());
            law(&fs::read(&path).unwrap());
        }
    }
}
