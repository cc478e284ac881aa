//! Odd input that a person or another program can give: numbers at the edges, deep kitchens, names that hide something.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::path::Path;
use std::process::Command;

use evensip::balance::{Cause, CautionFact, CautionKind, Measurand, Verdict};
use evensip::book::{
    Allergen, Amount, Book, Change, Closure, ClosureKind, Entry, Evidence, Figure, FlavourStrength,
    Form, HouseMade, IdKind, MOST_LINES, MeasureId, Nutrient, Place, Reading, Recipe, RecipeId,
    Role, Serviceware, ServicewareKind, TemperatureWindow, findings,
};
use evensip::edit::{Edit, EditError, apply};
use evensip::quantity::{parse_amount, parse_number};
use evensip::say::Speaker;
use serde_json::Value;

use super::sample;
use crate::growth::growth;

const BOOK: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/sample-books/harrowmere.ron");

pub(crate) fn evensip(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_evensip"))
        .args(arguments)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (
        output.status.code(),
        text(output.stdout),
        text(output.stderr),
    )
}

fn said(book: &Book) -> Vec<String> {
    let speaker = Speaker::new(book);
    findings(book)
        .iter()
        .map(|finding| speaker.finding(finding))
        .collect()
}

fn assert_said(said: &[String], parts: &[&str]) {
    assert!(
        said.iter()
            .any(|sentence| parts.iter().all(|part| sentence.contains(part))),
        "{parts:?} in {said:#?}"
    );
}

#[test]
fn prices_factors_and_windows_out_of_range_are_found() {
    let mut book = sample::sample();
    assert!(
        said(&book)
            .iter()
            .all(|sentence| !sentence.contains("must be"))
    );
    let mut cup = book.vessels.iter().next().unwrap().as_ref().clone();
    cup.closures.push(Closure {
        kind: ClosureKind::Lid,
        price: Some(-0.1),
        head_room: 0.0,
        cooling_factor: Some(1e308),
    });
    cup.serviceware.push(Serviceware {
        kind: ServicewareKind::Straw { wide: true },
        price: Some(1e308),
    });
    book.vessels.put(cup);
    let mut recipe = book.recipes.iter().next().unwrap().as_ref().clone();
    recipe.menu_price = Some(-4.0);
    let version = recipe.versions[0].id.clone();
    recipe.versions[0]
        .changes
        .push(Change::MenuPrice(Some(1e308)));
    book.recipes.put(recipe);
    book.settings.hot_window = TemperatureWindow {
        from: 65.0,
        to: 50.0,
    };
    book.settings.iced_window.to = 1e308;
    let said = said(&book);
    for parts in [
        ["closures", "the price is −0.1"],
        ["closures", "the cooling factor is 1e308"],
        ["serviceware", "the price is 1e308"],
        ["menu_price", "the menu price is −4"],
        [version.as_str(), "the menu price is 1e308"],
        [
            "the serving window of hot drinks is 65 to 50 °C",
            "the cooler end first",
        ],
        ["the serving window of iced drinks", "1e308"],
    ] {
        assert_said(&said, &parts);
    }
}

#[test]
fn an_uncertainty_beyond_its_figure_and_readings_far_apart_are_found() {
    let mut book = sample::sample();
    let mut measure = book
        .measures
        .iter()
        .find(|measure| !measure.readings.is_empty())
        .unwrap()
        .as_ref()
        .clone();
    let first = measure.readings[0].clone();
    measure.readings.push(Reading {
        amount: first.amount.with_number(first.amount.number() * 50.0),
        ..first
    });
    let id = measure.id.clone();
    book.measures.put(measure);
    let mut item = sample::water();
    item.density = Some(Figure {
        u: Some(1e6),
        ..Figure::new(1.0, Evidence::Measured)
    });
    book.ingredients.put(item);
    let said = said(&book);
    assert_said(&said, &[id.as_str(), "readings", "weigh again"]);
    assert_said(&said, &["water", "an uncertainty is 1000000"]);
}

