//! The units that a person reads temperatures and volumes in. What is computed and kept stays metric.
//!
//! Masses and concentrations have no choice: the labels that are typed in give grams, and the figures of the program are per
//! 100 g or 100 ml.

use super::number_text::{
    NumberError, REPEATED, parse_number, parse_up_to, show_count, show_number,
};
use super::typed_amount::{AmountTextError, TypedUnit, parse_amount};
use super::unit_text::{THOUSAND, parse_in_unit};
use super::visible_text::excerpt;
use super::{MILLILITRES_PER_US_FLUID_OUNCE, Uncertain};

/// The zero of the Fahrenheit scale lies so many of its degrees below that of the Celsius scale.
const FAHRENHEIT_AT_ZERO_CELSIUS: f64 = 32.0;
/// Fahrenheit degrees in one kelvin (NIST Special Publication 811, Appendix B.9).
const FAHRENHEIT_PER_KELVIN: f64 = 1.8;
/// What is typed in another unit is kept to so many parts of a metric one: finer than it is shown, and short in a file.
const KEPT_PARTS: f64 = 100.0;

/// How temperatures are read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum TemperatureUnit {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// How volumes are read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum VolumeUnit {
    /// Millilitres.
    #[default]
    Millilitres,
    /// US fluid ounces.
    FluidOunces,
}

impl TemperatureUnit {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Celsius, Self::Fahrenheit];

    /// The symbol behind a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
        }
    }

    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Celsius => Self::Fahrenheit,
            Self::Fahrenheit => Self::Celsius,
        }
    }
}

impl VolumeUnit {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Millilitres, Self::FluidOunces];

    /// The symbol behind a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millilitres => "ml",
            Self::FluidOunces => "fl oz",
        }
    }

    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Millilitres => Self::FluidOunces,
            Self::FluidOunces => Self::Millilitres,
        }
    }
}

/// What a person has chosen to read in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct DisplayUnits {
    /// Temperatures.
    pub temperature: TemperatureUnit,
    /// Volumes.
    pub volume: VolumeUnit,
}

/// How figures of one metric unit are shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownUnit<'unit> {
    /// What stands behind the number.
    pub symbol: &'unit str,
    per_metric: f64,
    at_metric_zero: f64,
    /// Decimals more than the metric figure has, for about as much to read off.
    pub(super) more_decimals: i32,
    kind: Kind,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Temperature,
    Volume,
    Other,
}

impl DisplayUnits {
    /// As it is computed and kept.
    pub const METRIC: Self = Self {
        temperature: TemperatureUnit::Celsius,
        volume: VolumeUnit::Millilitres,
    };

    /// How figures of this metric unit are shown: "°C", "K" (differences) and "ml" as chosen, every other as it is.
    pub fn of(self, metric: &str) -> ShownUnit<'_> {
        let same = |symbol, kind| ShownUnit {
            symbol,
            per_metric: 1.0,
            at_metric_zero: 0.0,
            more_decimals: 0,
            kind,
        };
        let fahrenheit = ShownUnit {
            per_metric: FAHRENHEIT_PER_KELVIN,
            ..same("°F", Kind::Temperature)
        };
        match (metric, self.temperature, self.volume) {
            ("°C", TemperatureUnit::Fahrenheit, _) => ShownUnit {
                at_metric_zero: FAHRENHEIT_AT_ZERO_CELSIUS,
                ..fahrenheit
            },
            ("K", TemperatureUnit::Fahrenheit, _) => fahrenheit,
            ("ml", _, VolumeUnit::FluidOunces) => ShownUnit {
                per_metric: 1.0 / MILLILITRES_PER_US_FLUID_OUNCE,
                more_decimals: 1,
                ..same("fl oz", Kind::Volume)
            },
            ("°C", ..) => same("°C", Kind::Temperature),
            ("ml", ..) => same("ml", Kind::Volume),
            (other, ..) => same(other, Kind::Other),
        }
    }

    /// "58 °C" or "136 °F", with so many decimals of a degree.
    pub fn temperature(self, celsius: f64, decimals: usize) -> String {
        self.of("°C").show(celsius, decimals)
    }

    /// A difference of temperatures: "3.0 K" or "5.4 °F".
    pub fn kelvin(self, kelvin: f64, decimals: usize) -> String {
        self.of("K").show(kelvin, decimals)
    }

    /// "500 ml" or "16.9 fl oz"; the decimals are those of the millilitres.
    pub fn volume(self, millilitres: f64, decimals: usize) -> String {
        self.of("ml").show(millilitres, decimals)
    }

    /// A volume as it is said at the counter: "500 ml" or "6½ fl oz".
    pub fn volume_count(self, millilitres: f64) -> String {
        format!(
            "{} {}",
            self.volume_number(millilitres),
            self.of("ml").symbol
        )
    }

    /// Its number alone.
    pub fn volume_number(self, millilitres: f64) -> String {
        let unit = self.of("ml");
        let count = match self.volume {
            VolumeUnit::Millilitres => millilitres,
            VolumeUnit::FluidOunces => hundredths(unit.value(millilitres)),
        };
        show_count(count)
    }
}

