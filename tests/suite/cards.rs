//! Cards as documents and as text: every line and caution is on them, nothing in a name is markup or a formula, what is not
//! stated is never zero.

use evensip::balance::balance_version;
use evensip::book::{Book, Entry, IngredientId, Nutrient, RecipeId, VersionId};
use evensip::cards::{
    BatchItem, Block, CardError, CardKind, CardOptions, CardRequest, Document, Drink, OnMenu,
    Paper, StepRow, TaughtSwap, card, csv, drinks_of_menu, file_name, html, json, json_ld,
    markdown,
};
use evensip::say::Speaker;
use html5ever::tendril::TendrilSink as _;
use markup5ever_rcdom::{Handle, NodeData, RcDom};

use evensip::tasting::ServingDesign;

use crate::blind_sheets::{tasting, three_drinks};
use crate::sample::sample;

pub(crate) fn drink(recipe: &str, version: Option<&str>) -> Drink {
    Drink {
        recipe: RecipeId::new(recipe).unwrap(),
        version: version.map(|version| VersionId::new(version).unwrap()),
    }
}

pub(crate) fn options() -> CardOptions {
    CardOptions {
        date: "2026-11-25".to_owned(),
        ..CardOptions::default()
    }
}

/// One chestnut powder for another in a drink.
pub(crate) fn chestnuts(drink: Drink) -> TaughtSwap {
    TaughtSwap {
        drink,
        replace: IngredientId::new("tambrel-chestnut").unwrap(),
        with: IngredientId::new("ketterby-chestnut").unwrap(),
    }
}

/// Every kind of card of the sample book.
pub(crate) fn every_kind(book: &Book) -> Vec<Document> {
    every_kind_with(book, &options())
}

pub(crate) fn every_kind_with(book: &Book, options: &CardOptions) -> Vec<Document> {
    let ember = || drink("hob-and-ember", None);
    let recipe = book.recipe(&ember().recipe).unwrap();
    let version = recipe.versions[0].id.clone();
    let beside = Drink {
        recipe: ember().recipe,
        version: Some(version),
    };
    [
        CardRequest::Counter(ember()),
        CardRequest::Training(ember()),
        CardRequest::Exercise(chestnuts(ember())),
        CardRequest::Answers(chestnuts(ember())),
        CardRequest::Menu(OnMenu::All),
        CardRequest::Ladder(ember()),
        CardRequest::Matrix(ember()),
        CardRequest::Figures(OnMenu::All),
        CardRequest::Comparison(vec![ember(), beside]),
        CardRequest::Batch(vec![BatchItem {
            drink: ember(),
            count: 40,
        }]),
        CardRequest::Scores(tasting(ServingDesign::DuoTrio, &three_drinks(), 7)),
        CardRequest::Pouring(tasting(ServingDesign::DuoTrio, &three_drinks(), 7)),
    ]
    .iter()
    .filter_map(|request| match card(book, request, options) {
        // Of what is not stated no exercise can be made.
        Err(CardError::NoExercise { .. }) => None,
        document => Some(document.unwrap()),
    })
    .collect()
}

/// The texts of a card that a reader must find: names, amounts, instructions, cautions.
pub(crate) fn must_say(book: &Book, drink: &Drink) -> Vec<String> {
    let recipe = book.recipe(&drink.recipe).unwrap();
    let balance = balance_version(book, recipe, drink.version.as_ref()).unwrap();
    let mut texts: Vec<String> = Vec::new();
    for entry in &balance.resolved.entries {
        match entry {
            Entry::Line(line) => {
                texts.push(book.ingredient(&line.ingredient).unwrap().full_name());
                texts.push(Speaker::new(book).amount(&line.amount));
            }
            Entry::Instruction(instruction) => texts.push(instruction.text.clone()),
        }
    }
    texts.extend(
        balance
            .cautions
            .iter()
            .map(|caution| Speaker::new(book).caution(&caution.fact)),
    );
    texts
}

