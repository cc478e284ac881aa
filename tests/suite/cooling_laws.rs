//! What holds for every cup and every drink that cools in it.

use evensip::balance::{CoolingCurve, CupPrior, MeasuredCooling, NOTED_ROOM, ReadCup, curve_of};
use evensip::book::{Closure, ClosureKind, CoolingReading, CoolingRun, Vessel};
use evensip::quantity::Uncertain;
use proptest::prelude::*;

use crate::sample::cup;

/// A cup that cools by its own law, as readings see it: conductances, what the wall takes, scatter of the thermometer.
fn readings() -> impl Strategy<Value = Vec<CoolingReading>> {
    (
        0.004..0.06,
        0.0..0.9,
        0.0..4.0,
        40.0..78.0,
        3_usize..14,
        0.5..8.0,
    )
        .prop_flat_map(
            |(rate, power, wall, excess, count, every): (f64, f64, f64, f64, usize, f64)| {
                proptest::collection::vec(-0.4..0.4, count).prop_map(move |scatter: Vec<f64>| {
                    let reading = |(at, scatter): (usize, &f64)| {
                        let minutes = at as f64 * every;
                        // Any law between a constant and evaporation alone.
                        let power = power.max(1e-6);
                        let fallen = 1.0 + power * rate * minutes * (excess / 40.0_f64).powf(power);
                        let celsius = 21.0
                            + excess * fallen.powf(-1.0 / power)
                            + wall * (-minutes / 1.5).exp();
                        CoolingReading {
                            minutes,
                            celsius: celsius + scatter,
                        }
                    };
                    scatter.iter().enumerate().map(reading).collect()
                })
            },
        )
}

fn closure() -> impl Strategy<Value = Option<Closure>> {
    let kind = prop_oneof![
        Just(ClosureKind::Open),
        Just(ClosureKind::Lid),
        Just(ClosureKind::Film)
    ];
    let closure =
        (kind, proptest::option::of(0.2..2.0)).prop_map(|(kind, cooling_factor)| Closure {
            kind,
            price: None,
            head_room: 0.0,
            cooling_factor,
        });
    proptest::option::of(closure)
}

fn vessel() -> impl Strategy<Value = Vessel> {
    let run = (readings(), proptest::option::of(0.2..1.0));
    (
        60.0..900.0,
        proptest::option::of(5.0..240.0),
        proptest::option::of(run),
        closure(),
    )
        .prop_map(|(capacity, cooling_minutes, run, closure)| {
            let mut cup = cup("cup", 300.0, 0.8);
            cup.capacity = capacity;
            cup.cooling_minutes = cooling_minutes;
            cup.cooling_run = run.map(|(readings, fill): (_, Option<f64>)| CoolingRun {
                room: 21.0,
                millilitres: fill.map(|fill| fill * capacity),
                readings,
            });
            cup.closures = closure.into_iter().collect();
            cup
        })
}

/// The curve of a cup, so full, with a drink of so many kelvins above a room.
fn curve(cup: &Vessel, fill: f64, excess: f64, room: f64) -> CoolingCurve {
    let (curve, _) = curve_of(cup, room, Some(fill)).expect("a cup that holds something");
    let start = Uncertain {
        value: room + excess,
        u: 1.0,
    };
    curve.starting_at(start, room)
}

const MINUTES: [f64; 7] = [0.5, 2.0, 7.0, 20.0, 60.0, 180.0, 900.0];

