//! Every table on a screen goes to a spreadsheet: what its button puts on the clipboard.

use std::path::PathBuf;

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::balance::{Lens, standard_balance};
use evensip::book::{
    Axis, Book, EarlierPrice, IngredientId, MeasureId, Reading, ReadingAmount, RecipeId,
    StepSetting,
};
use evensip::book_file::write;
use evensip::exchange::write_recipe;
use evensip::quantity::{DisplayUnits, Pack, TemperatureUnit, VolumeUnit};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{
    TALL, Window, WindowBuilder, ask_swap, at_the_counter, book, click, copied, go, has, press,
    settle, show, tick, type_into, window_of, window_on,
};
use crate::sample::sample;

const POWDER: &str = "tambrel-chestnut";

fn ingredient(id: &str) -> IngredientId {
    IngredientId::new(id).unwrap()
}

/// A window with a changed book, high enough that every button is in sight.
fn window_with(change: impl FnOnce(&mut Book)) -> Window {
    let mut book = sample();
    change(&mut book);
    WindowBuilder::of(TALL).with_book(book).open()
}

fn window(area: Area, recipe: &str) -> Window {
    window_on(TALL, area, recipe, None)
}

/// The row that begins with this cell.
fn row<'table>(table: &'table [Vec<String>], first: &str) -> &'table [String] {
    let found = table.iter().find(|row| row[0] == first);
    found.unwrap_or_else(|| panic!("no row begins with `{first}`: {table:?}"))
}

fn is_number(cell: &str) -> bool {
    cell.parse::<f64>().is_ok()
}

#[test]
fn the_prices_of_an_ingredient_are_copied_all_with_the_content_of_the_pack_apart() {
    let mut window = window_with(|book| {
        let mut powder = book
            .ingredient(&ingredient(POWDER))
            .unwrap()
            .as_ref()
            .clone();
        let price = powder.price.as_mut().unwrap();
        (price.pack, price.content) = (11.0, Pack::of_grams(1000.0));
        price.date = Some("2026-01-05".to_owned());
        powder.earlier_prices = (1..=8)
            .map(|month| EarlierPrice {
                pack: 10.0,
                content: Pack::of_grams(500.0),
                date: (month > 1).then(|| format!("2025-{month:02}-01")),
                supplier: "=Ombery".to_owned(),
            })
            .collect();
        book.ingredients.put(powder);
    });
    at_the_counter(&mut window, CounterItem::Ingredient(ingredient(POWDER)));
    let table = copied(&mut window, "prices");
    assert_eq!(
        table[0],
        [
            "day",
            "price of a pack, €",
            "content, g",
            "price per kg, €",
            "change, %",
            "from"
        ]
    );
    // The screen shows six rows until all are asked for; a spreadsheet gets every one.
    assert_eq!(table.len(), 1 + 9);
    assert_eq!(
        table[1][..5],
        ["2026-01-05", "11.00", "1000", "11.00", "-45.0"]
    );
    assert_eq!(
        table[2],
        ["2025-08-01", "10.00", "500", "20.00", "0.0", "'=Ombery"]
    );
    assert_eq!(table[9][..5], ["no day", "10.00", "500", "20.00", ""]);
}

#[test]
fn the_readings_of_a_measure_are_copied_and_one_that_is_not_weighed_has_no_mass() {
    let scoop = MeasureId::new("chestnut-scoop").unwrap();
    let mut window = window_with(|book| {
        let mut measure = book.measure(&scoop).unwrap().as_ref().clone();
        measure.readings.push(Reading {
            ingredient: None,
            uses: 10,
            amount: ReadingAmount::Grams(0.0),
            date: None,
        });
        book.measures.put(measure);
    });
    let measure = book(&window).measure(&scoop).unwrap().clone();
    at_the_counter(&mut window, CounterItem::Measure(scoop));
    let table = copied(&mut window, "readings");
    assert_eq!(table[0], ["of", "scoops", "mass, g", "day"]);
    assert_eq!(table.len(), 1 + measure.readings.len());
    assert_eq!(
        table[1],
        ["Tambrel chestnut powder", "5", "43.6", "2026-10-05"]
    );
    assert_eq!(table.last().unwrap()[..], ["water", "10", "", ""]);
}

