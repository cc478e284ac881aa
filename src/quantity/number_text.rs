//! Numbers as people type and read them: decimal comma, fractions, counter halves and quarters.

use std::fmt::Write as _;

use super::visible_text::excerpt;

/// Why a text is not a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NumberError {
    /// Nothing was typed.
    Missing,
    /// There are characters that belong to no number.
    NotANumber {
        /// What was typed.
        found: String,
    },
    /// A thousand or one: the sign between the digits may be either.
    Ambiguous {
        /// What was typed.
        found: String,
        /// The number without a sign between thousands.
        thousands: String,
        /// The number with decimals, written so that it can be nothing else.
        decimals: String,
    },
    /// A unit of another kind than the one that is asked for.
    AnotherUnit {
        /// The unit that was typed.
        found: String,
        /// The unit that is asked for.
        unit: String,
    },
    /// Too large or too small for an amount.
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

/// Whether a letter is a fraction by itself: "½".
pub fn is_fraction(c: char) -> bool {
    FRACTIONS.iter().any(|(symbol, _)| *symbol == c)
}

/// The sign before the decimals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DecimalSign {
    /// `1.5`
    Point,
    /// `1,5`
    Comma,
}

impl DecimalSign {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Point, Self::Comma];

    fn character(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// What is known of a number before it is read. `1,250` is 1250 or 1.25, and this is what may tell which.
#[derive(Clone, Copy, Debug)]
struct Context {
    /// The decimal sign that is in use; `None` when either may be.
    sign: Option<DecimalSign>,
    /// The largest number that makes sense.
    most: f64,
}

/// Reads `2`, `2.5`, `2,5`, `1½`, `1/2`, `1 1/2`, `1 000`, `1.000,50` and `−3` (with either minus sign). `1,000` and `1.000`,
/// which may be a thousand or one, are refused.
pub fn parse_number(text: &str) -> Result<f64, NumberError> {
    parse_up_to(text, LARGEST)
}

/// The same where no number above `most` makes sense: there `1,033` can only be a little more than one.
pub fn parse_up_to(text: &str, most: f64) -> Result<f64, NumberError> {
    parse(text, Context { sign: None, most })
}

/// The same where the decimal sign may be known: what has another sign in its place is refused.
pub fn parse_with_sign(text: &str, sign: Option<DecimalSign>) -> Result<f64, NumberError> {
    let most = LARGEST;
    parse(text, Context { sign, most })
}

fn parse(text: &str, context: Context) -> Result<f64, NumberError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(NumberError::Missing);
    }
    let (sign, digits) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text),
    };
    let magnitude = parse_unsigned(digits, context).map_err(|problem| problem.of(text))?;
    // Written so that what is no number at all (very many digits over very many digits) is out of range, too.
    if magnitude.is_nan() || magnitude >= LARGEST {
        return Err(NumberError::OutOfRange {
            found: excerpt(text, REPEATED),
        });
    }
    Ok(sign * magnitude)
}

/// Why digits are not a number.
enum Problem {
    NotANumber,
    Ambiguous { whole: String, fraction: String },
}

impl Problem {
    fn of(self, text: &str) -> NumberError {
        let found = excerpt(text, REPEATED);
        match self {
            Self::NotANumber => NumberError::NotANumber { found },
            Self::Ambiguous { whole, fraction } => NumberError::Ambiguous {
                found,
                thousands: format!("{whole}{fraction}"),
                // With a fourth decimal it can't be a group of three.
                decimals: format!("{whole}.{fraction}0"),
            },
        }
    }
}

fn parse_unsigned(text: &str, context: Context) -> Result<f64, Problem> {
    if let Some((last_at, last)) = text.char_indices().next_back()
        && let Some((_, fraction)) = FRACTIONS.iter().find(|(symbol, _)| *symbol == last)
    {
        let whole = text[..last_at].trim();
        let whole = if whole.is_empty() {
            0.0
        } else {
            parse_decimal(whole, context)?
        };
        return if whole.fract() == 0.0 {
            Ok(whole + fraction)
        } else {
            Err(Problem::NotANumber)
        };
    }
    if let Some((before, denominator)) = text.split_once('/') {
        let denominator = parse_decimal(denominator.trim(), context)?;
        let (whole, numerator) = match before.trim().rsplit_once(char::is_whitespace) {
            Some((whole, numerator)) => (parse_decimal(whole.trim(), context)?, numerator),
            None => (0.0, before.trim()),
        };
        let numerator = parse_decimal(numerator, context)?;
        return if denominator > 0.0 {
            Ok(whole + numerator / denominator)
        } else {
            Err(Problem::NotANumber)
        };
    }
    parse_decimal(text, context)
}

/// Whether a character only ever parts groups of three digits: a space of any width or an apostrophe.
fn parts_groups(c: char) -> bool {
    matches!(
        c,
        ' ' | '\u{a0}' | '\u{2007}' | '\u{2009}' | '\u{202f}' | '\'' | '’'
    )
}

