//! The sugar ladder: how far the sweetness of a drink can be taken down, level by level.
//!
//! A level is a part of the *added* sweetness, that of the lines whose role is to sweeten. What powders and milk carry can't be
//! taken out, so the ladder stands on a floor: `aim = floor + part · (standard − floor)`, the floor made up to the volume of the standard.

use std::sync::Arc;

use crate::balance::{Balance, Measurand, balance};
use crate::book::{Axis, Book, Change, Level, Recipe, Role, Stage, VersionId};

use super::adapt::{Adaptation, Adapted, Origin};
use super::demands::Demands;
use super::question::Adjustable;
use super::reason::{NoLevels, Unadaptable};
use super::watch::Watch;

/// One rung.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// The level.
    pub level: Level,
    /// The sweetness aimed at, g/100 ml.
    pub aim: f64,
    /// The drink, or why there is none.
    pub drink: Result<Adapted, Unadaptable>,
}

/// The sugar ladder of a version.
#[derive(Clone, Debug, PartialEq)]
pub struct Ladder {
    /// What it is held to.
    pub standard: Arc<Balance>,
    /// The drink with every sweetener left out: what no level goes below.
    pub floor: Arc<Balance>,
    /// The rungs, in the order of the levels.
    pub rungs: Vec<Rung>,
    /// Why there are none.
    pub reasons: Vec<NoLevels>,
}

/// The sugar ladder of a version; `None` when there is no such version.
pub fn ladder(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    levels: &[Level],
) -> Option<Ladder> {
    ladder_watched(book, recipe, version, levels, &Watch::default())
}

/// The same, watched from outside.
pub fn ladder_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    levels: &[Level],
    watch: &Watch,
) -> Option<Ladder> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let mut bare = origin.resolved.clone();
    let sweeteners: Vec<_> = origin
        .resolved
        .lines()
        .filter(|line| line.role == Role::Sweetener && line.stage == Stage::Mixed)
        .collect();
    // A sweetener that fills the cup, or whose measure nobody knows, is no sweetener that a level takes out.
    let movable: Vec<_> = sweeteners
        .iter()
        .filter(|line| Adjustable::new(book, line, false).is_some())
        .collect();
    for line in &movable {
        bare.apply(&Change::Remove(line.id.clone()));
    }
    let floor = balance(book, bare, &origin.place());
    let mut ladder = Ladder {
        standard: Arc::new(origin.standard.clone()),
        floor: Arc::new(floor),
        rungs: Vec::new(),
        reasons: Vec::new(),
    };
    let sweetness = |balance: &Balance| balance.figures.get(Measurand::Sweetness);
    let known = origin.standard.figures.missing(Measurand::Sweetness) == 0
        && ladder.floor.figures.missing(Measurand::Sweetness) == 0;
    let (Some(top), Some(bottom), true) =
        (sweetness(&origin.standard), sweetness(&ladder.floor), known)
    else {
        let missing = origin.standard.reported(Measurand::Sweetness).missing;
        ladder.reasons.push(NoLevels::SweetnessNotKnown { missing });
        return Some(ladder);
    };
    // Water or tea makes up what the sweeteners leave, and thins what is left.
    let volume = |balance: &Balance| balance.figures.complete(Measurand::Volume);
    let thinned = match (volume(&ladder.floor), volume(&origin.standard)) {
        (Some(bare), Some(standard)) if standard > 0.0 => bare / standard,
        _ => 1.0,
    };
    let bottom = bottom * thinned;
    if sweeteners.is_empty() {
        let sugar = ladder.floor.figures.of[Measurand::TotalSugar.slot()];
        ladder.reasons.push(NoLevels::NoSweetener { sugar });
        return Some(ladder);
    }
    if movable.is_empty() {
        let sweeteners = sweeteners.iter().map(|line| line.ingredient.clone());
        let sweeteners = sweeteners.collect();
        ladder.reasons.push(NoLevels::NotInSteps { sweeteners });
        return Some(ladder);
    }
    watch.expect(levels.len());
    for level in levels {
        let part = level.percent / 100.0;
        let aim = bottom + part * (top - bottom);
        // What comes and goes with the sweeteners (the pear of a pear syrup) follows the level as well.
        let mut aimed = vec![(Axis::Sweetness, aim)];
        for axis in origin
            .standard
            .axes
            .iter()
            .filter(|axis| matches!(axis.axis, Axis::Flavour(_) | Axis::Acidity))
        {
            let bare = ladder
                .floor
                .axis(&axis.axis)
                .map_or(Some(0.0), |axis| axis.value);
            aimed.extend(
                axis.value
                    .zip(bare.map(|bare| bare * thinned))
                    .map(|(top, bare)| (axis.axis.clone(), bare + part * (top - bare))),
            );
        }
        ladder.rungs.push(Rung {
            level: level.clone(),
            aim,
            drink: rung(&origin, &ladder.floor, part, &aimed),
        });
        watch.done();
    }
    Some(ladder)
}

/// The sweeteners move over their whole range, and water or tea makes up what they leave.
fn rung(
    origin: &Origin<'_>,
    floor: &Balance,
    part: f64,
    aimed: &[(Axis, f64)],
) -> Result<Adapted, Unadaptable> {
    let moves = |role: Role| matches!(role, Role::Sweetener | Role::Water | Role::Tea);
    let mut adjustable: Vec<Adjustable> = Vec::new();
    for line in origin
        .resolved
        .lines()
        .filter(|line| moves(line.role) && line.stage == Stage::Mixed)
    {
        if let Some(mut found) = Adjustable::new(origin.book, line, false) {
            let number = line.amount.number().unwrap_or(0.0);
            let now = super::question::steps_in(number, found.step);
            if line.role == Role::Sweetener {
                // A level above the standard needs as much more.
                let wanted = super::question::steps_in(number * part.max(1.0), found.step);
                found.range.low = 0;
                found.range.high = wanted + 2;
            } else {
                // A few steps of water or tea are what a spoon of syrup leaves.
                found.range.low = (now - 4).max(1);
                found.range.high = now + 8;
            }
            adjustable.push(found);
        }
    }
    let adapted = origin.bring_back(
        origin.resolved.clone(),
        adjustable,
        aimed,
        &Demands::default(),
    )?;
    let floor_sugar = floor.figures.complete(Measurand::TotalSugar);
    Ok(Adapted {
        adaptation: Adaptation::SugarLevel { floor_sugar },
        ..adapted
    })
}
