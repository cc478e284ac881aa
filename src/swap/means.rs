//! By what a sweetener is measured for a level of sugar: by its own measure, part of it, another one, the scale.

use crate::balance::one_weighs;
use crate::book::{Amount, Book, IngredientId, Line, LineId, MeasureId, Resolved, Role, Stage};
use crate::optimiser::Range;

use super::adapt::Origin;
use super::plain::add_line_for;
use super::question::Adjustable;

/// Parts of a press that a hand can tell (common practice, no source).
const PART: f64 = 0.5;

/// What a sweetener is weighed to, g (common practice, no source).
const WEIGHED_TO: f64 = 1.0;

/// By what a level is had that whole measures miss.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Means {
    /// Half a use of the measure that it has.
    PartOfMeasure {
        /// What sweetens.
        sweetener: IngredientId,
    },
    /// Another measure of the shop.
    OtherMeasure {
        /// What sweetens.
        sweetener: IngredientId,
        /// The measure.
        measure: MeasureId,
    },
    /// The scale.
    Scale {
        /// What sweetens.
        sweetener: IngredientId,
    },
    /// Another sweetener of the shop beside it.
    OtherSweetener {
        /// That sweetener.
        sweetener: IngredientId,
    },
}

/// How the sweeteners of a level are measured. The default takes them as they stand, in their own steps.
#[derive(Clone, Copy, Default)]
pub(super) struct Whole<'means> {
    /// Another means, and the line that it is for.
    pub(super) means: Option<(&'means Means, &'means LineId)>,
}

impl Whole<'_> {
    /// A line as it is measured.
    pub(super) fn line(&self, book: &Book, line: &Line) -> Line {
        let amount = match self.means {
            Some((Means::OtherMeasure { measure, .. }, id)) if *id == line.id => {
                in_measure(book, line, measure)
            }
            Some((Means::Scale { .. }, id)) if *id == line.id => {
                grams(book, line).map(|grams| Amount::Grams(grams.round()))
            }
            _ => None,
        };
        Line {
            amount: amount.unwrap_or_else(|| line.amount.clone()),
            ..line.clone()
        }
    }

    /// The step of a line.
    pub(super) fn step(&self, found: &Adjustable) -> f64 {
        match self.means {
            Some((Means::PartOfMeasure { .. }, id)) if *id == found.line.id => found.step * PART,
            Some((Means::Scale { .. }, id)) if *id == found.line.id => WEIGHED_TO,
            _ => found.step,
        }
    }

    /// A sweetener that comes beside those that are there.
    pub(super) fn added(&self, origin: &Origin<'_>, lines: &Resolved) -> Option<Adjustable> {
        let Some((Means::OtherSweetener { sweetener }, _)) = self.means else {
            return None;
        };
        let item = origin.book.ingredient(sweetener)?;
        let taken = |id: &LineId| origin.recipe.has_entry_id(id) || lines.has_entry(id);
        let line = add_line_for(origin.book, item, Role::Sweetener, Stage::Mixed, taken);
        let mut found = Adjustable::new(origin.book, &line, true)?;
        found.range = Range { low: 0, high: 12 };
        Some(found)
    }
}

/// What a line weighs, g.
pub(super) fn grams(book: &Book, line: &Line) -> Option<f64> {
    Some(line.amount.number()? * unit_weighs(book, line, &line.amount)?)
}

/// What one unit of an amount weighs of the ingredient of a line, g.
pub(super) fn unit_weighs(book: &Book, line: &Line, amount: &Amount) -> Option<f64> {
    let item = book.ingredient(&line.ingredient)?;
    let stated = line.temperature;
    let celsius = stated.unwrap_or(book.settings.room_temperature).celsius();
    one_weighs(book, item, amount, celsius)
}

/// The same weight of a line in another measure, to its whole steps.
fn in_measure(book: &Book, line: &Line, id: &MeasureId) -> Option<Amount> {
    let step = book.measure(id)?.step();
    let one = unit_weighs(book, line, &Amount::Count(1.0, id.clone()))?;
    let uses = (grams(book, line)? / one / step).round().max(1.0) * step;
    Some(Amount::Count(uses, id.clone()))
}
