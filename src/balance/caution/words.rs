//! The sentences of cautions and of questions about statements; nothing else makes them.

use super::HOT_FOR_A_WIDE_STRAW;
use super::fact::{
    CaffeineDose, CautionFact, Hot, KeptAt, Mention, NamedWords, NotKnown, Since, UseWithin,
};
use crate::balance::diet::{Against, AllergenSummary, Claim, Contradiction};
use crate::balance::published::serving::{
    BREWED_TEA_HOURS, CAFFEINE_SINGLE_DOSE_MG, CAFFEINE_SLEEP_MG, COLD_HOLDING_UK_CELSIUS,
    COLD_HOLDING_US_CELSIUS, HIGH_CAFFEINE_MG_PER_LITRE, HOT_HOLDING_UK_CELSIUS,
    HOT_HOLDING_US_CELSIUS, ScaldBound, ScaldTime, VERY_HOT_CELSIUS,
};
use crate::balance::statement::{Concern, StatementFinding, StatementKind};
use crate::book::{Allergen, Book, IngredientId, VesselId};
use crate::quantity::show_number;

/// A caution as a sentence, without the word of its kind before it and without a full stop behind it.
pub fn caution_words(book: &Book, fact: &CautionFact) -> String {
    match fact {
        CautionFact::TooHot(hot) => format!(
            "{} °C when handed over, above {VERY_HOT_CELSIUS:.0} °C: too hot to drink at once, and it scalds{}; let it cool or add \
             cold water, and follow your local code",
            show_number(hot.celsius, 0),
            scald_words(hot)
        ),
        CautionFact::HotThroughWideStraw(hot) => format!(
            "{} °C through a wide straw, above {HOT_FOR_A_WIDE_STRAW:.0} °C: gulps reach the throat hot; serve without a straw or \
             cooler, and follow your local code",
            show_number(hot.celsius, 0)
        ),
        CautionFact::Scalds(hot) => format!(
            "{} °C when handed over: spilt on skin it scalds{}; close the cup, and follow your local code",
            show_number(hot.celsius, 0),
            scald_words(hot)
        ),
        CautionFact::Allergens(summary) => allergen_words(book, summary),
        CautionFact::StatementsContradict(named) => format!(
            "the statement of ingredients says otherwise than the entry: {}; read the pack before you tell a guest",
            named_words(book, named)
        ),
        CautionFact::ClaimsContradicted(found) => format!(
            "the book contradicts itself: {}; read the packs before you tell a guest",
            contradiction_words(book, found)
        ),
        CautionFact::Choking(pieces) => format!(
            "{}: small chewy pieces drawn through a straw can reach the lungs of young children (BfR 2012, up to 4 years); say so \
             where it is sold, and follow your local code",
            names(book, pieces)
        ),
        CautionFact::KeptAt(kept) => {
            let each = kept.iter().map(|kept| kept_words(book, kept));
            format!("{}; follow your local code", once_each(each))
        }
        CautionFact::UseWithin(rules) => {
            let each = rules.iter().map(|rule| use_words(book, rule));
            format!(
                "{}; by the shop's own rules, and follow your local code",
                once_each(each)
            )
        }
        CautionFact::Curdles { acid, is_complete } => format!(
            "{}{acid:.2} g of acid in 100 ml meets milk or soy and may curdle it: add the milk last, cold, and serve at once",
            at_least(*is_complete)
        ),
        CautionFact::MayCurdle { acid_not_stated } => format!(
            "milk or soy may curdle: how much acid is in {} is not stated; add the milk last, cold, and serve at once",
            names(book, acid_not_stated)
        ),
        CautionFact::Caffeine {
            milligrams,
            is_complete,
            dose,
            per_litre,
        } => format!(
            "{}{milligrams:.0} mg of caffeine: {}",
            at_least(*is_complete),
            caffeine_words(*is_complete, *dose, *per_litre)
        ),
        CautionFact::CaffeineNotKnown(silent) if silent.is_empty() => {
            "caffeine not known; read the labels before you tell a guest".to_owned()
        }
        CautionFact::CaffeineNotKnown(silent) => format!(
            "caffeine not known: {}; read the labels before you tell a guest",
            names(book, silent)
        ),
        CautionFact::Additives(mentions) => {
            let each = mentions.iter().map(|mention| mention_words(book, mention));
            format!(
                "by the statements of ingredients, these may have to be mentioned: {}; read the packs, and follow your local code",
                each.collect::<Vec<_>>().join("; ")
            )
        }
        CautionFact::Undissolved {
            found,
            most,
            celsius,
        } => format!(
            "{found:.0} g of sucrose in 100 g of sucrose and water, where {most:.0} g is the most that dissolves at {celsius:.0} °C \
             (Bubnik & Kadlec 1995): some of it stays as grains; take less of it or more water"
        ),
        CautionFact::RunsOver { cup, fill, most } => format!(
            "{fill:.0} % of {} where {most:.0} % is the most below its rim and closure: it runs over; take less or a larger cup",
            vessel_name(book, cup)
        ),
        CautionFact::NotKnown(gaps) => format!(
            "not known: {}; read the labels before you tell a guest",
            gap_words(gaps)
        ),
    }
}

