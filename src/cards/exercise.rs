//! An exercise for a group: a swap step by step, with room for what is expected, and the answers to be cut off.

use super::document::{Block, Column, Document, Table};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::Difference;
use crate::book::{Axis, IngredientId};
use crate::say::{Speaker, say};
use crate::swap::{
    Answer, AxisMove, Demands, NOT_TASTED, Question, WalkMove, WalkStep, answer_with, axis_moves,
    walk,
};

/// Where a cross is made.
const BOX: &str = "[   ]";

pub(super) fn document(
    speaker: Speaker<'_>,
    drink: &Drink,
    replace: &IngredientId,
    with: &IngredientId,
) -> Result<Document, CardError> {
    let made = Made::new(speaker, drink)?;
    let book = speaker.book;
    let question = Question {
        recipe: drink.recipe.clone(),
        version: drink.version.clone(),
        replace: replace.clone(),
        with: with.clone(),
        adjust: None,
    };
    let no_way = || CardError::NoExercise {
        replace: replace.clone(),
        with: with.clone(),
    };
    let answer = answer_with(book, &question, &Demands::default()).ok_or_else(no_way)?;
    let suggestion = answer.suggestions.first().ok_or_else(no_way)?;
    let steps = walk(book, &answer, suggestion);
    let mut blocks = vec![Block::Paragraphs(vec![
        say!(
            speaker,
            "exercise-task",
            replace: speaker.ingredient(replace),
            with: speaker.ingredient(with),
        ),
        say!(speaker, "exercise-same", share: speaker.number(NOT_TASTED, 2)),
    ])];
    for (at, pair) in steps.windows(2).enumerate() {
        let title = format!("{}. {}", at + 1, words(&speaker, &answer, &pair[1]));
        blocks.push(Block::Heading(title));
        blocks.push(Block::Table(crosses(&speaker, &pair[1].difference)));
    }
    blocks.push(Block::Heading(speaker.word("exercise-answers").to_owned()));
    blocks.push(Block::Table(answers(&speaker, &steps)));
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes(&speaker));
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: say!(speaker, "exercise-subtitle", version: made.version_name()),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        blocks,
        ..Document::default()
    })
}

/// What a step does: "House sweetener 1 → ½ spoon".
fn words(speaker: &Speaker<'_>, answer: &Answer, step: &WalkStep) -> String {
    match &step.does {
        WalkMove::Standard => speaker.word("exercise-standard").to_owned(),
        WalkMove::PlainSwap => speaker.word("exercise-plain-swap").to_owned(),
        WalkMove::Line(moved) => {
            speaker.line_move(moved, &[&step.balance.resolved, &answer.plain.resolved])
        }
    }
}

/// A row an axis that counts, with room for a cross under each answer.
fn crosses(speaker: &Speaker<'_>, difference: &Difference) -> Table {
    let axes = difference.axes.iter().filter(|axis| axis.weight > 0.0);
    let rows = axes.map(|axis| {
        vec![
            speaker.axis(&axis.axis),
            format!("{BOX}  {}", speaker.less(&axis.axis)),
            format!("{BOX}  {}", speaker.word("exercise-the-same")),
            format!("{BOX}  {}", speaker.more(&axis.axis)),
        ]
    });
    Table {
        caption: speaker.word("exercise-crosses-caption").to_owned(),
        columns: [
            "column-axis",
            "exercise-less",
            "exercise-the-same",
            "exercise-more",
        ]
        .map(|title| Column::text(speaker.word(title)))
        .to_vec(),
        rows: rows.collect(),
    }
}

/// What each step moved, a row an axis.
fn answers(speaker: &Speaker<'_>, steps: &[WalkStep]) -> Table {
    let moves: Vec<Vec<AxisMove>> = steps
        .windows(2)
        .map(|pair| axis_moves(&pair[0].difference, &pair[1].difference))
        .collect();
    let mut columns = vec![Column::text(speaker.word("column-axis"))];
    columns.extend(
        (1..steps.len()).map(|at| Column::text(say!(speaker, "exercise-step", number: at))),
    );
    let mut axes: Vec<&Axis> = Vec::new();
    for moved in moves.iter().flatten() {
        if !axes.contains(&&moved.axis) {
            axes.push(&moved.axis);
        }
    }
    let rows = axes.into_iter().map(|axis| {
        let cells = moves.iter().map(|step| {
            let moved = step.iter().find(|moved| moved.axis == *axis);
            // An axis that neither drink of a step has did not move.
            let same = || speaker.word("exercise-the-same").to_owned();
            moved.map_or_else(same, |moved| speaker.axis_move(moved))
        });
        std::iter::once(speaker.axis(axis)).chain(cells).collect()
    });
    Table {
        caption: speaker.word("exercise-answers-caption").to_owned(),
        rows: rows.collect(),
        columns,
    }
}
