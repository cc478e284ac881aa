//! Two to four versions beside each other: what goes in, what comes out, how far apart they taste.

use super::document::{Block, CautionLine, Column, Document, Orientation, Table};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::{Measurand, difference};
use crate::book::LineId;
use crate::say::{Speaker, say};

/// The figures that are compared.
const FIGURES: [Measurand; 10] = [
    Measurand::TotalSugar,
    Measurand::FreeSugars,
    Measurand::Sweetness,
    Measurand::ServingTemperature,
    Measurand::Volume,
    Measurand::EnergyKj,
    Measurand::EnergyKcal,
    Measurand::Fat,
    Measurand::Caffeine,
    Measurand::Cost,
];

pub(super) fn document(speaker: Speaker<'_>, drinks: &[Drink]) -> Result<Document, CardError> {
    if !(2..=4).contains(&drinks.len()) {
        return Err(CardError::CountToCompare(drinks.len()));
    }
    let made: Vec<Made<'_>> = drinks
        .iter()
        .map(|drink| Made::new(speaker, drink))
        .collect::<Result<_, _>>()?;
    let same_recipe = made
        .iter()
        .all(|other| other.recipe.id == made[0].recipe.id);
    let names: Vec<String> = made
        .iter()
        .map(|made| {
            if same_recipe {
                made.version_name().to_owned()
            } else {
                made.name()
            }
        })
        .collect();
    let title = if same_recipe {
        made[0].recipe_name().to_owned()
    } else {
        speaker.word("comparison-title").to_owned()
    };
    let revisions: Vec<String> = made
        .iter()
        .map(|made| {
            if same_recipe {
                made.revision()
            } else {
                format!("{}, {}", made.recipe_name(), made.revision())
            }
        })
        .collect();
    Ok(Document {
        title,
        subtitle: names.join(" · "),
        revision: revisions.join("; "),
        is_unapproved: !made.iter().all(Made::is_approved),
        orientation: if made.len() > 2 {
            Orientation::Wide
        } else {
            Orientation::Upright
        },
        blocks: vec![
            Block::Heading(speaker.word("comparison-lines").to_owned()),
            Block::Table(if same_recipe {
                lines(&made, &names)
            } else {
                ingredients(&made, &names)
            }),
            Block::Heading(speaker.word("comparison-figures").to_owned()),
            Block::Table(figures(&made, &names)),
            Block::Heading(say!(speaker, "comparison-taste", first: &names[0])),
            Block::Table(tastes(&made, &names)),
            Block::Cautions(cautions(&made, &names)),
            footnotes(&speaker),
        ],
        ..Document::default()
    })
}

fn columns(first: &str, names: &[String]) -> Vec<Column> {
    std::iter::once(Column::text(first))
        .chain(names.iter().map(Column::text))
        .collect()
}

