//! Whatever is typed, pasted or found in a file: each reader of texts says what it is or that it is nothing, without a panic, and in
//! time that grows with the text.

use std::time::{Duration, Instant};

use evensip::exchange::{
    DecimalSign, DecimalSigns, ListChoices, guess_mapping, number_and_unit, read_line, read_table,
    review_price_list,
};
use evensip::quantity::{
    DisplayUnits, PackUnit, TypedAmount, mass_or_volume_called, parse_amount, parse_amounts,
    parse_in_unit, parse_number, parse_pack, parse_readings, parse_with_sign,
};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::growth::{TENFOLD, growth};
use crate::sample::sample;

/// A reader by its name; it fails by itself when what it reads is no number.
type Reader = (&'static str, fn(&str));

fn is_finite(number: f64) {
    assert!(number.is_finite(), "{number}");
}

fn typed(amount: &TypedAmount) {
    assert!(
        amount.number.is_finite() && amount.number >= 0.0,
        "{amount:?}"
    );
}

const READERS: [Reader; 10] = [
    ("number", |text| {
        let _ = parse_number(text).map(is_finite);
        for sign in DecimalSign::ALL {
            let _ = parse_with_sign(text, Some(sign)).map(is_finite);
        }
    }),
    ("amount", |text| {
        let _ = parse_amount(text).map(|amount| typed(&amount));
    }),
    ("amounts", |text| {
        let amounts = parse_amounts(text).unwrap_or_default();
        amounts.iter().for_each(typed);
    }),
    ("pack", |text| {
        for usual in ["", "kg"] {
            if let Ok(pack) = parse_pack(text, None, usual) {
                assert!(pack.whole() > 0.0 && pack.whole().is_finite(), "{pack:?}");
            }
        }
    }),
    ("number and unit", |text| {
        let _ = number_and_unit(text, None).map(|(number, _)| is_finite(number));
    }),
    ("temperature", |text| {
        let stated = DisplayUnits::METRIC.of("°C").read_stated(text);
        let _ = stated.map(|stated| is_finite(stated.celsius()));
    }),
    ("readings", |text| {
        if let Some(Ok(read)) = parse_readings(text, "g", 999.0) {
            assert!(read.value.is_finite() && read.u >= 0.0, "{read:?}");
        }
    }),
    ("figure", |text| {
        for unit in ["g", "mg", "kJ", "g/ml"] {
            let _ = parse_in_unit(text, unit).map(is_finite);
        }
    }),
    ("sentence", |text| {
        let read = read_line(text);
        assert!(text.contains(&read.text));
    }),
    ("unit", |text| {
        if let Some((PackUnit::Grams | PackUnit::Millilitres, factor)) = mass_or_volume_called(text)
        {
            is_finite(factor);
        }
    }),
];

const PIECES: [&str; 34] = [
    "1", "0", "9", ".", ",", "/", "½", "⅔", " ", "\u{a0}", "\u{202f}", "-", "–", "+", "x", "×",
    "g", "kg", "ml", "l ", "to ", "bis ", "°", "C", "(", ")", "'", "plus ", "and ", "about ",
    "fl oz", "'=", ";", "İ",
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_text_is_read_or_refused(seed in any::<u64>(), letters in "\\PC{0,8}") {
        let mut dice = Dice(seed);
        let mut text = String::new();
        for _ in 0..=dice.below(9) {
            text.push_str(if dice.below(12) == 0 { letters.as_str() } else { dice.pick(&PIECES) });
        }
        for (_, read) in READERS {
            read(&text);
        }
    }

    /// A list of such cells under headings that mean something.
    #[test]
    fn any_cells_are_a_list_under_review(seed in any::<u64>(), letters in "\\PC{0,8}") {
        let mut dice = Dice(seed);
        let headings = [
            "name", "brand", "Artikelnr", "Preis €", "Preis (brutto)", "Preis/100 g", "Inhalt", "Zucker g", "kcal", "Salz mg", "Dichte",
            "Schwund %", "gültig ab", "form", "role", "Zutaten", "note", "Lieferant",
        ];
        let columns = 1 + dice.below(6);
        let mut text = String::new();
        for row in 0..=1 + dice.below(3) {
            for column in 0..columns {
                if column > 0 {
                    text.push(';');
                }
                match (row, dice.below(6)) {
                    (0, _) => text.push_str(dice.pick(&headings)),
                    (_, 0) => text.push_str(&letters),
                    (_, 1) => text.push_str(dice.pick(&["-", "n/a", "powder", "Quince syrup", "1,5 kg", "2026-05-04"])),
                    _ => (0..dice.below(4)).for_each(|_| text.push_str(dice.pick(&PIECES))),
                }
            }
            text.push('\n');
        }
        if let Ok(table) = read_table(text.as_bytes(), None, None) {
            let book = sample();
            let mapping = guess_mapping(&table.headings);
            let signs = DecimalSigns::of(&table, &mapping, None);
            let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::default());
            prop_assert_eq!(review.lines.len(), table.rows.len());
        }
    }
}

#[test]
fn a_long_text_takes_as_long_as_it_is() {
    for (name, read) in READERS {
        for piece in PIECES
            .into_iter()
            .chain(["1 ", "1g+", "1-", "a-", "1 x ", "(1", "1 000 "])
        {
            let text = |length: usize| format!("1{}", piece.repeat(length / piece.len()));
            let sizes = [text(5_000), text(50_000)];
            let started = Instant::now();
            read(&sizes[1]);
            // What is done at once is not timed.
            if started.elapsed() < Duration::from_millis(50) {
                continue;
            }
            let ratio = growth([&sizes[0], &sizes[1]], |text| read(text));
            assert!(
                ratio < TENFOLD,
                "{name} of {piece:?}: {ratio:.0} times as long"
            );
        }
    }
}

#[test]
fn rows_that_are_shorter_than_a_long_heading_take_no_longer_than_their_cells() {
    let book = sample();
    let list = |size: usize| {
        let headings: Vec<String> = (0..size).map(|at| format!("x{at}")).collect();
        format!("name,price,{}\n{}", headings.join(","), "a\n".repeat(size))
    };
    let ratio = growth([&list(500), &list(5000)], |text: &String| {
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, None);
        review_price_list(&book, &table, &mapping, &signs, &ListChoices::default());
    });
    assert!(ratio < TENFOLD, "{ratio:.0} times as long");
}
