//! Quantities with their unit in the type, and the two directions of text: what a person types and what a person reads.
//!
//! Conventions: mass in grams, volume in millilitres, temperature in degrees Celsius, energy in kilojoules.
//! A conversion is named `wanted_from_given`.

mod display_units;
mod number_text;
mod rounding;
mod translated_words;
mod typed_amount;
mod uncertain;
mod unit_text;
mod visible_text;

pub use display_units::{DisplayUnits, ShownUnit, TemperatureUnit, VolumeUnit};
pub use number_text::{
    NumberError, parse_number, show_compact, show_count, show_grouped, show_number,
};
pub use rounding::{Rounded, rounded, rounded_at_most};
pub use typed_amount::{AmountTextError, TypedAmount, TypedUnit, parse_amount};
pub use uncertain::Uncertain;
pub use unit_text::parse_in_unit;
pub use visible_text::{excerpt, is_hidden, name_as_shown, visible};

use std::fmt;

/// Defines a quantity: a newtype over `f64` with its unit symbol.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(pub f64);

        impl $name {
            /// The symbol that stands behind the number.
            pub const UNIT: &'static str = $unit;
        }

        impl fmt::Display for $name {
            fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(formatter, "{} {}", show_number(self.0, 1), Self::UNIT)
            }
        }
    };
}

quantity!(
    /// A mass in grams.
    Grams,
    "g"
);
quantity!(
    /// A volume in millilitres.
    Millilitres,
    "ml"
);
quantity!(
    /// A temperature in degrees Celsius.
    Celsius,
    "°C"
);

/// Kelvin at 0 °C.
pub const KELVIN_AT_ZERO_CELSIUS: f64 = 273.15;

/// Grams in one avoirdupois ounce (exact by definition, international yard and pound agreement of 1959).
pub const GRAMS_PER_OUNCE: f64 = 28.349_523_125;

/// Millilitres in one US customary fluid ounce (NIST Handbook 44, Appendix C).
pub const MILLILITRES_PER_US_FLUID_OUNCE: f64 = 29.573_529_562_5;

/// Kilojoules in one thermochemical kilocalorie (ISO 80000-5).
pub const KILOJOULES_PER_KILOCALORIE: f64 = 4.184;
