//! A step that is undone leads back to where it was: to the very field, menu or box, whatever is in front meanwhile.

use std::collections::BTreeSet;

use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::Node;
use egui_kittest::kittest::NodeT as _;
use evensip::book::{Book, Figure, IngredientId, LineId, MeasureId, Nutrient, RecipeId, VesselId};
use evensip::book_file::{built_in_book, write};
use evensip::edit::{Edit, apply};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{
    Window, WindowBuilder, at_the_counter, click, focus, go as show_area, has, press, show, tick,
    type_on, undo,
};

/// What is typed where a step is wanted: one of them is taken by every field of the book.
const TYPED: [&str; 4] = ["7", "2024-05-04", "7 g", "3.40 for 800 g"];

/// A window so high that everything is in sight, with a place of the book in front; a drink is in a cup with readings.
fn window(go: impl Fn(&mut Window)) -> (Window, tempfile::TempDir) {
    window_with(built_in_book().unwrap(), go)
}

fn window_with(mut book: Book, go: impl Fn(&mut Window)) -> (Window, tempfile::TempDir) {
    let recipe = book.recipe(&RecipeId::new("hazelthwaite").unwrap());
    let mut recipe = recipe.unwrap().as_ref().clone();
    recipe.cup = Some(VesselId::new("stoneware-mug").unwrap());
    book.recipes.put(recipe);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("shop.ron");
    std::fs::write(&path, write(&book)).unwrap();
    let mut window = WindowBuilder::of([1500.0, 3200.0]).with_file(path).open();
    go(&mut window);
    (window, folder)
}

/// The labels of the nodes of some roles that no other node has.
fn labels(window: &Window, roles: &[Role]) -> Vec<String> {
    let (mut once, mut twice) = (BTreeSet::new(), BTreeSet::new());
    let nodes = window.root().children_recursive();
    let nodes = nodes.filter(|node| roles.contains(&node.accesskit_node().role()));
    for label in nodes.filter_map(|node| node.accesskit_node().label()) {
        if !once.insert(label.clone()) {
            twice.insert(label);
        }
    }
    once.difference(&twice).cloned().collect()
}

fn undo_label(window: &Window) -> Option<String> {
    window.state().workbench().undo_label()
}

fn focused(window: &Window) -> Option<String> {
    let node = window.root().children_recursive().find(Node::is_focused)?;
    node.accesskit_node().label()
}

/// Goes elsewhere, takes the last step back, and says where the keyboard is.
fn undone_from_elsewhere(window: &mut Window, go: &impl Fn(&mut Window)) -> Option<String> {
    show_area(window, Area::Findings);
    show(window, "copper-plum", None);
    undo(window);
    assert_eq!(undo_label(window), None);
    let found = focused(window);
    press(window, Modifiers::NONE, Key::Escape);
    go(window);
    found
}

/// Makes a step in each field of what is in front and takes it back; tells which of them made one.
fn fields_are_found_again(go: impl Fn(&mut Window)) -> Vec<String> {
    let (mut window, _folder) = window(&go);
    let mut found = Vec::new();
    for field in labels(&window, &[Role::TextInput, Role::MultilineTextInput]) {
        for text in TYPED {
            if !has(&window, &field) {
                break;
            }
            focus(&mut window, &field);
            press(&mut window, Modifiers::COMMAND, Key::A);
            type_on(&mut window, text);
            if undo_label(&window).is_some() {
                assert_eq!(
                    undone_from_elsewhere(&mut window, &go).as_ref(),
                    Some(&field),
                    "the step of a field"
                );
                found.push(field.clone());
                break;
            }
            press(&mut window, Modifiers::NONE, Key::Escape);
            go(&mut window);
        }
    }
    found
}

/// The same for boxes that are ticked.
fn boxes_are_found_again(go: impl Fn(&mut Window)) -> Vec<String> {
    let (mut window, _folder) = window(&go);
    let mut found = Vec::new();
    for label in labels(&window, &[Role::CheckBox]) {
        tick(&mut window, &label);
        if undo_label(&window).is_some() {
            let led_to = undone_from_elsewhere(&mut window, &go);
            assert_eq!(led_to.as_ref(), Some(&label), "the step of a box");
            found.push(label);
        }
    }
    found
}

/// The same for words that open a menu, each of which is named "what it is: the word".
fn menus_are_found_again(go: impl Fn(&mut Window)) -> Vec<String> {
    let (mut window, _folder) = window(&go);
    let mut found = Vec::new();
    let menus = labels(&window, &[Role::Button]);
    let is_menu = |label: &&String| label.contains(": ") && !label.starts_with("Copy the table");
    for menu in menus.iter().filter(is_menu) {
        let before = labels(&window, &[Role::Button]);
        if !has(&window, menu) {
            continue;
        }
        click(&mut window, menu);
        let (_, chosen) = menu.split_once(": ").unwrap();
        let choices = labels(&window, &[Role::Button]);
        let other = choices
            .into_iter()
            .find(|word| !before.contains(word) && word != chosen && word != "approved…");
        let Some(other) = other else {
            press(&mut window, Modifiers::NONE, Key::Escape);
            go(&mut window);
            continue;
        };
        click(&mut window, &other);
        if undo_label(&window).is_some() {
            let led_to = undone_from_elsewhere(&mut window, &go);
            assert_eq!(led_to.as_ref(), Some(menu), "the step of a menu");
            found.push(menu.clone());
        }
    }
    found
}

