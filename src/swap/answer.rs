//! The answer to a swap: the standard, the plain swap, and what brings the taste back.

use std::sync::Arc;

use crate::balance::{
    Balance, Difference, Measurand, Slots, balance, balance_version, difference, prepare, standard_balance,
};
use crate::book::{Amount, Book, Change, Entry, LineId, Place, Recipe, Resolved, Version, VersionId, resolve};
use crate::edit::Edit;
use crate::optimiser::{Outcome, Status, exhaustive};

use super::explain::{explain, gap_reason, impossible_reason, short_reason};
use super::landscape::TasteLandscape;
use super::plain::plain_swap;
use super::question::{Adjustable, Question, adjustable_lines};

/// Most candidates that are evaluated: two lines of 41 amounts each are 1681.
const MOST_CANDIDATES: u64 = 10_000;

/// What a suggestion is best at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SuggestionKind {
    /// The closest taste.
    ClosestTaste,
}

impl SuggestionKind {
    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::ClosestTaste => "closest taste",
        }
    }
}

/// How one line moves between the standard and a suggestion.
#[derive(Clone, Debug, PartialEq)]
pub struct LineMove {
    /// The line.
    pub line: LineId,
    /// Its amount before; `None` when the line is added.
    pub from: Option<Amount>,
    /// Its amount after; `None` when the line is left out.
    pub to: Option<Amount>,
}

/// Changes that bring the taste back.
#[derive(Clone, Debug, PartialEq)]
pub struct Suggestion {
    /// What it is best at.
    pub kind: SuggestionKind,
    /// Lines that move, the swapped ones among them when their amount changes.
    pub moves: Vec<LineMove>,
    /// The version that accepting it adds.
    pub changes: Vec<Change>,
    /// Its balance.
    pub balance: Arc<Balance>,
    /// How it differs from the standard.
    pub difference: Difference,
    /// Whether the difference is within the counter's own scatter.
    pub within_scatter: bool,
    /// One or two sentences with figures.
    pub explanation: String,
}

/// The answer to a swap.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The question.
    pub question: Question,
    /// The standard: the latest approval or, when there is none, the version as it stands.
    pub standard: Arc<Balance>,
    /// Whether the standard has been approved.
    pub standard_is_approved: bool,
    /// The plain swap.
    pub plain: Arc<Balance>,
    /// How the plain swap differs from the standard.
    pub plain_difference: Difference,
    /// The changes that make the plain swap.
    pub plain_changes: Vec<Change>,
    /// What brings the taste back.
    pub suggestions: Vec<Suggestion>,
    /// Why nothing, or not enough, can be suggested.
    pub reasons: Vec<String>,
    /// Whether the suggestions are proven best.
    pub proven_optimal: bool,
    /// Candidates that were evaluated.
    pub evaluated: u64,
}

/// Answers a question; `None` when the recipe or version is not in the book.
pub fn answer(book: &Book, question: &Question) -> Option<Answer> {
    let recipe = book.recipe(&question.recipe)?;
    let version = question.version.as_ref();
    let now = balance_version(book, recipe, version)?;
    let (standard, approved) = match standard_balance(book, recipe, version) {
        Some((standard, _)) => (standard, true),
        None => (now, false),
    };
    let (resolved, _) = resolve(recipe, version);
    let (plain, swapped) = plain_swap(book, &resolved, &question.replace, &question.with);
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let plain_balance = balance(book, plain.clone(), &place);
    let mut answer = Answer {
        question: question.clone(),
        plain_difference: difference(&book.settings, &standard, &plain_balance),
        plain_changes: changes_between(&resolved, &plain),
        standard: Arc::new(standard),
        standard_is_approved: approved,
        plain: Arc::new(plain_balance),
        suggestions: Vec::new(),
        reasons: Vec::new(),
        proven_optimal: true,
        evaluated: 0,
    };
    if swapped.is_empty() {
        answer.reasons.push(format!("`{}` is not in this version; nothing is swapped", question.replace));
        return Some(answer);
    }
    if let Some(reason) = gap_reason(book, &answer) {
        answer.reasons.push(reason);
        return Some(answer);
    }
    search(book, &mut answer, &resolved, &plain, &swapped);
    Some(answer)
}

fn search(book: &Book, answer: &mut Answer, resolved: &Resolved, plain: &Resolved, swapped: &[LineId]) {
    let adjustable = adjustable_lines(book, &answer.question, plain, swapped);
    let with_added = with_added_lines(plain, &adjustable);
    let place = Place::Recipe(answer.question.recipe.clone(), "lines");
    let prepared = prepare(book, &with_added, &mut Slots::default(), &place);
    let moves: Vec<(usize, f64, f64)> = adjustable
        .iter()
        .filter_map(|adjustable| {
            let line = prepared.position(&adjustable.line.id)?;
            let standard = standard_amount(&answer.standard.resolved, adjustable);
            Some((line, adjustable.step, standard))
        })
        .collect();
    let landscape = TasteLandscape::new(&book.settings, &answer.standard, &answer.plain, prepared, &moves);
    let ranges: Vec<_> = adjustable.iter().map(|adjustable| adjustable.range).collect();
    let outcome = exhaustive(&landscape, &ranges, MOST_CANDIDATES);
    answer.evaluated = outcome.evaluated;
    answer.proven_optimal = matches!(outcome.status, Status::Optimal | Status::Infeasible);
    let Outcome { best: Some(best), .. } = outcome else {
        answer.reasons.push(impossible_reason(&landscape, &adjustable));
        return;
    };
    let suggested = with_amounts(&with_added, &adjustable, &best.point);
    let balance = balance(book, suggested.clone(), &place);
    let difference = difference(&book.settings, &answer.standard, &balance);
    let moves = line_moves(&answer.standard.resolved, resolved, &suggested);
    let suggestion = Suggestion {
        kind: SuggestionKind::ClosestTaste,
        explanation: explain(book, answer, &moves, &balance, &difference),
        changes: changes_between(resolved, &suggested),
        within_scatter: difference.within_scatter(),
        moves,
        balance: Arc::new(balance),
        difference,
    };
    answer.reasons.extend(short_reason(book, answer, &suggestion));
    answer.suggestions.push(suggestion);
}

