//! The commands about blind tests and refractometer readings, as a person or a script calls them.

use evensip::balance::Measurand;
use evensip::balance::balance_version;
use evensip::book_file::load;
use serde_json::Value;

use crate::commands::{SAMPLE, evensip};

fn text(arguments: &[&str]) -> String {
    let output = evensip(arguments);
    assert_eq!(output.status.code(), Some(0), "{arguments:?}");
    String::from_utf8(output.stdout).unwrap()
}

fn json(arguments: &[&str]) -> Value {
    let output = evensip(&[arguments, &["--json"]].concat());
    assert_eq!(output.status.code(), Some(0), "{arguments:?}");
    serde_json::from_slice(&output.stdout).unwrap()
}

fn error(arguments: &[&str]) -> String {
    let output = evensip(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    assert!(output.stdout.is_empty(), "{arguments:?}");
    String::from_utf8(output.stderr).unwrap()
}

/// The arguments of the one remark of a kind.
fn remark<'json>(document: &'json Value, kind: &str) -> &'json Value {
    let remarks = document["remarks"].as_array().unwrap();
    let found = remarks.iter().find(|remark| remark["kind"] == kind);
    &found.unwrap_or_else(|| panic!("no {kind}: {document:#}"))["arguments"]
}

#[test]
fn a_plan_says_what_six_people_can_and_cannot_show() {
    let plan = ["blind", "plan", "--test", "triangle", "--people", "6"];
    let document = json(&plan);
    assert_eq!(remark(&document, "needed")["answers"], 5);
    let power = remark(&document, "power")["power"].as_f64().unwrap();
    assert!((power - 0.351_165_980_8).abs() < 1e-9, "{power}");
    assert_eq!(remark(&document, "least-panel")["people"], 16);
    remark(&document, "one-answer-each");
    let said = text(&plan);
    assert!(said.contains("at least 5 right answers"), "{said}");
    assert!(said.contains("35\u{a0}%"), "{said}");
    let small = json(&["blind", "plan", "--test", "pair", "--people", "4"]);
    assert_eq!(remark(&small, "cannot-show")["least"], 5);
}

#[test]
fn a_verdict_tells_a_difference_from_none_found_and_none_found_from_the_same() {
    let verdict = |right: &str, more: &[&str]| {
        let first = [
            "blind", "verdict", "--test", "triangle", "--people", "6", "--right", right,
        ];
        json(&[&first[..], more].concat())
    };
    let found = verdict("5", &[]);
    let chance = remark(&found, "result")["chance"].as_f64().unwrap();
    assert!((chance - 13.0 / 729.0).abs() < 1e-12, "{chance}");
    remark(&found, "found");
    let none = verdict("4", &["--similar", "30"]);
    assert!(remark(&none, "not-found")["most"].as_f64().unwrap() > 0.8);
    remark(&none, "not-similar");
    let few = [
        "blind", "verdict", "--test", "triangle", "--people", "6", "--right", "4",
    ];
    let said = text(&few);
    assert!(
        said.contains("does not mean that the taste is the same"),
        "{said}"
    );
}

#[test]
fn further_rounds_of_the_same_people_add_none() {
    let once = [
        "--answer",
        "Ada=right",
        "--answer",
        "Bo=right",
        "--answer",
        "Cy=wrong",
    ];
    let again = [
        "--answer",
        "Ada=right",
        "--answer",
        "Bo=right",
        "--answer",
        "Ada=wrong",
    ];
    let test = ["blind", "verdict", "--test", "duo-trio"];
    let document = json(&[&test[..], &once, &again].concat());
    assert_eq!(document["people"], 3);
    assert_eq!(document["right"], 2);
    assert_eq!(remark(&document, "repeated")["repeated"], 3);
    let alone = json(&[&test[..], &once].concat());
    assert_eq!(remark(&document, "result"), remark(&alone, "result"));
}

#[test]
fn a_ranking_is_planned_and_its_answers_are_told() {
    let plan = ["blind", "plan", "--test", "ranking", "--people"];
    let six = json(&[&plan[..], &["6", "--d-prime", "2"]].concat());
    let needed = remark(&six, "rank-needed");
    assert_eq!(needed["friedman"], 7.0);
    // 1 365 of 6⁶ results, by whole numbers.
    assert!((needed["chance"].as_f64().unwrap() - 1365.0 / 46_656.0).abs() < 0.002);
    let more = remark(&six, "rank-predicted-shows-more");
    assert!(more["predicted"].as_f64() > more["power"].as_f64());
    let two = json(&[&plan[..], &["2"]].concat());
    assert_eq!(remark(&two, "rank-cannot-show")["least"], 3);
    let verdict = [
        "blind", "verdict", "--test", "ranking", "--answer", "Ada=BCA", "--answer", "Bo=CBA",
        "--answer", "Cy=bca", "--answer", "Di=CBA", "--answer", "Ada=ABC",
    ];
    let document = json(&verdict);
    assert_eq!(document["people"], 4);
    assert_eq!(document["sums"]["A"], 12);
    assert_eq!(remark(&document, "repeated")["repeated"], 1);
    let said = text(&[&verdict[..], &["--predicted", "BCA"]].concat());
    assert!(said.contains("B, C, A"), "{said}");
}

