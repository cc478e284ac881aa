//! The record that a book keeps of itself: simulated shops whose doubts are otherwise than assumed, and what is accepted of them.

use evensip::balance::balance_version;
use evensip::book::{
    Book, CupQuantity, DoubtClass, FiledReading, Measure, MeasureId, MeasureKind, Nominal, Reading,
    ReadingAmount, RecipeId,
};
use evensip::edit::{Edit, apply};
use evensip::record::{RecordVerdict, filed_reading, foretold, record};
use evensip::ui::Area;
use evensip::workbench::{rescaling, rescaling_given_up};

use crate::arbitrary_book::Dice;
use crate::at_the_window::{click, says, settle, type_into, window_on};
use crate::sample::sample as book;

/// A standard normal number (Box & Muller 1958).
fn normal(dice: &mut Dice) -> f64 {
    let mut even = || (dice.next() >> 11) as f64 / (1_u64 << 53) as f64;
    let (one, other) = (even().max(1e-300), even());
    (-2.0 * one.ln()).sqrt() * (std::f64::consts::TAU * other).cos()
}

/// Drinks of a simulated shop.
const DRINKS: usize = 5;

/// Drinks of which something is foretold.
fn drinks(book: &Book, what: CupQuantity) -> Vec<RecipeId> {
    let recipes = book.recipes.iter().filter(|recipe| {
        let balance = balance_version(book, recipe, None).unwrap();
        recipe.cup.is_some() && foretold(&balance, what).is_some()
    });
    recipes
        .map(|recipe| recipe.id.clone())
        .take(DRINKS)
        .collect()
}

/// What is foretold of a drink, as it is filed; what was read is what was foretold.
fn filed(book: &Book, id: &RecipeId, what: CupQuantity) -> FiledReading {
    let recipe = book.recipe(id).unwrap();
    let balance = balance_version(book, recipe, None).unwrap();
    let value = foretold(&balance, what).unwrap().value;
    filed_reading(book, &balance, None, (what, value), ("2026-06-01", "AB")).unwrap()
}

/// A reading by an instrument of a shop whose doubts of the class are truly so many times what is assumed.
fn read(filed: &FiledReading, truly: f64, dice: &mut Dice) -> FiledReading {
    let of_class = filed.of_class / filed.times;
    let rest = (filed.foretold_u.powi(2) - filed.of_class.powi(2)).max(0.0);
    let off = truly * of_class * normal(dice) + rest.sqrt() * normal(dice) + filed.u * normal(dice);
    FiledReading {
        value: filed.value + off,
        ..filed.clone()
    }
}

fn is_inside(reading: &FiledReading) -> bool {
    (reading.value - reading.foretold).abs() <= 2.0 * reading.foretold_u.hypot(reading.u)
}

#[test]
#[allow(
    clippy::print_stdout,
    reason = "the table of shops is read with --nocapture"
)]
fn doubts_that_are_three_times_off_hold_after_thirty_readings() {
    const SHOPS: usize = 12;
    const LATER: usize = 40;
    println!("true doubts  what         30 readings  later readings inside two ±, before → after");
    let sample = book();
    for what in [CupQuantity::Temperature, CupQuantity::Weight] {
        let drinks = drinks(&sample, what);
        assert!(drinks.len() >= 3, "{}", drinks.len());
        let filed_of = |book: &Book| -> Vec<FiledReading> {
            drinks.iter().map(|id| filed(book, id, what)).collect()
        };
        let as_assumed = filed_of(&sample);
        for truly in [1.0 / 3.0, 1.0, 3.0] {
            let (mut before, mut after, mut filed_inside) = (0, 0, 0);
            for shop in 0..SHOPS {
                let mut dice = Dice(1000 * shop as u64 + what as u64);
                let mut shop = sample.clone();
                for number in 0..30 {
                    let reading = read(&as_assumed[number % drinks.len()], truly, &mut dice);
                    filed_inside += usize::from(is_inside(&reading));
                    let recipe = drinks[number % drinks.len()].clone();
                    shop = apply(&shop, &Edit::FileReading { recipe, reading }).unwrap();
                }
                let found = record(&shop);
                let found = found.class(what.class()).unwrap();
                let accepted = rescaling(&shop, found, "2026-06-30", "AB", "the record");
                let then = accepted.map_or(shop.clone(), |edit| apply(&shop, &edit).unwrap());
                let rescaled = filed_of(&then);
                for number in 0..LATER {
                    let at = number % drinks.len();
                    let reading = read(&rescaled[at], truly, &mut dice);
                    after += usize::from(is_inside(&reading));
                    let foretold_u = as_assumed[at].foretold_u;
                    before += usize::from(is_inside(&FiledReading {
                        foretold_u,
                        ..reading
                    }));
                }
            }
            let all = SHOPS * LATER;
            let percent = |count: usize, all: usize| 100.0 * count as f64 / all as f64;
            let (before, after) = (percent(before, all), percent(after, all));
            println!(
                "{truly:>11.2}  {:<11}  {:>9.1} %  {before:>5.1} % → {after:.1} %",
                what.word(),
                percent(filed_inside, 30 * SHOPS)
            );
            assert!((90.0..=98.0).contains(&after), "{what:?} {truly}: {after}");
        }
    }
}

