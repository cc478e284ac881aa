//! What is typed once and read often: ten readings of a scoop or pump, a number that is clicked, a range of temperatures, and
//! scoops of ice.

use std::sync::Arc;

use egui::{Key, Modifiers, Pos2};
use egui_kittest::kittest::Queryable as _;
use evensip::balance::{Measurand, balance, balance_version, volume_of_use};
use evensip::book::{
    Amount, Book, Change, Form, Ingredient, IngredientId, Measure, MeasureId, MeasureKind, Place,
    Reading, ReadingAmount, Temperature, VesselId, resolve,
};
use evensip::ui::Area;
use evensip::ui::counter_area::{CounterItem, Kind};

use crate::at_the_window::{
    TALL, Window, WindowBuilder, at_the_counter, book, click, focus, go, press, read_aloud, says,
    settle, text_of, type_into, type_on, undo, window_of, window_on,
};
use crate::sample::sample;

fn enter(window: &mut Window) {
    press(window, Modifiers::NONE, Key::Enter);
}

fn new_measure() -> Window {
    let mut window = WindowBuilder::of([1360.0, 1100.0])
        .with_book(Book::default())
        .open();
    go(&mut window, Area::Counter);
    window
        .state_mut()
        .areas_mut()
        .counter
        .look_at(Kind::Measures);
    settle(&mut window);
    click(&mut window, "New measure");
    window
}

fn measure_in(window: &Window) -> Arc<Measure> {
    book(window).measures.iter().next().unwrap().clone()
}

fn amounts(measure: &Measure) -> Vec<ReadingAmount> {
    let readings = measure.readings.iter();
    readings.map(|reading| reading.amount).collect()
}

/// Where a field or button is.
fn place(window: &Window, label: &str) -> egui::Rect {
    window.get_by_label(label).rect()
}

#[test]
fn ten_readings_are_typed_with_enter_only_and_nothing_moves() {
    let mut window = new_measure();
    type_into(&mut window, "Name", "brown scoop");
    type_into(&mut window, "Number of uses per reading", "1");
    enter(&mut window);
    let fixed = ["Add readings", "Number of uses per reading", "Name"];
    let before = fixed.map(|label| place(&window, label));
    let read = [8.9, 9.1, 8.8, 9.0, 9.2, 8.9, 9.1, 9.0, 8.8, 9.0];
    for grams in read {
        // The keyboard has never left the field.
        assert!(window.get_by_label("Add readings").is_focused());
        type_on(&mut window, &grams.to_string());
        enter(&mut window);
        assert_eq!(fixed.map(|label| place(&window, label)), before);
        assert_eq!(text_of(&window, "Add readings"), "");
    }
    let measure = measure_in(&window);
    assert_eq!(amounts(&measure), read.map(ReadingAmount::Grams));
    assert!(measure.readings.iter().all(|reading| reading.uses == 1));
    let calibration = measure.calibration(None).unwrap();
    // By hand: the mean of the ten is 8.98 g; Σ(x − 8.98)² = 0.156, s = √(0.156/9) = 0.1317, u = s/√10 = 0.0416.
    assert!((calibration.grams - 8.98).abs() < 1e-9);
    assert!((calibration.u_mean.unwrap() - 0.0416).abs() < 1e-4);
    // Each Enter is a step.
    press(&mut window, Modifiers::NONE, Key::Escape);
    undo(&mut window);
    assert_eq!(measure_in(&window).readings.len(), 9);
    assert!(window.get_by_label("Add readings").is_focused());
}

