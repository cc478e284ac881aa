//! Numbers as people type and read them: decimal comma, fractions, counter halves and quarters.

use std::fmt::Write as _;

use super::visible_text::excerpt;

/// Why a text is not a number.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NumberError {
    /// Nothing was typed.
    #[error("a number is missing")]
    Missing,
    /// There are characters that belong to no number.
    #[error("`{found}` is not a number; expected something like 2, 7,5 or 1½")]
    NotANumber {
        /// What was typed.
        found: String,
    },
    /// A unit of another kind than the one that is asked for.
    #[error("`{found}` is no unit of this figure; expected a number in {expected}")]
    AnotherUnit {
        /// The unit that was typed.
        found: String,
        /// The unit that is asked for.
        expected: String,
    },
    /// Too large or too small for an amount.
    #[error("`{found}` is out of range; expected a number below 1 000 000")]
    OutOfRange {
        /// What was typed.
        found: String,
    },
}

/// Largest magnitude that is read as an amount: a tonne in grams. Anything beyond is a slip of the finger.
pub(super) const LARGEST: f64 = 1e6;

/// How much of what was typed a message repeats, in characters.
pub(super) const REPEATED: usize = 24;

const FRACTIONS: [(char, f64); 9] = [
    ('½', 1.0 / 2.0),
    ('¼', 1.0 / 4.0),
    ('¾', 3.0 / 4.0),
    ('⅓', 1.0 / 3.0),
    ('⅔', 2.0 / 3.0),
    ('⅛', 1.0 / 8.0),
    ('⅜', 3.0 / 8.0),
    ('⅝', 5.0 / 8.0),
    ('⅞', 7.0 / 8.0),
];

/// Reads `2`, `2.5`, `2,5`, `1½`, `1/2`, `1 1/2` and `−3` (with either minus sign).
pub fn parse_number(text: &str) -> Result<f64, NumberError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(NumberError::Missing);
    }
    let not_a_number = || NumberError::NotANumber {
        found: excerpt(text, REPEATED),
    };
    let (sign, digits) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text),
    };
    let magnitude = parse_unsigned(digits).ok_or_else(not_a_number)?;
    // Written so that what is no number at all (very many digits over very many digits) is out of range, too.
    if magnitude.is_nan() || magnitude >= LARGEST {
        return Err(NumberError::OutOfRange {
            found: excerpt(text, REPEATED),
        });
    }
    Ok(sign * magnitude)
}

fn parse_unsigned(text: &str) -> Option<f64> {
    if let Some((last_at, last)) = text.char_indices().next_back()
        && let Some((_, fraction)) = FRACTIONS.iter().find(|(symbol, _)| *symbol == last)
    {
        let whole = text[..last_at].trim();
        let whole = if whole.is_empty() {
            0.0
        } else {
            parse_decimal(whole)?
        };
        return (whole.fract() == 0.0).then_some(whole + fraction);
    }
    if let Some((before, denominator)) = text.split_once('/') {
        let denominator = parse_decimal(denominator.trim())?;
        let (whole, numerator) = match before.trim().rsplit_once(char::is_whitespace) {
            Some((whole, numerator)) => (parse_decimal(whole.trim())?, numerator),
            None => (0.0, before.trim()),
        };
        let numerator = parse_decimal(numerator)?;
        return (denominator > 0.0).then(|| whole + numerator / denominator);
    }
    parse_decimal(text)
}

/// Digits with at most one decimal sign; no exponents, signs, `inf` or `nan`.
fn parse_decimal(text: &str) -> Option<f64> {
    let allowed = text
        .chars()
        .all(|c| c.is_ascii_digit() || c == '.' || c == ',');
    let signs = text.chars().filter(|c| matches!(c, '.' | ',')).count();
    let digits = text.chars().any(|c| c.is_ascii_digit());
    if !allowed || signs > 1 || !digits {
        return None;
    }
    text.replace(',', ".").parse().ok()
}

/// A count as it is said at the counter: halves, quarters, thirds and eighths as fractions, else up to two decimals.
pub fn show_count(count: f64) -> String {
    let magnitude = count.abs();
    let sign = if count < 0.0 { "−" } else { "" };
    let whole = magnitude.floor();
    let rest = magnitude - whole;
    // What two decimals would show as a quarter is said as a quarter: read back, it must be said the same.
    let rounded = (rest * 100.0).round() / 100.0;
    // 1/3 typed as 0.333 should read as a third.
    let near = |fraction: f64| (rest - fraction).abs() < 0.002 || (rounded - fraction).abs() < 1e-9;
    // A few milligrams are little, and not nothing.
    if magnitude > 0.0 && magnitude < SMALLEST_PLAIN {
        return show_little(count);
    }
    if near(0.0) || near(1.0) {
        return format!("{sign}{}", magnitude.round());
    }
    if let Some((symbol, _)) = FRACTIONS.iter().find(|(_, fraction)| near(*fraction)) {
        let mut text = sign.to_owned();
        if whole > 0.0 {
            let _ = write!(text, "{whole}");
        }
        text.push(*symbol);
        return text;
    }
    show_number(count, 2)
        .trim_end_matches('0')
        .trim_end_matches('.')
        .to_owned()
}

