//! Numbers as the cells of a table hold them: with a unit or a currency before or behind.

use super::field::{Field, Mapping};
use super::table::TextTable;
use crate::quantity::{DecimalSign, NumberError, decimal_sign_of, is_fraction, parse_with_sign};

/// The decimal signs of a table.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct DecimalSigns {
    /// What a person says of the whole table.
    pub chosen: Option<DecimalSign>,
    /// What the numbers of the whole table tell, when they agree.
    pub found: Option<DecimalSign>,
    /// What the numbers of each column tell.
    columns: Vec<Option<DecimalSign>>,
}

impl DecimalSigns {
    /// What the numbers of a table tell. A cell such as `1.250` tells nothing; `12,50` in its column does.
    pub fn of(table: &TextTable, mapping: &Mapping, chosen: Option<DecimalSign>) -> Self {
        let is_number = |at: &usize| {
            mapping
                .columns
                .get(*at)
                .copied()
                .flatten()
                .is_some_and(Field::is_number)
        };
        let cells = |at: usize| {
            let cells = table
                .rows
                .iter()
                .filter_map(move |(_, cells)| cells.get(at));
            cells.map(String::as_str)
        };
        let numbers = || (0..mapping.columns.len()).filter(is_number);
        Self {
            chosen,
            found: decimal_sign_of(numbers().flat_map(cells)),
            columns: (0..mapping.columns.len())
                .map(|at| is_number(&at).then(|| decimal_sign_of(cells(at)))?)
                .collect(),
        }
    }

    /// The sign in a column: the one that a person chose, that of the column, or that of the table.
    pub(super) fn in_column(&self, at: usize) -> Option<DecimalSign> {
        let of_column = || self.columns.get(at).copied().flatten();
        self.chosen.or_else(of_column).or(self.found)
    }
}

/// A number with the unit or currency behind or before it: "1.234,56 €" is 1234.56 and "€". Without a decimal sign, a number that
/// may be a thousand or one is refused.
pub fn number_and_unit(
    text: &str,
    sign: Option<DecimalSign>,
) -> Result<(f64, String), NumberError> {
    let text = text.trim();
    let is_digit = |c: char| c.is_ascii_digit() || is_fraction(c);
    let (Some(first), Some(last)) = (text.find(is_digit), text.rfind(is_digit)) else {
        return parse_with_sign(text, sign).map(|number| (number, String::new()));
    };
    let end = last + text[last..].chars().next().map_or(0, char::len_utf8);
    // ".5" begins before its first digit.
    let begin = match text[..first].char_indices().next_back() {
        Some((at, '.' | ',')) => at,
        _ => first,
    };
    let (before, after) = (&text[..begin], &text[end..]);
    let number = parse_with_sign(&text[begin..end], sign)?;
    let is_negative = before.trim_end().ends_with(['-', '−']);
    let before = before.trim().trim_end_matches(['-', '−', '+']);
    let beside = format!("{before}{}", after.trim());
    Ok((if is_negative { -number } else { number }, beside))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_many_countries_are_read_with_what_stands_beside_them() {
        use DecimalSign::{Comma, Point};
        for (text, sign, number, beside) in [
            ("1.5", Some(Point), 1.5, ""),
            ("1,5", None, 1.5, ""),
            ("1.234,56 €", None, 1234.56, "€"),
            ("$1,234.56", None, 1234.56, "$"),
            ("1 234,5 g", Some(Comma), 1234.5, "g"),
            ("1'000.00", Some(Point), 1000.0, ""),
            ("-3", None, -3.0, ""),
            ("2 kg", None, 2.0, "kg"),
            ("1½ kg", None, 1.5, "kg"),
            ("€ .5", None, 0.5, "€"),
            ("1.250 g", Some(Comma), 1250.0, "g"),
            ("1.250 g", Some(Point), 1.25, "g"),
        ] {
            let (read, unit) = number_and_unit(text, sign).unwrap();
            assert!((read - number).abs() < 1e-9, "{text}: {read}");
            assert_eq!(unit, beside, "{text}");
        }
        for (text, sign) in [
            ("", None),
            ("none", None),
            ("12,50", Some(Point)),
            ("1.2.3", Some(Comma)),
            ("3 x 4", None),
            ("12 bis 15", Some(Comma)),
            ("1.250 g", None),
        ] {
            assert!(number_and_unit(text, sign).is_err(), "{text}");
        }
    }
}
