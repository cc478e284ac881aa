//! Which way a drink moves: a lighter cup, colder tea, more ice, a hotter dispenser; and what the price leaves.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::{Balance, Measurand, Verdict, balance, margin};
use evensip::book::{Book, Place, Resolved, Role, VesselId};
use proptest::prelude::*;

use crate::sample::{balance_of, book, cup, figure, ice, line, recipe, sample, water};

/// Tea, water from the dispenser and ice in a cup of so many grams.
#[derive(Clone, Copy, Debug)]
struct Drink {
    tea: f64,
    tea_celsius: f64,
    water: f64,
    water_celsius: f64,
    ice: f64,
    cup: f64,
}

fn served(drink: Drink) -> Balance {
    let book: Book = book(
        vec![water(), ice()],
        vec![cup("cup", drink.cup, 0.8)],
        recipe(Vec::new()),
    );
    let entries = vec![
        line("tea", "water", drink.tea, drink.tea_celsius, Role::Tea),
        line(
            "water",
            "water",
            drink.water,
            drink.water_celsius,
            Role::Water,
        ),
        line("ice", "ice", drink.ice, -5.0, Role::Ice),
    ];
    let cup = Some(VesselId::new("cup").unwrap());
    balance(
        &book,
        Resolved {
            entries,
            cup,
            ..Resolved::default()
        },
        &Place::Settings,
    )
}

fn celsius(drink: Drink) -> f64 {
    figure(&served(drink), Measurand::ServingTemperature)
}

fn any_drink() -> impl Strategy<Value = Drink> {
    let parts = (
        50.0..300.0_f64,
        40.0..98.0_f64,
        20.0..200.0_f64,
        40.0..98.0_f64,
        0.0..150.0_f64,
        5.0..400.0_f64,
    );
    parts.prop_map(|(tea, tea_celsius, water, water_celsius, ice, cup)| Drink {
        tea,
        tea_celsius,
        water,
        water_celsius,
        ice,
        cup,
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn each_change_moves_the_temperature_the_right_way(drink in any_drink()) {
        let now = celsius(drink);
        // At the freezing point heat melts ice instead of warming.
        let melts = figure(&served(drink), Measurand::IceLeft) > 0.0;
        let not_colder = |other: f64| if melts { other >= now - 1e-9 } else { other > now };
        let colder_tea = celsius(Drink { tea_celsius: drink.tea_celsius - 5.0, ..drink });
        let hotter_dispenser = celsius(Drink { water_celsius: drink.water_celsius + 2.0, ..drink });
        let more_ice = celsius(Drink { ice: drink.ice + 10.0, ..drink });
        prop_assert!(colder_tea <= now && more_ice <= now, "{colder_tea}, {more_ice} against {now}");
        prop_assert!(not_colder(hotter_dispenser), "{hotter_dispenser} against {now}");
        // A cup of the room's 22 °C pulls the drink towards itself, a lighter one less.
        let lighter = celsius(Drink { cup: drink.cup / 2.0, ..drink });
        prop_assert!(if now > 22.0 { lighter > now } else { lighter <= now + 1e-9 }, "{lighter} against {now}");
    }

    #[test]
    fn no_ice_is_the_hot_formula_and_much_ice_the_freezing_point(drink in any_drink()) {
        let hot = Drink { ice: 0.0, cup: 0.0, tea_celsius: 80.0, water_celsius: 80.0, ..drink };
        prop_assert!((celsius(hot) - 80.0).abs() < 1e-6);
        // Two kilograms are more than the hottest drink melts, and too little to freeze the coolest as a whole.
        let cold = celsius(Drink { ice: 2000.0, ..drink });
        prop_assert!(cold.abs() < 1e-6, "pure water with ice left is at 0 °C, found {cold}");
    }
}

#[test]
fn margin_is_price_less_tax_less_cost_and_never_more_for_a_hole() {
    let mut book = sample();
    let found = balance_of(&book, "hob-and-ember", None);
    let before = margin(&book, &found).expect("the drink has a menu price");
    let cost = figure(&found, Measurand::Cost);
    // 10 % of sales tax is contained in the menu price of the sample book.
    assert!((before.net_price - before.menu_price / 1.1).abs() < 1e-12);
    assert!((before.margin.value - (before.net_price - cost)).abs() < 1e-12);
    assert!(!before.is_at_most && before.missing.is_empty());
    book.settings.sales_tax_percent = None;
    let without_tax = margin(&book, &found).unwrap();
    assert!(without_tax.is_at_most && without_tax.sales_tax.is_none());
}

#[test]
fn a_drink_is_free_of_dairy_only_when_every_ingredient_says_so() {
    let book = sample();
    for recipe in &book.recipes {
        for version in std::iter::once(None).chain(
            recipe
                .versions
                .iter()
                .map(|version| Some(version.id.as_str())),
        ) {
            let found = balance_of(&book, recipe.id.as_str(), version);
            if found.vegan == Verdict::Yes {
                assert_eq!(found.dairy_free, Verdict::Yes, "{} {version:?}", recipe.id);
            }
            let milk = found
                .allergens
                .contains
                .contains(&evensip::book::Allergen::Milk);
            assert!(
                !milk || found.dairy_free == Verdict::No,
                "{} {version:?}",
                recipe.id
            );
        }
    }
}
