//! The counter of the shop: its room, vessels, packs, readings, and what the house makes.

use egui::{Key, Modifiers};

use super::begin;
use crate::at_the_window::{Window, choose, click, press, tick, type_on};
use crate::played_day::{click_into, enter, fill};

/// Figures of a label, one after the other.
fn label(window: &mut Window, figures: &[(&str, &str)]) {
    for (figure, text) in figures {
        fill(window, &format!("label: {figure}"), text);
    }
}

pub(super) fn the_shop(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Num7);
    click(window, "look at shop");
    click_into(window, "Name of the shop");
    type_on(window, "Millrace Tea");
    fill(window, "Sales tax in percent", "10");
    fill(window, "Temperature of the room", "21");
}

pub(super) fn vessels(window: &mut Window) {
    click(window, "look at vessels");
    begin(window, "Find vessels", "paper cup 500 ml");
    fill(window, "Price of one", "0.09");
    fill(window, "Mass", "12");
    click(window, "Add a closure");
    click_into(window, "Head room of the lid");
    type_on(window, "12");
    fill(window, "Price of the lid", "0.03");
    for name in ["paper cup 700 ml", "clear cup 500 ml"] {
        begin(window, "Find vessels", name);
    }
    begin(window, "Find vessels", "steel shaker 700 ml");
    fill(window, "Mass", "240");
}

/// The packs, each by its name, brand, price and label as it is printed.
pub(super) fn packs(window: &mut Window) {
    const FIND: &str = "Find ingredients";
    click(window, "look at ingredients");
    begin(window, FIND, "roasted barley powder");
    fill(window, "Brand", "Thornby");
    fill(window, "Price of a pack", "10.40 for 1 kg");
    let figures = [
        ("energy", "1690"),
        ("fat", "4.1"),
        ("saturates", "3.6"),
        ("carbohydrate", "86"),
        ("sugars", "61"),
        ("protein", "3.2"),
        ("salt", "0.42"),
    ];
    label(window, &figures);
    choose(
        window,
        "Allergens: the pack says nothing",
        "the pack states them",
    );
    tick(window, "may contain milk");

    begin(window, FIND, "roasted barley powder");
    fill(window, "Brand", "Aldgrave");
    fill(window, "Price of a pack", "109 for 12 × 1 kg");
    choose(window, "Figures are per: 100 g", "serving");
    choose(window, "Energy is printed in: kJ", "kcal");
    choose(window, "Salt is printed as: salt", "sodium");
    choose(
        window,
        "Carbohydrate is printed: without fibre",
        "with fibre in it",
    );
    click_into(window, "Grams of a serving");
    type_on(window, "22");
    let figures = [
        ("energy", "91"),
        ("fat", "0.8"),
        ("saturates", "0.6"),
        ("carbohydrate", "20"),
        ("sugars", "16"),
        ("fibre", "0"),
        ("protein", "0.5"),
        ("sodium", "45"),
    ];
    label(window, &figures);
    choose(
        window,
        "Allergens: the pack says nothing",
        "the pack states them",
    );
    tick(window, "contains soybeans");

    begin(window, FIND, "creamer powder");
    fill(window, "Brand", "Ostley");
    fill(window, "Price of a pack", "6.20 for 1 kg");
    let statement = "glucose syrup, coconut oil, milk protein, stabilisers (E340)";
    fill(window, "Ingredient list", statement);
    let figures = [
        ("energy", "2190"),
        ("fat", "29"),
        ("saturates", "28"),
        ("carbohydrate", "62"),
        ("sugars", "11"),
        ("protein", "2.1"),
        ("salt", "1.1"),
    ];
    label(window, &figures);

    begin(window, FIND, "oat creamer powder");
    fill(window, "Brand", "Ostley");
    choose(window, "Vegan: not stated", "yes");

    for (brand, price, brix) in [
        ("Pellow", "8.60 for 750 ml", "66"),
        ("Hurst", "9.10 for 1 l", "58"),
    ] {
        begin(window, FIND, "quince syrup");
        fill(window, "Brand", brand);
        fill(window, "Price of a pack", price);
        label(window, &[("°Brix", brix)]);
    }
    begin(window, FIND, "house sweetener syrup");
    label(window, &[("°Brix", "77")]);
    choose(window, "Sugar profile: not stated", "fructose");
    begin(window, FIND, "house sweetener crystals");
    choose(window, "Sugar profile: not stated", "fructose");
    begin(window, FIND, "black tea leaf");
    fill(window, "Price of a pack", "13.50 for 500 g");
}

/// The readings of the measures; the powder has been entered before it is weighed.
pub(super) fn measures(window: &mut Window) {
    const FIND: &str = "Find measures";
    const OF: &str = "What the next readings weigh: water";
    const USES: &str = "Number of uses per reading";
    const READ: &str = "Add readings";
    click(window, "look at measures");
    begin(window, FIND, "brown scoop");
    choose(window, OF, "Thornby roasted barley powder");
    click_into(window, USES);
    type_on(window, "1");
    enter(window);
    for grams in [
        "8.9", "9.1", "8.8", "9.0", "9.2", "8.9", "9.1", "9.0", "8.8", "9.0",
    ] {
        type_on(window, grams);
        enter(window);
    }
    begin(window, FIND, "white scoop");
    choose(window, OF, "Ostley creamer powder");
    click_into(window, READ);
    type_on(window, "74.1");
    enter(window);
    begin(window, FIND, "quince pump");
    fill(window, USES, "1");
    enter(window);
    for millilitres in [
        "7.6 ml", "7.8", "7.7", "7.7", "7.5", "7.9", "7.7", "7.6", "7.8", "7.7",
    ] {
        type_on(window, millilitres);
        enter(window);
    }
    begin(window, FIND, "spoon");
    fill(window, USES, "5");
    fill(window, READ, "35.0 ml");
    enter(window);
    begin(window, FIND, "ice scoop");
    fill(window, USES, "3");
    fill(window, READ, "246");
    enter(window);
    begin(window, FIND, "hot tap button");
    fill(window, "What it is called to hold", "100");
    fill(window, "Temperature at which it pours", "75–80 °C");
}

/// What the house makes: tea from its leaf, pearls from dry ones; and what is counted in pieces or whipped.
pub(super) fn house(window: &mut Window) {
    const FIND: &str = "Find ingredients";
    const SOURCE: &str = "Comes from: a supplier";
    click(window, "look at ingredients");
    begin(window, FIND, "black tea, brewed");
    choose(window, SOURCE, "a new brew of black tea leaf");
    click_into(window, "Water of the brew");
    type_on(window, "125 ml");
    fill(window, "Leaf of the brew", "6 g");
    fill(window, "Steeping time in minutes", "10");
    fill(window, "Yield of a batch", "100");
    // Their names say that one is a piece to be seen and the other full of air.
    begin(window, FIND, "dried pear slice");
    click_into(window, "Weight of one piece");
    type_on(window, "1.4");
    begin(window, FIND, "whipped topping");
    click_into(window, "Density");
    type_on(window, "0.42");
    begin(window, FIND, "ice");
    begin(window, FIND, "cooked pearls");
    choose(window, SOURCE, "a new batch made here");
    press(window, Modifiers::NONE, Key::Insert);
    type_on(window, "dry pearls");
    enter(window);
    type_on(window, "1000 g");
    press(window, Modifiers::COMMAND, Key::Num7);
    click_into(window, "Yield of a batch");
    type_on(window, "2200");
    fill(window, "Shelf life in hours", "4");
    fill(window, "Waste of a batch", "6");
}
