//! Why no candidate is allowed: the demand that stands in the way, with figures.

use std::collections::BTreeSet;

use crate::balance::{Balance, LineShare, Verdict, claims_of_ingredient};
use crate::book::{Allergen, Book, IngredientId};
use crate::quantity::show_number;

use super::demands::Demands;
use super::landscape::Bounds;
use super::obstacle::{CapKind, Obstacle};
use super::problem::{Problem, run};
use super::watch::Watch;

/// Boxes that the search for a reason looks at.
const LIMIT: u64 = 5_000;

/// Which ingredient keeps the drink from being vegan or holds an allergen that must not be in it, whatever its amount.
pub(super) fn diet_reason(book: &Book, plain: &Balance, demands: &Demands) -> Option<String> {
    let names = |ids: Vec<&IngredientId>| names(book, ids);
    let ingredients = || plain.resolved.ingredients();
    let vegan = |id: &IngredientId| claims_of_ingredient(book, id).vegan;
    if demands.keep_vegan && plain.vegan != Verdict::Yes {
        let (in_the_way, what): (Vec<&IngredientId>, &str) = match plain.vegan {
            Verdict::No => (
                ingredients()
                    .filter(|id| vegan(id) == Verdict::No)
                    .collect(),
                "is not vegan",
            ),
            _ => (
                ingredients()
                    .filter(|id| vegan(id) != Verdict::Yes)
                    .collect(),
                "is not known to be vegan",
            ),
        };
        return Some(format!(
            "{} {what}: swap it as well, in the same question",
            names(in_the_way)
        ));
    }
    for allergen in &demands.without {
        if plain.allergens.contains.contains(allergen) {
            let holders = ingredients()
                .filter(|id| {
                    let claims = claims_of_ingredient(book, id);
                    claims.allergens.contains.contains(allergen)
                })
                .collect();
            return Some(format!(
                "{} contains {}: swap it as well, in the same question",
                names(holders),
                allergen.word()
            ));
        }
    }
    let silent = &plain.allergens.not_stated;
    (!demands.without.is_empty() && !silent.is_empty()).then(|| {
        let words: Vec<&str> = demands
            .without
            .iter()
            .map(|allergen: &Allergen| allergen.word())
            .collect();
        format!(
            "whether {} contains {} is not stated: ask the maker",
            names(silent.iter().collect()),
            words.join(" or ")
        )
    })
}

fn names(book: &Book, ids: Vec<&IngredientId>) -> String {
    let unique: BTreeSet<String> = ids
        .into_iter()
        .map(|id| {
            book.ingredient(id)
                .map_or_else(|| id.to_string(), |item| item.full_name())
        })
        .collect();
    unique.into_iter().collect::<Vec<_>>().join(" and ")
}

/// Which ingredients may hold traces of an allergen that must not be in the drink: a "may contain" forbids nothing, and the guest
/// must hear of it.
pub(super) fn trace_reasons(book: &Book, plain: &Balance, demands: &Demands) -> Vec<String> {
    let traces = demands
        .without
        .iter()
        .filter(|allergen| plain.allergens.may_contain.contains(allergen));
    let reason = |allergen: &Allergen| {
        let may_contain = |id: &&IngredientId| {
            let claims = claims_of_ingredient(book, id);
            claims.allergens.may_contain.contains(allergen)
        };
        let holders: Vec<&IngredientId> =
            plain.resolved.ingredients().filter(may_contain).collect();
        format!(
            "{} may contain {} by its pack: tell the guest",
            names(book, holders),
            allergen.word()
        )
    };
    traces.map(reason).collect()
}

/// Why no amounts are allowed: the first demand without which some would be, or what the smallest drink runs into.
pub(super) fn impossible_reason(book: &Book, problem: &Problem, plain: &Balance) -> String {
    let landscape = &problem.landscape;
    let asked = *landscape.bounds();
    let without: [(bool, Bounds); 5] = [
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
            return sentence(book, &obstacle, plain);
        }
    }
    // Only what the cup holds falls with every amount: what the least of all lines runs into, no other candidate escapes.
    let least: Vec<i32> = problem.ranges().iter().map(|range| range.low).collect();
    match landscape.obstacle(&least, &landscape.figures(&least)) {
        Some(Obstacle::Cup { fill, room }) => format!(
            "it does not fit the cup: even with the least of what may move it is {} % full, and {} % is the most",
            show_number(fill, 0),
            show_number(room, 0)
        ),
        _ => "no amount of the lines that may move fits the cup, the temperature window and every demand at once".to_owned(),
    }
}

pub(super) fn sentence(book: &Book, obstacle: &Obstacle, plain: &Balance) -> String {
    match *obstacle {
        Obstacle::FillOutOfReach => "no amount of what fills it up gets there".to_owned(),
        Obstacle::Cup { fill, room } => format!(
            "it does not fit the cup: it is {} % full, and {} % is the most",
            show_number(fill, 0),
            show_number(room, 0)
        ),
        Obstacle::Temperature { celsius, window } => format!(
            "it would be served at {} °C, outside {} to {} °C: change the water or the tea, or the window",
            show_number(celsius, 1),
            show_number(window.from, 0),
            show_number(window.to, 0)
        ),
        Obstacle::Cap {
            kind: CapKind::Sugar,
            found,
            most,
        } => format!(
            "at most {} g of sugar in 100 ml can't be kept: the closest taste without the cap has {} g{}",
            show_number(most, 1),
            show_number(found, 1),
            carries_most(book, plain, "g of sugar", |share| share.sugar)
        ),
        Obstacle::Cap {
            kind: CapKind::Energy,
            found,
            most,
        } => format!(
            "at most {} kJ can't be kept: the closest taste without the cap has {} kJ{}",
            show_number(most, 0),
            show_number(found, 0),
            carries_most(book, plain, "kJ", |share| share.energy)
        ),
        Obstacle::Cap {
            kind: CapKind::Cost,
            found,
            most,
        } => format!(
            "at most {} {currency} can't be kept: the closest taste without the cap costs {} {currency}{}",
            show_number(most, 2),
            show_number(found, 2),
            carries_most(book, plain, &book.settings.currency, |share| share.cost),
            currency = book.settings.currency
        ),
        Obstacle::HotWater {
            hot,
            powder,
            needed,
        } => format!(
            "{} g of hot water do not dissolve {} g of powder: a gram needs {} g",
            show_number(hot, 0),
            show_number(powder, 0),
            show_number(needed, 1)
        ),
    }
}

/// "; Ketterby chestnut powder alone carries 13.6 g of sugar".
fn carries_most(
    book: &Book,
    plain: &Balance,
    unit: &str,
    of: impl Fn(&LineShare) -> Option<f64>,
) -> String {
    let amount = |share: &LineShare| of(share).unwrap_or(0.0);
    let most = plain
        .lines
        .iter()
        .max_by(|one, other| amount(one).total_cmp(&amount(other)));
    most.map_or_else(String::new, |share| {
        let name = book
            .ingredient(&share.ingredient)
            .map_or_else(|| share.ingredient.to_string(), |item| item.full_name());
        let decimals = if amount(share) < 1.0 { 2 } else { 1 };
        format!(
            "; {name} alone carries {} {unit}",
            show_number(amount(share), decimals)
        )
    })
}
