//! The history of a recipe: its approvals, and what changed from one to the next.

use super::{Approval, Differences, Recipe, Version, VersionId, differences_between, resolve};

/// An approval, and how it differs from the one that it follows.
#[derive(Clone, Debug, PartialEq)]
pub struct ApprovalRecord<'recipe> {
    /// Its number in the recipe, from 1; the oldest is the first.
    pub number: usize,
    /// The approval.
    pub approval: &'recipe Approval,
    /// Number of the approval that it follows; none when it is the first of its lineage.
    pub follows: Option<usize>,
    /// What changed from that one; nothing when there is none.
    pub differences: Option<Differences>,
}

impl Recipe {
    /// The approvals, the oldest first. Each follows the latest one before it of the same version or, when there is none, of
    /// the nearest version that it builds on.
    pub fn approval_history(&self) -> Vec<ApprovalRecord<'_>> {
        let records = self.approvals.iter().enumerate().map(|(at, approval)| {
            let follows = self.followed(at).map(|at| at + 1);
            let differences = follows.and_then(|number| self.compare_approvals(number, at + 1));
            ApprovalRecord {
                number: at + 1,
                approval,
                follows,
                differences,
            }
        });
        records.collect()
    }

    fn followed(&self, at: usize) -> Option<usize> {
        let before = &self.approvals[..at];
        let latest_of =
            |id: &Option<VersionId>| before.iter().rposition(|approval| approval.version == *id);
        self.lineage(self.approvals[at].version.as_ref())
            .iter()
            .find_map(latest_of)
    }

    /// What changed from one approval to another, by their numbers from 1.
    pub fn compare_approvals(&self, from: usize, to: usize) -> Option<Differences> {
        let numbered = |number: usize| self.approvals.get(number.checked_sub(1)?);
        Some(differences_between(
            &numbered(from)?.resolved,
            &numbered(to)?.resolved,
        ))
    }

    /// What changed from an approval, by its number from 1, to a version as it is now.
    pub fn compare_with_approval(
        &self,
        number: usize,
        version: Option<&VersionId>,
    ) -> Option<Differences> {
        let approval = self.approvals.get(number.checked_sub(1)?)?;
        Some(differences_between(
            &approval.resolved,
            &resolve(self, version).0,
        ))
    }

    /// A new draft with the lines of an approval, by its number from 1. It builds on the version that was approved, when that
    /// is still there, and states what has changed since. A speaker names it after the approval.
    ///
    /// # Limitations
    /// A cup that the approval did not have can't be taken away by a version and stays.
    pub fn version_like_approval(
        &self,
        number: usize,
        name: impl FnOnce(&Approval) -> String,
    ) -> Option<Version> {
        let approval = self.approvals.get(number.checked_sub(1)?)?;
        let builds_on = approval
            .version
            .clone()
            .filter(|id| self.version(id).is_some());
        let now = resolve(self, builds_on.as_ref()).0;
        let name = name(approval);
        let id = VersionId::from_name(&name, |taken| self.version(taken).is_some());
        let mut version = Version::draft(id, name, builds_on);
        version.changes = differences_between(&now, &approval.resolved).changes;
        Some(version)
    }
}
