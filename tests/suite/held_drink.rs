//! A milk tea of which nothing is known but what packs print, from the label to the card.

use std::collections::BTreeSet;

use evensip::balance::{Measurand, balance_version};
use evensip::book::{
    Book, Composition, Evidence, Figure, Form, Ingredient, IngredientId, Nutrient, RecipeId, Role,
    VesselId,
};
use evensip::cards::{CardOptions, CardRequest, Drink, card, markdown};
use evensip::edit::apply;
use evensip::swap::{Question, answer};

use crate::counter_scenarios::us_label;
use crate::sample::{balance_of, book, cup, figure, ingredient, line, recipe, water};

/// A milk tea whose labels print what packs print, and nothing else.
fn milk_tea([powder, other_powder, creamer, milk]: [Composition; 4]) -> Book {
    let item = |id: &str, form, role, composition: Composition| Ingredient {
        composition,
        statement: String::new(),
        ..ingredient(id, form, role, &[])
    };
    let mut plain_milk = item("milk", Form::Liquid, Role::Creamer, milk);
    plain_milk.allergens = Some(evensip::book::AllergenStatement {
        contains: vec![evensip::book::Allergen::Milk],
        may_contain: Vec::new(),
        free_of: Vec::new(),
    });
    let brewed = item(
        "brew",
        Form::Liquid,
        Role::Tea,
        Composition {
            printed: [(Nutrient::TeaSolids, Figure::new(0.4, Evidence::Measured))].into(),
            ..Composition::default()
        },
    );
    let sugar = item(
        "sugar",
        Form::Crystals,
        Role::Sweetener,
        Composition {
            printed: [
                (Nutrient::Carbohydrate, Figure::new(100.0, Evidence::Label)),
                (Nutrient::Sugars, Figure::new(100.0, Evidence::Label)),
            ]
            .into(),
            ..Composition::default()
        },
    );
    let lines = vec![
        line("powder", "powder", 20.0, 20.0, Role::Flavour),
        line("creamer", "creamer", 15.0, 20.0, Role::Creamer),
        line("milk", "milk", 60.0, 5.0, Role::Creamer),
        line("sugar", "sugar", 5.0, 20.0, Role::Sweetener),
        line("brew", "brew", 120.0, 20.0, Role::Tea),
        line("hot", "water", 180.0, 90.0, Role::Water),
    ];
    let mut drink = recipe(lines);
    drink.cup = VesselId::new("cup").ok();
    drink.menu_price = Some(5.0);
    book(
        vec![
            item("powder", Form::Powder, Role::Flavour, powder),
            item("other-powder", Form::Powder, Role::Flavour, other_powder),
            item("creamer", Form::Powder, Role::Creamer, creamer),
            plain_milk,
            brewed,
            sugar,
            water(),
        ],
        vec![cup("cup", 0.0, 1.0)],
        drink,
    )
}

/// The seven figures of an EU label, per 100 g or 100 ml.
fn eu(figures: [f64; 7]) -> Composition {
    let nutrients = [
        Nutrient::Energy,
        Nutrient::Fat,
        Nutrient::Saturates,
        Nutrient::Carbohydrate,
        Nutrient::Sugars,
        Nutrient::Protein,
        Nutrient::Salt,
    ];
    Composition {
        printed: nutrients
            .into_iter()
            .zip(figures.map(|value| Figure::new(value, Evidence::Label)))
            .collect(),
        ..Composition::default()
    }
}

/// A US label, per serving of so many grams.
fn us(grams: f64, figures: [f64; 8]) -> Composition {
    let nutrients = [
        Nutrient::Energy,
        Nutrient::Fat,
        Nutrient::Saturates,
        Nutrient::Salt,
        Nutrient::Carbohydrate,
        Nutrient::Fibre,
        Nutrient::Sugars,
        Nutrient::Protein,
    ];
    us_label(
        grams,
        &nutrients.into_iter().zip(figures).collect::<Vec<_>>(),
    )
}

