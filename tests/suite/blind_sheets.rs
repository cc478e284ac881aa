//! The sheets of a blind tasting: what the tasters see gives nothing away, what the pourer sees is what is served.

use std::collections::BTreeSet;

use evensip::book::Axis;
use evensip::cards::{
    AskedOfTasters, BlindTasting, Block, CardError, CardRequest, Document, Drink, Fonts, Mark,
    Paper, Table, Typesetter, card, html, markdown,
};
use evensip::tasting::{ServingDesign, servings};

use crate::cards::{drink, options};
use crate::sample::sample;

/// A tasting of drinks of the sample book.
pub(crate) fn tasting(design: ServingDesign, samples: &[Drink], people: u32) -> BlindTasting {
    BlindTasting {
        design,
        samples: samples[..design.samples()].to_vec(),
        people,
        seed: 7,
        asked: AskedOfTasters::More(Axis::Sweetness),
    }
}

/// A drink, a version of it and another drink.
pub(crate) fn three_drinks() -> Vec<Drink> {
    let book = sample();
    let ember = drink("hob-and-ember", None);
    let versions = &book.recipe(&ember.recipe).unwrap().versions;
    let other = book
        .recipes
        .iter()
        .find(|recipe| recipe.id != ember.recipe && recipe.cup.is_some());
    let version = drink("hob-and-ember", Some(versions[0].id.as_str()));
    vec![ember, version, drink(other.unwrap().id.as_str(), None)]
}

fn tables(document: &Document) -> Vec<&Table> {
    let blocks = document.blocks.iter();
    let tables = blocks.filter_map(|block| match block {
        Block::Table(table) => Some(table),
        _ => None,
    });
    tables.collect()
}

#[test]
fn what_tasters_see_is_the_same_whichever_drink_is_a() {
    let book = sample();
    let drinks = three_drinks();
    for design in ServingDesign::ALL {
        let forward = tasting(design, &drinks, 12);
        let mut backward = forward.clone();
        backward.samples.reverse();
        let scores =
            |tasting: BlindTasting| card(&book, &CardRequest::Scores(tasting), &options()).unwrap();
        let document = scores(forward);
        assert_eq!(document, scores(backward), "{design:?}");
        let name = &book.recipe(&drinks[0].recipe).unwrap().name;
        assert!(!markdown(&document).contains(name.as_str()), "{design:?}");
    }
}

#[test]
fn codes_stand_in_the_order_of_tasting_and_the_pouring_sheet_says_what_each_is() {
    let book = sample();
    for design in ServingDesign::ALL {
        for people in [1, 5, 12] {
            let asked = tasting(design, &three_drinks(), people);
            let served = servings(design, people, asked.seed).unwrap();
            let scores = CardRequest::Scores(asked.clone());
            let scores = card(&book, &scores, &options()).unwrap();
            let slips = tables(&scores);
            assert_eq!(slips.len(), served.len());
            for (slip, serving) in slips.iter().zip(&served) {
                let codes: Vec<String> = serving
                    .cups
                    .iter()
                    .map(|cup| cup.code.to_string())
                    .collect();
                for row in &slip.rows {
                    assert_eq!(row[1..], codes, "{design:?}");
                }
                assert!(slip.columns[1..].iter().all(|column| column.has_boxes));
            }
            let pouring = card(&book, &CardRequest::Pouring(asked), &options()).unwrap();
            let orders = tables(&pouring);
            assert_eq!(orders.len(), 1);
            let mut seen = BTreeSet::new();
            for (row, serving) in orders[0].rows.iter().zip(&served) {
                assert_eq!(row.len(), orders[0].columns.len());
                for cup in &serving.cups {
                    let cell = format!("{}\u{a0}=\u{a0}{}", cup.code, cup.sample.letter());
                    assert!(row.contains(&cell), "{design:?}: {cell} in {row:?}");
                    assert!(seen.insert(cup.code), "{design:?}: {} twice", cup.code);
                }
                let right = serving.right_code();
                let last = row.last().unwrap();
                assert!(right.is_none_or(|code| *last == code.to_string()));
            }
        }
    }
}

#[test]
fn both_sheets_say_every_allergen_and_caution_of_every_sample() {
    let book = sample();
    let speaker = options().speaker(&book);
    for design in [ServingDesign::Pair, ServingDesign::Ranking] {
        let asked = tasting(design, &three_drinks(), 6);
        for request in [
            CardRequest::Scores(asked.clone()),
            CardRequest::Pouring(asked.clone()),
        ] {
            let document = card(&book, &request, &options()).unwrap();
            let all = document.texts().join("\n");
            for drink in &asked.samples {
                let recipe = book.recipe(&drink.recipe).unwrap();
                let balance =
                    evensip::balance::balance_version(&book, recipe, drink.version.as_ref());
                let balance = balance.unwrap();
                for caution in &balance.cautions {
                    let words = speaker.caution(&caution.fact);
                    assert!(all.contains(&words), "{:?}: {words}", document.kind);
                }
                for allergen in &balance.allergens.contains {
                    assert!(all.contains(speaker.allergen(*allergen)), "{allergen:?}");
                }
            }
        }
    }
}

#[test]
fn a_slip_stands_on_one_page_whole() {
    let book = sample();
    let mut setter = Typesetter::new(Fonts::bundled(), "en");
    for design in ServingDesign::ALL {
        let asked = tasting(design, &three_drinks(), 24);
        let served = servings(design, 24, asked.seed).unwrap();
        let document = card(&book, &CardRequest::Scores(asked), &options()).unwrap();
        for paper in Paper::ALL {
            let pages = setter.pages(&document, paper);
            assert!(pages.len() > 1);
            let pages: Vec<String> = pages
                .iter()
                .map(|page| {
                    let runs = page.marks.iter().filter_map(|mark| match mark {
                        Mark::Glyphs(run) => Some(run.text.to_string()),
                        _ => None,
                    });
                    runs.collect::<Vec<_>>().join("\n")
                })
                .collect();
            for serving in &served {
                let heading = format!("Taster {}", serving.person);
                let has = |page: &String, text: &str| page.lines().any(|line| line == text);
                let page = pages.iter().find(|page| has(page, &heading)).unwrap();
                for cup in &serving.cups {
                    let code = cup.code.to_string();
                    assert!(page.contains(&code), "{design:?}, {paper:?}: {heading}");
                }
            }
        }
        assert!(html(&document, Paper::A4).contains("class=\"slips\""));
    }
}

#[test]
fn a_tasting_that_can_not_be_held_is_refused_with_what_to_do() {
    let book = sample();
    let drinks = three_drinks();
    let refused = |tasting: BlindTasting| {
        let error = card(&book, &CardRequest::Pouring(tasting), &options()).unwrap_err();
        let words = error.words(&options().speaker(&book));
        (error, words)
    };
    let mut one = tasting(ServingDesign::Triangle, &drinks, 6);
    one.samples.pop();
    let (error, words) = refused(one);
    assert_eq!(
        error,
        CardError::CountToTaste {
            count: 1,
            wanted: 2
        }
    );
    assert!(words.contains("2 drinks"), "{words}");
    for people in [0, 301, u32::MAX] {
        let (error, words) = refused(tasting(ServingDesign::Triangle, &drinks, people));
        assert_eq!(error, CardError::CountOfTasters { most: 300 });
        assert!(words.contains("1 to 300"), "{words}");
    }
}