#[test]
fn a_counter_card_says_every_line_instruction_and_caution_of_every_drink() {
    let book = sample();
    for drink in drinks_of_menu(&book) {
        let document = card(&book, &CardRequest::Counter(drink.clone()), &options()).unwrap();
        let texts = document.texts();
        for wanted in must_say(&book, &drink) {
            assert!(texts.contains(&wanted.as_str()), "{drink:?}: {wanted}");
        }
        assert_eq!(document.date, "2026-11-25");
        assert!(document.foot().contains("2026-11-25"));
    }
}

#[test]
fn the_serving_temperature_stands_with_its_uncertainty() {
    let document = card(
        &sample(),
        &CardRequest::Counter(drink("hob-and-ember", None)),
        &options(),
    )
    .unwrap();
    let facts = document.blocks.iter().find_map(|block| match block {
        Block::Facts(facts) => Some(facts),
        _ => None,
    });
    let fact = facts
        .unwrap()
        .iter()
        .find(|fact| fact.name == "serving temperature")
        .unwrap();
    assert!(
        fact.value.contains(" ± ") && fact.value.ends_with("°C"),
        "{}",
        fact.value
    );
}

#[test]
fn the_revision_follows_the_approval() {
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let revision = |book: &Book| {
        let request = CardRequest::Counter(drink("hob-and-ember", None));
        card(book, &request, &options()).unwrap().revision
    };
    let date = book
        .recipe(&id)
        .unwrap()
        .approvals
        .last()
        .unwrap()
        .date
        .clone();
    assert!(
        revision(&book).contains(&format!("approved {date}")),
        "{}",
        revision(&book)
    );
    // A line changes: the card no longer claims to be what was approved.
    let mut recipe = (**book.recipe(&id).unwrap()).clone();
    for entry in &mut recipe.entries {
        if let Entry::Line(line) = entry
            && let Some(number) = line.amount.number()
        {
            line.amount = line.amount.with_number(number * 2.0);
            break;
        }
    }
    book.recipes.put(recipe.clone());
    assert!(
        revision(&book).contains(&format!("changed since the approval of {date}")),
        "{}",
        revision(&book)
    );
    recipe.approvals.clear();
    recipe.state = evensip::book::State::Draft;
    book.recipes.put(recipe);
    assert!(
        revision(&book).contains("not approved"),
        "{}",
        revision(&book)
    );
}

#[test]
fn what_is_not_stated_is_never_zero_on_a_card() {
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    // The second line is a powder; what tea has none of is known without a label.
    let line = book
        .recipe(&id)
        .unwrap()
        .plain()
        .lines()
        .nth(1)
        .unwrap()
        .clone();
    let mut ingredient = (**book.ingredient(&line.ingredient).unwrap()).clone();
    ingredient.composition.printed.remove(&Nutrient::Sugars);
    ingredient.composition.printed.remove(&Nutrient::Brix);
    ingredient.allergens = None;
    let name = ingredient.full_name();
    book.ingredients.put(ingredient);
    for document in every_kind(&book) {
        let texts = document.texts().join("\n");
        assert!(
            texts.contains("not stated") || texts.contains("not known"),
            "{:?}",
            document.kind
        );
        if matches!(document.kind, CardKind::Counter | CardKind::Training) {
            assert!(
                texts.contains(&format!("not stated: {name}")),
                "{:?}: {texts}",
                document.kind
            );
        }
    }
}

#[test]
fn the_menu_names_all_fourteen_allergens_for_every_drink() {
    let book = sample();
    let document = card(&book, &CardRequest::Menu(OnMenu::All), &options()).unwrap();
    let Block::Table(table) = &document.blocks[0] else {
        panic!("the matrix comes first")
    };
    assert_eq!(table.columns.len(), 15);
    assert_eq!(table.rows.len(), drinks_of_menu(&book).len());
    for (row, drink) in table.rows.iter().zip(drinks_of_menu(&book)) {
        let recipe = book.recipe(&drink.recipe).unwrap();
        let balance = balance_version(&book, recipe, drink.version.as_ref()).unwrap();
        for (allergen, cell) in evensip::book::Allergen::ANNEX.iter().zip(&row[1..]) {
            let contains = balance.allergens.contains.contains(allergen);
            assert_eq!(contains, cell == "contains", "{row:?}");
            // Silence is only a dash when every pack has spoken.
            if cell == "–" {
                assert!(balance.allergens.not_stated.is_empty(), "{row:?}");
            }
        }
    }
}

