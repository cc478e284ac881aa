//! The variations on the screen: levels of sugar with their floor, other cups, ice and none.

use egui::{Key, Modifiers};
use evensip::balance::{Balance, Measurand, balance_version, difference};
use evensip::book::{Axis, RecipeId};
use evensip::ui::Area;

use crate::at_the_window::{
    Window, book, click, press, rows, says, show, shown, tick, type_into, undo, window_on,
};
use crate::sample::{balance_of, figure, sample};

fn window(recipe: &str, version: Option<&str>) -> Window {
    window_on([1360.0, 1600.0], Area::Variations, recipe, version)
}

/// The balance of the version in hand.
fn in_hand(window: &Window) -> Balance {
    let (book, shown) = (book(window), shown(window));
    let recipe = book.recipe(&shown.recipe).unwrap();
    balance_version(&book, recipe, shown.version.as_ref()).unwrap()
}

#[test]
fn a_level_of_sugar_is_kept_as_a_version_and_undone() {
    let mut window = window("hazelthwaite", None);
    let before = book(&window);
    assert!(says(&window, "can’t be taken out"));
    assert!(says(&window, "Tambrel chestnut powder 10.2\u{a0}g"));
    click(&mut window, "Keep 0 % as a new version");
    let kept = in_hand(&window);
    assert!((figure(&kept, Measurand::TotalSugar) - 12.1).abs() < 0.2);
    assert_eq!(window.state().view().area, Area::Recipe);
    let id = RecipeId::new("hazelthwaite").unwrap();
    let (old, new) = (before.recipe(&id).unwrap().clone(), book(&window));
    let new = new.recipe(&id).unwrap();
    assert_eq!(new.versions.len(), old.versions.len() + 1);
    assert_eq!(
        (&new.entries, &new.approvals),
        (&old.entries, &old.approvals)
    );
    assert_eq!(new.versions.last().unwrap().name, "0 % sugar");
    undo(&mut window);
    assert_eq!(book(&window), before);
}

#[test]
fn another_cup_is_kept_and_tastes_the_same() {
    let mut window = window("hazelthwaite", None);
    click(
        &mut window,
        "Keep paper cup 700, 700\u{a0}ml as a new version",
    );
    let large = in_hand(&window);
    assert_eq!(
        large.resolved.cup.as_ref().unwrap().as_str(),
        "paper-cup-700"
    );
    let standard = balance_of(&sample(), "hazelthwaite", None);
    let difference = difference(&sample().settings, &standard, &large);
    let taste = difference
        .axes
        .iter()
        .filter(|axis| axis.axis != Axis::Volume);
    for axis in taste {
        assert!(axis.steps.unwrap().abs() <= 1.0, "{:?}", axis.axis);
    }
    assert!(figure(&large, Measurand::Volume) > 1.3 * figure(&standard, Measurand::Volume));
}

#[test]
fn a_hot_drink_is_offered_iced_and_an_iced_one_hot_and_with_less_ice() {
    let hot = window("hazelthwaite", None);
    assert!(says(&hot, "Iced instead of hot"));
    assert!(!says(&hot, "With less ice"));
    let mut iced = window("copper-plum", None);
    assert!(says(&iced, "Hot instead of iced"));
    click(
        &mut iced,
        "Keep no ice, 0\u{a0}% of the ice as a new version",
    );
    assert!(!in_hand(&iced).iced);
}

#[test]
fn a_shop_names_its_levels_and_the_ladder_follows() {
    let mut window = window("hazelthwaite", None);
    click(&mut window, "Show the names of the levels");
    let field = "Name of sugar level 3";
    type_into(&mut window, field, "half sweet");
    let levels = book(&window).settings.sugar_levels.clone();
    assert_eq!(levels.len(), 5);
    assert_eq!(
        (levels[2].name.as_str(), levels[2].percent),
        ("half sweet", 50.0)
    );
    click(&mut window, "Keep half sweet as a new version");
    let id = RecipeId::new("hazelthwaite").unwrap();
    let recipe = book(&window).recipe(&id).unwrap().clone();
    assert_eq!(recipe.versions.last().unwrap().name, "half sweet");
}

#[test]
fn a_level_that_is_no_part_is_refused_with_what_is_expected() {
    let mut window = window("hazelthwaite", None);
    click(&mut window, "Show the names of the levels");
    let field = "Percent of ice level 1";
    type_into(&mut window, field, "400");
    assert!(says(&window, "enter 0 to 200\u{a0}%"));
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(
        book(&window)
            .settings
            .ice_levels
            .iter()
            .all(|level| level.percent <= 200.0)
    );
}

#[test]
fn a_drink_whose_sugar_is_not_known_has_no_levels_and_says_what_to_read() {
    let window = window("hob-and-ember", Some("oat"));
    assert!(says(
        &window,
        "No levels: the sweetness is not known: enter the sugars"
    ));
}

#[test]
fn what_comes_near_a_level_says_how_sweet_it_is_like_a_level_and_is_kept() {
    let mut window = window("hob-and-ember", None);
    let why = "whole measures can’t reach it: one step changes ";
    assert!(says(&window, why), "{:?}", rows(&window, "made"));
    let named = rows(&window, "Keep ");
    let of_ladder = |name: &&String| name.starts_with("Keep ") && name.contains('%');
    let drinks = named.iter().filter(of_ladder).count();
    let said = rows(&window, " g/100 ml; ").len();
    assert!(said > 0 && said <= drinks, "{said} of {drinks}: {named:?}");
    let offer = named
        .iter()
        .find(|name| name.starts_with("Keep 50 % with "));
    let offer = offer.unwrap_or_else(|| panic!("{named:?}")).clone();
    click(&mut window, &offer);
    let recipe = book(&window)
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap()
        .clone();
    assert_eq!(recipe.versions.last().unwrap().name, "50 % sugar");
}

/// The button that keeps what is ticked, with how many that are.
fn kept(window: &Window) -> String {
    let named = rows(window, "Keep ");
    let kept = named.into_iter().find(|name| name.ends_with(" versions"));
    kept.unwrap_or_default()
}

#[test]
fn the_ticks_of_a_drink_are_not_those_of_the_next_one() {
    let mut window = window("hazelthwaite", None);
    click(&mut window, "Show the table of levels, sizes and ice");
    let before = kept(&window);
    let boxes = rows(&window, "Choose ").into_iter();
    let boxes: Vec<String> = boxes.filter(|name| name.starts_with("Choose ")).collect();
    for name in &boxes[..2] {
        tick(&mut window, name);
    }
    assert_ne!(kept(&window), before);
    show(&mut window, "copper-plum", None);
    show(&mut window, "hazelthwaite", None);
    assert_eq!(kept(&window), before);
}
