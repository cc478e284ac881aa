//! What so many drinks take: enough of everything, and at most one pack or batch more.

use std::collections::{BTreeMap, BTreeSet};

use evensip::balance::{Balance, Need, Shopping, balance_version, batches_for, shopping};
use evensip::book::{
    Amount, Book, Entry, Evidence, Figure, Form, HouseMade, Ingredient, IngredientId, Line, LineId,
    Price, Recipe, RecipeId, Role, Stage, Vessel, VesselId, VesselKind,
};
use evensip::cards::drinks_of_menu;
use evensip::quantity::Pack;
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::sample::sample;

const CLOSE: f64 = 1e-6;

/// What is needed of each ingredient: by the drinks, and by the batches that are made for them.
fn needed(drinks: &[(Balance, u32)], shopping: &Shopping) -> BTreeMap<IngredientId, Option<f64>> {
    let mut needed: BTreeMap<IngredientId, Option<f64>> = BTreeMap::new();
    let mut add = |id: &IngredientId, grams: Option<f64>| {
        let so_far = needed.entry(id.clone()).or_insert(Some(0.0));
        *so_far = so_far.zip(grams).map(|(so_far, grams)| so_far + grams);
    };
    for (balance, count) in drinks {
        for share in &balance.lines {
            add(
                &share.ingredient,
                share.grams.map(|grams| grams * f64::from(*count)),
            );
        }
    }
    for batch in &shopping.batches {
        for (part, grams) in &batch.parts {
            add(part, *grams);
        }
    }
    needed
}

fn needs(shopping: &Shopping) -> Vec<&Need> {
    let batches = shopping.batches.iter().map(|batch| &batch.need);
    let bought = shopping.bought.iter().map(|purchase| &purchase.need);
    let teas = shopping.teas.iter().map(|tea| &tea.need);
    let drawn = shopping.from_tap.iter().map(|drawn| &drawn.need);
    batches.chain(bought).chain(teas).chain(drawn).collect()
}

fn assert_enough(book: &Book, drinks: &[(Balance, u32)]) -> Shopping {
    let shopping = shopping(
        book,
        drinks.iter().map(|(balance, count)| (balance, *count)),
    );
    let needed = needed(drinks, &shopping);
    // Everything once, and nothing else.
    let listed: Vec<_> = needs(&shopping)
        .iter()
        .map(|need| &need.ingredient)
        .collect();
    assert_eq!(listed.iter().collect::<BTreeSet<_>>().len(), listed.len());
    assert_eq!(listed.len(), needed.len());
    for need in needs(&shopping) {
        match needed[&need.ingredient] {
            None => assert!(need.is_least, "{need:?}"),
            Some(grams) => {
                assert!(!need.is_least, "{need:?}");
                let off = (need.grams - grams).abs();
                assert!(off <= CLOSE * grams.max(1.0), "{need:?} {grams}");
            }
        }
    }
    let at_most_one_more = |count: f64, usable: f64, need: &Need| {
        let little = CLOSE * need.grams.max(usable);
        assert!(
            count * usable >= need.grams - 2.0 * little,
            "too little: {need:?}"
        );
        assert!(
            (count - 1.0) * usable < need.grams + little,
            "too much: {need:?}"
        );
    };
    for batch in &shopping.batches {
        if let Some(count) = batch.count {
            at_most_one_more(count, batch.usable, &batch.need);
        }
        // The planner of batches says the same of them.
        let planned = batches_for(book, &batch.need.ingredient, batch.need.grams);
        let planned = planned.map(|planned| planned.whole().0);
        let count = planned.as_ref().map(|planned| planned.batches);
        assert_eq!(batch.count, count, "{batch:?}");
        let grams = planned.iter().flat_map(|planned| &planned.parts);
        let grams = grams.map(|part| part.grams.filter(|_| !batch.need.is_least));
        let listed = batch.parts.iter().map(|(_, grams)| *grams);
        assert!(count.is_none() || listed.eq(grams), "{batch:?} {planned:?}");
    }
    for purchase in &shopping.bought {
        let item = book.ingredient(&purchase.need.ingredient).unwrap();
        let is_sold = !item.supplier.is_empty() || !item.brand.is_empty();
        let is_of_house = matches!(item.role, Role::Water | Role::Tea) && item.form == Form::Liquid
            || item.form == Form::Ice;
        assert!(is_sold || !is_of_house, "nobody sells {}", item.name);
        if let Some(packs) = purchase.packs {
            at_most_one_more(packs.count, packs.usable, &purchase.need);
        }
    }
    for tea in &shopping.teas {
        assert!(tea.ready >= tea.need.grams - CLOSE);
        if let Some(brew) = tea.brew {
            // Leaf keeps water back, so more is poured on than comes off.
            assert!(brew.water > tea.ready - brew.leaf.value && brew.leaf.value > 0.0);
            assert!(brew.leaf.u > 0.0);
        }
    }
    shopping
}

