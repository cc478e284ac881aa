//! Laws over random recipes: mass and heat are conserved, order does not matter, a double batch is twice a batch.

use evensip::balance::{
    Balance, Component, Freezing, Measurand, Mix, Slots, Wall, balance, enthalpy, equilibrium,
    pour, prepare, solved_count, sums,
};
use evensip::book::{
    Amount, Book, Carried, Composition, Entry, Evidence, Figure, FindingKind, Form, HouseMade,
    IngredientId, Line, MeasureId, MeasureKind, Nominal, Nutrient, Place, Recipe, RecipeId,
    Resolved, Role, Stage, Vessel, VesselId, VesselKind,
};
use proptest::prelude::*;

use crate::sample::{book, cup, ice, ingredient, line, measure, recipe, sample, water};

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
                let id = format!("line-{at}");
                let mut entry = line(&id, ingredient.as_str(), grams, celsius, Role::Base);
                if let Entry::Line(line) = &mut entry {
                    line.stage = [Stage::Mixed, Stage::Mixed, Stage::Topping][stage];
                }
                entry
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
        let wall_of_the_cup = Wall { heat_capacity: capacity, celsius: wall };
        let found = equilibrium(&mix, wall_of_the_cup, Freezing::default());
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
                prop_assert!((a - b).abs() < 1e-6 * (1.0 + a.abs()), "{}: {} and {}", measurand.key(), a, b);
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
                prop_assert!((a * factor - b).abs() < 1e-6 * (1.0 + b.abs()), "{}: {} and {}", measurand.key(), a, b);
            }
        }
    }
}

/// Ingredients of every form, one of them made of others, and measures to dose them by.
#[expect(
    clippy::too_many_lines,
    reason = "one thing of the counter after another, as in a table"
)]
fn whole_counter() -> Book {
    let stated = |id: &str, form, role, figures: &[(Nutrient, f64)]| {
        let mut item = ingredient(id, form, role, figures);
        item.price = None;
        item
    };
    let mut milk = stated(
        "milk",
        Form::Liquid,
        Role::Creamer,
        &[
            (Nutrient::Fat, 3.5),
            (Nutrient::Carbohydrate, 4.8),
            (Nutrient::Sugars, 4.8),
            (Nutrient::Protein, 3.4),
        ],
    );
    milk.density = Some(Figure::new(1.03, Evidence::Measured));
    let syrup = stated(
        "syrup",
        Form::Syrup,
        Role::Sweetener,
        &[(Nutrient::Brix, 77.0)],
    );
    let powder = stated(
        "powder",
        Form::Powder,
        Role::Flavour,
        &[
            (Nutrient::Fat, 8.0),
            (Nutrient::Carbohydrate, 84.0),
            (Nutrient::Sugars, 58.0),
            (Nutrient::Protein, 2.0),
        ],
    );
    let mut berries = stated(
        "berries",
        Form::Pieces,
        Role::Topping,
        &[
            (Nutrient::Carbohydrate, 7.7),
            (Nutrient::Sugars, 4.9),
            (Nutrient::Water, 91.0),
            (Nutrient::Fat, 0.3),
            (Nutrient::Protein, 0.7),
            (Nutrient::Fibre, 0.0),
        ],
    );
    berries.bulk_density = Some(Figure::new(0.64, Evidence::Published));
    let mut foam = stated(
        "foam",
        Form::Foam,
        Role::Topping,
        &[
            (Nutrient::Fat, 30.0),
            (Nutrient::Carbohydrate, 3.0),
            (Nutrient::Sugars, 3.0),
            (Nutrient::Protein, 2.0),
        ],
    );
    foam.density = Some(Figure::new(0.45, Evidence::Measured));
    let leaf = stated("leaf", Form::Leaf, Role::Tea, &[]);
    let made = |id: &str, recipe: &str, grams: f64| {
        let mut item = ingredient(id, Form::Liquid, Role::Base, &[]);
        item.composition = Composition::default();
        item.house_made = Some(HouseMade {
            recipe: RecipeId::new(recipe).unwrap(),
            yield_grams: Figure::new(grams, Evidence::Measured),
            extraction: None,
            steep_minutes: None,
            shelf_life_hours: None,
            waste_percent: 0.0,
        });
        item
    };
    let mut carrying = line("pearls", "berries", 40.0, 20.0, Role::Topping);
    if let Entry::Line(line) = &mut carrying {
        line.carried = Some(Carried {
            ingredient: IngredientId::new("syrup").unwrap(),
            grams: 6.0,
        });
    }
    let mut filling = line("fill", "milk", 0.0, 8.0, Role::Creamer);
    if let Entry::Line(line) = &mut filling {
        line.amount = Amount::FillTo(400.0);
    }
    let mut steeping = line("leaf", "leaf", 6.0, 20.0, Role::Tea);
    if let Entry::Line(line) = &mut steeping {
        line.stage = Stage::Steeped;
    }
    let batch = |id: &str, entries: Vec<Entry>| Recipe {
        id: RecipeId::new(id).unwrap(),
        ..recipe(entries)
    };
    let mut book = book(
        vec![
            water(),
            ice(),
            milk,
            syrup,
            powder,
            berries,
            foam,
            leaf,
            made("sauce", "sauce", 400.0),
            made("cream", "cream", 300.0),
            made("brew", "brew", 100.0),
        ],
        vec![
            cup("cup", 200.0, 0.9),
            Vessel {
                kind: VesselKind::Shaker,
                ..cup("shaker", 240.0, 0.5)
            },
        ],
        recipe(Vec::new()),
    );
    book.recipes.put(batch(
        "sauce",
        vec![
            line("s", "syrup", 120.0, 20.0, Role::Sweetener),
            carrying,
            filling,
        ],
    ));
    book.recipes.put(batch(
        "cream",
        vec![
            line("a", "sauce", 200.0, 20.0, Role::Base),
            line("b", "milk", 100.0, 8.0, Role::Creamer),
        ],
    ));
    book.recipes.put(batch(
        "brew",
        vec![line("w", "water", 125.0, 95.0, Role::Water), steeping],
    ));
    let scoop = measure("scoop", MeasureKind::Scoop, Nominal::Mass(9.0));
    book.measures.put(scoop);
    book
}

