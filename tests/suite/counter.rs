//! The counter from outside: a person measures a pump, reads a label, and keeps the shop's ingredients in order.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{
    Allergen, Basis, Book, Evidence, Ingredient, IngredientId, MeasureId, Nutrient, VesselId,
};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};
use evensip::ui::theme::Appearance;

use crate::at_the_window::{
    MIDDLE, NARROW, Size, WIDE, Window, WindowBuilder, at_the_counter as open, book, choose, click,
    focus, go, has, look, press, says, settle, text_of, tick, type_into, undo, window_of,
};
use crate::sample::sample;

/// A window on what the shop has.
fn counter(size: Size) -> Window {
    let mut window = window_of(size);
    go(&mut window, Area::Counter);
    window
}

fn window() -> Window {
    counter(MIDDLE)
}

fn look_at(window: &mut Window, kind: Kind) {
    window.state_mut().areas_mut().counter.look_at(kind);
    settle(window);
}

fn ingredient(id: &str) -> IngredientId {
    IngredientId::new(id).unwrap()
}

#[test]
fn a_new_person_measures_a_pump_and_reads_what_a_press_weighs() {
    let mut window = window();
    look_at(&mut window, Kind::Measures);
    click(&mut window, "New measure");
    type_into(&mut window, "Name", "plum pump");
    choose(&mut window, "Kind: scoop", "pump");
    assert!(says(&window, "Weigh ten presses together"));
    for (number, grams) in [(1, "98"), (2, "102,0")] {
        type_into(&mut window, "Add readings", grams);
        press(&mut window, Modifiers::NONE, Key::Enter);
        let shown = text_of(&window, &format!("Amount of reading {number}"));
        assert!(shown.ends_with(" g"), "{shown}");
    }
    let pump = window
        .state()
        .workbench()
        .book()
        .measure(&MeasureId::new("new-measure").unwrap())
        .unwrap()
        .clone();
    assert_eq!((pump.name.as_str(), pump.readings.len()), ("plum pump", 2));
    // The same two readings as in the book's own test: 10 g a press, u = 0.2 g, one press scatters by √0.8 g.
    let calibration = pump.calibration(None).unwrap();
    assert!(
        (calibration.grams - 10.0).abs() < 1e-12
            && (calibration.u_mean.unwrap() - 0.2).abs() < 1e-12
    );
    assert!(has(&window, "1 press = 10.0") || has(&window, "1 press = 10.00"));
    assert!(says(
        &window,
        "one press varies by 0.9 g (8.9 %); 2 readings with 20 presses in total"
    ));
    assert!(says(
        &window,
        "weigh 60 presses more to halve the uncertainty"
    ));
}

#[test]
fn a_label_per_serving_with_sodium_and_kilocalories_becomes_the_figures_of_the_book() {
    let mut window = window();
    click(&mut window, "New ingredient");
    choose(&mut window, "Figures are per: 100 g", "serving");
    type_into(&mut window, "Grams of a serving", "16");
    choose(&mut window, "Energy is printed in: kJ", "kcal");
    choose(&mut window, "Salt is printed as: salt", "sodium");
    type_into(&mut window, "label: energy", "70");
    type_into(&mut window, "label: sodium", "40");
    type_into(&mut window, "label: sugars", "9,3");
    let book = book(&window);
    let item = book.ingredient(&ingredient("new-ingredient")).unwrap();
    assert_eq!(item.composition.basis, Basis::PerServing(16.0));
    let value = |nutrient| item.composition.get(nutrient).unwrap().value;
    // 70 kcal × 4.184; 40 mg sodium × 2.5.
    assert!((value(Nutrient::Energy) - 292.88).abs() < 1e-9);
    assert!((value(Nutrient::Salt) - 0.1).abs() < 1e-12);
    // 9.3 g in 16 g are 58.1 g in 100 g.
    assert!(has(&window, "58.1 per 100 g"));
    assert_eq!(
        item.composition.get(Nutrient::Fat),
        None,
        "what is not stated is not zero"
    );
    assert!(says(&window, "fat: not stated"));
    assert_eq!(text_of(&window, "label: energy"), "70");
}

#[test]
fn emptying_a_figure_takes_the_statement_back_and_nonsense_stays_a_draft() {
    let mut window = window();
    open(
        &mut window,
        CounterItem::Ingredient(ingredient("tambrel-chestnut")),
    );
    let sugars = |window: &Window| {
        let book = window.state().workbench().book();
        book.ingredient(&ingredient("tambrel-chestnut"))
            .unwrap()
            .composition
            .get(Nutrient::Sugars)
    };
    let before = sugars(&window);
    type_into(&mut window, "label: sugars", "plenty");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(sugars(&window), before);
    assert_eq!(text_of(&window, "label: sugars"), "plenty");
    assert!(says(&window, "not changed"));
    focus(&mut window, "label: sugars");
    press(&mut window, Modifiers::COMMAND, Key::A);
    press(&mut window, Modifiers::NONE, Key::Backspace);
    assert_eq!(sugars(&window), None);
    assert!(says(&window, "sugars: not stated"));
    undo(&mut window);
    assert_eq!(sugars(&window), before);
}

