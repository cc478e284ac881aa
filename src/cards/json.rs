//! Cards as JSON: the layout model as it is, for programs that lay it out themselves.

use serde_json::{Value, json};

use super::document::{Align, Block, Document, StepRow};
use crate::say::UntranslatedText;

/// A document as one JSON value.
pub fn json(document: &Document) -> Value {
    json!({
        "kind": document.kind.key(),
        "language": document.language.code(),
        "title": document.title,
        "subtitle": document.subtitle,
        "shop": document.shop,
        "revision": document.revision,
        "is_unapproved": document.is_unapproved,
        "date": (!document.date.is_empty()).then_some(&document.date),
        "blocks": document.blocks.iter().map(block).collect::<Vec<_>>(),
        "untranslated": untranslated(&document.untranslated),
        "confirmation": document.confirmation.as_ref().map(|confirmed| json!({ "by": confirmed.by, "date": confirmed.date })),
    })
}

/// Texts that stand on a card as they are written, with the item that each belongs to.
fn untranslated(texts: &[UntranslatedText]) -> Value {
    let texts = texts.iter().map(|found| {
        json!({
            "item": found.item.key(),
            "id": found.item.id(),
            "text": found.text,
        })
    });
    texts.collect()
}

fn block(block: &Block) -> Value {
    match block {
        Block::Heading(text) => json!({ "type": "heading", "text": text }),
        Block::Facts(facts) => json!({
            "type": "facts",
            "facts": facts
                .iter()
                .map(|fact| {
                    let value = (!fact.is_to_fill_in).then_some(&fact.value);
                    json!({ "name": fact.name, "value": value, "is_strong": fact.is_strong })
                })
                .collect::<Vec<_>>(),
        }),
        Block::Table(table) => json!({
            "type": "table",
            "caption": table.caption,
            "columns": table
                .columns
                .iter()
                .map(|column| json!({ "title": column.title, "number": column.align == Align::Right, "boxes": column.has_boxes }))
                .collect::<Vec<_>>(),
            "rows": table.rows,
        }),
        Block::Steps(stages) => json!({
            "type": "steps",
            "stages": stages
                .iter()
                .map(|stage| json!({ "title": stage.title, "steps": stage.rows.iter().map(step).collect::<Vec<_>>() }))
                .collect::<Vec<_>>(),
        }),
        Block::Cautions(cautions) => json!({
            "type": "cautions",
            "cautions": cautions
                .iter()
                .map(|caution| json!({ "kind": caution.kind, "text": caution.text }))
                .collect::<Vec<_>>(),
        }),
        Block::Paragraphs(lines) => json!({ "type": "paragraphs", "lines": lines }),
        Block::Footnotes(lines) => json!({ "type": "footnotes", "lines": lines }),
    }
}

fn step(row: &StepRow) -> Value {
    match row {
        StepRow::Instruction(text) => json!({ "instruction": text }),
        StepRow::Line {
            amount,
            measure,
            name,
            grams,
            remarks,
        } => json!({
            "amount": amount,
            "measure": (!measure.is_empty()).then_some(measure),
            "ingredient": name,
            "weight": grams,
            "remarks": remarks,
        }),
    }
}
