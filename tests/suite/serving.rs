//! The sheets about the drink as it is served, from outside: what is typed there and what is then said.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::book::{Book, Entry, IngredientId, Nutrient, RecipeId, Vessel, Yardstick};
use evensip::say::Speaker;
use evensip::ui::Area;
use evensip::ui::theme::Appearance;
use evensip::workbench::Sample;

use crate::at_the_window::{
    NARROW, TALL, WIDE, Window, WindowBuilder, book, click, focus, go, has, look, press, row, rows,
    says, settle, show, text_of, tick, type_into, undo, window_on,
};
use crate::sample::sample;

/// A window that is high enough for every sheet, so that nothing has to be scrolled to.
fn serving(recipe: &str, version: Option<&str>) -> Window {
    window_on(TALL, Area::Serving, recipe, version)
}

/// The number behind the colon of a row.
fn number(window: &Window, begin: &str) -> f64 {
    let row = row(window, begin);
    let number = row
        .split(": ")
        .nth(1)
        .and_then(|rest| rest.split(' ').next());
    number
        .and_then(|number| number.parse().ok())
        .unwrap_or_else(|| panic!("no number in `{row}`"))
}

const LUKEWARM: &str = "to lukewarm, 37\u{a0}°C";

/// Types a thermometer run of a quickly cooling cup: τ of 20 min in a room of 22 °C.
fn type_readings(window: &mut Window) {
    for (at, (minutes, celsius)) in [("0", "82"), ("10", "58.4"), ("20", "44.1"), ("30", "35.4")]
        .iter()
        .enumerate()
    {
        type_into(window, &format!("Minutes of reading {}", at + 1), minutes);
        type_into(
            window,
            &format!("Temperature of reading {}", at + 1),
            celsius,
        );
    }
}

#[test]
fn readings_that_are_typed_change_the_minutes_and_undo_takes_them_back() {
    let mut window = serving("hazelthwaite", None);
    let before = number(&window, LUKEWARM);
    type_readings(&mut window);
    let cup = window
        .state()
        .workbench()
        .book()
        .vessels
        .iter()
        .find(|vessel| vessel.id.as_str() != "stoneware-mug" && vessel.cooling_run.is_some());
    assert_eq!(
        cup.and_then(|cup| cup.cooling_run.clone())
            .map(|run| run.readings.len()),
        Some(4)
    );
    let after = number(&window, LUKEWARM);
    assert!(after < 0.8 * before, "{before} and then {after}");
    assert!(says(&window, "Based on 4 thermometer readings"));
    for _ in 0..4 {
        undo(&mut window);
    }
    assert!((number(&window, LUKEWARM) - before).abs() < 1e-9);
    assert!(says(&window, "Based on the cup’s stated cooling time"));
}

#[test]
fn half_a_reading_and_one_that_can_not_be_read_change_nothing() {
    let mut window = serving("hazelthwaite", None);
    let stamp = window.state().workbench().stamp();
    type_into(&mut window, "Minutes of reading 1", "5");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(text_of(&window, "Minutes of reading 1"), "5");
    type_into(&mut window, "Temperature of reading 1", "very hot");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(text_of(&window, "Temperature of reading 1"), "very hot");
    assert!(says(&window, "not changed"));
    assert_eq!(window.state().workbench().stamp(), stamp);
}

#[test]
fn a_reading_is_taken_away_with_its_button() {
    let mut window = serving("hazelthwaite", None);
    type_into(&mut window, "Minutes of reading 1", "0");
    type_into(&mut window, "Temperature of reading 1", "80");
    assert!(says(&window, "only 1 reading is usable"));
    click(&mut window, "Remove reading 1");
    assert!(!has(&window, "Remove reading 1"));
    let book = book(&window);
    assert!(
        book.vessels
            .iter()
            .filter(|vessel| vessel.id.as_str() != "stoneware-mug")
            .all(|vessel| vessel.cooling_run.is_none())
    );
}

