//! Random holes in the sample book: whatever is missing, nothing panics and nothing is taken for zero in silence.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::collections::BTreeSet;
use std::sync::Arc;

use evensip::balance::{
    Assumed, Balance, Component, Measurand, balance_version, cooling, declaration, standing,
    statement_findings_of, yardstick_reading,
};
use evensip::book::{Book, Ingredient, IngredientId, Nutrient, Yardstick};
use evensip::say::Speaker;
use proptest::prelude::*;

use crate::sample::sample;

/// A figure of an ingredient that can be missing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Hole {
    Figure(Nutrient),
    SugarProfile,
    FreeSugarFraction,
    Price,
    Density,
    BulkDensity,
    Allergens,
    Vegan,
}

fn possible_holes(item: &Ingredient) -> Vec<Hole> {
    let figures = item
        .composition
        .printed
        .keys()
        .map(|nutrient| Hole::Figure(*nutrient));
    let others = [
        Hole::SugarProfile,
        Hole::FreeSugarFraction,
        Hole::Price,
        Hole::Density,
        Hole::BulkDensity,
        Hole::Allergens,
        Hole::Vegan,
    ];
    figures.chain(others).collect()
}

fn cut(item: &mut Ingredient, hole: Hole) {
    match hole {
        Hole::Figure(nutrient) => {
            item.composition.printed.remove(&nutrient);
        }
        Hole::SugarProfile => item.composition.sugar_profile = None,
        Hole::FreeSugarFraction => item.composition.free_sugar_fraction = None,
        Hole::Price => item.price = None,
        Hole::Density => item.density = None,
        Hole::BulkDensity => item.bulk_density = None,
        Hole::Allergens => item.allergens = None,
        Hole::Vegan => item.diet.vegan = None,
    }
}

/// The sample book with some holes, and which.
fn holed() -> impl Strategy<Value = (Book, Vec<(IngredientId, Hole)>)> {
    let all: Vec<(IngredientId, Hole)> = sample()
        .ingredients
        .iter()
        .flat_map(|item| {
            possible_holes(item)
                .into_iter()
                .map(|hole| (item.id.clone(), hole))
        })
        .collect();
    let count = all.len();
    (0.0..0.6_f64).prop_flat_map(move |part| {
        let all = all.clone();
        prop::collection::vec(prop::bool::weighted(part), count).prop_map(move |taken| {
            let holes: Vec<(IngredientId, Hole)> = all
                .iter()
                .zip(taken)
                .filter(|(_, taken)| *taken)
                .map(|(hole, _)| hole.clone())
                .collect();
            let mut book = sample();
            for item in &sample().ingredients {
                let mut changed = Arc::unwrap_or_clone(Arc::clone(item));
                for (_, hole) in holes.iter().filter(|(id, _)| *id == item.id) {
                    cut(&mut changed, *hole);
                }
                book.ingredients.put(changed);
            }
            (book, holes)
        })
    })
}

/// Every balance of a book, in order.
fn balances(book: &Book) -> Vec<Balance> {
    let of = |recipe: &evensip::book::Recipe| {
        let versions = recipe
            .versions
            .iter()
            .map(|version| Some(version.id.clone()));
        std::iter::once(None)
            .chain(versions)
            .filter_map(|id| balance_version(book, recipe, id.as_ref()))
            .collect::<Vec<_>>()
    };
    book.recipes.iter().flat_map(|recipe| of(recipe)).collect()
}

/// The figure that rests on a nutrient, when what the label states otherwise can't stand in for it: not a syrup that is given
/// by its °Brix, not sugar, and not so little that the label still adds up.
fn figure_on(item: &Ingredient, nutrient: Nutrient) -> Option<Measurand> {
    let measurand = match nutrient {
        Nutrient::Fat => Measurand::Fat,
        Nutrient::Saturates => Measurand::Saturates,
        Nutrient::Carbohydrate => Measurand::Carbohydrate,
        Nutrient::Sugars => Measurand::TotalSugar,
        Nutrient::Protein => Measurand::Protein,
        Nutrient::Salt => Measurand::Salt,
        Nutrient::TeaSolids => Measurand::TeaSolids,
        Nutrient::Caffeine => Measurand::Caffeine,
        _ => return None,
    };
    let value = |nutrient| {
        item.composition
            .get(nutrient)
            .map_or(0.0, |figure| figure.value)
    };
    // Sugars that are all of the carbohydrate stand in for it.
    let stand_in = if nutrient == Nutrient::Carbohydrate {
        value(Nutrient::Sugars)
    } else {
        0.0
    };
    let enough = value(nutrient) - stand_in > 0.5;
    (enough && item.composition.get(Nutrient::Brix).is_none()).then_some(measurand)
}

