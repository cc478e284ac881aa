//! The answer to a swap: the standard, the plain swap, and what brings the taste back.

use std::sync::Arc;

use crate::balance::{Component, balance, balance_version, difference, standard_balance};
use crate::book::{Book, LineId, Place, Resolved, differences_between, resolve};

use super::changes::{line_moves, with_amounts};
use super::demands::Demands;
use super::impossible::{diet_reason, impossible, trace_reasons};
use super::landscape::{Aim, TasteLandscape};
use super::plain::plain_swap;
use super::problem::{Problem, ProblemInput, run};
use super::question::{Question, adjustable_lines_with};
use super::reason::Reason;
use super::short::{gap_reason, short_reasons};
use super::shortfall::shortfalls;
use super::suggestion::{Answer, Suggestion, SuggestionKind};
use super::unheld::unheld;
use super::watch::Watch;
use super::worth::{Listed, worth_listing};

/// Answers a question; `None` when the recipe or version is not in the book.
pub fn answer(book: &Book, question: &Question) -> Option<Answer> {
    answer_with(book, question, &Demands::default())
}

/// Answers a question with further demands; `None` when the recipe or version is not in the book.
pub fn answer_with(book: &Book, question: &Question, demands: &Demands) -> Option<Answer> {
    answer_watched(book, question, demands, &Watch::default())
}

/// The same, watched from outside.
pub fn answer_watched(
    book: &Book,
    question: &Question,
    demands: &Demands,
    watch: &Watch,
) -> Option<Answer> {
    let recipe = book.recipe(&question.recipe)?;
    let version = question.version.as_ref();
    let now = balance_version(book, recipe, version)?;
    let (standard, approved) = match standard_balance(book, recipe, version) {
        Some((standard, _)) => (standard, true),
        None => (now, false),
    };
    let (resolved, _) = resolve(recipe, version);
    let (plain, swapped) = swapped_lines(book, &resolved, question, demands);
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let plain_balance = balance(book, plain, &place);
    let mut answer = Answer {
        question: question.clone(),
        demands: demands.clone(),
        plain_difference: difference(&book.settings, &standard, &plain_balance),
        plain_changes: differences_between(&resolved, &plain_balance.resolved).changes,
        standard: Arc::new(standard),
        standard_is_approved: approved,
        plain: Arc::new(plain_balance),
        swapped,
        adjustable: Vec::new(),
        suggestions: Vec::new(),
        reasons: Vec::new(),
        proven_optimal: true,
        evaluated: 0,
        nodes: 0,
        candidates: 0.0,
    };
    if answer.swapped.is_empty() {
        let replace = question.replace.clone();
        answer.reasons.push(Reason::NotInVersion(replace));
    } else if let Some(reason) = gap_reason(&answer) {
        answer.reasons.push(reason);
    } else if let Some(reason) = diet_reason(book, &answer.plain, demands) {
        answer.reasons.push(reason);
    } else {
        Suggesting {
            book,
            demands,
            resolved: &resolved,
            watch,
        }
        .search(&mut answer);
        if !answer.suggestions.is_empty() {
            let traces = trace_reasons(book, &answer.plain, demands);
            answer.reasons.extend(traces);
        }
    }
    Some(answer)
}

/// The question's own swap and those that go with it, by equal measures.
fn swapped_lines(
    book: &Book,
    resolved: &Resolved,
    question: &Question,
    demands: &Demands,
) -> (Resolved, Vec<LineId>) {
    let own = std::iter::once((&question.replace, &question.with));
    let also = demands.also.iter().map(|(replace, with)| (replace, with));
    let (mut lines, mut swapped) = (resolved.clone(), Vec::new());
    for (replace, with) in own.chain(also) {
        let (next, more) = plain_swap(book, &lines, replace, with);
        lines = next;
        swapped.extend(more);
    }
    (lines, swapped)
}

/// The question as it is searched.
struct Suggesting<'question> {
    book: &'question Book,
    demands: &'question Demands,
    resolved: &'question Resolved,
    watch: &'question Watch,
}

