//! An approval freezes a taste: whatever becomes of the products, the tools and the shop, the standard stays what was tasted.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::sync::Arc;

use egui::{Key, Modifiers};
use evensip::balance::{Balance, Measurand, standard_balance};
use evensip::book::{
    Amount, Book, Entry, Figure, IngredientId, ItemId, Nutrient, Recipe, RecipeId, VersionId,
};
use evensip::book_file::{built_in_book, parse, write};
use evensip::edit::{Edit, Focus, History, WholeBook, apply, apply_all};
use evensip::swap::{answer, drifted};
use evensip::ui::Area;
use evensip::ui::counter_area::CounterItem;
use proptest::prelude::*;

use crate::arbitrary_book::{self as arbitrary, Dice};
use crate::at_the_window::{
    TALL, Window, WindowBuilder, at_the_counter, book, click, go, has, press, retype, says, settle,
    show, tick, undo, window_of,
};

/// All figures of a drink but what it costs: prices are of today. As text, because a figure may be not equal to itself.
fn taste(balance: &Balance) -> String {
    let slots = (0..balance.figures.of.len()).filter(|slot| *slot != Measurand::Cost.slot());
    let figures: Vec<String> = slots
        .map(|slot| format!("{:?}", balance.figures.of[slot]))
        .collect();
    figures.join(" ")
}

/// The standards of a book, by recipe and by the number of the approval.
fn standards(book: &Book) -> Vec<(String, String)> {
    let of_recipe = |recipe: &Recipe| {
        let versions: Vec<Option<VersionId>> = recipe
            .approvals
            .iter()
            .map(|approval| approval.version.clone())
            .collect();
        versions
            .into_iter()
            .filter_map(|version| {
                let (balance, approval) = standard_balance(book, recipe, version.as_ref())?;
                let of = format!("{} {approval:?}", recipe.id);
                Some((of, taste(&balance)))
            })
            .collect::<Vec<_>>()
    };
    book.recipes
        .iter()
        .flat_map(|recipe| of_recipe(recipe))
        .collect()
}

