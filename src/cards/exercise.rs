//! An exercise for a group: a swap step by step, with boxes for what is expected; and the answers on a sheet of their own.

use super::document::{Block, Column, Document, Fact, Table};
use super::figure_words::{step_words, with_uncertainty};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, TaughtSwap};
use crate::balance::{Balance, Difference, Taste};
use crate::say::{Speaker, say};
use crate::swap::{Answer, Demands, Question, WalkMove, WalkStep, answer_with, walk};

/// What the learners fill in.
pub(super) fn document(speaker: Speaker<'_>, swap: &TaughtSwap) -> Result<Document, CardError> {
    let made = Made::new(speaker, &swap.drink)?;
    let (answer, steps) = walked(speaker, swap)?;
    let to_fill_in = ["training-name", "training-day"];
    let mut blocks = vec![
        Block::Facts(
            to_fill_in
                .map(|name| Fact::to_fill_in(speaker.word(name)))
                .to_vec(),
        ),
        Block::Paragraphs(vec![
            say!(
                speaker,
                "exercise-task",
                replace: speaker.ingredient(&swap.replace),
                with: speaker.ingredient(&swap.with),
            ),
            speaker.word("exercise-same").to_owned(),
        ]),
    ];
    for (at, step) in steps.iter().enumerate().skip(1) {
        blocks.push(heading(speaker, &answer, at, step));
        blocks.push(Block::Table(crosses(&speaker, &step.difference)));
    }
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

/// What came of each step, with the figures that say why.
pub(super) fn answers(speaker: Speaker<'_>, swap: &TaughtSwap) -> Result<Document, CardError> {
    let made = Made::new(speaker, &swap.drink)?;
    let (answer, steps) = walked(speaker, swap)?;
    let mut blocks = Vec::new();
    for (at, step) in steps.iter().enumerate().skip(1) {
        blocks.push(heading(speaker, &answer, at, step));
        blocks.push(Block::Table(outcomes(&speaker, &answer.standard, step)));
    }
    blocks.push(Block::Cautions(made.cautions()));
    blocks.push(footnotes(&speaker));
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: say!(speaker, "exercise-answers-subtitle", version: made.version_name()),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        blocks,
        ..Document::default()
    })
}

/// The swap with the steps to its first suggestion.
fn walked(speaker: Speaker<'_>, swap: &TaughtSwap) -> Result<(Answer, Vec<WalkStep>), CardError> {
    let question = Question {
        recipe: swap.drink.recipe.clone(),
        version: swap.drink.version.clone(),
        replace: swap.replace.clone(),
        with: swap.with.clone(),
        adjust: None,
    };
    let no_way = || CardError::NoExercise {
        replace: swap.replace.clone(),
        with: swap.with.clone(),
    };
    let book = speaker.book;
    let answer = answer_with(book, &question, &Demands::default()).ok_or_else(no_way)?;
    let suggestion = answer.suggestions.first().ok_or_else(no_way)?;
    let steps = walk(book, &answer, suggestion);
    Ok((answer, steps))
}

/// "2. House sweetener 1 → ½ spoon".
fn heading(speaker: Speaker<'_>, answer: &Answer, at: usize, step: &WalkStep) -> Block {
    let does = match &step.does {
        WalkMove::Standard => speaker.word("exercise-standard").to_owned(),
        WalkMove::PlainSwap => speaker.word("exercise-plain-swap").to_owned(),
        WalkMove::Line(moved) => {
            speaker.line_move(moved, &[&step.balance.resolved, &answer.plain.resolved])
        }
    };
    Block::Heading(format!("{at}. {does}"))
}

/// A row an axis that counts, with a box for each answer.
fn crosses(speaker: &Speaker<'_>, difference: &Difference) -> Table {
    let rows = difference.counted().map(|axis| {
        let answers = Taste::ALL.map(|band| speaker.taste(band, &axis.axis));
        std::iter::once(speaker.axis(&axis.axis))
            .chain(answers)
            .collect()
    });
    let answers = ["exercise-less", "exercise-the-same", "exercise-more"];
    let mut columns = vec![Column::text(speaker.word("column-axis"))];
    columns.extend(answers.map(|title| Column::boxes(speaker.word(title))));
    Table {
        caption: speaker.word("exercise-crosses-caption").to_owned(),
        rows: rows.collect(),
        columns,
    }
}

/// A row an axis that counts: the answer, and the figures of standard and drink with the step that they are held to.
fn outcomes(speaker: &Speaker<'_>, standard: &Balance, step: &WalkStep) -> Table {
    let rows = step.difference.counted().map(|axis| {
        let figure = |balance: &Balance, value: Option<f64>| {
            let u = balance.axis(&axis.axis).and_then(|axis| axis.u);
            value.map_or_else(
                || speaker.word("card-figure-not-known").to_owned(),
                |value| with_uncertainty(speaker, value, u, axis.axis.unit()),
            )
        };
        vec![
            speaker.axis(&axis.axis),
            speaker.against_standard(axis),
            figure(standard, axis.standard),
            figure(&step.balance, axis.value),
            step_words(speaker, &axis.axis, axis.step),
        ]
    });
    Table {
        caption: speaker.word("exercise-answers-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-axis")),
            Column::text(speaker.word("exercise-answer")),
            Column::number(speaker.word("exercise-standard")),
            Column::number(speaker.word("column-this-drink")),
            Column::number(speaker.word("column-noticeable")),
        ],
        rows: rows.collect(),
    }
}
