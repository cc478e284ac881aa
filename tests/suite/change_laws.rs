//! Laws of changing one line: whatever recipe, versions and changes there are, nothing else changes.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fmt::Write as _;

use evensip::book::{
    Book, Change, ChangeRefused, ChangedField, Entry, FindingKind, LineId, Place, Recipe, Resolved,
    State, VersionId, put_change, resolve,
};
use evensip::edit::{Edit, Focus};
use evensip::workbench::{Action, Home, Unfiled, Workbench};
use proptest::prelude::*;

use super::arbitrary_book::{self as arbitrary, Dice};

/// Versions that a thrown recipe has.
const VERSIONS: usize = 5;

fn version_called(at: usize) -> VersionId {
    VersionId::new(&format!("version-{at}")).unwrap()
}

/// A recipe whose versions build on the recipe or on each other, with no circle. Their changes are any, in half of the recipes;
/// in the others there are none yet.
fn recipe(dice: &mut Dice) -> Recipe {
    let mut recipe = arbitrary::recipe(dice);
    let is_clean = dice.coin();
    recipe.versions = (0..VERSIONS)
        .map(|at| {
            let mut version = arbitrary::version(dice);
            version.id = version_called(at);
            let on = dice.below(at + 2);
            version.builds_on = (on < at).then(|| version_called(on));
            if is_clean {
                version.changes.clear();
            }
            version
        })
        .collect();
    recipe
}

fn anywhere(dice: &mut Dice) -> Option<VersionId> {
    let at = dice.below(VERSIONS + 1);
    (at < VERSIONS).then(|| version_called(at))
}

fn everything(recipe: &Recipe) -> Vec<(Option<VersionId>, State, Resolved)> {
    let versions = recipe.versions.iter().map(|version| Some(&version.id));
    std::iter::once(None)
        .chain(versions)
        .map(|id| {
            let state = recipe.state_of(id).unwrap();
            (id.cloned(), state, resolve(recipe, id).0)
        })
        .collect()
}

/// Changes that have no target, each with its version, what it is about and the line.
fn without_target(recipe: &Recipe) -> Vec<(VersionId, ChangedField, Option<LineId>)> {
    let mut found = Vec::new();
    for version in &recipe.versions {
        for finding in resolve(recipe, Some(&version.id)).1 {
            let FindingKind::ChangeWithoutTarget { field } = finding.kind else {
                panic!("{finding:?}");
            };
            match finding.place {
                Place::Line(_, Some(of), line) if of == version.id => {
                    found.push((of, field, Some(line)));
                }
                Place::Version(_, of) if of == version.id => found.push((of, field, None)),
                // It is told of the version that the change stands in.
                _ => {}
            }
        }
    }
    found.sort();
    found
}

/// The entries but for that of a change, and the rest but for the field of the change.
fn but_for(resolved: &Resolved, change: &Change) -> Resolved {
    let mut rest = resolved.clone();
    rest.entries
        .retain(|entry| Some(entry.id()) != change.target());
    match change {
        Change::Cup(_) => rest.cup = None,
        Change::Shaker(_) => rest.shaker = None,
        Change::Strained(_) => rest.strained = false,
        Change::DrinkingTemperature(_) => rest.drinking_temperature = None,
        Change::MenuPrice(_) => rest.menu_price = None,
        Change::SugarLevel(_) => rest.sugar_level = None,
        _ => {}
    }
    rest
}

/// The lines of a recipe by id, and what each version makes of them.
fn story(recipe: &Recipe) -> String {
    let ids = |resolved: &Resolved| -> String {
        let ids = resolved.entries.iter().map(|entry| entry.id().as_str());
        ids.collect::<Vec<_>>().join(" ")
    };
    let mut story = format!("  {}\n", ids(&recipe.plain()));
    for version in &recipe.versions {
        let lines = resolve(recipe, Some(&version.id)).0;
        let _ = writeln!(
            story,
            "  {} on {:?}, {}: {}",
            version.id,
            version.builds_on,
            version.state.word(),
            ids(&lines)
        );
        for change in &version.changes {
            let _ = match change {
                Change::Add(behind, entry) => {
                    writeln!(story, "    Add({behind:?}, {})", entry.id())
                }
                change => writeln!(story, "    {change:?}"),
            };
        }
    }
    story
}

