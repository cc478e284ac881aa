//! Cards as comma-separated values for a spreadsheet: one row for each thing that stands on the card.

use super::document::{Block, Document, StepRow};

/// A text that a spreadsheet takes for text: one that begins like a formula gets an apostrophe in front.
///
/// `=`, `+`, `-`, `@`, tab and carriage return begin formulas in the common spreadsheets; space before them is no
/// protection, and neither is the full-width form of a sign.
pub fn neutral_cell(text: &str) -> String {
    let first = text
        .trim_start_matches([' ', '\u{a0}', '\u{feff}'])
        .chars()
        .next();
    match first {
        Some('=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠') => {
            format!("'{text}")
        }
        _ => text.to_owned(),
    }
}

/// A document as CSV: columns "part", "name" and values. Tables keep their columns, each below its own heading row.
pub fn csv(document: &Document) -> Vec<u8> {
    let mut rows: Vec<Vec<String>> = vec![
        row(["title", &document.title, &document.subtitle]),
        row(["shop", &document.shop]),
        row(["revision", &document.revision]),
        row(["date", &document.date]),
    ];
    let mut number = 0;
    for block in &document.blocks {
        match block {
            Block::Heading(text) => rows.push(row(["heading", text])),
            Block::Facts(facts) => rows.extend(
                facts
                    .iter()
                    .map(|fact| row(["fact", &fact.name, &fact.value])),
            ),
            Block::Table(table) => {
                let titles = table.columns.iter().map(|column| &column.title);
                rows.push(
                    std::iter::once("table".to_owned())
                        .chain(titles.cloned())
                        .collect(),
                );
                rows.extend(table.rows.iter().map(|cells| {
                    std::iter::once("row".to_owned())
                        .chain(cells.iter().cloned())
                        .collect()
                }));
            }
            Block::Steps(stages) => {
                rows.push(row([
                    "steps", "number", "stage", "amount", "measure", "what", "weight", "remarks",
                ]));
                for stage in stages {
                    for step in &stage.rows {
                        number += 1;
                        rows.push(step_row(number, &stage.title, step));
                    }
                }
            }
            Block::Cautions(cautions) => rows.extend(
                cautions
                    .iter()
                    .map(|caution| row(["caution", &caution.kind, &caution.text])),
            ),
            Block::Paragraphs(lines) => {
                rows.extend(lines.iter().map(|line| row(["text", line])));
            }
            Block::Footnotes(lines) => rows.extend(lines.iter().map(|line| row(["note", line]))),
        }
    }
    write_rows(&rows)
}

fn row<const N: usize>(cells: [&str; N]) -> Vec<String> {
    cells.map(str::to_owned).to_vec()
}

fn step_row(number: usize, stage: &str, step: &StepRow) -> Vec<String> {
    let number = number.to_string();
    match step {
        StepRow::Instruction(text) => row(["step", &number, stage, "", "", text, "", ""]),
        StepRow::Line {
            amount,
            measure,
            name,
            grams,
            remarks,
        } => row([
            "step",
            &number,
            stage,
            amount,
            measure,
            name,
            grams,
            &remarks.join("; "),
        ]),
    }
}

/// Rows of equal length, for readers that insist on it, with a byte order mark: without one some spreadsheets take UTF-8
/// for something else.
fn write_rows(rows: &[Vec<String>]) -> Vec<u8> {
    let width = rows.iter().map(Vec::len).max().unwrap_or(0);
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer("\u{feff}".as_bytes().to_vec());
    for cells in rows {
        let cells = cells.iter().map(|cell| neutral_cell(cell));
        let padded = cells.chain(std::iter::repeat(String::new())).take(width);
        // Writing to memory can't fail, and the rows are of one length.
        let _ = writer.write_record(padded);
    }
    writer.into_inner().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_that_begins_like_a_formula_is_text() {
        for (cell, expected) in [
            ("=1+1", "'=1+1"),
            ("+49", "'+49"),
            ("-3", "'-3"),
            ("@home", "'@home"),
            ("\tx", "'\tx"),
            ("\rx", "'\rx"),
            ("  =x", "'  =x"),
            ("＝x", "'＝x"),
            ("tea", "tea"),
            ("−3 °C", "−3 °C"),
            ("", ""),
        ] {
            assert_eq!(neutral_cell(cell), expected);
        }
    }
}
