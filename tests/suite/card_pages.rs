//! Cards on paper: pages, embedded fonts, text that can be found again, other scripts, long recipes.

use evensip::book::{Book, Entry, Instruction, LineId, RecipeId};
use evensip::cards::{
    CardOptions, CardRequest, Document, Fonts, Mark, Page, Paper, Typesetter, card, pdf, picture,
};
use evensip::say::Language;

use crate::cards::{drink, every_kind, every_kind_with, must_say, options};
use crate::sample::sample;

fn typesetter() -> Typesetter {
    Typesetter::new(Fonts::bundled(), "en")
}

fn pages(document: &Document, paper: Paper) -> Vec<Page> {
    typesetter().pages(document, paper)
}

fn without_space(text: &str) -> String {
    text.chars()
        .filter(|letter| !letter.is_whitespace())
        .collect()
}

/// The text of a PDF by an independent reader, without spaces: lines break anywhere.
fn text_of(bytes: &[u8]) -> String {
    let file = lopdf::Document::load_mem(bytes).unwrap();
    let numbers: Vec<u32> = file.get_pages().keys().copied().collect();
    without_space(&file.extract_text(&numbers).unwrap())
}

/// Every font of a PDF: its name, and whether its file is embedded.
fn fonts_of(bytes: &[u8]) -> Vec<(String, bool)> {
    let file = lopdf::Document::load_mem(bytes).unwrap();
    let mut fonts = Vec::new();
    for object in file.objects.values() {
        let Ok(dictionary) = object.as_dict() else {
            continue;
        };
        if dictionary
            .get_type()
            .is_ok_and(|kind| kind == b"FontDescriptor")
        {
            let name = dictionary
                .get(b"FontName")
                .and_then(lopdf::Object::as_name)
                .unwrap();
            let embedded = [&b"FontFile2"[..], b"FontFile3", b"FontFile"]
                .iter()
                .any(|key| dictionary.has(key));
            fonts.push((String::from_utf8_lossy(name).into_owned(), embedded));
        }
    }
    fonts
}

#[test]
fn a_pdf_holds_every_line_and_caution_as_text_with_embedded_parts_of_fonts() {
    let book = sample();
    let ember = drink("hob-and-ember", None);
    let document = card(&book, &CardRequest::Counter(ember.clone()), &options()).unwrap();
    for paper in Paper::ALL {
        let bytes = pdf(&document, &pages(&document, paper)).unwrap();
        let text = text_of(&bytes);
        for wanted in must_say(&book, &ember) {
            assert!(
                text.contains(&without_space(&wanted)),
                "{paper:?}: {wanted}\n{text}"
            );
        }
        let fonts = fonts_of(&bytes);
        assert!(!fonts.is_empty());
        for (name, embedded) in &fonts {
            assert!(*embedded, "{name}");
            // Six letters and a plus sign say that it is a part (ISO 32000-1, 9.6.4).
            assert_eq!(name.find('+'), Some(6), "{name}");
        }
    }
}

#[test]
fn every_kind_of_card_goes_onto_paper_with_all_of_its_text() {
    for document in every_kind(&sample()) {
        let bytes = pdf(&document, &pages(&document, Paper::A4)).unwrap();
        let text = text_of(&bytes);
        let captions: Vec<&str> = document
            .blocks
            .iter()
            .filter_map(|block| match block {
                evensip::cards::Block::Table(table) => Some(table.caption.as_str()),
                _ => None,
            })
            .collect();
        for wanted in document.texts() {
            assert!(
                captions.contains(&wanted) || text.contains(&without_space(wanted)),
                "{:?}: {wanted}",
                document.kind
            );
        }
    }
}

/// Where the marks of a page end on each side.
fn extent(page: &Page) -> [f32; 4] {
    let mut extent = [f32::MAX, f32::MAX, 0.0, 0.0];
    for mark in &page.marks {
        let corners = match mark {
            Mark::Glyphs(run) => {
                let width: f32 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
                [run.x, run.baseline - run.size, run.x + width, run.baseline]
            }
            Mark::Fill { corners, .. } | Mark::Frame { corners, .. } => *corners,
        };
        extent[0] = extent[0].min(corners[0]);
        extent[1] = extent[1].min(corners[1]);
        extent[2] = extent[2].max(corners[2]);
        extent[3] = extent[3].max(corners[3]);
    }
    extent
}