/// Ingredients that stand in a drink by themselves, with an amount.
fn in_drink(found: &Balance) -> BTreeSet<IngredientId> {
    found
        .lines
        .iter()
        .filter(|line| line.count > 0.0)
        .map(|line| line.ingredient.clone())
        .collect()
}

const ADDITIVE: [Measurand; 9] = [
    Measurand::TotalSugar,
    Measurand::Fat,
    Measurand::Saturates,
    Measurand::Protein,
    Measurand::Salt,
    Measurand::Caffeine,
    Measurand::TeaSolids,
    Measurand::Cost,
    Measurand::FreeSugars,
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_combination_of_missing_figures_neither_panics_nor_is_a_silent_zero((book, holes) in holed()) {
        let before = sample();
        for (found, whole) in balances(&book).iter().zip(balances(&before)) {
            for measurand in Measurand::ALL {
                let reported = found.reported(measurand);
                prop_assert!(reported.value.is_none_or(f64::is_finite) && reported.u.is_none_or(f64::is_finite), "{measurand:?}");
            }
            let present = in_drink(found);
            for (id, hole) in holes.iter().filter(|(id, _)| present.contains(id)) {
                let item = before.ingredient(id).unwrap();
                let measurand = match hole {
                    Hole::Figure(nutrient) => figure_on(item, *nutrient),
                    Hole::Price if item.house_made.is_none() && item.price.is_some() => Some(Measurand::Cost),
                    _ => None,
                };
                if let Some(measurand) = measurand {
                    let missing = found.reported(measurand).missing;
                    let is_assumed = found
                        .assumptions
                        .iter()
                        .any(|(of, assumption)| of == id && assumption.concerns(measurand));
                    prop_assert!(missing.contains(id) || is_assumed, "{} is a silent zero in {}", id, measurand.key());
                }
            }
            // Where the amounts of the lines are the same, a hole only takes away.
            let same_masses = found.lines.iter().zip(&whole.lines).all(|(one, other)| one.grams == other.grams);
            if same_masses {
                let assumes_free_sugars =
                    found.assumptions.iter().any(|(_, assumption)| assumption.what == Assumed::FreeSugars);
                for measurand in ADDITIVE {
                    if measurand == Measurand::FreeSugars && assumes_free_sugars {
                        continue;
                    }
                    let (part, all) = (found.figures.get(measurand), whole.figures.get(measurand));
                    let (Some(part), Some(all)) = (part, all) else { continue };
                    let kept = found.figures.missing(measurand) == 0 || part <= all + 1e-9;
                    prop_assert!(kept, "{} grew from {all} to {part} by a hole", measurand.key());
                }
            }
        }
    }

    #[test]
    fn everything_else_that_is_said_of_a_drink_bears_holes_too((book, _) in holed()) {
        for found in balances(&book) {
            for yardstick in Yardstick::ALL {
                let reading = yardstick_reading(yardstick, &book, &found);
                prop_assert!(reading.lines.iter().all(|line| line.value.is_none_or(f64::is_finite)));
            }
            for row in declaration(&found) {
                prop_assert!(row.per_drink.value.is_finite());
                let unknown = found.figures.missing(row.measurand) != 0;
                prop_assert_eq!(row.per_drink.is_complete, !unknown);
            }
            if let Some(cooling) = cooling(&book, &found) {
                prop_assert!(cooling.curve.temperature_at(30.0).value.is_finite());
            }
            for step in standing(&book, &found, &[0.0, 10.0]) {
                prop_assert!(step.volume.value.is_finite() && step.ice_left.value >= 0.0);
            }
            prop_assert!(statement_findings_of(&book, &found.resolved).iter().all(|finding| !Speaker::new(&book).question(finding).is_empty()));
            prop_assert!(found.unstated.iter().all(|gap| Component::ALL.contains(&gap.component)));
        }
    }
}
