//! Cards as one HTML file: no script, nothing fetched, every name escaped; prints on the paper that was chosen.

use std::fmt::Write as _;

use super::document::{Align, Block, Document, Orientation, StageSteps, StepRow, Table};
use super::pages::Paper;
use super::recognised::GENERATOR;
use crate::say::{Speaker, say};

/// How the page looks on a screen and on paper. Names in any script take the fonts of the reader's machine.
const STYLE: &str = "
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0; background: #ecebe7; color: #1c1b19; font: 11pt/1.4 system-ui, 'Noto Sans', sans-serif; }
main { background: #fff; max-width: 46em; margin: 1.5em auto; padding: 2em 2.2em; }
main.wide { max-width: 76em; }
h1 { font: 600 20pt/1.2 Georgia, 'Noto Serif', serif; margin: 0; }
h2 { font-size: 12pt; margin: 1.4em 0 .4em; border-bottom: 1px solid #b9b6ae; padding-bottom: .15em; break-after: avoid; }
.stage { font-size: 10.5pt; margin: 1em 0 .3em; color: #4a4740; border: 0; break-after: avoid; }
.state { color: #4a4740; margin: .1em 0 1em; }
.unapproved { border: 2.5px solid #1c1b19; padding: .35em .7em; margin: .3em 0 1em; font-size: 12.5pt; }
.subtitle { font-size: 12.5pt; color: #4a4740; margin: .1em 0 1em; }
ol { list-style: none; margin: 0; padding: 0; }
ol li { display: grid; grid-template-columns: 2em minmax(5.5em, 9em) 1fr auto; gap: 0 .8em; padding: .35em 0; border-bottom: 1px solid #e0ded8; break-inside: avoid; }
ol li .number { color: #6a675f; }
ol li .amount { font-weight: 600; }
ol li .measure, ol li .remark { display: block; color: #5b5850; font-size: 9.5pt; font-weight: 400; }
ol li .grams { color: #4a4740; white-space: nowrap; }
ol li.instruction .text { grid-column: 2 / -1; }
dl { display: grid; grid-template-columns: minmax(8em, 13em) 1fr; gap: .2em 1em; margin: 1em 0; }
dt { color: #5b5850; } dt strong { color: #1c1b19; } dd { margin: 0; }
dd.to-fill-in { border-bottom: 1px solid #1c1b19; min-height: 1.8em; }
.box { display: inline-block; width: .95em; height: .95em; border: 1px solid #1c1b19; vertical-align: -.12em; margin-right: .3em; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; margin: .4em 0 1em; font-size: 9.5pt; }
caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
th, td { text-align: start; vertical-align: top; padding: .3em .5em; border-bottom: 1px solid #e0ded8; }
thead th { border-bottom: 1.5px solid #4a4740; font-weight: 600; }
tbody th { font-weight: 600; }
.number-cell { text-align: right; font-variant-numeric: tabular-nums; }
main.wide table { font-size: 8pt; }
main.wide th, main.wide td { padding: .25em .35em; }
tr { break-inside: avoid; } thead { display: table-header-group; }
aside { border: 1.5px solid #1c1b19; padding: .6em .9em; margin: 1em 0; break-inside: avoid; }
aside p { margin: .25em 0; } aside strong { text-transform: none; }
main.slips dl, main.slips p { break-after: avoid; } main.slips table, main.slips .footnote { break-inside: avoid; break-after: auto; }
.footnote { font-size: 8.5pt; color: #5b5850; }
footer { font-size: 8.5pt; color: #4a4740; border-top: 1px solid #b9b6ae; margin-top: 1.4em; padding-top: .4em; }
@media print { body { background: none; font-size: 9.5pt; } main { max-width: none !important; margin: 0; padding: 0; } .scroll { overflow: visible; } }
";

/// A document as one HTML file.
pub fn html(document: &Document, paper: Paper) -> String {
    let (width, height) = paper.points(document.orientation);
    let title = if document.subtitle.is_empty() {
        document.title.clone()
    } else {
        format!("{} — {}", document.title, document.subtitle)
    };
    let mut page = format!(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" \
         content=\"width=device-width, initial-scale=1\">\n{GENERATOR}\n<title>{}</title>\n<style>{STYLE}@page {{ size: {width}pt {height}pt; \
         margin: 28pt; }}\n</style>\n</head>\n<body>\n",
        escaped(document.language.code()),
        escaped(&title)
    );
    let class = match document.orientation {
        Orientation::Upright if document.kind.has_slips() => " class=\"slips\"",
        Orientation::Upright => "",
        Orientation::Wide => " class=\"wide\"",
    };
    let _ = writeln!(
        page,
        "<main{class}>\n<h1 dir=\"auto\">{}</h1>",
        escaped(&document.title)
    );
    if !document.subtitle.is_empty() {
        let _ = writeln!(
            page,
            "<p class=\"subtitle\" dir=\"auto\">{}</p>",
            escaped(&document.subtitle)
        );
    }
    if !document.revision.is_empty() {
        let _ = if document.is_unapproved {
            writeln!(
                page,
                "<p class=\"unapproved\" dir=\"auto\"><strong>{}</strong></p>",
                escaped(&document.revision)
            )
        } else {
            writeln!(
                page,
                "<p class=\"state\" dir=\"auto\">{}</p>",
                escaped(&document.revision)
            )
        };
    }
    let mut number = 0;
    let stage_level = document.stage_level();
    let speaker = document.speaker();
    for block in &document.blocks {
        write_block(&mut page, &speaker, block, stage_level, &mut number);
    }
    let _ = writeln!(
        page,
        "<footer dir=\"auto\">{}</footer>\n</main>\n</body>\n</html>",
        escaped(&document.foot())
    );
    page
}

fn write_block(
    page: &mut String,
    speaker: &Speaker<'_>,
    block: &Block,
    stage_level: u8,
    number: &mut usize,
) {
    match block {
        Block::Heading(text) => {
            let _ = writeln!(page, "<h2>{}</h2>", escaped(text));
        }
        Block::Facts(facts) => {
            page.push_str("<dl>\n");
            for fact in facts {
                let (open, close) = strong(fact.is_strong);
                let class = if fact.is_to_fill_in {
                    " class=\"to-fill-in\""
                } else {
                    ""
                };
                let _ = writeln!(
                    page,
                    "<dt>{open}{}{close}</dt><dd{class} dir=\"auto\">{open}{}{close}</dd>",
                    escaped(&fact.name),
                    escaped(&fact.value)
                );
            }
            page.push_str("</dl>\n");
        }
        Block::Table(table) => write_table(page, table),
        Block::Steps(stages) => {
            for stage in stages {
                write_stage(page, stage, stage_level, number);
            }
        }
        Block::Cautions(cautions) if cautions.is_empty() => {}
        Block::Cautions(cautions) => {
            page.push_str("<aside aria-label=\"");
            page.push_str(&escaped(speaker.word("card-cautions")));
            page.push_str("\">\n");
            for caution in cautions {
                let _ = writeln!(
                    page,
                    "<p dir=\"auto\"><strong>{}</strong> {}</p>",
                    escaped(&say!(speaker, "card-caution", kind: &caution.kind)),
                    escaped(&caution.text)
                );
            }
            page.push_str("</aside>\n");
        }
        Block::Paragraphs(lines) => {
            for line in lines {
                let _ = writeln!(page, "<p dir=\"auto\">{}</p>", escaped(line));
            }
        }
        Block::Footnotes(lines) => {
            for line in lines {
                let _ = writeln!(
                    page,
                    "<p class=\"footnote\" dir=\"auto\">{}</p>",
                    escaped(line)
                );
            }
        }
    }
}

/// The marks around words that stand out.
fn strong(is_strong: bool) -> (&'static str, &'static str) {
    if is_strong {
        ("<strong>", "</strong>")
    } else {
        ("", "")
    }
}

fn write_stage(page: &mut String, stage: &StageSteps, level: u8, number: &mut usize) {
    let _ = writeln!(
        page,
        "<h{level} class=\"stage\" dir=\"auto\">{}</h{level}>\n<ol start=\"{}\">",
        escaped(&stage.title),
        *number + 1
    );
    for row in &stage.rows {
        *number += 1;
        match row {
            StepRow::Instruction(text) => {
                let _ = writeln!(
                    page,
                    "<li class=\"instruction\"><span class=\"number\">{number}.</span><span class=\"text\" dir=\"auto\">{}</span></li>",
                    escaped(text)
                );
            }
            StepRow::Line {
                amount,
                measure,
                name,
                grams,
                remarks,
            } => {
                let _ = write!(
                    page,
                    "<li><span class=\"number\">{number}.</span><span class=\"amount\">{}{}</span><span dir=\"auto\">{}",
                    escaped(amount),
                    small("measure", measure),
                    escaped(name)
                );
                for remark in remarks {
                    page.push_str(&small("remark", remark));
                }
                let _ = writeln!(
                    page,
                    "</span><span class=\"grams\">{}</span></li>",
                    escaped(grams)
                );
            }
        }
    }
    page.push_str("</ol>\n");
}

fn small(class: &str, text: &str) -> String {
    if text.is_empty() {
        return String::new();
    }
    format!(
        " <span class=\"{class}\" dir=\"auto\">{}</span>",
        escaped(text)
    )
}

fn write_table(page: &mut String, table: &Table) {
    let class = |align: Align| match align {
        Align::Start => "",
        Align::Right => " class=\"number-cell\"",
    };
    let _ = writeln!(
        page,
        "<div class=\"scroll\"><table>\n<caption>{}</caption>\n<thead><tr>",
        escaped(&table.caption)
    );
    for column in &table.columns {
        let _ = write!(
            page,
            "<th scope=\"col\"{} dir=\"auto\">{}</th>",
            class(column.align),
            escaped(&column.title)
        );
    }
    page.push_str("</tr></thead>\n<tbody>\n");
    for row in &table.rows {
        page.push_str("<tr>");
        for (at, (cell, column)) in row.iter().zip(&table.columns).enumerate() {
            let (open, close) = strong(column.is_strong(cell));
            let mut cell = format!("{open}{}{close}", escaped(cell));
            if column.has_boxes {
                cell.insert_str(0, "<span class=\"box\"></span> ");
            }
            let _ = if at == 0 {
                write!(page, "<th scope=\"row\" dir=\"auto\">{cell}</th>")
            } else {
                write!(page, "<td{} dir=\"auto\">{cell}</td>", class(column.align))
            };
        }
        page.push_str("</tr>\n");
    }
    page.push_str("</tbody>\n</table></div>\n");
}

/// Text that no reader of HTML takes for markup. Control characters, which HTML forbids, become the replacement sign.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\'' => escaped.push_str("&#39;"),
            '\n' | '\t' => escaped.push(' '),
            _ if character.is_control() => escaped.push('\u{fffd}'),
            _ => escaped.push(character),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_in_a_name_is_markup() {
        assert_eq!(
            escaped("<b onclick='x'>\"&\"</b>\u{0}"),
            "&lt;b onclick=&#39;x&#39;&gt;&quot;&amp;&quot;&lt;/b&gt;\u{fffd}"
        );
    }
}
