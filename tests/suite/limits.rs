//! What can be made can be opened: no edit, list or merge leads to a book that loading refuses, or to an error that was not there.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::sync::Arc;

use evensip::book::{
    Approval, Book, Change, Entry, Instruction, LimitPassed, LineId, MOST_LINES, Recipe, RecipeId,
    Settings, Side, TextMeasure, Version, VersionId, merge, resolve,
};
use evensip::book_file::{parse, text_measure, write};
use evensip::edit::{Edit, EditError, Focus, History, WholeBook, apply};
use evensip::exchange::{
    DecimalSigns, ListChoices, NewMeasure, edits_of, guess_mapping, read_json_ld, read_table,
    review_price_list,
};
use evensip::say::Speaker;
use proptest::prelude::*;

use crate::arbitrary_book::{self as arbitrary, Dice};
use crate::fuzz_laws::new_errors;
use crate::sample;

fn history(book: &Arc<Book>) -> History {
    History::new(book.clone()).measured_by(text_measure())
}

fn perform(history: &mut History, edit: Edit) -> Result<(), EditError> {
    history.perform(vec![edit], Focus::Book)
}

fn step(number: usize) -> Entry {
    Entry::Instruction(Instruction {
        id: LineId::new(&format!("s{number}")).unwrap(),
        text: "stir".to_owned(),
    })
}

fn long_recipe(id: &str, lines: usize) -> Recipe {
    Recipe {
        id: RecipeId::new(id).unwrap(),
        ..sample::recipe((0..lines).map(step).collect())
    }
}

fn config(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(config(160))]

    #[test]
    fn whatever_is_edited_is_opened_again_and_has_no_new_error(seed in any::<u64>()) {
        let start = Arc::new(arbitrary::book(seed));
        let mut dice = Dice(seed ^ 0x11317);
        let mut history = history(&start);
        for _ in 0..25 {
            let before = history.book().clone();
            let edit = arbitrary::edit(&mut dice, &before);
            let told = format!("seed {seed}: {edit:?}");
            let outcome = perform(&mut history, edit);
            if outcome.is_err() {
                prop_assert!(Arc::ptr_eq(history.book(), &before), "{}", told);
                continue;
            }
            prop_assert_eq!(new_errors(&before, history.book()), Vec::<String>::new(), "{}", told);
        }
        let (opened, _) = parse(&write(history.book())).unwrap();
        prop_assert!(opened == **history.book(), "seed {seed}");
    }

    #[test]
    fn a_text_is_measured_as_it_is_written_and_never_grows_past_what_is_read(seed in any::<u64>()) {
        let start = Arc::new(arbitrary::book(seed));
        let mut dice = Dice(seed ^ 0x7e47);
        let TextMeasure { written, .. } = text_measure();
        let most = write(&start).len() as u64 + u64::try_from(dice.below(4000)).unwrap();
        let mut history = History::new(start.clone()).measured_by(TextMeasure { written, most });
        let mut known = written(&start, None);
        let mut refused = 0;
        for _ in 0..25 {
            let before = history.book().clone();
            let edit = arbitrary::edit(&mut dice, &before);
            if let Err(EditError::PastLimit(LimitPassed::Text { bytes, most: said })) = perform(&mut history, edit) {
                prop_assert!(bytes > most && said == most);
                refused += 1;
            }
            known = written(history.book(), Some((&before, known)));
            let length = write(history.book()).len() as u64;
            prop_assert_eq!(known.bytes, length, "seed {}", seed);
            prop_assert!(length <= most, "{} refused", refused);
        }
    }

    #[test]
    fn what_is_taken_from_a_list_is_opened_again_and_has_no_new_error(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let book = Arc::new(evensip::book_file::built_in_book().unwrap());
        let mut text = String::from("name,brand,price,pack,energy (kJ),fat (g),sugars (g),caffeine (mg),density\n");
        for row in 0..12 {
            let _ = write!(text, "Powder {row},Velm");
            for _ in 0..7 {
                let number = match dice.below(6) {
                    0 => String::new(),
                    1 => format!("{}", dice.below(10)),
                    2 => format!("{}", dice.below(10_000)),
                    3 => format!("-{}", dice.below(100)),
                    4 => format!("{:e}", dice.number()),
                    _ => format!("0.{}", dice.below(1000)),
                };
                let _ = write!(text, ",{number}");
            }
            text.push('\n');
        }
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, None);
        let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::of_day("2026-05-04"));
        if let Some(edit) = edits_of(&book, &review, |_| true).unwrap() {
            let mut history = history(&book);
            perform(&mut history, edit).unwrap();
            prop_assert_eq!(new_errors(&book, history.book()), Vec::<String>::new(), "{}", text);
            prop_assert!(parse(&write(history.book())).unwrap().0 == **history.book());
        }
    }

    #[test]
    fn what_two_hands_did_is_opened_again(seed in any::<u64>()) {
        let base = Arc::new(arbitrary::book(seed));
        let mut dice = Dice(seed ^ 0x3e46e);
        let mut hand = || {
            let mut history = history(&base);
            for _ in 0..8 {
                let edit = arbitrary::edit(&mut dice, history.book());
                let _ = perform(&mut history, edit);
            }
            history.book().clone()
        };
        let (mine, theirs) = (hand(), hand());
        for side in [Side::Mine, Side::Theirs] {
            let merged = merge(&base, &mine, &theirs, |_| side).book;
            prop_assert!(parse(&write(&merged)).unwrap().0 == merged, "seed {seed}");
        }
    }
}