impl Suggesting<'_> {
    fn search(&self, answer: &mut Answer) {
        let plain = &answer.plain.resolved;
        let problem = Problem::new(&ProblemInput {
            book: self.book,
            recipe: &answer.question.recipe,
            standard: &answer.standard,
            start: &answer.plain,
            adjustable: adjustable_lines_with(
                self.book,
                &answer.question,
                self.demands,
                plain,
                &answer.swapped,
            ),
            demands: self.demands,
        });
        answer.adjustable.clone_from(&problem.adjustable);
        answer.candidates = problem
            .ranges()
            .iter()
            .map(|range| range.len() as f64)
            .product();
        let Some(closest) = answer.enter(run(
            &problem.landscape,
            self.demands.limit,
            None,
            self.watch,
        )) else {
            let impossible = impossible(&problem, &answer.plain);
            answer.reasons.push(Reason::Impossible(impossible));
            return;
        };
        let reached = problem
            .landscape
            .deviations(&problem.landscape.figures(&closest));
        let limits = |most: &dyn Fn(f64) -> f64| -> Vec<f64> {
            let targets = problem.landscape.targets().iter().zip(&reached);
            targets
                .map(|(target, steps)| {
                    if target.weight > 0.0 {
                        most(steps.abs())
                    } else {
                        f64::INFINITY
                    }
                })
                .collect()
        };
        let within_one_step = limits(&|_| 1.0);
        let mut points = Vec::new();
        for (kind, aim, ordered_by) in [
            (SuggestionKind::FewestChanges, Aim::FewestChanges, None),
            (SuggestionKind::Cheapest, Aim::Cost, Some(Component::Cost)),
            (
                SuggestionKind::LeastSugar,
                Aim::Sugar,
                Some(Component::Sugars),
            ),
        ] {
            // What is not known of what may move can't be made small.
            if ordered_by.is_some_and(|component| !problem.landscape.orders_by(component)) {
                continue;
            }
            let landscape = problem.landscape.aiming_at(aim, &within_one_step);
            let point = self.best(answer, &landscape, &closest);
            if point.is_none() {
                // Nothing is within one step: the fewest changes may be as far off as the closest taste, the rest is moot.
                let landscape = problem
                    .landscape
                    .aiming_at(Aim::FewestChanges, &limits(&|steps| steps.max(1.0)));
                let point = self.best(answer, &landscape, &closest);
                points.extend(point.map(|point| (SuggestionKind::FewestChanges, point)));
                break;
            }
            points.extend(point.map(|point| (kind, point)));
        }
        let at = usize::from(
            points
                .first()
                .is_some_and(|(kind, _)| *kind == SuggestionKind::FewestChanges),
        );
        points.insert(at, (SuggestionKind::ClosestTaste, closest));
        let points = worth_listing(&problem, &answer.plain, points);
        self.suggest(answer, &problem, &points);
    }

    /// The best point of a landscape; of what is equally cheap, or holds as little sugar, the closest taste.
    fn best(
        &self,
        answer: &mut Answer,
        landscape: &TasteLandscape,
        closest: &[i32],
    ) -> Option<Vec<i32>> {
        let search = |landscape: &TasteLandscape, known: &[i32]| {
            run(landscape, self.demands.limit, Some(known), self.watch)
        };
        let outcome = search(landscape, closest)?;
        let best = outcome.best.clone();
        let point = answer.enter(Some(outcome))?;
        let Some(landscape) = best.and_then(|best| landscape.no_more_than(best.cost)) else {
            return Some(point);
        };
        let closest = answer.enter(search(&landscape, &point));
        closest.or(Some(point))
    }

    /// A suggestion for each point.
    fn suggest(&self, answer: &mut Answer, problem: &Problem, points: &[Listed]) {
        for Listed { kinds, point } in points {
            if let Some((kind, also)) = kinds.split_first() {
                let suggestion = self.suggestion(answer, problem, *kind, also.to_vec(), point);
                answer.suggestions.push(suggestion);
            }
        }
        let closest = answer.suggestions.iter().min_by(|a, b| {
            let distance = |suggestion: &Suggestion| suggestion.difference.distance;
            let (a, b) = (distance(a), distance(b));
            a.unwrap_or(f64::INFINITY)
                .total_cmp(&b.unwrap_or(f64::INFINITY))
        });
        if let Some(closest) = closest {
            let reasons = short_reasons(answer, closest, problem, self.demands);
            answer.reasons.extend(reasons);
        }
        if let Some(first) = answer.suggestions.first() {
            let window = problem.landscape.bounds().window;
            let unheld = unheld(&first.balance, self.demands, window);
            answer
                .reasons
                .extend(unheld.into_iter().map(Reason::Unheld));
        }
    }

    fn suggestion(
        &self,
        answer: &Answer,
        problem: &Problem,
        kind: SuggestionKind,
        also: Vec<SuggestionKind>,
        point: &[i32],
    ) -> Suggestion {
        let place = Place::Recipe(answer.question.recipe.clone(), "lines");
        let lines = with_amounts(&problem.lines, &problem.adjustable, point);
        let balance = balance(self.book, lines, &place);
        let difference = difference(&self.book.settings, &answer.standard, &balance);
        let moves = line_moves(&answer.standard.resolved, self.resolved, &balance.resolved);
        Suggestion {
            kind,
            also,
            point: point.to_vec(),
            changes: differences_between(self.resolved, &balance.resolved).changes,
            shortfalls: shortfalls(problem, point),
            within_scatter: difference.within_scatter(),
            moves,
            balance: Arc::new(balance),
            difference,
        }
    }
}
