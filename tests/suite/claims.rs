//! What is said of allergens and diets, on books at random: what an entry shows wins over every claim, and a further line, part
//! or allergen never makes a claim truer.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::collections::BTreeSet;

use evensip::balance::{
    Balance, CautionFact, Claim, StatementKind, Verdict, balance_version, statement_findings_of,
};
use evensip::book::{
    Allergen, Amount, Book, Entry, RecipeId, Role, Severity, SugarProfile, findings,
};
use evensip::cards::{BatchItem, CardOptions, CardRequest, Drink, OnMenu, card, json_ld};

use crate::arbitrary_book::Dice;
use crate::claim_books::{
    INGREDIENTS, RECIPES, STATEMENTS, drink, ingredient_id, kind_of, line_of, recipe_id, shown,
    shows_animal, thrown, verdicts, walked,
};

#[test]
fn what_an_entry_or_a_part_shows_wins_over_every_claim() {
    let (mut yes, mut further) = (0, 0);
    for seed in 0..6000 {
        let book = thrown(seed);
        let (balance, walked) = (drink(&book), walked(&book));
        let contains: BTreeSet<Allergen> =
            walked.entries.iter().flat_map(|item| shown(item)).collect();
        assert_eq!(balance.allergens.contains, contains, "seed {seed}");
        if walked.entries.iter().any(|item| shows_animal(item)) {
            assert_eq!(balance.vegan, Verdict::No, "seed {seed}");
        }
        if contains.contains(&Allergen::Milk) {
            assert_eq!(balance.dairy_free, Verdict::No, "seed {seed}");
        }
        if walked.is_broken {
            assert_ne!(balance.vegan, Verdict::Yes, "seed {seed}");
            assert_ne!(balance.dairy_free, Verdict::Yes, "seed {seed}");
            assert!(!balance.allergens.not_stated.is_empty(), "seed {seed}");
        }
        if balance.vegan == Verdict::Yes {
            yes += 1;
            assert_eq!(balance.dairy_free, Verdict::Yes, "seed {seed}");
            for item in &walked.entries {
                assert!(
                    item.diet.vegan != Some(false) && item.diet.dairy_free != Some(false),
                    "seed {seed}"
                );
                let is_claimed = item.diet.vegan == Some(true);
                let follows = item.house_made.is_some() || item.role == Role::Water;
                assert!(is_claimed || follows, "seed {seed}: {}", item.id);
            }
        }
        for allergen in book.settings.further_allergens() {
            if balance.allergens.free_of(allergen) == Verdict::Yes {
                further += 1;
                let bought = walked
                    .entries
                    .iter()
                    .filter(|item| item.house_made.is_none());
                for item in bought.filter(|item| item.role != Role::Water) {
                    let stated = item.allergens.as_ref().unwrap();
                    let named = |wanted: Allergen| {
                        let mut named = stated.contains.iter().chain(&stated.may_contain);
                        named.any(|named| *named == wanted || kind_of(*named) == Some(wanted))
                    };
                    // A pack that names no crustaceans holds no crab; of mango it says nothing unless it says so.
                    let follows = kind_of(allergen).is_some_and(|of_annex| !named(of_annex));
                    let is_said = stated.free_of.contains(&allergen) || named(allergen);
                    let has_traces = kind_of(allergen).is_some_and(|of_annex| {
                        stated
                            .may_contain
                            .iter()
                            .any(|named| *named == of_annex || kind_of(*named) == Some(of_annex))
                    });
                    assert!(follows || is_said || has_traces, "seed {seed}: {}", item.id);
                }
            }
        }
        for allergen in Allergen::ALL.into_iter().filter(|one| !one.is_in_annex()) {
            if !book.settings.listed_allergens().contains(&allergen) {
                assert_ne!(
                    balance.allergens.free_of(allergen),
                    Verdict::Yes,
                    "seed {seed}"
                );
            }
        }
        if balance.dairy_free == Verdict::Yes {
            assert!(
                walked
                    .entries
                    .iter()
                    .all(|item| item.diet.dairy_free != Some(false)),
                "seed {seed}"
            );
        }
        let unstated = walked.entries.iter().filter(|item| {
            item.allergens.is_none() && item.house_made.is_none() && item.role != Role::Water
        });
        for item in unstated {
            assert!(
                balance.allergens.not_stated.contains(&item.id),
                "seed {seed}: {}",
                item.id
            );
        }
    }
    assert!(
        further > 100,
        "only {further} drinks are free of what is outside the annex"
    );
    assert!(
        yes > 200,
        "only {yes} drinks are vegan, and the laws say little of the others"
    );
}

