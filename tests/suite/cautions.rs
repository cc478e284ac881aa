//! Cautions about heat, caffeine and curdling: what is not stated is said, and nothing soothes.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::{CautionFact, CautionKind, ScaldBound, ScaldTime, balance_version};
use evensip::book::{
    Allergen, AllergenStatement, Book, Evidence, Figure, Form, HouseMade, Ingredient, Nutrient,
    Recipe, RecipeId, Role,
};

use crate::sample;

/// An ingredient that states no acid and no caffeine.
fn silent(id: &str, role: Role) -> Ingredient {
    let figures = [(Nutrient::Water, 80.0), (Nutrient::Sugars, 5.0)];
    sample::ingredient(id, Form::Liquid, role, &figures)
}

fn stating(mut item: Ingredient, figures: &[(Nutrient, f64)]) -> Ingredient {
    for (nutrient, value) in figures {
        let figure = Figure::new(*value, Evidence::Label);
        item.composition.state(*nutrient, figure);
    }
    item
}

fn milk() -> Ingredient {
    let mut milk = stating(silent("milk", Role::Creamer), &[(Nutrient::Caffeine, 0.0)]);
    milk.allergens = Some(AllergenStatement {
        contains: vec![Allergen::Milk],
        may_contain: Vec::new(),
        free_of: Vec::new(),
    });
    milk
}

/// 100 g of each of these, and the cautions of a kind.
fn cautions(items: Vec<Ingredient>, kind: CautionKind) -> (Book, Vec<CautionFact>) {
    let lines = items
        .iter()
        .map(|item| sample::line(item.id.as_str(), item.id.as_str(), 100.0, 20.0, item.role))
        .collect();
    let book = sample::book(items, Vec::new(), sample::recipe(lines));
    let balance = sample::balance_of(&book, "drink", None);
    let facts = balance.cautions.into_iter().map(|caution| caution.fact);
    let facts = facts.filter(|fact| fact.kind() == kind).collect();
    (book, facts)
}

#[test]
fn caffeine_that_nobody_states_is_said_whatever_the_role() {
    for role in [Role::Flavour, Role::Base, Role::Tea] {
        let (_, facts) = cautions(vec![milk(), silent("matcha", role)], CautionKind::Caffeine);
        let [CautionFact::CaffeineNotKnown(ids)] = facts.as_slice() else {
            panic!("{facts:?}");
        };
        assert_eq!(ids.len(), 1, "{ids:?}");
        assert_eq!(ids[0].as_str(), "matcha");
    }
}

#[test]
fn a_known_part_above_a_line_is_at_least_that() {
    let strong = stating(silent("coffee", Role::Base), &[(Nutrient::Caffeine, 150.0)]);
    let (_, facts) = cautions(
        vec![strong.clone(), silent("matcha", Role::Flavour)],
        CautionKind::Caffeine,
    );
    assert_eq!(facts.len(), 2, "{facts:?}");
    let is_complete_of = |fact: &CautionFact| match fact {
        CautionFact::Caffeine {
            milligrams,
            is_complete,
            per_litre: Some(_),
            ..
        } if (milligrams - 150.0).abs() < 1e-6 => Some(*is_complete),
        _ => None,
    };
    assert_eq!(is_complete_of(&facts[0]), Some(false), "{facts:?}");
    let (_, facts) = cautions(vec![strong], CautionKind::Caffeine);
    assert_eq!(facts.len(), 1, "{facts:?}");
    assert_eq!(is_complete_of(&facts[0]), Some(true), "{facts:?}");
}

#[test]
fn something_sour_without_a_figure_may_curdle_milk() {
    let lemon = silent("lemon", Role::Flavour);
    let (_, facts) = cautions(vec![milk(), lemon.clone()], CautionKind::Curdling);
    let [CautionFact::MayCurdle { acid_not_stated }] = facts.as_slice() else {
        panic!("{facts:?}");
    };
    assert_eq!(acid_not_stated.len(), 1);
    assert_eq!(acid_not_stated[0].as_str(), "lemon");
    // Without milk, and with milk and sugar alone, there is nothing to say.
    for items in [
        vec![lemon.clone()],
        vec![milk(), silent("sugar", Role::Sweetener)],
    ] {
        let (_, facts) = cautions(items, CautionKind::Curdling);
        assert_eq!(facts, []);
    }
    let sour = stating(lemon, &[(Nutrient::Acid, 5.0)]);
    for (items, is_complete) in [
        (vec![milk(), sour.clone()], true),
        (vec![milk(), sour, silent("lime", Role::Flavour)], false),
    ] {
        let (_, facts) = cautions(items, CautionKind::Curdling);
        assert!(
            matches!(facts[0], CautionFact::Curdles { is_complete: found, .. } if found == is_complete),
            "{facts:?}"
        );
    }
}

#[test]
fn something_sour_is_found_in_a_batch() {
    let mut mix = sample::ingredient("house-mix", Form::Liquid, Role::Flavour, &[]);
    mix.house_made = Some(HouseMade {
        recipe: RecipeId::new("mix").unwrap(),
        yield_grams: Figure::new(100.0, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    let mut book = sample::book(
        vec![milk(), silent("plum", Role::Flavour), mix],
        Vec::new(),
        sample::recipe(vec![
            sample::line("a", "milk", 100.0, 20.0, Role::Creamer),
            sample::line("b", "house-mix", 50.0, 20.0, Role::Flavour),
        ]),
    );
    book.recipes.put(Recipe {
        id: RecipeId::new("mix").unwrap(),
        ..sample::recipe(vec![sample::line("a", "plum", 100.0, 20.0, Role::Flavour)])
    });
    let recipe = book.recipe(&RecipeId::new("drink").unwrap()).unwrap();
    let balance = balance_version(&book, recipe, None).unwrap();
    let found = balance
        .cautions
        .iter()
        .find_map(|caution| match &caution.fact {
            CautionFact::MayCurdle { acid_not_stated } => Some(acid_not_stated.clone()),
            _ => None,
        });
    let names: Vec<String> = found.unwrap().iter().map(ToString::to_string).collect();
    assert_eq!(names, ["plum"]);
}

#[test]
fn very_hot_water_scalds_in_less_than_a_second() {
    for celsius in [77.0, 96.0] {
        let book = sample::book(
            vec![sample::water()],
            Vec::new(),
            sample::recipe(vec![sample::line(
                "a",
                "water",
                200.0,
                celsius,
                Role::Water,
            )]),
        );
        let balance = sample::balance_of(&book, "drink", None);
        let fact = &balance.cautions[0].fact;
        let CautionFact::TooHot(hot) = fact else {
            panic!("{fact:?}");
        };
        let (adult, child) = (hot.adult.unwrap(), hot.child.unwrap());
        assert_eq!(
            (adult.bound, child.bound),
            (ScaldBound::LessThan, ScaldBound::LessThan)
        );
        assert!(child.seconds < adult.seconds && adult.seconds <= 1.0);
        let less_than = |seconds| ScaldTime {
            seconds,
            bound: ScaldBound::LessThan,
        };
        assert_eq!((adult, child), (less_than(1.0), less_than(0.5)));
    }
}
