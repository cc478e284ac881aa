//! A label changes from a lot on: what was approved stays, and what brings it back.

use egui::{Key, Modifiers};
use evensip::swap::{Drifted, answer, drifted};
use evensip::ui::Area;

use super::{CREAMER, item, recipe, versions};
use crate::at_the_window::{
    Window, book, click, eventually, has, press, read_aloud, row, says, type_on, undo,
};
use crate::played_day::{click_into, enter};

/// The creamer has 19 g of sugars in place of 11, from a lot on.
pub(super) fn the_label(window: &mut Window) {
    assert_eq!(drifted(&book(window)), []);
    press(window, Modifiers::COMMAND, Key::Num7);
    click(window, "look at ingredients");
    click(window, "creamer powder Ostley");
    click_into(window, "label: sugars");
    type_on(window, "19");
    enter(window);
    assert!(
        says(window, "Tasted with earlier figures"),
        "{:?}",
        read_aloud(window)
    );
    click_into(window, "First lot that was different");
    type_on(window, "OC-1130");
    enter(window);
    let creamer = item(&book(window), CREAMER);
    let kept = creamer.earlier.latest().unwrap();
    assert_eq!(kept.until_lot, "OC-1130");
    assert!(kept.until.is_some(), "today");
}

fn names(window: &Window, found: &[Drifted]) -> Vec<String> {
    let book = book(window);
    let name = |one: &Drifted| book.recipe(&one.recipe).unwrap().name.clone();
    found.iter().map(name).collect()
}

/// Which approved drinks have drifted, and the way back, in one step.
pub(super) fn brought_back(window: &mut Window) {
    click(window, "Drinks that have drifted");
    assert_eq!(window.state().view().area, Area::Findings);
    let found = drifted(&book(window));
    let drinks = names(window, &found);
    // Four and five scoops of the creamer taste of it. Two beside a syrup do not, but how acid that drink is nobody can tell.
    assert_eq!(drinks, ["Barley Lantern", "Miller's Cloud", "Weir Tea"]);
    for name in &drinks {
        assert!(has(window, &format!("Bring back {name}")), "{name}");
    }
    assert!(
        says(window, "Changed since then: Ostley creamer powder"),
        "{:?}",
        read_aloud(window)
    );
    let now = book(window);
    for one in &found {
        let is_off = one.difference.within_one_step() == Some(false);
        assert_eq!(is_off, one.recipe != recipe(&now, "Barley Lantern").id);
        let answer = answer(&now, &one.question().unwrap()).unwrap();
        let first = answer.suggestions.first();
        let before = one.difference.distance.unwrap();
        let is_nearer = first.is_some_and(|first| first.difference.distance.unwrap() < before);
        assert!(is_nearer || !is_off, "{:?}", one.recipe);
    }
    click(window, "Bring all of them back");
    eventually(window, "the way back", |window| {
        says(window, "Every approved drink that has drifted")
    });
    click(window, "Select all");
    let before = versions(window);
    let add = row(window, "Add ");
    click(window, &add);
    let added = versions(window) - before;
    assert!(added >= 2, "{add}");
    assert_eq!(add, format!("Add {added} new versions"));
    undo(window);
    assert_eq!(versions(window), before);
}
