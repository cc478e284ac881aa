//! What a row says of the price: a price and what it buys are of one text, so both are taken or neither is.

use super::doubt::{CellFault, UnitsOf};
use super::field::Field;
use super::row_reader::RowReader;
use crate::balance::{Slots, per_gram, portion};
use crate::book::{Amount, Book, Day, Form, Ingredient, Price};
use crate::quantity::{PackError, PackUnit, parse_pack};

/// At this temperature a litre is a litre on a pack, °C (Council Directive 76/211/EEC, Annex I, 3).
const OF_PACKS: f64 = 20.0;

/// Signs and codes of currencies; those of a row are one.
const CURRENCIES: [&[&str]; 6] = [
    &["€", "eur", "euro"],
    &["$", "us$", "usd"],
    &["£", "gbp"],
    &["chf", "fr", "sfr"],
    &["¥", "jpy"],
    &["zł", "pln"],
];

/// Units that a price may be for instead of for a pack.
const AMOUNTS: [&str; 12] = [
    "kg",
    "g",
    "l",
    "ml",
    "lb",
    "oz",
    "liter",
    "litre",
    "kilo",
    "kilogramm",
    "100 ml",
    "100 g",
];

impl RowReader<'_> {
    /// What a pack costs. One letter beside the number is a slip ("8,5O") sooner than a currency.
    fn pack_price(&mut self, book: &Book) -> Option<f64> {
        let (pack, beside) = self.number(Field::PackPrice)?;
        let mut letters = beside.chars();
        let fault = if let (Some(letter), None) = (letters.next(), letters.next())
            && letter.is_alphabetic()
        {
            Some(CellFault::LetterBesideNumber)
        } else if is_for_an_amount(&beside) || is_for_an_amount(self.heading_unit(Field::PackPrice))
        {
            Some(CellFault::PricePerAmount)
        } else if is_another_currency(&beside, &book.settings.currency) {
            Some(CellFault::AnotherCurrency)
        } else {
            None
        };
        match fault {
            Some(fault) => {
                self.doubt(Field::PackPrice, fault);
                None
            }
            None => Some(pack),
        }
    }

    /// The share of a pack that can't be used, percent.
    fn waste(&mut self) -> Option<f64> {
        let (waste, unit) = self.number(Field::Waste)?;
        if !matches!(unit.as_str(), "" | "%") {
            self.doubt(Field::Waste, CellFault::Unit(UnitsOf::Share));
            return None;
        }
        Some(waste)
    }

    /// Content of a pack in grams; millilitres need a density.
    fn pack_grams(&mut self, density: Option<f64>) -> Option<f64> {
        if !self.states(Field::PackContent) {
            return None;
        }
        let text = self.text(Field::PackContent);
        let usual = self.heading_unit(Field::PackContent).to_owned();
        let pack = match parse_pack(&text, self.sign(Field::PackContent), &usual) {
            Ok(pack) => pack,
            Err(error) => {
                match error {
                    PackError::Number(error) => self.no_number(Field::PackContent, error),
                    PackError::NoUnit => self.doubt(Field::PackContent, CellFault::NoPackUnit),
                    PackError::NotUnderstood { .. } => {
                        self.doubt(Field::PackContent, CellFault::Unit(UnitsOf::Pack));
                    }
                }
                return None;
            }
        };
        let grams = match pack.unit {
            PackUnit::Grams => Some(pack.whole()),
            PackUnit::Millilitres => density.map(|density| pack.whole() * density),
        };
        if grams.is_none() {
            self.doubt(Field::PackContent, CellFault::NoDensity);
        }
        grams.filter(|grams| *grams > 0.0)
    }

    /// The price that the row states, of an ingredient with its other figures in place; `None` when it states none that can be
    /// read as a whole.
    pub(super) fn price(&mut self, book: &Book, of: &Ingredient, date: &str) -> Option<Price> {
        let before = of.price.as_ref();
        // All is read, also where nothing is taken, so that every doubt is told.
        let pack = self.pack_price(book);
        let content = self.pack_grams(density(book, of));
        let waste = self.waste().filter(|waste| *waste < 100.0);
        let date = self.price_date(date);
        let half = |field, is_read: bool| self.states(field) && !is_read;
        if half(Field::PackPrice, pack.is_some()) || half(Field::PackContent, content.is_some()) {
            return None;
        }
        let waste_percent = waste.or_else(|| before.map(|before| before.waste_percent));
        let waste_percent = waste_percent.unwrap_or(0.0);
        let Some(pack) = pack else {
            // A content without a price is of no price that anybody stated.
            let before = before.filter(|_| waste.is_some())?;
            return Some(Price {
                waste_percent,
                ..before.clone()
            });
        };
        let Some(grams) = content.or_else(|| before.map(|before| before.grams)) else {
            self.doubt(Field::PackPrice, CellFault::NoPackContent);
            return None;
        };
        if content.is_none() && self.has_column(Field::PackContent) {
            self.doubt(Field::PackContent, CellFault::PackOfBook);
        }
        let price = Price {
            pack,
            grams,
            waste_percent,
            date,
        };
        // A price that did not change keeps the day on which it was looked up.
        match before {
            Some(before) if is_same(before.pack, pack) && is_same(before.grams, grams) => {
                Some(Price {
                    date: before.date.clone().or(price.date),
                    ..price
                })
            }
            _ => Some(price),
        }
    }

    fn price_date(&mut self, usual: &str) -> Option<String> {
        let stated = self.text(Field::PriceDate);
        let day = if self.states(Field::PriceDate) {
            let day = written_day(&stated);
            if day.is_none() && (self.states(Field::PackPrice) || self.states(Field::Waste)) {
                self.doubt(Field::PriceDate, CellFault::NotADay);
            }
            day.unwrap_or_else(|| usual.to_owned())
        } else {
            usual.to_owned()
        };
        (!day.is_empty()).then_some(day)
    }
}

