//! What is kept of brews and batches is what would be worked out again: in every drink, in every order, whatever has changed since.

use evensip::balance::{Prepared, Slots, prepare, prepare_afresh};
use evensip::book::{
    Book, Entry, Evidence, Figure, FlavourStrength, HighPotencyAmount, HighPotencySweetener,
    Nutrient, Place, Recipe, Resolved, Stage,
};
use evensip::edit::apply;
use proptest::prelude::*;

use crate::arbitrary_book::{Dice, book, edit, ids};
use crate::shopping::nested;

/// Flavours, more of them than have a place in a drink.
const FLAVOURS: [&str; 10] = [
    "barley", "pear", "quince", "elder", "rose", "malt", "smoke", "honey", "plum", "fennel",
];

/// Sweeteners, more of them as well.
const SWEETENERS: [HighPotencySweetener; 6] = [
    HighPotencySweetener::Sucralose,
    HighPotencySweetener::Aspartame,
    HighPotencySweetener::AcesulfameK,
    HighPotencySweetener::RebaudiosideA,
    HighPotencySweetener::Stevioside,
    HighPotencySweetener::Saccharin,
];

/// A shop whose batches go into one another, with flavours, sweeteners and leaf in them.
fn shop(dice: &mut Dice) -> Book {
    let (mut book, _) = nested(dice);
    for id in ids(&book.ingredients) {
        let mut item = book.ingredient(&id).unwrap().as_ref().clone();
        let figure = |dice: &mut Dice| Figure::new(dice.below(50) as f64 / 7.0, Evidence::Label);
        for _ in 0..dice.below(3) {
            item.composition.flavours.push(FlavourStrength {
                name: dice.pick(&FLAVOURS).to_owned(),
                per_gram: dice.coin().then(|| figure(dice)),
            });
        }
        if dice.below(3) == 0 {
            item.composition.high_potency.push(HighPotencyAmount {
                sweetener: dice.pick(&SWEETENERS),
                milligrams: dice.coin().then(|| figure(dice)),
            });
        }
        if dice.coin() && item.house_made.is_none() {
            item.composition.state(Nutrient::Sugars, figure(dice));
            item.composition.state(Nutrient::Fat, figure(dice));
        }
        book.ingredients.put(item);
    }
    for id in ids(&book.recipes) {
        let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
        for entry in &mut recipe.entries {
            if let Entry::Line(line) = entry
                && dice.below(6) == 0
            {
                line.stage = Stage::Steeped;
            }
        }
        book.recipes.put(recipe);
    }
    book
}

type Prepares = fn(&Book, &Resolved, &mut Slots, &Place) -> Prepared;

/// A recipe as both ways prepare it, with slots that another drink has taken already.
fn assert_same(book: &Book, recipe: &Recipe, taken: &Slots) {
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let by = |prepare: Prepares| {
        let mut slots = taken.clone();
        let prepared = prepare(book, &recipe.plain(), &mut slots, &place);
        (prepared, slots)
    };
    let (kept, afresh) = (by(prepare), by(prepare_afresh));
    assert_eq!(kept.1, afresh.1, "{}", recipe.id);
    assert_eq!(kept.0.findings, afresh.0.findings, "{}", recipe.id);
    assert_eq!(kept.0.causes, afresh.0.causes, "{}", recipe.id);
    // What is no number equals nothing, itself least of all.
    let is_same = kept.0 == afresh.0 || format!("{:?}", kept.0) == format!("{:?}", afresh.0);
    assert!(is_same, "{}: {:?} {:?}", recipe.id, kept.0, afresh.0);
}

fn taken(dice: &mut Dice) -> Slots {
    let flavours = (0..dice.below(8)).map(|_| dice.pick(&FLAVOURS).to_owned());
    let mut flavours: Vec<String> = flavours.collect();
    flavours.sort_unstable();
    flavours.dedup();
    Slots {
        flavours,
        sweeteners: Vec::new(),
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_batch_that_is_kept_is_the_batch_that_is_worked_out_again(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut book = shop(&mut dice);
        for _ in 0..4 {
            for recipe in &book.recipes {
                assert_same(&book, recipe, &Slots::default());
                assert_same(&book, recipe, &taken(&mut dice));
            }
            // Something that a batch may rest on changes.
            let all = ids(&book.ingredients);
            let mut item = book.ingredient(&dice.pick(&all)).unwrap().as_ref().clone();
            match &mut item.house_made {
                Some(made) if dice.coin() => made.yield_grams.value *= 1.1,
                _ => item.composition.state(Nutrient::Protein, Figure::new(3.0, Evidence::Label)),
            }
            book.ingredients.put(item);
            let settings = &mut book.settings;
            if dice.below(3) == 0 {
                settings.instruments.scale_grams = Some(1.0 + dice.below(3) as f64);
            }
            let all = ids(&book.recipes);
            let mut recipe = book.recipe(&dice.pick(&all)).unwrap().as_ref().clone();
            if dice.coin() && recipe.entries.len() > 1 {
                recipe.entries.pop();
            }
            book.recipes.put(recipe);
        }
    }

    /// Books of any kind, batches in circles among them, with edits of any kind.
    #[test]
    fn whatever_the_book_is_nothing_is_kept_that_does_not_hold(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut book = book(seed);
        for _ in 0..3 {
            for recipe in &book.recipes {
                assert_same(&book, recipe, &Slots::default());
            }
            let edit = edit(&mut dice, &book);
            if let Ok(after) = apply(&book, &edit) {
                book = after;
            }
        }
    }
}
