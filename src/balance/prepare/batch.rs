//! One gram of what the house makes: the sum of its batch, through any number of batches.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use super::larder::Taken;
use super::pack::gram_at_its_price;
use super::per_gram::{PerGram, Sensitivity};
use super::preparation::Preparation;
use super::setup;
use super::unit::steeped;
use crate::balance::assumption::Assumption;
use crate::balance::cause::Cause;
use crate::balance::mix::{COMPONENTS, Component, Mix};
use crate::balance::slots::Slots;
use crate::balance::solve::figures::{Off, solved_sums};
use crate::balance::solve::prepared::{Fill, LineSensitivity, Prepared, Scaling};
use crate::book::{
    Figure, Finding, FindingKind, HouseMade, Ingredient, IngredientId, Place, Recipe, Resolved,
    Stage, YieldLimit, resolve,
};
use crate::quantity::Uncertain;

/// Rounding that a yield may be above what went in, as a part of it.
const YIELD_SLACK: f64 = 1e-9;

/// So many batches in each other are worked out from the outside; what is deeper is worked out first.
pub(super) const IN_EACH_OTHER: usize = 24;

/// So deep are only circles in circles, in which nothing is known.
const DEEPEST: usize = 48;

impl Preparation<'_> {
    /// One gram of an ingredient, made by its recipe when the house makes it and its label says nothing.
    pub(super) fn one_gram(&mut self, item: &Ingredient, slots: &mut Slots) -> Rc<PerGram> {
        self.take(item, slots).gram
    }

    /// The same, with what is kept of it.
    pub(super) fn take(&mut self, item: &Ingredient, slots: &mut Slots) -> Taken {
        let labelled = self.labelled(item, slots);
        let Some(made) = &item.house_made else {
            return labelled;
        };
        if self.making.len() >= IN_EACH_OTHER {
            self.make_parts_first(item, slots);
        }
        if let Some(known) = self.made.get(&item.id) {
            return known.clone();
        }
        if let Some(kept) = self.kept(item, slots) {
            return kept;
        }
        let mut from_label = labelled.gram.as_ref().clone();
        let Some(mut from_recipe) = self.one_gram_made(item, made, slots) else {
            // A circle, or a recipe that is gone: what nobody states is not known, whatever its kind.
            if item.composition.printed.is_empty() {
                from_label.mix.unknown |= Mix::UNKNOWN.unknown & !Component::Mass.bit();
                from_label.assumptions.clear();
            }
            return Taken::afresh(from_label);
        };
        let kept = made.usable_part().max(0.01);
        let cost = from_recipe.mix.get(Component::Cost) / kept;
        let cost_known = from_recipe.mix.knows(Component::Cost);
        if item.composition.printed.is_empty() {
            for slot in Component::ALL.len()..COMPONENTS {
                from_recipe.mix.of[slot] += from_label.mix.of[slot];
            }
            let air = from_label.mix.get(Component::Air);
            from_recipe.mix.set(Component::Air, air);
            let counts = |cause: &Cause| {
                is_flavour(cause) || (air > 0.0 && matches!(cause, Cause::Density(_)))
            };
            from_recipe.sensitivities.extend(
                from_label
                    .sensitivities
                    .into_iter()
                    .filter(|sensitivity| counts(&sensitivity.cause)),
            );
            if !item.statement.trim().is_empty() {
                let hidden = Component::HiddenSweetener.bit();
                from_recipe.mix.unknown |= from_label.mix.unknown & hidden;
            }
            from_label = from_recipe;
        }
        from_label.mix.set(Component::Cost, cost);
        if cost_known {
            from_label.mix.unknown &= !Component::Cost.bit();
        } else {
            from_label.mix.mark_unknown(Component::Cost);
        }
        let taken = Taken::afresh(from_label);
        if !self.making.contains(&item.id) {
            self.made.insert(item.id.clone(), taken.clone());
        }
        taken
    }

    /// One gram of an ingredient as its label states it, with what it costs.
    fn labelled(&self, item: &Ingredient, slots: &mut Slots) -> Taken {
        let stock = self.remembers.then(|| self.larder().stock(self.book, item));
        let taken = stock.flatten().and_then(|stock| Taken::of(&stock, slots));
        taken.unwrap_or_else(|| Taken::afresh(gram_at_its_price(self.book, item, slots)))
    }

    /// Works out what an ingredient is made of, from the innermost batch outwards: in a deep kitchen the stack would not hold
    /// batches in batches. What is in a circle is left.
    fn make_parts_first(&mut self, item: &Ingredient, slots: &mut Slots) {
        let book = self.book;
        let parts_of = |item: &Ingredient| -> Vec<IngredientId> {
            let made = item.house_made.as_ref();
            let recipe = made.and_then(|made| book.recipe(&made.recipe));
            let lines = recipe.into_iter().flat_map(|recipe| &recipe.entries);
            let lines = lines.filter_map(|entry| entry.line());
            lines.map(|line| line.ingredient.clone()).collect()
        };
        let mut seen: BTreeSet<IngredientId> = self.making.iter().cloned().collect();
        seen.insert(item.id.clone());
        let mut open = vec![(item.id.clone(), parts_of(item))];
        while let Some((_, parts)) = open.last_mut() {
            if let Some(id) = parts.pop() {
                let part = book
                    .ingredient(&id)
                    .filter(|part| part.house_made.is_some());
                if let Some(part) = part
                    && !self.made.contains_key(&id)
                    && seen.insert(id.clone())
                {
                    open.push((id, parts_of(part)));
                }
            } else if let Some((id, _)) = open.pop()
                && let Some(part) = book.ingredient(&id).filter(|part| part.id != item.id)
            {
                self.one_gram(part, slots);
            }
        }
    }

    /// One gram of what a batch yields. `None` in a circle or without the recipe.
    ///
    /// Water makes up the difference between what went in and the yield: it was soaked up, boiled off or poured away. Where
    /// something was steeped and taken out, the difference is liquor that it took along.
    fn one_gram_made(
        &mut self,
        item: &Ingredient,
        made: &HouseMade,
        slots: &mut Slots,
    ) -> Option<PerGram> {
        let recipe = self.book.recipe(&made.recipe)?.clone();
        let grams = made.yield_grams.value;
        let is_out_of_reach = self.making.contains(&item.id) || self.making.len() >= DEEPEST;
        if is_out_of_reach || grams.is_nan() || grams <= 0.0 {
            return None;
        }
        self.making.push(item.id.clone());
        let batch = self.batch(item, made, &recipe, slots);
        self.making.pop();
        Some(self.divide(item, made, batch))
    }

    /// What goes into a batch.
    fn batch(
        &mut self,
        item: &Ingredient,
        made: &HouseMade,
        recipe: &Recipe,
        slots: &mut Slots,
    ) -> Batch {
        let resolved = Resolved {
            cup: None,
            shaker: None,
            ..resolve(recipe, None).0
        };
        let own_place = Place::Recipe(recipe.id.clone(), "lines");
        let outer_place = std::mem::replace(&mut self.place, own_place);
        let setup = setup::setup(self.book, &resolved);
        let mut prepared = self.lines(&resolved, &setup, slots);
        self.place = outer_place;
        self.steep(made, &mut prepared, slots);
        let has_steeped = prepared
            .lines
            .iter()
            .any(|line| line.stage == Stage::Steeped);
        let whole = |off: Option<Off<'_>>| {
            let (sums, is_filled) =
                solved_sums(&prepared, &prepared.setup, &|line, _| line.count, off);
            (sums.whole(), is_filled)
        };
        let (mut sum, is_filled) = whole(None);
        if !is_filled {
            sum.unknown = Mix::UNKNOWN.unknown;
        }
        let mut effects = BTreeMap::new();
        for (index, cause) in prepared.causes.iter().enumerate() {
            let cause = cause_in_a_batch(cause, &item.id);
            let mut change = if prepared.lines.iter().any(|line| line.fill.is_some()) {
                let (mut off, _) = whole(Some(Off::One(index, 1.0)));
                off.add_times(&sum, -1.0);
                off
            } else {
                linear_effect(&prepared, index)
            };
            change.unknown = 0;
            effects
                .entry(cause)
                .or_insert(Mix::EMPTY)
                .add_times(&change, 1.0);
        }
        let mut assumptions: Vec<(IngredientId, Assumption)> = Vec::new();
        for assumed in prepared.assumptions {
            let entry = (assumed.whose, assumed.assumption);
            if !assumptions.contains(&entry) {
                assumptions.push(entry);
            }
        }
        Batch {
            sum,
            effects,
            assumptions,
            has_steeped,
        }
    }

    /// Gives what is steeped the shop's own extraction, and leaves the water to the yield.
    fn steep(&mut self, made: &HouseMade, prepared: &mut Prepared, slots: &mut Slots) {
        let extraction = made.extraction.map(|figure: Figure| Uncertain {
            value: figure.value,
            u: figure.standard_uncertainty(),
        });
        for at in 0..prepared.lines.len() {
            let line = &prepared.lines[at];
            if line.stage != Stage::Steeped || line.fill.is_some() {
                continue;
            }
            let Some(item) = self.book.ingredient(&line.ingredient).cloned() else {
                continue;
            };
            let leaf = self.one_gram(&item, slots);
            let mut extract = steeped(&item, &leaf, extraction);
            // What the wet leaf keeps back shows in the yield.
            let keep = |mix: &mut Mix| {
                let water = mix.get(Component::Water);
                mix.set(Component::Mass, mix.get(Component::Mass) - water);
                mix.set(Component::Water, 0.0);
            };
            keep(&mut extract.mix);
            let grams = prepared.lines[at].grams_per_unit;
            let per_unit = extract.mix.times(grams);
            let mut sensitivities = of_amount(prepared, at, &per_unit);
            prepared.lines[at].per_unit = per_unit;
            for mut sensitivity in extract.sensitivities {
                keep(&mut sensitivity.change);
                let cause = prepared.cause(sensitivity.cause);
                sensitivities.push(LineSensitivity {
                    cause,
                    change: sensitivity.change.times(grams),
                    scaling: Scaling::PerUnit,
                });
            }
            prepared.lines[at].sensitivities = sensitivities;
        }
    }

    fn divide(&mut self, item: &Ingredient, made: &HouseMade, batch: Batch) -> PerGram {
        let Batch {
            mut sum,
            effects,
            assumptions,
            has_steeped,
        } = batch;
        let grams = made.yield_grams.value;
        sum = sum.melted();
        sum.set(Component::Heat, 0.0);
        let went_in = sum.get(Component::Mass);
        let (divisor, water) = if has_steeped {
            (went_in.max(1e-9), 0.0)
        } else {
            (grams, grams - went_in)
        };
        let too_little_water = sum.get(Component::Water) + water < 0.0;
        let too_much = has_steeped && grams > went_in * (1.0 + YIELD_SLACK);
        if sum.knows(Component::Mass) && (too_little_water || too_much) {
            self.findings.push(Finding::error(
                Place::Ingredient(item.id.clone(), "house_made"),
                FindingKind::ImpossibleYield {
                    grams,
                    limit: if too_much {
                        YieldLimit::WhatGoesIn
                    } else {
                        YieldLimit::Solids
                    },
                },
            ));
            sum.unknown |= Mix::UNKNOWN.unknown;
        }
        sum.set(
            Component::Water,
            (sum.get(Component::Water) + water).max(0.0),
        );
        sum.set(Component::Mass, divisor);
        let cost = sum.get(Component::Cost);
        let mut mix = sum.times(1.0 / divisor);
        // The whole batch is paid for, and the yield is what there is of it.
        mix.set(Component::Cost, cost / grams);
        let mut sensitivities: Vec<Sensitivity> = effects
            .into_iter()
            .map(|(cause, change)| {
                // A gram stays a gram: what comes in more is made up by water, as the yield is.
                let mut change = change.times(1.0 / divisor);
                let mass = change.get(Component::Mass);
                let ice = change.get(Component::Ice);
                if has_steeped {
                    let mut whole = mix;
                    whole.unknown = 0;
                    change.add_times(&whole, -mass);
                } else {
                    let water = change.get(Component::Water) + ice - mass;
                    change.set(Component::Water, water);
                }
                change.set(Component::Ice, 0.0);
                change.set(Component::Mass, 0.0);
                change.set(Component::Heat, 0.0);
                Sensitivity { cause, change }
            })
            .collect();
        let relative = made.yield_grams.standard_uncertainty() / grams;
        let mut change = mix.times(-relative);
        change.unknown = 0;
        change.set(Component::Mass, 0.0);
        change.set(Component::Water, mix.dry_matter() * relative);
        if has_steeped {
            let cost = change.get(Component::Cost);
            change = Mix::EMPTY;
            change.set(Component::Cost, cost);
        }
        sensitivities.push(Sensitivity {
            cause: Cause::Yield(item.id.clone()),
            change,
        });
        PerGram {
            mix,
            sensitivities,
            assumptions,
        }
    }
}

