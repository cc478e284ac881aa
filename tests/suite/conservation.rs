//! Laws over random recipes: mass and heat are conserved, order does not matter, a double batch is twice a batch.

use evensip::balance::{
    Balance, Component, Measurand, Slots, Wall, balance, enthalpy, equilibrium, prepare, sums,
};
use evensip::book::{
    Amount, Book, Entry, IngredientId, Line, LineId, Place, RecipeId, Resolved, Role, Stage,
};
use proptest::prelude::*;

use crate::sample::{book, ice, line, recipe, sample, water};

fn place() -> Place {
    Place::Recipe(RecipeId::new("drink").unwrap(), "lines")
}

/// Random lines of the sample book's ingredients, in grams, at any temperature that something is served or kept at.
fn any_lines() -> impl Strategy<Value = Vec<Entry>> {
    let ids: Vec<IngredientId> = sample()
        .ingredients
        .iter()
        .map(|ingredient| ingredient.id.clone())
        .collect();
    let one = (
        prop::sample::select(ids),
        0.0..300.0_f64,
        1.0..98.0_f64,
        0..3_usize,
    );
    prop::collection::vec(one, 1..9).prop_map(|lines| {
        lines
            .into_iter()
            .enumerate()
            .map(|(at, (ingredient, grams, celsius, stage))| {
                let celsius = if ingredient.as_str() == "ice" {
                    -celsius / 10.0
                } else {
                    celsius
                };
                Entry::Line(Line {
                    id: LineId::new(&format!("line-{at}")).unwrap(),
                    ingredient,
                    amount: Amount::Grams(grams),
                    temperature: Some(celsius),
                    role: Role::Base,
                    stage: [Stage::Mixed, Stage::Mixed, Stage::Topping][stage],
                    carried: None,
                    note: String::new(),
                })
            })
            .collect()
    })
}

fn resolved(entries: Vec<Entry>) -> Resolved {
    Resolved {
        entries,
        ..Resolved::default()
    }
}

fn balanced(book: &Book, entries: Vec<Entry>) -> Balance {
    balance(book, resolved(entries), &place())
}

fn grams_of(entries: &[Entry]) -> f64 {
    entries
        .iter()
        .filter_map(Entry::line)
        .filter_map(|line| line.amount.number())
        .sum()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn mass_is_conserved(entries in any_lines()) {
        let balance = balanced(&sample(), entries.clone());
        let mass = balance.figures.get(Measurand::Mass).unwrap();
        prop_assert!((mass - grams_of(&entries)).abs() < 1e-9 * (1.0 + mass), "{mass}");
        let lines: f64 = balance.lines.iter().filter_map(|line| line.grams).sum();
        prop_assert!((mass - lines).abs() < 1e-9 * (1.0 + mass));
    }

    #[test]
    fn heat_is_conserved(entries in any_lines(), capacity in 0.0..0.6_f64, wall in 0.0..60.0_f64) {
        let book = sample();
        let prepared = prepare(&book, &resolved(entries), &mut Slots::default(), &place());
        let mut mix = sums(&prepared).mixed;
        mix += &sums(&prepared).toppings;
        prop_assume!(mix.get(Component::Mass) > 1.0);
        let found = equilibrium(&mix, Wall { heat_capacity: capacity, celsius: wall });
        // After: what has melted is water, what is left is ice, and the wall has the common temperature.
        let mut after = mix;
        after.set(Component::Water, mix.get(Component::Water) + mix.get(Component::Ice) - found.ice_left);
        after.set(Component::Ice, found.ice_left);
        let before = mix.get(Component::Heat) + capacity * wall;
        let after = enthalpy(&after, found.celsius) + capacity * found.celsius;
        prop_assert!((before - after).abs() < 1e-6 * (1.0 + before.abs()), "{before} kJ before, {after} kJ after");
    }

    #[test]
    fn order_does_not_matter(entries in any_lines(), seed in 0..1000_usize) {
        let book = sample();
        let mut shuffled = entries.clone();
        let turn = seed % shuffled.len();
        shuffled.rotate_left(turn);
        if seed % 2 == 0 {
            shuffled.reverse();
        }
        let (one, other) = (balanced(&book, entries), balanced(&book, shuffled));
        for measurand in Measurand::ALL {
            let (a, b) = (one.figures.get(measurand), other.figures.get(measurand));
            prop_assert_eq!(a.is_some(), b.is_some());
            if let (Some(a), Some(b)) = (a, b) {
                prop_assert!((a - b).abs() < 1e-6 * (1.0 + a.abs()), "{}: {} and {}", measurand.word(), a, b);
            }
        }
    }

    #[test]
    fn a_double_batch_is_twice_a_batch(entries in any_lines()) {
        let book = sample();
        let mut doubled = entries.clone();
        for entry in &mut doubled {
            if let Entry::Line(line) = entry {
                line.amount = line.amount.with_number(line.amount.number().unwrap() * 2.0);
            }
        }
        let (one, two) = (balanced(&book, entries), balanced(&book, doubled));
        for (measurand, factor) in [
            (Measurand::Mass, 2.0),
            (Measurand::TotalSugar, 2.0),
            (Measurand::EnergyKj, 2.0),
            (Measurand::Sweetness, 1.0),
            (Measurand::ServingTemperature, 1.0),
        ] {
            if let (Some(a), Some(b)) = (one.figures.get(measurand), two.figures.get(measurand)) {
                prop_assert!((a * factor - b).abs() < 1e-6 * (1.0 + b.abs()), "{}: {} and {}", measurand.word(), a, b);
            }
        }
    }
}