/// Whether an edit puts another state of something in its place, or touches what is not tasted at all. An id that nothing had
/// before may be one that an approved drink has been waiting for.
fn changes_what_is_there(edit: &Edit, book: &Book) -> bool {
    match edit {
        Edit::PutIngredient(item) => book.ingredients.contains(&item.id),
        Edit::PutMeasure(item) => book.measures.contains(&item.id),
        Edit::PutVessel(item) => book.vessels.contains(&item.id),
        Edit::PutRecipe(item) => book.recipes.contains(&item.id),
        Edit::RemoveIngredient(_)
        | Edit::RemoveMeasure(_)
        | Edit::RemoveVessel(_)
        | Edit::RemoveRecipe(_)
        | Edit::TakeTasted { .. }
        | Edit::DropTasted { .. }
        | Edit::PutRight(_) => false,
        _ => true,
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 200,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn no_edit_of_a_product_or_a_tool_moves_a_standard(seed in any::<u64>()) {
        let mut book = arbitrary::book(seed);
        let mut dice = Dice(seed ^ 0x007a_57ed);
        for _ in 0..12 {
            let edit = arbitrary::edit(&mut dice, &book);
            if !changes_what_is_there(&edit, &book) {
                continue;
            }
            let Ok(after) = apply(&book, &edit) else { continue };
            let now = standards(&after);
            for (approval, before) in standards(&book) {
                // A recipe that is put in place of another one has approvals of its own.
                if let Some((_, after)) = now.iter().find(|(other, _)| *other == approval) {
                    prop_assert_eq!(&before, after, "seed {}, {:?}", seed, edit);
                }
            }
            book = after;
        }
        // What was kept is kept in the file, too.
        let (read, _) = parse(&write(&book)).map_err(|problems| TestCaseError::fail(format!("{problems:?}")))?;
        prop_assert_eq!(standards(&read), standards(&book));
    }
}

/// Each approved drink of the built-in book with a lighter label, then a heavier one, approved in between.
#[test]
fn a_label_that_changes_leaves_the_standard_and_a_correction_moves_it() {
    let mut book = built_in_book().unwrap();
    let before = standards(&book);
    assert!(before.len() > 3, "the built-in book has approved drinks");
    let sweetest = |book: &Book, by: f64| {
        let changed = book.ingredients.iter().filter_map(|item| {
            let mut item = item.as_ref().clone();
            let sugars = item.composition.get(Nutrient::Sugars)?;
            (sugars.value > 1.0).then_some(())?;
            let other = Figure {
                value: sugars.value * by,
                ..sugars
            };
            item.composition.state(Nutrient::Sugars, other);
            Some(item)
        });
        changed.map(Edit::PutIngredient).collect::<Vec<Edit>>()
    };
    let edits = sweetest(&book, 0.9);
    assert!(edits.len() > 3);
    let lighter = apply_all(&book, &edits).unwrap();
    assert_eq!(
        standards(&lighter),
        before,
        "what was tasted has not changed"
    );
    let kept = |book: &Book| {
        let items = book.ingredients.iter();
        items.map(|item| item.earlier.states.len()).sum::<usize>()
    };
    assert!(kept(&lighter) > 0);
    // Typing goes on: what stood there for a moment was never tasted.
    let typed = apply_all(&lighter, &sweetest(&lighter, 0.95)).unwrap();
    assert_eq!(kept(&typed), kept(&lighter));
    assert_eq!(standards(&typed), before);

    // Typed back, nothing has happened.
    let back: Vec<Edit> = book
        .ingredients
        .iter()
        .map(|item| Edit::PutIngredient(item.as_ref().clone()))
        .collect();
    assert_eq!(kept(&apply_all(&typed, &back).unwrap()), 0);

    let corrections: Vec<Edit> = typed
        .ingredients
        .iter()
        .filter(|item| item.earlier.latest().is_some())
        .map(|item| Edit::PutRight(ItemId::Ingredient(item.id.clone())))
        .collect();
    let corrected = apply_all(&typed, &corrections).unwrap();
    assert_eq!(kept(&corrected), 0);
    let after = standards(&corrected);
    assert_ne!(after, before, "the figures had been wrong all along");
    // As if the right figures had stood there from the beginning.
    for item in &corrected.ingredients {
        let mut item = item.as_ref().clone();
        item.earlier = evensip::book::EarlierStates::default();
        book.ingredients.put(item);
    }
    let figures = |standards: &[(String, String)]| -> Vec<String> {
        standards
            .iter()
            .map(|(_, figures)| figures.clone())
            .collect()
    };
    assert_eq!(figures(&standards(&book)), figures(&after));
}

/// The label says 62 % of sugars where it said 48 %: the drink is sweeter than the one that was approved, which the standard
/// knows, and the amounts that bring it back are those of a swap of the product for itself.
#[test]
fn a_drink_that_drifts_is_found_and_brought_back() {
    let book = built_in_book().unwrap();
    assert_eq!(drifted(&book), []);
    let mut found = Vec::new();
    for item in &book.ingredients {
        let Some(sugars) = item.composition.get(Nutrient::Sugars) else {
            continue;
        };
        if !(20.0..=60.0).contains(&sugars.value) {
            continue;
        }
        let mut sweeter = item.as_ref().clone();
        let value = sugars.value + 14.0;
        for nutrient in [Nutrient::Sugars, Nutrient::Carbohydrate] {
            let figure = sweeter.composition.get(nutrient).unwrap_or(sugars);
            let value = figure.value.max(value);
            sweeter
                .composition
                .state(nutrient, Figure { value, ..figure });
        }
        let after = apply(&book, &Edit::PutIngredient(sweeter)).unwrap();
        found.extend(
            drifted(&after)
                .into_iter()
                .map(|drink| (after.clone(), drink)),
        );
    }
    assert!(!found.is_empty(), "a sweeter product moves a drink");
    for (after, drink) in found {
        assert!(
            matches!(drink.causes[..], [ItemId::Ingredient(_)]),
            "{:?}",
            drink.causes
        );
        let before = drink.difference.distance.unwrap();
        let answer = answer(&after, &drink.question().unwrap()).unwrap();
        assert!(
            answer.plain_changes.is_empty(),
            "its measures stay: {:?}",
            answer.plain_changes
        );
        assert_eq!(answer.plain_difference, drink.difference);
        let best = answer.suggestions.first().unwrap();
        assert!(best.difference.distance.unwrap() < before);
    }
}

/// At the counter, on the label of a powder of two approved drinks: what drifts is told, leads to what brings it back, and is
/// gone once the change was a correction.
#[test]
fn the_window_tells_what_has_drifted_and_takes_a_change_for_a_correction() {
    let mut window = window_of(TALL);
    let id = IngredientId::new("tambrel-chestnut").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(id.clone()));
    assert!(!says(&window, "Tasted with earlier figures"));
    retype(&mut window, "label: sugars", "76");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert!(says(&window, "Tasted with earlier figures"));
    let kept = |window: &Window| book(window).ingredient(&id).unwrap().earlier.clone();
    let states = kept(&window).states;
    assert_eq!(states.len(), 1);
    assert!(states[0].until.is_some(), "the day is kept");
    let step = window.state().workbench().undo_label().unwrap();
    assert!(step.contains("Tambrel chestnut powder"), "{step}");
    assert!(
        !step.contains("since when"),
        "what was typed names the step: {step}"
    );

    retype(&mut window, "First lot that was different", "T6-0519");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(kept(&window).states[0].until_lot, "T6-0519");

    click(&mut window, "Drinks that have drifted");
    assert_eq!(window.state().view().area, Area::Findings);
    assert!(says(&window, "no longer taste as approved"));
    click(&mut window, "Bring back Hob & Ember");
    assert_eq!(window.state().view().area, Area::Swap);
    assert!(says(&window, "Bring back to the standard"));
    assert!(says(&window, "As it is made now"));

    // All that the label moved, in one list and in one step.
    go(&mut window, Area::Findings);
    click(&mut window, "Bring all of them back");
    settle(&mut window);
    assert!(says(&window, "Every approved drink that has drifted"));
    let versions = |window: &Window| -> usize {
        let book = book(window);
        let recipes = book.recipes.iter();
        recipes.map(|recipe| recipe.versions.len()).sum()
    };
    let before = versions(&window);
    let count = drifted(&book(&window)).len();
    assert!(count > 1, "two approved drinks have it");
    // Thinner by more than a step, one of them is for a person to take.
    assert!(has(&window, "Add 1 new version"));
    tick(&mut window, "Hazelthwaite");
    click(&mut window, &format!("Add {count} new versions"));
    assert_eq!(versions(&window), before + count);
    undo(&mut window);
    assert_eq!(versions(&window), before);

    at_the_counter(&mut window, CounterItem::Ingredient(id.clone()));
    click(&mut window, "The earlier figures were wrong");
    assert_eq!(kept(&window).states.len(), 0);
    go(&mut window, Area::Findings);
    assert!(!says(&window, "no longer taste as approved"));
    undo(&mut window);
    settle(&mut window);
    assert_eq!(kept(&window).states.len(), 1);
    go(&mut window, Area::Findings);
    assert!(says(&window, "no longer taste as approved"));
}

