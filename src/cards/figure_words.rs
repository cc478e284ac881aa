//! Figures in words: value, uncertainty and unit, or what is missing for them.

use crate::balance::{Balance, Measurand, Reported};
use crate::book::{Book, IngredientId};
use crate::quantity::rounded;

/// "20.3 ± 1.1 g", "at least 20.3 ± 1.1 g (not stated: Velloom oat creamer)", "not known (…)".
pub fn figure_words(book: &Book, reported: &Reported, unit: &str) -> String {
    let names = names_of(book, &reported.missing);
    let missing = match (names.is_empty(), reported.reason) {
        (false, _) => Some(format!("not stated: {names}")),
        (true, reason) => reason.map(str::to_owned),
    };
    let Some(value) = reported.value else {
        return missing.map_or_else(
            || "not known".to_owned(),
            |missing| format!("not known ({missing})"),
        );
    };
    let figure = with_uncertainty(value, reported.u, unit);
    match missing {
        // Nothing is known of it: "at least 0" would read like a figure.
        Some(missing) if value == 0.0 => format!("not known ({missing})"),
        Some(missing) => format!("at least {figure} ({missing})"),
        None => figure,
    }
}

/// "20.3 ± 1.1 g".
pub(super) fn with_uncertainty(value: f64, u: Option<f64>, unit: &str) -> String {
    let shown = rounded(value, u);
    let plus_minus = shown.u.map_or_else(String::new, |u| format!(" ± {u}"));
    let space = if unit.is_empty() { "" } else { "\u{a0}" };
    format!("{}{plus_minus}{space}{unit}", shown.value)
}

/// The unit of a figure in this book; that of cost is the book's currency.
pub fn unit_of(book: &Book, measurand: Measurand) -> &str {
    if measurand == Measurand::Cost {
        &book.settings.currency
    } else {
        measurand.unit()
    }
}

/// A figure of a balance in words.
pub(super) fn balance_words(book: &Book, balance: &Balance, measurand: Measurand) -> String {
    figure_words(book, &balance.reported(measurand), unit_of(book, measurand))
}

/// Names of ingredients, joined by commas.
pub(super) fn names_of<'id>(
    book: &Book,
    ids: impl IntoIterator<Item = &'id IngredientId>,
) -> String {
    let names: Vec<String> = ids.into_iter().map(|id| name_of(book, id)).collect();
    names.join(", ")
}

/// The name of an ingredient; its id when it is gone.
pub(super) fn name_of(book: &Book, id: &IngredientId) -> String {
    book.ingredient(id)
        .map_or_else(|| id.to_string(), |item| item.full_name())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reported(value: Option<f64>, missing: &[&str], reason: Option<&'static str>) -> Reported {
        Reported {
            value,
            u: value.map(|_| 1.1),
            missing: missing
                .iter()
                .map(|id| IngredientId::new(id).unwrap())
                .collect(),
            reason,
        }
    }

    #[test]
    fn what_is_not_stated_is_said_and_never_becomes_zero() {
        let book = Book::default();
        for (reported, words) in [
            (reported(Some(20.31), &[], None), "20.3 ± 1.1\u{a0}g"),
            (
                reported(Some(0.0), &["powder"], None),
                "not known (not stated: powder)",
            ),
            (
                reported(Some(3.0), &["powder"], None),
                "at least 3.0 ± 1.1\u{a0}g (not stated: powder)",
            ),
            (
                reported(None, &["powder"], None),
                "not known (not stated: powder)",
            ),
            (
                reported(None, &[], Some("no cup is named")),
                "not known (no cup is named)",
            ),
        ] {
            assert_eq!(figure_words(&book, &reported, "g"), words);
        }
    }
}