fn gap_words(gaps: &[NotKnown]) -> String {
    let words = gaps.iter().map(|gap| match gap {
        NotKnown::Figure(measurand) => measurand.word(),
        NotKnown::Vegan => "whether it is vegan",
    });
    words.collect::<Vec<_>>().join(", ")
}

fn vessel_name(book: &Book, id: &VesselId) -> String {
    book.vessel(id)
        .map_or_else(|| id.to_string(), |vessel| vessel.name.clone())
}

fn at_least(is_complete: bool) -> &'static str {
    if is_complete { "" } else { "at least " }
}

/// " (adult skin burns to the second degree or deeper in less than 3 s, that of small children in less than 1 s)".
fn scald_words(hot: &Hot) -> String {
    let Some(adult) = hot.adult else {
        return String::new();
    };
    let child = hot.child.map_or_else(
        || "faster".to_owned(),
        |child| format!("in {}", scald_time_words(child)),
    );
    format!(
        " (adult skin burns to the second degree or deeper in {}, that of small children {child})",
        scald_time_words(adult)
    )
}

/// "at most 3 s", "less than 0.5 s".
fn scald_time_words(time: ScaldTime) -> String {
    let bound = match time.bound {
        ScaldBound::AtMost => "at most",
        ScaldBound::LessThan => "less than",
    };
    let decimals = usize::from(time.seconds.fract() != 0.0);
    format!("{bound} {} s", show_number(time.seconds, decimals))
}

