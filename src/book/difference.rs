//! How two books differ, item by item.

use std::sync::Arc;

use super::field_differences::{self, ItemDetail};
use super::{
    Book, IdKind, Ingredient, IngredientId, Item, Measure, MeasureId, Recipe, RecipeId, Shelf,
    Tasting, TastingId, Vessel, VesselId,
};

/// Names one item of a book.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ItemId {
    /// The shop's settings.
    Settings,
    /// An ingredient.
    Ingredient(IngredientId),
    /// A measure.
    Measure(MeasureId),
    /// A vessel.
    Vessel(VesselId),
    /// A recipe.
    Recipe(RecipeId),
    /// A tasting.
    Tasting(TastingId),
}

impl ItemId {
    /// What another program reads of its kind.
    pub fn key(&self) -> &'static str {
        match self {
            Self::Settings => "settings",
            Self::Ingredient(_) => "ingredient",
            Self::Measure(_) => "measure",
            Self::Vessel(_) => "vessel",
            Self::Recipe(_) => "recipe",
            Self::Tasting(_) => "tasting",
        }
    }

    /// Its id as text; none for the settings.
    pub fn id(&self) -> Option<&str> {
        match self {
            Self::Settings => None,
            Self::Ingredient(id) => Some(id.as_str()),
            Self::Measure(id) => Some(id.as_str()),
            Self::Vessel(id) => Some(id.as_str()),
            Self::Recipe(id) => Some(id.as_str()),
            Self::Tasting(id) => Some(id.as_str()),
        }
    }
}

/// What happened to an item.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ItemChange {
    /// It is new.
    Added,
    /// It has other values.
    Changed,
    /// It is gone.
    Removed,
}

impl ItemChange {
    /// The word by which a sentence is chosen.
    pub fn word(self) -> &'static str {
        match self {
            Self::Added => "added",
            Self::Changed => "changed",
            Self::Removed => "removed",
        }
    }
}

/// One item that differs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ItemDifference {
    /// Which one.
    pub item: ItemId,
    /// Its name, as it is now or was last.
    pub name: String,
    /// What happened to it.
    pub change: ItemChange,
}

/// How a later book differs from an earlier one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct BookDifference {
    /// Items that differ, in the order of the book.
    pub items: Vec<ItemDifference>,
    /// Kinds of items that stand in another order.
    pub reordered: Vec<IdKind>,
}

impl BookDifference {
    /// Whether the books are the same.
    pub fn is_empty(&self) -> bool {
        self.items.is_empty() && self.reordered.is_empty()
    }
}

/// How a later book differs from an earlier one. Items that the two share cost a comparison of pointers.
pub fn difference_of_books(before: &Book, after: &Book) -> BookDifference {
    let mut difference = BookDifference::default();
    if before.settings != after.settings {
        let name = after.settings.shop.clone();
        difference.items.push(ItemDifference {
            item: ItemId::Settings,
            name,
            change: ItemChange::Changed,
        });
    }
    shelf_difference(&before.ingredients, &after.ingredients, &mut difference);
    shelf_difference(&before.measures, &after.measures, &mut difference);
    shelf_difference(&before.vessels, &after.vessels, &mut difference);
    shelf_difference(&before.recipes, &after.recipes, &mut difference);
    shelf_difference(&before.tastings, &after.tastings, &mut difference);
    difference
}

fn shelf_difference<T: Named>(
    before: &Shelf<T>,
    after: &Shelf<T>,
    difference: &mut BookDifference,
) {
    let mut note = |item: &T, change| {
        difference.items.push(ItemDifference {
            item: T::item_id(item.id()),
            name: item.name(),
            change,
        });
    };
    for item in after {
        match before.get(item.id()) {
            None => note(item, ItemChange::Added),
            Some(earlier) if !is_same(earlier, item) => note(item, ItemChange::Changed),
            Some(_) => {}
        }
    }
    for item in before.iter().filter(|item| !after.contains(item.id())) {
        note(item, ItemChange::Removed);
    }
    if !is_same_order(before, after) {
        difference.reordered.push(T::KIND);
    }
}

/// Whether what is on both shelves stands on them in the same order.
pub(super) fn is_same_order<T: Item>(one: &Shelf<T>, other: &Shelf<T>) -> bool {
    let common = |shelf: &Shelf<T>, of: &Shelf<T>| -> Vec<T::Id> {
        shelf
            .iter()
            .map(|item| item.id().clone())
            .filter(|id| of.contains(id))
            .collect()
    };
    common(one, other) == common(other, one)
}

/// Equal, and quickly so when it is the same shared value.
pub(super) fn is_same<T: PartialEq>(one: &Arc<T>, other: &Arc<T>) -> bool {
    Arc::ptr_eq(one, other) || one == other
}

/// Items with a name for people.
pub(super) trait Named: Item {
    /// What its ids name.
    const KIND: IdKind;
    /// Names it among all items.
    fn item_id(id: &Self::Id) -> ItemId;
    /// Its name.
    fn name(&self) -> String;
}

