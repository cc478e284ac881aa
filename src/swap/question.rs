//! What is asked: which ingredient goes, which comes, and which lines may move.

use crate::book::{
    Amount, Book, Entry, IngredientId, Line, LineId, RecipeId, Resolved, Role, Stage, VersionId,
};
use crate::optimiser::Range;

use super::demands::Demands;
use super::plain::add_line_for;

/// Step of an amount in grams, g (common practice, no source).
const GRAM_STEP: f64 = 1.0;

/// Step of an amount in millilitres, ml (common practice, no source).
const MILLILITRE_STEP: f64 = 5.0;

/// Most steps that a line may move over: forty half scoops are ten more than fill any cup.
const MOST_STEPS: i32 = 40;

/// Most lines that move by default: more than a person changes in one drink.
const MOST_LINES: usize = 8;

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
    /// Lines that may move; `None` chooses the swapped lines, sweeteners, creamer, water and tea.
    pub adjust: Option<Vec<LineId>>,
}

impl Question {
    /// Whether nothing is swapped: what goes comes back as it is now, and the drink is brought back to its standard.
    pub fn brings_back(&self) -> bool {
        self.replace == self.with
    }
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
    /// The whole steps that it may take.
    pub range: Range,
}

impl Adjustable {
    /// A line with the increments of its measure, from none to twice what there is; `None` for one that fills.
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
        let mut adjustable = Self {
            line: line.clone(),
            added,
            step: step.max(1e-3),
            range: Range { low: 0, high: 0 },
        };
        adjustable.range = adjustable.usual_range(number);
        Some(adjustable)
    }

    /// From none to twice what there is and some more for what is little or, where that is much, as far up as down.
    fn usual_range(&self, number: f64) -> Range {
        let now = steps_in(number, self.step);
        let high = now.saturating_mul(2).saturating_add(4).max(6);
        if high <= MOST_STEPS {
            return Range { low: 0, high };
        }
        let low = (now - MOST_STEPS / 2).max(0);
        Range {
            low,
            high: low.saturating_add(MOST_STEPS),
        }
    }

    /// The amount at a number of steps.
    pub fn amount(&self, steps: i32) -> Amount {
        self.line.amount.with_number(f64::from(steps) * self.step)
    }

    /// Narrows it to what is demanded of its line.
    fn limited(mut self, demands: &Demands) -> Self {
        for limit in demands
            .limits
            .iter()
            .filter(|limit| limit.line == self.line.id)
        {
            if let Some(increment) = limit.increment.filter(|increment| *increment > 1e-3) {
                self.step = increment;
                self.range = self.usual_range(self.line.amount.number().unwrap_or(0.0));
            }
            if let Some(least) = limit.least {
                self.range.low = steps_in(least - 1e-9, self.step).max(0);
            }
            if let Some(most) = limit.most {
                self.range.high = -steps_in(-most - 1e-9, self.step);
            }
        }
        // What gives a drink its name is not left out; a sweetener may be.
        let may_leave_out =
            self.line.role == Role::Sweetener && demands.may_leave_out_sweetener || self.added;
        if !may_leave_out {
            self.range.low = self.range.low.max(1);
        }
        self
    }
}

/// Steps up to a number, rounded up.
#[expect(
    clippy::cast_possible_truncation,
    reason = "amounts are below 10 000, steps above 0.001"
)]
pub(super) fn steps_in(number: f64, step: f64) -> i32 {
    (number / step - 1e-9).ceil() as i32
}

/// The lines that a question lets move, without further demands.
pub fn adjustable_lines(
    book: &Book,
    question: &Question,
    plain: &Resolved,
    swapped: &[LineId],
) -> Vec<Adjustable> {
    adjustable_lines_with(book, question, &Demands::default(), plain, swapped)
}

/// The lines that may move: those that the question names or, by default, the swapped ones, sweeteners, creamer, water and
/// tea, and a sweetener of the house that could be added where nothing else sweetens.
pub(super) fn adjustable_lines_with(
    book: &Book,
    question: &Question,
    demands: &Demands,
    plain: &Resolved,
    swapped: &[LineId],
) -> Vec<Adjustable> {
    let by_default = |line: &Line| {
        let role = matches!(
            line.role,
            Role::Sweetener | Role::Creamer | Role::Water | Role::Tea
        );
        swapped.contains(&line.id) || (role && line.stage == Stage::Mixed)
    };
    let chosen = |line: &Line| match &question.adjust {
        Some(named) => named.contains(&line.id),
        None => by_default(line),
    };
    // A line of nothing is not in the drink yet, and must not bring in what the drink may not hold.
    let stays_out =
        |line: &Line| line.amount.is_nothing() && !demands.admit_ingredient(book, &line.ingredient);
    let may_move = |line: &&Line| {
        !demands.locked.contains(&line.id)
            && (chosen(line) || demands.unlocked.contains(&line.id))
            && !stays_out(line)
    };
    let mut lines: Vec<&Line> = plain.lines().filter(may_move).collect();
    // Where there are too many, the swapped lines and what sweetens come first; the order of the recipe stays.
    if lines.len() > MOST_LINES && question.adjust.is_none() {
        let mut ranked: Vec<&Line> = lines.clone();
        ranked.sort_by_key(|line| (!swapped.contains(&line.id), line.role != Role::Sweetener));
        ranked.truncate(MOST_LINES);
        lines.retain(|line| ranked.iter().any(|kept| kept.id == line.id));
    }
    lines.truncate(crate::optimiser::MOST_VARIABLES - 1);
    let mut adjustable: Vec<Adjustable> = lines
        .into_iter()
        .filter_map(|line| Adjustable::new(book, line, false))
        .map(|adjustable| adjustable.limited(demands))
        .collect();
    if question.adjust.is_none() && demands.may_add_sweetener {
        let added = house_sweetener(book, question, plain, swapped, demands);
        adjustable.extend(added.map(|adjustable| adjustable.limited(demands)));
    }
    adjustable
}

/// A plain sweetener of the shop that the drink does not have, at none: the first that a measure has been weighed with.
fn house_sweetener(
    book: &Book,
    question: &Question,
    plain: &Resolved,
    swapped: &[LineId],
    demands: &Demands,
) -> Option<Adjustable> {
    // A swapped syrup that carries a flavour can't set sweetness and flavour apart; anything else that sweetens can.
    let sweetens = |line: &Line| {
        let flavoured = |id: &IngredientId| {
            book.ingredient(id)
                .is_some_and(|item| !item.composition.flavours.is_empty())
        };
        line.role == Role::Sweetener && !(swapped.contains(&line.id) && flavoured(&line.ingredient))
    };
    if plain.lines().any(sweetens) {
        return None;
    }
    let candidate = book.ingredients.iter().find(|ingredient| {
        ingredient.role == Role::Sweetener
            && !ingredient.no_longer_sold
            && ingredient.id != question.replace
            && ingredient.composition.flavours.is_empty()
            && ingredient.composition.high_potency.is_empty()
            && !plain.lines().any(|line| line.ingredient == ingredient.id)
            && book
                .measures
                .iter()
                .any(|measure| measure.calibration(Some(&ingredient.id)).is_some())
            && demands.admit_ingredient(book, &ingredient.id)
    })?;
    let taken = |id: &LineId| plain.entries.iter().any(|entry: &Entry| entry.id() == id);
    let line = add_line_for(book, candidate, Role::Sweetener, Stage::Mixed, taken);
    Adjustable::new(book, &line, true)
}
