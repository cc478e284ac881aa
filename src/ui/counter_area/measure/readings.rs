//! The readings of a measure as a table: what, how many uses together, what the scale or the jug said, and when.

use egui::{Button, ScrollArea, Ui};

use crate::book::{Ingredient, IngredientId, Measure, Reading, ReadingAmount};
use crate::edit::{FieldName, Focus};
use crate::quantity::{TypedAmount, TypedUnit, parse_amounts};
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::counter_area::state::{NextReadings, NextWeighed};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::grid;
use crate::ui::widgets::form::{
    Entry, Sheet, cell_ui, in_unit, number_heading_ui, plain, read_date, section_ui, words_ui,
};
use crate::ui::widgets::word_menu_ui;

/// Widths of what, uses, what was read and day, in points.
const WHAT: f32 = 45.0 * grid::STEP;
const USES: f32 = 15.0 * grid::STEP;
const READ: f32 = 18.0 * grid::STEP;
const DAY: f32 = 24.0 * grid::STEP;

/// Uses that a first reading weighs together (common practice, no source).
const FIRST_USES: u32 = 10;

/// The readings, and above them, where nothing moves, the fields in which more are typed.
pub(super) fn readings_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Measure>,
    before: &Measure,
    next: &mut NextReadings,
) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-readings"));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        words_ui(ui, speaker.word("counter-reading-of"), WHAT);
        number_heading_ui(ui, &speaker.uses_word(before.kind), USES);
        number_heading_ui(ui, speaker.word("counter-reading-amount"), READ);
        ui.add_space(grid::EASY);
        words_ui(ui, speaker.word("counter-reading-day"), DAY);
    });
    next_ui(ui, counter, sheet, before, next);
    for (at, reading) in before.readings.iter().enumerate() {
        if !reading_ui(ui, counter, sheet, reading, at) {
            let gone = FieldName::at("reading-of", at);
            sheet.change(gone, |item| drop(item.readings.remove(at)));
            for place in at..before.readings.len() {
                for column in ["reading-uses", "reading-amount", "reading-day"] {
                    sheet.forget_draft(FieldName::at(column, place));
                }
            }
            break;
        }
    }
    if !before.readings.is_empty() {
        copy_ui(ui, speaker.word("counter-readings-table"), || {
            as_table(counter, before)
        });
    }
}

/// What the readings are of that come next, how many uses each is, and the readings themselves, one or several in one go.
fn next_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Measure>,
    before: &Measure,
    next: &mut NextReadings,
) {
    let speaker = counter.speaker;
    if next.of.as_ref() != Some(&before.id) {
        *next = NextReadings {
            of: Some(before.id.clone()),
            ..NextReadings::default()
        };
    }
    let last = before.readings.last();
    // A measure that nobody has weighed begins with water, which gives its volume.
    let of_last = || last.and_then(|last| last.ingredient.clone());
    let ingredient = match &next.weighed {
        NextWeighed::AsBefore => of_last(),
        NextWeighed::Water => None,
        NextWeighed::Ingredient(id) => Some(id.clone()),
    };
    let uses = next.uses;
    let uses = uses.unwrap_or_else(|| last.map_or(FIRST_USES, |last| last.uses));
    let unit = last.map_or(ReadingAmount::Grams(0.0), |last| last.amount);
    let mut read = None;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        cell_ui(ui, WHAT, |ui| {
            let focus = sheet.focus("next-reading-of");
            let name = speaker.word("counter-next-reading-of-named");
            let taken = what_ui(ui, counter, &focus, ingredient.as_ref(), name);
            if taken != ingredient {
                next.weighed = taken.map_or(NextWeighed::Water, NextWeighed::Ingredient);
            }
        });
        let name = speaker.word("counter-next-reading-uses-named");
        let spot = Entry::number("next-reading-uses", name).width(USES);
        let taken = sheet.ask(ui, &spot, &uses.to_string(), |text| {
            read_uses(speaker, text)
        });
        next.uses = taken.or(next.uses);
        let name = speaker.word("counter-reading-add");
        let spot = Entry::wide("reading", name)
            .width(READ + grid::EASY + DAY + grid::TARGET)
            .hint(speaker.word("counter-reading-add-hint"));
        read = sheet.take(ui, &spot, |text| read_amounts(speaker, text, unit));
    });
    sheet.errors_ui(ui, WHAT);
    if let Some(amounts) = read {
        let date = Some(crate::workbench::today());
        let readings = amounts.into_iter().map(|amount| Reading {
            ingredient: ingredient.clone(),
            uses,
            amount,
            date: date.clone(),
        });
        sheet.change("reading", |item| item.readings.extend(readings));
    }
}

