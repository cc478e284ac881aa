//! What people are used to: their own units, a term explained under the pointer, a table in a spreadsheet.

use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Amount, LineId, RecipeId, Temperature};
use evensip::cards::{CardOptions, CardRequest, Drink, card};
use evensip::quantity::{DisplayUnits, TemperatureUnit, VolumeUnit};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{
    TALL, Window, at_the_counter, book, click, copied, go, press, row, says, settle, type_into,
    window_on,
};
use crate::sample::sample;

const US: DisplayUnits = DisplayUnits {
    temperature: TemperatureUnit::Fahrenheit,
    volume: VolumeUnit::FluidOunces,
};

fn window(area: Area, units: DisplayUnits) -> Window {
    let mut window = window_on(TALL, area, "hob-and-ember", None);
    window.state_mut().view_mut().units = units;
    settle(&mut window);
    window
}

/// The numbers of a sentence, in their order.
fn numbers(sentence: &str) -> Vec<f64> {
    sentence
        .replace('−', "-")
        .split(|sign: char| !(sign.is_ascii_digit() || matches!(sign, '.' | '-')))
        .filter_map(|number| number.trim_end_matches('.').parse().ok())
        .collect()
}

fn assert_near(found: f64, expected: f64, tolerance: f64) {
    assert!(
        (found - expected).abs() <= tolerance,
        "{found} is not {expected}"
    );
}

/// The line of the recipe in hand with this ingredient, as it is drawn: a change of what is approved goes into a new draft.
fn line_of(window: &Window, ingredient: &str) -> (Amount, Option<Temperature>) {
    let app = window.state();
    let book = app.workbench().book();
    let shown = app.view().shown.clone().unwrap();
    let recipe = book.recipe(&shown.recipe).unwrap();
    let (resolved, _) = evensip::book::resolve(recipe, shown.version.as_ref());
    let found = resolved
        .lines()
        .find(|line| line.ingredient.as_str() == ingredient)
        .map(|line| (line.amount.clone(), line.temperature));
    found.unwrap()
}

#[test]
fn a_temperature_moves_by_its_zero_and_its_doubt_only_by_the_degree() {
    let metric = numbers(&row(
        &window(Area::Recipe, DisplayUnits::METRIC),
        "serving temperature:",
    ));
    let window = window(Area::Recipe, US);
    let words = row(&window, "serving temperature:");
    assert!(words.contains("°F, ±"), "{words}");
    let found = numbers(&words);
    assert_near(found[0], metric[0] * 1.8 + 32.0, 0.1);
    assert_near(found[1], metric[1] * 1.8, 0.1);
    let volume = row(&window, "volume:");
    assert!(volume.contains(" fl oz, ±"), "{volume}");
    // What is reckoned by 100 ml has no other unit.
    assert!(row(&window, "sweetness at 136\u{a0}°F:").contains("g/100 ml"));
    assert!(!says(&window, "°C"));
}

#[test]
fn a_difference_of_temperatures_has_no_zero() {
    let difference = |units| {
        let mut window = window(Area::Compare, units);
        click(&mut window, "Beside it: iced");
        let words = row(&window, "serving temperature:");
        let behind = words.split("; ").nth(1).unwrap().to_owned();
        let against = behind.split(", ").find(|part| part.contains("compared"));
        numbers(against.unwrap())
    };
    let (metric, us) = (difference(DisplayUnits::METRIC), difference(US));
    assert!(metric[0] < -20.0, "{metric:?}");
    assert_near(us[0], metric[0] * 1.8, 0.2);
    // Both are rounded to the digits that an uncertainty keeps.
    assert_near(us[1], metric[1] * 1.8, 0.5);
}

#[test]
fn the_cooling_curve_and_the_window_of_the_shop_are_read_in_the_chosen_unit() {
    let window = window(Area::Serving, US);
    let curve = row(&window, "cooling curve in °F");
    assert!(curve.contains("to lukewarm, 99\u{a0}°F in"), "{curve}");
    assert!(row(&window, "to lukewarm, 99\u{a0}°F:").ends_with(|sign: char| sign.is_ascii_digit()));
    assert!(says(&window, "the serving window of 122 to 149\u{a0}°F"));
    assert!(!says(&window, "°C"));
}

