//! Texts of the book in other languages: what is printed, what has no words, where they are typed.

use egui::epaint::text::MissingGlyphPolicy;
use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::book::{
    Allergen, AllergenList, Book, Change, Confirmation, Declared, Entry, FoundKind, IngredientId,
    ItemId, LanguageId, LookUpIndex, Recipe, RecipeId, Translation, translated,
};
use evensip::book_file::{parse, write};
use evensip::cards::{Block, CardOptions, CardRequest, OnMenu, Table, card};
use evensip::edit::{Edit, apply, apply_all};
use evensip::say::{Language, Speaker};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{Window, book, choose, click, press, settle, type_into, window_of};
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
    items.extend(
        book.ingredients
            .iter()
            .map(|item| ItemId::Ingredient(item.id.clone())),
    );
    items.extend(
        book.measures
            .iter()
            .map(|item| ItemId::Measure(item.id.clone())),
    );
    items.extend(
        book.vessels
            .iter()
            .map(|item| ItemId::Vessel(item.id.clone())),
    );
    items.extend(
        book.recipes
            .iter()
            .map(|item| ItemId::Recipe(item.id.clone())),
    );
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

/// The book without any words in other languages.
fn cleared(book: &Book) -> Book {
    let mut edits = Vec::new();
    for item in items(book) {
        for known in book.translations_of(&item) {
            edits.push(translate(&item, known.language.as_str(), &known.of, ""));
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
    let book = cleared(&sample());
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
        documents
            .iter()
            .map(|document| document.untranslated.len())
            .sum::<usize>()
    };
    assert_eq!(lacking(&book, "en"), 0);
    assert!(lacking(&book, "de") > 0);
    book.settings.language = Some(language("de").id());
    assert_eq!(lacking(&book, "de"), 0);
    assert!(lacking(&book, "en") > 0);
}

fn instruction(recipe: &Recipe) -> (evensip::book::LineId, String) {
    let found = recipe.entries.iter().find_map(|entry| match entry {
        Entry::Instruction(instruction) => Some((instruction.id.clone(), instruction.text.clone())),
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
    assert!(
        document
            .untranslated
            .iter()
            .any(|found| found.text == "Stir twenty times.")
    );
    let back = apply(&changed, &change(&text)).unwrap();
    assert!(says(&back, None, "Zehnmal rühren."));
}

#[test]
fn a_book_without_words_is_written_as_before_and_one_with_words_reads_back() {
    let plain = cleared(&sample());
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

#[test]
fn the_english_stands_beside_until_somebody_of_the_shop_has_confirmed() {
    let mut book = sample();
    let german = language("de");
    let lines = |book: &Book| -> Vec<String> {
        let documents = every_kind_with(book, &in_language("de"));
        let texts = documents.iter().flat_map(|document| document.texts());
        texts.map(str::to_owned).collect()
    };
    let said = |lines: &[String], words: &str| lines.iter().any(|line| line.contains(words));
    let before = lines(&book);
    assert!(said(&before, "Milch (milk)") || said(&before, "(soybeans and milk)"));
    assert!(said(&before, "noch nicht bestätigt"));
    book.settings = book.settings.confirmed(
        &german.id(),
        Some(Confirmation {
            language: german.id(),
            by: "Ada".to_owned(),
            date: "2026-11-25".to_owned(),
        }),
    );
    let after = lines(&book);
    for english in ["milk", "soybeans", "contains", "noch nicht bestätigt"] {
        let cautions = after.iter().filter(|line| line.contains('('));
        let found: Vec<_> = cautions.filter(|line| line.contains(english)).collect();
        assert!(found.is_empty(), "{found:?}");
    }
    assert!(said(&after, "bestätigt von Ada, 2026-11-25"));
    // Another language is another translation; a name of blanks is nobody.
    assert!(
        every_kind_with(&book, &in_language("fr"))
            .iter()
            .all(|document| document.confirmation.is_none())
    );
    book.settings.confirmations[0].by = " ".to_owned();
    assert_eq!(lines(&book), before);
}

#[test]
fn long_lists_stand_in_several_tables_that_have_every_allergen_once() {
    let mut book = sample();
    book.settings.allergen_lists = AllergenList::ALL.to_vec();
    let document = card(&book, &CardRequest::Menu(OnMenu::All), &options()).unwrap();
    let mut columns = Vec::new();
    for block in &document.blocks {
        let Block::Table(table) = block else { break };
        assert!(table.columns.len() <= 16);
        assert_eq!(table.columns[0].title, "drink");
        columns.extend(table.columns[1..].iter().map(|column| column.title.clone()));
    }
    let speaker = Speaker::new(&book);
    let listed = book.settings.listed_allergens().into_iter();
    let names: Vec<&str> = listed.map(|allergen| speaker.allergen(allergen)).collect();
    assert_eq!(columns, names);
}

#[test]
fn the_matrix_has_the_columns_of_the_lists_and_silence_is_not_free() {
    let mut book = sample();
    book.settings.allergen_lists = vec![AllergenList::Taiwan];
    let matrix = |book: &Book| {
        let document = card(book, &CardRequest::Menu(OnMenu::All), &options()).unwrap();
        match &document.blocks[0] {
            Block::Table(table) => table.clone(),
            _ => panic!("the matrix comes first"),
        }
    };
    let column = |table: &Table, name: &str| {
        let at = table.columns.iter().position(|column| column.title == name);
        let at = at.unwrap_or_else(|| panic!("{name}"));
        table
            .rows
            .iter()
            .map(|row| row[at].clone())
            .collect::<Vec<_>>()
    };
    let table = matrix(&book);
    assert_eq!(table.columns.len(), 1 + AllergenList::Taiwan.items().len());
    assert!(
        column(&table, "mango")
            .iter()
            .all(|cell| cell == "not stated")
    );
    // Every pack has been asked, and one says yes.
    for item in &book.clone().ingredients {
        let mut item = item.as_ref().clone();
        if let Some(stated) = &mut item.allergens {
            let is_tea = item.id.as_str() == "black-tea";
            let said = if is_tea {
                Declared::Contains
            } else {
                Declared::Free
            };
            stated.declare(Allergen::Mango, said);
        }
        book.ingredients.put(item);
    }
    let cells = column(&matrix(&book), "mango");
    assert!(cells.iter().any(|cell| cell == "contains"), "{cells:?}");
    assert!(cells.iter().any(|cell| cell == "–"), "{cells:?}");
    let coconut = column(&matrix(&book), "coconut");
    assert!(
        coconut.iter().all(|cell| cell == "not stated"),
        "{coconut:?}"
    );
}

fn take_german(window: &mut Window) {
    // The list names every language in its own script, and not every machine has fonts for all.
    window
        .ctx
        .set_missing_glyph_policy(MissingGlyphPolicy::Tofu);
    window.get_by_label("Language of the card").click();
    window.run();
    window.get_by_label("Deutsch").click();
    window.run();
}

/// Follows an entry of the list of the card, once it is there.
fn lead(window: &mut Window, entry: &str) {
    for _ in 0..2000 {
        if window.query_by_label(entry).is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
        window.run();
    }
    click(window, entry);
    settle(window);
}

#[test]
fn words_are_typed_in_the_form_of_the_item_that_the_list_of_the_card_leads_to() {
    let mut window = window_of([1500.0, 1400.0]);
    window.state_mut().view_mut().area = Area::Cards;
    window.run();
    take_german(&mut window);
    lead(&mut window, "Enter Deutsch for “Pear syrup”");
    assert_eq!(window.state().view().area, Area::Counter);
    let field = "Deutsch for the name “Pear syrup”";
    assert!(window.get_by_label(field).is_focused());
    window.state_mut().view_mut().area = Area::Cards;
    window.run();
    lead(&mut window, "Enter Deutsch for “Hob & Ember”");
    assert_eq!(window.state().view().area, Area::Recipe);
    let field = "Deutsch for the name “Hob & Ember”";
    assert!(window.get_by_label(field).is_focused());
    window.get_by_label(field).type_text("Herd und Glut");
    window.run();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let words = |window: &Window| {
        let recipe = book(window).recipe(&id).unwrap().clone();
        translated(&recipe.translations, "de", "Hob & Ember").map(str::to_owned)
    };
    assert_eq!(words(&window).as_deref(), Some("Herd und Glut"));
    // Enter leads on to the next text, and what was typed is one step.
    press(&mut window, Modifiers::NONE, Key::Enter);
    let next = "Deutsch for the instruction “Pour the water over the powders and stir until no lump is le…”";
    assert!(window.get_by_label(next).is_focused());
    assert_eq!(
        window.state().workbench().undo_label().as_deref(),
        Some("change the translation of “Hob & Ember” (Deutsch)")
    );
    press(&mut window, Modifiers::COMMAND, Key::Z);
    assert_eq!(words(&window), None);
}

#[test]
fn a_confirmation_is_given_and_withdrawn_beside_the_language_of_the_card() {
    let mut window = window_of([1500.0, 1400.0]);
    window.state_mut().view_mut().area = Area::Cards;
    window.run();
    assert!(
        window
            .query_by_label("Who confirms the translation")
            .is_none()
    );
    take_german(&mut window);
    type_into(&mut window, "Who confirms the translation", "Ada");
    click(&mut window, "Confirm");
    settle(&mut window);
    let confirmed = |window: &Window| {
        let book = book(window);
        book.settings
            .confirmation_in("de")
            .map(|found| found.by.clone())
    };
    assert_eq!(confirmed(&window).as_deref(), Some("Ada"));
    click(&mut window, "Withdraw the confirmation");
    settle(&mut window);
    assert_eq!(confirmed(&window), None);
}

#[test]
fn an_ingredient_is_declared_free_of_what_a_list_of_the_shop_names() {
    let mut window = window_of([1500.0, 3200.0]);
    window.state_mut().view_mut().area = Area::Counter;
    window.run();
    window.state_mut().areas_mut().counter.look_at(Kind::Shop);
    window.run();
    window
        .get_by_role_and_label(Role::CheckBox, "Taiwan")
        .click();
    window.run();
    let lists = book(&window).settings.allergen_lists.clone();
    assert_eq!(lists, [AllergenList::EuropeanUnion, AllergenList::Taiwan]);
    let tea = IngredientId::new("black-tea").unwrap();
    let item = CounterItem::Ingredient(tea.clone());
    window.state_mut().areas_mut().counter.show(item);
    window.run();
    choose(&mut window, "mango: not stated", "free of it");
    let declared = |window: &Window| {
        let item = book(window).ingredient(&tea).unwrap().clone();
        item.allergens.as_ref().unwrap().says_of(Allergen::Mango)
    };
    assert_eq!(declared(&window), Declared::Free);
}
