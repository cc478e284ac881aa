//! What a pack holds, as packs are sold: "1 kg", "0,75 l", "12 x 1 kg", "case of 6 × 750 ml", "20 kg Sack", "6 Flaschen à 750 ml".

use super::number_text::{
    DecimalSign, LARGEST, NumberError, REPEATED, is_fraction, parse_with_sign,
};
use super::unit_words::{GALLON, PackUnit, mass_or_volume_called};
use super::visible_text::excerpt;
use super::{GRAMS_PER_OUNCE, GRAMS_PER_POUND, MILLILITRES_PER_US_FLUID_OUNCE};

/// What one price buys.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pack {
    /// How many packs of one kind are in it: 12 of "12 x 1 kg".
    pub count: f64,
    /// What each of them holds, in the unit.
    pub each: f64,
    /// What that is in.
    pub unit: PackUnit,
}

impl Pack {
    /// One pack of so many grams.
    pub fn of_grams(grams: f64) -> Self {
        Self {
            count: 1.0,
            each: grams,
            unit: PackUnit::Grams,
        }
    }

    /// One pack of so many millilitres.
    pub fn of_millilitres(millilitres: f64) -> Self {
        Self {
            unit: PackUnit::Millilitres,
            ..Self::of_grams(millilitres)
        }
    }

    /// What one of them holds as it is printed, with its unit: 2.5 lb are no plain number of grams and come back as pounds.
    pub fn each_as_printed(self) -> (f64, &'static str) {
        let units = match self.unit {
            PackUnit::Grams => [
                ("kg", 1000.0),
                ("g", 1.0),
                ("lb", GRAMS_PER_POUND),
                ("oz", GRAMS_PER_OUNCE),
            ],
            PackUnit::Millilitres => [
                ("l", 1000.0),
                ("ml", 1.0),
                ("fl oz", MILLILITRES_PER_US_FLUID_OUNCE),
                ("gal", GALLON),
            ],
        };
        let is_plain = |number: f64| {
            let hundredths = 100.0 * number;
            hundredths >= 1.0 && (hundredths - hundredths.round()).abs() <= 1e-9 * hundredths
        };
        let plain = units
            .into_iter()
            .map(|(unit, factor)| (self.each / factor, unit))
            .find(|(number, unit)| is_plain(*number) && (*number >= 1.0 || units[0].0 != *unit));
        plain.unwrap_or((self.each, units[1].0))
    }

    /// What all of them hold, in the unit.
    pub fn whole(self) -> f64 {
        self.count * self.each
    }
}

/// Why a text is no content of a pack.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PackError {
    /// A number in it can't be read.
    Number(NumberError),
    /// There is no unit.
    NoUnit,
    /// A word, or how the words follow each other, is not understood. Nothing is taken from a text that is read by half.
    NotUnderstood {
        /// What was typed.
        found: String,
    },
}

impl From<NumberError> for PackError {
    fn from(error: NumberError) -> Self {
        Self::Number(error)
    }
}

/// What things are packed in, and the little words between a count and what is counted; in English and German.
const PACKED_IN: &[&str] = &[
    "a",
    "à",
    "á",
    "bag",
    "bags",
    "beutel",
    "bottle",
    "bottles",
    "box",
    "boxes",
    "btl",
    "bucket",
    "buckets",
    "can",
    "canister",
    "cans",
    "carton",
    "cartons",
    "case",
    "cases",
    "crate",
    "crates",
    "cs",
    "ctn",
    "dose",
    "dosen",
    "drum",
    "each",
    "eimer",
    "er",
    "fass",
    "flasche",
    "flaschen",
    "fl",
    "gebinde",
    "glas",
    "gläser",
    "jar",
    "jars",
    "je",
    "jug",
    "jugs",
    "kanister",
    "karton",
    "kartons",
    "kiste",
    "kisten",
    "of",
    "pack",
    "packet",
    "packets",
    "packs",
    "packung",
    "packungen",
    "pail",
    "pouch",
    "pouches",
    "sachet",
    "sachets",
    "sack",
    "säcke",
    "sacks",
    "tin",
    "tins",
    "tüte",
    "tüten",
];

const TIMES: [&str; 4] = ["x", "×", "*", "✕"];

#[derive(Clone, Debug, PartialEq)]
enum Token {
    Number(String),
    Times,
    PackedIn,
    Unit(PackUnit, f64),
    Other,
}

