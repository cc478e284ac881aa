//! What every cause of uncertainty does to the figures: their slopes, several causes at a time, by the formulas of the figures
//! themselves.
//!
//! To the first order a figure moves by its slope when a cause is off by its standard uncertainty (JCGM 100:2008, 5.1.3), and the
//! temperature, the ice left and the amount that fills move as the equations say that they solve. Where a formula has a bend as near
//! as that, a cause is tried out instead, off by ± its standard uncertainty: half the difference is the odd part of its effect.

use super::figures::{
    Figures, Filled, Sums, changed_setup, evaluate, figures_when_off, layers_of, layers_when_off,
    pour, reached, solved_count, sums_with,
};
use super::prepared::{Fill, Prepared, PreparedLine, Scaling, Setup};
use crate::balance::measurand::MEASURANDS;
use crate::balance::mix::Component;
use crate::balance::number::{Number, Slopes};

/// Causes that are looked at together: what they have in common is worked out once.
const AT_ONCE: usize = 8;

/// Numbers that move with that many causes.
type Moving = Slopes<AT_ONCE>;

/// How every figure moves with a cause, by slot.
pub type Effect = [f64; MEASURANDS];

/// What each cause does to the figures of a drink when it is off by its standard uncertainty, in the order of [`Prepared::causes`].
pub fn effects(prepared: &Prepared) -> Vec<Effect> {
    let slopes = |sums: &Sums<Moving>, setup: &Setup<Moving>| [evaluate(sums, setup)];
    let tried = |cause, times| Some([figures_when_off(prepared, cause, times)]);
    let effects = each_cause(prepared, slopes, tried);
    effects.into_iter().map(|[effect]| effect).collect()
}

/// What each cause does to the first sip and to the stirred drink, where something floats on top.
pub(in crate::balance) fn effects_on_layers(prepared: &Prepared) -> Vec<[Effect; 2]> {
    let nothing = Figures {
        of: [Moving::ZERO; MEASURANDS],
        unknown_mixed: 0,
        unknown_whole: 0,
        not_given: 0,
    };
    let slopes =
        |sums: &Sums<Moving>, setup: &Setup<Moving>| layers_of(sums, setup).unwrap_or([nothing; 2]);
    let tried = |cause, times| layers_when_off(prepared, Some((cause, times)));
    each_cause(prepared, slopes, tried)
}

fn each_cause<const DRINKS: usize>(
    prepared: &Prepared,
    slopes: impl Fn(&Sums<Moving>, &Setup<Moving>) -> [Figures<Moving>; DRINKS],
    tried: impl Fn(usize, f64) -> Option<[Figures; DRINKS]>,
) -> Vec<[Effect; DRINKS]> {
    let count = prepared.causes.len();
    let mut effects = vec![[[0.0; MEASURANDS]; DRINKS]; count];
    let solved = Solved::of(prepared);
    // One place for all of them: it is large.
    let mut sums = Sums::lifted(&solved.others);
    for first in (0..count).step_by(AT_ONCE) {
        let setup = moving_setup(prepared, first);
        solved.put_sums(&mut sums, &setup, first);
        let drinks = slopes(&sums, &setup);
        for (cause, effect) in effects.iter_mut().enumerate().skip(first).take(AT_ONCE) {
            for (of_drink, figures) in effect.iter_mut().zip(&drinks) {
                for (effect, figure) in of_drink.iter_mut().zip(&figures.of) {
                    *effect = figure.by[cause - first];
                }
            }
            if effect.iter().flatten().all(|slope| slope.is_finite()) {
                continue;
            }
            let off = tried(cause, 1.0).zip(tried(cause, -1.0));
            for (at, of_drink) in effect.iter_mut().enumerate() {
                *of_drink = off.as_ref().map_or([0.0; MEASURANDS], |(more, less)| {
                    let (more, less) = (&more[at].of, &less[at].of);
                    std::array::from_fn(|slot| (more[slot] - less[slot]) / 2.0)
                });
            }
        }
    }
    effects
}

/// The setup with the causes from one on off by nothing, and how it moves with them.
fn moving_setup(prepared: &Prepared, first: usize) -> Setup<Moving> {
    let mut setup = Setup::lifted(&prepared.setup);
    for (cause, change) in &prepared.setup_changes {
        if let Some(lane) = lane(*cause, first) {
            setup = changed_setup(&setup, &[(*cause, *change)], *cause, Moving::cause(lane));
        }
    }
    setup
}

/// The place of a cause among those from one on; `None` when it is not among them.
fn lane(cause: usize, first: usize) -> Option<usize> {
    cause.checked_sub(first).filter(|lane| *lane < AT_ONCE)
}

