//! The day of an owner: an ingredient that nobody sells any more leaves every recipe, and the whole menu is looked through.

use egui::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{
    Difference, Measurand, balance_version, difference, margin, standard_balance,
};
use evensip::book::{
    Book, FindingKind, IngredientId, Place, RecipeId, State, VersionId, findings, resolve,
};
use evensip::cards::{Block, CardOptions, CardRequest, OnMenu, card, menu_figures};
use evensip::edit::{Edit, apply};
use evensip::say::Speaker;
use evensip::swap::{ReviewItem, everywhere};
use evensip::ui::Area;
use evensip::ui::counter_area::CounterItem;

use crate::arbitrary_book as arbitrary;
use crate::at_the_window::{
    self as at, TALL, Window, at_the_counter, choose, click, go, has, says, undo,
};
use crate::sample::sample;

const POWDER: &str = "tambrel-chestnut";
const OTHER: &str = "ketterby-chestnut";

fn id(text: &str) -> IngredientId {
    IngredientId::new(text).unwrap()
}

/// The sample book in which the chestnut powder of one brand is no longer sold.
fn without_the_powder() -> Book {
    let mut powder = sample().ingredient(&id(POWDER)).unwrap().as_ref().clone();
    powder.no_longer_sold = true;
    apply(&sample(), &Edit::PutIngredient(powder)).unwrap()
}

// ---- No longer sold

#[test]
fn what_is_no_longer_sold_is_found_in_everything_that_is_still_made_and_nowhere_else() {
    let gone = |book: &Book| -> Vec<Place> {
        let found = findings(book).into_iter();
        let of_powder = found.filter(|one| {
            one.kind
                == FindingKind::NoLongerSold {
                    ingredient: id(POWDER),
                }
        });
        of_powder.map(|one| one.place).collect()
    };
    assert_eq!(gone(&sample()), []);
    let book = without_the_powder();
    let found = gone(&book);
    let mut expected = Vec::new();
    for recipe in &book.recipes {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions) {
            let (lines, _) = resolve(recipe, version);
            let is_made = recipe.state_of(version) != Some(State::Retired);
            let has_it = lines
                .lines()
                .any(|line| line.ingredient == id(POWDER) && !line.amount.is_nothing());
            if is_made && has_it {
                expected.push(match version {
                    None => Place::Recipe(recipe.id.clone(), "lines"),
                    Some(version) => Place::Version(recipe.id.clone(), version.clone()),
                });
            }
        }
    }
    let sorted = |mut places: Vec<Place>| {
        places.sort();
        places
    };
    assert!(expected.len() >= 4, "{expected:?}");
    assert_eq!(sorted(found), sorted(expected));
    // Retired, a drink needs nothing.
    let hazelthwaite = RecipeId::new("hazelthwaite").unwrap();
    let mut recipe = book.recipe(&hazelthwaite).unwrap().as_ref().clone();
    recipe.state = State::Retired;
    let mut retired = book.clone();
    retired.recipes.put(recipe);
    assert!(!gone(&retired).contains(&Place::Recipe(hazelthwaite, "lines")));
}

#[test]
fn what_is_no_longer_sold_is_marked_at_the_counter_and_leads_to_a_swap_in_every_recipe() {
    let mut window = at::window_of(TALL);
    at_the_counter(&mut window, CounterItem::Ingredient(id(POWDER)));
    assert!(!says(&window, "Swap it in every recipe"));
    choose(&mut window, "Availability: sold", "no longer sold");
    assert!(
        at::book(&window)
            .ingredient(&id(POWDER))
            .unwrap()
            .no_longer_sold
    );
    assert!(has(&window, "Chestnut powder Tambrel no longer sold"));
    // It can be taken back, and set again.
    undo(&mut window);
    assert!(
        !at::book(&window)
            .ingredient(&id(POWDER))
            .unwrap()
            .no_longer_sold
    );
    choose(&mut window, "Availability: sold", "no longer sold");
    click(&mut window, "Swap it in every recipe");
    assert!(says(&window, "Replace"));
    // The list of what may come does not offer it, and shows that what goes is no longer sold.
    assert!(has(&window, "With Ketterby chestnut powder"));
    assert!(!has(&window, "With Tambrel chestnut powder"));
    click(&mut window, "With Ketterby chestnut powder");
    review_is_there(&mut window);
    assert!(says(&window, "Hob & Ember"));
}

