//! Blocks other than tables as rows.

use super::page::{Ink, RowKind};
use super::rows::{Drawn, Row, RowCell, Surround};
use super::table_rows::{parts, table_rows};
use super::typesetter::{Look, TextLine, Typesetter};
use crate::cards::document::{Block, CautionLine, Document, Fact, StageSteps, StepRow};

/// Part of the width that the names of facts may take.
const FACT_NAMES: f32 = 0.42;

/// Part of the width that the kinds of cautions may take.
const CAUTION_KINDS: f32 = 0.3;

/// Most of a line that a hand writes on, in sizes of the words.
const HAND: f32 = 24.0;

/// The rows of a document, from the title to the small print.
pub(super) fn rows_of(
    setter: &mut Typesetter,
    document: &Document,
    size: f32,
    width: f32,
) -> Vec<Row> {
    let mut rows = vec![Row {
        kind: RowKind::Heading(1),
        ..text_row(
            setter,
            &document.title,
            Look::plain(size * 1.9).serif(),
            width,
        )
    }];
    if !document.subtitle.is_empty() {
        let look = Look::plain(size * 1.15).quiet();
        rows.push(text_row(setter, &document.subtitle, look, width));
    }
    if let Some(last) = rows.last_mut() {
        last.below = 5.0;
        last.surround = Surround::RuleBelow(Ink::BLACK, 0.9);
    }
    if !document.revision.is_empty() {
        rows.push(state_row(setter, document, size, width));
    }
    let stage_level = document.stage_level();
    let mut number = 0;
    for block in &document.blocks {
        match block {
            Block::Heading(text) => {
                let mut row = text_row(setter, text, Look::plain(size * 1.15).serif(), width);
                row.gap = size * 1.1;
                row.below = 2.0;
                row.keep_with_next = true;
                row.kind = RowKind::Heading(2);
                rows.push(row);
            }
            Block::Facts(facts) => fact_rows(setter, facts, size, width, &mut rows),
            Block::Table(table) => {
                for part in parts(table, width).iter() {
                    let (table, cut) = table_rows(setter, part, size, width);
                    rows.extend(table);
                    let notes = cut.iter();
                    rows.extend(notes.map(|note| small_print(setter, note, size, width)));
                }
            }
            Block::Steps(stages) => {
                for stage in stages {
                    let begin = rows.len();
                    stage_rows(setter, stage, size, width, &mut number, &mut rows);
                    rows[begin].kind = RowKind::Heading(stage_level);
                }
            }
            Block::Cautions(cautions) => caution_rows(setter, cautions, size, width, &mut rows),
            Block::Paragraphs(lines) => {
                for line in lines {
                    let mut row = text_row(setter, line, Look::plain(size), width);
                    row.gap = size * 0.6;
                    rows.push(row);
                }
            }
            Block::Footnotes(lines) => {
                for line in lines {
                    // No page has nothing but small print: it stays with what stands before it.
                    if let Some(before) = rows.last_mut() {
                        before.keep_with_next = true;
                    }
                    rows.push(small_print(setter, line, size, width));
                }
            }
        }
    }
    rows
}

/// The state of the drink; one that is not approved is framed.
fn state_row(setter: &mut Typesetter, document: &Document, size: f32, width: f32) -> Row {
    if !document.is_unapproved {
        let mut row = text_row(setter, &document.revision, Look::plain(size).quiet(), width);
        row.gap = size * 0.5;
        return row;
    }
    let inset = size * 0.8;
    let look = Look::plain(size * 1.15).bold();
    Row {
        cells: vec![RowCell {
            x: inset,
            lines: setter.lines(&document.revision, look, width - 2.0 * inset),
            ..RowCell::default()
        }],
        surround: Surround::Framed,
        gap: size * 0.7,
        above: size * 0.4,
        below: size * 0.4,
        ..Row::default()
    }
}

/// A line of small print below words of this size.
pub(super) fn small_print(setter: &mut Typesetter, text: &str, size: f32, width: f32) -> Row {
    let look = Look::plain((size * 0.8).max(6.5)).quiet();
    let mut row = text_row(setter, text, look, width);
    row.gap = size * 0.7;
    row
}

fn text_row(setter: &mut Typesetter, text: &str, look: Look, width: f32) -> Row {
    Row {
        cells: vec![RowCell {
            x: 0.0,
            lines: setter.lines(text, look, width),
            ..RowCell::default()
        }],
        ..Row::default()
    }
}

