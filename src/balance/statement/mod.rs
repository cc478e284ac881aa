//! Reading statements of ingredients: what they name that the rest of the entry does not say, and additives whose mention the
//! law asks for.
//!
//! A finding asks the person who has the pack in hand. It changes no entry; what a statement names does count in what is said
//! of the drink ([`super::diet`]).
//! English statements and E numbers are read; what another language names is not found.

mod hint_kind;
mod hint_words;
mod hints;
mod read;
mod sign;
mod sign_words;

pub use hint_kind::{HintKind, NamedPolyol, NamedSweetener};
pub use hints::{Hints, hints_of};
pub use sign::{StatementKind, StatementMatch};

use std::rc::Rc;

use crate::book::{Allergen, Book, Ingredient, IngredientId, Nutrient, Resolved};

/// Above this part of added polyols a laxative warning is asked for, g per 100 g: Regulation (EU) 1169/2011, Annex III, 2.4
/// (value from memory).
const LAXATIVE_POLYOLS: f64 = 10.0;

/// Why a match is worth a question.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Concern {
    /// The entry says the opposite.
    Contradicts,
    /// The entry says nothing of it.
    NotStated,
    /// The law asks for a mention where the drink is sold.
    Mention,
}

/// A question to the person who has the pack.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StatementFinding {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// What its statement is a sign of.
    pub kind: StatementKind,
    /// Why that is worth a question.
    pub concern: Concern,
    /// The words that were matched, with commas between them.
    pub matched_words: String,
    /// Whether they stand behind "may contain".
    pub is_trace: bool,
    /// Whether the ingredient is sold as free of dairy, and the words are milk.
    pub is_sold_as_dairy_free: bool,
}

/// What a statement names, in its order; what it says is absent is left out.
pub fn read_statement(statement: &str) -> Rc<[StatementMatch]> {
    read::read(statement)
}

/// The questions that the statement of an ingredient raises, contradictions first.
pub fn statement_findings(ingredient: &Ingredient) -> Vec<StatementFinding> {
    let matches = read::read(&ingredient.statement);
    let mut findings: Vec<StatementFinding> = matches
        .iter()
        .filter_map(|found| {
            let concern = concern_of(ingredient, found)?;
            Some(StatementFinding {
                ingredient: ingredient.id.clone(),
                kind: found.kind,
                concern,
                matched_words: found.words.join(", "),
                is_trace: found.is_trace,
                is_sold_as_dairy_free: found.kind == StatementKind::Allergen(Allergen::Milk)
                    && !found.is_trace
                    && is_sold_as_non_dairy(ingredient),
            })
        })
        .collect();
    findings.sort_by_key(|finding| finding.concern);
    findings
}

/// The questions over all ingredients of a version, house-made ones taken apart; each ingredient once.
pub fn statement_findings_of(book: &Book, resolved: &Resolved) -> Vec<StatementFinding> {
    book.everything_in(resolved.ingredients())
        .flat_map(statement_findings)
        .collect()
}

/// Whether a statement in a version names a sweetener.
pub(super) fn names_sweetener(book: &Book, resolved: &Resolved) -> bool {
    book.everything_in(resolved.ingredients())
        .any(|ingredient| {
            let matches = read::read(&ingredient.statement);
            matches
                .iter()
                .any(|found| found.kind == StatementKind::Sweetener && !found.is_trace)
        })
}

fn concern_of(ingredient: &Ingredient, found: &StatementMatch) -> Option<Concern> {
    match found.kind {
        StatementKind::Allergen(allergen) => allergen_concern(ingredient, allergen, found.is_trace),
        _ if found.is_trace => None,
        StatementKind::Animal => match ingredient.diet.vegan {
            Some(true) => Some(Concern::Contradicts),
            None => Some(Concern::NotStated),
            Some(false) => None,
        },
        StatementKind::PerhapsAnimal => ingredient
            .diet
            .vegan
            .is_none()
            .then_some(Concern::NotStated),
        StatementKind::Polyol => match ingredient.composition.get(Nutrient::Polyols) {
            Some(polyols) if polyols.value > LAXATIVE_POLYOLS => Some(Concern::Mention),
            Some(_) => None,
            None => Some(Concern::NotStated),
        },
        StatementKind::Caffeine if ingredient.composition.get(Nutrient::Caffeine).is_none() => {
            Some(Concern::NotStated)
        }
        StatementKind::Phenylalanine
        | StatementKind::Sweetener
        | StatementKind::ChildrenColour
        | StatementKind::Quinine
        | StatementKind::Caffeine => Some(Concern::Mention),
    }
}

