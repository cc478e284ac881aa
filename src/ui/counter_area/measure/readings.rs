//! The readings of a measure as a table: what, how many uses together, what the scale said, and when.

use egui::text::LayoutJob;
use egui::{Button, ScrollArea, TextFormat, Ui};

use crate::book::{Ingredient, IngredientId, Measure, Reading};
use crate::edit::{FieldName, Focus};
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::icons::{Icon, icon_button};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::{
    Entry, Sheet, cell_ui, number_heading_ui, plain, read_date, section_ui, words_ui,
};
use crate::ui::widgets::word_menu_ui;

/// Widths of what, uses, grams and day, in points.
const WHAT: f32 = 45.0 * grid::STEP;
const USES: f32 = 18.0 * grid::STEP;
const GRAMS: f32 = 15.0 * grid::STEP;
const DAY: f32 = 24.0 * grid::STEP;

/// Uses that a first reading weighs together (common practice, no source).
const FIRST_USES: u32 = 10;

pub(super) fn readings_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Measure>,
    before: &Measure,
) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-readings"));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        words_ui(ui, speaker.word("counter-reading-of"), WHAT);
        number_heading_ui(ui, &speaker.uses_word(before.kind), USES);
        number_heading_ui(ui, speaker.word("counter-reading-grams"), GRAMS);
        ui.add_space(grid::EASY);
        words_ui(ui, speaker.word("counter-reading-day"), DAY);
    });
    for (at, reading) in before.readings.iter().enumerate() {
        if !reading_ui(ui, counter, sheet, reading, at) {
            let gone = FieldName::at("reading-of", at);
            sheet.change(gone, |item| drop(item.readings.remove(at)));
            for place in at..before.readings.len() {
                for column in ["reading-uses", "reading-grams", "reading-day"] {
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
    if sheet.adds(ui, "reading", speaker.word("counter-reading-add")) {
        let last = before.readings.last();
        let reading = Reading {
            // A measure that nobody has weighed begins with water, which gives its volume.
            ingredient: last.and_then(|last| last.ingredient.clone()),
            uses: last.map_or(FIRST_USES, |last| last.uses),
            grams: 0.0,
            date: Some(crate::workbench::today()),
        };
        sheet.change("reading", |item| item.readings.push(reading));
    }
}

/// The readings for a spreadsheet; one that nobody has weighed yet has no mass.
fn as_table(counter: Counter<'_>, measure: &Measure) -> Table {
    let speaker = counter.speaker;
    let mass = spreadsheet::head(speaker.word("counter-reading-mass"), "g");
    let uses = speaker.uses_word(measure.kind);
    let mut table = Table::new([
        speaker.word("counter-reading-of"),
        &uses,
        &mass,
        speaker.word("counter-reading-day"),
    ]);
    for reading in &measure.readings {
        let mass = if reading.grams == 0.0 {
            String::new()
        } else {
            speaker.digits(&plain(reading.grams))
        };
        table.row([
            Cell::words(&what_word(counter, reading)),
            Cell::figure(&reading.uses.to_string()),
            Cell::figure(&mass),
            Cell::words(reading.date.as_deref().unwrap_or_default()),
        ]);
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
            let ingredient = what_ui(ui, counter, &sheet.focus(field.clone()), reading, number);
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
            |text| uses(speaker, text),
            |item, uses| {
                item.readings[at].uses = uses;
            },
        );
        let (field, name) = (
            FieldName::at("reading-grams", at),
            say!(speaker, "counter-reading-grams-named", number: number),
        );
        let shown = if reading.grams == 0.0 {
            String::new()
        } else {
            plain(reading.grams)
        };
        let spot = Entry::number(field, &name)
            .width(GRAMS)
            .hint(speaker.word("counter-reading-weigh"));
        sheet.read(
            ui,
            &spot,
            &shown,
            |text| grams(speaker, text),
            |item, grams| {
                item.readings[at].grams = grams;
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

fn what_word(counter: Counter<'_>, reading: &Reading) -> String {
    let named = reading.ingredient.as_ref();
    weighed(counter.speaker, named)
}

/// What was weighed as it is after this frame: water (`None`), or an ingredient.
fn what_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    focus: &Focus,
    reading: &Reading,
    number: usize,
) -> Option<IngredientId> {
    let word = what_word(counter, reading);
    let fitting = fitted(ui, &word, WHAT - 24.0);
    let mut taken = reading.ingredient.clone();
    word_menu_ui(
        ui,
        focus,
        &say!(counter.speaker, "counter-reading-of-named", number: number),
        &fitting,
        |ui| {
            ScrollArea::vertical()
                .max_height(90.0 * grid::STEP)
                .show(ui, |ui| {
                    let water = counter.speaker.word("counter-water");
                    let is_water = reading.ingredient.is_none();
                    if ui.add(Button::selectable(is_water, water)).clicked() {
                        taken = None;
                    }
                    for ingredient in counter.book.ingredients.iter().take(MOST_LISTED) {
                        let chosen = reading.ingredient.as_ref() == Some(&ingredient.id);
                        if ui
                            .add(Button::selectable(
                                chosen,
                                Ingredient::full_name(ingredient),
                            ))
                            .clicked()
                        {
                            taken = Some(ingredient.id.clone());
                        }
                    }
                });
        },
    );
    taken
}

/// The text as far as it fits a width, with a mark where it was cut.
fn fitted(ui: &Ui, text: &str, width: f32) -> String {
    let palette = theme::palette(ui.visuals());
    let set = TextFormat {
        font_id: TypeStyle::Body.font_id(),
        color: palette.text_normal,
        ..TextFormat::default()
    };
    let fits = |text: &str| {
        let job = LayoutJob::single_section(text.to_owned(), set.clone());
        ui.fonts_mut(|fonts| fonts.layout_job(job)).size().x <= width
    };
    if fits(text) {
        return text.to_owned();
    }
    let mut cut: Vec<char> = text.chars().collect();
    while cut.pop().is_some() {
        let shorter = format!("{}…", cut.iter().collect::<String>().trim_end());
        if fits(&shorter) {
            return shorter;
        }
    }
    text.to_owned()
}

fn uses(speaker: Speaker<'_>, text: &str) -> Result<u32, String> {
    let text = text.trim();
    match text.parse() {
        Ok(uses) if (1..=10_000).contains(&uses) => Ok(uses),
        _ => Err(say!(speaker, "counter-error-uses", found: text)),
    }
}

fn grams(speaker: Speaker<'_>, text: &str) -> Result<f64, String> {
    match crate::quantity::parse_in_unit(text, "g") {
        Ok(grams) if grams > 0.0 => Ok(grams),
        Ok(_) => Err(say!(speaker, "counter-error-grams", found: text)),
        Err(error) => Err(speaker.number_error(&error)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_are_read_with_a_decimal_comma_and_never_as_nothing() {
        let speaker = Speaker::without_book();
        let grams = |text: &str| grams(speaker, text);
        let uses = |text: &str| uses(speaker, text);
        assert_eq!(grams("124,7"), Ok(124.7));
        assert_eq!(grams("43.6 g"), Ok(43.6));
        assert_eq!(grams("0.12 kg"), Ok(120.0));
        assert_eq!(grams("2400 mg"), Ok(2.4));
        assert!(grams("0").is_err() && grams("").is_err() && grams("-3").is_err());
        assert_eq!(uses("10"), Ok(10));
        assert!(uses("0").is_err() && uses("2.5").is_err() && uses("").is_err());
    }
}
