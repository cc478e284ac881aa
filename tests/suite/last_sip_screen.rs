//! The drink from the counter to the last sip, where it is served.

use evensip::ui::Area;
use evensip::workbench::LAST_SIP_MINUTES;

use crate::at_the_window::{
    NARROW, TALL, WIDE, Window, copied, retype, rows, says, settle, show, speak, type_into,
    window_on,
};

#[test]
fn it_is_there_in_a_small_window_and_in_a_wide_one() {
    for size in [NARROW, WIDE] {
        let mut window = window_on(size, Area::Serving, "hob-and-ember", None);
        settle(&mut window);
        let calls = window.state().workbench().engine_calls();
        settle(&mut window);
        assert_eq!(window.state().workbench().engine_calls(), calls);
        assert!(says(&window, "From the counter to the last sip"));
    }
}

fn serving(recipe: &str) -> Window {
    window_on(TALL, Area::Serving, recipe, None)
}

#[test]
fn it_is_told_when_a_hot_drink_is_at_its_best_and_what_it_is_when_it_arrives() {
    let mut window = serving("hazelthwaite");
    assert!(says(&window, "From the counter to the last sip"));
    assert!(says(&window, "It tastes right from"));
    assert!(says(&window, "It is at its best after"));
    assert!(rows(&window, "temperature over 60").len() == 1);
    assert!(!says(&window, "on the way it has"));
    type_into(&mut window, "Minutes on the way to the guest", "20");
    settle(&mut window);
    assert!(says(&window, "After 20\u{a0}min on the way it has"));
    retype(&mut window, "Minutes on the way to the guest", "90");
    settle(&mut window);
    assert!(says(&window, "The picture ends after 60\u{a0}min"));
    retype(&mut window, "Minutes on the way to the guest", "");
    settle(&mut window);
    assert!(!says(&window, "on the way it has"));
}

#[test]
fn less_ice_is_tried_for_a_drink_with_ice_and_minutes_on_the_way_stay_for_the_next_drink() {
    let mut window = serving("pear-drift");
    assert!(says(&window, "With 75\u{a0}% of the ice: "));
    assert!(says(&window, "Its ice melts by"));
    type_into(&mut window, "Minutes on the way to the guest", "15");
    show(&mut window, "hob-and-ember", None);
    settle(&mut window);
    assert!(says(&window, "After 15\u{a0}min on the way it has"));
}

#[test]
fn the_minutes_are_copied_one_by_one_and_are_those_of_the_strips() {
    let mut window = serving("pear-drift");
    let table = copied(&mut window, "from the counter to the last sip");
    assert_eq!(table.len(), usize::from(LAST_SIP_MINUTES) + 2, "{table:?}");
    let [first, last] = [&table[1], &table[table.len() - 1]].map(|row| row[7].parse::<f64>());
    assert!(first.unwrap() > last.unwrap(), "its ice melts");
}

#[test]
fn it_is_told_in_german() {
    let mut window = serving("hazelthwaite");
    speak(&mut window, "de");
    assert!(says(&window, "Von der Theke bis zum letzten Schluck"));
    assert!(says(&window, "Am besten ist es nach"));
}
