//! Sentences of the program, whose figures are metric, with the units that a person reads in.

use std::fmt::Write as _;

use super::display_units::{DisplayUnits, ShownUnit, trimmed};
use super::{DecimalSign, name_as_shown, parse_number, parse_with_sign, show_number};

/// The metric units that are looked for. "K" is a difference of temperatures.
const METRIC: [&str; 3] = ["°C", "K", "ml"];
/// Words before "100 ml" that make it something to reckon by.
const RECKONED_BY: [&str; 3] = ["/", "in ", "per "];
/// What may stand between the two numbers of "50 to 65 °C" and "58.4 ± 0.5 °C".
const TO: [&str; 4] = [" to ", " and ", " → ", "–"];
const PLUS_MINUS: &str = " ± ";
/// Decimals of a volume in a sentence.
const VOLUME_DECIMALS: usize = 2;

/// Texts of a person that name a unit: they stand in sentences as they were written, whatever units the rest is read in.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OwnWords(Vec<String>);

impl OwnWords {
    /// Those of the texts that name a unit.
    ///
    /// Their first letter does not count: a sentence may begin with one, and a brand may stand before it.
    pub fn of<'text>(texts: impl IntoIterator<Item = &'text str>) -> Self {
        // "30 ml" by itself is a figure, whoever wrote it.
        let says_more = |text: &str| {
            let words = text.split(|letter: char| !letter.is_alphabetic());
            words.into_iter().any(|word| word.len() > "ml".len())
        };
        let names_unit =
            |text: &&str| METRIC.iter().any(|metric| text.contains(metric)) && says_more(text);
        let mut own: Vec<String> = texts
            .into_iter()
            .filter(names_unit)
            .map(|text| {
                let shown = name_as_shown(text.trim());
                shown
                    .strip_prefix(char::is_alphabetic)
                    .unwrap_or(&shown)
                    .to_owned()
            })
            .collect();
        // A text that holds another one is looked for before it.
        own.sort_unstable_by(|a, b| b.len().cmp(&a.len()).then_with(|| a.cmp(b)));
        own.dedup();
        Self(own)
    }

    /// Where the first of them begins and ends in a text.
    fn first_in(&self, text: &str) -> Option<(usize, usize)> {
        let places = self.0.iter().filter_map(|own| {
            // "500 ml jug" is not in "1500 ml jug".
            let begins = |at: &usize| {
                !own.starts_with(|first: char| first.is_ascii_digit())
                    || !text[..*at].ends_with(|before: char| before.is_ascii_digit())
            };
            let mut places = text.match_indices(own.as_str()).map(|(at, _)| at);
            let at = places.find(begins)?;
            Some((at, at + own.len()))
        });
        // Of those that begin together the longest comes first.
        places.min_by_key(|(at, _)| *at)
    }
}

/// The sentence in these units; what a person wrote stays: their own words, and whatever stands in quotation marks.
pub(super) fn translated(units: DisplayUnits, text: &str, own: &OwnWords) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((begin, end)) = own.first_in(rest) {
        out.push_str(&translated_around_quotes(units, &rest[..begin]));
        out.push_str(&rest[begin..end]);
        rest = &rest[end..];
    }
    out.push_str(&translated_around_quotes(units, rest));
    out
}

fn translated_around_quotes(units: DisplayUnits, text: &str) -> String {
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
            assert_eq!(US.words(metric, &OwnWords::default()), us);
            let unchanged = DisplayUnits::METRIC.words(metric, &OwnWords::default());
            assert_eq!(unchanged, metric);
        }
    }

    #[test]
    fn what_a_person_wrote_stays() {
        let own = OwnWords::of([
            "Black tea, 500 ml flask",
            "tea, 500 ml",
            "Milk at 4 °C",
            "Cocoa",
            "500 ml jug",
            "30 ml",
            "°C",
        ]);
        assert_eq!(own.0.len(), 4);
        for (metric, us) in [
            (
                "60 ml of Black tea, 500 ml flask at 60 °C",
                "2.03 fl oz of Black tea, 500 ml flask at 140 °F",
            ),
            (
                "Milk at 4 °C goes in at 4 °C, tea, 500 ml at 60 °C",
                "Milk at 4 °C goes in at 39 °F, tea, 500 ml at 140 °F",
            ),
            ("500 ml jug: 500 ml", "500 ml jug: 16.91 fl oz"),
            ("1500 ml jugs", "50.72 fl oz jugs"),
            ("30 ml at 20 °C", "1.01 fl oz at 68 °F"),
        ] {
            assert_eq!(US.words(metric, &own), us);
        }
    }

    #[test]
    fn each_choice_stands_alone() {
        let only_warm = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        assert_eq!(
            only_warm.words("135½ ml at 50 °C", &OwnWords::default()),
            "135½ ml at 122 °F"
        );
    }
}
