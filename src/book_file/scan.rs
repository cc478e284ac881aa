//! Finds its way through RON text without understanding it: the format number, comments, and the line of a value.
//!
//! It is used where a deserializer can't help: before the text is known to be well formed, and for the line number of a
//! value that was read long ago.

use super::Step;

/// A cursor that moves over RON text token by token. Wrong text ends the walk; it never panics or loops.
struct Scanner<'text> {
    text: &'text str,
    at: usize,
    comments: usize,
}

impl<'text> Scanner<'text> {
    fn new(text: &'text str) -> Self {
        Self {
            text,
            at: 0,
            comments: 0,
        }
    }

    fn rest(&self) -> &'text str {
        &self.text[self.at..]
    }

    fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }

    fn take(&mut self, token: char) -> bool {
        let found = self.peek() == Some(token);
        if found {
            self.at += token.len_utf8();
        }
        found
    }

    /// Moves behind the next occurrence of a text, or to the end.
    fn skip_past(&mut self, end: &str) {
        self.at += self
            .rest()
            .find(end)
            .map_or(self.rest().len(), |found| found + end.len());
    }

    fn skip_while(&mut self, belongs: impl Fn(char) -> bool) {
        self.at += self
            .rest()
            .find(|c| !belongs(c))
            .unwrap_or(self.rest().len());
    }

    fn skip_space_and_comments(&mut self) {
        loop {
            self.skip_while(char::is_whitespace);
            if self.rest().starts_with("//") {
                self.comments += 1;
                self.skip_past("\n");
            } else if self.rest().starts_with("/*") {
                self.comments += 1;
                self.skip_block_comment();
            } else {
                return;
            }
        }
    }

    fn skip_block_comment(&mut self) {
        let mut depth = 0_usize;
        loop {
            let rest = self.rest();
            if rest.starts_with("/*") {
                depth += 1;
                self.at += 2;
            } else if rest.starts_with("*/") {
                depth -= 1;
                self.at += 2;
            } else {
                let Some(character) = rest.chars().next() else {
                    return;
                };
                self.at += character.len_utf8();
            }
            if depth == 0 {
                return;
            }
        }
    }

    /// A word or number, empty when something else comes next.
    fn word(&mut self) -> &'text str {
        let start = self.at;
        self.skip_while(|c| c.is_alphanumeric() || matches!(c, '_' | '.' | '+' | '-' | '#'));
        &self.text[start..self.at]
    }

    /// Moves over one token: a string, a character in quotes, a word, or one other character.
    fn skip_token(&mut self) {
        if self.take('"') {
            return self.skip_string();
        }
        if self.take('\'') {
            let escaped = self.take('\\');
            self.skip_characters(if escaped { 2 } else { 1 });
            self.take('\'');
            return;
        }
        let word = self.word();
        let hashes = word.trim_start_matches(['b', 'r']);
        if word.contains('r') && hashes.chars().all(|c| c == '#') && self.take('"') {
            return self.skip_past(&format!("\"{hashes}"));
        }
        if word.is_empty() {
            self.skip_characters(1);
        }
    }

    fn skip_characters(&mut self, count: usize) {
        self.at += self
            .rest()
            .chars()
            .take(count)
            .map(char::len_utf8)
            .sum::<usize>();
    }

    fn skip_string(&mut self) {
        loop {
            self.skip_while(|c| c != '"' && c != '\\');
            if !self.take('\\') {
                self.take('"');
                return;
            }
            self.skip_characters(1);
        }
    }

    /// Moves to the comma or bracket behind a value.
    fn skip_value(&mut self) {
        let mut depth = 0_usize;
        loop {
            self.skip_space_and_comments();
            match self.peek() {
                None => return,
                Some(',' | ')' | ']' | '}') if depth == 0 => return,
                Some('(' | '[' | '{') => depth += 1,
                Some(')' | ']' | '}') => depth -= 1,
                Some(_) => {}
            }
            self.skip_token();
        }
    }

    /// Moves into a struct or list, past its name.
    fn enter(&mut self) -> bool {
        self.skip_space_and_comments();
        self.word();
        self.skip_space_and_comments();
        self.take('(') || self.take('[')
    }

    /// Moves to the value of a field of the struct that has been entered.
    fn find_field(&mut self, wanted: &str) -> bool {
        loop {
            self.skip_space_and_comments();
            let name = self.word();
            self.skip_space_and_comments();
            if name.is_empty() || !self.take(':') {
                return false;
            }
            self.skip_space_and_comments();
            if name == wanted {
                return true;
            }
            self.skip_value();
            if !self.take(',') {
                return false;
            }
        }
    }

    /// Moves to the value at an index of the list that has been entered.
    fn find_item(&mut self, index: usize) -> bool {
        for _ in 0..index {
            self.skip_value();
            if !self.take(',') {
                return false;
            }
        }
        self.skip_space_and_comments();
        true
    }
}