#[test]
fn a_recipe_of_another_program_with_a_line_too_many_is_refused_and_the_most_is_taken() {
    let book = Arc::new(Book::default());
    for (lines, fits) in [(MOST_LINES, true), (MOST_LINES + 1, false)] {
        let ingredients: Vec<String> = (0..lines)
            .map(|line| format!("\"{line} g salt\""))
            .collect();
        let text = format!(
            "{{\"@type\": \"Recipe\", \"name\": \"long\", \"recipeIngredient\": [{}]}}",
            ingredients.join(", ")
        );
        let read = read_json_ld(&text).unwrap();
        let name = |_: NewMeasure<'_>| (String::new(), String::new());
        match read.arrive(&book, &read.name, &BTreeMap::new(), &name) {
            Ok(arrival) => {
                assert!(fits, "{lines} lines are taken");
                let mut history = history(&book);
                perform(&mut history, arrival.edit).unwrap();
                parse(&write(history.book())).unwrap();
            }
            Err(error) => {
                assert!(!fits, "{error:?}");
                assert!(matches!(error, EditError::PastLimit(_)), "{error:?}");
            }
        }
    }
}

#[test]
fn every_list_of_a_recipe_has_its_limit_in_every_edit() {
    let book = Arc::new(Book::default());
    let full = long_recipe("full", MOST_LINES);
    let put = |recipe: Recipe| apply(&book, &Edit::PutRecipe(recipe));
    let with_full = Arc::new(put(full.clone()).unwrap());
    put(long_recipe("long", MOST_LINES + 1)).unwrap_err();
    let mut version = Version::draft(VersionId::new("v").unwrap(), "v".to_owned(), None);
    version.changes = (0..=MOST_LINES)
        .map(|number| Change::Note(LineId::new(&format!("s{number}")).unwrap(), "n".to_owned()))
        .collect();
    let add = |version: Version| Edit::AddVersion {
        recipe: full.id.clone(),
        version,
    };
    let error = apply(&with_full, &add(version.clone())).unwrap_err();
    let said = Speaker::new(&with_full).edit_error(&error);
    assert!(said.contains("1001 changes"), "{said}");
    // As many changes as a version may have, and a line more than an approval may hold.
    version.changes.truncate(MOST_LINES - 1);
    version.changes.push(Change::Add(None, step(MOST_LINES)));
    let with_version = apply(&with_full, &add(version.clone())).unwrap();
    let (text, id) = (write(&with_version), version.id.clone());
    parse(&text).unwrap();
    let one_more = Edit::Change {
        recipe: full.id.clone(),
        version: Some(id.clone()),
        change: Change::Add(None, step(MOST_LINES + 1)),
    };
    apply(&with_version, &one_more).unwrap_err();
    let resolved = resolve(with_version.recipe(&full.id).unwrap(), Some(&id)).0;
    assert_eq!(resolved.entries.len(), MOST_LINES + 1);
    let approve = Edit::Approve {
        recipe: full.id.clone(),
        approval: Approval {
            version: Some(id),
            date: "2026-05-04".to_owned(),
            by: "Ina".to_owned(),
            reason: String::new(),
            tasted_at: None,
            resolved,
            tasted_with: None,
        },
    };
    let error = apply(&with_version, &approve).unwrap_err();
    let said = Speaker::new(&with_version).edit_error(&error);
    assert!(said.contains("approval 1"), "{said}");
    // Another state of the whole book goes the same way.
    let mut whole = Book::default();
    whole.recipes.put(long_recipe("long", MOST_LINES + 1));
    let edit = Edit::PutBook {
        book: Arc::new(whole),
        reason: WholeBook::Merge,
    };
    apply(&book, &edit).unwrap_err();
}

#[test]
fn a_text_of_more_than_is_read_is_refused_and_taking_away_is_not() {
    const MEGABYTE: usize = 1024 * 1024;
    let TextMeasure { written, most } = text_measure();
    assert_eq!(most, evensip::book_file::LONGEST_TEXT);
    // A small limit in place of the real one: the same code, in a fraction of the time.
    let measure = TextMeasure {
        written,
        most: 2 * MEGABYTE as u64,
    };
    let halves = |count: usize| Settings {
        note: "x".repeat(count * MEGABYTE / 2),
        ..Settings::default()
    };
    let book = |count| {
        Arc::new(Book {
            settings: halves(count),
            ..Book::default()
        })
    };
    let mut history = History::new(book(3)).measured_by(measure);
    let error = perform(&mut history, Edit::SetSettings(halves(5))).unwrap_err();
    let said = Speaker::without_book().edit_error(&error);
    assert!(said.contains("at most 2 MB"), "{said}");
    perform(&mut history, Edit::SetSettings(halves(1))).unwrap();
    // A book that is too long already can be made shorter.
    let mut history = History::new(book(7)).measured_by(measure);
    perform(&mut history, Edit::SetSettings(halves(6))).unwrap();
    perform(&mut history, Edit::SetSettings(halves(7))).unwrap_err();
}
