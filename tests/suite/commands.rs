//! The commands without a display, as a person or a script calls them.

use std::path::Path;
use std::process::{Command, Output};

use serde_json::Value;

pub(crate) const SAMPLE: &str = "sample-books/harrowmere.ron";

/// A swap that has suggestions.
pub(crate) const SWAP: [&str; 8] = [
    "swap",
    SAMPLE,
    "--recipe",
    "hazelthwaite",
    "--replace",
    "tambrel-chestnut",
    "--with",
    "ketterby-chestnut",
];

pub(crate) fn evensip(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_evensip"))
        .args(arguments)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .output()
        .expect("the program starts")
}

fn json(arguments: &[&str]) -> Value {
    let output = evensip(arguments);
    assert!(
        output.status.success(),
        "{arguments:?}: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout).expect("one JSON document")
}

fn error_of(arguments: &[&str]) -> (Option<i32>, String) {
    let output = evensip(arguments);
    (
        output.status.code(),
        String::from_utf8(output.stderr).unwrap(),
    )
}

#[test]
fn every_key_that_the_interface_names_is_there() {
    let balance = json(&["balance", SAMPLE, "--recipe", "hob-and-ember", "--json"]);
    for key in [
        "recipe",
        "version",
        "mass",
        "volume",
        "total_sugar",
        "free_sugars",
        "sugars",
        "sweetness",
        "brix",
        "density",
        "dilution",
        "serving_temperature",
        "ice_left",
        "minutes_to_drinkable",
        "energy_kj",
        "energy_kcal",
        "fat",
        "saturates",
        "carbohydrate",
        "protein",
        "fibre",
        "salt",
        "caffeine",
        "tea_solids",
        "acid",
        "cost",
        "fill",
        "vegan",
        "allergens",
        "axes",
        "cautions",
        "lines",
    ] {
        assert!(balance.get(key).is_some(), "{key}");
    }
    for key in [
        "sucrose", "glucose", "fructose", "lactose", "maltose", "other",
    ] {
        assert!(balance["sugars"].get(key).is_some(), "sugars.{key}");
    }
    for key in ["contains", "may_contain", "not_stated"] {
        assert!(balance["allergens"].get(key).is_some(), "allergens.{key}");
    }
    for key in ["value", "u", "unit", "missing"] {
        assert!(
            balance["total_sugar"].get(key).is_some(),
            "total_sugar.{key}"
        );
    }
    for key in [
        "line",
        "ingredient",
        "mass",
        "volume",
        "total_sugar",
        "energy_kj",
        "cost",
    ] {
        assert!(balance["lines"][0].get(key).is_some(), "lines[0].{key}");
    }
    for key in ["value", "u"] {
        assert!(balance["minutes_to_drinkable"][key].is_number(), "{key}");
    }
    let very_hot = &balance["cooling"]["milestones"][0];
    assert_eq!(very_hot["line"], "below very hot");
    for key in ["minutes", "earliest", "latest"] {
        assert!(very_hot.get(key).is_some(), "milestones[0].{key}");
    }
    let lukewarm = &balance["cooling"]["milestones"][2];
    let latest = lukewarm["latest"].as_f64().expect("a number");
    assert!(lukewarm["minutes"]["value"].as_f64().expect("a number") < latest);
    for key in ["axis", "value", "step"] {
        assert!(balance["axes"][0].get(key).is_some(), "axes[0].{key}");
    }
}

#[test]
fn a_figure_that_is_not_known_is_null_or_a_known_part_and_names_what_is_missing() {
    let balance = json(&[
        "balance",
        SAMPLE,
        "--recipe",
        "hob-and-ember",
        "--version",
        "oat",
        "--json",
    ]);
    assert_eq!(
        balance["total_sugar"]["missing"],
        serde_json::json!(["velloom-oat-creamer"])
    );
    assert!(balance["total_sugar"]["value"].as_f64().unwrap() > 15.0);
    let axis = balance["axes"]
        .as_array()
        .unwrap()
        .iter()
        .find(|axis| axis["axis"] == "sweetness")
        .unwrap();
    assert!(axis["value"].is_null() && axis["steps"].is_null());
}

#[test]
fn all_recipes_and_versions_come_as_one_list_and_the_same_bytes_every_time() {
    let all = json(&["balance", SAMPLE, "--all", "--json"]);
    let list = all.as_array().expect("a list");
    assert!(list.len() > 20, "{}", list.len());
    assert!(
        list.iter()
            .any(|one| one["recipe"] == "hob-and-ember" && one["version"] == "vegan")
    );
    let once = evensip(&["balance", SAMPLE, "--all", "--json"]).stdout;
    assert_eq!(
        once,
        evensip(&["balance", SAMPLE, "--all", "--json"]).stdout
    );
}

#[test]
fn a_swap_prints_the_standard_the_plain_swap_and_suggestions() {
    let swap = json(&[&SWAP[..], &["--json"]].concat());
    for key in [
        "standard",
        "plain_swap",
        "suggestions",
        "reasons",
        "proven_optimal",
        "evaluated",
    ] {
        assert!(swap.get(key).is_some(), "{key}");
    }
    let first = &swap["suggestions"][0];
    for key in [
        "kind",
        "changes",
        "balance",
        "distance",
        "within_scatter",
        "explanation",
    ] {
        assert!(first.get(key).is_some(), "suggestions[0].{key}");
    }
    let changes = first["changes"].as_array().unwrap();
    let spoon = changes
        .iter()
        .find(|change| change["line"] == "sweetener")
        .expect("the sweetener moves");
    assert_eq!(
        (spoon["from"].as_f64(), spoon["to"].as_f64()),
        (Some(1.0), Some(0.5))
    );
    assert_eq!(spoon["unit"], "spoon");
    assert!(swap["plain_swap"]["distance"]["overall"].as_f64().unwrap() > 1.0);
}

#[test]
fn wrong_ids_list_their_neighbours_and_exit_with_two() {
    for (arguments, says) in [
        (
            vec!["balance", SAMPLE, "--recipe", "hob-and-embers"],
            "did you mean hob-and-ember",
        ),
        (
            vec![
                "balance",
                SAMPLE,
                "--recipe",
                "hob-and-ember",
                "--version",
                "vegn",
            ],
            "did you mean vegan",
        ),
        (
            vec![
                "swap",
                SAMPLE,
                "--recipe",
                "hob-and-ember",
                "--replace",
                "water",
                "--with",
                "tambrel-chesnut",
            ],
            "tambrel-chestnut",
        ),
        (vec!["balance", SAMPLE], "--recipe"),
        (vec!["balance", SAMPLE, "--recipe"], "--recipe"),
    ] {
        let (code, message) = error_of(&arguments);
        assert_eq!(code, Some(2), "{arguments:?}: {message}");
        assert!(message.contains(says), "{arguments:?}: {message}");
    }
}

#[test]
fn the_caps_of_a_swap_are_kept_and_bad_ones_refused() {
    let with = |cap, most| [&SWAP[..], &[cap, most, "--json"]].concat();
    let free = json(&with("--most-fill", "100"));
    assert!(!free["suggestions"].as_array().unwrap().is_empty());
    let tight = json(&with("--most-fill", "5"));
    assert!(tight["suggestions"].as_array().unwrap().is_empty());
    assert!(
        tight["reasons"].to_string().contains("cup"),
        "{}",
        tight["reasons"]
    );
    for (cap, most) in [
        ("--most-fill", "0"),
        ("--most-fill", "120"),
        ("--most-sugar", "nan"),
        ("--most-energy", "-1"),
        ("--most-cost", "inf"),
    ] {
        let (code, message) = error_of(&with(cap, most));
        assert_eq!(code, Some(2), "{cap} {most}: {message}");
        assert!(message.contains(cap), "{message}");
    }
}

#[test]
fn a_missing_book_is_a_sentence_and_exit_code_one() {
    let (code, message) = error_of(&["check", "no-such-book.ron"]);
    assert_eq!(code, Some(1));
    assert!(message.contains("no-such-book.ron"), "{message}");
    assert_eq!(message.trim().lines().count(), 1, "{message}");
}

#[test]
fn every_sample_book_passes_the_check_without_errors() {
    for entry in
        std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("sample-books")).unwrap()
    {
        let path = entry.unwrap().path();
        let check = json(&["check", path.to_str().unwrap(), "--json"]);
        assert_eq!(check["errors"], 0, "{}: {check:#}", path.display());
    }
}