#[test]
fn the_label_and_what_one_use_weighs_are_copied_with_their_doubt() {
    let mut window = window(Area::Counter, "hazelthwaite");
    at_the_counter(&mut window, CounterItem::Ingredient(ingredient(POWDER)));
    let label = copied(&mut window, "label");
    assert_eq!(label[0], ["figure", "unit", "per 100 g", "±", "evidence"]);
    let sugars = row(&label, "sugars");
    assert_eq!((&*sugars[1], &*sugars[2]), ("g", "58"));
    assert!(is_number(&sugars[3]) && sugars[4] == "label", "{sugars:?}");
    assert!(
        label
            .iter()
            .any(|row| row[2] == "not stated" && row[3].is_empty()),
        "what no label states is no zero"
    );
    let weights = copied(&mut window, "one use weighs");
    assert_eq!(weights[0], ["measure", "one use, g", "±"]);
    let scoop = row(&weights, "brown scoop");
    let grams: f64 = scoop[1].parse().unwrap();
    // 132.0 g of three readings of five.
    assert!(
        (grams - 8.8).abs() < 0.05 && is_number(&scoop[2]),
        "{scoop:?}"
    );
}

#[test]
fn the_noticeable_steps_are_copied_with_whose_they_are() {
    let mut window = window_with(|book| {
        book.settings.steps.push(StepSetting {
            axis: Axis::Sweetness,
            fraction: 0.07,
            floor: 0.2,
            weight: 2.0,
        });
    });
    window.state_mut().areas_mut().counter.look_at(Kind::Shop);
    let view = window.state_mut().view_mut();
    view.area = Area::Counter;
    view.units = DisplayUnits {
        temperature: TemperatureUnit::Fahrenheit,
        volume: VolumeUnit::FluidOunces,
    };
    settle(&mut window);
    let table = copied(&mut window, "noticeable steps");
    assert_eq!(
        table[0],
        ["axis", "part, %", "floor", "unit", "weight", "whose"]
    );
    assert_eq!(
        row(&table, "sweetness"),
        ["sweetness", "7", "0.2", "g/100 ml", "2", "the shop's own"]
    );
    let body = row(&table, "body");
    assert!(body[1..].iter().all(|cell| !cell.is_empty()), "{body:?}");
    assert_ne!(body[5], "the shop's own");
    assert!(
        table.iter().any(|row| row[0] == "chestnut"),
        "flavours, too"
    );
}

#[test]
fn where_the_energy_comes_from_is_copied_and_adds_up() {
    let mut window = window(Area::Serving, "hob-and-ember");
    let table = copied(&mut window, "energy");
    assert_eq!(table[0], ["ingredient", "energy, kJ", "part, %"]);
    let sum: f64 = table[1..]
        .iter()
        .filter_map(|row| row[1].parse::<f64>().ok())
        .sum();
    let book = book(&window);
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let balance = evensip::balance::balance_version(&book, recipe, None).unwrap();
    let total = balance.total_through(Lens::Energy).0;
    assert!((sum - total).abs() < table.len() as f64, "{sum} {total}");
    let energies: Vec<f64> = table[1..]
        .iter()
        .filter_map(|row| row[1].parse().ok())
        .collect();
    assert!(
        energies.is_sorted_by(|one, next| one >= next),
        "{energies:?}"
    );
}

#[test]
fn a_brew_is_copied_with_its_pots_and_times() {
    let mut window = window(Area::Serving, "hazelthwaite");
    click(&mut window, "Tea: Black tea, brewed");
    type_into(&mut window, "Ready tea", "4 l");
    type_into(&mut window, "Strength of the tea", "0.45");
    type_into(&mut window, "Water that a pot holds", "1.5 l");
    type_into(&mut window, "Time when the water is poured on", "9:50");
    let table = copied(&mut window, "brewing");
    assert_eq!(table[0], ["", "unit", "value", "±", "remark"]);
    assert_eq!(row(&table, "pots")[2], "3");
    assert_eq!(row(&table, "ready tea")[1], "g");
    assert!(
        row(&table, "strength")[2..4]
            .iter()
            .all(|cell| is_number(cell))
    );
    let caffeine = row(&table, "caffeine");
    assert_eq!(caffeine[2], "not known");
    assert!(caffeine[4].contains("not stated"), "{caffeine:?}");
    assert_eq!(row(&table, "ready at")[2], "09:55");
    assert_eq!(row(&table, "use by")[2], "13:55");
}

