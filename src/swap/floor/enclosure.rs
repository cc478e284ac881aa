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
//! **Amount that fills.** See [`super::filling`] and [`super::filled`].

use crate::balance::published::sugar_solution;
use crate::balance::{Component, Fill, Prepared, PreparedLine};
use crate::book::Stage;
use crate::optimiser::Range;

use super::drink::{Lines, Over, sugar};
use super::filling_line::{filling_line, most_of, with_fill};
use super::form::{Bounds, Form, Interval, PLACES};
use super::heat::{Melting, Shaking, excess};

/// Volume that a gram of ice displaces, ml: 1.0885 at the lowest freezing point, 1.0909 at 0 °C.
pub(super) const ICE_ML_PER_G: f64 = 1.0897;

/// Half the width of [`ICE_ML_PER_G`].
pub(super) const ICE_HALF_WIDTH: f64 = 0.0013;

/// What encloses the drink, whatever the amount that fills is; made once for a question.
#[derive(Clone, Debug)]
pub(super) struct Enclosure {
    pub(super) ice: Form,
    pub(super) water: Form,
    pub(super) sugar: Form,
    pub(super) slack: Form,
    /// Volume at 20 °C with all ice melted, and with some left, ml.
    pub(super) volume_melted: Form,
    pub(super) volume_partly: Form,
    pub(super) volume_per_gram_of_water: f64,
    pub(super) sugar_fraction: f64,
    melting: Option<Melting>,
    shaking: Option<Shaking>,
    /// `H − E − C·τ` of the served drink with all ice melted, kJ, at the reference temperature.
    pub(super) excess: Form,
    pub(super) reference_celsius: f64,
    pub(super) capacity_most: Form,
    capacity_least: Form,
    cup_celsius: f64,
}

/// Which forms hold in a box.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Regime {
    /// All ice melts everywhere in the box.
    Melted,
    /// Some may be left.
    Partly,
    /// Some may be left, and the bed of ice reaches the rim first.
    Bed,
}

/// A box with what encloses the drink in it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Enclosed {
    /// Whose forms hold.
    pub(super) regime: Regime,
    /// The box, with the range of the amount that fills.
    pub(super) bounds: Bounds,
    /// Volume at 20 °C against its form, ml.
    pub(super) volume: Interval,
    /// Heat against its form, kJ.
    pub(super) heat: Interval,
    /// The amount that fills against its form, in its unit.
    pub(super) fill: Interval,
    /// The part of the volume's interval that has nothing to do with melted ice, ml.
    pub(super) volume_apart: Interval,
    /// Melted ice against its form, g.
    pub(super) melted: Interval,
    /// Freezing points, °C, where there is ice or some may form.
    freezing: Option<Interval>,
    /// Whether ice is left everywhere in the box.
    all_icy: bool,
    /// Mass fractions of sugar in the solution.
    pub(super) sugar_fractions: Interval,
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

pub(super) fn specific_volume(sugar_fraction: f64) -> f64 {
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
        let filling = filling_line(prepared);
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
        let most = filling.map_or(0.0, |line| most_of(line, prepared));
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
        let from_shaker = shaking
            .as_ref()
            .map_or(0.0, |shaking| shaking.heat(&root).low);
        let may_freeze = excess(0.0).range(&root).low + from_shaker < 0.0
            || shaking
                .as_ref()
                .is_some_and(|shaking| shaking.may_freeze(&root));
        let melts = has_ice || may_freeze;
        // Ice that forms of the drink's own water in a shaker lies in the bed, too, which no form here counts.
        let is_heaped = filling.is_some_and(|line| line.fill == Some(Fill::Rim));
        let forms_ice = shaking
            .as_ref()
            .is_some_and(|shaking| shaking.may_form_ice(&root));
        if is_heaped && forms_ice && !setup.strained {
            return None;
        }
        let toppings = !lines.component(Over::Toppings, Component::Mass).is_zero();
        if setup.strained && melts && (toppings || setup.cup.celsius < 0.0) {
            return None;
        }
        if !lines.component(Over::Toppings, Component::Ice).is_zero() {
            return None;
        }
        // Ice that meets the drink after the shaker is no part of the first mixing, and what is frozen in a purée is no bed.
        let fresh_ice = |line: &PreparedLine| line.is_ice && line.stage != Stage::Mixed;
        let frozen = |line: &PreparedLine| {
            !line.is_ice && line.per_unit.get(Component::Ice) > 0.0 && filling.is_some()
        };
        let mut all = prepared.lines.iter();
        if all.any(|line| frozen(line) || (setup.shaker.is_some() && fresh_ice(line))) {
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
        Some(Self {
            ice,
            water,
            sugar: sugars,
            slack: lines.slack(Over::InCup),
            volume_melted,
            volume_partly,
            volume_per_gram_of_water: of_water,
            sugar_fraction,
            melting,
            shaking,
            excess: excess(reference_celsius),
            reference_celsius,
            capacity_most,
            capacity_least,
            cup_celsius: setup.cup.celsius,
        })
    }

    /// Ice that is left in the drink, g, as far as the form of what has melted says.
    pub(super) fn ice_left(&self) -> Form {
        let melting = self.melting.as_ref().filter(|melting| !melting.strained);
        melting.map_or(Form::ZERO, |melting| self.ice.plus(&melting.melted, -1.0))
    }

    /// The freezing point that the form of what has melted holds at, °C.
    pub(super) fn freezing_reference(&self) -> f64 {
        self.melting.as_ref().map_or(0.0, Melting::reference)
    }

    /// Whether the ice stays behind in the shaker.
    pub(super) fn strained(&self) -> bool {
        self.melting
            .as_ref()
            .is_some_and(|melting| melting.strained)
    }

    /// Serving temperatures, °C.
    pub(super) fn serving(&self, enclosed: &Enclosed) -> Interval {
        let warm = self.celsius(enclosed);
        match enclosed.freezing {
            _ if enclosed.regime == Regime::Melted => warm,
            Some(freezing) if enclosed.all_icy && !self.strained() => freezing,
            // Part of the box may still melt; and a strained drink meets its cup without its ice.
            Some(freezing) => {
                let high = warm.high.max(freezing.high);
                let cup = if self.strained() {
                    self.cup_celsius
                } else {
                    high
                };
                Interval::new(freezing.low, high.max(cup))
            }
            None => warm,
        }
    }

    /// Serving temperature if all melts, °C: the excess of heat over that at the reference, by the heat capacity.
    fn celsius(&self, enclosed: &Enclosed) -> Interval {
        let excess = self.excess.range(&enclosed.bounds).plus(enclosed.heat);
        let least = self.capacity_least.range(&enclosed.bounds).low.max(1e-9);
        let most = self.capacity_most.range(&enclosed.bounds).high.max(least);
        let by = |excess: f64, furthest: bool| excess / if furthest { least } else { most };
        Interval::new(
            self.reference_celsius + by(excess.low, excess.low < 0.0),
            self.reference_celsius + by(excess.high, excess.high > 0.0),
        )
    }

    /// A box with its enclosures, for the range of the amount that fills; `None` where they do not hold.
    pub(super) fn offsets(&self, bounds: &Bounds) -> Option<Enclosed> {
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
            regime: if all_melts {
                Regime::Melted
            } else {
                Regime::Partly
            },
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
