//! Amounts read the way they are said at the counter.

use super::LARGEST_AMOUNT;
use crate::book::{Amount, Book, Form, Ingredient, Item, Measure, MeasureId, MeasureKind};
use crate::quantity::{AmountTextError, DisplayUnits, TypedAmount, TypedUnit, parse_amount};

/// Why a typed amount means nothing in this book.
#[derive(Clone, Debug, PartialEq)]
pub enum AmountWordError {
    /// The text is no amount.
    Text(AmountTextError),
    /// More than any cup of a counter holds.
    TooMuch {
        /// The amount.
        amount: Amount,
    },
    /// No measure of the shop answers to the word.
    NoMeasure {
        /// The word.
        word: String,
        /// Kinds of measures whose words would have been understood, beside grams and millilitres.
        known: Vec<MeasureKind>,
    },
    /// Several measures answer to the word and none was weighed with the ingredient, or what answers is no measure for it.
    Ambiguous {
        /// The word.
        word: String,
        /// The measures.
        candidates: Vec<MeasureId>,
    },
}

impl From<AmountTextError> for AmountWordError {
    fn from(error: AmountTextError) -> Self {
        Self::Text(error)
    }
}

impl Book {
    /// Reads a typed amount for an ingredient. A bare number keeps the unit of `current`; a word such as "scoops" means the
    /// measure of `current` when it is one, else the one that was weighed with the ingredient, else the only one there is.
    pub fn amount_from_text(
        &self,
        text: &str,
        ingredient: Option<&Ingredient>,
        current: Option<&Amount>,
    ) -> Result<Amount, AmountWordError> {
        self.amount_from_text_in(text, ingredient, current, DisplayUnits::METRIC)
    }

    /// The same where a person reads volumes in another unit: a bare number in place of a volume is in that unit.
    pub fn amount_from_text_in(
        &self,
        text: &str,
        ingredient: Option<&Ingredient>,
        current: Option<&Amount>,
        units: DisplayUnits,
    ) -> Result<Amount, AmountWordError> {
        let TypedAmount { number, unit } = parse_amount(text)?;
        let volume = |number: f64| units.of("ml").kept(number);
        let amount = match unit {
            TypedUnit::Grams => Amount::Grams(number),
            TypedUnit::Millilitres => Amount::Millilitres(number),
            TypedUnit::FillToMillilitres => Amount::FillTo(number),
            TypedUnit::FillToNumber => Amount::FillTo(volume(number)),
            TypedUnit::FillToRim => Amount::FillToRim,
            TypedUnit::None => match current {
                Some(Amount::FillToRim) | None => Amount::Grams(number),
                Some(current @ (Amount::Millilitres(_) | Amount::FillTo(_))) => {
                    current.with_number(volume(number))
                }
                Some(current) => current.with_number(number),
            },
            TypedUnit::Word(word) => {
                let current = match current {
                    Some(Amount::Count(_, measure)) => Some(measure),
                    _ => None,
                };
                Amount::Count(number, self.measure_called(&word, ingredient, current)?)
            }
        };
        if amount
            .number()
            .is_some_and(|number| number > LARGEST_AMOUNT)
        {
            return Err(AmountWordError::TooMuch { amount });
        }
        Ok(amount)
    }

    fn measure_called(
        &self,
        word: &str,
        ingredient: Option<&Ingredient>,
        current: Option<&MeasureId>,
    ) -> Result<MeasureId, AmountWordError> {
        let all = self.measures.iter().map(AsRef::as_ref);
        let matching = match ingredient {
            Some(ingredient) if ingredient.form == Form::Ice => {
                measures_of_ice(all, word, ingredient)
            }
            _ => all.filter(|measure| answers_to(measure, word)).collect(),
        };
        let weighed = |measure: &&&Measure| {
            ingredient
                .is_some_and(|ingredient| measure.calibration(Some(ingredient.id())).is_some())
        };
        let chosen = match matching.as_slice() {
            [] => {
                return Err(AmountWordError::NoMeasure {
                    word: word.to_owned(),
                    known: self.measure_kinds(),
                });
            }
            [only] if fits(only, word, ingredient) => only,
            several => several
                .iter()
                .find(|measure| Some(&measure.id) == current)
                .or_else(|| several.iter().find(weighed))
                .map_or_else(|| self.used_with(several, word, ingredient), Ok)?,
        };
        Ok(chosen.id.clone())
    }