#[test]
fn readings_in_one_go_are_masses_or_volumes_as_they_are_typed() {
    let mut window = new_measure();
    type_into(&mut window, "Name", "quince pump");
    type_into(&mut window, "Number of uses per reading", "1");
    let read = [7.6, 7.8, 7.7, 7.7, 7.5, 7.9, 7.7, 7.6, 7.8, 7.7];
    type_into(
        &mut window,
        "Add readings",
        "7.6 7.8 7,7 7.7 7.5 7.9 7.7 7.6 7.8 7.7 ml",
    );
    enter(&mut window);
    let pump = measure_in(&window);
    assert_eq!(amounts(&pump), read.map(ReadingAmount::Millilitres));
    let volume = volume_of_use(&pump).unwrap();
    assert!((volume.value - 7.7).abs() < 1e-9, "{volume:?}");
    assert_eq!(text_of(&window, "Amount of reading 2"), "7.8 ml");
    assert!(says(&window, "1 scoop = 7.70"), "{:?}", read_aloud(&window));
    // The next bare number is in the same unit; one that states its own has that.
    type_on(&mut window, "7.7 8 g");
    enter(&mut window);
    let pump = measure_in(&window);
    assert_eq!(pump.readings[10].amount, ReadingAmount::Grams(7.7));
    type_on(&mut window, "7.6 ml");
    enter(&mut window);
    type_on(&mut window, "7.7");
    enter(&mut window);
    let last = measure_in(&window).readings.last().unwrap().amount;
    assert_eq!(last, ReadingAmount::Millilitres(7.7));
}

#[test]
fn what_is_no_reading_stays_in_the_field_with_its_reason() {
    let mut window = new_measure();
    for text in ["8.9 0", "8.9 2 scoops", "-3", "plenty"] {
        type_into(&mut window, "Add readings", text);
        enter(&mut window);
        assert_eq!(text_of(&window, "Add readings"), text);
        assert!(says(&window, "not changed"), "{:?}", read_aloud(&window));
        assert!(measure_in(&window).readings.is_empty());
        assert!(window.get_by_label("Add readings").is_focused());
        press(&mut window, Modifiers::NONE, Key::Escape);
        assert_eq!(text_of(&window, "Add readings"), "");
    }
    // What is read is not lost with a click elsewhere.
    type_into(&mut window, "Add readings", "89 g");
    focus(&mut window, "Name");
    assert_eq!(amounts(&measure_in(&window)), [ReadingAmount::Grams(89.0)]);
}

/// A measure with readings of 7.7 ml of nothing in particular, or of the same volume of water by its mass.
#[test]
fn a_volume_that_was_read_is_that_of_as_much_water() {
    let pump = |amount: ReadingAmount, ingredient: Option<&str>| {
        let id = MeasureId::new("pump").unwrap();
        Measure {
            readings: vec![
                Reading {
                    ingredient: ingredient.map(|id| IngredientId::new(id).unwrap()),
                    uses: 1,
                    amount,
                    date: None,
                };
                2
            ],
            ..Measure::new(id, "pump".into(), MeasureKind::Pump)
        }
    };
    let water = pump(ReadingAmount::Grams(7.7 * 0.9982), None).calibration(None);
    for ingredient in [None, Some("syrup")] {
        let read = pump(ReadingAmount::Millilitres(7.7), ingredient);
        let found = read.calibration(None).unwrap();
        assert!((found.grams - water.unwrap().grams).abs() < 1e-12);
        let syrup = IngredientId::new("syrup").unwrap();
        assert_eq!(read.calibration(Some(&syrup)), None, "no mass of it");
    }
}

/// Clicks into a field where it is.
fn click_into(window: &mut Window, label: &str) {
    window.get_by_label(label).click();
    settle(window);
}

#[test]
fn a_number_that_is_clicked_is_selected_whole() {
    let mut window = window_of(TALL);
    let cup = VesselId::new("paper-cup-500").unwrap();
    at_the_counter(&mut window, CounterItem::Vessel(cup.clone()));
    let capacity = |window: &Window| book(window).vessel(&cup).unwrap().capacity;
    click_into(&mut window, "Capacity");
    type_on(&mut window, "700");
    assert!(
        (capacity(&window) - 700.0).abs() < 1e-9,
        "{}",
        capacity(&window)
    );
    // The second click puts the cursor between the digits.
    click_into(&mut window, "Capacity");
    type_on(&mut window, "5");
    assert!(capacity(&window) > 5000.0 || text_of(&window, "Capacity").contains('5'));
    assert_ne!(text_of(&window, "Capacity"), "5");
}

