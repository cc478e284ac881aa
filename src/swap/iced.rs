//! A hot drink turned iced, and levels of ice: what melts is made up for, so that the strength stays.

use crate::balance::{Measurand, ice_volume};
use crate::book::{
    Amount, Axis, Book, Change, Entry, Form, Line, LineId, Recipe, Role, Stage, VersionId, VesselId,
};
use crate::optimiser::Range;

use super::adapt::{Adaptation, Adapted, Origin, movable};
use super::demands::Demands;
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;
use super::watch::Watch;

/// Step of ice that is weighed, g (common practice, no source).
const ICE_STEP: f64 = 5.0;

/// Ice that a drink is tried with before the search, g a ml of the drink (common practice, no source).
const FIRST_ICE: f64 = 0.35;

/// A hot drink with ice in it, brought back to the strength of its standard; `None` when there is no such version.
/// `Err` says why it can't be.
///
/// Ice, water and tea move, and so do the sweeteners: the sweetness aimed at is the standard's figure at the temperature at
/// which each is drunk. Cold dulls every taste, so the result is a first guess that wants tasting.
pub fn iced(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: Option<&VesselId>,
) -> Option<Result<Adapted, Unadaptable>> {
    iced_watched(book, recipe, version, cup, &Watch::default())
}

/// The same, watched from outside.
pub fn iced_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: Option<&VesselId>,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    if origin.resolved.lines().any(|line| line.role == Role::Ice) {
        return Some(Err(Unadaptable::AlreadyIced));
    }
    let Some(ice) = book.ingredients.iter().find(|item| item.form == Form::Ice) else {
        return Some(Err(Unadaptable::NoIceInBook));
    };
    let mut changed = origin.resolved.clone();
    if let Some(cup) = cup {
        changed.apply(&Change::Cup(cup.clone()));
    }
    let volume = origin.standard.figures.of[Measurand::Volume.slot()];
    let line = Line {
        id: LineId::from_name("ice", |id| recipe.has_entry_id(id)),
        ingredient: ice.id.clone(),
        amount: Amount::Grams((volume * FIRST_ICE / ICE_STEP).round() * ICE_STEP),
        temperature: None,
        role: Role::Ice,
        stage: Stage::Mixed,
        carried: None,
        note: String::new(),
    };
    let last = changed.entries.last().map(|entry| entry.id().clone());
    changed.apply(&Change::Add(last, Entry::Line(line.clone())));
    let mut adjustable = movable(book, &changed, |role| {
        matches!(role, Role::Water | Role::Tea | Role::Sweetener)
    });
    let most = steps_in(volume, ICE_STEP);
    adjustable.push(Adjustable {
        line,
        added: false,
        step: ICE_STEP,
        range: Range { low: 4, high: most },
    });
    for found in adjustable
        .iter_mut()
        .filter(|found| matches!(found.line.role, Role::Water | Role::Tea))
    {
        // Melted ice takes the place of water: little of it may be left.
        found.range.low = 1;
    }
    let brought = origin.bring_back(changed, adjustable, &[], &Demands::default());
    Some(brought.map(|adapted| Adapted {
        adaptation: Adaptation::Iced,
        ..adapted
    }))
}

/// The drink with so much of its ice, percent, and what fills the cup instead; `None` when there is no such version. `Err`
/// says why it can't be.
///
/// The volume aimed at leaves the level in the cup where it was: ice that is left out gives its room to the drink.
pub fn with_ice_level(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    percent: f64,
) -> Option<Result<Adapted, Unadaptable>> {
    ice_level_watched(book, recipe, version, percent, &Watch::default())
}

/// The same, watched from outside.
pub fn ice_level_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    percent: f64,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let Some(ice) = origin
        .resolved
        .lines()
        .find(|line| line.role == Role::Ice && line.stage == Stage::Mixed)
        .cloned()
    else {
        return Some(Err(Unadaptable::NoIce));
    };
    let Some(amount) = ice.amount.number().filter(|_| !ice.amount.fills()) else {
        return Some(Err(Unadaptable::IceFills));
    };
    let part = (percent / 100.0).max(0.0);
    let mut changed = origin.resolved.clone();
    changed.apply(&if part > 0.0 {
        Change::Amount(ice.id.clone(), ice.amount.with_number(amount * part))
    } else {
        Change::Remove(ice.id.clone())
    });
    let left = origin.standard.figures.of[Measurand::IceLeft.slot()];
    let freed = ice_volume(left, 0.0) * (1.0 - part).max(0.0);
    let volume = origin.standard.figures.of[Measurand::Volume.slot()] + freed;
    let demands = Demands {
        // Less ice is warmer, and that is what was asked for.
        temperature: Some(crate::book::TemperatureWindow {
            from: -10.0,
            to: 40.0,
        }),
        ..Demands::default()
    };
    let adjustable = movable(book, &changed, |role| role != Role::Ice);
    let aimed = [(Axis::Volume, volume)];
    let standard_volume = origin.standard.figures.of[Measurand::Volume.slot()];
    let brought = origin.bring_back(changed, adjustable, &aimed, &demands);
    Some(brought.map(|adapted| Adapted {
        adaptation: Adaptation::IceLevel { standard_volume },
        ..adapted
    }))
}