fn fact_rows(setter: &mut Typesetter, facts: &[Fact], size: f32, width: f32, rows: &mut Vec<Row>) {
    let quiet = Look::plain(size).quiet();
    let widest = facts
        .iter()
        .map(|fact| setter.widths(&fact.name, quiet.bold()).0)
        .fold(0.0, f32::max);
    let names = (widest + 1.0).min(width * FACT_NAMES);
    let values = width - names - size;
    for (at, fact) in facts.iter().enumerate() {
        let strong = Look::plain(size).bold();
        let (name, value) = if fact.is_strong {
            (strong, strong)
        } else {
            (quiet, Look::plain(size))
        };
        rows.push(Row {
            cells: vec![
                RowCell {
                    x: 0.0,
                    lines: setter.lines(&fact.name, name, names),
                    ..RowCell::default()
                },
                RowCell {
                    x: names + size,
                    lines: setter.lines(&fact.value, value, values),
                    drawn: fact
                        .is_to_fill_in
                        .then(|| Drawn::Line(values.min(size * HAND))),
                },
            ],
            kind: RowKind::Item,
            begins: at == 0,
            // A hand needs more room than letters do.
            above: if fact.is_to_fill_in { size * 0.6 } else { 0.0 },
            gap: if at == 0 { size * 0.9 } else { 1.5 },
            ..Row::default()
        });
    }
}

fn stage_rows(
    setter: &mut Typesetter,
    stage: &StageSteps,
    size: f32,
    width: f32,
    number: &mut usize,
    rows: &mut Vec<Row>,
) {
    let mut title = text_row(
        setter,
        &stage.title,
        Look::plain(size).bold().quiet(),
        width,
    );
    title.gap = size * 0.8;
    title.below = 1.5;
    title.keep_with_next = true;
    rows.push(title);
    let numbers = size * 2.0;
    let amounts = (width * 0.27).min(size * 11.0);
    let grams = size * 5.2;
    let names = width - numbers - amounts - grams - 2.0 * size * 0.7;
    for step in &stage.rows {
        *number += 1;
        let mut row = Row {
            above: 2.6,
            below: 3.0,
            surround: Surround::RuleBelow(Ink::RULE, 0.5),
            kind: RowKind::Item,
            ..Row::default()
        };
        let look = Look::plain(size);
        row.cells.push(RowCell {
            x: 0.0,
            lines: setter.lines(&format!("{number}."), look.quiet(), numbers),
            ..RowCell::default()
        });
        match step {
            StepRow::Instruction(text) => row.cells.push(RowCell {
                x: numbers,
                lines: setter.lines(text, look, width - numbers),
                ..RowCell::default()
            }),
            StepRow::Line {
                amount,
                measure,
                name,
                grams: weight,
                remarks,
            } => {
                let small = Look::plain(size * 0.85).quiet();
                let mut said = setter.lines(amount, look.bold(), amounts);
                said.extend(setter.lines(measure, small, amounts));
                let mut what: Vec<TextLine> = setter.lines(name, look, names);
                for remark in remarks {
                    what.extend(setter.lines(remark, small, names));
                }
                let right = look.quiet().aligned(crate::cards::document::Align::Right);
                row.cells.push(RowCell {
                    x: numbers,
                    lines: said,
                    ..RowCell::default()
                });
                row.cells.push(RowCell {
                    x: numbers + amounts + size * 0.7,
                    lines: what,
                    ..RowCell::default()
                });
                row.cells.push(RowCell {
                    x: width - grams,
                    lines: setter.lines(weight, right, grams),
                    ..RowCell::default()
                });
            }
        }
        rows.push(row);
    }
}

fn caution_rows(
    setter: &mut Typesetter,
    cautions: &[CautionLine],
    size: f32,
    width: f32,
    rows: &mut Vec<Row>,
) {
    let inset = 9.0;
    let kinds = cautions
        .iter()
        .map(|caution| setter.widths(&caution.kind, Look::plain(size).bold()).0)
        .fold(0.0, f32::max);
    let kinds = (kinds + 1.0).min(width * CAUTION_KINDS);
    let texts = width - 2.0 * inset - kinds - size * 0.8;
    let count = cautions.len();
    for (at, caution) in cautions.iter().enumerate() {
        rows.push(Row {
            cells: vec![
                RowCell {
                    x: inset,
                    lines: setter.lines(&caution.kind, Look::plain(size).bold(), kinds),
                    ..RowCell::default()
                },
                RowCell {
                    x: inset + kinds + size * 0.8,
                    lines: setter.lines(&caution.text, Look::plain(size), texts),
                    ..RowCell::default()
                },
            ],
            kind: RowKind::Item,
            begins: at == 0,
            surround: Surround::Boxed,
            gap: if at == 0 { size } else { 0.0 },
            above: if at == 0 { 5.0 } else { 1.5 },
            below: if at + 1 == count { 5.5 } else { 1.5 },
            ..Row::default()
        });
    }
}
