//! What comes in, and what is no longer sold.

use egui::{Key, Modifiers};
use evensip::book::IngredientId;
use evensip::swap::{ReviewItem, everywhere};

use super::{ALDGRAVE, CORROW, CREAMER, THORNBY, item, versions};
use crate::at_the_window::{
    Window, book, choose, click, eventually, has, press, read_aloud, says, tick, type_on, undo,
};
use crate::played_day::{click_into, enter};
use crate::supplier_list::SUPPLIER;

/// Says by hand what a row of the list is.
fn is(window: &mut Window, row: &str, now: &str, typed: &str) {
    click(window, &format!("What {row} is: {now}"));
    type_on(window, typed);
    enter(window);
}

/// Takes the list in: names of its own are matched, what is doubtful is left out, and what the drinks would cost is seen before.
pub(super) fn the_list(window: &mut Window) {
    let before = book(window);
    press(window, Modifiers::COMMAND, Key::Num8);
    click(window, "Choose…");
    eventually(window, "the list", |window| {
        has(window, "(2 lines above are skipped)")
    });
    click_into(window, "Supplier of the list");
    type_on(window, SUPPLIER);
    let powder = "a new ingredient: powder";
    is(window, "Thornby Röstgerstenpulver", powder, "Thornby");
    is(
        window,
        "Aldgrave Gerste geröstet, Pulver",
        powder,
        "Aldgrave",
    );
    is(window, "Ostley Creamerpulver", powder, "Ostley creamer");
    // The name tells a syrup: a person agrees.
    tick(window, "Pellow Holunderblütensirup, line 9");
    eventually(window, "what becomes of the rows", |window| {
        has(window, "Add 5 to the book")
    });
    // A case of twelve and a sack at their price for the same amount.
    for words in [
        "+5.3 % for the same amount",
        "−5.3 % for the same amount",
        "The price changes by more than a third",
        "choose what it is",
    ] {
        assert!(says(window, words), "{words}: {:?}", read_aloud(window));
    }
    eventually(window, "the effect on the drinks", |window| {
        says(window, "What the drinks would cost") && says(window, "Barley Lantern")
    });
    click(window, "Add 5 to the book");
    eventually(window, "the confirmation", |window| {
        has(window, "5 ingredients were brought in (1 new, 4 changed).")
    });
    let after = book(window);
    let price = |name: &str| item(&after, name).price.unwrap();
    // 131.40 for twelve kilograms, 172 for twenty, 55.20 for six bottles.
    for (name, pack, content) in [
        (THORNBY, 131.40, 12_000.0),
        (ALDGRAVE, 172.0, 20_000.0),
        ("Pellow quince syrup", 55.20, 4_500.0),
    ] {
        let price = price(name);
        assert!((price.pack - pack).abs() < 1e-9, "{name}: {price:?}");
        assert!(
            (price.content.whole() - content).abs() < 1e-6,
            "{name}: {price:?}"
        );
    }
    // Without a price, three times as dear and below nothing: as before.
    for name in [CREAMER, "Hurst quince syrup", "Ostley oat creamer powder"] {
        assert_eq!(
            item(&after, name).price,
            item(&before, name).price,
            "{name}"
        );
    }
    assert_eq!(after.ingredients.len(), before.ingredients.len() + 1);
}

fn reviewed(window: &Window, goes: &IngredientId, comes: &str) -> Vec<ReviewItem> {
    let book = book(window);
    everywhere(&book, goes, &item(&book, comes).id)
}

/// How many can be taken and come out level.
fn level(items: &[ReviewItem]) -> usize {
    let taken = items
        .iter()
        .filter(|item| item.can_be_taken() && item.is_level());
    taken.count()
}

/// One powder is no longer sold: two that might come are compared in every recipe, what is level is taken, taken back and taken
/// again.
pub(super) fn no_longer_sold(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Num7);
    click(window, "look at ingredients");
    click(window, "roasted barley powder Thornby");
    choose(window, "Availability: sold", "no longer sold");
    click(window, "Swap it in every recipe");
    click(window, &format!("With {ALDGRAVE}"));
    eventually(window, "every recipe", |window| says(window, "Select none"));
    click(window, "Compare with another ingredient");
    click(window, &format!("Compare with {CORROW}"));
    let goes = item(&book(window), THORNBY).id;
    let wholes = [ALDGRAVE, CORROW].map(|comes| {
        let items = reviewed(window, &goes, comes);
        let level = items.iter().filter(|item| item.is_level()).count();
        assert!(items.len() >= 6, "{}", items.len());
        let count = items.len();
        format!("With {comes}: {level} of {count} level on every axis")
    });
    eventually(window, "both candidates", |window| {
        wholes.iter().all(|whole| says(window, whole))
    });
    let items = reviewed(window, &goes, ALDGRAVE);
    let count = level(&items);
    assert!(
        count > 0 && count < items.len(),
        "{count} of {}",
        items.len()
    );
    let before = versions(window);
    let add = format!(
        "Add {count} new version{}",
        if count == 1 { "" } else { "s" }
    );
    click(window, &add);
    assert_eq!(versions(window), before + count);
    eventually(window, "the list after", |window| {
        says(window, "Already there")
    });
    undo(window);
    assert_eq!(versions(window), before);
    eventually(window, "the list again", |window| has(window, &add));
    click(window, &add);
    assert_eq!(versions(window), before + count);
    // Twice makes no twins: what is there is not offered again.
    eventually(window, "nothing is left", |window| {
        has(window, "Add 0 new versions")
    });
    let book = book(window);
    for recipe in &book.recipes {
        let mut names: Vec<&str> = recipe
            .versions
            .iter()
            .map(|one| one.name.as_str())
            .collect();
        let all = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all, "{}", recipe.name);
    }
}
