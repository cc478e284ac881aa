//! The menu: two versions side by side, all drinks by their margin, what sixty of them take, and what hangs on the wall.

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{Measurand, balance_version, margin, shopping as needed};
use evensip::book::{Book, VersionId};
use evensip::cards::menu_figures;

use super::{VEGAN, recipe};
use crate::at_the_window::{
    MIDDLE, Window, book, choose_folder, click, click_on, copied, eventually, press, row, says,
    settle, type_on,
};
use crate::played_day::click_into;

fn version(book: &Book, name: &str) -> Option<VersionId> {
    let versions = recipe(book, "Barley Lantern").versions.iter();
    let mut found = versions.filter(|version| version.name == name);
    found.next().map(|version| version.id.clone())
}

/// Cost, margin, allergens and sugar of the vegan version and the one with milk, on one screen of a middle size.
pub(super) fn vegan_against_dairy(window: &mut Window) {
    click(window, "Barley Lantern, approved");
    press(window, Modifiers::COMMAND, Key::Num4);
    click(window, &format!("Beside it: {VEGAN}"));
    let now = book(window);
    let lantern = recipe(&now, "Barley Lantern");
    let of = |version: Option<&VersionId>| balance_version(&now, lantern, version).unwrap();
    let (dairy, vegan) = (of(None), of(version(&now, VEGAN).as_ref()));
    assert!(margin(&now, &dairy).is_some_and(|margin| !margin.is_at_most));
    // Nobody has stated the price and the sugars of the oat creamer: what is known is a bound.
    assert!(margin(&now, &vegan).is_some_and(|margin| margin.is_at_most));
    assert!(vegan.figures.complete(Measurand::TotalSugar).is_none());
    for begin in ["cost: ", "margin: ", "contains: ", "total sugar: "] {
        let said = row(window, begin);
        let node = window.get_by_label(&said);
        let bottom = node.rect().max.y;
        assert!(bottom <= MIDDLE[1], "{said} ends at {bottom}");
    }
    let cost = row(window, "cost: ");
    assert!(cost.contains("at least"), "{cost}");
    let margin = row(window, "margin: ");
    assert!(margin.contains("at most"), "{margin}");
    let contains = row(window, "contains: ");
    assert!(contains.contains("milk"), "{contains}");
    assert!(row(window, "total sugar: ").contains("at least"));
}

/// All drinks, what each leaves.
pub(super) fn by_margin(window: &mut Window) {
    click(window, "The whole menu");
    click(window, "All");
    click(window, "Sort by margin");
    click(window, "Sort by margin");
    eventually(window, "the table", |window| {
        says(window, "Copy the table: the whole menu")
    });
    let now = book(window);
    let rows = menu_figures(&now);
    assert!(rows.len() >= 17, "{}", rows.len());
    let known = rows.iter().filter_map(|row| row.margin.as_ref());
    let mut whole: Vec<f64> = known
        .filter(|margin| !margin.is_at_most)
        .map(|margin| margin.margin.value)
        .collect();
    whole.sort_by(|a, b| b.total_cmp(a));
    let table = copied(window, "the whole menu");
    let at = table[0].iter().position(|head| head.starts_with("margin"));
    let shown: Vec<f64> = table[1..]
        .iter()
        .map_while(|row| row[at.unwrap()].parse().ok())
        .collect();
    assert_eq!(shown.len(), whole.len(), "{table:?}");
    for (shown, whole) in shown.iter().zip(&whole) {
        assert!((shown - whole).abs() <= 0.0051, "{shown} {whole}");
    }
    // What is known only as a bound stands behind.
    let bounds = table[1 + shown.len()..].iter();
    let bounds = bounds.filter(|row| row[at.unwrap()].contains('≤'));
    assert!(bounds.count() > 0, "{table:?}");
}

