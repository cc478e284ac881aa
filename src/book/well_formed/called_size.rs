//! Measures that do not hold what they are called: "1 cup", "500 ml jug", "2 fl oz jigger", a spoon that is set down with 5 ml.

use crate::book::named_size::{CalledSize, Held, Miscalled, NamedUnit};
use crate::book::{Book, Filling, Form, Ingredient, Measure, MeasureKind, Nominal, ReadingAmount};
use crate::quantity::parse_number;

/// Densities that anything poured has, g/ml: from oil to the thickest syrup, with room (assumed).
const POURED: (f64, f64) = (0.9, 1.45);

/// Compares what a measure is called with its readings, and its name with what it is set down with; `None` when they agree within
/// 15 % or nothing is said of volume.
///
/// A spoon or jug is called what it is set down with, and every measure what its name says: "1 cup", "500 ml jug", "½ tablespoon".
pub fn miscalled(book: &Book, item: &Measure) -> Option<Miscalled> {
    let set_down = match item.nominal {
        Some(Nominal::Volume(number)) if number > 0.0 => Some(CalledSize {
            number,
            unit: NamedUnit::Millilitre,
        }),
        _ => None,
    };
    let is_called_so = matches!(item.kind, MeasureKind::Spoon | MeasureKind::Jug);
    let by_name = size_in_name(&item.name, item.kind);
    let miscalled = |called, found_ml, held| Miscalled {
        kind: item.kind,
        called,
        found_ml,
        held,
    };
    let volumes: Vec<(f64, f64)> = volumes_of_readings(book, item).collect();
    for called in set_down.filter(|_| is_called_so).into_iter().chain(by_name) {
        let (least, most) = called.range();
        let off = volumes
            .iter()
            .find(|(from, to)| *to < least || *from > most);
        if let Some((from, to)) = off {
            return Some(miscalled(
                called,
                f64::midpoint(*from, *to),
                Held::ByReadings,
            ));
        }
    }
    let (called, set_down) = (by_name?, set_down?);
    let (least, most) = called.range();
    let is_off = !(least..=most).contains(&set_down.number);
    (volumes.is_empty() && is_off).then(|| miscalled(called, set_down.number, Held::AsSetDown))
}

/// What one use holds by each reading, ml: the least and the most that it can be.
fn volumes_of_readings(book: &Book, item: &Measure) -> impl Iterator<Item = (f64, f64)> {
    item.readings.iter().filter_map(|reading| {
        let (least, most) = match (&reading.amount, &reading.ingredient) {
            (ReadingAmount::Millilitres(_), _) | (_, None) => (1.0, 1.0),
            (ReadingAmount::Grams(_), Some(id)) => densities(book.ingredient(id)?, item.filling)?,
        };
        let number = reading.amount.number() / f64::from(reading.uses);
        let is_usable = reading.is_usable() && least > 0.0;
        is_usable.then(|| (number / most, number / least))
    })
}

/// The densities that an ingredient may have in a measure, g/ml; `None` when a volume can't be told from its mass.
fn densities(ingredient: &Ingredient, filling: Filling) -> Option<(f64, f64)> {
    let stated =
        |density: Option<crate::book::Figure>| density.map(|figure| (figure.value, figure.value));
    if ingredient.form.is_dry() {
        // What is heaped holds more than its size, and is meant to.
        return stated(ingredient.bulk_density).filter(|_| filling == Filling::Levelled);
    }
    let is_poured = !matches!(ingredient.form, Form::Ice | Form::Pieces | Form::Paste);
    stated(ingredient.density).or(is_poured.then_some(POURED))
}

/// The size in a name: "500 ml jug", "8-oz jigger", "½ cup", "tablespoon".
fn size_in_name(name: &str, kind: MeasureKind) -> Option<CalledSize> {
    let lower = name.to_lowercase().replace("fl.", "fl").replace('-', " ");
    let tokens = tokens(&lower);
    (0..tokens.len()).find_map(|at| {
        let (unit, factor, needs_number) = unit_at(&tokens[at..], kind)?;
        let number = number_before(&tokens[..at]);
        let number = match number {
            Some(number) => number,
            // "the cup" of a shop is what it drinks from.
            None if needs_number && tokens.len() > 1 => return None,
            None => 1.0,
        };
        (number > 0.0).then_some(CalledSize {
            number: number * factor,
            unit,
        })
    })
}

/// The millilitres that a name says: "paper cup 500 ml".
pub fn millilitres_in_name(name: &str) -> Option<f64> {
    let size = size_in_name(name, MeasureKind::Jug)?;
    (size.unit == NamedUnit::Millilitre).then_some(size.number)
}

