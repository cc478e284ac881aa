//! The temperature that a sentence states: "125 ml water (95 °C)", "75 bis 80 °C heißes Wasser".

use super::tokens::{Kind, Token, tokens};
use crate::book::FOOD_TEMPERATURE;
use crate::quantity::{DisplayUnits, Temperature};

/// Pieces between the first digit of a temperature and its unit at most: "75 °C bis 80 °C".
const PIECES: usize = 6;

/// Words before a temperature that belong to it and not to the name.
const BEFORE: [&str; 13] = [
    "at", "auf", "bei", "of", "mit", "about", "around", "ca.", "ca", "etwa", "approx.", "von", "~",
];

/// The temperature that a sentence states, and the sentence without it; `None` where it states none, several, or one that no food
/// in a cup has.
pub(super) fn without_temperature(text: &str) -> Option<(Temperature, String)> {
    let tokens = tokens(text);
    let units = (0..tokens.len()).filter_map(|at| Some((at, unit_at(&tokens, at)?)));
    let units: Vec<(usize, (char, usize))> = units.collect();
    let (last, (letter, end)) = *units.last()?;
    let sign = tokens[last].begin;
    let unit = DisplayUnits::METRIC.of("°C");
    let is_whole = |at: usize| match tokens[at].kind {
        Kind::Number(_) => true,
        // A sign, and no stroke between two words.
        Kind::Sign('-') => tokens[at + 1].begin == tokens[at].begin + 1,
        _ => false,
    };
    let begins = (last.saturating_sub(PIECES)..last).filter(|at| is_whole(*at));
    let (begin, stated) = begins.map(|at| tokens[at].begin).find_map(|begin| {
        let stated = unit.read_stated(&format!("{} °{letter}", text[begin..sign].trim()));
        let stated = stated.ok()?;
        let is_of_food = stated
            .ends()
            .iter()
            .all(|end| FOOD_TEMPERATURE.contains(*end));
        is_of_food.then_some((begin, stated))
    })?;
    // Two temperatures are of two things.
    if units.iter().any(|(at, _)| tokens[*at].begin < begin) {
        return None;
    }
    Some((stated, joined(&text[..begin], &text[end..])))
}

/// The unit of a temperature that begins with a piece of a sentence: "C" or "F", and where it ends.
fn unit_at(tokens: &[Token], at: usize) -> Option<(char, usize)> {
    let word = |at: usize| match tokens.get(at) {
        Some(Token {
            kind: Kind::Word(word),
            begin,
        }) => Some((word.to_lowercase(), begin + word.len())),
        _ => None,
    };
    let letter = |at: usize| {
        let (word, end) = word(at)?;
        match word.as_str() {
            "c" | "celsius" => Some(('C', end)),
            "f" | "fahrenheit" => Some(('F', end)),
            _ => None,
        }
    };
    if tokens[at].kind == Kind::Sign('°') {
        return letter(at + 1);
    }
    let (word, end) = word(at)?;
    match word.as_str() {
        // Without a letter it is Celsius where it is said so.
        "grad" => letter(at + 1).or(Some(('C', end))),
        "degree" | "degrees" => letter(at + 1),
        _ => None,
    }
}

/// What stands before and behind a temperature, without the signs and words that tied it to the sentence.
fn joined(before: &str, after: &str) -> String {
    let is_tie = |c: char| c.is_whitespace() || matches!(c, ',' | ';' | ':');
    let mut before = before.trim_end();
    while let Some(rest) = BEFORE.iter().find_map(|word| {
        let rest = before.strip_suffix(word)?;
        let is_apart = *word == "~" || !rest.ends_with(char::is_alphanumeric);
        is_apart.then(|| rest.trim_end())
    }) {
        before = rest;
    }
    let after = after.trim_start();
    if let (Some(before), Some(after)) = (before.strip_suffix('('), after.strip_prefix(')')) {
        let (before, after) = (before.trim_end(), after.trim_start());
        let gap = if after.starts_with([',', ';']) {
            ""
        } else {
            " "
        };
        return [before, gap, after].concat().trim().to_owned();
    }
    if before.ends_with('(') {
        return [before, after.trim_start_matches(is_tie)].concat();
    }
    let is_in_brackets = after.starts_with(')') && before.rfind('(') > before.rfind(')');
    if is_in_brackets || after.is_empty() || after.starts_with([',', ';']) {
        let dashes = |c: char| is_tie(c) || matches!(c, '-' | '–');
        return [before.trim_end_matches(dashes), after].concat();
    }
    [before, after].join(" ").trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_temperature_is_taken_out_of_a_sentence_and_nothing_else_is() {
        for (text, from, to, rest) in [
            ("125 ml hot water (95 °C)", 95.0, 95.0, "125 ml hot water"),
            ("125 ml water at 95 °C", 95.0, 95.0, "125 ml water"),
            ("125 ml 95 °C hot water", 95.0, 95.0, "125 ml hot water"),
            ("250 ml Wasser, 75 bis 80 °C", 75.0, 80.0, "250 ml Wasser"),
            (
                "250 ml Wasser (75–80°C), gefiltert",
                75.0,
                80.0,
                "250 ml Wasser, gefiltert",
            ),
            ("1 l Wasser von 75 °C bis 80 °C", 75.0, 80.0, "1 l Wasser"),
            (
                "1 cup (240 ml) 176 °F water",
                80.0,
                80.0,
                "1 cup (240 ml) water",
            ),
            (
                "200 ml 80 Grad heißes Wasser",
                80.0,
                80.0,
                "200 ml heißes Wasser",
            ),
            ("8 oz water, 194 degrees F", 90.0, 90.0, "8 oz water"),
            (
                "120 ml water (filtered, 95 °C)",
                95.0,
                95.0,
                "120 ml water (filtered)",
            ),
            (
                "120 ml water (95 °C, filtered)",
                95.0,
                95.0,
                "120 ml water (filtered)",
            ),
            ("ice at -18 °C to fill", -18.0, -18.0, "ice to fill"),
        ] {
            let wanted = Some((Temperature::between(from, to), rest.to_owned()));
            assert_eq!(without_temperature(text), wanted, "{text}");
        }
        for text in [
            "100 ml syrup, 65 °Bx",
            "tea at 95 °C, milk at 5 °C",
            "turn by 90°",
            "2 degrees of sweetness",
            "200 ml water at 700 °C",
            "°C",
            "C",
        ] {
            assert_eq!(without_temperature(text), None, "{text}");
        }
    }
}
