//! Numbers as the language writes them, with the units that a person reads.

use super::Speaker;
use crate::quantity::{Uncertain, beyond_digits, rounded, show_count, show_number};

impl Speaker<'_> {
    /// A number with so many decimals, a true minus sign and no sign between thousands; never `-0`.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        self.localised(&show_number(value, decimals), value)
    }

    /// A count as it is said at the counter, in quarters and thirds where it is one: "1½".
    pub fn count(&self, count: f64) -> String {
        self.localised(&show_count(count), count)
    }

    /// "58 °C" or "136 °F".
    pub fn temperature(&self, celsius: f64, decimals: usize) -> String {
        self.in_unit(celsius, "°C", decimals)
    }

    /// A difference of temperatures: "3.0 K" or "5.4 °F".
    pub fn kelvin(&self, kelvin: f64, decimals: usize) -> String {
        self.in_unit(kelvin, "K", decimals)
    }

    /// "500 ml" or "16.9 fl oz"; the decimals are those of the millilitres.
    pub fn volume(&self, millilitres: f64, decimals: usize) -> String {
        self.in_unit(millilitres, "ml", decimals)
    }

    /// A value of a metric unit with that unit, or with the one that the person reads in its place.
    pub fn in_unit(&self, metric: f64, unit: &str, decimals: usize) -> String {
        let shown = self.units.of(unit);
        let digits = self.localised(&shown.digits(metric, decimals), metric);
        if shown.symbol.is_empty() {
            return digits;
        }
        format!("{digits} {}", shown.symbol)
    }

    /// "20.3 ± 1.7 g": a value with its standard uncertainty, to the digits that mean something.
    pub fn uncertain(&self, metric: Uncertain, unit: &str) -> String {
        let shown = self.units.of(unit);
        let figure = shown.uncertain(metric);
        let rounded = rounded(figure.value, Some(figure.u));
        let mut text = self.localised(&rounded.value, figure.value);
        if let Some(u) = rounded.u {
            text.push_str(" ± ");
            text.push_str(&self.localised(&u, figure.u));
        }
        if !shown.symbol.is_empty() {
            text.push('\u{a0}');
            text.push_str(shown.symbol);
        }
        text
    }

    /// Digits that the core wrote, in the signs of the language. What is told without digits, or with a fraction, is left.
    fn localised(&self, digits: &str, value: f64) -> String {
        if beyond_digits(value).is_some() || !digits.contains('.') {
            return digits.to_owned();
        }
        let (sign, magnitude) = match digits.strip_prefix('−') {
            Some(magnitude) => ("−", magnitude),
            None => ("", digits),
        };
        match self.catalogue().decimal(magnitude) {
            Some(written) => format!("{sign}{written}"),
            None => digits.to_owned(),
        }
    }
}
