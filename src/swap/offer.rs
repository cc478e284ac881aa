//! What comes near a level of sugar that whole measures miss: part of a measure, another measure, another sweetener.

use crate::balance::{Measurand, Slots, per_gram, portion};
use crate::book::{Amount, Book, IngredientId, Line, LineId, MeasureId, MeasureKind, Resolved, Role, Stage};
use crate::optimiser::Range;

use super::adapt::{Adapted, Origin};
use super::ladder::{off_level, rung, sweeteners};
use super::plain::add_line_for;
use super::question::Adjustable;

/// Parts of a press that a hand can tell (common practice, no source).
const PART: f64 = 0.5;

/// What a sweetener is weighed to, g (common practice, no source).
const WEIGHED_TO: f64 = 1.0;

/// Most uses of a measure that stand for another one.
const MOST_USES: f64 = 12.0;

/// By what a level is had that whole measures miss.
#[derive(Clone, Debug, PartialEq)]
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

/// A drink that comes near a level, and by what.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// By what.
    pub means: Means,
    /// The drink.
    pub drink: Adapted,
}

/// How the sweeteners of a level are measured. The default takes them as they stand, in their own steps.
#[derive(Clone, Copy, Default)]
pub(super) struct Whole<'means> {
    means: Option<(&'means Means, &'means LineId)>,
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
fn grams(book: &Book, line: &Line) -> Option<f64> {
    Some(line.amount.number()? * one_weighs(book, line, &line.amount)?)
}

/// What one unit of an amount weighs of the ingredient of a line, g.
fn one_weighs(book: &Book, line: &Line, amount: &Amount) -> Option<f64> {
    let item = book.ingredient(&line.ingredient)?;
    let mix = per_gram(item, &mut Slots::default()).mix;
    let celsius = line.temperature.unwrap_or(book.settings.room_temperature);
    let grams = portion(book, item, &mix, amount, celsius)?.grams;
    (grams > 0.0).then_some(grams)
}

/// The same weight of a line in another measure, to its whole steps.
fn in_measure(book: &Book, line: &Line, id: &MeasureId) -> Option<Amount> {
    let step = book.measure(id)?.step();
    let one = one_weighs(book, line, &Amount::Count(1.0, id.clone()))?;
    let uses = (grams(book, line)? / one / step).round().max(1.0) * step;
    Some(Amount::Count(uses, id.clone()))
}

/// The measure of the shop with the smallest step for what a line takes, smaller than the one that it has: one that was weighed
/// with it or, for what is liquid, a spoon.
fn finest_measure(book: &Book, line: &Line) -> Option<MeasureId> {
    let item = book.ingredient(&line.ingredient)?;
    let own = Adjustable::new(book, line, false)?;
    let own_step = own.step * one_weighs(book, line, &line.amount)?;
    let all = grams(book, line)?;
    let mut found: Vec<(f64, &MeasureId)> = Vec::new();
    for measure in &book.measures {
        let is_weighed = measure.calibration(Some(&line.ingredient)).is_some();
        let is_spoon = measure.kind == MeasureKind::Spoon && !item.form.is_dry();
        let amount = Amount::Count(1.0, measure.id.clone());
        if let Some(one) = one_weighs(book, line, &amount)
            && (is_weighed || is_spoon)
            && one * measure.step() < own_step * 0.99
            && all / one <= MOST_USES
        {
            found.push((one * measure.step(), &measure.id));
        }
    }
    let finest = found.into_iter().min_by(|a, b| a.0.total_cmp(&b.0));
    finest.map(|(_, id)| id.clone())
}

/// Plain sweeteners of the shop that the drink does not have and that a measure was weighed with.
fn other_sweetener(origin: &Origin<'_>) -> Option<IngredientId> {
    let book = origin.book;
    let used: Vec<&IngredientId> = origin.resolved.ingredients().collect();
    let is_weighed = |id: &IngredientId| {
        let mut measures = book.measures.iter();
        measures.any(|measure| measure.calibration(Some(id)).is_some())
    };
    let mut items = book.ingredients.iter();
    items
        .find(|item| {
            item.role == Role::Sweetener
                && item.composition.flavours.is_empty()
                && !used.contains(&&item.id)
                && is_weighed(&item.id)
        })
        .map(|item| item.id.clone())
}

/// What comes near a level of sugar that whole measures miss; each comes nearer than they do, and within a noticeable step.
pub(super) fn offers(
    origin: &Origin<'_>,
    percent: f64,
    aim: f64,
    whole: &Adapted,
) -> Vec<Offer> {
    let book = origin.book;
    // What sweetens most is what a level is measured by.
    let sugar = |line: &&Line| {
        let mut shares = origin.now.lines.iter();
        let share = shares.find(|share| share.line == line.id && !share.carried);
        share.and_then(|share| share.sugar).unwrap_or(0.0)
    };
    let of_measures = |line: &&Line| Adjustable::new(book, line, false).is_some();
    let main = sweeteners(&origin.resolved)
        .filter(of_measures)
        .max_by(|a, b| sugar(a).total_cmp(&sugar(b)));
    let Some(line) = main else {
        return Vec::new();
    };
    let sweetener = line.ingredient.clone();
    let mut means = Vec::new();
    if matches!(line.amount, Amount::Count(..)) {
        means.push(Means::PartOfMeasure {
            sweetener: sweetener.clone(),
        });
    }
    let measure = finest_measure(book, line);
    means.extend(measure.map(|measure| Means::OtherMeasure {
        sweetener: sweetener.clone(),
        measure,
    }));
    if !matches!(line.amount, Amount::Grams(_)) && grams(book, line).is_some() {
        means.push(Means::Scale { sweetener });
    }
    means.extend(other_sweetener(origin).map(|sweetener| Means::OtherSweetener { sweetener }));
    let mut offers: Vec<Offer> = Vec::new();
    for means in means {
        let measured = Whole {
            means: Some((&means, &line.id)),
        };
        let Ok(drink) = rung(origin, percent, measured) else {
            continue;
        };
        let is_near = off_level(&drink) <= 1.0 && is_nearer(aim, &drink, whole);
        let is_known = offers
            .iter()
            .any(|offer| offer.drink.balance.resolved == drink.balance.resolved);
        // The scale is for a shop that has no measure for it.
        let is_needless = matches!(means, Means::Scale { .. }) && !offers.is_empty();
        if is_near && !is_known && !is_needless {
            offers.push(Offer { means, drink });
        }
    }
    offers
}

/// Whether a drink is nearer to what is aimed at than whole measures bring it.
fn is_nearer(aim: f64, drink: &Adapted, whole: &Adapted) -> bool {
    let off = |drink: &Adapted| {
        let sweetness = drink.balance.figures.of[Measurand::Sweetness.slot()];
        (sweetness - aim).abs()
    };
    off(drink) + 1e-6 < off(whole)
}
