//! A number typed with the unit that the label prints, read in the unit that the field is in: "0.4 g" as 400 mg.

use super::number_text::{LARGEST, NumberError, REPEATED, parse_up_to};
use super::{GRAMS_PER_OUNCE, GRAMS_PER_POUND, KILOJOULES_PER_KILOCALORIE, excerpt};

/// Units of one kind, with what each is of the first.
const KINDS: [&[(&str, f64)]; 3] = [
    &[
        ("g", 1.0),
        ("mg", 1e-3),
        ("kg", 1e3),
        ("µg", 1e-6),
        ("μg", 1e-6),
        ("mcg", 1e-6),
        ("oz", GRAMS_PER_OUNCE),
        ("lb", GRAMS_PER_POUND),
    ],
    &[("kJ", 1.0), ("kcal", KILOJOULES_PER_KILOCALORIE)],
    &[("%", 1.0), ("°Bx", 1.0), ("°Brix", 1.0)],
];

/// No density, percentage or temperature is as large as this.
pub(super) const THOUSAND: f64 = 1000.0;

/// Reads a number that may have a unit behind it; without one it is in `unit` already.
pub fn parse_in_unit(text: &str, unit: &str) -> Result<f64, NumberError> {
    let is_small = unit.contains(['/', '%', '°']);
    let most = if is_small { THOUSAND - 1.0 } else { LARGEST };
    parse_in_unit_up_to(text, unit, most)
}

/// The same where no number above `most`, in `unit`, makes sense.
pub fn parse_in_unit_up_to(text: &str, unit: &str, most: f64) -> Result<f64, NumberError> {
    let text = text.trim();
    // A unit made of two ("g/ml") is only ever the one of the field.
    if let Some(number) = text.strip_suffix(unit).filter(|_| unit.contains('/')) {
        return parse_up_to(number, most);
    }
    let is_of_unit = |c: char| c.is_alphabetic() || matches!(c, '%' | '°');
    let digits = text.trim_end_matches(is_of_unit);
    let typed = &text[digits.len()..];
    if typed.is_empty() || digits.trim().is_empty() {
        return parse_up_to(text, most);
    }
    let of = |kind: &&[(&str, f64)], unit: &str| {
        let same = |(word, _): &&(&str, f64)| word.to_lowercase() == unit.to_lowercase();
        kind.iter().find(same).map(|(_, factor)| *factor)
    };
    let factor = KINDS
        .iter()
        .find_map(|kind| Some(of(kind, typed)? / of(kind, unit)?));
    let Some(factor) = factor else {
        return Err(NumberError::AnotherUnit {
            found: excerpt(typed, REPEATED),
            unit: unit.to_owned(),
        });
    };
    Ok(parse_up_to(digits, most / factor)? * factor)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_read_in_the_unit_of_its_field() {
        for (text, unit, value) in [
            ("0.4 g", "mg", 400.0),
            ("400mg", "mg", 400.0),
            ("400 mg", "g", 0.4),
            ("100 kcal", "kJ", 418.4),
            ("418,4 KJ", "kcal", 100.0),
            ("12", "g", 12.0),
            ("77 %", "%", 77.0),
            ("1.2 g/ml", "g/ml", 1.2),
        ] {
            let read = parse_in_unit(text, unit).unwrap();
            assert!((read - value).abs() < 1e-9, "{text}: {read}");
        }
    }

    #[test]
    fn a_thousand_of_what_the_field_can_not_hold_is_one() {
        assert_eq!(parse_in_unit("1.033", "g/ml"), Ok(1.033));
        assert_eq!(parse_in_unit("12,125 %", "%"), Ok(12.125));
        assert_eq!(parse_in_unit_up_to("1,250", "g", 100.0), Ok(1.25));
        assert!(parse_in_unit_up_to("1,250 mg", "g", 100.0).is_err());
        assert!(parse_in_unit("1,250", "mg").is_err());
    }

    #[test]
    fn another_kind_of_unit_is_refused_with_what_is_expected() {
        let error = parse_in_unit("5 kcal", "g").unwrap_err();
        let wanted = NumberError::AnotherUnit {
            found: "kcal".into(),
            unit: "g".into(),
        };
        assert_eq!(error, wanted);
        assert!(parse_in_unit("plenty", "g").is_err());
    }
}
