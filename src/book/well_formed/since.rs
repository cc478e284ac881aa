//! Which errors a change brings in. Only what the change touches is looked at: a book of ten thousand recipes is edited key by key.

use std::collections::BTreeMap;
use std::mem::{Discriminant, discriminant};

use super::checklist::Checklist;
use super::{counter, findings, house_made, ingredient, recipe, settings, tasting};
use crate::book::{Book, Finding, FindingKind, Ingredient, Item, Place, Severity, Shelf};

/// The errors that a book has and the one before it had not. An error stays the same one while its kind and its place do: a
/// wrong amount that becomes another wrong amount is nothing new.
pub fn new_errors(before: &Book, after: &Book) -> Vec<Finding> {
    let (old, new) = if takes_away(before, after) {
        // Anything may have leaned on what is gone.
        (findings(before), findings(after))
    } else {
        (touched(before, after), touched(after, before))
    };
    not_known(&old, new)
}

/// The errors that an ingredient would have in a book, put in place of the one with its id, and that one has not.
pub fn new_errors_of(book: &Book, item: &Ingredient) -> Vec<Finding> {
    let errors = |item: &Ingredient| {
        let mut list = Checklist::new();
        ingredient::check(book, item, &mut list);
        list.finish()
    };
    let old = book.ingredient(&item.id).map(|known| errors(known));
    not_known(&old.unwrap_or_default(), errors(item))
}

fn not_known(old: &[Finding], new: Vec<Finding>) -> Vec<Finding> {
    let mut known: BTreeMap<Place, Vec<Discriminant<FindingKind>>> = BTreeMap::new();
    for finding in old.iter().filter(|finding| is_error(finding)) {
        known
            .entry(place_of(finding))
            .or_default()
            .push(discriminant(&finding.kind));
    }
    new.into_iter()
        .filter(is_error)
        .filter(|finding| {
            let kinds = known.get_mut(&place_of(finding));
            let kind = discriminant(&finding.kind);
            !kinds.is_some_and(|kinds| {
                let at = kinds.iter().position(|other| *other == kind);
                at.map(|at| kinds.swap_remove(at)).is_some()
            })
        })
        .collect()
}

/// What the next entry puts right is no error of an edit; nor is a change of another version whose line is removed, which stays
/// and is said.
fn is_error(finding: &Finding) -> bool {
    let is_let_pass = matches!(
        finding.kind,
        FindingKind::Unfinished { .. } | FindingKind::ChangeWithoutTarget { .. }
    );
    finding.severity == Severity::Error && !is_let_pass
}

/// Where a finding counts as standing: a circle is met from whatever member is looked at first.
fn place_of(finding: &Finding) -> Place {
    match finding.kind {
        FindingKind::HouseMadeCycle { .. } | FindingKind::MoreFindings { .. } => Place::Settings,
        _ => finding.place.clone(),
    }
}

fn takes_away(before: &Book, after: &Book) -> bool {
    fn lacks<T: Item>(before: &Shelf<T>, after: &Shelf<T>) -> bool {
        after.len() < before.len() || before.unlike(after).any(|item| !after.contains(item.id()))
    }
    lacks(&before.ingredients, &after.ingredients)
        || lacks(&before.measures, &after.measures)
        || lacks(&before.vessels, &after.vessels)
        || lacks(&before.recipes, &after.recipes)
        || lacks(&before.tastings, &after.tastings)
}

/// The findings of what a book has otherwise than another one.
fn touched(book: &Book, other: &Book) -> Vec<Finding> {
    let mut list = Checklist::new();
    if book.settings != other.settings {
        settings(book, &mut list);
    }
    let mut may_be_circle = false;
    for item in book.ingredients.unlike(&other.ingredients) {
        may_be_circle = true;
        ingredient::check(book, item, &mut list);
    }
    for item in book.measures.unlike(&other.measures) {
        counter::check_measure(book, item, &mut list);
    }
    for item in book.vessels.unlike(&other.vessels) {
        counter::check_vessel(item, &mut list);
    }
    for item in book.recipes.unlike(&other.recipes) {
        may_be_circle = true;
        recipe::check(book, item, &mut list);
    }
    for item in book.tastings.unlike(&other.tastings) {
        tasting::check(book, item, &mut list);
    }
    if may_be_circle {
        house_made::check_circles(book, &mut list);
    }
    list.finish()
}
