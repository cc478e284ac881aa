//! What must hold for any bytes at all: shared by the fuzz targets, which look for inputs that break it, and by the tests, which
//! replay what was ever found.

use std::collections::BTreeMap;
use std::sync::{Arc, LazyLock};

use evensip::book::{Amount, Book, Severity, findings};
use evensip::book_file::{built_in_book, parse, write};
use evensip::cards::{Document, Fonts, Mark, Page, Paper, Typesetter};
use evensip::edit::{Edit, Focus, History, apply};
use evensip::exchange::{
    DecimalSigns, ListChoices, arrival_watched, edits_of, guess_mapping, propose_mappings,
    read_json_ld, read_recipe, read_table, review_price_list, utf8_text,
};
use evensip::quantity::is_hidden;
use evensip::say::Speaker;
use evensip::swap::Watch;

use crate::arbitrary_book::{self as arbitrary, Dice};
use crate::arbitrary_document;

static BOOK: LazyLock<Book> = LazyLock::new(|| built_in_book().unwrap_or_default());

/// A law, by the name of its fuzz target and of the folder with what was found.
pub(crate) type Law = (&'static str, fn(&[u8]));

/// All of them.
pub(crate) const ALL: [Law; 7] = [
    ("loader", opens_or_says_why),
    ("amounts", amounts_are_said_and_understood),
    ("documents", documents_fill_pages),
    ("edits", edits_are_kept),
    ("lists", lists_come_in_whole),
    ("json_ld", written_recipes_come_in_whole),
    ("other_shop", recipes_of_other_shops_come_in_whole),
];

/// Any bytes as a book file: never a panic, and what opens is written and read back the same.
pub(crate) fn opens_or_says_why(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else {
        return;
    };
    match parse(text) {
        Ok((book, findings)) => {
            for finding in &findings {
                assert!(!Speaker::new(&book).finding(finding).is_empty());
            }
            let written = write(&book);
            let read = parse(&written)
                .unwrap_or_else(|problems| panic!("can't be read back: {problems:?}"));
            assert!(read.0 == book, "differs after writing:\n{written}");
            assert_eq!(read.1, findings);
            assert_eq!(write(&read.0), written);
        }
        Err(problems) => {
            assert!(!problems.is_empty());
            for problem in problems {
                let sentence = Speaker::without_book().load_problem(&problem);
                assert!(
                    sentence.len() < 4000 && !sentence.contains('\u{202e}'),
                    "{sentence:?}"
                );
            }
        }
    }
}

/// Any text as a typed amount: never a panic, and what is understood is said and understood the same again.
pub(crate) fn amounts_are_said_and_understood(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else {
        return;
    };
    for ingredient in [None, BOOK.ingredients.iter().next().map(AsRef::as_ref)] {
        for current in [None, Some(Amount::Grams(1.0)), Some(Amount::FillToRim)] {
            match BOOK.amount_from_text(text, ingredient, current.as_ref()) {
                Ok(amount) => {
                    let number = amount.number().unwrap_or(0.0);
                    assert!(
                        number.is_finite() && number >= 0.0,
                        "{text:?} became {amount:?}"
                    );
                    let words = Speaker::new(&BOOK).amount(&amount);
                    let again = BOOK.amount_from_text(&words, ingredient, Some(&amount));
                    let again = again
                        .unwrap_or_else(|error| panic!("{text:?} is said {words:?}: {error:?}"));
                    assert_eq!(Speaker::new(&BOOK).amount(&again), words, "{text:?}");
                }
                Err(error) => assert!(!Speaker::new(&BOOK).amount_error(&error).is_empty()),
            }
        }
    }
}

/// Seeds that the bytes hold: each is thrown alone, so that what came before it stays when a byte is changed.
fn seeds(bytes: &[u8]) -> impl Iterator<Item = Dice> {
    let pairs = bytes.chunks_exact(2);
    pairs.map(|pair| {
        Dice(u64::from(u16::from_le_bytes([pair[0], pair[1]])).wrapping_mul(0x9e37_79b9_7f4a_7c15))
    })
}

/// A document with a block for each seed, on any paper.
pub(crate) fn documents_fill_pages(bytes: &[u8]) {
    let (head, text) = bytes.split_at(bytes.len().min(16));
    let mut seeds = seeds(head);
    let Some(mut first) = seeds.next() else {
        return;
    };
    let mut document = arbitrary_document::document(&mut first);
    document.blocks = seeds
        .map(|mut dice| arbitrary_document::block(&mut dice))
        .collect();
    // Letters in an order that no generator thinks of.
    document.title = String::from_utf8_lossy(text).into_owned();
    let paper = first.pick(&Paper::ALL);
    pages_hold(&document, paper);
}

/// Edits one after the other, some taken back and done again: what they make opens again and has no error that was not there.
pub(crate) fn edits_are_kept(bytes: &[u8]) {
    let mut seeds = seeds(bytes);
    let Some(mut first) = seeds.next() else {
        return;
    };
    let mut history = History::new(Arc::new(arbitrary::book(first.next())));
    for mut dice in seeds.take(40) {
        let before = history.book().clone();
        match dice.below(8) {
            0 => drop(history.undo()),
            1 => drop(history.redo()),
            _ => {
                let edit = arbitrary::edit(&mut dice, &before);
                let told = format!("{edit:?}");
                match history.perform(vec![edit], Focus::Book) {
                    Ok(()) => has_no_new_error(&before, history.book(), &told),
                    Err(_) => assert!(Arc::ptr_eq(history.book(), &before), "{told}"),
                }
            }
        }
    }
    is_read_back(history.book());
}

/// Any bytes as a list of a spreadsheet: what is accepted of it opens again and has no error that was not there.
pub(crate) fn lists_come_in_whole(bytes: &[u8]) {
    let Ok(table) = read_table(bytes, None, None) else {
        return;
    };
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, None);
    let review = review_price_list(
        &BOOK,
        &table,
        &mapping,
        &signs,
        &ListChoices::of_day("2026-11-28"),
    );
    assert_eq!(review.lines.len(), table.rows.len());
    if let Ok(Some(edit)) = edits_of(&BOOK, &review, |_| true) {
        comes_in(&edit);
    }
}

