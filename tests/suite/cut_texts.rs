//! What has no room is cut, and never lost: every text that is not there whole can be read whole.

use std::collections::BTreeSet;

use egui::epaint::{ClippedShape, TextShape};
use egui::{Rect, Shape};
use egui_kittest::kittest::NodeT as _;
use evensip::book::Book;
use evensip::say::Language;
use evensip::ui::Area;

use crate::at_the_window::{
    NARROW, Window, WindowBuilder, ask_swap, go, is_field, read_aloud, show, speak,
};
use crate::catalogues::{files, root};
use crate::sample::sample;

/// How far a letter may reach over the edge of its room, in points.
const OVERHANG: f32 = 1.5;

/// The sample with names that have no room in most places, told apart by their last word.
fn long_names() -> Book {
    let long = |name: &str| format!("{name} from beyond the second mill on the long river {name}");
    let mut book = sample();
    for ingredient in &book.ingredients.clone() {
        let mut ingredient = (**ingredient).clone();
        ingredient.name = long(&ingredient.name);
        ingredient.supplier = long("Wexcombe Dry Goods");
        book.ingredients.put(ingredient);
    }
    for measure in &book.measures.clone() {
        let mut measure = (**measure).clone();
        measure.name = long(&measure.name);
        book.measures.put(measure);
    }
    for vessel in &book.vessels.clone() {
        let mut vessel = (**vessel).clone();
        vessel.name = long(&vessel.name);
        book.vessels.put(vessel);
    }
    for recipe in &book.recipes.clone() {
        let mut recipe = (**recipe).clone();
        recipe.name = long(&recipe.name);
        for version in &mut recipe.versions {
            version.name = long(&version.name);
        }
        book.recipes.put(recipe);
    }
    book
}

/// Messages of a language that end in an ellipsis: a button that asks for more is whole.
fn with_ellipsis(language: &str) -> String {
    let mut paths = Vec::new();
    let folder = root().join("assets/languages").join(language);
    files(&folder, "ftl", &mut paths);
    let texts = paths
        .iter()
        .map(|path| std::fs::read_to_string(path).unwrap());
    let texts: Vec<String> = texts.collect();
    let lines = texts.iter().flat_map(|text| text.lines());
    lines
        .filter(|line| line.trim_end().ends_with('…'))
        .collect::<Vec<_>>()
        .join("\n")
}

fn texts<'shape>(shape: &'shape Shape, found: &mut Vec<&'shape TextShape>) {
    match shape {
        Shape::Text(text) => found.push(text),
        Shape::Vec(shapes) => shapes.iter().for_each(|shape| texts(shape, found)),
        _ => {}
    }
}

/// What is painted of a text.
struct Painted {
    text: String,
    place: Rect,
    /// Letters were left out of it.
    is_cut: bool,
    /// Letters of it lie beyond the room that it is seen in.
    is_clipped: bool,
}

fn painted(
    ClippedShape {
        clip_rect, shape, ..
    }: &ClippedShape,
) -> Vec<Painted> {
    let mut found = Vec::new();
    texts(shape, &mut found);
    let seen = |text: &&&TextShape| {
        let rect: Rect = text.visual_bounding_rect();
        rect.is_positive() && clip_rect.intersects(rect.shrink(OVERHANG))
    };
    let painted = |text: &&TextShape| {
        let rect = text.visual_bounding_rect();
        Painted {
            text: text.galley.text().to_owned(),
            place: rect.intersect(*clip_rect),
            is_cut: text.galley.elided || text.galley.text().contains('…'),
            is_clipped: rect.left() < clip_rect.left() - OVERHANG
                || rect.right() > clip_rect.right() + OVERHANG,
        }
    };
    found.iter().filter(seen).map(painted).collect()
}

/// Whether a text that is told says the whole of one that was cut in the middle, or at its end.
fn is_whole_of(told: &str, cut: &str) -> bool {
    let in_one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    let (told, cut) = (in_one_line(told), in_one_line(cut));
    let mut rest = told.as_str();
    let pieces = cut.split('…').map(str::trim);
    for piece in pieces {
        let Some(at) = rest.find(piece) else {
            return false;
        };
        rest = &rest[at + piece.len()..];
    }
    !told.contains('…')
}

