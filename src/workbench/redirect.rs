//! Changes to what is approved: they go into a new draft that builds on it.

use std::collections::BTreeSet;

use super::action::Shown;
use super::draft::draft_on;
use crate::book::{RecipeId, State, VersionId};
use crate::edit::{Edit, apply};
use crate::say::Speaker;

/// The edits with each change of an approved version, or of an approved recipe, as a change of a new draft on it, one draft for
/// each that is changed; and the first such draft, to be shown.
///
/// Every edit is looked at, with the states that the edits before it have set. What builds on a version that is changed needs no
/// redirection: the book keeps an approved version as it is when its base changes.
pub(super) fn redirect_from_approved(
    speaker: Speaker<'_>,
    edits: Vec<Edit>,
) -> (Vec<Edit>, Option<Shown>) {
    let book = speaker.book;
    let changed: BTreeSet<RecipeId> = edits
        .iter()
        .filter_map(|edit| match edit {
            Edit::Change { recipe, .. } => Some(recipe.clone()),
            _ => None,
        })
        .collect();
    if changed.is_empty() {
        return (edits, None);
    }
    let new_versions: Vec<_> = edits
        .iter()
        .filter_map(|edit| match edit {
            Edit::AddVersion { recipe, version } => Some((recipe.clone(), version.clone())),
            _ => None,
        })
        .collect();
    let mut states = book.clone();
    let mut drafts: Vec<(RecipeId, Option<VersionId>, VersionId)> = Vec::new();
    let mut redirected = Vec::with_capacity(edits.len());
    for edit in edits {
        let Edit::Change {
            recipe: id,
            version: on,
            change,
        } = edit
        else {
            if sets_state(&edit, &changed)
                && let Ok(after) = apply(&states, &edit)
            {
                states = after;
            }
            redirected.push(edit);
            continue;
        };
        let approved = states
            .recipe(&id)
            .filter(|recipe| recipe.state_of(on.as_ref()) == Some(State::Approved));
        let Some(recipe) = approved else {
            redirected.push(Edit::Change {
                recipe: id,
                version: on,
                change,
            });
            continue;
        };
        let known = drafts
            .iter()
            .find(|(recipe, version, _)| (recipe, version) == (&id, &on))
            .map(|(_, _, draft)| draft.clone());
        let draft = known.unwrap_or_else(|| {
            // Neither the drafts made here nor what the edits add later may have its name.
            let mut with_all = recipe.as_ref().clone();
            let added = new_versions.iter().filter(|(recipe, _)| *recipe == id);
            with_all
                .versions
                .extend(added.map(|(_, version)| version.clone()));
            let made = redirected.iter().filter_map(|edit| match edit {
                Edit::AddVersion { recipe, version } if *recipe == id => Some(version.clone()),
                _ => None,
            });
            with_all.versions.extend(made);
            let (draft, version) = draft_on(&with_all, on.as_ref(), speaker);
            redirected.push(Edit::AddVersion {
                recipe: id.clone(),
                version,
            });
            drafts.push((id.clone(), on.clone(), draft.clone()));
            draft
        });
        redirected.push(Edit::Change {
            recipe: id,
            version: Some(draft),
            change,
        });
    }
    let shown = drafts.into_iter().next().map(|(recipe, _, draft)| Shown {
        recipe,
        version: Some(draft),
    });
    (redirected, shown)
}

/// Whether an edit may change which versions of these recipes there are, or their states.
fn sets_state(edit: &Edit, recipes: &BTreeSet<RecipeId>) -> bool {
    match edit {
        Edit::SetState { recipe, .. }
        | Edit::AddVersion { recipe, .. }
        | Edit::RemoveVersion { recipe, .. }
        | Edit::Approve { recipe, .. }
        | Edit::RemoveRecipe(recipe) => recipes.contains(recipe),
        Edit::PutRecipe(recipe) => recipes.contains(&recipe.id),
        Edit::PutBook { .. } => true,
        _ => false,
    }
}
