//! The variations on the screen: levels of sugar with their floor, other cups, ice and none.

use std::sync::Arc;

use egui::{Key, Modifiers, Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use evensip::balance::{Balance, Measurand, balance_version, difference};
use evensip::book::{Axis, Book, RecipeId, VersionId};
use evensip::ui::{App, Area, Opening};
use evensip::workbench::{NoPicker, Shown};

use crate::sample::{balance_of, figure, sample};
use crate::window::{Window, settle};

fn window(recipe: &str, version: Option<&str>) -> Window {
    let mut window = Harness::builder()
        .with_size(vec2(1360.0, 1600.0))
        .with_theme(egui::Theme::Light)
        .with_max_steps(32)
        .build_eframe(|cc| App::with_picker(cc, Opening { path: None }, Arc::new(NoPicker)));
    window.run();
    let view = window.state_mut().view_mut();
    view.show(Shown {
        recipe: RecipeId::new(recipe).unwrap(),
        version: version.map(|version| VersionId::new(version).unwrap()),
    });
    view.area = Area::Variations;
    settle(&mut window);
    window
}

fn click(window: &mut Window, label: &str) {
    window.get_by_role_and_label(Role::Button, label).click();
    settle(window);
}

fn says(window: &Window, words: &str) -> bool {
    window.query_all_by_label_contains(words).next().is_some()
}

fn book(window: &Window) -> Arc<Book> {
    window.state().workbench().book().clone()
}

/// The balance of the version in hand.
fn in_hand(window: &Window) -> Balance {
    let book = book(window);
    let shown = window.state().view().shown_in(&book).unwrap();
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
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    settle(&mut window);
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
    window.get_by_label(field).focus();
    window.run();
    window.get_by_label(field).type_text("half sweet");
    settle(&mut window);
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
    window.get_by_label(field).focus();
    window.run();
    window.get_by_label(field).type_text("400");
    settle(&mut window);
    assert!(says(&window, "enter 0 to 200\u{a0}%"));
    window.key_press(Key::Escape);
    settle(&mut window);
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
