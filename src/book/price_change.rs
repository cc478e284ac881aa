//! How the price of an ingredient changes, and what it was before.

use super::Ingredient;
use super::price::{EarlierPrice, Price};

/// A price of an ingredient as a row of its history.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceInTime<'item> {
    /// Price of the pack.
    pub pack: f64,
    /// Usable content of the pack, g.
    pub grams: f64,
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
                grams: price.grams,
                date: price.date.clone(),
                supplier: self.supplier.clone(),
            });
        }
    }

    /// Another price of a pack, or none, typed on `day`.
    ///
    /// The one before is kept. A price of the same day is not: whoever types "1.20" comes by "1" and "1.2", and a slip that is
    /// put right at once was never paid. Typed back to what it was before that day, everything is as it was.
    pub fn type_price(&mut self, pack_and_grams: Option<(f64, f64)>, day: &str) {
        let before = self.price.as_ref();
        let stands = |price: &Price| Some((price.pack, price.grams)) == pack_and_grams;
        if before.is_some_and(stands) {
            return;
        }
        let waste_percent = before.map_or(0.0, |price| price.waste_percent);
        let is_of_today = |price: &Price| price.date.as_deref() == Some(day);
        let was =
            |earlier: &mut EarlierPrice| Some((earlier.pack, earlier.grams)) == pack_and_grams;
        if before.is_none_or(is_of_today)
            && let Some(last) = self.earlier_prices.pop_if(was)
        {
            self.price = Some(Price {
                pack: last.pack,
                grams: last.grams,
                waste_percent,
                date: last.date,
            });
            return;
        }
        if !before.is_some_and(is_of_today) {
            self.keep_earlier_price();
        }
        self.price = pack_and_grams.map(|(pack, grams)| Price {
            pack,
            grams,
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
            let same_price = is_same(before.pack, price.pack) && is_same(before.grams, price.grams);
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
                grams: price.grams,
                date: price.date.as_deref(),
                supplier: &price.supplier,
                change_percent: None,
                earlier: Some(at),
            });
        let today = self.price.as_ref().map(|price| PriceInTime {
            pack: price.pack,
            grams: price.grams,
            date: price.date.as_deref(),
            supplier: &self.supplier,
            change_percent: None,
            earlier: None,
        });
        let mut rows: Vec<PriceInTime<'_>> = earlier.chain(today).collect();
        for at in 1..rows.len() {
            let [before, now] = [at - 1, at].map(|at| rows[at].pack / rows[at].grams);
            let change = 100.0 * (now / before - 1.0);
            rows[at].change_percent = change.is_finite().then_some(change);
        }
        rows.reverse();
        rows
    }
}

/// Whether two figures of a price are one: a number that went through a table is not always the same to the last bit.
pub(super) fn is_same(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * one.abs().max(other.abs())
}
