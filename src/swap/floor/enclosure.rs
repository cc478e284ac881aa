//! How far the volume, the heat and the amount that fills can be from a linear form, anywhere in a box.
//!
//! Masses are linear in the counts; volume and melted ice are not quite. Each is enclosed: `value ∈ form + interval`.
//!
//! **Volume.** The solution of `W` g of water and `S` g of sugar has the volume `(W + S)·g(w)` with `g = 1/ρ` and
//! `w = S/(W + S)`. With the tangent of `g` at a reference `w*` this is linear in `W` and `S`, and the remainder is
//! `½(W + S)·g″(ξ)·(w − w*)²` (Taylor). `g` is convex and `g″` rises with `w` (tested below over the whole range of the
//! published relation), so the remainder lies between 0 and that with the greatest `g″` in the box. It vanishes near the
//! standard's own sugar.
//!
//! **Melted ice and the shaker.** See [`super::heat`]. What has melted is never more than there was: `melted = min(ice, m)`,
//! enclosed by the same form with a wider interval, or by the ice itself where the whole box melts.
//!
//! **Amount that fills.** The level is the volume of the solution times its thermal expansion between 20 °C and the serving
//! temperature, that of the foods at the serving temperature, and the ice that is left. With the expansion at the reference it is
//! a form, so the amount that fills is a form of the other counts, with an interval for everything above.

use crate::balance::published::freezing::LOWEST_FREEZING_POINT_CELSIUS;
use crate::balance::published::sugar_solution;
use crate::balance::{Component, Fill, Prepared};
use crate::optimiser::Range;

use super::drink::{Lines, Over, sugar};
use super::expansion::{self, Expansion};
use super::form::{Bounds, Form, Interval, PLACES};
use super::heat::{Melting, Shaking, excess};

/// Volume that a gram of ice displaces, ml: 1.0885 at the lowest freezing point, 1.0909 at 0 °C.
const ICE_ML_PER_G: f64 = 1.0897;

/// Half the width of [`ICE_ML_PER_G`].
const ICE_HALF_WIDTH: f64 = 0.0013;

/// The amount that fills.
#[derive(Clone, Debug)]
struct Filling {
    target: f64,
    /// No amount is ever greater.
    most: f64,
    /// Level at least and at most, ml, whatever melts and however warm it is.
    least: Form,
    most_level: Form,
    /// The ice as it lies, ml, when it may reach the rim first.
    bed: Option<Form>,
    /// Volume of what sits in the drink and floats on it, ml, and how far it can be from that form.
    tops: Form,
    tops_off: Form,
    expansion_of_tops: Expansion,
    /// Volume of all that is no solution at 20 °C, ml.
    foods: Form,
    melted: FillForm,
    partly: FillForm,
}

/// `amount = form(other counts) + interval`.
#[derive(Clone, Debug)]
struct FillForm {
    form: Form,
    /// Millilitres of level a unit.
    per_unit: f64,
    /// Volume of the solution at 20 °C, ml.
    solution: Form,
    /// Its expansion at the reference temperature.
    expansion: f64,
    /// The reference temperature, °C.
    celsius: f64,
}

/// Everything that encloses the drink; made once for a question.
#[derive(Clone, Debug)]
pub(super) struct Enclosure {
    dimensions: usize,
    ice: Form,
    water: Form,
    sugar: Form,
    slack: Form,
    /// Volume at 20 °C with all ice melted, and with some left, ml.
    pub(super) volume_melted: Form,
    pub(super) volume_partly: Form,
    volume_per_gram_of_water: f64,
    sugar_fraction: f64,
    melting: Option<Melting>,
    filling: Option<Filling>,
    shaking: Option<Shaking>,
    /// `H − E − C·τ` of the served drink with all ice melted, kJ, at the reference temperature.
    pub(super) excess: Form,
    pub(super) reference_celsius: f64,
    pub(super) capacity_most: Form,
    capacity_least: Form,
    cup_celsius: f64,
}

