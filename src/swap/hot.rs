//! An iced drink turned hot: the ice goes, and what is poured is hot enough to serve it warm.

use crate::balance::room_of;
use crate::book::{Book, Change, LineId, Recipe, Role, Stage, VersionId, VesselId};

use super::adapt::{Adaptation, Adapted, Origin, movable};
use super::demands::Demands;
use super::grown::{Grown, grown};
use super::reason::{Impossible, Unadaptable};
use super::watch::Watch;

/// Temperatures that tea or water is tried with, the least hot last, °C (common practice, no source).
const POURED_AT: [f64; 7] = [95.0, 90.0, 85.0, 80.0, 75.0, 70.0, 65.0];

/// How far a line may end from its grown amount, in steps.
const REACH: i32 = 6;

/// Cups that hold as much, as a part of it.
const SAME_SIZE: f64 = 0.02;

/// An iced drink without its ice and hot, brought back to the strength of its standard; `None` when there is no such version.
/// `Err` says why it can't be.
///
/// Water makes up for the ice that melted into the standard. Water and tea are poured as hot as brings
/// it closest within the shop's window for hot drinks; fruit syrups that are rich in fructose sweeten less hot, so the sweeteners move as well.
pub fn hot(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: Option<&VesselId>,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    Some(hot_in(&origin, cup))
}

fn hot_in(origin: &Origin<'_>, cup: Option<&VesselId>) -> Result<Adapted, Unadaptable> {
    let of_role = |wanted: fn(Role) -> bool| -> Vec<LineId> {
        let lines = origin.resolved.lines();
        let mixed = lines.filter(|line| line.stage == Stage::Mixed && wanted(line.role));
        mixed.map(|line| line.id.clone()).collect()
    };
    let ice = of_role(|role| role == Role::Ice);
    let poured = of_role(|role| matches!(role, Role::Water | Role::Tea));
    if ice.is_empty() {
        return Err(Unadaptable::NoIce);
    }
    if poured.is_empty() {
        return Err(Unadaptable::NothingPouredHot);
    }
    let mut without_ice = origin.resolved.clone();
    for id in ice {
        without_ice.apply(&Change::Remove(id));
    }
    if let Some(cup) = cup {
        without_ice.apply(&Change::Cup(cup.clone()));
    }
    let old = room_of(origin.book, origin.resolved.cup.as_ref());
    let new = room_of(origin.book, without_ice.cup.as_ref());
    let ratio = new.zip(old).map_or(1.0, |(new, old)| new / old);
    // In a cup of another size the whole drink grows or shrinks; in its own one only what is there to be moved does.
    let grows = (ratio - 1.0).abs() > SAME_SIZE;
    let mut refused: Option<Unadaptable> = None;
    let mut best: Option<(f64, Adapted)> = None;
    for celsius in POURED_AT {
        let mut changed = without_ice.clone();
        for id in &poured {
            changed.apply(&Change::Temperature(id.clone(), Some(celsius.into())));
        }
        let (lines, adjustable) = if grows {
            let Grown { lines, adjustable } = grown(origin.book, &changed, ratio, REACH);
            (lines, adjustable)
        } else {
            let moves = |role| matches!(role, Role::Water | Role::Tea | Role::Sweetener);
            (changed.clone(), movable(origin.book, &changed, moves))
        };
        let from = if grows {
            &lines
        } else {
            &origin.standard.resolved
        };
        match origin.bring_back(lines.clone(), adjustable, from, &Demands::default()) {
            Ok(drink)
                if best
                    .as_ref()
                    .is_none_or(|(_, best)| is_closer(&drink, best)) =>
            {
                best = Some((celsius, drink));
            }
            Ok(_) => {}
            Err(reason) => refused = refused.or(Some(reason)),
        }
    }
    let Some((celsius, mut drink)) = best else {
        let all = Unadaptable::Impossible(Impossible::AllConditions);
        return Err(refused.unwrap_or(all));
    };
    drink.adaptation = Adaptation::Hot { poured_at: celsius };
    Ok(drink)
}

/// Whether a drink is closer to the standard; of equal ones the hotter, which is tried first, stays.
fn is_closer(drink: &Adapted, than: &Adapted) -> bool {
    let distance = |drink: &Adapted| drink.difference.distance.unwrap_or(f64::INFINITY);
    distance(drink) + 1e-9 < distance(than)
}
