//! All tastings of a book, weighed together.

use std::collections::BTreeMap;

use super::super::blind_test::blind_answers;
use super::super::evidence::{
    ComparedCups, CupIntensity, Foretold, TastingResult, evidence, foretold_in_turn,
};
use super::cups::{CupTaste, stated_uncertainty, taste};
use crate::book::{
    Axis, Book, DoubtClass, IngredientId, TastedFactor, Tasting, TastingId, TastingOutcome,
};

/// How much may still pass for cups that were matched, in noticeable steps (assumed).
const MATCHED_WITHIN: f64 = 0.5;

/// The same for cups that passed as equal: nobody was asked to look for the last bit (assumed).
const PASSED_WITHIN: f64 = 1.0;

/// A factor: what of which ingredient.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Factor {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// What of it.
    pub what: TastedFactor,
}

/// What the tastings say of an ingredient.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// Of what.
    pub factor: Factor,
    /// Relative standard uncertainty of what is stated or assumed of it; 0 for the one that the others of its flavour are measured
    /// by.
    pub before: f64,
    /// How many times what is stated.
    pub times: f64,
    /// Standard uncertainty of `times`.
    pub u: f64,
    /// What was taken over before: `times` and its uncertainty.
    pub taken: Option<(f64, f64)>,
    /// The tastings in which it was.
    pub tastings: Vec<TastingId>,
}

/// Why a tasting that counts says nothing of a figure.
#[derive(Clone, Debug, PartialEq)]
pub enum SetAside {
    /// Nothing was counted.
    NothingCounted,
    /// Its entry is not finished: other than two cups, nobody who tasted, or more right answers than people.
    Unfinished,
    /// It does not say on what axis the cups were held against each other.
    NoAxis,
    /// No figure of an ingredient is corrected by tastings on this axis.
    OtherAxis(Axis),
    /// The taste of a cup on that axis is not known.
    NotKnown(Axis),
    /// What was tasted is another product now.
    Changed(Vec<IngredientId>),
    /// The cups differ in nothing that a tasting could correct.
    NothingDiffers,
}

/// A tasting that counts.
#[derive(Clone, Debug, PartialEq)]
pub struct WeighedTasting {
    /// Which one.
    pub tasting: TastingId,
    /// How likely a result at least as strange was by everything else that is known, 0 to 1; or why it says nothing.
    pub likely: Result<f64, SetAside>,
    /// Whether it contradicts everything else.
    pub contradicts: bool,
}

/// What all tastings of a book say together.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Learned {
    /// By ingredient, in the order of the book; a flavour's reference is among them, unmoved.
    pub proposals: Vec<Proposal>,
    /// The tastings that count, in the order of the book.
    pub tastings: Vec<WeighedTasting>,
    /// Whether the weighing came to rest. Where it did not, the figures are no good.
    pub settled: bool,
}

impl Learned {
    /// What is said of a figure.
    pub fn proposal(&self, ingredient: &IngredientId, what: &TastedFactor) -> Option<&Proposal> {
        let mut proposals = self.proposals.iter();
        proposals.find(|one| one.factor.ingredient == *ingredient && one.factor.what == *what)
    }
}

impl Proposal {
    /// Whether the others of its flavour are measured by it, so that it can't be corrected itself.
    pub fn is_reference(&self) -> bool {
        self.before == 0.0
    }

    /// Whether taking it over would change anything that is shown: another figure than the one that was taken over before.
    pub fn is_news(&self) -> bool {
        let (times, u) = self.taken.unwrap_or((1.0, self.before));
        let is_same = |one: f64, other: f64| (one - other).abs() < 5e-4;
        let is_as_taken = is_same(times, self.times) && is_same(u, self.u);
        !self.is_reference() && !is_as_taken
    }
}

/// Two cups that can be weighed.
struct Held {
    what: TastedFactor,
    first: CupTaste,
    second: CupTaste,
    result: TastingResult,
}

