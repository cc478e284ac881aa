//! Laws of the list of suggestions: what is on it is worth a line, and what nobody knows decides nothing.

use evensip::balance::{Balance, Difference, Measurand};
use evensip::book::{Book, IngredientId, Role};
use evensip::swap::{Adjustable, Answer, Question, Reason, answer};

use crate::sample::sample;
use crate::variation_laws::iced_large;

/// Answers to swaps of the sample book that differ in kind.
fn answers() -> Vec<(Book, Answer)> {
    let mut answers = Vec::new();
    for book in [sample(), iced_large()] {
        for recipe in book.recipes.iter().filter(|recipe| recipe.cup.is_some()) {
            let used: Vec<IngredientId> = recipe.ingredients().cloned().collect();
            for replace in &used {
                let role = book.ingredient(replace).map(|item| item.role);
                let others = book.ingredients.iter().filter(|other| {
                    Some(other.role) == role
                        && other.id != *replace
                        && !matches!(other.role, Role::Water | Role::Ice | Role::Tea)
                });
                for with in others.take(1) {
                    let question = Question {
                        recipe: recipe.id.clone(),
                        version: None,
                        replace: replace.clone(),
                        with: with.id.clone(),
                        adjust: None,
                    };
                    answers.push((book.clone(), answer(&book, &question).unwrap()));
                }
            }
        }
    }
    answers
}

/// What a person chooses by.
#[derive(Debug)]
struct Row {
    distance: f64,
    cost: Option<f64>,
    sugar: Option<f64>,
    moves: usize,
}

impl Row {
    /// Whether it is as good in everything. What is not known is as good as nothing.
    fn beats(&self, other: &Self) -> bool {
        let is_least = |own: Option<f64>, other: Option<f64>| {
            own.zip(other).is_some_and(|(own, other)| own <= other)
        };
        self.distance <= other.distance
            && is_least(self.cost, other.cost)
            && is_least(self.sugar, other.sugar)
            && self.moves <= other.moves
    }
}

/// One pass over the answers: none is listed that another one, or the plain swap, equals or beats in distance, cost, sugar and
/// lines moved; and what is said not to be reached no suggestion reaches.
#[test]
fn suggestions_make_sense() {
    let mut seen = 0;
    for (book, answer) in answers() {
        let row = |balance: &Balance, difference: &Difference, moves: usize| Row {
            distance: difference.distance.unwrap_or(f64::INFINITY),
            cost: balance.figures.complete(Measurand::Cost),
            sugar: balance.figures.complete(Measurand::TotalSugar),
            moves,
        };
        let rows: Vec<_> = answer
            .suggestions
            .iter()
            .map(|found| {
                row(
                    &found.balance,
                    &found.difference,
                    moved(&answer, &found.balance),
                )
            })
            .collect();
        for (at, listed) in rows.iter().enumerate() {
            for (other, against) in rows.iter().enumerate() {
                assert!(
                    at == other || !against.beats(listed),
                    "{:?}",
                    answer.question
                );
            }
        }
        for reason in &answer.reasons {
            if let Reason::NotReached { axis, .. } = reason {
                let reached = answer.suggestions.iter().any(|found| {
                    let mut axes = found.difference.axes.iter();
                    axes.find(|there| there.axis == *axis)
                        .and_then(|there| there.steps)
                        .is_some_and(|steps| steps.abs() <= 1.0)
                });
                assert!(!reached, "{:?}: {axis:?}", answer.question);
                // Never beside a suggestion that says that nothing differs.
                assert!(
                    answer
                        .suggestions
                        .iter()
                        .all(|found| found.difference.within_one_step() != Some(true))
                );
            }
        }
        // The plain swap, where it fits, beats none of them either.
        let fits = may_be_made(&book, &answer);
        let plain = row(
            &answer.plain,
            &answer.plain_difference,
            moved(&answer, &answer.plain),
        );
        for (found, listed) in answer.suggestions.iter().zip(&rows) {
            let is_plain = found.balance.resolved == answer.plain.resolved;
            assert!(
                is_plain || !fits || !plain.beats(listed),
                "{:?} {:?}: {plain:?} {listed:?}",
                answer.question,
                found.kind
            );
        }
        seen += answer.suggestions.len();
    }
    assert!(seen > 5, "{seen}");
}

/// Whether the counter can measure the plain swap and it keeps every condition.
fn may_be_made(book: &Book, answer: &Answer) -> bool {
    let steps = |found: &Adjustable| {
        let line = answer.plain.resolved.line(&found.line.id);
        let number = line.and_then(|line| line.amount.number()).unwrap_or(0.0);
        let whole = (number / found.step).round();
        #[expect(
            clippy::cast_possible_truncation,
            reason = "a whole number of steps of a line"
        )]
        let steps = whole as i32;
        let is_whole = (number / found.step - whole).abs() < 1e-6;
        let is_inside = (found.range.low..=found.range.high).contains(&steps);
        (is_whole && is_inside).then_some(steps)
    };
    let point: Option<Vec<i32>> = answer.adjustable.iter().map(steps).collect();
    let nearby = point.and_then(|point| answer.nearby(book, &point));
    nearby.is_some_and(|nearby| nearby.obstacle.is_none())
}

/// Lines that may move and whose amount is another one than in the standard.
fn moved(answer: &Answer, balance: &Balance) -> usize {
    let number = |lines: &evensip::book::Resolved, id| {
        let line = lines.line(id);
        line.and_then(|line| line.amount.number()).unwrap_or(0.0)
    };
    answer
        .adjustable
        .iter()
        .filter(|found| {
            let (new, old) = (
                number(&balance.resolved, &found.line.id),
                number(&answer.standard.resolved, &found.line.id),
            );
            (new - old).abs() > 1e-9
        })
        .count()
}

/// A book in which nothing that is `gone` has a price.
fn without_prices(book: &Book, gone: impl Fn(&IngredientId) -> bool) -> Book {
    let mut left = book.clone();
    for item in book.ingredients.iter().filter(|item| gone(&item.id)) {
        let mut item = item.as_ref().clone();
        item.price = None;
        left.ingredients.put(item);
    }
    left
}

/// Less of what has a price and more of what has none would look cheaper, and is not.
#[test]
fn where_something_that_moves_has_no_price_the_other_prices_decide_nothing() {
    let mut seen = 0;
    for (book, full) in answers() {
        let listed = |book: &Book| -> Vec<_> {
            let answer = answer(book, &full.question).unwrap();
            let suggestions = answer.suggestions.into_iter();
            suggestions
                .map(|found| (found.kind, found.also, found.point))
                .collect()
        };
        let none = listed(&without_prices(&book, |_| true));
        for moving in &full.adjustable {
            let id = &moving.line.ingredient;
            if book.ingredient(id).is_none_or(|item| item.price.is_none()) {
                continue;
            }
            let one_less = listed(&without_prices(&book, |other| other == id));
            assert_eq!(
                one_less, none,
                "{:?} without a price of {id}",
                full.question
            );
            seen += 1;
        }
    }
    assert!(seen > 20, "{seen}");
}
