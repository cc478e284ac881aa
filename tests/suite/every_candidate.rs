//! All four kinds of answer of small questions, beside what weighing out every candidate by the balance alone finds.
//!
//! The search is asked as a person asks it. What it should have found is worked out here from nothing but balances and their
//! differences: no landscape, no floor, no cost that the search knows.

use std::mem::discriminant;

use evensip::balance::{Balance, Measurand, balance, difference};
use evensip::book::{
    Amount, Book, Change, Entry, IngredientId, LineId, Place, Role, Stage, TemperatureWindow,
    VesselId, resolve,
};
use evensip::swap::{
    Adjustable, Answer, Demands, LineLimit, Question, Suggestion, SuggestionKind, adjustable_lines,
    answer_with, plain_swap,
};

use crate::instances::{Chance, KINDS, Kind, LINES, line, rest};
use crate::sample::{recipe, sample};

/// Questions of each kind of drink.
const QUESTIONS: u64 = 8;

/// Amounts that each of the three lines may take.
const AMOUNTS: i32 = 4;

const WINDOW: TemperatureWindow = TemperatureWindow {
    from: -5.0,
    to: 80.0,
};

/// A drink of three lines and what its kind adds, with a swap that is asked of it.
fn question(kind: Kind, seed: u64) -> (Book, Question, Demands) {
    let mut chance = Chance::new(seed * 31 + kind as u64);
    let mut book = sample();
    let iced = matches!(
        kind,
        Kind::Iced | Kind::Shaken | Kind::Strained | Kind::FilledIced | Kind::IceToRim
    );
    let start = usize::try_from(chance.below(LINES.len() as u64)).unwrap();
    // The first line is one that has another brand to be swapped for.
    let from_start = (0..LINES.len()).map(|at| LINES[(start + at) % LINES.len()]);
    let chosen: Vec<_> = from_start
        .skip_while(|(usual, other, ..)| usual == other)
        .chain(LINES)
        .take(3)
        .collect();
    let mut entries = Vec::new();
    let mut adjust = Vec::new();
    for (at, (usual, _, grams, hot)) in chosen.iter().enumerate() {
        let step = grams * [1.0, 2.0, 3.0][usize::try_from(chance.below(3)).unwrap()];
        let standard = chance.between(2, 7);
        let celsius = match (iced, hot) {
            (true, _) => 8.0,
            (false, true) => 74.0,
            (false, false) => 22.0,
        };
        let name = format!("line-{at}");
        let amount = Amount::Grams(f64::from(standard) * step);
        entries.push(line(
            &name,
            usual,
            amount,
            celsius,
            Role::Base,
            Stage::Mixed,
        ));
        adjust.push(LineId::new(&name).unwrap());
    }
    for mut entry in rest(kind) {
        if let Entry::Line(line) = &mut entry {
            // Not hot enough to have to dissolve powders.
            line.temperature = line
                .temperature
                .filter(|stated| !(iced && stated.celsius() >= 60.0));
        }
        entries.push(entry);
    }
    let mut drink = recipe(entries);
    drink.cup = VesselId::new(if iced { "pet-cup-500" } else { "paper-cup-700" }).ok();
    drink.shaker = matches!(kind, Kind::Shaken | Kind::Strained)
        .then(|| VesselId::new("steel-shaker").unwrap());
    drink.strained = kind == Kind::Strained;
    let id = drink.id.clone();
    book.recipes.put(drink);
    let question = Question {
        recipe: id,
        version: None,
        replace: IngredientId::new(chosen[0].0).unwrap(),
        with: IngredientId::new(chosen[0].1).unwrap(),
        adjust: Some(adjust),
    };
    let mut demands = Demands {
        temperature: Some(WINDOW),
        most_sugar_per_100_ml: (chance.below(4) == 0).then_some(9.0),
        ..Demands::default()
    };
    // The swap may measure a line in another unit, and limits are in that.
    let (lines, _) = resolve(book.recipe(&question.recipe).unwrap(), None);
    let (plain, swapped) = plain_swap(&book, &lines, &question.replace, &question.with);
    for adjustable in adjustable_lines(&book, &question, &plain, &swapped) {
        let now = adjustable.line.amount.number().unwrap();
        let step = adjustable.step * [1.0, 2.0, 3.0][usize::try_from(chance.below(3)).unwrap()];
        let least = (now / step).round() - f64::from(chance.between(0, AMOUNTS - 1));
        demands.limits.push(LineLimit {
            line: adjustable.line.id.clone(),
            least: Some(least.max(1.0) * step),
            most: Some((least.max(1.0) + f64::from(AMOUNTS - 1)) * step),
            increment: Some(step),
        });
    }
    (book, question, demands)
}

