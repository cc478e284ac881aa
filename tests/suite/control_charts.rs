//! Control charts of measures: hand-worked limits, false alarms and drift of simulated pumps, the drinks that move with one.

#![allow(clippy::print_stdout, reason = "the rates are the finding")]

use evensip::balance::{ChartKind, ControlChart, Signal, TooFewDays, control_charts, since_day};
use evensip::book::{Book, IngredientId, Measure, MeasureId, MeasureKind, Reading, ReadingAmount};
use evensip::edit::{Edit, apply};
use evensip::swap::{drifted, moved_by};
use evensip::ui::counter_area::CounterItem;
use proptest::prelude::*;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};
use serde_json::Value;

use crate::at_the_window::{
    TALL, WindowBuilder, at_the_counter, book, click, copied, has, says, settle, undo,
};
use crate::commands::evensip;
use crate::sample::sample;

/// The day of a number: days stand in order.
fn day(number: usize) -> String {
    format!("2026-{:02}-{:02}", 1 + number / 28, 1 + number % 28)
}

/// A pump with readings, a list of grams for each day, of so many presses each.
fn pump(days: &[Vec<f64>], uses: u32) -> Measure {
    let readings = days.iter().enumerate().flat_map(|(number, grams)| {
        grams.iter().map(move |grams| Reading {
            ingredient: None,
            uses,
            amount: ReadingAmount::Grams(*grams),
            date: Some(day(number)),
        })
    });
    Measure {
        readings: readings.collect(),
        ..Measure::new(
            MeasureId::new("pump").unwrap(),
            "pump".into(),
            MeasureKind::Pump,
        )
    }
}

fn chart(measure: &Measure) -> ControlChart {
    let mut charts = control_charts(measure);
    assert_eq!(charts.len(), 1);
    charts.remove(0).unwrap()
}

fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() < 2e-3, "{found}, {expected}");
}

#[test]
fn limits_are_those_of_the_published_constants() {
    // By hand: means 10, 10.2, 9.8; ranges 0.4, 0.2, 0.3, so x̄ = 10 and R̄ = 0.3. A2 = 1.023, D4 = 2.575 for three readings.
    let days = [
        vec![9.8, 10.0, 10.2],
        vec![10.1, 10.2, 10.3],
        vec![9.65, 9.8, 9.95],
        vec![10.0, 10.5, 10.0],
    ];
    let found = chart(&pump(&days, 1));
    assert_eq!(found.kind, ChartKind::Range);
    assert_eq!(found.base_days(), 3);
    near(found.centre, 10.0);
    let last = found.days.last().unwrap();
    near(last.mean.limits[0], 10.0 - 1.023 * 0.3);
    near(last.mean.limits[1], 10.0 + 1.023 * 0.3);
    let spread = last.spread.unwrap();
    near(spread.value, 0.5);
    near(spread.limits[0], 0.0);
    near(spread.limits[1], 2.575 * 0.3);
    assert!(last.signals.is_empty() && found.shift().is_none());
    // One reading a day: x̄ ± 2.66·R̄m and 3.267·R̄m.
    let single: Vec<Vec<f64>> = [10.0, 10.2, 9.9, 10.1, 10.0, 10.3]
        .map(|one| vec![one])
        .to_vec();
    let found = chart(&pump(&single, 1));
    assert_eq!(found.kind, ChartKind::MovingRange);
    let (centre, moving) = (10.04, (0.2 + 0.3 + 0.2 + 0.1) / 4.0);
    let last = found.days.last().unwrap();
    near(found.centre, centre);
    near(last.mean.limits[1], centre + 2.66 * moving);
    near(last.spread.unwrap().limits[1], 3.267 * moving);
    near(last.spread.unwrap().value, 0.3);
    // Days of unlike counts: B4 = 2.568 of three readings, 3.267 of two; 3·σ/√N of their uses.
    let unlike = [
        vec![9.9, 10.1],
        vec![9.8, 10.0, 10.2],
        vec![9.9, 10.1],
        vec![9.9, 10.1],
    ];
    let found = chart(&pump(&unlike, 1));
    assert_eq!(found.kind, ChartKind::Deviation);
    let (of_two, of_three) = (0.02f64.sqrt() / 0.7979, 0.2 / 0.8862);
    let scatter = (2.0 * of_two + of_three) / 3.0;
    near(found.scatter, scatter);
    let spreads: Vec<f64> = found
        .days
        .iter()
        .map(|day| day.spread.unwrap().limits[1])
        .collect();
    near(spreads[0], 3.267 * 0.7979 * scatter);
    near(spreads[1], 2.568 * 0.8862 * scatter);
    near(
        found.days[1].mean.limits[1],
        10.0 + 3.0 * scatter / 3f64.sqrt(),
    );
}

