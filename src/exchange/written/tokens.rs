//! A sentence in numbers, words and signs.

use crate::quantity::{NumberError, is_fraction, parse_number};

/// A piece of a sentence, with where it begins in it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Token {
    pub(super) kind: Kind,
    pub(super) begin: usize,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) enum Kind {
    Number(f64),
    /// Digits that may be two numbers, or none.
    Unclear(NumberError),
    /// Digits in a group of three behind a space: 2500, or two of 500.
    TwoCounts(String, String),
    Word(String),
    Sign(char),
}

fn is_space(c: char) -> bool {
    c.is_whitespace()
}

pub(super) fn tokens(text: &str) -> Vec<Token> {
    let letters: Vec<(usize, char)> = text.char_indices().collect();
    let byte = |at: usize| letters.get(at).map_or(text.len(), |(byte, _)| *byte);
    let letter = |at: usize| letters.get(at).map(|(_, c)| *c);
    let is_digit = |at: usize| letter(at).is_some_and(|c| c.is_ascii_digit());
    let digits_end = |mut at: usize| {
        while is_digit(at) {
            at += 1;
        }
        at
    };
    // A blank of any width, and several of them, but no end of a line.
    let is_blank = |c: char| is_space(c) && !c.is_control();
    let blanks_end = |mut at: usize| {
        while letter(at).is_some_and(is_blank) {
            at += 1;
        }
        at
    };
    let mut tokens = Vec::new();
    let mut at = 0;
    while let Some(c) = letter(at) {
        let begin = at;
        if is_space(c) {
            at += 1;
            continue;
        }
        let kind = if c.is_ascii_digit() || is_fraction(c) {
            // Digits with signs for decimals or groups between them.
            while is_digit(at) || matches!(letter(at), Some('.' | ',')) && is_digit(at + 1) {
                at += 1;
            }
            let whole_end = at;
            // "1½", "1 ½".
            let fraction = blanks_end(at);
            // "1/2", and "1 1/2".
            let over = |from: usize| {
                let end = digits_end(from);
                let is_over = end > from && matches!(letter(end), Some('/' | '⁄'));
                let last = digits_end(end + 1);
                (is_over && last > end + 1 && last - end <= 3).then_some(last)
            };
            if letter(fraction).is_some_and(is_fraction) {
                at = fraction + 1;
            } else if let Some(end) = over(begin) {
                at = end;
            } else if fraction > at
                && let Some(end) = over(fraction)
            {
                at = end;
            }
            let group = whole_end + 1;
            let is_group = at == whole_end
                && letter(whole_end).is_some_and(is_space)
                && digits_end(group) == group + 3
                && letter(group) != Some('0')
                && !matches!(letter(group + 3), Some('.' | ',' | '/' | '-' | '–'));
            if is_group && digits_end(begin) == whole_end {
                at = group + 3;
                let (first, second) = (byte(begin)..byte(whole_end), byte(group)..byte(at));
                Kind::TwoCounts(text[first].to_owned(), text[second].to_owned())
            } else {
                let digits = text[byte(begin)..byte(at)].replace('⁄', "/");
                match parse_number(&digits) {
                    Ok(number) => Kind::Number(number),
                    Err(error) => Kind::Unclear(error),
                }
            }
        } else if c.is_alphabetic() {
            while letter(at).is_some_and(char::is_alphabetic) {
                at += 1;
            }
            let word = text[byte(begin)..byte(at)].to_owned();
            // "Tbsp." and "ca." are words with a stop.
            at += usize::from(letter(at) == Some('.'));
            Kind::Word(word)
        } else {
            at += 1;
            Kind::Sign(match c {
                '–' | '—' | '‑' | '−' => '-',
                '×' => 'x',
                '[' => '(',
                ']' => ')',
                c => c,
            })
        };
        tokens.push(Token {
            kind,
            begin: byte(begin),
        });
    }
    tokens
}