fn allergen_words(book: &Book, summary: &AllergenSummary) -> String {
    let words = |set: &std::collections::BTreeSet<Allergen>| {
        set.iter()
            .map(|allergen| allergen.word())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let mut parts = Vec::new();
    if !summary.contains.is_empty() {
        parts.push(format!("contains {}", words(&summary.contains)));
    }
    if !summary.may_contain.is_empty() {
        parts.push(format!("may contain {}", words(&summary.may_contain)));
    }
    if !summary.not_stated.is_empty() {
        parts.push(format!(
            "not stated for {}",
            names(book, &summary.not_stated)
        ));
    }
    format!(
        "{}. By ingredients only: shared shakers, scoops and blenders carry traces; follow your local code",
        parts.join("; ")
    )
}

fn contradiction_words(book: &Book, found: &[Contradiction]) -> String {
    let each = found.iter().map(|found| {
        let name = name(book, &found.ingredient);
        let claim = match found.claim {
            Claim::Vegan => "vegan",
            Claim::DairyFree => "free of dairy",
            Claim::Allergens => "complete in its allergens",
        };
        match &found.against {
            Against::Allergen(allergen) => format!(
                "{name} is entered as {claim}, and its allergens say {}",
                allergen.word()
            ),
            Against::HoneySugars => {
                format!("{name} is entered as {claim}, and its sugars are those of honey")
            }
            Against::MilkSugars => {
                format!("{name} is entered as {claim}, and its sugars are those of milk")
            }
            Against::NotDairyFree => {
                format!("{name} is entered as {claim} and as not free of dairy")
            }
            Against::Part(part) => format!(
                "{name} is entered as {claim}, and {} in it is not",
                self::name(book, part)
            ),
            Against::EveryPart => {
                format!("{name} is entered as not {claim}, and everything in it is")
            }
            Against::AllergenOfPart(part, allergen) => format!(
                "the allergens of {name} leave out {}, which is in {}",
                allergen.word(),
                self::name(book, part)
            ),
        }
    });
    once_each(each)
}

fn kept_words(book: &Book, kept: &KeptAt) -> String {
    let (name, celsius) = (name(book, &kept.ingredient), kept.celsius);
    if kept.is_warm {
        format!(
            "{name} comes at {celsius:.0} °C; where it is kept at that, hot holding begins at {HOT_HOLDING_UK_CELSIUS:.0} °C (UK) or \
             {HOT_HOLDING_US_CELSIUS:.0} °C (US)"
        )
    } else {
        format!(
            "{name} comes at {celsius:.0} °C; where it is kept at that, cold holding ends at {COLD_HOLDING_UK_CELSIUS:.0} °C (UK) or \
             {COLD_HOLDING_US_CELSIUS:.0} °C (US)"
        )
    }
}

fn use_words(book: &Book, rule: &UseWithin) -> String {
    let name = name(book, &rule.ingredient);
    let shown = |hours: f64| show_number(hours, usize::from(hours.fract() != 0.0));
    match (rule.since, rule.hours) {
        (Since::Brewing, Some(hours)) if hours > BREWED_TEA_HOURS => format!(
            "{name}: use within {} h of brewing by the shop's rule, longer than the {BREWED_TEA_HOURS:.0} h of the Tea Council of \
             the USA after the CDC memo of 1996",
            shown(hours)
        ),
        (Since::Brewing, Some(hours)) => {
            format!("{name}: use within {} h of brewing", shown(hours))
        }
        (Since::Brewing, None) => format!(
            "{name}: no holding rule is stated; the Tea Council of the USA says {BREWED_TEA_HOURS:.0} h after brewing at most"
        ),
        (Since::Making, Some(hours)) => format!("{name}: use within {} h of making", shown(hours)),
        (Since::Making, None) => format!("{name}: made in the house, and no shelf life is stated"),
        (Since::Opening, Some(hours)) => {
            format!("{name}: use within {} h of opening", shown(hours))
        }
        (Since::Opening, None) => format!("{name}: how long it keeps once opened is not stated"),
    }
}

fn caffeine_words(is_complete: bool, dose: Option<CaffeineDose>, per_litre: Option<f64>) -> String {
    let dose = dose.map(|dose| match dose {
        CaffeineDose::Single => format!(
            "above the single dose of {CAFFEINE_SINGLE_DOSE_MG:.0} mg for adults (EFSA 2015); less for pregnant women and children"
        ),
        CaffeineDose::Sleep => {
            format!("{CAFFEINE_SLEEP_MG:.0} mg may disturb sleep (EFSA 2015)")
        }
    });
    let per_litre = per_litre.map(|per_litre| {
        format!(
            "{}{per_litre:.0} mg/l, above {HIGH_CAFFEINE_MG_PER_LITRE:.0}: where its name says neither tea nor coffee, \"High caffeine \
             content\" may be due (Regulation (EU) 1169/2011, Annex III)",
            at_least(is_complete)
        )
    });
    let parts: Vec<String> = dose.into_iter().chain(per_litre).collect();
    parts.join("; ")
}

fn mention_words(book: &Book, mention: &Mention) -> String {
    let what = match mention.kind {
        StatementKind::Phenylalanine => "contains a source of phenylalanine",
        StatementKind::ChildrenColour => {
            "colours that may have an adverse effect on activity and attention in children"
        }
        StatementKind::Polyol => "polyols, of which much may have laxative effects",
        StatementKind::Quinine => "quinine",
        StatementKind::Caffeine => "added caffeine",
        StatementKind::Sweetener => "with sweetener(s)",
        StatementKind::Allergen(allergen) => allergen.word(),
        StatementKind::Animal => "something of an animal",
        StatementKind::PerhapsAnimal => "something that may come from an animal",
    };
    format!("{what} ({})", named_words(book, &mention.named))
}

/// "Ondry creamer: caseinate, milk", ingredient by ingredient.
fn named_words(book: &Book, named: &[NamedWords]) -> String {
    let each = named
        .iter()
        .map(|named| format!("{}: {}", name(book, &named.ingredient), named.words));
    each.collect::<Vec<_>>().join("; ")
}

/// Clauses one after the other; two ingredients of one name may say the same.
fn once_each(clauses: impl Iterator<Item = String>) -> String {
    let mut said: Vec<String> = Vec::new();
    for clause in clauses {
        if !said.contains(&clause) {
            said.push(clause);
        }
    }
    said.join("; ")
}

fn name(book: &Book, id: &IngredientId) -> String {
    book.ingredient(id)
        .map_or_else(|| id.to_string(), |ingredient| ingredient.full_name())
}

fn names<'id>(book: &Book, ids: impl IntoIterator<Item = &'id IngredientId>) -> String {
    let names = ids.into_iter().map(|id| name(book, id));
    names.collect::<Vec<_>>().join(", ")
}

