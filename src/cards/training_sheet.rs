//! The training sheet: a drink with the reasons behind its amounts, for someone who learns to make it.

use super::document::{Block, Column, Document, Fact, Table};
use super::figure_words::{step_words, with_uncertainty};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::{CoolingLine, Measurand, PrintedValue, cooling, declaration};
use crate::book::{Amount, Nominal};
use crate::quantity::beyond_digits;
use crate::say::{Speaker, say};

pub(super) fn document(speaker: Speaker<'_>, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(speaker, drink)?;
    let mut facts = made.facts();
    let drinking = speaker.temperature(made.balance.drinking_temperature, 0);
    facts.insert(
        2,
        Fact::new(
            say!(speaker, "training-time-to-cool", temperature: drinking),
            match made.balance.figures.get(Measurand::MinutesToDrinkable) {
                Some(minutes) if minutes <= 0.0 => {
                    speaker.word("training-already-below").to_owned()
                }
                // Someone drinks by it.
                _ => cooling(speaker.book, &made.balance)
                    .and_then(|cooling| {
                        let milestone = cooling.milestone(CoolingLine::Drinking);
                        speaker.about_and_latest(milestone)
                    })
                    .unwrap_or_else(|| made.words(Measurand::MinutesToDrinkable)),
            },
        ),
    );
    let mut blocks = vec![
        Block::Heading(speaker.word("training-how").to_owned()),
        made.steps(),
        Block::Heading(speaker.word("training-target").to_owned()),
        Block::Facts(facts),
        Block::Cautions(made.cautions()),
        Block::Heading(speaker.word("training-lines").to_owned()),
        Block::Table(lines(&made)),
        Block::Heading(speaker.word("training-taste").to_owned()),
        Block::Table(taste(&made)),
    ];
    let measures = measures(&made);
    if !measures.rows.is_empty() {
        blocks.push(Block::Heading(speaker.word("training-measures").to_owned()));
        blocks.push(Block::Table(measures));
    }
    blocks.push(Block::Heading(
        speaker.word("training-nutrition").to_owned(),
    ));
    blocks.push(Block::Table(nutrition(&made)));
    blocks.push(Block::Heading(speaker.word("training-shown").to_owned()));
    let to_fill_in = [
        speaker.word("training-name").to_owned(),
        speaker.word("training-shown-by").to_owned(),
        speaker.word("training-day").to_owned(),
        say!(speaker, "training-measured", unit: speaker.units.temperature.symbol()),
    ];
    let to_fill_in = to_fill_in.map(Fact::to_fill_in);
    blocks.push(Block::Facts(to_fill_in.to_vec()));
    blocks.push(footnotes(&speaker));
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: made.version_name().to_owned(),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        blocks,
        ..Document::default()
    })
}

fn lines(made: &Made<'_>) -> Table {
    let speaker = &made.speaker;
    let rows = made.balance.resolved.lines().map(|line| {
        let share = made
            .balance
            .lines
            .iter()
            .find(|share| share.line == line.id && !share.carried);
        let figure = |value: Option<f64>, u: Option<f64>, unit: &str| {
            value.map_or_else(
                || speaker.word("card-figure-unstated").to_owned(),
                |value| with_uncertainty(speaker, value, u, unit),
            )
        };
        vec![
            made.speaker.ingredient(&line.ingredient),
            speaker.amount(&line.amount),
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
        caption: speaker.word("training-lines-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-ingredient")),
            Column::text(speaker.word("column-amount")),
            Column::number(speaker.word("column-weight")),
            Column::number(speaker.word("column-sugar")),
            Column::number(speaker.word("column-energy")),
        ],
        rows: rows.collect(),
    }
}

fn taste(made: &Made<'_>) -> Table {
    let speaker = &made.speaker;
    let rows = made.balance.axes.iter().map(|axis| {
        let unit = axis.axis.unit();
        let value = axis.value.map_or_else(
            || speaker.word("card-figure-not-known").to_owned(),
            |value| with_uncertainty(speaker, value, axis.u, unit),
        );
        let step = step_words(speaker, &axis.axis, axis.step);
        vec![speaker.axis(&axis.axis), value, step]
    });
    Table {
        caption: speaker.word("training-taste-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-axis")),
            Column::number(speaker.word("column-this-drink")),
            Column::number(speaker.word("column-noticeable")),
        ],
        rows: rows.collect(),
    }
}

fn measures(made: &Made<'_>) -> Table {
    let speaker = &made.speaker;
    let mut rows: Vec<Vec<String>> = Vec::new();
    for line in made.balance.resolved.lines() {
        let Amount::Count(_, id) = &line.amount else {
            continue;
        };
        let Some(measure) = speaker.book.measure(id) else {
            continue;
        };
        let weighed = measure.calibration(Some(&line.ingredient)).map_or_else(
            || match measure.nominal {
                Some(Nominal::Volume(volume)) => {
                    say!(speaker, "measure-stated", amount: speaker.volume(volume, 1))
                }
                Some(Nominal::Mass(mass)) => {
                    say!(speaker, "measure-stated", amount: speaker.in_unit(mass, "g", 1))
                }
                None => speaker.word("measure-not-weighed").to_owned(),
            },
            |calibration| with_uncertainty(speaker, calibration.grams, calibration.u_mean, "g"),
        );
        let row = vec![
            speaker.measure(id),
            made.speaker.ingredient(&line.ingredient),
            weighed,
        ];
        if !rows.contains(&row) {
            rows.push(row);
        }
    }
    Table {
        caption: speaker.word("training-measures-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-measure")),
            Column::text(speaker.word("column-with")),
            Column::number(speaker.word("column-one-use")),
        ],
        rows,
    }
}

fn nutrition(made: &Made<'_>) -> Table {
    let speaker = &made.speaker;
    let words = |value: &PrintedValue, unit: &str| {
        if !value.is_complete && value.value <= 0.0 {
            return speaker.word("card-figure-unstated").to_owned();
        }
        let text = beyond_digits(value.value).unwrap_or_else(|| speaker.digits(&value.text));
        let figure = format!("{text}\u{a0}{unit}");
        if value.is_complete {
            figure
        } else {
            say!(speaker, "card-figure-least", figure: figure)
        }
    };
    let rows = declaration(&made.balance).into_iter().map(|row| {
        let per_100_ml = row.per_100_ml.as_ref().map_or_else(
            || speaker.word("card-figure-not-known").to_owned(),
            |value| words(value, row.unit),
        );
        vec![
            speaker.nutrition_row(row.measurand).to_owned(),
            words(&row.per_drink, row.unit),
            per_100_ml,
        ]
    });
    Table {
        caption: speaker.word("training-nutrition-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-nutrition")),
            Column::number(speaker.word("column-per-drink")),
            Column::number(speaker.word("column-per-100-ml")),
        ],
        rows: rows.collect(),
    }
}