/// A box with what encloses the drink in it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Enclosed {
    /// Whether all ice melts everywhere in the box; else the forms with ice left hold.
    pub(super) all_melts: bool,
    /// The box, with the range of the amount that fills.
    pub(super) bounds: Bounds,
    /// Volume at 20 °C against its form, ml.
    pub(super) volume: Interval,
    /// Heat against its form, kJ.
    pub(super) heat: Interval,
    /// The amount that fills against its form, in its unit.
    pub(super) fill: Interval,
    /// The part of that which has nothing to do with melted ice.
    volume_apart: Interval,
    /// Melted ice against its form, g.
    melted: Interval,
    /// Freezing points, °C, where there is ice or some may form, and whether ice is left everywhere in the box.
    pub(super) freezing: Option<Interval>,
    pub(super) all_icy: bool,
    /// Mass fractions of sugar in the solution.
    sugar_fractions: Interval,
}

/// Greatest second derivative of `1/ρ` by the mass fraction of sugar at 20 °C, ml/g, for fractions up to this one.
fn curvature_up_to(sugar_fraction: f64) -> f64 {
    match sugar_fraction {
        fraction if fraction <= 0.10 => 0.034,
        fraction if fraction <= 0.20 => 0.041,
        fraction if fraction <= 0.50 => 0.076,
        _ => 0.200,
    }
}

fn specific_volume(sugar_fraction: f64) -> f64 {
    1000.0 / sugar_solution::density_kg_per_m3(sugar_fraction, 20.0)
}

impl Enclosure {
    /// `None` where the argument at the head of this file does not hold: a mass below zero, a drink that is strained over
    /// toppings or into a frozen cup, ice that fills to a mark, or something that fills and hardly takes room.
    pub(super) fn new(
        prepared: &Prepared,
        lines: &Lines,
        ranges: &[Range],
        reference: &[f64],
        reference_celsius: f64,
    ) -> Option<Self> {
        let setup = &prepared.setup;
        let dimensions = lines.dimensions;
        let filling = prepared.lines.iter().find(|line| line.fill.is_some());
        let mixed = |component| lines.component(Over::Mixed, component);
        let (water, ice) = (mixed(Component::Water), mixed(Component::Ice));
        let sugars = lines.form(Over::Mixed, sugar);
        let foods = lines.volume_of_foods(Over::Mixed, 20.0);
        if ![&water, &ice, &sugars]
            .into_iter()
            .all(Form::is_nonnegative)
        {
            return None;
        }
        let most = filling.map_or(0.0, |line| {
            target_of(line.fill, prepared).max(1.0) / line.grams_per_unit.max(1e-9) * 1.3
        });
        let root = root_bounds(ranges, Interval::new(0.0, most));
        let reference = &with_fill(reference, prepared, lines);
        let shaker_wall = setup.shaker.unwrap_or_default();
        let excess = |celsius: f64| excess(lines, Over::InCup, setup.cup, celsius);
        let mut capacity_most = lines.heat_capacity(Over::InCup, true);
        capacity_most.constant += setup.cup.heat_capacity;
        let mut capacity_least = lines.heat_capacity(Over::InCup, false);
        capacity_least.constant += setup.cup.heat_capacity;
        let has_ice = !lines.component(Over::InCup, Component::Ice).is_zero();
        let shaking = setup.shaker.map(|wall| Shaking::new(lines, wall));
        let from_shaker = shaking.as_ref().map_or(0.0, |shaking| shaking.heat(&root).low);
        let may_freeze = excess(0.0).range(&root).low + from_shaker < 0.0
            || shaking.as_ref().is_some_and(|shaking| shaking.may_freeze(&root));
        let melts = has_ice || may_freeze;
        let toppings = !lines.component(Over::Toppings, Component::Mass).is_zero();
        if setup.strained && melts && (toppings || setup.cup.celsius < 0.0) {
            return None;
        }
        if !lines.component(Over::Toppings, Component::Ice).is_zero() {
            return None;
        }
        let melting =
            melts.then(|| Melting::new(lines, setup.strained, setup.cup, shaker_wall, reference));
        let total_water = water.plus(&ice, 1.0);
        let (grams_of_sugar, grams_of_water) = (sugars.at(reference), total_water.at(reference));
        let sugar_fraction =
            (grams_of_sugar / (grams_of_sugar + grams_of_water).max(1e-9)).clamp(0.001, 0.98);
        let slope = (specific_volume(sugar_fraction + 1e-5)
            - specific_volume(sugar_fraction - 1e-5))
            / 2e-5;
        let of_water = specific_volume(sugar_fraction) - slope * sugar_fraction;
        let dry = foods.plus(&sugars, of_water + slope).plus(&water, of_water);
        let volume_melted = dry.plus(&ice, of_water);
        let volume_partly = melting
            .as_ref()
            .map_or(volume_melted, |melting| dry.plus(&melting.melted, of_water));
        let mut enclosure = Self {
            dimensions,
            ice,
            water,
            sugar: sugars,
            slack: lines.slack(Over::InCup),
            volume_melted,
            volume_partly,
            volume_per_gram_of_water: of_water,
            sugar_fraction,
            melting,
            filling: None,
            shaking,
            excess: excess(reference_celsius),
            reference_celsius,
            capacity_most,
            capacity_least,
            cup_celsius: setup.cup.celsius,
        };
        if let Some(line) = filling {
            let target = target_of(line.fill, prepared);
            let rim = line.fill == Some(Fill::Rim);
            // Ice that is heaped up to a mark reaches it as a bed, which no form of this file describes.
            if !rim && line.per_unit.get(Component::Ice) > 0.0 {
                return None;
            }
            enclosure.filling = Some(enclosure.fill(prepared, lines, target, rim, most)?);
        }
        Some(enclosure)
    }

