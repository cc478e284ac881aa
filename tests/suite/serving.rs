//! The sheets about the drink as it is served, from outside: what is typed there and what is then said.

use std::sync::Arc;

use egui::{Key, Modifiers, Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Book, Entry, IngredientId, Nutrient, RecipeId, VersionId, Vessel, Yardstick};
use evensip::ui::theme::Appearance;
use evensip::ui::{App, Area, Opening};
use evensip::workbench::{NoPicker, Sample, Shown};

type Window = Harness<'static, App>;

fn window_of(size: [f32; 2]) -> Window {
    let mut window = Harness::builder()
        .with_size(vec2(size[0], size[1]))
        .with_theme(egui::Theme::Light)
        .with_max_steps(16)
        .build_eframe(|cc| App::with_picker(cc, Opening::default(), Arc::new(NoPicker)));
    window.run();
    window
}

/// A window that is high enough for every sheet, so that nothing has to be scrolled to.
fn serving(recipe: &str, version: Option<&str>) -> Window {
    let mut window = window_of([1360.0, 2600.0]);
    show(&mut window, recipe, version);
    window
}

fn show(window: &mut Window, recipe: &str, version: Option<&str>) {
    let version = version.map(|version| VersionId::new(version).unwrap());
    let view = window.state_mut().view_mut();
    view.show(Shown {
        recipe: RecipeId::new(recipe).unwrap(),
        version,
    });
    view.area = Area::Serving;
    window.run();
}

fn type_into(window: &mut Window, field: &str, text: &str) {
    window.get_by_label(field).focus();
    window.run();
    window.get_by_label(field).type_text(text);
    window.run();
}

fn press(window: &mut Window, modifiers: Modifiers, key: Key) {
    window.key_press_modifiers(modifiers, key);
    window.run();
}

/// The sentences of the rows that have these words in them.
fn rows(window: &Window, words: &str) -> Vec<String> {
    let said =
        |node: &egui_kittest::Node<'_>| node.value().or_else(|| node.accesskit_node().label());
    window
        .query_all_by_label_contains(words)
        .filter_map(|node| said(&node))
        .collect()
}

/// The sentence of the row that begins so.
fn row(window: &Window, begin: &str) -> String {
    let mut rows = rows(window, begin).into_iter();
    rows.find(|row| row.starts_with(begin))
        .unwrap_or_else(|| panic!("no row begins with `{begin}`"))
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
    assert!(
        window
            .query_by_label_contains("Based on 4 thermometer readings")
            .is_some()
    );
    for _ in 0..4 {
        press(&mut window, Modifiers::COMMAND, Key::Z);
    }
    assert!((number(&window, LUKEWARM) - before).abs() < 1e-9);
    assert!(
        window
            .query_by_label_contains("Based on the cup’s stated cooling time")
            .is_some()
    );
}

#[test]
fn half_a_reading_and_one_that_can_not_be_read_change_nothing() {
    let mut window = serving("hazelthwaite", None);
    let stamp = window.state().workbench().stamp();
    type_into(&mut window, "Minutes of reading 1", "5");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(
        window
            .get_by_label("Minutes of reading 1")
            .value()
            .as_deref(),
        Some("5")
    );
    type_into(&mut window, "Temperature of reading 1", "very hot");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(
        window
            .get_by_label("Temperature of reading 1")
            .value()
            .as_deref(),
        Some("very hot")
    );
    assert!(window.query_by_label_contains("not changed").is_some());
    assert_eq!(window.state().workbench().stamp(), stamp);
}

#[test]
fn a_reading_is_taken_away_with_its_button() {
    let mut window = serving("hazelthwaite", None);
    type_into(&mut window, "Minutes of reading 1", "0");
    type_into(&mut window, "Temperature of reading 1", "80");
    assert!(
        window
            .query_by_label_contains("only 1 reading is usable")
            .is_some()
    );
    window.get_by_label("Remove reading 1").click();
    window.run();
    assert!(window.query_by_label("Remove reading 1").is_none());
    let book = window.state().workbench().book().clone();
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
    assert!(window.query_by_label_contains(publisher).is_none());
    let toggle = |window: &mut Window| {
        window
            .get_by_role_and_label(Role::CheckBox, "Beverage grade, Singapore")
            .click();
        window.run();
    };
    toggle(&mut window);
    assert!(window.query_by_label_contains(publisher).is_some());
    let on = &window.state().workbench().book().settings.yardsticks;
    assert!(on.contains(&Yardstick::SingaporeGrade), "{on:?}");
    toggle(&mut window);
    assert!(window.query_by_label_contains(publisher).is_none());
}

