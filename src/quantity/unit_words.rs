//! The words of masses and volumes in English and German: one table for what is typed, what packs say and what recipes ask for.

use super::{GRAMS_PER_OUNCE, GRAMS_PER_POUND, MILLILITRES_PER_US_FLUID_OUNCE};

/// What a pack is filled by. Kilograms, ounces, litres have been converted already.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PackUnit {
    /// Grams.
    Grams,
    /// Millilitres.
    Millilitres,
}

/// Grams in the pound of German recipes and markets, g (common practice, no source).
const PFUND: f64 = 500.0;

/// Millilitres in a US quart, 32 fluid ounces (NIST Handbook 44, Appendix C).
const QUART: f64 = 32.0 * MILLILITRES_PER_US_FLUID_OUNCE;

/// Millilitres in a US gallon, 128 fluid ounces (NIST Handbook 44, Appendix C).
pub(super) const GALLON: f64 = 128.0 * MILLILITRES_PER_US_FLUID_OUNCE;

/// Words of one unit, and how many grams or millilitres it is.
type UnitWords = (&'static [&'static str], PackUnit, f64);

const UNITS: &[UnitWords] = &[
    (
        &["g", "gr", "gram", "grams", "gramm", "gramme", "grammes"],
        PackUnit::Grams,
        1.0,
    ),
    (
        &[
            "kg",
            "kgs",
            "kilo",
            "kilos",
            "kilogram",
            "kilograms",
            "kilogramm",
        ],
        PackUnit::Grams,
        1000.0,
    ),
    (
        &["mg", "milligram", "milligrams", "milligramm"],
        PackUnit::Grams,
        0.001,
    ),
    (&["oz", "ounce", "ounces"], PackUnit::Grams, GRAMS_PER_OUNCE),
    (
        &["lb", "lbs", "pound", "pounds"],
        PackUnit::Grams,
        GRAMS_PER_POUND,
    ),
    (&["pfund"], PackUnit::Grams, PFUND),
    (
        &[
            "ml",
            "milliliter",
            "milliliters",
            "millilitre",
            "millilitres",
            "cc",
        ],
        PackUnit::Millilitres,
        1.0,
    ),
    (
        &[
            "cl",
            "centiliter",
            "centiliters",
            "centilitre",
            "centilitres",
            "zentiliter",
        ],
        PackUnit::Millilitres,
        10.0,
    ),
    (
        &[
            "dl",
            "deciliter",
            "deciliters",
            "decilitre",
            "decilitres",
            "deziliter",
        ],
        PackUnit::Millilitres,
        100.0,
    ),
    (
        &["l", "lt", "ltr", "liter", "liters", "litre", "litres"],
        PackUnit::Millilitres,
        1000.0,
    ),
    (
        &["hl", "hectoliter", "hectolitre", "hektoliter"],
        PackUnit::Millilitres,
        100_000.0,
    ),
    (
        &["fl oz", "floz", "fluid ounce", "fluid ounces"],
        PackUnit::Millilitres,
        MILLILITRES_PER_US_FLUID_OUNCE,
    ),
    (
        &["qt", "qts", "quart", "quarts"],
        PackUnit::Millilitres,
        QUART,
    ),
    (&["gal", "gallon", "gallons"], PackUnit::Millilitres, GALLON),
];

/// The unit of mass or volume that one or two words are, in letters of any size and with or without stops, and how many grams or
/// millilitres it is.
pub fn mass_or_volume_called(words: &str) -> Option<(PackUnit, f64)> {
    let words = words.to_lowercase().replace('.', "");
    let found = UNITS
        .iter()
        .find(|(known, ..)| known.contains(&words.as_str()));
    found.map(|(_, unit, factor)| (*unit, *factor))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{TypedUnit, parse_amount, parse_pack};

    #[test]
    fn what_is_typed_and_what_packs_say_means_the_same_by_every_word() {
        for (words, unit, factor) in UNITS {
            for word in *words {
                let text = format!("2 {word}");
                let pack = parse_pack(&text, None, "").unwrap();
                assert_eq!((pack.unit, pack.each), (*unit, 2.0 * factor), "{text}");
                let typed = parse_amount(&text).unwrap();
                let wanted = match unit {
                    PackUnit::Grams => TypedUnit::Grams,
                    PackUnit::Millilitres => TypedUnit::Millilitres,
                };
                assert_eq!((typed.unit, typed.number), (wanted, 2.0 * factor), "{text}");
            }
        }
        let fluid_ounce = Some((PackUnit::Millilitres, MILLILITRES_PER_US_FLUID_OUNCE));
        assert_eq!(mass_or_volume_called("Fl. Oz."), fluid_ounce);
        assert_eq!(mass_or_volume_called("pint"), None);
    }
}
