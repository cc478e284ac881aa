//! Figures in words: value, uncertainty and unit, or what is missing for them.

use crate::balance::{Balance, Measurand, Reported};
use crate::book::{Axis, Book};
use crate::say::{Speaker, say};

/// "20.3 ± 1.1 g", "at least 20.3 ± 1.1 g (not stated: Velloom oat creamer)", "not known (…)".
pub fn figure_words(speaker: &Speaker<'_>, reported: &Reported, unit: &str) -> String {
    let missing = match (reported.missing.is_empty(), reported.reason) {
        (false, _) => {
            let names = speaker.ingredients(&reported.missing);
            Some(say!(speaker, "card-figure-not-stated", names: names))
        }
        (true, reason) => reason.map(|reason| speaker.no_figure(reason).to_owned()),
    };
    let Some(value) = reported.value else {
        return match missing {
            Some(missing) => say!(speaker, "card-figure-not-known-because", reason: missing),
            None => speaker.word("card-figure-not-known").to_owned(),
        };
    };
    let figure = with_uncertainty(speaker, value, reported.u, unit);
    match missing {
        // Nothing is known of it: "at least 0" would read like a figure.
        Some(missing) if value == 0.0 => {
            say!(speaker, "card-figure-not-known-because", reason: missing)
        }
        Some(missing) => say!(speaker, "card-figure-at-least", figure: figure, reason: missing),
        None => figure,
    }
}

/// "20.3 ± 1.1 g".
pub(super) fn with_uncertainty(
    speaker: &Speaker<'_>,
    value: f64,
    u: Option<f64>,
    unit: &str,
) -> String {
    speaker.figure(value, u, unit)
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
pub(super) fn balance_words(
    speaker: &Speaker<'_>,
    balance: &Balance,
    measurand: Measurand,
) -> String {
    figure_words(
        speaker,
        &balance.reported(measurand),
        unit_of(speaker.book, measurand),
    )
}

/// A noticeable step of an axis with its unit; one of temperature is a difference.
pub(super) fn step_words(speaker: &Speaker<'_>, axis: &Axis, step: f64) -> String {
    let unit = if *axis == Axis::Temperature {
        "K"
    } else {
        axis.unit()
    };
    speaker.trimmed(step, unit, if step < 10.0 { 2 } else { 0 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::NoFigure;
    use crate::book::IngredientId;

    fn reported(value: Option<f64>, missing: &[&str], reason: Option<NoFigure>) -> Reported {
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
                reported(None, &[], Some(NoFigure::Cup)),
                "not known (no cup is chosen)",
            ),
        ] {
            assert_eq!(figure_words(&Speaker::new(&book), &reported, "g"), words);
        }
    }
}
