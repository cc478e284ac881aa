//! The lines of another shop's recipe in grams, the one unit that means the same in every shop.

use crate::balance::{Balance, LineShare, Slots, per_gram, portion};
use crate::book::{Amount, Book, Entry, Instruction, Line, LineId, MeasureKind, Resolved};
use crate::quantity::Grams;

/// What stands in the recipe of another shop.
#[derive(Clone, Debug, PartialEq)]
pub enum ForeignEntry {
    /// An ingredient, and what it weighs there. The amount of the line is the other shop's own and means nothing here.
    Line(Line, Grams),
    /// A sentence of method.
    Instruction(Instruction),
}

/// Why a line of another shop has no grams.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoGrams {
    /// It takes what the other lines leave in that shop's cup.
    Fills,
    /// The measure is not in the file.
    NoMeasure,
    /// The measure was weighed neither with the ingredient nor with water.
    NotWeighed,
    /// It is measured by volume, and the file does not say how dense the ingredient is.
    NoDensity,
    /// The ingredient is not in the file, and it is not measured in grams.
    NoIngredient,
    /// Less than nothing, or no number.
    NoAmount,
    /// Another line has the same id.
    SameId,
}

/// A line of another shop without grams.
#[derive(Clone, Debug, PartialEq)]
pub struct LineWithoutGrams {
    /// The line.
    pub line: LineId,
    /// Its ingredient, by name.
    pub ingredient: String,
    /// Its amount.
    pub amount: Amount,
    /// What the other shop measures it with, when it is counted.
    pub measure: Option<MeasureKind>,
    /// Why it has no grams.
    pub why: NoGrams,
}

/// The approved lines of another shop's recipe in grams, with the temperatures that its buttons and jugs give them.
///
/// Counts and millilitres are weighed as the other shop does, with its readings and densities, never with a measure of ours.
/// `approved` is the balance of the approved lines in that shop's book. Every line that has no grams is listed.
pub(super) fn in_grams(
    book: &Book,
    approved: &Balance,
) -> Result<Vec<ForeignEntry>, Vec<LineWithoutGrams>> {
    let mut entries: Vec<ForeignEntry> = Vec::new();
    let mut refused = Vec::new();
    for entry in &approved.resolved.entries {
        let line = match entry {
            Entry::Instruction(instruction) => {
                entries.push(ForeignEntry::Instruction(instruction.clone()));
                continue;
            }
            Entry::Line(line) => line,
        };
        match weighed(book, approved, line) {
            Ok((celsius, grams)) => {
                let mut line = line.clone();
                line.temperature = Some(celsius.into());
                entries.push(ForeignEntry::Line(line, grams));
            }
            Err(why) => refused.push(LineWithoutGrams {
                line: line.id.clone(),
                ingredient: book
                    .ingredient(&line.ingredient)
                    .map_or_else(|| line.ingredient.to_string(), |item| item.full_name()),
                amount: line.amount.clone(),
                measure: match &line.amount {
                    Amount::Count(_, id) => book.measure(id).map(|measure| measure.kind),
                    _ => None,
                },
                why,
            }),
        }
    }
    if refused.is_empty() {
        Ok(entries)
    } else {
        Err(refused)
    }
}

/// Temperature and mass of a line, as the other shop has it.
fn weighed(book: &Book, approved: &Balance, line: &Line) -> Result<(f64, Grams), NoGrams> {
    let same_id = |other: &&Line| other.id == line.id;
    if approved.resolved.lines().filter(same_id).count() > 1 {
        return Err(NoGrams::SameId);
    }
    let is_share = |share: &&LineShare| share.line == line.id && !share.carried;
    let share = approved.lines.iter().find(is_share);
    let celsius = share.map_or(book.settings.room_temperature.celsius(), |share| {
        share.celsius
    });
    let grams = grams_of(book, line, celsius)?;
    if let Some(carried) = &line.carried {
        Grams::new(carried.grams).ok_or(NoGrams::NoAmount)?;
    }
    Ok((celsius, grams))
}

fn grams_of(book: &Book, line: &Line, celsius: f64) -> Result<Grams, NoGrams> {
    let number = match &line.amount {
        Amount::Grams(grams) => return Grams::new(*grams).ok_or(NoGrams::NoAmount),
        Amount::FillTo(_) | Amount::FillToRim => return Err(NoGrams::Fills),
        Amount::Millilitres(number) | Amount::Count(number, _) => *number,
    };
    let ingredient = book
        .ingredient(&line.ingredient)
        .ok_or(NoGrams::NoIngredient)?;
    let is_weighed_with_it = if let Amount::Count(_, id) = &line.amount {
        let measure = book.measure(id).ok_or(NoGrams::NoMeasure)?;
        let is_weighed = measure.calibration(Some(&ingredient.id)).is_some();
        if !is_weighed && measure.calibration(None).is_none() {
            return Err(NoGrams::NotWeighed);
        }
        is_weighed
    } else {
        false
    };
    let says_density = ingredient.density.is_some()
        || ingredient.bulk_density.is_some()
        || !ingredient.composition.printed.is_empty();
    if !is_weighed_with_it && !says_density {
        return Err(NoGrams::NoDensity);
    }
    let mix = per_gram(ingredient, &mut Slots::default()).mix;
    let one = portion(book, ingredient, &mix, &line.amount, celsius).ok_or(NoGrams::NoDensity)?;
    Grams::new(number * one.grams).ok_or(NoGrams::NoAmount)
}

/// The lines with their grams as amounts; the rest as it was approved.
pub(super) fn lines_in_grams(approved: &Resolved, entries: &[ForeignEntry]) -> Resolved {
    let entries = entries.iter().map(|entry| match entry {
        ForeignEntry::Line(line, grams) => {
            let mut line = line.clone();
            line.amount = Amount::Grams(grams.value());
            Entry::Line(line)
        }
        ForeignEntry::Instruction(instruction) => Entry::Instruction(instruction.clone()),
    });
    Resolved {
        entries: entries.collect(),
        ..approved.clone()
    }
}