#[test]
fn a_batch_follows_what_the_house_makes_down_to_what_is_bought() {
    let book = sample();
    let house = |id: &evensip::book::IngredientId| {
        book.ingredient(id)
            .is_some_and(|item| item.house_made.is_some())
    };
    let with_house_made = drinks_of_menu(&book)
        .into_iter()
        .find(|drink| {
            let recipe = book.recipe(&drink.recipe).unwrap();
            recipe.plain().lines().any(|line| house(&line.ingredient)) && drink.version.is_none()
        })
        .expect("a drink with something house-made");
    let request = CardRequest::Batch(vec![BatchItem {
        drink: with_house_made.clone(),
        count: 40,
    }]);
    let document = card(&book, &request, &options()).unwrap();
    let tables: Vec<_> = document
        .blocks
        .iter()
        .filter_map(|block| match block {
            Block::Table(table) => Some(table),
            _ => None,
        })
        .collect();
    let to_make = tables
        .iter()
        .find(|table| table.columns[0].title == "house-made")
        .unwrap();
    let to_buy = tables
        .iter()
        .find(|table| table.columns[1].title == "supplier")
        .unwrap();
    let recipe = book.recipe(&with_house_made.recipe).unwrap();
    let line = recipe.plain();
    let line = line.lines().find(|line| house(&line.ingredient)).unwrap();
    let item = book.ingredient(&line.ingredient).unwrap();
    let made = item.house_made.as_ref().unwrap();
    // By hand: forty times what one drink takes, over what a batch leaves after its waste, rounded up.
    let balance = balance_version(&book, recipe, None).unwrap();
    let needed: f64 = balance
        .lines
        .iter()
        .filter(|share| share.ingredient == line.ingredient)
        .map(|share| share.grams.unwrap() * 40.0)
        .sum();
    let batches = (needed / (made.yield_grams.value * (1.0 - made.waste_percent / 100.0))).ceil();
    let row = to_make
        .rows
        .iter()
        .find(|row| row[0] == item.full_name())
        .unwrap();
    assert_eq!(row[3], format!("{batches}"), "{row:?}");
    assert!(
        to_buy.rows.iter().all(|row| row[0] != item.full_name()),
        "what is made is not bought"
    );
}

#[test]
fn a_request_that_can_not_be_is_refused_in_a_sentence() {
    let book = sample();
    let ember = drink("hob-and-ember", None);
    for (request, says) in [
        (CardRequest::Comparison(vec![ember.clone()]), "2 to 4"),
        (CardRequest::Batch(Vec::new()), "number of drinks"),
        (
            CardRequest::Counter(drink("nothing", None)),
            "no recipe `nothing`",
        ),
        (
            CardRequest::Counter(drink("hob-and-ember", Some("nothing"))),
            "no version `nothing`",
        ),
    ] {
        let error: CardError = card(&book, &request, &options()).unwrap_err();
        let words = error.words(&Speaker::new(&book));
        assert!(words.contains(says), "{words}");
    }
    assert_eq!(
        card(
            &Book::default(),
            &CardRequest::Menu(OnMenu::All),
            &options()
        ),
        Err(CardError::EmptyMenu)
    );
}

/// The sample with names that try to be markup, formulas and paths.
fn hostile() -> Book {
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let mut recipe = (**book.recipe(&id).unwrap()).clone();
    "=1+1</h1><script>alert('x')</script> | **b** ../../x".clone_into(&mut recipe.name);
    recipe
        .entries
        .push(Entry::Instruction(evensip::book::Instruction {
            id: evensip::book::LineId::new("evil").unwrap(),
            text: "@SUM(A1) <img src=x onerror=1> & \"quoted\"\u{0}\u{7}".to_owned(),
        }));
    book.recipes.put(recipe);
    book
}

fn walk(handle: &Handle, names: &mut Vec<String>, text: &mut String) {
    match &handle.data {
        NodeData::Element { name, .. } => names.push(name.local.to_string()),
        NodeData::Text { contents } => {
            text.push_str(&contents.borrow());
            text.push('\n');
        }
        _ => {}
    }
    for child in handle.children.borrow().iter() {
        walk(child, names, text);
    }
}