/// The readings for a spreadsheet; one that nobody has weighed yet has no mass.
fn as_table(counter: Counter<'_>, measure: &Measure) -> Table {
    let speaker = counter.speaker;
    let volume = speaker.units.of("ml");
    let mass_head = spreadsheet::head(speaker.word("counter-reading-mass"), "g");
    let volume_head = spreadsheet::head(speaker.word("counter-reading-volume"), volume.symbol);
    let uses = speaker.uses_word(measure.kind);
    let is_volume = |reading: &Reading| matches!(reading.amount, ReadingAmount::Millilitres(_));
    let has_volumes = measure.readings.iter().any(is_volume);
    let mut heads = vec![speaker.word("counter-reading-of"), &uses, &mass_head];
    heads.extend(has_volumes.then_some(volume_head.as_str()));
    heads.push(speaker.word("counter-reading-day"));
    let mut table = Table::new(heads);
    let figure = |shown: Option<String>| {
        let shown = shown.filter(|shown| shown != "0").unwrap_or_default();
        Cell::figure(&speaker.digits(&shown))
    };
    for reading in &measure.readings {
        let (mass, millilitres) = match reading.amount {
            ReadingAmount::Grams(grams) => (Some(plain(grams)), None),
            ReadingAmount::Millilitres(number) => (None, Some(in_unit(&volume, number))),
        };
        let mut cells = vec![
            Cell::words(&weighed(speaker, reading.ingredient.as_ref())),
            Cell::figure(&reading.uses.to_string()),
            figure(mass),
        ];
        cells.extend(has_volumes.then(|| figure(millilitres)));
        cells.push(Cell::words(reading.date.as_deref().unwrap_or_default()));
        table.row(cells);
    }
    table
}

/// One reading; `false` when it is to go.
fn reading_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Measure>,
    reading: &Reading,
    at: usize,
) -> bool {
    let speaker = counter.speaker;
    let mut stays = true;
    let number = at + 1;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        cell_ui(ui, WHAT, |ui| {
            let field = FieldName::at("reading-of", at);
            let name = say!(speaker, "counter-reading-of-named", number: number);
            let focus = sheet.focus(field.clone());
            let ingredient = what_ui(ui, counter, &focus, reading.ingredient.as_ref(), &name);
            if ingredient != reading.ingredient {
                sheet.change(field, |item| item.readings[at].ingredient = ingredient);
            }
        });
        let (field, name) = (
            FieldName::at("reading-uses", at),
            say!(speaker, "counter-reading-uses-named", number: number),
        );
        let spot = Entry::number(field, &name).width(USES);
        sheet.read(
            ui,
            &spot,
            &reading.uses.to_string(),
            |text| read_uses(speaker, text),
            |item, uses| {
                item.readings[at].uses = uses;
            },
        );
        let (field, name) = (
            FieldName::at("reading-amount", at),
            say!(speaker, "counter-reading-amount-named", number: number),
        );
        let spot = Entry::number(field, &name)
            .width(READ)
            .hint(speaker.word("counter-reading-weigh"));
        sheet.read(
            ui,
            &spot,
            &amount_words(speaker, reading.amount),
            |text| read_one_amount(speaker, text, reading.amount),
            |item, amount| {
                item.readings[at].amount = amount;
            },
        );
        ui.add_space(grid::NEAR);
        let (field, name) = (
            FieldName::at("reading-day", at),
            say!(speaker, "counter-reading-day-named", number: number),
        );
        let shown = reading.date.clone().unwrap_or_default();
        let spot = Entry::number(field, &name).width(DAY).hint("2026-05-04");
        sheet.read(
            ui,
            &spot,
            &shown,
            |text| read_date(speaker, text),
            |item, date| {
                item.readings[at].date = date;
            },
        );
        let words = say!(speaker, "counter-reading-remove", number: number);
        stays = !icon_button(ui, Icon::Delete, &words, &words).clicked();
    });
    sheet.errors_ui(ui, WHAT);
    stays
}

/// Most ingredients that the menu lists; the others are found with their first letters at the counter's list.
const MOST_LISTED: usize = 400;

/// The name of what is weighed: an ingredient, or water (`None`).
pub(super) fn weighed(speaker: Speaker<'_>, ingredient: Option<&IngredientId>) -> String {
    let water = || speaker.word("counter-water").to_owned();
    ingredient.map_or_else(water, |id| speaker.ingredient(id))
}