/// Below this, two decimals say too little.
const SMALLEST_PLAIN: f64 = 0.01;

/// A very small count with two digits that mean something; `0` below a millionth.
fn show_little(count: f64) -> String {
    const MOST_DECIMALS: usize = 6;
    let zeros = (3..=MOST_DECIMALS)
        .find(|decimals| count.abs() * 10_f64.powi(i32::try_from(*decimals).unwrap_or(0)) >= 10.0);
    let text = show_number(count, zeros.unwrap_or(MOST_DECIMALS));
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A count with a no-break space between every three digits, as ISO 80000-1, 7.3.1 sets them: "5 244 720".
pub fn show_grouped(count: f64) -> String {
    let digits = format!("{count:.0}");
    let mut text = String::new();
    for (at, digit) in digits.chars().enumerate() {
        let left = digits.len() - at;
        if at > 0 && digits.len() > 4 && left.is_multiple_of(3) {
            text.push('\u{a0}');
        }
        text.push(digit);
    }
    text
}

/// A number with a fixed count of decimals and a true minus sign; never `-0`.
pub fn show_number(value: f64, decimals: usize) -> String {
    let text = format!("{:.decimals$}", value.abs());
    let is_zero = text.chars().all(|c| matches!(c, '0' | '.'));
    if value < 0.0 && !is_zero {
        format!("−{text}")
    } else {
        text
    }
}

/// A number with as few digits as it needs; very large and very small ones as powers of ten, so that a message stays short.
pub fn show_compact(value: f64) -> String {
    let magnitude = value.abs();
    if magnitude == 0.0 || (1e-4..1e7).contains(&magnitude) {
        value.to_string()
    } else {
        format!("{value:e}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_count_is_set_in_groups_of_three() {
        assert_eq!(show_grouped(5_244_720.0), "5\u{a0}244\u{a0}720");
        assert_eq!(show_grouped(41_000.0), "41\u{a0}000");
        assert_eq!(show_grouped(1681.0), "1681");
    }

    #[test]
    fn numbers_are_read_the_way_they_are_typed() {
        for (text, expected) in [
            ("2", 2.0),
            (" 2.5 ", 2.5),
            ("7,5", 7.5),
            ("1½", 1.5),
            ("½", 0.5),
            ("2 ¾", 2.75),
            ("1/4", 0.25),
            ("1 1/2", 1.5),
            ("-3", -3.0),
            ("−0,5", -0.5),
            (".5", 0.5),
        ] {
            assert_eq!(parse_number(text), Ok(expected), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_refused_not_guessed() {
        for text in [
            "", "two", "1.2.3", "1,000.5", "nan", "inf", "1e3", "1/0", "½½", "0.5½", "0x10", "/",
            "1/",
        ] {
            assert!(parse_number(text).is_err(), "{text}");
        }
        assert!(matches!(
            parse_number("9999999"),
            Err(NumberError::OutOfRange { .. })
        ));
    }

    #[test]
    fn counts_read_as_counter_fractions() {
        for (count, expected) in [
            (2.0, "2"),
            (2.5, "2½"),
            (0.25, "¼"),
            (1.0 / 3.0, "⅓"),
            (1.1, "1.1"),
            (0.0, "0"),
            (-0.5, "−½"),
            (1.37, "1.37"),
            (2.0 / 442.0, "0.0045"),
            (0.0012, "0.0012"),
            (0.010_5, "0.01"),
            (1e-9, "0"),
            (1.996, "2"),
            (236.2476, "236¼"),
        ] {
            assert_eq!(show_count(count), expected);
        }
    }

    #[test]
    fn zero_has_no_sign() {
        assert_eq!(show_number(-0.04, 1), "0.0");
        assert_eq!(show_number(-1.25, 2), "−1.25");
    }

    #[test]
    fn numbers_at_the_edges_stay_short() {
        for (value, text) in [
            (0.0, "0"),
            (12.5, "12.5"),
            (-3.0, "-3"),
            (1e308, "1e308"),
            (5e-324, "5e-324"),
            (f64::NAN, "NaN"),
            (f64::INFINITY, "inf"),
        ] {
            assert_eq!(show_compact(value), text);
        }
    }
}