#[test]
fn nothing_stands_in_the_margin_that_printers_can_not_reach() {
    for document in every_kind(&sample()) {
        for paper in Paper::ALL {
            for (at, page) in pages(&document, paper).iter().enumerate() {
                let [left, top, right, bottom] = extent(page);
                let place = format!("{:?} {paper:?} page {}", document.kind, at + 1);
                assert!(left >= 18.0 && top >= 18.0, "{place}: {left} {top}");
                assert!(
                    right <= page.width - 18.0,
                    "{place}: {right} of {}",
                    page.width
                );
                assert!(bottom <= page.height - 18.0, "{place}: {bottom}");
            }
        }
    }
}

/// The sample with so many instructions in a drink.
fn long(count: usize) -> Book {
    let mut book = sample();
    let mut recipe = (**book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap())
    .clone();
    for number in 0..count {
        recipe.entries.push(Entry::Instruction(Instruction {
            id: LineId::new(format!("step-{number}").as_str()).unwrap(),
            text: format!("Step number {number}: stir until smooth, then wait for a moment."),
        }));
    }
    book.recipes.put(recipe);
    book
}

#[test]
fn a_recipe_of_forty_lines_takes_two_pages_and_loses_none() {
    let book = long(40);
    let ember = drink("hob-and-ember", None);
    let document = card(&book, &CardRequest::Counter(ember.clone()), &options()).unwrap();
    let pages = pages(&document, Paper::A4);
    assert_eq!(pages.len(), 2);
    let text = text_of(&pdf(&document, &pages).unwrap());
    for wanted in must_say(&book, &ember) {
        assert!(text.contains(&without_space(&wanted)), "{wanted}");
    }
    assert!(text.contains("1/2") && text.contains("2/2"));
}

#[test]
fn an_instruction_longer_than_a_page_is_divided_and_not_lost() {
    let mut book = sample();
    let mut recipe = (**book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap())
    .clone();
    let words: Vec<String> = (0..3000).map(|number| format!("word{number}")).collect();
    recipe.entries.push(Entry::Instruction(Instruction {
        id: LineId::new("long").unwrap(),
        text: words.join(" "),
    }));
    book.recipes.put(recipe);
    let request = CardRequest::Counter(drink("hob-and-ember", None));
    let document = card(&book, &request, &options()).unwrap();
    let pages = pages(&document, Paper::A5);
    let text = text_of(&pdf(&document, &pages).unwrap());
    for word in words {
        assert!(text.contains(&word), "{word}");
    }
}

/// The sample with this name and instruction in a drink.
fn named(name: &str, text: &str) -> Document {
    let mut book = sample();
    let mut recipe = (**book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap())
    .clone();
    name.clone_into(&mut recipe.name);
    recipe.entries.push(Entry::Instruction(Instruction {
        id: LineId::new("foreign").unwrap(),
        text: text.to_owned(),
    }));
    book.recipes.put(recipe);
    card(
        &book,
        &CardRequest::Counter(drink("hob-and-ember", None)),
        &options(),
    )
    .unwrap()
}

#[test]
fn characters_without_a_font_are_named_before_anything_is_written() {
    let document = named("焙茶", "搅拌");
    let missing = Fonts::bundled().missing(&document);
    let characters: String = missing.iter().map(|missing| missing.character).collect();
    assert_eq!(characters, "焙茶搅拌");
    assert_eq!(missing[0].words(), "焙 (U+7119)");
    let plain = card(
        &sample(),
        &CardRequest::Counter(drink("hob-and-ember", None)),
        &options(),
    )
    .unwrap();
    assert_eq!(Fonts::bundled().missing(&plain), []);
}

#[test]
fn every_kind_of_card_is_set_in_every_language_without_an_empty_box() {
    let book = sample();
    let fonts = Fonts::installed();
    let mut skipped = Vec::new();
    for language in Language::all() {
        let options = CardOptions {
            language,
            ..options()
        };
        let documents = every_kind_with(&book, &options);
        if documents
            .iter()
            .any(|document| !fonts.missing(document).is_empty())
        {
            skipped.push(language);
            continue;
        }
        let mut setter = Typesetter::new(fonts.clone(), language.code());
        for document in documents {
            let pages = setter.pages(&document, Paper::A5);
            assert!(!pages.is_empty());
            let drawn = picture(&pages[0], 1.0);
            let name = language.code();
            assert!(drawn.rgba.chunks_exact(4).any(is_dark), "{name}");
        }
    }
    // On a machine without fonts for a script there is nothing to set; the machine of the tests has them.
    if !skipped.is_empty() {
        eprintln!(
            "skipped: no font for {skipped:?} is installed (Debian: fonts-droid-fallback, fonts-nanum)"
        );
    }
    let latin = ["en", "de", "fr", "es", "vi"];
    assert!(
        skipped
            .iter()
            .all(|language| !latin.contains(&language.code()))
    );
}

