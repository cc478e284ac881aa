//! A hot drink turned iced, and levels of ice: what melts is made up for, so that the strength stays.

use crate::balance::{Balance, Measurand, ice_volume};
use crate::book::{
    Amount, Axis, Book, Change, Entry, Form, Line, LineId, Recipe, Role, Stage, VersionId, VesselId,
};
use crate::optimiser::Range;
use crate::quantity::show_number;

use super::adapt::{Adapted, Origin, movable, remaining};
use super::demands::Demands;
use super::question::{Adjustable, steps_in};
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
) -> Option<Result<Adapted, String>> {
    iced_watched(book, recipe, version, cup, &Watch::default())
}

/// The same, watched from outside.
pub fn iced_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cup: Option<&VesselId>,
    watch: &Watch,
) -> Option<Result<Adapted, String>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    if origin.resolved.lines().any(|line| line.role == Role::Ice) {
        return Some(Err(
            "there is ice in it already: choose a level of ice instead".to_owned(),
        ));
    }
    let Some(ice) = book.ingredients.iter().find(|item| item.form == Form::Ice) else {
        return Some(Err(
            "the book has no ice: add it to the ingredients".to_owned()
        ));
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
    Some(origin.bring_back(changed, adjustable, &[], &Demands::default()).map(|mut adapted| {
        adapted.explanation = format!(
            "{} The strength is that of the hot standard: {}. Cold dulls sweetness, so taste it before it is approved.",
            ice_words(&adapted.balance),
            remaining(&adapted.difference)
        );
        adapted
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
) -> Option<Result<Adapted, String>> {
    ice_level_watched(book, recipe, version, percent, &Watch::default())
}

/// The same, watched from outside.
pub fn ice_level_watched(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    percent: f64,
    watch: &Watch,
) -> Option<Result<Adapted, String>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let Some(ice) = origin
        .resolved
        .lines()
        .find(|line| line.role == Role::Ice && line.stage == Stage::Mixed)
        .cloned()
    else {
        return Some(Err("there is no ice in it".to_owned()));
    };
    let Some(amount) = ice.amount.number().filter(|_| !ice.amount.fills()) else {
        return Some(Err(
            "its ice fills the cup to the rim: state an amount of ice before it is divided"
                .to_owned(),
        ));
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
    Some(
        origin
            .bring_back(changed, adjustable, &aimed, &demands)
            .map(|mut adapted| {
                adapted.explanation = format!(
                    "{} {} ml of drink instead of {} ml keep the cup as full; {}.",
                    ice_words(&adapted.balance),
                    show_number(adapted.balance.figures.of[Measurand::Volume.slot()], 0),
                    show_number(origin.standard.figures.of[Measurand::Volume.slot()], 0),
                    remaining(&adapted.difference)
                );
                adapted
            }),
    )
}

fn ice_words(balance: &Balance) -> String {
    let of = |measurand: Measurand| balance.figures.of[measurand.slot()];
    format!(
        "It is served at {} °C with {} g of ice left.",
        show_number(of(Measurand::ServingTemperature), 1),
        show_number(of(Measurand::IceLeft), 0)
    )
}
