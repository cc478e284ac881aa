//! A hundred cups: what is drawn against normal theory, the laws of the draws, and what is said of them.

#![allow(
    clippy::print_stdout,
    reason = "the shares side by side are what one wants to read"
)]

use evensip::balance::{Cause, balance_version, slot_of};
use evensip::book::{
    Amount, Book, Entry, Form, IngredientId, Line, LineId, Measure, MeasureId, MeasureKind,
    Nutrient, Reading, ReadingAmount, Recipe, RecipeId, Role, Stage, Temperature, VersionId,
};
use evensip::cups::{Cups, CupsQuestion, CupsRemark, HeldTo, Remedy, When, draw_cups, when_drawn};
use evensip::say::{Language, Speaker};
use statrs::distribution::{ContinuousCDF as _, Normal};

use crate::commands::evensip;
use crate::sample::{ingredient, sample, water};

fn cups_with(book: &Book, recipe: &str, version: Option<&str>, question: CupsQuestion) -> Cups {
    let recipe = book.recipe(&RecipeId::new(recipe).unwrap()).unwrap();
    let version = version.map(|id| VersionId::new(id).unwrap());
    draw_cups(book, recipe, version.as_ref(), question, &|| false).unwrap()
}

fn cups(book: &Book, recipe: &str, version: Option<&str>) -> Cups {
    cups_with(book, recipe, version, CupsQuestion::default())
}

/// Every recipe and version of the sample book that comes to a cup.
fn all_drinks(book: &Book) -> Vec<(String, Option<String>)> {
    let mut drinks = Vec::new();
    for recipe in &book.recipes {
        let id = recipe.id.to_string();
        drinks.push((id.clone(), None));
        let versions = recipe.versions.iter();
        drinks.extend(versions.map(|version| (id.clone(), Some(version.id.to_string()))));
    }
    drinks
}

fn line(id: &str, amount: Amount, role: Role) -> Entry {
    Entry::Line(Line {
        id: LineId::new(id).unwrap(),
        ingredient: IngredientId::new(id).unwrap(),
        amount,
        temperature: None,
        role,
        stage: Stage::Mixed,
        carried: None,
        note: String::new(),
    })
}

/// Sugar by a spoon whose uses weigh 10 g and scatter by 0.8 g, filled up with water to 300 ml by an eye that is never off.
fn spoon_of_sugar() -> Book {
    let spoon = MeasureId::new("spoon").unwrap();
    let reading = |grams: f64, date: &str| Reading {
        ingredient: Some(IngredientId::new("sugar").unwrap()),
        uses: 1,
        amount: ReadingAmount::Grams(grams),
        date: Some(date.to_owned()),
    };
    let mut book = Book::default();
    book.settings.instruments.jug_percent = Some(0.0);
    book.ingredients.put(water());
    let sugar = [
        (Nutrient::Sugars, 100.0),
        (Nutrient::Carbohydrate, 100.0),
        (Nutrient::Water, 0.0),
        (Nutrient::Fat, 0.0),
        (Nutrient::Protein, 0.0),
        (Nutrient::Salt, 0.0),
    ];
    book.ingredients
        .put(ingredient("sugar", Form::Crystals, Role::Sweetener, &sugar));
    // Mean 10, s² = 0.5657² + 0.5657² = 0.64.
    book.measures.put(Measure {
        readings: vec![
            reading(10.0 - 0.32_f64.sqrt(), "2026-05-04"),
            reading(10.0 + 0.32_f64.sqrt(), "2026-05-04"),
        ],
        ..Measure::new(spoon.clone(), "spoon".into(), MeasureKind::Spoon)
    });
    let mut recipe = Recipe::new(RecipeId::new("sweet").unwrap(), "Sweet".into());
    recipe.entries = vec![
        line("sugar", Amount::Count(1.0, spoon), Role::Sweetener),
        line("water", Amount::FillTo(300.0), Role::Water),
    ];
    book.recipes.put(recipe);
    book
}

