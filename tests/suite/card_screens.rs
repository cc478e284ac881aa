//! The area of cards in the window: what is chosen, what is seen before it is written, what is reviewed before it is taken.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::say::Speaker;
use evensip::ui::Area;
use evensip::workbench::{FilePicker, PickRequest};

use crate::at_the_window::{
    NARROW, Size, TALL, WIDE, Window, WindowBuilder, book, click, click_on, eventually, go, has,
    press, read_aloud, retype, rows, says, settle, text_of, tick, type_on, undo, window_of,
};

fn cards(size: Size) -> Window {
    let mut window = window_of(size);
    // In a narrow window it stands in the menu of the areas that have no room.
    go(&mut window, Area::Cards);
    window
}

/// High enough that everything is in sight.
fn window() -> Window {
    cards([1360.0, 1200.0])
}

/// Has a file looked through.
fn review(window: &mut Window, path: &Path) {
    retype(window, "Path of what is brought in", path.to_str().unwrap());
    click(window, "Review");
}

fn page_says(window: &Window, words: &str) -> bool {
    let pages = window.query_all_by_role(Role::Image);
    pages.into_iter().any(|page| {
        page.accesskit_node()
            .label()
            .is_some_and(|label| label.contains(words))
    })
}

#[test]
fn the_card_of_the_drink_in_hand_is_previewed_page_by_page() {
    let mut window = window();
    assert_eq!(window.state().view().area, Area::Cards);
    eventually(&mut window, "the page", |window| {
        page_says(window, "Page 1 of")
    });
    assert!(page_says(&window, "serving temperature"));
    click_on(&mut window, Role::RadioButton, "Training sheet");
    eventually(&mut window, "the sheet", |window| {
        page_says(window, "How to make it")
    });
    click(&mut window, "Next page");
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
        ("Score sheet of a blind tasting", "Two of these cups"),
        ("Pouring sheet of a blind tasting", "Keep this sheet out"),
    ] {
        click_on(&mut window, Role::RadioButton, kind);
        eventually(&mut window, kind, |window| page_says(window, words));
    }
    retype(&mut window, "Tasters", "0");
    eventually(&mut window, "no tasters", |window| {
        says(window, "enter a number of tasters from 1 to 300")
    });
    retype(&mut window, "Tasters", "six");
    assert!(says(&window, "enter whole numbers"));
}

