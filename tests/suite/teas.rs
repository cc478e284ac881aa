//! The tea that is brewed, chosen in a book with few teas and in one with thousands.

use std::time::{Duration, Instant};

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Book, Ingredient, IngredientId, Role as Part};
use evensip::book_file::{built_in_book, write};
use evensip::ui::Area;

use crate::window::{Window, click, show, window_of};

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

fn serving(count: usize) -> (Window, tempfile::TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("shop.ron");
    std::fs::write(&path, write(&with_teas(count))).unwrap();
    let mut window = window_of([1360.0, 2600.0], Some(path));
    show(&mut window, "hazelthwaite", None);
    window.state_mut().view_mut().area = Area::Serving;
    window.run();
    (window, folder)
}

/// How many nodes of the screen name one of the added teas.
fn named(window: &Window) -> usize {
    window.query_all_by_label_contains("Hillside tea").count()
}

fn least_frame(window: &mut Window) -> Duration {
    let frame = |window: &mut Window| {
        let start = Instant::now();
        window.step();
        start.elapsed()
    };
    (0..30).map(|_| frame(window)).min().unwrap()
}

#[test]
fn a_few_teas_stand_in_a_row_and_many_are_found_by_typing() {
    let (window, _folder) = serving(2);
    assert_eq!(named(&window), 2);
    let (mut window, _folder) = serving(3_000);
    assert_eq!(
        named(&window),
        0,
        "nothing is drawn of a list that is closed"
    );
    let list = "One of 3003 teas…";
    let list = window
        .query_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .find(|label| label.starts_with("One of ") && label.ends_with(" teas…"))
        .unwrap_or_else(|| list.to_owned());
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
    assert!(
        window
            .query_by_label("No tea of this book is called so.")
            .is_some()
    );
    window.key_press_modifiers(Modifiers::NONE, Key::Escape);
    window.run();
    assert!(window.query_by_label("Find a tea").is_none());
}

#[test]
fn a_frame_does_not_grow_with_the_teas_of_the_book() {
    let (mut small, _one) = serving(20);
    let (mut large, _two) = serving(5_000);
    let (few, many) = (least_frame(&mut small), least_frame(&mut large));
    eprintln!("a frame with 20 more teas {few:?}, with 5000 {many:?}");
    // Twice, for a loaded machine: drawing every tea took far more than that.
    assert!(many < 2 * few, "{few:?} {many:?}");
}