/// Digits with at most one decimal sign, perhaps in groups of three; no exponents, signs, `inf` or `nan`.
fn parse_decimal(text: &str, context: Context) -> Result<f64, Problem> {
    let is_sign = |c: char| matches!(c, '.' | ',');
    let allowed = |c: char| c.is_ascii_digit() || is_sign(c) || parts_groups(c);
    if !text.chars().all(allowed) || !text.contains(|c: char| c.is_ascii_digit()) {
        return Err(Problem::NotANumber);
    }
    let signs: Vec<char> = text.chars().filter(|c| is_sign(*c)).collect();
    let last = signs.last().copied();
    let count = |sign: char| signs.iter().filter(|other| **other == sign).count();
    let decimal = match (last, context.sign.map(DecimalSign::character)) {
        (None, _) => None,
        // A sign that stands more than once parts groups.
        (Some(last), known) if count(last) > 1 => {
            if count(last) < signs.len() || known == Some(last) {
                return Err(Problem::NotANumber);
            }
            None
        }
        (Some(last), Some(known)) => (last == known).then_some(last),
        // After groups of thousands, another sign is before the decimals.
        (Some(last), None) if signs.len() > 1 || text.contains(parts_groups) => Some(last),
        (Some(last), None) => {
            let (whole, fraction) = text.split_once(last).unwrap_or((text, ""));
            let may_be_thousands = fraction.len() == 3
                && (1..=3).contains(&whole.len())
                && !whole.starts_with('0')
                && format!("{whole}{fraction}")
                    .parse()
                    .is_ok_and(|number: f64| number <= context.most);
            if may_be_thousands {
                return Err(Problem::Ambiguous {
                    whole: whole.to_owned(),
                    fraction: fraction.to_owned(),
                });
            }
            Some(last)
        }
    };
    let (whole, fraction) = match decimal {
        Some(sign) => text.rsplit_once(sign).unwrap_or((text, "")),
        None => (text, ""),
    };
    let digits = whole_digits(whole).ok_or(Problem::NotANumber)?;
    if !fraction.chars().all(|c| c.is_ascii_digit()) {
        return Err(Problem::NotANumber);
    }
    format!("0{digits}.{fraction}0")
        .parse()
        .map_err(|_| Problem::NotANumber)
}

/// The digits before the decimals without what parts them into groups; `None` when the groups are not of three, or are parted in
/// two ways.
fn whole_digits(whole: &str) -> Option<String> {
    let mut between = whole.chars().filter(|c| !c.is_ascii_digit());
    let Some(separator) = between.next() else {
        return Some(whole.to_owned());
    };
    if between.any(|other| other != separator) {
        return None;
    }
    let groups: Vec<&str> = whole.split(separator).collect();
    let (first, rest) = groups.split_first()?;
    let is_grouped = (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && rest.iter().all(|group| group.len() == 3);
    is_grouped.then(|| groups.concat())
}

/// The decimal sign that all of these texts use: one tells by both signs in a number, or by decimals that can't be a group of
/// three. `None` when nothing tells, or when they disagree.
pub fn decimal_sign_of<'text>(texts: impl IntoIterator<Item = &'text str>) -> Option<DecimalSign> {
    let mut found = None;
    for text in texts {
        let digits = text.trim_matches(|c: char| !c.is_ascii_digit());
        let reads = |sign| parse_with_sign(digits, Some(sign)).ok();
        let told = match DecimalSign::ALL.map(reads) {
            [Some(_), None] => DecimalSign::Point,
            [None, Some(_)] => DecimalSign::Comma,
            _ => continue,
        };
        if found.is_some_and(|found| found != told) {
            return None;
        }
        found = Some(told);
    }
    found
}

/// A number as text that is read as the same number, with at most so many decimals: `1.25`, and `1.1250`, because `1.125` could
/// be a thousand and more.
pub fn show_editable(value: f64, most_decimals: usize) -> String {
    let text = show_number(value, most_decimals);
    if !text.contains('.') {
        return text;
    }
    let mut text = text.trim_end_matches('0').trim_end_matches('.').to_owned();
    if matches!(parse_number(&text), Err(NumberError::Ambiguous { .. })) {
        text.push('0');
    }
    text
}

