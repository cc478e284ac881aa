//! Which of the answers found are worth a line: none that the plain swap, or another one that is listed, equals or beats in
//! everything that a person chooses by.

use crate::balance::{Balance, Component, Measurand};

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
        let landscape = &problem.landscape;
        let figures = landscape.figures(point);
        // Where a line that moves does not state it, the known part orders nothing: less of it may be more.
        let ordered = |component: Component, measurand: Measurand| {
            if landscape.orders_by(component) {
                figures.of[measurand.slot()]
            } else {
                0.0
            }
        };
        Self {
            distance: landscape.squared_distance(&figures).sqrt(),
            cost: ordered(Component::Cost, Measurand::Cost),
            sugar: ordered(Component::Sugars, Measurand::TotalSugar),
            moves: landscape.moves(point),
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

/// One of the points, beside what a person chooses by.
struct Weighed {
    listed: Listed,
    choice: Choice,
    is_plain: bool,
}

/// The points that are worth listing, in their order; what is taken out hands on what it is best at to what is as good. Where
/// the plain swap is as good as all of them it is listed, if the counter can measure it.
pub(super) fn worth_listing(
    problem: &Problem,
    plain: &Balance,
    found: Vec<(SuggestionKind, Vec<i32>)>,
) -> Vec<Listed> {
    let plain = plain_point(problem, plain).map(|point| (Choice::of(problem, &point), point));
    let all = weighed(problem, plain.as_ref(), found);
    let (kept, handed_on) = kept(&all, plain.as_ref().map(|(choice, _)| choice));
    let mut kinds: Vec<Vec<SuggestionKind>> =
        all.iter().map(|one| one.listed.kinds.clone()).collect();
    for (from, to) in handed_on {
        for kind in kinds[from].clone() {
            if !kinds[to].contains(&kind) && holds(problem, &all[to].listed.point, kind) {
                kinds[to].push(kind);
            }
        }
    }
    let listed = all.into_iter().zip(kinds).enumerate();
    let listed = listed.filter(|(at, _)| kept.contains(at));
    listed
        .map(|(_, (one, mut kinds))| {
            if kinds.is_empty() {
                kinds.push(SuggestionKind::FewestChanges);
            }
            kinds.sort_unstable();
            Listed {
                kinds,
                ..one.listed
            }
        })
        .collect()
}

/// Each point once, the plain swap before them where it is as good as all of them.
fn weighed(
    problem: &Problem,
    plain: Option<&(Choice, Vec<i32>)>,
    found: Vec<(SuggestionKind, Vec<i32>)>,
) -> Vec<Weighed> {
    let mut all: Vec<Weighed> = Vec::new();
    for (kind, point) in found {
        match all.iter_mut().find(|one| one.listed.point == point) {
            Some(one) => one.listed.kinds.push(kind),
            None => all.push(Weighed {
                choice: Choice::of(problem, &point),
                is_plain: plain.is_some_and(|(_, plain)| *plain == point),
                listed: Listed {
                    kinds: vec![kind],
                    point,
                },
            }),
        }
    }
    if let Some((choice, point)) = plain
        && all
            .iter()
            .all(|one| !one.is_plain && choice.equals_or_beats(&one.choice))
    {
        all.insert(
            0,
            Weighed {
                choice: *choice,
                is_plain: true,
                listed: Listed {
                    kinds: Vec::new(),
                    point: point.clone(),
                },
            },
        );
    }
    all
}

/// Which of them stay, and which of the others hands on what it is best at to which.
fn kept(all: &[Weighed], plain: Option<&Choice>) -> (Vec<usize>, Vec<(usize, usize)>) {
    // Of two that equal each other the plain swap stays, else the closer one, else the first.
    let rank = |at: usize| {
        let one = &all[at];
        (!one.is_plain, (one.choice.distance * 1e9).round(), at)
    };
    let mut order: Vec<usize> = (0..all.len()).collect();
    order.sort_by(|a, b| {
        let (a, b) = (rank(*a), rank(*b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2))
    });
    let mut kept: Vec<usize> = Vec::new();
    let mut handed_on: Vec<(usize, usize)> = Vec::new();
    for at in order {
        let Weighed {
            choice, is_plain, ..
        } = &all[at];
        let beats = |other: &usize| all[*other].choice.equals_or_beats(choice);
        if let Some(by) = kept.iter().copied().find(beats) {
            handed_on.push((at, by));
            continue;
        }
        if !is_plain && plain.is_some_and(|plain| plain.equals_or_beats(choice)) {
            continue;
        }
        // One that was kept because it is closer may be equalled by this one in all that is told apart.
        kept.retain(|other| {
            let goes = !all[*other].is_plain && choice.equals_or_beats(&all[*other].choice);
            if goes {
                handed_on.push((*other, at));
            }
            !goes
        });
        kept.push(at);
    }
    (kept, handed_on)
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
