//! The layout of a book file: one value a line, small groups on one line, everything in a fixed order.

use std::fmt::Write as _;

use crate::book::Figure;
use crate::quantity::is_hidden;

/// Text that grows line by line, indented by the brackets that are open.
#[derive(Default)]
pub(super) struct Layout {
    text: String,
    depth: usize,
    /// Numbers that could not be read back.
    non_finite: usize,
}

impl Layout {
    /// A layout inside of so many brackets, for a part of a book.
    pub(super) fn at_depth(depth: usize) -> Self {
        Self {
            depth,
            ..Self::default()
        }
    }

    /// The text, and how many numbers in it are not finite.
    pub(super) fn finish(self) -> (String, usize) {
        (self.text, self.non_finite)
    }

    fn line(&mut self, content: &str) {
        for _ in 0..self.depth {
            self.text.push_str("    ");
        }
        self.text.push_str(content);
        self.text.push('\n');
    }

    /// A bracketed block with a head in front of its opening bracket.
    pub(super) fn block(
        &mut self,
        head: &str,
        brackets: (char, char),
        content: impl FnOnce(&mut Self),
    ) {
        self.line(&format!("{head}{}", brackets.0));
        self.depth += 1;
        content(self);
        self.depth -= 1;
        // Only the book itself has nothing behind it.
        let comma = if self.depth == 0 { "" } else { "," };
        self.line(&format!("{}{comma}", brackets.1));
    }

    /// A group of fields, one a line.
    pub(super) fn group(&mut self, head: &str, content: impl FnOnce(&mut Self)) {
        self.block(head, ('(', ')'), content);
    }

    /// A list of items, each laid out by `item`; nothing at all when it is empty.
    pub(super) fn list<T>(
        &mut self,
        name: &str,
        items: impl IntoIterator<Item = T>,
        item: impl Fn(&mut Self, T),
    ) {
        let mut items = items.into_iter().peekable();
        if items.peek().is_some() {
            self.block(&format!("{name}: "), ('[', ']'), |layout| {
                items.for_each(|found| item(layout, found));
            });
        }
    }

    /// An item of a list on one line.
    pub(super) fn item(&mut self, value: &str) {
        self.line(&format!("{value},"));
    }

    /// A field on one line.
    pub(super) fn field(&mut self, name: &str, value: &str) {
        self.line(&format!("{name}: {value},"));
    }

    /// A field with a text.
    pub(super) fn text(&mut self, name: &str, value: &str) {
        self.field(name, &quoted(value));
    }

    /// A field with a text, left out when there is none.
    pub(super) fn text_unless_empty(&mut self, name: &str, value: &str) {
        if !value.is_empty() {
            self.text(name, value);
        }
    }

    /// A field with an id, left out when there is none.
    pub(super) fn optional_id(&mut self, name: &str, id: Option<&impl AsRef<str>>) {
        if let Some(id) = id {
            self.text(name, id.as_ref());
        }
    }

    /// A field with a number.
    pub(super) fn number(&mut self, name: &str, value: f64) {
        let value = self.figures(value);
        self.field(name, &value);
    }

    /// A field with a number, left out when it is not stated.
    pub(super) fn optional_number(&mut self, name: &str, value: Option<f64>) {
        if let Some(value) = value {
            self.number(name, value);
        }
    }

    /// A field with a figure, left out when it is not stated.
    pub(super) fn optional_figure(&mut self, name: &str, figure: Option<Figure>) {
        if let Some(figure) = figure {
            let value = self.figure(figure);
            self.field(name, &value);
        }
    }

    /// The digits of a number: the fewest that are read back as the same one.
    pub(super) fn figures(&mut self, value: f64) -> String {
        if !value.is_finite() {
            self.non_finite += 1;
        }
        format!("{value:?}")
    }

    /// `(8.0, Label)`, or with its own standard uncertainty `(8.0, Measured, 0.2)`.
    pub(super) fn figure(&mut self, figure: Figure) -> String {
        let Figure { value, evidence, u } = figure;
        let word = super::file::Evidence::word(evidence);
        match u {
            None => format!("({}, {word})", self.figures(value)),
            Some(u) => format!("({}, {word}, {})", self.figures(value), self.figures(u)),
        }
    }

    /// A group on one line; fields without a value are left out.
    pub(super) fn inline(fields: &[(&str, Option<String>)]) -> String {
        let stated = fields
            .iter()
            .filter_map(|(name, value)| Some(format!("{name}: {}", value.as_ref()?)));
        format!("({})", stated.collect::<Vec<_>>().join(", "))
    }

    /// The digits of a number, if it is stated.
    pub(super) fn optional_figures(&mut self, value: Option<f64>) -> Option<String> {
        value.map(|value| self.figures(value))
    }
}

/// A text in quotes. Only what would end it or could not be seen is escaped, so that names of any script stay readable.
pub(super) fn quoted(text: &str) -> String {
    let mut quoted = String::with_capacity(text.len() + 2);
    quoted.push('"');
    for character in text.chars() {
        match character {
            '"' | '\\' => quoted.extend(['\\', character]),
            '\n' => quoted.push_str("\\n"),
            '\r' => quoted.push_str("\\r"),
            '\t' => quoted.push_str("\\t"),
            character if is_hidden(character) => {
                let _ = write!(quoted, "\\u{{{:x}}}", u32::from(character));
            }
            character => quoted.push(character),
        }
    }
    quoted.push('"');
    quoted
}

#[cfg(test)]
mod tests {
    use super::quoted;

    #[test]
    fn names_of_any_script_stay_readable_and_hidden_characters_become_visible() {
        assert_eq!(quoted("黑糖珍珠, ชานม, Bob's"), "\"黑糖珍珠, ชานม, Bob's\"");
        assert_eq!(
            quoted("a\"b\\c\nd\u{202e}\u{0}"),
            "\"a\\\"b\\\\c\\nd\\u{202e}\\u{0}\""
        );
    }
}