/// Something that can only make a claim less sure.
fn worsen(book: &mut Book, dice: &mut Dice) -> &'static str {
    let item = |book: &Book, dice: &mut Dice| {
        let at = dice.below(INGREDIENTS);
        book.ingredient(&ingredient_id(at))
            .unwrap()
            .as_ref()
            .clone()
    };
    match dice.below(8) {
        0 => {
            let id = RecipeId::new("drink").unwrap();
            let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
            recipe.entries.push(line_of(dice, "new"));
            book.recipes.put(recipe);
            "a line"
        }
        1 => {
            // A batch of nothing is not known to be anything, and may be something once it has parts.
            let id = recipe_id(dice.below(RECIPES));
            let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
            if recipe.ingredients().next().is_some() {
                recipe.entries.push(line_of(dice, "new"));
                book.recipes.put(recipe);
            }
            "a part"
        }
        2 => {
            let mut item = item(book, dice);
            if let Some(stated) = &mut item.allergens {
                stated.contains.push(dice.pick(&Allergen::ALL));
            }
            book.ingredients.put(item);
            "an allergen"
        }
        3 => {
            let mut item = item(book, dice);
            let more = dice.pick(&STATEMENTS).0;
            item.statement.push_str(". ");
            item.statement.push_str(more);
            book.ingredients.put(item);
            "words of a statement"
        }
        4 => {
            let mut item = item(book, dice);
            item.diet.vegan = item.diet.vegan.filter(|vegan| !vegan);
            book.ingredients.put(item);
            "no vegan claim"
        }
        5 => {
            let mut item = item(book, dice);
            item.diet.dairy_free = item.diet.dairy_free.filter(|free| !free);
            book.ingredients.put(item);
            "no claim to be free of dairy"
        }
        6 => {
            let mut item = item(book, dice);
            item.allergens = item.allergens.filter(|stated| !stated.contains.is_empty());
            book.ingredients.put(item);
            "no statement of allergens"
        }
        _ => {
            let mut item = item(book, dice);
            let sugars = &mut item.composition.sugar_profile;
            if matches!(sugars, None | Some(SugarProfile::Sucrose)) {
                *sugars = Some(dice.pick(&[SugarProfile::Honey, SugarProfile::Lactose]));
            }
            book.ingredients.put(item);
            "sugars of an animal"
        }
    }
}

#[test]
fn nothing_that_is_added_and_no_claim_that_is_lost_makes_a_verdict_truer() {
    let mut moved = 0;
    for seed in 0..8000 {
        let mut book = thrown(seed);
        let dice = &mut Dice(seed ^ 0x5eed);
        let mut before = drink(&book);
        for _ in 0..4 {
            let what = worsen(&mut book, dice);
            let after = drink(&book);
            for (at, (before, after)) in verdicts(&before)
                .into_iter()
                .zip(verdicts(&after))
                .enumerate()
            {
                assert!(
                    after >= before,
                    "seed {seed}, {what}: claim {at} moves from {before:?} to {after:?}"
                );
                moved += usize::from(after > before);
            }
            assert!(
                after
                    .allergens
                    .contains
                    .is_superset(&before.allergens.contains),
                "seed {seed}, {what}"
            );
            before = after;
        }
    }
    assert!(moved > 1000, "{moved}");
}

#[test]
fn the_order_of_lines_makes_no_difference() {
    for seed in 0..3000 {
        let book = thrown(seed);
        let mut turned = book.clone();
        for recipe in &book.recipes {
            let mut recipe = recipe.as_ref().clone();
            recipe.entries.reverse();
            turned.recipes.put(recipe);
        }
        let (one, other) = (drink(&book), drink(&turned));
        assert_eq!(
            one.vegan == Verdict::Yes,
            other.vegan == Verdict::Yes,
            "seed {seed}"
        );
        let found = |balance: &Balance| {
            let allergens = balance.allergens.clone();
            (allergens.contains, allergens.may_contain)
        };
        assert_eq!(found(&one), found(&other), "seed {seed}");
        // Which member of a circle is met again depends on where the walk enters it.
        if !walked(&book).is_broken {
            assert_eq!(one.allergens, other.allergens, "seed {seed}");
            assert_eq!(
                (one.vegan, one.dairy_free),
                (other.vegan, other.dairy_free),
                "seed {seed}"
            );
        }
    }
}

#[test]
fn a_line_of_nothing_is_not_in_the_drink() {
    for seed in 0..3000 {
        let book = thrown(seed);
        let dice = &mut Dice(seed);
        let mut more = book.clone();
        for recipe in &book.recipes {
            let mut recipe = recipe.as_ref().clone();
            let Entry::Line(mut line) = line_of(dice, "nothing") else {
                unreachable!()
            };
            line.amount = dice.pick(&[Amount::Grams(0.0), Amount::Millilitres(0.0)]);
            if let Some(carried) = &mut line.carried {
                carried.grams = 0.0;
            }
            recipe.entries.push(Entry::Line(line));
            more.recipes.put(recipe);
        }
        let (one, other) = (drink(&book), drink(&more));
        assert_eq!(verdicts(&one), verdicts(&other), "seed {seed}");
        assert_eq!(one.allergens, other.allergens, "seed {seed}");
        assert_eq!(one.cautions, other.cautions, "seed {seed}");
    }
}

