//! What a pack cost before: kept when its price is typed over or a list is brought in, shown newest first, and undone.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Book, EarlierPrice, Ingredient, IngredientId, Place, Price};
use evensip::book_file::{built_in_book, parse, write};
use evensip::exchange::{
    DecimalSign, DecimalSigns, ListChoices, Outcome, guess_mapping, read_table, review_price_list,
};
use evensip::quantity::Pack;
use evensip::ui::counter_area::CounterItem;
use evensip::workbench::today;

use crate::at_the_window::{
    Window, WindowBuilder, at_the_counter, book, click, press, type_into, type_on, undo,
};

const POWDER: &str = "tambrel-chestnut";
const FIELD: &str = "Price of a pack";

fn item(book: &Book) -> Ingredient {
    let id = IngredientId::new(POWDER).unwrap();
    book.ingredient(&id).unwrap().as_ref().clone()
}

fn price(window: &Window) -> Price {
    item(&book(window)).price.unwrap()
}

/// A window on the sheet of the powder.
fn window(book: Book) -> Window {
    let mut window = WindowBuilder::of([1360.0, 1600.0]).with_book(book).open();
    let powder = IngredientId::new(POWDER).unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(powder));
    window
}

#[test]
fn a_price_typed_over_is_kept_with_its_day_and_shown_with_the_change() {
    let mut window = window(built_in_book().unwrap());
    let before = item(&book(&window));
    let old = before.price.clone().unwrap();
    assert!(window.query_by_label("prices so far").is_none());
    let dearer = 1.25 * old.pack;
    // Typed in two goes, as a person does: only what was paid before is kept.
    type_into(
        &mut window,
        FIELD,
        &format!("1 for {} g", old.content.whole()),
    );
    press(&mut window, Modifiers::COMMAND, Key::A);
    type_on(
        &mut window,
        &format!("{dearer} for {} g", old.content.whole()),
    );
    press(&mut window, Modifiers::NONE, Key::Tab);
    let after = item(&book(&window));
    assert_eq!(
        after.earlier_prices,
        [EarlierPrice {
            pack: old.pack,
            content: old.content,
            date: old.date.clone(),
            supplier: before.supplier.clone(),
        }]
    );
    let typed = Price {
        pack: dearer,
        date: Some(today()),
        ..old.clone()
    };
    assert_eq!(after.price, Some(typed));
    assert!(window.query_by_label("prices so far").is_some());
    assert!(window.query_by_label("+25.0\u{a0}%").is_some());
    let each = format!("{:.2}", 1000.0 * old.pack / old.content.whole());
    assert!(window.query_by_label(&each).is_some(), "{each}");
    undo(&mut window);
    assert_eq!(item(&book(&window)), before);
    assert!(window.query_by_label("prices so far").is_none());
}

#[test]
fn a_price_that_never_was_is_removed_with_its_button_and_comes_back_with_undo() {
    let mut window = window(built_in_book().unwrap());
    let old = price(&window);
    type_into(
        &mut window,
        FIELD,
        &format!("99 for {} g", old.content.whole()),
    );
    press(&mut window, Modifiers::NONE, Key::Tab);
    let words = match &old.date {
        Some(day) => format!("Remove the price of {day}"),
        None => "Remove the price without a day".to_owned(),
    };
    click(&mut window, &words);
    assert!(item(&book(&window)).earlier_prices.is_empty());
    assert!((price(&window).pack - 99.0).abs() < 1e-9);
    undo(&mut window);
    assert_eq!(item(&book(&window)).earlier_prices.len(), 1);
}

#[test]
fn many_prices_show_the_newest_until_all_are_asked_for() {
    let mut book = built_in_book().unwrap();
    let mut powder = item(&book);
    powder.earlier_prices = (1..=12)
        .map(|month| EarlierPrice {
            pack: f64::from(month),
            content: Pack::of_grams(1000.0),
            date: Some(format!("2025-{month:02}-01")),
            supplier: String::new(),
        })
        .collect();
    book.ingredients.put(powder);
    let mut window = window(book);
    let days = |window: &Window| -> Vec<String> {
        let found = window.query_all_by_role(Role::Label);
        found
            .filter_map(|node| node.value().or_else(|| node.accesskit_node().label()))
            .filter(|label| label.starts_with("2025-"))
            .collect()
    };
    assert_eq!(days(&window)[0], "2025-12-01");
    assert!(days(&window).len() < 12);
    click(&mut window, "Show all 13 prices");
    assert_eq!(days(&window).len(), 12);
    assert_eq!(days(&window)[11], "2025-01-01");
}

