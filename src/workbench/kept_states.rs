//! From when on a product was another one: the day on which somebody says so.

use std::collections::BTreeSet;

use crate::book::{Book, ItemId, Tasted};
use crate::edit::{Edit, apply_all};

/// The edits, and for each item whose earlier state they make the book keep the day of that.
pub(super) fn with_dates(book: &Book, mut edits: Vec<Edit>, day: &str) -> Vec<Edit> {
    let items: BTreeSet<ItemId> = edits.iter().filter_map(changed_item).collect();
    if items.is_empty() {
        return edits;
    }
    // What can't be carried out is refused where it is performed.
    let Ok(after) = apply_all(book, &edits) else {
        return edits;
    };
    let has_more = |item: &&ItemId| states(&after, item) > states(book, item);
    let dates = items.iter().filter(has_more).map(|item| Edit::DateChange {
        item: item.clone(),
        day: Some(day.to_owned()),
        lot: lot(&after, item),
    });
    edits.extend(dates);
    edits
}

fn changed_item(edit: &Edit) -> Option<ItemId> {
    Some(match edit {
        Edit::PutIngredient(item) => ItemId::Ingredient(item.id.clone()),
        Edit::PutMeasure(item) => ItemId::Measure(item.id.clone()),
        Edit::PutVessel(item) => ItemId::Vessel(item.id.clone()),
        Edit::SetSettings(_) => ItemId::Settings,
        Edit::PutRecipe(item) => ItemId::Recipe(item.id.clone()),
        Edit::Change {
            recipe,
            version: None,
            ..
        } => ItemId::Recipe(recipe.clone()),
        _ => return None,
    })
}

fn states(book: &Book, item: &ItemId) -> usize {
    fn of<T: Tasted>(item: &T) -> usize {
        item.earlier().states.len()
    }
    match item {
        ItemId::Settings => of(&book.settings),
        ItemId::Ingredient(id) => book.ingredient(id).map_or(0, |item| of(item.as_ref())),
        ItemId::Measure(id) => book.measure(id).map_or(0, |item| of(item.as_ref())),
        ItemId::Vessel(id) => book.vessel(id).map_or(0, |item| of(item.as_ref())),
        ItemId::Recipe(id) => book.recipe(id).map_or(0, |item| of(item.as_ref())),
    }
}

/// The lot of the pack that is open now.
fn lot(book: &Book, item: &ItemId) -> String {
    match item {
        ItemId::Ingredient(id) => book
            .ingredient(id)
            .map_or_else(String::new, |item| item.lot.clone()),
        _ => String::new(),
    }
}