/// A drink of them: by grams, millilitres, a measure or up to a mark, in any stage, shaken, strained, frozen.
fn any_drink() -> impl Strategy<Value = Resolved> {
    let ids = [
        "water", "ice", "milk", "syrup", "powder", "berries", "foam", "sauce", "cream", "brew",
    ];
    let one = (
        prop::sample::select(ids.to_vec()),
        1.0..150.0_f64,
        -20.0..95.0_f64,
        0..3_usize,
        0..3_usize,
    );
    (
        prop::collection::vec(one, 1..7),
        0..4_usize,
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|(lines, fill, shaken, strained)| {
            let mut entries: Vec<Entry> = lines
                .into_iter()
                .enumerate()
                .map(|(at, (id, amount, celsius, stage, how))| {
                    let Entry::Line(found) =
                        line(&format!("line-{at}"), id, amount, celsius, Role::Base)
                    else {
                        unreachable!()
                    };
                    let amount = match how {
                        0 => Amount::Grams(amount),
                        1 if id != "powder" => Amount::Millilitres(amount),
                        _ => Amount::Count((amount / 9.0).ceil(), MeasureId::new("scoop").unwrap()),
                    };
                    let stage = [Stage::Mixed, Stage::Topping, Stage::OnTop][stage];
                    let carried = (stage == Stage::Topping).then(|| Carried {
                        ingredient: IngredientId::new("syrup").unwrap(),
                        grams: 5.0,
                    });
                    Entry::Line(Line {
                        amount,
                        stage,
                        carried,
                        ..found
                    })
                })
                .collect();
            let filling = |id: &str, amount: Amount| {
                let Entry::Line(found) = line("filling", id, 0.0, 60.0, Role::Base) else {
                    unreachable!()
                };
                Entry::Line(Line { amount, ..found })
            };
            match fill {
                1 => entries.push(filling("water", Amount::FillTo(420.0))),
                2 => entries.push(filling("syrup", Amount::FillTo(300.0))),
                3 => entries.push(filling("ice", Amount::FillToRim)),
                _ => {}
            }
            Resolved {
                entries,
                cup: Some(VesselId::new("cup").unwrap()),
                shaker: shaken.then(|| VesselId::new("shaker").unwrap()),
                strained: shaken && strained,
                ..Resolved::default()
            }
        })
}

