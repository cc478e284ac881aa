//! Tables: widths of columns by what stands in them, then a row for each row.

use std::borrow::Cow;

use super::page::{Ink, RowKind};
use super::rows::{Drawn, Row, RowCell, Surround};
use super::typesetter::{Look, Typesetter};
use crate::cards::document::{Align, Column, Table};
use crate::quantity::excerpt;

/// Room between columns, pt.
const BETWEEN: f32 = 8.0;

/// Most of the width that all the room between columns takes.
const MOST_BETWEEN: f32 = 0.3;

/// Least width of a column with the room beside it, pt: a few letters.
const NARROWEST: f32 = 26.0;

/// Most lines that a name takes in the first column or the head: one that takes more is cut with a mark, and stands in full
/// below the table.
const MOST_NAME_LINES: usize = 8;

/// Most characters that are set to find out where a name is cut.
const LONGEST_TRIED: usize = 400;

/// Side of a box to be crossed, in sizes of the words.
const BOX: f32 = 1.0;

/// Room between a box and its words, in sizes of the words.
const BESIDE_BOX: f32 = 0.5;

/// Room that a box takes in front of words of this size, pt.
fn before_boxed(size: f32) -> f32 {
    size * (BOX + BESIDE_BOX)
}

/// A table whose columns go beside each other on this width, or several of them, each with the names of the rows.
pub(super) fn parts(table: &Table, width: f32) -> Cow<'_, [Table]> {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a width of paper by that of a column"
    )]
    let most = (width / NARROWEST).max(2.0) as usize;
    if table.columns.len() <= most {
        return Cow::Borrowed(std::slice::from_ref(table));
    }
    let others: Vec<usize> = (1..table.columns.len()).collect();
    let parts = others.chunks(most - 1).map(|chosen| {
        let chosen = || std::iter::once(0).chain(chosen.iter().copied());
        let cells = |row: &Vec<String>| chosen().filter_map(|at| row.get(at).cloned()).collect();
        Table {
            caption: table.caption.clone(),
            columns: chosen().map(|at| table.columns[at].clone()).collect(),
            rows: table.rows.iter().map(cells).collect(),
        }
    });
    Cow::Owned(parts.collect())
}

/// The head of a table and its rows, and the names in full that had to be cut.
pub(super) fn table_rows(
    setter: &mut Typesetter,
    table: &Table,
    size: f32,
    width: f32,
) -> (Vec<Row>, Vec<String>) {
    let size = size - 0.5;
    let head = Look::plain(size).bold();
    let plain = Look::plain(size);
    let between = BETWEEN.min(width * MOST_BETWEEN / table.columns.len().max(1) as f32);
    let widths = column_widths(setter, table, head, width, between);
    let mut rows = Vec::new();
    let mut notes = Vec::new();
    let mut add = |setter: &mut Typesetter,
                   cells: &mut dyn Iterator<Item = (&str, Look, Option<Drawn>)>| {
        let mut x = 0.0;
        let mut row = Row {
            above: 2.6,
            below: 2.8,
            surround: Surround::RuleBelow(Ink::RULE, 0.5),
            is_in_table: true,
            kind: RowKind::TableRow,
            ..Row::default()
        };
        let is_head = rows.is_empty();
        for (at, ((text, look, drawn), width)) in cells.zip(&widths).enumerate() {
            let is_name = is_head || at == 0;
            let short = if is_name {
                cut(setter, text, look, *width, notes.len() + 1)
            } else {
                None
            };
            if let Some((_, in_full)) = &short {
                notes.push(in_full.clone());
            }
            let text = short.as_ref().map_or(text, |(short, _)| short);
            let before = drawn.map_or(0.0, |_| before_boxed(size));
            row.cells.push(RowCell {
                x: x + before,
                lines: setter.lines(text, look, width - before),
                drawn,
            });
            x += width + between;
        }
        rows.push(row);
    };
    let mut titles = table
        .columns
        .iter()
        .map(|column| (column.title.as_str(), head.aligned(column.align), None));
    add(setter, &mut titles);
    for cells in &table.rows {
        let mut cells = cells
            .iter()
            .zip(&table.columns)
            .enumerate()
            .map(|(at, (cell, column))| {
                let is_bold = at == 0 || column.is_strong(cell);
                let look = if is_bold { head } else { plain };
                let drawn = column.has_boxes.then_some(Drawn::Box {
                    side: size * BOX,
                    between: size * BESIDE_BOX,
                });
                (cell.as_str(), look.aligned(column.align), drawn)
            });
        add(setter, &mut cells);
    }
    if let Some(head) = rows.first_mut() {
        head.surround = Surround::RuleBelow(Ink::BLACK, 0.9);
        head.keep_with_next = true;
        head.kind = RowKind::TableHead;
        head.begins = true;
        head.gap = 6.0;
    }
    // A head with a single row below it looks lost at the foot of a page.
    if rows.len() > 2 {
        rows[1].keep_with_next = true;
    }
    (rows, notes)
}

/// A name as far as it has room, with the number of the note that has all of it; `None` for one that has room.
fn cut(
    setter: &mut Typesetter,
    text: &str,
    look: Look,
    width: f32,
    number: usize,
) -> Option<(String, String)> {
    let tried = excerpt(text, LONGEST_TRIED);
    let lines = setter.lines(&tried, look, width).len();
    if lines <= MOST_NAME_LINES && text.chars().nth(LONGEST_TRIED).is_none() {
        return None;
    }
    let with_mark = |length: usize| format!("{} [{number}]", excerpt(text, length));
    // Halving: every length that has room is shorter than every one that has none, but for a break here and there.
    let (mut fits, mut too_long) = (1, LONGEST_TRIED);
    while too_long - fits > 1 {
        let middle = fits.midpoint(too_long);
        if setter.lines(&with_mark(middle), look, width).len() <= MOST_NAME_LINES {
            fits = middle;
        } else {
            too_long = middle;
        }
    }
    Some((with_mark(fits), format!("[{number}] {text}")))
}

/// Every column gets its longest word, and the rest is divided by how much more each would take.
fn column_widths(
    setter: &mut Typesetter,
    table: &Table,
    look: Look,
    width: f32,
    between: f32,
) -> Vec<f32> {
    let count = table.columns.len().max(1) as f32;
    let room = (width - between * (count - 1.0)).max(1.0);
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
            let (widest, word) = widths.fold((0.0_f32, 0.0_f32), |one, two| {
                (one.0.max(two.0), one.1.max(two.1))
            });
            let before = if column.has_boxes {
                before_boxed(look.size)
            } else {
                0.0
            };
            (widest + before, word + before)
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
        return shared_evenly(widths.iter().map(|(_, word)| *word).collect(), room);
    }
    let wanted: f32 = widths.iter().map(|(widest, word)| widest - word).sum();
    widths
        .iter()
        .map(|(widest, word)| word + (widest - word) / wanted * (room - words))
        .collect()
}

/// Columns that want no more than an even share get what they want, and the others share what that leaves. By what each
/// wants, a long word would take the room of all the short ones, which then stand letter below letter.
fn shared_evenly(wanted: Vec<f32>, room: f32) -> Vec<f32> {
    let mut ascending = wanted.clone();
    ascending.sort_by(f32::total_cmp);
    let (mut left, mut count) = (room, wanted.len());
    for want in ascending {
        let share = left / count as f32;
        if want > share {
            return wanted.into_iter().map(|want| want.min(share)).collect();
        }
        left -= want;
        count -= 1;
    }
    wanted
}