#[test]
fn shares_of_a_straight_drink_are_those_of_a_normal_law() {
    let book = spoon_of_sugar();
    let found = cups(&book, "sweet", None);
    assert_eq!(found.held_to, HeldTo::Itself);
    // 10 g in 300 ml, a step of a tenth, a scatter of 8 %: within ±1.25 standard deviations.
    let normal = Normal::standard();
    let expected = 2.0 * normal.cdf(1.25) - 1.0;
    let sweetness = &found.axes[0];
    let share = sweetness.within.unwrap();
    println!("drawn {} ± {}, by hand {expected:.4}", share.value, share.u);
    // 5,000 cups leave a binomial error of 0.0058; that of fifty shifts is known to a tenth.
    assert!((share.u - 0.0058).abs() < 0.0025, "{}", share.u);
    assert!((share.value - expected).abs() < 4.0 * share.u);
    for off in sweetness.off {
        assert!((off - (1.0 - expected) / 2.0).abs() < 4.0 * 0.0044);
    }
    assert!(found.drawn[0].cause.is_own());
    assert!(
        (found.drawn[0].steps - 0.8).abs() < 0.01,
        "{:?}",
        found.drawn[0]
    );
}

#[test]
fn shares_of_every_drink_of_the_shop_agree_with_normal_theory() {
    let book = sample();
    let normal = Normal::standard();
    let (mut compared, mut beyond) = (0, 0);
    for (recipe, version) in all_drinks(&book) {
        let of = book.recipe(&RecipeId::new(&recipe).unwrap()).unwrap();
        let id = version.as_deref().map(|id| VersionId::new(id).unwrap());
        let balance = balance_version(&book, of, id.as_ref()).unwrap();
        let question = CupsQuestion {
            shifts: 60,
            per_shift: 20,
            ..CupsQuestion::default()
        };
        let Some(found) = draw_cups(&book, of, id.as_ref(), question, &|| false) else {
            continue;
        };
        for axis in found.axes.iter().filter(|axis| axis.counts) {
            let Some(slot) = slot_of(&balance.flavours, &axis.axis) else {
                continue;
            };
            let squares: f64 = balance
                .contributions
                .iter()
                .map(|one| {
                    let (when, times) = when_drawn(&book, &one.cause);
                    let is_drawn = when != When::Held;
                    f64::from(is_drawn) * (times * one.effect[slot] / axis.step).powi(2)
                })
                .sum();
            let (mean, deviation) = (axis.nominal.unwrap(), squares.sqrt().max(1e-9));
            let expected =
                normal.cdf((1.0 - mean) / deviation) - normal.cdf((-1.0 - mean) / deviation);
            let share = axis.within.unwrap();
            // What is not quite straight, or one-sided like ice that is all melted, moves a share by up to a twentieth.
            let room = 4.0 * share.u + 0.05;
            compared += 1;
            if (share.value - expected).abs() > 4.0 * share.u + 0.01 {
                beyond += 1;
                println!(
                    "{recipe} {version:?} {:?}: drawn {:.3} ± {:.3}, theory {expected:.3}",
                    axis.axis, share.value, share.u
                );
            }
            assert!(
                (share.value - expected).abs() < room,
                "{recipe} {version:?} {:?}: {} against {expected}",
                axis.axis,
                share.value
            );
        }
    }
    println!("{compared} shares compared, {beyond} off by more than four errors and a hundredth");
    assert!(compared > 100 && beyond * 20 < compared);
}

#[test]
fn without_scatter_every_cup_is_the_recipe() {
    let book = sample();
    let question = CupsQuestion {
        scatter: 0.0,
        shifts: 2,
        per_shift: 5,
        ..CupsQuestion::default()
    };
    for (recipe, version) in all_drinks(&book) {
        let found = cups_with(&book, &recipe, version.as_deref(), question);
        for axis in &found.axes {
            let Some(nominal) = axis.nominal else {
                assert!(axis.quantiles.is_empty(), "{recipe} {:?}", axis.axis);
                continue;
            };
            assert!(
                axis.quantiles
                    .iter()
                    .all(|steps| (steps - nominal).abs() < 1e-9),
                "{recipe} {version:?} {:?}",
                axis.axis
            );
        }
        let all = if found.recipe_is_level { 1.0 } else { 0.0 };
        assert!(
            found
                .within
                .is_none_or(|share| (share.value - all).abs() < 1e-12),
            "{recipe}"
        );
    }
}