fn allergen_concern(
    ingredient: &Ingredient,
    allergen: Allergen,
    is_trace: bool,
) -> Option<Concern> {
    let sold_as_free = allergen == Allergen::Milk && !is_trace && is_sold_as_non_dairy(ingredient);
    match &ingredient.allergens {
        _ if sold_as_free => Some(Concern::Contradicts),
        None => Some(Concern::NotStated),
        Some(stated) if stated.contains.contains(&allergen) => None,
        Some(stated) if is_trace && stated.may_contain.contains(&allergen) => None,
        Some(_) => Some(Concern::Contradicts),
    }
}

/// Words of a name, hyphens left out, that sell something as free of dairy.
const SOLD_AS_NON_DAIRY: [[&str; 2]; 2] = [["non", "dairy"], ["dairy", "free"]];

fn is_sold_as_non_dairy(ingredient: &Ingredient) -> bool {
    let name = ingredient.name.to_lowercase().replace('-', " ");
    ingredient.diet.dairy_free == Some(true)
        || ingredient.diet.vegan == Some(true)
        || SOLD_AS_NON_DAIRY
            .iter()
            .any(|words| name.contains(&words.join(" ")))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{AllergenStatement, Role};

    pub(super) fn ingredient(name: &str, statement: &str) -> Ingredient {
        Ingredient {
            role: Role::Creamer,
            statement: statement.to_owned(),
            ..Ingredient::new(IngredientId::new("item").unwrap(), name.to_owned())
        }
    }

    #[test]
    fn a_non_dairy_creamer_with_caseinate_asks_even_when_milk_is_declared() {
        let mut creamer = ingredient("Non-dairy creamer", "Glucose syrup, sodium caseinate.");
        creamer.allergens = Some(AllergenStatement {
            contains: vec![Allergen::Milk],
            may_contain: Vec::new(),
            free_of: Vec::new(),
        });
        let findings = statement_findings(&creamer);
        assert_eq!(findings.len(), 1);
        assert_eq!(findings[0].concern, Concern::Contradicts);
        assert!(findings[0].is_sold_as_dairy_free);
        creamer.name = "Creamer".to_owned();
        assert_eq!(statement_findings(&creamer), []);
    }

    #[test]
    fn what_the_entry_says_already_is_not_asked() {
        let mut honey = ingredient("Honey", "Honey.");
        assert_eq!(statement_findings(&honey)[0].concern, Concern::NotStated);
        honey.diet.vegan = Some(false);
        assert_eq!(statement_findings(&honey), []);
        honey.diet.vegan = Some(true);
        assert_eq!(statement_findings(&honey)[0].concern, Concern::Contradicts);
    }

    #[test]
    fn mentions_of_the_law_are_asked_for() {
        let drops = ingredient(
            "Drops",
            "Water, sweeteners E 951 and E 950, colour E 102, quinine.",
        );
        let kinds: Vec<StatementKind> = statement_findings(&drops)
            .into_iter()
            .map(|finding| finding.kind)
            .collect();
        for kind in [
            StatementKind::Phenylalanine,
            StatementKind::Sweetener,
            StatementKind::ChildrenColour,
            StatementKind::Quinine,
        ] {
            assert!(kinds.contains(&kind), "{kind:?} in {kinds:?}");
        }
    }

    #[test]
    fn polyols_are_asked_for_above_a_tenth_or_when_not_stated() {
        let mut syrup = ingredient("Syrup", "Maltitol syrup.");
        let polyol = |syrup: &Ingredient| {
            statement_findings(syrup)
                .into_iter()
                .find(|finding| finding.kind == StatementKind::Polyol)
                .map(|found| found.concern)
        };
        assert_eq!(polyol(&syrup), Some(Concern::NotStated));
        let state = |grams| crate::book::Figure::new(grams, crate::book::Evidence::Label);
        syrup
            .composition
            .printed
            .insert(Nutrient::Polyols, state(10.0));
        assert_eq!(polyol(&syrup), None);
        syrup
            .composition
            .printed
            .insert(Nutrient::Polyols, state(10.1));
        assert_eq!(polyol(&syrup), Some(Concern::Mention));
    }

    #[test]
    fn everything_that_a_statement_names_is_asked_about() {
        let all = ingredient(
            "Everything",
            "Milk, egg, honey, E 471, E 951, maltitol, E 102, quinine, caffeine. May contain soya.",
        );
        let findings = statement_findings(&all);
        assert!(findings.len() >= 9, "{findings:?}");
    }
}