/// Every text of every kind of card of the drink.
fn cards(book: &Book) -> Vec<(String, Vec<String>)> {
    let drink = || Drink {
        recipe: RecipeId::new("drink").unwrap(),
        version: None,
    };
    let requests = [
        CardRequest::Counter(drink()),
        CardRequest::Training(drink()),
        CardRequest::Menu(OnMenu::All),
        CardRequest::Ladder(drink()),
        CardRequest::Comparison(vec![drink(), drink()]),
        CardRequest::Batch(vec![BatchItem {
            drink: drink(),
            count: 3,
        }]),
    ];
    let options = CardOptions::default();
    requests
        .iter()
        .filter_map(|request| {
            let document = card(book, request, &options).ok()?;
            let texts = document.texts().into_iter().map(str::to_owned).collect();
            Some((format!("{request:?}"), texts))
        })
        .collect()
}

/// Where an entry or a statement speaks against a claim, the drink is not said to be so.
fn no_yes_is_contradicted(book: &Book, balance: &Balance, seed: u64) {
    let contains_milk = balance.allergens.contains.contains(&Allergen::Milk);
    let (mut vegan, mut dairy_free) = (!contains_milk, !contains_milk);
    for finding in statement_findings_of(book, &balance.resolved) {
        match finding.kind {
            StatementKind::Animal => vegan = false,
            StatementKind::Allergen(allergen) if !finding.is_trace => {
                vegan &= !allergen.is_animal();
                dairy_free &= allergen != Allergen::Milk;
            }
            _ => {}
        }
    }
    for caution in &balance.cautions {
        let CautionFact::ClaimsContradicted(found) = &caution.fact else {
            continue;
        };
        vegan &= found.iter().all(|found| found.claim != Claim::Vegan);
        dairy_free &= found.iter().all(|found| found.claim != Claim::DairyFree);
    }
    assert!(vegan || balance.vegan != Verdict::Yes, "seed {seed}");
    assert!(
        dairy_free || balance.dairy_free != Verdict::Yes,
        "seed {seed}"
    );
}

#[test]
fn no_output_says_yes_beside_what_speaks_against_it() {
    let mut said = 0;
    for seed in 0..400 {
        let book = thrown(seed);
        let balance = drink(&book);
        let milk = balance.allergens.contains.contains(&Allergen::Milk);
        let contains: Vec<Allergen> = walked(&book)
            .entries
            .iter()
            .flat_map(|item| shown(item))
            .collect();
        for (which, texts) in cards(&book) {
            let yes = texts.iter().filter(|text| text.as_str() == "yes").count();
            let none = texts
                .iter()
                .any(|text| text.contains("none of the fourteen"));
            // The menu holds other recipes of the book too.
            let is_alone = !which.starts_with("Menu");
            if is_alone && milk {
                assert_eq!(yes, 0, "seed {seed}, {which}: {texts:?}");
            }
            if is_alone && !contains.is_empty() {
                assert!(!none, "seed {seed}, {which}: {texts:?}");
            }
            said += yes;
        }
        for recipe in &book.recipes {
            no_yes_is_contradicted(&book, &balance_version(&book, recipe, None).unwrap(), seed);
        }
        let drink = Drink {
            recipe: RecipeId::new("drink").unwrap(),
            version: None,
        };
        let recipe = json_ld(&book, &drink, &CardOptions::default()).unwrap();
        let is_vegan = recipe.value.get("suitableForDiet").is_some();
        assert_eq!(is_vegan, balance.vegan == Verdict::Yes, "seed {seed}");
    }
    assert!(said > 0, "no card says yes, and the law says nothing");
}

#[test]
fn the_json_of_a_balance_never_holds_milk_and_yes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let is_well_formed = |book: &Book| {
        let found = findings(book);
        found
            .iter()
            .all(|finding| finding.severity != Severity::Error)
    };
    let well_formed = (0..20_000)
        .map(|seed| (seed, thrown(seed)))
        .filter(|(_, book)| is_well_formed(book));
    let mut printed = 0;
    for (seed, book) in well_formed.take(60) {
        printed += 1;
        evensip::book_file::save(&path, &book).unwrap();
        let (code, text, errors) = crate::hardening::evensip(&[
            "balance",
            path.to_str().unwrap(),
            "--recipe",
            "drink",
            "--json",
        ]);
        assert_eq!(code, Some(0), "seed {seed}: {errors}");
        let found: serde_json::Value = serde_json::from_str(&text).unwrap();
        let contains = found["allergens"]["contains"].as_array().unwrap();
        if contains.iter().any(|word| word == "milk") {
            assert_eq!(
                (&found["vegan"], &found["dairy_free"]),
                (&"no".into(), &"no".into()),
                "seed {seed}"
            );
        }
        for caution in found["cautions"].as_array().unwrap() {
            for key in ["kind", "text", "fact"] {
                assert!(
                    caution[key].as_str().is_some_and(|text| !text.is_empty()),
                    "{caution}"
                );
            }
            assert!(caution["arguments"].is_object(), "{caution}");
        }
    }
    assert_eq!(printed, 60);
}
