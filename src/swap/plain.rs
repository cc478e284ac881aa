//! The plain swap: the other ingredient by equal measures, before anything is brought back.

use crate::balance::{Component, Mix, Slots, per_gram, portion};
use crate::book::{
    Amount, Book, Form, Ingredient, IngredientId, Line, LineId, Measure, MeasureKind, Resolved,
    Role, Stage,
};

/// The lines with one ingredient replaced by another, and which lines those are.
///
/// Equal measures: two scoops stay two scoops, with the scoop or pump that goes with the new ingredient when the shop has
/// weighed one of the same kind. Nobody pumps a powder or scoops milk: where a measure means nothing for the new ingredient,
/// the amount follows equal fat or, without fat in both, equal dry matter, in a measure that was weighed with it, else to
/// the next 5 ml or 1 g. What goes and comes back is the product as it is now: it stays in its own measures.
pub fn plain_swap(
    book: &Book,
    resolved: &Resolved,
    replace: &IngredientId,
    with: &IngredientId,
) -> (Resolved, Vec<LineId>) {
    let mut plain = resolved.clone();
    let mut swapped = Vec::new();
    for entry in &mut plain.entries {
        if let crate::book::Entry::Line(line) = entry
            && line.ingredient == *replace
        {
            swapped.push(line.id.clone());
            if replace != with {
                swap_line(book, line, with);
            }
        }
    }
    (plain, swapped)
}

fn swap_line(book: &Book, line: &mut Line, with: &IngredientId) {
    let (old, new) = (book.ingredient(&line.ingredient), book.ingredient(with));
    line.ingredient = with.clone();
    let (Some(old), Some(new)) = (old, new) else {
        return;
    };
    if (old.form == Form::Ice) != (new.form == Form::Ice) {
        // Ice does not come at the temperature of the water that it stands for, nor water at that of ice.
        line.temperature = None;
    }
    if let Amount::Count(count, id) = &line.amount
        && let Some(measure) = book.measure(id)
        && (old.form.is_dry() == new.form.is_dry() || measure.kind == MeasureKind::Spoon)
    {
        let better = measure_for(book, new, measure.kind, Some(measure));
        let is_weighed = |measure: &Measure| measure.calibration(Some(&new.id)).is_some();
        if measure.kind == MeasureKind::Piece && !better.is_some_and(is_weighed) {
            // Nobody knows what a piece of the new one weighs: as much of it by mass.
            if let Some(piece) = measure.calibration(Some(&old.id)) {
                line.amount = Amount::Grams(count * piece.grams);
            }
            return;
        }
        line.amount = Amount::Count(
            *count,
            better.map_or_else(|| id.clone(), |better| better.id.clone()),
        );
        return;
    }
    if old.form.is_dry() == new.form.is_dry() {
        return;
    }
    if let Some(amount) = by_substance(book, line, old, new) {
        line.amount = amount;
    }
}

/// Grams that may stand for one gram of something dry: milk for creamer powder is some ten.
const MOST_FOR_ONE_GRAM: f64 = 15.0;

/// The amount of a liquid that stands for a dry ingredient, or the other way round.
fn by_substance(book: &Book, line: &Line, old: &Ingredient, new: &Ingredient) -> Option<Amount> {
    let mut slots = Slots::default();
    let (from, to) = (per_gram(old, &mut slots).mix, per_gram(new, &mut slots).mix);
    let stated = line.temperature;
    let celsius = stated.unwrap_or(book.settings.room_temperature).celsius();
    let grams = line.amount.number()? * portion(book, old, &from, &line.amount, celsius)?.grams;
    let substance = |mix: &Mix| {
        let fat = mix.get(Component::Fat);
        if from.get(Component::Fat) > 0.0 && to.get(Component::Fat) > 0.0 {
            fat
        } else {
            mix.dry_matter()
        }
    };
    let wanted = grams * substance(&from) / substance(&to);
    // Tea for creamer, say: nobody means litres, so the same grams stand in and the level shows what is lost.
    let wanted = if wanted <= grams * MOST_FOR_ONE_GRAM {
        wanted
    } else {
        grams
    };
    if let Some(measure) = book
        .measures
        .iter()
        .find(|measure| measure.calibration(Some(&new.id)).is_some())
    {
        let one = portion(
            book,
            new,
            &to,
            &Amount::Count(1.0, measure.id.clone()),
            celsius,
        )?
        .grams;
        let count = (wanted / one / measure.step()).round() * measure.step();
        return Some(Amount::Count(count, measure.id.clone()));
    }
    if new.form.is_dry() {
        return Some(Amount::Grams(wanted.round()));
    }
    let density = portion(book, new, &to, &Amount::Millilitres(1.0), celsius)?.grams;
    Some(Amount::Millilitres((wanted / density / 5.0).round() * 5.0))
}

/// The measure of a kind that goes with an ingredient: one that was weighed with it, `current` first; `None` when there is
/// none and the current one stays.
pub fn measure_for<'book>(
    book: &'book Book,
    ingredient: &Ingredient,
    kind: MeasureKind,
    current: Option<&'book Measure>,
) -> Option<&'book Measure> {
    let weighed = |measure: &&Measure| measure.calibration(Some(&ingredient.id)).is_some();
    current.filter(weighed).or_else(|| {
        book.measures
            .iter()
            .map(AsRef::as_ref)
            .filter(|measure| measure.kind == kind)
            .find(weighed)
    })
}

/// A line for an ingredient that a recipe does not have yet, with none of it: in the measure that was weighed with it, else
/// in millilitres or grams.
pub fn add_line_for(
    book: &Book,
    ingredient: &Ingredient,
    role: Role,
    stage: Stage,
    taken: impl Fn(&LineId) -> bool,
) -> Line {
    let weighed = book
        .measures
        .iter()
        .find(|measure| measure.calibration(Some(&ingredient.id)).is_some());
    let amount = match weighed {
        Some(measure) => Amount::Count(0.0, measure.id.clone()),
        None if ingredient.form.is_dry() => Amount::Grams(0.0),
        None => Amount::Millilitres(0.0),
    };
    Line {
        id: LineId::from_name(ingredient.id.as_str(), taken),
        ingredient: ingredient.id.clone(),
        amount,
        temperature: None,
        role,
        stage,
        carried: None,
        note: String::new(),
    }
}