fn review_is_there(window: &mut Window) {
    at::eventually(window, "the list of every recipe", |window| {
        says(window, "Select none")
    });
}

// ---- The list of every recipe

fn ticked(window: &Window) -> Vec<(String, bool)> {
    let boxes = window.root().children_recursive().filter_map(|node| {
        let accessible = node.accesskit_node();
        let is_box = accessible.role() == Role::CheckBox && !accessible.is_disabled();
        let is_ticked = accessible.toggled() == Some(egui::accesskit::Toggled::True);
        is_box.then(|| (at::words_of(&node), is_ticked))
    });
    boxes.collect()
}

fn items_of(book: &Book) -> Vec<ReviewItem> {
    everywhere(book, &id(POWDER), &id(OTHER))
}

#[test]
fn only_what_is_level_on_every_axis_is_ticked_and_taking_twice_makes_no_twins() {
    let mut window = at::window_of(TALL);
    go(&mut window, Area::Swap);
    at::show(&mut window, "hazelthwaite", None);
    at::ask_swap(&mut window, POWDER, OTHER);
    click(&mut window, "All recipes that use it");
    review_is_there(&mut window);
    let before = at::book(&window);
    let items = items_of(&before);
    let speaker = Speaker::new(&before);
    for item in items.iter().filter(|item| item.can_be_taken()) {
        let name = speaker.drink(&item.recipe, item.version.as_ref());
        let state = ticked(&window)
            .into_iter()
            .find(|(words, _)| *words == name);
        let (_, is_ticked) = state.unwrap_or_else(|| panic!("no box for {name}"));
        let recipe = before.recipe(&item.recipe).unwrap();
        let is_made = recipe.state_of(item.version.as_ref()) != Some(State::Retired);
        assert_eq!(is_ticked, item.is_level() && is_made, "{name}");
    }
    assert!(items.iter().any(|item| !item.is_level()), "no row is off");
    click(&mut window, "Select all");
    let count = items.iter().filter(|item| item.can_be_taken()).count();
    click(&mut window, &format!("Add {count} new versions"));
    let versions = |book: &Book| -> usize {
        let recipes = book.recipes.iter();
        recipes.map(|recipe| recipe.versions.len()).sum()
    };
    let after = at::book(&window);
    assert_eq!(versions(&after), versions(&before) + count);
    review_is_there(&mut window);
    // The same list again: every row is there already.
    click(&mut window, "Select all");
    assert!(has(&window, "Add 0 new versions"));
    assert!(says(&window, "Already there: "));
    assert!(items_of(&after).iter().all(|item| !item.can_be_taken()));
    undo(&mut window);
    review_is_there(&mut window);
    assert_eq!(versions(&at::book(&window)), versions(&before));
    click(&mut window, "Select all");
    assert!(has(&window, &format!("Add {count} new versions")));
}

#[test]
fn what_a_swap_costs_is_the_difference_of_the_two_drinks_and_not_stated_without_a_price() {
    let book = sample();
    let cost = |book: &Book, recipe: &RecipeId, version: Option<&VersionId>| {
        let recipe = book.recipe(recipe).unwrap();
        let balance = balance_version(book, recipe, version).unwrap();
        balance.figures.complete(Measurand::Cost)
    };
    let mut compared = 0;
    for item in items_of(&book) {
        let Some(first) = item.answer.suggestions.first() else {
            assert_eq!(item.more_cost, None);
            continue;
        };
        let now = cost(&book, &item.recipe, item.version.as_ref());
        let then = first.balance.figures.complete(Measurand::Cost);
        let more = now.zip(then).map(|(now, then)| then - now);
        assert_eq!(item.more_cost.is_some(), more.is_some());
        if let (Some(told), Some(more)) = (item.more_cost, more) {
            assert!((told.value - more).abs() < 1e-9, "{told:?} {more}");
            compared += 1;
        }
    }
    assert!(compared >= 4, "{compared}");
    let mut other = book.ingredient(&id(OTHER)).unwrap().as_ref().clone();
    other.price = None;
    let unpriced = apply(&book, &Edit::PutIngredient(other)).unwrap();
    assert!(
        items_of(&unpriced)
            .iter()
            .all(|item| item.more_cost.is_none())
    );
}

