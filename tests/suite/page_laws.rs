//! Laws of pages, whatever a document holds: they end, nothing is lost, nothing stands off the paper.

use evensip::cards::{
    Block, Column, Document, Fonts, Mark, Orientation, Paper, Table, Typesetter, pdf, reading,
};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::arbitrary_document::document;
use crate::card_reading::said;
use crate::fuzz_laws::pages_hold;

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn pages_end_and_hold_every_character_on_the_paper(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let document = document(&mut dice);
        let paper = dice.pick(&Paper::ALL);
        pages_hold(&document, paper);
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
        for (length, most) in [(160, 1), (2500, 4), (20_000, 26)] {
            for name in ["m".repeat(length), "tea ".repeat(length / 4)] {
                let pages = setter.pages(&menu(&name), paper);
                assert!(pages.len() <= most, "{paper:?} {length}: {}", pages.len());
                pages_hold(&menu(&name), paper);
                // What was cut is marked, and its whole is a note on the card.
                let said: Vec<String> = reading(&pages)
                    .iter()
                    .map(|part| said(part, &pages))
                    .collect();
                let has_note = |mark: &str| said.iter().any(|text| text.starts_with(mark));
                assert!(
                    length < 2000 || has_note("[1] ") && has_note("[2] "),
                    "{said:?}"
                );
            }
        }
    }
}

#[test]
fn no_page_has_nothing_but_small_print() {
    for paper in Paper::ALL {
        for lines in 1..90 {
            let paragraphs = (0..lines).map(|line| format!("line {line}")).collect();
            let document = Document {
                title: "Hob".to_owned(),
                blocks: vec![
                    Block::Paragraphs(paragraphs),
                    Block::Footnotes(vec!["small print".to_owned(), "and more of it".to_owned()]),
                ],
                ..Document::default()
            };
            let mut setter = Typesetter::new(Fonts::bundled(), "en");
            for page in setter.pages(&document, paper) {
                let texts = page.marks.iter().filter_map(|mark| match mark {
                    Mark::Glyphs(run) => Some(run.text.to_string()),
                    _ => None,
                });
                let texts: Vec<String> = texts.collect();
                let own = texts
                    .iter()
                    .any(|text| text.starts_with("line ") || text == "Hob");
                assert!(own, "{paper:?} with {lines} lines: {texts:?}");
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
        pages_hold(&document, paper);
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

            blocks: vec![Block::Paragraphs(vec![text.clone()])],
            ..Document::default()
        };
        let pages = Typesetter::new(Fonts::bundled(), "en").pages(&document, Paper::A4);
        let bytes = pdf(&document, &pages).unwrap();
        assert!(bytes.starts_with(b"%PDF-"));
        pages_hold(&document, Paper::A4);
    }
}

#[test]
fn a_column_of_numbers_that_are_marks_without_letters_ends_on_the_paper() {
    // Found by the law above: the line was aligned by a width that did not count the marks.
    let mut dice = Dice(15_193_179_605_430_330_483);
    let document = document(&mut dice);
    pages_hold(&document, dice.pick(&Paper::ALL));
}