macro_rules! named {
    ($type:ty, $variant:ident, $name:expr) => {
        impl Named for $type {
            const KIND: IdKind = IdKind::$variant;
            fn item_id(id: &Self::Id) -> ItemId {
                ItemId::$variant(id.clone())
            }
            fn name(&self) -> String {
                let name: fn(&Self) -> String = $name;
                name(self)
            }
        }
    };
}

named!(Ingredient, Ingredient, Ingredient::full_name);
named!(Measure, Measure, |item| item.name.clone());
named!(Vessel, Vessel, |item| item.name.clone());
named!(Recipe, Recipe, |item| item.name.clone());
// A tasting has no name of its own: why it was held tells it apart best, else its day.
named!(Tasting, Tasting, |item| if item.reason.trim().is_empty() {
    item.date.clone()
} else {
    item.reason.clone()
});

impl Book {
    /// The same book with the items that equal those of another one shared with it, so that comparing the two is quick and
    /// one of them costs hardly any memory.
    #[must_use]
    pub fn sharing_with(&self, other: &Self) -> Self {
        Self {
            settings: self.settings.clone(),
            ingredients: self.ingredients.sharing_with(&other.ingredients),
            measures: self.measures.sharing_with(&other.measures),
            vessels: self.vessels.sharing_with(&other.vessels),
            recipes: self.recipes.sharing_with(&other.recipes),
            tastings: self.tastings.sharing_with(&other.tastings),
        }
    }

    /// The items that another book has not.
    pub(super) fn items_not_in(&self, other: &Self) -> Vec<ItemId> {
        fn missing<T: Named>(shelf: &Shelf<T>, other: &Shelf<T>, into: &mut Vec<ItemId>) {
            let ids = shelf.iter().map(|item| item.id());
            into.extend(ids.filter(|id| !other.contains(id)).map(T::item_id));
        }
        let mut items = Vec::new();
        missing(&self.ingredients, &other.ingredients, &mut items);
        missing(&self.measures, &other.measures, &mut items);
        missing(&self.vessels, &other.vessels, &mut items);
        missing(&self.recipes, &other.recipes, &mut items);
        missing(&self.tastings, &other.tastings, &mut items);
        items
    }

    /// Whether another book has an item just so, or lacks it, too.
    pub(super) fn has_same(&self, other: &Self, item: &ItemId) -> bool {
        fn same<T: Item>(one: &Shelf<T>, other: &Shelf<T>, id: &T::Id) -> bool {
            match (one.get(id), other.get(id)) {
                (Some(one), Some(other)) => is_same(one, other),
                (one, other) => one.is_none() && other.is_none(),
            }
        }
        match item {
            ItemId::Settings => self.settings == other.settings,
            ItemId::Ingredient(id) => same(&self.ingredients, &other.ingredients, id),
            ItemId::Measure(id) => same(&self.measures, &other.measures, id),
            ItemId::Vessel(id) => same(&self.vessels, &other.vessels, id),
            ItemId::Recipe(id) => same(&self.recipes, &other.recipes, id),
            ItemId::Tasting(id) => same(&self.tastings, &other.tastings, id),
        }
    }

    /// The name of an item; none when the book lacks it.
    pub fn name_of(&self, item: &ItemId) -> String {
        fn name<T: Named>(shelf: &Shelf<T>, id: &T::Id) -> String {
            shelf.get(id).map(|item| item.name()).unwrap_or_default()
        }
        match item {
            ItemId::Settings => self.settings.shop.clone(),
            ItemId::Ingredient(id) => name(&self.ingredients, id),
            ItemId::Measure(id) => name(&self.measures, id),
            ItemId::Vessel(id) => name(&self.vessels, id),
            ItemId::Recipe(id) => name(&self.recipes, id),
            ItemId::Tasting(id) => name(&self.tastings, id),
        }
    }

    /// What differs inside an item that two books have.
    pub fn item_differences(before: &Self, after: &Self, item: &ItemId) -> Vec<ItemDetail> {
        match item {
            ItemId::Settings => field_differences::fields(&before.settings, &after.settings),
            ItemId::Ingredient(id) => both(
                before.ingredient(id),
                after.ingredient(id),
                field_differences::fields,
            ),
            ItemId::Measure(id) => both(
                before.measure(id),
                after.measure(id),
                field_differences::fields,
            ),
            ItemId::Vessel(id) => both(
                before.vessel(id),
                after.vessel(id),
                field_differences::fields,
            ),
            ItemId::Recipe(id) => both(
                before.recipe(id),
                after.recipe(id),
                field_differences::recipe,
            ),
            ItemId::Tasting(id) => both(
                before.tasting(id),
                after.tasting(id),
                field_differences::fields,
            ),
        }
    }
}

fn both<T>(
    one: Option<&Arc<T>>,
    other: Option<&Arc<T>>,
    compare: impl Fn(&T, &T) -> Vec<ItemDetail>,
) -> Vec<ItemDetail> {
    one.zip(other)
        .map_or_else(Vec::new, |(one, other)| compare(one, other))
}