    /// Of several measures the one that recipes of the book use with an ingredient. When they use several, the person is
    /// asked which of those; when they use none, which of all.
    fn used_with<'a, 'book>(
        &self,
        several: &'a [&'book Measure],
        word: &str,
        ingredient: Option<&Ingredient>,
    ) -> Result<&'a &'book Measure, AmountWordError> {
        let lines = || {
            let recipes = self.recipes.iter().flat_map(|recipe| &recipe.entries);
            recipes.filter_map(|entry| entry.line())
        };
        let is_used = |measure: &Measure| {
            lines().any(|line| {
                ingredient.is_some_and(|ingredient| line.ingredient == ingredient.id)
                    && matches!(&line.amount, Amount::Count(_, of) if *of == measure.id)
            })
        };
        let used: Vec<&&Measure> = several.iter().filter(|measure| is_used(measure)).collect();
        let candidates = match used.as_slice() {
            [only] => return Ok(*only),
            [] => several.iter().collect(),
            _ => used,
        };
        Err(AmountWordError::Ambiguous {
            word: word.to_owned(),
            candidates: candidates
                .iter()
                .map(|measure| measure.id.clone())
                .collect(),
        })
    }

    /// Every kind of measure that the shop has.
    fn measure_kinds(&self) -> Vec<MeasureKind> {
        let is_there = |kind: &MeasureKind| self.measures.iter().any(|item| item.kind == *kind);
        MeasureKind::ALL.into_iter().filter(is_there).collect()
    }
}

/// What "scoops" of ice may be: the ice scoops and what ice is known to be measured with; where there are none, any scoop, to be
/// asked about.
fn measures_of_ice<'book>(
    measures: impl Iterator<Item = &'book Measure>,
    word: &str,
    ice: &Ingredient,
) -> Vec<&'book Measure> {
    let (one, many) = MeasureKind::Scoop.words();
    let is_scoop = word == one || word == many;
    let (for_ice, others): (Vec<&Measure>, Vec<&Measure>) = measures
        .filter(|measure| {
            answers_to(measure, word) || is_scoop && measure.kind == MeasureKind::IceScoop
        })
        .partition(|measure| fits(measure, word, Some(ice)));
    if for_ice.is_empty() { others } else { for_ice }
}

/// Whether a measure that the word of its kind has led to is one for the ingredient: a scoop for powder holds ice only when it is
/// named, or has weighed ice.
fn fits(measure: &Measure, word: &str, ingredient: Option<&Ingredient>) -> bool {
    let Some(ice) = ingredient.filter(|ingredient| ingredient.form == Form::Ice) else {
        return true;
    };
    measure.kind != MeasureKind::Scoop
        || is_called(measure, word)
        || measure.calibration(Some(&ice.id)).is_some()
}

fn is_called(measure: &Measure, word: &str) -> bool {
    word == measure.name.to_lowercase() || word == measure.id.as_str()
}

