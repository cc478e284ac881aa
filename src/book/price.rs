//! What a pack costs, and what it cost before.

/// What a pack costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Price {
    /// Price of the pack, in the book's currency, without sales tax.
    pub pack: f64,
    /// Usable content of the pack, g.
    pub grams: f64,
    /// What is lost of it, percent.
    pub waste_percent: f64,
    /// Day of the price, `2026-05-04`.
    pub date: Option<String>,
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
    /// Usable content of the pack, g.
    pub grams: f64,
    /// Day of the price, `2026-05-04`.
    pub date: Option<String>,
    /// Who sold it.
    pub supplier: String,
}