/// The text of the format number, or of what stands in its place; `None` when the text has no such field.
pub(super) fn format_number(text: &str) -> Option<&str> {
    let mut scanner = Scanner::new(text);
    scanner.skip_space_and_comments();
    while scanner.rest().starts_with("#!") {
        scanner.skip_past("]");
        scanner.skip_space_and_comments();
    }
    let found = scanner.enter() && scanner.find_field("format");
    let start = scanner.at;
    scanner.skip_token();
    found.then(|| &text[start..scanner.at])
}

/// Whether there is a comment anywhere.
pub(super) fn has_comments(text: &str) -> bool {
    let mut scanner = Scanner::new(text);
    loop {
        scanner.skip_space_and_comments();
        if scanner.comments > 0 || scanner.peek().is_none() {
            return scanner.comments > 0;
        }
        scanner.skip_token();
    }
}

/// The line of a value, from 1; of what encloses it when the value itself can't be found.
pub(super) fn line_of(text: &str, steps: &[Step]) -> usize {
    let mut scanner = Scanner::new(text);
    scanner.skip_space_and_comments();
    let mut found = scanner.at;
    for step in steps {
        let reached = scanner.enter()
            && match step {
                Step::Field(name) => scanner.find_field(name),
                Step::Item { index, .. } => scanner.find_item(*index),
            };
        if !reached {
            break;
        }
        found = scanner.at;
    }
    1 + text[..found].bytes().filter(|byte| *byte == b'\n').count()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn item(index: usize) -> Step {
        Step::Item {
            index,
            label: String::new(),
        }
    }

    #[test]
    fn the_format_is_found_before_and_behind_anything() {
        for (text, expected) in [
            ("(format: 1, rest", Some("1")),
            (
                "// a, (b\n( /* /* ) */ */ x: [(\")\", ')', r#\"\"]\"#)], format : 27)",
                Some("27"),
            ),
            ("#![enable(implicit_some)]\nBook(format: 2.5)", Some("2.5")),
            ("(settings: ())", None),
            ("format: 1", None),
            ("", None),
            ("(((((", None),
            ("/* never closed", None),
            ("(x: \"never closed", None),
        ] {
            assert_eq!(format_number(text), expected, "{text}");
        }
    }

    #[test]
    fn a_value_is_found_by_its_path() {
        let text = "(\n a: \"(\\\"\",\n b: [\n  (c: 1),\n  Line(c: 2,\n   d: 3),\n ],\n)";
        for (steps, line) in [
            (vec![], 1),
            (vec![Step::Field("a")], 2),
            (vec![Step::Field("b"), item(0)], 4),
            (vec![Step::Field("b"), item(1), Step::Field("d")], 6),
            (vec![Step::Field("b"), item(1), Step::Field("missing")], 5),
        ] {
            assert_eq!(line_of(text, &steps), line, "{steps:?}");
        }
    }

    #[test]
    fn a_comment_sign_in_a_string_is_no_comment() {
        assert!(!has_comments("(a: \"// no\", b: r\"/* no */\", c: '/')"));
        assert!(has_comments("(a: \"\\\\\", // yes\n)"));
        assert!(has_comments("(a: 1 /* yes */)"));
    }
}