#[test]
fn uses_weighed_together_give_the_chart_of_one_use() {
    // Four presses together scatter twice as much as one: half as much a press.
    let one = [
        vec![9.8, 10.2],
        vec![10.1, 9.7],
        vec![10.0, 9.9],
        vec![10.2, 10.0],
    ];
    let four: Vec<Vec<f64>> = one
        .iter()
        .map(|day| {
            day.iter()
                .map(|grams| 40.0 + 4.0 * (grams - 10.0))
                .collect()
        })
        .collect();
    let (one, four) = (chart(&pump(&one, 1)), chart(&pump(&four, 4)));
    near(four.scatter, 2.0 * one.scatter);
    for (a, b) in one.days.iter().zip(&four.days) {
        for (a, b) in [(a.mean, b.mean), (a.spread.unwrap(), b.spread.unwrap())] {
            near(a.value, b.value);
            near(a.limits[0], b.limits[0]);
            near(a.limits[1], b.limits[1]);
        }
    }
}

fn normal(random: &mut ChaCha8Rng) -> f64 {
    let drawn = |random: &mut ChaCha8Rng| (random.next_u64() >> 11) as f64 / (1u64 << 53) as f64;
    let (radius, angle) = (1.0 - drawn(random), drawn(random));
    (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * angle).cos()
}

/// A pump of 10 g a press, 2 % scatter, that doses so much more from a day on; readings of five presses, three a day.
fn simulated(random: &mut ChaCha8Rng, days: usize, from: usize, more: f64) -> Measure {
    let days: Vec<Vec<f64>> = (0..days)
        .map(|number| {
            let mean = if number >= from {
                10.0 * (1.0 + more)
            } else {
                10.0
            };
            (0..3)
                .map(|_| 5.0 * mean + 5f64.sqrt() * 0.2 * normal(random))
                .collect()
        })
        .collect();
    pump(&days, 5)
}

#[test]
fn a_steady_pump_rarely_alarms_and_a_worn_one_soon_does() {
    let mut random = ChaCha8Rng::seed_from_u64(11);
    let outside = |chart: &ControlChart| {
        let last = chart.days.last().unwrap();
        last.signals.contains(&Signal::Outside)
    };
    let rounds = 1500;
    let mut rate = |days: usize, more: f64| {
        let alarms = (0..rounds)
            .filter(|_| outside(&chart(&simulated(&mut random, days, days - 1, more))))
            .count();
        alarms as f64 / f64::from(rounds)
    };
    // A normal law leaves 0.27 % outside three standard deviations; limits from few days leave more, as is said of them.
    let false_alarms = [4, 6, 11, 26].map(|days| rate(days, 0.0));
    let found = [0.02, 0.03, 0.05].map(|more| rate(21, more));
    println!(
        "false alarms after 3, 5, 10, 25 days: {false_alarms:?}; found 2, 3, 5 % after 20 days: {found:?}"
    );
    assert!(
        false_alarms[0] < 0.15 && false_alarms[3] < 0.012,
        "{false_alarms:?}"
    );
    assert!(false_alarms.is_sorted_by(|a, b| a >= b), "{false_alarms:?}");
    assert!(found[2] > 0.99 && found.is_sorted(), "{found:?}");
}

#[test]
fn a_drift_is_dated_to_the_day_on_which_it_began() {
    let mut random = ChaCha8Rng::seed_from_u64(3);
    for from in [6, 10, 14] {
        let measure = simulated(&mut random, from + 3, from, 0.10);
        let found = chart(&measure);
        let shift = found.shift().unwrap();
        assert_eq!(
            (shift.since.as_str(), shift.signal),
            (day(from).as_str(), Signal::Outside)
        );
        assert!((shift.relative() - 0.10).abs() < 0.02, "{shift:?}");
        // What has changed sets no limits.
        assert!(found.days[from..].iter().all(|day| !day.is_base));
        let now = since_day(&measure, None, &shift.since);
        assert_eq!(now.readings.len(), 9);
        let grams = now.calibration(None).unwrap().grams;
        assert!((grams - shift.now.value).abs() < 1e-9);
    }
}

