//! Amounts as the counter says them, and read back in the same words.

use super::{Argument, Speaker, say};
use crate::book::{Amount, AmountWordError, Ingredient, MeasureKind};
use crate::quantity::show_count;

impl Speaker<'_> {
    /// An amount as it is said at the counter: "1½ scoops", "15 ml", "to the rim".
    pub fn amount(&self, amount: &Amount) -> String {
        match amount {
            Amount::Grams(grams) => format!("{} g", self.count(*grams)),
            Amount::Millilitres(millilitres) => self.volume_count(*millilitres),
            Amount::FillTo(millilitres) => {
                say!(self, "amount-fill-to", volume: self.volume_count(*millilitres))
            }
            Amount::FillToRim => self.word("amount-fill-to-rim").to_owned(),
            Amount::Count(count, measure) => {
                let measure = self.book.measure(measure);
                self.uses(*count, measure.map(|measure| measure.kind))
            }
        }
    }

    /// "1½ scoops"; a measure that the book does not have is said without its name: "2 uses".
    pub fn uses(&self, count: f64, kind: Option<MeasureKind>) -> String {
        // A part of a use, and what is shown as 1, is one use.
        let is_one = count <= 1.0 || show_count(count) == "1";
        let plural = Argument::Count(if is_one { 1.0 } else { count });
        let amount = self.count(count).into();
        self.say(uses_message(kind), &[("amount", amount), ("count", plural)])
    }

    /// What a use of a measure is called without a number: "scoops".
    pub fn uses_word(&self, kind: MeasureKind) -> String {
        self.word_for(kind, 5.0)
    }

    fn word_for(&self, kind: MeasureKind, count: f64) -> String {
        let arguments = [("amount", "".into()), ("count", Argument::Count(count))];
        self.say(uses_message(Some(kind)), &arguments)
            .trim()
            .to_owned()
    }

    /// Reads an amount that was typed in the words of the language or in those of a book, as
    /// [`crate::book::Book::amount_from_text_in`] does; what went wrong is said.
    pub fn read_amount(
        &self,
        text: &str,
        ingredient: Option<&Ingredient>,
        current: Option<&Amount>,
    ) -> Result<Amount, String> {
        let text = self.in_words_of_a_book(text);
        self.book
            .amount_from_text_in(&text, ingredient, current, self.units)
            .map_err(|error: AmountWordError| self.amount_error(&error))
    }

    /// The words of the language for measures and for what fills a cup, replaced by those that a book is written in.
    fn in_words_of_a_book(&self, text: &str) -> String {
        let typed = text.trim().to_lowercase();
        if typed == self.word("amount-fill-to-rim").to_lowercase() {
            return "to the rim".to_owned();
        }
        let fill_to = say!(self, "amount-fill-to", volume: "\u{0}").to_lowercase();
        if let Some((before, after)) = fill_to.split_once('\u{0}')
            && let Some(volume) = typed.strip_prefix(before)
            && let Some(volume) = volume.strip_suffix(after)
        {
            return format!("to {volume}");
        }
        let words = MeasureKind::ALL.into_iter().flat_map(|kind| {
            [1.0, 5.0].map(|count| (self.word_for(kind, count).to_lowercase(), kind))
        });
        let ends_typed = |word: &str| {
            let number = typed.strip_suffix(word)?;
            // With a word before it, it is the name of a measure: "2 brown scoop".
            let is_number = !number.contains(char::is_alphabetic);
            is_number.then(|| number.to_owned())
        };
        // The longest: one word may end like another.
        let longest = words
            .filter_map(|(word, kind)| Some((word.len(), ends_typed(&word)?, kind)))
            .max_by_key(|(length, ..)| *length);
        longest.map_or_else(
            || self.pieces_in_words_of_a_book(text, &typed),
            |(_, number, kind)| format!("{number}{}", kind.words().1),
        )
    }

    /// "3 slices" are three pieces in a shop that counts something in pieces, unless a measure is called a slice.
    fn pieces_in_words_of_a_book(&self, text: &str, typed: &str) -> String {
        let number = typed.trim_end_matches(char::is_alphabetic);
        let word = &typed[number.len()..];
        let measures = || self.book.measures.iter();
        let counts_pieces = || measures().any(|item| item.kind == MeasureKind::Piece);
        let is_a_name = || measures().any(|item| item.name.to_lowercase() == word);
        let pieces = self.word("amount-words-of-pieces").to_lowercase();
        let mut pieces = pieces.split(',');
        if pieces.any(|piece| piece.trim() == word) && counts_pieces() && !is_a_name() {
            format!("{number}{}", MeasureKind::Piece.words().1)
        } else {
            text.to_owned()
        }
    }

    fn volume_count(&self, millilitres: f64) -> String {
        let digits = self.units.volume_number(millilitres);
        let digits = self.localised(&digits, millilitres);
        format!("{digits} {}", self.units.of("ml").symbol)
    }
}

fn uses_message(kind: Option<MeasureKind>) -> &'static str {
    match kind {
        Some(MeasureKind::Scoop) => "amount-uses-scoop",
        Some(MeasureKind::Pump) => "amount-uses-pump",
        Some(MeasureKind::Spoon) => "amount-uses-spoon",
        Some(MeasureKind::Jug) => "amount-uses-jug",
        Some(MeasureKind::IceScoop) => "amount-uses-ice-scoop",
        Some(MeasureKind::Button) => "amount-uses-button",
        Some(MeasureKind::Piece) => "amount-uses-piece",
        None => "amount-uses-other",
    }
}

#[cfg(test)]
mod tests {
    use crate::book::{Amount, MeasureId};
    use crate::say::{Language, Speaker};

    #[test]
    fn an_amount_is_read_as_it_is_said_in_every_language() {
        let text = include_str!("../../sample-books/harrowmere.ron");
        let book = crate::book_file::parse(text).unwrap().0;
        let mut amounts = vec![
            Amount::Grams(12.5),
            Amount::Millilitres(150.0),
            Amount::FillTo(400.0),
            Amount::FillToRim,
        ];
        let measures: Vec<MeasureId> = book.measures.iter().map(|item| item.id.clone()).collect();
        for measure in measures {
            for count in [0.5, 1.0, 1.5, 2.0, 5.0] {
                amounts.push(Amount::Count(count, measure.clone()));
            }
        }
        for language in Language::all() {
            let speaker = Speaker::new(&book).in_language(language);
            for amount in &amounts {
                let said = speaker.amount(amount);
                let read = speaker.read_amount(&said, None, Some(amount));
                assert_eq!(read.as_ref(), Ok(amount), "{language:?}: {said}");
            }
        }
        // A measure is known by its own name in every language, where the book knows it by that.
        for measure in &book.measures {
            let typed = format!("2 {}", measure.name);
            let meant = book.amount_from_text(&typed, None, None);
            for language in Language::all() {
                let read = Speaker::new(&book).in_language(language);
                let read = read.read_amount(&typed, None, None);
                assert_eq!(read.ok(), meant.clone().ok(), "{language:?}: {typed}");
            }
        }
        let german = Speaker::new(&book).in_language(Language::from_code("de").unwrap());
        let pump = book
            .measures
            .iter()
            .find(|item| item.kind == crate::book::MeasureKind::Pump);
        let presses = Amount::Count(1.5, pump.unwrap().id.clone());
        assert_eq!(german.amount(&presses), "1½ Hübe");
        assert_eq!(
            german.amount(&presses.with_number(0.5)),
            "½ Hub",
            "a part of a use is one use"
        );
    }
}
