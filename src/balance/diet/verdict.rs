//! What can be said of a drink to a guest, and what speaks against a claim.

use std::collections::BTreeSet;

use crate::book::{Allergen, IngredientId};

/// Whether a claim holds, the nearest to "yes" first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// Every ingredient states it, and nothing speaks against it.
    Yes,
    /// An ingredient does not state it, or its entry contradicts itself.
    NotKnown,
    /// An ingredient states or implies the opposite.
    No,
}

impl Verdict {
    /// The verdict on a whole of which this and another are parts: the one that is further from "yes".
    #[must_use]
    pub fn join(self, other: Self) -> Self {
        self.max(other)
    }
}

/// The allergens of a drink.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AllergenSummary {
    /// Some pack says that it contains them, under allergens or among its ingredients.
    pub contains: BTreeSet<Allergen>,
    /// Some pack says that it may contain them.
    pub may_contain: BTreeSet<Allergen>,
    /// Ingredients whose pack says nothing of allergens, and what the house makes from nobody knows what.
    pub not_stated: BTreeSet<IngredientId>,
}

impl AllergenSummary {
    /// Whether it is free of an allergen by its ingredients; traces are not counted, [`AllergenSummary::may_contain`] has them.
    pub fn free_of(&self, allergen: Allergen) -> Verdict {
        if self.contains.contains(&allergen) {
            Verdict::No
        } else if self.not_stated.is_empty() {
            Verdict::Yes
        } else {
            Verdict::NotKnown
        }
    }
}

/// A claim that an entry makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Claim {
    /// Suitable for vegans.
    Vegan,
    /// Without milk.
    DairyFree,
    /// That its allergens are all there are.
    Allergens,
}

/// What speaks against a claim, beside the statement of ingredients, of which [`crate::balance::statement_findings`] tells.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Against {
    /// Its own allergens.
    Allergen(Allergen),
    /// Its sugars are those of honey.
    HoneySugars,
    /// There is milk sugar among its sugars.
    MilkSugars,
    /// The same entry says that it is not free of dairy.
    NotDairyFree,
    /// A part of what the house makes it from.
    Part(IngredientId),
    /// Every part of what the house makes it from: they all are what it claims not to be.
    EveryPart,
    /// An allergen of a part that its own allergens leave out.
    AllergenOfPart(IngredientId, Allergen),
}

/// A claim of an entry that something else in the book speaks against.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Contradiction {
    /// Whose entry it is.
    pub ingredient: IngredientId,
    /// What its entry speaks of; it claims it, except where [`Against::EveryPart`] speaks against the opposite.
    pub claim: Claim,
    /// What speaks against it.
    pub against: Against,
}

/// What can be said of something to a guest, by its ingredients.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Claims {
    /// Whether it is vegan.
    pub vegan: Verdict,
    /// Whether it is free of milk.
    pub dairy_free: Verdict,
    /// Its allergens.
    pub allergens: AllergenSummary,
    /// Where entries claim what the rest of the book speaks against.
    pub contradictions: Vec<Contradiction>,
}
