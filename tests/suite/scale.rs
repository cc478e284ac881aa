//! What is long stays quick: versions on versions, and batches in batches.

use std::fmt::Write as _;

use evensip::balance::{Measurand, Slots, VersionBalances, figures, prepare};
use evensip::book::{FindingKind, Lineages, Place, RecipeId, VersionId, findings, resolve};
use evensip::book_file::parse;
use evensip::ui::Area;
use proptest::prelude::*;

use crate::arbitrary_book::{self as arbitrary, Dice};
use crate::at_the_window::{MIDDLE, WindowBuilder, go};
use crate::growth::{TENFOLD, growth};

/// Versions in a chain, each with a change of its own.
pub(crate) fn chain(versions: usize) -> String {
    let versions: Vec<String> = (0..versions)
        .map(|number| {
            let on = match number {
                0 => String::new(),
                _ => format!("builds_on: \"v{}\", ", number - 1),
            };
            let grams = 10 + number % 90;
            let line = number % 5;
            format!("(id: \"v{number}\", name: \"version {number}\", {on}changes: [Amount(\"l{line}\", Grams({grams}.0))])")
        })
        .collect();
    let lines: Vec<String> = (0..5)
        .map(|line| {
            format!(
                "Line(id: \"l{line}\", ingredient: \"water\", amount: Grams(10.0), role: Water)"
            )
        })
        .collect();
    format!(
        "(format: 1, ingredients: [(id: \"water\", name: \"Water\", form: Liquid, role: Water)], recipes: [(id: \"a\", name: \"a\", entries: [{}], versions: [{}])])",
        lines.join(", "),
        versions.join(", ")
    )
}

#[test]
fn versions_in_a_chain_are_all_balanced_in_linear_time() {
    let [few, many] = [300, 3_000].map(|count| parse(&chain(count)).unwrap().0);
    let ratio = growth([&few, &many], |book| {
        let recipe = book.recipes.iter().next().unwrap();
        let mut balances = VersionBalances::new(book, recipe);
        for version in &recipe.versions {
            assert!(balances.balance(Some(&version.id)).is_some());
            assert!(balances.standard(Some(&version.id)).is_none());
        }
    });
    assert!(ratio < TENFOLD, "{ratio}");
}

#[test]
fn versions_in_a_chain_are_all_checked_in_linear_time() {
    let [few, many] = [2_000, 20_000].map(|count| parse(&chain(count)).unwrap().0);
    let ratio = growth([&few, &many], |book| {
        let found = findings(book);
        assert!(
            !found
                .iter()
                .any(|finding| finding.kind == FindingKind::TooManyToCheck),
            "{found:?}"
        );
    });
    assert!(ratio < TENFOLD, "{ratio}");
}

/// A kitchen in which each batch is made of the one before it.
fn kitchen(depth: usize) -> String {
    let mut ingredients = "(id: \"i0\", name: \"Sugar\", form: Powder, role: Sweetener, composition: (carbohydrate: (100.0, Label), sugars: (100.0, Label)))".to_owned();
    let mut recipes = Vec::new();
    for number in 1..=depth {
        let _ = write!(
            ingredients,
            ", (id: \"i{number}\", name: \"Batch {number}\", form: Syrup, role: Sweetener, house_made: (recipe: \"r{number}\", yield_grams: (100.0, Measured), waste_percent: 0.0))"
        );
        let before = number - 1;
        recipes.push(format!(
            "(id: \"r{number}\", name: \"Batch {number}\", entries: [Line(id: \"l\", ingredient: \"i{before}\", amount: Grams(80.0), role: Sweetener), Line(id: \"m\", ingredient: \"i0\", amount: Grams(20.0), role: Sweetener)])"
        ));
    }
    format!(
        "(format: 1, ingredients: [{ingredients}], recipes: [{}])",
        recipes.join(", ")
    )
}

#[test]
fn a_batch_holds_what_went_in_however_deep_it_is_made() {
    for depth in [1, 10, 23, 24, 25, 47, 48, 49, 100, 400] {
        let (book, _) = parse(&kitchen(depth)).unwrap();
        let recipe = RecipeId::new(&format!("r{depth}")).unwrap();
        let recipe = book.recipe(&recipe).unwrap();
        let lines = resolve(recipe, None).0;
        let place = Place::Recipe(recipe.id.clone(), "lines");
        let prepared = prepare(&book, &lines, &mut Slots::default(), &place);
        let sugar = figures(&prepared).complete(Measurand::TotalSugar);
        assert!(
            sugar.is_some_and(|grams| (grams - 100.0).abs() < 1e-6),
            "{depth}: {sugar:?}"
        );
    }
}

#[test]
fn the_window_lives_with_a_deep_kitchen_and_a_long_chain_of_versions() {
    for (text, sizes, area) in [
        (kitchen as fn(usize) -> String, [20, 200], Area::Counter),
        (chain, [500, 5_000], Area::Recipe),
    ] {
        let [few, many] = sizes.map(|size| parse(&text(size)).unwrap().0);
        let ratio = growth([&few, &many], |book| {
            let mut window = WindowBuilder::of(MIDDLE).with_book(book.clone()).open();
            go(&mut window, area);
        });
        assert!(ratio < TENFOLD, "{area:?}: {ratio}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn all_versions_at_once_are_what_each_is_alone(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut recipe = arbitrary::recipe(&mut dice);
        // Chains, trees, circles and missing versions.
        let count = 1 + dice.below(14);
        let id = |number: usize| VersionId::new(&format!("v{number}")).unwrap();
        recipe.versions = (0..count)
            .map(|number| {
                let mut version = arbitrary::version(&mut dice);
                version.id = id(number);
                version.builds_on = (dice.below(5) > 0).then(|| id(dice.below(count + 1)));
                version
            })
            .collect();
        recipe.approvals = (0..dice.below(4))
            .map(|_| {
                let mut approval = arbitrary::approval(&mut dice);
                approval.version = dice.coin().then(|| id(dice.below(count + 1)));
                approval
            })
            .collect();
        let mut shown = Vec::new();
        let circles = recipe.each_resolved(|version, lines, found| {
            let (alone, all_found) = resolve(&recipe, Some(&version.id));
            assert!(alone == *lines, "seed {seed}, {}", version.id);
            assert!(found.iter().all(|finding| all_found.contains(finding)), "seed {seed}");
            shown.push(version.id.clone());
        });
        prop_assert_eq!(shown.len() + circles.len(), count);
        let mut lineages = Lineages::new(&recipe);
        for _ in 0..count * 3 {
            let version = (dice.below(9) > 0).then(|| id(dice.below(count + 1)));
            let version = version.as_ref();
            prop_assert!(lineages.resolve(version) == resolve(&recipe, version), "seed {seed}, {version:?}");
            prop_assert_eq!(lineages.standard_for(version), recipe.standard_for(version), "seed {}", seed);
        }
        for (version, depth) in recipe.versions.iter().zip(recipe.depths()) {
            let is_in_circle = circles.iter().any(|other| other.id == version.id);
            let alone = recipe.lineage(Some(&version.id)).into_iter().flatten();
            let alone = alone.filter(|id| recipe.version(id).is_some()).count();
            prop_assert!(is_in_circle || depth == alone, "seed {}, {}: {} {}", seed, version.id, depth, alone);
            // What is shown comes behind what it builds on.
            if let Some(base) = &version.builds_on {
                let place = |id: &VersionId| shown.iter().position(|other| other == id);
                if let (Some(base), Some(own)) = (place(base), place(&version.id)) {
                    prop_assert!(base < own);
                }
            }
        }
    }
}
