//! Claims that the rest of the entry, or what the house makes it from, can't carry.

use super::NAME;
use super::checklist::Checklist;
use crate::book::{
    Allergen, Book, Entry, FindingKind, Ingredient, IngredientId, Place, SugarProfile,
};
use crate::quantity::excerpt;

/// Allergens that are animals or come from them.
const ANIMAL: [Allergen; 5] = [
    Allergen::Milk,
    Allergen::Eggs,
    Allergen::Fish,
    Allergen::Crustaceans,
    Allergen::Molluscs,
];

/// A claim, and what speaks against it.
struct Claim {
    word: &'static str,
    stated: fn(&Ingredient) -> Option<bool>,
    against: &'static [Allergen],
    profile_against: SugarProfile,
    profile_words: &'static str,
}

const CLAIMS: [Claim; 2] = [
    Claim {
        word: "dairy-free",
        stated: |item| item.diet.dairy_free,
        against: &[Allergen::Milk],
        profile_against: SugarProfile::Lactose,
        profile_words: "its sugars are lactose",
    },
    Claim {
        word: "vegan",
        stated: |item| item.diet.vegan,
        against: &ANIMAL,
        profile_against: SugarProfile::Honey,
        profile_words: "its sugars are those of honey",
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
        if let Some(allergen) = contained(item, claim.against) {
            report(
                list,
                "diet",
                claim.word,
                format!("its allergens contain {}", allergen.word()),
            );
        }
        if item.composition.sugar_profile == Some(claim.profile_against) {
            report(list, "diet", claim.word, claim.profile_words.to_owned());
        }
        for part in parts(book, item) {
            if let Some(reason) = reason_against(part, claim) {
                report(list, "diet", claim.word, reason);
            }
        }
    }
    if item.diet.vegan == Some(true) && item.diet.dairy_free == Some(false) {
        report(
            list,
            "diet",
            "vegan",
            "it is stated not to be dairy-free".to_owned(),
        );
    }
    if let Some(statement) = &item.allergens {
        for part in parts(book, item) {
            let carried = part.allergens.iter().flat_map(|of_part| &of_part.contains);
            for allergen in carried.filter(|allergen| !statement.contains.contains(allergen)) {
                let against = format!(
                    "{} in it contains {}",
                    excerpt(&part.full_name(), NAME),
                    allergen.word()
                );
                report(list, "allergens", "complete in its allergens", against);
            }
        }
    }
}

fn contained(item: &Ingredient, against: &[Allergen]) -> Option<Allergen> {
    let statement = item.allergens.as_ref()?;
    statement
        .contains
        .iter()
        .find(|allergen| against.contains(allergen))
        .copied()
}

fn reason_against(part: &Ingredient, claim: &Claim) -> Option<String> {
    let name = || excerpt(&part.full_name(), NAME);
    if let Some(allergen) = contained(part, claim.against) {
        return Some(format!("{} in it contains {}", name(), allergen.word()));
    }
    ((claim.stated)(part) == Some(false))
        .then(|| format!("{} in it is stated not to be so", name()))
}

/// How many lines of its recipe a house-made ingredient is looked through for: hundreds stand in no recipe of a counter.
const PARTS: usize = 200;

/// What the house makes an ingredient from, itself left out.
fn parts<'book>(
    book: &'book Book,
    item: &'book Ingredient,
) -> impl Iterator<Item = &'book Ingredient> {
    let recipe = item
        .house_made
        .as_ref()
        .and_then(|made| book.recipe(&made.recipe));
    let lines = recipe
        .into_iter()
        .flat_map(|recipe| recipe.entries.iter().take(PARTS))
        .filter_map(Entry::line);
    let used = |id: &IngredientId| book.ingredient(id).map(AsRef::as_ref);
    lines
        .filter_map(move |line| used(&line.ingredient))
        .filter(|part| part.id != item.id)
}
