//! Allergens and vegan by ingredients: what packs say, followed through what the house makes.
//!
//! A claim that needs a statement which nobody has made is not known; it is never "yes".

use std::collections::{BTreeMap, BTreeSet};

use crate::book::{Allergen, Book, Form, Ingredient, IngredientId, Resolved, Role, resolve};

/// Whether a claim holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// Every ingredient states it.
    Yes,
    /// An ingredient states or implies the opposite.
    No,
    /// An ingredient does not state it.
    NotKnown,
}

impl Verdict {
    /// The word in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::No => "no",
            Self::NotKnown => "not known",
        }
    }

    /// The verdict on a whole of which this and another are parts.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::No, _) | (_, Self::No) => Self::No,
            (Self::NotKnown, _) | (_, Self::NotKnown) => Self::NotKnown,
            (Self::Yes, Self::Yes) => Self::Yes,
        }
    }
}

/// The allergens of a drink.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AllergenSummary {
    /// Some pack says that it contains them.
    pub contains: BTreeSet<Allergen>,
    /// Some pack says that it may contain them.
    pub may_contain: BTreeSet<Allergen>,
    /// Ingredients whose pack says nothing of allergens.
    pub not_stated: BTreeSet<IngredientId>,
}

/// Allergens that are animals or come from them.
const ANIMAL: [Allergen; 5] = [
    Allergen::Milk,
    Allergen::Eggs,
    Allergen::Fish,
    Allergen::Crustaceans,
    Allergen::Molluscs,
];

/// Water and ice are what they are, whatever their entry states.
fn is_water(ingredient: &Ingredient) -> bool {
    ingredient.form == Form::Ice || ingredient.role == Role::Water
}

/// The allergens of a version.
pub(super) fn allergens(book: &Book, resolved: &Resolved) -> AllergenSummary {
    let mut summary = AllergenSummary::default();
    let mut seen = BTreeSet::new();
    for id in ingredients(resolved) {
        add_allergens(book, id, &mut summary, &mut Vec::new(), &mut seen);
    }
    let contained = summary.contains.clone();
    summary
        .may_contain
        .retain(|allergen| !contained.contains(allergen));
    summary
}

/// Whether a version is vegan by its ingredients.
pub(super) fn vegan(book: &Book, resolved: &Resolved) -> Verdict {
    verdict(book, resolved, &VEGAN, &mut Judging::default())
}

/// Whether a version is free of milk by its ingredients.
pub(super) fn dairy_free(book: &Book, resolved: &Resolved) -> Verdict {
    verdict(book, resolved, &DAIRY_FREE, &mut Judging::default())
}

/// A claim about what something does not contain.
struct Claim {
    /// What an ingredient states about it.
    stated: fn(&Ingredient) -> Option<bool>,
    /// Allergens that speak against it.
    against: &'static [Allergen],
}

const VEGAN: Claim = Claim {
    stated: |ingredient| ingredient.diet.vegan,
    against: &ANIMAL,
};

/// What is vegan has no milk in it; what is not vegan may still be free of it.
const DAIRY_FREE: Claim = Claim {
    stated: |ingredient| {
        ingredient
            .diet
            .dairy_free
            .or(ingredient.diet.vegan.filter(|vegan| *vegan))
    },
    against: &[Allergen::Milk],
};

/// What has been judged on the way through what the house makes.
#[derive(Default)]
struct Judging {
    /// What is being looked into, to notice a circle.
    making: Vec<IngredientId>,
    /// What has been looked into: each batch once, however many others it is part of.
    known: BTreeMap<IngredientId, Verdict>,
}

fn verdict(book: &Book, resolved: &Resolved, claim: &Claim, judging: &mut Judging) -> Verdict {
    ingredients(resolved)
        .map(|id| verdict_on(book, id, claim, judging))
        .fold(Verdict::Yes, Verdict::and)
}

fn ingredients(resolved: &Resolved) -> impl Iterator<Item = &IngredientId> {
    resolved.lines().flat_map(|line| {
        std::iter::once(&line.ingredient)
            .chain(line.carried.as_ref().map(|carried| &carried.ingredient))
    })
}

fn add_allergens(
    book: &Book,
    id: &IngredientId,
    summary: &mut AllergenSummary,
    making: &mut Vec<IngredientId>,
    seen: &mut BTreeSet<IngredientId>,
) {
    let Some(ingredient) = book.ingredient(id) else {
        summary.not_stated.insert(id.clone());
        return;
    };
    if let Some(statement) = &ingredient.allergens {
        summary.contains.extend(&statement.contains);
        summary.may_contain.extend(&statement.may_contain);
    } else if let Some(recipe) = made_by(book, ingredient, making) {
        // Once is enough: the sets hold each allergen once.
        if !seen.insert(id.clone()) {
            return;
        }
        making.push(id.clone());
        for part in ingredients(&resolve(recipe, None).0) {
            add_allergens(book, part, summary, making, seen);
        }
        making.pop();
    } else if !is_water(ingredient) {
        summary.not_stated.insert(id.clone());
    }
}

fn verdict_on(book: &Book, id: &IngredientId, claim: &Claim, judging: &mut Judging) -> Verdict {
    let Some(ingredient) = book.ingredient(id) else {
        return Verdict::NotKnown;
    };
    let names_it = ingredient.allergens.as_ref().is_some_and(|statement| {
        statement
            .contains
            .iter()
            .any(|allergen| claim.against.contains(allergen))
    });
    if names_it {
        return Verdict::No;
    }
    match (claim.stated)(ingredient) {
        Some(true) => Verdict::Yes,
        Some(false) => Verdict::No,
        None if is_water(ingredient) => Verdict::Yes,
        None => match made_by(book, ingredient, &judging.making) {
            Some(recipe) => {
                if let Some(known) = judging.known.get(id) {
                    return *known;
                }
                judging.making.push(id.clone());
                let verdict = verdict(book, &resolve(recipe, None).0, claim, judging);
                judging.making.pop();
                judging.known.insert(id.clone(), verdict);
                verdict
            }
            None => Verdict::NotKnown,
        },
    }
}

/// The recipe that makes an ingredient; `None` when nobody makes it or it is being worked out already.
fn made_by<'book>(
    book: &'book Book,
    ingredient: &Ingredient,
    making: &[IngredientId],
) -> Option<&'book crate::book::Recipe> {
    let made = ingredient
        .house_made
        .as_ref()
        .filter(|_| !making.contains(&ingredient.id))?;
    book.recipe(&made.recipe).map(AsRef::as_ref)
}
