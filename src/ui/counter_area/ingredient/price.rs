//! What a pack costs, said the way it stands on the bill: "11.40 for 1 kg".

use egui::Ui;

use crate::book::{Ingredient, Price};
use crate::quantity::{Pack, PackUnit, excerpt, parse_number, parse_pack};
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::widgets::form::{Entry, REPEATED, Sheet, plain, read_date};
use crate::ui::words::quiet_ui;
use crate::workbench::today;

pub(super) fn price_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
) {
    let speaker = counter.speaker;
    let currency = counter.book.settings.currency.as_str();
    sheet.row(ui, speaker.word("ingredient-price"), |sheet, ui| {
        let shown = before.price.as_ref().map(|price| words(speaker, price));
        let spot = Entry::wide("price", speaker.word("ingredient-price-named"))
            .width(180.0)
            .hint(speaker.word("ingredient-price-hint"));
        sheet.read(
            ui,
            &spot,
            &shown.unwrap_or_default(),
            |text| read(speaker, text, currency),
            |item, pack| item.type_price(pack, &today()),
        );
        if let Some(price) = &before.price
            && let Some(words) = usable_words(speaker, price, currency)
        {
            quiet_ui(ui, &words);
        }
    });
    // The row is there before there is a price: nothing moves when one is typed, and Enter goes past it.
    sheet.row(ui, speaker.word("ingredient-waste"), |sheet, ui| {
        let Some(price) = &before.price else {
            quiet_ui(ui, speaker.word("ingredient-no-price-yet"));
            return;
        };
        let spot = Entry::number("waste", speaker.word("ingredient-waste-named"))
            .width(44.0)
            .aside();
        sheet.required(ui, &spot, price.waste_percent, |item, percent| {
            if let Some(price) = &mut item.price {
                price.waste_percent = percent;
            }
        });
        quiet_ui(ui, speaker.word("ingredient-priced-on"));
        let shown = price.date.clone().unwrap_or_default();
        let spot = Entry::wide("price-date", speaker.word("ingredient-price-day-named"))
            .width(96.0)
            .hint(speaker.word("ingredient-no-day"))
            .aside();
        sheet.read(
            ui,
            &spot,
            &shown,
            |text| read_date(speaker, text),
            |item, date| {
                if let Some(price) = &mut item.price {
                    price.date = date;
                }
            },
        );
    });
}

/// "11.88 € per usable kg, 4 % of the pack wasted"; per litre for what is sold by volume.
fn usable_words(speaker: Speaker<'_>, price: &Price, currency: &str) -> Option<String> {
    let usable = price.content.whole() * price.usable_part();
    let each = 1000.0 * price.pack / usable;
    if usable <= 0.0 || !each.is_finite() {
        return None;
    }
    let unit = match price.content.unit {
        PackUnit::Grams => "kg",
        PackUnit::Millilitres => "l",
    };
    let each = speaker.number(each, 2);
    let waste = price.waste_percent;
    Some(if waste > 0.0 {
        let percent = speaker.digits(&plain(waste));
        say!(speaker, "ingredient-price-usable-wasted", price: each, currency: currency, unit: unit, percent: percent)
    } else {
        say!(speaker, "ingredient-price-usable", price: each, currency: currency, unit: unit)
    })
}

/// "11.4 for 1 kg", as it is read back.
fn words(speaker: Speaker<'_>, price: &Price) -> String {
    let pack = speaker.digits(&plain(price.pack));
    say!(speaker, "ingredient-price-for", price: pack, content: speaker.pack(price.content))
}

/// What stands between a price and the content of its pack: the words of the language, and what bills of every language have.
fn between(speaker: Speaker<'_>) -> [String; 3] {
    let mark = "\u{0}";
    let shown = say!(speaker, "ingredient-price-for", price: mark, content: mark);
    let words = shown.split(mark).nth(1).unwrap_or_default();
    [words.trim().to_owned(), "for".to_owned(), "/".to_owned()]
}