/// Density with which a volume on a pack is weighed, g/ml: what is stated, else for what pours what its figures make of it.
fn density(book: &Book, of: &Ingredient) -> Option<f64> {
    let stated = of.density.map(|figure| figure.value);
    stated.or_else(|| {
        let pours = matches!(of.form, Form::Liquid | Form::Syrup);
        if !pours || of.composition.printed.is_empty() {
            return None;
        }
        let mix = per_gram(of, &mut Slots::default()).mix;
        let one = portion(book, of, &mix, &Amount::Millilitres(1.0), OF_PACKS)?;
        // As many digits as a specification sheet has.
        let density = (one.grams * 1000.0).round() / 1000.0;
        (density.is_finite() && density > 0.0).then_some(density)
    })
}

/// "€/kg", "je kg".
fn is_for_an_amount(beside: &str) -> bool {
    let beside = beside.trim().trim_end_matches(')').to_lowercase();
    let last = beside.rsplit(['/', ' ', '\u{a0}']).next().unwrap_or("");
    beside.contains('/') || AMOUNTS.contains(&last) || AMOUNTS.contains(&beside.as_str())
}

/// Whether a sign beside a price is of another currency than that of the book.
fn is_another_currency(beside: &str, of_book: &str) -> bool {
    let called = |word: &str| {
        let word = word.trim().trim_end_matches('.').to_lowercase();
        CURRENCIES
            .iter()
            .position(|names| names.contains(&word.as_str()))
    };
    let both = called(beside).zip(called(of_book));
    both.is_some_and(|(beside, of_book)| beside != of_book)
}

/// A day as `2026-05-04`, or with stops and the day first, as `4.5.2026`.
fn written_day(text: &str) -> Option<String> {
    if Day::from_text(text).is_some() {
        return Some(text.to_owned());
    }
    let parts: Vec<&str> = text.split('.').map(str::trim).collect();
    let [day, month, year] = parts.as_slice() else {
        return None;
    };
    let are_digits = parts
        .iter()
        .all(|part| part.chars().all(|c| c.is_ascii_digit()));
    if !are_digits || day.len() > 2 || month.len() > 2 || year.len() != 4 {
        return None;
    }
    let written = format!("{year}-{month:0>2}-{day:0>2}");
    Day::from_text(&written).map(|_| written)
}

/// Whether two numbers are one, but for the last digits of the arithmetic.
pub(super) fn is_same(one: f64, two: f64) -> bool {
    (one - two).abs() <= 1e-9 * two.abs()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_are_read_as_lists_write_them() {
        for (text, day) in [
            ("2026-05-04", Some("2026-05-04")),
            ("4.5.2026", Some("2026-05-04")),
            ("04. 05. 2026", Some("2026-05-04")),
            ("31.2.2026", None),
            ("4/5/2026", None),
            ("4.5.26", None),
            ("soon", None),
        ] {
            assert_eq!(written_day(text).as_deref(), day, "{text}");
        }
    }

    #[test]
    fn a_price_for_an_amount_or_in_another_currency_is_told() {
        for beside in ["€/kg", "/kg", "kg", "je kg", "€ per l", "€/100 g"] {
            assert!(is_for_an_amount(beside), "{beside}");
        }
        for beside in ["", "€", "EUR", "netto", "$"] {
            assert!(!is_for_an_amount(beside), "{beside}");
        }
        assert!(is_another_currency("USD", "€") && is_another_currency("Fr.", "€"));
        assert!(!is_another_currency("EUR", "€") && !is_another_currency("netto", "€"));
    }
}
