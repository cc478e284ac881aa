//! What a version is held to: the taste of its standard, in the size of its own cup, with its own ice and at its own level of
//! sugar.
//!
//! A large cup of a drink is not too large, and a half sweet one not too little sweet. Whatever makes such a version aims at
//! what the version is held to once it is kept, so that both say the same.

use std::cell::OnceCell;

use super::balance::{Balance, balance};
use crate::balance::measurand::Measurand;
use crate::balance::prepare::is_iced_drink;
use crate::balance::prepare::portion::one_weighs;
use crate::balance::solve::physics::ice_volume;
use crate::book::{
    Amount, Approval, Axis, Book, Change, IngredientId, Line, Place, Recipe, RecipeId, Resolved,
    Role, Stage, VersionId, VesselId, resolve,
};
use crate::quantity::Temperature;

/// From this temperature on something is poured hot, °C (assumed).
const POURED_HOT: f64 = 60.0;

/// The balance of the standard that a version is held to, with the figures that it was tasted with and what it aims at for
/// that version; `None` when nothing has been approved yet.
pub fn standard_balance<'recipe>(
    book: &Book,
    recipe: &'recipe Recipe,
    version: Option<&VersionId>,
) -> Option<(Balance, &'recipe Approval)> {
    let approval = recipe.standard_for(version)?;
    let (lines, _) = resolve(recipe, version);
    let standard = approved_balance(book, recipe, approval);
    let held = held_to_approval(book, recipe, approval, standard, &lines);
    Some((held, approval))
}

/// The balance of an approval of a recipe, in the book as it was then.
pub(super) fn approved_balance(book: &Book, recipe: &Recipe, approval: &Approval) -> Balance {
    let mut approvals = recipe.approvals.iter();
    let at = approvals.position(|other| std::ptr::eq(other, approval));
    let place = Place::Approval(recipe.id.clone(), at.map_or(0, |at| at + 1));
    let then = book.as_tasted(approval);
    balance(&then, approval.resolved.clone(), &place)
}

/// The balance of an approval as lines of the same recipe are held to it.
pub(super) fn held_to_approval(
    book: &Book,
    recipe: &Recipe,
    approval: &Approval,
    standard: Balance,
    lines: &Resolved,
) -> Balance {
    if is_held_as_it_is(&standard.resolved, lines) {
        return standard;
    }
    let (then, floor) = (book.as_tasted(approval), OnceCell::new());
    held_standard(book, &then, &recipe.id, standard, &floor, lines)
}

/// A standard as a version is held to it.
///
/// `then` is the book as the standard was tasted, `book` the one that the version is made from. `floor` keeps the standard without
/// its sweeteners for the next version that is held to it.
pub fn held_standard(
    book: &Book,
    then: &Book,
    recipe: &RecipeId,
    mut standard: Balance,
    floor: &OnceCell<Balance>,
    version: &Resolved,
) -> Balance {
    let of_floor = |standard: &Balance| {
        let bare = without_sweeteners(then, &standard.resolved);
        balance(then, bare, &Place::Recipe(recipe.clone(), "lines"))
    };
    let floor = |standard: &Balance| floor.get_or_init(|| of_floor(standard));
    standard.aims = aims(book, then, &standard, floor, version);
    standard
}

/// Whether a version is held to the very figures of its standard.
pub(super) fn is_held_as_it_is(standard: &Resolved, version: &Resolved) -> bool {
    standard.cup == version.cup
        && level(standard).to_bits() == level(version).to_bits()
        && portions_of_ice(standard).eq(portions_of_ice(version))
}

/// The values that take the place of the standard's own.
fn aims<'floor>(
    book: &Book,
    then: &Book,
    standard: &Balance,
    floor: impl Fn(&Balance) -> &'floor Balance,
    version: &Resolved,
) -> Vec<(Axis, f64)> {
    if is_held_as_it_is(&standard.resolved, version) {
        return Vec::new();
    }
    let volume = volume(book, then, standard, version);
    let mut aims: Vec<(Axis, f64)> = volume
        .map(|volume| (Axis::Volume, volume))
        .into_iter()
        .collect();
    let (of_standard, of_version) = (level(&standard.resolved), level(version));
    if of_standard > 0.0 && of_standard.to_bits() != of_version.to_bits() {
        let part = of_version / of_standard;
        aims.extend(level_aims(standard, floor(standard), part));
    }
    aims
}

/// The part of the added sweetness, percent.
fn level(lines: &Resolved) -> f64 {
    lines.sugar_level.unwrap_or(100.0)
}

/// Lines of loose ice.
fn ice(lines: &Resolved) -> impl Iterator<Item = &Line> {
    lines
        .lines()
        .filter(|line| line.role == Role::Ice && line.stage == Stage::Mixed)
}

fn portions_of_ice(lines: &Resolved) -> impl Iterator<Item = (&IngredientId, &Amount)> {
    ice(lines).map(|line| (&line.ingredient, &line.amount))
}

/// The lines without what is there to sweeten, as far as it can be left out: what fills a cup can't, nor what nobody knows the
/// measure of.
pub fn without_sweeteners(book: &Book, lines: &Resolved) -> Resolved {
    let mut bare = lines.clone();
    for line in lines.lines() {
        let is_measured = match &line.amount {
            Amount::Count(_, measure) => book.measure(measure).is_some(),
            other => !other.fills(),
        };
        if line.role == Role::Sweetener && line.stage == Stage::Mixed && is_measured {
            bare.apply(&Change::Remove(line.id.clone()));
        }
    }
    bare
}

