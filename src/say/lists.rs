//! Clauses one after the other.

use super::{Speaker, say};

impl Speaker<'_> {
    /// "contains milk; may contain nuts"; empty for no clauses.
    pub(super) fn clauses(&self, clauses: impl IntoIterator<Item = String>) -> String {
        let mut clauses = clauses.into_iter();
        let first = clauses.next().unwrap_or_default();
        clauses.fold(
            first,
            |before, after| say!(self, "clauses", before: before, after: after),
        )
    }

    /// The same, and what two facts say alike is said once: two ingredients may have one name.
    pub(super) fn different_clauses(&self, clauses: impl IntoIterator<Item = String>) -> String {
        let mut said: Vec<String> = Vec::new();
        for clause in clauses {
            if !said.contains(&clause) {
                said.push(clause);
            }
        }
        self.clauses(said)
    }

    /// The figure, or "at least" it where a part is not known.
    pub(super) fn at_least(&self, figure: String, is_complete: bool) -> String {
        if is_complete {
            figure
        } else {
            say!(self, "at-least", figure: figure)
        }
    }
}
