//! Claims that the rest of the entry, or what the house makes it from, can't carry.

use super::checklist::Checklist;
use crate::book::{
    AgainstClaim, Allergen, Book, Declared, FindingKind, Ingredient, Place, StatedClaim,
    SugarProfile,
};

/// A claim, and what speaks against it.
struct Claim {
    kind: StatedClaim,
    stated: fn(&Ingredient) -> Option<bool>,
    speaks_against: fn(Allergen) -> bool,
    profile_against: SugarProfile,
    profile: AgainstClaim,
}

const CLAIMS: [Claim; 2] = [
    Claim {
        kind: StatedClaim::DairyFree,
        stated: |item| item.diet.dairy_free,
        speaks_against: |allergen| allergen == Allergen::Milk,
        profile_against: SugarProfile::Lactose,
        profile: AgainstClaim::Lactose,
    },
    Claim {
        kind: StatedClaim::Vegan,
        stated: |item| item.diet.vegan,
        speaks_against: Allergen::is_animal,
        profile_against: SugarProfile::Honey,
        profile: AgainstClaim::Honey,
    },
];

pub(super) fn check(book: &Book, item: &Ingredient, list: &mut Checklist) {
    let report = |list: &mut Checklist, field, claim, against| {
        list.warning(
            Place::Ingredient(item.id.clone(), field),
            FindingKind::ClaimNotCarried { claim, against },
        );
    };
    for claim in CLAIMS
        .iter()
        .filter(|claim| (claim.stated)(item) == Some(true))
    {
        if let Some(allergen) = contained(item, claim) {
            report(list, "diet", claim.kind, AgainstClaim::Contains(allergen));
        }
        if item.composition.sugar_profile == Some(claim.profile_against) {
            report(list, "diet", claim.kind, claim.profile.clone());
        }
        for part in parts(book, item) {
            if let Some(reason) = reason_against(part, claim) {
                report(list, "diet", claim.kind, reason);
            }
        }
    }
    if item.diet.vegan == Some(true) && item.diet.dairy_free == Some(false) {
        report(list, "diet", StatedClaim::Vegan, AgainstClaim::NotDairyFree);
    }
    if let Some(statement) = &item.allergens {
        let mut known: Vec<Allergen> = statement.contains.clone();
        for part in parts(book, item) {
            let carried = part.allergens.iter().flat_map(|of_part| &of_part.contains);
            for allergen in carried {
                // Of what is outside the annex a list says nothing unless it says so.
                let is_open = statement.says_of(*allergen) == Declared::NotStated;
                if is_open || known.contains(allergen) {
                    continue;
                }
                known.push(*allergen);
                let against = AgainstClaim::PartContains(part.id.clone(), *allergen);
                report(list, "allergens", StatedClaim::AllergensListed, against);
            }
        }
    }
}

fn contained(item: &Ingredient, claim: &Claim) -> Option<Allergen> {
    let mut contains = item.allergens.as_ref()?.contains.iter().copied();
    contains.find(|allergen| (claim.speaks_against)(*allergen))
}

fn reason_against(part: &Ingredient, claim: &Claim) -> Option<AgainstClaim> {
    let id = || part.id.clone();
    if let Some(allergen) = contained(part, claim) {
        return Some(AgainstClaim::PartContains(id(), allergen));
    }
    ((claim.stated)(part) == Some(false)).then(|| AgainstClaim::PartIsNot(id()))
}

/// How many parts of a house-made ingredient are looked through: hundreds stand in no recipe of a counter, and a book that
/// somebody made on purpose must not cost the square of its length.
const PARTS: usize = 200;

/// What the house makes an ingredient from, and what it makes those from, itself left out.
fn parts<'book>(
    book: &'book Book,
    item: &'book Ingredient,
) -> impl Iterator<Item = &'book Ingredient> {
    let recipe = item.recipe_in(book).into_iter();
    let ids = recipe.flat_map(|recipe| recipe.ingredients().take(PARTS));
    book.everything_in(ids)
        .at_most(PARTS)
        .filter(|part| part.id != item.id)
}
