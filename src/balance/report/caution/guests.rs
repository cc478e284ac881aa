//! What a guest must be told of what is in a drink: allergens, choking, curdling, caffeine, what nobody knows.

use super::fact::{CaffeineDose, CautionFact, NotKnown};
use super::facts::Facts;
use crate::balance::diet::{Against, Verdict};
use crate::balance::measurand::Measurand;
use crate::balance::mix::Component;
use crate::balance::published::serving::{
    CAFFEINE_SINGLE_DOSE_MG, CAFFEINE_SLEEP_MG, HIGH_CAFFEINE_MG_PER_LITRE,
};
use crate::balance::statement::{Concern, StatementFinding, StatementKind, hints_of};
use crate::book::{Allergen, Form, Ingredient, IngredientId, Nutrient, Stage};

/// Acid that may curdle milk or soy in a drink, g of citric acid per 100 ml (assumed: it brings milk near pH 4.6).
const CURDLING_ACID: f64 = 0.15;

pub(super) fn allergens(facts: &Facts<'_>) -> Option<CautionFact> {
    let summary = &facts.claims.allergens;
    let is_silent =
        summary.contains.is_empty() && summary.may_contain.is_empty() && summary.is_complete();
    (!is_silent).then(|| CautionFact::Allergens(summary.clone()))
}

/// Claims that allergens, sugars or parts speak against. Where a statement of ingredients says the same of an allergen, its
/// words have been named already.
pub(super) fn claims_contradicted(
    facts: &Facts<'_>,
    statements: &[StatementFinding],
) -> Option<CautionFact> {
    let is_named = |ingredient: &IngredientId, allergen: Allergen| {
        statements.iter().any(|finding| {
            finding.concern == Concern::Contradicts
                && finding.ingredient == *ingredient
                && finding.kind == StatementKind::Allergen(allergen)
        })
    };
    let found: Vec<_> = facts
        .claims
        .contradictions
        .iter()
        .filter(|found| match found.against {
            Against::Allergen(allergen) => !is_named(&found.ingredient, allergen),
            _ => true,
        })
        .cloned()
        .collect();
    (!found.is_empty()).then_some(CautionFact::ClaimsContradicted(found))
}

pub(super) fn choking(facts: &Facts<'_>) -> Option<CautionFact> {
    let pieces: Vec<IngredientId> = facts
        .resolved
        .lines()
        .filter(|line| line.stage == Stage::Topping && !line.amount.is_nothing())
        .filter(|line| {
            facts
                .book
                .ingredient(&line.ingredient)
                .is_some_and(|item| item.form == Form::Pieces)
        })
        .map(|line| line.ingredient.clone())
        .collect();
    (!pieces.is_empty()).then_some(CautionFact::Choking(pieces))
}

pub(super) fn curdling(facts: &Facts<'_>) -> Option<CautionFact> {
    let contains = &facts.claims.allergens.contains;
    if !contains.contains(&Allergen::Milk) && !contains.contains(&Allergen::Soybeans) {
        return None;
    }
    let acid = facts.figures.get(Measurand::Acidity);
    if let Some(acid) = acid.filter(|acid| *acid >= CURDLING_ACID) {
        let is_complete = facts.figures.missing(Measurand::Acidity) == 0;
        return Some(CautionFact::Curdles { acid, is_complete });
    }
    let acid_not_stated = sour_without_figure(facts);
    (!acid_not_stated.is_empty()).then_some(CautionFact::MayCurdle { acid_not_stated })
}

/// What is likely to be sour by its name, flavours or statement and states no acid, in what is mixed. Milk and sugar state
/// none either, and nobody has to be told.
fn sour_without_figure(facts: &Facts<'_>) -> Vec<IngredientId> {
    let is_silent = |id: &IngredientId| {
        facts
            .unstated
            .iter()
            .any(|gap| gap.component == Component::Acid && gap.ingredient == *id)
    };
    let silent = facts
        .lines
        .iter()
        .filter(|share| share.stage == Stage::Mixed && share.count != 0.0)
        .map(|share| &share.ingredient)
        .filter(|id| is_silent(id));
    let is_sour = |item: &&Ingredient| {
        item.composition.get(Nutrient::Acid).is_none() && !hints_of(item).acid.is_empty()
    };
    facts
        .book
        .everything_in(silent)
        .filter(is_sour)
        .map(|item| item.id.clone())
        .collect()
}

pub(super) fn caffeine(facts: &Facts<'_>) -> Option<CautionFact> {
    let milligrams = facts.figures.get(Measurand::Caffeine)?;
    let dose = if milligrams > CAFFEINE_SINGLE_DOSE_MG {
        Some(CaffeineDose::Single)
    } else if milligrams > CAFFEINE_SLEEP_MG {
        Some(CaffeineDose::Sleep)
    } else {
        None
    };
    let per_litre = facts
        .figures
        .get(Measurand::Volume)
        .map(|volume| milligrams / volume * 1000.0)
        .filter(|per_litre| *per_litre > HIGH_CAFFEINE_MG_PER_LITRE);
    (dose.is_some() || per_litre.is_some()).then(|| CautionFact::Caffeine {
        milligrams,
        is_complete: facts.figures.missing(Measurand::Caffeine) == 0,
        dose,
        per_litre,
    })
}

/// Whatever role it plays: the balance knows which ingredients can hold none.
pub(super) fn caffeine_not_known(facts: &Facts<'_>) -> Option<CautionFact> {
    if facts.figures.missing(Measurand::Caffeine) == 0 {
        return None;
    }
    let silent = facts
        .unstated
        .iter()
        .filter(|gap| gap.component == Component::Caffeine)
        .map(|gap| gap.ingredient.clone());
    Some(CautionFact::CaffeineNotKnown(silent.collect()))
}

pub(super) fn unknown(facts: &Facts<'_>) -> Option<CautionFact> {
    let mut gaps = Vec::new();
    if facts.figures.missing(Measurand::TotalSugar) != 0 {
        gaps.push(NotKnown::Figure(Measurand::TotalSugar));
    }
    if facts.claims.vegan == Verdict::NotKnown {
        gaps.push(NotKnown::Vegan);
    }
    (!gaps.is_empty()).then_some(CautionFact::NotKnown(gaps))
}
