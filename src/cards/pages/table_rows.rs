//! Tables: widths of columns by what stands in them, then a row for each row.

use super::rows::{Cell, Row, Surround};
use super::typesetter::{Ink, Look, Typesetter};
use crate::cards::document::{Align, Column, Table};

/// Room between columns, pt.
const BETWEEN: f32 = 8.0;

/// The head of a table and its rows.
pub(super) fn table_rows(
    setter: &mut Typesetter,
    table: &Table,
    size: f32,
    width: f32,
) -> Vec<Row> {
    let size = size - 0.5;
    let head = Look::plain(size).bold();
    let plain = Look::plain(size);
    let widths = column_widths(setter, table, head, width);
    let mut rows = Vec::new();
    let mut add = |setter: &mut Typesetter, cells: &mut dyn Iterator<Item = (&str, Look)>| {
        let mut x = 0.0;
        let mut row = Row {
            above: 2.6,
            below: 2.8,
            surround: Surround::RuleBelow(Ink::RULE, 0.5),
            is_in_table: true,
            ..Row::default()
        };
        for ((text, look), width) in cells.zip(&widths) {
            row.cells.push(Cell {
                x,
                lines: setter.lines(text, look, *width),
            });
            x += width + BETWEEN;
        }
        rows.push(row);
    };
    let mut titles = table
        .columns
        .iter()
        .map(|column| (column.title.as_str(), head.aligned(column.align)));
    add(setter, &mut titles);
    for cells in &table.rows {
        let mut cells = cells
            .iter()
            .zip(&table.columns)
            .enumerate()
            .map(|(at, (cell, column))| {
                let look = if at == 0 { head } else { plain };
                (cell.as_str(), look.aligned(column.align))
            });
        add(setter, &mut cells);
    }
    if let Some(head) = rows.first_mut() {
        head.surround = Surround::RuleBelow(Ink::BLACK, 0.9);
        head.keep_with_next = true;
        head.is_table_head = true;
        head.gap = 6.0;
    }
    // A head with a single row below it looks lost at the foot of a page.
    if rows.len() > 2 {
        rows[1].keep_with_next = true;
    }
    rows
}

/// Every column gets its longest word, and the rest is divided by how much more each would take.
fn column_widths(setter: &mut Typesetter, table: &Table, look: Look, width: f32) -> Vec<f32> {
    let count = table.columns.len().max(1) as f32;
    let room = (width - BETWEEN * (count - 1.0)).max(1.0);
    let widths: Vec<(f32, f32)> = table
        .columns
        .iter()
        .enumerate()
        .map(|(at, column)| {
            let cells = table.rows.iter().filter_map(|row| row.get(at));
            let mut texts: Vec<&str> = cells.map(String::as_str).collect();
            texts.push(&column.title);
            texts.sort_unstable();
            texts.dedup();
            // A hair more, so that a word that fits exactly is not broken by rounding.
            let widths = texts.iter().map(|text| {
                let (widest, word) = setter.widths(text, look);
                (widest + 0.5, word + 0.5)
            });
            widths.fold((0.0_f32, 0.0_f32), |one, two| {
                (one.0.max(two.0), one.1.max(two.1))
            })
        })
        .collect();
    let all: f32 = widths.iter().map(|(widest, _)| widest).sum();
    if all <= room {
        // What is left goes to the columns of words alike, so that numbers stand at the right edge.
        let is_text = |column: &Column| column.align == Align::Start;
        let texts = table
            .columns
            .iter()
            .filter(|column| is_text(column))
            .count();
        let spare = (room - all) / texts.max(1) as f32;
        return widths
            .iter()
            .zip(&table.columns)
            .map(|((widest, _), column)| widest + if is_text(column) { spare } else { 0.0 })
            .collect();
    }
    let words: f32 = widths.iter().map(|(_, word)| word).sum();
    if words >= room {
        return widths.iter().map(|(_, word)| word / words * room).collect();
    }
    let wanted: f32 = widths.iter().map(|(widest, word)| widest - word).sum();
    widths
        .iter()
        .map(|(widest, word)| word + (widest - word) / wanted * (room - words))
        .collect()
}
