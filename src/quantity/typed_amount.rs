//! An amount as it is typed into a line: a number and a unit or the word of a measure.

use super::number_text::{LARGEST, NumberError, REPEATED, parse_number};
use super::unit_words::{PackUnit, mass_or_volume_called};
use super::visible_text::excerpt;

/// A typed amount before its word has been looked up among the shop's measures.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedAmount {
    /// The number in front of the unit; for `to the rim` there is none and it is 0.
    pub number: f64,
    /// What was counted.
    pub unit: TypedUnit,
}

/// The unit of a typed amount. Litres, kilograms and ounces have been converted already.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TypedUnit {
    /// No unit was typed: the line keeps the one it has.
    None,
    /// A mass in grams.
    Grams,
    /// A volume in millilitres.
    Millilitres,
    /// `to 500 ml`: what is missing to this volume.
    FillToMillilitres,
    /// `to 500`: the same, in the unit that the person reads volumes in.
    FillToNumber,
    /// `to the rim`: what the cup still holds.
    FillToRim,
    /// A word of the counter: `scoops`, `press`, `spoon of ice`.
    Word(String),
}

/// Why a text is not an amount.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AmountTextError {
    /// The number could not be read.
    Number(NumberError),
    /// Less than nothing can't go into a cup.
    Negative {
        /// What was typed.
        found: String,
    },
    /// `to` was not followed by a volume or the rim.
    FillTarget {
        /// What was typed.
        found: String,
    },
}

impl From<NumberError> for AmountTextError {
    fn from(error: NumberError) -> Self {
        Self::Number(error)
    }
}

/// Reads `2 scoops`, `15 ml`, `7,5 g`, `1½ spoons`, `0.5 l`, `2 oz`, `1 lb`, `8 fl oz`, `to 500 ml`, `to the rim`,
/// `bis 500 ml`, `bis zum Rand`.
///
/// Words that are no unit come back as [`TypedUnit::Word`] in lower case; which measure is meant only the book can tell.
pub fn parse_amount(text: &str) -> Result<TypedAmount, AmountTextError> {
    let text = text.trim().to_lowercase();
    match fill_target(&text) {
        Some(target) => parse_fill(target, &text),
        None => parse_measured(&text),
    }
}

/// What stands behind "to", in small letters.
fn fill_target(text: &str) -> Option<&str> {
    let mut fills = ["to ", "bis "].into_iter();
    fills.find_map(|to| text.strip_prefix(to)).map(str::trim)
}

/// An amount that fills nothing, in small letters.
fn parse_measured(text: &str) -> Result<TypedAmount, AmountTextError> {
    let split = text
        .char_indices()
        .find(|(_, c)| c.is_alphabetic())
        .map_or(text.len(), |(at, _)| at);
    let (number, unit) = text.split_at(split);
    let number = parse_number(number)?;
    if number < 0.0 {
        let found = excerpt(text, REPEATED);
        return Err(AmountTextError::Negative { found });
    }
    let unit = unit.split_whitespace().collect::<Vec<_>>().join(" ");
    let amount = typed_amount(number, &unit);
    // Few enough litres may be too many millilitres.
    if amount.number >= LARGEST {
        let found = excerpt(text, REPEATED);
        return Err(NumberError::OutOfRange { found }.into());
    }
    Ok(amount)
}