#[test]
fn chinese_is_set_and_found_again_when_a_font_is_installed() {
    let document = named("焙茶牛奶", "搅拌至顺滑，然后加冰。");
    let fonts = Fonts::installed();
    let missing = fonts.missing(&document);
    if !missing.is_empty() {
        eprintln!("skipped: no font for Chinese is installed (Debian: fonts-droid-fallback)");
        return;
    }
    let pages = Typesetter::new(fonts, "zh-Hans").pages(&document, Paper::A5);
    let bytes = pdf(&document, &pages).unwrap();
    let text = text_of(&bytes);
    for wanted in ["焙茶牛奶", "搅拌至顺滑，然后加冰。"] {
        assert!(text.contains(wanted), "{wanted}\n{text}");
    }
    assert!(fonts_of(&bytes).iter().all(|(_, embedded)| *embedded));
    // The part of a font with some thousand characters, not the whole.
    assert!(bytes.len() < 400_000, "{}", bytes.len());
}

#[test]
fn mixed_directions_stand_in_the_order_of_their_reading() {
    let document = named("شاي tea 20", "שלום 15 ml then שוב");
    let fonts = Fonts::installed();
    if !fonts.missing(&document).is_empty() {
        eprintln!(
            "skipped: no font for Arabic and Hebrew is installed (Debian: fonts-dejavu-core)"
        );
        return;
    }
    let pages = Typesetter::new(fonts, "en").pages(&document, Paper::A4);
    // Within the line, "15 ml then" stands left of the first Hebrew word, which the reader meets first.
    let runs: Vec<(f32, String)> = pages[0]
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Glyphs(run) if run.text.contains("שלום") => {
                let bytes: Vec<_> = run.glyphs.iter().map(|glyph| glyph.bytes.clone()).collect();
                let start = bytes.iter().map(|bytes| bytes.start).min()?;
                let end = bytes.iter().map(|bytes| bytes.end).max()?;
                Some((run.x, run.text[start..end].to_owned()))
            }
            _ => None,
        })
        .collect();
    let place = |word: &str| {
        runs.iter()
            .find(|(_, text)| text.contains(word))
            .map_or_else(|| panic!("{word}: {runs:?}"), |(x, _)| *x)
    };
    assert!(place("שוב") < place("then"), "{runs:?}");
    assert!(place("then") < place("שלום"), "{runs:?}");
    // Arabic letters join: the glyphs of a word are not those of its letters one by one.
    let text = text_of(&pdf(&document, &pages).unwrap());
    assert!(text.contains("tea"), "{text}");
}

#[test]
fn the_preview_shows_what_the_pdf_prints() {
    let document = card(
        &sample(),
        &CardRequest::Counter(drink("hob-and-ember", None)),
        &options(),
    )
    .unwrap();
    let page = &pages(&document, Paper::A5)[0];
    let picture = picture(page, 2.0);
    assert!((f32::from(picture.width) - page.width * 2.0).abs() <= 0.5);
    assert_eq!(
        picture.rgba.len(),
        usize::from(picture.width) * usize::from(picture.height) * 4
    );
    // Black letters on white paper, and an edge without any.
    let pixels = picture.rgba.chunks_exact(4);
    let count = pixels.filter(|pixel| is_dark(pixel)).count();
    assert!(count > 5000, "{count}");
    let edge = &picture.rgba[..usize::from(picture.width) * 4 * 20];
    assert!(!edge.chunks_exact(4).any(is_dark));
}

fn is_dark(pixel: &[u8]) -> bool {
    pixel[0] < 0x60
}

#[test]
fn the_same_card_gives_the_same_bytes() {
    let document = &every_kind(&sample())[0];
    let bytes = || pdf(document, &pages(document, Paper::A5)).unwrap();
    assert_eq!(bytes(), bytes());
}
