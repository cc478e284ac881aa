//! Where a person is in a book: the field whose text is half typed, and the place that undo goes back to.

use crate::book::{
    Allergen, Axis, HighPotencySweetener, ItemId, LanguageId, LineId, Nutrient, RecipeId,
    VersionId, Yardstick,
};

/// A place where something is typed, chosen or taken away.
///
/// Steps are kept with it, drafts are kept under it, and the screen makes the id of the widget of it: whatever led to a step
/// can be found again, and no part of a place is read out of a text.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Focus {
    /// The book as a whole.
    Book,
    /// An item as a whole, as when it came or went.
    Item(ItemId),
    /// A field of an item, on the form where it is described.
    Field(ItemId, FieldName),
    /// The name of a version.
    VersionName(RecipeId, VersionId),
    /// The line of a recipe that is in hand, or its first one.
    AnyRow(RecipeId),
    /// The row of a line or an instruction.
    Row(RecipeId, LineId),
    /// A field of a line or an instruction.
    Line(RecipeId, LineId, LineField),
    /// An approval, by its number from 0.
    Approval(RecipeId, usize),
    /// A field of a level of sugar or ice, where the levels of the shop are named.
    Level(FieldName),
    /// A field of an item, where it is told how a drink is served.
    Serving(RecipeId, ItemId, FieldName),
    /// A field of a question: nothing of it is in the book.
    Question(FieldName),
}

impl Focus {
    /// The name of an item, or of the shop.
    pub fn name_of(item: ItemId) -> Self {
        Self::Field(item, FieldName::NAME)
    }

    /// The note on an item, or on the book.
    pub fn note_of(item: ItemId) -> Self {
        Self::Field(item, FieldName::NOTE)
    }

    /// The recipe that it belongs to.
    pub fn recipe(&self) -> Option<&RecipeId> {
        match self {
            Self::Item(ItemId::Recipe(recipe))
            | Self::Field(ItemId::Recipe(recipe), _)
            | Self::VersionName(recipe, _)
            | Self::AnyRow(recipe)
            | Self::Row(recipe, _)
            | Self::Line(recipe, ..)
            | Self::Approval(recipe, _)
            | Self::Serving(recipe, ..) => Some(recipe),
            Self::Book | Self::Item(_) | Self::Field(..) | Self::Level(_) | Self::Question(_) => {
                None
            }
        }
    }

    /// The line or instruction that it belongs to.
    pub fn line(&self) -> Option<&LineId> {
        match self {
            Self::Row(_, line) | Self::Line(_, line, _) => Some(line),
            _ => None,
        }
    }
}

/// What of a line of a recipe is typed or chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineField {
    /// How much.
    Amount,
    /// How warm.
    Temperature,
    /// How much syrup comes along.
    Carried,
    /// Which syrup comes along.
    CarriedIngredient,
    /// The note.
    Note,
    /// What it does in the drink.
    Role,
    /// When it comes in.
    Stage,
    /// The sentence of an instruction.
    Instruction,
}

/// The name of a field on its form.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FieldName {
    /// What the form calls it.
    pub name: &'static str,
    /// Which of several that are called so.
    pub which: Which,
    /// What of a figure.
    pub part: FigurePart,
}

/// Tells fields of one name from each other.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Which {
    /// There is one.
    Only,
    /// By its place in a list, from 0.
    At(usize),
    /// Of a figure of a label.
    Nutrient(Nutrient),
    /// Of a sweetener.
    Sweetener(HighPotencySweetener),
    /// Of an allergen.
    Allergen(Allergen),
    /// Of an axis of taste.
    Axis(Axis),
    /// In another language, for a text of the item by its place among them, from 0.
    Words(LanguageId, usize),
    /// Of a yardstick.
    Yardstick(Yardstick),
    /// About a recipe.
    Recipe(RecipeId),
    /// About a line of a recipe.
    Line(RecipeId, LineId),
}

/// What of a figure is in a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FigurePart {
    /// Its value, or all of what is no figure.
    Value,
    /// Where it comes from.
    Evidence,
    /// Its standard uncertainty.
    Uncertainty,
}

impl FieldName {
    /// The name of an item, or of the shop.
    pub const NAME: Self = Self::of("name", Which::Only);
    /// The note on an item, or on the book.
    pub const NOTE: Self = Self::of("note", Which::Only);
    /// The brand of an ingredient.
    pub const BRAND: Self = Self::of("brand", Which::Only);

    /// What a text of an item is in another language, by the place of the text among those of the item, from 0.
    pub const fn words(language: LanguageId, place: usize) -> Self {
        Self::of("translation", Which::Words(language, place))
    }

    /// A flavour of an ingredient, from 0.
    pub const fn flavour(place: usize) -> Self {
        Self::at("flavour", place)
    }

    /// The name of a level of sugar, from 0.
    pub const fn sugar_level(place: usize) -> Self {
        Self::at("sugar-level", place)
    }

    /// The name of a level of ice, from 0.
    pub const fn ice_level(place: usize) -> Self {
        Self::at("ice-level", place)
    }

    /// One of several fields of that name.
    pub const fn of(name: &'static str, which: Which) -> Self {
        Self {
            name,
            which,
            part: FigurePart::Value,
        }
    }

    /// The field of that name at a place of a list, from 0.
    pub const fn at(name: &'static str, place: usize) -> Self {
        Self::of(name, Which::At(place))
    }

    /// Another part of the same figure.
    #[must_use]
    pub fn part(&self, part: FigurePart) -> Self {
        Self {
            part,
            ..self.clone()
        }
    }
}

impl From<&'static str> for FieldName {
    fn from(name: &'static str) -> Self {
        Self::of(name, Which::Only)
    }
}
