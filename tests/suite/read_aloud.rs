//! What is read aloud: every word of every area is a word of the catalogue or of the book, so that none runs into the next.

use std::collections::BTreeSet;
use std::path::Path;

use egui_kittest::kittest::NodeT as _;
use evensip::ui::Area;
use evensip::ui::counter_area::CounterItem;

use crate::at_the_window::{
    TALL, area_keys, ask_swap, at_the_counter, book, go, read_aloud, show, window_of,
};

/// The words of a text: its letters between anything else, in small ones.
fn words(text: &str) -> impl Iterator<Item = String> {
    let letters = |character: char| !(character.is_alphabetic() || character == '\u{301}');
    text.split(letters)
        .filter(|word| word.chars().count() > 1)
        .map(str::to_lowercase)
}

fn known_words() -> BTreeSet<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut known = BTreeSet::new();
    let catalogue = std::fs::read_dir(folder.join("assets/languages/en")).unwrap();
    let catalogue = catalogue.map(|file| file.unwrap().path());
    // What languages call themselves stands in their own files.
    let names = std::fs::read_dir(folder.join("assets/languages")).unwrap();
    let names = names.map(|folder| folder.unwrap().path().join("lists.ftl"));
    let names = names.chain(
        std::fs::read_dir(folder.join("assets/languages"))
            .unwrap()
            .map(|folder| folder.unwrap().path().join("names.ftl")),
    );
    let books = [
        "sample-books/harrowmere.ron",
        "assets/published-ingredients.ron",
    ];
    let books = books.map(|book| folder.join(book));
    for path in catalogue.chain(names).chain(books) {
        if let Ok(text) = std::fs::read_to_string(path) {
            known.extend(words(&text));
        }
    }
    // Units and formats, which stand in the code.
    known.extend(words("kcal kJ mPa ml °C °F fl oz lb PDF HTML CSV JSON Markdown ctrl shift alt cmd enter tab esc space"));
    known
}

#[test]
fn no_word_that_is_read_aloud_runs_into_the_next() {
    let known = known_words();
    let mut window = window_of(TALL);
    let mut unknown = BTreeSet::new();
    let recipes: Vec<String> = book(&window)
        .recipes
        .iter()
        .map(|recipe| recipe.id.as_str().to_owned())
        .collect();
    let hear =
        |window: &crate::at_the_window::Window, where_: &str, unknown: &mut BTreeSet<String>| {
            // A path of a file is a machine's.
            for text in read_aloud(window)
                .into_iter()
                .filter(|text| !text.starts_with('/'))
            {
                for word in words(&text) {
                    if !known.contains(&word) {
                        unknown.insert(format!("{where_}: {word} in {text}"));
                    }
                }
            }
        };
    for recipe in &recipes {
        show(&mut window, recipe, None);
        hear(&window, recipe, &mut unknown);
    }
    show(&mut window, "hob-and-ember", None);
    let areas: Vec<Area> = area_keys().map(|(area, _)| area).collect();
    for area in areas {
        if area == Area::Swap {
            ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
        }
        go(&mut window, area);
        hear(&window, &format!("{area:?}"), &mut unknown);
    }
    let first = book(&window).ingredients.iter().next().unwrap().id.clone();
    at_the_counter(&mut window, CounterItem::Ingredient(first));
    hear(&window, "an ingredient", &mut unknown);
    assert!(unknown.is_empty(), "{unknown:#?}");
}

#[test]
fn the_window_has_a_name_for_those_who_have_it_read_aloud() {
    let window = window_of(TALL);
    let root = window.root().accesskit_node().label();
    let root = root.unwrap_or_default();
    assert!(root.contains("Evensip"), "{root:?}");
}