/// A drink whose amount that fills has been found.
struct Solved<'prepared> {
    prepared: &'prepared Prepared,
    /// The line that fills, and how far it gets.
    filling: Option<(usize, Option<Filling>)>,
    /// The sums, without the line that fills.
    others: Sums,
}

/// An amount that fills.
#[derive(Clone, Copy)]
struct Filling {
    /// Its mark.
    fill: Fill,
    /// How many units it takes.
    count: f64,
    /// How far a unit more reaches, ml.
    reaches: f64,
}

impl<'prepared> Solved<'prepared> {
    fn of(prepared: &'prepared Prepared) -> Self {
        let at = prepared.lines.iter().position(|line| line.fill.is_some());
        let without = at.map(|line| Filled {
            line,
            count: 0.0,
            is_poured: false,
        });
        let others = sums_with(
            prepared,
            &|line: &PreparedLine, _| line.count,
            None,
            without,
        );
        let filling = at.map(|at| {
            let solved = prepared.lines[at].fill.zip(solved_count(prepared, at));
            let filling = solved.map(|(fill, count)| Filling {
                fill,
                count,
                reaches: reaches(prepared, &others, &prepared.lines[at], fill, count),
            });
            (at, filling)
        });
        Self {
            prepared,
            filling,
            others,
        }
    }

    /// Puts in the sums and how they move with the causes from one on.
    fn put_sums(&self, sums: &mut Sums<Moving>, setup: &Setup<Moving>, first: usize) {
        sums.put_plain(&self.others);
        for line in self
            .prepared
            .lines
            .iter()
            .filter(|line| line.fill.is_none())
        {
            add_slopes(sums, line, line.count, first, true);
        }
        let Some((at, Some(filling))) = self.filling else {
            return;
        };
        let line = &self.prepared.lines[at];
        let units = filled_units(sums, setup, line, filling, first);
        add_units(sums, line, units, first, true);
    }
}

/// How far a unit more of the line that fills reaches, ml.
fn reaches(prepared: &Prepared, others: &Sums, line: &PreparedLine, fill: Fill, count: f64) -> f64 {
    // So little more that no bend is met.
    const LITTLE: f64 = 1e-6;
    let setup = Setup::<Slopes<1>>::lifted(&prepared.setup);
    let mut sums = Sums::lifted(others);
    sums.add_plain(line, Slopes::cause(0) * LITTLE + count);
    reached(&sums, &pour(&sums, &setup), &setup, line, fill).by[0] / LITTLE
}

/// How many units the line that fills takes, and how that moves.
fn filled_units(
    others: &Sums<Moving>,
    setup: &Setup<Moving>,
    line: &PreparedLine,
    filling: Filling,
    first: usize,
) -> Moving {
    let reached_with = |units: Moving| {
        let mut sums = *others;
        // The mark stays where it is, and who pours believes it.
        add_units(&mut sums, line, units, first, false);
        reached(&sums, &pour(&sums, setup), setup, line, filling.fill)
    };
    if filling.count > 0.0 {
        return Moving::root(filling.count, reached_with, |_| filling.reaches).max(Moving::ZERO);
    }
    // The others fill it up already, unless they are a little less.
    let mark = filling.fill.mark(setup).unwrap_or(0.0);
    (reached_with(Moving::ZERO) - mark).bend_at_zero()
}

/// Adds units of a line, with how each of them moves.
fn add_units(
    sums: &mut Sums<Moving>,
    line: &PreparedLine,
    units: Moving,
    first: usize,
    is_poured: bool,
) {
    sums.add_plain(line, units);
    add_slopes(sums, line, units.value, first, is_poured);
}

/// Adds how so many units of a line move with the causes from one on.
fn add_slopes(
    sums: &mut Sums<Moving>,
    line: &PreparedLine,
    count: f64,
    first: usize,
    is_poured: bool,
) {
    let sum = sums.stage_of(line);
    for sensitivity in &line.sensitivities {
        let Some(lane) = lane(sensitivity.cause, first) else {
            continue;
        };
        if sensitivity.scaling == Scaling::Once && !is_poured {
            continue;
        }
        let scaling = sensitivity.scaling.of(count);
        for (sum, change) in sum.of.iter_mut().zip(&sensitivity.change.of) {
            sum.by[lane] += change * scaling;
        }
    }
}

impl<N: Number> Sums<N> {
    /// Adds so many units of a line, none of which moves.
    fn add_plain(&mut self, line: &PreparedLine, units: N) {
        if line.is_ice {
            self.loose_ice += units * line.per_unit.get(Component::Ice);
        }
        self.stage_of(line).add_plain(&line.per_unit, units);
    }
}
