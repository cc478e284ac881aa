//! What is left of the menu price: price less sales tax less what the drink costs.

use super::balance::Balance;
use crate::balance::measurand::Measurand;
use crate::book::{Book, IngredientId};
use crate::quantity::Uncertain;

/// The margin of a drink, in the book's currency.
#[derive(Clone, Debug, PartialEq)]
pub struct Margin {
    /// Price on the menu, sales tax included.
    pub menu_price: f64,
    /// Sales tax in it; `None` when the shop has not stated the rate.
    pub sales_tax: Option<f64>,
    /// Price less sales tax, as far as it is stated.
    pub net_price: f64,
    /// Price less sales tax less cost: at most this when [`Margin::is_at_most`].
    pub margin: Uncertain,
    /// Margin as a part of the net price, percent; `None` for a drink that is given away.
    pub percent: Option<Uncertain>,
    /// Whether a price or the sales tax is missing, so that less may be left.
    pub is_at_most: bool,
    /// Ingredients without a price.
    pub missing: Vec<IngredientId>,
}

/// The margin of a drink; `None` without a menu price.
///
/// `net = menu price / (1 + rate)`; the cost is that of the whole drink with cup, closure, straw and sleeve.
pub fn margin(book: &Book, balance: &Balance) -> Option<Margin> {
    let menu_price = balance.resolved.menu_price?;
    let cost = balance.reported(Measurand::Cost);
    let rate = book
        .settings
        .sales_tax_percent
        .map(|percent| percent / 100.0);
    let net_price = menu_price / (1.0 + rate.unwrap_or(0.0));
    let margin = Uncertain {
        value: net_price - cost.value?,
        u: cost.u.unwrap_or(0.0),
    };
    Some(Margin {
        menu_price,
        sales_tax: rate.map(|_| menu_price - net_price),
        net_price,
        margin,
        percent: (net_price > 0.0).then(|| Uncertain {
            value: margin.value / net_price * 100.0,
            u: margin.u / net_price * 100.0,
        }),
        is_at_most: rate.is_none() || balance.figures.missing(Measurand::Cost) != 0,
        missing: cost.missing,
    })
}
