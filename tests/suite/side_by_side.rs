//! Drinks side by side and the lesson, through the accessibility tree; and the doubt of a difference.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{Measurand, balance_version, figure_difference};
use evensip::book::{RecipeId, VersionId};
use evensip::ui::Area;

use crate::at_the_window::{
    NARROW, TALL, Window, ask_swap, click, copied, go, has, press, row, rows, says, window_on,
};
use crate::sample::{balance_of, sample};

fn window(area: Area, recipe: &str) -> Window {
    window_on(TALL, area, recipe, None)
}

#[test]
fn a_version_set_beside_the_drink_says_what_sets_it_apart_and_can_be_taken_away() {
    let mut window = window(Area::Compare, "hob-and-ember");
    assert!(!says(&window, "compared with the first"));
    click(&mut window, "Beside it: vegan");
    let contains = window.get_by_label_contains("contains: milk; none named");
    assert_eq!(contains.accesskit_node().role(), Role::Label);
    assert!(says(&window, "no milk by ingredients"));
    let words = row(&window, "cost: ");
    assert!(words.contains("compared with the first"), "{words}");
    click(&mut window, "Beside it: iced");
    click(&mut window, "Remove Hob & Ember, vegan");
    assert!(!has(&window, "Open Hob & Ember, vegan"));
    assert_eq!(window.state().areas().compare.beside.len(), 1);
    click(&mut window, "Open Hob & Ember, iced");
    let shown = window.state().view().shown.clone().unwrap();
    assert_eq!(shown.version, VersionId::new("iced").ok());
}

#[test]
fn four_stand_side_by_side_at_most() {
    let mut window = window(Area::Compare, "hob-and-ember");
    for name in ["vegan", "iced", "with oat creamer"] {
        click(&mut window, &format!("Beside it: {name}"));
    }
    click(&mut window, "Beside it: with Ketterby chestnut");
    assert_eq!(window.state().areas().compare.beside.len(), 3);
}

#[test]
fn the_table_goes_to_a_spreadsheet_with_a_cell_for_every_figure() {
    let mut window = window(Area::Compare, "hob-and-ember");
    click(&mut window, "Beside it: vegan");
    let table = copied(
        &mut window,
        "Hob & Ember, original beside Hob & Ember, vegan",
    );
    let sugar = table.iter().find(|row| row[0] == "total sugar").unwrap();
    assert_eq!(sugar.len(), 8, "{sugar:?}");
    assert_eq!(sugar[1], "g");
    let figure: f64 = sugar[2].parse().unwrap();
    let balance = balance_of(&sample(), "hob-and-ember", None);
    let expected = balance.figures.complete(Measurand::TotalSugar).unwrap();
    assert!((figure - expected).abs() < 0.06, "{figure} and {expected}");
}

#[test]
fn what_two_drinks_share_cancels_in_the_doubt_of_their_difference() {
    let book = sample();
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let plain = balance_version(&book, recipe, None).unwrap();
    let vegan = VersionId::new("vegan").unwrap();
    let vegan = balance_version(&book, recipe, Some(&vegan)).unwrap();
    let sugar = Measurand::TotalSugar;
    let difference = figure_difference(&plain, &vegan, sugar).unwrap();
    let apart = plain
        .uncertainty(sugar.slot())
        .hypot(vegan.uncertainty(sugar.slot()));
    assert!(difference.u < 0.8 * apart, "{} and {apart}", difference.u);
    // The same drink twice differs by the hand at the counter alone.
    let twice = figure_difference(&plain, &plain, sugar).unwrap();
    assert!(twice.value.abs() < 1e-12 && twice.u > 0.0 && twice.u < difference.u.max(1.0));
}

fn lesson() -> Window {
    let mut window = window(Area::Lesson, "hazelthwaite");
    ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
    window
}

#[test]
fn a_group_expects_then_sees_what_came_step_by_step() {
    let mut window = lesson();
    assert!(window.query_all_by_label_contains("sweeter by").count() == 0);
    click(&mut window, "sweetness: sweeter");
    click(&mut window, "body: fuller");
    click(&mut window, "Reveal");
    // Worked by hand in the README: 3.4 g more sugar, close to two noticeable steps.
    assert!(says(&window, "steps: correct"));
    assert!(has(&window, "1 of 2 predicted correctly"));
    // Why: the figures, and the powder that brings more.
    assert!(says(&window, "one step is"));
    assert!(says(&window, "Ketterby chestnut powder brings"));
    click(&mut window, "Next step");
    assert!(says(&window, "2 of "));
    assert!(!has(&window, "Result"));
    press(&mut window, Modifiers::NONE, Key::ArrowRight);
    assert!(has(&window, "Result"));
    press(&mut window, Modifiers::NONE, Key::ArrowLeft);
    assert!(!has(&window, "Result"));
    click(&mut window, "Begin again");
    assert!(says(&window, "1 of "));
}

