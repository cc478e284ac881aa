//! What a change means for the versions that build on what was changed: nothing, but for the line that it is about.

use std::collections::VecDeque;

use super::change::ChangeRefused;
use super::{
    Change, Entry, LineId, Recipe, Resolved, State, VersionId, differences_between, resolve,
};

/// Carries a change of the recipe or of a version on to the versions that build on it; `before` is the recipe without the
/// change. Refused when one of them can't stay as it was.
pub(super) fn hand_on(
    recipe: &mut Recipe,
    before: &Recipe,
    version: Option<&VersionId>,
    change: &Change,
) -> Result<(), ChangeRefused> {
    let is_approved = |version: &super::Version| version.state == State::Approved;
    if !change.is_of_order() && !recipe.versions.iter().any(is_approved) {
        // A value is inherited, or replaced, as it stands.
        return Ok(());
    }
    // Each version with what it comes to before and after, the nearest first.
    let mut waiting = VecDeque::from([(
        version.cloned(),
        resolve(before, version).0,
        resolve(recipe, version).0,
    )]);
    let mut is_reached: Vec<bool> = recipe
        .versions
        .iter()
        .map(|other| Some(&other.id) == version)
        .collect();
    while let Some((on, old_base, new_base)) = waiting.pop_front() {
        if old_base == new_base {
            continue;
        }
        for (at, is_reached) in is_reached.iter_mut().enumerate() {
            if *is_reached || recipe.base_of(&recipe.versions[at]) != on.as_ref() {
                continue;
            }
            *is_reached = true;
            let follower = &mut recipe.versions[at];
            let mut old = old_base.clone();
            old.apply_each(&follower.changes);
            follower.changes = if is_approved(follower) {
                let kept = kept_as_approved(&follower.changes, &old_base, &new_base, change);
                kept.ok_or_else(|| ChangeRefused::GivesApprovedCup(follower.id.clone()))?
            } else {
                followed(&follower.changes, &old_base, &new_base, change)?
            };
            let mut new = new_base.clone();
            new.apply_each(&follower.changes);
            waiting.push_back((Some(follower.id.clone()), old, new));
        }
    }
    Ok(())
}

impl Recipe {
    /// What a version builds on: another version that is there, or the recipe itself.
    fn base_of<'version>(&self, version: &'version super::Version) -> Option<&'version VersionId> {
        let base = version.builds_on.as_ref()?;
        self.version(base).map(|_| base)
    }
}

/// The changes of a version whose base has changed, such that all lines but that of the change stay in their order.
fn followed(
    changes: &[Change],
    old_base: &Resolved,
    new_base: &Resolved,
    change: &Change,
) -> Result<Vec<Change>, ChangeRefused> {
    let Some(target) = change.target().filter(|_| change.is_of_order()) else {
        return Ok(changes.to_vec());
    };
    if let Change::Add(..) = change {
        // The id must mean nothing yet: neither a line of its own, nor one that a change waits for.
        let (mut old, mut new) = (old_base.clone(), new_base.clone());
        let (had, has) = (old.apply_each(changes), new.apply_each(changes));
        let is_disturbed = changes.iter().zip(had).zip(has).any(|((other, had), has)| {
            let is_about_it = other.target() == Some(target);
            had != has && (had || !is_about_it)
        });
        if is_disturbed || !same_but_for(&old, &new, target) {
            return Err(ChangeRefused::IdTaken(target.clone()));
        }
        return Ok(changes.to_vec());
    }
    let (old, new) = (old_base.clone(), new_base.clone());
    let kept = without_leaning_on(changes, old, new, target, |other, had_target, now| {
        // What was to be left out is gone.
        let leaves_out = matches!(other, Change::Remove(id) if id == target);
        !(leaves_out && had_target && !now.has_entry(target))
    });
    Ok(kept)
}