/// Lines that stand at another amount than in the standard.
fn moves(answer: &Answer, found: &Balance) -> f64 {
    let moved = |adjustable: &&Adjustable| {
        let amount = |of: &Balance| {
            of.resolved
                .line(&adjustable.line.id)
                .unwrap()
                .amount
                .clone()
        };
        let (before, after) = (amount(&answer.standard), amount(found));
        before.number() != after.number() || discriminant(&before) != discriminant(&after)
    };
    answer.adjustable.iter().filter(moved).count() as f64
}

/// One candidate as the counter would find it.
struct Candidate {
    /// Lines that move.
    moves: f64,
    /// Weighted squared steps.
    taste: f64,
    /// Steps of every axis that counts.
    steps: Vec<f64>,
    cost: f64,
    sugar: f64,
}

impl Candidate {
    fn closeness(&self) -> f64 {
        self.taste + 0.01 * self.moves
    }
}

fn candidate(book: &Book, answer: &Answer, found: &Balance) -> Option<Candidate> {
    let figure = |measurand: Measurand| found.figures.get(measurand);
    let cup = found
        .resolved
        .cup
        .as_ref()
        .and_then(|id| book.vessels.get(id));
    let room = cup.map_or(100.0, |cup| {
        let head = cup
            .closures
            .first()
            .map_or(0.0, |closure| closure.head_room);
        100.0 * (cup.capacity - head) / cup.capacity
    });
    let fits = figure(Measurand::Fill).is_none_or(|fill| fill <= room + 0.01);
    let drinkable = figure(Measurand::ServingTemperature)
        .is_none_or(|celsius| (WINDOW.from..=WINDOW.to).contains(&celsius));
    let sugar_per_100_ml = found.figures.of[Measurand::SugarPer100Ml.slot()];
    let kept = answer
        .demands
        .most_sugar_per_100_ml
        .is_none_or(|most| sugar_per_100_ml <= most + 1e-9);
    let counted: Vec<(f64, f64)> = difference(&book.settings, &answer.standard, found)
        .axes
        .iter()
        .filter(|axis| axis.weight > 0.0)
        .filter_map(|axis| axis.steps.map(|steps| (axis.weight, steps)))
        .collect();
    (fits && drinkable && kept).then(|| Candidate {
        moves: moves(answer, found),
        taste: counted
            .iter()
            .map(|(weight, steps)| weight * steps * steps)
            .sum(),
        steps: counted.iter().map(|(_, steps)| *steps).collect(),
        cost: found.figures.of[Measurand::Cost.slot()],
        sugar: found.figures.of[Measurand::TotalSugar.slot()],
    })
}

/// Every candidate of the grid that is allowed.
fn every_candidate(book: &Book, answer: &Answer) -> Vec<Candidate> {
    let place = Place::Recipe(answer.question.recipe.clone(), "lines");
    let mut all = Vec::new();
    for at in 0..AMOUNTS.pow(3) {
        let mut lines = answer.plain.resolved.clone();
        let mut left = at;
        for one in &answer.adjustable {
            let amount = one.amount(one.range.low + left % AMOUNTS);
            left /= AMOUNTS;
            lines.apply(&Change::Amount(one.line.id.clone(), amount));
        }
        all.extend(candidate(book, answer, &balance(book, lines, &place)));
    }
    all
}

fn least(values: impl Iterator<Item = f64>) -> f64 {
    values.fold(f64::INFINITY, f64::min)
}

/// The least of one thing and, of those that are equal in it, the least of another.
fn least_of<'all>(
    all: impl Iterator<Item = &'all Candidate> + Clone,
    first: impl Fn(&Candidate) -> f64,
    then: impl Fn(&Candidate) -> f64,
) -> (f64, f64) {
    let best = least(all.clone().map(&first));
    let equal = all.filter(|one| first(one) <= best + 1e-9 * best.abs().max(1.0));
    (best, least(equal.map(then)))
}

/// Whether three lines may move, each between as many amounts as are looked at.
fn is_of_three_lines(answer: &Answer) -> bool {
    let has_grid = |one: &Adjustable| one.range.len() == u64::from(AMOUNTS.unsigned_abs());
    answer.adjustable.len() == 3 && answer.adjustable.iter().all(has_grid)
}