#[test]
fn servings_are_the_same_from_the_same_seed_alone() {
    let serve = |seed: &str| {
        let orders = [
            "blind", "serve", "--test", "triangle", "--people", "6", "--seed", seed,
        ];
        (text(&orders), json(&orders))
    };
    assert_eq!(serve("7"), serve("7"));
    assert_ne!(serve("7").1["servings"], serve("8").1["servings"]);
    let (said, document) = serve("7");
    let tasting = said.split("\n\n").nth(1).unwrap();
    for serving in document["servings"].as_array().unwrap() {
        assert!(serving["right"].is_u64());
        for cup in serving["cups"].as_array().unwrap() {
            assert!(tasting.contains(&cup["code"].to_string()), "{tasting}");
        }
    }
    // What tasters read does not tell them what is in a cup.
    assert!(
        !tasting.contains(" A") && !tasting.contains(" B"),
        "{tasting}"
    );
}

#[test]
fn a_solution_gives_back_the_solids_of_its_product() {
    let reading = [
        "brix",
        "13.4",
        "--celsius",
        "20",
        "--product",
        "20",
        "--water",
        "80",
    ];
    let document = json(&[&reading[..], &["--label", "67"]].concat());
    assert!((document["product"]["value"].as_f64().unwrap() - 67.0).abs() < 1e-6);
    assert_eq!(document["comparison"]["kind"], "agrees");
    let other = json(&[&reading[..], &["--label", "75"]].concat());
    assert_eq!(other["comparison"]["kind"], "below");
    let tea = json(&["brix", "0.3"]);
    assert_eq!(tea["cautions"][0]["kind"], "too-weak");
    assert_eq!(tea["comparison"], Value::Null);
}

#[test]
fn a_whole_drink_is_held_against_its_computed_brix() {
    let book = load(SAMPLE.as_ref()).unwrap().book;
    let recipe = book
        .recipes
        .iter()
        .find(|recipe| recipe.id.as_str() == "pear-drift");
    let balance = balance_version(&book, recipe.unwrap(), None).unwrap();
    let brix = balance.figures.complete(Measurand::Brix).unwrap();
    let read = |reading: f64| {
        let reading = format!("{reading:.2}");
        let drink = ["brix", &reading, "--book", SAMPLE, "--recipe", "pear-drift"];
        json(&drink)["comparison"]["kind"].clone()
    };
    assert_eq!(read(brix), "agrees");
    assert_eq!(read(brix * 0.4), "below");
    assert_eq!(read(brix * 2.0), "above");
}

#[test]
fn what_makes_no_sense_is_refused_with_a_sentence() {
    for (arguments, part) in [
        (
            &["blind", "plan", "--test", "triangle", "--level", "0"][..],
            "below 50",
        ),
        (
            &["blind", "plan", "--test", "triangle", "--power", "100"],
            "below 100",
        ),
        (
            &["blind", "plan", "--test", "triangle", "--people", "1"],
            "2..=",
        ),
        (
            &["blind", "plan", "--test", "ranking", "--similar", "30"],
            "alike",
        ),
        (
            &["blind", "plan", "--test", "ranking", "--predicted", "AAB"],
            "BAC",
        ),
        (
            &["blind", "plan", "--test", "pair", "--predicted", "ABC"],
            "--predicted",
        ),
        (
            &[
                "blind", "verdict", "--test", "ranking", "--people", "6", "--right", "3",
            ],
            "--answer Ada=BAC",
        ),
        (
            &["blind", "verdict", "--test", "ranking", "--answer", "Ada=B"],
            "Ada=BAC",
        ),
        (
            &[
                "blind", "verdict", "--test", "pair", "--people", "6", "--right", "7",
            ],
            "7 right",
        ),
        (
            &["blind", "verdict", "--test", "pair", "--answer", "Ada"],
            "Ada=right",
        ),
        (&["blind", "verdict", "--test", "pair"], "--answer"),
        (
            &[
                "blind", "serve", "--test", "triangle", "--people", "400", "--seed", "1",
            ],
            "300",
        ),
        (&["brix", "12", "--product", "0", "--water", "80"], "0 g"),
        (&["brix", "12", "--product", "20"], "--water"),
        (&["brix", "much"], "number"),
        (&["brix", "90"], "85"),
        (&["brix", "12", "--celsius", "70"], "60"),
    ] {
        let said = error(arguments);
        assert!(said.contains(part), "{arguments:?}: {said}");
        assert!(!said.contains("NaN"), "{said}");
    }
}
