//! Which of the answers found are worth a line: none that the plain swap, or another one that is listed, equals or beats in
//! everything that a person chooses by.

use crate::balance::{Balance, Measurand};

use super::problem::Problem;
use super::suggestion::SuggestionKind;

/// Distances that are read as the same, in noticeable steps.
const SAME_DISTANCE: f64 = 0.05;

/// Costs that are read as the same, in the book's currency: nobody pays less than a hundredth.
const SAME_COST: f64 = 0.01;

/// Sugars that are read as the same, g.
const SAME_SUGAR: f64 = 0.1;

/// A point to be listed, with what it is best at: what leads first.
pub(super) struct Listed {
    pub(super) kinds: Vec<SuggestionKind>,
    pub(super) point: Vec<i32>,
}

/// What a person chooses by: less is better in all of it.
#[derive(Clone, Copy)]
struct Choice {
    distance: f64,
    cost: f64,
    sugar: f64,
    moves: usize,
}

impl Choice {
    fn of(problem: &Problem, point: &[i32]) -> Self {
        let figures = problem.landscape.figures(point);
        Self {
            distance: problem.landscape.squared_distance(&figures).sqrt(),
            cost: figures.of[Measurand::Cost.slot()],
            sugar: figures.of[Measurand::TotalSugar.slot()],
            moves: problem.landscape.moves(point),
        }
    }

    /// Whether it is as good in everything, as far as figures are told apart.
    fn equals_or_beats(&self, other: &Self) -> bool {
        self.distance < other.distance + SAME_DISTANCE
            && self.cost < other.cost + SAME_COST
            && self.sugar < other.sugar + SAME_SUGAR
            && self.moves <= other.moves
    }
}

/// The points that are worth listing, in their order; what is taken out hands on what it is best at to what is as good. Where
/// the plain swap is as good as all of them it is listed, if the counter can measure it.
pub(super) fn worth_listing(
    problem: &Problem,
    plain: &Balance,
    found: Vec<(SuggestionKind, Vec<i32>)>,
) -> Vec<Listed> {
    let mut all: Vec<Listed> = Vec::new();
    for (kind, point) in found {
        match all.iter_mut().find(|listed| listed.point == point) {
            Some(listed) => listed.kinds.push(kind),
            None => all.push(Listed {
                kinds: vec![kind],
                point,
            }),
        }
    }
    let untouched = plain_point(problem, plain);
    let is_untouched = |point: &[i32]| untouched.as_deref() == Some(point);
    if let Some(point) = &untouched {
        let choice = Choice::of(problem, point);
        let beaten = |listed: &Listed| {
            listed.point == *point || choice.equals_or_beats(&Choice::of(problem, &listed.point))
        };
        if all.iter().all(beaten) && !all.iter().any(|listed| listed.point == *point) {
            all.insert(
                0,
                Listed {
                    kinds: Vec::new(),
                    point: point.clone(),
                },
            );
        }
    }
    let choices: Vec<Choice> = all
        .iter()
        .map(|listed| Choice::of(problem, &listed.point))
        .collect();
    // Of two that equal each other the plain swap stays, else the closer one, else the first.
    let rank = |at: usize| {
        let choice = choices[at];
        let order = (choice.distance * 1e9).round();
        (!is_untouched(&all[at].point), order, at)
    };
    let mut order: Vec<usize> = (0..all.len()).collect();
    order.sort_by(|a, b| {
        let (a, b) = (rank(*a), rank(*b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2))
    });
    let plain_choice = untouched.as_ref().map(|point| Choice::of(problem, point));
    let mut kept: Vec<usize> = Vec::new();
    let mut handed_on: Vec<(usize, usize)> = Vec::new();
    for at in order {
        let beats = |other: &usize| choices[*other].equals_or_beats(&choices[at]);
        if let Some(by) = kept.iter().copied().find(|other| beats(other)) {
            handed_on.push((at, by));
            continue;
        }
        let by_plain = plain_choice.is_some_and(|plain| {
            !is_untouched(&all[at].point) && plain.equals_or_beats(&choices[at])
        });
        if by_plain {
            continue;
        }
        // One that was kept because it is closer may be equalled by this one in all that is told apart.
        kept.retain(|other| {
            let goes =
                !is_untouched(&all[*other].point) && choices[at].equals_or_beats(&choices[*other]);
            if goes {
                handed_on.push((*other, at));
            }
            !goes
        });
        kept.push(at);
    }
    if kept.is_empty() {
        kept = (0..all.len()).collect();
        kept.truncate(1);
    }
    for (from, to) in handed_on {
        let kinds = all[from].kinds.clone();
        for kind in kinds {
            if !all[to].kinds.contains(&kind) && holds(problem, &all[to].point, kind) {
                all[to].kinds.push(kind);
            }
        }
    }
    kept.sort_unstable();
    let mut listed: Vec<Listed> = Vec::new();
    for (at, mut one) in all.into_iter().enumerate() {
        if kept.contains(&at) {
            if one.kinds.is_empty() {
                one.kinds.push(SuggestionKind::FewestChanges);
            }
            one.kinds.sort_unstable();
            listed.push(one);
        }
    }
    listed
}

/// Whether a point that is as good as another one may be called what that was: the cheapest and the least sugar are so within a
/// noticeable step on every axis.
fn holds(problem: &Problem, point: &[i32], kind: SuggestionKind) -> bool {
    match kind {
        SuggestionKind::FewestChanges | SuggestionKind::ClosestTaste => true,
        SuggestionKind::Cheapest | SuggestionKind::LeastSugar => {
            let landscape = &problem.landscape;
            let steps = landscape.deviations(&landscape.figures(point));
            let mut targets = landscape.targets().iter().zip(steps);
            targets.all(|(target, steps)| target.weight <= 0.0 || steps.abs() <= 1.0)
        }
    }
}

/// The plain swap as a point, where the counter can measure it and it keeps every condition.
fn plain_point(problem: &Problem, plain: &Balance) -> Option<Vec<i32>> {
    let steps = |found: &super::question::Adjustable| {
        let line = plain.resolved.line(&found.line.id);
        let number = line.map_or(Some(0.0), |line| line.amount.number())?;
        let steps = number / found.step;
        let whole = steps.round();
        #[expect(
            clippy::cast_possible_truncation,
            reason = "amounts are below 10 000, steps above 0.001"
        )]
        ((steps - whole).abs() < 1e-6).then_some(whole as i32)
    };
    let point: Option<Vec<i32>> = problem.adjustable.iter().map(steps).collect();
    let point = point?;
    let landscape = &problem.landscape;
    let ranges = problem.ranges();
    let mut inside = point.iter().zip(&ranges);
    let is_inside = inside.all(|(at, range)| (range.low..=range.high).contains(at));
    (is_inside
        && landscape
            .obstacle(&point, &landscape.figures(&point))
            .is_none())
    .then_some(point)
}