/// What is listed, and the plain swap.
fn listed(book: &Book, answer: &Answer) -> Vec<Candidate> {
    let listed = answer.suggestions.iter().map(|one| &one.balance);
    listed
        .chain([&answer.plain])
        .filter_map(|found| candidate(book, answer, found))
        .collect()
}

#[test]
fn all_four_kinds_of_answer_are_what_looking_at_every_candidate_finds() {
    let (mut asked, mut held, mut nothing) = (0, [0; 4], 0);
    for kind in KINDS {
        for seed in 0..QUESTIONS {
            let name = format!("{kind:?} {seed}");
            let (book, question, demands) = question(kind, seed);
            let answer = answer_with(&book, &question, &demands).unwrap();
            assert!(answer.proven_optimal, "{name}");
            asked += 1;
            assert!(is_of_three_lines(&answer), "{name}");
            let all = every_candidate(&book, &answer);
            if all.is_empty() {
                assert!(answer.suggestions.is_empty(), "{name}");
                nothing += 1;
                continue;
            }
            let suggested = |kind: SuggestionKind| -> Option<Candidate> {
                let is_it = |one: &&Suggestion| one.kind == kind || one.also.contains(&kind);
                let one = answer.suggestions.iter().find(is_it)?;
                let found = candidate(&book, &answer, &one.balance);
                Some(found.unwrap_or_else(|| panic!("{name}: {kind:?} is not allowed")))
            };
            // What nobody tells apart is not listed twice: a twentieth of a step, a hundredth of the currency, a tenth of a gram.
            let told = |found: f64, best: f64, apart: f64, what: &str| {
                assert!(
                    found <= best + apart,
                    "{name}, {what}: {found} suggested, {best} by looking at all"
                );
            };
            // What is not listed is equalled by what is, or by the plain swap.
            let listed = listed(&book, &answer);
            let value = |kind: SuggestionKind, of: &dyn Fn(&Candidate) -> f64| {
                let found = suggested(kind);
                found.map_or_else(|| least(listed.iter().map(of)), |found| of(&found))
            };
            let best = least(all.iter().map(Candidate::closeness));
            told(
                value(SuggestionKind::ClosestTaste, &Candidate::closeness).sqrt(),
                best.sqrt(),
                0.05,
                "closest taste",
            );
            let by_closeness =
                |a: &&Candidate, b: &&Candidate| a.closeness().total_cmp(&b.closeness());
            let closest = listed.iter().min_by(by_closeness);
            let closest =
                closest.unwrap_or_else(|| panic!("{name}: nothing: {:?}", answer.reasons));
            held[0] += usize::from(suggested(SuggestionKind::ClosestTaste).is_some());
            // Within one step of every axis or, where nothing is, as far as the closest taste goes.
            let within = |limit: &dyn Fn(usize) -> f64| -> Vec<&Candidate> {
                let keeps = |one: &&Candidate| {
                    let mut steps = one.steps.iter().enumerate();
                    steps.all(|(at, steps)| steps.abs() <= limit(at) + 1e-9)
                };
                all.iter().filter(keeps).collect()
            };
            let one_step = within(&|_| 1.0);
            let is_moot = one_step.is_empty();
            let allowed = if is_moot {
                within(&|at| closest.steps[at].abs().max(1.0))
            } else {
                one_step
            };
            let (moves, taste) =
                least_of(allowed.iter().copied(), |one| one.moves, |one| one.taste);
            told(
                value(SuggestionKind::FewestChanges, &|one| one.moves),
                moves,
                0.0,
                "lines that move",
            );
            if let Some(fewest) = suggested(SuggestionKind::FewestChanges) {
                told(
                    fewest.taste.sqrt(),
                    taste.sqrt(),
                    0.05,
                    "taste of the fewest changes",
                );
                held[1] += 1;
            }
            for (at, kind, of, apart) in [
                (
                    2,
                    SuggestionKind::Cheapest,
                    (|one| one.cost) as fn(&Candidate) -> f64,
                    0.01,
                ),
                (3, SuggestionKind::LeastSugar, |one| one.sugar, 0.1),
            ] {
                let found = suggested(kind);
                assert!(found.is_none() || !is_moot, "{name}: {kind:?}");
                if !is_moot {
                    let first = least(allowed.iter().map(|one| of(one)));
                    told(value(kind, &of), first, apart, &format!("{kind:?}"));
                }
                held[at] += usize::from(found.is_some());
            }
        }
    }
    assert!(
        asked >= 60 && held.iter().all(|held| *held >= 30),
        "{asked} {held:?} {nothing}"
    );
}
