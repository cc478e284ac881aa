//! What words of a statement are a sign of.

use crate::book::Allergen;

/// What words of a statement are a sign of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum StatementKind {
    /// An allergen of Annex II.
    Allergen(Allergen),
    /// It comes from an animal: gelatine, honey, beeswax, shellac, carmine.
    Animal,
    /// It is made from plants or from animals, and the number does not tell.
    PerhapsAnimal,
    /// Aspartame or its salt.
    Phenylalanine,
    /// A polyol.
    Polyol,
    /// A sweetener.
    Sweetener,
    /// A colour with the warning about children.
    ChildrenColour,
    /// Quinine.
    Quinine,
    /// Added caffeine.
    Caffeine,
}

/// Words of a statement and what they are a sign of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StatementMatch {
    /// What they are a sign of.
    pub kind: StatementKind,
    /// The words, in lower case.
    pub words: Vec<String>,
    /// Whether they stand behind "may contain".
    pub is_trace: bool,
}
