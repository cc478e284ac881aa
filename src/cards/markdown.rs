//! Cards as Markdown, with every character of a name taken as itself.

use std::fmt::Write as _;

use super::document::{Align, Block, Document, StepRow, Table};
use crate::say::{Speaker, say};

/// A box to be crossed.
const BOX: char = '☐';
/// Where something is written by hand; the signs mean themselves.
const LINE_TO_WRITE_ON: &str = "\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_";

/// A document as `CommonMark` with tables.
pub fn markdown(document: &Document) -> String {
    let mut text = format!("# {}\n\n", plain(&document.title));
    if !document.subtitle.is_empty() {
        let _ = writeln!(text, "**{}**\n", plain(&document.subtitle));
    }
    if document.is_unapproved {
        let _ = writeln!(text, "> **{}**\n", plain(&document.revision));
    } else if !document.revision.is_empty() {
        let _ = writeln!(text, "{}\n", plain(&document.revision));
    }
    let speaker = document.speaker();
    for block in &document.blocks {
        write_block(&mut text, &speaker, block);
    }
    let _ = writeln!(text, "---\n\n{}", plain(&document.foot()));
    text
}

fn write_block(text: &mut String, speaker: &Speaker<'_>, block: &Block) {
    match block {
        Block::Heading(heading) => {
            let _ = writeln!(text, "## {}\n", plain(heading));
        }
        Block::Facts(facts) => {
            for fact in facts {
                let (name, value) = (plain(&fact.name), plain(&fact.value));
                let _ = if fact.is_to_fill_in {
                    writeln!(text, "- {name}: {LINE_TO_WRITE_ON}")
                } else if fact.is_strong {
                    writeln!(text, "- **{name}: {value}**")
                } else {
                    writeln!(text, "- {name}: {value}")
                };
            }
            text.push('\n');
        }
        Block::Table(table) => write_table(text, table),
        Block::Steps(stages) => {
            let mut number = 0;
            for stage in stages {
                let _ = writeln!(text, "### {}\n", plain(&stage.title));
                for row in &stage.rows {
                    number += 1;
                    let _ = writeln!(text, "{number}. {}", step(row));
                }
                text.push('\n');
            }
        }
        Block::Cautions(cautions) => {
            for caution in cautions {
                let _ = writeln!(
                    text,
                    "> **{}**: {}\n",
                    plain(&say!(speaker, "card-caution", kind: &caution.kind)),
                    plain(&caution.text)
                );
            }
        }
        Block::Paragraphs(lines) => {
            for line in lines {
                let _ = writeln!(text, "{}\n", plain(line));
            }
        }
        Block::Footnotes(lines) => {
            for line in lines {
                let _ = writeln!(text, "*{}*\n", plain(line));
            }
        }
    }
}

fn step(row: &StepRow) -> String {
    match row {
        StepRow::Instruction(text) => plain(text),
        StepRow::Line {
            amount,
            measure,
            name,
            grams,
            remarks,
        } => {
            let measure = if measure.is_empty() {
                String::new()
            } else {
                format!(" ({})", plain(measure))
            };
            let mut text = format!(
                "**{}**{measure} {} — {}",
                plain(amount),
                plain(name),
                plain(grams)
            );
            for remark in remarks {
                let _ = write!(text, ", {}", plain(remark));
            }
            text
        }
    }
}

fn write_table(text: &mut String, table: &Table) {
    let row = |cells: &mut dyn Iterator<Item = String>| {
        let cells: Vec<String> = cells.collect();
        format!("| {} |\n", cells.join(" | "))
    };
    text.push_str(&row(&mut table
        .columns
        .iter()
        .map(|column| plain(&column.title))));
    text.push_str(&row(&mut table.columns.iter().map(|column| {
        match column.align {
            Align::Start => "---".to_owned(),
            Align::Right => "---:".to_owned(),
        }
    })));
    for cells in &table.rows {
        let cells = cells.iter().zip(&table.columns).map(|(cell, column)| {
            if column.has_boxes {
                format!("{BOX} {}", plain(cell))
            } else if column.is_strong(cell) {
                format!("**{}**", plain(cell))
            } else {
                plain(cell)
            }
        });
        text.push_str(&row(&mut { cells }));
    }
    text.push('\n');
}

/// Text in which no character means anything but itself, on one line.
fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '\n' | '\r' | '\t' => plain.push(' '),
            '\\' | '`' | '*' | '_' | '{' | '}' | '[' | ']' | '<' | '>' | '#' | '|' | '~' | '&'
            | '!' => {
                plain.push('\\');
                plain.push(character);
            }
            _ => plain.push(character),
        }
    }
    // "1." and "+" begin a list where they begin a line.
    let digits = plain.chars().take_while(char::is_ascii_digit).count();
    let after = plain[digits..].chars().next();
    if digits > 0 && matches!(after, Some('.' | ')')) {
        plain.insert(digits, '\\');
    } else if plain.starts_with(['+', '-', '=']) {
        plain.insert(0, '\\');
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_can_not_turn_into_markup() {
        for (name, escaped) in [
            ("a|b", "a\\|b"),
            ("<script>", "\\<script\\>"),
            ("*bold* _it_", "\\*bold\\* \\_it\\_"),
            ("1. first", "1\\. first"),
            ("- list", "\\- list"),
            ("two\nlines", "two lines"),
            ("焙茶", "焙茶"),
        ] {
            assert_eq!(plain(name), escaped);
        }
    }
}
