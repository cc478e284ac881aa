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
//! **Amount that fills.** The level is a form times the thermal expansion between 20 °C and the serving temperature, so the amount
//! that fills is a form of the other counts, with an interval for everything above.

use crate::balance::published::freezing::LOWEST_FREEZING_POINT_CELSIUS;
use crate::balance::published::sugar_solution;
use crate::balance::{Component, Fill, Prepared};
use crate::optimiser::Range;

use super::drink::{Lines, Over, sugar};
use super::expansion::Expansion;
use super::form::{Bounds, Form, Interval, PLACES};
use super::heat::{Melting, excess, excess_of_shaking, shaker_heat};

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
    expansion: Expansion,
    /// The ice as it lies, ml, when it may reach the rim first.
    bed: Option<Form>,
    /// How far the volume of what sits in the drink and floats on it can be from its form, ml.
    tops_off: Form,
    melted: FillForm,
    partly: FillForm,
}

/// `amount = form(other counts) + interval`.
#[derive(Clone, Debug)]
struct FillForm {
    form: Form,
    /// Level at 20 °C that the form aims at, ml.
    aim: f64,
    /// Millilitres of level a unit.
    per_unit: f64,
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
    /// Heat of the shaker's wall, kJ, over the whole grid.
    shaker: Interval,
    /// `H − E − C·τ` of the served drink with all ice melted, kJ, at the reference temperature.
    pub(super) excess: Form,
    pub(super) reference_celsius: f64,
    pub(super) capacity_most: Form,
    capacity_least: Form,
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
    /// Melted ice against its form, g.
    melted: Interval,
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
        let foods = lines.volume_of_foods(Over::Mixed);
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
        let shaker_wall = setup.shaker.unwrap_or_default();
        let excess = |celsius: f64| excess(lines, Over::InCup, setup.cup, celsius);
        let mut capacity_most = lines.heat_capacity(Over::InCup, true);
        capacity_most.constant += setup.cup.heat_capacity;
        let mut capacity_least = lines.heat_capacity(Over::InCup, false);
        capacity_least.constant += setup.cup.heat_capacity;
        let has_ice = !lines.component(Over::InCup, Component::Ice).is_zero();
        let shaker = shaker_heat(lines, setup.shaker, &root, has_ice);
        let may_freeze = excess(0.0).range(&root).low + shaker.low < 0.0
            || excess_of_shaking(lines, shaker_wall, 0.0).range(&root).low < 0.0;
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
            shaker,
            excess: excess(reference_celsius),
            reference_celsius,
            capacity_most,
            capacity_least,
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
        let expansion = Expansion::new();
        let (tops, tops_off) = if rim {
            tops(lines)
        } else {
            (Form::ZERO, Form::ZERO)
        };
        let ice_left = self
            .melting
            .as_ref()
            .map(|melting| self.ice.plus(&melting.melted, -1.0));
        let left_in_drink = ice_left
            .filter(|_| !prepared.setup.strained)
            .unwrap_or(Form::ZERO);
        let partly = self
            .volume_partly
            .plus(&left_in_drink, ICE_ML_PER_G)
            .plus(&tops, 1.0);
        let melted = self.volume_melted.plus(&tops, 1.0);
        let solve = |level: &Form, celsius: f64| {
            let range = expansion.between(celsius, celsius);
            let aim = target / f64::midpoint(range.low, range.high);
            let per_unit = level.per[self.dimensions];
            let mut form = level.times(-1.0 / per_unit).plus_constant(aim / per_unit);
            form.per[self.dimensions] = 0.0;
            FillForm {
                form,
                aim,
                per_unit,
            }
        };
        // A unit of something denser than 1.25 g/ml might exceed the bracket of the engine's own search.
        let light = |level: &Form| level.per[self.dimensions] * most >= target * 1.02;
        if !light(&partly) || !light(&melted) {
            return None;
        }
        let bulk = prepared.setup.ice_bulk_density.max(0.05);
        let bed = self
            .ice
            .times(1.0 / bulk)
            .plus(&lines.volume_of_foods(Over::Toppings), 1.02);
        let bed = bed.plus(&lines.component(Over::Toppings, Component::Water), 1.05);
        let bed = bed.plus(&lines.form(Over::Toppings, sugar), 1.02);
        Some(Filling {
            target,
            most,
            bed: (rim && !self.ice.is_zero()).then_some(bed),
            tops_off,
            melted: solve(&melted, self.reference_celsius),
            partly: solve(&partly, 0.0),
            expansion,
        })
    }

    /// The box with its enclosures; `None` where they do not hold.
    pub(super) fn enclose(&self, low: &[i32], high: &[i32]) -> Option<Enclosed> {
        let most = self.filling.as_ref().map_or(0.0, |filling| filling.most);
        let bounds = Bounds::new(low, high, Interval::new(0.0, most));
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
        let form = if enclosed.all_melts {
            &filling.melted
        } else {
            &filling.partly
        };
        let volume_of_ice = -ICE_ML_PER_G;
        let tops_off = filling.tops_off.range(bounds).high;
        let level = enclosed.volume.plus(enclosed.melted.times(volume_of_ice));
        let mut level = level.plus(Interval::new(-tops_off, tops_off));
        let mut ratio = if enclosed.all_melts {
            let celsius = self.celsius(enclosed);
            filling.expansion.between(celsius.low, celsius.high)
        } else {
            let left = self.ice.range(bounds).high * ICE_HALF_WIDTH;
            level = level.plus(Interval::new(-left, left));
            // Part of the box may still melt; then it is warmer than its freezing point.
            filling.expansion.between(
                LOWEST_FREEZING_POINT_CELSIUS,
                self.celsius(enclosed).high.max(0.0),
            )
        };
        if tops_off > 0.0 {
            // What floats on top is counted at 20 °C.
            ratio = Interval::new(ratio.low.min(1.0), ratio.high.max(1.0));
        }
        let rounding = 1e-5 / form.per_unit;
        let mut offset = Interval::new(
            (filling.target / ratio.high - form.aim - level.high) / form.per_unit - rounding,
            (filling.target / ratio.low - form.aim - level.low) / form.per_unit + rounding,
        );
        let range = form.form.range(bounds);
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

    /// Serving temperature if all melts, °C: the excess of heat over that at the reference, by the heat capacity.
    fn celsius(&self, enclosed: &Enclosed) -> Interval {
        let excess = self.excess.range(&enclosed.bounds).plus(enclosed.heat);
        let capacity = self.capacity_least.range(&enclosed.bounds).low.max(1e-9);
        let reference = self.reference_celsius;
        Interval::new(
            reference + excess.low.min(0.0) / capacity,
            reference + excess.high.max(0.0) / capacity,
        )
    }

    fn offsets(&self, bounds: &Bounds) -> Option<Enclosed> {
        let slack = self.slack.range(bounds).high;
        // A food holds less than 2 kJ/kg/K, and nothing here is further than 130 K from 0 °C.
        let unsure = Interval::new(-slack * 0.26, slack * 0.26);
        let heat = self.shaker.plus(unsure);
        let all_water = self.water.plus(&self.ice, 1.0).range(bounds);
        let (mut all_melts, mut melted, mut least_water) = (true, Interval::ZERO, all_water.low);
        if let Some(melting) = &self.melting {
            // In a strained drink the shaker's wall is part of the form itself.
            let from_heat = if melting.strained { unsure } else { heat };
            let (offset, water) = melting.offset(bounds, from_heat, &self.ice)?;
            least_water = least_water.min(water);
            let beyond = melting.melted.plus(&self.ice, -1.0).range(bounds);
            all_melts = beyond.low + offset.low >= 0.0;
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
        let volume = melted
            .times(self.volume_per_gram_of_water)
            .plus(Interval::new(-1e-7, remainder + slack / 1.59 + 1e-7));
        volume.is_finite().then_some(Enclosed {
            all_melts,
            bounds: *bounds,
            volume,
            heat,
            fill: Interval::ZERO,
            melted,
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

/// Volume at 20 °C of what sits in the drink and floats on it, ml, and how far it can be from that: `g` is convex, so the
/// sugar in it takes between the slope of its tangent at no sugar and that of its chord.
fn tops(lines: &Lines) -> (Form, Form) {
    let tangent = specific_volume(0.0) + (specific_volume(1e-5) - specific_volume(0.0)) / 1e-5;
    let chord = specific_volume(1.0);
    let mut sums = (Form::ZERO, Form::ZERO);
    for over in [Over::Toppings, Over::OnTop] {
        let water = lines
            .component(over, Component::Water)
            .plus(&lines.component(over, Component::Ice), 1.0);
        let sugars = lines.form(over, sugar);
        let foods = lines.volume_of_foods(over);
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
