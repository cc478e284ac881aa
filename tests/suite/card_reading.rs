//! Cards read aloud: the order of reading, the tags of a PDF, the headings and tables of a page for a browser.

use std::collections::{BTreeMap, BTreeSet};

use evensip::cards::{
    Block, Document, Element, Fonts, Mark, Page, Paper, Text, Typesetter, html, pdf, reading,
};
use html5ever::tendril::TendrilSink as _;
use markup5ever_rcdom::{Handle, NodeData, RcDom};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::arbitrary_document::document;
use crate::cards::every_kind;
use crate::sample::sample;

fn pages(document: &Document, paper: Paper) -> Vec<Page> {
    Typesetter::new(Fonts::bundled(), "en").pages(document, paper)
}

fn of_text(text: &Text, pages: &[Page]) -> String {
    let runs = text.runs.iter().map(|(page, mark)| {
        let Mark::Glyphs(run) = &pages[*page].marks[*mark] else {
            panic!("a text is glyphs")
        };
        let start = run.glyphs.iter().map(|glyph| glyph.bytes.start).min();
        let end = run.glyphs.iter().map(|glyph| glyph.bytes.end).max();
        &run.text[start.unwrap()..end.unwrap()]
    });
    runs.collect()
}

fn texts(element: &Element) -> Vec<&Text> {
    match element {
        Element::Heading { texts, .. } | Element::Paragraph(texts) => texts.iter().collect(),
        Element::List(items) => items.iter().flatten().flatten().collect(),
        Element::Table { head, rows } => {
            let cells = head.iter().chain(rows.iter().flatten());
            cells.flatten().collect()
        }
    }
}

/// What is read aloud of an element.
pub(crate) fn said(element: &Element, pages: &[Page]) -> String {
    let said = texts(element).into_iter();
    let said: Vec<String> = said.map(|text| of_text(text, pages)).collect();
    said.join(" ")
}

/// The words of a text, whatever stands between them.
fn words(text: &str) -> Vec<&str> {
    text.split_whitespace().collect()
}