    fn fill(
        &self,
        prepared: &Prepared,
        lines: &Lines,
        target: f64,
        rim: bool,
        most: f64,
    ) -> Option<Filling> {
        let (tops, tops_off) = if rim {
            tops(lines)
        } else {
            (Form::ZERO, Form::ZERO)
        };
        let ice_left = self
            .melting
            .as_ref()
            .filter(|_| !prepared.setup.strained)
            .map_or(Form::ZERO, |melting| self.ice.plus(&melting.melted, -1.0));
        let foods = lines.volume_of_foods(Over::Mixed, 20.0);
        let expansion_of_tops = Expansion::new();
        let any = expansion_of_tops.between(LOWEST_FREEZING_POINT_CELSIUS, 100.0);
        let (tangent, chord) = sugar_between();
        let room = |of_sugar: f64, ratio: f64, of_ice: f64| {
            foods
                .plus(&self.water, specific_volume(0.0))
                .plus(&self.sugar, of_sugar)
                .plus(&tops, 1.0)
                .times(ratio)
                .plus(&self.ice, of_ice)
        };
        let ice_at_least = if prepared.setup.strained { 0.0 } else { 0.95 };
        let least = room(tangent, any.low.min(1.0), ice_at_least).plus(&tops_off, -1.0);
        let most_level = room(chord, any.high, ICE_ML_PER_G + ICE_HALF_WIDTH)
            .plus(&self.slack, 1.0)
            .plus(&tops_off, 1.0);
        let solve = |volume: &Form, ice: &Form, celsius: f64| {
            let solution = volume.plus(&foods, -1.0);
            let expansion = expansion::of_solution(self.sugar_fraction, celsius);
            let level = lines
                .volume_of_foods(Over::Mixed, celsius)
                .plus(&solution, expansion)
                .plus(ice, ICE_ML_PER_G)
                .plus(&tops, 1.0);
            let per_unit = level.per[self.dimensions];
            // A unit of something denser than 1.25 g/ml might exceed the bracket of the engine's own search.
            let light = per_unit * most >= target * 1.02;
            let mut form = level
                .times(-1.0 / per_unit)
                .plus_constant(target / per_unit);
            form.per[self.dimensions] = 0.0;
            light.then_some(FillForm {
                form,
                per_unit,
                solution,
                expansion,
                celsius,
            })
        };
        let cold = self.melting.as_ref().map_or(0.0, Melting::reference);
        let bulk = prepared.setup.ice_bulk_density.max(0.05);
        let bed = self
            .ice
            .times(1.0 / bulk)
            .plus(&lines.volume_of_foods(Over::Toppings, 20.0), 1.02);
        let bed = bed.plus(&lines.component(Over::Toppings, Component::Water), 1.05);
        let bed = bed.plus(&lines.form(Over::Toppings, sugar), 1.02);
        Some(Filling {
            target,
            most,
            bed: (rim && !self.ice.is_zero()).then_some(bed),
            melted: solve(&self.volume_melted, &Form::ZERO, self.reference_celsius)?,
            partly: solve(&self.volume_partly, &ice_left, cold)?,
            least,
            most_level,
            tops,
            tops_off,
            expansion_of_tops,
            foods,
        })
    }

