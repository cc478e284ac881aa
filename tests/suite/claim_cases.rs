//! What is said of allergens and diets in cases that went wrong or could, and what a swap makes of it.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::{Against, CautionFact, Claim, Contradiction, Verdict, claims_of_ingredient};
use evensip::book::{
    Allergen, AllergenStatement, Book, Entry, Evidence, Figure, Form, HouseMade, Ingredient,
    IngredientId, Nutrient, Recipe, RecipeId, Role,
};
use evensip::swap::{Demands, Question, answer_with};

use crate::arbitrary_book::Dice;
use crate::claim_books::{STATEMENTS, claim, drink, some_allergens};
use crate::growth::{TENFOLD, growth};
use crate::sample::{self, sample};

/// A batch of 200 g of syrup and 1800 g of milk, in a drink.
fn batch_with_milk(change: impl FnOnce(&mut Ingredient)) -> Book {
    let mut syrup = sample::ingredient("syrup", Form::Syrup, Role::Sweetener, &[]);
    syrup.diet.vegan = Some(true);
    syrup.allergens = Some(AllergenStatement::default());
    let mut milk = sample::ingredient("milk", Form::Liquid, Role::Creamer, &[]);
    milk.allergens = Some(AllergenStatement {
        contains: vec![Allergen::Milk],
        may_contain: Vec::new(),
        free_of: Vec::new(),
    });
    let mut batch = sample::ingredient("batch", Form::Liquid, Role::Creamer, &[]);
    batch.house_made = Some(HouseMade {
        recipe: RecipeId::new("batch").unwrap(),
        yield_grams: Figure::new(2000.0, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    change(&mut batch);
    let mut book = sample::book(
        vec![syrup, milk, batch],
        Vec::new(),
        sample::recipe(vec![sample::line("a", "batch", 100.0, 20.0, Role::Creamer)]),
    );
    book.recipes.put(Recipe {
        id: RecipeId::new("batch").unwrap(),
        ..sample::recipe(vec![
            sample::line("a", "syrup", 200.0, 20.0, Role::Sweetener),
            sample::line("b", "milk", 1800.0, 5.0, Role::Creamer),
        ])
    });
    book
}

#[test]
fn a_batch_never_hides_the_milk_in_it() {
    let claims_vegan = batch_with_milk(|batch| batch.diet.vegan = Some(true));
    let says_none = batch_with_milk(|batch| {
        batch.diet.vegan = Some(true);
        batch.allergens = Some(AllergenStatement::default());
    });
    for book in [claims_vegan, says_none] {
        let balance = drink(&book);
        assert_eq!(balance.vegan, Verdict::No);
        assert_eq!(balance.dairy_free, Verdict::No);
        assert!(balance.allergens.contains.contains(&Allergen::Milk));
        let facts: Vec<&CautionFact> = balance
            .cautions
            .iter()
            .map(|caution| &caution.fact)
            .collect();
        assert!(
            matches!(facts[0], CautionFact::Allergens(said) if said.contains.contains(&Allergen::Milk)),
            "{facts:?}"
        );
        let contradiction = Contradiction {
            ingredient: IngredientId::new("batch").unwrap(),
            claim: Claim::Vegan,
            against: Against::Part(IngredientId::new("milk").unwrap()),
        };
        assert!(
            facts.iter().any(|fact| matches!(fact, CautionFact::ClaimsContradicted(found) if found.contains(&contradiction))),
            "{facts:?}"
        );
    }
}

#[test]
fn words_of_a_statement_outweigh_the_claims_beside_it() {
    let verdict = |statement: &str| {
        let mut item = sample::ingredient("item", Form::Powder, Role::Creamer, &[]);
        item.diet.vegan = Some(true);
        item.statement = statement.to_owned();
        let id = item.id.clone();
        let mut book = Book::default();
        book.ingredients.put(item);
        let claims = claims_of_ingredient(&book, &id);
        (claims.vegan, claims.dairy_free)
    };
    let (yes, no) = (Verdict::Yes, Verdict::No);
    for (statement, expected) in [
        ("Glucose syrup, sodium caseinate (milk).", (no, no)),
        ("Sugar, honey.", (no, yes)),
        ("Sugar, shellac.", (no, yes)),
        ("Sugar, E 120.", (no, yes)),
        ("Sugar, lanolin.", (no, yes)),
        ("Whey.", (no, no)),
        // The pack says vegan, and the pack knows where its emulsifier comes from.
        ("Palm fat, emulsifier E 471.", (yes, yes)),
        ("Coconut milk.", (yes, yes)),
        ("Cocoa. May contain milk.", (yes, yes)),
    ] {
        assert_eq!(verdict(statement), expected, "{statement}");
    }
}

#[test]
fn an_entry_that_contradicts_itself_is_not_known() {
    let verdict = |vegan, dairy_free| {
        let mut item = sample::ingredient("item", Form::Powder, Role::Creamer, &[]);
        (item.diet.vegan, item.diet.dairy_free) = (vegan, dairy_free);
        let id = item.id.clone();
        let mut book = Book::default();
        book.ingredients.put(item);
        let claims = claims_of_ingredient(&book, &id);
        (claims.vegan, claims.dairy_free)
    };
    let (yes, no, not_known) = (Verdict::Yes, Verdict::No, Verdict::NotKnown);
    assert_eq!(verdict(Some(true), Some(false)), (not_known, not_known));
    assert_eq!(verdict(Some(true), None), (yes, yes));
    assert_eq!(verdict(None, Some(false)), (no, no));
    assert_eq!(verdict(Some(false), Some(true)), (no, yes));
    assert_eq!(verdict(None, None), (not_known, not_known));
}

#[test]
fn only_plain_water_needs_no_claim() {
    let verdict = |change: fn(&mut Ingredient)| {
        let mut water = sample::water();
        change(&mut water);
        let id = water.id.clone();
        let mut book = Book::default();
        book.ingredients.put(water);
        claims_of_ingredient(&book, &id).vegan
    };
    assert_eq!(verdict(|_| {}), Verdict::Yes);
    assert_eq!(
        verdict(|water| "Drinking water".clone_into(&mut water.statement)),
        Verdict::Yes
    );
    for change in [
        (|water: &mut Ingredient| "Water, vitamins".clone_into(&mut water.statement))
            as fn(&mut Ingredient),
        |water| "Milk ice".clone_into(&mut water.name),
        |water| {
            let sugar = Figure::new(8.0, Evidence::Label);
            water.composition.state(Nutrient::Sugars, sugar);
        },
        |water| {
            water.house_made = Some(HouseMade {
                recipe: RecipeId::new("gone").unwrap(),
                yield_grams: Figure::new(1.0, Evidence::Measured),
                extraction: None,
                steep_minutes: None,
                shelf_life_hours: None,
                waste_percent: 0.0,
            });
        },
    ] {
        assert_eq!(verdict(change), Verdict::NotKnown);
    }
    assert_eq!(
        verdict(|water| "Water, whey".clone_into(&mut water.statement)),
        Verdict::No
    );
}

/// Each batch is made from the one below it.
#[test]
fn a_chain_of_batches_is_followed_to_its_end() {
    let ratio = growth([&batches(2_000), &batches(20_000)], |book| {
        let last = IngredientId::new(&format!("b{}", book.recipes.len())).unwrap();
        let claims = claims_of_ingredient(book, &last);
        assert_eq!(
            (claims.vegan, claims.dairy_free),
            (Verdict::No, Verdict::No)
        );
    });
    assert!(ratio < TENFOLD, "{ratio}");
}

fn batches(count: usize) -> Book {
    let mut book = Book::default();
    let mut milk = sample::ingredient("b0", Form::Liquid, Role::Creamer, &[]);
    "Whey powder".clone_into(&mut milk.statement);
    book.ingredients.put(milk);
    for depth in 1..=count {
        let recipe = RecipeId::new(&format!("r{depth}")).unwrap();
        let below = format!("b{}", depth - 1);
        book.recipes.put(Recipe {
            id: recipe.clone(),
            ..sample::recipe(vec![sample::line("l", &below, 10.0, 20.0, Role::Creamer)])
        });
        let mut batch = sample::ingredient(&format!("b{depth}"), Form::Liquid, Role::Creamer, &[]);
        batch.diet.vegan = Some(true);
        batch.house_made = Some(HouseMade {
            recipe,
            yield_grams: Figure::new(10.0, Evidence::Measured),
            extraction: None,
            steep_minutes: None,
            shelf_life_hours: None,
            waste_percent: 0.0,
        });
        book.ingredients.put(batch);
    }
    book
}

#[test]
fn a_swap_that_must_be_vegan_or_without_an_allergen_is_so_with_everything_in_it() {
    let plain = sample();
    let ids: Vec<IngredientId> = plain
        .ingredients
        .iter()
        .map(|item| item.id.clone())
        .collect();
    let mut suggested = 0;
    for seed in 0..160 {
        let dice = &mut Dice(seed);
        let mut book = plain.clone();
        for _ in 0..dice.below(12) {
            let mut item = book.ingredient(&dice.pick(&ids)).unwrap().as_ref().clone();
            match dice.below(4) {
                0 => item.diet.vegan = claim(dice),
                1 => dice.pick(&STATEMENTS).0.clone_into(&mut item.statement),
                2 => item.allergens = None,
                _ => {
                    item.allergens = Some(AllergenStatement {
                        contains: some_allergens(dice),
                        may_contain: Vec::new(),
                        free_of: Vec::new(),
                    });
                }
            }
            book.ingredients.put(item);
        }
        let id = RecipeId::new(dice.pick(&["hob-and-ember", "hazelthwaite"])).unwrap();
        let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
        // Lines of nothing must not bring in what the drink may not hold.
        for entry in &mut recipe.entries {
            if let Entry::Line(line) = entry
                && line.role == Role::Creamer
                && dice.coin()
            {
                line.amount = line.amount.with_number(0.0);
            }
        }
        book.recipes.put(recipe);
        let demands = Demands {
            keep_vegan: dice.coin(),
            without: if dice.coin() {
                vec![Allergen::Milk]
            } else {
                vec![Allergen::Eggs, Allergen::Soybeans]
            },
            limit: 400,
            ..Demands::default()
        };
        let question = Question {
            recipe: id,
            version: None,
            replace: IngredientId::new("tambrel-chestnut").unwrap(),
            with: IngredientId::new("ketterby-chestnut").unwrap(),
            adjust: None,
        };
        let answer = answer_with(&book, &question, &demands).unwrap();
        for suggestion in &answer.suggestions {
            suggested += 1;
            let balance = &suggestion.balance;
            assert!(
                !demands.keep_vegan || balance.vegan == Verdict::Yes,
                "seed {seed}"
            );
            for allergen in &demands.without {
                assert_eq!(
                    balance.allergens.free_of(*allergen),
                    Verdict::Yes,
                    "seed {seed}: {allergen:?}"
                );
            }
        }
        assert!(
            !answer.suggestions.is_empty() || !answer.reasons.is_empty(),
            "seed {seed}"
        );
    }
    assert!(suggested > 20, "{suggested}");
}
