//! The areas of work, and how one leads to another.

use crate::book::{IngredientId, ItemId};
use crate::edit::Focus;

/// The areas of work.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Area {
    /// The recipe as it is made.
    #[default]
    Recipe,
    /// One ingredient for another.
    Swap,
    /// Less sugar, another size, hot or iced.
    Variations,
    /// Drinks side by side.
    Compare,
    /// A swap for a group that learns.
    Lesson,
    /// How the drink is served: warm or cold, declared, sold, brewed for.
    Serving,
    /// What the shop has.
    Counter,
    /// What is printed, and what is brought in.
    Cards,
    /// What is wrong with the book.
    Findings,
}

impl Area {
    /// Those that have a tab, from left to right; what is wrong with the book is shown where there is something.
    pub const TABS: [Self; 8] = [
        Self::Recipe,
        Self::Swap,
        Self::Variations,
        Self::Compare,
        Self::Lesson,
        Self::Serving,
        Self::Counter,
        Self::Cards,
    ];

    /// The area that a place is in; `None` for what is shown in several of them, and for a question.
    pub(super) fn of(focus: &Focus) -> Option<Self> {
        match focus {
            Focus::Field(ItemId::Recipe(_) | ItemId::Tasting(_), _)
            | Focus::Item(ItemId::Tasting(_))
            | Focus::VersionName(..)
            | Focus::AnyRow(_)
            | Focus::Row(..)
            | Focus::Line(..)
            | Focus::Approval(..) => Some(Self::Recipe),
            Focus::Book | Focus::Item(ItemId::Recipe(_)) | Focus::Question(_) => None,
            Focus::Item(_) | Focus::Field(..) => Some(Self::Counter),
            Focus::Level(_) => Some(Self::Variations),
            Focus::Serving(..) => Some(Self::Serving),
        }
    }
}

/// A wish to be led somewhere. The window tells every area and every sheet of it when the frame has been drawn.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Navigation {
    /// An area, by key: the keyboard goes on there.
    ByKey(Area),
    /// An item of the shop, in its list at the counter.
    Item(ItemId),
    /// The form of an item of the shop: the keyboard goes to a field of it.
    Form(ItemId),
    /// The names of the levels of sugar and ice.
    Levels,
    /// The card with every level of sugar in every size with every amount of ice.
    MatrixCard,
    /// The card with the figures of the whole menu; with what is not approved, too.
    FiguresCard(bool),
    /// The exercise on paper, of what goes and what comes.
    Exercise(IngredientId, IngredientId),
    /// Finding anything in the book.
    LookUp,
    /// The earlier copies of the book.
    EarlierCopies,
    /// Unsaved work that was found.
    FoundWork,
    /// What becomes of the change of the file by another program.
    DiskChange,
}