/// What is weighed as it is after this frame: water (`None`), or an ingredient.
fn what_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    focus: &Focus,
    ingredient: Option<&IngredientId>,
    name: &str,
) -> Option<IngredientId> {
    let word = weighed(counter.speaker, ingredient);
    let mut taken = ingredient.cloned();
    word_menu_ui(ui, focus, name, &word, |ui| {
        ScrollArea::vertical()
            .max_height(90.0 * grid::STEP)
            .show(ui, |ui| {
                let water = counter.speaker.word("counter-water");
                if ui
                    .add(Button::selectable(ingredient.is_none(), water))
                    .clicked()
                {
                    taken = None;
                }
                for one in counter.book.ingredients.iter().take(MOST_LISTED) {
                    let chosen = ingredient == Some(&one.id);
                    if ui
                        .add(Button::selectable(chosen, Ingredient::full_name(one)))
                        .clicked()
                    {
                        taken = Some(one.id.clone());
                    }
                }
            });
    });
    taken
}

/// As it is typed into a field; nothing where nobody has read anything yet.
fn amount_words(speaker: Speaker<'_>, amount: ReadingAmount) -> String {
    if amount.number() == 0.0 {
        return String::new();
    }
    let (digits, symbol) = match amount {
        ReadingAmount::Grams(grams) => (plain(grams), "g"),
        ReadingAmount::Millilitres(millilitres) => {
            let unit = speaker.units.of("ml");
            (in_unit(&unit, millilitres), unit.symbol)
        }
    };
    format!("{} {symbol}", speaker.digits(&digits))
}

fn read_uses(speaker: Speaker<'_>, text: &str) -> Result<u32, String> {
    let text = text.trim();
    match text.parse() {
        Ok(uses) if (1..=10_000).contains(&uses) => Ok(uses),
        _ => Err(say!(speaker, "counter-error-uses", found: text)),
    }
}

/// One reading or several; a bare number is in the unit of `usual`.
fn read_amounts(
    speaker: Speaker<'_>,
    text: &str,
    usual: ReadingAmount,
) -> Result<Vec<ReadingAmount>, String> {
    let amounts = parse_amounts(text).map_err(|error| speaker.amount_text_error(&error))?;
    let read = |TypedAmount { number, unit }| {
        let amount = match (unit, usual) {
            (TypedUnit::Grams, _) | (TypedUnit::None, ReadingAmount::Grams(_)) => {
                ReadingAmount::Grams(number)
            }
            (TypedUnit::Millilitres, _) => ReadingAmount::Millilitres(number),
            (TypedUnit::None, ReadingAmount::Millilitres(_)) => {
                ReadingAmount::Millilitres(speaker.units.of("ml").kept(number))
            }
            _ => return None,
        };
        (number > 0.0).then_some(amount)
    };
    let read = amounts.into_iter().map(read).collect::<Option<Vec<_>>>();
    read.ok_or_else(|| say!(speaker, "counter-error-reading", found: text.trim()))
}

fn read_one_amount(
    speaker: Speaker<'_>,
    text: &str,
    usual: ReadingAmount,
) -> Result<ReadingAmount, String> {
    match read_amounts(speaker, text, usual)?.as_slice() {
        [amount] => Ok(*amount),
        _ => Err(say!(speaker, "counter-error-one-reading", found: text.trim())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_are_read_with_a_decimal_comma_and_never_as_nothing() {
        let speaker = Speaker::without_book();
        let (grams, millilitres) = (ReadingAmount::Grams, ReadingAmount::Millilitres);
        let read = |text: &str| read_amounts(speaker, text, grams(0.0));
        assert_eq!(read("124,7"), Ok(vec![grams(124.7)]));
        assert_eq!(read("43.6 g"), Ok(vec![grams(43.6)]));
        assert_eq!(read("0.12 kg"), Ok(vec![grams(120.0)]));
        assert_eq!(read("8.9 9,1 8.8"), Ok([8.9, 9.1, 8.8].map(grams).to_vec()));
        assert_eq!(read("7.6 7.8 ml"), Ok([7.6, 7.8].map(millilitres).to_vec()));
        let after_volumes = read_amounts(speaker, "7.6 0.77 cl 7 g", millilitres(7.7));
        assert_eq!(
            after_volumes,
            Ok(vec![millilitres(76.0), millilitres(7.7), grams(7.0)])
        );
        for text in ["0", "", "-3", "2 scoops", "8.9 0 9", "to the rim", "plenty"] {
            assert!(read(text).is_err(), "{text}");
        }
        let one = |text: &str| read_one_amount(speaker, text, grams(0.0));
        assert_eq!(one("8.9"), Ok(grams(8.9)));
        assert!(one("8.9 9.1").is_err());
        let uses = |text: &str| read_uses(speaker, text);
        assert_eq!(uses("10"), Ok(10));
        assert!(uses("0").is_err() && uses("2.5").is_err() && uses("").is_err());
    }
}