#[test]
fn readings_that_are_typed_beside_a_drink_are_copied_as_they_are_read() {
    let mut window = window(Area::Serving, "hob-and-ember");
    let units = DisplayUnits {
        temperature: TemperatureUnit::Fahrenheit,
        ..DisplayUnits::METRIC
    };
    window.state_mut().view_mut().units = units;
    settle(&mut window);
    for (number, minutes, fahrenheit) in [(1, "0", "185"), (2, "10", "150.5"), (3, "20", "133")] {
        type_into(
            &mut window,
            &format!("Minutes of reading {number}"),
            minutes,
        );
        let field = format!("Temperature of reading {number}");
        type_into(&mut window, &field, fahrenheit);
    }
    let readings = copied(&mut window, "thermometer readings");
    assert_eq!(readings[0], ["minutes", "temperature, °F"]);
    assert_eq!(
        readings[1..],
        [["0", "185"], ["10", "150.5"], ["20", "133"]]
    );
    let iced = book(&window);
    let iced = iced.recipes.iter().find(|recipe| {
        let balance = evensip::balance::balance_version(&iced, recipe, None);
        balance.is_some_and(|balance| balance.iced)
    });
    let iced = iced.unwrap().id.to_string();
    show(&mut window, &iced, None);
    type_into(&mut window, "Minutes of weighing 1", "0");
    type_into(&mut window, "Grams of weighing 1", "100");
    type_into(&mut window, "Minutes of weighing 2", "5");
    type_into(&mut window, "Grams of weighing 2", "82,5");
    let weighings = copied(&mut window, "weighings of ice");
    assert_eq!(weighings[0], ["minutes", "ice left, g"]);
    assert_eq!(weighings[1..], [["0", "100"], ["5", "82.5"]]);
}

fn swap(area: Area) -> Window {
    let mut window = window(area, "hazelthwaite");
    ask_swap(&mut window, POWDER, "ketterby-chestnut");
    window
}

#[test]
fn the_guesses_of_a_lesson_are_copied_beside_what_came_and_only_that() {
    let mut window = swap(Area::Lesson);
    assert!(
        window
            .query_by_label("Copy the table: predictions")
            .is_none()
    );
    click(&mut window, "sweetness: sweeter");
    click(&mut window, "body: fuller");
    click(&mut window, "Reveal");
    let table = copied(&mut window, "predictions");
    assert_eq!(
        table[0],
        [
            "step",
            "change",
            "axis",
            "prediction",
            "result",
            "difference from the standard, noticeable steps",
            "correct"
        ]
    );
    assert!(
        table[1..].iter().all(|row| row[0] == "1"),
        "the next step stays covered"
    );
    let of = |table: &[Vec<String>], step: &str, axis: &str| -> Vec<String> {
        let found = table.iter().find(|row| row[0] == step && row[2] == axis);
        found.unwrap_or_else(|| panic!("{axis}: {table:?}")).clone()
    };
    let sweetness = of(&table, "1", "sweetness");
    assert_eq!(sweetness[3], "sweeter");
    assert!(sweetness[4].starts_with("sweeter by "), "{sweetness:?}");
    assert!(is_number(&sweetness[5]) && sweetness[6] == "yes");
    assert_eq!(of(&table, "1", "body")[6], "no");
    let unasked = of(&table, "1", "creaminess");
    assert!(
        unasked[3].is_empty() && unasked[6].is_empty(),
        "{unasked:?}"
    );
    click(&mut window, "Next step");
    click(&mut window, "Reveal");
    let table = copied(&mut window, "predictions");
    assert_eq!(of(&table, "1", "sweetness"), sweetness);
    // Less sweet than the step before, and held to the standard: nobody tastes what is left.
    let left = of(&table, "2", "sweetness");
    let steps = |row: &[String]| -> f64 { row[5].parse().unwrap() };
    assert!(
        steps(&left) < steps(&sweetness) && left[4] == "the same",
        "{left:?}"
    );
}

