//! How a version stands to its own approvals: the state that somebody set and the approvals that are kept can disagree.

use super::{Approval, Recipe, Resolved, State, VersionId};

/// What the state of a version and its own latest approval come to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Standing<'recipe> {
    /// It is what was approved.
    Approved(&'recipe Approval),
    /// It is marked approved, but has changed since this approval.
    ChangedSince(&'recipe Approval),
    /// It is marked approved, but no approval of it is kept: nobody can tell what was approved, when and by whom.
    MarkedOnly,
    /// It was approved, and has got another state since.
    TakenBack(State, &'recipe Approval),
    /// It never was.
    Never(State),
}

/// What stands behind the word "approved" on a version.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ApprovalMark {
    /// It is what was approved.
    AsApproved,
    /// It has changed since.
    ChangedSince,
    /// Nothing: no approval is kept.
    Nothing,
}

impl Standing<'_> {
    /// Whether it is what was approved, and marked so.
    pub fn is_approved(&self) -> bool {
        self.mark() == Some(ApprovalMark::AsApproved)
    }

    /// What stands behind its mark; none where it is not marked approved.
    pub fn mark(&self) -> Option<ApprovalMark> {
        match self {
            Self::Approved(_) => Some(ApprovalMark::AsApproved),
            Self::ChangedSince(_) => Some(ApprovalMark::ChangedSince),
            Self::MarkedOnly => Some(ApprovalMark::Nothing),
            Self::TakenBack(..) | Self::Never(_) => None,
        }
    }
}

impl Recipe {
    /// The latest approval of a version, or of the recipe itself.
    pub fn own_approval(&self, version: Option<&VersionId>) -> Option<&Approval> {
        let mut latest_first = self.approvals.iter().rev();
        latest_first.find(|approval| approval.version.as_ref() == version)
    }

    /// Whether a version is marked approved though no approval of it is kept.
    pub fn is_only_marked(&self, version: Option<&VersionId>) -> bool {
        self.state_of(version) == Some(State::Approved) && self.own_approval(version).is_none()
    }

    /// How a version, which comes to these lines, stands to its own approvals.
    pub fn standing(&self, version: Option<&VersionId>, now: &Resolved) -> Standing<'_> {
        let state = self.state_of(version).unwrap_or_default();
        self.standing_in(state, version, now)
    }

    /// The same of a version whose state is at hand, without looking for it among the others.
    pub(super) fn standing_in(
        &self,
        state: State,
        version: Option<&VersionId>,
        now: &Resolved,
    ) -> Standing<'_> {
        match (state, self.own_approval(version)) {
            (State::Approved, Some(approval)) if approval.resolved == *now => {
                Standing::Approved(approval)
            }
            (State::Approved, Some(approval)) => Standing::ChangedSince(approval),
            (State::Approved, None) => Standing::MarkedOnly,
            (state, Some(approval)) => Standing::TakenBack(state, approval),
            (state, None) => Standing::Never(state),
        }
    }
}
