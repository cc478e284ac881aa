//! From a recipe and a version to plain lines.

use std::collections::BTreeMap;

use super::resolved::Resolved;
use super::{Finding, FindingKind, IdKind, Place, Recipe, Version, VersionId};

impl Recipe {
    /// The recipe itself, without any version.
    pub fn plain(&self) -> Resolved {
        Resolved {
            entries: self.entries.clone(),
            cup: self.cup.clone(),
            shaker: self.shaker.clone(),
            strained: self.strained,
            drinking_temperature: self.drinking_temperature,
            menu_price: self.menu_price,
            sugar_level: self.sugar_level,
        }
    }
}

/// What a version builds on: the lines before its own changes are carried out.
pub(super) fn resolve_base(recipe: &Recipe, version: &VersionId) -> Resolved {
    let mut resolved = recipe.plain();
    let lineage = recipe.lineage(Some(version));
    for (_, version) in versions_of(recipe, &lineage[1..]) {
        if let Some(version) = version {
            resolved.apply_each(&version.changes);
        }
    }
    resolved
}

/// The versions of a lineage, that furthest down first.
fn versions_of<'recipe, 'ids>(
    recipe: &'recipe Recipe,
    lineage: &'ids [Option<VersionId>],
) -> impl Iterator<Item = (&'ids VersionId, Option<&'recipe Version>)> {
    let index: BTreeMap<&VersionId, &Version> = if lineage.len() > FEW {
        let versions = recipe.versions.iter().rev();
        versions.map(|version| (&version.id, version)).collect()
    } else {
        BTreeMap::new()
    };
    let is_indexed = lineage.len() > FEW;
    lineage.iter().rev().flatten().map(move |id| {
        let found = if is_indexed {
            index.get(id).copied()
        } else {
            recipe.version(id)
        };
        (id, found)
    })
}

/// So many versions are looked for one by one; for more an index is made.
const FEW: usize = 8;

/// The plain lines of a version (of the recipe itself for `None`), with a finding for every change whose target is gone
/// and for a version that is missing. Changes of the version furthest down the lineage come first.
pub fn resolve(recipe: &Recipe, version: Option<&VersionId>) -> (Resolved, Vec<Finding>) {
    let mut resolved = recipe.plain();
    let mut findings = Vec::new();
    let lineage = recipe.lineage(version);
    for (id, found) in versions_of(recipe, &lineage) {
        match found {
            Some(version) => findings.extend(recipe.carried_out(&mut resolved, version)),
            None => findings.push(Finding::error(
                Place::Recipe(recipe.id.clone(), "versions"),
                FindingKind::Dangling {
                    kind: IdKind::Version,
                    id: id.to_string(),
                    nearest: Vec::new(),
                },
            )),
        }
    }
    (resolved, findings)
}