#[test]
fn every_card_is_read_in_the_order_of_its_document_on_any_paper() {
    for document in every_kind(&sample()) {
        for paper in Paper::ALL {
            let pages = pages(&document, paper);
            let elements = reading(&pages);
            let all: Vec<String> = elements
                .iter()
                .map(|element| said(element, &pages))
                .collect();
            let all = all.join(" ");
            let mut rest = words(&all).into_iter();
            let is_caption = |text: &str| {
                document
                    .blocks
                    .iter()
                    .any(|block| matches!(block, Block::Table(table) if table.caption == text))
            };
            let at_the_end = [&document.shop, &document.revision, &document.date];
            let above = document.texts().into_iter();
            let above = above
                .filter(|text| !is_caption(text) && !at_the_end.contains(&&(*text).to_owned()));
            let foot = document.foot();
            for text in above.chain([foot.as_str()]) {
                for word in words(text) {
                    assert!(
                        rest.by_ref().any(|said| said == word),
                        "{:?} {paper:?}: {word} of {text}\n{all}",
                        document.kind
                    );
                }
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn whatever_stands_on_a_card_it_is_read_once_under_headings_that_skip_no_level(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let document = document(&mut dice);
        let paper = dice.pick(&Paper::ALL);
        let pages = pages(&document, paper);
        let elements = reading(&pages);
        let mut read = BTreeSet::new();
        for run in elements.iter().flat_map(texts).flat_map(|text| &text.runs) {
            prop_assert!(read.insert(*run), "read twice");
        }
        let with_part = pages.iter().enumerate().flat_map(|(page, of)| {
            let marks = of.marks.iter().enumerate();
            marks.filter_map(move |(mark, of)| match of {
                Mark::Glyphs(run) if run.part.is_some() => Some((page, mark)),
                _ => None,
            })
        });
        prop_assert_eq!(with_part.collect::<BTreeSet<_>>(), read);
        let mut before = 0;
        for element in &elements {
            match element {
                Element::Heading { level, .. } => {
                    prop_assert!(*level <= before + 1);
                    before = *level;
                }
                Element::Table { head, rows } => {
                    // A head without a letter is not drawn, so nobody reads one.
                    let fits = |row: &Vec<_>| head.is_empty() || row.len() == head.len();
                    prop_assert!(rows.iter().all(fits));
                }
                _ => {}
            }
        }
        prop_assert!(pdf(&document, &pages).unwrap().starts_with(b"%PDF-"));
        has_a_sound_outline(&html(&document, paper))?;
    }
}

/// What a PDF says of its parts, by an independent reader: how many there are of each kind, how many heads have a direction.
fn tags_of(bytes: &[u8]) -> (BTreeMap<String, usize>, usize) {
    let file = lopdf::Document::load_mem(bytes).unwrap();
    let catalog = file.catalog().unwrap();
    let marked = catalog.get_deref(b"MarkInfo", &file).unwrap();
    let marked = marked.as_dict().unwrap().get(b"Marked").unwrap();
    assert!(marked.as_bool().unwrap());
    assert!(catalog.has(b"StructTreeRoot") && catalog.has(b"Lang") && catalog.has(b"Outlines"));
    let (mut kinds, mut directed) = (BTreeMap::new(), 0);
    for object in file.objects.values() {
        let Ok(dictionary) = object.as_dict() else {
            continue;
        };
        if !dictionary
            .get_type()
            .is_ok_and(|kind| kind == b"StructElem")
        {
            continue;
        }
        let kind = dictionary
            .get(b"S")
            .and_then(lopdf::Object::as_name)
            .unwrap();
        *kinds
            .entry(String::from_utf8_lossy(kind).into_owned())
            .or_default() += 1;
        directed += usize::from(format!("{:?}", dictionary.get(b"A")).contains("Scope"));
    }
    (kinds, directed)
}

#[test]
fn the_pdf_of_every_card_is_tagged_and_says_that_it_is_accessible() {
    for document in every_kind(&sample()) {
        let pages = pages(&document, Paper::A4);
        let bytes = pdf(&document, &pages).unwrap();
        let claims = bytes.windows(12).any(|window| window == b"pdfuaid:part");
        assert!(claims, "{:?} is not PDF/UA", document.kind);
        let (kinds, directed) = tags_of(&bytes);
        let count = |kind: &str| kinds.get(kind).copied().unwrap_or_default();
        let elements = reading(&pages);
        let tables = elements.iter().filter_map(|element| match element {
            Element::Table { head, rows } => Some((head.len(), rows.len())),
            _ => None,
        });
        let tables: Vec<(usize, usize)> = tables.collect();
        assert_eq!(count("H1"), 1, "{:?}", document.kind);
        assert_eq!(count("Table"), tables.len());
        let heads: usize = tables.iter().map(|(columns, rows)| columns + rows).sum();
        assert_eq!(count("TH"), heads);
        assert_eq!(directed, heads);
        let cells: usize = tables
            .iter()
            .map(|(columns, rows)| (columns - 1) * rows)
            .sum();
        assert_eq!(count("TD"), cells);
        let items = elements.iter().map(|element| match element {
            Element::List(items) => items.len(),
            _ => 0,
        });
        assert_eq!(count("LI"), items.sum::<usize>());
    }
}

#[test]
fn a_character_without_a_font_is_no_reason_to_write_no_pdf() {
    let document = Document {
        title: "焙茶".to_owned(),
        ..Document::default()
    };
    let bytes = pdf(&document, &pages(&document, Paper::A5)).unwrap();
    // It is tagged, and does not say that it is more.
    assert!(!bytes.windows(12).any(|window| window == b"pdfuaid:part"));
    assert_eq!(tags_of(&bytes).0.get("H1"), Some(&1));
}

/// Headings skip no level, every table has a caption, every head of a table says what it is the head of.
fn has_a_sound_outline(page: &str) -> Result<(), TestCaseError> {
    let dom =
        html5ever::parse_document(RcDom::default(), html5ever::ParseOpts::default()).one(page);
    let mut elements = Vec::new();
    collect(&dom.document, &mut elements);
    let mut before = 0;
    let (mut tables, mut captions) = (0, 0);
    for (name, attributes) in elements {
        match name.as_str() {
            "html" => prop_assert!(attributes.contains_key("lang")),
            "table" => tables += 1,
            "caption" => captions += 1,
            "th" => prop_assert!(attributes.contains_key("scope")),
            _ => {
                let level = name.strip_prefix('h').and_then(|level| level.parse().ok());
                if let Some(level) = level {
                    prop_assert!(level <= before + 1, "h{} below h{}", level, before);
                    before = level;
                }
            }
        }
    }
    prop_assert_eq!(tables, captions);
    Ok(())
}

fn collect(handle: &Handle, elements: &mut Vec<(String, BTreeMap<String, String>)>) {
    if let NodeData::Element { name, attrs, .. } = &handle.data {
        let attributes = attrs.borrow();
        let attributes = attributes.iter().map(|attribute| {
            (
                attribute.name.local.to_string(),
                attribute.value.to_string(),
            )
        });
        elements.push((name.local.to_string(), attributes.collect()));
    }
    for child in handle.children.borrow().iter() {
        collect(child, elements);
    }
}
