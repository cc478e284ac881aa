//! Versions of a recipe looked at one after the other: what all of them have in common is looked up once.

use std::collections::BTreeMap;

use super::{Approval, Finding, FindingKind, IdKind, Place, Recipe, Resolved, VersionId};

/// The lineages of a recipe. [`super::resolve`] looks for each ancestor among all versions, which is right for one version and
/// takes minutes for the thousands of a long chain.
pub struct Lineages<'recipe> {
    recipe: &'recipe Recipe,
    /// Where each version stands; of several with one id the first.
    index: BTreeMap<&'recipe VersionId, usize>,
    /// For each version the one that it builds on.
    bases: Vec<Option<usize>>,
    /// The latest approval of each version, and of the recipe itself (`None`).
    approvals: BTreeMap<Option<&'recipe VersionId>, &'recipe Approval>,
    /// The approval of the lineage of each version, once it has been looked for.
    standards: BTreeMap<usize, Option<&'recipe Approval>>,
    /// The version that was resolved last, when it is in no circle: the next one often builds on it.
    last: Option<(usize, Resolved, Vec<Finding>)>,
}

impl<'recipe> Lineages<'recipe> {
    /// Looks at what builds on what.
    pub fn new(recipe: &'recipe Recipe) -> Self {
        let approvals = recipe.approvals.iter();
        Self {
            recipe,
            index: recipe.index(),
            bases: recipe.bases(),
            approvals: approvals
                .map(|approval| (approval.version.as_ref(), approval))
                .collect(),
            standards: BTreeMap::new(),
            last: None,
        }
    }

    /// Whether the recipe has the version; it always has itself (`None`).
    pub fn has(&self, version: Option<&VersionId>) -> bool {
        version.is_none_or(|id| self.index.contains_key(id))
    }

    /// The same as [`super::resolve`].
    pub fn resolve(&mut self, version: Option<&VersionId>) -> (Resolved, Vec<Finding>) {
        let Some(id) = version else {
            return (self.recipe.plain(), Vec::new());
        };
        let Some(at) = self.index.get(id).copied() else {
            return (self.recipe.plain(), vec![self.missing(id)]);
        };
        let mut path = Vec::new();
        let mut is_on_path = vec![
            false;
            if self.is_last(at) {
                0
            } else {
                self.bases.len()
            }
        ];
        let mut next = Some(at);
        while let Some(at) = next.filter(|at| !self.is_last(*at) && !is_on_path[*at]) {
            is_on_path[at] = true;
            path.push(at);
            next = self.bases[at];
        }
        let is_circle = next.is_some_and(|at| !self.is_last(at));
        let (mut resolved, mut findings) = match self.last.take() {
            Some((last, resolved, findings)) if next == Some(last) => (resolved, findings),
            _ => {
                let deepest = path.last().map(|at| &self.recipe.versions[*at]);
                let missing = deepest
                    .and_then(|version| version.builds_on.as_ref())
                    .filter(|id| !self.index.contains_key(id));
                let missing = missing.map(|id| self.missing(id));
                (self.recipe.plain(), missing.into_iter().collect())
            }
        };
        for at in path.into_iter().rev() {
            let version = &self.recipe.versions[at];
            findings.extend(self.recipe.carried_out(&mut resolved, version));
        }
        if !is_circle {
            self.last = Some((at, resolved.clone(), findings.clone()));
        }
        (resolved, findings)
    }

    fn is_last(&self, at: usize) -> bool {
        self.last.as_ref().is_some_and(|(last, ..)| *last == at)
    }

    fn missing(&self, id: &VersionId) -> Finding {
        Finding::error(
            Place::Recipe(self.recipe.id.clone(), "versions"),
            FindingKind::Dangling {
                kind: IdKind::Version,
                id: id.to_string(),
                nearest: Vec::new(),
            },
        )
    }

    /// The same as [`Recipe::standard_for`]. What is found for a version holds for all that were passed on the way to it.
    pub fn standard_for(&mut self, version: Option<&VersionId>) -> Option<&'recipe Approval> {
        let mut path = Vec::new();
        let mut next = version;
        let mut found = None;
        // A lineage has no more versions than the recipe, and a missing one behind them; in a circle the search ends there.
        while let Some(id) = next.filter(|_| path.len() <= self.bases.len()) {
            if let Some(approval) = self.approvals.get(&Some(id)) {
                found = Some(*approval);
                break;
            }
            let Some(at) = self.index.get(id).copied() else {
                break;
            };
            if let Some(known) = self.standards.get(&at) {
                found = *known;
                break;
            }
            path.push(at);
            next = self.recipe.versions[at].builds_on.as_ref();
        }
        for at in path {
            self.standards.insert(at, found);
        }
        found
            .or_else(|| self.approvals.get(&None).copied())
            .or_else(|| self.recipe.approvals.last())
    }
}