/// A question about the statement of an ingredient, as a sentence.
pub fn question_words(book: &Book, finding: &StatementFinding) -> String {
    let name = name(book, &finding.ingredient);
    let words = &finding.matched_words;
    let traces = if finding.is_trace {
        "says that it may contain"
    } else {
        "names"
    };
    match (finding.kind, finding.concern) {
        (StatementKind::Allergen(Allergen::Milk), Concern::Contradicts)
            if finding.is_sold_as_dairy_free =>
        {
            format!(
                "{name} is sold as free of dairy, and its statement names {words}: that is milk; does the pack in your hand say so too?"
            )
        }
        (StatementKind::Allergen(allergen), Concern::Contradicts) => format!(
            "the statement of {name} {traces} {words}, and its allergens do not say {}; which of them is right?",
            allergen.word()
        ),
        (StatementKind::Allergen(allergen), _) => {
            format!(
                "the statement of {name} {traces} {words}: does the pack declare {}?",
                allergen.word()
            )
        }
        (StatementKind::Animal, Concern::Contradicts) => format!(
            "{name} is entered as vegan, and its statement names {words}, which comes from an animal; which of them is right?"
        ),
        (StatementKind::Animal, _) => {
            format!("the statement of {name} names {words}: is it vegan by what its maker says?")
        }
        (StatementKind::PerhapsAnimal, _) => {
            format!(
                "{words} in {name} can be made from plants or animals: does its maker say that it is vegan?"
            )
        }
        (StatementKind::Phenylalanine, _) => {
            format!(
                "{name} names {words}: a notice \"contains a source of phenylalanine\" may be due; does the drink bear it?"
            )
        }
        (StatementKind::Polyol, Concern::Mention) => format!(
            "{name} holds more than 10 % of polyols ({words}): a notice that much of it may have laxative effects may be due; does \
             the drink bear it?"
        ),
        (StatementKind::Polyol, _) => {
            format!("{name} names {words}: how many grams of polyols does the pack state?")
        }
        (StatementKind::Sweetener, _) => {
            format!(
                "{name} names {words}: \"with sweetener(s)\" may be due beside the name of the drink; is it there?"
            )
        }
        (StatementKind::ChildrenColour, _) => format!(
            "{name} names {words}: a notice \"may have an adverse effect on activity and attention in children\" may be due; does \
             the drink bear it?"
        ),
        (StatementKind::Quinine, _) => format!(
            "{name} names {words}: quinine may have to be named where the drink is sold; is it?"
        ),
        (StatementKind::Caffeine, Concern::NotStated) => {
            format!("{name} names {words}: how many milligrams of caffeine does the pack state?")
        }
        (StatementKind::Caffeine, _) => {
            format!(
                "{name} names {words}: added caffeine may have to be named where the drink is sold; is it?"
            )
        }
    }
}
