//! What the entry of an ingredient shows without claiming it: allergens, words of its statement, whose sugars it holds.

use std::collections::BTreeSet;

use crate::balance::statement::{StatementKind, read_statement};
use crate::book::{Allergen, Form, Ingredient, Nutrient, Role, SugarProfile};

/// What an entry shows.
#[derive(Default)]
pub(super) struct Evidence {
    /// Allergens that it declares, or whose source its statement names.
    pub(super) contains: BTreeSet<Allergen>,
    /// Traces that it declares, or its statement names.
    pub(super) may_contain: BTreeSet<Allergen>,
    /// Whether its statement names something of an animal that is no allergen, or its sugars are those of honey.
    pub(super) animal: bool,
    /// Whether its statement names something that is made from plants or from animals.
    pub(super) doubtful: bool,
}

impl Evidence {
    pub(super) fn new(ingredient: &Ingredient) -> Self {
        let mut evidence = Self::default();
        if let Some(declared) = &ingredient.allergens {
            evidence.contains.extend(with_groups(&declared.contains));
            evidence
                .may_contain
                .extend(with_groups(&declared.may_contain));
        }
        for found in read_statement(&ingredient.statement).iter() {
            match (found.kind, found.is_trace) {
                (StatementKind::Allergen(allergen), false) => {
                    evidence.contains.insert(allergen);
                }
                (StatementKind::Allergen(allergen), true) => {
                    evidence.may_contain.insert(allergen);
                }
                (StatementKind::Animal, false) => evidence.animal = true,
                (StatementKind::PerhapsAnimal, false) => evidence.doubtful = true,
                _ => {}
            }
        }
        if has_milk_sugar(ingredient) {
            evidence.contains.insert(Allergen::Milk);
        }
        evidence.animal |= has_honey_sugars(ingredient);
        evidence
    }

    /// Whether it shows that there is an animal or something of one in it.
    pub(super) fn shows_animal(&self) -> bool {
        self.animal || self.contains.iter().any(|allergen| allergen.is_animal())
    }
}

/// Allergens, and those of the annex that some of them are kinds of.
fn with_groups(allergens: &[Allergen]) -> impl Iterator<Item = Allergen> {
    let groups = allergens.iter().filter_map(|allergen| allergen.group());
    allergens.iter().copied().chain(groups)
}

/// The allergens that an entry declares or shows to be in it.
pub(in crate::balance) fn contained_in(ingredient: &Ingredient) -> BTreeSet<Allergen> {
    Evidence::new(ingredient).contains
}

/// Whether its sugars are those of honey.
pub(super) fn has_honey_sugars(ingredient: &Ingredient) -> bool {
    ingredient.composition.sugar_profile == Some(SugarProfile::Honey)
}

/// Whether lactose is among its sugars; there is none but in milk.
pub(super) fn has_milk_sugar(ingredient: &Ingredient) -> bool {
    match ingredient.composition.sugar_profile {
        Some(SugarProfile::Lactose) => true,
        Some(SugarProfile::Own { lactose, .. }) => lactose > 0.0,
        _ => false,
    }
}

/// Words that a statement of plain water consists of.
const WATER_WORDS: [&str; 11] = [
    "water", "ice", "drinking", "tap", "spring", "mineral", "filtered", "purified", "still",
    "pure", "natural",
];

/// Water and ice are vegan and free of every allergen although no pack says so, as long as nothing in the entry says that there
/// is more in it.
pub(super) fn is_plain_water(ingredient: &Ingredient) -> bool {
    let composition = &ingredient.composition;
    let is_called_water = ingredient.form == Form::Ice || ingredient.role == Role::Water;
    let holds_more = composition
        .printed
        .iter()
        .any(|(nutrient, figure)| !matches!(nutrient, Nutrient::Water) && figure.value > 0.0);
    let names_more = ingredient
        .statement
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .any(|word| !WATER_WORDS.contains(&word.to_lowercase().as_str()));
    is_called_water
        && ingredient.house_made.is_none()
        && !holds_more
        && !names_more
        && composition.flavours.is_empty()
        && composition.high_potency.is_empty()
        && read_statement(&ingredient.name).is_empty()
}
