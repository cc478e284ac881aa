//! A sentence of a recipe as an amount and a name.

use super::amount::{UnclearAmount, WrittenAmount, times};
use super::degrees::without_temperature;
use super::reader::Reader;
use super::tokens::tokens;
use super::units::{Unit, unit_called};
use crate::quantity::Temperature;

/// Longest sentence that is read for its amount, in bytes. A longer one names no ingredient, and what adds up amounts within one
/// needs time that grows with its square.
const LONGEST: usize = 500;

/// An ingredient as a recipe names it.
#[derive(Clone, Debug, PartialEq)]
pub struct WrittenLine {
    /// The whole sentence.
    pub text: String,
    /// How much.
    pub amount: WrittenAmount,
    /// Of what.
    pub name: String,
    /// The same with what is said behind a comma, which may belong to the name: "black tea, brewed".
    pub full_name: String,
    /// How warm it is, where that is said.
    pub temperature: Option<Temperature>,
    /// What else is said: "chilled", "optional".
    pub note: String,
}

/// Reads a sentence of a recipe.
pub fn read_line(text: &str) -> WrittenLine {
    let text = text
        .trim()
        .trim_start_matches(['•', '*', '-', '–', '·'])
        .trim();
    if text.len() > LONGEST {
        return WrittenLine {
            text: text.to_owned(),
            amount: WrittenAmount::Unclear(UnclearAmount::TooLong),
            name: text.to_owned(),
            full_name: text.to_owned(),
            temperature: None,
            note: String::new(),
        };
    }
    let (temperature, without) = without_temperature(text).unzip();
    let sentence = without.as_deref().unwrap_or(text);
    let tokens = tokens(sentence);
    let reader = Reader {
        text: sentence,
        tokens: &tokens,
    };
    let (amount, name) = reader.line();
    let full_name = name
        .split(" (")
        .next()
        .unwrap_or_default()
        .trim()
        .to_owned();
    let (name, note) = name_and_note(&name);
    let amount = of_each(amount, &note);
    WrittenLine {
        text: text.to_owned(),
        amount,
        name,
        full_name,
        temperature,
        note,
    }
}

/// Cans of which what stands behind the name says what each holds: "2 cans plums (400 ml)".
fn of_each(amount: WrittenAmount, note: &str) -> WrittenAmount {
    let WrittenAmount::Counted { count, word } = &amount else {
        return amount;
    };
    if unit_called(word) != Some(Unit::Container) {
        return amount;
    }
    let tokens = tokens(note);
    let reader = Reader {
        text: note,
        tokens: &tokens,
    };
    match reader.metric(0) {
        Some((each, behind)) if behind >= tokens.len() => times(each, *count),
        _ => amount,
    }
}

/// The name ends where something is said of it.
fn name_and_note(text: &str) -> (String, String) {
    let ends = [" (", ", ", "; ", " – ", " - ", "("];
    let end = ends.iter().filter_map(|sign| text.find(sign)).min();
    let (name, note) = text.split_at(end.unwrap_or(text.len()));
    let is_sign =
        |c: char| c.is_whitespace() || matches!(c, ',' | ';' | ':' | '-' | '–' | '.' | '*');
    let note = note.replace(['(', ')'], "");
    let note = note.trim_matches(is_sign);
    (name.trim_matches(is_sign).to_owned(), note.to_owned())
}
