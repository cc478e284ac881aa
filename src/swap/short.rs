//! Why a swap can't be compensated, or not wholly: what is looked for in an answer.

use crate::balance::{LineShare, Measurand, Taste};
use crate::book::{Axis, LineId};

use super::demands::Demands;
use super::problem::Problem;
use super::reason::{ComparedDrink, Reason};
use super::shortfall::Hindrance;
use super::suggestion::{Answer, Suggestion};
use super::unheld::Bound;

/// Why a swap can't be compensated for want of a figure: it names what to weigh or to read, and does not guess.
pub(super) fn gap_reason(answer: &Answer) -> Option<Reason> {
    let drinks = [
        (&answer.standard, ComparedDrink::Standard),
        (&answer.plain, ComparedDrink::PlainSwap),
    ];
    drinks.into_iter().find_map(|(balance, drink)| {
        let missing = balance.reported(Measurand::Sweetness).missing;
        if let Some(unweighed) = balance.unweighed_of(&missing) {
            return Some(Reason::NotWeighed(unweighed));
        }
        (!missing.is_empty()).then_some(Reason::SweetnessNotKnown { drink, missing })
    })
}

/// Which axis the best answer does not reach, and why.
pub(super) fn short_reasons(
    answer: &Answer,
    suggestion: &Suggestion,
    problem: &Problem,
    demands: &Demands,
) -> Vec<Reason> {
    let axes = suggestion.difference.axes.iter();
    // What differs on purpose, an iced drink from its hot standard, is not to be reached.
    let counted = axes.filter(|axis| axis.weight > 0.0);
    let mut reasons: Vec<Reason> = counted
        .filter_map(|axis| {
            let steps = axis.steps.filter(|_| axis.taste() != Some(Taste::Same))?;
            // What another suggestion reaches can be reached.
            let reaches = |other: &Suggestion| {
                let mut axes = other.difference.axes.iter();
                let there = axes.find(|there| there.axis == axis.axis);
                there.is_some_and(|there| there.taste() == Some(Taste::Same))
            };
            if answer.suggestions.iter().any(reaches) {
                return None;
            }
            Some(Reason::NotReached {
                axis: axis.axis.clone(),
                steps,
                why: why_short(suggestion, problem, &axis.axis),
            })
        })
        .collect();
    let caps = caps(demands);
    if !reasons.is_empty() && !caps.is_empty() {
        reasons.push(Reason::KeptTo(caps));
    }
    let axes: Vec<Axis> = suggestion.difference.not_compared().cloned().collect();
    if !axes.is_empty() {
        let with = answer.question.with.clone();
        reasons.push(Reason::NotCompared { with, axes });
    }
    reasons
}

/// What stands in the way of an axis: the line that brings most of the sugar and can't be taken back, or what another step runs
/// into.
fn why_short(suggestion: &Suggestion, problem: &Problem, axis: &Axis) -> Hindrance {
    let mut shortfalls = suggestion.shortfalls.iter();
    let Some(short) = shortfalls.find(|short| short.axis == *axis) else {
        // A flavour that nothing in the drink has any more is not even looked for.
        return Hindrance::NoLine;
    };
    if *axis == Axis::Sweetness && short.steps > 0.0 {
        let sugar = |share: &LineShare| share.sugar.unwrap_or(0.0);
        let most = suggestion
            .balance
            .lines
            .iter()
            .max_by(|one, other| sugar(one).total_cmp(&sugar(other)));
        if let Some(share) = most.filter(|share| !may_shrink(problem, suggestion, &share.line)) {
            return Hindrance::BringsSugar {
                ingredient: share.ingredient.clone(),
                grams: sugar(share),
            };
        }
    }
    short.why.clone()
}

/// Whether there may be less of a line than a suggestion has.
fn may_shrink(problem: &Problem, suggestion: &Suggestion, line: &LineId) -> bool {
    let moving = problem.adjustable.iter().zip(&suggestion.point);
    moving
        .filter(|(adjustable, _)| adjustable.line.id == *line)
        .any(|(adjustable, steps)| *steps > adjustable.range.low)
}

/// The caps that a search keeps to.
fn caps(demands: &Demands) -> Vec<Bound> {
    let caps = [
        demands.most_sugar_per_100_ml.map(Bound::Sugar),
        demands.most_energy_kj.map(Bound::Energy),
        demands.most_cost.map(Bound::Cost),
    ];
    caps.into_iter().flatten().collect()
}