#[test]
fn two_three_and_five_bodies_of_water_meet_where_iapws_says() {
    // IAPWS-95 enthalpies (iapws 1.5.5), kJ/kg above 0 °C liquid: the mean by mass, read back from the same table by
    // straight lines between its rows (which errs by less than 0.01 K).
    // 2: (200 × h(78) + 100 × h(22))/300 with h(78) = 326.660, h(22) = 92.312 → 248.544 kJ/kg → 59.36 °C.
    // 3: 120 g at 20 (83.946), 180 g at 80 (334.994), 50 g at 5 (21.059) → 204.072 kJ/kg → 48.73 °C.
    // 5: 100 g each at 5, 20, 40, 60, 95 (21.059, 83.946, 167.555, 251.188, 398.041) → 184.358 kJ/kg → 44.02 °C.
    let cases: [(&[(f64, f64)], f64); 3] = [
        (&[(200.0, 78.0), (100.0, 22.0)], 59.36),
        (&[(120.0, 20.0), (180.0, 80.0), (50.0, 5.0)], 48.73),
        (
            &[
                (100.0, 5.0),
                (100.0, 20.0),
                (100.0, 40.0),
                (100.0, 60.0),
                (100.0, 95.0),
            ],
            44.02,
        ),
    ];
    for (bodies, expected) in cases {
        let lines = bodies
            .iter()
            .enumerate()
            .map(|(at, &(grams, celsius))| {
                line(&format!("w{at}"), "water", grams, celsius, Role::Water)
            })
            .collect();
        let book = book(vec![water()], vec![], recipe(lines));
        let served = crate::sample::figure(
            &crate::sample::balance_of(&book, "drink", None),
            Measurand::ServingTemperature,
        );
        assert!(
            (served - expected).abs() < 0.1,
            "{bodies:?}: {served} °C, expected {expected} °C"
        );
    }
}

#[test]
fn more_ice_ends_at_the_freezing_point_and_no_ice_is_the_hot_formula() {
    let served = |grams_of_ice: f64| {
        let lines = vec![
            line("water", "water", 200.0, 60.0, Role::Water),
            line("ice", "ice", grams_of_ice, -10.0, Role::Ice),
        ];
        let book = book(vec![water(), ice()], vec![], recipe(lines));
        crate::sample::figure(
            &crate::sample::balance_of(&book, "drink", None),
            Measurand::ServingTemperature,
        )
    };
    assert!((served(0.0) - 60.0).abs() < 1e-6);
    let mut last = 60.0;
    for grams in [20.0, 60.0, 100.0, 140.0] {
        assert!(
            served(grams) < last || served(grams).abs() < 1e-9,
            "{grams} g of ice"
        );
        last = served(grams);
    }
    assert!(served(400.0).abs() < 1e-6);
}