/// Reads several amounts in one go: `8.9 9,1 8.8 g`, `7.6 ml; 7.8 ml`. Those without a unit have that of the next one that
/// states it.
pub fn parse_amounts(text: &str) -> Result<Vec<TypedAmount>, AmountTextError> {
    let mut texts: Vec<String> = Vec::new();
    let pieces = text.split(|c: char| c.is_whitespace() || c == ';');
    for piece in pieces.map(|piece| piece.trim_end_matches(',')) {
        match texts.last_mut() {
            // The unit, or the half of one and a half, of the number before.
            Some(last)
                if !piece.starts_with(|c: char| c.is_ascii_digit() || "-−.,".contains(c)) =>
            {
                last.push(' ');
                last.push_str(piece);
            }
            _ if piece.is_empty() => {}
            _ => texts.push(piece.to_owned()),
        }
    }
    if texts.is_empty() {
        return Err(NumberError::Missing.into());
    }
    let amounts = texts.iter().map(|text| parse_amount(text));
    let mut amounts = amounts.collect::<Result<Vec<TypedAmount>, AmountTextError>>()?;
    let mut unit = None;
    for (amount, text) in amounts.iter_mut().zip(&texts).rev() {
        if amount.unit != TypedUnit::None {
            unit = Some(text.trim_start_matches(|c: char| !c.is_alphabetic()));
        } else if let Some(unit) = unit {
            *amount = parse_amount(&format!("{text} {unit}"))?;
        }
    }
    Ok(amounts)
}

fn parse_fill(target: &str, whole: &str) -> Result<TypedAmount, AmountTextError> {
    const RIM: [&str; 7] = [
        "rim",
        "the rim",
        "top",
        "the top",
        "zum rand",
        "zum becherrand",
        "oben",
    ];
    if RIM.contains(&target) {
        return Ok(TypedAmount {
            number: 0.0,
            unit: TypedUnit::FillToRim,
        });
    }
    let no_target = || AmountTextError::FillTarget {
        found: excerpt(whole, REPEATED),
    };
    // "To to to…" is no deeper a target the longer it is.
    if fill_target(target).is_some() {
        return Err(no_target());
    }
    let amount = parse_measured(target)?;
    match amount.unit {
        TypedUnit::Millilitres => Ok(TypedAmount {
            number: amount.number,
            unit: TypedUnit::FillToMillilitres,
        }),
        TypedUnit::None => Ok(TypedAmount {
            number: amount.number,
            unit: TypedUnit::FillToNumber,
        }),
        _ => Err(no_target()),
    }
}

