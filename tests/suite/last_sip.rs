//! From the counter to the last sip: against the cooling curve, by hand, and the laws of ice that melts.

#![allow(
    clippy::print_stdout,
    reason = "the course of a drink is what one wants to read"
)]

use evensip::balance::{
    LastSip, LastSipRemark, Measurand, OtherWay, cooling, last_sip, other_ways, standing,
};
use evensip::book::Book;
use evensip::say::{Language, Speaker};

use crate::sample::{balance_of, sample};

fn course(book: &Book, recipe: &str, version: Option<&str>) -> LastSip {
    let minutes: Vec<f64> = (0..=60).map(f64::from).collect();
    let balance = balance_of(book, recipe, version);
    last_sip(book, &balance, None, &minutes).unwrap()
}

#[test]
fn a_hot_drink_follows_the_curve_of_its_cup_and_begins_as_it_is_handed_over() {
    let book = sample();
    let balance = balance_of(&book, "hob-and-ember", None);
    let curve = cooling(&book, &balance).unwrap().curve;
    let found = course(&book, "hob-and-ember", None);
    for sip in &found.sips {
        let by_curve = curve.temperature_at(sip.minutes);
        assert!((sip.temperature.value - by_curve.value).abs() < 1e-9);
        assert!(sip.ice.value.abs() < 1e-12);
        assert_eq!(
            sip.tea_strength, found.sips[0].tea_strength,
            "nothing thins it"
        );
    }
    let first = &found.sips[0];
    let served = balance
        .figures
        .complete(Measurand::ServingTemperature)
        .unwrap();
    assert!((first.temperature.value - served).abs() < 1e-9);
    assert!(found.melt_rate.is_none());
    // Fructose is sweeter in a cooler drink, so a drink with much of it is.
    let fruity = course(&book, "pear-drift", Some("hot"));
    let sweetness = |at: usize| fruity.sips[at].sweetness.unwrap().value;
    assert!(sweetness(60) > 1.01 * sweetness(0));
}

#[test]
fn ice_melts_as_standing_says_and_the_drink_stays_near_freezing_until_it_is_gone() {
    let book = sample();
    let balance = balance_of(&book, "pear-drift", None);
    let found = course(&book, "pear-drift", None);
    let stood = standing(&book, &balance, &[10.0, 30.0]);
    for stood in stood {
        let sip = found
            .sips
            .iter()
            .find(|sip| (sip.minutes - stood.minutes).abs() < 1e-9)
            .unwrap();
        assert!((sip.ice.value - stood.ice_left.value).abs() < 1e-6);
        let tea = (
            sip.tea_strength.unwrap().value,
            stood.tea_strength.unwrap().value,
        );
        assert!((tea.0 - tea.1).abs() < 1e-9, "{tea:?}");
    }
    for pair in found.sips.windows(2) {
        assert!(
            pair[1].temperature.value >= pair[0].temperature.value - 1e-9,
            "it only warms"
        );
        assert!(
            pair[1].ice.value <= pair[0].ice.value + 1e-9,
            "ice only melts"
        );
        assert!(
            pair[1].temperature.u + 1e-9 >= pair[0].temperature.u,
            "and is known less and less"
        );
    }
    for sip in found.sips.iter().filter(|sip| sip.ice.value > 0.0) {
        assert!(sip.temperature.value <= 0.0, "{sip:?}");
    }
}

