//! Which items of a book need which.

use super::{Amount, Book, Change, Entry, ItemId, Line, Recipe, Resolved};

/// Tells of every id that an item names, with the item that names it, in the order of the book. Versions are named within their
/// recipe alone.
pub(super) fn each_reference(book: &Book, tell: &mut dyn FnMut(&ItemId, &ItemId)) {
    for item in &book.ingredients {
        if let Some(made) = &item.house_made {
            let from = ItemId::Ingredient(item.id.clone());
            tell(&from, &ItemId::Recipe(made.recipe.clone()));
        }
    }
    for item in &book.measures {
        let from = ItemId::Measure(item.id.clone());
        for id in item
            .readings
            .iter()
            .filter_map(|reading| reading.ingredient.as_ref())
        {
            tell(&from, &ItemId::Ingredient(id.clone()));
        }
    }
    for item in &book.recipes {
        let from = ItemId::Recipe(item.id.clone());
        of_recipe(item, &mut |to| tell(&from, &to));
    }
}

fn of_recipe(recipe: &Recipe, tell: &mut dyn FnMut(ItemId)) {
    of_lines(&recipe.plain(), tell);
    for change in recipe.versions.iter().flat_map(|version| &version.changes) {
        of_change(change, tell);
    }
    for approval in &recipe.approvals {
        of_lines(&approval.resolved, tell);
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
