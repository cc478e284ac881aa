//! Amounts as the counter says them, and read back in the same words.

use super::{Argument, Language, Speaker, say};
use crate::book::{Amount, AmountWordError, Ingredient, LARGEST_AMOUNT, MeasureKind};
use crate::exchange::{is_called_like, kitchen_spoon_called};
use crate::quantity::{parse_amount, show_count};

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
    ///
    /// Words that are neither are looked for in the other languages, and a spoon of kitchens is the shop's own that is called
    /// so, or what the law has it hold.
    pub fn read_amount(
        &self,
        text: &str,
        ingredient: Option<&Ingredient>,
        current: Option<&Amount>,
    ) -> Result<Amount, String> {
        let read = |speaker: &Self| {
            let text = speaker.in_words_of_a_book(text);
            self.book
                .amount_from_text_in(&text, ingredient, current, self.units)
        };
        let in_own_words = read(self);
        let Err(AmountWordError::NoMeasure { word, .. }) = &in_own_words else {
            return in_own_words.map_err(|error| self.amount_error(&error));
        };
        let in_others = || {
            let others = Language::all().filter(|language| *language != self.language);
            let mut read = others.map(|language| read(&self.in_language(language)));
            read.find_map(Result::ok)
        };
        let understood = self.of_kitchen(text, word).or_else(in_others);
        understood.map_or_else(
            || in_own_words.map_err(|error| self.amount_error(&error)),
            Ok,
        )
    }

    /// "1 EL": the measure of the shop that is called so, or its legal volume; `None` for what is no spoon of kitchens.
    fn of_kitchen(&self, text: &str, word: &str) -> Option<Amount> {
        let number = parse_amount(text).ok()?.number;
        let spoon = kitchen_spoon_called(word)?;
        let mut measures = self.book.measures.iter();
        let own = measures.find(|measure| is_called_like(&measure.name, spoon));
        let amount = match own {
            Some(measure) => Amount::Count(number, measure.id.clone()),
            None => Amount::Millilitres(number * spoon.millilitres()),
        };
        let is_possible = amount
            .number()
            .is_none_or(|number| number <= LARGEST_AMOUNT);
        is_possible.then_some(amount)
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
        let said = MeasureKind::ALL.into_iter().flat_map(|kind| {
            [1.0, 5.0].map(|count| (self.word_for(kind, count).to_lowercase(), kind))
        });
        let is_a_name = |word: &String| {
            let mut measures = self.book.measures.iter();
            measures.any(|item| item.name.to_lowercase() == *word)
        };
        let also = MeasureKind::ALL.into_iter().flat_map(|kind| {
            let words = also_called(kind).map_or("", |message| self.word(message));
            let words = words.split(',').map(|word| word.trim().to_lowercase());
            words.map(move |word| (word, kind))
        });
        // What a measure is called means that one.
        let also = also.filter(|(word, _)| !word.is_empty() && !is_a_name(word));
        let words = said.chain(also);
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

/// The message with other words for a use of a measure, which are read and never said.
fn also_called(kind: MeasureKind) -> Option<&'static str> {
    match kind {
        MeasureKind::Scoop => Some("amount-words-of-scoops"),
        MeasureKind::Pump => Some("amount-words-of-presses"),
        MeasureKind::Spoon => Some("amount-words-of-spoons"),
        MeasureKind::Jug => Some("amount-words-of-jugs"),
        MeasureKind::IceScoop => Some("amount-words-of-ice-scoops"),
        MeasureKind::Button => Some("amount-words-of-pushes"),
        // These are read only where something is counted in pieces.
        MeasureKind::Piece => None,
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
    use crate::book::{Amount, Book, Measure, MeasureId, MeasureKind};
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

    #[test]
    fn words_that_people_type_for_measures_are_read_whatever_the_window_speaks() {
        let mut book = Book::default();
        for (id, name, kind) in [
            ("scoop", "brown scoop", MeasureKind::Scoop),
            ("pump", "quince pump", MeasureKind::Pump),
            ("spoon", "bar spoon", MeasureKind::Spoon),
            ("jug", "milk jug", MeasureKind::Jug),
            ("ice-scoop", "ice scoop", MeasureKind::IceScoop),
            ("tap", "hot tap", MeasureKind::Button),
        ] {
            let id = MeasureId::new(id).unwrap();
            book.measures.put(Measure::new(id, name.to_owned(), kind));
        }
        let read = |book: &Book, language: &str, text: &str| {
            let speaker = Speaker::new(book).in_language(Language::from_code(language).unwrap());
            speaker.read_amount(text, None, None)
        };
        let counted = |count: f64, id: &str| Amount::Count(count, MeasureId::new(id).unwrap());
        for language in ["en", "de"] {
            for (text, amount) in [
                ("2 Messlöffel", counted(2.0, "scoop")),
                ("1½ Maßlöffel", counted(1.5, "scoop")),
                ("3 Hub", counted(3.0, "pump")),
                ("3 Hübe", counted(3.0, "pump")),
                ("2 Pumpstöße", counted(2.0, "pump")),
                ("2 pumps", counted(2.0, "pump")),
                ("2 Löffel", counted(2.0, "spoon")),
                ("1 Kanne", counted(1.0, "jug")),
                ("2 Eisschippen", counted(2.0, "ice-scoop")),
                ("2 Knopfdrücke", counted(2.0, "tap")),
                ("1 EL", Amount::Millilitres(15.0)),
                ("1,5 Esslöffel", Amount::Millilitres(22.5)),
                ("½ TL", Amount::Millilitres(2.5)),
                ("2 tbsp", Amount::Millilitres(30.0)),
            ] {
                assert_eq!(
                    read(&book, language, text),
                    Ok(amount),
                    "{language}: {text}"
                );
            }
            for text in ["2 Handvoll", "1 EL Honig", "99999999 EL"] {
                assert!(read(&book, language, text).is_err(), "{language}: {text}");
            }
        }
        // The shop's own spoon of that name holds what it holds.
        let id = MeasureId::new("large").unwrap();
        let own = Measure::new(id, "Esslöffel (groß)".to_owned(), MeasureKind::Spoon);
        book.measures.put(own);
        assert_eq!(read(&book, "de", "1 EL"), Ok(counted(1.0, "large")));
        // And what a measure is called means that one, whatever else the word stands for.
        let id = MeasureId::new("pusher").unwrap();
        let own = Measure::new(id, "Taste".to_owned(), MeasureKind::Pump);
        book.measures.put(own);
        assert_eq!(read(&book, "de", "2 Taste"), Ok(counted(2.0, "pusher")));
    }
}
