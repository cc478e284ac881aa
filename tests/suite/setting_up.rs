//! A shop set up: the starter kit, another brand of the same, a guess that stays one, what is missing, and what to measure first.

use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable as _;
use evensip::balance::{Doubtful, Narrowing, ToMeasure, balance_version};
use evensip::book::{
    Book, Evidence, Figure, Finding, Form, Ingredient, IngredientId, MeasureId, Reading, Role,
    Severity, findings,
};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};
use std::sync::Arc;

use crate::at_the_window::{
    Window, WindowBuilder, at_the_counter, book, click, eventually, go, has, press, says, settle,
    speak, text_of, type_into, type_on, undo, window,
};
use crate::sample::{cup, line, measure, recipe, sample};

fn item(window: &Window, id: &str) -> Option<Ingredient> {
    let id = IngredientId::new(id).unwrap();
    book(window)
        .ingredient(&id)
        .map(|found| found.as_ref().clone())
}

fn empty_book() -> Window {
    WindowBuilder::of([1360.0, 1000.0])
        .with_book(Book::default())
        .open()
}

#[test]
fn a_new_book_takes_a_starter_kit_in_one_step_or_stays_empty() {
    for language in ["en", "de"] {
        let mut window = empty_book();
        speak(&mut window, language);
        let (offer, milk) = match language {
            "de" => ("Grundausstattung hinzufügen", "Vollmilch"),
            _ => ("Add a starter kit", "Whole milk"),
        };
        assert!(has(&window, offer), "{language}");
        click(&mut window, offer);
        let kit = book(&window);
        assert_eq!((kit.measures.len(), kit.vessels.len()), (4, 3));
        let known = item(&window, "whole-milk").unwrap();
        assert_eq!(known.name, milk);
        let published = |figure: &Figure| figure.evidence == Evidence::Published;
        assert!(known.composition.printed.values().all(published));
        assert!(known.note.contains("USDA"));
        // What is not published is called assumed.
        assert!(
            kit.measures
                .iter()
                .all(|item| !item.note.is_empty() && item.readings.is_empty())
        );
        let is_error = |found: &Finding| found.severity == Severity::Error;
        assert!(!findings(&kit).iter().any(is_error), "{:?}", findings(&kit));
        assert!(!has(&window, offer));
        undo(&mut window);
        assert_eq!(*book(&window), Book::default(), "{language}");
        assert!(has(&window, offer));
    }
}

#[test]
fn the_kit_brings_only_what_a_book_has_nothing_of() {
    let mut window = window();
    go(&mut window, Area::Counter);
    for kind in [Kind::Ingredients, Kind::Measures, Kind::Vessels] {
        window.state_mut().areas_mut().counter.look_at(kind);
        settle(&mut window);
        assert!(!has(&window, "Add a starter kit"));
    }
    let mut with_scoop = Book::default();
    with_scoop.measures.put(measure(
        "brown-scoop",
        evensip::book::MeasureKind::Scoop,
        evensip::book::Nominal::Volume(12.0),
    ));
    let mut window = WindowBuilder::of([1360.0, 1000.0])
        .with_book(with_scoop)
        .open();
    click(&mut window, "Add a starter kit");
    let kinds: Vec<&str> = book(&window)
        .measures
        .iter()
        .map(|item| item.kind.word())
        .collect();
    assert_eq!(kinds, ["scoop", "pump", "spoon", "ice scoop"]);
}

#[test]
fn another_brand_has_kind_flavour_and_role_and_nothing_that_one_pack_says() {
    let mut window = window();
    let id = IngredientId::new("tambrel-chestnut").unwrap();
    let before = item(&window, "tambrel-chestnut").unwrap();
    assert!(before.price.is_some() && before.allergens.is_some());
    at_the_counter(&mut window, CounterItem::Ingredient(id));
    click(&mut window, "Duplicate as another brand");
    let book = book(&window);
    let copy = book.ingredients.iter().next_back().unwrap();
    let flavours = |item: &Ingredient| -> Vec<String> {
        let flavours = item.composition.flavours.iter();
        flavours.map(|flavour| flavour.name.clone()).collect()
    };
    assert_eq!(
        (&copy.name, copy.form, copy.role, flavours(copy)),
        (&before.name, before.form, before.role, flavours(&before))
    );
    let blank = Ingredient {
        form: copy.form,
        role: copy.role,
        temperature: copy.temperature,
        translations: copy.translations.clone(),
        ..Ingredient::new(copy.id.clone(), copy.name.clone())
    };
    let mut rest = copy.as_ref().clone();
    assert!(
        rest.composition
            .flavours
            .iter()
            .all(|flavour| flavour.per_gram.is_none())
    );
    rest.composition.flavours.clear();
    assert_eq!(rest, blank);
}

