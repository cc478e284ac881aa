//! A tea is brewed or swapped, in a book with few teas and in one with thousands.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Book, Ingredient, IngredientId, Role as Part};
use evensip::book_file::{built_in_book, write};
use evensip::ui::Area;

use crate::window::{Window, click, press, show, type_into, window_of};

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

fn window_with(count: usize, area: Area) -> (Window, tempfile::TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("shop.ron");
    std::fs::write(&path, write(&with_teas(count))).unwrap();
    let mut window = window_of([1360.0, 2600.0], Some(path));
    show(&mut window, "hazelthwaite", None);
    window.state_mut().view_mut().area = area;
    window.run();
    (window, folder)
}

/// How many nodes of the screen name one of the added teas.
fn named(window: &Window) -> usize {
    window.query_all_by_label_contains("Hillside tea").count()
}

#[test]
fn a_few_teas_stand_in_a_row_and_many_are_found_by_typing() {
    let (window, _folder) = window_with(2, Area::Serving);
    assert_eq!(named(&window), 2);
    let (mut window, _folder) = window_with(3_000, Area::Serving);
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
    window.get_by_label("Find a tea").type_text("tea 2718");
    window.run();
    assert_eq!(named(&window), 1);
    click(&mut window, "Hillside tea 2718");
    window.get_by_role_and_label(Role::Button, "Tea: Hillside tea 2718");
    assert!(window.query_by_label("Find a tea").is_none(), "it closes");
    window.get_by_label("Ready tea").focus();
    window.run();
    window.get_by_label("Ready tea").type_text("1 l");
    window.run();
    assert!(
        window
            .query_by_label("Use these figures for Hillside tea 2718")
            .is_some()
    );
    click(&mut window, "Tea: any tea");
    assert_eq!(named(&window), 0);
    click(&mut window, &list);
    window.get_by_label("Find a tea").type_text("no such tea");
    window.run();
    assert!(window.query_by_label("No teas match.").is_some());
    window.key_press_modifiers(Modifiers::NONE, Key::Escape);
    window.run();
    assert!(window.query_by_label("Find a tea").is_none());
}

#[test]
fn of_thousands_that_may_come_those_in_sight_are_drawn_and_the_keyboard_reaches_the_others() {
    let (mut window, _folder) = window_with(3_000, Area::Swap);
    click(&mut window, "Replace Tambrel chestnut powder");
    assert!(named(&window) < 100, "{}", named(&window));
    type_into(&mut window, "Find a replacement", "hillside");
    assert!((10..100).contains(&named(&window)), "{}", named(&window));
    for _ in 0..200 {
        window.key_press(Key::ArrowDown);
        window.step();
    }
    window.run();
    window.get_by_label("With Hillside tea 200");
    assert!(window.query_by_label("With Hillside tea 0").is_none());
    press(&mut window, Modifiers::NONE, Key::Enter);
    window
        .query_all_by_label_contains("Hillside tea 200")
        .next()
        .unwrap();
}