/// Reads what a pack holds. `usual` is the unit of a number that has none, as a heading states it; empty for none.
///
/// All of the text is understood, or none of it is taken: half of "12 x 1 kg" is another pack.
pub fn parse_pack(text: &str, sign: Option<DecimalSign>, usual: &str) -> Result<Pack, PackError> {
    if text.trim().is_empty() {
        return Err(NumberError::Missing.into());
    }
    let text = text.trim();
    let tokens = tokens(text);
    let not_understood = || PackError::NotUnderstood {
        found: excerpt(text, REPEATED),
    };
    let mut count = 1.0;
    let mut amount = None;
    let mut last_number: Option<f64> = None;
    // Whether something stands between the last number and here.
    let (mut is_apart, mut times_since) = (true, false);
    for token in &tokens {
        match token {
            Token::Number(digits) => {
                let number = parse_with_sign(digits, sign)?;
                if !is_apart || amount.is_some() && !times_since || number <= 0.0 {
                    return Err(not_understood());
                }
                // What was counted before is how many of these there are.
                count *= last_number.replace(number).unwrap_or(1.0);
                (is_apart, times_since) = (false, false);
            }
            Token::Unit(unit, factor) => {
                let each = last_number.take().filter(|_| !is_apart && amount.is_none());
                let each = each.ok_or_else(not_understood)?;
                amount = Some((*unit, each * factor));
                is_apart = true;
            }
            Token::Times => {
                if times_since || last_number.is_none() && amount.is_none() {
                    return Err(not_understood());
                }
                (is_apart, times_since) = (true, true);
            }
            Token::PackedIn => is_apart = true,
            Token::Other => return Err(not_understood()),
        }
    }
    if times_since {
        return Err(not_understood());
    }
    let (unit, each) = match (amount, last_number) {
        (Some(amount), behind) => {
            count *= behind.unwrap_or(1.0);
            amount
        }
        // "12 bags" is a count of packs that nobody knows the content of.
        (None, Some(number)) if !is_apart => {
            let (unit, factor) = mass_or_volume_called(usual).ok_or(PackError::NoUnit)?;
            (unit, number * factor)
        }
        (None, Some(_)) => return Err(PackError::NoUnit),
        (None, None) => return Err(not_understood()),
    };
    let pack = Pack { count, each, unit };
    if pack.whole() < LARGEST {
        Ok(pack)
    } else {
        let found = excerpt(text, REPEATED);
        Err(NumberError::OutOfRange { found }.into())
    }
}

fn tokens(text: &str) -> Vec<Token> {
    let text = text.to_lowercase();
    let letters: Vec<char> = text.chars().collect();
    let is_digit = |c: char| c.is_ascii_digit() || is_fraction(c);
    let is_digit_at = |at: usize| letters.get(at).is_some_and(|c| is_digit(*c));
    let mut tokens = Vec::new();
    let mut words: Vec<String> = Vec::new();
    let mut at = 0;
    while at < letters.len() {
        let letter = letters[at];
        let begin = at;
        if is_digit(letter) || matches!(letter, '.' | ',') && is_digit_at(at + 1) {
            words_into(&mut tokens, &mut words);
            while at < letters.len() {
                let c = letters[at];
                let groups = |at: usize| (at..at + 3).all(is_digit_at) && !is_digit_at(at + 3);
                // "1 1/2".
                let fraction = |at: usize| {
                    is_digit_at(at) && letters.get(at + 1) == Some(&'/') && is_digit_at(at + 2)
                };
                let goes_on = is_digit(c)
                    || matches!(c, '.' | ',' | '/' | '\'' | '’') && is_digit_at(at + 1)
                    || c == ' ' && fraction(at + 1)
                    || matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}') && groups(at + 1);
                if !goes_on {
                    break;
                }
                at += 1;
            }
            tokens.push(Token::Number(letters[begin..at].iter().collect()));
        } else if letter.is_alphabetic() {
            while at < letters.len() && letters[at].is_alphabetic() {
                at += 1;
            }
            words.push(letters[begin..at].iter().collect());
            // "fl. oz." and "lb." are words with a stop.
            at += usize::from(letters.get(at) == Some(&'.'));
        } else {
            at += 1;
            let sign: String = letter.to_string();
            if TIMES.contains(&sign.as_str()) {
                words.push(sign);
            } else if letter == '-' && begin > 0 && letters.get(at).is_some_and(|c| *c != ' ') {
                // "20-kg-Sack".
            } else if !letter.is_whitespace() && !matches!(letter, '(' | ')' | '[' | ']') {
                words_into(&mut tokens, &mut words);
                tokens.push(Token::Other);
            }
        }
    }
    words_into(&mut tokens, &mut words);
    tokens
}