#[test]
fn a_typed_temperature_says_its_unit_or_has_that_of_the_field() {
    for (units, text) in [
        (DisplayUnits::METRIC, "165 °F"),
        (DisplayUnits::METRIC, "165F"),
        (US, "165"),
    ] {
        let mut window = window(Area::Recipe, units);
        type_into(&mut window, "Temperature of Water", text);
        let (_, celsius) = line_of(&window, "water");
        assert_near(celsius.unwrap().celsius(), 73.9, 0.02);
    }
    let mut window = window(Area::Recipe, US);
    type_into(&mut window, "Temperature of Water", "80 °C");
    assert_eq!(line_of(&window, "water").1, Some(80.0.into()));
    type_into(&mut window, "Temperature of Water", "warm");
    assert!(says(&window, "not changed"));
}

#[test]
fn a_typed_volume_says_its_unit_or_keeps_the_one_that_is_shown() {
    let millilitres = |window: &Window| match line_of(window, "water").0 {
        Amount::Millilitres(millilitres) => millilitres,
        other => panic!("{other:?}"),
    };
    for (units, text) in [
        (DisplayUnits::METRIC, "6 fl oz"),
        (DisplayUnits::METRIC, "6 oz fl"),
        (US, "6"),
    ] {
        let mut window = window(Area::Recipe, units);
        type_into(&mut window, "Amount of Water", text);
        assert_near(millilitres(&window), 177.44, 0.01);
    }
    let mut window = window(Area::Recipe, US);
    type_into(&mut window, "Amount of Water", "180 ml");
    assert_near(millilitres(&window), 180.0, 1e-9);
}

#[test]
fn the_units_are_chosen_in_the_menu_or_by_their_keys_each_alone() {
    let mut window = window(Area::Recipe, DisplayUnits::METRIC);
    click(&mut window, "Book");
    click(&mut window, "temperatures in °F");
    let units = window.state().view().units;
    assert_eq!(
        (units.temperature, units.volume),
        (TemperatureUnit::Fahrenheit, VolumeUnit::Millilitres)
    );
    let control_shift = Modifiers::COMMAND | Modifiers::SHIFT;
    for key in [Key::D, Key::L] {
        press(&mut window, control_shift, key);
    }
    let units = window.state().view().units;
    assert_eq!(
        (units.temperature, units.volume),
        (TemperatureUnit::Celsius, VolumeUnit::FluidOunces)
    );
}

#[test]
fn a_vessel_is_measured_in_the_chosen_unit_and_kept_in_millilitres() {
    let mut window = window(Area::Counter, US);
    let cup = evensip::book::VesselId::new("paper-cup-500").unwrap();
    at_the_counter(&mut window, CounterItem::Vessel(cup.clone()));
    type_into(&mut window, "Capacity", "16");
    let book = book(&window);
    assert_near(book.vessel(&cup).unwrap().capacity, 473.18, 0.01);
}

#[test]
fn an_amount_that_moves_is_told_in_the_chosen_unit_on_both_sides() {
    let mut window = window(Area::Variations, US);
    assert!(says(&window, "Water 6.09 → "));
    let table = copied(&mut window, "sizes and ice");
    let larger = &table[1];
    assert_eq!(larger[0], "paper cup 700, 23.7\u{a0}fl oz");
    assert!(larger[1].contains("Water 6.09 → "), "{larger:?}");
}

#[test]
fn a_card_prints_the_chosen_units_and_leaves_what_a_person_wrote() {
    let mut book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
    recipe.entries.push(evensip::book::Entry::Instruction(
        evensip::book::Instruction {
            id: LineId::new("own").unwrap(),
            text: "Warm 30 ml to 60 °C.".to_owned(),
        },
    ));
    book.recipes.put(recipe);
    let request = CardRequest::Training(Drink {
        recipe: id,
        version: None,
    });
    let options = CardOptions {
        units: US,
        ..CardOptions::default()
    };
    let document = card(&book, &request, &options).unwrap();
    let texts = document.texts();
    let metric: Vec<&&str> = texts
        .iter()
        .filter(|text| text.contains("°C") || text.ends_with(" ml") && !text.ends_with("100 ml"))
        .collect();
    assert_eq!(metric, [&"Warm 30 ml to 60 °C."]);
    // A step that is just noticed is a difference: 3 K are 5.4 °F, not 37.
    assert!(
        texts
            .iter()
            .any(|text| *text == "5\u{a0}°F" || *text == "5.4\u{a0}°F"),
        "{texts:#?}"
    );
    let metric = card(&book, &request, &CardOptions::default()).unwrap();
    assert!(metric.texts().iter().all(|text| !text.contains("°F")));
}

