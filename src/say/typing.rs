//! Why what a person typed is not taken.

use super::{Speaker, say};
use crate::book::{Amount, AmountWordError, LARGEST_AMOUNT};
use crate::quantity::{AmountTextError, NumberError, name_as_shown};

impl Speaker<'_> {
    /// Why a text is not a number.
    pub fn number_error(&self, error: &NumberError) -> String {
        match error {
            NumberError::Missing => self.word("number-error-missing").to_owned(),
            NumberError::NotANumber { found } => {
                say!(self, "number-error-not-a-number", found: found)
            }
            NumberError::Ambiguous {
                found,
                thousands,
                decimals,
            } => say!(
                self,
                "number-error-ambiguous",
                found: found,
                thousands: thousands,
                decimals: decimals,
            ),
            NumberError::AnotherUnit { found, unit } => {
                say!(self, "number-error-another-unit", found: found, unit: unit)
            }
            NumberError::OutOfRange { found } => {
                say!(self, "number-error-out-of-range", found: found)
            }
        }
    }

    /// Why a text is not an amount.
    pub fn amount_text_error(&self, error: &AmountTextError) -> String {
        match error {
            AmountTextError::Number(error) => self.number_error(error),
            AmountTextError::Negative { found } => {
                say!(self, "amount-error-negative", found: found)
            }
            AmountTextError::FillTarget { found } => {
                say!(self, "amount-error-fill-target", found: found)
            }
        }
    }

    /// Why a typed amount means nothing in this book.
    pub fn amount_error(&self, error: &AmountWordError) -> String {
        match error {
            AmountWordError::Text(error) => self.amount_text_error(error),
            AmountWordError::TooMuch { amount } => {
                // The most is the same number of whatever is counted; of what fills up, it is a volume.
                let most = match amount {
                    Amount::FillTo(_) => Amount::Millilitres(LARGEST_AMOUNT),
                    other => other.with_number(LARGEST_AMOUNT),
                };
                let shown = |amount| self.amount(amount);
                say!(self, "amount-error-too-much", found: shown(amount), most: shown(&most))
            }
            AmountWordError::NoMeasure { word, known } => {
                let units = ["g", "ml"].into_iter().map(str::to_owned);
                let words = known.iter().map(|kind| self.uses_word(*kind));
                let known: Vec<String> = units.chain(words).collect();
                say!(
                    self,
                    "amount-error-no-measure",
                    word: name_as_shown(word),
                    known: self.or(&known),
                )
            }
            AmountWordError::Ambiguous { word, candidates } => {
                let names: Vec<String> = candidates.iter().map(|id| self.measure(id)).collect();
                say!(
                    self,
                    "amount-error-several-measures",
                    word: name_as_shown(word),
                    candidates: self.or(&names),
                )
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Book, MeasureId};
    use crate::quantity::parse_amount;

    #[test]
    fn what_is_typed_wrong_is_told_with_what_to_type() {
        let speaker = Speaker::without_book();
        for (text, words) in [
            ("", "a number is missing; enter, for example, 2, 7.5 or 1½"),
            (
                "1..5 g",
                "“1..5” is not a number; enter, for example, 2, 7.5 or 1½",
            ),
            (
                "1,000 ml",
                "“1,000” can be read as 1000 or as 1.0000; enter 1000 or 1.0000",
            ),
            ("-2 g", "“-2 g” is less than nothing; enter 0 or more"),
            (
                "to 5 g",
                "“to 5 g” is not a fill amount; type “to 500 ml” or “to the rim”",
            ),
        ] {
            let error = parse_amount(text).unwrap_err();
            assert_eq!(speaker.amount_text_error(&error), words);
        }
    }

    #[test]
    fn an_amount_that_means_nothing_in_a_book_is_told_with_the_words_of_the_book() {
        let book = Book::default();
        let speaker = Speaker::new(&book);
        let said = |text: &str| {
            let error = book.amount_from_text(text, None, None).unwrap_err();
            speaker.amount_error(&error)
        };
        assert_eq!(said("2 scoops"), "no measure matches “scoops”; use g or ml");
        assert_eq!(
            said("20000 g"),
            "20000 g is more than a line can have; enter 10000 g or less"
        );
        let candidates = ["brown", "white"].map(|id| MeasureId::new(id).unwrap());
        let several = AmountWordError::Ambiguous {
            word: "scoops".into(),
            candidates: candidates.into(),
        };
        assert_eq!(
            speaker.amount_error(&several),
            "“scoops” could be brown or white; type the full name"
        );
    }
}