#[test]
fn a_cup_of_water_on_a_spoon_of_leaf_gives_about_a_hundred_grams() {
    // Common practice, no source: 125 ml of water on a spoon, a little over 15 ml, of leaf.
    let mut window = serving("hazelthwaite", None);
    window.get_by_label("Plan: from the leaf you brew").click();
    window.run();
    type_into(&mut window, "Water of the brew", "125 ml");
    type_into(&mut window, "Leaf of the brew", "16 ml");
    let ready = number(&window, "ready tea");
    assert!((ready - 104.0).abs() < 5.0, "{ready}");
    assert!(row(&window, "caffeine:").contains("not known"));
}

#[test]
fn the_planner_gives_pots_and_times_and_carries_its_strength_into_the_book() {
    let mut window = serving("hazelthwaite", None);
    window.get_by_label("Tea: Black tea, brewed").click();
    window.run();
    type_into(&mut window, "Ready tea", "4 l");
    type_into(&mut window, "Strength of the tea", "0.45");
    type_into(&mut window, "Water that a pot holds", "1.5 l");
    type_into(&mut window, "Time when the water is poured on", "9:50");
    assert_eq!(row(&window, "pots"), "pots: 3");
    assert!(
        window
            .query_by_label_contains("Ready at 09:55, use by 13:55")
            .is_some()
    );
    window
        .get_by_label("Use these figures for Black tea, brewed")
        .click();
    window.run();
    let tea = window
        .state()
        .workbench()
        .book()
        .ingredient(&IngredientId::new("black-tea").unwrap())
        .unwrap()
        .clone();
    let solids = tea.composition.get(Nutrient::TeaSolids).unwrap();
    assert!((solids.value - 0.45).abs() < 1e-9);
    press(&mut window, Modifiers::COMMAND, Key::Z);
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
    assert!(
        window
            .query_by_label_contains("is not a time: enter hh:mm")
            .is_some()
    );
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
    window.run();
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
    window.get_by_label("Book").click();
    window.run();
    window
        .get_by_role_and_label(
            Role::Button,
            Sample::UnreadLabels.name(evensip::say::Speaker::without_book()),
        )
        .click();
    window.run();
    window.state_mut().view_mut().area = Area::Serving;
    window.run();
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
    let window = serving("hazelthwaite", None);
    let mut book = window.state().workbench().book().as_ref().clone();
    change(&mut book);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    std::fs::write(&path, evensip::book_file::write(&book)).unwrap();
    let mut window = Harness::builder()
        .with_size(vec2(1360.0, 2600.0))
        .with_max_steps(16)
        .build_eframe(|cc| App::with_picker(cc, Opening { path: Some(path) }, Arc::new(NoPicker)));
    window.run();
    show(&mut window, "hazelthwaite", None);
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
        assert!(window.query_by_label_contains(words).is_some(), "{words}");
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
                line.temperature = Some(88.0);
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
    window.run();
    assert!(window.query_by_label_contains("How cost").is_some());
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
        for size in [[1024.0, 700.0], [1920.0, 1080.0]] {
            let mut window = window_of(size);
            window.state_mut().view_mut().appearance = appearance;
            let book = window.state().workbench().book().clone();
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
    let mut window = window_of([1024.0, 700.0]);
    show(&mut window, "hazelthwaite", None);
    let heading = |window: &Window| {
        window
            .get_by_role_and_label(Role::Heading, "Cost and margin")
            .rect()
            .top()
    };
    let before = heading(&window);
    window.get_by_label("Go to Cost and margin").focus();
    window.run();
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(
        heading(&window) < before - 200.0,
        "{before} and then {}",
        heading(&window)
    );
}
