//! Cooling against measured cups and worked examples; the readings with their sources are in `tests/published-cases`.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]
#![allow(
    clippy::print_stdout,
    reason = "the deviations are what one wants to read"
)]

use evensip::balance::{
    Balance, CoolingBasis, CoolingError, CoolingLine, Measurand, balance, balance_version, cooling,
    curve_of, measured_cooling,
};
use evensip::book::{
    Book, Closure, ClosureKind, CoolingReading, CoolingRun, Entry, Place, Resolved, Role, Vessel,
    VesselId, Yardstick,
};
use evensip::book_file::{parse, write};
use evensip::quantity::Uncertain;
use evensip::say::Speaker;

use crate::sample::{book, cup, figure, line, recipe, sample, water};

fn in_mug(book: &Book, entries: Vec<Entry>) -> Balance {
    let cup = Some(VesselId::new("mug").unwrap());
    balance(
        book,
        Resolved {
            entries,
            cup,
            ..Resolved::default()
        },
        &Place::Settings,
    )
}

fn readings(points: &[(f64, f64)]) -> Vec<CoolingReading> {
    points
        .iter()
        .map(|&(minutes, celsius)| CoolingReading { minutes, celsius })
        .collect()
}

/// Minutes from one temperature to another in a cup in a room of 22 °C.
fn minutes(cup: &Vessel, from: f64, to: f64) -> Uncertain {
    let (curve, _) = curve_of(cup, 22.0, None).unwrap();
    let curve = curve.starting_at(Uncertain::exact(from), 22.0);
    curve.minutes_until(to).unwrap()
}

#[test]
fn a_lid_stretches_the_time_as_measured() {
    // Arduino temperature logger, 2012: the first 15 K from 82 °C took 13 min open and 21 min under a foam lid.
    let open = cup("mug", 300.0, 0.8);
    let with = |cooling_factor| {
        let mut mug = open.clone();
        mug.closures.push(Closure {
            kind: ClosureKind::Lid,
            price: None,
            head_room: 0.0,
            cooling_factor,
        });
        mug
    };
    let bare = minutes(&open, 82.0, 67.0);
    println!("82 to 67 °C in an open mug: {bare:?} for 13 min");
    assert!((bare.value - 13.0).abs() < 2.0 * bare.u);
    let stated = minutes(&with(Some(13.0 / 21.0)), 82.0, 67.0);
    assert!((stated.value / bare.value - 21.0 / 13.0).abs() < 1e-6);
    let lid = minutes(&with(None), 82.0, 67.0);
    println!(
        "under a lid of which nothing is stated: {lid:?}, {:.2} times as long",
        lid.value / bare.value
    );
    assert!((lid.value - 21.0).abs() < 2.0 * lid.u);
    assert!((1.4..2.4).contains(&(lid.value / bare.value)));
}

#[test]
fn a_stated_time_constant_is_met_within_its_doubt_and_narrows_what_other_cups_say() {
    let bare = cup("mug", 300.0, 0.8);
    let full = |cup: &Vessel| {
        let (curve, basis) = curve_of(cup, 22.0, Some(1.0)).unwrap();
        (curve.time_constant().unwrap(), basis)
    };
    let (unknown, basis) = full(&bare);
    assert_eq!(basis, CoolingBasis::PublishedCups);
    println!("a full mug of which nothing is stated: {unknown:?}");
    for minutes in [20.0, 40.0, 80.0] {
        let mut mug = bare.clone();
        mug.cooling_minutes = Some(minutes);
        let (stated, basis) = full(&mug);
        assert_eq!(basis, CoolingBasis::TimeConstant);
        println!("stated as {minutes} min: {stated:?}");
        assert!((stated.value / minutes - 1.0).abs() < 0.15, "{stated:?}");
        assert!(stated.u / stated.value < 0.6 * unknown.u / unknown.value);
        // What other cups say draws it towards them.
        let between = (stated.value - minutes) * (unknown.value - minutes);
        assert!(between > 0.0, "{stated:?} {unknown:?}");
    }
}