#[test]
fn a_price_list_keeps_what_it_replaces_and_says_nothing_new_of_a_price_that_stays() {
    let book = built_in_book().unwrap();
    let before = item(&book);
    let old = before.price.clone().unwrap();
    let brought = |pack: f64| {
        let text = format!(
            "name,brand,price,pack\n{},{},{pack},{} g\n",
            before.name,
            before.brand,
            old.content.whole()
        );
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, Some(DecimalSign::Point));
        review_price_list(
            &book,
            &table,
            &mapping,
            &signs,
            &ListChoices::of_day("2026-11-25"),
        )
    };
    let review = brought(old.pack + 2.0);
    let Outcome::Changed { ingredient, .. } = &review.lines[0].outcome else {
        panic!("{:?}", review.lines[0]);
    };
    assert_eq!(ingredient.earlier_prices.len(), 1);
    let kept = &ingredient.earlier_prices[0];
    assert_eq!((kept.pack, &kept.date), (old.pack, &old.date));
    assert!(matches!(brought(old.pack).lines[0].outcome, Outcome::Same));
}

#[test]
fn a_list_of_the_day_of_a_typed_price_replaces_it_unless_another_supplier_asks_it() {
    let mut book = built_in_book().unwrap();
    let day = "2026-11-25";
    let mut typed = item(&book);
    let paid = typed.price.clone().unwrap();
    typed.type_price(Some((paid.pack + 1.0, paid.content)), day);
    typed.supplier = "Ombery".to_owned();
    book.ingredients.put(typed.clone());
    let brought = |pack: f64, supplier: &str, day: &str| {
        let text = format!(
            "name,brand,price,pack,supplier\n{},{},{pack},{} g,{supplier}\n",
            typed.name,
            typed.brand,
            paid.content.whole()
        );
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, Some(DecimalSign::Point));
        let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::of_day(day));
        match &review.lines[0].outcome {
            Outcome::Changed { ingredient, .. } => ingredient.as_ref().clone(),
            other => panic!("{other:?}"),
        }
    };
    let earlier = |item: &Ingredient| -> Vec<f64> {
        item.earlier_prices.iter().map(|price| price.pack).collect()
    };
    for supplier in ["", "Ombery"] {
        let after = brought(paid.pack + 2.0, supplier, day);
        assert_eq!(earlier(&after), [paid.pack], "{supplier}");
        assert!((after.price.unwrap().pack - paid.pack - 2.0).abs() < 1e-9);
    }
    // What another supplier asks on the same day is no correction, and neither is another day.
    let other = brought(paid.pack + 2.0, "Quenby", day);
    assert_eq!(earlier(&other), [paid.pack, paid.pack + 1.0]);
    assert_eq!(other.earlier_prices[1].supplier, "Ombery");
    assert_eq!(other.supplier, "Quenby");
    let later = brought(paid.pack + 2.0, "", "2026-11-26");
    assert_eq!(earlier(&later), [paid.pack, paid.pack + 1.0]);
}

#[test]
fn earlier_prices_are_written_only_where_there_are_any_and_read_again() {
    let mut book = built_in_book().unwrap();
    assert!(!write(&book).contains("earlier_prices"));
    let mut powder = item(&book);
    powder.earlier_prices.push(EarlierPrice {
        pack: 12.5,
        content: Pack::of_grams(1000.0),
        date: None,
        supplier: "Ombery & Sons".into(),
    });
    book.ingredients.put(powder);
    let text = write(&book);
    assert!(
        text.contains("(pack: 12.5, grams: 1000.0, supplier: \"Ombery & Sons\")"),
        "{text}"
    );
    let is_of_earlier_price = |finding: &evensip::book::Finding| {
        matches!(&finding.place, Place::Ingredient(_, "earlier_prices"))
    };
    let (again, findings) = parse(&text).unwrap();
    assert_eq!(again, book);
    assert!(findings.iter().all(|finding| !is_of_earlier_price(finding)));
    let wrong = text.replace("(pack: 12.5,", "(pack: -1,");
    let (_, findings) = parse(&wrong).unwrap();
    assert!(findings.iter().any(is_of_earlier_price), "{findings:?}");
}