#[test]
fn the_steps_of_a_swap_are_copied_with_what_each_moves() {
    let mut window = swap(Area::Swap);
    click(&mut window, "Step by step");
    let table = copied(&mut window, "steps");
    assert_eq!(
        table[0][..3],
        ["step", "change", "overall difference, steps"]
    );
    assert!(table[0].iter().any(|head| head == "total sugar, g"));
    assert!(table.iter().all(|row| row.len() == table[0].len()));
    assert_eq!(table[1][..3], ["1", "The standard", "0.00"]);
    assert_eq!(table[1].last().unwrap(), "");
    assert_eq!(table[2][1], "Plain swap, equal measures");
    assert!(
        table[2]
            .last()
            .unwrap()
            .contains("sweetness: level → sweeter by")
    );
    let distance = |row: &[String]| row[2].parse::<f64>().unwrap();
    assert!(distance(table.last().unwrap()) < distance(&table[2]));
}

#[test]
fn what_may_move_is_copied_between_what_is_asked_and_what_is_searched() {
    let mut window = swap(Area::Swap);
    click(&mut window, "Show conditions");
    let table = copied(&mut window, "lines that may change");
    assert_eq!(
        table[0],
        [
            "ingredient",
            "may change",
            "now",
            "at least",
            "at most",
            "unit"
        ]
    );
    let sweetener = row(&table, "House sweetener, syrup").to_vec();
    assert_eq!(sweetener[1..3], ["yes", "1 spoon"]);
    assert_eq!(sweetener[5], "spoons");
    type_into(&mut window, "Least of House sweetener, syrup", "0.75");
    let table = copied(&mut window, "lines that may change");
    let asked = row(&table, "House sweetener, syrup");
    assert_ne!(asked[3], sweetener[3]);
    assert_eq!(asked[3], "0.75", "{asked:?}");
}

#[test]
fn amounts_by_hand_are_copied_with_the_figures_that_they_give() {
    let mut window = swap(Area::Swap);
    click(&mut window, "By hand");
    let table = copied(&mut window, "with these amounts");
    assert_eq!(table[0], ["ingredient", "amount"]);
    assert_eq!(row(&table, "House sweetener, syrup")[1], "½ spoon");
    assert!(
        table
            .iter()
            .any(|row| row[..] == ["figure", "unit", "value", "±", "compared with the standard"])
    );
    let sugar = row(&table, "total sugar");
    assert!(
        sugar[1] == "g" && is_number(&sugar[2]) && is_number(&sugar[3]),
        "{sugar:?}"
    );
}

#[test]
fn every_recipe_that_uses_it_is_copied_with_what_is_ticked() {
    let mut window = swap(Area::Swap);
    click(&mut window, "All recipes that use it");
    click(&mut window, "Select none");
    let table = copied(&mut window, "all recipes that use it");
    assert_eq!(
        table[0],
        [
            "drink",
            "state",
            "selected",
            "overall difference, steps",
            "result",
            "change of cost, €",
            "±",
            "changes"
        ]
    );
    let hazelthwaite = row(&table, "Hazelthwaite");
    // The book has that version; of the others none is ticked any more.
    assert_eq!(hazelthwaite[2], "already there");
    assert!(table[1..].iter().all(|row| row[2] != "yes"), "{table:?}");
    assert!(table[1..].iter().any(|row| row[2] == "no"), "{table:?}");
    assert!(is_number(&hazelthwaite[3]), "{hazelthwaite:?}");
    assert!(is_number(&hazelthwaite[5]), "{hazelthwaite:?}");
    assert!(hazelthwaite[7].contains("Ketterby"), "{hazelthwaite:?}");
}

/// Has a file looked at in the area of cards.
fn bring_in(window: &mut Window, path: &std::path::Path) {
    go(window, Area::Cards);
    type_into(window, "Path of what is brought in", path.to_str().unwrap());
    click(window, "Review");
}

fn file(folder: &tempfile::TempDir, name: &str, text: &str) -> PathBuf {
    let path = folder.path().join(name);
    std::fs::write(&path, text).unwrap();
    path
}

#[test]
fn a_list_under_review_is_copied_with_its_columns_and_what_would_change() {
    let mut window = window_of([1360.0, 1600.0]);
    let folder = tempfile::tempdir().unwrap();
    let text = "name;brand;form;price;pack;shelf\nPlum powder;Velm;powder;9,50;1 kg;=B2\n                Fig powder;Velm;powder;8,50;1 kg;\n;;;;;\n";
    bring_in(&mut window, &file(&folder, "prices.csv", text));
    tick(&mut window, "Velm Fig powder, line 3");
    let columns = copied(&mut window, "columns");
    assert_eq!(columns[0][..4], ["column", "meaning", "line 2", "line 3"]);
    assert_eq!(columns[1][2..4], ["Plum powder", "Fig powder"]);
    let shelf = row(&columns, "shelf");
    assert_eq!(shelf[1..3], ["left out", "'=B2"]);
    assert_ne!(row(&columns, "price")[1], "left out");
    let changes = copied(&mut window, "what would change");
    assert_eq!(
        changes[0],
        [
            "line",
            "ingredient",
            "taken",
            "outcome",
            "details",
            "doubts"
        ]
    );
    assert_eq!(row(&changes, "2")[1..4], ["Velm Plum powder", "yes", "new"]);
    assert_eq!(row(&changes, "3")[2], "no");
}