#[test]
fn water_and_solids_that_weigh_more_than_the_whole_are_found() {
    let syrup = |water, brix| {
        let figures = [(Nutrient::Water, water), (Nutrient::Brix, brix)];
        let item = sample::ingredient("syrup", Form::Liquid, Role::Sweetener, &figures);
        said(&sample::book(
            vec![item],
            Vec::new(),
            sample::recipe(Vec::new()),
        ))
    };
    assert_said(&syrup(50.0, 70.0), &["water and °Brix", "120 g in 100 g"]);
    let is_silent = |said: &[String]| said.iter().all(|one| !one.contains("add up"));
    assert!(is_silent(&syrup(30.0, 70.0)));
}

#[test]
fn an_amount_that_no_cup_holds_is_refused_where_it_is_typed() {
    let book = sample::sample();
    let error = |text| {
        let error = book.amount_from_text(text, None, None).unwrap_err();
        Speaker::new(&book).amount_error(&error)
    };
    for (text, says) in [
        ("20000 g", "enter 10000 g or less"),
        ("11 l", "enter 10000 ml or less"),
        ("to 12 l", "enter 10000 ml or less"),
    ] {
        assert!(error(text).contains(says), "{text}: {}", error(text));
    }
    assert!(book.amount_from_text("10000 g", None, None).is_ok());
}

#[test]
fn very_many_digits_are_out_of_range_and_not_repeated() {
    let digits = "9".repeat(400);
    let speaker = Speaker::without_book();
    for text in [
        digits.clone(),
        format!("{digits}/{digits}"),
        format!("1 {digits}/7"),
        format!("-{digits}"),
    ] {
        let error = speaker.number_error(&parse_number(&text).unwrap_err());
        assert!(error.contains("out of range"), "{error}");
        assert!(error.chars().count() < 120, "{error}");
    }
    let error = speaker.amount_text_error(&parse_amount(&format!("{digits} g")).unwrap_err());
    assert!(error.chars().count() < 120, "{error}");
}

/// Ice alone that fills to a mark.
#[test]
fn ice_that_fills_to_a_mark_is_a_bed_with_gaps() {
    let mut entry = sample::line("ice", "ice", 1.0, -5.0, Role::Ice);
    if let Entry::Line(line) = &mut entry {
        line.amount = Amount::FillTo(500.0);
    }
    let book = sample::book(
        vec![sample::ice(), sample::water()],
        Vec::new(),
        sample::recipe(vec![entry.clone()]),
    );
    let balance = sample::balance_of(&book, "drink", None);
    let grams = balance.lines[0].grams.unwrap();
    let expected = 500.0 * book.settings.ice_bulk_density;
    assert!((grams - expected).abs() < 0.01, "{grams} and {expected}");
    // Water that is poured over the same ice goes into its gaps.
    let mut water = sample::line("water", "water", 1.0, 5.0, Role::Water);
    if let Entry::Line(line) = &mut water {
        line.amount = Amount::FillTo(500.0);
    }
    let ice = sample::line("ice", "ice", 250.0, -5.0, Role::Ice);
    let book = sample::book(
        vec![sample::ice(), sample::water()],
        Vec::new(),
        sample::recipe(vec![ice, water]),
    );
    let balance = sample::balance_of(&book, "drink", None);
    assert!(
        balance.lines[1].grams.unwrap() > 200.0,
        "{:?}",
        balance.lines[1]
    );
}

#[test]
fn more_sucrose_than_dissolves_is_cautioned_and_what_dissolves_is_not() {
    let caution = |sugar: f64, water: f64, celsius: f64| {
        let mut sucrose = sample::ingredient(
            "sugar",
            Form::Crystals,
            Role::Sweetener,
            &[
                (Nutrient::Water, 0.0),
                (Nutrient::Carbohydrate, 100.0),
                (Nutrient::Sugars, 100.0),
            ],
        );
        sucrose.composition.sugar_profile = Some(evensip::book::SugarProfile::Sucrose);
        let book = sample::book(
            vec![sucrose, sample::water()],
            Vec::new(),
            sample::recipe(vec![
                sample::line("sugar", "sugar", sugar, celsius, Role::Sweetener),
                sample::line("water", "water", water, celsius, Role::Water),
            ]),
        );
        let balance = sample::balance_of(&book, "drink", None);
        let found = balance
            .cautions
            .into_iter()
            .find(|caution| caution.kind() == CautionKind::Undissolved);
        found.map(|caution| caution.fact)
    };
    // Two parts in one stay dissolved at 90 °C (80.6 % is the most) and not at room temperature (66.7 % is).
    assert_eq!(caution(200.0, 100.0, 95.0), None);
    let said = caution(240.0, 100.0, 22.0).expect("71 % in water that is colder still");
    let CautionFact::Undissolved { found, most, .. } = said else {
        panic!("{said:?}");
    };
    assert!((found - 70.6).abs() < 0.5 && most < 67.0, "{found} {most}");
    assert_eq!(caution(50.0, 300.0, 22.0), None);
}

