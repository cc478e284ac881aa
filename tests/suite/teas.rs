//! A tea is brewed or swapped, in a book with few teas and in one with thousands.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Book, Ingredient, IngredientId, Role as Part};
use evensip::book_file::built_in_book;
use evensip::ui::Area;

use crate::at_the_window::{
    TALL, Window, WindowBuilder, click, go, press, settle, show, type_into, type_on,
};

/// The sample with so many more teas.
fn with_teas(count: usize) -> Book {
    let mut book = built_in_book().unwrap();
    let tea = book
        .ingredients
        .iter()
        .find(|item| item.role == Part::Tea)
        .unwrap()
        .as_ref()
        .clone();
    for number in 0..count {
        book.ingredients.put(Ingredient {
            id: IngredientId::new(&format!("tea-{number}")).unwrap(),
            name: format!("Hillside tea {number}"),
            ..tea.clone()
        });
    }
    book
}

fn window_with(count: usize, area: Area) -> Window {
    let mut window = WindowBuilder::of(TALL).with_book(with_teas(count)).open();
    show(&mut window, "hazelthwaite", None);
    go(&mut window, area);
    window
}

/// How many nodes of the screen name one of the added teas.
fn named(window: &Window) -> usize {
    window.query_all_by_label_contains("Hillside tea").count()
}

#[test]
fn a_few_teas_stand_in_a_row_and_many_are_found_by_typing() {
    let window = window_with(2, Area::Serving);
    assert_eq!(named(&window), 2);
    let mut window = window_with(3_000, Area::Serving);
    assert_eq!(
        named(&window),
        0,
        "nothing is drawn of a list that is closed"
    );
    let list = window
        .query_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .find(|label| label.starts_with("One of ") && label.ends_with(" teas…"))
        .unwrap();
    click(&mut window, &list);
    assert!((1..60).contains(&named(&window)), "{}", named(&window));
    type_on(&mut window, "tea 2718");
    assert_eq!(named(&window), 1);
    click(&mut window, "Hillside tea 2718");
    window.get_by_role_and_label(Role::Button, "Tea: Hillside tea 2718");
    assert!(window.query_by_label("Find a tea").is_none(), "it closes");
    type_into(&mut window, "Ready tea", "1 l");
    assert!(
        window
            .query_by_label("Use these figures for Hillside tea 2718")
            .is_some()
    );
    click(&mut window, "Tea: any tea");
    assert_eq!(named(&window), 0);
    click(&mut window, &list);
    type_on(&mut window, "no such tea");
    assert!(window.query_by_label("No teas match.").is_some());
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(window.query_by_label("Find a tea").is_none());
}

#[test]
fn of_thousands_that_may_come_those_in_sight_are_drawn_and_the_keyboard_reaches_the_others() {
    let mut window = window_with(3_000, Area::Swap);
    click(&mut window, "Replace Tambrel chestnut powder");
    assert!(named(&window) < 100, "{}", named(&window));
    type_into(&mut window, "Find a replacement", "hillside");
    assert!((10..100).contains(&named(&window)), "{}", named(&window));
    for _ in 0..200 {
        window.key_press(Key::ArrowDown);
        window.step();
    }
    settle(&mut window);
    window.get_by_label("With Hillside tea 200");
    assert!(window.query_by_label("With Hillside tea 0").is_none());
    press(&mut window, Modifiers::NONE, Key::Enter);
    window
        .query_all_by_label_contains("Hillside tea 200")
        .next()
        .unwrap();
}
