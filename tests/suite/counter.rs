//! The counter from outside: a person measures a pump, reads a label, and keeps the shop's ingredients in order.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{Key, Modifiers, Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Allergen, Basis, Evidence, IngredientId, MeasureId, Nutrient, VesselId};
use evensip::ui::counter_area::{CounterItem, Kind};
use evensip::ui::theme::Appearance;
use evensip::ui::{App, Area, Opening};
use evensip::workbench::NoPicker;

use crate::picture::{CpuRenderer, keep};

pub(crate) type Window = Harness<'static, App>;

pub(crate) fn window_of(size: [f32; 2], path: Option<PathBuf>) -> Window {
    let mut window = Harness::builder()
        .with_size(vec2(size[0], size[1]))
        .with_max_steps(24)
        .renderer(CpuRenderer::default())
        .build_eframe(|cc| App::with_picker(cc, Opening { path }, Arc::new(NoPicker)));
    window.run();
    window.state_mut().view_mut().area = Area::Counter;
    window.run();
    window
}

fn window() -> Window {
    window_of([1360.0, 860.0], None)
}

fn open(window: &mut Window, item: CounterItem) {
    window.state_mut().areas_mut().counter.show(item);
    window.run();
}

fn ingredient(id: &str) -> IngredientId {
    IngredientId::new(id).unwrap()
}

fn type_into(window: &mut Window, field: &str, text: &str) {
    window.get_by_label(field).focus();
    window.run();
    window.get_by_label(field).type_text(text);
    window.run();
}

fn press(window: &mut Window, key: Key) {
    window.key_press_modifiers(Modifiers::NONE, key);
    window.run();
}

fn undo(window: &mut Window) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
}

fn click(window: &mut Window, label: &str) {
    window.get_by_role_and_label(Role::Button, label).click();
    window.run();
}

/// Opens the menu behind a word and takes one of its words.
fn choose(window: &mut Window, menu: &str, word: &str) {
    click(window, menu);
    window
        .get_all_by_role_and_label(Role::Button, word)
        .last()
        .unwrap()
        .click();
    window.run();
}

#[test]
fn a_new_person_measures_a_pump_and_reads_what_a_press_weighs() {
    let mut window = window();
    window
        .state_mut()
        .areas_mut()
        .counter
        .look_at(Kind::Measures);
    window.run();
    click(&mut window, "New measure");
    type_into(&mut window, "Name", "plum pump");
    choose(&mut window, "Kind: scoop", "pump");
    assert!(
        window
            .query_by_label_contains("Weigh ten presses together")
            .is_some()
    );
    for (number, grams) in [(1, "98"), (2, "102,0")] {
        click(&mut window, "Add a reading");
        type_into(&mut window, &format!("Grams of reading {number}"), grams);
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
    assert!(
        window.query_by_label("1 press = 10.0").is_some()
            || window.query_by_label("1 press = 10.00").is_some()
    );
    assert!(
        window
            .query_by_label_contains(
                "one press varies by 0.9 g (8.9 %); 2 readings with 20 presses in total"
            )
            .is_some()
    );
    assert!(
        window
            .query_by_label_contains("weigh 60 presses more to halve the uncertainty")
            .is_some()
    );
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
    let book = window.state().workbench().book().clone();
    let item = book.ingredient(&ingredient("new-ingredient")).unwrap();
    assert_eq!(item.composition.basis, Basis::PerServing(16.0));
    let value = |nutrient| item.composition.get(nutrient).unwrap().value;
    // 70 kcal × 4.184; 40 mg sodium × 2.5.
    assert!((value(Nutrient::Energy) - 292.88).abs() < 1e-9);
    assert!((value(Nutrient::Salt) - 0.1).abs() < 1e-12);
    // 9.3 g in 16 g are 58.1 g in 100 g.
    assert!(window.query_by_label("58.1 per 100 g").is_some());
    assert_eq!(
        item.composition.get(Nutrient::Fat),
        None,
        "what is not stated is not zero"
    );
    assert!(window.query_by_label_contains("fat: not stated").is_some());
    assert_eq!(
        window.get_by_label("label: energy").value().as_deref(),
        Some("70")
    );
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
    press(&mut window, Key::Tab);
    assert_eq!(sugars(&window), before);
    assert_eq!(
        window.get_by_label("label: sugars").value().as_deref(),
        Some("plenty")
    );
    assert!(window.query_by_label_contains("not changed").is_some());
    window.get_by_label("label: sugars").focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    press(&mut window, Key::Backspace);
    assert_eq!(sugars(&window), None);
    assert!(
        window
            .query_by_label_contains("sugars: not stated")
            .is_some()
    );
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
        window.get_by_label("label: sugars").focus();
        window.run();
        window.get_by_label("label: sugars").type_text(digits);
        window.run();
    }
    window.state_mut().view_mut().area = Area::Recipe;
    window.run();
    undo(&mut window);
    assert!(window.state().workbench().undo_label().is_none());
    assert_eq!(window.state().view().area, Area::Counter);
    assert!(window.query_by_label("label: sugars").is_some());
}

