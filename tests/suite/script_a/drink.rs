//! The first drink, what becomes of it by swaps, levels, cups and ice, its card and its file.

use egui::{Key, Modifiers};

use crate::at_the_window::{
    Window, choose, choose_folder, click, eventually, has, press, says, type_on,
};
use crate::played_day::{click_into, enter};

/// Adds a line below the last one.
fn line(window: &mut Window, wanted: &str, amount: &str) {
    press(window, Modifiers::NONE, Key::Insert);
    type_on(window, wanted);
    enter(window);
    type_on(window, amount);
    enter(window);
}

/// Adds an instruction below the last line.
fn tell(window: &mut Window, what: &str) {
    press(window, Modifiers::COMMAND | Modifiers::SHIFT, Key::Enter);
    type_on(window, what);
    enter(window);
}

/// Writes the first drink.
pub(super) fn drink(window: &mut Window) {
    press(window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    type_on(window, "Barley Lantern");
    enter(window);
    line(window, "Thornby", "2 scoops");
    line(window, "Ostley creamer", "2 scoops");
    line(window, "Pellow", "2 presses");
    line(window, "sweetener syrup", "1 spoon");
    line(window, "water", "2 pushes");
    tell(window, "stir");
    line(window, "black tea, brewed", "100 ml");
    tell(window, "pour");
    // The first cup of the shop stands there already.
    assert!(has(window, "Cup: paper cup 500 ml"));
    click_into(window, "Menu price");
    type_on(window, "5.20");
    enter(window);
    click(window, "Approve this version…");
    type_on(window, "Wren");
    click_into(window, "Tasted at, °C");
    type_on(window, "52");
    click(window, "Approve");
}

/// Asks for a swap in the drink in hand.
fn ask(window: &mut Window, replace: &str, with: &str) {
    press(window, Modifiers::COMMAND, Key::Num2);
    if has(window, "Change the swap") {
        click(window, "Change the swap");
    }
    click(window, &format!("Replace {replace}"));
    click(window, &format!("With {with}"));
}

/// Another powder, once its scoops are weighed, another syrup, and no milk.
pub(super) fn swaps(window: &mut Window) {
    const ALDGRAVE: &str = "Aldgrave roasted barley powder";
    ask(window, "Thornby roasted barley powder", ALDGRAVE);
    let unweighed = format!("the weight of one brown scoop of {ALDGRAVE} is not known; weigh ten");
    assert!(says(window, &unweighed));
    press(window, Modifiers::COMMAND, Key::Num7);
    click(window, "look at measures");
    click(window, "brown scoop");
    choose(
        window,
        "What the next readings weigh: Thornby roasted barley powder",
        ALDGRAVE,
    );
    click_into(window, "Number of uses per reading");
    type_on(window, "10");
    enter(window);
    type_on(window, "93.0");
    enter(window);
    press(window, Modifiers::COMMAND, Key::Num2);
    click(window, "Keep as new version");
    ask(window, "Pellow quince syrup", "Hurst quince syrup");
    click(window, "Keep as new version");
    ask(window, "Ostley creamer powder", "Ostley oat creamer powder");
    assert!(says(window, "No suggestion: "));
    click(window, "Keep the plain swap");
}

/// Half the sugar, the larger cup of that, and that with ice.
pub(super) fn variations(window: &mut Window) {
    // The oat creamer does not state its sugars: what is half of them nobody knows.
    press(window, Modifiers::COMMAND, Key::Num3);
    assert!(says(window, "No levels: "));
    click(window, "version with Hurst quince syrup, draft");
    for kept in [
        "Keep 50 % as a new version",
        "Keep paper cup 700 ml, 700\u{a0}ml as a new version",
    ] {
        press(window, Modifiers::COMMAND, Key::Num3);
        click(window, kept);
    }
    click(window, "version with Hurst quince syrup, draft");
    press(window, Modifiers::COMMAND, Key::Num3);
    click(window, "Keep iced, clear cup 500 ml as a new version");
}

/// The card of the iced drink, as it is printed.
pub(super) fn card(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Num8);
    choose_folder(window);
    click(window, "Write the card");
    eventually(window, "the card", |window| says(window, "Written: "));
}

/// Saves the book for the first time, where the dialog says.
pub(super) fn save(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::S);
    eventually(window, "the file", |window| !says(window, "unsaved"));
}