#[test]
fn the_same_seed_gives_the_same_cups_and_another_one_others() {
    let book = sample();
    let of = |seed| {
        let question = CupsQuestion {
            seed,
            shifts: 4,
            ..CupsQuestion::default()
        };
        cups_with(&book, "hob-and-ember", None, question)
    };
    assert_eq!(of(3), of(3));
    assert_ne!(of(3).axes, of(4).axes);
}

#[test]
fn what_a_shift_shares_makes_its_cups_alike() {
    let mut book = spoon_of_sugar();
    let mut recipe = book.recipes.iter().next().unwrap().as_ref().clone();
    if let Some(Entry::Line(line)) = recipe.entries.get_mut(1) {
        line.temperature = Some(Temperature::at(78.0));
    }
    book.recipes.put(recipe);
    book.settings.instruments.thermometer_kelvin = Some(6.0);
    let found = cups(&book, "sweet", None);
    let temperature = found
        .axes
        .iter()
        .find(|axis| axis.axis.word() == "temperature")
        .unwrap();
    let share = temperature.within.unwrap();
    let binomial = (share.value * (1.0 - share.value) / 5000.0).sqrt();
    // Nearly all of the scatter is the shift's: fifty draws, not five thousand.
    assert!(share.u > 4.0 * binomial, "{share:?}, binomial {binomial}");
    let shift = found
        .drawn
        .iter()
        .find(|drawn| drawn.when == When::EachShift)
        .unwrap();
    assert!(
        matches!(shift.cause, Cause::LineTemperature(_)),
        "{shift:?}"
    );
}

#[test]
fn what_helps_does_what_it_says() {
    let mut book = spoon_of_sugar();
    book.settings.instruments.thermometer_kelvin = Some(0.0);
    let found = cups(&book, "sweet", None);
    let first = &found.helps[0];
    assert!(matches!(first.remedy, Remedy::Weigh(_, grams) if (grams - 10.0).abs() < 1e-9));
    // The scale shows whole grams: ±0.29 g of 10 is a third of a step.
    let Some(Entry::Line(sugar)) = book.recipes.iter().next().unwrap().entries.first().cloned()
    else {
        panic!("the first entry is a line")
    };
    let mut weighed = book.clone();
    let mut recipe = book.recipes.iter().next().unwrap().as_ref().clone();
    recipe.entries[0] = Entry::Line(Line {
        amount: Amount::Grams(10.0),
        ..sugar
    });
    weighed.recipes.put(recipe);
    let by_weighing = cups(&weighed, "sweet", None).within.unwrap();
    assert!((by_weighing.value - first.share).abs() < 4.0 * by_weighing.u + 1e-9);
    // Two spoons of half the size: 8 %/√2 of a tenth, within ±1.77 standard deviations.
    let smaller = found
        .helps
        .iter()
        .find(|helps| matches!(helps.remedy, Remedy::SmallerTwice(..)));
    let expected = 2.0 * Normal::standard().cdf(1.25 * 2.0_f64.sqrt()) - 1.0;
    assert!((smaller.unwrap().share - expected).abs() < 4.0 * 0.004);
    let ranked = found
        .helps
        .windows(2)
        .all(|pair| pair[0].gain.value >= pair[1].gain.value);
    assert!(ranked, "{:?}", found.helps);
}

#[test]
fn a_pump_that_gives_something_else_each_day_is_to_be_set_again() {
    let mut book = spoon_of_sugar();
    let mut spoon = book.measures.iter().next().unwrap().as_ref().clone();
    for (grams, date) in [
        (11.4, "2026-05-11"),
        (11.6, "2026-05-11"),
        (8.4, "2026-05-18"),
        (8.6, "2026-05-18"),
    ] {
        let reading = Reading {
            amount: ReadingAmount::Grams(grams),
            date: Some(date.to_owned()),
            ..spoon.readings[0].clone()
        };
        spoon.readings.push(reading);
    }
    book.measures.put(spoon);
    let found = cups(&book, "sweet", None);
    let drawn = found
        .drawn
        .iter()
        .find(|drawn| matches!(drawn.cause, Cause::Calibration(..)));
    assert_eq!(drawn.map(|drawn| drawn.when), Some(When::EachShift));
    let helps = found
        .helps
        .iter()
        .find(|helps| matches!(helps.remedy, Remedy::Recalibrate(_)));
    assert!(
        helps.is_some_and(|helps| helps.gain.value > 0.05),
        "{:?}",
        found.helps
    );
    // On one day only nobody can tell.
    let steady = cups(&spoon_of_sugar(), "sweet", None);
    assert!(
        !steady
            .drawn
            .iter()
            .any(|drawn| matches!(drawn.cause, Cause::Calibration(..)))
    );
}