#[test]
fn a_drink_whose_ice_is_gone_warms_by_the_same_heat() {
    let mut book = sample();
    // So fast that it is gone after a few minutes: 60 g a minute take 20.01 kJ, as much as the room gives a drink of 0 °C.
    book.settings.ice_melt_rate = Some(60.0);
    let room = book.settings.room_temperature.celsius();
    let found = course(&book, "pear-drift", None);
    let warm = found.sips.iter().filter(|sip| sip.ice.value <= 0.0);
    let warm: Vec<_> = warm.collect();
    assert!(warm.len() > 50);
    // By hand: some 420 g of nearly water hold 1.72 kJ/K; a minute at 0 °C warms them by 20.01/1.72 = 11.6 K of 22 K at first.
    let [first, second] = [warm[1], warm[2]];
    let part = (room - second.temperature.value) / (room - first.temperature.value);
    let capacity = 0.428 * 4.05;
    let by_hand = (-60.0 * 0.333_55 / capacity / room).exp();
    assert!((part - by_hand).abs() < 0.02, "{part} against {by_hand}");
    assert!(warm.last().unwrap().temperature.value < room + 1e-9);
}

#[test]
fn the_best_sip_is_the_nearest_and_all_around_it_are_within_a_step() {
    let book = sample();
    for (recipe, version) in [
        ("hob-and-ember", None),
        ("pear-drift", None),
        ("snowgate", None),
        ("hazelthwaite", Some("soy")),
    ] {
        let found = course(&book, recipe, version);
        let best = found.best().unwrap();
        assert!(found.sips.iter().all(|sip| sip.distance >= best.distance));
        if let Some([from, to]) = found.level_between() {
            assert!(from <= best.minutes && best.minutes <= to);
            let inside = found
                .sips
                .iter()
                .filter(|sip| (from..=to).contains(&sip.minutes));
            for sip in inside {
                assert_eq!(sip.is_level(), Some(true), "{recipe} {}", sip.minutes);
            }
        }
    }
}

#[test]
fn less_ice_and_another_lid_are_tried_and_told() {
    let book = sample();
    let minutes: Vec<f64> = (0..=60).map(f64::from).collect();
    let iced = balance_of(&book, "pear-drift", None);
    let ways = other_ways(&book, &iced, None, &minutes);
    assert!(ways.iter().all(|(way, _)| matches!(way, OtherWay::Ice(_))) && ways.len() == 2);
    let hot = balance_of(&book, "hob-and-ember", None);
    let ways = other_ways(&book, &hot, None, &minutes);
    assert_eq!(ways.len(), 1);
    let usual = course(&book, "hob-and-ember", None);
    let (way, open) = &ways[0];
    let last = |course: &LastSip| course.sips.last().unwrap().temperature.value;
    assert!(
        last(open) < last(&usual) - 2.0,
        "an open cup cools faster than one with a lid"
    );
    let speaker = Speaker::new(&book);
    let german = speaker.in_language(Language::from_code("de").unwrap());
    let said = speaker.last_sip_otherwise(way, open).unwrap();
    println!("{said}");
    assert!(said.starts_with("Open: "), "{said}");
    assert!(
        german
            .last_sip_otherwise(way, open)
            .unwrap()
            .starts_with("Offen: ")
    );
    for remark in usual.remarks() {
        println!("{}", speaker.last_sip_remark(&remark));
        assert!(!german.last_sip_remark(&remark).is_empty());
    }
    let iced = course(&book, "pear-drift", None);
    assert!(
        iced.remarks()
            .iter()
            .any(|remark| matches!(remark, LastSipRemark::Melts(_)))
    );
}

#[test]
fn a_drink_is_at_its_best_where_it_was_tasted_and_an_iced_one_as_it_is_handed_over() {
    let book = sample();
    // Handed over at 59 °C and tasted cooler.
    let hot = course(&book, "snowgate", None);
    assert!(hot.best().unwrap().minutes > 0.0);
    let iced = course(&book, "pear-drift", None);
    assert!(iced.best().unwrap().minutes < 1.0);
    assert!(
        iced.level_between()
            .is_some_and(|[from, to]| from < 1.0 && to > 5.0)
    );
    // One that is handed over cooler than it is tasted is best at once.
    let cool = course(&book, "hob-and-ember", None);
    assert!(cool.best().unwrap().minutes < 1.0 && cool.best().unwrap().distance.unwrap() < 0.1);
}
