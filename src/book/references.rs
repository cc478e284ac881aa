//! Which items of a book need which.

use super::{Amount, Book, Change, Entry, ItemId, Line, Recipe, Resolved, Tasted};

/// Tells of every id that an item names, with the item that names it, in the order of the book. Versions are named within their
/// recipe alone.
pub(super) fn each_reference(book: &Book, tell: &mut dyn FnMut(&ItemId, &ItemId)) {
    for item in &book.ingredients {
        let from = ItemId::Ingredient(item.id.clone());
        for made in as_it_is_and_was(item.as_ref()).filter_map(|item| item.house_made.as_ref()) {
            tell(&from, &ItemId::Recipe(made.recipe.clone()));
        }
    }
    for item in &book.measures {
        let from = ItemId::Measure(item.id.clone());
        let readings = as_it_is_and_was(item.as_ref()).flat_map(|item| &item.readings);
        for id in readings.filter_map(|reading| reading.ingredient.as_ref()) {
            tell(&from, &ItemId::Ingredient(id.clone()));
        }
    }
    for item in &book.recipes {
        let from = ItemId::Recipe(item.id.clone());
        of_recipe(item, &mut |to| tell(&from, &to));
    }
    for item in &book.tastings {
        let from = ItemId::Tasting(item.id.clone());
        for cup in &item.cups {
            if let Some(id) = &cup.recipe {
                tell(&from, &ItemId::Recipe(id.clone()));
            }
            of_lines(&cup.lines, &mut |to| tell(&from, &to));
        }
    }
}

/// An item, and the states of it that were kept.
fn as_it_is_and_was<T: Tasted<Kept = T>>(item: &T) -> impl Iterator<Item = &T> {
    let kept = item.earlier().states.iter().map(|state| &state.was);
    std::iter::once(item).chain(kept)
}

fn of_recipe(recipe: &Recipe, tell: &mut dyn FnMut(ItemId)) {
    of_lines(&recipe.plain(), tell);
    for change in recipe.versions.iter().flat_map(|version| &version.changes) {
        of_change(change, tell);
    }
    let approved = recipe.approvals.iter().map(|approval| &approval.resolved);
    let kept = recipe.earlier.states.iter().map(|state| &state.was);
    for lines in approved.chain(kept) {
        of_lines(lines, tell);
    }
}

fn of_lines(lines: &Resolved, tell: &mut dyn FnMut(ItemId)) {
    for line in lines.lines() {
        of_line(line, tell);
    }
    for vessel in [&lines.cup, &lines.shaker].into_iter().flatten() {
        tell(ItemId::Vessel(vessel.clone()));
    }
}

fn of_line(line: &Line, tell: &mut dyn FnMut(ItemId)) {
    tell(ItemId::Ingredient(line.ingredient.clone()));
    if let Some(carried) = &line.carried {
        tell(ItemId::Ingredient(carried.ingredient.clone()));
    }
    of_amount(&line.amount, tell);
}

fn of_amount(amount: &Amount, tell: &mut dyn FnMut(ItemId)) {
    if let Amount::Count(_, measure) = amount {
        tell(ItemId::Measure(measure.clone()));
    }
}

fn of_change(change: &Change, tell: &mut dyn FnMut(ItemId)) {
    match change {
        Change::Ingredient(_, id) => tell(ItemId::Ingredient(id.clone())),
        Change::Carried(_, Some(carried)) => tell(ItemId::Ingredient(carried.ingredient.clone())),
        Change::Amount(_, amount) => of_amount(amount, tell),
        Change::Add(_, Entry::Line(line)) => of_line(line, tell),
        Change::Cup(vessel) | Change::Shaker(Some(vessel)) => tell(ItemId::Vessel(vessel.clone())),
        _ => {}
    }
}
