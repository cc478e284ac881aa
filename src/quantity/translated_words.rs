//! Sentences of the program, whose figures are metric, with the units that a person reads in.

use std::fmt::Write as _;

use super::display_units::{DisplayUnits, ShownUnit, trimmed};
use super::{DecimalSign, parse_number, parse_with_sign, show_number};

/// The metric units that are looked for. "K" is a difference of temperatures.
const METRIC: [&str; 3] = ["°C", "K", "ml"];
/// Words before "100 ml" that make it something to reckon by.
const RECKONED_BY: [&str; 3] = ["/", "in ", "per "];
/// What may stand between the two numbers of "50 to 65 °C" and "58.4 ± 0.5 °C".
const TO: [&str; 4] = [" to ", " and ", " → ", "–"];
const PLUS_MINUS: &str = " ± ";
/// Decimals of a volume in a sentence.
const VOLUME_DECIMALS: usize = 2;

/// The sentence in these units; what stands in quotation marks was written by a person and stays.
pub(super) fn translated(units: DisplayUnits, text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(opened) = rest.find('“') {
        let Some(length) = rest[opened..].find('”') else {
            break;
        };
        let closed = opened + length;
        out.push_str(&translated_part(units, &rest[..opened]));
        out.push_str(&rest[opened..closed]);
        rest = &rest[closed..];
    }
    out.push_str(&translated_part(units, rest));
    out
}

fn translated_part(units: DisplayUnits, text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    // What stands before this has been translated.
    let mut done = 0;
    while let Some((at, metric)) = next_unit(rest) {
        out.push_str(&rest[..at]);
        rest = &rest[at + metric.len()..];
        let unit = units.of(metric);
        if unit.is_metric() {
            out.push_str(metric);
            done = out.len();
            continue;
        }
        let (before, space) = without_space(&out, done);
        let number = number_at_end(&out[done..before]).map(str::to_owned);
        let reckoned = number.as_deref() == Some("100")
            && metric == "ml"
            && RECKONED_BY
                .iter()
                .any(|word| out[..before - 3].ends_with(word));
        match number {
            Some(number) if !reckoned => {
                let space = out[before..].to_owned();
                out.truncate(before);
                replace_figure(&mut out, done, number.len(), &unit);
                out.push_str(&space);
                out.push_str(unit.symbol);
                rest = doubt_behind(&mut out, rest, &unit);
            }
            // "serving temperature measured, °C"; a bare "ml" is mostly one of several units to choose from.
            None if metric == "°C" && space => out.push_str(unit.symbol),
            _ => out.push_str(metric),
        }
        done = out.len();
    }
    out.push_str(rest);
    out
}

/// Where the next unit stands; letters around it make it a part of a word.
fn next_unit(text: &str) -> Option<(usize, &'static str)> {
    let found = |metric: &&'static str| {
        let mut from = 0;
        while let Some(at) = text[from..].find(*metric).map(|at| at + from) {
            let behind = text[at + metric.len()..].chars().next();
            let before = text[..at].chars().next_back();
            let alone = |side: Option<char>| side.is_none_or(|side| !side.is_alphanumeric());
            if alone(behind) && alone(before) {
                return Some((at, *metric));
            }
            from = at + metric.len();
        }
        None
    };
    METRIC.iter().filter_map(found).min_by_key(|(at, _)| *at)
}

/// The end of the text without the space before a unit, and whether there was one.
fn without_space(text: &str, done: usize) -> (usize, bool) {
    let trimmed = text[done..].trim_end_matches([' ', '\u{a0}']);
    (done + trimmed.len(), done + trimmed.len() < text.len())
}

/// Reads a number that the program itself has written: with a point before its decimals.
fn as_shown(text: &str) -> Result<f64, super::NumberError> {
    parse_with_sign(text, Some(DecimalSign::Point)).or_else(|_| parse_number(text))
}

fn number_at_end(text: &str) -> Option<&str> {
    let is_part = |c: char| {
        c.is_ascii_digit()
            || matches!(
                c,
                '.' | ',' | '½' | '¼' | '¾' | '⅓' | '⅔' | '⅛' | '⅜' | '⅝' | '⅞'
            )
    };
    let digits = text.trim_end_matches(is_part);
    let from = digits.strip_suffix('−').map_or(digits.len(), str::len);
    let number = text[from..].trim_start_matches([',', '.']);
    as_shown(number).ok().map(|_| number)
}

