//! What every view may read in a frame. Views hand back actions; nothing here can be changed.

use std::sync::Arc;

use crate::balance::{Balance, Lens};
use crate::book::{Book, Finding, ItemId, LineId, Recipe};
use crate::edit::{FieldName, Focus, LineField};
use crate::say::Speaker;
use crate::workbench::{Answers, Shown, Standard};

/// The read-only side of a frame.
pub struct Screen<'frame> {
    /// The book as it is now.
    pub book: &'frame Arc<Book>,
    /// Answers to what is asked about it.
    pub answers: Answers<'frame>,
    /// The recipe and version in hand.
    pub shown: &'frame Shown,
    /// The recipe in hand.
    pub recipe: &'frame Recipe,
    /// The balance of the version in hand.
    pub balance: &'frame Balance,
    /// The standard that it is held to, if anything has been approved.
    pub standard: Option<&'frame Standard>,
    /// What is wrong with the book.
    pub findings: &'frame [Finding],
    /// What the person looks at.
    pub lens: Lens,
    /// Speaks about the book in the units and the language of the window.
    pub speaker: Speaker<'frame>,
    /// The line under the pointer or with the keyboard focus; its share is lit up everywhere.
    pub lit: Option<&'frame LineId>,
}

impl Screen<'_> {
    /// A field of the recipe in hand.
    pub(super) fn field(&self, name: impl Into<FieldName>) -> Focus {
        Focus::Field(ItemId::Recipe(self.recipe.id.clone()), name.into())
    }

    /// A field of an item, where it is told how the drink in hand is served.
    pub(super) fn serving(&self, item: ItemId, name: impl Into<FieldName>) -> Focus {
        Focus::Serving(self.recipe.id.clone(), item, name.into())
    }

    /// The row of a line or an instruction of it.
    pub(super) fn row(&self, line: &LineId) -> Focus {
        Focus::Row(self.recipe.id.clone(), line.clone())
    }

    /// A field of such a row.
    pub(super) fn field_of(&self, line: &LineId, field: LineField) -> Focus {
        Focus::Line(self.recipe.id.clone(), line.clone(), field)
    }
}
