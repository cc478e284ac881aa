//! The window in its second language: nothing on it is left in the first.

use std::collections::BTreeMap;

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{IngredientId, MeasureId, Nutrient, RecipeId, VersionId, VesselId};
use evensip::say::{Language, Speaker};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};
use evensip::workbench::Shown;
use fluent_syntax::ast::{Entry, Pattern, PatternElement};

use crate::at_the_window::{
    MIDDLE, NARROW, Size, Window, ask_swap, at_the_counter, book, go, is_field, press, read_aloud,
    retype, settle, show, speak, undo, window_of,
};
use crate::catalogues::{files, root};

/// Pieces of a message shorter than this are in other languages, too: "g", "min", "Recipe" is not.
const SHORTEST_WORD: usize = 4;
/// Pieces beside arguments are looked for anywhere, so that they have to say more.
const SHORTEST_PIECE: usize = 12;

/// The texts of a message between its arguments, of every variant.
fn pieces(pattern: &Pattern<String>, found: &mut Vec<String>) {
    use fluent_syntax::ast::Expression;
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => found.push(value.trim().to_owned()),
            PatternElement::Placeable {
                expression: Expression::Select { variants, .. },
            } => {
                for variant in variants {
                    pieces(&variant.value, found);
                }
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

/// The pieces of every message of a language, and whether the message is a text alone.
fn messages(language: &str) -> BTreeMap<String, (bool, Vec<String>)> {
    let mut paths = Vec::new();
    let folder = root().join("assets/languages").join(language);
    files(&folder, "ftl", &mut paths);
    let mut found = BTreeMap::new();
    for path in paths {
        let text = std::fs::read_to_string(&path).unwrap();
        for entry in fluent_syntax::parser::parse(text).unwrap().body {
            if let Entry::Message(message) = entry {
                let value = message.value.unwrap();
                let mut texts = Vec::new();
                pieces(&value, &mut texts);
                let is_alone = value.elements.len() == 1 && texts.len() == 1;
                found.insert(message.id.name, (is_alone, texts));
            }
        }
    }
    found
}

/// What is English and not German: whole texts, and pieces of texts.
struct English {
    whole: Vec<String>,
    pieces: Vec<String>,
}

impl English {
    fn read() -> Self {
        let (english, german) = (messages("en"), messages("de"));
        let german_text: Vec<&String> = german.values().flat_map(|(_, texts)| texts).collect();
        let (mut whole, mut pieces) = (Vec::new(), Vec::new());
        for (name, (is_alone, texts)) in &english {
            // Cards are printed in a language of their own, and commands are spoken in English.
            let Some(_) = german.get(name) else {
                continue;
            };
            for text in texts {
                let length = text.chars().count();
                if *is_alone && length >= SHORTEST_WORD && !german_text.contains(&text) {
                    whole.push(text.clone());
                }
                let is_told = text.contains(' ') && length >= SHORTEST_PIECE;
                if is_told && !german_text.iter().any(|german| german.contains(text)) {
                    pieces.push(text.clone());
                }
            }
        }
        Self { whole, pieces }
    }

    fn is_in(&self, text: &str) -> bool {
        self.whole.iter().any(|whole| whole == text)
            || self.pieces.iter().any(|piece| text.contains(piece))
    }

    /// What the window says in English.
    fn found_in(&self, window: &Window, own_words: &str) -> Vec<String> {
        let said = read_aloud(window).into_iter();
        let is_english =
            |text: &String| self.is_in(text) && !own_words.contains(text) && !is_of_another(text);
        let points = window.root().children_recursive().filter(is_field);
        let points = points.filter_map(|node| node.value().filter(|text| has_decimal_point(text)));
        let points = points.map(|text| format!("a decimal point: {text}"));
        said.filter(is_english).chain(points).collect()
    }
}

/// Whether a text is a number with decimals as English writes them.
fn has_decimal_point(text: &str) -> bool {
    let is_digits = |part: &str| !part.is_empty() && part.chars().all(|c| c.is_ascii_digit());
    let parts = text.trim_start_matches('−').split_once('.');
    parts.is_some_and(|(whole, decimals)| is_digits(whole) && is_digits(decimals))
}

/// The name of another language, and the page of a card, which is printed in the language that is chosen for it.
fn is_of_another(text: &str) -> bool {
    Language::all().any(|language| language.name() == text) || text.starts_with("Seite 1 ")
}

/// What the person who wrote the book has written: names, notes, instructions.
fn own_words(window: &Window) -> String {
    evensip::book_file::write(window.state().workbench().book())
}

/// Walks through what the window shows, and tells what is English in it.
fn english_on(size: Size) -> Vec<String> {
    let english = English::read();
    let mut window = window_of(size);
    speak(&mut window, "de");
    let own = own_words(&window);
    let mut found: Vec<String> = Vec::new();
    let mut look = |window: &Window, place: &str| {
        let said = english.found_in(window, &own);
        found.extend(said.into_iter().map(|text| format!("{place}: {text}")));
    };
    let book = book(&window);
    for recipe in book.recipes.iter().map(|recipe| recipe.id.to_string()) {
        show(&mut window, &recipe, None);
        look(&window, &recipe);
    }
    for area in Area::TABS.into_iter().chain([Area::Findings]) {
        for recipe in ["hob-and-ember", "snowgate"] {
            show(&mut window, recipe, None);
            go(&mut window, area);
            look(&window, &format!("{area:?}"));
        }
    }
    // The line in hand, its finder, and what is asked about the recipe.
    go(&mut window, Area::Recipe);
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    look(&window, "line in hand");
    press(&mut window, Modifiers::NONE, Key::Insert);
    look(&window, "finder");
    press(&mut window, Modifiers::NONE, Key::Escape);
    for (key, place) in [
        (Key::F, "find"),
        (Key::O, "open"),
        (Key::S, "save"),
        (Key::F1, "keys"),
    ] {
        let modifiers = if key == Key::F1 {
            Modifiers::NONE
        } else {
            Modifiers::COMMAND
        };
        press(&mut window, modifiers, key);
        look(&window, place);
        press(&mut window, Modifiers::NONE, Key::Escape);
    }
    let speaker = Speaker::new(&book).in_language(Language::from_code("de").unwrap());
    let menu = speaker.word("strip-book");
    if let Some(button) = window.query_by_role_and_label(Role::Button, menu) {
        button.click();
        settle(&mut window);
        look(&window, "menu of the book");
        press(&mut window, Modifiers::NONE, Key::Escape);
    }
    // What the shop has.
    go(&mut window, Area::Counter);
    let items = [
        CounterItem::Ingredient(IngredientId::new("tambrel-chestnut").unwrap()),
        CounterItem::Ingredient(IngredientId::new("ondry-creamer").unwrap()),
        CounterItem::Measure(first_measure(&book)),
        CounterItem::Vessel(first_vessel(&book)),
    ];
    for item in items {
        at_the_counter(&mut window, item.clone());
        look(&window, &format!("{item:?}"));
    }
    for kind in Kind::ALL {
        window.state_mut().areas_mut().counter.look_at(kind);
        settle(&mut window);
        look(&window, &format!("{kind:?}"));
    }
    // A swap, answered, and taught.
    show(&mut window, "hob-and-ember", None);
    ask_swap(&mut window, "ondry-creamer", "velloom-oat-creamer");
    for area in [Area::Swap, Area::Lesson] {
        go(&mut window, area);
        look(&window, &format!("{area:?}, asked"));
    }
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let version = recipe.versions.first().map(|version| version.id.clone());
    window.state_mut().areas_mut().compare.beside = vec![beside(version)];
    go(&mut window, Area::Compare);
    look(&window, "two drinks");
    found
}

fn beside(version: Option<VersionId>) -> Shown {
    Shown {
        recipe: RecipeId::new("hob-and-ember").unwrap(),
        version,
    }
}

fn first_measure(book: &evensip::book::Book) -> MeasureId {
    book.measures.iter().next().unwrap().id.clone()
}

fn first_vessel(book: &evensip::book::Book) -> VesselId {
    book.vessels.iter().next().unwrap().id.clone()
}

#[test]
fn a_figure_in_a_field_has_the_sign_of_the_language_and_is_read_with_either() {
    let mut window = window_of(MIDDLE);
    speak(&mut window, "de");
    let id = IngredientId::new("ondry-creamer").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(id.clone()));
    let field = "Etikett: Zucker";
    for (typed, shown, kept) in [
        ("9,25", "9,25", 9.25),
        ("7.5", "7,5", 7.5),
        ("1,1250", "1,1250", 1.125),
    ] {
        retype(&mut window, field, typed);
        press(&mut window, Modifiers::NONE, Key::Tab);
        let value = window.get_by_label(field).value();
        assert_eq!(value.as_deref(), Some(shown), "{typed}");
        let ingredient = window.state().workbench().book().ingredient(&id).cloned();
        let sugars = ingredient.unwrap().composition.get(Nutrient::Sugars);
        assert_eq!(sugars.map(|sugars| sugars.value), Some(kept), "{typed}");
    }
    for _ in 0..3 {
        undo(&mut window);
    }
    assert_eq!(window.get_by_label(field).value().as_deref(), Some("9"));
}

#[test]
fn nothing_of_the_german_window_is_english() {
    for size in [MIDDLE, NARROW] {
        let mut found = english_on(size);
        found.sort();
        found.dedup();
        assert!(found.is_empty(), "{size:?}:\n{}", found.join("\n"));
    }
}