/// Words between two numbers: a unit may have two of them.
fn words_into(tokens: &mut Vec<Token>, words: &mut Vec<String>) {
    let mut at = 0;
    while at < words.len() {
        let two = words
            .get(at + 1)
            .map(|next| format!("{} {next}", words[at]));
        if let Some((unit, factor)) = two.and_then(|two| mass_or_volume_called(&two)) {
            tokens.push(Token::Unit(unit, factor));
            at += 2;
            continue;
        }
        let word = words[at].as_str();
        tokens.push(if TIMES.contains(&word) {
            Token::Times
        } else if let Some((unit, factor)) = mass_or_volume_called(word) {
            Token::Unit(unit, factor)
        } else if PACKED_IN.contains(&word) {
            Token::PackedIn
        } else {
            Token::Other
        });
        at += 1;
    }
    words.clear();
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, count: f64, each: f64, unit: PackUnit) {
        let pack = parse_pack(text, None, "").unwrap_or_else(|error| panic!("{text}: {error:?}"));
        assert!((pack.count - count).abs() < 1e-9, "{text}: {pack:?}");
        assert!((pack.each - each).abs() < 1e-6, "{text}: {pack:?}");
        assert_eq!(pack.unit, unit, "{text}");
    }

    #[test]
    fn packs_are_read_as_they_are_sold() {
        use PackUnit::{Grams, Millilitres};
        for (text, count, each, unit) in [
            ("1 kg", 1.0, 1000.0, Grams),
            ("500g", 1.0, 500.0, Grams),
            ("0,75 l", 1.0, 750.0, Millilitres),
            ("0.75 L", 1.0, 750.0, Millilitres),
            ("750 ml", 1.0, 750.0, Millilitres),
            ("2.5 lb", 1.0, 2.5 * GRAMS_PER_POUND, Grams),
            ("5 lbs.", 1.0, 5.0 * GRAMS_PER_POUND, Grams),
            (
                "40 fl oz",
                1.0,
                40.0 * MILLILITRES_PER_US_FLUID_OUNCE,
                Millilitres,
            ),
            (
                "40 fl. oz.",
                1.0,
                40.0 * MILLILITRES_PER_US_FLUID_OUNCE,
                Millilitres,
            ),
            ("12 x 1 kg", 12.0, 1000.0, Grams),
            ("12x1kg", 12.0, 1000.0, Grams),
            ("6 × 750 ml", 6.0, 750.0, Millilitres),
            ("6*0,75 l", 6.0, 750.0, Millilitres),
            ("1 kg x 12", 12.0, 1000.0, Grams),
            ("2 x 6 x 250 g", 12.0, 250.0, Grams),
            ("20 kg Sack", 1.0, 20_000.0, Grams),
            ("20-kg-Sack", 1.0, 20_000.0, Grams),
            ("Sack 20 kg", 1.0, 20_000.0, Grams),
            ("Sack (20 kg)", 1.0, 20_000.0, Grams),
            ("case of 12 × 1 kg", 12.0, 1000.0, Grams),
            ("Karton 12 x 1 kg", 12.0, 1000.0, Grams),
            ("6 Flaschen à 750 ml", 6.0, 750.0, Millilitres),
            ("6er-Karton 750 ml", 6.0, 750.0, Millilitres),
            ("10 Beutel je 500 g", 10.0, 500.0, Grams),
            ("6 bottles of 1 l", 6.0, 1000.0, Millilitres),
            ("1 bag (2 kg)", 1.0, 2000.0, Grams),
            ("10 000 g", 1.0, 10_000.0, Grams),
            ("1 1/2 lb", 1.0, 1.5 * GRAMS_PER_POUND, Grams),
            ("½ kg", 1.0, 500.0, Grams),
            ("1 gal", 1.0, 3_785.411_784, Millilitres),
        ] {
            check(text, count, each, unit);
        }
        let of_heading = parse_pack("12 x 2", None, "kg").unwrap();
        assert!((of_heading.whole() - 24_000.0).abs() < 1e-9);
    }

    #[test]
    fn what_is_read_by_half_is_no_pack() {
        for text in [
            "ca. 1 kg",
            "1 kg netto",
            "12 1 kg",
            "1-2 kg",
            "1 l (1,3 kg)",
            "12 x",
            "x 1 kg",
            "12 x x 1 kg",
            "1 kg 12",
            "kg",
            "0 kg",
            "-1 kg",
            "0 x 1 kg",
            "12 x 1 kg + 1",
            "1000 Stück",
            "1 kg / 2 kg",
            "kg 5",
        ] {
            let read = parse_pack(text, None, "");
            assert!(
                matches!(read, Err(PackError::NotUnderstood { .. })),
                "{text}: {read:?}"
            );
        }
        for text in ["12", "12 x 1", "12 Flaschen", "3 bags"] {
            assert_eq!(parse_pack(text, None, ""), Err(PackError::NoUnit), "{text}");
        }
        assert_eq!(
            parse_pack("12 Flaschen", None, "kg"),
            Err(PackError::NoUnit)
        );
        for text in ["12 x 1.000 g", "1,250 kg", "1000 x 1000 kg"] {
            assert!(
                matches!(parse_pack(text, None, ""), Err(PackError::Number(_))),
                "{text}"
            );
        }
        let read = parse_pack("12 x 1.000 g", Some(DecimalSign::Comma), "").unwrap();
        assert!((read.whole() - 12_000.0).abs() < 1e-9);
    }
}