/// The drink by both kinds of label. The other powder is sweeter.
fn books() -> [(&'static str, Book); 2] {
    let by_eu_labels = milk_tea([
        eu([1690.0, 4.1, 3.6, 86.0, 61.0, 3.2, 0.42]),
        eu([1720.0, 4.4, 3.9, 88.0, 74.0, 2.1, 0.40]),
        eu([2190.0, 29.0, 28.0, 62.0, 11.0, 2.1, 1.1]),
        eu([268.0, 3.5, 2.3, 4.8, 4.8, 3.4, 0.1]),
    ]);
    let by_us_labels = milk_tea([
        us(22.0, [91.0, 1.0, 1.0, 35.0, 19.0, 0.0, 13.0, 1.0]),
        us(22.0, [92.0, 1.0, 1.0, 35.0, 19.0, 0.0, 16.0, 0.0]),
        us(5.0, [25.0, 1.5, 1.5, 20.0, 3.0, 0.0, 1.0, 0.0]),
        us(240.0, [150.0, 8.0, 5.0, 100.0, 12.0, 0.0, 12.0, 8.0]),
    ]);
    [("EU", by_eu_labels), ("US", by_us_labels)]
}

#[test]
fn the_figures_that_packs_print_are_enough_for_a_drink() {
    let drinks = books().map(|(labels, book)| (labels, balance_of(&book, "drink", None)));
    for (labels, drink) in &drinks {
        for measurand in [
            Measurand::EnergyKj,
            Measurand::EnergyKcal,
            Measurand::TotalSugar,
            Measurand::FreeSugars,
            Measurand::Sweetness,
            Measurand::TeaStrength,
            Measurand::Creaminess,
            Measurand::Acidity,
            Measurand::Body,
            Measurand::Fat,
            Measurand::Salt,
        ] {
            let reported = drink.reported(measurand);
            assert!(
                drink.figures.complete(measurand).is_some(),
                "{labels}: {} lacks {:?}",
                measurand.key(),
                reported.missing
            );
        }
        assert!(
            drink.axes.iter().all(|axis| axis.value.is_some()),
            "{labels}"
        );
    }
    let [(_, by_eu_labels), (_, by_us_labels)] = drinks;
    // Both describe about the same drink, each within its own doubt.
    for measurand in [Measurand::EnergyKj, Measurand::TotalSugar, Measurand::Fat] {
        let (one, other) = (
            figure(&by_eu_labels, measurand),
            figure(&by_us_labels, measurand),
        );
        let u = by_eu_labels
            .uncertainty(measurand.slot())
            .hypot(by_us_labels.uncertainty(measurand.slot()));
        assert!(
            (one - other).abs() < 2.5 * u,
            "{}: {one} and {other} ± {u}",
            measurand.key()
        );
    }
    // Caffeine of tea is on no label either, and is not taken for none.
    assert_eq!(by_eu_labels.figures.complete(Measurand::Caffeine), None);
}

/// A sweeter powder: sugar is taken back, the tea stays, and nothing that counts is left unknown.
#[test]
fn a_swap_of_powders_known_by_their_labels_is_compensated_with_what_sweetens() {
    for (labels, book) in books() {
        let id = |id: &str| IngredientId::new(id).unwrap();
        let question = Question {
            recipe: RecipeId::new("drink").unwrap(),
            version: None,
            replace: id("powder"),
            with: id("other-powder"),
            adjust: None,
        };
        let found = answer(&book, &question).unwrap();
        assert!(found.proven_optimal, "{labels}");
        let first = &found.suggestions[0];
        assert_eq!(first.difference.within_one_step(), Some(true), "{labels}");
        assert_eq!(first.difference.not_compared().count(), 0, "{labels}");
        let moved: BTreeSet<&str> = first.moves.iter().map(|one| one.line.as_str()).collect();
        assert!(
            moved.contains("sugar") || moved.contains("powder"),
            "{labels}: {moved:?}"
        );
        assert!(!moved.contains("brew"), "{labels}: {moved:?}");
        let recipe = book.recipe(&question.recipe).unwrap();
        let (edit, version) = found.accept(recipe, &first.changes, "other brand");
        let kept = apply(&book, &edit).unwrap();
        let kept_recipe = kept.recipe(&question.recipe).unwrap();
        let balance = balance_version(&kept, kept_recipe, Some(&version)).unwrap();
        let sugar = Measurand::TotalSugar;
        let by = figure(&balance, sugar) - figure(&found.standard, sugar);
        assert!(by.abs() < 2.0, "{labels}: {by} g of sugar");
        let drink = |version| Drink {
            recipe: question.recipe.clone(),
            version,
        };
        for request in [
            CardRequest::Counter(drink(Some(version.clone()))),
            CardRequest::Training(drink(Some(version.clone()))),
            CardRequest::Comparison(vec![drink(None), drink(Some(version.clone()))]),
        ] {
            let options = CardOptions {
                date: "2026-11-25".to_owned(),
                ..CardOptions::default()
            };
            let text = markdown(&card(&kept, &request, &options).unwrap());
            assert!(text.contains("other-powder"), "{labels}: {text}");
            let silent = |line: &&str| {
                let is_of_sugar = line.starts_with("- total sugar");
                is_of_sugar && ["least", "not"].iter().any(|word| line.contains(word))
            };
            assert_eq!(text.lines().find(silent), None, "{labels}: {text}");
            // Milk is in it, and the other packs have not said what they hold.
            assert!(!text.contains("vegan: yes"), "{labels}: {text}");
        }
    }
}
