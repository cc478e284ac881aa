//! A shop sets itself up from an empty book: its room, vessels, packs, readings and first drink, with every press and every text
//! counted. Nothing but the pointer and the keyboard is used.

#![allow(clippy::print_stdout, reason = "the counts are the finding")]

use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{Measurand, balance_version, volume_of_use};
use evensip::book::{
    Basis, Book, Form, Ingredient, MeasureKind, Nutrient, Role, Temperature, VesselKind,
};

use crate::at_the_window::{
    Hands, TALL, Window, WindowBuilder, book, choose, click, hands, has, is_field, press, settle,
    tick, type_on,
};

/// What setting up may take: presses of the pointer, and texts.
const MOST_PRESSES: u32 = 150;
const MOST_TEXTS: u32 = 190;

fn enter(window: &mut Window) {
    press(window, Modifiers::NONE, Key::Enter);
}

/// Puts the pointer into a field.
fn click_into(window: &mut Window, label: &str) {
    let found = window.get_all_by_label(label).find(is_field);
    found
        .unwrap_or_else(|| panic!("no field `{label}`"))
        .click();
    settle(window);
}

/// Goes on with Enter to a field and types into it.
fn fill(window: &mut Window, label: &str, text: &str) {
    let is_there = |window: &Window| {
        let node = window
            .root()
            .children_recursive()
            .find(egui_kittest::Node::is_focused);
        node.and_then(|node| node.accesskit_node().label())
            .as_deref()
            == Some(label)
    };
    for _ in 0..40 {
        if is_there(window) {
            type_on(window, text);
            return;
        }
        enter(window);
    }
    panic!("Enter does not lead to `{label}`");
}

/// Begins an item of the counter by its name, which the field that finds takes.
fn begin(window: &mut Window, find: &str, name: &str) {
    click_into(window, find);
    type_on(window, name);
    press(window, Modifiers::NONE, Key::Tab);
    enter(window);
}

/// Figures of a label, one after the other.
fn label(window: &mut Window, figures: &[(&str, &str)]) {
    for (figure, text) in figures {
        fill(window, &format!("label: {figure}"), text);
    }
}

fn the_shop(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Num7);
    click(window, "look at shop");
    click_into(window, "Name of the shop");
    type_on(window, "Millrace Tea");
    fill(window, "Sales tax in percent", "10");
    fill(window, "Temperature of the room", "21");
}