#[test]
fn a_press_that_is_held_selects_a_number_when_it_is_let_go() {
    let mut window = window_of(TALL);
    let cup = VesselId::new("paper-cup-500").unwrap();
    at_the_counter(&mut window, CounterItem::Vessel(cup.clone()));
    let at = window.get_by_label("Capacity").rect().right_center() - egui::vec2(10.0, 0.0);
    pointer(&mut window, at, true);
    // A hand is never quite still.
    window.event(egui::Event::PointerMoved(at + egui::vec2(1.0, 0.0)));
    window.step();
    pointer(&mut window, at, false);
    type_on(&mut window, "650");
    let capacity = book(&window).vessel(&cup).unwrap().capacity;
    assert!((capacity - 650.0).abs() < 1e-9, "{capacity}");
}

fn pointer(window: &mut Window, pos: Pos2, pressed: bool) {
    window.event(egui::Event::PointerMoved(pos));
    window.event(egui::Event::PointerButton {
        pos,
        button: egui::PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    });
    window.step();
    window.step();
}

#[test]
fn an_amount_of_a_line_that_is_clicked_is_selected_whole() {
    let mut window = window_on(TALL, Area::Recipe, "hob-ember", None);
    let amount = "Amount of Chestnut powder";
    click_into(&mut window, amount);
    type_on(&mut window, "3");
    assert_eq!(text_of(&window, amount), "3");
}

#[test]
fn a_range_is_a_temperature_with_its_doubt() {
    let mut window = window_on(TALL, Area::Recipe, "hob-ember", None);
    let water = |window: &Window| {
        let shown = crate::at_the_window::shown(window);
        let book = book(window);
        let recipe = book.recipe(&shown.recipe).unwrap();
        let (resolved, _) = resolve(recipe, shown.version.as_ref());
        let line = resolved
            .lines()
            .find(|line| line.ingredient.as_str() == "water")
            .unwrap()
            .clone();
        let found = balance_version(&book, recipe, shown.version.as_ref()).unwrap();
        let served = found.reported(Measurand::ServingTemperature);
        (line.temperature, served.u.unwrap())
    };
    let field = "Temperature of Water";
    type_into(&mut window, field, "80 °C");
    let (stated, of_figure) = water(&window);
    assert_eq!(stated, Some(80.0.into()));
    press(&mut window, Modifiers::COMMAND, Key::A);
    type_on(&mut window, "75–85 °C");
    let (stated, of_range) = water(&window);
    assert_eq!(stated, Some(Temperature::between(75.0, 85.0)));
    assert!(of_range > of_figure + 0.1, "{of_figure} and {of_range}");
    enter(&mut window);
    assert_eq!(text_of(&window, field), "75–85\u{a0}°C");
    // The same at the counter, for a button, and for the room.
    let mut window = new_measure();
    crate::at_the_window::choose(&mut window, "Kind: scoop", "button");
    type_into(&mut window, "Temperature at which it pours", "75-80");
    let pours = measure_in(&window).temperature;
    assert_eq!(pours, Some(Temperature::between(75.0, 80.0)));
    window.state_mut().areas_mut().counter.look_at(Kind::Shop);
    settle(&mut window);
    type_into(&mut window, "Temperature of the room", "24-20");
    let room = book(&window).settings.room_temperature;
    assert_eq!(room, Temperature::between(20.0, 24.0));
}

/// No drink of the sample is served at a temperature that is surer because what goes in has a range.
#[test]
fn a_range_makes_no_drink_surer_than_its_middle() {
    let book = sample();
    let served = |resolved| {
        let found = balance(&book, resolved, &Place::Settings);
        found.reported(Measurand::ServingTemperature)
    };
    let mut compared = 0;
    for recipe in &book.recipes {
        let (plain, _) = resolve(recipe, None);
        let lines: Vec<_> = plain.lines().cloned().collect();
        for line in lines {
            let Some(celsius) = line.temperature.map(Temperature::celsius) else {
                continue;
            };
            let mut last = served(plain.clone()).u;
            for half in [0.5, 1.0, 2.5] {
                let range = Temperature::between(celsius - half, celsius + half);
                let mut wider = plain.clone();
                wider.apply(&Change::Temperature(line.id.clone(), Some(range)));
                let u = served(wider).u;
                assert!(u >= last, "{}: {last:?} and {u:?}", recipe.id);
                last = u;
                compared += 1;
            }
        }
    }
    assert!(compared > 30, "{compared}");
}

