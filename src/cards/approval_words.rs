//! Which state of a recipe a card shows: its version, and whether that is what was approved.

use crate::book::{Recipe, Resolved, State, VersionId};
use crate::say::{Speaker, say};

/// The name of a version; "original" for the recipe itself.
pub(super) fn version_name<'text>(
    speaker: &Speaker<'_>,
    recipe: &'text Recipe,
    version: Option<&VersionId>,
) -> &'text str {
    version
        .and_then(|id| recipe.version(id))
        .map_or(speaker.word("version-original"), |version| {
            speaker.recipe_text(recipe, &version.name)
        })
}

/// Whether a version is what was approved: as it stands, or by a state that was set by hand, without a copy of the lines.
pub(super) fn is_approved(recipe: &Recipe, version: Option<&VersionId>, now: &Resolved) -> bool {
    let mut approvals = recipe.approvals.iter().rev();
    match approvals.find(|approval| approval.version.as_ref() == version) {
        Some(approval) => approval.resolved == *now,
        None => recipe.state_of(version) == Some(State::Approved),
    }
}

/// "iced: approved 2026-05-04 by Ada", "original: changed since the approval of 2026-05-04", "vegan: draft, not approved".
pub(super) fn revision(
    speaker: &Speaker<'_>,
    recipe: &Recipe,
    version: Option<&VersionId>,
    now: &Resolved,
) -> String {
    let name = version_name(speaker, recipe, version);
    let mut approvals = recipe.approvals.iter().rev();
    match approvals.find(|approval| approval.version.as_ref() == version) {
        Some(approval) if approval.resolved == *now && approval.by.is_empty() => {
            say!(speaker, "revision-approved", version: name, day: &approval.date)
        }
        Some(approval) if approval.resolved == *now => say!(
            speaker,
            "revision-approved-by",
            version: name,
            day: &approval.date,
            person: &approval.by,
        ),
        Some(approval) => {
            say!(speaker, "revision-changed", version: name, day: &approval.date)
        }
        // The state was set by hand, without a copy of the lines.
        None => {
            let state = recipe.state_of(version).unwrap_or(State::Draft);
            let state = match state {
                State::Draft => "draft",
                State::OnTrial => "trial",
                State::Approved => "approved",
                State::Retired => "retired",
            };
            say!(speaker, "revision-never-approved", version: name, state: state)
        }
    }
}
