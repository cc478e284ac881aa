//! Two people changed one book: a three-way merge, item by item.
//!
//! What only one of them changed is taken from that one; what both changed in the same way is taken once; what they changed
//! differently is a conflict. An item is never mixed from both: two halves of a recipe that each tasted right need not do so
//! together.

use std::sync::Arc;

use super::difference::{Named, is_same, is_same_order};
use super::{Book, ItemChange, ItemId, Shelf};

/// Whose state of an item is taken.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    /// That of the book in hand.
    #[default]
    Mine,
    /// That of the other book.
    Theirs,
}

/// An item that both have changed, differently.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// Which one.
    pub item: ItemId,
    /// Its name.
    pub name: String,
    /// What I did to it.
    pub mine: ItemChange,
    /// What they did to it.
    pub theirs: ItemChange,
    /// Whose state is in the merged book.
    pub taken: Side,
}

/// A merged book.
#[derive(Clone, Debug, PartialEq)]
pub struct Merge {
    /// The book with everything in it that both sides can have.
    pub book: Book,
    /// What they can't both have, in the order of the book.
    pub conflicts: Vec<Conflict>,
}

/// Merges two books that were one. `choose` says whose state of an item is taken where both changed it.
///
/// Laws: merging with an unchanged side gives the other side; two equal sides give that book without a conflict; exchanging
/// the sides and the choice gives the same items and the same conflicts. The order of items is mine, with theirs put behind
/// the same neighbour; theirs when only they have changed it.
pub fn merge(base: &Book, mine: &Book, theirs: &Book, choose: impl Fn(&ItemId) -> Side) -> Merge {
    let mut conflicts = Vec::new();
    let settings = if mine.settings == theirs.settings || base.settings == theirs.settings {
        &mine.settings
    } else if base.settings == mine.settings {
        &theirs.settings
    } else {
        let taken = choose(&ItemId::Settings);
        let name = mine.settings.shop.clone();
        let changed = ItemChange::Changed;
        conflicts.push(Conflict {
            item: ItemId::Settings,
            name,
            mine: changed,
            theirs: changed,
            taken,
        });
        if taken == Side::Mine {
            &mine.settings
        } else {
            &theirs.settings
        }
    };
    let settings = settings.clone();
    let book = Book {
        settings,
        ingredients: merge_shelf(
            [&base.ingredients, &mine.ingredients, &theirs.ingredients],
            &choose,
            &mut conflicts,
        ),
        measures: merge_shelf(
            [&base.measures, &mine.measures, &theirs.measures],
            &choose,
            &mut conflicts,
        ),
        vessels: merge_shelf(
            [&base.vessels, &mine.vessels, &theirs.vessels],
            &choose,
            &mut conflicts,
        ),
        recipes: merge_shelf(
            [&base.recipes, &mine.recipes, &theirs.recipes],
            &choose,
            &mut conflicts,
        ),
    };
    Merge { book, conflicts }
}

fn merge_shelf<T: Named>(
    [base, mine, theirs]: [&Shelf<T>; 3],
    choose: &impl Fn(&ItemId) -> Side,
    conflicts: &mut Vec<Conflict>,
) -> Shelf<T> {
    let items = merged_order(base, mine, theirs)
        .into_iter()
        .filter_map(|id| {
            let states = [base.get(&id), mine.get(&id), theirs.get(&id)];
            match merge_item(states) {
                Ok(item) => item.cloned(),
                Err((of_mine, of_theirs)) => {
                    let item = T::item_id(&id);
                    let taken = choose(&item);
                    let name = states
                        .into_iter()
                        .rev()
                        .flatten()
                        .next()
                        .map(|item| item.name())
                        .unwrap_or_default();
                    conflicts.push(Conflict {
                        item,
                        name,
                        mine: of_mine,
                        theirs: of_theirs,
                        taken,
                    });
                    if taken == Side::Mine {
                        states[1]
                    } else {
                        states[2]
                    }
                    .cloned()
                }
            }
        });
    // Every id stands in the order once.
    Shelf::from_shared(items.collect()).unwrap_or_else(|_| mine.clone())
}

/// The state of an item that both sides can have, or what each did to it.
fn merge_item<T: PartialEq>(
    [base, mine, theirs]: [Option<&Arc<T>>; 3],
) -> Result<Option<&Arc<T>>, (ItemChange, ItemChange)> {
    let same = |one: Option<&Arc<T>>, other: Option<&Arc<T>>| match (one, other) {
        (Some(one), Some(other)) => is_same(one, other),
        (one, other) => one.is_none() && other.is_none(),
    };
    let change = |now: Option<&Arc<T>>| match (base, now) {
        (_, None) => ItemChange::Removed,
        (None, Some(_)) => ItemChange::Added,
        (Some(_), Some(_)) => ItemChange::Changed,
    };
    if same(mine, theirs) || same(base, theirs) {
        Ok(mine)
    } else if same(base, mine) {
        Ok(theirs)
    } else {
        Err((change(mine), change(theirs)))
    }
}

