//! The nutrition declaration: order of Regulation (EU) 1169/2011, Annex XV, and rounding of the Commission's guidance.
//!
//! Rounding: Guidance document on tolerances for nutrient values declared on a label, December 2012, table 4 (value from
//! memory). A figure with something missing is printed as "at least", and one that can't be told as nothing at all.

use super::balance::Balance;
use crate::balance::measurand::Measurand;
use crate::quantity::show_number;

/// How one row is rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Rounding {
    /// To 1.
    Energy,
    /// ≥ 10 g to 1 g, below to 0.1 g, up to 0.5 g "<0.5".
    Macronutrient,
    /// ≥ 10 g to 1 g, below to 0.1 g, up to 0.1 g "<0.1".
    FattyAcid,
    /// ≥ 1 g to 0.1 g, below to 0.01 g, up to 0.0125 g "<0.01".
    Salt,
}

/// A value as it is printed.
#[derive(Clone, Debug, PartialEq)]
pub struct PrintedValue {
    /// The number before rounding, the known part of it when something is missing.
    pub value: f64,
    /// The number as it is printed: "12", "3.4", "<0.5".
    pub text: String,
    /// Whether it is all of it; "at least" otherwise.
    pub is_complete: bool,
}

/// One row of the declaration.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionRow {
    /// Which figure of the balance it is.
    pub measurand: Measurand,
    /// Whether it is a part of the row above that is none: "of which sugars".
    pub is_part: bool,
    /// The unit.
    pub unit: &'static str,
    /// Per 100 ml of the mixed drink, without what sits in it or floats on it; `None` for an empty drink.
    pub per_100_ml: Option<PrintedValue>,
    /// In the whole drink.
    pub per_drink: PrintedValue,
}

/// What a row is and how it is rounded.
struct Row {
    measurand: Measurand,
    is_part: bool,
    rounding: Rounding,
}

const fn row(measurand: Measurand, rounding: Rounding) -> Row {
    Row {
        measurand,
        is_part: false,
        rounding,
    }
}

const fn part(measurand: Measurand, rounding: Rounding) -> Row {
    Row {
        measurand,
        is_part: true,
        rounding,
    }
}

/// The rows in the order of Annex XV, with energy in both units.
const ROWS: [Row; 10] = [
    row(Measurand::EnergyKj, Rounding::Energy),
    row(Measurand::EnergyKcal, Rounding::Energy),
    row(Measurand::Fat, Rounding::Macronutrient),
    part(Measurand::Saturates, Rounding::FattyAcid),
    row(Measurand::Carbohydrate, Rounding::Macronutrient),
    part(Measurand::TotalSugar, Rounding::Macronutrient),
    part(Measurand::Polyols, Rounding::Macronutrient),
    row(Measurand::Fibre, Rounding::Macronutrient),
    row(Measurand::Protein, Rounding::Macronutrient),
    row(Measurand::Salt, Rounding::Salt),
];

/// The declaration of a drink.
pub fn declaration(balance: &Balance) -> Vec<NutritionRow> {
    ROWS.iter()
        .map(|row| {
            let printed = |measurand: Measurand| {
                let value = balance.figures.of[measurand.slot()];
                PrintedValue {
                    value,
                    text: row.rounding.print(value),
                    is_complete: balance.figures.missing(measurand) == 0,
                }
            };
            let is_given = |measurand: &Measurand| balance.figures.get(*measurand).is_some();
            NutritionRow {
                measurand: row.measurand,
                is_part: row.is_part,
                unit: row.measurand.unit(),
                per_100_ml: row.measurand.per_100_ml().filter(is_given).map(printed),
                per_drink: printed(row.measurand),
            }
        })
        .collect()
}

/// A value as a label prints it; `None` for a figure that no declaration has.
pub fn printed(measurand: Measurand, value: f64) -> Option<String> {
    ROWS.iter()
        .find(|row| row.measurand == measurand)
        .map(|row| row.rounding.print(value))
}

impl Rounding {
    fn print(self, value: f64) -> String {
        if !value.is_finite() {
            return show_number(value, 0);
        }
        let (whole_from, decimals, nothing_to, nothing) = match self {
            Self::Energy => return show_number(value.max(0.0).round(), 0),
            Self::Macronutrient => (10.0, 1, 0.5, "<0.5"),
            Self::FattyAcid => (10.0, 1, 0.1, "<0.1"),
            Self::Salt => (1.0, 2, 0.0125, "<0.01"),
        };
        if value <= 0.0 {
            "0".to_owned()
        } else if value <= nothing_to {
            nothing.to_owned()
        } else {
            let decimals = if value >= whole_from {
                decimals - 1
            } else {
                decimals
            };
            // Halves go up, as people round; the formatter takes them to the even digit.
            let scale = if decimals == 0 {
                1.0
            } else {
                10.0_f64.powf(decimals as f64)
            };
            show_number((value * scale).round() / scale, decimals)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_are_rounded_as_the_guidance_says_at_and_around_each_line() {
        use Measurand::{EnergyKj, Fat, Salt, Saturates, TotalSugar};
        for (measurand, value, expected) in [
            (EnergyKj, 612.4, "612"),
            (EnergyKj, 0.4, "0"),
            (EnergyKj, f64::NAN, "(out of range)"),
            (EnergyKj, f64::INFINITY, "(out of range)"),
            (Fat, f64::NAN, "(out of range)"),
            (TotalSugar, 23.46, "23"),
            (TotalSugar, 10.0, "10"),
            (TotalSugar, 9.96, "10.0"),
            (TotalSugar, 9.94, "9.9"),
            (TotalSugar, 0.51, "0.5"),
            (TotalSugar, 0.5, "<0.5"),
            (TotalSugar, 0.0, "0"),
            (Fat, 3.24, "3.2"),
            (Saturates, 0.11, "0.1"),
            (Saturates, 0.1, "<0.1"),
            (Saturates, 12.4, "12"),
            (Salt, 1.26, "1.3"),
            (Salt, 0.994, "0.99"),
            (Salt, 0.013, "0.01"),
            (Salt, 0.0125, "<0.01"),
        ] {
            assert_eq!(
                printed(measurand, value).as_deref(),
                Some(expected),
                "{measurand:?} {value}"
            );
        }
        assert_eq!(printed(Measurand::Volume, 5.0), None);
    }

    #[test]
    fn the_rows_are_in_the_order_of_the_annex() {
        let rows: Vec<(Measurand, bool)> = ROWS
            .iter()
            .map(|row| (row.measurand, row.is_part))
            .collect();
        let fat = rows.iter().position(|row| *row == (Measurand::Fat, false));
        assert_eq!(rows[fat.unwrap() + 1], (Measurand::Saturates, true));
        assert_eq!(rows.last(), Some(&(Measurand::Salt, false)));
    }
}