#[test]
fn typing_a_figure_is_one_step_and_undo_comes_back_to_the_item() {
    let mut window = window();
    open(
        &mut window,
        CounterItem::Ingredient(ingredient("tambrel-chestnut")),
    );
    for digits in ["6", "0", ",", "5"] {
        type_into(&mut window, "label: sugars", digits);
    }
    go(&mut window, Area::Recipe);
    undo(&mut window);
    assert!(window.state().workbench().undo_label().is_none());
    assert_eq!(window.state().view().area, Area::Counter);
    assert!(has(&window, "label: sugars"));
}

#[test]
fn typing_a_name_is_one_step_as_well() {
    let mut window = window();
    open(&mut window, CounterItem::Ingredient(ingredient("water")));
    for letters in ["Tap", " wa", "ter"] {
        type_into(&mut window, "Name", letters);
    }
    undo(&mut window);
    assert!(
        window.state().workbench().undo_label().is_none(),
        "{:?}",
        window.state().workbench().undo_label()
    );
}

#[test]
fn what_is_in_use_is_not_deleted_and_the_sentence_says_where() {
    let mut window = window();
    for (item, name) in [
        (
            CounterItem::Ingredient(ingredient("tambrel-chestnut")),
            "Tambrel chestnut powder can't be deleted, because it is used in Hob & Ember",
        ),
        (
            CounterItem::Measure(MeasureId::new("chestnut-scoop").unwrap()),
            "The brown scoop can't be deleted, because it is used in Hob & Ember",
        ),
    ] {
        let stamp = window.state().workbench().stamp();
        open(&mut window, item.clone());
        click(&mut window, "Delete");
        assert_eq!(window.state().workbench().stamp(), stamp);
        assert!(says(&window, name), "{name}");
        assert_eq!(window.state().areas().counter.open, Some(item));
    }
}

#[test]
fn what_nothing_needs_is_deleted_and_undo_brings_it_back() {
    let mut window = window();
    click(&mut window, "New ingredient");
    let id = ingredient("new-ingredient");
    assert!(window.state().workbench().book().ingredient(&id).is_some());
    click(&mut window, "Delete");
    assert!(window.state().workbench().book().ingredient(&id).is_none());
    assert_eq!(window.state().areas().counter.open, None);
    undo(&mut window);
    assert!(window.state().workbench().book().ingredient(&id).is_some());
}

#[test]
fn another_brand_begins_as_a_copy_under_an_id_of_its_own() {
    let mut window = window();
    open(
        &mut window,
        CounterItem::Ingredient(ingredient("tambrel-chestnut")),
    );
    click(&mut window, "Duplicate as another brand");
    window.run();
    type_into(&mut window, "Brand", "Velloom");
    let book = book(&window);
    let (from, copy) = (
        book.ingredient(&ingredient("tambrel-chestnut")).unwrap(),
        book.ingredient(&ingredient("chestnut-powder")).unwrap(),
    );
    assert_eq!((copy.brand.as_str(), copy.lot.as_str()), ("Velloom", ""));
    let flavours = |item: &Ingredient| -> Vec<String> {
        let flavours = item.composition.flavours.iter();
        flavours.map(|flavour| flavour.name.clone()).collect()
    };
    assert_eq!(flavours(copy), flavours(from));
    assert_eq!((copy.form, copy.role), (from.form, from.role));
    assert!(
        copy.composition.printed.is_empty(),
        "a label is of one pack"
    );
    assert_eq!(from.brand, "Tambrel");
}

#[test]
fn contains_none_is_another_statement_than_none_at_all() {
    // High enough that the boxes are in sight.
    let mut window = counter([1360.0, 1900.0]);
    click(&mut window, "New ingredient");
    let stated = |window: &Window| {
        window
            .state()
            .workbench()
            .book()
            .ingredient(&ingredient("new-ingredient"))
            .unwrap()
            .allergens
            .clone()
    };
    assert_eq!(stated(&window), None);
    choose(
        &mut window,
        "Allergens: the pack says nothing",
        "the pack states them",
    );
    assert!(stated(&window).is_some_and(|stated| stated.contains.is_empty()));
    assert!(has(&window, "contains none of the fourteen"));
    tick(&mut window, "contains milk");
    assert_eq!(stated(&window).unwrap().contains, [Allergen::Milk]);
}

/// The sample book behind many other ingredients.
fn large_book(count: usize) -> Book {
    let mut book = sample();
    let own = std::mem::take(&mut book.ingredients);
    for number in 0..count {
        let id = ingredient(&format!("extra-{number}"));
        book.ingredients.put(Ingredient {
            brand: "Ondry".to_owned(),
            ..Ingredient::new(id, format!("Powder {number}"))
        });
    }
    for item in &own {
        book.ingredients.put(item.as_ref().clone());
    }
    book
}

#[test]
fn of_five_thousand_ingredients_only_the_rows_in_sight_are_drawn() {
    let mut window = WindowBuilder::of(MIDDLE).with_book(large_book(5000)).open();
    go(&mut window, Area::Counter);
    let drawn = window.query_all_by_label_contains("Powder").count();
    assert!((10..60).contains(&drawn), "{drawn} rows");
    type_into(&mut window, "Find ingredients", "ondry 4321");
    assert_eq!(window.query_all_by_label_contains("Powder").count(), 1);
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(ingredient("extra-4321")))
    );
}

