//! The list that checks write to. It is bounded, and so is the work that a hostile book can ask of a check.

use std::collections::BTreeSet;

use super::ranges::NAME;
use crate::book::{
    Day, Figure, FigureName, FigureRange, Finding, FindingKind, IdKind, Item, Place, Recipe,
    Severity, Shelf, Temperature, Unfinished, VersionId, nearest,
};
use crate::quantity::{excerpt, is_hidden};

/// How many findings are listed. Whoever has more has another problem than the next one.
const LISTED: usize = 2000;

/// Steps (entries and changes looked at) that resolving versions may take in all. A book of ten thousand recipes with five
/// versions each takes some five million.
const STEPS: u64 = 100_000_000;

/// Ids that may be compared in all to find what a mistyped one was meant to be.
const COMPARED: usize = 2_000_000;

/// Findings in the order in which they are met, each once.
pub(super) struct Checklist {
    findings: Vec<Finding>,
    is_full: bool,
    steps_left: u64,
    comparisons_left: usize,
}

impl Checklist {
    pub(super) fn new() -> Self {
        Self {
            findings: Vec::new(),
            is_full: false,
            steps_left: STEPS,
            comparisons_left: COMPARED,
        }
    }

    /// What was found; the last finding says so when there is more.
    pub(super) fn finish(mut self) -> Vec<Finding> {
        if self.is_full {
            let severity = self
                .findings
                .iter()
                .map(|finding| finding.severity)
                .max()
                .unwrap_or(Severity::Warning);
            let kind = FindingKind::MoreFindings { listed: LISTED };
            self.findings.push(Finding {
                severity,
                place: Place::Settings,
                kind,
            });
        }
        self.findings
    }

    /// Notes a finding. The same one may come from a recipe and from each of its versions.
    pub(super) fn push(&mut self, finding: Finding) {
        if self.is_full || self.findings.contains(&finding) {
            return;
        }
        if self.findings.len() == LISTED {
            self.is_full = true;
        } else {
            self.findings.push(finding);
        }
    }

    pub(super) fn error(&mut self, place: Place, kind: FindingKind) {
        self.push(Finding::error(place, kind));
    }

    pub(super) fn warning(&mut self, place: Place, kind: FindingKind) {
        self.push(Finding::warning(place, kind));
    }

    /// Whether so much more work may still be done; the work is counted as done when it may.
    pub(super) fn may_take(&mut self, steps: u64) -> bool {
        match self.steps_left.checked_sub(steps) {
            Some(left) => {
                self.steps_left = left;
                true
            }
            None => false,
        }
    }

    /// Reports a number outside what is possible.
    pub(super) fn in_range(
        &mut self,
        place: Place,
        what: FigureName,
        value: f64,
        range: FigureRange,
    ) {
        if !range.contains(value) {
            self.error(place, FindingKind::OutOfRange { what, value, range });
        }
    }

    /// The same of both ends of a temperature.
    pub(super) fn temperature_in_range(
        &mut self,
        place: &Place,
        what: &FigureName,
        value: Temperature,
        range: FigureRange,
    ) {
        for end in value.ends() {
            self.in_range(place.clone(), what.clone(), end, range);
        }
    }

    pub(super) fn unfinished(&mut self, place: Place, what: Unfinished) {
        self.error(place, FindingKind::Unfinished(what));
    }

    /// The uncertainty of a figure is not larger than the figure itself may be.
    pub(super) fn uncertainty(&mut self, place: Place, figure: Figure, range: FigureRange) {
        if let Some(u) = figure.u {
            let range = FigureRange {
                least: 0.0,
                ..range
            };
            self.in_range(place, FigureName::Uncertainty, u, range);
        }
    }

    /// A name that shows what it is.
    pub(super) fn name(&mut self, place: Place, name: &str) {
        if name.chars().any(is_hidden) {
            let shown = excerpt(name, NAME);
            self.warning(place, FindingKind::HiddenCharacters { shown });
        }
    }

    pub(super) fn date(&mut self, place: Place, text: Option<&str>) {
        if let Some(text) = text
            && Day::from_text(text).is_none()
        {
            let found = text
                .chars()
                .take(40)
                .collect::<String>()
                .escape_debug()
                .to_string();
            self.warning(place, FindingKind::NoDate { found });
        }
    }

    /// Reports an id that names nothing on its shelf.
    pub(super) fn dangling<T: Item>(
        &mut self,
        place: Place,
        kind: IdKind,
        shelf: &Shelf<T>,
        id: &T::Id,
    ) where
        T::Id: AsRef<str>,
    {
        if !self.is_full && !shelf.contains(id) {
            let known = shelf.iter().map(|item| item.id().as_ref());
            let nearest = self.nearest(id.as_ref(), shelf.len(), known);
            self.error(
                place,
                FindingKind::Dangling {
                    kind,
                    id: id.as_ref().to_owned(),
                    nearest,
                },
            );
        }
    }

    /// Reports a version that the recipe does not have.
    pub(super) fn dangling_version(
        &mut self,
        place: Place,
        item: &Recipe,
        id: &VersionId,
        known: &BTreeSet<&VersionId>,
    ) {
        if !self.is_full && !known.contains(id) {
            let ids = item.versions.iter().map(|version| version.id.as_ref());
            let nearest = self.nearest(id.as_ref(), item.versions.len(), ids);
            self.error(
                place,
                FindingKind::Dangling {
                    kind: IdKind::Version,
                    id: id.to_string(),
                    nearest,
                },
            );
        }
    }

    fn nearest<'book>(
        &mut self,
        id: &str,
        count: usize,
        known: impl Iterator<Item = &'book str>,
    ) -> Vec<String> {
        match self.comparisons_left.checked_sub(count) {
            Some(left) => {
                self.comparisons_left = left;
                nearest(id, known)
            }
            None => Vec::new(),
        }
    }
}
