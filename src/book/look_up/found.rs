//! What can be found in a book, and where it stands.

use crate::book::{
    Form, IngredientId, LineId, MeasureId, MeasureKind, RecipeId, Role, State, TastingId, UsualIce,
    VersionId, VesselId, VesselKind,
};

/// What kind of thing was found. The order is that of hits that fit equally well.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FoundKind {
    /// A recipe by its name.
    Recipe,
    /// A version by its name.
    Version,
    /// An ingredient.
    Ingredient,
    /// A measure.
    Measure,
    /// A vessel.
    Vessel,
    /// A flavour of an ingredient.
    Flavour,
    /// A level of sugar.
    SugarLevel,
    /// A level of ice.
    IceLevel,
    /// An instruction of a recipe or version.
    Instruction,
    /// A note.
    Note,
    /// An approval.
    Approval,
    /// A tasting.
    Tasting,
    /// The shop by its name.
    Shop,
}

impl FoundKind {
    /// The key that it is found by in every language.
    pub fn word(self) -> &'static str {
        match self {
            Self::Recipe => "recipe",
            Self::Version => "version",
            Self::Ingredient => "ingredient",
            Self::Measure => "measure",
            Self::Vessel => "vessel",
            Self::Flavour => "flavour",
            Self::SugarLevel => "sugar level",
            Self::IceLevel => "ice level",
            Self::Instruction => "instruction",
            Self::Note => "note",
            Self::Approval => "approval",
            Self::Tasting => "tasting",
            Self::Shop => "shop",
        }
    }
}

/// A word that things of a kind are found by, besides those that stand in the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum KindWord {
    /// What kind of thing it is.
    Found(FoundKind),
    /// How far a recipe or version is.
    State(State),
    /// What an ingredient is for.
    Role(Role),
    /// What an ingredient is like.
    Form(Form),
    /// What a measure is.
    Measure(MeasureKind),
    /// What a use of a measure is called: a pump gives presses.
    Use(MeasureKind),
    /// What a vessel is.
    Vessel(VesselKind),
    /// What the counter calls a level of ice that the shop has no name for.
    Ice(UsualIce),
    /// What the note on the whole is on.
    Book,
}

impl KindWord {
    /// The key that it is found by in every language.
    pub fn word(self) -> &'static str {
        match self {
            Self::Found(kind) => kind.word(),
            Self::State(state) => state.word(),
            Self::Role(role) => role.word(),
            Self::Form(form) => form.word(),
            Self::Measure(kind) => kind.word(),
            Self::Use(kind) => kind.words().0,
            Self::Vessel(kind) => kind.word(),
            Self::Ice(usual) => usual.word(),
            Self::Book => "the book",
        }
    }
}

/// Where a thing stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Spot {
    /// A recipe or a version of it.
    Drink(RecipeId, Option<VersionId>),
    /// A line or instruction of a recipe or version.
    Entry(RecipeId, Option<VersionId>, LineId),
    /// The note on a recipe.
    RecipeNote(RecipeId),
    /// An approval of a recipe, by its number from 0.
    Approval(RecipeId, usize),
    /// A tasting, on the sheet of a recipe that was in it.
    Tasting(RecipeId, TastingId),
    /// An ingredient.
    Ingredient(IngredientId),
    /// The flavour of an ingredient, by its number from 0.
    Flavour(IngredientId, usize),
    /// A measure.
    Measure(MeasureId),
    /// A vessel.
    Vessel(VesselId),
    /// A level of sugar, by its number from 0.
    SugarLevel(usize),
    /// A level of ice, by its number from 0.
    IceLevel(usize),
    /// The name of the shop.
    Shop,
    /// The note on the book.
    BookNote,
}

/// A thing that can be found.
#[derive(Clone, Debug)]
pub(super) struct Thing {
    pub(super) kind: FoundKind,
    pub(super) spot: Spot,
    /// Its name, what stands beside it and its text, one after the other, folded.
    pub(super) words: String,
    pub(super) name_ends: usize,
    pub(super) beside_ends: usize,
}

/// A thing that was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hit {
    /// What it is.
    pub kind: FoundKind,
    /// Where it is.
    pub spot: Spot,
    /// Its name, or the beginning of its text; empty for an approval without a reason and a level that the shop does not name.
    pub name: String,
    /// The piece of its text that was found, when its name alone does not say why it was.
    pub piece: String,
}

/// Longest piece of a text that is shown, in characters.
pub(super) const PIECE: usize = 90;