#[test]
fn every_doubt_that_a_list_shows_is_copied_with_it() {
    let mut window = window_of([1360.0, 1600.0]);
    let folder = tempfile::tempdir().unwrap();
    let text = "name;brand;price;pack\nChestnut powder;Tambrel;99,00;1 kg\n";
    bring_in(&mut window, &file(&folder, "prices.csv", text));
    let doubt = "The price changes by more than a third: is it the same pack?";
    assert!(has(&window, doubt));
    let changes = copied(&mut window, "what would change");
    assert_eq!(row(&changes, "2")[2], "no");
    assert_eq!(row(&changes, "2")[5], doubt);
}

#[test]
fn a_recipe_of_another_shop_is_copied_with_what_stands_for_what() {
    let mut window = window_of([1360.0, 1600.0]);
    let id = RecipeId::new("hob-and-ember").unwrap();
    let passed = write_recipe(&book(&window), &id, None).unwrap();
    let folder = tempfile::tempdir().unwrap();
    bring_in(&mut window, &file(&folder, "recipe.ron", &write(&passed)));
    let mappings = copied(&mut window, "what stands for what");
    assert_eq!(mappings[0], ["theirs", "here", "why"]);
    let lines = passed.recipe(&id).unwrap().plain().lines().count();
    assert_eq!(mappings.len(), 1 + lines);
    assert!(
        mappings
            .iter()
            .all(|row| row.iter().all(|cell| !cell.is_empty()))
    );
    let made = copied(&mut window, "lines");
    assert_eq!(made[0], ["amount", "ingredient"]);
    assert!(made.len() > lines / 2 && !made[1][1].is_empty(), "{made:?}");
}

#[test]
fn why_a_number_is_what_it_is_goes_along_line_by_line() {
    let mut window = window(Area::Recipe, "hob-and-ember");
    let sugar = window
        .get_all_by_role(Role::Button)
        .find(|node| {
            use egui_kittest::kittest::NodeT as _;
            let label = node.accesskit_node().label();
            label.is_some_and(|label| label.starts_with("total sugar"))
        })
        .unwrap();
    sugar.click();
    settle(&mut window);
    let table = copied(&mut window, "lines, total sugar");
    assert_eq!(table[0], ["ingredient", "sugar, g"]);
    let sum: f64 = table[1..]
        .iter()
        .map(|row| row[1].parse::<f64>().unwrap())
        .sum();
    let book = book(&window);
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let (balance, _) = standard_balance(&book, recipe, None).unwrap();
    let total = balance.total_through(Lens::Sugar).0;
    assert!(
        (sum - total).abs() < 0.1 * table.len() as f64,
        "{sum} {total}"
    );
}

#[test]
fn findings_and_keys_are_copied_in_the_order_of_the_screen() {
    let mut window = window_with(|book| {
        let mut powder = book
            .ingredient(&ingredient(POWDER))
            .unwrap()
            .as_ref()
            .clone();
        powder.price.as_mut().unwrap().content.each = -1.0;
        book.ingredients.put(powder);
    });
    go(&mut window, Area::Findings);
    let table = copied(&mut window, "findings");
    assert_eq!(table[0], ["severity", "place", "finding"]);
    assert_eq!(table[1][0], "error");
    assert_eq!(table[1][1], "ingredient Tambrel chestnut powder");
    let severities: Vec<bool> = table[1..].iter().map(|row| row[0] == "error").collect();
    assert!(
        severities.is_sorted_by(|one, next| one >= next),
        "errors first"
    );
    press(&mut window, Modifiers::NONE, Key::F1);
    let keys = copied(&mut window, "keys");
    assert_eq!(keys[0], ["keys", "what they do"]);
    assert!(keys.iter().any(|row| row[0] == "Ctrl+F"), "{keys:?}");
}
