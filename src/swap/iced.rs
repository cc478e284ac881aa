//! A hot drink turned iced, and levels of ice: what melts is made up for, so that the strength stays.

use crate::balance::{Measurand, one_weighs};
use crate::book::{
    Amount, Book, Change, Entry, Form, Ingredient, Line, LineId, MeasureKind, Recipe, Resolved,
    Role, Stage, TemperatureWindow, VersionId, VesselId,
};
use crate::optimiser::Range;

use super::adapt::{Adaptation, Adapted, Origin, movable};
use super::demands::Demands;
use super::grown::{Grown, grown};
use super::plain::measure_for;
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;
use super::watch::Watch;

/// Step of ice that is weighed, g (common practice, no source).
const ICE_STEP: f64 = 5.0;

/// Ice that a drink is tried with before the search, g a ml of the drink (common practice, no source).
const FIRST_ICE: f64 = 0.35;

/// How far a line may end from its grown amount, in steps.
const REACH: i32 = 3;

/// The least ice that can be told from none, g.
const SOME_ICE: f64 = 1.0;

/// A hot drink with ice in it, brought back to the strength of its standard; `None` when there is no such version.
/// `Err` says why it can't be.
///
/// It fills its cup together with the ice that the shop leaves in it, so every line grows or shrinks with the drink. Water and
/// tea give way to what melts, and sweeteners move: the sweetness aimed at is the standard's figure at the temperature at
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
    Some(iced_in(&origin, cup))
}

pub(super) fn iced_in(origin: &Origin<'_>, cup: Option<&VesselId>) -> Result<Adapted, Unadaptable> {
    let book = origin.book;
    if origin.resolved.lines().any(|line| line.role == Role::Ice) {
        return Err(Unadaptable::AlreadyIced);
    }
    let ice = book
        .ingredients
        .iter()
        .find(|item| item.form == Form::Ice)
        .ok_or(Unadaptable::NoIceInBook)?;
    let mut in_cup = origin.resolved.clone();
    if let Some(cup) = cup {
        in_cup.apply(&Change::Cup(cup.clone()));
    }
    let first = Adjustable {
        line: Line {
            id: LineId::from_name("ice", |id| {
                origin.recipe.has_entry_id(id) || in_cup.has_entry(id)
            }),
            ingredient: ice.id.clone(),
            amount: Amount::Grams(0.0),
            temperature: None,
            role: Role::Ice,
            stage: Stage::Mixed,
            carried: None,
            note: String::new(),
        },
        added: false,
        step: ICE_STEP,
        range: Range { low: 1, high: 1 },
    };
    let mut with_ice = in_cup.clone();
    let trial = Line {
        amount: Amount::Grams(SOME_ICE),
        ..first.line.clone()
    };
    add_ice(&mut with_ice, trial);
    let volume = |held: &crate::balance::Balance| held.aim_on(&crate::book::Axis::Volume);
    let now = origin.now.figures.complete(Measurand::Volume);
    let aim = volume(&origin.held(&with_ice)).or(now).unwrap_or(0.0);
    let ratio = now.filter(|now| *now > 0.0).map_or(1.0, |now| aim / now);
    let Grown {
        mut lines,
        mut adjustable,
    } = grown(book, &in_cup, ratio, REACH);
    for found in &mut adjustable {
        if matches!(found.line.role, Role::Water | Role::Tea) {
            // Melted ice takes the place of water: little of it may be left.
            found.range.low = 1;
        } else if found.line.role == Role::Sweetener {
            found.range.low = 0;
        }
    }
    let scooped = by_the_scoop(book, ice, first, aim);
    add_ice(&mut lines, scooped.line.clone());
    adjustable.truncate(crate::optimiser::MOST_VARIABLES - 2);
    adjustable.push(scooped);
    let capacity = lines.cup.as_ref().and_then(|id| book.vessel(id));
    let demands = Demands {
        least_ice_left: capacity
            .map(|cup| book.settings.ice_left_in(cup.capacity))
            .filter(|grams| *grams > 0.0),
        ..Demands::default()
    };
    let brought = origin.bring_back(lines.clone(), adjustable, &lines, &demands)?;
    Ok(Adapted {
        adaptation: Adaptation::Iced,
        ..brought
    })
}

/// Ice goes in behind the last line that is mixed, before what is done with all of it: it is shaken and poured with the rest.
fn add_ice(lines: &mut Resolved, ice: Line) {
    let is_mixed = |entry: &&Entry| entry.line().is_some_and(|line| line.stage == Stage::Mixed);
    let last = lines.entries.iter().rev().find(is_mixed);
    let last = last.map(|entry| entry.id().clone());
    lines.apply(&Change::Add(last, Entry::Line(ice)));
}

/// Ice in whole steps of the shop's ice scoop, else by weight.
fn by_the_scoop(book: &Book, ice: &Ingredient, first: Adjustable, volume: f64) -> Adjustable {
    let weight_of = |amount: &Amount| one_weighs(book, ice, amount, book.settings.ice_temperature);
    let scoop = measure_for(book, ice, MeasureKind::IceScoop, None)
        .or_else(|| {
            let mut measures = book.measures.iter().map(AsRef::as_ref);
            measures.find(|measure| measure.kind == MeasureKind::IceScoop)
        })
        .and_then(|scoop| {
            let amount = Amount::Count(1.0, scoop.id.clone());
            Some((weight_of(&amount)?, amount, scoop.step()))
        });
    let (one, amount, step) = scoop.unwrap_or((1.0, Amount::Grams(1.0), ICE_STEP));
    let step_grams = one * step;
    let steps = steps_in(volume * FIRST_ICE, step_grams).max(1);
    let range = Range {
        low: 1,
        high: steps_in(volume, step_grams).max(steps),
    };
    let mut found = Adjustable {
        step,
        range,
        ..first
    };
    found.line.amount = amount.with_number(f64::from(steps) * step);
    found
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
    Some(with_part_of_ice(&origin, percent))
}

pub(super) fn with_part_of_ice(origin: &Origin<'_>, percent: f64) -> Result<Adapted, Unadaptable> {
    let mut lines = origin.resolved.lines();
    let ice = lines
        .find(|line| line.role == Role::Ice && line.stage == Stage::Mixed)
        .ok_or(Unadaptable::NoIce)?;
    let amount = ice.amount.number().filter(|_| !ice.amount.fills());
    let amount = amount.ok_or(Unadaptable::IceFills)?;
    let part = (percent / 100.0).max(0.0);
    let mut changed = origin.resolved.clone();
    changed.apply(&if part > 0.0 {
        Change::Amount(ice.id.clone(), ice.amount.with_number(amount * part))
    } else {
        Change::Remove(ice.id.clone())
    });
    let demands = Demands {
        // Less ice is warmer, and that is what was asked for.
        temperature: Some(TemperatureWindow {
            from: -10.0,
            to: 40.0,
        }),
        ..Demands::default()
    };
    let adjustable = movable(origin.book, &changed, |role| role != Role::Ice);
    let standard_volume = origin.standard.figures.of[Measurand::Volume.slot()];
    let brought = origin.bring_back(changed, adjustable, &origin.standard.resolved, &demands)?;
    Ok(Adapted {
        adaptation: Adaptation::IceLevel { standard_volume },
        ..brought
    })
}