/// Everything that must hold of one change.
fn check(
    before: &Recipe,
    after: &Recipe,
    changed: Option<&VersionId>,
    change: &Change,
) -> Result<(), TestCaseError> {
    let told = || {
        format!(
            "{change:?} of {changed:?}\nbefore\n{}after\n{}",
            story(before),
            story(after)
        )
    };
    for ((id, state, was), (_, _, is)) in everything(before).iter().zip(everything(after)) {
        if id.as_ref() == changed {
            let mut wanted = was.clone();
            prop_assert!(wanted.apply(change), "{}", told());
            prop_assert!(
                wanted == is,
                "what was changed is something else: {}",
                told()
            );
        } else if *state == State::Approved {
            prop_assert!(*was == is, "approved {id:?}: {}", told());
        } else {
            prop_assert!(
                but_for(was, change) == but_for(&is, change),
                "more than the change in {id:?}: {}",
                told()
            );
            if let Change::Remove(line) = change {
                let adds =
                    |change: &Change| matches!(change, Change::Add(_, entry) if entry.id() == line);
                let lineage = after.lineage(id.as_ref());
                let has_its_own = lineage
                    .iter()
                    .flatten()
                    .filter_map(|id| after.version(id))
                    .any(|version| {
                        version.state == State::Approved || version.changes.iter().any(adds)
                    });
                let builds_on_changed = lineage.contains(&changed.cloned());
                prop_assert!(
                    !builds_on_changed || has_its_own || is.line(line).is_none(),
                    "left in {id:?}: {}",
                    told()
                );
            }
        }
    }
    let (was, is) = (without_target(before), without_target(after));
    for finding in &is {
        let is_known = was.contains(finding)
            || matches!(change, Change::Remove(line) if finding.2.as_ref() == Some(line));
        prop_assert!(is_known, "{finding:?} has lost its target: {}", told());
    }
    for finding in &was {
        prop_assert!(
            is.contains(finding) || finding.2.as_ref() == change.target(),
            "{finding:?} is lost unseen: {}",
            told()
        );
    }
    Ok(())
}

fn config(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        max_shrink_iters: 0,
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(config(6000))]

    #[test]
    fn a_change_changes_what_it_is_about_and_nothing_else(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut recipe = recipe(&mut dice);
        for _ in 0..20 {
            let (version, change) = (anywhere(&mut dice), arbitrary::change(&mut dice));
            let before = recipe.clone();
            match put_change(&mut recipe, version.as_ref(), &change) {
                Ok(()) => check(&before, &recipe, version.as_ref(), &change)?,
                Err(_) => prop_assert!(recipe == before, "seed {seed}"),
            }
        }
    }

    #[test]
    fn adding_and_removing_a_line_leaves_no_trace(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut recipe = recipe(&mut dice);
        for _ in 0..10 {
            let version = anywhere(&mut dice);
            let _ = put_change(&mut recipe, version.as_ref(), &arbitrary::change(&mut dice));
            let new = LineId::from_name("new", |id| recipe.has_entry_id(id));
            let lines = resolve(&recipe, version.as_ref()).0;
            let behind = (!lines.entries.is_empty() && dice.coin())
                .then(|| lines.entries[dice.below(lines.entries.len())].id().clone());
            let entry = arbitrary::entry(&mut dice, new.clone());
            let before = recipe.clone();
            put_change(&mut recipe, version.as_ref(), &Change::Add(behind, entry)).unwrap();
            put_change(&mut recipe, version.as_ref(), &Change::Remove(new)).unwrap();
            prop_assert!(recipe == before, "seed {seed}: {before:#?}\n{recipe:#?}");
        }
    }

    #[test]
    fn a_version_keeps_one_change_per_line_and_field(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut recipe = recipe(&mut dice);
        for version in &mut recipe.versions {
            version.changes.clear();
            // What keeps an approved version as it was is put before its own changes.
            version.state = State::Draft;
        }
        for _ in 0..40 {
            let version = anywhere(&mut dice);
            let _ = put_change(&mut recipe, version.as_ref(), &arbitrary::change(&mut dice));
        }
        for version in &recipe.versions {
            for (at, change) in version.changes.iter().enumerate() {
                let same = |other: &&Change| {
                    std::mem::discriminant(*other) == std::mem::discriminant(change)
                        && other.target() == change.target()
                };
                prop_assert_eq!(version.changes[..at].iter().find(same), None, "seed {}", seed);
            }
        }
    }

    #[test]
    fn a_recipe_whose_versions_go_in_circles_can_be_changed(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut recipe = arbitrary::recipe(&mut dice);
        for _ in 0..20 {
            let version = dice.coin().then(|| arbitrary::version_id(&mut dice));
            let before = recipe.clone();
            if put_change(&mut recipe, version.as_ref(), &arbitrary::change(&mut dice)).is_err() {
                prop_assert!(recipe == before, "seed {seed}");
            }
        }
    }
}

