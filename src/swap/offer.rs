//! What comes near a level of sugar that whole measures miss: part of a measure, another measure, another sweetener.

use crate::balance::Measurand;
use crate::book::{Amount, Book, IngredientId, Line, MeasureId, MeasureKind, Role};

use super::adapt::{Adapted, Origin};
use super::at_level::{off_level, rung, sweeteners};
use super::means::{Means, Whole, grams, unit_weighs};
use super::question::Adjustable;

/// Most uses of a measure that stand for another one.
const MOST_USES: f64 = 12.0;

/// A drink that comes near a level, and by what.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// By what.
    pub means: Means,
    /// The drink.
    pub drink: Adapted,
}

/// The measure of the shop with the smallest step for what a line takes, smaller than the one that it has: one that was weighed
/// with it or, for what is liquid, a spoon.
fn finest_measure(book: &Book, line: &Line) -> Option<MeasureId> {
    let item = book.ingredient(&line.ingredient)?;
    let own = Adjustable::new(book, line, false)?;
    let own_step = own.step * unit_weighs(book, line, &line.amount)?;
    let all = grams(book, line)?;
    let mut found: Vec<(f64, &MeasureId)> = Vec::new();
    for measure in &book.measures {
        let is_weighed = measure.calibration(Some(&line.ingredient)).is_some();
        let is_spoon = measure.kind == MeasureKind::Spoon && !item.form.is_dry();
        let amount = Amount::Count(1.0, measure.id.clone());
        if let Some(one) = unit_weighs(book, line, &amount)
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
                && !item.no_longer_sold
                && item.composition.flavours.is_empty()
                && !used.contains(&&item.id)
                && is_weighed(&item.id)
        })
        .map(|item| item.id.clone())
}

/// What comes near a level of sugar that whole measures miss; each comes nearer than they do, and within a noticeable step.
pub(super) fn offers(origin: &Origin<'_>, percent: f64, aim: f64, whole: &Adapted) -> Vec<Offer> {
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
        // The scale is for a shop that has no measure for it.
        if matches!(means, Means::Scale { .. }) && !offers.is_empty() {
            continue;
        }
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
        if is_near && !is_known {
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
