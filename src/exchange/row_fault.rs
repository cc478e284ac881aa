//! Rows of a table that are not what they seem: a quote that swallows the next row, a number that its own comma divides.

use super::delimiter::Delimiter;

/// Why a row is not taken for what it seems.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RowFault {
    /// A quote is opened and the file ends before it is closed.
    NeverClosed {
        /// The first line of the row, from 1.
        from: u64,
        /// The last.
        to: u64,
    },
    /// Something stands between a closed quote and the end of its cell.
    BehindQuote {
        /// The line, from 1.
        line: u64,
    },
    /// A quote ends a cell that none begins.
    NeverOpened {
        /// The line, from 1.
        line: u64,
    },
    /// A quoted cell holds what looks like a row of its own.
    HoldsRow {
        /// The first line of the row, from 1.
        from: u64,
        /// The last.
        to: u64,
    },
    /// There are more cells than headings.
    TooWide {
        /// Cells of the row.
        cells: usize,
        /// Headings of the table.
        headings: usize,
    },
    /// There are fewer cells than headings: one that is left out shifts those behind it under the wrong heading.
    TooNarrow {
        /// Cells of the row.
        cells: usize,
        /// Headings of the table.
        headings: usize,
    },
}

/// What is wrong with the quotes of a row. `raw` is the row as it stands in the file, `line` where it begins, from 1, and
/// `columns` how many cells a row has.
pub(super) fn quote_fault(
    raw: &str,
    line: u64,
    delimiter: Delimiter,
    columns: usize,
) -> Option<RowFault> {
    let delimiter = delimiter.byte();
    let bytes = raw.as_bytes();
    let (mut at, mut here) = (0, line);
    while at < bytes.len() {
        if bytes[at] != b'"' {
            // A cell without quotes: a quote within it is a letter, and at its end one that was never opened.
            let begin = at;
            while at < bytes.len() && bytes[at] != delimiter && !is_break(bytes[at]) {
                at += 1;
            }
            let cell = bytes[begin..at].trim_ascii_end();
            let parts = cell.split(|byte| *byte == b'"').count();
            if cell.ends_with(b"\"") && parts % 2 == 0 {
                return Some(RowFault::NeverOpened { line: here });
            }
            here += u64::from(bytes.get(at) == Some(&b'\n'));
            at += 1;
            continue;
        }
        let from = here;
        at += 1;
        loop {
            match bytes.get(at) {
                None => return Some(RowFault::NeverClosed { from, to: here }),
                Some(b'"') if bytes.get(at + 1) == Some(&b'"') => at += 1,
                Some(b'"') => break,
                Some(byte) => here += u64::from(*byte == b'\n'),
            }
            at += 1;
        }
        at += 1;
        match bytes.get(at) {
            None => {}
            Some(b'\r' | b'\n') => {
                here += u64::from(bytes[at] == b'\n');
                at += 1;
            }
            Some(byte) if *byte == delimiter => at += 1,
            Some(_) => return Some(RowFault::BehindQuote { line: here }),
        }
    }
    // Each line of a file whose quotes are right is a row, or part of a cell of one: two that could be rows are two rows.
    let cells = |line: &[u8]| line.split(|byte| *byte == delimiter).count();
    let lines = bytes
        .trim_ascii_end()
        .split(|byte| is_break(*byte))
        .filter(|line| cells(line) >= columns.max(2));
    (lines.count() > 1).then(|| RowFault::HoldsRow {
        from: line,
        to: line + raw.trim().matches('\n').count() as u64,
    })
}

/// An end of a line, as the reader of the cells takes it.
fn is_break(byte: u8) -> bool {
    matches!(byte, b'\r' | b'\n')
}