fn same_but_for(one: &Resolved, other: &Resolved, target: &LineId) -> bool {
    let ids = |resolved: &Resolved| -> Vec<LineId> {
        let ids = resolved.entries.iter().map(Entry::id);
        ids.filter(|id| *id != target).cloned().collect()
    };
    ids(one) == ids(other)
}

/// The changes of an approved version whose base has changed, such that it comes to what it was; `None` when the base was given
/// a cup that the version has not, because no change takes a cup away.
fn kept_as_approved(
    changes: &[Change],
    old_base: &Resolved,
    new_base: &Resolved,
    change: &Change,
) -> Option<Vec<Change>> {
    let mut wanted = old_base.clone();
    let had_target = wanted.apply_each(changes);
    let is_kept = |kept: &[bool]| {
        let remaining = || changes.iter().zip(&had_target).zip(kept);
        let list: Vec<Change> = remaining()
            .filter(|(_, kept)| **kept)
            .map(|((change, _), _)| change.clone())
            .collect();
        let had = remaining()
            .filter(|(_, kept)| **kept)
            .map(|((_, had), _)| *had);
        let mut comes_to = new_base.clone();
        let has = comes_to.apply_each(&list);
        (comes_to == wanted && has.into_iter().eq(had)).then_some(list)
    };
    // A change that only kept the version as it was goes when the base is as it was again.
    let without: Vec<bool> = changes
        .iter()
        .zip(&had_target)
        .map(|(other, had)| !(*had && other.is_of_same_field(change)))
        .collect();
    let all = vec![true; changes.len()];
    if let Some(list) = is_kept(&without).or_else(|| is_kept(&all)) {
        return Some(list);
    }
    // Its own changes go on from the base as it was.
    let back = differences_between(new_base, old_base);
    let back_to_base = back.changes.into_iter().chain(changes.iter().cloned());
    (!back.cup_taken_away).then(|| back_to_base.collect())
}

/// The changes that `keeps`, with those anchored on `target` anchored on the line before it where it would take them elsewhere.
///
/// The changes are carried out on `old` and, as far as they are kept, on `new`, two states with the same lines in the same
/// order but for `target`; so are the two after each change. `keeps` is told of each change whether it had a target in `old`,
/// and what `new` is when its turn comes.
pub(super) fn without_leaning_on(
    changes: &[Change],
    mut old: Resolved,
    mut new: Resolved,
    target: &LineId,
    mut keeps: impl FnMut(&Change, bool, &Resolved) -> bool,
) -> Vec<Change> {
    let mut kept = Vec::with_capacity(changes.len());
    for change in changes {
        let leans = change.anchor() == Some(target);
        let before_target = |resolved: &Resolved| predecessor(resolved, target, change.target());
        let (old_place, new_place) = if leans {
            (before_target(&old), before_target(&new))
        } else {
            (None, None)
        };
        let had_target = old.apply(change);
        if !keeps(change, had_target, &new) {
            continue;
        }
        let change = match old_place {
            Some(place) if had_target && new_place.as_ref() != Some(&place) => {
                change.clone().anchored_behind(place.anchor())
            }
            _ => change.clone(),
        };
        new.apply(&change);
        kept.push(change);
    }
    kept
}

/// What stands before a line.
#[derive(PartialEq)]
enum Predecessor {
    /// Nothing.
    Beginning,
    /// This one.
    Entry(LineId),
}

impl Predecessor {
    fn anchor(self) -> Option<LineId> {
        match self {
            Self::Beginning => None,
            Self::Entry(id) => Some(id),
        }
    }
}

/// What stands before a line when `passing` is away; `None` when the line is not there.
fn predecessor(
    resolved: &Resolved,
    line: &LineId,
    passing: Option<&LineId>,
) -> Option<Predecessor> {
    let ids = || resolved.entries.iter().map(Entry::id);
    let at = ids().position(|id| id == line)?;
    let mut before = ids().take(at).filter(|id| Some(*id) != passing);
    let last = before.next_back().cloned();
    Some(last.map_or(Predecessor::Beginning, Predecessor::Entry))
}
