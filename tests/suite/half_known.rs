//! What is said of drinks of which something is not known: never that it is level, kept or proven.

use evensip::balance::{AxisDifference, Difference, Measurand, balance};
use evensip::book::{
    Amount, Axis, Entry, IngredientId, Level, LevelName, Nutrient, Place, RecipeId, Resolved, Role,
    VesselId, resolve,
};
use evensip::say::Speaker;
use evensip::swap::{Bound, Demands, Question, Reason, Unheld, answer_with, ladder, resize};
use proptest::prelude::*;

use crate::sample::{balance_of, figure, line, recipe as drink, sample};

fn question(recipe: &str, replace: &str, with: &str) -> Question {
    Question {
        recipe: RecipeId::new(recipe).unwrap(),
        version: None,
        replace: IngredientId::new(replace).unwrap(),
        with: IngredientId::new(with).unwrap(),
        adjust: None,
    }
}

fn differences() -> impl Strategy<Value = Difference> {
    let axis = (
        prop::option::weighted(0.8, -2.0..2.0_f64),
        prop::option::weighted(0.9, 0.0..0.5_f64),
        prop::sample::select(vec![0.0, 0.5, 1.0]),
    );
    prop::collection::vec(axis, 0..6).prop_map(|axes| Difference {
        axes: axes
            .into_iter()
            .map(|(steps, scatter, weight)| AxisDifference {
                axis: Axis::Body,
                standard: Some(1.0),
                value: Some(1.0),
                step: 1.0,
                weight,
                // The smallest differences are as likely as the others.
                steps: steps.map(|steps: f64| steps.powi(3) / 4.0),
                u_steps: scatter,
                scatter_steps: scatter,
            })
            .collect(),
        distance: Some(1.0),
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4000))]

    /// Learning of an axis that was not known never turns a "no" into a "yes", and not knowing one leaves no "yes".
    #[test]
    fn nothing_is_said_to_hold_on_every_axis_while_one_is_not_known(difference in differences()) {
        let counts = |axis: &&AxisDifference| axis.weight > 0.0;
        let unknown = difference.axes.iter().filter(counts).any(|axis| axis.steps.is_none());
        if unknown {
            prop_assert!(!difference.is_level());
            prop_assert_ne!(difference.within_one_step(), Some(true));
            prop_assert_ne!(difference.within_scatter(), Some(true));
        }
        for at in 0..difference.axes.len() {
            let mut less = difference.clone();
            less.axes[at].steps = None;
            prop_assert!(!less.is_level() || difference.is_level());
            for (now, before) in [
                (less.within_one_step(), difference.within_one_step()),
                (less.within_scatter(), difference.within_scatter()),
            ] {
                prop_assert!(now.is_none() || now == before, "{:?} {:?}", now, before);
            }
        }
    }
}

/// Every suggestion of a swap into a powder that does not state its acid is said to be level as far as it is known at most.
#[test]
fn a_swap_that_leaves_an_axis_unknown_says_which() {
    let mut book = sample();
    let id = IngredientId::new("ketterby-pear-syrup").unwrap();
    let mut silent = book.ingredient(&id).unwrap().as_ref().clone();
    silent.composition.printed.remove(&Nutrient::Acid);
    book.ingredients.put(silent);
    let asked = question("hob-and-ember", "tambrel-pear-syrup", "ketterby-pear-syrup");
    let found = answer_with(&book, &asked, &Demands::default()).unwrap();
    assert!(!found.suggestions.is_empty());
    for one in &found.suggestions {
        let unknown: Vec<&str> = one.difference.not_compared().map(Axis::word).collect();
        assert_eq!(unknown, ["acidity"]);
        assert_ne!(one.within_scatter, Some(true));
        let said = Speaker::new(&book).suggestion(&found, one);
        assert!(!said.contains("on every axis"), "{said}");
        assert!(said.contains("Not known: acidity."), "{said}");
    }
}

