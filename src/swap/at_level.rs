//! A drink at one level of sugar.

use crate::balance::{Balance, Measurand};
use crate::book::{Axis, Change, Line, Resolved, Role, Stage};

use super::adapt::{Adaptation, Adapted, Origin};
use super::demands::Demands;
use super::means::Whole;
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;

/// The lines of a drink at a level of sugar, before anything moves.
pub(super) fn at_level(lines: &Resolved, percent: f64) -> Resolved {
    let mut lines = lines.clone();
    let is_all = (percent - 100.0).abs() < 1e-9;
    lines.apply(&Change::SugarLevel((!is_all).then_some(percent)));
    lines
}

/// Lines that are there to sweeten.
pub(super) fn sweeteners(lines: &Resolved) -> impl Iterator<Item = &Line> {
    lines
        .lines()
        .filter(|line| line.role == Role::Sweetener && line.stage == Stage::Mixed)
}

/// How far the sweetness of a drink is from what its level aims at, in noticeable steps, whichever way.
pub(super) fn off_level(drink: &Adapted) -> f64 {
    let mut axes = drink.difference.axes.iter();
    let sweetness = axes.find(|axis| axis.axis == Axis::Sweetness);
    let steps = sweetness.and_then(|axis| axis.steps);
    steps.map_or(f64::INFINITY, f64::abs)
}

/// The sweeteners move over their whole range, and water or tea makes up what they leave, and no more.
pub(super) fn rung(
    origin: &Origin<'_>,
    percent: f64,
    whole: Whole,
) -> Result<Adapted, Unadaptable> {
    let now = origin.resolved.sugar_level.unwrap_or(100.0);
    let part = if now > 0.0 { percent / now } else { 1.0 };
    let mut lines = at_level(&origin.resolved, percent);
    let bare = origin.bare();
    let volume = |balance: &Balance| balance.figures.complete(Measurand::Volume);
    let sweetened = volume(&origin.now)
        .zip(volume(bare))
        .map_or(0.0, |(now, bare)| (now - bare).max(0.0));
    let freed = sweetened * (1.0 - part);
    // What makes up the volume does so in proportion: two lines do not both make up all of it.
    let made_up: f64 = origin
        .resolved
        .lines()
        .filter(|line| makes_up(line))
        .map(|line| weight(origin, line))
        .sum();
    let mut adjustable: Vec<Adjustable> = Vec::new();
    for line in origin
        .resolved
        .lines()
        .filter(|line| line.stage == Stage::Mixed)
    {
        let makes_up = makes_up(line);
        if line.role != Role::Sweetener && !makes_up {
            continue;
        }
        let line = whole.line(origin.book, line);
        lines.apply(&Change::Amount(line.id.clone(), line.amount.clone()));
        let Some(mut found) = Adjustable::new(origin.book, &line, false) else {
            continue;
        };
        found.step = whole.step(&found);
        let number = line.amount.number().unwrap_or(0.0);
        let now = steps_in(number, found.step);
        if makes_up {
            let share = weight(origin, &line) / made_up.max(f64::MIN_POSITIVE);
            let millilitres = of_a_step(origin, &line, found.step);
            let room = steps_in(freed.abs() * share / millilitres, 1.0).min(40);
            let (less, more) = if freed < 0.0 { (room, 0) } else { (0, room) };
            found.range.low = (now - less).max(1);
            found.range.high = (now + more).max(1);
        } else {
            // A level above the standard needs as much more.
            let wanted = steps_in(number * part.max(1.0), found.step);
            found.range.low = 0;
            found.range.high = match part {
                part if part <= 0.0 => 0,
                part if part <= 1.0 => now,
                _ => wanted + 2,
            };
        }
        adjustable.push(found);
    }
    // The sweetener that comes beside the others is what is asked for, so the others make room for it.
    let added = whole.added(origin, &lines);
    adjustable.truncate(crate::optimiser::MOST_VARIABLES - 1 - usize::from(added.is_some()));
    adjustable.extend(added);
    let from = &origin.standard.resolved;
    let adapted = origin.bring_back(lines, adjustable, from, &Demands::default())?;
    let floor_sugar = bare.figures.complete(Measurand::TotalSugar);
    Ok(Adapted {
        adaptation: Adaptation::SugarLevel { floor_sugar },
        ..adapted
    })
}

/// Whether a line makes up what sweeteners leave.
fn makes_up(line: &Line) -> bool {
    line.stage == Stage::Mixed
        && matches!(line.role, Role::Water | Role::Tea)
        && !line.amount.fills()
}

/// What a line weighs, g; nothing when nobody knows.
fn weight(origin: &Origin<'_>, line: &Line) -> f64 {
    let mut shares = origin.now.lines.iter();
    let share = shares.find(|share| share.line == line.id && !share.carried);
    share.and_then(|share| share.grams).unwrap_or(0.0)
}

/// Millilitres of one step of what makes up the volume: water and tea weigh about a gram a millilitre.
fn of_a_step(origin: &Origin<'_>, line: &Line, step: f64) -> f64 {
    let number = line.amount.number().unwrap_or(0.0);
    let of_step = if number > 0.0 {
        weight(origin, line) / number * step
    } else {
        step
    };
    of_step.max(0.1)
}