/// A count as it is said at the counter: halves, quarters, thirds and eighths as fractions, else up to two decimals.
pub fn show_count(count: f64) -> String {
    if let Some(text) = beyond_digits(count) {
        return text;
    }
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

/// What stands for a number that no digits say: the figures of the book are beyond all measure, and its findings say which.
const NO_DIGITS: &str = "(out of range)";

/// From here on a number is written as a power of ten: no drink comes near, and its digits would fill a page.
const LARGEST_IN_DIGITS: f64 = 1e15;

/// A number that is not written in digits, because it has none or far too many: "(out of range)", "4.9e287".
pub fn beyond_digits(value: f64) -> Option<String> {
    if !value.is_finite() {
        return Some(NO_DIGITS.to_owned());
    }
    let sign = if value < 0.0 { "−" } else { "" };
    (value.abs() >= LARGEST_IN_DIGITS).then(|| format!("{sign}{:.1e}", value.abs()))
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
    if let Some(text) = beyond_digits(count) {
        return text;
    }
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
    if let Some(text) = beyond_digits(value) {
        return text;
    }
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
    if !value.is_finite() {
        return NO_DIGITS.to_owned();
    }
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
    fn no_number_is_shown_as_a_word_of_the_machine_or_fills_a_page() {
        let edges = [
            f64::INFINITY,
            f64::NEG_INFINITY,
            f64::NAN,
            f64::MAX,
            -1e308,
            1e15,
        ];
        let powers = (-320..=308).map(|power| 1.234_567 * 10_f64.powi(power));
        for value in edges.into_iter().chain(powers) {
            for text in [
                show_number(value, 3),
                show_compact(value),
                show_count(value),
                show_grouped(value),
                show_editable(value, 6),
            ] {
                assert!(
                    !text.contains("inf") && !text.contains("NaN"),
                    "{value}: {text}"
                );
                assert!(text.chars().count() <= 30, "{value}: {text}");
            }
        }
        assert_eq!(show_number(-4.908e287, 2), "−4.9e287");
        assert_eq!(show_number(f64::NAN, 2), "(out of range)");
    }

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
            ("0,125", 0.125),
            ("0.125", 0.125),
            ("1234,567", 1234.567),
            ("1.2345", 1.2345),
            ("1 000", 1000.0),
            ("1\u{a0}000,5", 1000.5),
            ("1 234,567", 1234.567),
            ("12\u{202f}500", 12500.0),
            ("1’000.00", 1000.0),
            ("1.000,50", 1000.5),
            ("1,000.5", 1000.5),
        ] {
            assert_eq!(parse_number(text), Ok(expected), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_refused_not_guessed() {
        for text in [
            "",
            "two",
            "1.2.3",
            "nan",
            "inf",
            "1e3",
            "1/0",
            "½½",
            "0.5½",
            "0x10",
            "/",
            "1/",
            "1 00",
            "1 0000",
            "0 500",
            "1,00,000",
            "1.000.50",
            "1 000,000,5",
            "1,000 000",
            "100,000,0",
            "1' ",
        ] {
            assert!(parse_number(text).is_err(), "{text}");
        }
        assert!(matches!(
            parse_number("9999999"),
            Err(NumberError::OutOfRange { .. })
        ));
    }

    #[test]
    fn a_thousand_or_one_is_refused_unless_something_tells() {
        for text in [
            "1,000",
            "1.000",
            "12,500",
            "-250.125",
            "999,999",
            "1,000 1/2",
            "1.250½",
        ] {
            assert!(
                matches!(parse_number(text), Err(NumberError::Ambiguous { .. })),
                "{text}"
            );
        }
        let ambiguous = NumberError::Ambiguous {
            found: "1,250".into(),
            thousands: "1250".into(),
            decimals: "1.2500".into(),
        };
        assert_eq!(parse_number("1,250"), Err(ambiguous));
        assert_eq!(parse_up_to("1,033", 100.0), Ok(1.033));
        assert!(parse_up_to("1,033", 2000.0).is_err());
        assert_eq!(parse_with_sign("1,250", Some(DecimalSign::Comma)), Ok(1.25));
        assert_eq!(
            parse_with_sign("1,250", Some(DecimalSign::Point)),
            Ok(1250.0)
        );
        assert_eq!(
            parse_with_sign("1.250,5", Some(DecimalSign::Comma)),
            Ok(1250.5)
        );
        assert!(parse_with_sign("12,50", Some(DecimalSign::Point)).is_err());
        assert!(parse_with_sign("1,000,000", Some(DecimalSign::Comma)).is_err());
        assert!(parse_with_sign("0,500", Some(DecimalSign::Point)).is_err());
        assert!(matches!(
            parse_number("1,000,000"),
            Err(NumberError::OutOfRange { .. })
        ));
    }

    #[test]
    fn the_decimal_sign_is_told_from_all_numbers_together() {
        assert_eq!(decimal_sign_of(["1.234", "5,5"]), Some(DecimalSign::Comma));
        assert_eq!(decimal_sign_of(["1,234.5"]), Some(DecimalSign::Point));
        assert_eq!(decimal_sign_of(["0.125"]), Some(DecimalSign::Point));
        assert_eq!(
            decimal_sign_of(["$ 1.250,00", "none"]),
            Some(DecimalSign::Comma)
        );
        assert_eq!(decimal_sign_of(["1.234", "12"]), None);
        assert_eq!(decimal_sign_of(["1.25", "5,5"]), None);
    }

    #[test]
    fn what_is_shown_in_a_field_is_read_as_the_same_number() {
        for (value, text) in [
            (1.125, "1.1250"),
            (0.125, "0.125"),
            (28.349, "28.3490"),
            (1234.567, "1234.567"),
            (100.0, "100"),
            (-2.5, "−2.5"),
        ] {
            assert_eq!(show_editable(value, 4), text);
        }
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
            (f64::NAN, "(out of range)"),
            (f64::INFINITY, "(out of range)"),
        ] {
            assert_eq!(show_compact(value), text);
        }
    }
}
