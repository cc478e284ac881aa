//! Laws over random books: files, edits, undo, comparison, merge.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::sync::Arc;

use evensip::book::{
    Book, ItemChange, ItemDetail, ItemId, MergeNote, Recipe, Side, difference_of_books,
    differences_between, findings, merge, resolve,
};
use evensip::book_file::{parse, write};
use evensip::edit::{Edit, FieldName, Focus, History, apply, apply_soundly};
use evensip::say::Speaker;
use proptest::prelude::*;

use super::arbitrary_book::{self as arbitrary, Dice};

/// The recipe that an edit is about, or none of any.
fn is_about_recipe(edit: &Edit, id: &evensip::book::RecipeId) -> bool {
    match edit {
        Edit::Change { recipe, .. }
        | Edit::RenameRecipe { recipe, .. }
        | Edit::NoteRecipe { recipe, .. }
        | Edit::FileReading { recipe, .. }
        | Edit::RemoveReading { recipe, .. }
        | Edit::SetState { recipe, .. }
        | Edit::AddVersion { recipe, .. }
        | Edit::RenameVersion { recipe, .. }
        | Edit::RemoveVersion { recipe, .. }
        | Edit::Approve { recipe, .. }
        | Edit::RemoveRecipe(recipe) => recipe == id,
        Edit::PutRecipe(recipe) => recipe.id == *id,
        Edit::PutRight(item) | Edit::DateChange { item, .. } | Edit::Translate { item, .. } => {
            *item == ItemId::Recipe(id.clone())
        }
        _ => false,
    }
}

/// A book and one that several edits have made of it.
fn edited(start: &Book, dice: &mut Dice, edits: usize) -> Book {
    let mut book = start.clone();
    for _ in 0..edits {
        let edit = arbitrary::edit(dice, &book);
        if let Ok(next) = apply(&book, &edit) {
            book = next;
        }
    }
    book
}

