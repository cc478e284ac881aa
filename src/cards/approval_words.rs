//! Which state of a recipe a card shows: its version, and whether that is what was approved.

use crate::book::{Recipe, Resolved, State, VersionId};

/// The name of a version; "as written" for the recipe itself.
pub(super) fn version_name<'recipe>(
    recipe: &'recipe Recipe,
    version: Option<&VersionId>,
) -> &'recipe str {
    version
        .and_then(|id| recipe.version(id))
        .map_or("as written", |version| version.name.as_str())
}

/// "iced: approved 2026-05-04 by Ada", "as written: changed since the approval of 2026-05-04", "vegan: draft, not approved".
pub(super) fn revision(recipe: &Recipe, version: Option<&VersionId>, now: &Resolved) -> String {
    let latest = recipe
        .approvals
        .iter()
        .rev()
        .find(|approval| approval.version.as_ref() == version);
    let state = match latest {
        Some(approval) if approval.resolved == *now => {
            let by = if approval.by.is_empty() {
                String::new()
            } else {
                format!(" by {}", approval.by)
            };
            format!("approved {}{by}", approval.date)
        }
        Some(approval) => format!("changed since the approval of {}", approval.date),
        None => {
            let state = recipe.state_of(version).unwrap_or(State::Draft);
            match state {
                // The state was set by hand, without a copy of the lines.
                State::Approved => "approved, no date".to_owned(),
                state => format!("{}, not approved", state.word()),
            }
        }
    };
    format!("{}: {state}", version_name(recipe, version))
}
