//! Text that goes to a spreadsheet by the clipboard.

use crate::cards::neutral_cell;

/// A cell that a spreadsheet takes as words: what begins like a formula gets an apostrophe in front, tabs and line ends become
/// spaces.
pub(super) fn cell(text: &str) -> String {
    let plain = text.replace(['\t', '\n', '\r'], " ");
    neutral_cell(&plain)
}

#[cfg(test)]
mod tests {
    use super::cell;

    #[test]
    fn what_looks_like_a_formula_stays_words() {
        assert_eq!(cell("=1+1"), "'=1+1");
        assert_eq!(cell(" @sum"), "' @sum");
        assert_eq!(cell("a\tb\nc"), "a b c");
        assert_eq!(cell("Hob & Ember"), "Hob & Ember");
    }
}
