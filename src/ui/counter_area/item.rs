//! What the counter holds: items of three kinds, and what every view of them may read.

use std::sync::Arc;

use crate::book::{self, Book, Finding, IngredientId, MeasureId, VesselId};
use crate::say::Speaker;
use crate::workbench::Answers;

/// What is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Kind {
    /// What goes into drinks.
    #[default]
    Ingredients,
    /// What measures it.
    Measures,
    /// What it is made and served in.
    Vessels,
    /// What holds for the whole shop.
    Shop,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Ingredients, Self::Measures, Self::Vessels, Self::Shop];

    /// What messages choose by.
    pub(super) fn key(self) -> &'static str {
        match self {
            Self::Ingredients => "ingredient",
            Self::Measures => "measure",
            Self::Vessels => "vessel",
            Self::Shop => "shop",
        }
    }
}

/// An item of the shop.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CounterItem {
    /// An ingredient.
    Ingredient(IngredientId),
    /// A measure.
    Measure(MeasureId),
    /// A vessel.
    Vessel(VesselId),
}

impl CounterItem {
    /// An item of the book that is an item of the shop; `None` for a recipe, a tasting and the settings.
    pub(super) fn of(item: &book::ItemId) -> Option<Self> {
        match item {
            book::ItemId::Ingredient(id) => Some(Self::Ingredient(id.clone())),
            book::ItemId::Measure(id) => Some(Self::Measure(id.clone())),
            book::ItemId::Vessel(id) => Some(Self::Vessel(id.clone())),
            book::ItemId::Settings | book::ItemId::Recipe(_) | book::ItemId::Tasting(_) => None,
        }
    }

    pub(super) fn kind(&self) -> Kind {
        match self {
            Self::Ingredient(_) => Kind::Ingredients,
            Self::Measure(_) => Kind::Measures,
            Self::Vessel(_) => Kind::Vessels,
        }
    }

    /// The same among all items of a book.
    pub(super) fn id(&self) -> book::ItemId {
        match self {
            Self::Ingredient(id) => book::ItemId::Ingredient(id.clone()),
            Self::Measure(id) => book::ItemId::Measure(id.clone()),
            Self::Vessel(id) => book::ItemId::Vessel(id.clone()),
        }
    }

    pub(super) fn is_in(&self, book: &Book) -> bool {
        match self {
            Self::Ingredient(id) => book.ingredients.contains(id),
            Self::Measure(id) => book.measures.contains(id),
            Self::Vessel(id) => book.vessels.contains(id),
        }
    }
}

/// What every view of the counter may read.
#[derive(Clone, Copy)]
pub(super) struct Counter<'frame> {
    pub(super) book: &'frame Arc<Book>,
    pub(super) answers: Answers<'frame>,
    pub(super) findings: &'frame [Finding],
    /// Speaks about the book in the units and the language of the window.
    pub(super) speaker: Speaker<'frame>,
}
