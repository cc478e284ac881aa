//! Laws of pages, whatever a document holds: they end, nothing is lost, nothing stands off the paper.

use std::collections::BTreeMap;

use evensip::cards::{
    Block, CautionLine, Column, Document, Fact, Fonts, Mark, Orientation, Page, Paper, StageSteps,
    StepRow, Table, Typesetter, pdf,
};
use evensip::quantity::is_hidden;
use proptest::prelude::*;

use crate::arbitrary_book::Dice;

/// A text: mostly short, now and then far longer than its place, with and without spaces, of one or more scripts.
fn text(dice: &mut Dice) -> String {
    let count = match dice.below(24) {
        0 => 0,
        1 => 160 + dice.below(400),
        2 => 1500 + dice.below(1500),
        _ => 1 + dice.below(30),
    };
    let letters: &[&str] = match dice.below(8) {
        0 => &["m"],
        1 => &["é", "m", " "],
        2 => &["a", "b", "i", " ", "\n"],
        3 => &["W", "-", "1", "e\u{301}", "\u{301}", "\u{200d}"],
        4 => &["\u{301}", "e", "\u{1100}", "\u{202e}"],
        _ => &["t", "e", "a", " ", "s", "o", "n"],
    };
    (0..count).map(|_| dice.pick(letters)).collect()
}

fn texts(dice: &mut Dice, most: usize) -> Vec<String> {
    (0..dice.below(most + 1)).map(|_| text(dice)).collect()
}

fn table(dice: &mut Dice) -> Table {
    let count = 1 + if dice.below(6) == 0 {
        dice.below(40)
    } else {
        dice.below(8)
    };
    let columns = (0..count).map(|_| {
        let title = text(dice);
        if dice.coin() {
            Column::text(title)
        } else {
            Column::number(title)
        }
    });
    let columns = columns.collect();
    let rows = (0..dice.below(5)).map(|_| (0..count).map(|_| text(dice)).collect());
    Table {
        caption: String::new(),
        columns,
        rows: rows.collect(),
    }
}

fn step(dice: &mut Dice) -> StepRow {
    if dice.coin() {
        return StepRow::Instruction(text(dice));
    }
    StepRow::Line {
        amount: text(dice),
        measure: text(dice),
        name: text(dice),
        grams: text(dice),
        remarks: texts(dice, 2),
    }
}

fn block(dice: &mut Dice) -> Block {
    match dice.below(7) {
        0 => Block::Heading(text(dice)),
        1 => {
            let facts = (0..dice.below(5)).map(|_| Fact::new(text(dice), text(dice)));
            Block::Facts(facts.collect())
        }
        2 => Block::Table(table(dice)),
        3 => {
            let rows = (0..dice.below(4)).map(|_| step(dice)).collect();
            let title = text(dice);
            Block::Steps(vec![StageSteps { title, rows }])
        }
        4 => {
            let cautions = (0..dice.below(4)).map(|_| CautionLine {
                kind: text(dice),
                text: text(dice),
            });
            Block::Cautions(cautions.collect())
        }
        5 => Block::Paragraphs(texts(dice, 3)),
        _ => Block::Footnotes(texts(dice, 3)),
    }
}

fn document(dice: &mut Dice) -> Document {
    Document {
        title: text(dice),
        subtitle: text(dice),
        shop: text(dice),
        revision: text(dice),
        date: text(dice),
        language: "en".to_owned(),
        orientation: if dice.coin() {
            Orientation::Wide
        } else {
            Orientation::Upright
        },
        blocks: (0..dice.below(5)).map(|_| block(dice)).collect(),
        ..Document::default()
    }
}

/// How often each character stands in these texts, without white space.
fn counts<'text>(texts: impl Iterator<Item = &'text str>) -> BTreeMap<char, usize> {
    let mut counts = BTreeMap::new();
    for character in texts.flat_map(str::chars) {
        if !character.is_whitespace() && !is_hidden(character) {
            *counts.entry(character).or_default() += 1;
        }
    }
    counts
}

