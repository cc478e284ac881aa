//! What a pack costs, said the way it stands on the bill: "11.40 for 1 kg".

use egui::Ui;

use crate::book::{Ingredient, Price};
use crate::quantity::{parse_in_unit, parse_number, show_number};
use crate::ui::counter_area::Counter;
use crate::ui::counter_area::sheet::{Sheet, Spot, date, plain};
use crate::ui::counter_area::table::price_per_kg;
use crate::ui::field::TypingError as _;
use crate::ui::words::quiet_ui;
use crate::workbench::today;

pub(super) fn price_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
) {
    let currency = &counter.book.settings.currency;
    sheet.row(ui, "pack price", |sheet, ui| {
        let shown = before.price.as_ref().map(words).unwrap_or_default();
        let spot = Spot::wide("price", "Price of a pack")
            .width(180.0)
            .hint("such as 11.40 for 1 kg");
        sheet.reading(
            ui,
            spot,
            shown,
            |text| read(text, currency),
            |item, pack| item.type_price(pack, &today()),
        );
        if let Some(price) = price_per_kg(before) {
            quiet_ui(
                ui,
                &format!("{} {currency} per usable kg", show_number(price, 2)),
            );
        }
    });
    let Some(price) = &before.price else { return };
    sheet.row(ui, "of it is lost", |sheet, ui| {
        let spot = Spot::number("waste", "Waste in percent").width(44.0);
        sheet.required(ui, spot, price.waste_percent, |item, percent| {
            if let Some(price) = &mut item.price {
                price.waste_percent = percent;
            }
        });
        quiet_ui(ui, "%, priced on");
        let shown = price.date.clone().unwrap_or_default();
        let spot = Spot::wide("price date", "Day of the price")
            .width(96.0)
            .hint("no day");
        sheet.reading(ui, spot, shown, date, |item, date| {
            if let Some(price) = &mut item.price {
                price.date = date;
            }
        });
    });
}

/// "11.4 for 1000 g".
fn words(price: &Price) -> String {
    format!("{} for {} g", plain(price.pack), plain(price.grams))
}

/// Reads "11.40 for 1 kg", "11,40 € / 500 g"; nothing for an empty text.
fn read(text: &str, currency: &str) -> Result<Option<(f64, f64)>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let wanted = || format!("“{text}” is not a price: enter, for example, 11.40 for 1 kg");
    let (pack, content) = text
        .split_once("for")
        .or_else(|| text.split_once('/'))
        .ok_or_else(wanted)?;
    let number = |text: &str| {
        parse_number(text).map_err(|error| error.said(crate::say::Speaker::without_book()))
    };
    let pack = number(pack.replace(currency, " ").trim())?;
    let content = content.trim().to_lowercase();
    if !["g", "oz", "lb"].iter().any(|unit| content.ends_with(unit)) {
        return Err(format!(
            "the content `{content}` has no unit; expected g, kg, oz or lb"
        ));
    }
    let grams = parse_in_unit(&content, "g")
        .map_err(|error| error.said(crate::say::Speaker::without_book()))?;
    if grams > 0.0 {
        Ok(Some((pack, grams)))
    } else {
        Err(format!("a pack of `{content}` holds nothing"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_price_is_read_as_it_is_said() {
        for text in ["11.40 for 1 kg", "11,40 € / 1000 g", " 11.4 €for 1000g "] {
            assert_eq!(read(text, "€"), Ok(Some((11.4, 1000.0))), "{text}");
        }
        assert_eq!(read("9 for 1 lb", "€"), Ok(Some((9.0, 453.592_37))));
        assert_eq!(
            read("1.050,50 € for 1 000 g", "€"),
            Ok(Some((1050.5, 1000.0)))
        );
        assert!(
            read("1,050 for 1 kg", "€").is_err(),
            "a thousand, or a little more than one"
        );
        assert_eq!(read("", "€"), Ok(None));
    }

    #[test]
    fn half_a_price_is_refused_and_not_guessed() {
        for text in [
            "11.40",
            "11.40 for",
            "11.40 for 1",
            "for 1 kg",
            "cheap for 1 kg",
            "3 for 0 g",
        ] {
            assert!(read(text, "€").is_err(), "{text}");
        }
    }

    #[test]
    fn what_is_shown_can_be_read_again() {
        let price = Price {
            pack: 0.004,
            grams: 1000.0,
            waste_percent: 0.0,
            date: None,
        };
        assert_eq!(read(&words(&price), "€"), Ok(Some((0.004, 1000.0))));
    }
}
