//! Whoever listens instead of looking goes from heading to heading: what looks like one is one.

use egui::Role;
use egui_kittest::kittest::Queryable as _;
use evensip::book::{IngredientId, RecipeId};
use evensip::ui::counter_area::CounterItem;

use crate::at_the_window::{Window, at_the_counter, book, click, show, window_of};

fn is_heading(window: &Window, words: &str) -> bool {
    window
        .query_by_role_and_label(Role::Heading, words)
        .is_some()
}

#[test]
fn the_parts_of_a_recipe_below_its_lines_are_headings() {
    let mut window = window_of([1360.0, 2000.0]);
    let book = book(&window);
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let version = recipe.versions.first().unwrap().id.to_string();
    show(&mut window, "hob-and-ember", Some(&version));
    for words in ["Note", "Approvals"] {
        assert!(is_heading(&window, words), "{words}");
    }
    let differs = window
        .query_all_by_role(Role::Heading)
        .filter_map(|node| {
            use egui_kittest::kittest::NodeT as _;
            node.accesskit_node().label()
        })
        .any(|label| label.starts_with("Changes from "));
    assert!(differs);
}

#[test]
fn the_menu_of_the_book_and_the_sheets_of_the_counter_have_headings() {
    let mut window = window_of([1360.0, 2000.0]);
    click(&mut window, "Book");
    for words in ["Units", "Samples"] {
        assert!(is_heading(&window, words), "{words}");
    }
    let mut window = window_of([1360.0, 2000.0]);
    let powder = IngredientId::new("tambrel-chestnut").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(powder));
    for words in ["The label as printed", "Weight per use", "Used in"] {
        assert!(is_heading(&window, words), "{words}");
    }
}
