//! Changing a recipe or one of its versions so that a change does what it says and nothing else.
//!
//! A version keeps one change per target and field. A line may be the anchor of others (`Add` and `Move` say behind which line);
//! when it goes or moves, they are anchored on the line before it, and the order of all other lines stays as it was.

use super::change::ChangeRefused;
use super::inheritance::{hand_on, without_leaning_on};
use super::resolve::resolve_base;
use super::{Change, LineId, Recipe, Resolved, Version, VersionId};

/// Puts a change into a version of the recipe, or into the recipe itself. When it is refused nothing has changed.
///
/// - The lines become what they were with this change, in the same order. In the versions that build on them nothing changes
///   but what the change is about; an approved one does not change at all.
/// - In a version the change takes the place of an earlier one of the same target and field. A change that says what the
///   version has without it is dropped, so that typing an amount and typing it back leaves no trace.
/// - A change of another version whose line is removed stays, and is a finding; one that leaves that line out is done with.
pub fn put_change(
    recipe: &mut Recipe,
    version: Option<&VersionId>,
    change: &Change,
) -> Result<(), ChangeRefused> {
    let before = recipe.clone();
    let outcome = match version {
        None => change_plain(recipe, change),
        Some(id) => change_version(recipe, id, change),
    };
    let outcome = outcome.and_then(|()| hand_on(recipe, &before, version, change));
    if outcome.is_err() {
        *recipe = before;
    }
    outcome
}

fn change_plain(recipe: &mut Recipe, change: &Change) -> Result<(), ChangeRefused> {
    let mut plain = recipe.plain();
    carry_out(&mut plain, change)?;
    recipe.entries = plain.entries;
    recipe.cup = plain.cup;
    recipe.shaker = plain.shaker;
    recipe.strained = plain.strained;
    recipe.drinking_temperature = plain.drinking_temperature;
    recipe.menu_price = plain.menu_price;
    recipe.sugar_level = plain.sugar_level;
    Ok(())
}

fn change_version(
    recipe: &mut Recipe,
    id: &VersionId,
    change: &Change,
) -> Result<(), ChangeRefused> {
    let at = recipe
        .versions
        .iter()
        .position(|candidate| candidate.id == *id)
        .ok_or_else(|| ChangeRefused::NoVersion(id.clone()))?;
    let base = resolve_base(recipe, id);
    let changes = &mut recipe.versions[at].changes;
    let mut lines = base.clone();
    lines.apply_each(changes);
    carry_out(&mut lines, change)?;
    *changes = with_change(changes, &base, change);
    Ok(())
}

fn carry_out(lines: &mut Resolved, change: &Change) -> Result<(), ChangeRefused> {
    let taken = match change {
        Change::Add(_, entry) => Some(entry.id()).filter(|id| lines.has_entry(id)),
        _ => None,
    };
    if let Some(id) = taken {
        return Err(ChangeRefused::IdTaken(id.clone()));
    }
    if lines.apply(change) {
        return Ok(());
    }
    let missing = change.anchor().filter(|id| !lines.has_entry(id));
    match missing.or_else(|| change.target()) {
        Some(id) => Err(ChangeRefused::NoEntry(id.clone())),
        // The cup, the shaker and the like are always there.
        None => Ok(()),
    }
}

/// The changes of a version with one more, which its lines have a target for.
fn with_change(changes: &[Change], base: &Resolved, change: &Change) -> Vec<Change> {
    match change {
        Change::Remove(id) => without_entry(changes, base, id),
        Change::Move(id, _) => {
            // The line is moved from wherever it is; what moved it before is not needed any more.
            let mut kept =
                without_leaning_on(changes, base.clone(), base.clone(), id, |other, had, _| {
                    !(had && other.is_of_same_field(change))
                });
            kept.push(change.clone());
            without_idle_end(kept, base)
        }
        Change::Add(..) => changes.iter().chain([change]).cloned().collect(),
        _ => with_value(changes, base, change),
    }
}