/// What is kept somewhere between two temperatures makes a drink less sure than what is kept at one.
#[test]
fn an_ingredient_is_kept_at_a_range() {
    let plain = sample();
    let mut compared = 0;
    for recipe in &plain.recipes {
        let (lines, _) = resolve(recipe, None);
        let served = |stated: Temperature, line: &evensip::book::Line| {
            let mut book = plain.clone();
            let mut item = book.ingredient(&line.ingredient)?.as_ref().clone();
            item.temperature = Some(stated);
            book.ingredients.put(item);
            let found = balance(&book, lines.clone(), &Place::Settings);
            found.reported(Measurand::ServingTemperature).u
        };
        for line in lines.lines() {
            let item = plain.ingredient(&line.ingredient).unwrap();
            let is_counted = matches!(line.amount, Amount::Count(..));
            if line.temperature.is_some() || is_counted || item.form == Form::Ice {
                continue;
            }
            let at_one = served(Temperature::at(20.0), line);
            let between = served(Temperature::between(10.0, 30.0), line);
            if let Some((at_one, between)) = at_one.zip(between) {
                assert!(between >= at_one, "{}: {at_one} {between}", recipe.id);
                compared += usize::from(between > at_one);
            }
        }
    }
    assert!(compared > 0, "{compared}");
}

#[test]
fn scoops_of_ice_are_ice_scoops() {
    let mut changed = sample();
    let ice = changed
        .ingredients
        .iter()
        .find(|item| item.form == Form::Ice)
        .unwrap()
        .as_ref()
        .clone();
    let scoop = MeasureId::new("ice-tongs").unwrap();
    for measure in &changed.measures.clone() {
        if measure.kind == MeasureKind::IceScoop {
            changed.measures.remove(&measure.id);
        }
    }
    let read = |book: &Book, ice: &Ingredient| book.amount_from_text("3 scoops", Some(ice), None);
    assert!(
        read(&changed, &ice).is_err(),
        "scoops for powder are asked about"
    );
    let new = Measure::new(scoop.clone(), "bar ice".into(), MeasureKind::IceScoop);
    changed.measures.put(new);
    assert_eq!(read(&changed, &ice), Ok(Amount::Count(3.0, scoop)));
}

/// A file of today keeps what it says; a range and a volume are fields of a newer one.
#[test]
fn a_range_and_a_volume_are_kept_in_the_file_as_they_were_typed() {
    let measure = |fields: &str| {
        let text = format!(
            "(format: 1, settings: (room_temperature: 21), measures: [(id: \"tap\", name: \"tap\", kind: Button, {fields})])"
        );
        evensip::book_file::parse(&text).map(|(book, _)| book)
    };
    let tap =
        "temperature: (80.0, 75), readings: [(uses: 1, millilitres: 7.6), (uses: 2, grams: 8)]";
    let book = measure(tap).unwrap();
    let text = evensip::book_file::write(&book);
    assert!(text.contains("temperature: (75.0, 80.0),"), "{text}");
    assert!(text.contains("(uses: 1, millilitres: 7.6),"), "{text}");
    assert!(text.contains("(uses: 2, grams: 8.0),"), "{text}");
    assert!(text.contains("room_temperature: 21.0,"), "{text}");
    assert_eq!(evensip::book_file::parse(&text).unwrap().0, book);
    for wrong in [
        "readings: [(uses: 1)]",
        "readings: [(uses: 1, grams: 8.0, millilitres: 8.0)]",
        "temperature: (75.0)",
        "temperature: (75.0, 76.0, 77.0)",
        "temperature: (75.0, inf)",
    ] {
        assert!(measure(wrong).is_err(), "{wrong}");
    }
}