#[test]
fn a_cap_is_not_said_to_be_kept_where_its_figure_is_not_known() {
    let mut book = sample();
    let asked = question("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut");
    let capped = Demands {
        most_cost: Some(5.0),
        most_energy_kj: Some(2000.0),
        most_sugar_per_100_ml: Some(20.0),
        ..Demands::default()
    };
    let not_known = |book: &_, demands: &Demands| -> Vec<Unheld> {
        let found = answer_with(book, &asked, demands).unwrap();
        assert!(!found.suggestions.is_empty());
        let unheld = found.reasons.into_iter().filter_map(|reason| match reason {
            Reason::Unheld(unheld) => Some(unheld),
            _ => None,
        });
        unheld.collect()
    };
    assert_eq!(not_known(&book, &capped), []);
    let id = IngredientId::new("ondry-creamer").unwrap();
    let mut silent = book.ingredient(&id).unwrap().as_ref().clone();
    silent.price = None;
    silent.composition.printed.remove(&Nutrient::Fat);
    silent.composition.printed.remove(&Nutrient::Energy);
    book.ingredients.put(silent);
    let unheld = not_known(&book, &capped);
    let bounds: Vec<Bound> = unheld.iter().map(|one| one.bound).collect();
    assert_eq!(bounds, [Bound::Energy(2000.0), Bound::Cost(5.0)]);
    assert!(unheld.iter().all(|one| one.missing == [id.clone()]));
    // Nobody asked for anything that is not known.
    assert_eq!(not_known(&book, &Demands::default()), []);
}

#[test]
fn syrup_that_clings_to_a_topping_grows_with_the_cup() {
    let book = sample();
    let recipe = book.recipe(&RecipeId::new("ninebell").unwrap()).unwrap();
    let clinging = |resolved: &Resolved| -> Vec<f64> {
        let lines = resolved.lines();
        lines
            .filter_map(|line| Some(line.carried.as_ref()?.grams / line.amount.number()?))
            .collect()
    };
    let before = clinging(&resolve(recipe, None).0);
    assert!(!before.is_empty());
    for cup in ["paper-cup-700", "paper-cup-500"] {
        let cup = VesselId::new(cup).unwrap();
        let resized = resize(&book, recipe, None, &cup).unwrap().unwrap();
        let after = clinging(&resized.balance.resolved);
        assert_eq!(before.len(), after.len());
        for (before, after) in before.iter().zip(&after) {
            assert!((after / before - 1.0).abs() < 1e-9, "{before} {after}");
        }
    }
}

/// The lowest level is what is left without the sweeteners, made up with water to as much as the standard.
#[test]
fn the_floor_of_a_ladder_is_as_large_as_the_standard() {
    let book = sample();
    for recipe in ["hazelthwaite", "hob-and-ember"] {
        let standard = balance_of(&book, recipe, None);
        let recipe = book.recipe(&RecipeId::new(recipe).unwrap()).unwrap();
        let none = Level {
            name: LevelName::Percent,
            percent: 0.0,
        };
        let found = ladder(&book, recipe, None, &[none]).unwrap();
        let volume = figure(&found.floor, Measurand::Volume) / figure(&standard, Measurand::Volume);
        let made_up = figure(&found.floor, Measurand::Sweetness) * volume;
        assert!((found.rungs[0].aim - made_up).abs() < 1e-9);
        assert!(volume < 1.0);
    }
}

/// What a line says of itself and what the drink says of it are one doubt, when nothing else is in the drink.
#[test]
fn a_figure_that_is_shown_twice_has_one_doubt() {
    let book = sample();
    let mut seen = 0;
    for item in &book.ingredients {
        let counts = book
            .measures
            .iter()
            .map(|measure| Amount::Count(2.0, measure.id.clone()));
        let amounts = [Amount::Grams(30.0), Amount::Millilitres(40.0)];
        for amount in amounts.into_iter().chain(counts) {
            let mut entry = line("only", item.id.as_str(), 1.0, 20.0, Role::Base);
            if let Entry::Line(line) = &mut entry {
                line.amount = amount;
            }
            let place = Place::Ingredient(item.id.clone(), "alone");
            let found = balance(&book, drink(vec![entry]).plain(), &place);
            let [share] = found.lines.as_slice() else {
                continue;
            };
            for (measurand, own) in [
                (Measurand::Mass, share.u_grams),
                (Measurand::TotalSugar, share.sugar_uncertainty),
            ] {
                let (Some(own), Some(_)) = (own, found.figures.complete(measurand)) else {
                    continue;
                };
                let whole = found.uncertainty(measurand.slot());
                seen += 1;
                assert!(
                    (own - whole).abs() <= 0.02 * whole + 1e-9,
                    "{} {:?}: {} ± {own} of the line, ± {whole} of the drink",
                    item.id,
                    share,
                    measurand.key()
                );
            }
        }
    }
    assert!(seen > 500, "{seen}");
}