#[test]
fn the_list_is_walked_with_the_arrows_opened_with_enter_and_left_with_escape() {
    let mut window = window();
    focus(&mut window, "Find ingredients");
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    for _ in 0..2 {
        press(&mut window, Modifiers::NONE, Key::ArrowDown);
    }
    press(&mut window, Modifiers::NONE, Key::Enter);
    let third = window
        .state()
        .workbench()
        .book()
        .ingredients
        .iter()
        .nth(2)
        .unwrap()
        .id
        .clone();
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(third))
    );
    assert!(window.get_by_label("Name").is_focused());
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(window.state().areas().counter.open.is_some());
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    let fourth = window
        .state()
        .workbench()
        .book()
        .ingredients
        .iter()
        .nth(3)
        .unwrap()
        .id
        .clone();
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(fourth))
    );
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(window.state().areas().counter.open, None);
    press(&mut window, Modifiers::NONE, Key::Escape);
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(window.state().view().area, Area::Recipe);
}

#[test]
fn a_heading_sorts_and_gaps_come_last() {
    let mut window = window();
    click(&mut window, "Sort by sugars per 100 g");
    click(&mut window, "Sort by sugars per 100 g");
    let names: Vec<String> = window
        .get_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .skip_while(|label| !label.starts_with("Sort by last"))
        .skip(1)
        .collect();
    assert!(
        names[0].starts_with("House sweetener, crystals"),
        "{names:?}"
    );
}

#[test]
fn a_click_on_a_use_goes_to_the_recipe() {
    let mut window = window();
    open(
        &mut window,
        CounterItem::Ingredient(ingredient("ketterby-chestnut")),
    );
    click(&mut window, "Hob & Ember, with Ketterby chestnut");
    assert_eq!(window.state().view().area, Area::Recipe);
    let shown = window
        .state()
        .view()
        .shown_in(window.state().workbench().book())
        .unwrap();
    assert_eq!(
        shown.version.map(|version| version.to_string()).as_deref(),
        Some("ketterby")
    );
}

#[test]
fn a_step_of_the_shops_own_stands_until_it_is_reset() {
    let mut window = window();
    look_at(&mut window, Kind::Shop);
    type_into(&mut window, "Part of sweetness in percent", "12,5");
    let steps = |window: &Window| window.state().workbench().book().settings.steps.clone();
    assert!((steps(&window)[0].fraction - 0.125).abs() < 1e-12);
    // Floor and weight begin as the published ones.
    assert!(
        (steps(&window)[0].floor - 0.3).abs() < 1e-12
            && (steps(&window)[0].weight - 1.0).abs() < 1e-12
    );
    click(&mut window, "Reset");
    assert!(steps(&window).is_empty());
}

#[test]
fn the_counter_is_drawn_in_every_appearance_and_width_without_a_panic() {
    let sheets = [
        CounterItem::Ingredient(ingredient("tambrel-chestnut")),
        CounterItem::Ingredient(ingredient("ondry-creamer")),
        CounterItem::Measure(MeasureId::new("cocoa-scoop").unwrap()),
        CounterItem::Vessel(VesselId::new("paper-cup-500").unwrap()),
    ];
    for size in [WIDE, MIDDLE, NARROW] {
        let mut window = counter(size);
        for appearance in Appearance::ALL {
            look(&mut window, appearance);
            for kind in Kind::ALL {
                look_at(&mut window, kind);
            }
            for sheet in sheets.clone() {
                open(&mut window, sheet);
            }
        }
    }
}

#[test]
fn an_ingredient_begins_with_the_figures_of_a_published_table_and_says_which() {
    let mut window = window();
    click(&mut window, "From a published table…");
    click(&mut window, "Agave syrup");
    let book = window.state().workbench().book();
    let found = book
        .ingredients
        .iter()
        .find(|ingredient| ingredient.name == "Agave syrup")
        .unwrap();
    // USDA SR28, NDB 19912.
    assert!(found.note.contains("NDB 19912"), "{}", found.note);
    let sugars = found.composition.get(Nutrient::Sugars).unwrap();
    assert!((sugars.value - 68.03).abs() < 1e-9);
    assert_eq!(sugars.evidence, Evidence::Published);
    assert_eq!(found.allergens, None, "a table knows no pack");
}

#[test]
fn the_published_ingredients_are_in_order_and_every_one_names_its_food() {
    let book = evensip::workbench::published_ingredients().unwrap();
    assert!(book.ingredients.len() > 20);
    assert_eq!(evensip::book::findings(book), []);
    for ingredient in &book.ingredients {
        let named = ingredient.note.contains("NDB ") || ingredient.note.contains("FDC ");
        assert!(named, "{}: {}", ingredient.id, ingredient.note);
        let figures = ingredient.composition.printed.values();
        assert!(
            figures
                .clone()
                .all(|figure| figure.evidence == Evidence::Published)
        );
    }
}