#[test]
fn a_guess_is_entered_as_a_guess_and_readings_as_a_measurement() {
    let mut window = empty_book();
    go(&mut window, Area::Counter);
    click(&mut window, "New ingredient");
    type_into(&mut window, "Name", "Quince syrup");
    let id = book(&window).ingredients.iter().next().unwrap().id.clone();
    let density = |window: &Window| book(window).ingredient(&id).unwrap().density;
    let mut plain = book(&window).ingredient(&id).unwrap().as_ref().clone();
    plain.form = Form::Syrup;
    window = {
        let mut book = book(&window).as_ref().clone();
        book.ingredients.put(plain);
        WindowBuilder::of([1360.0, 1400.0]).with_book(book).open()
    };
    at_the_counter(&mut window, CounterItem::Ingredient(id.clone()));
    type_into(&mut window, "Density", "1.3");
    let guess = density(&window).unwrap();
    assert_eq!((guess.evidence, guess.u), (Evidence::Assumed, None));
    press(&mut window, Modifiers::COMMAND, Key::A);
    type_on(&mut window, "1.31 1.33 1.32");
    let measured = density(&window).unwrap();
    assert_eq!(measured.evidence, Evidence::Measured);
    assert!((measured.value - 1.32).abs() < 1e-12 && measured.u.unwrap() > 0.005);
    press(&mut window, Modifiers::COMMAND, Key::A);
    type_on(&mut window, "1.25");
    let guess = density(&window).unwrap();
    assert_eq!((guess.evidence, guess.u), (Evidence::Assumed, None));
    click(&mut window, "Density, evidence: assumed");
    assert!(has(&window, "specification sheet") && !has(&window, "measured"));
}

#[test]
fn what_is_missing_leads_to_the_field_where_it_is_entered() {
    let mut book = Book::default();
    let id = IngredientId::new("barley").unwrap();
    book.ingredients
        .put(Ingredient::new(id.clone(), "Barley".to_owned()));
    let mut window = WindowBuilder::of([1360.0, 1400.0]).with_book(book).open();
    at_the_counter(&mut window, CounterItem::Ingredient(id));
    for (words, field) in [
        ("sugars: not stated — read the label", "label: sugars"),
        (
            "price: not stated — the cost of its drinks is not known",
            "Price of a pack",
        ),
    ] {
        assert!(says(&window, words), "{words}");
        click(&mut window, words);
        settle(&mut window);
        assert!(window.get_by_label(field).is_focused(), "{field}");
    }
    // Packs print neither of them, and a plain powder has none.
    for words in [
        "acid: not",
        "tea solids: not",
        "polyols: not",
        "caffeine: not",
    ] {
        assert!(!says(&window, words), "{words}");
    }
}

#[test]
fn findings_call_things_by_their_names() {
    let mut book = Book::default();
    let scoop = MeasureId::new("new-measure-3").unwrap();
    let mut item = measure(
        "new-measure-3",
        evensip::book::MeasureKind::Scoop,
        evensip::book::Nominal::Volume(-1.0),
    );
    item.id = scoop;
    item.name = "white scoop".to_owned();
    book.measures.put(item);
    let mut window = WindowBuilder::of([1360.0, 900.0]).with_book(book).open();
    go(&mut window, Area::Findings);
    assert!(says(&window, "measure white scoop"));
    assert!(!says(&window, "new-measure-3"));
}