#[test]
fn html_is_without_a_fault_for_its_parser_and_nothing_in_a_name_becomes_an_element() {
    for book in [sample(), hostile()] {
        for document in every_kind(&book) {
            let page = html(&document, Paper::A4);
            let dom = html5ever::parse_document(RcDom::default(), html5ever::ParseOpts::default())
                .one(page.as_str());
            assert_eq!(*dom.errors.borrow(), [] as [&str; 0], "{:?}", document.kind);
            let (mut names, mut text) = (Vec::new(), String::new());
            walk(&dom.document, &mut names, &mut text);
            assert!(!names.iter().any(|name| name == "script" || name == "img"));
            assert!(page.starts_with("<!DOCTYPE html>\n<html lang=\"en\">"));
            for wanted in document.texts() {
                let wanted: String = wanted
                    .chars()
                    .map(|letter| {
                        if letter.is_control() {
                            '\u{fffd}'
                        } else {
                            letter
                        }
                    })
                    .collect();
                assert!(text.contains(&wanted), "{:?}: {wanted}", document.kind);
            }
        }
    }
}

#[test]
fn csv_comes_back_from_another_reader_and_no_cell_is_a_formula() {
    for book in [sample(), hostile()] {
        for document in every_kind(&book) {
            let bytes = csv(&document);
            let text = std::str::from_utf8(&bytes).unwrap();
            let rows = rows_of(text.strip_prefix('\u{feff}').unwrap());
            let width = rows[0].len();
            for row in &rows {
                assert_eq!(row.len(), width);
                for cell in row {
                    assert!(
                        !cell
                            .trim_start()
                            .starts_with(['=', '+', '-', '@', '\t', '\r']),
                        "{cell}"
                    );
                }
            }
            let cells: Vec<&str> = rows.iter().flatten().map(String::as_str).collect();
            for wanted in document.texts() {
                let found = cells
                    .iter()
                    .any(|cell| cell.trim_start_matches('\'') == wanted || cell.contains(wanted));
                // The caption of a table is for those who can't see one.
                let is_caption = document
                    .blocks
                    .iter()
                    .any(|block| matches!(block, Block::Table(table) if table.caption == wanted));
                assert!(found || is_caption, "{:?}: {wanted}", document.kind);
            }
        }
    }
}

/// A reader of RFC 4180 of its own, which shares nothing with the writer.
fn rows_of(text: &str) -> Vec<Vec<String>> {
    let (mut rows, mut row, mut cell) = (Vec::new(), Vec::new(), String::new());
    let mut quoted = false;
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        match (quoted, letter) {
            (true, '"') if letters.peek() == Some(&'"') => {
                letters.next();
                cell.push('"');
            }
            (_, '"') => quoted = !quoted,
            (false, ',') => row.push(std::mem::take(&mut cell)),
            (false, '\r') if letters.peek() == Some(&'\n') => {
                letters.next();
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            (_, letter) => cell.push(letter),
        }
    }
    assert!(!quoted && cell.is_empty(), "the file ends within a row");
    rows
}

#[test]
fn markdown_and_json_hold_every_line() {
    let book = sample();
    let ember = drink("hob-and-ember", None);
    let document = card(&book, &CardRequest::Counter(ember.clone()), &options()).unwrap();
    let text = markdown(&document).replace('\\', "");
    let value = json(&document).to_string();
    for wanted in must_say(&book, &ember) {
        assert!(text.contains(&wanted), "{wanted}");
        let quoted = serde_json::to_string(&wanted).unwrap();
        assert!(value.contains(&quoted), "{wanted}");
    }
    let hostile = every_kind(&hostile());
    let text = markdown(&hostile[0]);
    assert!(!text.contains("<script>") && !text.contains("**b**"));
}

#[test]
fn a_file_name_stays_in_its_folder() {
    let document = &every_kind(&hostile())[0];
    let name = file_name(document, "pdf");
    assert!(!name.contains(['/', '\\', '<', '>', '|', '=']) && !name.starts_with('.'));
}

