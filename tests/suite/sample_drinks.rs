//! What the drinks of the sample book teach, worked by hand.

use evensip::balance::{Measurand, difference, noticeable_step, standard_balance};
use evensip::book::{Axis, Book, Change, IngredientId, RecipeId, Vessel, VesselId};
use evensip::edit::{Edit, apply};
use evensip::swap::{ComparedDrink, Question, Reason, answer};

use crate::sample::{balance_of, book, cup, figure, line, recipe, sample, water};

fn served(book: &Book, recipe: &str, version: Option<&str>) -> f64 {
    figure(
        &balance_of(book, recipe, version),
        Measurand::ServingTemperature,
    )
}

fn in_cup(book: &Book, recipe: &str, cup: &str) -> Book {
    let recipe = RecipeId::new(recipe).unwrap();
    let change = Change::Cup(VesselId::new(cup).unwrap());
    apply(
        book,
        &Edit::Change {
            recipe,
            version: None,
            change,
        },
    )
    .unwrap()
}

fn question(recipe: &str, replace: &str, with: &str) -> Question {
    Question {
        recipe: RecipeId::new(recipe).unwrap(),
        version: None,
        replace: evensip::book::IngredientId::new(replace).unwrap(),
        with: evensip::book::IngredientId::new(with).unwrap(),
        adjust: None,
    }
}

#[test]
fn a_hot_milk_tea_in_a_paper_cup_can_be_drunk_at_once() {
    // Common practice, no source: room-temperature tea and water of 75–80 °C in a paper cup come out at 50 to 60 °C.
    let served = served(&sample(), "hob-and-ember", None);
    assert!((50.0..=60.0).contains(&served), "{served} °C");
}

#[test]
fn a_heavy_cold_mug_takes_several_kelvin_more_than_a_paper_cup() {
    // By hand: a mug of some 380 g × 0.9 kJ/(kg K) holds 0.34 kJ/K against 1.3 kJ/K of the drink; it takes up
    // 0.34/(0.34 + 1.3) = 21 % of the difference of 30 K to the room: some 6 K.
    let book = sample();
    let paper = served(&book, "hob-and-ember", None);
    let mug = served(
        &in_cup(&book, "hob-and-ember", "stoneware-mug"),
        "hob-and-ember",
        None,
    );
    assert!(
        (3.0..9.0).contains(&(paper - mug)),
        "{paper} °C in paper, {mug} °C in the mug"
    );
}

#[test]
fn a_lighter_cup_and_hotter_water_and_warmer_tea_each_warm_the_drink() {
    let serve = |cup: Vessel, water_celsius: f64, tea_celsius: f64| {
        let lines = vec![
            line("tea", "water", 120.0, tea_celsius, evensip::book::Role::Tea),
            line(
                "water",
                "water",
                180.0,
                water_celsius,
                evensip::book::Role::Water,
            ),
        ];
        let mut drink = recipe(lines);
        drink.cup = Some(cup.id.clone());
        served(&book(vec![water()], vec![cup], drink), "drink", None)
    };
    let usual = serve(cup("cup", 100.0, 0.9), 78.0, 22.0);
    assert!(serve(cup("cup", 20.0, 0.9), 78.0, 22.0) > usual);
    assert!(serve(cup("cup", 100.0, 0.9), 80.0, 22.0) > usual);
    assert!(serve(cup("cup", 100.0, 0.9), 78.0, 18.0) < usual);
}

#[test]
fn the_sugar_of_the_hot_milk_tea_is_what_the_labels_say() {
    // 2½ scoops × 8.8 g × 58 % + 2 scoops × 7.4 g × 9 % + 1 press × 10 g × 62 % = 12.76 + 1.33 + 6.20 = 20.29 g.
    // The scoops hold what they weigh, within a per cent of those figures.
    let book = sample();
    let sugar = figure(
        &balance_of(&book, "hob-and-ember", None),
        Measurand::TotalSugar,
    );
    assert!((sugar - 20.29).abs() < 0.3, "{sugar} g");
    // With the other brand by equal scoops: 2½ × 9.6 × 71 % = 17.04 instead of 12.76 → 24.57 g.
    let other = figure(
        &balance_of(&book, "hob-and-ember", Some("ketterby")),
        Measurand::TotalSugar,
    );
    assert!((other - 24.57).abs() < 0.35, "{other} g");
}

#[test]
fn the_same_spoon_holds_other_sugar_as_syrup_and_as_crystals() {
    // The 7 ml spoon: 9.7 g of 77 °Brix syrup hold 7.5 g of sugar, 5.9 g of crystals hold 5.9 g; the 5 ml spoon 5.3 and 4.2.
    let book = sample();
    let sweetener = |version: Option<&str>| {
        let balance = balance_of(&book, "snowgate", version);
        let share = balance
            .lines
            .iter()
            .find(|share| share.line.as_str() == "sweetener")
            .unwrap();
        share.sugar.unwrap()
    };
    for (version, expected) in [
        (None, 7.5),
        (Some("crystals"), 5.9),
        (Some("small-spoon"), 5.3),
        (Some("small-spoon-crystals"), 4.2),
    ] {
        let sugar = sweetener(version);
        assert!(
            (sugar - expected).abs() < 0.15,
            "{version:?}: {sugar} g of sugar, expected {expected} g"
        );
    }
}

