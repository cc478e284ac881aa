//! Warnings that go with a drink, each with its reason. They inform; local codes and licensed practice decide.

mod additive;
mod fact;
mod facts;
mod guests;
mod holding;

pub use fact::{
    CaffeineDose, CautionFact, CautionKind, Hot, KeptAt, Mention, NamedWords, NotKnown, Since,
    UseWithin,
};
pub(super) use facts::Facts;

use crate::balance::measurand::Measurand;
use crate::balance::mix::Component;
use crate::balance::published::serving::{Skin, VERY_HOT_CELSIUS, scald_time};
use crate::balance::published::sugar_solution::sucrose_solubility_mass_fraction;
use crate::balance::statement::{StatementFinding, statement_findings_of};
use crate::book::{ServicewareKind, Vessel};

/// Drinks that are drawn through a wide straw reach the throat in gulps, so the line is drawn lower, °C (assumed).
pub const HOT_FOR_A_WIDE_STRAW: f64 = 60.0;

/// A drink that burns adult skin in less than this scalds before one can help it, s (assumed).
const SCALDS_WITHIN_SECONDS: f64 = 30.0;

/// A warning with its reason.
#[derive(Clone, Debug, PartialEq)]
pub struct Caution {
    /// What it says.
    pub fact: CautionFact,
}

impl Caution {
    /// What it is about.
    pub fn kind(&self) -> CautionKind {
        self.fact.kind()
    }
}

/// The cautions of a drink, the gravest first.
pub(super) fn cautions(facts: &Facts<'_>) -> Vec<Caution> {
    let statements: Vec<StatementFinding> = statement_findings_of(facts.book, facts.resolved);
    let drawn = [
        heat(facts),
        guests::allergens(facts),
        additive::contradictions(&statements),
        guests::claims_contradicted(facts, &statements),
        guests::choking(facts),
        holding::holding_temperatures(facts),
        holding::holding_times(facts),
        guests::curdling(facts),
        guests::caffeine(facts),
        guests::caffeine_not_known(facts),
        additive::additives(&statements),
        undissolved(facts),
        overfull(facts),
        guests::unknown(facts),
    ];
    drawn
        .into_iter()
        .flatten()
        .map(|fact| Caution { fact })
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
fn overfull(facts: &Facts<'_>) -> Option<CautionFact> {
    let cup = cup(facts)?;
    let fill = facts.figures.get(Measurand::Fill)?;
    let head_room = cup.usual_closure().map_or(0.0, |closure| closure.head_room);
    let most = (cup.capacity - head_room) / cup.capacity * 100.0;
    // What fills to the rim ends there, within the search for it.
    (fill > most + 0.05).then(|| CautionFact::RunsOver {
        cup: cup.id.clone(),
        fill,
        most,
    })
}

/// Sucrose beyond saturation stays as grains or comes out as crystals, and every figure that takes it as dissolved is off.
///
/// Only sucrose is held against its own curve: with other sugars beside it less of it dissolves, so what is said is sure, and a
/// syrup of glucose and fructose, which holds far more sugar, is not accused. Ice that has not melted dissolves nothing.
fn undissolved(facts: &Facts<'_>) -> Option<CautionFact> {
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
    (found > most + 0.5).then_some(CautionFact::Undissolved {
        found,
        most,
        celsius,
    })
}

fn heat(facts: &Facts<'_>) -> Option<CautionFact> {
    let celsius = facts.figures.get(Measurand::ServingTemperature)?;
    let wide = cup(facts).is_some_and(|cup| {
        cup.serviceware
            .iter()
            .any(|ware| ware.kind == ServicewareKind::Straw { wide: true })
    });
    let hot = Hot {
        celsius,
        adult: scald_time(Skin::Adult, celsius),
        child: scald_time(Skin::SmallChild, celsius),
    };
    if celsius > VERY_HOT_CELSIUS {
        return Some(CautionFact::TooHot(hot));
    }
    if wide && celsius > HOT_FOR_A_WIDE_STRAW {
        return Some(CautionFact::HotThroughWideStraw(hot));
    }
    hot.adult
        .filter(|time| time.seconds < SCALDS_WITHIN_SECONDS)
        .map(|_| CautionFact::Scalds(hot))
}