/// Words and numbers of a name: "500ml" are two.
fn tokens(name: &str) -> Vec<&str> {
    let is_digit = |c: char| c.is_numeric() || matches!(c, '.' | ',' | '/');
    let mut tokens = Vec::new();
    for word in name.split(|c: char| c.is_whitespace() || matches!(c, '(' | ')')) {
        let split = word.char_indices().find(|(_, c)| !is_digit(*c));
        let (number, rest) = word.split_at(split.map_or(word.len(), |(at, _)| at));
        let number = number.trim_end_matches([',', '.', '/']);
        let rest = rest.trim_end_matches([',', '.', ':']);
        tokens.extend([number, rest].into_iter().filter(|token| !token.is_empty()));
    }
    tokens
}

/// The unit that words begin with, what one of them is of it, and whether it needs a number to mean a size.
fn unit_at(tokens: &[&str], kind: MeasureKind) -> Option<(NamedUnit, f64, bool)> {
    use NamedUnit as U;
    let next = tokens.get(1).copied();
    let is_ounce = |word: Option<&str>| matches!(word, Some("oz" | "ounce" | "ounces"));
    Some(match *tokens.first()? {
        "ml" | "millilitre" | "millilitres" | "milliliter" | "milliliters" | "cc" => {
            (U::Millilitre, 1.0, true)
        }
        "cl" => (U::Millilitre, 10.0, true),
        "dl" => (U::Millilitre, 100.0, true),
        "l" | "litre" | "litres" | "liter" | "liters" => (U::Millilitre, 1000.0, true),
        "tsp" | "teaspoon" | "teaspoons" => (U::Teaspoon, 1.0, false),
        "tbsp" | "tablespoon" | "tablespoons" => (U::Tablespoon, 1.0, false),
        "cup" | "cups" => (U::Cup, 1.0, true),
        "fl" | "fluid" if is_ounce(next) => (U::FluidOunce, 1.0, true),
        "floz" => (U::FluidOunce, 1.0, true),
        // The ounce of a jigger or jug is one of volume.
        word if is_ounce(Some(word)) && kind == MeasureKind::Jug => (U::FluidOunce, 1.0, true),
        "pint" | "pints" => (U::Pint, 1.0, false),
        "quart" | "quarts" => (U::Quart, 1.0, false),
        _ => return None,
    })
}

