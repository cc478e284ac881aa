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
            grams: 500.0,
            waste_percent: 4.0,
            date: Some(date.into()),
        });
        item
    }

    #[test]
    fn a_price_typed_letter_by_letter_keeps_only_what_was_paid() {
        let mut item = priced(10.0, "2026-01-05");
        for pack in [1.0, 12.0, 12.5] {
            item.type_price(Some((pack, 500.0)), "2026-06-01");
        }
        let price = item.price.as_ref().unwrap();
        assert_eq!((price.pack, price.waste_percent), (12.5, 4.0));
        assert_eq!(price.date.as_deref(), Some("2026-06-01"));
        let paid = EarlierPrice {
            pack: 10.0,
            grams: 500.0,
            date: Some("2026-01-05".into()),
            supplier: "Ombery".into(),
        };
        assert_eq!(item.earlier_prices, [paid]);
    }

    #[test]
    fn typed_back_or_emptied_and_typed_again_it_is_as_it_was() {
        let before = priced(10.0, "2026-01-05");
        let mut item = before.clone();
        item.type_price(Some((11.0, 500.0)), "2026-06-01");
        item.type_price(Some((10.0, 500.0)), "2026-06-01");
        assert_eq!(item, before);
        item.type_price(None, "2026-06-01");
        assert_eq!((&item.price, item.earlier_prices.len()), (&None, 1));
        item.type_price(Some((11.0, 500.0)), "2026-06-01");
        assert_eq!(item.earlier_prices.len(), 1);
    }

    #[test]
    fn the_history_is_newest_first_and_compares_what_a_gram_costs() {
        let mut item = priced(10.0, "2026-01-05");
        item.type_price(Some((20.0, 1000.0)), "2026-03-01");
        item.type_price(Some((25.0, 1000.0)), "2026-06-01");
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
