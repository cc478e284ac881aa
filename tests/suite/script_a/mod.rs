//! A shop sets itself up from an empty book: its room, vessels, packs, readings and first drink, with every press and every text
//! counted. Nothing but the pointer and the keyboard is used.

#![allow(clippy::print_stdout, reason = "the counts are the finding")]

mod counter;
mod drink;
mod read_off;

use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::Book;
use evensip::say::Speaker;
use evensip::workbench::{FilePicker, PickRequest};

use crate::at_the_window::{
    Hands, TALL, Window, WindowBuilder, book, hands, is_field, press, settle, type_on,
};

/// What setting up may take: presses of the pointer, and texts.
const MOST_PRESSES: u32 = 150;
const MOST_TEXTS: u32 = 190;

/// Presses for three swaps, a level, a cup, ice, a card and a file.
const MOST_PRESSES_OF_WORK: u32 = 30;

fn enter(window: &mut Window) {
    press(window, Modifiers::NONE, Key::Enter);
}

/// Puts the pointer into a field.
fn click_into(window: &mut Window, label: &str) {
    let found = window.get_all_by_label(label).find(is_field);
    found
        .unwrap_or_else(|| panic!("no field `{label}`"))
        .click();
    settle(window);
}

/// Goes on with Enter to a field and types into it.
fn fill(window: &mut Window, label: &str, text: &str) {
    let is_there = |window: &Window| {
        let node = window
            .root()
            .children_recursive()
            .find(egui_kittest::Node::is_focused);
        node.and_then(|node| node.accesskit_node().label())
            .as_deref()
            == Some(label)
    };
    for _ in 0..40 {
        if is_there(window) {
            type_on(window, text);
            return;
        }
        enter(window);
    }
    panic!("Enter does not lead to `{label}`");
}

/// Begins an item of the counter by its name, which the field that finds takes.
fn begin(window: &mut Window, find: &str, name: &str) {
    click_into(window, find);
    type_on(window, name);
    press(window, Modifiers::NONE, Key::Tab);
    enter(window);
}

/// Answers every dialog of the system.
struct Picks {
    folder: PathBuf,
}

impl FilePicker for Picks {
    fn pick(&self, request: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        match request {
            PickRequest::Save => Some(self.folder.join("millrace.ron")),
            PickRequest::Folder => Some(self.folder.clone()),
            PickRequest::Open | PickRequest::List => None,
        }
    }
}

/// A part of the day, and what it is called.
type Part = (&'static str, fn(&mut Window));

/// Plays steps and tells what each took; the sum since the beginning.
fn play(window: &mut Window, steps: &[Part]) -> Hands {
    let mut last = hands(window);
    for (what, step) in steps {
        step(window);
        let now = hands(window);
        let [presses, texts] = [now.presses - last.presses, now.texts - last.texts];
        println!("{what}: {presses} presses, {texts} texts");
        last = now;
    }
    last
}

#[test]
fn a_shop_is_set_up_from_an_empty_book_and_its_first_drink_is_swapped_varied_printed_and_saved() {
    let folder = tempfile::tempdir().unwrap();
    let picks = Picks {
        folder: folder.path().to_owned(),
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