#[test]
fn a_swap_of_what_is_not_there_is_a_sentence_with_exit_code_two() {
    let swap = |more: &[&str]| {
        let recipe = ["swap", BOOK, "--recipe", "hob-and-ember"];
        let with = ["--with", "ketterby-chestnut"];
        let arguments: Vec<&str> = recipe.iter().chain(&with).chain(more).copied().collect();
        let (code, _, message) = evensip(&arguments);
        (code, message)
    };
    let book = sample::sample();
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let instruction = recipe.entries.iter().find(|entry| entry.line().is_none());
    let instruction = instruction.unwrap().id().to_string();
    let line = recipe.entries.iter().find_map(|entry| entry.line());
    let mistyped = format!("{}x", line.unwrap().id);
    let replace = ["--replace", "tambrel-chestnut"];
    for (more, says) in [
        (vec!["--replace", "oolong-leaf"], "there is no ingredient"),
        (
            vec![replace[0], replace[1], "--adjust", &instruction],
            "is an instruction",
        ),
        (
            vec![replace[0], replace[1], "--lock", &mistyped],
            "did you mean",
        ),
        (
            vec![replace[0], replace[1], "--unlock", "qqqqqqqq"],
            "there is no line `qqqqqqqq`",
        ),
        (
            vec![replace[0], replace[1], "--limit", "qqqqqqqq=1..2"],
            "there is no line",
        ),
    ] {
        let (code, message) = swap(&more);
        assert_eq!(code, Some(2), "{more:?}: {message}");
        assert!(message.contains(says), "{more:?}: {message}");
        assert_eq!(message.trim().lines().count(), 1, "{message}");
    }
    // An ingredient of the book that this drink does not have.
    let other = book
        .ingredients
        .iter()
        .find(|item| {
            recipe
                .entries
                .iter()
                .filter_map(Entry::line)
                .all(|line| line.ingredient != item.id)
        })
        .unwrap();
    let (code, message) = swap(&["--replace", other.id.as_str()]);
    assert_eq!(code, Some(2), "{message}");
    assert!(message.contains("this drink does not"), "{message}");
}

#[test]
fn an_unknown_id_lists_a_few_others_and_not_a_thousand() {
    let (code, _, message) = evensip(&["balance", BOOK, "--recipe", "zzzzzzzzzzzz"]);
    assert_eq!(code, Some(2));
    assert!(message.contains("more"), "{message}");
    assert!(message.matches(", ").count() <= 8, "{message}");
}

#[test]
fn without_a_display_no_place_in_a_source_is_printed_and_help_is_named_once() {
    let (code, _, message) = evensip(&[]);
    assert_eq!(code, Some(1));
    assert!(!message.contains(".rs"), "{message}");
    assert_eq!(message.matches("--help").count(), 1, "{message}");
}

#[test]
fn the_lines_of_a_drink_sum_to_its_totals_whatever_is_not_stated() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("sample-books");
    let mut incomplete = 0;
    for name in ["harrowmere.ron", "unread-labels.ron"] {
        let path = folder.join(name);
        let (_, text, _) = evensip(&["balance", path.to_str().unwrap(), "--all", "--json"]);
        let list: Value = serde_json::from_str(&text).unwrap();
        for drink in list.as_array().unwrap() {
            for key in ["mass", "total_sugar", "energy_kj"] {
                let total = drink[key]["value"].as_f64().unwrap();
                let lines = drink["lines"].as_array().unwrap();
                let sum: f64 = lines
                    .iter()
                    .map(|line| line[key]["value"].as_f64().unwrap())
                    .sum();
                // Strained ice stays behind in the shaker.
                let strained = key == "mass" && sum > total;
                assert!(
                    strained || (sum - total).abs() < 1e-6 * total.abs().max(1.0),
                    "{name}, {}, {key}: {sum} and {total}",
                    drink["recipe"]
                );
                let is_missing =
                    |quantity: &Value| !quantity["missing"].as_array().unwrap().is_empty();
                let in_lines = lines.iter().any(|line| is_missing(&line[key]));
                assert_eq!(
                    is_missing(&drink[key]),
                    in_lines,
                    "{}, {key}",
                    drink["recipe"]
                );
                incomplete += usize::from(in_lines);
            }
        }
    }
    assert!(incomplete > 0, "no sample leaves anything out");
}

