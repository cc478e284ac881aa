//! Finding anything in the book: what is found, in which order, and where one gets to.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{
    Book, FoundKind, Hit, Ingredient, IngredientId, LineId, LookUpIndex, MeasureKind, NamedLevel,
    Recipe, RecipeId, Spot,
};
use evensip::book_file::built_in_book;
use evensip::say::{Language, Speaker};
use evensip::ui::Area;
use evensip::ui::counter_area::CounterItem;

use crate::at_the_window::{Window, book, click, hands, press, settle, shown, type_on, window};
use crate::growth::{TENFOLD, growth};

const FIELD: &str = "Find in the book";

fn found(book: &Book, typed: &str) -> Vec<Hit> {
    LookUpIndex::of(book).find(book, typed, 100).best
}

fn place(book: &Book, hit: &Hit) -> String {
    let place = Speaker::new(book).found_place(&hit.spot);
    place.unwrap_or_default()
}

fn kinds(hits: &[Hit]) -> Vec<FoundKind> {
    hits.iter().map(|hit| hit.kind).collect()
}

#[test]
fn every_kind_of_thing_is_found_by_its_words() {
    let book = built_in_book().unwrap();
    for (typed, kind, wanted) in [
        ("hob", FoundKind::Recipe, ""),
        ("hob vegan", FoundKind::Version, "of Hob & Ember"),
        ("tambrel chestnut", FoundKind::Ingredient, "Tambrel"),
        ("pear pump", FoundKind::Measure, ""),
        ("shaker", FoundKind::Vessel, "shaker"),
        ("flavour chestnut", FoundKind::Flavour, "in Tambrel"),
        ("stir ten times", FoundKind::Instruction, "in Hob & Ember"),
        ("cold months", FoundKind::Note, "on "),
    ] {
        let hits = found(&book, typed);
        let hit = hits.iter().find(|hit| hit.kind == kind);
        let hit = hit.unwrap_or_else(|| panic!("{typed}: {hits:?}"));
        assert!(place(&book, hit).starts_with(wanted), "{typed}: {hit:?}");
    }
    let (recipe, approval) = book
        .recipes
        .iter()
        .find_map(|recipe| Some((recipe, recipe.approvals.first()?)))
        .unwrap();
    let hits = found(&book, &format!("{} {}", recipe.name, approval.reason));
    assert_eq!(hits[0].spot, Spot::Approval(recipe.id.clone(), 0));
}

#[test]
fn the_shop_its_levels_and_the_note_of_the_book_are_found_and_a_pump_by_what_it_is() {
    let mut book = built_in_book().unwrap();
    book.settings.sugar_levels = vec![
        NamedLevel {
            name: "as it comes".into(),
            percent: 100.0,
        },
        NamedLevel {
            name: "Mondsüß".into(),
            percent: 62.5,
        },
    ];
    let mut pump = book
        .measures
        .iter()
        .find(|item| item.kind == MeasureKind::Pump)
        .unwrap()
        .as_ref()
        .clone();
    pump.name = "The tall one".into();
    let id = pump.id.clone();
    book.measures.put(pump);
    let best = |typed: &str| {
        let hits = found(&book, typed);
        let hit = hits.first().unwrap_or_else(|| panic!("{typed}"));
        (hit.spot.clone(), place(&book, hit))
    };
    assert_eq!(best("mondsuss"), (Spot::SugarLevel(1), "62.5 %".into()));
    assert_eq!(best("little ice").0, Spot::IceLevel(1));
    assert_eq!(best("harrowmere counter").0, Spot::Shop);
    let note = found(&book, "everything invented");
    assert_eq!(
        (&note[0].spot, place(&book, &note[0])),
        (&Spot::BookNote, "on the book".to_owned())
    );
    assert!(note[0].name.contains("invented"), "{note:?}");
    for typed in ["tall pump", "tall press"] {
        assert_eq!(
            best(typed),
            (Spot::Measure(id.clone()), "pump".into()),
            "{typed}"
        );
    }
    assert!(
        found(&book, "pump")
            .iter()
            .any(|hit| hit.spot == Spot::Measure(id.clone()))
    );
    book.settings = evensip::book::Settings::default();
    let german = Speaker::new(&book).in_language(Language::from_code("de").unwrap());
    for typed in ["little ice", "wenig eis", "eisstufe wenig"] {
        let hits = german.look_up_index().find(&book, typed, 10).best;
        let level = hits.iter().find(|hit| hit.spot == Spot::IceLevel(1));
        let level = level.unwrap_or_else(|| panic!("{typed}: {hits:?}"));
        assert_eq!(german.found_name(level), "wenig Eis");
        assert_eq!(german.found_place(&level.spot).as_deref(), Some("30 %"));
    }
    assert!(
        found(&book, "note")
            .iter()
            .all(|hit| hit.spot != Spot::BookNote),
        "an empty note is nothing"
    );
}