/// The changes without a line that the version adds or inherits; what was anchored on it stays where it is.
///
/// Changes of the line leave with it, but for those that had no target: they are findings, which nobody has seen to yet.
fn without_entry(changes: &[Change], base: &Resolved, id: &LineId) -> Vec<Change> {
    let is_inherited = base.has_entry(id);
    let mut is_left_out = false;
    let mut kept = without_leaning_on(
        changes,
        base.clone(),
        base.clone(),
        id,
        |other, had_target, now| {
            if other.target() != Some(id) {
                true
            } else if had_target {
                let is_first = matches!(other, Change::Remove(_)) && is_inherited && !is_left_out;
                is_left_out |= is_first;
                is_first
            } else {
                !now.clone().apply(other)
            }
        },
    );
    if is_inherited && !is_left_out {
        kept.push(Change::Remove(id.clone()));
    }
    kept
}

/// The changes with another value of a field. In a line that the version itself adds it is written into that line.
fn with_value(changes: &[Change], base: &Resolved, change: &Change) -> Vec<Change> {
    let had_target = base.clone().apply_each(changes);
    let replaced = |at: usize, other: &Change| had_target[at] && other.is_of_same_field(change);
    let added = changes.iter().enumerate().rposition(|(at, other)| {
        let adds = matches!(other, Change::Add(..)) && other.target() == change.target();
        adds && had_target[at]
    });
    let mut kept = Vec::with_capacity(changes.len() + 1);
    for (at, other) in changes.iter().enumerate() {
        match other {
            Change::Add(after, entry) if Some(at) == added => {
                let mut alone = Resolved {
                    entries: vec![entry.clone()],
                    ..Resolved::default()
                };
                alone.apply(change);
                let entries = alone.entries.into_iter();
                kept.extend(entries.map(|entry| Change::Add(after.clone(), entry)));
            }
            _ if replaced(at, other) => {}
            _ => kept.push(other.clone()),
        }
    }
    if added.is_some() {
        return kept;
    }
    kept.push(change.clone());
    without_idle_end(kept, base)
}