#[test]
fn two_ingredients_that_might_come_stand_side_by_side_and_change_places() {
    let mut window = at::window_of(TALL);
    go(&mut window, Area::Swap);
    at::show(&mut window, "hazelthwaite", None);
    at::ask_swap(&mut window, POWDER, OTHER);
    click(&mut window, "All recipes that use it");
    review_is_there(&mut window);
    click(&mut window, "Compare with another ingredient");
    click(&mut window, "Compare with Ketterby malt powder");
    at::eventually(&mut window, "the second answer", |window| {
        says(window, "With Ketterby malt powder: ")
    });
    assert!(says(&window, "With Ketterby chestnut powder: "));
    click(&mut window, "Swap with Ketterby malt powder instead");
    at::eventually(&mut window, "the other way round", |window| {
        has(window, "Swap with Ketterby chestnut powder instead")
    });
    click(&mut window, "Stop comparing");
    assert!(has(&window, "Compare with another ingredient"));
}

// ---- The whole menu

fn menu() -> Window {
    let mut window = at::window_on(at::WIDE, Area::Compare, "hob-and-ember", None);
    click(&mut window, "The whole menu");
    at::eventually(&mut window, "the table of the menu", |window| {
        says(window, " drinks") && says(window, "Copy the table: the whole menu")
    });
    window
}

fn column(table: &[Vec<String>], head: &str) -> Vec<String> {
    let heads = &table[0];
    let at = heads.iter().position(|found| found.starts_with(head));
    let at = at.unwrap_or_else(|| panic!("no {head} in {heads:?}"));
    table[1..].iter().map(|row| row[at].clone()).collect()
}

/// The numbers of a column from the top; nothing known stands behind them.
fn numbers_then_words(cells: &[String]) -> Vec<f64> {
    let numbers: Vec<Option<f64>> = cells.iter().map(|cell| cell.parse().ok()).collect();
    let known = numbers.iter().take_while(|number| number.is_some()).count();
    assert!(numbers[known..].iter().all(Option::is_none), "{cells:?}");
    numbers.into_iter().flatten().collect()
}

#[test]
fn the_menu_is_sorted_by_margin_filtered_and_two_of_its_drinks_stand_side_by_side() {
    let mut window = menu();
    click(&mut window, "All");
    click(&mut window, "Sort by margin");
    let table = at::copied(&mut window, "the whole menu");
    let up = numbers_then_words(&column(&table, "margin"));
    assert!(up.len() >= 4, "{table:?}");
    assert!(up.windows(2).all(|pair| pair[0] <= pair[1]), "{up:?}");
    click(&mut window, "Sort by margin");
    let table = at::copied(&mut window, "the whole menu");
    let down = numbers_then_words(&column(&table, "margin"));
    assert_eq!(down, up.iter().rev().copied().collect::<Vec<_>>());
    // By what is in it, and by what it must be free of.
    at::type_into(&mut window, "Find on the menu", "pear drift");
    let found = column(&at::copied(&mut window, "the whole menu"), "drink");
    assert!(!found.is_empty() && found.len() < down.len(), "{found:?}");
    assert!(found.iter().all(|name| name.starts_with("Pear Drift")));
    at::retype(&mut window, "Find on the menu", " ");
    click(&mut window, "Without an allergen…");
    at::tick(&mut window, "Without milk");
    let table = at::copied(&mut window, "the whole menu");
    let free = column(&table, "contains");
    assert!(!free.is_empty(), "some drink is free of milk");
    for words in &free {
        assert!(!words.contains("milk"), "{words}");
    }
    click(&mut window, "Without milk");
    at::tick(&mut window, "Without milk");
    at::press(&mut window, egui::Modifiers::NONE, egui::Key::Escape);
    at::tick(&mut window, "Tick Hazelthwaite");
    at::tick(&mut window, "Tick Hob & Ember");
    click(&mut window, "Set 2 side by side");
    assert!(has(&window, "Remove Hob & Ember, original"));
    assert_eq!(at::shown(&window).recipe.as_str(), "hazelthwaite");
    let cost = at::row(&window, "cost: ");
    assert!(cost.contains("compared with the first"), "{cost}");
}

