//! Two people changed one book: a three-way merge, field by field.
//!
//! What only one of them changed is taken from that one; what both changed in the same way is taken once; what they changed
//! differently is a conflict. Fields that only make sense together are never mixed from both, nor is how a drink is made: two
//! halves of a recipe that each tasted right need not do so together.
//!
//! Each side may lean on what the other one did away with. So an item stays when it is needed, and batches that would need each
//! other are taken from one side: a merged book has no error that neither side had.
//!
//! No standard moves: every approval keeps the states of items that it was tasted with on its side (`merged_histories.rs`).

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::difference::{Named, is_same, is_same_order};
use super::field_differences::{Fields, Side, Together, merged};
use super::merged_histories::keep_standards;
use super::references::each_reference;
use super::well_formed::each_circle;
use super::{Book, Entry, IngredientId, ItemChange, ItemId, Shelf};

/// What is taken from one side: fields of an item that belong together, or the item as a whole.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// The item.
    pub item: ItemId,
    /// The fields, by their names in the file; none for the item as a whole.
    pub fields: Together,
}

/// A part of the book that both have changed, differently.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// Which part.
    pub part: Part,
    /// Name of the item.
    pub name: String,
    /// The fields of the part in which the two differ.
    pub fields: Vec<&'static str>,
    /// What I did to it.
    pub mine: ItemChange,
    /// What they did to it.
    pub theirs: ItemChange,
    /// Whose state is in the merged book.
    pub taken: Side,
}

/// What a merge did beside taking parts from either side, so that the two fit together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MergeNote {
    /// An item that one side has removed stays, because something needs it that the other side changed or added.
    Kept {
        /// The item.
        item: ItemId,
        /// Its name.
        name: String,
        /// Who has removed it.
        removed_by: Side,
        /// What needs it.
        needed_by: ItemId,
        /// The name of that.
        needed_by_name: String,
    },
    /// With the changes of both sides a batch would need itself, so these are as one side has them.
    TakenWhole {
        /// The items, and their names.
        items: Vec<(ItemId, String)>,
        /// Whose they are.
        taken: Side,
    },
}

/// A merged book.
#[derive(Clone, Debug, PartialEq)]
pub struct Merge {
    /// The book with everything in it that both sides can have.
    pub book: Book,
    /// What they can't both have, in the order of the book.
    pub conflicts: Vec<Conflict>,
    /// What else was done.
    pub notes: Vec<MergeNote>,
}

/// Merges two books that were one. `choose` says whose state of a part is taken where both changed it.
///
/// Laws: merging with an unchanged side gives the other side; two equal sides give that book without a conflict; exchanging
/// the sides and the choice gives the same items and the same conflicts; an error of the merged book is one of a side (but for
/// batches that need each other, when each side names what only the other one has). The order of items is mine, with theirs put behind the same neighbour; theirs when only they have changed it.
pub fn merge(base: &Book, mine: &Book, theirs: &Book, choose: impl Fn(&Part) -> Side) -> Merge {
    let mut merging = Merging {
        choose: &choose,
        kept: BTreeSet::new(),
        whole: BTreeMap::new(),
        conflicts: Vec::new(),
        notes: Vec::new(),
    };
    loop {
        merging.conflicts.clear();
        let mut book = merging.book(base, mine, theirs);
        let fits = !merging.keep_what_is_needed(&book, mine, theirs)
            && !merging.part_circles(&book, mine, theirs);
        if fits {
            keep_standards(base, mine, theirs, &mut book);
            return Merge {
                book,
                conflicts: merging.conflicts,
                notes: merging.notes,
            };
        }
    }
}

/// A merge under way. Each round keeps more items or takes more of them as a whole, until both sides fit together.
struct Merging<'choice> {
    choose: &'choice dyn Fn(&Part) -> Side,
    /// Items that stay though one side has removed them.
    kept: BTreeSet<ItemId>,
    /// Items that are taken as a whole, whoever changed what in them.
    whole: BTreeMap<ItemId, Side>,
    conflicts: Vec<Conflict>,
    notes: Vec<MergeNote>,
}

