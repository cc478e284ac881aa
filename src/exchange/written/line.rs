//! A sentence of a recipe as an amount and a name.

use super::amount::{UnclearAmount, WrittenAmount, times};
use super::degrees::without_temperature;
use super::reader::Reader;
use super::tokens::{Kind, tokens};
use super::units::{Unit, is_of_amount, unit_called};
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
    /// Whether the sentence says more than amount, name and note hold: "200 g (2 large) plums".
    pub says_more: bool,
}

/// Reads a sentence of a recipe.
pub fn read_line(text: &str) -> WrittenLine {
    let text = text
        .trim()
        .trim_start_matches(['•', '*', '-', '–', '·'])
        .trim();
    if text.len() > LONGEST {
        return WrittenLine::unread(text, WrittenAmount::Unclear(UnclearAmount::TooLong));
    }
    let (temperature, without) = without_temperature(text).unzip();
    let sentence = without.as_deref().unwrap_or(text);
    let tokens = tokens(sentence);
    let reader = Reader {
        text: sentence,
        tokens: &tokens,
    };
    let (amount, name) = reader.line();
    if matches!(amount, WrittenAmount::NotStated | WrittenAmount::Unclear(_)) {
        return WrittenLine::unread(text, amount);
    }
    let (aside, name) = without_brackets_before(&name);
    let full_name = name
        .split(" (")
        .next()
        .unwrap_or_default()
        .trim()
        .to_owned();
    let (name, note) = name_and_note(name);
    if name.is_empty() {
        return WrittenLine::unread(text, WrittenAmount::NotStated);
    }
    let amount = of_each(amount, &note);
    let notes = aside.into_iter().chain((!note.is_empty()).then_some(note));
    let note = notes.collect::<Vec<String>>().join(", ");
    let is_said = |word: &str| name.contains(word) || note.contains(word) || is_of_amount(word);
    let says_more = super::tokens::tokens(text)
        .iter()
        .any(|token| match &token.kind {
            Kind::Word(word) => word.chars().count() > 2 && !is_said(word),
            _ => false,
        });
    WrittenLine {
        text: text.to_owned(),
        amount,
        name,
        full_name,
        temperature,
        note,
        says_more,
    }
}

impl WrittenLine {
    /// A sentence that stays as it stands.
    fn unread(text: &str, amount: WrittenAmount) -> Self {
        Self {
            text: text.to_owned(),
            amount,
            name: text.to_owned(),
            full_name: text.to_owned(),
            temperature: None,
            note: String::new(),
            says_more: false,
        }
    }
}

/// What stands in brackets before a name, and the name: "(packed) brown sugar".
fn without_brackets_before(text: &str) -> (Vec<String>, &str) {
    let mut asides = Vec::new();
    let mut name = text.trim_start_matches(is_sign);
    while let Some((aside, rest)) = name.strip_prefix('(').and_then(|rest| rest.split_once(')'))
        && !rest.trim_matches(is_sign).is_empty()
    {
        let aside = aside.trim_matches(is_sign);
        if !aside.is_empty() {
            asides.push(aside.to_owned());
        }
        name = rest.trim_start_matches(is_sign);
    }
    (asides, name)
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
    // A bracket that was opened before the amount is closed here.
    let text = text.trim_start_matches(|c| is_sign(c) || c == ')');
    let ends = [" (", ", ", "; ", " – ", " - ", "("];
    let end = ends.iter().filter_map(|sign| text.find(sign)).min();
    let (name, note) = text.split_at(end.unwrap_or(text.len()));
    let note = note.replace(['(', ')'], "");
    let note = note.trim_matches(is_sign);
    (name.trim_matches(is_sign).to_owned(), note.to_owned())
}

/// Signs around a name that are no part of it.
fn is_sign(c: char) -> bool {
    c.is_whitespace() || matches!(c, ',' | ';' | ':' | '-' | '–' | '.' | '*')
}
