//! A shop sets itself up from an empty book: its room, vessels, packs, readings and first drink, with every press and every text
//! counted. Nothing but the pointer and the keyboard is used.

mod counter;
mod drink;
mod read_off;

use std::sync::Arc;

use egui::{Key, Modifiers};
use evensip::book::Book;

use crate::at_the_window::{TALL, Window, WindowBuilder, book, press, type_on};
use crate::played_day::{Picks, click_into, enter, play};

/// What setting up may take: presses of the pointer, and texts.
const MOST_PRESSES: u32 = 150;
const MOST_TEXTS: u32 = 190;

/// Presses for three swaps, a level, a cup, ice, a card and a file.
const MOST_PRESSES_OF_WORK: u32 = 30;

/// Begins an item of the counter by its name, which the field that finds takes.
fn begin(window: &mut Window, find: &str, name: &str) {
    click_into(window, find);
    type_on(window, name);
    press(window, Modifiers::NONE, Key::Tab);
    enter(window);
}

#[test]
fn a_shop_is_set_up_from_an_empty_book_and_its_first_drink_is_swapped_varied_printed_and_saved() {
    let folder = tempfile::tempdir().unwrap();
    let picks = Picks {
        folder: folder.path().to_owned(),
        list: None,
    };
    let mut window = WindowBuilder::of(TALL)
        .with_book(Book::default())
        .with_picker(Arc::new(picks))
        .open();
    let set_up = play(
        &mut window,
        &[
            ("the shop", counter::the_shop),
            ("vessels", counter::vessels),
            ("packs", counter::packs),
            ("measures", counter::measures),
            ("the house", counter::house),
            ("the drink", drink::drink),
        ],
    );
    let shop = book(&window);
    read_off::assert_it_is_the_shop(&shop);
    read_off::assert_it_is_what_the_house_makes(&shop);
    read_off::assert_it_is_the_drink(&shop);
    assert!(
        set_up.presses <= MOST_PRESSES && set_up.texts <= MOST_TEXTS,
        "{set_up:?}"
    );
    let worked = play(
        &mut window,
        &[
            ("swaps", drink::swaps),
            ("variations", drink::variations),
            ("card", drink::card),
            ("save", drink::save),
        ],
    );
    let presses = worked.presses - set_up.presses;
    assert!(presses <= MOST_PRESSES_OF_WORK, "{presses} presses");
    let after = book(&window);
    read_off::assert_it_is_what_became_of_the_drink(&after);
    let files = std::fs::read_dir(folder.path()).unwrap();
    let cards = files
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "pdf"));
    let cards: Vec<_> = cards.collect();
    assert_eq!(cards.len(), 1, "{cards:?}");
    assert!(std::fs::read(&cards[0]).unwrap().starts_with(b"%PDF-"));
    let again = WindowBuilder::of(TALL)
        .with_file(folder.path().join("millrace.ron"))
        .open();
    assert_eq!(*book(&again), *after);
}
