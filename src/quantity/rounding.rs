//! How many digits a figure is shown with: as many as its uncertainty leaves it.

use super::{Uncertain, show_number};

/// The most decimals that are shown.
const MOST_DECIMALS: i32 = 3;

/// Part of a value below which its uncertainty is no news.
const VANISHES: f64 = 1e-5;

/// Leading digits of an uncertainty below this are shown with a second digit: rounding ±1.4 to ±1 would lose a third.
const SECOND_DIGIT_BELOW: f64 = 2.95;

/// A figure in digits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rounded {
    /// The value.
    pub value: String,
    /// Its standard uncertainty; `None` when there is none, or it vanishes.
    pub u: Option<String>,
}

/// Rounds a value to the last digit of its standard uncertainty, which keeps one or two.
pub fn rounded(value: f64, u: Option<f64>) -> Rounded {
    rounded_at_most(value, u, MOST_DECIMALS)
}

/// Rounds the same way, to no more than so many decimals.
pub fn rounded_at_most(value: f64, u: Option<f64>, most_decimals: i32) -> Rounded {
    rounded_to(value, u, decimals_of(value, u).min(most_decimals))
}

/// A figure that is read against another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Beside {
    /// The figure.
    pub figure: Rounded,
    /// What it has more than the other, signed; `None` when that is not asked or not known.
    pub more: Option<Rounded>,
}

/// Rounds figures that are read against the first of them to one decimal place, the finest that one of them or of the differences
/// would get by itself but no more than so many decimals. The differences are those of the digits that are shown.
///
/// With each figure goes the standard uncertainty of its difference, where that is wanted: what two figures share cancels, and
/// the difference may be known to a finer place than they are.
pub fn rounded_beside(
    figures: &[(Option<Uncertain>, Option<f64>)],
    most_decimals: i32,
) -> Vec<Option<Beside>> {
    let known = figures
        .iter()
        .filter_map(|(one, doubt)| Some((one.as_ref()?, *doubt)));
    let finest = known
        .flat_map(|(one, doubt)| {
            let of_difference = counts(one.value, doubt).map(decimals_by_uncertainty);
            of_difference
                .into_iter()
                .chain([decimals_of(one.value, Some(one.u))])
        })
        .max()
        .unwrap_or(0);
    let decimals = finest.min(most_decimals).min(MOST_DECIMALS);
    let unit = 10.0_f64.powi(decimals);
    let place = |value: f64| (value * unit).round();
    let first = figures.first().and_then(|(first, _)| *first);
    let beside = |(one, doubt): &(Option<Uncertain>, Option<f64>)| {
        let one = one.as_ref()?;
        let more = first.as_ref().zip(*doubt).map(|(first, doubt)| {
            let more = place(one.value) - place(first.value);
            let mut found = rounded_to(more / unit, Some(doubt), decimals);
            if more > 0.0 {
                found.value.insert(0, '+');
            }
            found
        });
        let figure = rounded_to(place(one.value) / unit, Some(one.u), decimals);
        Some(Beside { figure, more })
    };
    figures.iter().map(beside).collect()
}

/// The decimals that a figure gets by itself.
fn decimals_of(value: f64, u: Option<f64>) -> i32 {
    counts(value, u).map_or_else(|| decimals_by_size(value), decimals_by_uncertainty)
}

/// An uncertainty that vanishes beside its value is that of the arithmetic, not of the drink.
fn counts(value: f64, u: Option<f64>) -> Option<f64> {
    u.filter(|u| u.is_finite() && *u > value.abs() * VANISHES)
}

fn rounded_to(value: f64, u: Option<f64>, decimals: i32) -> Rounded {
    let u = counts(value, u)
        .map(|u| show(u, decimals))
        .filter(|text| text.chars().any(|digit| ('1'..='9').contains(&digit)));
    Rounded {
        value: show(value, decimals),
        u,
    }
}

/// Shows with so many decimals; with fewer than none, to tens or hundreds.
fn show(value: f64, decimals: i32) -> String {
    if let Ok(decimals) = usize::try_from(decimals) {
        return show_number(value, decimals);
    }
    let unit = 10.0_f64.powi(-decimals);
    show_number((value / unit).round() * unit, 0)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "the exponent of a number is below 400"
)]
fn decimals_by_uncertainty(u: f64) -> i32 {
    let exponent = u.log10().floor();
    let leading = u / 10.0_f64.powf(exponent);
    let digits = if leading < SECOND_DIGIT_BELOW { 2 } else { 1 };
    digits - 1 - exponent as i32
}

fn decimals_by_size(value: f64) -> i32 {
    match value.abs() {
        0.0 => 0,
        size if size < 10.0 => 2,
        size if size < 100.0 => 1,
        _ => 0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_ends_where_its_uncertainty_does() {
        for (value, u, shown, shown_u) in [
            (20.273, 1.234, "20.3", Some("1.2")),
            (58.413, 0.52, "58.4", Some("0.5")),
            (342.4, 12.7, "342", Some("13")),
            (1234.0, 156.0, "1230", Some("160")),
            (1234.0, 450.0, "1200", Some("500")),
            (0.018_2, 0.002_1, "0.018", Some("0.002")),
            (-3.27, 0.31, "−3.3", Some("0.3")),
            (0.0, 0.04, "0.00", Some("0.04")),
        ] {
            let expected = Rounded {
                value: shown.into(),
                u: shown_u.map(str::to_owned),
            };
            assert_eq!(rounded(value, Some(u)), expected, "{value} ± {u}");
        }
    }

    #[test]
    fn a_limit_of_decimals_drops_an_uncertainty_below_it() {
        let expected = Rounded {
            value: "0.64".into(),
            u: None,
        };
        assert_eq!(rounded_at_most(0.643, Some(0.004), 2), expected);
    }

    #[test]
    fn without_an_uncertainty_there_is_no_plus_minus() {
        assert_eq!(
            rounded(12.345, None),
            Rounded {
                value: "12.3".into(),
                u: None
            }
        );
        assert_eq!(rounded(0.0, None).value, "0");
        assert_eq!(rounded(12.345, Some(0.0)).u, None);
        assert_eq!(rounded(12.345, Some(f64::NAN)).u, None);
        assert_eq!(
            rounded(1.0, Some(1e-9)),
            Rounded {
                value: "1.00".into(),
                u: None
            }
        );
    }
}