fn typed_amount(number: f64, unit: &str) -> TypedAmount {
    if unit.is_empty() {
        let unit = TypedUnit::None;
        return TypedAmount { number, unit };
    }
    // Behind a number that is typed "fl" is short for fluid ounces; on a pack it is a bottle.
    let called = match unit {
        "fl" | "oz fl" => "fl oz",
        unit => unit,
    };
    match mass_or_volume_called(called) {
        Some((PackUnit::Grams, factor)) => TypedAmount {
            number: number * factor,
            unit: TypedUnit::Grams,
        },
        Some((PackUnit::Millilitres, factor)) => TypedAmount {
            number: number * factor,
            unit: TypedUnit::Millilitres,
        },
        None => TypedAmount {
            number,
            unit: TypedUnit::Word(unit.to_owned()),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, number: f64, unit: &TypedUnit) {
        let amount = parse_amount(text).unwrap_or_else(|error| panic!("{text}: {error:?}"));
        assert!(
            (amount.number - number).abs() < 1e-9,
            "{text}: {}",
            amount.number
        );
        assert_eq!(amount.unit, *unit, "{text}");
    }

    #[test]
    fn amounts_are_read_the_way_they_are_said() {
        check("2 scoops", 2.0, &TypedUnit::Word("scoops".into()));
        check("1½ scoop", 1.5, &TypedUnit::Word("scoop".into()));
        check("15 ml", 15.0, &TypedUnit::Millilitres);
        check("7,5 g", 7.5, &TypedUnit::Grams);
        check("7,5g", 7.5, &TypedUnit::Grams);
        check("0.25 l", 250.0, &TypedUnit::Millilitres);
        check("1 lb", 453.592_37, &TypedUnit::Grams);
        check("1 000 ml", 1000.0, &TypedUnit::Millilitres);
        check("1.000,5 g", 1000.5, &TypedUnit::Grams);
        check("to 1 000 ml", 1000.0, &TypedUnit::FillToMillilitres);
        check("1 oz", 28.349_523_125, &TypedUnit::Grams);
        check("8 fl oz", 236.588_236_5, &TypedUnit::Millilitres);
        check("3", 3.0, &TypedUnit::None);
        check("to 500 ml", 500.0, &TypedUnit::FillToMillilitres);
        check("to the rim", 0.0, &TypedUnit::FillToRim);
        check("bis 500 ml", 500.0, &TypedUnit::FillToMillilitres);
        check("Bis 0,5 l", 500.0, &TypedUnit::FillToMillilitres);
        check("bis zum Rand", 0.0, &TypedUnit::FillToRim);
        check(
            "1 Pear  pump press",
            1.0,
            &TypedUnit::Word("pear pump press".into()),
        );
    }

    #[test]
    fn several_amounts_are_read_in_one_go() {
        let read = |text: &str| {
            let read = parse_amounts(text).unwrap_or_else(|error| panic!("{text}: {error:?}"));
            read.into_iter()
                .map(|amount| (amount.number, amount.unit))
                .collect::<Vec<_>>()
        };
        let grams = |numbers: &[f64]| -> Vec<(f64, TypedUnit)> {
            numbers.iter().map(|n| (*n, TypedUnit::Grams)).collect()
        };
        assert_eq!(read("8.9 9.1 8.8 g"), grams(&[8.9, 9.1, 8.8]));
        assert_eq!(read("8,9 g 9,1 g"), grams(&[8.9, 9.1]));
        assert_eq!(read("8,9, 9,1; 8,8g"), grams(&[8.9, 9.1, 8.8]));
        assert_eq!(
            read("0.5 kg 20"),
            [(500.0, TypedUnit::Grams), (20.0, TypedUnit::None)]
        );
        assert_eq!(
            read(" 7.6  7.8 ml "),
            [7.6, 7.8].map(|n| (n, TypedUnit::Millilitres))
        );
        assert_eq!(read("246"), [(246.0, TypedUnit::None)]);
        for text in ["", "  ", "g", "8.9 x9", "8.9 -2", "8..9 9"] {
            let read = parse_amounts(text);
            let is_word = |amount: &TypedAmount| matches!(amount.unit, TypedUnit::Word(_));
            assert!(
                read.as_ref().is_err() || read.iter().flatten().any(is_word),
                "{text}: {read:?}"
            );
        }
    }

    #[test]
    fn nonsense_is_refused_with_a_reason() {
        use AmountTextError as A;
        type IsRefusedSo<'a> = &'a dyn Fn(&A) -> bool;
        let missing = |error: &A| matches!(error, A::Number(NumberError::Missing));
        let no_number = |error: &A| matches!(error, A::Number(NumberError::NotANumber { .. }));
        let too_large = |error: &A| matches!(error, A::Number(NumberError::OutOfRange { .. }));
        let ambiguous = |error: &A| {
            let A::Number(NumberError::Ambiguous {
                thousands,
                decimals,
                ..
            }) = error
            else {
                return false;
            };
            thousands == "1000" && decimals == "1.0000"
        };
        let many = "to ".repeat(1_000_000) + "500 ml";
        let is: [(&str, IsRefusedSo<'_>); 11] = [
            ("to to 500 ml", &|error| {
                matches!(error, A::FillTarget { .. })
            }),
            (&many, &|error| matches!(error, A::FillTarget { .. })),
            ("scoops", &missing),
            ("-2 g", &|error| matches!(error, A::Negative { .. })),
            ("to 5 g", &|error| matches!(error, A::FillTarget { .. })),
            ("", &missing),
            ("1..5 g", &no_number),
            ("1000 l", &too_large),
            ("1,000 ml", &ambiguous),
            ("to 1.000 ml", &ambiguous),
            ("to 696666½ l", &too_large),
        ];
        for (text, is_refused_so) in is {
            let error = parse_amount(text).unwrap_err();
            let text = excerpt(text, REPEATED);
            assert!(is_refused_so(&error), "{text}: {error:?}");
        }
    }
}