#[test]
fn what_was_found_of_the_shop_gets_the_keyboard_in_its_field() {
    for (words, field) in [
        ("everything here is invented", "Note on the book"),
        ("harrowmere tea counter", "Name of the shop"),
        ("little ice", "Name of ice level 2"),
        ("cold months", "Note on the recipe"),
    ] {
        let mut window = window();
        open(&mut window);
        type_on(&mut window, words);
        press(&mut window, Modifiers::NONE, Key::Enter);
        settle(&mut window);
        let focused = window.query_by(|node| node.is_focused() && !node.is_disabled());
        let label = focused.and_then(|node| node.accesskit_node().label());
        assert_eq!(label.as_deref(), Some(field), "{words}");
    }
}

#[test]
fn words_come_in_any_order_without_case_or_accents_and_what_begins_so_comes_first() {
    let mut book = built_in_book().unwrap();
    let mut recipe = book.recipes.iter().next().unwrap().as_ref().clone();
    recipe.name = "Crème Brûlée of the house".into();
    let id = recipe.id.clone();
    book.recipes.put(recipe);
    for typed in ["creme brulee", "BRULEE creme", "  house   Crème "] {
        assert_eq!(
            found(&book, typed)[0].spot,
            Spot::Drink(id.clone(), None),
            "{typed}"
        );
    }
    let hits = found(&book, "chestnut");
    let first_in_text = hits.iter().position(|hit| !hit.piece.is_empty());
    let last_by_name = hits.iter().rposition(|hit| {
        hit.name.to_lowercase().contains("chestnut")
            && hit.piece.is_empty()
            && hit.kind == FoundKind::Ingredient
    });
    assert!(
        hits[0].name.to_lowercase().starts_with("chestnut"),
        "{hits:?}"
    );
    assert!(
        first_in_text.is_none_or(|at| Some(at) > last_by_name),
        "{hits:?}"
    );
    assert!(found(&book, "no such word").is_empty());
    assert!(found(&book, " ").is_empty());
}

#[test]
fn an_ingredient_found_by_its_note_shows_the_piece() {
    let book = built_in_book().unwrap();
    let hits = found(&book, "refractometer");
    assert_eq!(kinds(&hits)[0], FoundKind::Ingredient, "{hits:?}");
    assert!(hits[0].piece.contains("refractometer"), "{hits:?}");
}

/// The built-in book with so many more recipes, and half as many more ingredients.
fn large_book(recipes: usize) -> Book {
    let mut book = built_in_book().unwrap();
    let originals: Vec<_> = book.recipes.iter().cloned().collect();
    for (number, recipe) in originals.iter().cycle().take(recipes).enumerate() {
        book.recipes.put(Recipe {
            id: RecipeId::new(&format!("recipe-{number}")).unwrap(),
            name: format!("{} {number}", recipe.name),
            ..recipe.as_ref().clone()
        });
    }
    let originals: Vec<_> = book.ingredients.iter().cloned().collect();
    for (number, item) in originals.iter().cycle().take(recipes / 2).enumerate() {
        book.ingredients.put(Ingredient {
            id: IngredientId::new(&format!("ingredient-{number}")).unwrap(),
            ..item.as_ref().clone()
        });
    }
    book
}

#[test]
fn a_book_of_ten_thousand_recipes_is_indexed_and_searched_in_linear_time() {
    let books = [large_book(1_000), large_book(10_000)];
    let made = growth(books.each_ref(), |book| drop(LookUpIndex::of(book)));
    assert!(made < TENFOLD, "{made}");
    let indexed = books.each_ref().map(|book| (book, LookUpIndex::of(book)));
    // As large a part of either book has them.
    for typed in ["hob vegan", "e"] {
        let searched = growth(indexed.each_ref(), |(book, index)| {
            assert!(index.find(book, typed, 100).count >= 1);
        });
        assert!(searched < TENFOLD, "{typed}: {searched}");
    }
    let (book, index) = &indexed[1];
    let many = index.find(book, "e", 100);
    assert!(many.best.len() == 100 && many.count > 10_000);
}