/// Readings without error of a cup that follows the law of the code, written out apart from it in steps of a second: heat
/// through wall and surface and by evaporation in W/(m² K), a cylinder 1.15 times as high as wide, a wall that takes `wall` K.
fn course_of(
    [dry, evaporation, wall]: [f64; 3],
    read: &ReadCup,
    excess: f64,
    every: u32,
) -> Vec<CoolingReading> {
    let room = read.room.value;
    let vapour = |celsius: f64| 611.2 * (17.62 * celsius / (243.12 + celsius)).exp();
    let width = (4.0 * read.capacity * 1e-6 / (std::f64::consts::PI * 1.15)).cbrt();
    let held = read.millilitres.unwrap() * 1e-6;
    let top = std::f64::consts::PI * width * width / 4.0;
    let depth = held / top;
    let surface = 2.0 * top + std::f64::consts::PI * width * depth;
    let mut excess = excess;
    let mut readings = Vec::new();
    readings.push(CoolingReading {
        minutes: 0.0,
        celsius: room + excess + wall,
    });
    for at in 1..10 {
        for _ in 0..60 * every {
            let vapour =
                (vapour(room + excess) - vapour(room)) / (vapour(62.0) - vapour(22.0)) * 40.0;
            let watts =
                (excess / 40.0).powf(0.25) * (dry * surface * excess + evaporation * top * vapour);
            excess -= watts / (983.0 * 4185.0 * held);
        }
        let minutes = f64::from(at * every);
        readings.push(CoolingReading {
            minutes,
            celsius: room + excess + wall * (-minutes / 1.5).exp(),
        });
    }
    readings
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_drink_falls_towards_the_room_and_never_below(
        cup in vessel(), fill in 0.05..1.0, excess in 5.0..85.0, room in 5.0..38.0,
    ) {
        let curve = curve(&cup, fill, excess, room);
        let mut before = curve.temperature_at(0.0).value;
        for minutes in MINUTES {
            let at = curve.temperature_at(minutes);
            let [coldest, hottest] = curve.interval_at(minutes);
            prop_assert!(at.value < before || at.value - room < 1e-3, "{minutes}: {at:?} after {before}");
            prop_assert!(at.value >= room && coldest > room - 3.5, "{minutes}: {at:?}");
            prop_assert!(coldest <= at.value && at.value <= hottest, "{minutes}");
            // Nothing is ever known for sure: the drink while it falls, and the room at the end.
            prop_assert!(at.u > 0.2, "{minutes}: {at:?}");
            before = at.value;
        }
    }

    #[test]
    fn a_lower_temperature_is_reached_later(
        cup in vessel(), fill in 0.05..1.0, excess in 20.0..85.0, room in 5.0..38.0,
    ) {
        let curve = curve(&cup, fill, excess, room);
        let mut before: Option<(f64, [f64; 2])> = None;
        for part in [0.95, 0.8, 0.6, 0.4, 0.2, 0.1] {
            let celsius = room + part * excess;
            let minutes = curve.minutes_until(celsius).expect("warmer than the room");
            let [earliest, latest] = curve.interval_until(celsius).expect("warmer than the room");
            prop_assert!(minutes.value > 0.0 && minutes.u > 0.02 * minutes.value, "{minutes:?}");
            prop_assert!(earliest < minutes.value && minutes.value < latest);
            prop_assert!(latest - minutes.value >= minutes.value - earliest, "{earliest} {minutes:?} {latest}");
            let reached = curve.temperature_at(minutes.value).value;
            prop_assert!((reached - celsius).abs() < 0.02, "{reached} for {celsius}");
            if let Some((sooner, [_, late])) = before {
                prop_assert!(minutes.value > sooner && latest >= late, "{minutes:?} after {sooner}, {latest} after {late}");
            }
            before = Some((minutes.value, [earliest, latest]));
        }
        prop_assert_eq!(curve.minutes_until(room), None);
        prop_assert_eq!(curve.minutes_until(room + excess), Some(Uncertain::exact(0.0)));
    }

    #[test]
    fn a_fuller_cup_cools_no_faster(
        cup in vessel(), fill in 0.05..0.9, more in 0.01..0.9, excess in 20.0..85.0, room in 5.0..38.0,
    ) {
        let until = |fill: f64| curve(&cup, fill, excess, room).minutes_until(room + 0.5 * excess);
        let (less, fuller) = (until(fill).unwrap(), until(f64::min(fill + more, 1.0)).unwrap());
        prop_assert!(fuller.value >= less.value, "{fuller:?} {less:?}");
    }

    #[test]
    fn a_lid_never_makes_a_drink_cool_faster(
        cup in vessel(), factor in proptest::option::of(0.01..2.0), film in any::<bool>(), excess in 20.0..85.0, room in 5.0..38.0,
    ) {
        let until = |closures: Vec<Closure>| {
            let cup = Vessel { closures, ..cup.clone() };
            curve(&cup, 0.8, excess, room).minutes_until(room + 0.5 * excess).unwrap()
        };
        let kind = if film { ClosureKind::Film } else { ClosureKind::Lid };
        let closed = until(vec![Closure { kind, price: None, head_room: 0.0, cooling_factor: factor }]);
        let open = until(Vec::new());
        prop_assert!(closed.value >= open.value * (1.0 - 1e-12), "{closed:?} {open:?}");
        // What a lid does is not known for sure, either.
        prop_assert!(closed.u / closed.value >= 0.999 * open.u / open.value || factor.is_none(), "{closed:?} {open:?}");
    }

}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn more_readings_of_a_cup_make_nothing_less_sure(
        dry in 4.0..20.0, evaporation in 20.0..90.0, wall in 0.3..4.0, excess in 45.0..75.0, every in 1_u32..7,
    ) {
        let prior = CupPrior::published();
        let read = ReadCup {
            capacity: 350.0,
            millilitres: Some(280.0),
            covered: false,
            room: Uncertain { value: 21.0, u: NOTED_ROOM },
        };
        let all = course_of([dry, evaporation, wall], &read, excess, every);
        let mut before: Option<f64> = None;
        for count in 3..=all.len() {
            let measured = MeasuredCooling::of(&read, &all[..count], prior).unwrap();
            let u = measured.temperature_at(90.0).u;
            prop_assert!(u > 0.05, "{u}");
            if let Some(before) = before {
                prop_assert!(u < 1.1 * before, "{count}: {u} after {before}");
            }
            before = Some(u);
        }
    }

}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_number_of_a_book_breaks_a_curve(
        capacity in odd(), minutes in proptest::option::of(odd()), room in odd(), run_room in odd(), held in proptest::option::of(odd()),
        points in proptest::collection::vec((odd(), odd()), 0..8), factor in proptest::option::of(odd()), fill in proptest::option::of(odd()),
        start in odd(), until in odd(),
    ) {
        let mut cup = cup("cup", 300.0, 0.8);
        cup.capacity = capacity;
        cup.cooling_minutes = minutes;
        let readings = points.into_iter().map(|(minutes, celsius)| CoolingReading { minutes, celsius }).collect();
        cup.cooling_run = Some(CoolingRun { room: run_room, millilitres: held, readings });
        cup.closures = vec![Closure { kind: ClosureKind::Lid, price: None, head_room: 0.0, cooling_factor: factor }];
        if let Some((curve, _)) = curve_of(&cup, room, fill) {
            let curve = curve.starting_at(Uncertain::exact(start), room);
            for minutes in MINUTES {
                let at = curve.temperature_at(minutes);
                prop_assert!(!(start.is_finite() && room.is_finite()) || (at.value.is_finite() && at.u >= 0.0), "{at:?}");
                let _ = curve.interval_at(minutes);
            }
            let minutes = curve.minutes_until(until);
            prop_assert!(minutes.is_none_or(|minutes| minutes.value.is_finite()), "{minutes:?}");
            let _ = (curve.interval_until(until), curve.time_constant());
        }
    }
}

/// Found by the law above: a cup that is said to take for ever, under a lid that lets nothing through.
#[test]
fn a_cup_that_takes_for_ever_stays_hot() {
    let mut cup = cup("cup", 300.0, 0.8);
    cup.cooling_minutes = Some(1e300);
    cup.closures = vec![Closure {
        kind: ClosureKind::Lid,
        price: None,
        head_room: 0.0,
        cooling_factor: Some(1e-300),
    }];
    if let Some((curve, _)) = curve_of(&cup, 0.0, None) {
        let curve = curve.starting_at(Uncertain::exact(108.0), 0.0);
        for minutes in MINUTES {
            let at = curve.temperature_at(minutes);
            assert!(at.value.is_finite() && at.u >= 0.0, "{at:?}");
        }
    }
}

/// Numbers that a book may hold, sound or not.
fn odd() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => -50.0..400.0,
        1 => prop_oneof![
            Just(0.0), Just(-0.0), Just(1e-300), Just(1e300), Just(-1e300), Just(f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY)
        ],
    ]
}