fn answers_to(measure: &Measure, word: &str) -> bool {
    let (one, many) = measure.words();
    word == one || word == many || is_called(measure, word)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The sample book without any weighing, so that only its recipes tell which scoop belongs to what.
    fn never_weighed() -> Book {
        let text = include_str!("../../sample-books/harrowmere.ron");
        let mut book = crate::book_file::parse(text).unwrap().0;
        let measures: Vec<Measure> = book
            .measures
            .iter()
            .map(|measure| (**measure).clone())
            .collect();
        for mut measure in measures {
            measure.readings.clear();
            book.measures.put(measure);
        }
        book
    }

    fn two_scoops(book: &Book, ingredient: &str) -> Result<Amount, AmountWordError> {
        let id = crate::book::IngredientId::new(ingredient).unwrap();
        book.amount_from_text("2 scoops", book.ingredient(&id).map(AsRef::as_ref), None)
    }

    #[test]
    fn a_word_for_several_measures_means_the_one_that_the_recipes_use_with_the_ingredient() {
        let scoop = |id| Ok(Amount::Count(2.0, MeasureId::new(id).unwrap()));
        let book = never_weighed();
        assert_eq!(
            two_scoops(&book, "tambrel-chestnut"),
            scoop("chestnut-scoop")
        );
        assert_eq!(two_scoops(&book, "ondry-creamer"), scoop("creamer-scoop"));
    }

    /// Ice and powder, and measures of these names and kinds that nobody has weighed.
    fn scoops(measures: &[(&str, MeasureKind)]) -> Book {
        let mut book = Book::default();
        for (name, form) in [("ice", Form::Ice), ("powder", Form::Powder)] {
            let id = crate::book::IngredientId::new(name).unwrap();
            let new = Ingredient::new(id, name.to_owned());
            book.ingredients.put(Ingredient { form, ..new });
        }
        for (name, kind) in measures {
            let id = MeasureId::from_name(name, |_| false);
            book.measures
                .put(Measure::new(id, (*name).to_owned(), *kind));
        }
        book
    }

    #[test]
    fn a_scoop_of_ice_is_an_ice_scoop_or_is_asked_about() {
        use MeasureKind::{IceScoop, Scoop};
        let read = |book: &Book, text: &str, of: &str| {
            let id = crate::book::IngredientId::new(of).unwrap();
            let read = book.amount_from_text(text, book.ingredient(&id).map(AsRef::as_ref), None);
            match read {
                Ok(Amount::Count(_, measure)) => Ok(measure.to_string()),
                Err(AmountWordError::Ambiguous { candidates, .. }) => Err(candidates
                    .iter()
                    .map(ToString::to_string)
                    .collect::<Vec<_>>()),
                other => panic!("{text} of {of}: {other:?}"),
            }
        };
        let asks = |ids: &[&str]| Err(ids.iter().map(ToString::to_string).collect());
        let book = scoops(&[("small scoop", Scoop), ("bar ice", IceScoop)]);
        for (text, of, is) in [
            ("3 scoops", "ice", "bar-ice"),
            ("3 ice scoops", "ice", "bar-ice"),
            ("3 small scoop", "ice", "small-scoop"),
            ("3 scoops", "powder", "small-scoop"),
        ] {
            assert_eq!(read(&book, text, of), Ok(is.to_owned()), "{text} of {of}");
        }
        let book = scoops(&[("small scoop", Scoop), ("a", IceScoop), ("b", IceScoop)]);
        assert_eq!(read(&book, "3 scoops", "ice"), asks(&["a", "b"]));
        let book = scoops(&[("small scoop", Scoop)]);
        assert_eq!(read(&book, "3 scoops", "ice"), asks(&["small-scoop"]));
        assert_eq!(read(&book, "3 scoops", "powder"), Ok("small-scoop".into()));
    }

    #[test]
    fn a_word_that_fits_nothing_used_with_the_ingredient_is_asked_about() {
        let error = two_scoops(&never_weighed(), "water").unwrap_err();
        let scoop = |id| MeasureId::new(id).unwrap();
        match error {
            AmountWordError::Ambiguous { candidates, .. } => {
                assert_eq!(
                    candidates[..2],
                    [scoop("chestnut-scoop"), scoop("creamer-scoop")]
                );
            }
            other => panic!("{other:?}"),
        }
    }
}