/// The changes without the last one when they come to the same without it.
fn without_idle_end(mut changes: Vec<Change>, base: &Resolved) -> Vec<Change> {
    let Some(last) = changes.pop() else {
        return changes;
    };
    let mut without = base.clone();
    without.apply_each(&changes);
    let mut with = without.clone();
    with.apply(&last);
    if with != without {
        changes.push(last);
    }
    changes
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
    use super::super::{Amount, Entry, IngredientId, Line, RecipeId, Role, Stage, State, resolve};
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
            entries: vec![line("a", 1.0), line("b", 2.0), line("c", 3.0)],
            versions: vec![Version::draft(version.clone(), "iced".into(), None)],
            ..Recipe::new(RecipeId::new("r").unwrap(), "r".into())
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
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Amount(id("a"), Amount::Grams(5.0)),
        )
        .unwrap();
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Amount(id("a"), Amount::Grams(6.0)),
        )
        .unwrap();
        assert_eq!(
            recipe.versions[0].changes,
            [Change::Amount(id("a"), Amount::Grams(6.0))]
        );
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Amount(id("a"), Amount::Grams(1.0)),
        )
        .unwrap();
        assert_eq!(recipe.versions[0].changes, []);
    }

    #[test]
    fn an_added_line_carries_its_own_changes_and_leaves_with_them() {
        let (mut recipe, version) = recipe();
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Add(Some(id("a")), line("d", 4.0)),
        )
        .unwrap();
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Amount(id("d"), Amount::Grams(9.0)),
        )
        .unwrap();
        assert_eq!(
            recipe.versions[0].changes,
            [Change::Add(Some(id("a")), line("d", 9.0))]
        );
        assert_eq!(order(&recipe, &version), "adbc");
        put_change(&mut recipe, Some(&version), &Change::Remove(id("d"))).unwrap();
        assert_eq!(recipe.versions[0].changes, []);
    }

    #[test]
    fn moves_and_removals_resolve_in_order_and_a_missing_target_changes_nothing() {
        let (mut recipe, version) = recipe();
        put_change(&mut recipe, Some(&version), &Change::Move(id("c"), None)).unwrap();
        assert_eq!(order(&recipe, &version), "cab");
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Move(id("c"), Some(id("a"))),
        )
        .unwrap();
        assert_eq!(order(&recipe, &version), "acb");
        put_change(&mut recipe, Some(&version), &Change::Remove(id("b"))).unwrap();
        assert_eq!(order(&recipe, &version), "ac");
        let before = recipe.clone();
        for change in [
            Change::Remove(id("zz")),
            Change::Move(id("a"), Some(id("zz"))),
        ] {
            assert_eq!(
                put_change(&mut recipe, Some(&version), &change),
                Err(ChangeRefused::NoEntry(id("zz")))
            );
        }
        assert_eq!(recipe, before);
    }

    #[test]
    fn lines_that_were_put_behind_a_removed_one_stay() {
        let (mut recipe, version) = recipe();
        for change in [
            Change::Add(Some(id("c")), line("water", 4.0)),
            Change::Add(Some(id("water")), line("pear", 5.0)),
            Change::Add(Some(id("pear")), line("lime", 5.0)),
            Change::Move(id("a"), Some(id("pear"))),
            Change::Remove(id("pear")),
        ] {
            put_change(&mut recipe, Some(&version), &change).unwrap();
        }
        assert_eq!(order(&recipe, &version), "bcwateralime");
        put_change(&mut recipe, Some(&version), &Change::Remove(id("water"))).unwrap();
        assert_eq!(order(&recipe, &version), "bcalime");
        assert_eq!(resolve(&recipe, Some(&version)).1, []);
    }

    #[test]
    fn a_line_removed_from_the_recipe_takes_nothing_else_from_a_version() {
        let (mut recipe, version) = recipe();
        for change in [
            Change::Add(Some(id("b")), line("d", 4.0)),
            Change::Amount(id("b"), Amount::Grams(9.0)),
            Change::Remove(id("c")),
        ] {
            put_change(&mut recipe, Some(&version), &change).unwrap();
        }
        put_change(&mut recipe, None, &Change::Remove(id("b"))).unwrap();
        put_change(&mut recipe, None, &Change::Remove(id("c"))).unwrap();
        assert_eq!(order(&recipe, &version), "ad");
        // Another amount of a line that is gone is a finding; leaving out what is gone is not.
        assert_eq!(resolve(&recipe, Some(&version)).1.len(), 1);
        assert_eq!(recipe.versions[0].changes.len(), 2);
    }

    #[test]
    fn an_approved_version_stays_what_it_was_and_typing_back_leaves_no_trace() {
        let (mut recipe, version) = recipe();
        put_change(
            &mut recipe,
            Some(&version),
            &Change::Add(Some(id("b")), line("d", 4.0)),
        )
        .unwrap();
        recipe.versions[0].state = State::Approved;
        let (before, approved) = (recipe.clone(), resolve(&recipe, Some(&version)));
        let there_and_back = [
            [
                Change::Amount(id("a"), Amount::Grams(5.0)),
                Change::Amount(id("a"), Amount::Grams(1.0)),
            ],
            [
                Change::Move(id("b"), None),
                Change::Move(id("b"), Some(id("a"))),
            ],
            [Change::Add(None, line("e", 5.0)), Change::Remove(id("e"))],
            [
                Change::Remove(id("b")),
                Change::Add(Some(id("a")), line("b", 2.0)),
            ],
        ];
        for [there, back] in there_and_back {
            put_change(&mut recipe, None, &there).unwrap();
            assert_eq!(resolve(&recipe, Some(&version)), approved, "{there:?}");
            put_change(&mut recipe, None, &back).unwrap();
            assert_eq!(recipe, before, "{back:?}");
        }
        let cup = Change::Cup(crate::book::VesselId::new("cup").unwrap());
        assert_eq!(
            put_change(&mut recipe, None, &cup),
            Err(ChangeRefused::GivesApprovedCup(version))
        );
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