/// Any text as a recipe in JSON-LD.
pub(crate) fn written_recipes_come_in_whole(bytes: &[u8]) {
    let Ok(text) = utf8_text(bytes) else { return };
    if let Ok(recipe) = read_json_ld(text) {
        let speaker = Speaker::new(&BOOK);
        let (name, nothing) = (speaker.read_recipe_name(&recipe), BTreeMap::new());
        let arrival = recipe.arrive(&BOOK, &name, &nothing, &|new| speaker.new_measure(new));
        if let Ok(arrival) = arrival {
            assert_eq!(arrival.lines.len(), recipe.ingredients.len());
            comes_in(&arrival.edit);
        }
    }
}

/// Any text as the book of another shop.
pub(crate) fn recipes_of_other_shops_come_in_whole(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else {
        return;
    };
    let Ok((book, _)) = parse(text) else { return };
    let Ok(foreign) = read_recipe(book) else {
        return;
    };
    let mappings = propose_mappings(&BOOK, &foreign);
    // What is searched for is the business of other laws; here the lines come in as they are.
    let watch = Watch::default();
    watch.stop();
    if let Ok(arrival) = arrival_watched(&BOOK, &foreign, &mappings, &watch)
        && let Ok(edit) = arrival.edit(&BOOK, Speaker::new(&BOOK).arrival_note(&arrival))
    {
        comes_in(&edit);
    }
}

fn comes_in(edit: &Edit) {
    let after =
        apply(&BOOK, edit).unwrap_or_else(|error| panic!("accepted, then refused: {error:?}"));
    has_no_new_error(&BOOK, &after, "accepted");
    is_read_back(&after);
}

fn is_read_back(book: &Book) {
    let (opened, _) = parse(&write(book))
        .unwrap_or_else(|problems| panic!("can't be opened again: {problems:?}"));
    assert!(opened == *book, "differs after writing:\n{}", write(book));
}

/// How many errors there are of each kind. A circle is told of whichever member is looked at first; what is
/// behind the end of the list is not compared; a reading that is not weighed and a change whose line is gone are said until
/// they are put right.
fn errors(book: &Book) -> BTreeMap<String, usize> {
    use evensip::book::FindingKind::{
        ChangeWithoutTarget, HouseMadeCycle, MoreFindings, Unfinished,
    };
    let mut count = BTreeMap::new();
    for finding in findings(book) {
        let place = match finding.kind {
            HouseMadeCycle { .. } => String::new(),
            MoreFindings { .. } | Unfinished { .. } | ChangeWithoutTarget { .. } => continue,
            _ => format!("{:?}", finding.place),
        };
        let kind = format!("{:?}", finding.kind);
        let kind = kind.split([' ', '(', '{']).next().unwrap_or_default();
        if finding.severity == Severity::Error {
            *count.entry(format!("{place} {kind}")).or_default() += 1;
        }
    }
    count
}

/// Errors of a book that the one before had not, or not as often.
pub(crate) fn new_errors(before: &Book, after: &Book) -> Vec<String> {
    let before = errors(before);
    let more = errors(after).into_iter();
    more.filter(|(error, count)| before.get(error).is_none_or(|known| known < count))
        .map(|(error, _)| error)
        .collect()
}

fn has_no_new_error(before: &Book, after: &Book, told: &str) {
    assert_eq!(new_errors(before, after), Vec::<String>::new(), "{told}");
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

/// The pages of a document end, hold every character, and stand on the paper.
pub(crate) fn pages_hold(document: &Document, paper: Paper) {
    let pages = Typesetter::new(Fonts::bundled(), "en").pages(document, paper);
    let texts = document.texts();
    let characters: usize = texts.iter().map(|text| text.chars().count()).sum();
    let pieces = texts.len() + document.blocks.len() + characters;
    assert!(pages.len() <= pieces + 1, "{} pages", pages.len());
    let wanted = counts(texts.iter().copied());
    let found = counts(pages.iter().flat_map(printed));
    for (character, count) in wanted {
        let found = found.get(&character).copied().unwrap_or_default();
        assert!(
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
            assert!(left >= 17.0 && top >= 17.0, "page {at}: {left} {top}");
            assert!(right <= page.width - 17.0, "page {at}: {right} {mark:?}");
            assert!(bottom <= page.height - 17.0, "page {at}: {bottom}");
        }
    }
}