impl Merging<'_> {
    fn book(&mut self, base: &Book, mine: &Book, theirs: &Book) -> Book {
        let settings = [&base.settings, &mine.settings, &theirs.settings];
        Book {
            settings: self.fields(&ItemId::Settings, &mine.settings.shop, settings),
            ingredients: self.shelf([&base.ingredients, &mine.ingredients, &theirs.ingredients]),
            measures: self.shelf([&base.measures, &mine.measures, &theirs.measures]),
            vessels: self.shelf([&base.vessels, &mine.vessels, &theirs.vessels]),
            recipes: self.shelf([&base.recipes, &mine.recipes, &theirs.recipes]),
            tastings: self.shelf([&base.tastings, &mine.tastings, &theirs.tastings]),
        }
    }

    fn shelf<T: Named + Fields>(&mut self, [base, mine, theirs]: [&Shelf<T>; 3]) -> Shelf<T> {
        let items = merged_order(base, mine, theirs)
            .into_iter()
            .filter_map(|id| self.item([base.get(&id), mine.get(&id), theirs.get(&id)]));
        // Every id stands in the order once.
        Shelf::from_shared(items.collect()).unwrap_or_else(|_| mine.clone())
    }

    /// The state of an item in the merged book, `None` when it is not in it.
    fn item<T: Named + Fields>(&mut self, states: [Option<&Arc<T>>; 3]) -> Option<Arc<T>> {
        let [base, mine, theirs] = states;
        let any = mine.or(theirs)?;
        let item = T::item_id(any.id());
        let same = |one: Option<&Arc<T>>, other: Option<&Arc<T>>| match (one, other) {
            (Some(one), Some(other)) => is_same(one, other),
            (one, other) => one.is_none() && other.is_none(),
        };
        if let (Some(side), Some(mine), Some(theirs)) = (self.whole.get(&item), mine, theirs) {
            return Some(of_side(*side, mine, theirs).clone());
        }
        let taken = if same(mine, theirs) || same(base, theirs) {
            mine
        } else if same(base, mine) {
            theirs
        } else if let (Some(base), Some(mine), Some(theirs)) = (base, mine, theirs) {
            return Some(Arc::new(self.fields(
                &item,
                &theirs.name(),
                [base, mine, theirs],
            )));
        } else {
            let change = |now: Option<&Arc<T>>| match (base, now) {
                (_, None) => ItemChange::Removed,
                (None, Some(_)) => ItemChange::Added,
                (Some(_), Some(_)) => ItemChange::Changed,
            };
            let part = Part {
                item: item.clone(),
                fields: &[],
            };
            let taken = (self.choose)(&part);
            self.conflicts.push(Conflict {
                part,
                name: theirs.unwrap_or(any).name(),
                fields: Vec::new(),
                mine: change(mine),
                theirs: change(theirs),
                taken,
            });
            of_side(taken, mine, theirs)
        };
        taken
            .or_else(|| Some(any).filter(|_| self.kept.contains(&item)))
            .cloned()
    }

    /// An item that both sides have, field by field.
    fn fields<T: Fields>(&mut self, item: &ItemId, name: &str, states: [&T; 3]) -> T {
        let [_, mine, theirs] = states;
        merged(states, |fields| {
            let part = Part {
                item: item.clone(),
                fields,
            };
            let taken = (self.choose)(&part);
            let mut differing = mine.differing(theirs);
            differing.retain(|field| fields.contains(field));
            self.conflicts.push(Conflict {
                part,
                name: name.to_owned(),
                fields: differing,
                mine: ItemChange::Changed,
                theirs: ItemChange::Changed,
                taken,
            });
            taken
        })
    }

    /// Notes items that are missing and needed; tells whether there were any.
    ///
    /// What already was without the item in the book that has removed it is no reason to keep it.
    fn keep_what_is_needed(&mut self, book: &Book, mine: &Book, theirs: &Book) -> bool {
        let gone: BTreeMap<ItemId, Side> = [(theirs, Side::Mine), (mine, Side::Theirs)]
            .into_iter()
            .flat_map(|(other, remover)| {
                let missing = other.items_not_in(book).into_iter();
                missing.map(move |item| (item, remover))
            })
            .collect();
        let before = self.kept.len();
        if !gone.is_empty() {
            each_reference(book, &mut |from, to| {
                let Some(remover) = gone.get(to) else { return };
                let is_own = book.has_same(of_side(*remover, mine, theirs), from);
                if !is_own && self.kept.insert(to.clone()) {
                    let keeper = of_side(*remover, theirs, mine);
                    self.notes.push(MergeNote::Kept {
                        item: to.clone(),
                        name: keeper.name_of(to),
                        removed_by: *remover,
                        needed_by: from.clone(),
                        needed_by_name: book.name_of(from),
                    });
                }
            });
        }
        self.kept.len() > before
    }

    /// Takes batches that would need each other from one side; tells whether there were any that neither side has so.
    fn part_circles(&mut self, book: &Book, mine: &Book, theirs: &Book) -> bool {
        let is_as_in =
            |side: &Book| book.ingredients == side.ingredients && book.recipes == side.recipes;
        if is_as_in(mine) || is_as_in(theirs) {
            return false;
        }
        let before = self.whole.len();
        each_circle(book, &mut |_, circle| {
            if !has_circle([mine, mine], circle) && !has_circle([theirs, theirs], circle) {
                self.take_whole(book, circle, mine, theirs);
            }
        });
        self.whole.len() > before
    }

    fn take_whole(&mut self, book: &Book, circle: &[&IngredientId], mine: &Book, theirs: &Book) {
        let recipes = circle
            .iter()
            .filter_map(|id| Some(&book.ingredient(id)?.house_made.as_ref()?.recipe));
        let ingredients = circle.iter().map(|id| ItemId::Ingredient((*id).clone()));
        let members: BTreeSet<ItemId> = ingredients
            .chain(recipes.map(|id| ItemId::Recipe(id.clone())))
            .filter(|item| !mine.has_same(theirs, item) && !self.whole.contains_key(item))
            .collect();
        let Some(first) = members.first() else { return };
        let wished = (self.choose)(&Part {
            item: first.clone(),
            fields: &[],
        });
        // Where one side's own book has gaps, that side may not help.
        let is_parted = |side: &Side| {
            let books = [of_side(*side, mine, theirs), of_side(*side, theirs, mine)];
            !has_circle(books, circle)
        };
        let other = of_side(wished, Side::Theirs, Side::Mine);
        let Some(taken) = [wished, other].into_iter().find(is_parted) else {
            return;
        };
        let items = members
            .iter()
            .map(|item| (item.clone(), book.name_of(item)));
        self.notes.push(MergeNote::TakenWhole {
            items: items.collect(),
            taken,
        });
        self.whole
            .extend(members.into_iter().map(|item| (item, taken)));
    }
}