#[test]
fn the_wall_screen_is_twice_as_large_without_the_frame_and_ends_when_another_area_is_opened() {
    let mut window = lesson();
    let before = window.ctx.zoom_factor();
    for leave in ["key", "button", "area"] {
        click(&mut window, "Show on a wall screen");
        let times = window.ctx.zoom_factor() / before;
        assert!((2.0..=2.5).contains(&times), "{times}");
        assert!(
            !has(&window, "Keyboard") && !has(&window, "Book"),
            "no strip"
        );
        match leave {
            "key" => press(&mut window, Modifiers::NONE, Key::Escape),
            "button" => click(&mut window, "Leave the wall screen"),
            _ => go(&mut window, Area::Recipe),
        }
        assert!((window.ctx.zoom_factor() - before).abs() < 1e-6);
        assert!(has(&window, "Keyboard"));
    }
}

#[test]
fn on_the_wall_at_1024_by_700_predictions_and_level_stand_side_by_side_in_sight() {
    let mut window = window_on(NARROW, Area::Lesson, "hazelthwaite", None);
    ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
    click(&mut window, "Show on a wall screen");
    let sight = window.ctx.content_rect();
    let marks = |window: &Window| {
        let level = window.get_by_label_contains("Level against");
        level.rect()
    };
    let level = marks(&window);
    assert!(sight.contains_rect(level), "{level:?} in {sight:?}");
    let guesses = window.query_all_by_role(Role::Button).filter(|node| {
        let label = node.accesskit_node().label().unwrap_or_default();
        label.contains(": ") && !label.contains("drink")
    });
    let guesses: Vec<egui::Rect> = guesses.map(|node| node.rect()).collect();
    assert!(guesses.len() >= 3 * 7, "{}", guesses.len());
    for guess in &guesses {
        assert!(sight.contains_rect(*guess), "{guess:?} in {sight:?}");
        assert!(guess.right() <= level.left(), "{guess:?} beside {level:?}");
    }
    click(&mut window, "sweetness: sweeter");
    click(&mut window, "Reveal");
    let level = marks(&window);
    assert!(sight.contains_rect(level), "{level:?} in {sight:?}");
    assert!(has(&window, "1 of 1 predicted correctly"));
}

#[test]
fn the_end_has_a_score_over_all_steps_and_the_next_drink_is_one_click_away() {
    let mut window = lesson();
    click(&mut window, "sweetness: sweeter");
    click(&mut window, "body: fuller");
    click(&mut window, "Reveal");
    while has(&window, "Next step") {
        click(&mut window, "Next step");
        click(&mut window, "sweetness: the same");
        click(&mut window, "Reveal");
    }
    let score = row(&window, "In all steps ");
    assert!(score.ends_with("predicted correctly"), "{score}");
    let next = row(&window, "Next drink: ");
    click(&mut window, &next);
    let shown = window.state().view().shown.clone().unwrap();
    let name = window
        .state()
        .workbench()
        .book()
        .recipe(&shown.recipe)
        .unwrap()
        .name
        .clone();
    assert!(next.contains(&name), "{next}, {name}");
    assert!(says(&window, "1 of "), "the same swap, from its first step");
    assert!(says(
        &window,
        "Ketterby chestnut powder for Tambrel chestnut powder"
    ));
}

#[test]
fn the_wall_says_what_could_hurt_who_tastes() {
    let mut window = window_on(NARROW, Area::Lesson, "hazelthwaite", None);
    ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
    let hurts = |window: &Window| {
        let kinds = ["Allergen ", "Heat ", "Choking "];
        kinds.map(|kind| rows(window, kind).iter().any(|row| row.starts_with(kind)))
    };
    let in_the_window = hurts(&window);
    assert!(in_the_window.contains(&true));
    click(&mut window, "Show on a wall screen");
    let on_the_wall = hurts(&window);
    for (there, here) in in_the_window.into_iter().zip(on_the_wall) {
        assert!(here || !there, "{in_the_window:?}, {on_the_wall:?}");
    }
}

#[test]
fn four_learners_are_counted_hand_by_hand() {
    let mut window = lesson();
    for _ in 0..3 {
        click(&mut window, "One learner more");
    }
    assert!(has(&window, "4 learners"));
    for _ in 0..3 {
        click(&mut window, "sweetness: sweeter");
    }
    click(&mut window, "sweetness: the same");
    click(&mut window, "Reveal");
    assert!(says(&window, "steps: 3 of 4 correct"));
    assert!(has(&window, "3 of 4 predicted correctly"));
    click(&mut window, "Begin again");
    assert!(has(&window, "4 learners"));
}
