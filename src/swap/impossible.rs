//! Why no candidate is allowed: the demand that stands in the way, with figures.

use std::collections::BTreeSet;

use crate::balance::{Balance, LineShare, Verdict, claims_of_ingredient};
use crate::book::{Allergen, Book, IngredientId};

use super::demands::Demands;
use super::landscape::Bounds;
use super::obstacle::{CapKind, Obstacle};
use super::problem::{Problem, run};
use super::reason::{Carrier, Forbidden, Impossible, Reason};
use super::watch::Watch;

/// Boxes that the search for a reason looks at.
const LIMIT: u64 = 5_000;

/// Which ingredient keeps the drink from being vegan or holds an allergen that must not be in it, whatever its amount.
pub(super) fn diet_reason(book: &Book, plain: &Balance, demands: &Demands) -> Option<Reason> {
    let holders = |wanted: &dyn Fn(&IngredientId) -> bool| {
        each_once(plain.resolved.ingredients().filter(|id| wanted(id)))
    };
    let vegan = |id: &IngredientId| claims_of_ingredient(book, id).vegan;
    if demands.keep_vegan && plain.vegan != Verdict::Yes {
        let is_known = plain.vegan == Verdict::No;
        let ingredients = if is_known {
            holders(&|id| vegan(id) == Verdict::No)
        } else {
            holders(&|id| vegan(id) != Verdict::Yes)
        };
        return Some(Reason::NotVegan {
            ingredients,
            is_known,
        });
    }
    for allergen in &demands.without {
        if plain.allergens.contains.contains(allergen) {
            let contains = |id: &IngredientId| {
                let claims = claims_of_ingredient(book, id);
                claims.allergens.contains.contains(allergen)
            };
            return Some(Reason::Contains {
                ingredients: holders(&contains),
                allergen: *allergen,
            });
        }
    }
    let summary = &plain.allergens;
    let mut silent: BTreeSet<&IngredientId> = summary.not_stated.iter().collect();
    for allergen in &demands.without {
        match summary.silent_on.get(allergen) {
            Some(further) => silent.extend(further),
            // Nobody has asked the packs for what no list of the shop names.
            None if !allergen.is_in_annex() => silent.extend(plain.resolved.ingredients()),
            None => {}
        }
    }
    let is_silent = !demands.without.is_empty() && !silent.is_empty();
    is_silent.then(|| Reason::AllergensNotStated {
        ingredients: each_once(silent.into_iter()),
        allergens: demands.without.clone(),
    })
}

fn each_once<'id>(ids: impl Iterator<Item = &'id IngredientId>) -> Vec<IngredientId> {
    let unique: BTreeSet<&IngredientId> = ids.collect();
    unique.into_iter().cloned().collect()
}

/// Which ingredients may hold traces of an allergen that must not be in the drink: a "may contain" forbids nothing, and the guest
/// must hear of it.
pub(super) fn trace_reasons(book: &Book, plain: &Balance, demands: &Demands) -> Vec<Reason> {
    let traces = demands
        .without
        .iter()
        .filter(|allergen| plain.allergens.may_contain.contains(allergen));
    let reason = |allergen: &Allergen| {
        let may_contain = |id: &&IngredientId| {
            let claims = claims_of_ingredient(book, id);
            claims.allergens.may_contain.contains(allergen)
        };
        Reason::MayContain {
            ingredients: each_once(plain.resolved.ingredients().filter(may_contain)),
            allergen: *allergen,
        }
    };
    traces.map(reason).collect()
}

/// Why no amounts are allowed: the first demand without which some would be, or what the smallest drink runs into.
pub(super) fn impossible(problem: &Problem, plain: &Balance) -> Impossible {
    let landscape = &problem.landscape;
    let asked = *landscape.bounds();
    let without: [(bool, Bounds); 6] = [
        (
            asked.ice_left.is_some(),
            Bounds {
                ice_left: None,
                window: crate::book::TemperatureWindow {
                    from: -60.0,
                    to: 130.0,
                },
                ..asked
            },
        ),
        (
            asked.sugar_per_100_ml.is_some(),
            Bounds {
                sugar_per_100_ml: None,
                ..asked
            },
        ),
        (
            asked.energy_kj.is_some(),
            Bounds {
                energy_kj: None,
                ..asked
            },
        ),
        (
            asked.cost.is_some(),
            Bounds {
                cost: None,
                ..asked
            },
        ),
        (
            // The shop's own window stands in the way as well as one that was asked for.
            true,
            Bounds {
                window: crate::book::TemperatureWindow {
                    from: -60.0,
                    to: 130.0,
                },
                ..asked
            },
        ),
        (
            asked.hot_water.is_some(),
            Bounds {
                hot_water: None,
                ..asked
            },
        ),
    ];
    for (is_asked, bounds) in without {
        if !is_asked {
            continue;
        }
        let relaxed = landscape.bounded_by(bounds);
        if let Some(best) =
            run(&relaxed, LIMIT, None, &Watch::default()).and_then(|outcome| outcome.best)
            && let Some(obstacle) = landscape.obstacle(&best.point, &landscape.figures(&best.point))
        {
            return Impossible::Forbidden(forbidden(obstacle, plain));
        }
    }
    // Only what the cup holds falls with every amount: what the least of all lines runs into, no other candidate escapes.
    let least: Vec<i32> = problem.ranges().iter().map(|range| range.low).collect();
    match landscape.obstacle(&least, &landscape.figures(&least)) {
        Some(Obstacle::Cup { fill, room }) => Impossible::LeastOverfills { fill, room },
        _ => Impossible::AllConditions,
    }
}

/// A condition that is broken, with the ingredient that brings most of what a cap limits.
pub(super) fn forbidden(obstacle: Obstacle, plain: &Balance) -> Forbidden {
    let share_of = |kind: CapKind, share: &LineShare| match kind {
        CapKind::Sugar => share.sugar,
        CapKind::Energy => share.energy,
        CapKind::Cost => share.cost,
    };
    let carrier = match obstacle {
        Obstacle::Cap { kind, .. } => {
            let shares = plain.lines.iter();
            let amounts = shares.map(|share| Carrier {
                ingredient: share.ingredient.clone(),
                amount: share_of(kind, share).unwrap_or(0.0),
            });
            amounts.max_by(|one, other| one.amount.total_cmp(&other.amount))
        }
        _ => None,
    };
    Forbidden { obstacle, carrier }
}