#[test]
fn without_a_display_one_sentence_names_the_commands() {
    let output = evensip(&[]);
    let message = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(1), "{message}");
    assert_eq!(message.trim().lines().count(), 1, "{message}");
    for word in [
        "display",
        "evensip check",
        "evensip balance",
        "evensip swap",
    ] {
        assert!(message.contains(word), "{message}");
    }
}

#[test]
fn a_figure_names_what_makes_it_uncertain_and_how_to_narrow_it() {
    let balance = json(&["balance", SAMPLE, "--recipe", "hob-and-ember", "--json"]);
    let causes = balance["total_sugar"]["causes"].as_array().unwrap();
    let part = |cause: &Value| cause["part_of_variance"].as_f64().unwrap();
    assert!((1..=3).contains(&causes.len()), "{causes:?}");
    assert!(
        causes
            .windows(2)
            .all(|pair| part(&pair[0]) >= part(&pair[1]))
    );
    assert!(causes.iter().map(part).sum::<f64>() <= 1.0 + 1e-9);
    let first = causes[0]["cause"].as_str().unwrap();
    assert!(first.contains("Tambrel chestnut powder"), "{first}");
    assert!(causes[0]["to_narrow"].is_string());
}

#[test]
fn several_books_are_checked_at_once_and_each_line_names_its_file() {
    let folder = tempfile::tempdir().unwrap();
    let text = std::fs::read_to_string(SAMPLE).unwrap();
    let bad = folder.path().join("bad.ron");
    // A recipe that names a cup that the book does not have.
    let broken = text.replacen("cup: ", "cup: \"no-such-cup\", // ", 1);
    std::fs::write(&bad, broken).unwrap();
    let bad = bad.to_str().unwrap();
    let output = evensip(&["check", SAMPLE, bad]);
    let printed = String::from_utf8(output.stdout).unwrap();
    let wrong = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(1), "{printed}{wrong}");
    let beginnings = [format!("{SAMPLE}: "), format!("{bad}: ")];
    for line in printed.lines() {
        assert!(
            beginnings
                .iter()
                .any(|beginning| line.starts_with(beginning)),
            "{line}"
        );
    }
    for beginning in &beginnings {
        assert!(printed.contains(beginning), "{printed}");
    }
    assert!(printed.contains("no-such-cup"), "{printed}");
    // The order of the files does not hide the errors of the first, and a missing one does not hide the others.
    assert_eq!(error_of(&["check", bad, SAMPLE]).0, Some(1));
    let missing = evensip(&["check", "no-such-book.ron", SAMPLE, "--json"]);
    assert_eq!(missing.status.code(), Some(1));
    let document: Value = serde_json::from_slice(&missing.stdout).expect("one JSON document");
    assert_eq!(document["books"][0]["book"], "no-such-book.ron");
    assert_eq!(document["books"][0]["opens"], false);
    assert_eq!(document["books"][1]["book"], SAMPLE);
    assert_eq!(document["books"][1]["errors"], 0);
    assert_eq!(document["errors"], 1);
    // One book stays one document of its own.
    let one = json(&["check", SAMPLE, "--json"]);
    assert_eq!(one["opens"], true);
    assert!(one.get("books").is_none());
    let fine = evensip(&["check", SAMPLE, "sample-books/first-steps.ron"]);
    assert_eq!(fine.status.code(), Some(0));
}

