//! Pages as they are read aloud: headings, words, lists and tables in the order of the document, whatever page they are on.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::page::{GlyphRun, Mark, Page, Part, RowKind};

/// A text: its runs in the order of its letters, each by its page and its place among the marks of that page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Text {
    /// Page and mark of each run.
    pub runs: Vec<(usize, usize)>,
}

/// The texts of a cell.
type Cell = Vec<Text>;

/// What is read aloud as one thing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Element {
    /// A heading.
    Heading {
        /// 1 is the title.
        level: u8,
        /// Its texts.
        texts: Vec<Text>,
    },
    /// Words for themselves.
    Paragraph(Vec<Text>),
    /// What has a name or a number each: the cells of every row.
    List(Vec<Vec<Cell>>),
    /// A table: the cells of its head and of every row.
    Table {
        /// The head.
        head: Vec<Cell>,
        /// The rows; the first cell names the row.
        rows: Vec<Vec<Cell>>,
    },
}

/// The pages in the order in which they are read aloud.
pub fn reading(pages: &[Page]) -> Vec<Element> {
    let mut rows: BTreeMap<usize, (Part, BTreeMap<usize, Cell>)> = BTreeMap::new();
    let mut last: BTreeMap<(usize, usize), Arc<str>> = BTreeMap::new();
    for (page, part, place, run) in runs(pages) {
        let (_, cells) = rows.entry(part.row).or_insert((part, BTreeMap::new()));
        let cell = cells.entry(part.cell).or_default();
        let before = last.insert((part.row, part.cell), run.text.clone());
        let goes_on = before.is_some_and(|text| Arc::ptr_eq(&text, &run.text));
        if !goes_on {
            cell.push(Text::default());
        }
        if let Some(text) = cell.last_mut() {
            text.runs.push((page, place));
        }
    }
    let mut elements = Vec::new();
    for (part, cells) in rows.into_values() {
        let mut by_place = cells;
        let places = 0..part.cells;
        let mut cells: Vec<Cell> = places
            .map(|place| by_place.remove(&place).unwrap_or_default())
            .collect();
        for text in cells.iter_mut().flatten() {
            // Runs stand from left to right, and letters may go the other way.
            text.runs
                .sort_by_key(|(page, mark)| first_byte(&pages[*page].marks[*mark]));
        }
        add(&mut elements, pages, part, cells);
    }
    elements
}

/// The runs that are read, as they stand on the pages.
fn runs(pages: &[Page]) -> impl Iterator<Item = (usize, Part, usize, &GlyphRun)> {
    pages.iter().enumerate().flat_map(|(page, of)| {
        let marks = of.marks.iter().enumerate();
        marks.filter_map(move |(place, mark)| match mark {
            Mark::Glyphs(run) => Some((page, run.part?, place, run)),
            _ => None,
        })
    })
}

fn first_byte(mark: &Mark) -> usize {
    match mark {
        Mark::Glyphs(run) => {
            let starts = run.glyphs.iter().map(|glyph| glyph.bytes.start);
            starts.min().unwrap_or_default()
        }
        _ => 0,
    }
}

/// The words of texts as they stand on the pages.
pub(crate) fn words(texts: &[Text], pages: &[Page]) -> String {
    let mut words = String::new();
    for (page, mark) in texts.iter().flat_map(|text| &text.runs) {
        if let Mark::Glyphs(run) = &pages[*page].marks[*mark] {
            let starts = run.glyphs.iter().map(|glyph| glyph.bytes.start);
            let ends = run.glyphs.iter().map(|glyph| glyph.bytes.end);
            if let (Some(start), Some(end)) = (starts.min(), ends.max()) {
                words.push_str(&run.text[start..end]);
            }
        }
    }
    words
}

/// How deep a heading may be behind these elements: no level is skipped.
fn deepest(elements: &[Element]) -> u8 {
    let mut headings = elements.iter().rev().filter_map(|element| match element {
        Element::Heading { level, .. } => Some(*level),
        _ => None,
    });
    headings.next().unwrap_or_default() + 1
}

fn add(elements: &mut Vec<Element>, pages: &[Page], part: Part, cells: Vec<Cell>) {
    match (part.kind, elements.last_mut()) {
        (RowKind::Heading(level), _) => {
            let texts: Vec<Text> = cells.into_iter().flatten().collect();
            // One without a letter is none.
            elements.push(if words(&texts, pages).trim().is_empty() {
                Element::Paragraph(texts)
            } else {
                let level = level.min(deepest(elements));
                Element::Heading { level, texts }
            });
        }
        (RowKind::Paragraph, _) => {
            elements.push(Element::Paragraph(cells.into_iter().flatten().collect()));
        }
        (RowKind::Item, Some(Element::List(items))) if !part.begins => items.push(cells),
        (RowKind::Item, _) => elements.push(Element::List(vec![cells])),
        (RowKind::TableRow, Some(Element::Table { rows, .. })) => rows.push(cells),
        (RowKind::TableRow, _) => elements.push(Element::Table {
            head: Vec::new(),
            rows: vec![cells],
        }),
        (RowKind::TableHead, _) => elements.push(Element::Table {
            head: cells,
            rows: Vec::new(),
        }),
    }
}