    /// The box with its enclosures; `None` where they do not hold.
    pub(super) fn enclose(&self, low: &[i32], high: &[i32]) -> Option<Enclosed> {
        let most = self.filling.as_ref().map_or(0.0, |filling| filling.most);
        let mut bounds = Bounds::new(low, high, Interval::ZERO);
        if let Some(filling) = &self.filling {
            bounds.set_fill(filling.at_first(&bounds));
        }
        let mut enclosed = self.offsets(&bounds)?;
        let Some(filling) = &self.filling else {
            return Some(enclosed);
        };
        for _ in 0..2 {
            let (range, offset) = self.fill_offset(filling, &enclosed);
            let mut bounds = bounds;
            bounds.set_fill(Interval::new(
                range.low.max(0.0),
                range.high.clamp(0.0, most),
            ));
            enclosed = Enclosed {
                fill: offset,
                ..self.offsets(&bounds)?
            };
        }
        // The form that goes with the regime of the last round.
        enclosed.fill = self.fill_offset(filling, &enclosed).1;
        Some(enclosed)
    }

    /// The range of the amount that fills, and its interval against its form.
    fn fill_offset(&self, filling: &Filling, enclosed: &Enclosed) -> (Interval, Interval) {
        let bounds = &enclosed.bounds;
        let fill = if enclosed.all_melts {
            &filling.melted
        } else {
            &filling.partly
        };
        let celsius = self.serving(enclosed);
        let solution = fill.solution.range(bounds).plus(enclosed.volume);
        let expansion = expansion::of_solutions(enclosed.sugar_fractions, celsius);
        let grown = Interval::new(expansion.low - fill.expansion, expansion.high - fill.expansion);
        let foods = expansion::MOST_OF_FOODS * filling.foods.range(bounds).high.max(0.0);
        let mut level = enclosed
            .volume_apart
            .times(fill.expansion)
            .plus(grown.times_positive(solution))
            .plus(Interval::new(
                foods * (celsius.low - fill.celsius).min(0.0),
                foods * (celsius.high - fill.celsius).max(0.0),
            ));
        if !enclosed.all_melts {
            // What melts takes less room than before.
            let shrinks = self.volume_per_gram_of_water * fill.expansion - ICE_ML_PER_G;
            let shrinks = if self.strained() {
                self.volume_per_gram_of_water * fill.expansion
            } else {
                shrinks
            };
            let left = self.ice.range(bounds).high * ICE_HALF_WIDTH;
            level = level
                .plus(enclosed.melted.times(shrinks))
                .plus(Interval::new(-left, left));
        }
        let tops = filling.tops.range(bounds);
        if tops.high > 0.0 {
            // What floats on top is counted at 20 °C, what sits in the drink at the serving temperature.
            let ratio = filling
                .expansion_of_tops
                .between(celsius.low, celsius.high);
            let off = filling.tops_off.range(bounds).high;
            level = level
                .plus(Interval::new(
                    (ratio.low - 1.0).min(0.0),
                    (ratio.high - 1.0).max(0.0),
                ).times_positive(tops))
                .plus(Interval::new(-off, off));
        }
        let rounding = 1e-5 / fill.per_unit;
        let mut offset = level.times(-1.0 / fill.per_unit);
        offset = offset.plus(Interval::new(-rounding, rounding));
        let range = fill.form.range(bounds);
        let bed_first = filling
            .bed
            .as_ref()
            .is_some_and(|bed| bed.range(bounds).high >= filling.target * 0.999);
        if bed_first {
            offset.low = offset.low.min(-range.high);
        }
        // Nothing is taken out where the others already fill it.
        offset.high = offset.high.max(-range.low);
        (range.plus(offset), offset)
    }