#[test]
fn a_yardstick_that_is_turned_on_appears_with_its_publisher_and_goes_again() {
    let mut window = serving("hazelthwaite", None);
    let publisher = "Singapore Food Regulations";
    assert!(!says(&window, publisher));
    let toggle = |window: &mut Window| tick(window, "Beverage grade, Singapore");
    toggle(&mut window);
    assert!(says(&window, publisher));
    let on = &window.state().workbench().book().settings.yardsticks;
    assert!(on.contains(&Yardstick::SingaporeGrade), "{on:?}");
    toggle(&mut window);
    assert!(!says(&window, publisher));
}

#[test]
fn a_cup_of_water_on_a_spoon_of_leaf_gives_about_a_hundred_grams() {
    // Common practice, no source: 125 ml of water on a spoon, a little over 15 ml, of leaf.
    let mut window = serving("hazelthwaite", None);
    click(&mut window, "Plan: from the leaf you brew");
    type_into(&mut window, "Water of the brew", "125 ml");
    type_into(&mut window, "Leaf of the brew", "16 ml");
    let ready = number(&window, "ready tea");
    assert!((ready - 104.0).abs() < 5.0, "{ready}");
    assert!(row(&window, "caffeine:").contains("not known"));
}

#[test]
fn the_planner_gives_pots_and_times_and_carries_its_strength_into_the_book() {
    let mut window = serving("hazelthwaite", None);
    click(&mut window, "Tea: Black tea, brewed");
    type_into(&mut window, "Ready tea", "4 l");
    type_into(&mut window, "Strength of the tea", "0.45");
    type_into(&mut window, "Water that a pot holds", "1.5 l");
    type_into(&mut window, "Time when the water is poured on", "9:50");
    assert_eq!(row(&window, "pots"), "pots: 3");
    assert!(says(&window, "Ready at 09:55, use by 13:55"));
    click(&mut window, "Use these figures for Black tea, brewed");
    let tea = window
        .state()
        .workbench()
        .book()
        .ingredient(&IngredientId::new("black-tea").unwrap())
        .unwrap()
        .clone();
    let solids = tea.composition.get(Nutrient::TeaSolids).unwrap();
    assert!((solids.value - 0.45).abs() < 1e-9);
    undo(&mut window);
    let tea = window
        .state()
        .workbench()
        .book()
        .ingredient(&IngredientId::new("black-tea").unwrap())
        .unwrap()
        .clone();
    assert!((tea.composition.get(Nutrient::TeaSolids).unwrap().value - 0.3).abs() < 1e-9);
}

#[test]
fn a_time_that_is_none_is_refused_in_words() {
    let mut window = serving("hazelthwaite", None);
    type_into(&mut window, "Time when the water is poured on", "25:10");
    assert!(says(&window, "is not a time: enter hh:mm"));
}

#[test]
fn a_drink_with_ice_thins_as_it_stands_and_weighings_give_the_melt_rate() {
    let mut window = serving("pear-drift", None);
    let ice = |window: &Window, minutes: &str| {
        let row = row(window, &format!("{minutes}\u{a0}min: ice left"));
        row.split("ice left ")
            .nth(1)
            .and_then(|rest| rest.split(' ').next()?.parse::<f64>().ok())
            .unwrap()
    };
    assert!(ice(&window, "0") > ice(&window, "5") && ice(&window, "5") > ice(&window, "20"));
    let slow = ice(&window, "20");
    for (at, (minutes, grams)) in [("0", "100"), ("5", "88"), ("10", "76")].iter().enumerate() {
        type_into(
            &mut window,
            &format!("Minutes of weighing {}", at + 1),
            minutes,
        );
        type_into(&mut window, &format!("Grams of weighing {}", at + 1), grams);
    }
    window.get_by_label_contains("Use 2.4").click();
    settle(&mut window);
    let rate = window.state().workbench().book().settings.ice_melt_rate;
    assert!(
        rate.is_some_and(|rate| (rate - 2.4).abs() < 1e-9),
        "{rate:?}"
    );
    assert!(ice(&window, "20") < slow);
}

#[test]
fn a_missing_figure_shows_its_name_and_never_nothing() {
    let mut window = serving("hazelthwaite", None);
    click(&mut window, "Book");
    let unread = Sample::UnreadLabels.name(Speaker::without_book());
    click(&mut window, unread);
    go(&mut window, Area::Serving);
    let rows = rows(&window, "per drink not known");
    assert!(!rows.is_empty());
    for row in rows {
        assert!(
            row.contains("not stated: ") && !row.contains("per drink 0"),
            "{row}"
        );
    }
}

