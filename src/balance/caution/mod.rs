//! Warnings that go with a drink, each with its reason. They inform; local codes and licensed practice decide.

mod additive;
mod holding;

use super::diet::{AllergenSummary, Verdict};
use super::figures::Figures;
use super::measurand::Measurand;
use super::mix::{Component, Mix};
use super::published::serving::{
    CAFFEINE_SINGLE_DOSE_MG, CAFFEINE_SLEEP_MG, HIGH_CAFFEINE_MG_PER_LITRE, ScaldBound, ScaldTime,
    Skin, VERY_HOT_CELSIUS, scald_time,
};
use super::published::sugar_solution::sucrose_solubility_mass_fraction;
use super::share::LineShare;
use crate::book::{Allergen, Book, Form, Resolved, Role, ServicewareKind, Stage, Vessel};
use crate::quantity::show_number;

/// Drinks that are drawn through a wide straw reach the throat in gulps, so the line is drawn lower, °C (assumed).
const HOT_FOR_A_WIDE_STRAW: f64 = 60.0;

/// A drink that burns skin to the second degree in less than this scalds before one can help it, s (assumed).
const SCALDS_WITHIN_SECONDS: f64 = 30.0;

/// Acid that may curdle milk or soy in a drink, g of citric acid per 100 ml (assumed: it brings milk near pH 4.6).
const CURDLING_ACID: f64 = 0.15;

/// What a caution is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CautionKind {
    /// Too hot to drink at once.
    Heat,
    /// Allergens.
    Allergen,
    /// Choking.
    Choking,
    /// Milk or soy with acid.
    Curdling,
    /// Caffeine.
    Caffeine,
    /// Additives whose mention the law may ask for.
    Additive,
    /// How long and how warm something may be kept.
    Holding,
    /// More sugar than dissolves.
    Undissolved,
    /// It does not fit the cup.
    Fill,
    /// Something is not known.
    Unknown,
}

impl CautionKind {
    /// The word in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Heat => "heat",
            Self::Allergen => "allergen",
            Self::Choking => "choking",
            Self::Curdling => "curdling",
            Self::Caffeine => "caffeine",
            Self::Additive => "additive",
            Self::Holding => "holding",
            Self::Undissolved => "undissolved",
            Self::Fill => "fill",
            Self::Unknown => "unknown",
        }
    }
}

/// A warning with its reason.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Caution {
    /// What it is about.
    pub kind: CautionKind,
    /// The sentence.
    pub text: String,
}

/// The facts that cautions are drawn from.
pub(super) struct Facts<'facts> {
    pub(super) book: &'facts Book,
    pub(super) resolved: &'facts Resolved,
    pub(super) figures: &'facts Figures,
    /// What dissolves into the drink.
    pub(super) mixed: &'facts Mix,
    pub(super) lines: &'facts [LineShare],
    pub(super) allergens: &'facts AllergenSummary,
    pub(super) vegan: Verdict,
}

/// The cautions of a drink, the gravest first.
pub(super) fn cautions(facts: &Facts<'_>) -> Vec<Caution> {
    let drawn = [
        (CautionKind::Heat, heat(facts)),
        (CautionKind::Allergen, allergens(facts)),
        (CautionKind::Allergen, additive::contradictions(facts)),
        (CautionKind::Choking, choking(facts)),
        (CautionKind::Holding, holding::holding_temperatures(facts)),
        (CautionKind::Holding, holding::holding_times(facts)),
        (CautionKind::Curdling, curdling(facts)),
        (CautionKind::Caffeine, caffeine(facts)),
        (CautionKind::Additive, additive::additives(facts)),
        (CautionKind::Undissolved, undissolved(facts)),
        (CautionKind::Fill, overfull(facts)),
        (CautionKind::Unknown, unknown(facts)),
    ];
    drawn
        .into_iter()
        .filter_map(|(kind, text)| Some(Caution { kind, text: text? }))
        .collect()
}

fn cup<'facts>(facts: &Facts<'facts>) -> Option<&'facts Vessel> {
    facts
        .resolved
        .cup
        .as_ref()
        .and_then(|id| facts.book.vessel(id))
        .map(AsRef::as_ref)
}