/// Weighs all tastings that count.
pub fn learned(book: &Book) -> Learned {
    let counting = book.tastings.iter().filter(|tasting| tasting.counts);
    let held: Vec<(&Tasting, Result<Held, SetAside>)> = counting
        .map(|tasting| (tasting.as_ref(), hold(book, tasting)))
        .collect();
    let factors = factors(book, &held);
    let place_of: BTreeMap<&Factor, usize> =
        (0..).zip(&factors).map(|(at, one)| (&one.0, at)).collect();
    let priors: Vec<f64> = factors.iter().map(|(_, before)| *before).collect();
    let mut compared = Vec::new();
    let mut weighed_at = Vec::new();
    for (_, held) in &held {
        let place = held.as_ref().ok().map(|held| {
            compared.push(held.compared(&place_of));
            compared.len() - 1
        });
        weighed_at.push(place);
    }
    let found = evidence(&priors, &compared);
    let contradictions: Vec<usize> = found.contradictions().collect();
    let tastings = held.iter().zip(weighed_at).map(|((tasting, held), at)| {
        let likely = match (held, at) {
            (Err(reason), _) => Err(reason.clone()),
            (Ok(_), at) => Ok(at.map_or(1.0, |at| found.likely[at])),
        };
        WeighedTasting {
            tasting: tasting.id.clone(),
            likely,
            contradicts: at.is_some_and(|at| contradictions.contains(&at)),
        }
    });
    let proposals = factors
        .iter()
        .zip(&found.factors)
        .map(|((factor, before), estimate)| {
            let times = estimate.log.exp();
            let item = book.ingredient(&factor.ingredient);
            let taken = item.and_then(|item| item.tasted_figure(&factor.what));
            let of_it = held
                .iter()
                .filter(|(_, held)| held.as_ref().is_ok_and(|held| held.has(factor)));
            Proposal {
                factor: factor.clone(),
                before: *before,
                times,
                u: times * estimate.u,
                taken: taken.map(|taken| (taken.times, taken.u)),
                tastings: of_it.map(|(tasting, _)| tasting.id.clone()).collect(),
            }
        });
    Learned {
        proposals: proposals.collect(),
        tastings: tastings.collect(),
        settled: found.settled,
    }
}

/// A tasting beside what had been foretold of it.
#[derive(Clone, Debug, PartialEq)]
pub struct ForetoldTasting {
    /// Which one.
    pub tasting: TastingId,
    /// Whose doubts it tells of.
    pub class: DoubtClass,
    /// What was foretold when the doubts of packs and assumptions are multiplied with each of some factors, in their order.
    pub foretold: Vec<Foretold>,
}

/// What the packs and the tastings of the days before foretold of each tasting that counts, in the order of their days. The doubts of
/// packs and assumptions are multiplied with each of `times` instead of what the book multiplies them with.
pub fn foretold_tastings(book: &Book, times: &[f64]) -> Vec<ForetoldTasting> {
    let mut unscaled = book.clone();
    unscaled.settings.doubts.clear();
    let counting = unscaled.tastings.iter().filter(|tasting| tasting.counts);
    let mut held: Vec<(&Tasting, Result<Held, SetAside>)> = counting
        .map(|tasting| (tasting.as_ref(), hold(&unscaled, tasting)))
        .filter(|(_, held)| held.is_ok())
        .collect();
    held.sort_by(|(one, _), (other, _)| one.date.cmp(&other.date));
    let factors = factors(&unscaled, &held);
    let place_of: BTreeMap<&Factor, usize> =
        (0..).zip(&factors).map(|(at, one)| (&one.0, at)).collect();
    let compared: Vec<ComparedCups> = held
        .iter()
        .filter_map(|(_, held)| Some(held.as_ref().ok()?.compared(&place_of)))
        .collect();
    let by_times: Vec<Vec<Option<Foretold>>> = times
        .iter()
        .map(|times| {
            let priors: Vec<f64> = factors.iter().map(|(_, before)| before * times).collect();
            foretold_in_turn(&priors, &compared)
        })
        .collect();
    let each = held.iter().enumerate().filter_map(|(at, (tasting, held))| {
        let of_it = by_times.iter().map(|foretold| foretold[at]);
        Some(ForetoldTasting {
            tasting: tasting.id.clone(),
            class: held.as_ref().ok()?.what.doubts(),
            foretold: of_it.collect::<Option<Vec<_>>>()?,
        })
    });
    each.collect()
}

/// The factors that the tastings can tell, each with its uncertainty before them, in the order of the book. The first ingredient of
/// a flavour is what the others are measured by: a house unit has no other meaning.
fn factors(book: &Book, held: &[(&Tasting, Result<Held, SetAside>)]) -> Vec<(Factor, f64)> {
    let mut factors = Vec::new();
    let mut flavours = Vec::new();
    for item in &book.ingredients {
        let mut whats: Vec<&TastedFactor> = held
            .iter()
            .filter_map(|(_, held)| held.as_ref().ok())
            .filter(|held| held.brings(&item.id))
            .map(|held| &held.what)
            .collect();
        whats.sort_unstable();
        whats.dedup();
        for what in whats {
            let Some(stated) = stated_uncertainty(item, what) else {
                continue;
            };
            let is_first = matches!(what, TastedFactor::Flavour(_)) && !flavours.contains(&what);
            if is_first {
                flavours.push(what);
            }
            let factor = Factor {
                ingredient: item.id.clone(),
                what: what.clone(),
            };
            let before = stated * book.settings.doubt_times(what.doubts());
            factors.push((factor, if is_first { 0.0 } else { before }));
        }
    }
    factors
}