    /// Whether the ice stays behind in the shaker.
    fn strained(&self) -> bool {
        self.melting.as_ref().is_some_and(|melting| melting.strained)
    }

    /// Serving temperatures, °C.
    fn serving(&self, enclosed: &Enclosed) -> Interval {
        let warm = self.celsius(enclosed);
        match enclosed.freezing {
            _ if enclosed.all_melts => warm,
            Some(freezing) if enclosed.all_icy && !self.strained() => freezing,
            // Part of the box may still melt; and a strained drink meets its cup without its ice.
            Some(freezing) => {
                let high = warm.high.max(freezing.high);
                let cup = if self.strained() { self.cup_celsius } else { high };
                Interval::new(freezing.low, high.max(cup))
            }
            None => warm,
        }
    }

    /// Serving temperature if all melts, °C: the excess of heat over that at the reference, by the heat capacity.
    fn celsius(&self, enclosed: &Enclosed) -> Interval {
        let excess = self.excess.range(&enclosed.bounds).plus(enclosed.heat);
        let least = self.capacity_least.range(&enclosed.bounds).low.max(1e-9);
        let most = self
            .capacity_most
            .range(&enclosed.bounds)
            .high
            .max(least);
        let by = |excess: f64, furthest: bool| excess / if furthest { least } else { most };
        Interval::new(
            self.reference_celsius + by(excess.low, excess.low < 0.0),
            self.reference_celsius + by(excess.high, excess.high > 0.0),
        )
    }

    fn offsets(&self, bounds: &Bounds) -> Option<Enclosed> {
        let slack = self.slack.range(bounds).high;
        // A food holds less than 2 kJ/kg/K, and nothing here is further than 130 K from 0 °C.
        let unsure = Interval::new(-slack * 0.26, slack * 0.26);
        let shaker = self.shaking.as_ref().map(|shaking| shaking.heat(bounds));
        let heat = shaker.unwrap_or(Interval::ZERO).plus(unsure);
        let all_water = self.water.plus(&self.ice, 1.0).range(bounds);
        let (mut all_melts, mut melted, mut least_water) = (true, Interval::ZERO, all_water.low);
        let (mut freezing, mut all_icy) = (None, false);
        if let Some(melting) = &self.melting {
            // In a strained drink the shaker's wall is part of the form itself.
            let from_heat = if melting.strained { unsure } else { heat };
            let found = melting.within(bounds, from_heat, &self.ice)?;
            let offset = found.offset;
            least_water = least_water.min(found.least_water);
            freezing = Some(found.freezing);
            let beyond = melting.melted.plus(&self.ice, -1.0).range(bounds);
            all_melts = beyond.low + offset.low >= 0.0;
            all_icy = beyond.high + offset.high < 0.0;
            if !all_melts {
                melted = Interval::new(offset.low.min(-beyond.high), offset.high);
            }
        }
        let sugar = self.sugar.range(bounds);
        let most = sugar.high / (sugar.high + least_water.max(0.0)).max(1e-9);
        let least = sugar.low / (sugar.low + all_water.high).max(1e-9);
        let away = (most - self.sugar_fraction)
            .abs()
            .max((self.sugar_fraction - least).abs());
        let curvature = curvature_up_to(most.max(self.sugar_fraction));
        let remainder = 0.5 * curvature * away * away * (sugar.high + all_water.high);
        let volume_apart = Interval::new(-1e-7, remainder + slack / 1.59 + 1e-7);
        let volume = volume_apart.plus(melted.times(self.volume_per_gram_of_water));
        volume.is_finite().then_some(Enclosed {
            all_melts,
            bounds: *bounds,
            volume,
            heat,
            fill: Interval::ZERO,
            volume_apart,
            melted,
            freezing,
            all_icy,
            sugar_fractions: Interval::new(least, most),
        })
    }

    /// Whether there is ice, or some may form.
    pub(super) fn may_freeze(&self) -> bool {
        self.melting.is_some()
    }

    /// The form of the amount that fills, for the regime.
    pub(super) fn fill_form(&self, all_melts: bool) -> Option<&Form> {
        let filling = self.filling.as_ref()?;
        Some(if all_melts {
            &filling.melted.form
        } else {
            &filling.partly.form
        })
    }
}