/// A batch is made otherwise: its recipe tells how it was made when drinks were approved with it, from when, and takes that back.
#[test]
fn the_recipe_of_a_batch_tells_how_it_was_made_for_approved_drinks() {
    let sample = built_in_book().unwrap();
    let approved = |id: &RecipeId| {
        let mut recipes = sample.recipes.iter();
        recipes.any(|drink| {
            let mut of_drink = drink.approvals.iter();
            of_drink.any(|approval| {
                let mut made = approval.resolved.lines().filter_map(|line| {
                    let item = sample.ingredient(&line.ingredient)?;
                    Some(&item.house_made.as_ref()?.recipe)
                });
                made.any(|made| made == id)
            })
        })
    };
    let batch = sample.recipes.iter().find(|recipe| approved(&recipe.id));
    let id = batch
        .expect("an approved drink has a batch in it")
        .id
        .clone();
    let mut otherwise = sample.recipe(&id).unwrap().as_ref().clone();
    let line = otherwise.entries.iter_mut().find_map(|entry| match entry {
        Entry::Line(line) => Some(line),
        Entry::Instruction(_) => None,
    });
    line.unwrap().amount = Amount::Grams(321.0);
    let changed = apply(&sample, &Edit::PutRecipe(otherwise)).unwrap();
    let mut window = WindowBuilder::of(TALL).with_book(changed).open();
    show(&mut window, id.as_str(), None);
    assert!(says(&window, "Tasted with earlier figures"));
    assert!(says(&window, "321"));
    let until = |window: &Window| {
        let recipe = book(window).recipe(&id).unwrap().clone();
        recipe
            .earlier
            .states
            .first()
            .and_then(|state| state.until.clone())
    };
    retype(
        &mut window,
        "Day since which it has been different",
        "2026-02-31",
    );
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(until(&window), None, "a day that there is not is refused");
    retype(
        &mut window,
        "Day since which it has been different",
        "2026-02-28",
    );
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(until(&window).as_deref(), Some("2026-02-28"));
    click(&mut window, "The earlier figures were wrong");
    assert_eq!(book(&window).recipe(&id).unwrap().earlier.states.len(), 0);
}

/// What a list changes of a product is kept as what a form changes is: with the day.
#[test]
fn what_a_list_changes_is_dated() {
    let sample = built_in_book().unwrap();
    let id = IngredientId::new("tambrel-chestnut").unwrap();
    let mut sweeter = sample.ingredient(&id).unwrap().as_ref().clone();
    let sugars = sweeter.composition.get(Nutrient::Sugars).unwrap();
    let value = sugars.value + 14.0;
    sweeter
        .composition
        .state(Nutrient::Sugars, Figure { value, ..sugars });
    let mut taken = sample.clone();
    taken.ingredients.put(sweeter);
    let edit = Edit::PutBook {
        book: Arc::new(taken),
        reason: WholeBook::Ingredients(1),
    };
    let mut history = History::new(Arc::new(sample)).dated_by(|| "2026-05-04".to_owned());
    history.perform(vec![edit], Focus::Book).unwrap();
    let states = &history.book().ingredient(&id).unwrap().earlier.states;
    assert_eq!(states.len(), 1);
    assert_eq!(states[0].until.as_deref(), Some("2026-05-04"));
}
