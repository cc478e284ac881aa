//! Laws of packs: a bottle costs by what is poured from it, and a file states what a pack holds in one way.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::Measurand;
use evensip::book::{
    Amount, Book, Entry, Evidence, Figure, Form, Ingredient, Nutrient, Price, Role,
};
use evensip::book_file::{LoadProblem, parse, write};
use evensip::quantity::{Pack, PackUnit};

use crate::sample::{balance_of, book, cup, ingredient, line, recipe};

fn sold(pack: f64, content: Pack, waste_percent: f64) -> Price {
    Price {
        pack,
        content,
        waste_percent,
        date: None,
    }
}

/// 40 ml of a syrup in a cup that costs nothing.
fn poured(syrup: Ingredient) -> Book {
    let mut entry = line("l1", syrup.id.as_str(), 0.0, 20.0, Role::Sweetener);
    if let Entry::Line(line) = &mut entry {
        line.amount = Amount::Millilitres(40.0);
    }
    let mut cup = cup("cup", 12.0, 1.4);
    cup.price = Some(0.0);
    let mut recipe = recipe(vec![entry]);
    recipe.cup = Some(cup.id.clone());
    book(vec![syrup], vec![cup], recipe)
}

#[test]
fn what_is_poured_from_a_bottle_costs_the_same_whatever_it_weighs() {
    let figures = [(Nutrient::Brix, 66.0)];
    let densities = [None, Some(1.0), Some(1.31), Some(1.36)];
    for (waste, expected) in [(0.0, 0.40), (20.0, 0.50)] {
        for density in densities {
            let mut syrup = ingredient("quince", Form::Syrup, Role::Sweetener, &figures);
            syrup.density = density.map(|value| Figure::new(value, Evidence::Assumed));
            let six = Pack {
                count: 6.0,
                ..Pack::of_millilitres(750.0)
            };
            syrup.price = Some(sold(45.0, six, waste));
            let book = poured(syrup);
            let balance = balance_of(&book, "drink", None);
            let cost = balance.reported(Measurand::Cost);
            let value = cost.value.unwrap();
            assert!((value - expected).abs() < 1e-9, "{density:?}: {value}");
            // What the mark of a jug allows stays; the doubt of the density cancels out.
            let u = cost.u.unwrap() / value;
            assert!(u < 0.021, "{density:?}: {u}");
        }
    }
}

#[test]
fn a_powder_that_is_sold_by_volume_costs_nothing_that_is_known_until_it_has_a_poured_density() {
    let mut powder = ingredient("barley", Form::Powder, Role::Flavour, &[]);
    powder.price = Some(sold(10.0, Pack::of_millilitres(1000.0), 0.0));
    let drink = |powder: &Ingredient| {
        let entry = line("l1", "barley", 20.0, 20.0, Role::Flavour);
        let book = book(vec![powder.clone()], Vec::new(), recipe(vec![entry]));
        let balance = balance_of(&book, "drink", None);
        let cost = balance.reported(Measurand::Cost);
        (cost.value, cost.missing.is_empty())
    };
    assert!(!drink(&powder).1, "{:?}", drink(&powder));
    powder.bulk_density = Some(Figure::new(0.5, Evidence::Measured));
    let (cost, is_known) = drink(&powder);
    assert!(is_known && (cost.unwrap() - 0.4).abs() < 1e-9, "{cost:?}");
}

#[test]
fn a_file_states_what_a_pack_holds_once_and_an_old_one_in_grams() {
    let case = Pack {
        count: 12.0,
        ..Pack::of_grams(1000.0)
    };
    for (content, text) in [
        (Pack::of_grams(1000.0), "grams: 1000.0, waste"),
        (case, "count: 12.0, grams: 1000.0, waste"),
        (Pack::of_millilitres(750.0), "millilitres: 750.0, waste"),
    ] {
        let mut syrup = ingredient("quince", Form::Syrup, Role::Sweetener, &[]);
        syrup.price = Some(sold(8.6, content, 0.0));
        let written = write(&poured(syrup));
        assert!(written.contains(text), "{written}");
        let read = parse(&written).unwrap();
        let read = read.0.ingredients.iter().next().unwrap().price.clone();
        assert_eq!(read.unwrap().content, content);
        for wrong in ["waste", "grams: 5.0, millilitres: 5.0, waste"] {
            let problems = parse(&written.replace(text, wrong)).unwrap_err();
            assert!(
                matches!(problems.as_slice(), [LoadProblem::PackContent { .. }]),
                "{problems:?}"
            );
        }
    }
    assert_eq!(Pack::of_millilitres(1.0).unit, PackUnit::Millilitres);
}