fn parse_degrees(text: &str) -> Result<f64, NumberError> {
    parse_up_to(text.trim_end_matches('°'), THOUSAND - 1.0)
}

fn hundredths(value: f64) -> f64 {
    (value * KEPT_PARTS).round() / KEPT_PARTS
}

impl ShownUnit<'_> {
    /// A metric value in this unit.
    pub fn value(&self, metric: f64) -> f64 {
        self.difference(metric) + self.at_metric_zero
    }

    /// A difference of metric values, or an uncertainty, in this unit: it has no zero.
    pub fn difference(&self, metric: f64) -> f64 {
        metric * self.per_metric
    }

    /// A metric figure with its uncertainty in this unit.
    pub fn uncertain(&self, metric: Uncertain) -> Uncertain {
        Uncertain {
            value: self.value(metric.value),
            u: self.difference(metric.u),
        }
    }

    /// Decimals that say about as much as so many of the metric figure.
    pub fn decimals(&self, metric: i32) -> i32 {
        metric + self.more_decimals
    }

    /// The digits of a metric value that would be shown with so many decimals. Less than one fluid ounce gets one more.
    pub fn digits(&self, metric: f64, decimals: usize) -> String {
        let value = self.value(metric);
        let little = self.more_decimals > 0 && value != 0.0 && value.abs() < 1.0;
        let more = usize::try_from(self.more_decimals).unwrap_or(0) + usize::from(little);
        show_number(value, decimals + more)
    }

    /// Digits and symbol.
    pub fn show(&self, metric: f64, decimals: usize) -> String {
        format!("{} {}", self.digits(metric, decimals), self.symbol)
    }

    /// The digits as short as they can be: "58", "58.5".
    pub fn trimmed(&self, metric: f64, most_decimals: usize) -> String {
        trimmed(&self.digits(metric, most_decimals)).to_owned()
    }

    /// The metric value of one in this unit.
    pub fn metric_from_shown(&self, shown: f64) -> f64 {
        (shown - self.at_metric_zero) / self.per_metric
    }

    /// Reads what is typed into a field of this unit, as a metric value: a bare number is in this unit, "165 °F" and "6 fl oz"
    /// say theirs.
    pub fn read(&self, text: &str) -> Result<f64, NumberError> {
        match self.kind {
            Kind::Temperature => self.read_temperature(text),
            Kind::Volume => self.read_volume(text),
            Kind::Other => {
                let text = text.trim();
                if self.symbol.is_empty() {
                    return parse_number(text);
                }
                let number = text.strip_suffix(self.symbol).unwrap_or(text);
                // "400 mg" ends like a number of grams, and is none. What a number without a unit may be, the unit of the field
                // tells.
                match parse_number(number) {
                    Ok(number) => Ok(number),
                    Err(_) => parse_in_unit(text, self.symbol),
                }
            }
        }
    }

    /// The same for a field that may be empty.
    pub fn read_optional(&self, text: &str) -> Result<Option<f64>, NumberError> {
        if text.trim().is_empty() {
            Ok(None)
        } else {
            self.read(text).map(Some)
        }
    }

    fn read_temperature(&self, text: &str) -> Result<f64, NumberError> {
        let lower = text.trim().to_lowercase();
        let (number, unit) = match lower.strip_suffix(['c', 'f']) {
            Some(number) if lower.ends_with('c') => (number, TemperatureUnit::Celsius),
            Some(number) => (number, TemperatureUnit::Fahrenheit),
            None => {
                let value = parse_degrees(&lower)?;
                return Ok(self.kept(value));
            }
        };
        let value = parse_degrees(number.trim_end())?;
        let said = DisplayUnits {
            temperature: unit,
            ..DisplayUnits::METRIC
        };
        Ok(said.of("°C").kept(value))
    }

    fn read_volume(&self, text: &str) -> Result<f64, NumberError> {
        let not_a_number = || NumberError::NotANumber {
            found: excerpt(text.trim(), REPEATED),
        };
        // A sign is for whoever knows the range of the field.
        if text.trim_start().starts_with(['-', '−']) {
            return parse_number(text.trim()).map(|value| self.kept(value));
        }
        match parse_amount(text) {
            Ok(amount) if amount.unit == TypedUnit::None => Ok(self.kept(amount.number)),
            Ok(amount) if amount.unit == TypedUnit::Millilitres => Ok(amount.number),
            Err(AmountTextError::Number(error)) => Err(error),
            _ => Err(not_a_number()),
        }
    }

    /// The metric value that is kept of one that was typed in this unit.
    pub fn kept(&self, shown: f64) -> f64 {
        if self.is_metric() {
            shown
        } else {
            hundredths(self.metric_from_shown(shown))
        }
    }

    /// Whether figures are shown as they are kept.
    pub fn is_metric(&self) -> bool {
        matches!(self.symbol, "°C" | "K" | "ml") || self.kind == Kind::Other
    }
}