#[test]
fn what_is_accepted_scales_the_doubts_and_moves_no_figure_and_is_given_up_again() {
    let mut shop = book();
    let what = CupQuantity::Temperature;
    let mut dice = Dice(7);
    let drinks = drinks(&shop, what);
    for number in 0..30 {
        let recipe = drinks[number % drinks.len()].clone();
        let reading = read(&filed(&shop, &recipe, what), 3.0, &mut dice);
        shop = apply(&shop, &Edit::FileReading { recipe, reading }).unwrap();
    }
    let found = record(&shop);
    let found = found.class(DoubtClass::Temperature).unwrap();
    assert_eq!(found.verdict, RecordVerdict::TooSmall);
    // Nothing is re-scaled by itself.
    assert!(shop.settings.doubts.is_empty());
    let edit = rescaling(&shop, found, "2026-06-30", "AB", "").unwrap();
    let then = apply(&shop, &edit).unwrap();
    let recipe = shop.recipe(&drinks[0]).unwrap();
    let was = balance_version(&shop, recipe, None).unwrap();
    let is = balance_version(&then, recipe, None).unwrap();
    assert_eq!(was.figures, is.figures);
    let u = |balance| foretold(balance, what).unwrap().u;
    assert!(u(&is) > 1.5 * u(&was), "{} {}", u(&was), u(&is));
    let agreed = record(&then);
    let agreed = agreed.class(DoubtClass::Temperature).unwrap();
    assert_eq!(agreed.verdict, RecordVerdict::Fits);
    assert_eq!(agreed.inside(), found.inside(), "what was said stays said");
    let again = rescaling_given_up(&then, DoubtClass::Temperature).unwrap();
    assert_eq!(apply(&then, &again).unwrap(), shop);
}

#[test]
fn a_few_readings_that_agree_make_no_doubt_smaller() {
    let mut shop = book();
    let what = CupQuantity::Temperature;
    let drinks = drinks(&shop, what);
    for number in 0..9 {
        let recipe = drinks[number % drinks.len()].clone();
        let reading = filed(&shop, &recipe, what);
        shop = apply(&shop, &Edit::FileReading { recipe, reading }).unwrap();
    }
    let found = record(&shop);
    let found = found.class(DoubtClass::Temperature).unwrap();
    assert_eq!(found.verdict, RecordVerdict::TooFew);
    assert_eq!(found.offered(), None);
}

#[test]
fn a_measure_is_held_to_what_it_is_called_and_to_the_days_before() {
    let mut pump = Measure::new(
        MeasureId::new("pump").unwrap(),
        "pump".into(),
        MeasureKind::Pump,
    );
    pump.nominal = Some(Nominal::Volume(10.0));
    let days = [
        ("2026-05-01", 99.0),
        ("2026-05-02", 101.0),
        ("2026-05-03", 120.0),
    ];
    for (day, grams) in days {
        for more in [0.0, 1.0, -1.0, 0.5] {
            pump.readings.push(Reading {
                ingredient: None,
                uses: 10,
                amount: ReadingAmount::Grams(grams + more),
                date: Some(day.into()),
            });
        }
    }
    let mut book = Book::default();
    book.measures.put(pump);
    let found = record(&book);
    let dose = found.class(DoubtClass::Dose).unwrap();
    let inside: Vec<bool> = dose.readings.iter().map(|one| one.inside).collect();
    assert_eq!(inside, [true, true, false]);
}

#[test]
fn a_reading_is_filed_and_taken_out_where_the_drink_is_served() {
    let mut window = window_on([1360.0, 2200.0], Area::Serving, "pear-drift", None);
    type_into(&mut window, "Weight of what is in the cup", "400");
    settle(&mut window);
    click(&mut window, "File in the record");
    settle(&mut window);
    assert!(says(&window, "1 reading of this drink is in the record."));
    assert!(says(&window, "Doses and weights:"));
    click(&mut window, "Take the last one out");
    settle(&mut window);
    assert!(!says(&window, "of this drink is in the record."));
}