#[test]
fn readings_of_the_cup_decide_when_a_drink_is_drinkable() {
    let mut mug = cup("mug", 300.0, 0.8);
    mug.cooling_minutes = Some(60.0);
    let entries = || vec![line("tea", "water", 250.0, 90.0, Role::Tea)];
    let by_constant = {
        let book = book(vec![water()], vec![mug.clone()], recipe(Vec::new()));
        figure(&in_mug(&book, entries()), Measurand::MinutesToDrinkable)
    };
    // A cup that cools by a constant of 20 min, whatever law the readings are fitted with.
    let points: Vec<(f64, f64)> = (0..8)
        .map(|at| f64::from(at) * 3.0)
        .map(|minutes| (minutes, 22.0 + 58.0 * (-minutes / 20.0).exp()))
        .collect();
    mug.cooling_run = Some(CoolingRun {
        room: 22.0,
        millilitres: Some(250.0),
        readings: readings(&points),
    });
    let book = book(vec![water()], vec![mug], recipe(Vec::new()));
    let found = in_mug(&book, entries());
    let minutes = figure(&found, Measurand::MinutesToDrinkable);
    let served = figure(&found, Measurand::ServingTemperature);
    let expected = 20.0 * ((served - 22.0) / (book.settings.hot_drinking_temperature - 22.0)).ln();
    assert!(
        (minutes - expected).abs() < 1.0 && minutes < 0.7 * by_constant,
        "{minutes} for {expected}, against {by_constant}"
    );
    let cools = cooling(&book, &found).unwrap();
    assert_eq!(cools.basis, CoolingBasis::Readings(8));
    let [hot, drinking, lukewarm] = cools.milestones;
    let value = drinking.minutes.unwrap();
    assert!((value.value - minutes).abs() < 1e-9 && value.u > 0.0);
    let reported = found.reported(Measurand::MinutesToDrinkable);
    assert!(
        reported.u.unwrap() > 0.5 * value.u,
        "{reported:?} {value:?}"
    );
    let order = [hot, drinking, lukewarm].map(|milestone| milestone.minutes.unwrap().value);
    assert!(order[0] < order[1] && order[1] < order[2], "{order:?}");
    for milestone in [hot, drinking, lukewarm] {
        let (minutes, [earliest, latest]) = (
            milestone.minutes.unwrap().value,
            milestone.interval.unwrap(),
        );
        assert!(earliest < minutes && latest > minutes);
        // Rates are known within factors: the late end is the farther one.
        assert!(latest - minutes >= minutes - earliest);
    }
    let words = Speaker::without_book().about_and_latest(&hot).unwrap();
    assert!(
        words.starts_with("about ") && words.contains(", at the latest "),
        "{words}"
    );
}

#[test]
fn the_minutes_of_a_drink_are_the_same_as_a_figure_and_on_its_curve() {
    let book = sample();
    let mut hot = 0;
    for recipe in &book.recipes {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in versions.chain([None]) {
            let found = balance_version(&book, recipe, version).unwrap();
            let Some(cools) = cooling(&book, &found) else {
                continue;
            };
            hot += 1;
            let drinking = cools.milestone(CoolingLine::Drinking).minutes.unwrap();
            let minutes = figure(&found, Measurand::MinutesToDrinkable);
            assert!(
                (minutes - drinking.value).abs() < 1e-9,
                "{} {version:?}: {minutes} {drinking:?}",
                recipe.name
            );
        }
    }
    assert!(hot > 3, "{hot} hot drinks");
}

#[test]
fn less_in_a_cup_is_drinkable_sooner() {
    let minutes = |grams: f64| {
        let cup = cup("mug", 0.0, 0.8);
        let book = book(vec![water()], vec![cup], recipe(Vec::new()));
        let entries = vec![line("tea", "water", grams, 85.0, Role::Tea)];
        figure(&in_mug(&book, entries), Measurand::MinutesToDrinkable)
    };
    let (little, much) = (minutes(100.0), minutes(400.0));
    println!(
        "85 to 58 °C in a cup of 500 ml: {little:.1} min with 100 ml, {much:.1} min with 400 ml"
    );
    assert!(much > 1.8 * little, "{little} {much}");
}

#[test]
fn readings_rate_and_yardsticks_survive_a_save() {
    let mut mug = cup("mug", 300.0, 0.8);
    mug.cooling_run = Some(CoolingRun {
        room: 21.5,
        millilitres: None,
        readings: readings(&[(0.0, 82.0), (4.5, 75.25)]),
    });
    let mut book = book(vec![water()], vec![mug], recipe(Vec::new()));
    book.settings.ice_melt_rate = Some(1.8);
    book.settings.yardsticks = Yardstick::ALL.to_vec();
    let (read, _) = parse(&write(&book)).unwrap();
    assert_eq!(read, book);
}

#[test]
fn readings_that_give_no_curve_say_why_and_those_of_a_slow_cup_are_no_less_than_others() {
    let mut mug = cup("mug", 300.0, 0.8);
    mug.cooling_minutes = Some(40.0);
    let mut with = |points: &[(f64, f64)]| {
        let run = CoolingRun {
            room: 21.0,
            millilitres: None,
            readings: readings(points),
        };
        let found = measured_cooling(&mug, &run).err();
        mug.cooling_run = Some(run);
        (found, curve_of(&mug, 21.0, None).unwrap().1)
    };
    let room = 21.0;
    for (points, error) in [
        (
            &[(0.0, 80.0), (5.0, 74.0)][..],
            CoolingError::TooFew { found: 2, room },
        ),
        // The same look three times.
        (
            &[(3.0, 61.0), (3.0, 61.5), (3.0, 62.0)],
            CoolingError::TooFew { found: 1, room },
        ),
        (
            &[(0.0, 18.0), (5.0, 17.0), (9.0, f64::NAN), (12.0, 16.0)],
            CoolingError::TooFew { found: 0, room },
        ),
        (
            &[(0.0, 61.0), (10.0, 66.0), (20.0, 71.0)],
            CoolingError::NotFalling { room },
        ),
        (
            &[(0.0, 61.0), (20.0, 61.0), (40.0, 61.0)],
            CoolingError::NotFalling { room },
        ),
    ] {
        assert_eq!(
            with(points),
            (Some(error), CoolingBasis::TimeConstant),
            "{points:?}"
        );
    }
    // A thermometer does not see what a good cup loses in half a minute.
    let flat = &[(0.0, 84.0), (0.2, 84.0), (0.4, 84.0)];
    assert_eq!(with(flat), (None, CoolingBasis::Readings(3)));
}
