//! The sugar ladder on paper: what is measured at each level, and what no level goes below.

use super::document::{Block, Column, Document, Table};
use super::figure_words::{balance_words, name_of};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::Measurand;
use crate::book::{Book, Line, Role, Stage};
use crate::swap::{Ladder, Level, ladder};

pub(super) fn document(book: &Book, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(book, drink)?;
    let ladder = ladder(
        book,
        made.recipe,
        drink.version.as_ref(),
        &Level::of_shop(&book.settings),
    )
    .ok_or_else(|| CardError::NoRecipe(drink.recipe.clone()))?;
    let mut blocks = Vec::new();
    if !ladder.rungs.is_empty() {
        blocks.push(Block::Table(levels(&made, &ladder)));
    }
    let mut sentences = ladder.reasons.clone();
    sentences.push(format!(
        "Without any sweetener the drink still has {} of sugar: that comes with what it tastes of.",
        balance_words(book, &ladder.floor, Measurand::TotalSugar)
    ));
    for rung in &ladder.rungs {
        if let Err(reason) = &rung.drink {
            sentences.push(format!("{}: {reason}", rung.level.name));
        }
    }
    blocks.push(Block::Paragraphs(sentences));
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes());
    Ok(Document {
        title: made.recipe.name.clone(),
        subtitle: format!("{}, sugar ladder", made.version_name()),
        revision: made.revision(),
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
    let lines = moving_lines(made, ladder);
    let mut columns = vec![Column::text("level")];
    columns.extend(
        lines
            .iter()
            .map(|line| Column::text(name_of(made.book, &line.ingredient))),
    );
    columns.push(Column::number("total sugar"));
    columns.push(Column::number("sweetness"));
    let rows = ladder.rungs.iter().map(|rung| {
        let mut row = vec![rung.level.name.clone()];
        match &rung.drink {
            Ok(drink) => {
                row.extend(lines.iter().map(|line| {
                    drink.balance.resolved.line(&line.id).map_or_else(
                        || "none".to_owned(),
                        |line| match line.amount.number() {
                            Some(0.0) => "none".to_owned(),
                            _ => made.book.amount_words(&line.amount),
                        },
                    )
                }));
                row.push(balance_words(
                    made.book,
                    &drink.balance,
                    Measurand::TotalSugar,
                ));
                row.push(balance_words(
                    made.book,
                    &drink.balance,
                    Measurand::Sweetness,
                ));
            }
            Err(_) => row.extend(std::iter::repeat_n(
                "not possible, see below".to_owned(),
                lines.len() + 2,
            )),
        }
        row
    });
    Table {
        caption: "what is measured at each level of sugar".to_owned(),
        columns,
        rows: rows.collect(),
    }
}
