//! A temperature as somebody states it: one figure, or a range that it stays in.

use super::uncertain::RECTANGULAR;
use super::{NumberError, ShownUnit};

/// Between the two ends of a range that is shown.
const TO: char = '–';

/// A stated temperature in °C: "77 °C", or "75–80 °C" with its cooler end first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Temperature {
    from: f64,
    to: f64,
}

impl Temperature {
    /// One figure.
    pub const fn at(celsius: f64) -> Self {
        Self {
            from: celsius,
            to: celsius,
        }
    }

    /// Somewhere between two, whichever is named first.
    pub fn between(one: f64, other: f64) -> Self {
        if other < one {
            Self {
                from: other,
                to: one,
            }
        } else if one < other {
            Self {
                from: one,
                to: other,
            }
        } else {
            // Zero and its negative are one figure, and are read back from a file as one.
            Self::at(one)
        }
    }

    /// The figure, or the middle of the range, °C.
    pub fn celsius(self) -> f64 {
        if self.is_range() {
            f64::midpoint(self.from, self.to)
        } else {
            self.from
        }
    }

    /// The two ends, °C; equal for one figure.
    pub fn ends(self) -> [f64; 2] {
        [self.from, self.to]
    }

    /// Whether it is more than one figure.
    pub fn is_range(self) -> bool {
        self.from < self.to
    }

    /// Standard uncertainty, K, where that of a single stated figure is `reading`: anywhere in a range is equally likely, and
    /// either end of it is no surer than a single figure.
    pub fn uncertainty(self, reading: f64) -> f64 {
        let half = self.to / 2.0 - self.from / 2.0;
        (half * RECTANGULAR).hypot(reading)
    }

    /// Its digits, or those of both ends: "77", "75–80".
    pub fn shown(self, digits: impl Fn(f64) -> String) -> String {
        let [from, to] = self.ends().map(digits);
        if from == to {
            from
        } else {
            format!("{from}{TO}{to}")
        }
    }
}

impl From<f64> for Temperature {
    fn from(celsius: f64) -> Self {
        Self::at(celsius)
    }
}

impl ShownUnit<'_> {
    /// Reads a temperature that may be a range, as °C: "77", "75–80 °C", "75-80", "-18 - -16", "165 to 175 °F", "75 bis 80".
    pub fn read_stated(&self, text: &str) -> Result<Temperature, NumberError> {
        let whole = text.trim();
        let Some((first, last)) = ends_of(whole) else {
            return self.read(whole).map(Temperature::at);
        };
        let to = self.read(last)?;
        let unit = last.trim_start_matches(|c: char| !c.is_alphabetic() && c != '°');
        let from = if first.ends_with(|c: char| c.is_alphabetic() || c == '°') {
            self.read(first)?
        } else {
            // "75–80 °F" says its unit once.
            self.read(&format!("{first} {unit}"))?
        };
        Ok(Temperature::between(from, to))
    }

    /// The same for a field that may be empty.
    pub fn read_stated_or_nothing(&self, text: &str) -> Result<Option<Temperature>, NumberError> {
        if text.trim().is_empty() {
            Ok(None)
        } else {
            self.read_stated(text).map(Some)
        }
    }
}

/// The texts of both ends of a range: what stands between a figure and another is no sign of the second.
fn ends_of(text: &str) -> Option<(&str, &str)> {
    let first_digit = text.find(char::is_numeric)?;
    let ends_a_figure = |before: &str| {
        let last = before.trim_end().chars().next_back();
        last.is_some_and(|c| c.is_numeric() || c.is_alphabetic() || c == '°')
            && before.len() > first_digit
    };
    let dash = text.char_indices().find_map(|(at, c)| {
        let is_dash = matches!(c, '-' | '–' | '—' | '−' | '‑' | '…');
        (is_dash && ends_a_figure(&text[..at])).then(|| (&text[..at], &text[at + c.len_utf8()..]))
    });
    let (first, last) = dash
        .or_else(|| text.split_once(" to "))
        .or_else(|| text.split_once(" bis "))?;
    Some((first.trim(), last.trim()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{DisplayUnits, TemperatureUnit};

    #[test]
    fn a_range_is_read_in_the_ways_it_is_written() {
        let unit = DisplayUnits::METRIC.of("°C");
        for (text, from, to) in [
            ("77", 77.0, 77.0),
            ("77,5 °C", 77.5, 77.5),
            ("-5", -5.0, -5.0),
            ("75–80 °C", 75.0, 80.0),
            ("75-80", 75.0, 80.0),
            ("80 - 75°", 75.0, 80.0),
            ("75 °C – 80 °C", 75.0, 80.0),
            ("75 to 80", 75.0, 80.0),
            ("75 bis 80", 75.0, 80.0),
            ("75 °C bis 80 °C", 75.0, 80.0),
            ("-18 - -16", -18.0, -16.0),
            ("−2–4", -2.0, 4.0),
            ("167–176 °F", 75.0, 80.0),
            ("7,5–8,5", 7.5, 8.5),
        ] {
            let read = unit.read_stated(text);
            assert_eq!(read, Ok(Temperature::between(from, to)), "{text}");
        }
        for text in ["", "-", "75-", "75-80-85", "–80", "hot", "75–80 ml"] {
            assert!(unit.read_stated(text).is_err(), "{text}");
        }
        let fahrenheit = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        let read = fahrenheit.of("°C").read_stated("167-176").unwrap();
        assert_eq!(read, Temperature::between(75.0, 80.0));
    }

    #[test]
    fn a_range_is_never_surer_than_a_figure_in_it() {
        let mut last = 0.0;
        for half in [0.0, 0.5, 1.0, 2.5, 10.0] {
            let u = Temperature::between(77.0 - half, 77.0 + half).uncertainty(1.5);
            assert!(u >= 1.5 && u >= last, "{half}: {u}");
            last = u;
        }
        // By hand: 2.5/√3 = 1.443; √(1.443² + 1.5²) = 2.082.
        let u = Temperature::between(75.0, 80.0).uncertainty(1.5);
        assert!((u - 2.082).abs() < 0.001, "{u}");
        assert!((Temperature::between(75.0, 80.0).celsius() - 77.5).abs() < 1e-12);
    }
}