#[test]
fn typing_a_name_is_one_step_as_well() {
    let mut window = window();
    open(&mut window, CounterItem::Ingredient(ingredient("water")));
    for letters in ["Tap", " wa", "ter"] {
        window.get_by_label("Name").focus();
        window.run();
        window.get_by_label("Name").type_text(letters);
        window.run();
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
        assert!(window.query_by_label_contains(name).is_some(), "{name}");
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
    let book = window.state().workbench().book().clone();
    let (from, copy) = (
        book.ingredient(&ingredient("tambrel-chestnut")).unwrap(),
        book.ingredient(&ingredient("chestnut-powder")).unwrap(),
    );
    assert_eq!((copy.brand.as_str(), copy.lot.as_str()), ("Velloom", ""));
    assert_eq!(copy.composition, from.composition);
    assert_eq!(from.brand, "Tambrel");
}

#[test]
fn contains_none_is_another_statement_than_none_at_all() {
    // High enough that the boxes are in sight.
    let mut window = window_of([1360.0, 1900.0], None);
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
    assert!(
        window
            .query_by_label("contains none of the fourteen")
            .is_some()
    );
    window
        .get_by_role_and_label(Role::CheckBox, "contains milk")
        .click();
    window.run();
    assert_eq!(stated(&window).unwrap().contains, [Allergen::Milk]);
}

/// The sample book with many more ingredients, as a file.
fn large_book(folder: &std::path::Path, count: usize) -> PathBuf {
    let text = include_str!("../../sample-books/harrowmere.ron");
    let row = |number| {
        format!(
            "(id: \"extra-{number}\", name: \"Powder {number}\", brand: \"Ondry\", form: Powder, role: Flavour),"
        )
    };
    let many = (0..count).map(row).collect::<Vec<String>>().concat();
    let path = folder.join("large.ron");
    std::fs::write(
        &path,
        text.replacen(
            "    ingredients: [",
            &format!("    ingredients: [{many}"),
            1,
        ),
    )
    .unwrap();
    path
}

#[test]
fn of_five_thousand_ingredients_only_the_rows_in_sight_are_drawn() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window_of([1360.0, 860.0], Some(large_book(folder.path(), 5000)));
    assert!(
        window.state().workbench().book().ingredients.len() > 5000,
        "{:?}",
        window.state().workbench().message()
    );
    let drawn = window.query_all_by_label_contains("Powder").count();
    assert!((10..60).contains(&drawn), "{drawn} rows");
    type_into(&mut window, "Find ingredients", "ondry 4321");
    assert_eq!(window.query_all_by_label_contains("Powder").count(), 1);
    press(&mut window, Key::Enter);
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(ingredient("extra-4321")))
    );
}

#[test]
fn the_list_is_walked_with_the_arrows_opened_with_enter_and_left_with_escape() {
    let mut window = window();
    window.get_by_label("Find ingredients").focus();
    window.run();
    press(&mut window, Key::ArrowDown);
    for _ in 0..2 {
        press(&mut window, Key::ArrowDown);
    }
    press(&mut window, Key::Enter);
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
    press(&mut window, Key::Escape);
    assert!(window.state().areas().counter.open.is_some());
    press(&mut window, Key::ArrowDown);
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
    press(&mut window, Key::Escape);
    assert_eq!(window.state().areas().counter.open, None);
    press(&mut window, Key::Escape);
    press(&mut window, Key::Escape);
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
    window.state_mut().areas_mut().counter.look_at(Kind::Shop);
    window.run();
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

const SIZES: [(&str, [f32; 2]); 3] = [
    ("wide", [1920.0, 1080.0]),
    ("middle", [1360.0, 860.0]),
    ("narrow", [1024.0, 700.0]),
];

#[test]
fn the_counter_is_drawn_in_both_appearances_and_every_width() {
    for (width, size) in SIZES {
        let mut window = window_of(size, None);
        for appearance in [Appearance::Light, Appearance::Dark] {
            window.state_mut().view_mut().appearance = appearance;
            let items = [
                ("list", None),
                (
                    "ingredient",
                    Some(CounterItem::Ingredient(ingredient("tambrel-chestnut"))),
                ),
                (
                    "creamer",
                    Some(CounterItem::Ingredient(ingredient("ondry-creamer"))),
                ),
                (
                    "measure",
                    Some(CounterItem::Measure(MeasureId::new("cocoa-scoop").unwrap())),
                ),
                (
                    "vessel",
                    Some(CounterItem::Vessel(VesselId::new("paper-cup-500").unwrap())),
                ),
                ("shop", None),
            ];
            for (name, item) in items {
                let counter = &mut window.state_mut().areas_mut().counter;
                counter.look_at(if name == "shop" {
                    Kind::Shop
                } else {
                    Kind::Ingredients
                });
                counter.open = None;
                if let Some(item) = item {
                    counter.show(item);
                }
                window.run();
                if std::env::var_os("EVENSIP_PICTURES").is_some() {
                    let appearance = if appearance == Appearance::Light {
                        "light"
                    } else {
                        "dark"
                    };
                    keep(
                        &window.render().expect("meshes only"),
                        &format!("counter-{name}-{appearance}-{width}"),
                    );
                }
            }
        }
    }
}

#[test]
fn an_ingredient_begins_with_the_figures_of_a_published_table_and_says_which() {
    let mut window = window();
    window.get_by_label("From a published table…").click();
    window.run();
    window
        .get_by_role_and_label(Role::Button, "Agave syrup")
        .click();
    window.run();
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