fn config(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(config(256))]

    #[test]
    fn any_book_that_is_saved_opens_the_same(seed in any::<u64>()) {
        let book = arbitrary::book(seed);
        let written = write(&book);
        let (read, found) = parse(&written).map_err(|problems| TestCaseError::fail(format!("{problems:?}")))?;
        prop_assert!(read == book, "seed {seed}");
        prop_assert_eq!(write(&read), written);
        // Debug, because a finding may tell of a number that is not equal to itself.
        prop_assert_eq!(format!("{found:?}"), format!("{:?}", findings(&book)));
    }

    #[test]
    fn changes_between_two_states_lead_from_one_to_the_other(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let (before, mut after) = (arbitrary::resolved(&mut dice), arbitrary::resolved(&mut dice));
        let differences = differences_between(&before, &after);
        let mut led = before.clone();
        for change in &differences.changes {
            prop_assert!(led.apply(change), "{change:?}");
        }
        prop_assert_eq!(differences.cup_taken_away, before.cup.is_some() && after.cup.is_none());
        if differences.cup_taken_away {
            after.cup.clone_from(&before.cup);
        }
        prop_assert!(led == after, "seed {seed}");
        let book = arbitrary::book(seed);
        let sentences = Speaker::new(&book).differences(&differences);
        prop_assert_eq!(sentences.len(), differences.changes.len() + usize::from(differences.cup_taken_away));
        prop_assert!(differences_between(&before, &before).is_empty());
    }

    #[test]
    fn a_version_like_an_approval_resolves_to_what_was_approved(seed in any::<u64>()) {
        let recipe = arbitrary::recipe(&mut Dice(seed));
        let book = Book::default();
        let mut with_recipe = book;
        with_recipe.recipes.put(recipe.clone());
        for (at, approval) in recipe.approvals.iter().enumerate() {
            let version = recipe.version_like_approval(at + 1, |approval| approval.date.clone()).unwrap();
            let id = version.id.clone();
            let with_version =
                apply(&with_recipe, &Edit::AddVersion { recipe: recipe.id.clone(), version }).unwrap();
            let (mut resolved, _) = resolve(with_version.recipe(&recipe.id).unwrap(), Some(&id));
            if approval.resolved.cup.is_none() {
                resolved.cup = None;
            }
            prop_assert!(resolved == approval.resolved, "seed {seed}, approval {at}");
        }
    }

    #[test]
    fn a_merge_keeps_what_either_side_did(seed in any::<u64>()) {
        let base = arbitrary::book(seed);
        let mut dice = Dice(seed ^ 0x5eed);
        let (mine, theirs) = (edited(&base, &mut dice, 4), edited(&base, &mut dice, 4));
        // An unchanged side gives the other one, and equal sides give themselves.
        for (one, other, expected) in [(&mine, &base, &mine), (&base, &theirs, &theirs), (&mine, &mine, &mine)] {
            let merged = merge(&base, one, other, |_| Side::Theirs);
            prop_assert!(merged.book == *expected && merged.conflicts.is_empty(), "seed {seed}");
        }
        let merged = merge(&base, &mine, &theirs, |_| Side::Mine);
        let turned = merge(&base, &theirs, &mine, |_| Side::Theirs);
        prop_assert!(difference_of_books(&merged.book, &turned.book).items.is_empty(), "seed {seed}");
        let items = |conflicts: &[evensip::book::Conflict]| {
            let mut items: Vec<ItemId> =
                conflicts.iter().map(|conflict| conflict.part.item.clone()).collect();
            items.sort();
            items
        };
        prop_assert_eq!(items(&merged.conflicts), items(&turned.conflicts));
        // What one side did and the other did not touch is in the merged book.
        let did = |to: &Book| difference_of_books(&base, to).items;
        let conflicting = items(&merged.conflicts);
        let is_noted = |item: &ItemId| merged.notes.iter().any(|note| match note {
            MergeNote::Kept { item: kept, .. } => kept == item,
            MergeNote::TakenWhole { items, .. } => items.iter().any(|(whole, _)| whole == item),
        });
        for (side, other) in [(&mine, &theirs), (&theirs, &mine)] {
            let of_other = did(other);
            for change in did(side).iter().filter(|change| !is_noted(&change.item) && of_other.iter().all(|other| other.item != change.item)) {
                prop_assert!(!conflicting.contains(&change.item));
                let mut left = difference_of_books(side, &merged.book).items;
                // A state that something of the other side was tasted with is kept, and what was tasted says which one it was.
                left.retain(|left| {
                    let details = Book::item_differences(side, &merged.book, &left.item);
                    let of_history = |detail: &ItemDetail| detail.is_of(&["earlier", "approvals", "cups"]);
                    let is_history = match &left.item {
                        // Versions may share an id in a random book, which their comparison takes for a change.
                        ItemId::Recipe(id) => side.recipe(id).zip(merged.book.recipe(id)).is_some_and(|(was, is)| {
                            let (earlier, approvals) = (is.earlier.clone(), is.approvals.clone());
                            Recipe { earlier, approvals, ..was.as_ref().clone() } == **is
                        }),
                        _ => details.iter().all(of_history),
                    };
                    left.change != ItemChange::Changed || !is_history
                });
                prop_assert!(left.iter().all(|left| left.item != change.item), "seed {seed}: {change:?}");
            }
        }
    }

    #[test]
    fn sharing_changes_no_book_and_shares_all_that_is_equal(seed in any::<u64>()) {
        let base = arbitrary::book(seed);
        let copy = parse(&write(&base)).unwrap().0;
        let shared = copy.sharing_with(&base);
        prop_assert!(shared == copy);
        for item in &shared.recipes {
            prop_assert!(Arc::ptr_eq(item, base.recipe(&item.id).unwrap()));
        }
    }
}

proptest! {
    #![proptest_config(config(48))]

    #[test]
    fn two_hundred_edits_are_undone_and_redone_to_the_letter(seed in any::<u64>()) {
        let start = Arc::new(arbitrary::book(seed));
        let mut dice = Dice(seed ^ 0xed17);
        let mut history = History::new(start.clone());
        let mut steps = Vec::new();
        for number in 0..200 {
            let before = history.book().clone();
            let edit = arbitrary::edit(&mut dice, &before);
            let replayed = apply_soundly(&before, [&edit]);
            let outcome = history.perform(vec![edit.clone()], Focus::Question(FieldName::at("a field", number % 3)));
            match replayed {
                Err(error) => {
                    prop_assert_eq!(outcome, Err(error));
                    prop_assert!(Arc::ptr_eq(history.book(), &before));
                }
                Ok(replayed) => {
                    prop_assert_eq!(outcome, Ok(()));
                    prop_assert!(**history.book() == replayed, "seed {seed}, edit {number}: {edit:?}");
                    steps.push(edit.clone());
                }
            }
            for item in &before.recipes {
                if !is_about_recipe(&edit, &item.id) {
                    prop_assert!(Arc::ptr_eq(item, history.book().recipe(&item.id).unwrap()), "{edit:?}");
                }
            }
            if dice.below(4) == 0 {
                history.close_step();
            }
        }
        let mut replay = start.as_ref().clone();
        for edit in &steps {
            replay = apply(&replay, edit).unwrap();
        }
        prop_assert!(replay == **history.book(), "seed {seed}");
        let end = history.book().clone();
        while history.undo().is_some() {}
        prop_assert!(**history.book() == *start, "seed {seed}");
        while history.redo().is_some() {}
        prop_assert!(Arc::ptr_eq(history.book(), &end));
    }
}