/// The ids of both sides, each once, in an order in which neither side's own order is broken without need.
fn merged_order<T: Named>(base: &Shelf<T>, mine: &Shelf<T>, theirs: &Shelf<T>) -> Vec<T::Id> {
    let ids =
        |shelf: &Shelf<T>| -> Vec<T::Id> { shelf.iter().map(|item| item.id().clone()).collect() };
    let only_theirs_changed = is_same_order(base, mine) && !is_same_order(base, theirs);
    let (leading, other) = if only_theirs_changed {
        (theirs, mine)
    } else {
        (mine, theirs)
    };
    let in_lead = ids(leading);
    // What stands behind each item of the leading order, and in front of all of them.
    let mut behind: Vec<Vec<T::Id>> = vec![Vec::new(); in_lead.len() + 1];
    let mut place = 0;
    for id in ids(other) {
        match leading.position(&id) {
            Some(position) => place = position + 1,
            None => behind[place].push(id),
        }
    }
    let mut order = std::mem::take(&mut behind[0]);
    for (position, id) in in_lead.into_iter().enumerate() {
        order.push(id);
        order.append(&mut behind[position + 1]);
    }
    order
}

#[cfg(test)]
mod tests {
    use super::super::{Measure, MeasureId, MeasureKind};
    use super::*;

    fn measure(id: &str, name: &str) -> Measure {
        Measure {
            id: MeasureId::new(id).unwrap(),
            name: name.to_owned(),
            kind: MeasureKind::Scoop,
            nominal: None,
            filling: super::super::Filling::Levelled,
            increment: None,
            temperature: None,
            readings: Vec::new(),
            note: String::new(),
        }
    }

    /// A book of measures, each given as `id=name`.
    fn book(items: &str) -> Book {
        let items = items
            .split_whitespace()
            .map(|item| item.split_once('=').unwrap());
        let measures = items.map(|(id, name)| measure(id, name)).collect();
        Book {
            measures: Shelf::from_items(measures).unwrap(),
            ..Book::default()
        }
    }

    fn merged(base: &str, mine: &str, theirs: &str, side: Side) -> (String, Vec<String>) {
        let merge = merge(&book(base), &book(mine), &book(theirs), |_| side);
        let items: Vec<String> = merge
            .book
            .measures
            .iter()
            .map(|item| format!("{}={}", item.id, item.name))
            .collect();
        let conflicts = merge.conflicts.iter().map(|conflict| {
            let ItemId::Measure(id) = &conflict.item else {
                panic!("{conflict:?}")
            };
            format!(
                "{id}: {} and {}",
                conflict.mine.word(),
                conflict.theirs.word()
            )
        });
        (items.join(" "), conflicts.collect())
    }

    #[test]
    fn what_one_side_changed_is_taken_and_what_both_changed_is_a_conflict() {
        for (base, mine, theirs, expected, conflict) in [
            ("a=1 b=1", "a=2 b=1", "a=1 b=2", "a=2 b=2", None),
            (
                "a=1 b=1",
                "a=1 b=1 c=1",
                "d=1 a=1 b=1",
                "d=1 a=1 b=1 c=1",
                None,
            ),
            ("a=1 b=1", "a=1", "a=2 b=1", "a=2", None),
            ("a=1 b=1", "b=1 a=1", "a=1 b=1 c=1", "b=1 c=1 a=1", None),
            ("a=1 b=1", "a=1 b=1 c=1", "b=1 a=1", "b=1 c=1 a=1", None),
            ("a=1", "a=2", "a=2", "a=2", None),
            ("a=1", "a=2", "a=3", "a=2", Some("a: changed and changed")),
            ("a=1", "a=2", "", "a=2", Some("a: changed and removed")),
            ("a=1", "", "a=3", "", Some("a: removed and changed")),
            ("", "a=1", "a=2", "a=1", Some("a: added and added")),
        ] {
            let (items, conflicts) = merged(base, mine, theirs, Side::Mine);
            assert_eq!(items, expected, "{base} / {mine} / {theirs}");
            assert_eq!(
                conflicts.first().map(String::as_str),
                conflict,
                "{base} / {mine} / {theirs}"
            );
        }
        assert_eq!(merged("a=1", "a=2", "", Side::Theirs).0, "");
        assert_eq!(merged("a=1", "", "a=3", Side::Theirs).0, "a=3");
    }
}
