//! What is asked: which ingredient goes, which comes, and which lines may move.

use crate::book::{
    Amount, Book, Entry, IngredientId, Line, LineId, RecipeId, Resolved, Role, Stage, VersionId,
};
use crate::optimiser::Range;

use super::plain::add_line_for;

/// Step of an amount in grams, g (common practice, no source).
const GRAM_STEP: f64 = 1.0;

/// Step of an amount in millilitres, ml (common practice, no source).
const MILLILITRE_STEP: f64 = 5.0;

/// Most steps that a line may move over: forty half scoops are ten more than fill any cup.
const MOST_STEPS: i32 = 40;

/// A swap as it is asked.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Question {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version to start from; the recipe itself for `None`.
    pub version: Option<VersionId>,
    /// The ingredient that goes.
    pub replace: IngredientId,
    /// The ingredient that comes.
    pub with: IngredientId,
    /// Lines that may move, at most two; `None` chooses the swapped line and a sweetener.
    pub adjust: Option<Vec<LineId>>,
}

/// A line that may move, with its increments.
#[derive(Clone, Debug, PartialEq)]
pub struct Adjustable {
    /// The line as it is before it moves.
    pub line: Line,
    /// Whether the recipe does not have it yet.
    pub added: bool,
    /// One step, in the unit of its amount.
    pub step: f64,
    /// Whole steps from nothing to the most.
    pub range: Range,
}

impl Adjustable {
    /// A line with the increments of its measure; `None` for one that fills.
    pub fn new(book: &Book, line: &Line, added: bool) -> Option<Self> {
        if line.amount.fills() {
            return None;
        }
        let number = line.amount.number()?;
        let step = match &line.amount {
            Amount::Count(_, measure) => book.measure(measure)?.step(),
            Amount::Millilitres(_) => MILLILITRE_STEP,
            _ => GRAM_STEP,
        };
        let now = steps_in(number, step);
        // From none to twice what there is, and some more for what is little.
        let high = (now * 2 + 4).clamp(6, MOST_STEPS.max(now));
        let low = if high > MOST_STEPS { high - MOST_STEPS } else { 0 };
        Some(Self { line: line.clone(), added, step, range: Range { low, high } })
    }

    /// The amount at a number of steps.
    pub fn amount(&self, steps: i32) -> Amount {
        self.line.amount.with_number(f64::from(steps) * self.step)
    }
}

#[expect(clippy::cast_possible_truncation, reason = "amounts are below 10 000, steps above 0.01")]
fn steps_in(number: f64, step: f64) -> i32 {
    (number / step).ceil() as i32
}

/// The lines that a question lets move: those that it names or, by default, the swapped line and the first sweetener;
/// when the drink has none, the house sweetener that could be added.
pub fn adjustable_lines(book: &Book, question: &Question, plain: &Resolved, swapped: &[LineId]) -> Vec<Adjustable> {
    let existing = |line: &Line| Adjustable::new(book, line, false);
    if let Some(named) = &question.adjust {
        return plain.lines().filter(|line| named.contains(&line.id)).filter_map(existing).take(2).collect();
    }
    let mut lines: Vec<Adjustable> =
        plain.lines().filter(|line| swapped.contains(&line.id)).filter_map(existing).take(1).collect();
    let sweetener =
        plain.lines().find(|line| line.role == Role::Sweetener && !swapped.contains(&line.id)).and_then(existing);
    lines.extend(sweetener.or_else(|| house_sweetener(book, question, plain)));
    lines
}

/// A sweetener of the shop that the drink does not have, at none: the first that a measure has been weighed with.
fn house_sweetener(book: &Book, question: &Question, plain: &Resolved) -> Option<Adjustable> {
    let used: Vec<&IngredientId> = plain.lines().map(|line| &line.ingredient).collect();
    if plain.lines().any(|line| line.role == Role::Sweetener) {
        return None;
    }
    let candidate = book.ingredients.iter().find(|ingredient| {
        ingredient.role == Role::Sweetener
            && ingredient.id != question.replace
            && !used.contains(&&ingredient.id)
            && book.measures.iter().any(|measure| measure.calibration(Some(&ingredient.id)).is_some())
    })?;
    let taken = |id: &LineId| plain.entries.iter().any(|entry: &Entry| entry.id() == id);
    let line = add_line_for(book, candidate, Role::Sweetener, Stage::Mixed, taken);
    Adjustable::new(book, &line, true)
}