/// Where there is no room for every column behind the name, the others are a press away, and the name stays.
#[test]
fn every_column_of_the_menu_is_reached_in_a_narrow_window() {
    let mut window = at::window_on(at::NARROW, Area::Compare, "hob-and-ember", None);
    click(&mut window, "The whole menu");
    at::eventually(&mut window, "the table of the menu", |window| {
        says(window, "Copy the table: the whole menu")
    });
    let headings = |window: &Window| -> Vec<String> { at::rows(window, "Sort by ") };
    let mut seen: Vec<String> = headings(&window);
    let first = seen.len();
    assert!(first < 9, "there is room for all: {seen:?}");
    let is_enabled = |window: &Window| {
        let button = window.query_by_role_and_label(Role::Button, "More columns");
        button.is_some_and(|button| !button.accesskit_node().is_disabled())
    };
    let mut presses = 0;
    while is_enabled(&window) {
        click(&mut window, "More columns");
        presses += 1;
        let now = headings(&window);
        assert!(now.contains(&"Sort by drink".to_owned()), "{now:?}");
        seen.extend(now);
        assert!(presses < 9, "{seen:?}");
    }
    seen.sort();
    seen.dedup();
    // The drink and eight columns.
    assert_eq!(seen.len(), 9, "{seen:?}");
    for _ in 0..presses {
        click(&mut window, "Columns before");
    }
    assert_eq!(headings(&window).len(), first);
    let wide = menu();
    assert!(!has(&wide, "More columns"), "1920 has room for all");
}

#[test]
fn the_approved_drinks_are_those_that_are_what_was_approved() {
    let mut window = menu();
    let book = at::book(&window);
    let approved = menu_figures(&book)
        .into_iter()
        .filter(evensip::cards::MenuRow::is_approved);
    let speaker = Speaker::new(&book);
    let names: Vec<String> = approved
        .map(|row| speaker.drink(&row.drink.recipe, row.drink.version.as_ref()))
        .collect();
    assert!(!names.is_empty());
    assert_eq!(
        column(&at::copied(&mut window, "the whole menu"), "drink"),
        names
    );
}

#[test]
fn the_rows_of_the_menu_have_the_figures_of_each_drink() {
    let mut books = vec![sample()];
    books.extend((0..40).map(arbitrary::book));
    let mut rows = 0;
    for book in books {
        for row in menu_figures(&book) {
            let recipe = book.recipe(&row.drink.recipe).unwrap();
            let version = row.drink.version.as_ref();
            assert_ne!(recipe.state_of(version), Some(State::Retired));
            let balance = balance_version(&book, recipe, version).unwrap();
            for (told, measurand) in [
                (&row.cost, Measurand::Cost),
                (&row.sugar, Measurand::TotalSugar),
                (&row.energy, Measurand::EnergyKj),
            ] {
                assert_eq!(*told, balance.reported(measurand));
            }
            assert_eq!(row.margin, margin(&book, &balance));
            assert_eq!(row.allergens, balance.allergens);
            let standard = standard_balance(&book, recipe, version);
            assert_eq!(row.has_standard, standard.is_some());
            let apart =
                standard.map(|(standard, _)| difference(&book.settings, &standard, &balance));
            let unknown = |apart: &Difference| apart.counted().any(|axis| axis.steps.is_none());
            assert_eq!(row.distance_is_least, apart.as_ref().is_some_and(unknown));
            assert_eq!(row.distance, apart.and_then(|apart| apart.distance));
            rows += 1;
        }
    }
    assert!(rows > 50, "{rows}");
}

#[test]
fn the_menu_leads_to_its_card_and_the_card_has_a_row_for_each_drink() {
    let mut window = menu();
    click(&mut window, "All");
    click(&mut window, "Print these figures…");
    assert!(says(&window, "Figures of the menu"));
    let book = sample();
    for on_menu in [OnMenu::Approved, OnMenu::All] {
        let document = card(
            &book,
            &CardRequest::Figures(on_menu),
            &CardOptions::default(),
        )
        .unwrap();
        let table = document.blocks.iter().find_map(|block| match block {
            Block::Table(table) => Some(table),
            _ => None,
        });
        let rows = menu_figures(&book);
        let expected = rows
            .iter()
            .filter(|row| on_menu == OnMenu::All || row.is_approved());
        assert_eq!(table.unwrap().rows.len(), expected.count());
        for text in document.texts() {
            assert!(!text.contains("at least 0 "), "{text}");
        }
    }
}