/// Lines of one recipe by their id: the same line may hold another ingredient in each version.
fn lines(made: &[Made<'_>], names: &[String]) -> Table {
    let mut ids: Vec<&LineId> = Vec::new();
    for one in made {
        for line in one.balance.resolved.lines() {
            if !ids.contains(&&line.id) {
                ids.push(&line.id);
            }
        }
    }
    let rows = ids.into_iter().map(|id| {
        let of = |made: &Made<'_>| made.balance.resolved.line(id).cloned();
        let role = made
            .iter()
            .find_map(of)
            .map_or("", |line| made[0].speaker.role(line.role));
        let speaker = &made[0].speaker;
        let cells = made.iter().map(|made| match of(made) {
            Some(line) => say!(
                speaker,
                "comparison-line",
                amount: speaker.amount(&line.amount),
                ingredient: speaker.ingredient(&line.ingredient),
                grams: made.grams(&line),
            ),
            None => speaker.word("amount-none").to_owned(),
        });
        std::iter::once(role.to_owned()).chain(cells).collect()
    });
    Table {
        caption: made[0].speaker.word("comparison-lines-caption").to_owned(),
        columns: columns(made[0].speaker.word("column-part"), names),
        rows: rows.collect(),
    }
}

/// Lines of different recipes by their ingredient.
fn ingredients(made: &[Made<'_>], names: &[String]) -> Table {
    let mut ids = Vec::new();
    for one in made {
        for line in one.balance.resolved.lines() {
            if !ids.contains(&line.ingredient) {
                ids.push(line.ingredient.clone());
            }
        }
    }
    let rows = ids.into_iter().map(|id| {
        let cells = made.iter().map(|made| {
            let lines = made.balance.resolved.lines();
            let cells: Vec<String> = lines
                .filter(|line| line.ingredient == id)
                .map(|line| {
                    let amount = made.speaker.amount(&line.amount);
                    format!("{amount} ({})", made.grams(line))
                })
                .collect();
            if cells.is_empty() {
                made.speaker.word("amount-none").to_owned()
            } else {
                cells.join(", ")
            }
        });
        std::iter::once(made[0].speaker.ingredient(&id))
            .chain(cells)
            .collect()
    });
    Table {
        caption: made[0].speaker.word("comparison-drinks-caption").to_owned(),
        columns: columns(made[0].speaker.word("column-ingredient"), names),
        rows: rows.collect(),
    }
}

fn figures(made: &[Made<'_>], names: &[String]) -> Table {
    let figures = FIGURES.iter().map(|measurand| {
        std::iter::once(made[0].speaker.measurand(*measurand).to_owned())
            .chain(made.iter().map(|made| made.words(*measurand)))
            .collect()
    });
    let mut rows: Vec<Vec<String>> = figures.collect();
    rows.push(
        std::iter::once(made[0].speaker.word("fact-vegan").to_owned())
            .chain(
                made.iter()
                    .map(|made| made.speaker.verdict(made.balance.vegan).to_owned()),
            )
            .collect(),
    );
    Table {
        caption: made[0]
            .speaker
            .word("comparison-figures-caption")
            .to_owned(),
        columns: columns(made[0].speaker.word("column-figure"), names),
        rows,
    }
}

/// Each version against the first, in noticeable steps.
fn tastes(made: &[Made<'_>], names: &[String]) -> Table {
    let first = &made[0];
    let speaker = &first.speaker;
    let differences: Vec<_> = made
        .iter()
        .map(|made| difference(&speaker.book.settings, &first.balance, &made.balance))
        .collect();
    let rows = first.balance.axes.iter().map(|axis| {
        let cells = differences.iter().enumerate().map(|(at, difference)| {
            if at == 0 {
                return axis.value.map_or_else(
                    || speaker.word("card-figure-not-known").to_owned(),
                    |value| speaker.figure(value, axis.u, axis.axis.unit()),
                );
            }
            let found = difference.axes.iter().find(|other| other.axis == axis.axis);
            let Some(steps) = found.and_then(|found| found.steps) else {
                return speaker.word("card-figure-not-known").to_owned();
            };
            if steps.abs() < 0.05 {
                speaker.word("comparison-level").to_owned()
            } else {
                speaker.axis_change(&axis.axis, steps)
            }
        });
        std::iter::once(speaker.axis(&axis.axis))
            .chain(cells)
            .collect()
    });
    Table {
        caption: made[0].speaker.word("comparison-taste-caption").to_owned(),
        columns: columns(made[0].speaker.word("column-axis"), names),
        rows: rows.collect(),
    }
}

/// The cautions of all; one that several share names them.
fn cautions(made: &[Made<'_>], names: &[String]) -> Vec<CautionLine> {
    let mut found: Vec<(CautionLine, Vec<&str>)> = Vec::new();
    for (made, name) in made.iter().zip(names) {
        for caution in made.cautions() {
            match found.iter_mut().find(|(known, _)| *known == caution) {
                Some((_, whose)) => whose.push(name),
                None => found.push((caution, vec![name])),
            }
        }
    }
    found
        .into_iter()
        .map(|(caution, whose)| CautionLine {
            text: format!("{}: {}", whose.join(", "), caution.text),
            ..caution
        })
        .collect()
}