/// Replaces the figure at the end of a text, with the doubt or the range that it is a part of.
fn replace_figure(out: &mut String, done: usize, length: usize, unit: &ShownUnit<'_>) {
    let last = out.split_off(out.len() - length);
    let mut joint = None;
    for between in TO.into_iter().chain([PLUS_MINUS]) {
        let before = out[done..].strip_suffix(between).and_then(number_at_end);
        if let Some(first) = before {
            joint = Some((first.to_owned(), between));
        }
    }
    let Some((first, between)) = joint else {
        let is_size = out.ends_with("± ") || out.ends_with("by ");
        out.push_str(&figure(&last, unit, is_size));
        return;
    };
    out.truncate(out.len() - between.len() - first.len());
    let last = figure(&last, unit, between == PLUS_MINUS);
    let _ = write!(out, "{}{between}{last}", figure(&first, unit, false));
}

/// The uncertainty behind a unit: "58.4 °C ± 0.5", "58.4 °C, ± 0.5".
fn doubt_behind<'text>(out: &mut String, rest: &'text str, unit: &ShownUnit<'_>) -> &'text str {
    for lead in [" ± ", ", ± "] {
        let Some(behind) = rest.strip_prefix(lead) else {
            continue;
        };
        let end = behind
            .find(|c: char| !c.is_ascii_digit() && c != '.')
            .unwrap_or(behind.len());
        let number = behind[..end].trim_end_matches('.');
        let next = behind[number.len()..].trim_start();
        let has_own_unit = METRIC.iter().any(|metric| next.starts_with(metric));
        if as_shown(number).is_ok() && !has_own_unit {
            out.push_str(lead);
            out.push_str(&figure(number, unit, true));
            return &behind[number.len()..];
        }
    }
    rest
}

/// A temperature keeps its decimals; a volume gets two, about as fine as whole millilitres, without zeros at their end.
fn figure(number: &str, unit: &ShownUnit<'_>, is_size: bool) -> String {
    let Ok(metric) = as_shown(number) else {
        return number.to_owned();
    };
    let value = if is_size {
        unit.difference(metric)
    } else {
        unit.value(metric)
    };
    if unit.more_decimals > 0 {
        let shown = show_number(value, VOLUME_DECIMALS);
        let shown = trimmed(&shown);
        // Little is not nothing.
        return if metric != 0.0 && as_shown(shown) == Ok(0.0) {
            "less than 0.01".to_owned()
        } else {
            shown.to_owned()
        };
    }
    let decimals = number
        .split_once(['.', ','])
        .map_or(0, |(_, decimals)| decimals.len());
    show_number(value, decimals)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{TemperatureUnit, VolumeUnit};

    const US: DisplayUnits = DisplayUnits {
        temperature: TemperatureUnit::Fahrenheit,
        volume: VolumeUnit::FluidOunces,
    };

    #[test]
    fn figures_in_sentences_are_translated_and_nothing_else() {
        for (metric, us) in [
            (
                "instruction “Add 30 ml” now 60 ml",
                "instruction “Add 30 ml” now 2.03 fl oz",
            ),
            ("0.1 ml of acid", "less than 0.01 fl oz of acid"),
            (
                "67 °C when handed over, above 65 °C: too hot",
                "153 °F when handed over, above 149 °F: too hot",
            ),
            (
                "the 50 to 65 °C that the shop wants",
                "the 122 to 149 °F that the shop wants",
            ),
            ("expected −10 to 110 °C", "expected 14 to 230 °F"),
            ("58.4 ± 0.5 °C", "137.1 ± 0.9 °F"),
            ("warm: 58.4 °C, ± 0.5", "warm: 137.1 °F, ± 0.9"),
            ("342\u{a0}ml ± 12", "11.56\u{a0}fl oz ± 0.41"),
            ("2.4 K above it", "4.3 °F above it"),
            ("with acesulfame K", "with acesulfame K"),
            (
                "at most 5 g of sugar in 100 ml",
                "at most 5 g of sugar in 100 ml",
            ),
            ("7.4 g/100 ml at 58 °C", "7.4 g/100 ml at 136 °F"),
            ("milk 120 ml → 135½ ml", "milk 4.06 fl oz → 4.58 fl oz"),
            ("milk 120 → 135 ml", "milk 4.06 → 4.56 fl oz"),
            ("measured, °C", "measured, °F"),
            ("g or ml", "g or ml"),
            ("0.3 ml of it", "0.01 fl oz of it"),
        ] {
            assert_eq!(US.words(metric), us);
            assert_eq!(DisplayUnits::METRIC.words(metric), metric);
        }
    }

    #[test]
    fn each_choice_stands_alone() {
        let only_warm = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        assert_eq!(only_warm.words("135½ ml at 50 °C"), "135½ ml at 122 °F");
    }
}
