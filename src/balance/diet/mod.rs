//! Allergens and diets by ingredients: what entries, packs and statements say, joined through what the house makes.
//!
//! Every claim is joined from all its sources, and the join never moves towards "yes": a further line, part or allergen can
//! only take a "yes" away, and so can the loss of a claim that carried it.
//!
//! | source | vegan | free of dairy | contains |
//! |---|---|---|---|
//! | the claim of the entry | yes or no | yes or no; vegan is free of dairy | — |
//! | its allergens | an animal: no | milk: no | each of them |
//! | its statement of ingredients | an animal: no; doubtful: not known without a claim | milk: no | each that it names |
//! | its sugar profile | honey, lactose: no | lactose: no | lactose: milk |
//! | each part of what the house makes | as the part | as the part | as the part |
//!
//! Sources that contradict each other leave the claim not known. What shows an animal wins over every claim: nobody prints
//! caseinate on a pack by oversight. A batch whose recipe is missing, empty or needs the batch itself is not known.

mod evidence;
mod judging;
mod verdict;

pub(super) use evidence::contained_in;
pub use verdict::{Against, AllergenSummary, Claim, Claims, Contradiction, Verdict};

use crate::book::{Book, IngredientId, Resolved};

/// What can be said of a version.
pub(super) fn claims(book: &Book, resolved: &Resolved) -> Claims {
    judging::claims_of(book, resolved.ingredients())
}

/// What can be said of one ingredient, with everything that the house makes it from.
pub fn claims_of_ingredient(book: &Book, id: &IngredientId) -> Claims {
    judging::claims_of(book, std::iter::once(id))
}