#[test]
fn what_is_not_known_is_said_and_is_never_within_a_step() {
    let text = std::fs::read_to_string("sample-books/unread-labels.ron").unwrap();
    let (book, _) = evensip::book_file::parse(&text).unwrap();
    let mut not_known = 0;
    for (recipe, version) in all_drinks(&book) {
        let of = book.recipe(&RecipeId::new(&recipe).unwrap()).unwrap();
        let id = version.as_deref().map(|id| VersionId::new(id).unwrap());
        let question = CupsQuestion {
            shifts: 3,
            ..CupsQuestion::default()
        };
        let Some(found) = draw_cups(&book, of, id.as_ref(), question, &|| false) else {
            continue;
        };
        for axis in found.axes.iter().filter(|axis| axis.aim.is_none()) {
            assert!(axis.within.is_none() && !axis.counts, "{:?}", axis.axis);
            not_known += 1;
        }
        let says_so = found
            .remarks()
            .iter()
            .any(|remark| matches!(remark, CupsRemark::NotKnown(_) | CupsRemark::NothingKnown));
        assert_eq!(says_so, found.not_known().next().is_some(), "{recipe}");
    }
    assert!(not_known > 0);
}

#[test]
fn a_cup_with_nothing_in_it_has_no_cups_and_a_search_that_is_stopped_none() {
    let mut book = Book::default();
    let empty = Recipe::new(RecipeId::new("empty").unwrap(), "Empty".into());
    assert_eq!(
        draw_cups(&book, &empty, None, CupsQuestion::default(), &|| false),
        None
    );
    book = spoon_of_sugar();
    let recipe = book.recipes.iter().next().unwrap();
    assert_eq!(
        draw_cups(&book, recipe, None, CupsQuestion::default(), &|| true),
        None
    );
}

#[test]
fn the_cups_are_told_in_words() {
    let book = spoon_of_sugar();
    let found = cups(&book, "sweet", None);
    let speaker = Speaker::new(&book);
    let said: Vec<String> = found
        .remarks()
        .iter()
        .map(|remark| speaker.cups_remark(&found, remark))
        .collect();
    println!("{}", said.join("\n"));
    assert!(
        said[0].contains(" of 100 cups taste like the recipe as it is written; "),
        "{}",
        said[0]
    );
    assert!(said[0].contains(" are sweeter"), "{}", said[0]);
    assert!(said.iter().any(|said| said.starts_with("Weigh 10.0\u{a0}g of sugar instead of measuring 1 spoon")));
    let german = speaker.in_language(Language::from_code("de").unwrap());
    let said = german.cups_remark(&found, &found.remarks()[0]);
    assert!(
        said.contains(" von 100 Bechern schmecken wie das Rezept"),
        "{said}"
    );
}

#[test]
fn the_commands_answer_and_say_what_is_missing() {
    let book = "sample-books/harrowmere.ron";
    let cups = [
        "cups",
        book,
        "--recipe",
        "brindlecote",
        "--shifts",
        "4",
        "--json",
    ];
    let [first, again] = [(); 2].map(|()| evensip(&cups).stdout);
    assert_eq!(first, again, "the same seed gives the same document");
    let document: serde_json::Value = serde_json::from_slice(&first).unwrap();
    for key in ["held_to", "within", "axes", "drawn", "helps", "remarks"] {
        assert!(!document[key].is_null(), "{key}");
    }
    let no_reading = evensip(&["why-off", book, "--recipe", "brindlecote"]);
    assert_eq!(no_reading.status.code(), Some(2));
    let said = String::from_utf8(no_reading.stderr).unwrap();
    assert!(said.contains("--weight"), "{said}");
    let why = evensip(&["why-off", book, "--recipe", "pear-drift", "--weight", "400"]);
    let said = String::from_utf8(why.stdout).unwrap();
    assert!(
        said.starts_with("It weighs 400\u{a0}g, less than the "),
        "{said}"
    );
}