#[test]
fn a_recipe_with_very_many_lines_is_refused_with_a_sentence_and_the_most_stay_quick() {
    let text = |count: usize| {
        let lines: Vec<String> = (0..count)
            .map(|number| {
                format!("Line(id: \"l{number}\", ingredient: \"water\", amount: Grams(1.0), role: Water)")
            })
            .collect();
        let lines = lines.join(", ");
        format!("(format: 1, recipes: [(id: \"a\", name: \"a\", entries: [{lines}])])")
    };
    let problems = evensip::book_file::parse(&text(10_000)).unwrap_err();
    let sentence = Speaker::without_book().load_problem(&problems[0]);
    assert!(
        sentence.contains("10000 entries") && sentence.contains("recipe `a`"),
        "{sentence}"
    );
    let recipe = RecipeId::new("a").unwrap();
    let [few, book] = [MOST_LINES / 4, MOST_LINES].map(|count| {
        let (mut book, _) = evensip::book_file::parse(&text(count)).unwrap();
        book.ingredients.put(sample::water());
        book
    });
    let ratio = growth([&few, &book], |book| {
        let balance = sample::balance_of(book, "a", None);
        let grams = sample::figure(&balance, Measurand::Mass);
        let lines = balance.lines.len() as f64;
        assert!((grams - lines).abs() < 1e-6, "{grams} g of {lines} lines");
    });
    // Each line's doubt is tried out on every figure, which is quadratic: sixteen times. With the cube it would be sixty-four.
    assert!(ratio < 40.0, "{ratio}");
    // Not one more can be added, so that what is saved can be opened again.
    let change = Change::Add(None, sample::line("more", "water", 1.0, 20.0, Role::Water));
    let edit = Edit::Change {
        recipe,
        version: None,
        change,
    };
    let error = apply(&book, &edit).unwrap_err();
    assert!(matches!(error, EditError::PastLimit(_)), "{error:?}");
}

#[test]
fn names_that_hide_characters_are_found_and_printed_visibly() {
    let mut book = sample::sample();
    let mut recipe: Recipe = book.recipes.iter().next().unwrap().as_ref().clone();
    let id = recipe.id.clone();
    recipe.name = "Hob\u{202e}& \u{7}Ember".to_owned();
    book.recipes.put(recipe);
    let place = Place::Recipe(id.clone(), "name");
    let found = findings(&book);
    let found = found.iter().find(|finding| finding.place == place).unwrap();
    let said = Speaker::new(&book).finding(found);
    assert!(said.contains("\\u{202e}"), "{said}");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    evensip::book_file::save(&path, &book).unwrap();
    let (_, text, _) = evensip(&["balance", path.to_str().unwrap(), "--recipe", id.as_str()]);
    assert!(text.contains("Hob\\u{202e}& \\u{7}Ember"), "{text}");
    assert!(!text.contains('\u{202e}') && !text.contains('\u{7}'));
}

#[test]
fn a_name_of_blanks_is_refused() {
    let book = sample::sample();
    let recipe = book.recipes.iter().next().unwrap();
    let edit = Edit::RenameRecipe {
        recipe: recipe.id.clone(),
        name: " \t".to_owned(),
    };
    let error = apply(&book, &edit).unwrap_err();
    let kind = IdKind::Recipe;
    assert_eq!(error, EditError::NoName { kind });
}

/// Each batch is made from the one below it three times over.
#[test]
fn a_deep_kitchen_is_looked_through_once() {
    let claims = |book: &Book| {
        let balance = sample::balance_of(book, "drink", None);
        assert!(balance.allergens.contains.contains(&Allergen::Milk));
        assert_eq!(balance.dairy_free, Verdict::No);
        assert_eq!(balance.vegan, Verdict::No);
    };
    // Looked through line by line, each batch would take three times as long as the one below it.
    let ratio = growth([&kitchen(6), &kitchen(12)], claims);
    assert!(ratio < 20.0, "{ratio}");
    claims(&kitchen(60));
}