/// What adds up over the lines whatever becomes of them: water and ice together, because ice melts.
const CONSERVED: [Component; 20] = [
    Component::Sugars,
    Component::Sucrose,
    Component::Glucose,
    Component::Fructose,
    Component::Lactose,
    Component::Maltose,
    Component::OtherSugar,
    Component::FreeSugars,
    Component::Carbohydrate,
    Component::Polyols,
    Component::Fibre,
    Component::Protein,
    Component::Fat,
    Component::Saturates,
    Component::Salt,
    Component::Acid,
    Component::TeaSolids,
    Component::Caffeine,
    Component::EnergyKj,
    Component::Particles,
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn mass_heat_and_every_component_survive_the_counter(resolved in any_drink()) {
        let book = whole_counter();
        let prepared = prepare(&book, &resolved, &mut Slots::default(), &place());
        let sums = sums(&prepared);
        let poured = pour(&sums, &prepared.setup);
        let mut handed_over = poured.drink;
        handed_over += &sums.toppings;
        handed_over += &sums.on_top;
        let mut in_lines = Mix::EMPTY;
        for (at, line) in prepared.lines.iter().enumerate() {
            in_lines.add_times(&line.per_unit, solved_count(&prepared, at).unwrap_or(0.0));
        }
        let near = |one: f64, other: f64| (one - other).abs() <= 1e-6 * (1.0 + one.abs());
        for component in CONSERVED {
            let (before, after) = (in_lines.get(component), handed_over.get(component));
            prop_assert!(near(before, after), "{component:?}: {before} before, {after} after");
        }
        // Straining keeps ice back and nothing else.
        let wet = |mix: &Mix| mix.get(Component::Water) + mix.get(Component::Ice);
        let kept_back = in_lines.get(Component::Mass) - handed_over.get(Component::Mass);
        prop_assert!(near(wet(&in_lines) - wet(&handed_over), kept_back));
        prop_assert!(kept_back >= -1e-9 && (prepared.setup.strained || kept_back.abs() < 1e-6), "{kept_back}");
        // Heat of what is in the cup.
        if prepared.setup.shaker.is_none() {
            let cup = prepared.setup.cup;
            let mut before = poured.drink;
            before += &sums.toppings;
            let ice = poured.served.ice_left + poured.ice_in_toppings;
            let mut after = before;
            after.set(Component::Water, wet(&before) - ice);
            after.set(Component::Ice, ice);
            let held = enthalpy(&after, poured.served.celsius) + cup.heat_capacity * poured.served.celsius;
            let brought = before.get(Component::Heat) + cup.heat_capacity * cup.celsius;
            prop_assert!((held - brought).abs() < 1e-5 * (1.0 + brought.abs()), "{brought} kJ brought, {held} kJ held");
        }
        // Never more ice than there is of water, and an amount that fills gets there or says that it doesn't.
        prop_assert!(poured.served.ice_left >= -1e-9 && poured.melted <= poured.drink.get(Component::Ice) + 1e-9);
        if let Some(at) = prepared.lines.iter().position(|line| line.fill.is_some()) {
            let found = balance(&book, resolved, &place());
            if solved_count(&prepared, at).is_none() {
                prop_assert!(found.findings.iter().any(|finding| finding.kind == FindingKind::FillOutOfReach));
                prop_assert!(found.figures.complete(Measurand::Mass).is_none());
            }
        }
    }

    #[test]
    fn a_batch_holds_what_went_into_it(grams in 1.0..900.0_f64) {
        // All of the sauce, and the cream that is made of it, against their parts put into a drink by themselves.
        let book = whole_counter();
        let sum_of = |entries: Vec<Entry>| {
            let prepared = prepare(&book, &resolved(entries), &mut Slots::default(), &place());
            sums(&prepared).whole()
        };
        let of = |id: &str, grams: f64| vec![line("l", id, grams, 20.0, Role::Base)];
        let parts = sum_of(book.recipe(&RecipeId::new("sauce").unwrap()).unwrap().entries.clone());
        let sauce = sum_of(of("sauce", 400.0));
        let cream = sum_of(of("cream", grams));
        let mut expected = sauce.times(200.0 / 400.0);
        expected.add_times(&sum_of(of("milk", 100.0)), 1.0);
        for component in CONSERVED {
            let (one, other) = (parts.get(component), sauce.get(component));
            prop_assert!((one - other).abs() < 1e-6 * (1.0 + one.abs()), "{component:?}: {one} in, {other} out");
            let (one, other) = (expected.get(component) * grams / 300.0, cream.get(component));
            prop_assert!((one - other).abs() < 1e-6 * (1.0 + one.abs()), "{component:?}: {one} in, {other} out");
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
