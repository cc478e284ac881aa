//! Looking something up in the whole book: what there is to be found, and what fits what was typed, the best first.
//!
//! An index belongs to one snapshot of a book. It holds folded text and where that stands; what is shown of a hit is read from
//! the book, so that a hundred thousand things to be found need no second copy of the book.

mod folded;
mod things;

use super::{
    Book, Form, IngredientId, LineId, MeasureId, MeasureKind, RecipeId, Role, State, VersionId,
    VesselId, VesselKind,
};

pub use self::folded::{Fit, WantedWords, folded};

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
    /// A level of sugar or ice by what the shop calls it.
    Level,
    /// An instruction of a recipe or version.
    Instruction,
    /// A note.
    Note,
    /// An approval.
    Approval,
    /// The shop by its name.
    Shop,
}

impl FoundKind {
    /// The word on screens.
    pub fn word(self) -> &'static str {
        match self {
            Self::Recipe => "recipe",
            Self::Version => "version",
            Self::Ingredient => "ingredient",
            Self::Measure => "measure",
            Self::Vessel => "vessel",
            Self::Flavour => "flavour",
            Self::Level => "level",
            Self::Instruction => "instruction",
            Self::Note => "note",
            Self::Approval => "approval",
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
    /// A level of sugar.
    Sugar,
    /// A level of ice.
    Ice,
    /// What the note on the whole is on.
    Book,
}

impl KindWord {
    /// The word that a book is written in.
    pub fn word(self) -> &'static str {
        match self {
            Self::Found(kind) => kind.word(),
            Self::State(state) => state.word(),
            Self::Role(role) => role.word(),
            Self::Form(form) => form.word(),
            Self::Measure(kind) => kind.word(),
            Self::Use(kind) => kind.words().0,
            Self::Vessel(kind) => kind.word(),
            Self::Sugar => "sugar",
            Self::Ice => "ice",
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
struct Thing {
    kind: FoundKind,
    spot: Spot,
    /// Its name, what stands beside it and its text, one after the other, folded.
    words: String,
    name_ends: usize,
    beside_ends: usize,
}

/// A thing that was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hit {
    /// What it is.
    pub kind: FoundKind,
    /// Where it is.
    pub spot: Spot,
    /// Its name, or the beginning of its text; empty for an approval without a reason.
    pub name: String,
    /// The piece of its text that was found, when its name alone does not say why it was.
    pub piece: String,
}

/// What fits.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Hits {
    /// The best.
    pub best: Vec<Hit>,
    /// How many there are in all.
    pub count: usize,
}

/// What there is to be found in one snapshot of a book.
#[derive(Clone, Debug, Default)]
pub struct LookUpIndex {
    things: Vec<Thing>,
}

/// Longest piece of a text that is shown, in characters.
const PIECE: usize = 90;

impl LookUpIndex {
    /// Everything in this book, found by its own words and by those for kinds that a book is written in.
    pub fn of(book: &Book) -> Self {
        Self::with_words(book, &|_| None)
    }

    /// The same, found by further words for kinds, too: those of the language that is read.
    pub fn with_words(book: &Book, further: &dyn Fn(KindWord) -> Option<String>) -> Self {
        Self {
            things: things::all(book, further),
        }
    }

    /// What fits, the best first and at most `most` of it. `book` is the one that the index was made of.
    pub fn find(&self, book: &Book, typed: &str, most: usize) -> Hits {
        let wanted = WantedWords::of(typed);
        if wanted.is_empty() {
            return Hits::default();
        }
        let mut fitting: Vec<(Fit, FoundKind, usize)> = self
            .things
            .iter()
            .enumerate()
            .filter_map(|(at, thing)| {
                let words = thing.words.as_str();
                let fit = wanted.fit(
                    &words[..thing.name_ends],
                    &words[..thing.beside_ends],
                    words,
                )?;
                // A flavour is one word that its ingredients begin with: it does not stand before them.
                let fit = match thing.kind {
                    FoundKind::Flavour => fit.max(Fit::BeginsName),
                    _ => fit,
                };
                Some((fit, thing.kind, at))
            })
            .collect();
        fitting.sort_unstable();
        let hit = |(fit, _, at): &(Fit, FoundKind, usize)| {
            things::hit(book, &self.things[*at], *fit, &wanted)
        };
        Hits {
            best: fitting.iter().take(most).filter_map(hit).collect(),
            count: fitting.len(),
        }
    }
}