/// The number that words end with: "1 1/2" of "the 1 1/2".
fn number_before(tokens: &[&str]) -> Option<f64> {
    let last = tokens.last()?;
    let two = tokens.len().checked_sub(2).map(|at| tokens[at..].join(" "));
    let word = match *last {
        "half" => Some(0.5),
        "quarter" => Some(0.25),
        "third" => Some(1.0 / 3.0),
        "one" | "a" => Some(1.0),
        _ => None,
    };
    // "1 1/2" is one number, "12 500" is none that names a size.
    two.filter(|_| {
        last.contains('/') || last.chars().all(|c| c.is_numeric() && !c.is_ascii_digit())
    })
    .and_then(|two| parse_number(&two).ok())
    .or_else(|| parse_number(last).ok())
    .or(word)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{MeasureId, Reading, ReadingAmount};

    fn named(name: &str, kind: MeasureKind, nominal: Option<f64>, grams: &[f64]) -> Measure {
        Measure {
            nominal: nominal.map(Nominal::Volume),
            readings: grams
                .iter()
                .map(|grams| Reading {
                    ingredient: None,
                    uses: 1,
                    amount: ReadingAmount::Grams(*grams),
                    date: None,
                })
                .collect(),
            ..Measure::new(MeasureId::new("measure").unwrap(), name.into(), kind)
        }
    }

    fn found(item: &Measure) -> Option<Miscalled> {
        miscalled(&Book::default(), item)
    }

    #[test]
    fn every_legal_size_passes_and_what_is_far_off_does_not() {
        let (mut passed, mut caught) = (0, 0);
        for (unit, word, kind) in [
            (NamedUnit::Teaspoon, "teaspoons", MeasureKind::Spoon),
            (NamedUnit::Tablespoon, "tablespoon", MeasureKind::Spoon),
            (NamedUnit::Cup, "cup", MeasureKind::Jug),
            (NamedUnit::Cup, "cups", MeasureKind::Scoop),
            (NamedUnit::FluidOunce, "fl oz", MeasureKind::Jug),
            (NamedUnit::Pint, "pint", MeasureKind::Jug),
            (NamedUnit::Quart, "quarts", MeasureKind::Jug),
            (NamedUnit::Millilitre, "ml", MeasureKind::Jug),
        ] {
            for number in [0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 12.0] {
                let called = CalledSize { number, unit };
                let name = format!("{number} {word}");
                for value in unit.values() {
                    let millilitres = value * number;
                    let item = named(&name, kind, None, &[millilitres]);
                    assert_eq!(found(&item), None, "{name} of {millilitres} ml");
                    passed += 1;
                }
                let (least, most) = called.range();
                for millilitres in [least * 0.98, most * 1.02, most * 1.5, least / 2.0] {
                    for item in [
                        named(&name, kind, None, &[millilitres]),
                        named(&name, kind, Some(millilitres), &[]),
                    ] {
                        let found = found(&item).unwrap_or_else(|| panic!("{name}: {millilitres}"));
                        assert_eq!(found.called, called);
                        assert!((found.found_ml - millilitres).abs() < 1e-9);
                        caught += 1;
                    }
                }
            }
        }
        assert!(passed > 100 && caught > 400, "{passed} {caught}");
    }

    #[test]
    fn a_spoon_of_us_customary_size_passes_and_a_soup_spoon_does_not() {
        // Metric 5 and 15 ml; US customary 4.93 and 14.79 ml (NIST Handbook 44); 21 CFR 101.9(b)(5)(viii) labels with 5 and 15.
        let spoon =
            |called: f64, grams: f64| named("spoon", MeasureKind::Spoon, Some(called), &[grams]);
        for (called, grams) in [(5.0, 4.92), (4.93, 4.92), (15.0, 14.76), (14.79, 14.97)] {
            assert_eq!(found(&spoon(called, grams)), None, "{called}");
        }
        // 7 g of a 77 °Brix syrup read as 7 ml, and a tea spoon that holds 7 ml, look the same: the check asks.
        let odd = found(&spoon(5.0, 7.0)).unwrap();
        assert_eq!(odd.held, Held::ByReadings);
        assert!((odd.called.number - 5.0).abs() < 1e-9 && (odd.found_ml - 7.0).abs() < 1e-9);
        // A pump may press out less than it was bought for; its name says nothing.
        let pump = named("pear pump", MeasureKind::Pump, Some(10.0), &[7.0]);
        assert_eq!(found(&pump), None);
    }

    #[test]
    fn what_is_poured_has_a_density_within_bounds_and_powder_needs_its_own() {
        let mut book = Book::default();
        let mut ingredient = Ingredient {
            form: Form::Syrup,
            ..plain_ingredient()
        };
        book.ingredients.put(ingredient.clone());
        let with = |grams: f64| {
            let mut jug = named("100 ml jug", MeasureKind::Jug, None, &[grams]);
            jug.readings[0].ingredient = Some(ingredient.id.clone());
            jug
        };
        // 139 g may be 100 ml of a thick syrup; 180 g are more than 100 ml of anything.
        assert_eq!(miscalled(&book, &with(139.0)), None);
        assert!(miscalled(&book, &with(180.0)).is_some());
        assert!(miscalled(&book, &with(60.0)).is_some());
        ingredient.form = Form::Powder;
        book.ingredients.put(ingredient.clone());
        assert_eq!(miscalled(&book, &with(180.0)), None);
    }

    fn plain_ingredient() -> Ingredient {
        Ingredient {
            form: Form::Liquid,
            role: crate::book::Role::Base,
            ..Ingredient::new(
                crate::book::IngredientId::new("plain").unwrap(),
                "plain".into(),
            )
        }
    }

    #[test]
    fn a_size_is_found_in_a_name_and_only_there() {
        use MeasureKind::{Jug, Scoop, Spoon};
        use NamedUnit as U;
        for (name, kind, number, unit) in [
            ("500 ml jug", Jug, 500.0, U::Millilitre),
            ("500ml jug", Jug, 500.0, U::Millilitre),
            ("0,5 l jug", Jug, 500.0, U::Millilitre),
            ("2 fl oz jigger", Jug, 2.0, U::FluidOunce),
            ("2 fl. oz. jigger", Jug, 2.0, U::FluidOunce),
            ("8-oz jigger", Jug, 8.0, U::FluidOunce),
            ("1 cup", Jug, 1.0, U::Cup),
            ("cup", Scoop, 1.0, U::Cup),
            ("½ cup", Scoop, 0.5, U::Cup),
            ("1 1/2 cups", Scoop, 1.5, U::Cup),
            ("half cup scoop", Scoop, 0.5, U::Cup),
            ("1/4 cup", Scoop, 0.25, U::Cup),
            ("tablespoon", Spoon, 1.0, U::Tablespoon),
            ("the steel teaspoon", Spoon, 1.0, U::Teaspoon),
            ("pint jug", Jug, 1.0, U::Pint),
            ("7 ml spoon", Spoon, 7.0, U::Millilitre),
        ] {
            let size = size_in_name(name, kind).unwrap_or_else(|| panic!("{name}"));
            assert_eq!((size.number, size.unit), (number, unit), "{name}");
        }
        for (name, kind) in [
            ("brown scoop", Scoop),
            ("milk jug to its mark", Jug),
            ("scoop for the cup of the day", Scoop),
            ("2 oz scoop", Scoop),
            ("1,000 ml jug", Jug),
            ("spoon 5", Spoon),
            ("", Spoon),
        ] {
            assert_eq!(size_in_name(name, kind), None, "{name}");
        }
    }
}