/// What the page of the card says.
fn page_text(window: &Window) -> String {
    let pages = window.query_all_by_role(Role::Image);
    let texts = pages.filter_map(|page| page.accesskit_node().label());
    texts.collect::<Vec<_>>().join(" ")
}

fn page_says(window: &Window, words: &str) -> bool {
    page_text(window).contains(words)
}

/// The count of a drink that the shopping is for.
fn so_many(window: &mut Window, drink: &str, count: &str) {
    click_into(window, &format!("How many: {drink}"));
    type_on(window, count);
}

fn add(window: &mut Window, drink: &str, listed: &str, count: &str) {
    click(window, "Another drink…");
    click(window, &format!("Add {listed}"));
    so_many(window, drink, count);
}

/// Thirty-five of the drink, fifteen with ice, ten vegan.
pub(super) fn shopping(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Num8);
    click_on(window, Role::RadioButton, "Shopping and batches");
    so_many(window, "Barley Lantern", "35");
    add(window, "Barley Lantern, iced", "Barley Lantern, iced", "15");
    let vegan = format!("Barley Lantern, {VEGAN}");
    add(window, &vegan, &vegan, "10");
    eventually(window, "the sheet", |window| page_says(window, "60 drinks"));
    let now = book(window);
    let lantern = recipe(&now, "Barley Lantern");
    let versions = [(None, 35), (Some("iced"), 15), (Some(VEGAN), 10)];
    let drinks: Vec<_> = versions
        .into_iter()
        .map(|(name, count)| {
            let version = name.and_then(|name| version(&now, name));
            assert_eq!(version.is_some(), name.is_some());
            let balance = balance_version(&now, lantern, version.as_ref()).unwrap();
            (balance, count)
        })
        .collect();
    let needed = needed(
        &now,
        drinks.iter().map(|(balance, count)| (balance, *count)),
    );
    // 25 cups hold two scoops of the powder that is still in them, 35 of the hot drink and 10 of the vegan one among them.
    for purchase in &needed.bought {
        let name = now
            .ingredient(&purchase.need.ingredient)
            .unwrap()
            .full_name();
        assert!(page_says(window, &name), "{name}");
        let is_priced = now
            .ingredient(&purchase.need.ingredient)
            .unwrap()
            .price
            .is_some();
        assert_eq!(purchase.packs.is_some(), is_priced, "{name}");
    }
    // Tea is brewed, water and ice come from the tap and the machine.
    assert!(page_says(window, "Brew") || page_says(window, "Make beforehand"));
    assert!(!needed.bought.iter().any(|purchase| {
        let item = now.ingredient(&purchase.need.ingredient).unwrap();
        item.name == "black tea, brewed"
    }));
    choose_folder(window);
    write(window);
}

fn write(window: &mut Window) {
    click(window, "Write the card");
    eventually(window, "the file", |window| says(window, "Written: "));
}

/// The allergens of what is approved, for the wall.
pub(super) fn matrix(window: &mut Window) {
    click_on(
        window,
        Role::RadioButton,
        "Ingredients and allergens of the menu",
    );
    window
        .get_by_role_and_label(Role::ComboBox, "Paper")
        .click();
    settle(window);
    click(window, "A4 for the wall, large type");
    eventually(window, "the matrix", |window| {
        page_says(window, "Quince Lamp")
    });
    // The table has what is approved; what it leaves out stands below it by name.
    let page = page_text(window);
    let (table, left_out) = page.split_once("Not on this sheet").unwrap();
    let now = book(window);
    for row in menu_figures(&now) {
        let recipe = now.recipe(&row.drink.recipe).unwrap();
        if row.drink.version.is_none() {
            let (name, is_approved) = (&recipe.name, row.is_approved());
            assert_eq!(table.contains(name), is_approved, "{name}");
            assert!(is_approved || left_out.contains(name), "{name}");
        }
    }
    assert!(!table.contains(VEGAN) && left_out.contains(VEGAN), "{page}");
    write(window);
}
