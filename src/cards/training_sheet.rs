//! The training sheet: a drink with the reasons behind its amounts, for someone who learns to make it.

use super::document::{Block, Column, Document, Fact, Table};
use super::figure_words::{name_of, with_uncertainty};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::{CoolingLine, Measurand, PrintedValue, cooling, declaration};
use crate::book::{Amount, Axis, Book, Nominal};
use crate::quantity::{beyond_digits, show_number};

pub(super) fn document(book: &Book, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(book, drink)?;
    let mut facts = made.facts();
    let drinking = show_number(made.balance.drinking_temperature, 0);
    facts.insert(
        2,
        Fact::new(
            format!("time until it may be drunk at {drinking}\u{a0}°C"),
            match made.balance.figures.get(Measurand::MinutesToDrinkable) {
                Some(minutes) if minutes <= 0.0 => "already below".to_owned(),
                // Someone drinks by it.
                _ => cooling(book, &made.balance)
                    .and_then(|cooling| {
                        cooling.milestone(CoolingLine::Drinking).words_with_latest()
                    })
                    .unwrap_or_else(|| made.words(Measurand::MinutesToDrinkable)),
            },
        ),
    );
    let mut blocks = vec![
        Block::Heading("How it is made".to_owned()),
        made.steps(),
        Block::Heading("What it must come out as".to_owned()),
        Block::Facts(facts),
        Block::Cautions(made.cautions()),
        Block::Heading("What each line brings".to_owned()),
        Block::Table(lines(&made)),
        Block::Heading("How it tastes".to_owned()),
        Block::Table(taste(&made)),
    ];
    let measures = measures(&made);
    if !measures.rows.is_empty() {
        blocks.push(Block::Heading("The measures".to_owned()));
        blocks.push(Block::Table(measures));
    }
    blocks.push(Block::Heading("Nutrition".to_owned()));
    blocks.push(Block::Table(nutrition(&made)));
    blocks.push(Block::Heading("Shown and made once".to_owned()));
    blocks.push(Block::Facts(
        [
            "name",
            "shown by",
            "day",
            "serving temperature measured, °C",
        ]
        .map(|name| Fact::new(name, "________________"))
        .to_vec(),
    ));
    blocks.push(footnotes());
    Ok(Document {
        title: made.recipe.name.clone(),
        subtitle: made.version_name().to_owned(),
        revision: made.revision(),
        blocks,
        ..Document::default()
    })
}

fn lines(made: &Made<'_>) -> Table {
    let rows = made.balance.resolved.lines().map(|line| {
        let share = made
            .balance
            .lines
            .iter()
            .find(|share| share.line == line.id && !share.carried);
        let figure = |value: Option<f64>, u: Option<f64>, unit: &str| {
            value.map_or_else(
                || "not stated".to_owned(),
                |value| with_uncertainty(value, u, unit),
            )
        };
        vec![
            name_of(made.book, &line.ingredient),
            made.book.amount_words(&line.amount),
            made.grams_with_uncertainty(line),
            figure(
                share.and_then(|share| share.sugar),
                share.and_then(|share| share.sugar_uncertainty),
                "g",
            ),
            figure(share.and_then(|share| share.energy), None, "kJ"),
        ]
    });
    Table {
        caption: "what each line weighs and brings".to_owned(),
        columns: vec![
            Column::text("ingredient"),
            Column::text("amount"),
            Column::number("weight"),
            Column::number("sugar"),
            Column::number("energy"),
        ],
        rows: rows.collect(),
    }
}

fn taste(made: &Made<'_>) -> Table {
    let rows = made.balance.axes.iter().map(|axis| {
        let unit = axis.axis.unit();
        // A step of temperature is a difference.
        let step_unit = if axis.axis == Axis::Temperature {
            "K"
        } else {
            unit
        };
        let value = axis.value.map_or_else(
            || "not known".to_owned(),
            |value| with_uncertainty(value, axis.u, unit),
        );
        let step = format!(
            "{}\u{a0}{step_unit}",
            show_number(axis.step, 2)
                .trim_end_matches('0')
                .trim_end_matches('.')
        );
        vec![axis.axis.word().to_owned(), value, step]
    });
    Table {
        caption: "the drink on each axis of taste".to_owned(),
        columns: vec![
            Column::text("axis"),
            Column::number("this drink"),
            Column::number("a taster just notices"),
        ],
        rows: rows.collect(),
    }
}

fn measures(made: &Made<'_>) -> Table {
    let mut rows: Vec<Vec<String>> = Vec::new();
    for line in made.balance.resolved.lines() {
        let Amount::Count(_, id) = &line.amount else {
            continue;
        };
        let Some(measure) = made.book.measure(id) else {
            continue;
        };
        let weighed = measure.calibration(Some(&line.ingredient)).map_or_else(
            || match measure.nominal {
                Some(Nominal::Volume(volume)) => {
                    format!("said to hold {}\u{a0}ml", show_number(volume, 1))
                }
                Some(Nominal::Mass(mass)) => {
                    format!("said to hold {}\u{a0}g", show_number(mass, 1))
                }
                None => "not weighed".to_owned(),
            },
            |calibration| with_uncertainty(calibration.grams, calibration.u_mean, "g"),
        );
        let row = vec![
            measure.name.clone(),
            name_of(made.book, &line.ingredient),
            weighed,
        ];
        if !rows.contains(&row) {
            rows.push(row);
        }
    }
    Table {
        caption: "what one use of each measure holds".to_owned(),
        columns: vec![
            Column::text("measure"),
            Column::text("with"),
            Column::number("one use"),
        ],
        rows,
    }
}

fn nutrition(made: &Made<'_>) -> Table {
    let words = |value: &PrintedValue, unit: &str| {
        if !value.is_complete && value.value <= 0.0 {
            return "not stated".to_owned();
        }
        let least = if value.is_complete { "" } else { "at least " };
        let text = beyond_digits(value.value).unwrap_or_else(|| value.text.clone());
        format!("{least}{text}\u{a0}{unit}")
    };
    let rows = declaration(&made.balance).into_iter().map(|row| {
        let per_100_ml = row
            .per_100_ml
            .as_ref()
            .map_or_else(|| "not known".to_owned(), |value| words(value, row.unit));
        vec![
            row.words.to_owned(),
            words(&row.per_drink, row.unit),
            per_100_ml,
        ]
    });
    Table {
        caption: "nutrition of the drink".to_owned(),
        columns: vec![
            Column::text("nutrition"),
            Column::number("per drink"),
            Column::number("per 100 ml, without toppings"),
        ],
        rows: rows.collect(),
    }
}
