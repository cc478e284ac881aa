//! The same drink in another cup: every line grows by the room of the cups, then whole measures are looked for.

use crate::balance::{Measurand, room_of};
use crate::book::{Book, Change, Recipe, Role, VersionId, VesselId};

use super::adapt::{Adaptation, Adapted, Origin};
use super::demands::Demands;
use super::grown::{Grown, grown};
use super::reason::Unadaptable;
use super::watch::Watch;

/// How far a line may end from its grown amount, in steps.
const REACH: i32 = 8;

/// The drink in another cup; `None` when there is no such version or cup. `Err` says why it can't be.
///
/// The volume aimed at is the standard's, times the ratio of what the cups hold below their head room; every other axis stays,
/// the level of sugar of the version among them.
pub fn resize(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: &VesselId,
) -> Option<Result<Adapted, Unadaptable>> {
    resize_watched(book, recipe, version, cup, &Watch::default())
}

/// The same, watched from outside.
pub fn resize_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: &VesselId,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    resized(&origin, cup)
}

pub(super) fn resized(origin: &Origin<'_>, cup: &VesselId) -> Option<Result<Adapted, Unadaptable>> {
    let book = origin.book;
    let new = room_of(book, Some(cup))?;
    let Some(old) = room_of(book, origin.resolved.cup.as_ref()) else {
        return Some(Err(Unadaptable::NoCup));
    };
    let ratio = new / old;
    let mut in_cup = origin.resolved.clone();
    in_cup.apply(&Change::Cup(cup.clone()));
    let Grown { lines, adjustable } = grown(book, &in_cup, ratio, REACH);
    // A line that grows has to move: it counts as moved only against its grown amount.
    let bring_back =
        |adjustable| origin.bring_back(lines.clone(), adjustable, &lines, &Demands::default());
    // What the drink is held to follows from its ice, which stays therefore as it has grown, if it can.
    let beside_ice = adjustable
        .iter()
        .filter(|found| found.line.role != Role::Ice);
    let brought = bring_back(beside_ice.cloned().collect()).or_else(|_| bring_back(adjustable));
    Some(brought.map(|adapted| {
        let fill = adapted.balance.figures.get(Measurand::Fill);
        Adapted {
            adaptation: Adaptation::Cup { ratio, fill },
            ..adapted
        }
    }))
}
