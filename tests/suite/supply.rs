//! Suppliers for the whole menu: against a search that tries every combination over every drink by itself.

use std::collections::BTreeMap;

use evensip::balance::{
    Measurand, balance_version, difference, figure_difference, standard_balance,
};
use evensip::book::{Book, IngredientId, RecipeId, State, VersionId, resolve};
use evensip::swap::{
    Demands, MenuDrink, Needed, NoSupplies, NotKnownOf, Question, Supplies, Supply, Watch,
    answer_with, supplies,
};
use serde_json::Value;

use crate::commands::{SAMPLE, evensip};
use crate::sample::sample;

fn id(text: &str) -> IngredientId {
    IngredientId::new(text).unwrap()
}

fn needed(ingredient: &str, offered: &[&str]) -> Needed {
    Needed {
        ingredient: id(ingredient),
        offered: offered.iter().map(|text| id(text)).collect(),
    }
}

/// Two flavours and a creamer, as the sample menu uses them.
fn menu() -> Vec<Needed> {
    vec![
        needed(
            "tambrel-chestnut",
            &["tambrel-chestnut", "ketterby-chestnut"],
        ),
        needed(
            "ketterby-pear-syrup",
            &["tambrel-pear-syrup", "ketterby-pear-syrup"],
        ),
        needed("whole-milk", &["whole-milk", "oat-drink"]),
    ]
}

fn drink(recipe: &str) -> MenuDrink {
    (RecipeId::new(recipe).unwrap(), None)
}

fn found(book: &Book, cups: &BTreeMap<MenuDrink, f64>) -> Supplies {
    supplies(book, &menu(), cups, &Watch::default()).unwrap()
}

/// A drink with a choice of brands, asked for by itself: more cost, distance, amounts that move.
fn by_itself(
    book: &Book,
    (recipe, version): &MenuDrink,
    with: &[IngredientId],
) -> Option<(Option<f64>, Option<f64>, usize)> {
    let recipe = book.recipe(recipe).unwrap();
    let version: Option<&VersionId> = version.as_ref();
    let lines = resolve(recipe, version).0;
    let now = balance_version(book, recipe, version).unwrap();
    let swaps: Vec<(IngredientId, IngredientId)> = menu()
        .iter()
        .zip(with)
        .filter(|(needed, with)| {
            needed.ingredient != **with
                && lines
                    .lines()
                    .any(|line| line.ingredient == needed.ingredient)
        })
        .map(|(needed, with)| (needed.ingredient.clone(), with.clone()))
        .collect();
    let Some(((replace, with), also)) = swaps.split_first() else {
        let standard = standard_balance(book, recipe, version).map_or(now.clone(), |found| found.0);
        let off = difference(&book.settings, &standard, &now);
        let cost = now.figures.complete(Measurand::Cost);
        return Some((cost.map(|_| 0.0), off.distance, 0));
    };
    let question = Question {
        recipe: recipe.id.clone(),
        version: version.cloned(),
        replace: replace.clone(),
        with: with.clone(),
        adjust: None,
    };
    let demands = Demands {
        also: also.to_vec(),
        ..Demands::default()
    };
    let answer = answer_with(book, &question, &demands).unwrap();
    let first = answer.suggestions.first()?;
    let more = figure_difference(&now, &first.balance, Measurand::Cost);
    Some((
        more.map(|more| more.value),
        first.difference.distance,
        first.moves.len(),
    ))
}

#[test]
fn every_combination_is_what_each_of_its_drinks_is_by_itself() {
    let book = sample();
    let cups: BTreeMap<MenuDrink, f64> = [
        ("hob-and-ember", 120.0),
        ("hazelthwaite", 80.0),
        ("pear-drift", 45.0),
    ]
    .map(|(recipe, cups)| (drink(recipe), cups))
    .into();
    let found = found(&book, &cups);
    assert_eq!(found.combinations.len(), 8);
    assert!(found.drinks.len() >= 5, "{:?}", found.drinks);
    for supply in &found.combinations {
        let (mut more, mut worst, mut moves) = (0.0, 0.0_f64, 0);
        let (mut sum, mut all) = (0.0, 0.0);
        for drink in &found.drinks {
            let alone = by_itself(&book, drink, &supply.with);
            assert_eq!(alone.is_none(), supply.impossible.contains(drink));
            let Some((cost, distance, moved)) = alone else {
                continue;
            };
            let sold = cups.get(drink).copied().unwrap_or(0.0);
            let is_open = supply
                .not_known
                .contains(&(drink.clone(), NotKnownOf::Cost));
            assert_eq!(is_open, cost.is_none() && cups.contains_key(drink));
            more += sold * cost.unwrap_or(0.0);
            if let Some(distance) = distance {
                sum += sold * distance;
                all += sold;
                worst = worst.max(distance);
            }
            moves += moved;
            let is_open = supply
                .not_known
                .contains(&(drink.clone(), NotKnownOf::Cups));
            assert_eq!(is_open, !cups.contains_key(drink));
        }
        assert!((supply.more.value - more).abs() < 1e-9, "{supply:?}");
        assert!((supply.worst.unwrap() - worst).abs() < 1e-9);
        assert!((supply.mean.unwrap() - sum / all).abs() < 1e-9);
        assert_eq!(supply.habits, moves);
    }
}

