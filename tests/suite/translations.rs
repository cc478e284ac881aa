//! Texts of the book in other languages: what is printed, what has no words, where they are typed.

use evensip::book::{
    Book, Change, Entry, FoundKind, ItemId, LanguageId, LookUpIndex, Recipe, RecipeId, Translation,
};
use evensip::book_file::{parse, write};
use evensip::cards::{CardOptions, CardRequest, card};
use evensip::edit::{Edit, apply, apply_all};
use evensip::say::Language;

use crate::cards::{drink, every_kind_with, options};
use crate::sample::sample;

fn language(code: &str) -> Language {
    Language::from_code(code).unwrap()
}

fn in_language(code: &str) -> CardOptions {
    CardOptions {
        language: language(code),
        ..options()
    }
}

fn translate(item: &ItemId, code: &str, of: &str, text: &str) -> Edit {
    Edit::Translate {
        item: item.clone(),
        translation: Translation {
            language: LanguageId::new(code).unwrap(),
            of: of.to_owned(),
            text: text.to_owned(),
        },
    }
}

fn items(book: &Book) -> Vec<ItemId> {
    let mut items = vec![ItemId::Settings];
    items.extend(book.ingredients.iter().map(|item| ItemId::Ingredient(item.id.clone())));
    items.extend(book.measures.iter().map(|item| ItemId::Measure(item.id.clone())));
    items.extend(book.vessels.iter().map(|item| ItemId::Vessel(item.id.clone())));
    items.extend(book.recipes.iter().map(|item| ItemId::Recipe(item.id.clone())));
    items
}

/// A book in which every text is said in a language as `⟦it is⟧`.
fn marked(book: &Book, code: &str) -> Book {
    let mut edits = Vec::new();
    for item in items(book) {
        for (_, text) in book.texts_of(&item) {
            edits.push(translate(&item, code, text, &format!("⟦{text}⟧")));
        }
    }
    apply_all(book, &edits).unwrap()
}

/// The words without the marks; a name is said in small letters behind a brand.
fn unmarked(text: &str) -> String {
    text.replace(['⟦', '⟧'], "").to_lowercase()
}

#[test]
fn every_text_that_has_words_is_said_in_them_and_nothing_else_changes() {
    let book = sample();
    for code in ["de", "zh-Hant"] {
        let translated = marked(&book, &code.to_lowercase());
        let plain = every_kind_with(&book, &in_language(code));
        let said = every_kind_with(&translated, &in_language(code));
        assert_eq!(plain.len(), said.len());
        for (plain, said) in plain.iter().zip(&said) {
            assert_eq!(said.untranslated, [], "{:?}", said.kind);
            let texts: Vec<String> = said.texts().into_iter().map(unmarked).collect();
            let before: Vec<String> = plain.texts().into_iter().map(str::to_lowercase).collect();
            assert_eq!(texts, before, "{:?}", said.kind);
            // What the plain card lists is what stands in marks on the other one.
            let all = said.texts().join("\n");
            assert!(!plain.untranslated.is_empty(), "{:?}", plain.kind);
            for found in &plain.untranslated {
                let marked = format!("⟦{}⟧", found.text);
                assert!(all.contains(&marked), "{:?}: {marked}", plain.kind);
            }
        }
    }
}

#[test]
fn a_card_in_the_language_of_the_book_lacks_nothing() {
    let mut book = sample();
    let lacking = |book: &Book, code: &str| {
        let documents = every_kind_with(book, &in_language(code));
        documents.iter().map(|document| document.untranslated.len()).sum::<usize>()
    };
    assert_eq!(lacking(&book, "en"), 0);
    assert!(lacking(&book, "de") > 0);
    book.settings.language = Some(language("de").id());
    assert_eq!(lacking(&book, "de"), 0);
    assert!(lacking(&book, "en") > 0);
}

fn instruction(recipe: &Recipe) -> (evensip::book::LineId, String) {
    let found = recipe.entries.iter().find_map(|entry| match entry {
        Entry::Instruction(instruction) => {
            Some((instruction.id.clone(), instruction.text.clone()))
        }
        Entry::Line(_) => None,
    });
    found.unwrap()
}

#[test]
fn words_are_of_the_text_as_it_stands_in_every_version_and_come_back_with_it() {
    let book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let item = ItemId::Recipe(id.clone());
    let (line, text) = instruction(book.recipe(&id).unwrap());
    let book = apply(&book, &translate(&item, "de", &text, "Zehnmal rühren.")).unwrap();
    let card_of = |book: &Book, version: Option<&str>| {
        let request = CardRequest::Counter(drink("hob-and-ember", version));
        card(book, &request, &in_language("de")).unwrap()
    };
    let says = |book: &Book, version: Option<&str>, words: &str| {
        card_of(book, version).texts().contains(&words)
    };
    assert!(says(&book, None, "Zehnmal rühren."));
    assert!(says(&book, Some("vegan"), "Zehnmal rühren."));
    // An approved drink is still what was approved.
    assert!(card_of(&book, None).revision.contains("freigegeben"));
    let change = |text: &str| Edit::Change {
        recipe: id.clone(),
        version: None,
        change: Change::Instruction(line.clone(), text.to_owned()),
    };
    let changed = apply(&book, &change("Stir twenty times.")).unwrap();
    let document = card_of(&changed, None);
    assert!(document.texts().contains(&"Stir twenty times."));
    assert!(document.untranslated.iter().any(|found| found.text == "Stir twenty times."));
    let back = apply(&changed, &change(&text)).unwrap();
    assert!(says(&back, None, "Zehnmal rühren."));
}

#[test]
fn a_book_without_words_is_written_as_before_and_one_with_words_reads_back() {
    let book = sample();
    let cleared = |book: &Book| {
        let mut edits = Vec::new();
        for item in items(book) {
            for known in book.translations_of(&item) {
                edits.push(translate(&item, known.language.as_str(), &known.of, ""));
            }
        }
        apply_all(book, &edits).unwrap()
    };
    let plain = cleared(&book);
    assert!(!write(&plain).contains("translations"));
    let translated = marked(&plain, "ko");
    assert_eq!(parse(&write(&translated)).unwrap().0, translated);
    assert_eq!(cleared(&translated), plain);
}

#[test]
fn an_unknown_code_in_a_file_is_kept_and_a_wrong_one_is_refused() {
    let text = |code: &str| {
        format!(
            "(format: 1, vessels: [(id: \"cup\", name: \"cup\", kind: Cup, capacity: 500.0, \
             translations: [(language: \"{code}\", of: \"cup\", text: \"tas\")])])"
        )
    };
    let (book, _) = parse(&text("af")).unwrap();
    assert!(write(&book).contains("\"af\""));
    for wrong in ["", "Deutsch!", "zh_Hant"] {
        assert!(parse(&text(wrong)).is_err(), "{wrong}");
    }
}

#[test]
fn things_are_found_by_their_names_in_any_language() {
    let book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let item = ItemId::Recipe(id);
    let name = book.name_of(&item);
    let book = apply(&book, &translate(&item, "vi", &name, "Bếp và Than hồng")).unwrap();
    let hits = LookUpIndex::of(&book).find(&book, "than hong", 5);
    assert_eq!(hits.best[0].kind, FoundKind::Recipe);
    assert_eq!(hits.best[0].name, name);
}