impl Filling {
    /// The amount, before anything is known of heat.
    fn at_first(&self, bounds: &Bounds) -> Interval {
        let place = bounds.width - 1;
        // `bounds` holds none of it, so these are the levels of the others alone.
        let amount = |others: f64, per_unit: f64| {
            if per_unit > 0.0 {
                ((self.target - others) / per_unit).clamp(0.0, self.most)
            } else {
                self.most
            }
        };
        let high = amount(self.least.range(bounds).low - 1e-3, self.least.per[place]);
        let others = self.most_level.range(bounds).high + 1e-3;
        let low = if self.bed.is_some() {
            0.0
        } else {
            amount(others, self.most_level.per[place])
        };
        Interval::new(low.min(high), high)
    }
}

/// Millilitres that a gram of dissolved sugar takes at 20 °C at least and at most: `g` is convex, so between the slope of its
/// tangent at no sugar and that of its chord.
fn sugar_between() -> (f64, f64) {
    let tangent = specific_volume(0.0) + (specific_volume(1e-5) - specific_volume(0.0)) / 1e-5;
    (tangent, specific_volume(1.0))
}

/// Volume at 20 °C of what sits in the drink and floats on it, ml, and how far it can be from that.
fn tops(lines: &Lines) -> (Form, Form) {
    let (tangent, chord) = sugar_between();
    let mut sums = (Form::ZERO, Form::ZERO);
    for over in [Over::Toppings, Over::OnTop] {
        let water = lines
            .component(over, Component::Water)
            .plus(&lines.component(over, Component::Ice), 1.0);
        let sugars = lines.form(over, sugar);
        let foods = lines.volume_of_foods(over, 20.0);
        sums.0 = sums
            .0
            .plus(&water, specific_volume(0.0))
            .plus(&sugars, f64::midpoint(tangent, chord))
            .plus(&foods, 1.0);
        sums.1 = sums
            .1
            .plus(&sugars, (chord - tangent).abs() / 2.0)
            .plus(&lines.slack(over), 1.0);
    }
    sums
}

fn target_of(fill: Option<Fill>, prepared: &Prepared) -> f64 {
    match fill {
        Some(Fill::Volume(millilitres)) => millilitres,
        Some(Fill::Rim) => prepared.setup.capacity.unwrap_or(0.0) - prepared.setup.head_room,
        None => 0.0,
    }
}

/// The reference with about as much of what fills as there will be: what is nearer has narrower enclosures.
fn with_fill(reference: &[f64], prepared: &Prepared, lines: &Lines) -> Vec<f64> {
    let mut reference = reference.to_vec();
    let filling = prepared.lines.iter().find(|line| line.fill.is_some());
    if let Some(line) = filling {
        let of_others = lines.component(Over::InCup, Component::Mass);
        let target = target_of(line.fill, prepared);
        let beside = (target - of_others.at(&reference) / 1.03).max(0.0);
        let bed = target * prepared.setup.ice_bulk_density;
        let is_bed = line.fill == Some(Fill::Rim) && line.per_unit.get(Component::Ice) > 0.0;
        let room = if is_bed { beside.min(bed) } else { beside };
        let place = reference.len() - 1;
        reference[place] = room / line.grams_per_unit.max(1e-9);
    }
    reference
}

fn root_bounds(ranges: &[Range], fill: Interval) -> Bounds {
    let mut low = [0; PLACES];
    let mut high = [0; PLACES];
    for (at, range) in ranges.iter().enumerate() {
        (low[at], high[at]) = (range.low, range.high);
    }
    Bounds::new(&low[..ranges.len()], &high[..ranges.len()], fill)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_specific_volume_of_sugar_solutions_is_convex_and_bends_no_more_than_stated() {
        let step = 1e-3;
        for at in 1_i32..1000 {
            let fraction = f64::from(at) * step;
            let bend = (specific_volume(fraction + step) - 2.0 * specific_volume(fraction)
                + specific_volume(fraction - step))
                / (step * step);
            assert!(bend > 0.0, "at {fraction}: {bend}");
            assert!(bend <= curvature_up_to(fraction), "at {fraction}: {bend}");
        }
    }
}