/// What of a tasting can be weighed, or why nothing can.
fn hold(book: &Book, tasting: &Tasting) -> Result<Held, SetAside> {
    let result = result(tasting)?;
    let [first, second] = tasting.cups.as_slice() else {
        return Err(SetAside::Unfinished);
    };
    let axis = tasting.axis.as_ref().ok_or(SetAside::NoAxis)?;
    let what = TastedFactor::of_axis(axis).ok_or_else(|| SetAside::OtherAxis(axis.clone()))?;
    let taste = |cup| {
        taste(book, &tasting.id, cup, axis, &what).ok_or_else(|| SetAside::NotKnown(axis.clone()))
    };
    let (mut first, mut second) = (taste(first)?, taste(second)?);
    let mut changed = Vec::new();
    for cup in [&mut first, &mut second] {
        let is_changed = |(id, _): &(IngredientId, f64)| cup.changed.contains(id);
        changed.extend(
            cup.parts
                .iter()
                .filter(|part| is_changed(part))
                .map(|(id, _)| id.clone()),
        );
        let changed_in_cup = std::mem::take(&mut cup.changed);
        cup.parts.retain(|(id, _)| !changed_in_cup.contains(id));
    }
    let held = Held {
        what,
        first,
        second,
        result,
    };
    match (held.differs(), changed.is_empty()) {
        // A product that was tasted and is another one now is as unknown as any: what was found may be due to it.
        (_, false) => {
            changed.sort_unstable();
            changed.dedup();
            Err(SetAside::Changed(changed))
        }
        (false, true) => Err(SetAside::NothingDiffers),
        (true, true) => Ok(held),
    }
}

fn result(tasting: &Tasting) -> Result<TastingResult, SetAside> {
    let outcome = tasting.outcome;
    let people = outcome.people().ok_or(SetAside::NothingCounted)?;
    if people == 0 {
        return Err(SetAside::Unfinished);
    }
    let alike = |within_steps| TastingResult::Alike {
        people,
        within_steps,
    };
    Ok(match outcome {
        TastingOutcome::Matched { .. } => alike(MATCHED_WITHIN),
        TastingOutcome::PassedAsEqual { .. } => alike(PASSED_WITHIN),
        TastingOutcome::About { times, .. } if times > 0.0 && times.is_finite() => {
            TastingResult::About { people, times }
        }
        _ => {
            let (test, people, right) = blind_answers(outcome).ok_or(SetAside::Unfinished)?;
            TastingResult::Blind {
                test,
                people,
                right,
            }
        }
    })
}

impl Held {
    fn brings(&self, id: &IngredientId) -> bool {
        let mut parts = self.first.parts.iter().chain(&self.second.parts);
        parts.any(|(known, _)| known == id)
    }

    fn has(&self, factor: &Factor) -> bool {
        self.what == factor.what && self.brings(&factor.ingredient)
    }

    /// Whether another factor could make the two cups differ otherwise: parts of the whole that are not the same in both.
    fn differs(&self) -> bool {
        let part = |cup: &CupTaste, id: &IngredientId| {
            let mut parts = cup.parts.iter();
            let found = parts.find(|(known, _)| known == id);
            found.map_or(0.0, |(_, brings)| brings / cup.value)
        };
        let mut parts = self.first.parts.iter().chain(&self.second.parts);
        parts.any(|(id, _)| (part(&self.first, id) - part(&self.second, id)).abs() > 1e-6)
    }

    fn compared(&self, place_of: &BTreeMap<&Factor, usize>) -> ComparedCups {
        let intensity = |cup: &CupTaste| {
            let parts = cup.parts.iter().filter_map(|(id, brings)| {
                let factor = Factor {
                    ingredient: id.clone(),
                    what: self.what.clone(),
                };
                Some((*place_of.get(&factor)?, *brings))
            });
            let parts: Vec<(usize, f64)> = parts.collect();
            let told: f64 = parts.iter().map(|(_, brings)| brings).sum();
            CupIntensity {
                rest: (cup.value - told).max(0.0),
                parts,
            }
        };
        ComparedCups {
            first: intensity(&self.first),
            second: intensity(&self.second),
            step: self.first.step / self.first.value,
            result: self.result,
        }
    }
}