/// What a part of the added sweetness aims at: `floor + part · (standard − floor)`, the floor made up to the volume of the
/// standard. What comes and goes with the sweeteners (the pear of a pear syrup) follows as well. Nothing where the sweetness
/// of one of the two is not known.
pub fn level_aims(standard: &Balance, floor: &Balance, part: f64) -> Vec<(Axis, f64)> {
    let volume = |balance: &Balance| balance.figures.complete(Measurand::Volume);
    // Water or tea makes up what the sweeteners leave, and thins what is left.
    let thinned = match (volume(floor), volume(standard)) {
        (Some(bare), Some(standard)) if standard > 0.0 => bare / standard,
        _ => 1.0,
    };
    let aim = |top: f64, bare: f64| bare * thinned + part * (top - bare * thinned);
    let sweetness = |balance: &Balance| balance.figures.complete(Measurand::Sweetness);
    let (Some(top), Some(bare)) = (sweetness(standard), sweetness(floor)) else {
        return Vec::new();
    };
    let mut aims = vec![(Axis::Sweetness, aim(top, bare))];
    for axis in &standard.axes {
        let (Axis::Flavour(_) | Axis::Acidity, top) = (&axis.axis, axis.value) else {
            continue;
        };
        let bare = floor.axis(&axis.axis).map_or(Some(0.0), |axis| axis.value);
        aims.extend(
            top.zip(bare)
                .map(|(top, bare)| (axis.axis.clone(), aim(top, bare))),
        );
    }
    aims
}

/// What a cup holds below its head room, ml.
pub fn room_of(book: &Book, cup: Option<&VesselId>) -> Option<f64> {
    let vessel = book.vessel(cup?)?;
    let head_room = vessel
        .usual_closure()
        .map_or(0.0, |closure| closure.head_room);
    Some((vessel.capacity - head_room).max(1.0))
}

/// The volume that a version is held to, ml; `None` when that of the standard is not known.
///
/// A drink grows with its cup. A hot one that is iced fills its cup together with the ice that the shop leaves in it; with less
/// ice than the standard, or none, a cold one keeps its level in the cup.
fn volume(book: &Book, then: &Book, standard: &Balance, version: &Resolved) -> Option<f64> {
    let of_standard = standard.figures.complete(Measurand::Volume)?;
    let room = room_of(book, version.cup.as_ref());
    let ratio = match (room, room_of(then, standard.resolved.cup.as_ref())) {
        (Some(new), Some(old)) => new / old,
        _ => 1.0,
    };
    let left = standard.figures.of[Measurand::IceLeft.slot()];
    let displaced = ice_volume(left, 0.0);
    let level = ratio * (of_standard + displaced);
    match (standard.iced, is_iced_drink(book, version)) {
        (false, true) => Some(match room {
            Some(room) => {
                let beside = ratio * beside_the_drink(standard, version);
                let capacity = book.vessel(version.cup.as_ref()?)?.capacity;
                let ice = ice_volume(book.settings.ice_left_in(capacity), 0.0);
                (room - beside - ice).max(of_standard.min(room) / 4.0)
            }
            None => of_standard,
        }),
        (true, true) => {
            let grams = (
                ice_grams(then, &standard.resolved),
                ice_grams(book, version),
            );
            Some(match grams {
                (Some(old), Some(new)) if old > 0.0 => level - displaced * new / old,
                _ => ratio * of_standard,
            })
        }
        (true, false) if !is_poured_hot(book, version) => Some(level),
        _ => Some(ratio * of_standard),
    }
}

/// Room that toppings and what floats on top take in the cup of a standard, ml.
fn beside_the_drink(standard: &Balance, version: &Resolved) -> f64 {
    let has_some = version
        .lines()
        .any(|line| matches!(line.stage, Stage::Topping | Stage::OnTop));
    let filled = standard
        .figures
        .complete(Measurand::Fill)
        .zip(standard.capacity);
    match filled {
        Some((percent, capacity)) if has_some => {
            let drink = standard.figures.of[Measurand::Volume.slot()];
            (percent / 100.0 * capacity - drink).max(0.0)
        }
        _ => 0.0,
    }
}

/// Loose ice of a drink, g; `None` when nobody knows.
fn ice_grams(book: &Book, lines: &Resolved) -> Option<f64> {
    let grams = |line: &Line| {
        let amount = &line.amount;
        let number = amount.number().filter(|_| !amount.fills())?;
        let item = book.ingredient(&line.ingredient)?;
        let celsius = book.settings.ice_temperature;
        Some(number * one_weighs(book, item, amount, celsius)?)
    };
    ice(lines).map(grams).sum()
}

fn is_poured_hot(book: &Book, lines: &Resolved) -> bool {
    let celsius = |line: &Line| {
        let of_measure = match &line.amount {
            Amount::Count(_, id) => book.measure(id).and_then(|measure| measure.temperature),
            _ => None,
        };
        let of_item = || book.ingredient(&line.ingredient)?.temperature;
        let stated = line.temperature.or(of_measure);
        stated.or_else(of_item).map(Temperature::celsius)
    };
    lines
        .lines()
        .filter_map(celsius)
        .any(|celsius| celsius >= POURED_HOT)
}
