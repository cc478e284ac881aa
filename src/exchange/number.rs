//! Numbers as spreadsheets of many countries write them.

/// The sign before the decimals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DecimalSign {
    /// `1.5`
    Point,
    /// `1,5`
    Comma,
}

impl DecimalSign {
    /// The words on screens.
    pub fn words(self) -> &'static str {
        match self {
            Self::Point => "point (1.5)",
            Self::Comma => "comma (1,5)",
        }
    }

    fn character(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// The decimal sign that texts use: a sign that stands last in a number with both decides; so does one that is not
/// followed by exactly three digits. `None` when nothing decides.
pub fn decimal_sign_of<'text>(texts: impl IntoIterator<Item = &'text str>) -> Option<DecimalSign> {
    let (mut points, mut commas) = (0_usize, 0_usize);
    for text in texts {
        let last = |sign: char| text.rfind(sign);
        let decides = |at: usize, sign: char| {
            let digits = text[at + 1..]
                .chars()
                .take_while(char::is_ascii_digit)
                .count();
            text.matches(sign).count() == 1 && (1..=4).contains(&digits) && digits != 3
        };
        match (last('.'), last(',')) {
            (Some(point), Some(comma)) if point > comma => points += 1,
            (Some(_), Some(_)) => commas += 1,
            (Some(at), None) if decides(at, '.') => points += 1,
            (None, Some(at)) if decides(at, ',') => commas += 1,
            _ => {}
        }
    }
    match points.cmp(&commas) {
        std::cmp::Ordering::Greater => Some(DecimalSign::Point),
        std::cmp::Ordering::Less => Some(DecimalSign::Comma),
        std::cmp::Ordering::Equal => None,
    }
}

/// A number with the unit or currency behind or before it: "1.234,56 €" is 1234.56 and "€".
///
/// `None` when there is no number, or more than one, or a thousands sign stands where none can.
pub fn parse_foreign_number(text: &str, sign: DecimalSign) -> Option<(f64, String)> {
    let text = text.trim();
    let first = text.find(|letter: char| letter.is_ascii_digit())?;
    let last = text.rfind(|letter: char| letter.is_ascii_digit())?;
    let (before, rest) = text.split_at(first);
    let (digits, after) = rest.split_at(last - first + 1);
    let negative = before.trim_end().ends_with(['-', '−']);
    let decimal = sign.character();
    let (whole, fraction) = match digits.split_once(decimal) {
        Some((whole, fraction)) => (whole, fraction),
        None => (digits, ""),
    };
    if !fraction.chars().all(|letter| letter.is_ascii_digit()) {
        return None;
    }
    let groups: Vec<&str> = whole
        .split(['.', ',', '\'', '’', ' ', '\u{a0}', '\u{202f}'])
        .collect();
    let thousands = groups.len() == 1
        || groups[0].len() <= 3 && groups[1..].iter().all(|group| group.len() == 3);
    let all_digits = groups
        .iter()
        .all(|group| !group.is_empty() && group.chars().all(|letter| letter.is_ascii_digit()));
    if !thousands || !all_digits {
        return None;
    }
    let number: f64 = format!("{}.{fraction}0", groups.concat()).parse().ok()?;
    let beside = format!(
        "{}{}",
        before.trim().trim_end_matches(['-', '−', '+']),
        after.trim()
    );
    Some((if negative { -number } else { number }, beside))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_many_countries_are_read() {
        use DecimalSign::{Comma, Point};
        for (text, sign, number, beside) in [
            ("1.5", Point, 1.5, ""),
            ("1,5", Comma, 1.5, ""),
            ("1.234,56 €", Comma, 1234.56, "€"),
            ("$1,234.56", Point, 1234.56, "$"),
            ("1 234,5 g", Comma, 1234.5, "g"),
            ("1'000.00", Point, 1000.0, ""),
            ("-3", Point, -3.0, ""),
            ("2 kg", Point, 2.0, "kg"),
        ] {
            let (read, unit) = parse_foreign_number(text, sign).unwrap();
            assert!((read - number).abs() < 1e-9, "{text}: {read}");
            assert_eq!(unit, beside, "{text}");
        }
        for (text, sign) in [
            ("", Point),
            ("none", Point),
            ("1,5", Point),
            ("1.2.3", Comma),
            ("3 x 4", Point),
            ("12 bis 15", Comma),
        ] {
            assert_eq!(parse_foreign_number(text, sign), None, "{text}");
        }
    }

    #[test]
    fn the_decimal_sign_is_told_from_all_numbers_together() {
        assert_eq!(decimal_sign_of(["1.234", "5,5"]), Some(DecimalSign::Comma));
        assert_eq!(decimal_sign_of(["1,234.5"]), Some(DecimalSign::Point));
        assert_eq!(decimal_sign_of(["1.234", "12"]), None);
    }
}
