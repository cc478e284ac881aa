//! Which state of a recipe a card shows: its version, and whether that is what was approved.

use crate::book::{Recipe, Resolved, Standing, State, VersionId};
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

/// "iced: approved 2026-05-04 by Ada", "original: changed since the approval of 2026-05-04", "vegan: draft, not approved".
pub(super) fn revision(
    speaker: &Speaker<'_>,
    recipe: &Recipe,
    version: Option<&VersionId>,
    now: &Resolved,
) -> String {
    let name = version_name(speaker, recipe, version);
    match recipe.standing(version, now) {
        Standing::Approved(approval) if approval.by.is_empty() => {
            say!(speaker, "revision-approved", version: name, day: &approval.date)
        }
        Standing::Approved(approval) => say!(
            speaker,
            "revision-approved-by",
            version: name,
            day: &approval.date,
            person: &approval.by,
        ),
        Standing::ChangedSince(approval) => {
            say!(speaker, "revision-changed", version: name, day: &approval.date)
        }
        Standing::MarkedOnly => say!(speaker, "revision-marked-only", version: name),
        Standing::TakenBack(state, approval) => say!(
            speaker,
            "revision-taken-back",
            version: name,
            state: key(state),
            day: &approval.date,
        ),
        Standing::Never(state) => {
            say!(speaker, "revision-never-approved", version: name, state: key(state))
        }
    }
}

/// The key by which the word of a state is chosen.
fn key(state: State) -> &'static str {
    match state {
        State::Draft => "draft",
        State::OnTrial => "trial",
        State::Approved => "approved",
        State::Retired => "retired",
    }
}