/// A drink that runs over burns a hand or wets a counter.
fn overfull(facts: &Facts<'_>) -> Option<String> {
    let cup = cup(facts)?;
    let fill = facts.figures.get(Measurand::Fill)?;
    let head_room = cup.usual_closure().map_or(0.0, |closure| closure.head_room);
    let room = (cup.capacity - head_room) / cup.capacity * 100.0;
    // What fills to the rim ends there, within the search for it.
    (fill > room + 0.05).then(|| {
        format!(
            "{fill:.0} % of {} where {room:.0} % is the most below its rim and closure: it runs over; take less or a larger cup",
            cup.name
        )
    })
}

/// Sucrose beyond saturation stays as grains or comes out as crystals, and every figure that takes it as dissolved is off.
///
/// Only sucrose is held against its own curve: with other sugars beside it less of it dissolves, so what is said is sure, and a
/// syrup of glucose and fructose, which holds far more sugar, is not accused. Ice that has not melted dissolves nothing.
fn undissolved(facts: &Facts<'_>) -> Option<String> {
    let celsius = facts.figures.get(Measurand::ServingTemperature)?;
    let (sucrose, water) = (Component::Sucrose, Component::Water);
    if !facts.mixed.knows(sucrose) || !facts.mixed.knows(water) {
        return None;
    }
    let ice_left = facts.figures.get(Measurand::IceLeft).unwrap_or(0.0);
    let grams = facts.mixed.get(sucrose);
    let liquid = facts.mixed.get(water) + (facts.mixed.get(Component::Ice) - ice_left).max(0.0);
    let found = grams / (grams + liquid) * 100.0;
    let most = sucrose_solubility_mass_fraction(celsius) * 100.0;
    // Within the uncertainty of the curve and of any scoop nothing is said.
    (found > most + 0.5).then(|| {
        format!(
            "{found:.0} g of sucrose in 100 g of sucrose and water, where {most:.0} g is the most that dissolves at {celsius:.0} °C \
             (Bubnik & Kadlec 1995): some of it stays as grains; take less of it or more water"
        )
    })
}

fn heat(facts: &Facts<'_>) -> Option<String> {
    let celsius = facts.figures.get(Measurand::ServingTemperature)?;
    let wide = cup(facts).is_some_and(|cup| {
        cup.serviceware
            .iter()
            .any(|ware| ware.kind == ServicewareKind::Straw { wide: true })
    });
    let seconds = scald_time(Skin::Adult, celsius).map(|time| time.seconds);
    let scald = scald_words(celsius);
    if celsius > VERY_HOT_CELSIUS {
        return Some(format!(
            "{celsius:.0} °C when handed over, above {VERY_HOT_CELSIUS:.0} °C: too hot to drink at once, and it scalds{scald}; let it \
             cool or add cold water, and follow your local code"
        ));
    }
    if wide && celsius > HOT_FOR_A_WIDE_STRAW {
        return Some(format!(
            "{celsius:.0} °C through a wide straw, above {HOT_FOR_A_WIDE_STRAW:.0} °C: gulps reach the throat hot; serve without a \
             straw or cooler, and follow your local code"
        ));
    }
    seconds.filter(|seconds| *seconds < SCALDS_WITHIN_SECONDS).map(|_| {
        format!("{celsius:.0} °C when handed over: spilt on skin it scalds{scald}; close the cup, and follow your local code")
    })
}

/// " (adult skin burns to the second degree or deeper in less than 3 s, that of small children in less than 1 s)".
fn scald_words(celsius: f64) -> String {
    let words = |time: ScaldTime| {
        let bound = match time.bound {
            ScaldBound::AtMost => "at most",
            ScaldBound::LessThan => "less than",
        };
        let decimals = usize::from(time.seconds.fract() != 0.0);
        format!("in {bound} {} s", show_number(time.seconds, decimals))
    };
    let Some(adult) = scald_time(Skin::Adult, celsius) else {
        return String::new();
    };
    let child = scald_time(Skin::SmallChild, celsius).map_or_else(|| "faster".to_owned(), words);
    format!(
        " (adult skin burns to the second degree or deeper {}, that of small children {child})",
        words(adult)
    )
}

