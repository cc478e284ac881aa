//! A Saturday of the shop that script A has set up, with ten drinks more: a supplier's list, a powder that nobody sells any
//! more, the menu, what to buy, what hangs on the wall, and a label that changes. Every press and every text is counted, and
//! nothing but the pointer and the keyboard is used.

mod drift;
mod menu;
mod supplies;

use std::path::PathBuf;
use std::sync::Arc;

use evensip::book::{Book, Ingredient, Recipe};

use crate::at_the_window::{TALL, Window, WindowBuilder, book};
use crate::played_day::{Picks, play};
use crate::supplier_list::{LIST, windows_1252};

/// What the day may take: presses of the pointer, and texts.
const MOST_PRESSES: u32 = 50;
const MOST_TEXTS: u32 = 12;

const THORNBY: &str = "Thornby roasted barley powder";
const ALDGRAVE: &str = "Aldgrave roasted barley powder";
const CORROW: &str = "Corrow roasted barley powder";
const CREAMER: &str = "Ostley creamer powder";
const VEGAN: &str = "Ostley oat creamer powder, equal measures";

fn shop() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/shops/saturday.ron")
}

fn item(book: &Book, name: &str) -> Ingredient {
    let mut items = book.ingredients.iter();
    let found = items.find(|item| item.full_name() == name);
    found
        .unwrap_or_else(|| panic!("no `{name}`"))
        .as_ref()
        .clone()
}

fn recipe<'book>(book: &'book Book, name: &str) -> &'book Recipe {
    let mut recipes = book.recipes.iter();
    let found = recipes.find(|recipe| recipe.name == name);
    found.unwrap_or_else(|| panic!("no `{name}`"))
}

fn versions(window: &Window) -> usize {
    let book = book(window);
    let recipes = book.recipes.iter();
    recipes.map(|recipe| recipe.versions.len()).sum()
}

#[test]
fn a_saturday_from_the_list_of_the_supplier_to_the_label_that_changed() {
    let folder = tempfile::tempdir().unwrap();
    let at = folder.path().join("millrace.ron");
    std::fs::copy(shop(), &at).unwrap();
    std::fs::write(folder.path().join("list.csv"), windows_1252(LIST)).unwrap();
    let picks = Picks {
        folder: folder.path().to_owned(),
        list: Some("list.csv"),
    };
    let mut window = WindowBuilder::of(TALL)
        .with_file(at)
        .with_picker(Arc::new(picks))
        .open();
    let day = play(
        &mut window,
        &[
            ("the list", supplies::the_list),
            ("no longer sold", supplies::no_longer_sold),
            ("vegan against dairy", menu::vegan_against_dairy),
            ("the menu by margin", menu::by_margin),
            ("shopping", menu::shopping),
            ("the matrix", menu::matrix),
            ("the label", drift::the_label),
            ("what brings them back", drift::brought_back),
        ],
    );
    assert!(
        day.presses <= MOST_PRESSES && day.texts <= MOST_TEXTS,
        "{day:?}"
    );
    let files = std::fs::read_dir(folder.path()).unwrap();
    let pdfs = files.filter(|entry| {
        let path = entry.as_ref().unwrap().path();
        path.extension().is_some_and(|extension| extension == "pdf")
    });
    assert_eq!(pdfs.count(), 2, "what to buy, and what hangs on the wall");
}
