//! Writing a change into a version so that its list stays short: one change per target and field.

use super::{Change, Recipe, Version, VersionId, resolve};

/// Puts a change into a version of the recipe, in place of an earlier one of the same target and field.
///
/// A change that says what the version has without it is dropped, so that typing an amount and typing it back leaves no
/// trace. `false` when there is no such version or the target of the change is gone; nothing has changed then.
pub fn put_change(recipe: &mut Recipe, version: &VersionId, change: Change) -> bool {
    let Some(at) = recipe
        .versions
        .iter()
        .position(|candidate| candidate.id == *version)
    else {
        return false;
    };
    if !resolve(recipe, Some(version)).0.apply(&change) {
        return false;
    }
    let changes = &mut recipe.versions[at].changes;
    if fold_into_added(changes, &change) {
        return true;
    }
    if let Change::Remove(id) = &change {
        let added_here = changes
            .iter()
            .any(|other| matches!(other, Change::Add(_, entry) if entry.id() == id));
        changes.retain(|other| other.target() != Some(id));
        if added_here {
            drop_idle_changes(recipe, at);
            return true;
        }
    } else {
        changes.retain(|other| !same_field(other, &change));
    }
    recipe.versions[at].changes.push(change);
    drop_idle_changes(recipe, at);
    true
}

/// A change on a line that this version itself adds is written into the added line.
fn fold_into_added(changes: &mut [Change], change: &Change) -> bool {
    let (Some(id), false) = (
        change.target(),
        matches!(
            change,
            Change::Add(..) | Change::Remove(_) | Change::Move(..)
        ),
    ) else {
        return false;
    };
    for added in changes.iter_mut() {
        if let Change::Add(_, entry) = added
            && entry.id() == id
        {
            let mut alone = super::Resolved {
                entries: vec![entry.clone()],
                ..super::Resolved::default()
            };
            if alone.apply(change)
                && let Some(changed) = alone.entries.pop()
            {
                *entry = changed;
                return true;
            }
        }
    }
    false
}

fn same_field(one: &Change, other: &Change) -> bool {
    std::mem::discriminant(one) == std::mem::discriminant(other)
        && one.target() == other.target()
        && !matches!(one, Change::Add(..))
}

/// Drops the last change when the version resolves to the same without it.
fn drop_idle_changes(recipe: &mut Recipe, at: usize) {
    let id = recipe.versions[at].id.clone();
    let with = resolve(recipe, Some(&id)).0;
    let Some(last) = recipe.versions[at].changes.pop() else {
        return;
    };
    if resolve(recipe, Some(&id)).0 != with {
        recipe.versions[at].changes.push(last);
    }
}

impl Version {
    /// A new draft without changes.
    pub fn draft(id: VersionId, name: String, builds_on: Option<VersionId>) -> Self {
        Self {
            id,
            name,
            builds_on,
            state: super::State::Draft,
            season: String::new(),
            changes: Vec::new(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Amount, Entry, IngredientId, Line, LineId, RecipeId, Role, Stage, State};
    use super::*;

    fn line(id: &str, grams: f64) -> Entry {
        Entry::Line(Line {
            id: LineId::new(id).unwrap(),
            ingredient: IngredientId::new("water").unwrap(),
            amount: Amount::Grams(grams),
            temperature: None,
            role: Role::Water,
            stage: Stage::Mixed,
            carried: None,
            note: String::new(),
        })
    }

    fn recipe() -> (Recipe, VersionId) {
        let version = VersionId::new("iced").unwrap();
        let recipe = Recipe {
            id: RecipeId::new("r").unwrap(),
            name: "r".into(),
            state: State::Draft,
            entries: vec![line("a", 1.0), line("b", 2.0), line("c", 3.0)],
            cup: None,
            shaker: None,
            strained: false,
            drinking_temperature: None,
            menu_price: None,
            versions: vec![Version::draft(version.clone(), "iced".into(), None)],
            approvals: vec![],
            note: String::new(),
        };
        (recipe, version)
    }

    fn id(text: &str) -> LineId {
        LineId::new(text).unwrap()
    }

    fn order(recipe: &Recipe, version: &VersionId) -> String {
        resolve(recipe, Some(version))
            .0
            .lines()
            .map(|line| line.id.as_str())
            .collect()
    }

    #[test]
    fn a_later_amount_replaces_the_earlier_one_and_the_way_back_leaves_no_trace() {
        let (mut recipe, version) = recipe();
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Amount(id("a"), Amount::Grams(5.0))
        ));
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Amount(id("a"), Amount::Grams(6.0))
        ));
        assert_eq!(
            recipe.versions[0].changes,
            [Change::Amount(id("a"), Amount::Grams(6.0))]
        );
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Amount(id("a"), Amount::Grams(1.0))
        ));
        assert_eq!(recipe.versions[0].changes, []);
    }

    #[test]
    fn an_added_line_carries_its_own_changes_and_leaves_with_them() {
        let (mut recipe, version) = recipe();
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Add(Some(id("a")), line("d", 4.0))
        ));
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Amount(id("d"), Amount::Grams(9.0))
        ));
        assert_eq!(
            recipe.versions[0].changes,
            [Change::Add(Some(id("a")), line("d", 9.0))]
        );
        assert_eq!(order(&recipe, &version), "adbc");
        assert!(put_change(&mut recipe, &version, Change::Remove(id("d"))));
        assert_eq!(recipe.versions[0].changes, []);
    }

    #[test]
    fn moves_and_removals_resolve_in_order_and_a_missing_target_changes_nothing() {
        let (mut recipe, version) = recipe();
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Move(id("c"), None)
        ));
        assert_eq!(order(&recipe, &version), "cab");
        assert!(put_change(
            &mut recipe,
            &version,
            Change::Move(id("c"), Some(id("a")))
        ));
        assert_eq!(order(&recipe, &version), "acb");
        assert!(put_change(&mut recipe, &version, Change::Remove(id("b"))));
        assert_eq!(order(&recipe, &version), "ac");
        let before = recipe.clone();
        assert!(!put_change(&mut recipe, &version, Change::Remove(id("zz"))));
        assert!(!put_change(
            &mut recipe,
            &version,
            Change::Move(id("a"), Some(id("zz")))
        ));
        assert_eq!(recipe, before);
    }

    #[test]
    fn a_change_without_target_is_a_finding_and_the_rest_is_resolved() {
        let (mut recipe, version) = recipe();
        recipe.versions[0].changes = vec![
            Change::Amount(id("gone"), Amount::Grams(1.0)),
            Change::Amount(id("a"), Amount::Grams(7.0)),
        ];
        let (resolved, findings) = resolve(&recipe, Some(&version));
        assert_eq!(findings.len(), 1);
        assert_eq!(resolved.line(&id("a")).unwrap().amount, Amount::Grams(7.0));
    }
}