/// Whether a text is told whole; an amount and the name behind it may be told in two places.
fn is_told(told: &[String], text: &str) -> bool {
    let mut parts = text.split("  ");
    parts.all(|part| told.iter().any(|told| is_whole_of(told, part)))
}

/// What can be read whole nowhere.
fn lost(window: &mut Window, with_ellipsis: &str) -> BTreeSet<String> {
    let told = read_aloud(window);
    let fields = window.root().children_recursive().filter(is_field);
    let typed: Vec<String> = fields.filter_map(|node| node.value()).collect();
    let shapes = window.output().shapes.iter();
    let texts = shapes.flat_map(painted);
    let is_lost = |painted: &Painted| {
        let text = painted.text.as_str();
        // A person moves through a field of their own.
        if typed.iter().any(|typed| typed == text) {
            return false;
        }
        if painted.is_clipped {
            return true;
        }
        let is_whole = text.ends_with('…') && with_ellipsis.contains(text);
        painted.is_cut && !is_whole && !is_told(&told, text)
    };
    let lost: Vec<Painted> = texts.filter(is_lost).collect();
    let mut is_lost_under_the_pointer = |painted: &Painted| {
        window.hover_at(painted.place.center());
        window.run();
        let told = read_aloud(window);
        painted.is_clipped || !is_told(&told, &painted.text)
    };
    let lost = lost
        .into_iter()
        .filter(|painted| is_lost_under_the_pointer(painted));
    lost.map(|painted| painted.text).collect()
}

/// Walks through the areas; each text that is lost, with its place.
fn lost_in(book: Book, language: &str) -> Vec<String> {
    let with_ellipsis = with_ellipsis(language);
    let mut window = WindowBuilder::of(NARROW).with_book(book).open();
    speak(&mut window, language);
    let mut found = Vec::new();
    let mut look = |window: &mut Window, place: &str| {
        let lost = lost(window, &with_ellipsis).into_iter();
        found.extend(lost.map(|text| format!("{language}, {place}: {text}")));
    };
    let areas = || Area::TABS.into_iter().chain([Area::Findings]);
    for recipe in ["hob-and-ember", "snowgate"] {
        show(&mut window, recipe, None);
        for area in areas() {
            go(&mut window, area);
            look(&mut window, &format!("{area:?} of {recipe}"));
        }
    }
    show(&mut window, "hazelthwaite", None);
    ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
    for area in [Area::Swap, Area::Lesson] {
        go(&mut window, area);
        look(&mut window, &format!("{area:?}, asked"));
    }
    found
}

#[test]
fn whatever_is_cut_can_be_read_whole_in_every_language() {
    let mut found = Vec::new();
    for language in Language::all().filter(|language| language.is_whole()) {
        found.extend(lost_in(sample(), language.code()));
        found.extend(lost_in(long_names(), language.code()));
    }
    assert!(found.is_empty(), "{}:\n{}", found.len(), found.join("\n"));
}

/// The sample in which nobody sells anything any more, so that a mark stands beside every name.
fn all_marked() -> Book {
    let mut book = sample();
    for ingredient in &book.ingredients.clone() {
        let mut ingredient = (**ingredient).clone();
        ingredient.no_longer_sold = true;
        book.ingredients.put(ingredient);
    }
    book
}

#[test]
fn what_is_cut_keeps_enough_letters_to_tell_what_it_was() {
    const LEAST_LETTERS: usize = 4;
    let mut found = BTreeSet::new();
    for language in Language::all().filter(|language| language.is_whole()) {
        let mut window = WindowBuilder::of(NARROW).with_book(all_marked()).open();
        speak(&mut window, language.code());
        for recipe in ["hob-and-ember", "snowgate", "hazelthwaite"] {
            show(&mut window, recipe, None);
            for area in [Area::Recipe, Area::Counter] {
                go(&mut window, area);
                for text in window.output().shapes.iter().flat_map(painted) {
                    let letters = text.text.chars().filter(|letter| letter.is_alphabetic());
                    if text.is_cut && letters.count() < LEAST_LETTERS {
                        found.insert(format!("{}, {area:?}: {}", language.code(), text.text));
                    }
                }
            }
        }
    }
    assert!(found.is_empty(), "{found:?}");
}
