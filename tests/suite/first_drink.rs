//! A newcomer with an empty book: the first drink is written, and its first label read, without a mouse.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::book::{Book, Form, IngredientId, MeasureKind, Nutrient};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{
    Window, WindowBuilder, area_keys, click, focus, go, has, press, says, show, text_of, type_on,
    undo, window,
};

fn empty_book() -> Window {
    WindowBuilder::of([1360.0, 1100.0])
        .with_book(Book::default())
        .open()
}

fn ingredient(window: &Window, id: &str) -> Option<evensip::book::Ingredient> {
    let book = window.state().workbench().book();
    let id = IngredientId::new(id).unwrap();
    book.ingredient(&id).map(|found| found.as_ref().clone())
}

#[test]
fn an_ingredient_that_the_book_does_not_have_is_begun_where_it_was_looked_for() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    type_on(&mut window, "Plum Mist");
    press(&mut window, Modifiers::NONE, Key::Enter);
    // Nobody has tasted a drink in which nothing is.
    assert!(!has(&window, "Approve this version…"));
    press(&mut window, Modifiers::NONE, Key::Insert);
    assert!(says(&window, "Type a name to add the first"));
    type_on(&mut window, "Plum syrup");
    press(&mut window, Modifiers::NONE, Key::Enter);
    let new = ingredient(&window, "plum-syrup").unwrap();
    assert_eq!((new.name.as_str(), new.form), ("Plum syrup", Form::Syrup));
    assert_eq!(new.composition.get(Nutrient::Sugars), None);
    assert!(has(&window, "Approve this version…"));
    // The keyboard is in its amount.
    type_on(&mut window, "15 g");
    assert_eq!(text_of(&window, "Amount of Plum syrup"), "15 g");
    // The same words again find it, and begin no other.
    press(&mut window, Modifiers::NONE, Key::Escape);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "plum syrup");
    assert!(!says(&window, "New ingredient “"));
    press(&mut window, Modifiers::NONE, Key::Escape);
    click(&mut window, "Open in Counter");
    let view = window.state().view();
    assert_eq!(view.area, Area::Counter);
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(new.id))
    );
}

#[test]
fn an_ingredient_of_a_published_table_comes_with_its_figures() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    press(&mut window, Modifiers::NONE, Key::Enter);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "whole milk");
    press(&mut window, Modifiers::NONE, Key::Enter);
    let milk = ingredient(&window, "whole-milk").unwrap();
    assert!(milk.composition.get(Nutrient::Fat).is_some());
    assert!(window.get_by_label("Amount of Whole milk").is_focused());
}

#[test]
fn a_list_that_grows_while_one_types_shows_its_rows_at_once() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    press(&mut window, Modifiers::NONE, Key::Enter);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "milk");
    // A row that is cut off hears of no click.
    click(&mut window, "New ingredient “milk”");
    assert!(ingredient(&window, "milk").is_some());
}

#[test]
fn a_line_with_a_new_ingredient_is_one_step() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    press(&mut window, Modifiers::NONE, Key::Enter);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "Plum powder");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(has(&window, "Amount of Plum powder"));
    press(&mut window, Modifiers::NONE, Key::Escape);
    undo(&mut window);
    assert!(!has(&window, "Amount of Plum powder"));
    assert_eq!(ingredient(&window, "plum-powder"), None);
    assert!(has(&window, "New recipe, draft"));
}

#[test]
fn a_label_is_typed_figure_after_figure_with_enter() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND, Key::Num7);
    assert_eq!(window.state().view().area, Area::Counter);
    click(&mut window, "New ingredient");
    type_on(&mut window, "Plum powder");
    press(&mut window, Modifiers::NONE, Key::Enter);
    // A blank in the name of a brand is a blank, and presses nothing.
    type_on(&mut window, "Old Marlow");
    press(&mut window, Modifiers::NONE, Key::Enter);
    focus(&mut window, "label: energy");
    for figure in ["1600", "3", "0,5", "0,1"] {
        type_on(&mut window, figure);
        press(&mut window, Modifiers::NONE, Key::Enter);
    }
    let read = ingredient(&window, "new-ingredient").unwrap();
    assert_eq!(
        (read.name.as_str(), read.brand.as_str()),
        ("Plum powder", "Old Marlow")
    );
    let stated = |nutrient| read.composition.get(nutrient).map(|figure| figure.value);
    assert_eq!(stated(Nutrient::Energy), Some(1600.0));
    assert_eq!(stated(Nutrient::Water), Some(3.0));
    assert_eq!(stated(Nutrient::Fat), Some(0.5));
    assert_eq!(stated(Nutrient::Saturates), Some(0.1));
    assert!(window.get_by_label("label: carbohydrate").is_focused());
}

