//! An exercise for a group: a swap step by step, with room for what is expected, and the answers to be cut off.

use super::document::{Block, Column, Document, Table};
use super::figure_words::name_of;
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::balance::Difference;
use crate::book::{Axis, Book, IngredientId};
use crate::swap::{
    Answer, AxisMove, Demands, NOT_TASTED, Question, WalkMove, WalkStep, answer_with, axis_moves,
    move_words, walk,
};

/// Where a cross is made.
const BOX: &str = "[   ]";

pub(super) fn document(
    book: &Book,
    drink: &Drink,
    replace: &IngredientId,
    with: &IngredientId,
) -> Result<Document, CardError> {
    let made = Made::new(book, drink)?;
    let question = Question {
        recipe: drink.recipe.clone(),
        version: drink.version.clone(),
        replace: replace.clone(),
        with: with.clone(),
        adjust: None,
    };
    let no_way = || CardError::NoExercise(name_of(book, replace), name_of(book, with));
    let answer = answer_with(book, &question, &Demands::default()).ok_or_else(no_way)?;
    let suggestion = answer.suggestions.first().ok_or_else(no_way)?;
    let steps = walk(book, &answer, suggestion);
    let mut blocks = vec![Block::Paragraphs(vec![
        format!(
            "{} is replaced by {}. For each step: what will the drink be, against the step before? Make a cross in each row.",
            name_of(book, replace),
            name_of(book, with)
        ),
        format!(
            "“The same” is a move of less than {NOT_TASTED} of a noticeable step, which nobody tastes."
        ),
    ])];
    for (at, pair) in steps.windows(2).enumerate() {
        let title = format!("{}. {}", at + 1, words(book, &answer, &pair[1]));
        blocks.push(Block::Heading(title));
        blocks.push(Block::Table(crosses(&pair[1].difference)));
    }
    blocks.push(Block::Heading(
        "For the trainer, to be cut off: what came of it".to_owned(),
    ));
    blocks.push(Block::Table(answers(&steps)));
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes());
    Ok(Document {
        title: made.recipe.name.clone(),
        subtitle: format!("{}, an exercise", made.version_name()),
        revision: made.revision(),
        blocks,
        ..Document::default()
    })
}

/// What a step does: "House sweetener 1 → ½ spoon".
fn words(book: &Book, answer: &Answer, step: &WalkStep) -> String {
    match &step.does {
        WalkMove::Standard => "the standard".to_owned(),
        WalkMove::PlainSwap => "the swap with equal measures".to_owned(),
        WalkMove::Line(moved) => move_words(
            book,
            moved,
            &[&step.balance.resolved, &answer.plain.resolved],
        ),
    }
}

/// A row an axis that counts, with room for a cross under each answer.
fn crosses(difference: &Difference) -> Table {
    let axes = difference.axes.iter().filter(|axis| axis.weight > 0.0);
    let rows = axes.map(|axis| {
        let (more, less) = axis.axis.comparatives();
        vec![
            axis.axis.word().to_owned(),
            format!("{BOX}  {less}"),
            format!("{BOX}  the same"),
            format!("{BOX}  {more}"),
        ]
    });
    Table {
        caption: "what is expected on each axis of taste".to_owned(),
        columns: ["axis", "less", "the same", "more"]
            .map(Column::text)
            .to_vec(),
        rows: rows.collect(),
    }
}

/// What each step moved, a row an axis.
fn answers(steps: &[WalkStep]) -> Table {
    let moves: Vec<Vec<AxisMove>> = steps
        .windows(2)
        .map(|pair| axis_moves(&pair[0].difference, &pair[1].difference))
        .collect();
    let mut columns = vec![Column::text("axis")];
    columns.extend((1..steps.len()).map(|at| Column::text(format!("step {at}"))));
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
            moved.map_or_else(|| "the same".to_owned(), AxisMove::words)
        });
        std::iter::once(axis.word().to_owned())
            .chain(cells)
            .collect()
    });
    Table {
        caption: "what each step moved, in noticeable steps".to_owned(),
        rows: rows.collect(),
        columns,
    }
}