/// What is uncertain in how much leaf a line takes, for what a unit of it gives now: a brew is no surer than its spoon.
fn of_amount(prepared: &Prepared, at: usize, per_unit: &Mix) -> Vec<LineSensitivity> {
    let line = &prepared.lines[at];
    let before = line.per_unit.get(Component::Mass);
    let sensitivities = line.sensitivities.iter();
    let of_amount = sensitivities.filter(|sensitivity| {
        prepared.causes[sensitivity.cause].is_of_amount() && before.is_normal()
    });
    of_amount
        .map(|sensitivity| LineSensitivity {
            change: Mix {
                unknown: 0,
                ..per_unit.times(sensitivity.change.get(Component::Mass) / before)
            },
            ..*sensitivity
        })
        .collect()
}

/// The sum of a batch, and what every cause does to it.
struct Batch {
    sum: Mix,
    effects: BTreeMap<Cause, Mix>,
    assumptions: Vec<(IngredientId, Assumption)>,
    has_steeped: bool,
}

fn is_flavour(cause: &Cause) -> bool {
    matches!(cause, Cause::Flavour(..) | Cause::HighPotency(..))
}

/// What a cause does to the sum of the lines, when none of them fills.
fn linear_effect(prepared: &Prepared, cause: usize) -> Mix {
    let mut effect = Mix::EMPTY;
    for line in &prepared.lines {
        debug_assert!(!matches!(line.fill, Some(Fill::Rim | Fill::Volume(_))));
        for sensitivity in line
            .sensitivities
            .iter()
            .filter(|sensitivity| sensitivity.cause == cause)
        {
            effect.add_times(&sensitivity.change, sensitivity.scaling.of(line.count));
        }
    }
    effect
}

/// A batch is made once for many drinks: what scatters in one of its lines is the same in all that is made of it.
fn cause_in_a_batch(cause: &Cause, batch: &IngredientId) -> Cause {
    match cause {
        Cause::UseScatter(line) | Cause::Reading(line) | Cause::LineTemperature(line) => {
            Cause::Batch(batch.clone(), line.clone())
        }
        other => other.clone(),
    }
}