/// The amount of a line in the standard, in the unit of the adjustable line; none when the standard does not have it.
fn standard_amount(standard: &Resolved, adjustable: &Adjustable) -> f64 {
    let same_unit = |amount: &Amount| match (amount, &adjustable.line.amount) {
        // Another scoop or pump of the same line is counted the same way.
        (Amount::Count(..), Amount::Count(..)) => true,
        (one, other) => std::mem::discriminant(one) == std::mem::discriminant(other),
    };
    standard
        .line(&adjustable.line.id)
        .filter(|line| same_unit(&line.amount))
        .and_then(|line| line.amount.number())
        .unwrap_or(0.0)
}

fn with_added_lines(plain: &Resolved, adjustable: &[Adjustable]) -> Resolved {
    let mut resolved = plain.clone();
    for adjustable in adjustable.iter().filter(|adjustable| adjustable.added) {
        let last_mixed = plain
            .entries
            .iter()
            .rev()
            .find(|entry| entry.line().is_some_and(|line| line.stage == crate::book::Stage::Mixed))
            .map(|entry| entry.id().clone());
        resolved.apply(&Change::Add(last_mixed, Entry::Line(adjustable.line.clone())));
    }
    resolved
}

/// The lines with the amounts of a point; a line of nothing is left out.
fn with_amounts(resolved: &Resolved, adjustable: &[Adjustable], point: &[i32]) -> Resolved {
    let mut resolved = resolved.clone();
    for (adjustable, steps) in adjustable.iter().zip(point) {
        let id = adjustable.line.id.clone();
        let change = if *steps == 0 { Change::Remove(id) } else { Change::Amount(id, adjustable.amount(*steps)) };
        resolved.apply(&change);
    }
    resolved
}

/// Lines whose amount differs from the standard's (or, where the standard does not have the line, from before).
fn line_moves(standard: &Resolved, before: &Resolved, after: &Resolved) -> Vec<LineMove> {
    let reference = |id: &LineId| standard.line(id).or_else(|| before.line(id)).map(|line| line.amount.clone());
    let mut moves: Vec<LineMove> = after
        .lines()
        .map(|line| LineMove { line: line.id.clone(), from: reference(&line.id), to: Some(line.amount.clone()) })
        .collect();
    let gone = before.lines().filter(|line| after.line(&line.id).is_none());
    moves.extend(gone.map(|line| LineMove { line: line.id.clone(), from: reference(&line.id), to: None }));
    moves.retain(|moved| moved.from.as_ref().and_then(Amount::number) != moved.to.as_ref().and_then(Amount::number));
    moves
}

/// The changes that make one set of lines of the other; both come from the same version.
fn changes_between(before: &Resolved, after: &Resolved) -> Vec<Change> {
    let mut changes = Vec::new();
    let mut previous: Option<LineId> = None;
    for entry in &after.entries {
        if let Entry::Line(line) = entry {
            match before.line(&line.id) {
                None => changes.push(Change::Add(previous.clone(), entry.clone())),
                Some(old) => {
                    if old.ingredient != line.ingredient {
                        changes.push(Change::Ingredient(line.id.clone(), line.ingredient.clone()));
                    }
                    if old.amount != line.amount {
                        changes.push(Change::Amount(line.id.clone(), line.amount.clone()));
                    }
                }
            }
        }
        previous = Some(entry.id().clone());
    }
    let gone = before.lines().filter(|line| after.line(&line.id).is_none());
    changes.extend(gone.map(|line| Change::Remove(line.id.clone())));
    changes
}

impl Answer {
    /// The edit that keeps a suggestion as a new version with this name, and the id of that version.
    ///
    /// The version builds on the one that the question started from; neither that one nor anything approved changes.
    pub fn accept(&self, recipe: &Recipe, changes: &[Change], name: &str) -> (Edit, VersionId) {
        let id = VersionId::from_name(name, |taken| recipe.version(taken).is_some());
        let mut version = Version::draft(id.clone(), name.to_owned(), self.question.version.clone());
        version.changes = changes.to_vec();
        (Edit::AddVersion { recipe: recipe.id.clone(), version }, id)
    }

    /// Extra sugar of the plain swap against the standard, g; `None` when one of them is not known.
    pub fn extra_sugar(&self) -> Option<f64> {
        let sugar = |balance: &Balance| balance.figures.complete(Measurand::TotalSugar);
        Some(sugar(&self.plain)? - sugar(&self.standard)?)
    }
}