#[test]
fn a_saturday_of_the_sample_shop_is_bought_and_made_and_no_more() {
    let book = sample();
    let drinks: Vec<(Balance, u32)> = drinks_of_menu(&book)
        .iter()
        .zip([35, 15, 10].into_iter().cycle())
        .map(|(drink, count)| {
            let recipe = book.recipe(&drink.recipe).unwrap();
            (
                balance_version(&book, recipe, drink.version.as_ref()).unwrap(),
                count,
            )
        })
        .collect();
    let all = assert_enough(&book, &drinks);
    assert!(!all.batches.is_empty() && !all.teas.is_empty() && !all.from_tap.is_empty());
    assert!(all.teas.iter().all(|tea| tea.brew.is_some()));
    for one in &drinks {
        assert_enough(&book, std::slice::from_ref(one));
    }
}

fn id(name: &str) -> IngredientId {
    IngredientId::new(name).unwrap()
}

fn line(at: usize, ingredient: &str, grams: f64) -> Entry {
    Entry::Line(Line {
        id: LineId::new(&format!("line-{at}")).unwrap(),
        ingredient: id(ingredient),
        amount: Amount::Grams(grams),
        temperature: None,
        role: Role::Flavour,
        stage: Stage::Mixed,
        carried: None,
        note: String::new(),
    })
}

fn recipe(name: &str, parts: &[(String, f64)]) -> Recipe {
    let mut recipe = Recipe::new(RecipeId::new(name).unwrap(), name.to_owned());
    let parts = parts.iter().enumerate();
    recipe.entries = parts
        .map(|(at, (part, grams))| line(at, part, *grams))
        .collect();
    recipe
}

/// A shop whose batches go into drinks and into one another.
pub(crate) fn nested(dice: &mut Dice) -> (Book, Vec<(Balance, u32)>) {
    let mut book = Book::default();
    let cup = VesselId::new("cup").unwrap();
    let vessel = Vessel::new(cup.clone(), "Cup".to_owned(), VesselKind::Cup, 500.0);
    book.vessels.put(vessel);
    let mut known: Vec<String> = Vec::new();
    let amount = |dice: &mut Dice| 1.0 + dice.below(2000) as f64 / 7.0;
    for at in 0..3 + dice.below(4) {
        let name = format!("pack-{at}");
        let mut item = Ingredient::new(id(&name), name.clone());
        item.form = dice.pick(&[Form::Powder, Form::Syrup, Form::Liquid]);
        item.role = dice.pick(&[Role::Flavour, Role::Sweetener, Role::Water, Role::Tea]);
        dice.pick(&["", "Wexlow"]).clone_into(&mut item.supplier);
        item.price = (dice.below(5) > 0).then(|| Price {
            pack: 4.5,
            content: Pack::of_grams(amount(dice)),
            waste_percent: dice.below(30) as f64,
            date: None,
        });
        book.ingredients.put(item);
        known.push(name);
    }
    let parts = |dice: &mut Dice, known: &[String]| -> Vec<(String, f64)> {
        let count = 1 + dice.below(4);
        let pick = |dice: &mut Dice| known[dice.below(known.len())].clone();
        (0..count).map(|_| (pick(dice), amount(dice))).collect()
    };
    for at in 0..dice.below(5) {
        let name = format!("batch-{at}");
        let mut batch = recipe(&name, &parts(dice, &known));
        // Whatever it is served in otherwise, a batch is made in no cup.
        batch.cup = (dice.below(3) == 0).then(|| cup.clone());
        if dice.below(3) == 0
            && let Some(Entry::Line(line)) = batch.entries.last_mut()
        {
            line.amount = dice.pick(&[Amount::FillTo(400.0), Amount::FillToRim]);
        }
        book.recipes.put(batch);
        let mut item = Ingredient::new(id(&name), name.clone());
        item.house_made = Some(HouseMade {
            recipe: RecipeId::new(&name).unwrap(),
            yield_grams: Figure {
                value: amount(dice),
                evidence: Evidence::Measured,
                u: None,
            },
            extraction: None,
            steep_minutes: None,
            shelf_life_hours: None,
            waste_percent: dice.below(20) as f64,
        });
        book.ingredients.put(item);
        known.push(name);
    }
    let mut drinks = Vec::new();
    for at in 0..=dice.below(3) {
        let drink = recipe(&format!("drink-{at}"), &parts(dice, &known));
        book.recipes.put(drink.clone());
        drinks.push((drink, u32::try_from(dice.below(60)).unwrap()));
    }
    let drinks = drinks.into_iter().map(|(recipe, count)| {
        let balance = balance_version(&book, &recipe, None).unwrap();
        (balance, count)
    });
    let drinks = drinks.collect();
    (book, drinks)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn enough_is_bought_and_made_and_at_most_one_of_each_more(seed in any::<u64>()) {
        let (book, drinks) = nested(&mut Dice(seed));
        assert_enough(&book, &drinks);
    }
}