/// What a person may do to a recipe in one step.
fn some_edit(dice: &mut Dice, recipe: &Recipe) -> Edit {
    let (id, version) = (recipe.id.clone(), anywhere(dice));
    match dice.below(12) {
        0 => {
            let mut new = arbitrary::version(dice);
            // One that builds on a version that is missing, or on itself, is a finding and no version to approve.
            new.builds_on = version.filter(|id| recipe.version(id).is_some());
            new.id = VersionId::from_name("new", |id| recipe.version(id).is_some());
            Edit::AddVersion {
                recipe: id,
                version: new,
            }
        }
        1 => Edit::SetState {
            recipe: id,
            version,
            state: dice.pick(&[
                State::Draft,
                State::OnTrial,
                State::Approved,
                State::Retired,
            ]),
        },
        2 => Edit::Approve {
            recipe: id,
            approval: arbitrary::approval(dice),
        },
        3 => Edit::RemoveVersion {
            recipe: id,
            version: arbitrary::version_id(dice),
        },
        _ => Edit::Change {
            recipe: id,
            version,
            change: arbitrary::change(dice),
        },
    }
}

proptest! {
    #![proptest_config(config(1500))]

    #[test]
    fn what_is_approved_stays_whatever_is_edited(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let recipe = recipe(&mut dice);
        let id = recipe.id.clone();
        let mut book = Book::default();
        book.recipes.put(recipe);
        let mut workbench = Workbench::with_book(book, Home::Nowhere(Unfiled::New));
        for _ in 0..15 {
            let before = workbench.book().recipe(&id).unwrap().clone();
            let edits: Vec<Edit> =
                (0..=dice.below(4)).map(|_| some_edit(&mut dice, &before)).collect();
            let focus = Focus::Book;
            workbench.perform(Action::Edit { edits: edits.clone(), focus });
            let after = workbench.book().recipe(&id).unwrap().clone();
            for (version, state, was) in everything(&before) {
                // A version that is a draft again may change, and so may one that was taken away and added anew.
                let is_opened = edits.iter().any(|edit| match edit {
                    Edit::SetState { version: of, .. } => *of == version,
                    Edit::RemoveVersion { version: of, .. } => Some(of) == version.as_ref(),
                    _ => false,
                });
                let is_there = version.as_ref().is_none_or(|version| after.version(version).is_some());
                if state == State::Approved && !is_opened && is_there {
                    let is = resolve(&after, version.as_ref()).0;
                    prop_assert!(
                        was == is,
                        "seed {}: {:?} after {:?}\nbefore\n{}after\n{}",
                        seed, version, edits, story(&before), story(&after)
                    );
                }
            }
            let removes = |edit: &Edit| matches!(edit, Edit::RemoveVersion { .. });
            if let Some(shown) = workbench.take_show()
                && !edits.iter().any(removes)
            {
                prop_assert!(after.version(&shown.version.unwrap()).is_some());
            }
            workbench.perform(Action::Command(evensip::workbench::Command::CloseStep));
        }
    }
}

#[test]
fn an_id_that_a_version_has_for_a_line_of_its_own_is_taken() {
    let mut dice = Dice(7);
    let mut recipe = recipe(&mut dice);
    recipe.entries.clear();
    recipe.versions.truncate(1);
    recipe.versions[0].changes.clear();
    recipe.versions[0].state = State::Draft;
    let id = LineId::new("lime").unwrap();
    let add = |dice: &mut Dice| Change::Add(None, arbitrary::entry(dice, id.clone()));
    put_change(&mut recipe, Some(&version_called(0)), &add(&mut dice)).unwrap();
    let refused = put_change(&mut recipe, None, &add(&mut dice));
    assert_eq!(refused, Err(ChangeRefused::IdTaken(id.clone())));
    let has_line = |entry: &Entry| *entry.id() == id;
    assert!(
        resolve(&recipe, Some(&version_called(0)))
            .0
            .entries
            .iter()
            .any(has_line)
    );
}
