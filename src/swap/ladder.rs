//! The sugar ladder: how far the sweetness of a drink can be taken down, level by level.
//!
//! A level is a part of the *added* sweetness, that of the lines whose role is to sweeten. What powders and milk carry can't be
//! taken out, so the ladder stands on a floor: `aim = floor + part · (standard − floor)`, the floor made up to the volume of the standard.

use std::sync::Arc;

use crate::balance::{Balance, Measurand};
use crate::book::{Amount, Axis, Book, IngredientId, Level, LineId, Recipe, Resolved, VersionId};

use super::adapt::{Adapted, Origin};
use super::at_level::{at_level, off_level, rung, sweeteners};
use super::means::Whole;
use super::offer::{Offer, offers};
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
    /// What comes near the level where whole measures do not.
    pub offers: Vec<Offer>,
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
    let reasons = no_levels(&origin).into_iter().collect::<Vec<_>>();
    let rungs = if reasons.is_empty() {
        watch.expect(levels.len());
        rungs(&origin, levels)
    } else {
        Vec::new()
    };
    Some(Ladder {
        floor: Arc::new(origin.bare().clone()),
        rungs,
        reasons,
        standard: Arc::new(origin.standard),
    })
}

/// Why a drink has no levels of sugar, where it has none.
pub(super) fn no_levels(origin: &Origin<'_>) -> Option<NoLevels> {
    let is_known = |balance: &Balance| balance.figures.complete(Measurand::Sweetness).is_some();
    if !is_known(&origin.standard) || !is_known(origin.bare()) {
        let missing = origin.standard.reported(Measurand::Sweetness).missing;
        if let Some(unweighed) = origin.standard.unweighed_of(&missing) {
            return Some(NoLevels::NotWeighed(unweighed));
        }
        return Some(NoLevels::SweetnessNotKnown { missing });
    }
    let sweeteners = sweeteners(&origin.resolved).map(|line| line.ingredient.clone());
    let sweeteners: Vec<_> = sweeteners.collect();
    if sweeteners.is_empty() {
        let sugar = origin.bare().figures.of[Measurand::TotalSugar.slot()];
        return Some(NoLevels::NoSweetener { sugar });
    }
    // A sweetener that fills the cup, or whose measure nobody knows, is no sweetener that a level takes out.
    let stays = origin.bare().resolved == origin.resolved;
    stays.then_some(NoLevels::NotInSteps { sweeteners })
}

/// The levels of a drink, each with what sweetens it in whole measures or, where they do not come near, with what does.
pub(super) fn rungs(origin: &Origin<'_>, levels: &[Level]) -> Vec<Rung> {
    let mut rungs: Vec<Rung> = Vec::new();
    for level in levels {
        let lines = at_level(&origin.resolved, level.percent);
        let aim = origin.held(&lines).aim_on(&Axis::Sweetness).unwrap_or(0.0);
        rungs.push(Rung {
            level: level.clone(),
            aim,
            drink: rung(origin, level.percent, Whole::default()),
            offers: Vec::new(),
        });
        origin.watch.done();
    }
    let had: Vec<bool> = (0..rungs.len())
        .map(|at| is_had(origin, &rungs, at))
        .collect();
    for (rung, had) in rungs.iter_mut().zip(had) {
        if !had && let Ok(whole) = &rung.drink {
            rung.offers = offers(origin, rung.level.percent, rung.aim, whole);
            let sweeteners = measured_sweeteners(origin);
            rung.drink = Err(Unadaptable::NotInWholeMeasures { sweeteners });
        }
    }
    rungs
}

/// One step of each sweetener that moves step by step.
fn measured_sweeteners(origin: &Origin<'_>) -> Vec<(IngredientId, Amount)> {
    sweeteners(&origin.resolved)
        .filter_map(|line| Adjustable::new(origin.book, line, false))
        .map(|found| (found.line.ingredient.clone(), found.amount(1)))
        .collect()
}

/// Whether a level is had: its sweetness is within a noticeable step, and no other level has the same of every sweetener and is
/// nearer to it.
fn is_had(origin: &Origin<'_>, rungs: &[Rung], at: usize) -> bool {
    let Ok(drink) = &rungs[at].drink else {
        return false;
    };
    let amounts = |lines: &Resolved| -> Vec<(LineId, Amount)> {
        sweeteners(lines)
            .map(|line| (line.id.clone(), line.amount.clone()))
            .collect()
    };
    let own = amounts(&drink.balance.resolved);
    let miss = off_level(drink);
    let percent = rungs[at].level.percent;
    let is_nearer = |other: &Rung| {
        let differs = (other.level.percent - percent).abs() > 1e-9;
        let nearer = |drink: &Adapted| {
            amounts(&drink.balance.resolved) == own && off_level(drink) + 1e-9 < miss
        };
        differs && other.drink.as_ref().is_ok_and(nearer)
    };
    // The drink as it stands is at its own level, whether that is one of those that are asked for or not.
    let now = origin.resolved.sugar_level.unwrap_or(100.0);
    let is_another = (now - percent).abs() > 1e-9;
    let stays = is_another && own == amounts(&origin.resolved);
    !is_another || (miss <= 1.0 && !stays && !rungs.iter().any(is_nearer))
}