fn kitchen(batches: usize) -> Book {
    let mut milk = sample::ingredient(
        "b0",
        Form::Liquid,
        Role::Creamer,
        &[(Nutrient::Water, 90.0)],
    );
    milk.allergens = Some(evensip::book::AllergenStatement {
        contains: [Allergen::Milk].into_iter().collect(),
        ..evensip::book::AllergenStatement::default()
    });
    let mut book = Book::default();
    book.ingredients.put(milk);
    for depth in 1..=batches {
        let below = format!("b{}", depth - 1);
        let lines = (0..3)
            .map(|at| sample::line(&format!("l{at}"), &below, 10.0, 20.0, Role::Creamer))
            .collect();
        let recipe = RecipeId::new(&format!("r{depth}")).unwrap();
        book.recipes.put(Recipe {
            id: recipe.clone(),
            ..sample::recipe(lines)
        });
        let mut batch = sample::ingredient(&format!("b{depth}"), Form::Liquid, Role::Creamer, &[]);
        batch.allergens = None;
        batch.house_made = Some(HouseMade {
            recipe,
            yield_grams: Figure::new(30.0, Evidence::Measured),
            extraction: None,
            steep_minutes: None,
            shelf_life_hours: None,
            waste_percent: 0.0,
        });
        book.ingredients.put(batch);
    }
    let top = format!("b{batches}");
    book.recipes.put(sample::recipe(vec![sample::line(
        "l",
        &top,
        100.0,
        20.0,
        Role::Creamer,
    )]));
    book
}

#[test]
fn a_doubtful_flavour_is_called_by_the_name_that_its_ingredient_gives_it() {
    let mut plum = sample::ingredient("plum", Form::Liquid, Role::Flavour, &[]);
    plum.composition.flavours = ["plum", "clove"]
        .map(|name| FlavourStrength {
            name: name.to_owned(),
            per_gram: None,
        })
        .to_vec();
    let mut pear = plum.clone();
    pear.id = evensip::book::IngredientId::new("pear").unwrap();
    pear.composition.flavours.truncate(1);
    "pear".clone_into(&mut pear.composition.flavours[0].name);
    let (plum_id, pear_id) = (plum.id.clone(), pear.id.clone());
    let book = sample::book(
        vec![plum, pear],
        Vec::new(),
        sample::recipe(vec![
            sample::line("a", "pear", 10.0, 20.0, Role::Flavour),
            sample::line("b", "plum", 10.0, 20.0, Role::Flavour),
        ]),
    );
    let balance = sample::balance_of(&book, "drink", None);
    for (id, at, name) in [
        (&pear_id, 0, "pear"),
        (&plum_id, 0, "plum"),
        (&plum_id, 1, "clove"),
    ] {
        let words = Speaker::new(&book).cause(&balance, &Cause::Flavour(id.clone(), at));
        assert!(
            words
                .what
                .contains(&format!("the strength of the {name} in")),
            "{words:?}"
        );
    }
}

#[test]
fn what_can_t_be_weighed_is_said_with_names() {
    let mut book = sample::sample();
    let measure = book
        .measures
        .iter()
        .find(|measure| measure.id.as_str() != measure.name)
        .unwrap()
        .as_ref()
        .clone();
    let item = sample::ingredient("plain-paste", Form::Paste, Role::Flavour, &[]);
    book.ingredients.put(item);
    let mut entry = sample::line("l", "plain-paste", 1.0, 20.0, Role::Flavour);
    let mut weighed = measure.clone();
    weighed.readings.clear();
    weighed.nominal = None;
    weighed.id = MeasureId::new("nobody-weighed-it").unwrap();
    "odd ladle".clone_into(&mut weighed.name);
    if let Entry::Line(line) = &mut entry {
        line.amount = Amount::Count(1.0, weighed.id.clone());
    }
    book.measures.put(weighed);
    book.recipes.put(sample::recipe(vec![entry]));
    let balance = sample::balance_of(&book, "drink", None);
    let speaker = Speaker::new(&book);
    let sentences: Vec<String> = balance
        .findings
        .iter()
        .map(|finding| speaker.finding_kind(&finding.kind))
        .collect();
    assert_said(&sentences, &["the weight of one odd ladle"]);
}