/// The same for a link that adds something.
fn link_is_found_again(go: impl Fn(&mut Window), link: &str) {
    link_of_is_found_again(built_in_book().unwrap(), go, link);
}

fn link_of_is_found_again(book: Book, go: impl Fn(&mut Window), link: &str) {
    let (mut window, _folder) = window_with(book, &go);
    click(&mut window, link);
    assert!(undo_label(&window).is_some());
    let led_to = undone_from_elsewhere(&mut window, &go);
    assert_eq!(led_to.as_deref(), Some(link));
}

/// So many are not passed over by chance.
fn at_least(count: usize, found: &[String]) {
    assert!(found.len() >= count, "only {found:?}");
}

/// The drink that a place is looked at with, and the area in front.
fn at(recipe: &'static str, area: Area) -> impl Fn(&mut Window) {
    move |window: &mut Window| {
        show(window, recipe, None);
        show_area(window, area);
    }
}

#[test]
fn the_fields_and_menus_of_a_recipe_and_its_line_are_found_again() {
    let go = |window: &mut Window| {
        at("hob-and-ember", Area::Recipe)(window);
        window.state_mut().view_mut().line_in_hand = Some(LineId::new("powder").unwrap());
        window.run();
    };
    at_least(8, &fields_are_found_again(go));
    at_least(4, &menus_are_found_again(go));
    at_least(1, &boxes_are_found_again(at("pear-drift", Area::Recipe)));
}

#[test]
fn the_name_of_a_version_is_found_again_with_its_version() {
    let (mut window, _folder) = window(|_| ());
    show(&mut window, "hazelthwaite", Some("soy"));
    focus(&mut window, "Name of the version");
    type_on(&mut window, "7");
    assert!(undo_label(&window).is_some());
    let found = undone_from_elsewhere(&mut window, &|_| ());
    assert_eq!(found.as_deref(), Some("Name of the version"));
}

#[test]
fn what_is_filled_in_of_an_ingredient_is_found_again() {
    let ingredient = |window: &mut Window| {
        let id = IngredientId::new("tambrel-chestnut").unwrap();
        at_the_counter(window, CounterItem::Ingredient(id));
    };
    at_least(30, &fields_are_found_again(ingredient));
    at_least(15, &menus_are_found_again(ingredient));
    at_least(20, &boxes_are_found_again(ingredient));
    link_is_found_again(ingredient, "Add a flavour");
}

/// A book in which the label of a product of an approved drink has changed since, and that product.
fn relabelled() -> (Book, IngredientId) {
    let book = built_in_book().unwrap();
    let changed = book.ingredients.iter().find_map(|item| {
        let (id, mut item) = (item.id.clone(), item.as_ref().clone());
        let sugars = item.composition.get(Nutrient::Sugars)?;
        let value = 0.9 * sugars.value;
        item.composition
            .state(Nutrient::Sugars, Figure { value, ..sugars });
        let after = apply(&book, &Edit::PutIngredient(item)).ok()?;
        let is_kept = after.ingredient(&id)?.earlier.latest().is_some();
        is_kept.then_some((after, id))
    });
    changed.unwrap()
}

#[test]
fn what_was_put_right_of_an_earlier_state_is_found_again() {
    let (book, id) = relabelled();
    let ingredient =
        |window: &mut Window| at_the_counter(window, CounterItem::Ingredient(id.clone()));
    link_of_is_found_again(book, ingredient, "The earlier figures were wrong");
}

#[test]
fn what_is_filled_in_of_a_measure_and_of_a_cup_is_found_again() {
    let measure = |window: &mut Window| {
        let id = MeasureId::new("spoon-7").unwrap();
        at_the_counter(window, CounterItem::Measure(id));
    };
    at_least(6, &fields_are_found_again(measure));
    at_least(3, &menus_are_found_again(measure));
    let (mut window, _folder) = window(measure);
    focus(&mut window, "Add readings");
    type_on(&mut window, "35 g");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(undo_label(&window).is_some());
    let led_to = undone_from_elsewhere(&mut window, &measure);
    assert_eq!(led_to.as_deref(), Some("Add readings"));
    let cup = |window: &mut Window| {
        let id = VesselId::new("paper-cup-500").unwrap();
        at_the_counter(window, CounterItem::Vessel(id));
    };
    at_least(10, &fields_are_found_again(cup));
    at_least(2, &menus_are_found_again(cup));
    link_is_found_again(cup, "Add a closure");
    link_is_found_again(cup, "Add a straw or sleeve");
}

#[test]
fn what_is_filled_in_of_the_shop_is_found_again() {
    let shop = |window: &mut Window| {
        window.state_mut().areas_mut().counter.look_at(Kind::Shop);
        show_area(window, Area::Counter);
    };
    at_least(30, &fields_are_found_again(shop));
}

#[test]
fn what_is_typed_where_drinks_are_served_is_found_again() {
    at_least(
        20,
        &fields_are_found_again(at("hazelthwaite", Area::Serving)),
    );
    at_least(1, &fields_are_found_again(at("pear-drift", Area::Serving)));
    at_least(3, &boxes_are_found_again(at("hazelthwaite", Area::Serving)));
}

#[test]
fn the_names_of_levels_are_found_again() {
    let levels = |window: &mut Window| {
        at("hazelthwaite", Area::Variations)(window);
        let names = "Show the names of the levels";
        if has(window, names) {
            click(window, names);
        }
    };
    at_least(10, &fields_are_found_again(levels));
}