fn vessels(window: &mut Window) {
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
fn packs(window: &mut Window) {
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
    fill(window, "Price of a pack", "109 for 12 kg");
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
        ("Pellow", "8.60 for 990 g", "66"),
        ("Hurst", "9.10 for 1280 g", "58"),
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
fn measures(window: &mut Window) {
    const FIND: &str = "Find measures";
    const OF: &str = "The next readings are of: water";
    const USES: &str = "Uses of each of the next readings";
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
    fill(window, "What it is called to hold", "200");
    fill(window, "Temperature at which it pours", "75–80 °C");
}

/// Writes the first drink.
fn drink(window: &mut Window) {
    press(window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    type_on(window, "Barley Lantern");
    enter(window);
    for (wanted, amount) in [
        ("Thornby", "2 scoops"),
        ("Ostley creamer", "2 scoops"),
        ("Pellow", "2 presses"),
        ("sweetener syrup", "1 spoon"),
        ("water", "1 push"),
        ("black tea, brewed", "100 ml"),
    ] {
        press(window, Modifiers::NONE, Key::Insert);
        type_on(window, wanted);
        enter(window);
        type_on(window, amount);
        enter(window);
    }
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

fn named(book: &Book, name: &str) -> Ingredient {
    let found = book
        .ingredients
        .iter()
        .find(|item| item.full_name() == name);
    found
        .unwrap_or_else(|| panic!("no `{name}`"))
        .as_ref()
        .clone()
}

/// What has been set up is what was read off the packs, scales and jugs.
fn assert_it_is_the_shop(book: &Book) {
    let settings = &book.settings;
    assert_eq!(settings.shop, "Millrace Tea");
    assert_eq!(settings.sales_tax_percent, Some(10.0));
    assert_eq!(settings.room_temperature, 21.0.into());
    let vessels: Vec<_> = book
        .vessels
        .iter()
        .map(|item| (item.name.as_str(), item.kind, item.capacity, item.mass))
        .collect();
    assert_eq!(
        vessels,
        [
            ("paper cup 500 ml", VesselKind::Cup, 500.0, Some(12.0)),
            ("paper cup 700 ml", VesselKind::Cup, 700.0, None),
            ("clear cup 500 ml", VesselKind::Cup, 500.0, None),
            (
                "steel shaker 700 ml",
                VesselKind::Shaker,
                700.0,
                Some(240.0)
            ),
        ]
    );
    let kinds: Vec<_> = book.measures.iter().map(|item| item.kind).collect();
    assert_eq!(
        kinds,
        [
            MeasureKind::Scoop,
            MeasureKind::Scoop,
            MeasureKind::Pump,
            MeasureKind::Spoon,
            MeasureKind::IceScoop,
            MeasureKind::Button,
        ]
    );
    let measure = |at: usize| book.measures.iter().nth(at).unwrap();
    let barley = named(book, "Thornby roasted barley powder");
    let brown = measure(0).calibration(Some(&barley.id)).unwrap();
    assert!((brown.grams - 8.98).abs() < 1e-9 && brown.readings == 10);
    let white = named(book, "Ostley creamer powder");
    let white = measure(1).calibration(Some(&white.id)).unwrap();
    assert!((white.grams - 7.41).abs() < 1e-9);
    let pump = volume_of_use(measure(2)).unwrap();
    assert!((pump.value - 7.7).abs() < 1e-9 && measure(2).readings.len() == 10);
    let spoon = volume_of_use(measure(3)).unwrap();
    assert!((spoon.value - 7.0).abs() < 1e-9);
    let tap = measure(5).temperature;
    assert_eq!(tap, Some(Temperature::between(75.0, 80.0)));
    let aldgrave = named(book, "Aldgrave roasted barley powder");
    assert_eq!(aldgrave.composition.basis, Basis::PerServing(22.0));
    let sodium = aldgrave.composition.get(Nutrient::Salt).unwrap().value;
    assert!((sodium - 0.1125).abs() < 1e-9, "{sodium}");
    let forms = [
        ("Ostley oat creamer powder", Form::Powder, Role::Creamer),
        ("Pellow quince syrup", Form::Syrup, Role::Flavour),
        ("house sweetener syrup", Form::Syrup, Role::Sweetener),
        ("house sweetener crystals", Form::Crystals, Role::Sweetener),
        ("black tea leaf", Form::Leaf, Role::Tea),
    ];
    for (name, form, role) in forms {
        let item = named(book, name);
        assert_eq!((item.form, item.role), (form, role), "{name}");
    }
}

/// Worked by hand where it can be: two scoops of Thornby hold 2 × 8.98 g × 61 % of sugar.
fn assert_it_is_the_drink(book: &Book) {
    let recipe = book.recipes.iter().next().unwrap();
    assert_eq!(
        (recipe.name.as_str(), recipe.approvals.len()),
        ("Barley Lantern", 1)
    );
    let approval = &recipe.approvals[0];
    assert_eq!(
        (approval.by.as_str(), approval.tasted_at),
        ("Wren", Some(52.0))
    );
    let drink = balance_version(book, recipe, None).unwrap();
    let grams: Vec<_> = drink.lines.iter().filter_map(|line| line.grams).collect();
    assert_eq!(grams.len(), 6, "every line has a mass");
    assert!((grams[0] - 17.96).abs() < 1e-6 && (grams[1] - 14.82).abs() < 1e-6);
    let served = drink.reported(Measurand::ServingTemperature);
    let celsius = served.value.unwrap();
    assert!((45.0..60.0).contains(&celsius), "{celsius}");
    assert!(drink.reported(Measurand::TotalSugar).value.unwrap() > 25.0);
}

#[test]
fn a_shop_is_set_up_from_an_empty_book() {
    let mut window = WindowBuilder::of(TALL).with_book(Book::default()).open();
    let mut last = Hands::default();
    for (what, step) in [
        ("the shop", the_shop as fn(&mut Window)),
        ("vessels", vessels),
        ("packs", packs),
        ("measures", measures),
        ("the drink", drink),
    ] {
        step(&mut window);
        let now = hands(&window);
        let [presses, texts] = [now.presses - last.presses, now.texts - last.texts];
        println!("{what}: {presses} presses, {texts} texts");
        last = now;
    }
    let book = book(&window);
    assert_it_is_the_shop(&book);
    assert_it_is_the_drink(&book);
    assert!(
        last.presses <= MOST_PRESSES && last.texts <= MOST_TEXTS,
        "{last:?}"
    );
}