#[test]
fn runs_and_trends_are_found_within_the_limits() {
    let level = |grams: f64| vec![grams - 0.2, grams, grams + 0.2];
    // Seven days a little above the mean of those before.
    let mut days: Vec<Vec<f64>> = [10.1, 9.9, 10.1, 9.9, 10.1, 9.9, 10.1, 9.9]
        .map(level)
        .to_vec();
    days.extend((0..7).map(|_| level(10.12)));
    let found = chart(&pump(&days, 1));
    let last = found.days.last().unwrap();
    assert_eq!(last.signals, [Signal::OneSide]);
    assert_eq!(found.shift().unwrap().since, day(8));
    assert!(found.days[13].signals.is_empty(), "six are none yet");
    // Seven days that each fall.
    let mut days: Vec<Vec<f64>> = [10.1, 9.9, 10.1, 9.9, 10.1, 9.9, 10.15].map(level).to_vec();
    days.extend([10.1, 10.05, 10.0, 9.95, 9.9, 9.85].map(level));
    let found = chart(&pump(&days, 1));
    assert_eq!(found.days.last().unwrap().signals, [Signal::Trend]);
    assert!(found.days[11].signals.is_empty(), "six are none yet");
}

#[test]
fn too_few_days_are_said_and_undated_readings_are_no_day() {
    let mut measure = pump(&[vec![10.0, 10.1], vec![10.0, 10.2]], 1);
    let few = TooFewDays {
        ingredient: None,
        days: 2,
        wanted: 4,
    };
    assert_eq!(control_charts(&measure), [Err(few)]);
    for reading in &mut measure.readings {
        reading.date = None;
    }
    assert!(control_charts(&measure).is_empty());
}

/// The sample book in which a measure was weighed on twelve days and has dosed so much more since the tenth.
fn with_a_worn_measure(id: &str, ingredient: &str, more: f64) -> (Book, Measure, ControlChart) {
    let book = sample();
    let (id, ingredient) = (
        MeasureId::new(id).unwrap(),
        IngredientId::new(ingredient).unwrap(),
    );
    let mut measure = book.measure(&id).unwrap().as_ref().clone();
    let grams = measure.calibration(Some(&ingredient)).unwrap().grams;
    measure
        .readings
        .retain(|reading| reading.ingredient.as_ref() != Some(&ingredient));
    for number in 0..12 {
        let now = grams * if number >= 9 { 1.0 + more } else { 1.0 };
        measure
            .readings
            .extend([-0.01, 0.0, 0.01].map(|off| Reading {
                ingredient: Some(ingredient.clone()),
                uses: 5,
                amount: ReadingAmount::Grams(5.0 * now * (1.0 + off)),
                date: Some(day(number)),
            }));
    }
    let book = apply(&book, &Edit::PutMeasure(measure.clone())).unwrap();
    let charts = control_charts(&measure).into_iter().flatten();
    let mut charts = charts.filter(|chart| chart.ingredient.as_ref() == Some(&ingredient));
    let chart = charts.next().unwrap();
    (book, measure, chart)
}

#[test]
fn drinks_that_move_with_a_worn_measure_are_those_that_drift_once_it_counts_as_it_doses() {
    let (book, measure, chart) = with_a_worn_measure("chestnut-scoop", "tambrel-chestnut", 0.3);
    let shift = chart.shift().unwrap();
    assert_eq!(shift.since, day(9));
    let now = since_day(&measure, chart.ingredient.as_ref(), &shift.since);
    let moved = moved_by(&book, &now);
    assert!(!moved.is_empty(), "an approved drink has chestnut powder");
    let after = apply(&book, &Edit::PutMeasure(now)).unwrap();
    let drifted = drifted(&after);
    assert_eq!(moved, drifted);
    // A measure that doses as ever moves nothing.
    assert!(moved_by(&sample(), sample().measure(&measure.id).unwrap()).is_empty());
}

