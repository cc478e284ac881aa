//! Nothing moves that nobody has moved: what is on the screen stays when something is edited, saved or told, the ways to look at
//! a swap stay whatever the answer, the list stays when a drink is opened. What nobody may overlook is in sight.

use std::collections::BTreeMap;

use egui::{Key, Modifiers, Rect, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{CautionFact, balance_version};
use evensip::say::Speaker;
use evensip::ui::Area;

use crate::at_the_window::{
    NARROW, Size, WIDE, Window, ask_swap, book, click, focus, go, has, press, retype, says, show,
    type_on, window_of, window_on,
};

const USUAL: Size = [1280.0, 800.0];

/// Where everything stands whose words are on the screen once.
fn places(window: &Window) -> BTreeMap<(String, String), Rect> {
    let mut found: BTreeMap<(String, String), Vec<Rect>> = BTreeMap::new();
    for node in window.root().children_recursive() {
        let accessible = node.accesskit_node();
        let role = format!("{:?}", accessible.role());
        if let Some(label) = accessible.label() {
            found.entry((role, label)).or_default().push(node.rect());
        }
    }
    let once = found.into_iter().filter(|(_, rects)| rects.len() == 1);
    once.map(|(words, rects)| (words, rects[0])).collect()
}

/// Whatever stands on both screens stands in the same place.
fn nothing_has_moved(
    before: &BTreeMap<(String, String), Rect>,
    window: &Window,
    what: &str,
) -> usize {
    let after = places(window);
    let mut stayed = 0;
    for (words, place) in before {
        let Some(now) = after.get(words) else {
            continue;
        };
        assert!(
            (now.min - place.min).length() < 0.5,
            "{words:?} moves when {what}: {place:?} to {now:?}"
        );
        stayed += 1;
    }
    stayed
}

#[test]
fn nothing_moves_when_something_is_edited_fails_to_be_saved_and_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    for (at, size) in [NARROW, USUAL].into_iter().enumerate() {
        let mut window = window_on(size, Area::Recipe, "hazelthwaite", None);
        focus(&mut window, "Note on the recipe");
        let before = places(&window);
        retype(&mut window, "Note on the recipe", "For the morning");
        press(&mut window, Modifiers::NONE, Key::Enter);
        assert!(has(&window, "unsaved"), "{size:?}");
        // The tabs and most of the sheet are still there.
        assert!(nothing_has_moved(&before, &window, "something is edited") > 40);
        for (path, what) in [
            (folder.path().join("nowhere/book.ron"), "saving fails"),
            (folder.path().join(format!("book-{at}.ron")), "it is saved"),
        ] {
            press(&mut window, Modifiers::COMMAND, Key::S);
            retype(&mut window, "Path to save to", &path.display().to_string());
            click(&mut window, "Save here");
            assert!(has(&window, "Dismiss the message"), "{what} without a word");
            assert!(nothing_has_moved(&before, &window, what) > 40);
        }
        click(&mut window, "Dismiss the message");
        assert!(nothing_has_moved(&before, &window, "a message is dismissed") > 40);
    }
}

#[test]
fn the_ways_to_look_at_a_swap_stay_whatever_the_answer() {
    let ways = [
        "side by side",
        "step by step",
        "by hand",
        "all recipes that use it",
    ];
    for size in [NARROW, USUAL] {
        let mut window = window_on(size, Area::Swap, "hob-and-ember", None);
        ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
        let label = |window: &Window, way: &str| {
            let found = window.root().children_recursive().find_map(|node| {
                let label = node.accesskit_node().label()?;
                label
                    .eq_ignore_ascii_case(way)
                    .then_some((label, node.rect()))
            });
            found.unwrap_or_else(|| panic!("no `{way}` at {size:?}"))
        };
        let before: Vec<Rect> = ways.iter().map(|way| label(&window, way).1).collect();
        for way in ways.into_iter().chain(["side by side"]) {
            let (name, _) = label(&window, way);
            window.get_by_role_and_label(Role::Button, &name).click();
            crate::at_the_window::settle(&mut window);
            for (of, before) in ways.iter().zip(&before) {
                assert_eq!(
                    label(&window, of).1,
                    *before,
                    "{of} after {way} at {size:?}"
                );
            }
        }
    }
}

#[test]
fn the_list_stays_when_a_drink_is_opened() {
    for size in [NARROW, USUAL, WIDE] {
        let mut window = window_on(size, Area::Recipe, "hob-and-ember", None);
        let rows = |window: &Window| -> Vec<(String, Rect)> {
            let book = book(window);
            let names = book.recipes.iter().map(|recipe| {
                let speaker = Speaker::new(&book);
                let state = speaker.state(recipe.state);
                format!("{}, {state}", recipe.name)
            });
            let nodes: Vec<(String, Rect)> = window
                .root()
                .children_recursive()
                .filter_map(|node| Some((node.accesskit_node().label()?, node.rect())))
                .filter(|(_, rect)| rect.left() < 40.0)
                .collect();
            names
                .filter_map(|name| nodes.iter().find(|(label, _)| *label == name).cloned())
                .collect()
        };
        let all = rows(&window);
        assert!(all.len() > 3, "{all:?}");
        for (name, _) in all {
            let before = rows(&window);
            let place = before.iter().position(|(row, _)| *row == name).unwrap();
            let middle = before[place].1.center().y;
            // A row that is out of sight is scrolled to.
            if middle < 90.0 || middle > size[1] - 200.0 {
                continue;
            }
            click(&mut window, &name);
            for (then, now) in before[..=place].iter().zip(rows(&window)) {
                let place = |(name, rect): &(String, Rect)| (name.clone(), rect.min, rect.height());
                assert_eq!(place(then), place(&now), "opening {name} at {size:?}");
            }
        }
    }
}