fn open(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::F);
}

#[test]
fn with_the_keyboard_alone_one_gets_to_a_version() {
    let mut window = window();
    open(&mut window);
    assert!(
        window
            .query_by_label_contains("Type part of a name")
            .is_some()
    );
    type_on(&mut window, "hob vegan");
    press(&mut window, Modifiers::NONE, Key::Enter);
    let shown = shown(&window);
    let version = shown.version.unwrap();
    assert_eq!(shown.recipe.as_str(), "hob-and-ember");
    let recipe = book(&window).recipe(&shown.recipe).unwrap().clone();
    assert!(recipe.version(&version).unwrap().name.contains("vegan"));
    assert!(
        window
            .query_by_role_and_label(Role::TextInput, FIELD)
            .is_none()
    );
    assert_eq!(window.state().view().area, Area::Recipe);
    assert_eq!(hands(&window).presses, 0);
}

#[test]
fn the_arrows_choose_another_hit() {
    let mut window = window();
    let hits = found(&book(&window), "chestnut");
    open(&mut window);
    type_on(&mut window, "chestnut");
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    press(&mut window, Modifiers::NONE, Key::ArrowUp);
    press(&mut window, Modifiers::NONE, Key::Enter);
    let view = window.state().view();
    match &hits[1].spot {
        Spot::Ingredient(id) => assert_eq!(
            (view.area, window.state().areas().counter.open.clone()),
            (Area::Counter, Some(CounterItem::Ingredient(id.clone())))
        ),
        other => panic!("{other:?}"),
    }
}

#[test]
fn with_the_mouse_alone_one_gets_to_a_measure() {
    let mut window = window();
    click(&mut window, FIELD);
    type_on(&mut window, "pear pump");
    let hit = found(&book(&window), "pear pump")
        .into_iter()
        .find(|hit| hit.kind == FoundKind::Measure)
        .unwrap();
    let label = format!("measure: {}", hit.name);
    window
        .get_all_by_role(Role::Button)
        .find(|node| {
            node.accesskit_node()
                .label()
                .is_some_and(|found| found.starts_with(&label))
        })
        .unwrap()
        .click();
    settle(&mut window);
    let Spot::Measure(id) = hit.spot else {
        unreachable!()
    };
    assert_eq!(
        window.state().areas().counter.open,
        Some(CounterItem::Measure(id))
    );
    assert_eq!(hands(&window).keys, 0);
}

#[test]
fn an_instruction_and_an_approval_get_the_keyboard() {
    let mut window = window();
    open(&mut window);
    type_on(&mut window, "stir ten times");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert_eq!(
        window.state().view().line_in_hand,
        Some(LineId::new("finish").unwrap())
    );
    let focused = window.get_by(|node| node.is_focused() && !node.is_disabled());
    let label = focused.accesskit_node().label().unwrap_or_default();
    assert!(label.contains("stir ten times"), "{label}");
    let book = book(&window);
    let (recipe, approval) = book
        .recipes
        .iter()
        .find_map(|recipe| Some((recipe, recipe.approvals.first()?)))
        .unwrap();
    open(&mut window);
    type_on(
        &mut window,
        &format!("approval {} {}", recipe.name, approval.reason),
    );
    press(&mut window, Modifiers::NONE, Key::Enter);
    let focused = window.get_by(|node| node.is_focused() && !node.is_disabled());
    let label = focused.accesskit_node().label().unwrap_or_default();
    assert_eq!(
        label,
        format!("Go back to the approval of {}", approval.date)
    );
}

#[test]
fn nothing_found_says_so_and_escape_goes_back_with_the_last_words_kept() {
    let mut window = window();
    let before = shown(&window);
    open(&mut window);
    type_on(&mut window, "zzz");
    assert!(
        window
            .query_by_label_contains("Nothing in this book matches “zzz”")
            .is_some()
    );
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(
        window
            .query_by_role_and_label(Role::TextInput, FIELD)
            .is_none()
    );
    assert_eq!(shown(&window), before);
    open(&mut window);
    // What stands there is selected: typing replaces it.
    type_on(&mut window, "hob");
    assert!(
        window
            .query_by_label_contains("Nothing in this book")
            .is_none()
    );
    click(&mut window, "recipe: Hob & Ember, approved");
    assert_eq!(shown(&window).recipe.as_str(), "hob-and-ember");
}
