//! How the price of an ingredient changes, and what it was before.

use super::Ingredient;
use super::price::{EarlierPrice, Price};
use crate::quantity::{Pack, PackUnit};

/// A price of an ingredient as a row of its history.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceInTime<'item> {
    /// Price of the pack.
    pub pack: f64,
    /// What the pack holds, as it is printed.
    pub content: Pack,
    /// Day of the price.
    pub date: Option<&'item str>,
    /// Who sold it.
    pub supplier: &'item str,
    /// How much more a gram cost than before, in percent; `None` for the first price and after one of nothing.
    pub change_percent: Option<f64>,
    /// Its number among the earlier prices, from 0; `None` for the price of today.
    pub earlier: Option<usize>,
}

impl Ingredient {
    /// Keeps the price among the earlier ones: another one is going to stand in its place.
    fn keep_earlier_price(&mut self) {
        if let Some(price) = &self.price {
            self.earlier_prices.push(EarlierPrice {
                pack: price.pack,
                content: price.content,
                date: price.date.clone(),
                supplier: self.supplier.clone(),
            });
        }
    }

    /// Another price of a pack, or none, typed on `day`.
    ///
    /// The one before is kept. A price of the same day is not: whoever types "1.20" comes by "1" and "1.2", and a slip that is
    /// put right at once was never paid. Typed back to what it was before that day, everything is as it was.
    pub fn type_price(&mut self, stated: Option<(f64, Pack)>, day: &str) {
        let before = self.price.as_ref();
        let stands = |price: &Price| Some((price.pack, price.content)) == stated;
        if before.is_some_and(stands) {
            return;
        }
        let waste_percent = before.map_or(0.0, |price| price.waste_percent);
        let is_of_today = |price: &Price| price.date.as_deref() == Some(day);
        let was = |earlier: &mut EarlierPrice| Some((earlier.pack, earlier.content)) == stated;
        if before.is_none_or(is_of_today)
            && let Some(last) = self.earlier_prices.pop_if(was)
        {
            self.price = Some(Price {
                pack: last.pack,
                content: last.content,
                waste_percent,
                date: last.date,
            });
            return;
        }
        if !before.is_some_and(is_of_today) {
            self.keep_earlier_price();
        }
        self.price = stated.map(|(pack, content)| Price {
            pack,
            content,
            waste_percent,
            date: (!day.is_empty()).then(|| day.to_owned()),
        });
    }

    /// Another price of a pack, read in a list of `supplier`; of the one before where the list names none.
    ///
    /// The one before is kept, but not one of the same day from the same supplier: the list is what stands of that day, as the
    /// last of several prices that are typed does. Two suppliers may well ask two prices on one day; both are kept.
    pub fn bring_in_price(&mut self, price: Price, supplier: &str) {
        let same_supplier = supplier.is_empty() || supplier == self.supplier;
        let is_replaced = |before: &Price| {
            let same_day = before.date.is_some() && before.date == price.date;
            let same_price = is_same_figure(before.pack, price.pack)
                && is_same_content(before.content, price.content);
            same_price || same_day && same_supplier
        };
        if !self.price.as_ref().is_some_and(is_replaced) {
            self.keep_earlier_price();
        }
        self.price = Some(price);
    }

    /// The price of today and those before it, the newest first.
    pub fn price_history(&self) -> Vec<PriceInTime<'_>> {
        let earlier = self
            .earlier_prices
            .iter()
            .enumerate()
            .map(|(at, price)| PriceInTime {
                pack: price.pack,
                content: price.content,
                date: price.date.as_deref(),
                supplier: &price.supplier,
                change_percent: None,
                earlier: Some(at),
            });
        let today = self.price.as_ref().map(|price| PriceInTime {
            pack: price.pack,
            content: price.content,
            date: price.date.as_deref(),
            supplier: &self.supplier,
            change_percent: None,
            earlier: None,
        });
        let mut rows: Vec<PriceInTime<'_>> = earlier.chain(today).collect();
        for at in 1..rows.len() {
            rows[at].change_percent = self.change_percent(&rows[at - 1], &rows[at]);
        }
        rows.reverse();
        rows
    }

    /// How much more the same amount costs, in percent. A bottle and a bag are compared where a density is stated.
    fn change_percent(&self, before: &PriceInTime<'_>, now: &PriceInTime<'_>) -> Option<f64> {
        let density = self.density.map(|figure| figure.value);
        let price = |row: &PriceInTime<'_>| (row.pack, row.content);
        dearer_by(price(before), price(now), density)
    }
}

