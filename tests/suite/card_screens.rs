//! The area of cards in the window: what is chosen, what is seen before it is written, what is reviewed before it is taken.

use std::fmt::Write as _;
use std::path::PathBuf;
use std::sync::Arc;

use egui::{Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::ui::{App, Area, Opening};
use evensip::workbench::NoPicker;

use crate::window::settle;

type Window = Harness<'static, App>;

fn window_of(size: [f32; 2]) -> Window {
    let opening = Opening { path: None };
    let mut window = Harness::builder()
        .with_size(vec2(size[0], size[1]))
        .with_theme(egui::Theme::Light)
        .with_max_steps(64)
        .build_eframe(|cc| App::with_picker(cc, opening, Arc::new(NoPicker)));
    window.run();
    // In a narrow window it stands in the menu of the areas that have no room.
    window.state_mut().view_mut().area = Area::Cards;
    window.run();
    window
}

/// High enough that everything is in sight: a click goes to a place on the screen.
fn window() -> Window {
    window_of([1360.0, 1200.0])
}

/// Runs frames until something is there that is made beside the window.
fn wait_for(window: &mut Window, what: &str, there: impl Fn(&Window) -> bool) {
    for _ in 0..2000 {
        if there(window) {
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
        window.run();
    }
    panic!("{what} never comes");
}

fn has(window: &Window, label: &str) -> bool {
    window.query_by_label(label).is_some()
}

fn page_says(window: &Window, words: &str) -> bool {
    let pages = window.query_all_by_role(Role::Image);
    pages.into_iter().any(|page| {
        page.accesskit_node()
            .label()
            .is_some_and(|label| label.contains(words))
    })
}

fn click(window: &mut Window, role: Role, label: &str) {
    window.get_by_role_and_label(role, label).click();
    window.run();
}

fn type_over(window: &mut Window, field: &str, text: &str) {
    window.get_by_label(field).focus();
    window.run();
    window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    window.run();
    window.get_by_label(field).type_text(text);
    window.run();
}

#[test]
fn the_card_of_the_drink_in_hand_is_previewed_page_by_page() {
    let mut window = window();
    assert_eq!(window.state().view().area, Area::Cards);
    wait_for(&mut window, "the page", |window| {
        page_says(window, "Page 1 of")
    });
    assert!(page_says(&window, "serving temperature"));
    click(&mut window, Role::RadioButton, "Training sheet");
    wait_for(&mut window, "the sheet", |window| {
        page_says(window, "How to make it")
    });
    click(&mut window, Role::Button, "Next page");
    assert!(page_says(&window, "Page 2 of"));
}

#[test]
fn every_kind_of_card_has_a_preview_or_says_what_is_missing() {
    let mut window = window();
    for (kind, words) in [
        ("Counter card", "Mixed in the"),
        (
            "Ingredients and allergens of the menu",
            "cereals containing gluten",
        ),
        ("Sugar ladder", "sweetness"),
        ("Shopping and batches", "Buy"),
        ("Comparison of versions", "Ingredients and amounts"),
    ] {
        click(&mut window, Role::RadioButton, kind);
        wait_for(&mut window, kind, |window| page_says(window, words));
    }
}

#[test]
fn a_card_is_written_where_one_says_and_nothing_freezes() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window();
    type_over(
        &mut window,
        "Folder for the files",
        folder.path().to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Write the card");
    wait_for(&mut window, "the file", |window| {
        has(window, "Open to print")
    });
    let files: Vec<_> = std::fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    assert_eq!(files.len(), 1);
    assert!(std::fs::read(&files[0]).unwrap().starts_with(b"%PDF-"));
}

#[test]
fn a_folder_that_is_not_there_is_said() {
    let mut window = window();
    type_over(&mut window, "Folder for the files", "/nowhere/at/all");
    click(&mut window, Role::Button, "Write the card");
    wait_for(&mut window, "the reason", |window| {
        window.query_all_by_role(Role::Label).any(|label| {
            label
                .accesskit_node()
                .value()
                .is_some_and(|value| value.contains("the folder does not exist"))
        })
    });
}

fn list(folder: &std::path::Path, text: &str) -> PathBuf {
    let path = folder.join("prices.csv");
    std::fs::write(&path, text).unwrap();
    path
}

#[test]
fn a_price_list_is_reviewed_and_only_what_is_ticked_is_taken_in_one_step() {
    let folder = tempfile::tempdir().unwrap();
    let path = list(
        folder.path(),
        "name;brand;price;pack\nPlum powder;Velm;9,50;1 kg\nFig powder;Velm;8,50;1 kg\n",
    );
    let mut window = window();
    let before = window.state().workbench().book().clone();
    type_over(
        &mut window,
        "Path of what is brought in",
        path.to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Review");
    wait_for(&mut window, "the list", |window| {
        has(window, "2 new, 0 changed, 0 the same, 0 skipped")
    });
    settle(&mut window);
    assert!(Arc::ptr_eq(&before, window.state().workbench().book()));
    click(&mut window, Role::CheckBox, "Velm Fig powder, line 3");
    click(&mut window, Role::Button, "Add 1 to the book");
    wait_for(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    let book = window.state().workbench().book().clone();
    assert_eq!(book.ingredients.len(), before.ingredients.len() + 1);
    let plum = book
        .ingredients
        .iter()
        .find(|item| item.name == "Plum powder")
        .unwrap();
    assert!((plum.price.as_ref().unwrap().pack - 9.5).abs() < 1e-9);
    assert_eq!(
        window.state().workbench().undo_label().as_deref(),
        Some("bring in an ingredient")
    );
    window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    window.run();
    assert_eq!(**window.state().workbench().book(), *before);
}

#[test]
fn of_a_list_of_thousands_the_lines_in_sight_are_drawn_and_all_ticked_ones_are_taken() {
    let folder = tempfile::tempdir().unwrap();
    let mut text = "name;brand;price;pack\n".to_owned();
    for number in 0..3_000 {
        writeln!(text, "Powder {number};Velm;9,50;1 kg").unwrap();
    }
    let path = list(folder.path(), &text);
    let mut window = window();
    let before = window.state().workbench().book().ingredients.len();
    type_over(
        &mut window,
        "Path of what is brought in",
        path.to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Review");
    wait_for(&mut window, "the list", |window| {
        has(window, "3000 new, 0 changed, 0 the same, 0 skipped")
    });
    settle(&mut window);
    let drawn = window.query_all_by_role(Role::CheckBox).count();
    assert!((10..150).contains(&drawn), "{drawn}");
    click(&mut window, Role::CheckBox, "Velm Powder 1, line 3");
    click(&mut window, Role::Button, "Add 2999 to the book");
    wait_for(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    let book = window.state().workbench().book().clone();
    assert_eq!(book.ingredients.len(), before + 2_999);
    assert!(book.ingredients.iter().all(|item| item.name != "Powder 1"));
}

/// What a person has chosen to stand for an ingredient, and for a column, is no matter of the book.
#[test]
fn what_was_chosen_stays_when_the_book_changes() {
    let folder = tempfile::tempdir().unwrap();
    let home = crate::sample::sample();
    let id = evensip::book::RecipeId::new("hob-and-ember").unwrap();
    let passed = evensip::exchange::write_recipe(&home, &id, None).unwrap();
    let path = folder.path().join("theirs.ron");
    std::fs::write(&path, evensip::book_file::write(&passed)).unwrap();
    let mut window = window();
    // Something to take back later.
    let prices = list(
        folder.path(),
        "name;brand;price;pack\nPlum powder;Velm;9,50;1 kg\n",
    );
    type_over(
        &mut window,
        "Path of what is brought in",
        prices.to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Review");
    wait_for(&mut window, "the list", |window| {
        has(window, "Add 1 to the book")
    });
    settle(&mut window);
    click(&mut window, Role::Button, "Add 1 to the book");
    wait_for(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    type_over(
        &mut window,
        "Path of what is brought in",
        path.to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Review");
    wait_for(&mut window, "the recipe", |window| {
        has(window, "Add the recipe as a draft")
    });
    settle(&mut window);
    assert!(!has(&window, "chosen by you"));
    let combo = "Use in place of Tambrel chestnut powder";
    window.get_by_label(combo).click();
    window.run();
    click(&mut window, Role::Button, "Ketterby chestnut powder");
    settle(&mut window);
    assert!(has(&window, "chosen by you"));
    let before = window.state().workbench().book().clone();
    window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    settle(&mut window);
    assert!(!Arc::ptr_eq(&before, window.state().workbench().book()));
    assert!(has(&window, "chosen by you"));
    click(&mut window, Role::Button, "Add the recipe as a draft");
    let book = window.state().workbench().book().clone();
    assert_eq!(book.recipes.len(), home.recipes.len() + 1);
    let arrived = book.recipes.iter().last().unwrap();
    let ketterby = |entry: &evensip::book::Entry| {
        let line = entry.line();
        line.is_some_and(|line| line.ingredient.as_str() == "ketterby-chestnut")
    };
    assert!(arrived.entries.iter().any(ketterby));
}

#[test]
fn what_is_left_alone_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = list(folder.path(), "name,price\nPlum powder,9\n");
    let mut window = window();
    let before = window.state().workbench().book().clone();
    type_over(
        &mut window,
        "Path of what is brought in",
        path.to_str().unwrap(),
    );
    click(&mut window, Role::Button, "Review");
    wait_for(&mut window, "the list", |window| has(window, "Leave it"));
    click(&mut window, Role::Button, "Leave it");
    assert!(Arc::ptr_eq(&before, window.state().workbench().book()));
    assert!(has(&window, "To a file"));
}

#[test]
fn the_area_fits_small_and_large_windows() {
    for size in [[1024.0, 700.0], [1920.0, 1080.0]] {
        let mut window = window_of(size);
        wait_for(&mut window, "the page", |window| {
            page_says(window, "Page 1 of")
        });
        for label in ["Write the card", "Review"] {
            let button = window.get_by_role_and_label(Role::Button, label);
            let bounds = button.accesskit_node().bounding_box().unwrap();
            assert!(bounds.x1 <= f64::from(size[0]), "{label}: {bounds:?}");
        }
    }
}
