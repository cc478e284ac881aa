//! Sentences about books that are wrong: no word of the machine and no line of digits, whatever the figures.

use evensip::book::{
    Amount, Book, Change, Entry, ItemId, Line, RecipeId, Version, VersionId, findings,
};
use evensip::book_file::{parse, write};
use evensip::cards::{Block, CardOptions, CardRequest, Document, card, drinks_of_menu};
use evensip::edit::{Edit, apply};
use evensip::exchange::{RecipeExchangeError, write_recipe};
use evensip::say::Speaker;

use crate::arbitrary_book;
use crate::sample::sample;

/// Most digits in a row that a sentence holds: a date and a time have fewer.
const MOST_DIGITS: usize = 20;

fn check(text: &str, about: &str) {
    for word in text.split(|c: char| !c.is_alphanumeric()) {
        let lower = word.to_lowercase();
        assert!(lower != "inf" && lower != "nan", "{about}: {text}");
        let digits = word.chars().filter(char::is_ascii_digit).count();
        assert!(digits <= MOST_DIGITS, "{about}: {text}");
    }
}

/// The texts of a card but for its cautions, whose sentences are the engine's.
fn texts(mut document: Document) -> Vec<String> {
    document
        .blocks
        .retain(|block| !matches!(block, Block::Cautions(_)));
    document.texts().into_iter().map(str::to_owned).collect()
}

#[test]
fn findings_and_differences_of_any_book_are_written_in_words_and_short_numbers() {
    for seed in 0..2000 {
        let (book, other) = (arbitrary_book::book(seed), arbitrary_book::book(seed + 1));
        for finding in findings(&book) {
            check(
                &Speaker::new(&book).finding(&finding),
                &format!("seed {seed}"),
            );
        }
        for recipe in &book.recipes {
            let id = ItemId::Recipe(recipe.id.clone());
            for sentence in Speaker::new(&other).item_changes(&book, &id, &[]) {
                check(&sentence, &format!("seed {seed}"));
            }
        }
    }
}

#[test]
fn cards_of_any_book_are_written_in_words_and_short_numbers() {
    for seed in 0..300 {
        let book = arbitrary_book::book(seed);
        for drink in drinks_of_menu(&book).into_iter().take(2) {
            for request in [
                CardRequest::Counter(drink.clone()),
                CardRequest::Training(drink.clone()),
            ] {
                let Ok(document) = card(&book, &request, &CardOptions::default()) else {
                    continue;
                };
                for text in texts(document) {
                    check(&text, &format!("seed {seed}"));
                }
            }
        }
    }
}

/// The sample with a version of this amount in Hob & Ember.
fn with_version(id: &str, scoops: f64) -> Book {
    let book = sample();
    let recipe = RecipeId::new("hob-and-ember").unwrap();
    let line = {
        let plain = book.recipe(&recipe).unwrap().plain();
        let line = plain
            .lines()
            .find(|line| matches!(line.amount, Amount::Count(..)));
        line.unwrap().clone()
    };
    let Amount::Count(_, measure) = line.amount else {
        panic!("{line:?}")
    };
    let mut version = Version::draft(VersionId::new(id).unwrap(), "version 2".to_owned(), None);
    version.changes = vec![Change::Amount(line.id, Amount::Count(scoops, measure))];
    apply(&book, &Edit::AddVersion { recipe, version }).unwrap()
}

#[test]
fn two_versions_of_one_name_are_told_apart_by_their_amounts() {
    let base = sample();
    let id = ItemId::Recipe(RecipeId::new("hob-and-ember").unwrap());
    let details = |one: &Book, other: &Book| {
        let changes = Speaker::new(other).item_changes(one, &id, &[]);
        changes.join("; ")
    };
    let told = |book: &Book| details(&base, book);
    let (mine, theirs) = (with_version("mine", 3.0), with_version("theirs", 4.0));
    assert!(told(&mine).contains("version “version 2” added (") && told(&mine).contains("3 "));
    assert!(told(&theirs).contains("4 ") && told(&mine) != told(&theirs));
    let changed = details(&with_version("mine", 2.0), &mine);
    assert!(
        changed.contains("changes (") && changed.contains("instead of"),
        "{changed}"
    );
}

/// A number beyond all measure multiplied by the content of a measure is no number, and a file with it is no book.
#[test]
fn a_recipe_that_is_passed_on_can_be_opened() {
    let mut passed_on = 0;
    for seed in 0..1500 {
        let book = arbitrary_book::book(seed);
        for recipe in &book.recipes {
            let versions = recipe.versions.iter().map(|version| Some(&version.id));
            for version in std::iter::once(None).chain(versions) {
                if let Ok(passed) = write_recipe(&book, &recipe.id, version) {
                    let text = write(&passed);
                    assert!(parse(&text).is_ok(), "seed {seed}: {text}");
                    passed_on += 1;
                }
            }
        }
    }
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let mut recipe = (**book.recipe(&id).unwrap()).clone();
    for approval in &mut recipe.approvals {
        for entry in &mut approval.resolved.entries {
            if let Entry::Line(Line { amount, .. }) = entry
                && let Amount::Count(number, _) | Amount::Millilitres(number) = amount
            {
                *number = 1e308;
            }
        }
    }
    assert!(write_recipe(&book, &id, None).is_ok());
    book.recipes.put(recipe);
    let refused = write_recipe(&book, &id, None).unwrap_err();
    assert!(
        matches!(refused, RecipeExchangeError::BeyondMeasure(_)),
        "{refused:?}"
    );
    eprintln!("{passed_on} recipes at random were passed on");
}