fn allergens(facts: &Facts<'_>) -> Option<String> {
    let words = |set: &std::collections::BTreeSet<Allergen>| {
        set.iter()
            .map(|allergen| allergen.word())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let summary = facts.allergens;
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
            names(facts, summary.not_stated.iter())
        ));
    }
    if parts.is_empty() {
        return None;
    }
    let text = parts.join("; ");
    Some(format!(
        "{text}. By ingredients only: shared shakers, scoops and blenders carry traces; follow your local code"
    ))
}

fn names<'id>(
    facts: &Facts<'_>,
    ids: impl Iterator<Item = &'id crate::book::IngredientId>,
) -> String {
    let name = |id: &crate::book::IngredientId| {
        facts
            .book
            .ingredient(id)
            .map_or_else(|| id.to_string(), |ingredient| ingredient.full_name())
    };
    ids.map(name).collect::<Vec<_>>().join(", ")
}

fn choking(facts: &Facts<'_>) -> Option<String> {
    let pieces: Vec<_> = facts
        .resolved
        .lines()
        .filter(|line| line.stage == Stage::Topping && !line.amount.is_nothing())
        .filter(|line| {
            facts
                .book
                .ingredient(&line.ingredient)
                .is_some_and(|item| item.form == Form::Pieces)
        })
        .map(|line| &line.ingredient)
        .collect();
    (!pieces.is_empty()).then(|| {
        format!(
            "{}: small chewy pieces drawn through a straw can reach the lungs of young children (BfR 2012, up to 4 years); say so \
             where it is sold, and follow your local code",
            names(facts, pieces.into_iter())
        )
    })
}

fn curdling(facts: &Facts<'_>) -> Option<String> {
    let protein = facts.allergens.contains.contains(&Allergen::Milk)
        || facts.allergens.contains.contains(&Allergen::Soybeans);
    let acid = facts.figures.get(Measurand::Acidity)?;
    (protein && acid >= CURDLING_ACID).then(|| {
        format!(
            "{acid:.2} g of acid in 100 ml meets milk or soy and may curdle it: add the milk last, cold, and serve at once"
        )
    })
}

fn caffeine(facts: &Facts<'_>) -> Option<String> {
    let milligrams = facts.figures.get(Measurand::Caffeine)?;
    let at_least = if facts.figures.missing(Measurand::Caffeine) == 0 {
        ""
    } else {
        "at least "
    };
    let mut parts = Vec::new();
    if milligrams > CAFFEINE_SINGLE_DOSE_MG {
        parts.push(format!(
            "above the single dose of {CAFFEINE_SINGLE_DOSE_MG:.0} mg for adults (EFSA 2015); less for pregnant women and children"
        ));
    } else if milligrams > CAFFEINE_SLEEP_MG {
        parts.push(format!(
            "{CAFFEINE_SLEEP_MG:.0} mg may disturb sleep (EFSA 2015)"
        ));
    }
    let per_litre = facts
        .figures
        .get(Measurand::Volume)
        .map(|volume| milligrams / volume * 1000.0);
    if let Some(per_litre) = per_litre.filter(|per_litre| *per_litre > HIGH_CAFFEINE_MG_PER_LITRE) {
        parts.push(format!(
            "{per_litre:.0} mg/l, above {HIGH_CAFFEINE_MG_PER_LITRE:.0}: where its name says neither tea nor coffee, \"High caffeine \
             content\" may be due (Regulation (EU) 1169/2011, Annex III)"
        ));
    }
    (!parts.is_empty()).then(|| {
        format!(
            "{at_least}{milligrams:.0} mg of caffeine: {}",
            parts.join("; ")
        )
    })
}

fn unknown(facts: &Facts<'_>) -> Option<String> {
    let mut gaps = Vec::new();
    for measurand in [Measurand::TotalSugar, Measurand::Caffeine] {
        if facts.figures.missing(measurand) != 0 {
            gaps.push(measurand.word());
        }
    }
    if facts.vegan == Verdict::NotKnown {
        gaps.push("whether it is vegan");
    }
    let has_tea = facts.resolved.lines().any(|line| line.role == Role::Tea);
    if !has_tea {
        gaps.retain(|gap| *gap != Measurand::Caffeine.word());
    }
    (!gaps.is_empty()).then(|| {
        format!(
            "not known: {}; read the labels before you tell a guest",
            gaps.join(", ")
        )
    })
}