/// How much more the same amount costs, in percent: of two prices of a pack, each with what the pack holds. `None` after a price
/// of nothing, and between a bottle and a bag where nobody knows what a millilitre weighs, g.
pub fn dearer_by(
    before: (f64, Pack),
    now: (f64, Pack),
    grams_per_millilitre: Option<f64>,
) -> Option<f64> {
    let is_in_same_unit = before.1.unit == now.1.unit;
    let each = |(price, content): (f64, Pack)| {
        let amount = match content.unit {
            PackUnit::Millilitres if !is_in_same_unit => content.whole() * grams_per_millilitre?,
            _ => content.whole(),
        };
        Some(price / amount)
    };
    let change = 100.0 * (each(now)? / each(before)? - 1.0);
    change.is_finite().then_some(change)
}

/// Whether two packs hold the same, as twelve bags and a case of twelve bags do.
pub fn is_same_content(one: Pack, other: Pack) -> bool {
    one.unit == other.unit && is_same_figure(one.whole(), other.whole())
}

/// Whether two figures are one: a number that went through a table is not always the same to the last bit.
pub fn is_same_figure(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * one.abs().max(other.abs())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book_file::built_in_book;

    fn priced(pack: f64, date: &str) -> Ingredient {
        let book = built_in_book().unwrap();
        let mut item = book.ingredients.iter().next().unwrap().as_ref().clone();
        item.supplier = "Ombery".into();
        item.earlier_prices.clear();
        item.price = Some(Price {
            pack,
            content: Pack::of_grams(500.0),
            waste_percent: 4.0,
            date: Some(date.into()),
        });
        item
    }

    #[test]
    fn a_price_typed_letter_by_letter_keeps_only_what_was_paid() {
        let mut item = priced(10.0, "2026-01-05");
        for pack in [1.0, 12.0, 12.5] {
            item.type_price(Some((pack, Pack::of_grams(500.0))), "2026-06-01");
        }
        let price = item.price.as_ref().unwrap();
        assert_eq!((price.pack, price.waste_percent), (12.5, 4.0));
        assert_eq!(price.date.as_deref(), Some("2026-06-01"));
        let paid = EarlierPrice {
            pack: 10.0,
            content: Pack::of_grams(500.0),
            date: Some("2026-01-05".into()),
            supplier: "Ombery".into(),
        };
        assert_eq!(item.earlier_prices, [paid]);
    }

    #[test]
    fn typed_back_or_emptied_and_typed_again_it_is_as_it_was() {
        let before = priced(10.0, "2026-01-05");
        let mut item = before.clone();
        item.type_price(Some((11.0, Pack::of_grams(500.0))), "2026-06-01");
        item.type_price(Some((10.0, Pack::of_grams(500.0))), "2026-06-01");
        assert_eq!(item, before);
        item.type_price(None, "2026-06-01");
        assert_eq!((&item.price, item.earlier_prices.len()), (&None, 1));
        item.type_price(Some((11.0, Pack::of_grams(500.0))), "2026-06-01");
        assert_eq!(item.earlier_prices.len(), 1);
    }

    #[test]
    fn the_history_is_newest_first_and_compares_what_a_gram_costs() {
        let mut item = priced(10.0, "2026-01-05");
        item.type_price(Some((20.0, Pack::of_grams(1000.0))), "2026-03-01");
        item.type_price(Some((25.0, Pack::of_grams(1000.0))), "2026-06-01");
        let rows = item.price_history();
        let changes: Vec<Option<f64>> = rows.iter().map(|row| row.change_percent).collect();
        assert_eq!(changes, [Some(25.0), Some(0.0), None]);
        assert_eq!(rows[0].earlier, None);
        assert_eq!(
            (rows[1].earlier, rows[1].date),
            (Some(1), Some("2026-03-01"))
        );
    }
}
