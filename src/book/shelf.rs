//! An ordered list of shared items that is found by id without a search through it.

use std::collections::BTreeMap;
use std::sync::Arc;

/// Something that stands on a shelf of the book.
pub trait Item: Clone + PartialEq {
    /// The type of its id.
    type Id: Clone + Ord;
    /// Its id, unique on the shelf.
    fn id(&self) -> &Self::Id;
}

/// Items in the order of the file, each under a unique id.
///
/// A clone copies one pointer per item; the positions are shared until an item is added or removed.
#[derive(Clone, Debug)]
pub struct Shelf<T: Item> {
    items: Vec<Arc<T>>,
    positions: Arc<BTreeMap<T::Id, usize>>,
}

impl<T: Item> Default for Shelf<T> {
    fn default() -> Self {
        Self {
            items: Vec::new(),
            positions: Arc::default(),
        }
    }
}

impl<T: Item> PartialEq for Shelf<T> {
    fn eq(&self, other: &Self) -> bool {
        self.items.len() == other.items.len()
            && self
                .items
                .iter()
                .zip(&other.items)
                .all(|(one, two)| Arc::ptr_eq(one, two) || one == two)
    }
}

impl<T: Item> Shelf<T> {
    /// A shelf of these items, or the positions of those whose id had been taken before.
    pub fn from_items(items: Vec<T>) -> Result<Self, Vec<usize>> {
        Self::from_shared(items.into_iter().map(Arc::new).collect())
    }

    /// The same of items that are shared already.
    pub fn from_shared(items: Vec<Arc<T>>) -> Result<Self, Vec<usize>> {
        let mut positions = BTreeMap::new();
        let mut duplicates = Vec::new();
        for (position, item) in items.iter().enumerate() {
            if positions.contains_key(item.id()) {
                duplicates.push(position);
            } else {
                positions.insert(item.id().clone(), position);
            }
        }
        if !duplicates.is_empty() {
            return Err(duplicates);
        }
        Ok(Self {
            items,
            positions: Arc::new(positions),
        })
    }

    /// The item of this id.
    pub fn get(&self, id: &T::Id) -> Option<&Arc<T>> {
        self.positions
            .get(id)
            .map(|position| &self.items[*position])
    }

    /// The same shelf, with items that equal those of another one shared with it.
    #[must_use]
    pub fn sharing_with(&self, other: &Self) -> Self {
        let shared = |item: &Arc<T>| {
            other
                .get(item.id())
                .filter(|known| *known == item)
                .unwrap_or(item)
                .clone()
        };
        Self {
            items: self.items.iter().map(shared).collect(),
            positions: self.positions.clone(),
        }
    }

    /// Whether the id is taken.
    pub fn contains(&self, id: &T::Id) -> bool {
        self.positions.contains_key(id)
    }

    /// Where the item of this id stands, from 0.
    pub fn position(&self, id: &T::Id) -> Option<usize> {
        self.positions.get(id).copied()
    }

    /// All items in order.
    pub fn iter(&self) -> std::slice::Iter<'_, Arc<T>> {
        self.items.iter()
    }

    /// The items that another shelf does not have as the same shared value, in order.
    pub fn unlike<'shelf>(
        &'shelf self,
        other: &'shelf Self,
    ) -> impl Iterator<Item = &'shelf Arc<T>> {
        let mut theirs = other.items.iter();
        self.items.iter().filter(move |item| {
            // Hardly ever is a shelf in another order: the place beside is looked at before the id is looked up.
            let beside = theirs.next();
            let is_same = |known: &Arc<T>| Arc::ptr_eq(known, item);
            !beside.is_some_and(is_same) && !other.get(item.id()).is_some_and(is_same)
        })
    }

    /// How many items there are.
    pub fn len(&self) -> usize {
        self.items.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.items.is_empty()
    }

    /// Puts an item in place of the one with its id, or at the end when there is none.
    pub fn put(&mut self, item: T) {
        if let Some(position) = self.positions.get(item.id()) {
            self.items[*position] = Arc::new(item);
        } else {
            Arc::make_mut(&mut self.positions).insert(item.id().clone(), self.items.len());
            self.items.push(Arc::new(item));
        }
    }

    /// Takes an item away; the order of the others stays.
    pub fn remove(&mut self, id: &T::Id) -> Option<Arc<T>> {
        let position = self.position(id)?;
        let item = self.items.remove(position);
        self.positions = Arc::new(
            self.items
                .iter()
                .enumerate()
                .map(|(position, item)| (item.id().clone(), position))
                .collect(),
        );
        Some(item)
    }
}

impl<'shelf, T: Item> IntoIterator for &'shelf Shelf<T> {
    type Item = &'shelf Arc<T>;
    type IntoIter = std::slice::Iter<'shelf, Arc<T>>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[derive(Clone, Debug, PartialEq)]
    struct Tin(u8, &'static str);

    impl Item for Tin {
        type Id = u8;
        fn id(&self) -> &u8 {
            &self.0
        }
    }

    #[test]
    fn duplicates_are_reported_by_position_and_never_dropped() {
        let items = vec![Tin(1, "a"), Tin(2, "b"), Tin(1, "c")];
        assert_eq!(Shelf::from_items(items).err(), Some(vec![2]));
    }

    #[test]
    fn a_put_leaves_the_other_items_the_same_pointer() {
        let before = Shelf::from_items(vec![Tin(1, "a"), Tin(2, "b")]).unwrap();
        let mut after = before.clone();
        after.put(Tin(2, "changed"));
        after.put(Tin(3, "new"));
        assert!(Arc::ptr_eq(before.get(&1).unwrap(), after.get(&1).unwrap()));
        assert_eq!(before.get(&2).unwrap().1, "b");
        assert_eq!(after.iter().map(|tin| tin.0).collect::<Vec<_>>(), [1, 2, 3]);
        after.remove(&1);
        assert_eq!(after.position(&3), Some(1));
        assert!(!after.contains(&1));
    }
}