#[test]
fn a_card_is_written_where_one_says_and_nothing_freezes() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window();
    retype(
        &mut window,
        "Folder for the files",
        folder.path().to_str().unwrap(),
    );
    click(&mut window, "Write the card");
    eventually(&mut window, "the file", |window| {
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
fn what_was_written_is_said_beside_its_own_card_only() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window();
    retype(
        &mut window,
        "Folder for the files",
        &folder.path().display().to_string(),
    );
    click(&mut window, "Write the card");
    eventually(&mut window, "the file", |window| says(window, "Written: "));
    assert!(has(&window, "Open to print"));
    click_on(&mut window, Role::RadioButton, "Sugar ladder");
    assert!(!says(&window, "Written: ") && !has(&window, "Open to print"));
    click_on(&mut window, Role::RadioButton, "Counter card");
    assert!(says(&window, "Written: ") && has(&window, "Open to print"));
    crate::at_the_window::show(&mut window, "pear-drift", None);
    assert!(!says(&window, "Written: "));
}

struct PicksFolder(PathBuf);

impl FilePicker for PicksFolder {
    fn pick(&self, request: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        assert_eq!(request, PickRequest::Folder);
        Some(self.0.clone())
    }
}

#[test]
fn the_folder_is_chosen_in_the_dialog_of_the_system() {
    let folder = tempfile::tempdir().unwrap();
    let picker = Arc::new(PicksFolder(folder.path().to_owned()));
    let mut window = WindowBuilder::of([1360.0, 1200.0])
        .with_picker(picker)
        .open();
    go(&mut window, Area::Cards);
    click(&mut window, "Choose the folder for the files");
    let path = folder.path().display().to_string();
    eventually(&mut window, "the folder", |window| {
        text_of(window, "Folder for the files") == path
    });
}

#[test]
fn a_language_of_the_book_without_a_catalogue_is_said() {
    let mut book = crate::sample::sample();
    book.settings.language = Some(evensip::book::LanguageId::new("nl").unwrap());
    let mut window = WindowBuilder::of([1360.0, 1200.0]).with_book(book).open();
    go(&mut window, Area::Cards);
    assert!(says(&window, "doesn’t speak the language “nl”"));
}

#[test]
fn a_folder_that_is_not_there_is_said() {
    let mut window = window();
    retype(&mut window, "Folder for the files", "/nowhere/at/all");
    click(&mut window, "Write the card");
    eventually(&mut window, "the reason", |window| {
        says(window, "the folder does not exist")
    });
}

fn list(folder: &Path, text: &str) -> PathBuf {
    let path = folder.join("prices.csv");
    std::fs::write(&path, text).unwrap();
    path
}

#[test]
fn a_price_list_is_reviewed_and_only_what_is_ticked_is_taken_in_one_step() {
    let folder = tempfile::tempdir().unwrap();
    let path = list(
        folder.path(),
        "name;brand;form;price;pack\nPlum powder;Velm;powder;9,50;1 kg\nFig powder;Velm;powder;8,50;1 kg\n",
    );
    let mut window = window();
    let before = book(&window);
    review(&mut window, &path);
    eventually(&mut window, "the list", |window| {
        has(window, "2 new, 0 changed, 0 the same, 0 skipped")
    });
    assert!(Arc::ptr_eq(&before, window.state().workbench().book()));
    tick(&mut window, "Velm Fig powder, line 3");
    click(&mut window, "Add 1 to the book");
    eventually(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    let book = book(&window);
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
    undo(&mut window);
    assert_eq!(**window.state().workbench().book(), *before);
}

#[test]
fn of_a_list_of_thousands_the_lines_in_sight_are_drawn_and_all_ticked_ones_are_taken() {
    let folder = tempfile::tempdir().unwrap();
    let mut text = "name;brand;form;price;pack\n".to_owned();
    for number in 0..3_000 {
        writeln!(text, "Powder {number};Velm;powder;9,50;1 kg").unwrap();
    }
    let path = list(folder.path(), &text);
    let mut window = window();
    let before = window.state().workbench().book().ingredients.len();
    review(&mut window, &path);
    eventually(&mut window, "the list", |window| {
        has(window, "3000 new, 0 changed, 0 the same, 0 skipped")
    });
    let drawn = window.query_all_by_role(Role::CheckBox).count();
    assert!((10..150).contains(&drawn), "{drawn}");
    tick(&mut window, "Velm Powder 1, line 3");
    click(&mut window, "Add 2999 to the book");
    eventually(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    let book = book(&window);
    assert_eq!(book.ingredients.len(), before + 2_999);
    assert!(book.ingredients.iter().all(|item| item.name != "Powder 1"));
}

/// A list with titles, names of its own, a case and a price of another pack: matched by hand, its effect on the drinks seen,
/// taken, recognised the next time, and taken back from the confirmation.
#[test]
fn a_suppliers_list_is_matched_by_hand_and_taken_with_its_effect_and_taken_back() {
    let folder = tempfile::tempdir().unwrap();
    let text = "Wexlow Dry Goods;;;\nWinter 2026;;;\nArtikel;Marke;Inhalt;Preis netto\n\
        Kastanienpulver;Tambrel;12 x 1 kg;148,20\nTrinkhalme;Bask;1000 Stück;12,50\n";
    let path = list(folder.path(), text);
    let mut window = cards(TALL);
    let before = book(&window);
    review(&mut window, &path);
    eventually(&mut window, "the list", |window| {
        has(window, "1 new, 0 changed, 0 the same, 1 skipped")
    });
    assert!(has(&window, "(2 lines above are skipped)"));
    // Neither is ticked: the name of one says what it is, and nobody says what the other is.
    assert!(says(&window, "nothing tells its form: choose what it is"));
    assert!(
        says(&window, "1 change is not ticked"),
        "{:?}",
        read_aloud(&window)
    );
    retype(&mut window, "Supplier of the list", "Wexlow Dry Goods");
    settle(&mut window);
    click(
        &mut window,
        "What Tambrel Kastanienpulver is: a new ingredient: powder",
    );
    settle(&mut window);
    type_on(&mut window, "chestnut pow");
    press(&mut window, Modifiers::NONE, Key::Enter);
    eventually(&mut window, "the match", |window| {
        has(window, "0 new, 1 changed, 0 the same, 1 skipped")
    });
    assert!(
        says(&window, "+8.3 % for the same amount"),
        "{:?}",
        read_aloud(&window)
    );
    eventually(&mut window, "the effect", |window| {
        !rows(window, "Hob & Ember").is_empty()
    });
    click(&mut window, "Add 1 to the book");
    eventually(&mut window, "the confirmation", |window| {
        has(window, "1 ingredient was brought in (0 new, 1 changed).")
    });
    let taken = book(&window);
    let chestnut = taken
        .ingredients
        .iter()
        .find(|item| item.full_name() == "Tambrel chestnut powder")
        .unwrap();
    assert_eq!(chestnut.articles.len(), 1);
    assert_eq!(chestnut.articles[0].supplier, "Wexlow Dry Goods");
    // What was matched once is recognised.
    review(&mut window, &path);
    eventually(&mut window, "the list again", |window| {
        has(window, "1 new, 0 changed, 0 the same, 1 skipped")
    });
    retype(&mut window, "Supplier of the list", "Wexlow Dry Goods");
    eventually(&mut window, "what is remembered", |window| {
        has(window, "0 new, 0 changed, 1 the same, 1 skipped")
    });
    click(&mut window, "Leave it");
    click(&mut window, "Undo that");
    settle(&mut window);
    assert_eq!(*book(&window), *before);
    assert!(!says(&window, "was brought in"));
}

/// A recipe as people write them: each sentence is reviewed, matched, and added as a line.
#[test]
fn a_written_recipe_is_reviewed_sentence_by_sentence() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("plum.json");
    let text = r#"{"@type": "Recipe", "name": "Plum evening", "recipeIngredient":
        ["2 Tbsp honey", "1 cup (240 ml) brewed tea", "ice to fill", "salt to taste"]}"#;
    std::fs::write(&path, text).unwrap();
    let mut window = cards(TALL);
    let before = book(&window);
    review(&mut window, &path);
    eventually(&mut window, "the recipe", |window| {
        says(window, "2 Tbsp honey")
    });
    for words in [
        "21 CFR 101.9(b)(5)(viii)",
        "240 ml brewed tea",
        "it states no amount",
        "new, and added as syrup",
    ] {
        assert!(says(&window, words), "{words}: {:?}", read_aloud(&window));
    }
    click(&mut window, "Add the recipe as a draft");
    eventually(&mut window, "the confirmation", |window| {
        has(window, "“Plum evening” was added as a draft.")
    });
    let taken = book(&window);
    let recipe = taken.recipes.iter().last().unwrap();
    let lines = recipe.entries.iter().filter(|entry| entry.line().is_some());
    assert_eq!(lines.count(), 3);
    click(&mut window, "Undo that");
    settle(&mut window);
    assert_eq!(*book(&window), *before);
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
        "name;brand;form;price;pack\nPlum powder;Velm;powder;9,50;1 kg\n",
    );
    review(&mut window, &prices);
    eventually(&mut window, "the list", |window| {
        has(window, "Add 1 to the book")
    });
    click(&mut window, "Add 1 to the book");
    eventually(&mut window, "what is taken", |window| {
        has(window, "To a file")
    });
    review(&mut window, &path);
    eventually(&mut window, "the recipe", |window| {
        has(window, "Add the recipe as a draft")
    });
    assert!(!has(&window, "chosen by you"));
    let combo = "Use in place of Tambrel chestnut powder";
    window.get_by_label(combo).click();
    window.run();
    click(&mut window, "Ketterby chestnut powder");
    assert!(has(&window, "chosen by you"));
    let before = book(&window);
    undo(&mut window);
    assert!(!Arc::ptr_eq(&before, window.state().workbench().book()));
    assert!(has(&window, "chosen by you"));
    click(&mut window, "Add the recipe as a draft");
    let book = book(&window);
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
    let before = book(&window);
    review(&mut window, &path);
    eventually(&mut window, "the list", |window| has(window, "Leave it"));
    click(&mut window, "Leave it");
    assert!(Arc::ptr_eq(&before, window.state().workbench().book()));
    assert!(has(&window, "To a file"));
}

