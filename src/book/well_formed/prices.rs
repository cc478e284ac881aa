//! Prices that are older than the rest of the book.

use super::checklist::Checklist;
use crate::book::{Book, Day, FindingKind, Place};

/// A price older than this, in months, is worth a call to the supplier (common practice, no source).
const STALE_MONTHS: u32 = 12;

/// Reports prices that are more than a year older than the newest day in the book. A book is checked without a clock: what was
/// right when it was last worked on does not become wrong by lying in a drawer.
pub(super) fn check_age(book: &Book, list: &mut Checklist) {
    let Some((today, newest)) = newest_day(book) else {
        return;
    };
    for item in &book.ingredients {
        let Some(text) = item.price.as_ref().and_then(|price| price.date.as_deref()) else {
            continue;
        };
        let Some(months) = Day::from_text(text).map(|day| day.months_until(today)) else {
            continue;
        };
        if months >= STALE_MONTHS {
            let kind = FindingKind::StalePrice {
                date: text.to_owned(),
                months,
                newest: newest.to_owned(),
            };
            list.warning(Place::Ingredient(item.id.clone(), "price"), kind);
        }
    }
}

/// The newest day of a price, a reading or an approval.
fn newest_day(book: &Book) -> Option<(Day, &str)> {
    let prices = book
        .ingredients
        .iter()
        .filter_map(|item| item.price.as_ref()?.date.as_deref());
    let readings = book
        .measures
        .iter()
        .flat_map(|item| &item.readings)
        .filter_map(|reading| reading.date.as_deref());
    let approvals = book
        .recipes
        .iter()
        .flat_map(|item| &item.approvals)
        .map(|approval| approval.date.as_str());
    prices
        .chain(readings)
        .chain(approvals)
        .filter_map(|text| Some((Day::from_text(text)?, text)))
        .max()
}
