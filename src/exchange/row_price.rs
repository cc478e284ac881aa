//! What a row says of the price: a price and what it buys are of one text, so both are taken or neither is.

use super::basis::{Basis, LEADS, without_basis};
use super::doubt::{CellFault, UnitsOf};
use super::field::{Field, names_gross};
use super::row_reader::RowReader;
use crate::balance::{Slots, pack_grams, per_gram};
use crate::book::{Book, Day, Ingredient, Price, is_same_content, is_same_figure};
use crate::quantity::{Pack, PackError, mass_or_volume_called, parse_pack};

/// German headings of prices for a kilogram or a litre.
const UNIT_PRICES: [&str; 5] = [
    "grundpreis",
    "kilopreis",
    "literpreis",
    "kg-preis",
    "l-preis",
];

/// What large amounts are sold by and no pack holds.
const TONNE: [&str; 3] = ["t", "tonne", "tonnes"];

/// Signs and codes of currencies; those of a row are one.
const CURRENCIES: [&[&str]; 6] = [
    &["€", "eur", "euro"],
    &["$", "us$", "usd"],
    &["£", "gbp"],
    &["chf", "fr", "sfr"],
    &["¥", "jpy"],
    &["zł", "pln"],
];

impl RowReader<'_> {
    /// What a pack costs. One letter beside the number is a slip ("8,5O") sooner than a currency.
    fn pack_price(&mut self, book: &Book) -> Option<f64> {
        // "1,20 €/100 g" is no number any more: it is told what it is before it is read.
        let text = self.text(Field::PackPrice).to_lowercase();
        let of_cell = if without_basis(&text).1 != Basis::Unstated {
            Some(CellFault::PricePerAmount)
        } else if names_gross(&text) {
            Some(CellFault::WithSalesTax)
        } else {
            None
        };
        if let Some(fault) = of_cell {
            self.doubt(Field::PackPrice, fault);
            return None;
        }
        let (pack, beside) = self.number(Field::PackPrice)?;
        let heading = self.heading(Field::PackPrice).to_lowercase();
        let mut letters = beside.chars();
        let fault = if let (Some(letter), None) = (letters.next(), letters.next())
            && letter.is_alphabetic()
        {
            Some(CellFault::LetterBesideNumber)
        } else if [&beside, &heading]
            .into_iter()
            .any(|text| is_for_an_amount(text))
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

    /// What a pack holds.
    fn pack_content(&mut self) -> Option<Pack> {
        if !self.states(Field::PackContent) {
            return None;
        }
        let text = self.text(Field::PackContent);
        let heading = self.heading(Field::PackContent).to_lowercase();
        if names_gross(&text.to_lowercase()) || names_gross(&heading) {
            self.doubt(Field::PackContent, CellFault::WithPacking);
            return None;
        }
        let usual = self.heading_unit(Field::PackContent).to_owned();
        match parse_pack(&text, self.sign(Field::PackContent), &usual) {
            Ok(pack) => return Some(pack),
            Err(PackError::Number(error)) => self.no_number(Field::PackContent, error),
            Err(PackError::NoUnit) => self.doubt(Field::PackContent, CellFault::NoPackUnit),
            Err(PackError::NotUnderstood { .. }) => {
                self.doubt(Field::PackContent, CellFault::Unit(UnitsOf::Pack));
            }
        }
        None
    }

    /// The price that the row states, of an ingredient with its other figures in place; `None` when it states none that can be
    /// read as a whole.
    pub(super) fn price(&mut self, book: &Book, of: &Ingredient, date: &str) -> Option<Price> {
        let before = of.price.as_ref();
        // All is read, also where nothing is taken, so that every doubt is told.
        let pack = self.pack_price(book);
        let content = self.pack_content();
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
        let is_of_book = content.is_none();
        let Some(content) = content.or_else(|| before.map(|before| before.content)) else {
            self.doubt(Field::PackPrice, CellFault::NoPackContent);
            return None;
        };
        if is_of_book && self.has_column(Field::PackContent) {
            self.doubt(Field::PackContent, CellFault::PackOfBook);
        }
        let price = Price {
            pack,
            content,
            waste_percent,
            date,
        };
        // A price that did not change keeps the day on which it was looked up.
        match before {
            Some(before)
                if is_same_figure(before.pack, pack)
                    && is_same_content(before.content, content) =>
            {
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

/// What a millilitre weighs, g; `None` where nothing is stated that tells it.
pub(super) fn grams_per_millilitre(book: &Book, of: &Ingredient) -> Option<f64> {
    // What nothing is stated of weighs nothing that is known.
    let is_known = of.density.is_some() || !of.composition.printed.is_empty();
    let mix = per_gram(of, &mut Slots::default()).mix;
    pack_grams(book, of, &mix, Pack::of_millilitres(1.0)).filter(|_| is_known)
}

/// Whether a price is for so much instead of for a pack, as its unit or heading says: "€/kg", "je Liter", "per 100 g", and not
/// "€/Karton".
fn is_for_an_amount(beside: &str) -> bool {
    let beside = beside.to_lowercase().replace(['/', '(', '['], " / ");
    let apart = |c: char| c.is_whitespace() || matches!(c, ')' | ']' | ',' | '_');
    let is_number = |word: &&str| word.chars().all(|c| c.is_ascii_digit());
    let words = beside.split(apart).filter(|word| !word.is_empty());
    let words: Vec<&str> = words.filter(|word| !is_number(word)).collect();
    let is_unit = |word: &str| mass_or_volume_called(word).is_some() || TONNE.contains(&word);
    words.iter().any(|word| UNIT_PRICES.contains(word))
        || words.iter().enumerate().any(|(at, word)| {
            let is_behind_lead = at > 0 && LEADS.contains(&words[at - 1]);
            is_unit(word) && (is_behind_lead || at + 1 == words.len())
        })
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
        for beside in [
            "€/kg",
            "/kg",
            "kg",
            "je kg",
            "€ per l",
            "€/100 g",
            "€ / Ltr.",
            "EUR/kg netto",
            "per fl oz",
            "€/quart",
            "€/t",
            "(pro 100\u{a0}ml)",
            "Preis je Liter",
            "Preis (€/kg, netto)",
            "Grundpreis in EUR",
        ] {
            assert!(is_for_an_amount(beside), "{beside}");
        }
        for beside in [
            "",
            "€",
            "EUR",
            "netto",
            "$",
            "EUR/Karton",
            "€/Stk",
            "€/VE netto",
        ] {
            assert!(!is_for_an_amount(beside), "{beside}");
        }
        assert!(is_another_currency("USD", "€") && is_another_currency("Fr.", "€"));
        assert!(!is_another_currency("EUR", "€") && !is_another_currency("netto", "€"));
    }
}