#[test]
fn the_area_fits_small_and_large_windows() {
    for size in [NARROW, WIDE] {
        let mut window = cards(size);
        eventually(&mut window, "the page", |window| {
            page_says(window, "Page 1 of")
        });
        for label in ["Write the card", "Review"] {
            let button = window.get_by_role_and_label(Role::Button, label);
            let bounds = button.accesskit_node().bounding_box().unwrap();
            assert!(bounds.x1 <= f64::from(size[0]), "{label}: {bounds:?}");
        }
    }
}

#[test]
fn a_review_begins_at_its_top_wherever_the_cards_were_scrolled_to() {
    let folder = tempfile::tempdir().unwrap();
    let mut text = "name;brand;form;price;pack\n".to_owned();
    for number in 0..300 {
        writeln!(text, "Powder {number};Velm;powder;9,50;1 kg").unwrap();
    }
    let path = list(folder.path(), &text);
    let mut window = cards(NARROW);
    let field = "Path of what is brought in";
    retype(&mut window, field, path.to_str().unwrap());
    press(&mut window, Modifiers::NONE, Key::Enter);
    eventually(&mut window, "the list", |window| says(window, "300 new"));
    let title = window.get_all_by_label("Bring in").next().unwrap();
    let sight = window.ctx.content_rect();
    assert!(sight.contains_rect(title.rect()), "{:?}", title.rect());
}
