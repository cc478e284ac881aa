//! Names without end in the window: what is laid out is bounded, wherever they stand.

use egui::Shape;
use evensip::book::Book;

use crate::at_the_window::{MIDDLE, WindowBuilder, area_keys};
use crate::sample::sample;

/// Characters of every name; a person's own field for it holds all of them.
const LENGTH: usize = 5000;

/// Most characters of one text that is not a field: an explanation may name several things.
const MOST: usize = 1500;

fn long(name: &str) -> String {
    let word = format!("{} ", name.trim());
    word.repeat(LENGTH / word.len() + 1)
}

/// The sample with names that have no end.
fn book() -> Book {
    let mut book = sample();
    book.settings.shop = long(&book.settings.shop);
    for ingredient in &book.ingredients.clone() {
        let mut ingredient = (**ingredient).clone();
        ingredient.name = long(&ingredient.name);
        ingredient.brand = long(&ingredient.brand);
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

fn texts(shape: &Shape, texts: &mut Vec<String>) {
    match shape {
        Shape::Text(text) => texts.push(text.galley.text().to_owned()),
        Shape::Vec(shapes) => shapes.iter().for_each(|shape| self::texts(shape, texts)),
        _ => {}
    }
}

#[test]
fn names_without_end_are_cut_before_they_are_laid_out() {
    let mut window = WindowBuilder::of(MIDDLE).with_book(book()).begin();
    let names: Vec<String> = book()
        .recipes
        .iter()
        .map(|recipe| recipe.name.clone())
        .collect();
    let mut too_long = Vec::new();
    for (area, key) in area_keys() {
        window.key_press_modifiers(key.modifiers, key.logical_key);
        for _ in 0..4 {
            window.step();
        }
        let mut found = Vec::new();
        for shape in &window.output().shapes {
            texts(&shape.shape, &mut found);
        }
        for text in found {
            let count = text.chars().count();
            // The field of the name holds it as it is.
            if count > MOST && !names.contains(&text) {
                let beginning: String = text.chars().take(60).collect();
                too_long.push(format!("{area:?}: {count} {beginning}"));
            }
        }
    }
    assert!(too_long.is_empty(), "{too_long:#?}");
}
