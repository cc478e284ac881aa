//! The same drink in another cup: every line grows by the room of the cups, then whole measures are looked for.

use crate::balance::{Measurand, balance};
use crate::book::{Axis, Book, Carried, Change, Recipe, Stage, VersionId, VesselId};
use crate::optimiser::Range;

use super::adapt::{Adaptation, Adapted, Origin};
use super::demands::Demands;
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;
use super::watch::Watch;

/// How far a line may end from its grown amount, in steps.
const REACH: i32 = 8;

/// The drink in another cup; `None` when there is no such version or cup. `Err` says why it can't be.
///
/// The volume aimed at is the standard's, times the ratio of what the cups hold below their head room; every other axis stays.
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
    let room = |id: &VesselId| {
        let vessel = book.vessel(id)?;
        let head_room = vessel
            .usual_closure()
            .map_or(0.0, |closure| closure.head_room);
        Some((vessel.capacity - head_room).max(1.0))
    };
    let new = room(cup)?;
    let Some(old) = origin.resolved.cup.as_ref().and_then(room) else {
        return Some(Err(Unadaptable::NoCup));
    };
    let ratio = new / old;
    let mut changed = origin.resolved.clone();
    changed.apply(&Change::Cup(cup.clone()));
    let mut adjustable = Vec::new();
    for line in origin.resolved.lines() {
        let Some(number) = line.amount.number() else {
            continue;
        };
        if let crate::book::Amount::FillTo(millilitres) = line.amount {
            changed.apply(&Change::Amount(
                line.id.clone(),
                crate::book::Amount::FillTo((millilitres * ratio).round()),
            ));
            continue;
        }
        let Some(mut found) = Adjustable::new(book, line, false) else {
            continue;
        };
        let grown = steps_in(number * ratio - found.step / 2.0, found.step).max(0);
        found.range = Range {
            low: (grown - REACH).max(i32::from(number > 0.0)),
            high: grown + REACH,
        };
        let amount = found.amount(grown.max(found.range.low));
        changed.apply(&Change::Amount(line.id.clone(), amount.clone()));
        // What clings to a topping grows with it.
        let growth = amount.number().unwrap_or(0.0) / number;
        if let Some(carried) = line.carried.clone().filter(|_| growth.is_finite()) {
            let grams = carried.grams * growth;
            let carried = Carried { grams, ..carried };
            changed.apply(&Change::Carried(line.id.clone(), Some(carried)));
        }
        found.line.amount = amount;
        // Toppings and what floats on top are a matter of the cup alone, and grow as they are.
        if line.stage == Stage::Mixed && adjustable.len() < 8 {
            adjustable.push(found);
        }
    }
    let volume = origin.standard.figures.of[Measurand::Volume.slot()] * ratio;
    // A line that grows has to move: it counts as moved only against its grown amount.
    let mut grown = Origin {
        standard: origin.standard.clone(),
        ..origin
    };
    grown.standard.resolved = changed.clone();
    let aimed = [(Axis::Volume, volume)];
    Some(
        grown
            .bring_back(changed.clone(), adjustable, &aimed, &Demands::default())
            .map(|mut adapted| {
                let fill = balance(book, adapted.balance.resolved.clone(), &grown.place())
                    .figures
                    .get(Measurand::Fill);
                adapted.adaptation = Adaptation::Cup { ratio, fill };
                adapted
            }),
    )
}