fn of_side<T>(side: Side, mine: T, theirs: T) -> T {
    match side {
        Side::Mine => mine,
        Side::Theirs => theirs,
    }
}

/// Whether each of these ingredients is made from the next one, and the last one from the first, as a book has them; what it
/// lacks is as another one has it.
fn has_circle([book, other]: [&Book; 2], circle: &[&IngredientId]) -> bool {
    let is_made_from = |item: &IngredientId, part: &IngredientId| {
        let item = book.ingredient(item).or_else(|| other.ingredient(item));
        let made = item.and_then(|item| item.house_made.as_ref());
        let recipe = made.map(|made| &made.recipe);
        let recipe = recipe.and_then(|id| book.recipe(id).or_else(|| other.recipe(id)));
        let entries = recipe.into_iter().flat_map(|recipe| &recipe.entries);
        let mut lines = entries.filter_map(Entry::line);
        lines.any(|line| line.ingredient == *part)
    };
    let next = circle.iter().cycle().skip(1);
    let mut pairs = circle.iter().zip(next);
    pairs.all(|(item, part)| is_made_from(item, part))
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
        Measure::new(
            MeasureId::new(id).unwrap(),
            name.to_owned(),
            MeasureKind::Scoop,
        )
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
            let ItemId::Measure(id) = &conflict.part.item else {
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