/// Reads "11.40 for 1 kg", "8,60 € / 750 ml", "109 for 12 x 1 kg"; nothing for an empty text.
fn read(speaker: Speaker<'_>, text: &str, currency: &str) -> Result<Option<(f64, Pack)>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let (pack, content) = between(speaker)
        .iter()
        .filter(|words| !words.is_empty())
        .find_map(|words| text.split_once(words.as_str()))
        .ok_or_else(
            || say!(speaker, "ingredient-price-not-read", found: excerpt(text, REPEATED)),
        )?;
    let pack = match currency {
        "" => pack.to_owned(),
        currency => pack.replace(currency, " "),
    };
    let pack = parse_number(pack.trim()).map_err(|error| speaker.number_error(&error))?;
    let content = content.trim();
    let found = excerpt(content, REPEATED);
    match parse_pack(content, None, "") {
        Ok(content) if content.whole() > 0.0 => Ok(Some((pack, content))),
        Ok(_) => Err(say!(speaker, "ingredient-price-of-nothing", found: found)),
        Err(error) => Err(speaker.pack_error(&error, &found)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    fn read(text: &str, currency: &str) -> Result<Option<(f64, Pack)>, String> {
        super::read(Speaker::without_book(), text, currency)
    }

    #[test]
    fn a_price_is_read_as_it_is_said() {
        for text in ["11.40 for 1 kg", "11,40 € / 1000 g", " 11.4 €for 1000g "] {
            assert_eq!(
                read(text, "€"),
                Ok(Some((11.4, Pack::of_grams(1000.0)))),
                "{text}"
            );
        }
        assert_eq!(
            read("9 for 1 lb", "€"),
            Ok(Some((9.0, Pack::of_grams(453.592_37))))
        );
        assert_eq!(
            read("1.050,50 € for 1 000 g", "€"),
            Ok(Some((1050.5, Pack::of_grams(1000.0))))
        );
        assert!(
            read("1,050 for 1 kg", "€").is_err(),
            "a thousand, or a little more than one"
        );
        assert_eq!(
            read("8.60 for 0,75 l", "€"),
            Ok(Some((8.6, Pack::of_millilitres(750.0))))
        );
        let case = Pack {
            count: 12.0,
            ..Pack::of_grams(1000.0)
        };
        for text in [
            "109 for 12 x 1 kg",
            "109 for case of 12 × 1 kg",
            "109 / 12x1kg",
        ] {
            assert_eq!(read(text, "€"), Ok(Some((109.0, case))), "{text}");
        }
        assert_eq!(read("", "€"), Ok(None));
        assert_eq!(
            read("11.40 for 1 kg", ""),
            Ok(Some((11.4, Pack::of_grams(1000.0))))
        );
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
            "3 for 12 bags",
            "3 for 1 kg or so",
        ] {
            assert!(read(text, "€").is_err(), "{text}");
        }
    }

    #[test]
    fn what_is_shown_can_be_read_again_in_every_language_and_so_can_english() {
        let price = Price {
            pack: 0.004,
            content: Pack::of_grams(1000.0),
            waste_percent: 0.0,
            date: None,
        };
        let english = words(Speaker::without_book(), &price);
        assert_eq!(english, "0.004 for 1\u{a0}kg");
        for language in Language::all() {
            let speaker = Speaker::without_book().in_language(language);
            for text in [words(speaker, &price), english.clone()] {
                let read = super::read(speaker, &text, "€");
                assert_eq!(
                    read,
                    Ok(Some((0.004, Pack::of_grams(1000.0)))),
                    "{language:?}: {text}"
                );
            }
            let hint = speaker.word("ingredient-price-hint");
            let example = &hint[hint.find(|first: char| first.is_ascii_digit()).unwrap()..];
            let read = super::read(speaker, example, "€");
            assert_eq!(
                read,
                Ok(Some((11.4, Pack::of_grams(1000.0)))),
                "{language:?}: {hint}"
            );
        }
        let german = Speaker::without_book().in_language(Language::from_code("de").unwrap());
        assert_eq!(words(german, &price), "0,004 für 1\u{a0}kg");
    }
}
