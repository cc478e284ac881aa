//! Numbers with units, and the two directions of text: what a person types and what a person reads.
//!
//! Conventions: mass in grams, volume in millilitres, temperature in degrees Celsius, energy in kilojoules.
//! A conversion is named `wanted_from_given`.

mod display_units;
mod grams;
mod number_text;
mod pack;
mod rounding;
mod several_readings;
mod temperature;
mod typed_amount;
mod uncertain;
mod unit_text;
mod unit_words;
mod visible_text;

pub use display_units::{DisplayUnits, ShownUnit, TemperatureUnit, VolumeUnit};
pub use grams::Grams;
pub use number_text::{
    DecimalSign, NumberError, beyond_digits, decimal_sign_of, is_fraction, parse_number,
    parse_up_to, parse_with_sign, show_compact, show_count, show_editable, show_grouped,
    show_number,
};
pub use pack::{Pack, PackError, parse_pack};
pub use rounding::{Beside, Rounded, rounded, rounded_at_most, rounded_beside};
pub use several_readings::parse_readings;
pub use temperature::Temperature;
pub use typed_amount::{AmountTextError, TypedAmount, TypedUnit, parse_amount, parse_amounts};
pub use uncertain::{RECTANGULAR, Uncertain};
pub use unit_text::{parse_in_unit, parse_in_unit_up_to};
pub use unit_words::{PackUnit, mass_or_volume_called};
pub use visible_text::{cut_in_the_middle, excerpt, is_hidden, name_as_shown, visible};

/// Kelvin at 0 °C.
pub const KELVIN_AT_ZERO_CELSIUS: f64 = 273.15;

/// Grams in one avoirdupois ounce (exact by definition, international yard and pound agreement of 1959).
pub const GRAMS_PER_OUNCE: f64 = 28.349_523_125;

/// Grams in one avoirdupois pound (exact by definition, international yard and pound agreement of 1959).
pub const GRAMS_PER_POUND: f64 = 453.592_37;

/// Millilitres in one US customary fluid ounce (NIST Handbook 44, Appendix C).
pub const MILLILITRES_PER_US_FLUID_OUNCE: f64 = 29.573_529_562_5;

/// Kilojoules in one thermochemical kilocalorie (ISO 80000-5).
pub const KILOJOULES_PER_KILOCALORIE: f64 = 4.184;