#[test]
fn a_card_is_never_written_over_the_book() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    std::fs::copy(SAMPLE, &path).unwrap();
    let before = std::fs::read(&path).unwrap();
    let path = path.to_str().unwrap();
    let (code, message) = error_of(&[
        "card",
        path,
        "--recipe",
        "hob-and-ember",
        "--kind",
        "other-shop",
        "--out",
        path,
    ]);
    assert_eq!(code, Some(2), "{message}");
    assert!(message.contains("replace the book itself"), "{message}");
    assert_eq!(std::fs::read(path).unwrap(), before);
}

#[test]
fn a_history_is_told_of_every_book_that_has_the_recipe() {
    let folder = tempfile::tempdir().unwrap();
    let book = evensip::book_file::built_in_book().unwrap();
    let id = evensip::book::RecipeId::new("hob-and-ember").unwrap();
    let mut without = book.clone();
    without.recipes.remove(&id);
    let path = |name: &str, book: &evensip::book::Book| {
        let path = folder.path().join(name);
        std::fs::write(&path, evensip::book_file::write(book)).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let (lacking, having) = (path("without.ron", &without), path("with.ron", &book));
    let several = ["check", &lacking, &having, "--history", "hob-and-ember"];
    let output = evensip(&several);
    assert_eq!(output.status.code(), Some(0), "{output:?}");
    let (said, complained) = (
        String::from_utf8(output.stdout).unwrap(),
        String::from_utf8(output.stderr).unwrap(),
    );
    assert!(
        said.contains(&format!("{having}: history of Hob & Ember")),
        "{said}"
    );
    assert!(!said.contains(&format!("{lacking}: history")), "{said}");
    assert!(
        said.lines().any(|line| line.starts_with(&lacking)),
        "it is checked all the same"
    );
    let about_it = format!("{lacking}: there is no recipe `hob-and-ember`");
    assert!(complained.contains(&about_it), "{complained}");
    let document = json(&[&several[..], &["--json"]].concat());
    assert!(document["books"][0]["history"].is_null(), "{document}");
    assert!(document["books"][1]["history"][0].is_object(), "{document}");
    // Wrong usage when no book has it, after both have been checked; and of a single book, as before.
    let none = evensip(&["check", &lacking, &lacking, "--history", "hob-and-ember"]);
    assert_eq!(none.status.code(), Some(2));
    let said = String::from_utf8(none.stdout).unwrap();
    let summaries = said.lines().filter(|line| line.contains(" recipes: "));
    assert_eq!(summaries.count(), 2, "{said}");
    let single = evensip(&["check", &lacking, "--history", "hob-and-ember"]);
    assert_eq!((single.status.code(), single.stdout.len()), (Some(2), 0));
}