#[test]
fn a_drink_is_searched_once_for_each_choice_among_what_it_uses() {
    let book = sample();
    let found = found(&book, &BTreeMap::new());
    let choices = found.drinks.iter().map(|(recipe, version)| {
        let lines = resolve(book.recipe(recipe).unwrap(), version.as_ref()).0;
        let uses = |needed: &&Needed| {
            lines
                .lines()
                .any(|line| line.ingredient == needed.ingredient)
        };
        menu()
            .iter()
            .filter(uses)
            .map(|needed| needed.offered.len())
            .product::<usize>()
    });
    let choices: usize = choices.sum();
    assert_eq!(found.searches, choices);
    assert!(choices < found.drinks.len() * found.combinations.len());
}

#[test]
fn what_is_marked_is_beaten_by_nothing_and_all_else_that_is_known_is_beaten() {
    let found = found(&sample(), &BTreeMap::new());
    let possible = || {
        found
            .combinations
            .iter()
            .filter(|supply| supply.impossible.is_empty())
    };
    let is_open_of_all = |open| possible().all(|supply| supply.not_known.contains(open));
    let known: Vec<&Supply> = possible()
        .filter(|supply| supply.not_known.iter().all(is_open_of_all))
        .collect();
    assert!(known.iter().any(|supply| supply.is_unbeaten));
    for supply in &found.combinations {
        let beaten = known.iter().any(|other| {
            let (cost, distance) = (other.more.value, other.mean.unwrap());
            let (this_cost, this_distance) = (supply.more.value, supply.mean.unwrap());
            let is_better = cost < this_cost || distance < this_distance;
            cost <= this_cost && distance <= this_distance && is_better
        });
        let is_known = known.contains(&supply);
        assert_eq!(supply.is_unbeaten, is_known && !beaten, "{supply:?}");
    }
}

#[test]
fn allergens_that_come_and_go_are_told_of_the_drink_that_has_them() {
    let book = sample();
    let found = found(&book, &BTreeMap::new());
    let oat = id("oat-drink");
    for supply in &found.combinations {
        let brings_oat = supply.with.contains(&oat);
        assert_eq!(
            !supply.lost.is_empty() || !supply.gained.is_empty(),
            brings_oat,
            "{supply:?}"
        );
    }
}

#[test]
fn what_can_not_be_compared_is_said() {
    let book = sample();
    let nobody = [needed("salt", &["salt"])];
    let mut unused = book.clone();
    for recipe in &book.recipes {
        let mut recipe = recipe.as_ref().clone();
        recipe.state = State::Retired;
        for version in &mut recipe.versions {
            version.state = State::Retired;
        }
        unused.recipes.put(recipe);
    }
    let none = supplies(&unused, &nobody, &BTreeMap::new(), &Watch::default());
    assert_eq!(none, Err(NoSupplies::NotUsed));
    let many: Vec<&str> = vec!["oat-drink"; 200];
    let many = [needed("whole-milk", &many), needed("cream", &many)];
    let none = supplies(&book, &many, &BTreeMap::new(), &Watch::default());
    assert_eq!(none, Err(NoSupplies::TooMany(40_000)));
    let watch = Watch::default();
    watch.stop();
    assert_eq!(
        supplies(&book, &menu(), &BTreeMap::new(), &watch),
        Err(NoSupplies::Stopped)
    );
}

#[test]
fn the_command_reads_cups_typed_or_from_a_file_and_says_what_it_can_not_read() {
    let folder = std::env::temp_dir().join(format!("evensip-supply-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let file = folder.join("cups.csv");
    let file_text = file.to_str().unwrap();
    let offer = "tambrel-chestnut=tambrel-chestnut,ketterby-chestnut";
    let ask = |more: &[&str]| evensip(&[&["supply", SAMPLE, "--offer", offer], more].concat());
    std::fs::write(&file, "drink;cups\nhazelthwaite;80\nhob-and-ember;120\n").unwrap();
    let typed = ask(&[
        "--sold",
        "hazelthwaite=80",
        "--sold",
        "hob-and-ember=120",
        "--json",
    ]);
    let read = ask(&["--cups", file_text, "--json"]);
    assert!(typed.status.success());
    assert_eq!(typed.stdout, read.stdout);
    let document: Value = serde_json::from_slice(&read.stdout).unwrap();
    assert_eq!(document["combinations"].as_array().unwrap().len(), 2);
    assert_eq!(document["weighted_by_cups"], true);
    let sheet = String::from_utf8(ask(&[]).stdout).unwrap();
    assert!(
        sheet.contains("Tambrel chestnut powder → Ketterby chestnut powder"),
        "{sheet}"
    );
    std::fs::write(&file, "drink;cups\nhazelthwaite;80\nhazelthwait;120\n").unwrap();
    let wrong = ask(&["--cups", file_text]);
    let said = String::from_utf8(wrong.stderr).unwrap();
    assert!(
        said.contains("line 3") && said.contains("hazelthwaite"),
        "{said}"
    );
    let wrong = ask(&["--sold", "hazelthwaite=many"]);
    assert_eq!(wrong.status.code(), Some(2));
    std::fs::remove_dir_all(&folder).unwrap();
}