#[test]
fn steps_keep_the_order_of_the_recipe() {
    let book = sample();
    for drink in drinks_of_menu(&book) {
        let recipe = book.recipe(&drink.recipe).unwrap();
        let balance = balance_version(&book, recipe, drink.version.as_ref()).unwrap();
        let document = card(&book, &CardRequest::Counter(drink), &options()).unwrap();
        let Block::Steps(stages) = &document.blocks[0] else {
            panic!("the steps come first")
        };
        let rows: Vec<&StepRow> = stages.iter().flat_map(|stage| &stage.rows).collect();
        assert_eq!(rows.len(), balance.resolved.entries.len());
        for (row, entry) in rows.iter().zip(&balance.resolved.entries) {
            match (row, entry) {
                (StepRow::Instruction(text), Entry::Instruction(instruction)) => {
                    assert_eq!(*text, instruction.text);
                }
                (StepRow::Line { amount, .. }, Entry::Line(line)) => {
                    assert_eq!(*amount, Speaker::new(&book).amount(&line.amount));
                }
                _ => panic!("{row:?} is not {entry:?}"),
            }
        }
    }
}

/// The statements of a JSON-LD text, by an independent reader. The context of schema.org is given by hand: no test asks
/// the network.
fn statements(text: &str) -> Vec<(String, String)> {
    let context = br#"{"@context": {"@vocab": "http://schema.org/"}}"#;
    let parser = oxjsonld::JsonLdParser::new()
        .lenient()
        .for_slice(text.as_bytes())
        .with_load_document_callback(move |_, _| {
            Ok(oxjsonld::JsonLdRemoteDocument {
                document: context.to_vec(),
                document_url: "https://schema.org/".to_owned(),
            })
        });
    parser
        .map(|quad| {
            let quad = quad.expect("valid JSON-LD");
            (quad.predicate.as_str().to_owned(), quad.object.to_string())
        })
        .collect()
}

#[test]
fn a_recipe_in_json_ld_is_understood_by_an_independent_reader() {
    let book = sample();
    let recipe = json_ld(&book, &drink("hob-and-ember", None), &options()).unwrap();
    let statements = statements(&recipe.value.to_string());
    let objects = |property: &str| -> Vec<&str> {
        let iri = format!("http://schema.org/{property}");
        statements
            .iter()
            .filter(|(predicate, _)| *predicate == iri)
            .map(|(_, object)| object.as_str())
            .collect()
    };
    let lines = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    assert_eq!(
        objects("recipeIngredient").len(),
        lines.plain().lines().count()
    );
    assert!(objects("sugarContent")[0].contains(" g"));
    assert!(objects("calories")[0].contains(" kcal"));
    assert_eq!(objects("name")[0], format!("\"{}\"", lines.name));
    assert!(
        recipe
            .left_behind
            .iter()
            .any(|left| left.contains("caution"))
    );
}

#[test]
fn a_nutrient_that_is_known_in_part_is_left_out_of_json_ld_and_named() {
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    // The second line is a powder; what tea has none of is known without a label.
    let line = book
        .recipe(&id)
        .unwrap()
        .plain()
        .lines()
        .nth(1)
        .unwrap()
        .clone();
    let mut ingredient = (**book.ingredient(&line.ingredient).unwrap()).clone();
    ingredient.composition.printed.remove(&Nutrient::Fat);
    book.ingredients.put(ingredient);
    let recipe = json_ld(&book, &drink("hob-and-ember", None), &options()).unwrap();
    assert_eq!(recipe.value["nutrition"].get("fatContent"), None);
    assert!(
        recipe
            .left_behind
            .iter()
            .any(|left| left.starts_with("fat, which is not known in full")),
        "{:?}",
        recipe.left_behind
    );
}

#[test]
fn a_training_sheet_gives_the_late_end_of_the_time_until_a_drink_may_be_drunk() {
    let mut book = sample();
    book.settings.hot_drinking_temperature = 45.0;
    let request = CardRequest::Training(drink("hob-and-ember", None));
    let text = markdown(&card(&book, &request, &options()).unwrap());
    let row = text
        .lines()
        .find(|line| line.contains("until it cools to"))
        .unwrap();
    assert!(
        row.contains("about ") && row.contains(", at the latest "),
        "{row}"
    );
}
