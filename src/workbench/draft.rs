//! A new draft of a recipe.

use crate::book::{Recipe, Version, VersionId};
use crate::say::{Speaker, say};

/// A new draft that builds on a version, and its id. The recipe as written is the first version, so names begin with
/// "version 2".
pub fn draft_on(
    recipe: &Recipe,
    on: Option<&VersionId>,
    speaker: Speaker<'_>,
) -> (VersionId, Version) {
    let is_taken = |name: &str| recipe.versions.iter().any(|version| version.name == name);
    let name = |number: usize| {
        let number = number.to_string();
        say!(speaker, "version-name", number: number)
    };
    let names = (2_usize..).map(name);
    let name = names
        .into_iter()
        .find(|name| !is_taken(name))
        .unwrap_or_default();
    let id = VersionId::from_name(&name, |taken| recipe.version(taken).is_some());
    let version = Version::draft(id.clone(), name, on.cloned());
    (id, version)
}