/// The texts that the glyphs of a page stand for.
fn printed(page: &Page) -> impl Iterator<Item = &str> {
    page.marks.iter().flat_map(|mark| {
        let run = match mark {
            Mark::Glyphs(run) => Some(run),
            Mark::Fill { .. } | Mark::Frame { .. } => None,
        };
        run.into_iter().flat_map(|run| {
            // Several glyphs may stand for the same bytes.
            let mut bytes: Vec<_> = run
                .glyphs
                .iter()
                .map(|glyph| (glyph.bytes.start, glyph.bytes.end))
                .collect();
            bytes.sort_unstable();
            bytes.dedup();
            bytes.into_iter().map(|(start, end)| &run.text[start..end])
        })
    })
}

fn check(document: &Document, paper: Paper) -> Result<(), TestCaseError> {
    let pages = Typesetter::new(Fonts::bundled(), "en").pages(document, paper);
    let texts = document.texts();
    let characters: usize = texts.iter().map(|text| text.chars().count()).sum();
    let pieces = texts.len() + document.blocks.len() + characters;
    prop_assert!(pages.len() <= pieces + 1, "{} pages", pages.len());
    let wanted = counts(texts.iter().copied());
    let found = counts(pages.iter().flat_map(printed));
    for (character, count) in wanted {
        let found = found.get(&character).copied().unwrap_or_default();
        prop_assert!(
            found >= count,
            "{character}: {found} of {count} on {} pages",
            pages.len()
        );
    }
    for (at, page) in pages.iter().enumerate() {
        for mark in &page.marks {
            let [left, top, right, bottom] = match mark {
                Mark::Glyphs(run) => [run.x, run.baseline - run.size, run.x, run.baseline],
                Mark::Fill { corners, .. } | Mark::Frame { corners, .. } => *corners,
            };
            prop_assert!(left >= 17.0 && top >= 17.0, "page {at}: {left} {top}");
            prop_assert!(right <= page.width - 17.0, "page {at}: {right} {mark:?}");
            prop_assert!(bottom <= page.height - 17.0, "page {at}: {bottom}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn pages_end_and_hold_every_character_on_the_paper(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let document = document(&mut dice);
        let paper = dice.pick(&Paper::ALL);
        check(&document, paper)?;
    }
}

/// A table like that of the menu: names beside many narrow columns.
fn menu(name: &str) -> Document {
    let mut columns = vec![Column::text("drink")];
    columns.extend((0..14).map(|number| Column::text(format!("allergen{number}"))));
    let mut row = vec![name.to_owned()];
    row.extend((0..14).map(|_| "may contain".to_owned()));
    Document {
        title: "Ingredients and allergens".to_owned(),
        orientation: Orientation::Wide,
        blocks: vec![Block::Table(Table {
            caption: String::new(),
            columns,
            rows: vec![row.clone(), row],
        })],
        ..Document::default()
    }
}

#[test]
fn a_long_name_in_a_table_of_many_columns_takes_a_few_pages() {
    for paper in Paper::ALL {
        let mut setter = Typesetter::new(Fonts::bundled(), "en");
        for (length, most) in [(160, 3), (2500, 50), (20_000, 400)] {
            for name in ["m".repeat(length), "tea ".repeat(length / 4)] {
                let pages = setter.pages(&menu(&name), paper);
                assert!(pages.len() <= most, "{paper:?} {length}: {}", pages.len());
                check(&menu(&name), paper).unwrap();
            }
        }
    }
}

#[test]
fn a_foot_of_any_length_leaves_room_for_the_card_and_stands_in_full_behind_it() {
    let document = Document {
        title: "Hob".to_owned(),
        shop: "Harrow".repeat(900),
        revision: "as written\n".repeat(90),
        date: "2026-11-28".to_owned(),
        ..Document::default()
    };
    for paper in Paper::ALL {
        check(&document, paper).unwrap();
    }
}

#[test]
fn a_text_longer_than_16_bits_count_goes_into_the_pdf() {
    for text in [
        "Thé frais ".repeat(6000),
        "é".repeat(40_000),
        format!("a{}", "\u{301}".repeat(40_000)),
    ] {
        let document = Document {
            title: "Hob".to_owned(),
            language: "en".to_owned(),
            blocks: vec![Block::Paragraphs(vec![text.clone()])],
            ..Document::default()
        };
        let pages = Typesetter::new(Fonts::bundled(), "en").pages(&document, Paper::A4);
        let bytes = pdf(&document, &pages).unwrap();
        assert!(bytes.starts_with(b"%PDF-"));
        check(&document, Paper::A4).unwrap();
    }
}