/// A window on the sample book after a change, with the drink hazelthwaite in hand.
fn serving_changed(change: impl FnOnce(&mut Book)) -> Window {
    let mut book = sample();
    change(&mut book);
    let mut window = WindowBuilder::of(TALL).with_book(book).open();
    show(&mut window, "hazelthwaite", None);
    go(&mut window, Area::Serving);
    window
}

#[test]
fn a_cup_without_a_cooling_time_cools_like_published_ones_and_says_what_to_do() {
    let window = serving_changed(|book| {
        let cups: Vec<Vessel> = book
            .vessels
            .iter()
            .map(|cup| cup.as_ref().clone())
            .collect();
        for cup in cups {
            book.vessels.put(Vessel {
                cooling_minutes: None,
                ..cup
            });
        }
    });
    assert!(number(&window, LUKEWARM) > 0.0);
    for words in [
        "Based on published cups alone",
        "To narrow it: read a thermometer",
    ] {
        assert!(says(&window, words), "{words}");
    }
}

#[test]
fn the_end_of_very_hot_is_given_by_its_late_end() {
    let window = serving_changed(|book| {
        let mut recipe = book
            .recipe(&RecipeId::new("hazelthwaite").unwrap())
            .unwrap()
            .as_ref()
            .clone();
        for entry in &mut recipe.entries {
            if let Entry::Line(line) = entry {
                line.temperature = Some(88.0.into());
            }
        }
        book.recipes.put(recipe);
    });
    let row = row(&window, "below 65\u{a0}°C, no longer very hot");
    let latest = number(&window, "below 65\u{a0}°C, no longer very hot");
    assert!(
        row.contains("about ") && row.ends_with(&format!("at the latest {latest}\u{a0}min")),
        "{row}"
    );
    let likely: f64 = row
        .split("about ")
        .nth(1)
        .unwrap()
        .split(char::is_whitespace)
        .next()
        .unwrap()
        .parse()
        .unwrap();
    assert!(likely > 3.0 && latest > likely + 1.0, "{row}");
}

#[test]
fn the_cost_names_every_part_and_a_figure_can_be_opened() {
    let mut window = serving("hazelthwaite", None);
    for part in [
        "paper cup 500",
        "lid",
        "sleeve",
        "menu price, sales tax included",
        "margin",
    ] {
        assert!(number(&window, &format!("{part}:")) > 0.0, "{part}");
    }
    window.get_by_label_contains("cost of the drink:").click();
    settle(&mut window);
    assert!(says(&window, "How cost"));
}

#[test]
fn the_engine_rests_while_nothing_is_typed_and_when_the_planner_is_typed_in() {
    let mut window = serving("pear-drift", None);
    let before = window.state().workbench().engine_calls();
    for _ in 0..100 {
        window.step();
    }
    type_into(&mut window, "Ready tea", "2 l");
    assert_eq!(window.state().workbench().engine_calls(), before);
}

#[test]
fn every_version_is_drawn_in_both_appearances_and_sizes() {
    for appearance in [Appearance::Light, Appearance::Dark] {
        for size in [NARROW, WIDE] {
            let mut window = window_on(size, Area::Serving, "hazelthwaite", None);
            look(&mut window, appearance);
            let book = book(&window);
            for recipe in &book.recipes {
                let versions = recipe
                    .versions
                    .iter()
                    .map(|version| Some(version.id.as_str()));
                for version in std::iter::once(None).chain(versions) {
                    show(&mut window, recipe.id.as_str(), version);
                }
            }
        }
    }
}

#[test]
fn a_sheet_is_reached_with_the_keyboard() {
    let mut window = window_on(NARROW, Area::Serving, "hazelthwaite", None);
    let heading = |window: &Window| {
        window
            .get_by_role_and_label(Role::Heading, "Cost and margin")
            .rect()
            .top()
    };
    let before = heading(&window);
    focus(&mut window, "Go to Cost and margin");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(
        heading(&window) < before - 200.0,
        "{before} and then {}",
        heading(&window)
    );
}
