//! The sugar ladder on paper: what is measured at each level, and what no level goes below.

use super::document::{Block, Column, Document, Table};
use super::figure_words::balance_words;
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::Measurand;
use crate::book::{Line, Role, Stage};
use crate::say::{Speaker, say};
use crate::swap::{Ladder, ladder};

pub(super) fn document(speaker: Speaker<'_>, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(speaker, drink)?;
    let book = speaker.book;
    let ladder = ladder(
        book,
        made.recipe,
        drink.version.as_ref(),
        &book.settings.sugar_levels(),
    )
    .ok_or_else(|| CardError::NoRecipe(drink.recipe.clone()))?;
    let mut blocks = Vec::new();
    if !ladder.rungs.is_empty() {
        blocks.push(Block::Table(levels(&made, &ladder)));
    }
    let reasons = ladder.reasons.iter();
    let mut sentences: Vec<String> = reasons.map(|reason| speaker.no_levels(reason)).collect();
    let sugar = balance_words(&speaker, &ladder.floor, Measurand::TotalSugar);
    sentences.push(say!(speaker, "ladder-floor", sugar: sugar));
    for rung in &ladder.rungs {
        if let Err(reason) = &rung.drink {
            sentences.push(say!(
                speaker,
                "ladder-not-possible",
                level: speaker.level_name(&rung.level),
                reason: speaker.unadaptable(reason),
            ));
        }
    }
    blocks.push(Block::Paragraphs(sentences));
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes(&speaker));
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: say!(speaker, "ladder-subtitle", version: made.version_name()),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        blocks,
        ..Document::default()
    })
}

/// Lines that some level changes, or that are there to sweeten.
fn moving_lines<'made>(made: &'made Made<'_>, ladder: &Ladder) -> Vec<&'made Line> {
    let moves = |line: &Line| {
        ladder.rungs.iter().any(|rung| {
            rung.drink
                .as_ref()
                .is_ok_and(|drink| drink.moves.iter().any(|moved| moved.line == line.id))
        })
    };
    let lines = made.balance.resolved.lines();
    lines
        .filter(|line| (line.role == Role::Sweetener && line.stage == Stage::Mixed) || moves(line))
        .collect()
}

fn levels(made: &Made<'_>, ladder: &Ladder) -> Table {
    let speaker = &made.speaker;
    let lines = moving_lines(made, ladder);
    let mut columns = vec![Column::text(speaker.word("column-level"))];
    columns.extend(
        lines
            .iter()
            .map(|line| Column::text(speaker.ingredient(&line.ingredient))),
    );
    columns.push(Column::number(speaker.word("column-total-sugar")));
    columns.push(Column::number(speaker.word("column-sweetness")));
    let rows = ladder.rungs.iter().map(|rung| {
        let mut row = vec![speaker.level_name(&rung.level)];
        match &rung.drink {
            Ok(drink) => {
                row.extend(lines.iter().map(|line| {
                    drink.balance.resolved.line(&line.id).map_or_else(
                        || speaker.word("amount-none").to_owned(),
                        |line| match line.amount.number() {
                            Some(0.0) => speaker.word("amount-none").to_owned(),
                            _ => speaker.amount(&line.amount),
                        },
                    )
                }));
                row.push(balance_words(
                    speaker,
                    &drink.balance,
                    Measurand::TotalSugar,
                ));
                row.push(balance_words(speaker, &drink.balance, Measurand::Sweetness));
            }
            Err(_) => row.extend(std::iter::repeat_n(
                speaker.word("ladder-see-below").to_owned(),
                lines.len() + 2,
            )),
        }
        row
    });
    Table {
        caption: speaker.word("ladder-caption").to_owned(),
        columns,
        rows: rows.collect(),
    }
}