#[test]
fn a_term_is_explained_by_one_sentence_wherever_it_stands() {
    let described = |area, begin: &str| {
        let window = window(area, DisplayUnits::METRIC);
        let nodes = window.query_all_by_label_contains(begin);
        let mut found = nodes.filter_map(|node| node.accesskit_node().description());
        found
            .next()
            .unwrap_or_else(|| panic!("{begin} is not explained"))
    };
    let free_sugars = described(Area::Recipe, "free sugars:");
    assert!(free_sugars.starts_with("Free sugars are"), "{free_sugars}");
    assert_eq!(
        described(Area::Serving, "free sugars, per drink:"),
        free_sugars
    );
    assert!(
        described(Area::Recipe, "Compared with the original recipe").starts_with("The standard is")
    );
    assert!(described(Area::Serving, "the serving window of").starts_with("The serving window is"));
}

#[test]
fn the_list_of_the_counter_goes_to_a_spreadsheet_without_formulas() {
    let mut window = window(Area::Counter, US);
    let water = evensip::book::IngredientId::new("water").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(water));
    type_into(&mut window, "Name", "=1+1");
    let table = copied(&mut window, "ingredients");
    assert_eq!(table[0][..2], ["name", "brand"]);
    let sugars = table[0]
        .iter()
        .position(|head| head == "sugars per 100 g, g");
    assert!(table.iter().all(|row| row.len() == table[0].len()));
    assert!(table.iter().any(|row| row[0] == "'=1+1"));
    let chestnut = table
        .iter()
        .find(|row| row[0] == "Chestnut powder")
        .unwrap();
    assert_eq!(chestnut[sugars.unwrap()], "58.0");
    let counter = &mut window.state_mut().areas_mut().counter;
    counter.look_at(Kind::Vessels);
    settle(&mut window);
    let table = copied(&mut window, "vessels");
    let capacity = table[0].iter().position(|head| head == "capacity, fl oz");
    let cup = table.iter().find(|row| row[0] == "paper cup 500").unwrap();
    assert_near(cup[capacity.unwrap()].parse().unwrap(), 16.9, 0.05);
}

#[test]
fn the_tables_of_a_drink_go_to_a_spreadsheet_with_their_units() {
    let mut window = window(Area::Serving, US);
    let nutrition = copied(&mut window, "nutrition");
    assert_eq!(
        nutrition[0],
        ["nutrition", "unit", "per 100 ml", "±", "per drink", "±"]
    );
    let fat = nutrition.iter().find(|row| row[0] == "fat").unwrap();
    assert_eq!(fat[1], "g");
    assert!(fat[4].parse::<f64>().is_ok(), "{fat:?}");
    let cooling = copied(&mut window, "cooling");
    assert!(
        cooling
            .iter()
            .any(|row| row[0] == "to lukewarm, 99\u{a0}°F")
    );
    assert!(
        cooling
            .iter()
            .any(|row| row[..] == ["minutes", "temperature, °F", "±"])
    );
    let cost = copied(&mut window, "cost");
    let total = cost
        .iter()
        .find(|row| row[0] == "cost of the drink")
        .unwrap();
    assert_eq!(total[1], "€");
    go(&mut window, Area::Recipe);
    let lines = copied(&mut window, "lines");
    let water = lines.iter().find(|row| row[1] == "Water").unwrap();
    assert_eq!(water[2], "6.09 fl oz");
    assert!(lines[0].iter().any(|head| head == "temperature, °F"));
    let figures = copied(&mut window, "figures");
    let volume = figures.iter().find(|row| row[0] == "volume").unwrap();
    assert_eq!(volume[1], "fl oz");
}