#[test]
fn tab_goes_from_the_name_into_the_next_field_and_the_buttons_come_last() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND, Key::Num7);
    click(&mut window, "New ingredient");
    type_on(&mut window, "Plum powder");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert!(window.get_by_label("Brand").is_focused());
    assert!(
        window
            .query_by_role_and_label(Role::Button, "Duplicate as another brand")
            .is_some()
    );
}

#[test]
fn what_is_not_found_at_the_counter_is_added_by_the_name_that_was_typed() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND, Key::Num7);
    window
        .state_mut()
        .areas_mut()
        .counter
        .look_at(Kind::Measures);
    window.run();
    focus(&mut window, "Find measures");
    type_on(&mut window, "small pump");
    // Enter opens what is found, which is nothing, now or when the field is emptied.
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(window.state().workbench().book().measures.is_empty());
    click(&mut window, "Add “small pump”");
    let measures = &window.state().workbench().book().measures;
    let found: Vec<(&str, MeasureKind)> = measures
        .iter()
        .map(|measure| (measure.name.as_str(), measure.kind))
        .collect();
    assert_eq!(found, [("small pump", MeasureKind::Pump)]);
    assert!(window.get_by_label("Name").is_focused());
}

#[test]
fn whoever_comes_to_the_counter_by_key_goes_on_by_key() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND, Key::Num7);
    assert!(window.get_by_label("Find ingredients").is_focused());
    type_on(&mut window, "Plum powder");
    press(&mut window, Modifiers::NONE, Key::Tab);
    press(&mut window, Modifiers::NONE, Key::Enter);
    let new = ingredient(&window, "plum-powder").unwrap();
    assert_eq!((new.name.as_str(), new.form), ("Plum powder", Form::Powder));
    assert!(window.get_by_label("Name").is_focused());
}

#[test]
fn every_area_has_a_key_and_a_field_keeps_its_digits() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    assert_eq!(area_keys().count(), Area::TABS.len() + 1);
    for (area, key) in area_keys() {
        press(&mut window, key.modifiers, key.logical_key);
        assert_eq!(window.state().view().area, area);
    }
    go(&mut window, Area::Recipe);
    focus(&mut window, "Name of the recipe");
    press(&mut window, Modifiers::NONE, Key::Num7);
    assert_eq!(window.state().view().area, Area::Recipe);
}

#[test]
fn a_finding_about_an_ingredient_leads_to_it() {
    let mut window = window();
    go(&mut window, Area::Findings);
    click(&mut window, "Go to Ondry non-dairy creamer");
    let view = window.state().view();
    assert_eq!(view.area, Area::Counter);
    let creamer = IngredientId::new("ondry-creamer").unwrap();
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Ingredient(creamer))
    );
}

#[test]
fn the_menu_of_a_line_opens_on_the_name_of_its_ingredient() {
    let mut window = empty_book();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    press(&mut window, Modifiers::NONE, Key::Enter);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "Whole milk");
    press(&mut window, Modifiers::NONE, Key::Enter);
    press(&mut window, Modifiers::NONE, Key::Enter);
    window
        .get_by_label("Ingredient Whole milk")
        .click_secondary();
    window.run();
    let offered = window.query_all_by_label("Open in Counter").count();
    assert_eq!(offered, 2, "below the line and in its menu");
}

#[test]
fn a_line_is_added_by_key_to_a_drink_that_was_taken_in_hand_elsewhere() {
    let mut window = window();
    window.state_mut().view_mut().area = Area::Swap;
    show(&mut window, "snowgate", None);
    press(&mut window, Modifiers::NONE, Key::Insert);
    window.run();
    let field = window.query_by_label("Find an ingredient");
    assert!(field.is_some_and(|field| field.is_focused()));
}