#[test]
fn the_command_tells_the_shift_and_the_drinks() {
    let (book, _, _) = with_a_worn_measure("chestnut-scoop", "tambrel-chestnut", 0.3);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("worn.ron");
    std::fs::write(&path, evensip::book_file::write(&book)).unwrap();
    let path = path.to_str().unwrap();
    let output = evensip(&["control", path, "--measure", "chestnut-scoop", "--json"]);
    assert_eq!(output.status.code(), Some(0));
    let document: Value = serde_json::from_slice(&output.stdout).unwrap();
    let charts = document["charts"].as_array().unwrap();
    let chart = charts
        .iter()
        .find(|chart| chart["ingredient"] == "tambrel-chestnut")
        .unwrap();
    assert_eq!(chart["spread_by"], "range");
    assert_eq!(chart["days"].as_array().unwrap().len(), 12);
    let remarks = chart["remarks"].as_array().unwrap();
    let shift = remarks.iter().find(|remark| remark["kind"] == "shift");
    assert_eq!(shift.unwrap()["arguments"]["since"], day(9));
    assert!(!chart["moved"].as_array().unwrap().is_empty());
    let few = document["too_few"].as_array().unwrap();
    assert!(few.iter().any(|few| few["kind"] == "too-few-days"));
    let said = evensip(&["control", path]);
    let said = String::from_utf8(said.stdout).unwrap();
    assert!(said.contains("outside the limits") && said.contains("steps from what was approved"));
    let wrong = evensip(&["control", path, "--measure", "chestnut-scop"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(
        String::from_utf8(wrong.stderr)
            .unwrap()
            .contains("chestnut-scoop")
    );
}

#[test]
fn the_form_of_a_measure_draws_its_chart_and_lets_it_count_as_it_doses() {
    let (worn, measure, chart) = with_a_worn_measure("chestnut-scoop", "tambrel-chestnut", 0.3);
    let shift = chart.shift().unwrap();
    let mut window = WindowBuilder::of(TALL).with_book(worn).begin();
    at_the_counter(&mut window, CounterItem::Measure(measure.id.clone()));
    settle(&mut window);
    assert!(says(&window, "Control chart") && says(&window, &format!("Since {}", shift.since)));
    assert!(says(&window, "steps from what was approved"));
    let table = copied(&mut window, "Control chart");
    assert_eq!(table.len(), 13);
    assert_eq!(table[12][0], day(11));
    let before = book(&window);
    let keep = format!("Keep only the readings since {}", shift.since);
    click(&mut window, &keep);
    settle(&mut window);
    let now = since_day(&measure, chart.ingredient.as_ref(), &shift.since);
    let found = book(&window).measure(&measure.id).unwrap().readings.clone();
    assert_eq!(found, now.readings);
    assert!(!has(&window, &keep), "its chart begins anew");
    undo(&mut window);
    settle(&mut window);
    assert_eq!(*book(&window), *before);
    assert!(has(&window, &keep));
}

proptest! {
    #[test]
    fn any_readings_give_finite_limits_or_none(
        days in prop::collection::vec(prop::collection::vec((1u32..4, 0.0..1e6f64), 0..4), 0..30),
    ) {
        let readings = days.iter().enumerate().flat_map(|(number, of_day)| {
            of_day.iter().map(move |(uses, grams)| Reading {
                ingredient: None,
                uses: *uses,
                amount: ReadingAmount::Grams(*grams),
                date: Some(day(number)),
            })
        });
        let measure = Measure { readings: readings.collect(), ..pump(&[], 1) };
        for chart in control_charts(&measure).into_iter().flatten() {
            prop_assert!(chart.centre.is_finite() && chart.scatter.is_finite());
            for day in &chart.days {
                for half in [Some(day.mean), day.spread].into_iter().flatten() {
                    prop_assert!(half.limits[0] <= half.limits[1] && half.value.is_finite());
                }
            }
            let shift = chart.shift();
            let since = shift.as_ref().map(|shift| since_day(&measure, None, &shift.since));
            prop_assert!(since.is_none_or(|since| !since.readings.is_empty()));
        }
    }
}
