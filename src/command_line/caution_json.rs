//! A caution as JSON: its kind, its sentence, and the fact behind it for programs that make sentences of their own.

use serde_json::{Value, json};

use super::claims_json::silent_on;
use crate::balance::{
    Against, CaffeineDose, Caution, CautionFact, Claim, Contradiction, Hot, KeptAt, NamedWords,
    NotKnown, ScaldBound, ScaldTime, Since, StatementKind, UseWithin,
};
use crate::book::{Allergen, Book, IngredientId};
use crate::say::Speaker;

/// A caution of a drink.
pub(super) fn caution(book: &Book, caution: &Caution) -> Value {
    let (name, arguments) = fact(&caution.fact);
    json!({
        "kind": caution.kind().word(),
        "text": Speaker::new(book).caution(&caution.fact),
        "fact": name,
        "arguments": arguments,
    })
}

/// The name of a fact and its arguments: temperatures in °C, times in the unit that stands in their key.
fn fact(fact: &CautionFact) -> (&'static str, Value) {
    match fact {
        CautionFact::TooHot(hot) => ("too_hot", hot_json(hot)),
        CautionFact::HotThroughWideStraw(hot) => ("hot_through_wide_straw", hot_json(hot)),
        CautionFact::Scalds(hot) => ("scalds", hot_json(hot)),
        CautionFact::Allergens(summary) => (
            "allergens",
            json!({
                "contains": allergens(&summary.contains),
                "may_contain": allergens(&summary.may_contain),
                "not_stated": ids(&summary.not_stated),
                "silent_on": silent_on(summary),
            }),
        ),
        CautionFact::StatementsContradict(named) => (
            "statements_contradict",
            json!({ "statements": named_json(named) }),
        ),
        CautionFact::ClaimsContradicted(found) => (
            "claims_contradicted",
            json!({ "claims": found.iter().map(contradiction).collect::<Vec<_>>() }),
        ),
        CautionFact::Choking(pieces) => ("choking", json!({ "ingredients": ids(pieces) })),
        CautionFact::KeptAt(kept) => ("kept_at", json!({ "kept": kept_json(kept) })),
        CautionFact::UseWithin(rules) => ("use_within", json!({ "rules": rules_json(rules) })),
        CautionFact::Curdles { acid, is_complete } => (
            "curdles",
            json!({ "acid_per_100_ml": acid, "complete": is_complete }),
        ),
        CautionFact::MayCurdle { acid_not_stated } => {
            ("may_curdle", json!({ "ingredients": ids(acid_not_stated) }))
        }
        CautionFact::Caffeine {
            milligrams,
            is_complete,
            dose,
            per_litre,
        } => {
            let dose = dose.map(|dose| match dose {
                CaffeineDose::Sleep => "sleep",
                CaffeineDose::Single => "single dose",
            });
            (
                "caffeine",
                json!({
                    "milligrams": milligrams,
                    "complete": is_complete,
                    "above": dose,
                    "milligrams_per_litre": per_litre,
                }),
            )
        }
        CautionFact::CaffeineNotKnown(silent) => {
            ("caffeine_not_known", json!({ "ingredients": ids(silent) }))
        }
        CautionFact::Additives(mentions) => {
            let mentions = mentions.iter().map(|mention| {
                json!({ "additive": additive(mention.kind), "named": named_json(&mention.named) })
            });
            (
                "additives",
                json!({ "mentions": mentions.collect::<Vec<_>>() }),
            )
        }
        CautionFact::Undissolved {
            found,
            most,
            celsius,
        } => (
            "undissolved",
            json!({ "sucrose_per_100_g": found, "most_per_100_g": most, "temperature": celsius }),
        ),
        CautionFact::RunsOver { cup, fill, most } => (
            "runs_over",
            json!({ "cup": cup.as_str(), "fill_percent": fill, "most_percent": most }),
        ),
        CautionFact::NotKnown(gaps) => {
            let gaps = gaps.iter().map(|gap| match gap {
                NotKnown::Figure(measurand) => measurand.key().replace('_', " "),
                NotKnown::Vegan => "vegan".to_owned(),
            });
            ("not_known", json!({ "gaps": gaps.collect::<Vec<_>>() }))
        }
    }
}

fn ids<'id>(ids: impl IntoIterator<Item = &'id IngredientId>) -> Vec<&'id str> {
    ids.into_iter().map(IngredientId::as_str).collect()
}

fn allergens<'set>(set: impl IntoIterator<Item = &'set Allergen>) -> Vec<&'static str> {
    set.into_iter().map(|allergen| allergen.word()).collect()
}

fn hot_json(hot: &Hot) -> Value {
    let time = |time: Option<ScaldTime>| {
        time.map(|time| {
            let bound = match time.bound {
                ScaldBound::AtMost => "at most",
                ScaldBound::LessThan => "less than",
            };
            json!({ "seconds": time.seconds, "bound": bound })
        })
    };
    json!({
        "temperature": hot.celsius,
        "burns_adults_in": time(hot.adult),
        "burns_small_children_in": time(hot.child),
    })
}

fn kept_json(kept: &[KeptAt]) -> Vec<Value> {
    let kept = kept.iter().map(|kept| {
        json!({
            "ingredient": kept.ingredient.as_str(),
            "temperature": kept.celsius,
            "warm": kept.is_warm,
        })
    });
    kept.collect()
}

fn rules_json(rules: &[UseWithin]) -> Vec<Value> {
    let rules = rules.iter().map(|rule| {
        let since = match rule.since {
            Since::Brewing => "brewing",
            Since::Making => "making",
            Since::Opening => "opening",
        };
        json!({ "ingredient": rule.ingredient.as_str(), "since": since, "hours": rule.hours })
    });
    rules.collect()
}

fn named_json(named: &[NamedWords]) -> Vec<Value> {
    named
        .iter()
        .map(|named| json!({ "ingredient": named.ingredient.as_str(), "words": named.words }))
        .collect()
}

fn contradiction(found: &Contradiction) -> Value {
    let claim = match found.claim {
        Claim::Vegan => "vegan",
        Claim::DairyFree => "dairy_free",
        Claim::Allergens => "allergens",
    };
    let (against, part, allergen) = match &found.against {
        Against::Allergen(allergen) => ("allergens", None, Some(*allergen)),
        Against::HoneySugars => ("honey sugars", None, None),
        Against::MilkSugars => ("milk sugars", None, None),
        Against::NotDairyFree => ("not dairy-free", None, None),
        Against::Part(part) => ("part", Some(part), None),
        Against::EveryPart => ("every part", None, None),
        Against::AllergenOfPart(part, allergen) => {
            ("allergen of part", Some(part), Some(*allergen))
        }
    };
    json!({
        "ingredient": found.ingredient.as_str(),
        "claim": claim,
        "against": against,
        "part": part.map(IngredientId::as_str),
        "allergen": allergen.map(Allergen::word),
    })
}

fn additive(kind: StatementKind) -> &'static str {
    match kind {
        StatementKind::Phenylalanine => "phenylalanine",
        StatementKind::Polyol => "polyol",
        StatementKind::Sweetener => "sweetener",
        StatementKind::ChildrenColour => "colour",
        StatementKind::Quinine => "quinine",
        StatementKind::Caffeine => "caffeine",
        StatementKind::Allergen(allergen) => allergen.word(),
        StatementKind::Animal => "animal",
        StatementKind::PerhapsAnimal => "perhaps animal",
    }
}