/// Without zeros at the end of its decimals.
pub(super) fn trimmed(digits: &str) -> &str {
    if digits.contains('.') {
        digits.trim_end_matches('0').trim_end_matches('.')
    } else {
        digits
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const US: DisplayUnits = DisplayUnits {
        temperature: TemperatureUnit::Fahrenheit,
        volume: VolumeUnit::FluidOunces,
    };

    #[test]
    fn a_temperature_has_a_zero_and_its_difference_has_none() {
        let unit = US.of("°C");
        for (celsius, fahrenheit) in [(0.0, 32.0), (100.0, 212.0), (-40.0, -40.0), (65.0, 149.0)] {
            assert!((unit.value(celsius) - fahrenheit).abs() < 1e-9);
            assert!((unit.metric_from_shown(fahrenheit) - celsius).abs() < 1e-9);
        }
        assert!((unit.difference(3.0) - 5.4).abs() < 1e-9);
        let figure = unit.uncertain(Uncertain {
            value: 58.4,
            u: 0.5,
        });
        assert!((figure.value - 137.12).abs() < 1e-9 && (figure.u - 0.9).abs() < 1e-9);
        assert_eq!(US.kelvin(3.0, 1), "5.4 °F");
        assert_eq!(DisplayUnits::METRIC.kelvin(3.0, 1), "3.0 K");
    }

    #[test]
    fn volumes_keep_about_as_many_digits_that_mean_something() {
        assert_eq!(US.volume(500.0, 0), "16.9 fl oz");
        assert_eq!(US.volume(5.0, 0), "0.17 fl oz");
        assert_eq!(US.volume_count(177.441_177_375), "6 fl oz");
        assert_eq!(US.volume_count(250.0), "8.45 fl oz");
        assert_eq!(DisplayUnits::METRIC.volume_count(250.0), "250 ml");
    }

    #[test]
    fn other_units_have_no_choice() {
        for unit in ["g", "g/100 ml", "kJ", "min", "€", ""] {
            let shown = US.of(unit);
            assert_eq!(
                (shown.symbol, shown.digits(12.5, 1).as_str()),
                (unit, "12.5")
            );
        }
    }

    #[test]
    fn a_mass_is_read_in_milligrams_and_kilograms_wherever_grams_are_asked_for() {
        for (unit, text, value) in [
            ("g", "400 mg", 0.4),
            ("g", "0.4", 0.4),
            ("g", "0,4 g", 0.4),
            ("g", "1.5kg", 1500.0),
            ("mg", "0.4 g", 400.0),
            ("kJ", "100 kcal", 418.4),
            ("g/100 g", "5 g/100 g", 5.0),
            ("g/min", "5 g/min", 5.0),
            ("%", "80 %", 80.0),
            ("€", "2,50 €", 2.5),
        ] {
            let read = DisplayUnits::METRIC.of(unit).read(text).unwrap();
            assert!((read - value).abs() < 1e-9, "{text}: {read}");
        }
        for (unit, text) in [
            ("g", "5 kJ"),
            ("g/min", "5 mg"),
            ("", "5 g"),
            ("g", "little"),
        ] {
            assert!(DisplayUnits::METRIC.of(unit).read(text).is_err(), "{text}");
        }
    }

    #[test]
    fn a_bare_number_is_in_the_unit_of_the_field_and_another_says_so() {
        let (us, metric) = (US.of("°C"), DisplayUnits::METRIC.of("°C"));
        for (text, celsius) in [
            ("165 °F", 73.89),
            ("165F", 73.89),
            ("165 f", 73.89),
            ("58 °C", 58.0),
            ("−4°f", -20.0),
        ] {
            assert_eq!(us.read(text), Ok(celsius), "{text}");
            assert_eq!(metric.read(text), Ok(celsius), "{text}");
        }
        assert_eq!(us.read("165"), Ok(73.89));
        assert_eq!(us.read("165°"), Ok(73.89));
        assert_eq!(metric.read("58,5°"), Ok(58.5));
        assert!(us.read("warm").is_err() && us.read("").is_err());
        let (us, metric) = (US.of("ml"), DisplayUnits::METRIC.of("ml"));
        assert_eq!(us.read("6"), Ok(177.44));
        assert_eq!(metric.read("6"), Ok(6.0));
        assert_eq!(us.read("500 ml"), Ok(500.0));
        assert!((metric.read("6 fl oz").unwrap() - 177.441).abs() < 1e-3);
        assert!(us.read("6 g").is_err() && us.read("-1").unwrap() < 0.0);
    }

    #[test]
    fn what_was_typed_comes_back_the_same() {
        let unit = US.of("°C");
        for fahrenheit in -20..240 {
            let typed = format!("{fahrenheit}.3").replace('-', "−");
            assert_eq!(unit.digits(unit.read(&typed).unwrap(), 1), typed);
        }
    }
}
