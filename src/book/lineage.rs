//! What versions build on, looked at for all versions of a recipe at once: in as many steps as there are versions and changes.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Change, Finding, FindingKind, Place, Recipe, Resolved, Version, VersionId};

/// Versions up to here are looked for one by one; behind it an index is made.
const NEAR: usize = 8;

impl Recipe {
    /// The version and those it builds on, the nearest first, ending with the recipe itself (`None`).
    ///
    /// Stops where a version is missing or comes a second time.
    pub fn lineage(&self, version: Option<&VersionId>) -> Vec<Option<VersionId>> {
        let mut lineage: Vec<Option<VersionId>> = Vec::new();
        let mut next = version;
        let mut index = None;
        let mut seen = BTreeSet::new();
        while let Some(id) = next.filter(|id| seen.insert(*id)) {
            let known = if lineage.len() < NEAR {
                self.version(id)
            } else {
                let index = index.get_or_insert_with(|| self.index());
                index.get(id).map(|at| &self.versions[*at])
            };
            next = known.and_then(|version| version.builds_on.as_ref());
            lineage.push(Some(id.clone()));
        }
        lineage.push(None);
        lineage
    }

    /// Where each version stands; of several with one id the first.
    pub(super) fn index(&self) -> BTreeMap<&VersionId, usize> {
        let mut index = BTreeMap::new();
        for (at, version) in self.versions.iter().enumerate() {
            index.entry(&version.id).or_insert(at);
        }
        index
    }

    /// For each version the index of the one that it builds on; `None` when that is the recipe or is missing.
    pub fn bases(&self) -> Vec<Option<usize>> {
        let index = self.index();
        self.versions
            .iter()
            .map(|version| index.get(version.builds_on.as_ref()?).copied())
            .collect()
    }

    /// How many versions stand between each version and the recipe, itself included: 1 for one that builds on the recipe. Members
    /// of a circle, and what builds on one, have the number of all versions.
    pub fn depths(&self) -> Vec<usize> {
        let bases = self.bases();
        let mut depths: Vec<Option<usize>> = vec![None; bases.len()];
        let mut is_on_path = vec![false; bases.len()];
        for start in 0..bases.len() {
            let mut path = Vec::new();
            let mut next = Some(start);
            while let Some(at) = next.filter(|at| depths[*at].is_none() && !is_on_path[*at]) {
                is_on_path[at] = true;
                path.push(at);
                next = bases[at];
            }
            let mut behind = next.map_or(0, |at| depths[at].unwrap_or(bases.len()));
            for at in path.into_iter().rev() {
                is_on_path[at] = false;
                behind = (behind + 1).min(bases.len());
                depths[at] = Some(behind);
            }
        }
        depths
            .into_iter()
            .map(|depth| depth.unwrap_or(bases.len()))
            .collect()
    }

    /// Shows what every version comes to, with the findings of its own changes; what a version builds on is shown before it. A
    /// version in a circle, and what builds on one, is not shown and is in the list that is given back.
    ///
    /// The second of two versions with one id is shown as the text says it; nothing builds on it.
    pub fn each_resolved(
        &self,
        mut show: impl FnMut(&Version, &Resolved, Vec<Finding>),
    ) -> Vec<&Version> {
        let mut building = vec![Vec::new(); self.versions.len()];
        let mut open = Vec::new();
        let plain = Arc::new(self.plain());
        for (at, base) in self.bases().into_iter().enumerate().rev() {
            match base {
                Some(base) => building[base].push(at),
                None => open.push((at, plain.clone())),
            }
        }
        drop(plain);
        let mut is_shown = vec![false; self.versions.len()];
        while let Some((at, base)) = open.pop() {
            let version = &self.versions[at];
            // A chain hands one state on; only where it branches is it copied.
            let mut resolved = Arc::unwrap_or_clone(base);
            let findings = self.carried_out(&mut resolved, version);
            show(version, &resolved, findings);
            is_shown[at] = true;
            let resolved = Arc::new(resolved);
            for next in std::mem::take(&mut building[at]) {
                open.push((next, resolved.clone()));
            }
        }
        let versions = self.versions.iter().zip(is_shown);
        versions
            .filter(|(_, shown)| !shown)
            .map(|(version, _)| version)
            .collect()
    }

    /// Carries out the changes of a version; a finding for every one whose target is gone.
    pub(super) fn carried_out(&self, resolved: &mut Resolved, version: &Version) -> Vec<Finding> {
        let without_target = version
            .changes
            .iter()
            .filter(|change| !resolved.apply(change));
        without_target
            .map(|change| self.without_target(version, change))
            .collect()
    }

    fn without_target(&self, version: &Version, change: &Change) -> Finding {
        let id = version.id.clone();
        let place = match change.target() {
            Some(line) => Place::Line(self.id.clone(), Some(id), line.clone()),
            None => Place::Version(self.id.clone(), id),
        };
        let field = change.field();
        Finding::error(place, FindingKind::ChangeWithoutTarget { field })
    }
}
