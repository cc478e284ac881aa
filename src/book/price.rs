//! What a pack costs, and what it cost before.

use crate::quantity::Pack;

/// What a pack costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Price {
    /// Price of the pack, in the book's currency, without sales tax.
    pub pack: f64,
    /// What the pack holds, as it is printed: what a bottle weighs follows from what is in it.
    pub content: Pack,
    /// What is lost of it, percent.
    pub waste_percent: f64,
    /// Day of the price, `2026-05-04`.
    pub date: Option<String>,
}

impl Price {
    /// Part of the pack that can be used.
    pub fn usable_part(&self) -> f64 {
        1.0 - self.waste_percent / 100.0
    }
}

/// What a supplier calls an ingredient in its lists.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Article {
    /// Who sells it; empty where a list names nobody.
    pub supplier: String,
    /// The number of the article or, where there is none, its brand and name as the list has them.
    pub article: String,
}

/// What a pack cost before its price changed.
#[derive(Clone, Debug, PartialEq)]
pub struct EarlierPrice {
    /// Price of the pack, in the book's currency, without sales tax.
    pub pack: f64,
    /// What the pack holds, as it is printed.
    pub content: Pack,
    /// Day of the price, `2026-05-04`.
    pub date: Option<String>,
    /// Who sold it.
    pub supplier: String,
}
