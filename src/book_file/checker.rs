//! Where the reading of a file is, and what it has found: every id and number that can't be taken, with its place.

use std::collections::BTreeMap;

use super::error::{FilePlace, LoadProblem, Step};
use super::scan;
use crate::book::IdKind;

/// How many problems get their line looked up: each costs a walk through the text.
const WITH_LINE: usize = 20;

/// How many problems are kept. Whoever has more has another problem.
const KEPT: usize = 1000;

pub(super) struct Checker<'text> {
    text: &'text str,
    steps: Vec<Step>,
    problems: Vec<LoadProblem>,
}

impl<'text> Checker<'text> {
    /// At the beginning of a text.
    pub(super) fn new(text: &'text str) -> Self {
        Self {
            text,
            steps: Vec::new(),
            problems: Vec::new(),
        }
    }

    /// What was read, unless there were problems.
    pub(super) fn finish<T>(self, read: T) -> Result<T, Vec<LoadProblem>> {
        if self.problems.is_empty() {
            Ok(read)
        } else {
            Err(self.problems)
        }
    }

    /// Reads something inside a field.
    pub(super) fn within<T>(
        &mut self,
        field: &'static str,
        read: impl FnOnce(&mut Self) -> T,
    ) -> T {
        self.after(Step::Field(field), read)
    }

    /// Reads a part that has no place of its own.
    pub(super) fn here<T>(&mut self, _: &'static str, read: impl FnOnce(&mut Self) -> T) -> T {
        read(self)
    }

    /// Reads something one step further.
    pub(super) fn after<T>(&mut self, step: Step, read: impl FnOnce(&mut Self) -> T) -> T {
        self.steps.push(step);
        let value = read(self);
        self.steps.pop();
        value
    }

    /// Keeps a problem of the place where the reading is.
    pub(super) fn report(&mut self, problem: impl FnOnce(FilePlace) -> LoadProblem) {
        if self.problems.len() < KEPT {
            let place = self.place(self.steps.clone());
            self.problems.push(problem(place));
        }
    }

    fn place(&self, steps: Vec<Step>) -> FilePlace {
        let line = (self.problems.len() < WITH_LINE).then(|| scan::line_of(self.text, &steps));
        FilePlace { line, steps }
    }

    /// Reports every item whose id an earlier item of the list has.
    pub(super) fn duplicates<'ids>(
        &mut self,
        kind: IdKind,
        list: &'static str,
        ids: impl Iterator<Item = &'ids str>,
    ) {
        let mut first_of = BTreeMap::new();
        for (index, id) in ids.enumerate() {
            let first = *first_of.entry(id).or_insert(index);
            if first != index && self.problems.len() < KEPT {
                let place_of = |index| {
                    self.place(vec![
                        Step::Field(list),
                        Step::Item {
                            index,
                            label: id.to_owned(),
                        },
                    ])
                };
                let (first, second) = (place_of(first), place_of(index));
                self.problems.push(LoadProblem::DuplicateId {
                    kind,
                    id: id.to_owned(),
                    first,
                    second,
                });
            }
        }
    }
}