fn may_fold(fact: &CautionFact) -> bool {
    !matches!(
        fact,
        CautionFact::TooHot(_)
            | CautionFact::HotThroughWideStraw(_)
            | CautionFact::Scalds(_)
            | CautionFact::Allergens(_)
            | CautionFact::StatementsContradict(_)
            | CautionFact::ClaimsContradicted(_)
            | CautionFact::Choking(_)
    )
}

#[test]
fn cautions_fold_where_they_take_much_but_none_that_somebody_is_hurt_by() {
    let mut folded = 0;
    for size in [NARROW, USUAL, WIDE] {
        let mut window = window_of(size);
        let book = book(&window);
        for recipe in &book.recipes {
            show(&mut window, recipe.id.as_str(), None);
            let cautions = balance_version(&book, recipe, None).unwrap().cautions;
            let in_sight = |window: &Window, fact: &CautionFact| {
                let words = Speaker::new(&book).caution(fact);
                let mut found = window.query_all_by_label_contains(&words);
                found.any(|node| node.rect().bottom() <= size[1])
            };
            let (folding, firm): (Vec<_>, Vec<_>) =
                cautions.iter().partition(|caution| may_fold(&caution.fact));
            for caution in &firm {
                assert!(in_sight(&window, &caution.fact), "{caution:?} at {size:?}");
            }
            let hidden = folding
                .iter()
                .filter(|caution| !in_sight(&window, &caution.fact))
                .count();
            if hidden == 0 {
                continue;
            }
            folded += 1;
            assert_eq!(hidden, folding.len(), "{} at {size:?}", recipe.name);
            let line = if hidden == 1 {
                "1 more caution: ".to_owned()
            } else {
                format!("{hidden} more cautions: ")
            };
            let name = crate::at_the_window::row(&window, &line);
            click(&mut window, &name);
            for caution in &cautions {
                assert!(in_sight(&window, &caution.fact), "{caution:?} at {size:?}");
            }
            click(&mut window, "Show fewer cautions");
        }
    }
    assert!(folded > 0);
}

#[test]
fn the_cup_is_in_sight_on_a_small_screen() {
    for size in [NARROW, USUAL] {
        let mut window = window_of(size);
        for recipe in &book(&window).recipes {
            if recipe.cup.is_none() {
                continue;
            }
            show(&mut window, recipe.id.as_str(), None);
            let cups = window.query_all_by_role(Role::Image);
            let in_sight = cups
                .filter(|node| node.rect().bottom() < size[1] - 60.0)
                .count();
            assert!(in_sight > 0, "{} at {size:?}", recipe.name);
        }
    }
}

#[test]
fn a_book_saved_without_an_ending_gets_that_of_a_book() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window_of(USUAL);
    press(&mut window, Modifiers::COMMAND, Key::S);
    let path = folder.path().join("lanternwick 2.0");
    retype(&mut window, "Path to save to", &path.display().to_string());
    click(&mut window, "Save here");
    assert!(folder.path().join("lanternwick 2.0.ron").is_file());
    assert!(!path.exists());
    // A book of that name is asked about, with or without the ending.
    let mut other = window_of(USUAL);
    press(&mut other, Modifiers::COMMAND, Key::S);
    retype(&mut other, "Path to save to", &path.display().to_string());
    click(&mut other, "Save here");
    assert!(says(&other, "lanternwick 2.0.ron"));
    type_on(&mut other, "");
    go(&mut other, Area::Recipe);
}

#[test]
fn no_amount_is_cut_off_by_the_edge_of_a_small_window_or_a_large_print() {
    // 1280 × 800 as it is and at 150 %, and the smallest window.
    for size in [USUAL, [853.0, 533.0], NARROW] {
        for recipe in ["hob-and-ember", "pear-drift"] {
            let mut window = window_on(size, Area::Recipe, recipe, None);
            for (area, _) in crate::at_the_window::area_keys() {
                go(&mut window, area);
                for node in window.root().children_recursive() {
                    let label = node.accesskit_node().label().unwrap_or_default();
                    let has_amount = label.contains(|letter: char| letter.is_ascii_digit());
                    assert!(
                        !has_amount || node.rect().right() <= size[0] + 0.5,
                        "{area:?} at {size:?}: {label} ends at {:?}",
                        node.rect()
                    );
                }
            }
        }
    }
}

#[test]
fn every_area_has_a_place_in_a_window_that_is_low_because_all_is_large() {
    // 1280 × 800 at 150 %, and lower still.
    for size in [[1280.0 / 1.5, 800.0 / 1.5], [760.0, 420.0]] {
        let mut window = window_of(size);
        for (area, _) in crate::at_the_window::area_keys() {
            go(&mut window, area);
        }
        go(&mut window, Area::Compare);
        click(&mut window, "The whole menu");
        let drinks = crate::at_the_window::rows(&window, "menu price");
        assert!(drinks.len() >= 4, "{size:?}: {drinks:?}");
    }
}
