//! The tags of a PDF: what its texts are to a program that reads them aloud.

use std::collections::BTreeMap;
use std::num::NonZeroU16;

use krilla::tagging::{
    Identifier, ListNumbering, TableHeaderScope, Tag, TagGroup, TagKind, TagTree,
};

use super::pages::{Element, Page, Text, words};
use crate::quantity::excerpt;
use crate::say::Language;

/// What each text was drawn as, by page and mark.
pub(super) type Tagged = BTreeMap<(usize, usize), Identifier>;

/// Most characters of the title of a heading.
const MOST_IN_TITLE: usize = 200;

/// The tags of all elements, in the order of reading.
pub(super) fn tag_tree(
    elements: &[Element],
    pages: &[Page],
    tagged: &Tagged,
    language: Language,
) -> TagTree {
    let mut tree = TagTree::new().with_lang(Some(language.code().to_owned()));
    for element in elements {
        match element {
            Element::Heading { level, texts } => {
                let level = NonZeroU16::new(u16::from(*level)).unwrap_or(NonZeroU16::MIN);
                let title = excerpt(&words(texts, pages), MOST_IN_TITLE);
                tree.push(of_texts(Tag::Hn(level, Some(title)), texts, tagged));
            }
            Element::Paragraph(texts) => {
                for text in texts {
                    tree.push(of_text(Tag::P, text, tagged));
                }
            }
            Element::List(items) => {
                let mut list = TagGroup::new(Tag::L(ListNumbering::None));
                for cells in items {
                    list.push(item(cells, tagged));
                }
                tree.push(list);
            }
            Element::Table { head, rows } => tree.push(table(head, rows, tagged)),
        }
    }
    tree
}

fn of_text(tag: impl Into<TagKind>, text: &Text, tagged: &Tagged) -> TagGroup {
    let mut group = TagGroup::new(tag);
    for id in text.runs.iter().filter_map(|run| tagged.get(run)) {
        group.push(*id);
    }
    group
}

/// One text stands in its group; of several each is a paragraph of its own, so that none runs into the next.
fn of_texts(tag: impl Into<TagKind>, texts: &[Text], tagged: &Tagged) -> TagGroup {
    if let [only] = texts {
        return of_text(tag, only, tagged);
    }
    let mut group = TagGroup::new(tag);
    for text in texts {
        group.push(of_text(Tag::P, text, tagged));
    }
    group
}

fn item(cells: &[Vec<Text>], tagged: &Tagged) -> TagGroup {
    let mut item = TagGroup::new(Tag::LI);
    let mut cells = cells.iter();
    if let Some(label) = cells.next() {
        item.push(of_texts(Tag::Lbl, label, tagged));
    }
    let mut body = TagGroup::new(Tag::LBody);
    for text in cells.flatten() {
        body.push(of_text(Tag::P, text, tagged));
    }
    item.push(body);
    item
}

fn table(head: &[Vec<Text>], rows: &[Vec<Vec<Text>>], tagged: &Tagged) -> TagGroup {
    let mut table = TagGroup::new(Tag::Table);
    let mut first = TagGroup::new(Tag::TR);
    for cell in head {
        first.push(of_texts(Tag::TH(TableHeaderScope::Column), cell, tagged));
    }
    let mut group = TagGroup::new(Tag::THead);
    group.push(first);
    table.push(group);
    let mut body = TagGroup::new(Tag::TBody);
    for cells in rows {
        let mut row = TagGroup::new(Tag::TR);
        for (at, cell) in cells.iter().enumerate() {
            row.push(if at == 0 {
                of_texts(Tag::TH(TableHeaderScope::Row), cell, tagged)
            } else {
                of_texts(Tag::TD, cell, tagged)
            });
        }
        body.push(row);
    }
    table.push(body);
    table
}
