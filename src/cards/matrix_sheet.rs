//! Every level of sugar in every size with every amount of ice on paper: what is measured for each.

use super::document::{Block, Document, Orientation};
use super::ladder_table::{level_table, not_possible};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::book::Line;
use crate::say::{Speaker, say};
use crate::swap::{Rung, Watch, matrix};

pub(super) fn document(speaker: Speaker<'_>, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(speaker, drink)?;
    let version = drink.version.as_ref();
    let matrix = matrix(speaker.book, made.recipe, version, &Watch::default())
        .ok_or_else(|| CardError::NoRecipe(drink.recipe.clone()))?;
    let mut blocks = Vec::new();
    for column in &matrix.columns {
        blocks.push(Block::Heading(speaker.matrix_column(column)));
        match &column.rungs {
            Ok(rungs) => {
                let lines = lines_of(rungs);
                if !lines.is_empty() {
                    blocks.push(Block::Table(level_table(&made, rungs, &lines)));
                }
                let sentences = not_possible(&made, rungs);
                if !sentences.is_empty() {
                    blocks.push(Block::Paragraphs(sentences));
                }
            }
            Err(reason) => {
                let reason = speaker.unadaptable(reason);
                blocks.push(Block::Paragraphs(vec![say!(
                    speaker,
                    "matrix-not-possible",
                    reason: reason
                )]));
            }
        }
    }
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes(&speaker));
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: say!(speaker, "matrix-subtitle", version: made.version_name()),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        orientation: Orientation::Wide,
        blocks,
        ..Document::default()
    })
}

/// The lines of the drinks of a column, in the order of the first that has them.
fn lines_of(rungs: &[Rung]) -> Vec<&Line> {
    let mut lines: Vec<&Line> = Vec::new();
    for drink in rungs.iter().filter_map(|rung| rung.drink.as_ref().ok()) {
        for line in drink.balance.resolved.lines() {
            if !lines.iter().any(|known| known.id == line.id) {
                lines.push(line);
            }
        }
    }
    lines
}