#[test]
fn the_brand_change_by_hand_is_the_first_suggestion() {
    // Two scoops of Tambrel: 2 × 8.8 g × 58 % = 10.2 g of sugar; of Ketterby: 2 × 9.6 g × 71 % = 13.6 g: 3.4 g more.
    // One spoon of the house sweetener holds 9.7 g × 77 % = 7.5 g; half a spoon less takes away 3.7 g, a quarter 1.9 g,
    // three quarters 5.6 g. Half a spoon less is closest: 0.3 g below the standard.
    let book = sample();
    let answer = answer(
        &book,
        &question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap();
    assert!(
        (answer.extra_sugar().unwrap() - 3.4).abs() < 0.2,
        "{:?} g",
        answer.extra_sugar()
    );
    let first = &answer.suggestions[0];
    let words: Vec<(&str, Option<f64>, Option<f64>)> = first
        .moves
        .iter()
        .map(|moved| {
            let number = |amount: &Option<evensip::book::Amount>| {
                amount.as_ref().and_then(evensip::book::Amount::number)
            };
            (moved.line.as_str(), number(&moved.from), number(&moved.to))
        })
        .collect();
    assert_eq!(words, [("sweetener", Some(1.0), Some(0.5))]);
    assert_eq!(first.difference.within_one_step(), Some(true));
    assert!(answer.proven_optimal);
}

#[test]
fn an_unknown_sugar_gets_no_suggestion_but_the_name_of_the_label_to_read() {
    let book = sample();
    let answer = answer(
        &book,
        &question("hob-and-ember", "ondry-creamer", "velloom-oat-creamer"),
    )
    .unwrap();
    assert!(answer.suggestions.is_empty());
    let missing = vec![IngredientId::new("velloom-oat-creamer").unwrap()];
    assert_eq!(
        answer.reasons,
        [Reason::SweetnessNotKnown {
            drink: ComparedDrink::PlainSwap,
            missing
        }]
    );
    let sugar = answer.plain.reported(Measurand::TotalSugar);
    assert_eq!(
        sugar
            .missing
            .iter()
            .map(AsRef::as_ref)
            .collect::<Vec<&str>>(),
        ["velloom-oat-creamer"]
    );
}

#[test]
fn a_swap_that_the_shop_has_made_before_is_within_its_scatter_of_itself() {
    // Against itself a drink differs by nothing, and only by the scatter of the scoops in uncertainty.
    let book = sample();
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let (standard, _) = standard_balance(&book, recipe, None).unwrap();
    let same = balance_of(&book, "hob-and-ember", None);
    let difference = difference(&book.settings, &standard, &same);
    assert!(difference.distance.unwrap() < 1e-9);
    let sweetness = &difference.axes[0];
    let own = sweetness.u_steps.unwrap() * sweetness.step;
    assert!(
        (sweetness.u_steps.unwrap() - sweetness.scatter_steps.unwrap()).abs() < 1e-9,
        "shared causes cancel"
    );
    assert!(
        own < 0.5 * same.axis(&Axis::Sweetness).unwrap().u.unwrap(),
        "labels and pumps are shared, and cancel"
    );
}

#[test]
fn hot_fruit_tea_is_about_a_fifth_less_sweet_than_the_iced_one_per_gram_of_sugar() {
    // 55 % of the syrup's sugars are fructose: 1.437 at 5 °C (Tsuzuki & Yamazaki 1953, value from memory), 1.0 at 58 °C (assumed);
    // with the rest glucose of 0.75 that is (0.45 · 0.75 + 0.55)/(0.45 · 0.75 + 0.55 · 1.437) = 0.787 per gram of sugar.
    let book = sample();
    let ratio = |version: Option<&str>| {
        let balance = balance_of(&book, "pear-drift", version);
        figure(&balance, Measurand::Sweetness) * figure(&balance, Measurand::Volume)
            / figure(&balance, Measurand::TotalSugar)
    };
    let (iced, hot) = (ratio(None), ratio(Some("hot")));
    assert!((0.75..0.82).contains(&(hot / iced)), "{}", hot / iced);
}

#[test]
fn a_noticeable_step_has_a_floor() {
    let settings = evensip::book::Settings::default();
    let (step, _) = noticeable_step(&settings, &Axis::Sweetness, 8.0);
    assert!((step - 0.8).abs() < 1e-12);
    let (floor, _) = noticeable_step(&settings, &Axis::Sweetness, 0.0);
    assert!(floor > 0.0);
}
