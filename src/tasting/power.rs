//! What a panel can show: the power of a blind test, by the share of people who taste the difference or by its size.
//!
//! Two ways to say how different two cups are:
//!
//! - the share of people `s` who taste it, while all others guess: right answers `s + (1 − s)·c`, the model of ISO 4120;
//! - Thurstone's `d′`, the distance of the two cups in standard deviations of one person's perception. A pair is right with
//!   `Φ(d′/√2)`, a duo–trio with `1 − Φ(d′/√2) − Φ(d′/√6) + 2·Φ(d′/√2)·Φ(d′/√6)`, a triangle with
//!   `2·∫₀^∞ [Φ(−z·√3 + d′·√(2/3)) + Φ(−z·√3 − d′·√(2/3))]·φ(z) dz` (Ennis, The power of sensory discrimination methods,
//!   J. Sens. Stud. 8, 1993: 353; value from memory, checked by simulation).
//!
//! `d′` belongs to the cups and compares tests with each other; a share belongs to one test.

use std::f64::consts::{PI, TAU};

use super::blind_test::{BlindTest, Needed, Sides, needed};
use super::distributions::{at_least, at_most, normal_below};
use crate::balance::number::{crossing, integral};

/// How different two cups are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Effect {
    /// The share of people who taste the difference, 0 to 1.
    Share(f64),
    /// Thurstone's `d′`, from 0.
    DPrime(f64),
}

/// A `d′` at which every answer is right, to the last digits that a count of people can show.
const LARGEST_D_PRIME: f64 = 12.0;

/// Steps of the integral of the triangle.
const STEPS: u32 = 64;

/// How far it goes: 30°, within which the odd cup is the one that stands apart.
const WIDEST: f64 = PI / 6.0;

/// The share of right answers of cups that are so different.
pub fn right_answers(test: BlindTest, effect: Effect) -> f64 {
    match effect {
        Effect::Share(share) => {
            let share = share.clamp(0.0, 1.0);
            share + (1.0 - share) * test.guessing()
        }
        Effect::DPrime(d_prime) => {
            let d_prime = d_prime.clamp(0.0, LARGEST_D_PRIME);
            let pair = normal_below(d_prime / 2f64.sqrt());
            match test {
                BlindTest::Pair(_) => pair,
                BlindTest::DuoTrio => {
                    let other = normal_below(d_prime / 6f64.sqrt());
                    1.0 - pair - other + 2.0 * pair * other
                }
                BlindTest::Triangle => triangle(d_prime),
            }
        }
    }
}

/// The integral at the head of the file, over the angle between the two perceived differences: smooth, and over a short way.
///
/// With `s = d′·√(2/3)` it is `2·∫₀^(π/6) [2·exp(−s²/2) + √(2π)·m·exp(−s²·sin²θ/2)·(2·Φ(m) − 1)]/(2π) dθ` and `m = s·cos θ`.
fn triangle(d_prime: f64) -> f64 {
    let distance = d_prime * (2.0 / 3.0_f64).sqrt();
    let around = (-distance * distance / 2.0).exp();
    let inner = |angle: f64| {
        let along = distance * angle.cos();
        let across = (-(distance * angle.sin()).powi(2) / 2.0).exp();
        let ahead = TAU.sqrt() * along * across * (2.0 * normal_below(along) - 1.0);
        (2.0 * around + ahead) / TAU
    };
    (2.0 * integral((0.0, WIDEST), STEPS, inner)).min(1.0)
}

/// The share of people who taste the difference, behind a share of right answers; 0 where guessing gets as many right.
pub fn share(test: BlindTest, right: f64) -> f64 {
    let guessing = test.guessing();
    ((right - guessing) / (1.0 - guessing)).clamp(0.0, 1.0)
}

/// The `d′` behind a share of right answers; 0 where guessing gets as many right, `None` where all are right and no end is known.
pub fn d_prime(test: BlindTest, right: f64) -> Option<f64> {
    if right >= right_answers(test, Effect::DPrime(LARGEST_D_PRIME)) {
        return None;
    }
    if right <= test.guessing() {
        return Some(0.0);
    }
    Some(crossing((0.0, LARGEST_D_PRIME), right, |d_prime| {
        right_answers(test, Effect::DPrime(d_prime))
    }))
}

/// The probability that a panel shows a difference of this size, at a level of false alarms. 0 where no result would.
pub fn power(test: BlindTest, people: u32, level: f64, effect: Effect) -> f64 {
    needed(test, people, level).map_or(0.0, |needed| power_with(test, people, needed, effect))
}

/// The same of a panel of which so many answers are needed.
pub(super) fn power_with(test: BlindTest, people: u32, needed: Needed, effect: Effect) -> f64 {
    let right = right_answers(test, effect);
    let more = at_least(people, needed.answers, right);
    match test {
        // The wrong sample may get the votes, too; that finds a difference, in the wrong direction.
        BlindTest::Pair(Sides::Two) => more + at_most(people, people - needed.answers, right),
        _ => more,
    }
}

/// A panel of people for a blind test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Panel {
    /// How many people, each with one answer.
    pub people: u32,
    /// How many right answers show a difference.
    pub needed: u32,
    /// The probability that it is shown.
    pub power: f64,
}

/// The smallest panel that shows a difference with a wanted probability; `None` where more than `most` people are needed.
///
/// Power rises in a saw: the panel with one person more can be a little below the wanted probability again.
pub fn least_panel(
    test: BlindTest,
    level: f64,
    effect: Effect,
    wanted: f64,
    most: u32,
) -> Option<Panel> {
    (1..=most).find_map(|people| {
        let needed = needed(test, people, level)?;
        let power = power_with(test, people, needed, effect);
        (power >= wanted).then_some(Panel {
            people,
            needed: needed.answers,
            power,
        })
    })
}

/// The smallest share of people who taste a difference that a panel shows with a wanted probability; `None` where no result of
/// this panel would show one.
pub fn shown_share(test: BlindTest, people: u32, level: f64, wanted: f64) -> Option<f64> {
    let needed = needed(test, people, level)?;
    Some(crossing((0.0, 1.0), wanted, |share| {
        power_with(test, people, needed, Effect::Share(share))
    }))
}