/// Two scoops of a powder in water: nobody has weighed the scoop.
fn scooped(readings: &[f64]) -> Book {
    let mut book = Book::default();
    let water = crate::sample::water();
    let mut powder = crate::sample::ingredient(
        "barley",
        Form::Powder,
        Role::Flavour,
        &[
            (evensip::book::Nutrient::Fat, 4.0),
            (evensip::book::Nutrient::Carbohydrate, 86.0),
            (evensip::book::Nutrient::Sugars, 61.0),
            (evensip::book::Nutrient::Protein, 3.0),
        ],
    );
    powder.bulk_density = Some(Figure::new(0.6, Evidence::Assumed));
    let mut scoop = measure(
        "scoop",
        evensip::book::MeasureKind::Scoop,
        evensip::book::Nominal::Volume(15.0),
    );
    scoop.readings = readings
        .iter()
        .map(|grams| Reading {
            ingredient: Some(powder.id.clone()),
            uses: 1,
            amount: evensip::book::ReadingAmount::Grams(*grams),
            date: None,
        })
        .collect();
    let mut first = line("powder", "barley", 0.0, 21.0, Role::Flavour);
    if let evensip::book::Entry::Line(line) = &mut first {
        line.amount = evensip::book::Amount::Count(2.0, scoop.id.clone());
    }
    let mut drink = recipe(vec![
        first,
        line("water", "water", 300.0, 80.0, Role::Water),
    ]);
    let cup = cup("cup", 12.0, 1.4);
    drink.cup = Some(cup.id.clone());
    book.ingredients.put(water);
    book.ingredients.put(powder);
    book.measures.put(scoop);
    book.vessels.put(cup);
    book.recipes.put(drink);
    book
}

fn ranked(book: &Book) -> Vec<ToMeasure> {
    let mut sums = Narrowing::of(book);
    for recipe in &book.recipes {
        if recipe.cup.is_some() {
            sums.add(&Arc::new(balance_version(book, recipe, None).unwrap()));
        }
    }
    sums.ranked()
}

#[test]
fn what_does_most_for_the_drinks_comes_first_and_less_of_it_is_left_once_it_is_measured() {
    for book in [sample(), scooped(&[])] {
        let found = ranked(&book);
        let parts: Vec<f64> = found.iter().filter_map(|found| found.part).collect();
        assert!(!parts.is_empty());
        assert!(
            parts.iter().all(|part| (0.0..=1.0).contains(part)),
            "{parts:?}"
        );
        assert!(parts.is_sorted_by(|a, b| a >= b), "{parts:?}");
        assert!(found.iter().all(|found| found.drinks > 0));
    }
    let weight = |book: &Book| -> f64 {
        let of_scoop = |found: &&ToMeasure| match &found.what {
            Doubtful::Cause(cause) => matches!(
                cause,
                evensip::balance::Cause::Calibration(..) | evensip::balance::Cause::BulkDensity(_)
            ),
            Doubtful::NoMass(..) => true,
        };
        let found = ranked(book);
        found
            .iter()
            .filter(of_scoop)
            .filter_map(|found| found.part)
            .sum()
    };
    let before = scooped(&[]);
    let first = &ranked(&before)[0];
    assert!(
        matches!(
            &first.what,
            Doubtful::Cause(
                evensip::balance::Cause::BulkDensity(_) | evensip::balance::Cause::Calibration(..)
            )
        ),
        "{:?}",
        first.what
    );
    let after = scooped(&[8.9, 9.1, 8.8, 9.0, 9.2, 8.9, 9.1, 9.0, 8.8, 9.0]);
    assert!(weight(&after) < 0.2 * weight(&before));
}

#[test]
fn what_nobody_can_weigh_comes_before_what_is_only_doubtful() {
    let mut book = scooped(&[]);
    let mut powder = book.ingredients.iter().nth(1).unwrap().as_ref().clone();
    powder.bulk_density = None;
    book.ingredients.put(powder);
    let found = ranked(&book);
    assert!(
        matches!(found[0].what, Doubtful::NoMass(..)),
        "{:?}",
        found[0].what
    );
    assert_eq!(found[0].part, None);
}

#[test]
fn measure_first_is_on_the_page_of_the_shop_and_leads_to_the_form() {
    let mut window = WindowBuilder::of([1360.0, 1000.0])
        .with_book(scooped(&[]))
        .open();
    go(&mut window, Area::Counter);
    window.state_mut().areas_mut().counter.look_at(Kind::Shop);
    eventually(&mut window, "the drinks are compared", |window| {
        says(window, "narrows the figures of your drink")
    });
    let words = "The poured density of barley";
    assert!(has(&window, words) || says(&window, "What one use of the scoop"));
    if has(&window, words) {
        click(&mut window, words);
        settle(&mut window);
        let open = window.state().areas().counter.open.clone();
        let barley = IngredientId::new("barley").unwrap();
        assert_eq!(open, Some(CounterItem::Ingredient(barley)));
        assert!(!text_of(&window, "Poured bulk density").is_empty());
    }
}
