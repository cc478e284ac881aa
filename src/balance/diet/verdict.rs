//! What can be said of a drink to a guest, and what speaks against a claim.

use std::collections::{BTreeMap, BTreeSet};

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
    /// For each allergen outside the annex that the lists of the shop name: further ingredients whose pack says nothing of it.
    pub silent_on: BTreeMap<Allergen, BTreeSet<IngredientId>>,
}

impl AllergenSummary {
    /// Of two drinks together: what either holds, and what is not stated of either.
    #[must_use]
    pub fn with(mut self, other: &Self) -> Self {
        self.contains.extend(&other.contains);
        self.may_contain.extend(&other.may_contain);
        let contains = &self.contains;
        self.may_contain
            .retain(|allergen| !contains.contains(allergen));
        self.not_stated.extend(other.not_stated.iter().cloned());
        for (allergen, silent) in &other.silent_on {
            let of_both = self.silent_on.entry(*allergen).or_default();
            of_both.extend(silent.iter().cloned());
        }
        self
    }

    /// Whether it is free of an allergen by its ingredients; traces are not counted, [`AllergenSummary::may_contain`] has them.
    pub fn free_of(&self, allergen: Allergen) -> Verdict {
        if self.contains.contains(&allergen) {
            Verdict::No
        } else if self.is_stated(allergen) {
            Verdict::Yes
        } else {
            Verdict::NotKnown
        }
    }

    /// Whether every pack says something of an allergen. Of one that is neither in the annex nor on a list of the shop nobody
    /// has asked.
    pub fn is_stated(&self, allergen: Allergen) -> bool {
        let silent = self.silent_on.get(&allergen);
        let is_answered = silent.map_or(allergen.is_in_annex(), BTreeSet::is_empty);
        is_answered && self.not_stated.is_empty()
    }

    /// Whether every pack says something of every allergen that is asked for.
    pub fn is_complete(&self) -> bool {
        self.not_stated.is_empty() && self.silent_on.values().all(BTreeSet::is_empty)
    }

    /// Allergens outside the annex with the ingredients that say nothing of them; those of which the same say nothing together.
    pub fn silences(&self) -> Vec<(Vec<Allergen>, &BTreeSet<IngredientId>)> {
        let mut silences: Vec<(Vec<Allergen>, &BTreeSet<IngredientId>)> = Vec::new();
        for (allergen, silent) in self
            .silent_on
            .iter()
            .filter(|(_, silent)| !silent.is_empty())
        {
            match silences.iter_mut().find(|(_, known)| *known == silent) {
                Some((allergens, _)) => allergens.push(*allergen),
                None => silences.push((vec![*allergen], silent)),
            }
        }
        silences
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
