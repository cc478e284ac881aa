//! Numbers as the language writes them, with the units that a person reads.

use super::Speaker;
use crate::quantity::{
    Temperature, Uncertain, beyond_digits, rounded, rounded_at_most, show_count, show_number,
};

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

    /// "77 °C", or both ends of what is stated as a range: "75–80 °C".
    pub fn stated_temperature(&self, stated: Temperature, most_decimals: usize) -> String {
        let unit = self.units.of("°C");
        let digits = |celsius: f64| {
            let digits = unit.trimmed(celsius, most_decimals);
            self.localised(&digits, celsius)
        };
        with_unit(stated.shown(digits), unit.symbol)
    }

    /// A difference of temperatures: "3.0 K" or "5.4 °F".
    pub fn kelvin(&self, kelvin: f64, decimals: usize) -> String {
        self.in_unit(kelvin, "K", decimals)
    }

    /// "500 ml" or "16.9 fl oz"; the decimals are those of the millilitres.
    pub fn volume(&self, millilitres: f64, decimals: usize) -> String {
        self.in_unit(millilitres, "ml", decimals)
    }

    /// A unit as it is read: units with a symbol need no word.
    pub fn unit<'symbol>(&self, symbol: &'symbol str) -> &'symbol str {
        match symbol {
            "house units/100 ml" => self.word("unit-house-units"),
            symbol => symbol,
        }
    }

    /// A value of a metric unit with that unit, or with the one that the person reads in its place.
    pub fn in_unit(&self, metric: f64, unit: &str, decimals: usize) -> String {
        let shown = self.units.of(unit);
        let digits = self.localised(&shown.digits(metric, decimals), metric);
        with_unit(digits, self.unit(shown.symbol))
    }

    /// "20.3 ± 1.7 g": a value of a metric unit with its standard uncertainty, to the digits that mean something.
    pub fn uncertain(&self, metric: Uncertain, unit: &str) -> String {
        self.figure(metric.value, Some(metric.u), unit)
    }

    /// The same where the uncertainty may not be known.
    pub fn figure(&self, metric: f64, u: Option<f64>, unit: &str) -> String {
        let shown = self.units.of(unit);
        let (value, u) = (shown.value(metric), u.map(|u| shown.difference(u)));
        let rounded = rounded(value, u);
        let mut text = self.localised(&rounded.value, value);
        if let Some((digits, u)) = rounded.u.zip(u) {
            text.push_str(" ± ");
            text.push_str(&self.localised(&digits, u));
        }
        with_unit(text, self.unit(shown.symbol))
    }

    /// The value alone, to the digits that its uncertainty leaves it and no more than so many decimals.
    pub fn rounded(&self, metric: f64, u: Option<f64>, most_decimals: i32, unit: &str) -> String {
        let shown = self.units.of(unit);
        let (value, u) = (shown.value(metric), u.map(|u| shown.difference(u)));
        let digits = rounded_at_most(value, u, shown.decimals(most_decimals)).value;
        with_unit(self.localised(&digits, value), self.unit(shown.symbol))
    }

    /// As short as it can be: "0.5 K", "1 g".
    pub fn trimmed(&self, metric: f64, unit: &str, most_decimals: usize) -> String {
        let shown = self.units.of(unit);
        let digits = shown.trimmed(metric, most_decimals);
        with_unit(self.localised(&digits, metric), self.unit(shown.symbol))
    }

    /// Digits that a rule of rounding wrote, "<0.5" among them.
    pub fn digits(&self, digits: &str) -> String {
        match digits.strip_prefix('<') {
            Some(rest) => format!("<{}", self.localised(rest, 0.0)),
            None => self.localised(digits, 0.0),
        }
    }

    /// Digits that the core wrote, in the signs of the language. What is told without digits, or with a fraction, is left.
    pub(super) fn localised(&self, digits: &str, value: f64) -> String {
        if !value.is_finite() {
            return self.word("value-out-of-range").to_owned();
        }
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

/// No line ends between a number and its unit.
fn with_unit(mut digits: String, symbol: &str) -> String {
    if !symbol.is_empty() {
        digits.push('\u{a0}');
        digits.push_str(symbol);
    }
    digits
}
