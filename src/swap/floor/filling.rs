//! The amount that fills, as a form of the other counts.
//!
//! **To a level.** The level is the volume of the solution times its thermal expansion between 20 °C and the serving
//! temperature, that of the foods at the serving temperature, and the ice that is left. With the expansion at a reference
//! temperature it is a form; solved for the amount it gives the amount that fills, with an interval for all that is enclosed.
//!
//! **With ice to the rim.** The bed of ice as it lies, with its gaps, may reach the rim before the drink does. Then its own form
//! gives the amount, nearly without an interval. Where a box may do one or the other, the form of the level counts, and its
//! interval reaches down to nothing.

use crate::balance::published::freezing::LOWEST_FREEZING_POINT_CELSIUS;
use crate::balance::{Component, Fill, Prepared, PreparedLine};
use crate::book::Stage;

use super::drink::{Lines, Over, sugar};
use super::enclosure::{
    Enclosed, Enclosure, ICE_HALF_WIDTH, ICE_ML_PER_G, Regime, specific_volume,
};
use super::expansion::{self, Expansion};
use super::filling_line::{most_of, target_of};
use super::form::{Bounds, Form, Interval};

/// The amount that fills.
#[derive(Clone, Debug)]
pub(super) struct Filling {
    target: f64,
    /// No amount is ever greater.
    pub(super) most: f64,
    /// Level at least and at most, ml, whatever melts and however warm it is.
    least_level: Form,
    most_level: Form,
    /// Volume of what sits in the drink and floats on it, ml, and how far it can be from that form.
    tops: Tops,
    expansion_of_tops: Expansion,
    /// Volume of all that is no solution at 20 °C, ml.
    foods: Form,
    melted: Level,
    partly: Level,
    bed: Option<Bed>,
}

/// `amount = form(other counts) + interval`, by the level.
#[derive(Clone, Debug)]
struct Level {
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

/// The ice as it lies, when it may reach the rim first.
#[derive(Clone, Debug)]
struct Bed {
    /// How high it reaches, ml.
    height: Form,
    /// The amount that makes it reach the rim, where the ice that fills is all that melts before it lies.
    amount: Option<Form>,
    /// Millilitres a unit.
    per_unit: f64,
    toppings: Tops,
}

/// A volume at 20 °C, and how far it can be from its form, ml.
#[derive(Clone, Debug)]
struct Tops {
    volume: Form,
    off: Form,
}

impl Tops {
    const NONE: Self = Self {
        volume: Form::ZERO,
        off: Form::ZERO,
    };

    fn of(lines: &Lines, stages: &[Over]) -> Self {
        let (tangent, chord) = sugar_between();
        let mut sum = Self::NONE;
        for over in stages {
            let water = lines
                .component(*over, Component::Water)
                .plus(&lines.component(*over, Component::Ice), 1.0);
            let sugars = lines.form(*over, sugar);
            sum.volume = sum
                .volume
                .plus(&water, specific_volume(0.0))
                .plus(&sugars, f64::midpoint(tangent, chord))
                .plus(&lines.volume_of_foods(*over, 20.0), 1.0)
                .plus(&lines.component(*over, Component::Air), 1.0);
            sum.off = sum
                .off
                .plus(&sugars, (chord - tangent).abs() / 2.0)
                .plus(&lines.slack(*over), 1.0);
        }
        sum
    }

    /// How far it can be from its form in a box, between 20 °C and the serving temperatures.
    fn offset(&self, bounds: &Bounds, expansion: &Expansion, celsius: Interval) -> Interval {
        let volume = self.volume.range(bounds);
        if volume.high <= 0.0 {
            return Interval::ZERO;
        }
        let ratio = expansion.between(celsius.low, celsius.high);
        let off = self.off.range(bounds).high * 1.1;
        Interval::new((ratio.low - 1.0).min(0.0), (ratio.high - 1.0).max(0.0))
            .times_positive(volume)
            .plus(Interval::new(-off, off))
    }
}

/// Millilitres that a gram of dissolved sugar takes at 20 °C at least and at most: the specific volume is convex in the mass
/// fraction, so between the slope of its tangent at no sugar and that of its chord.
fn sugar_between() -> (f64, f64) {
    let tangent = specific_volume(0.0) + (specific_volume(1e-5) - specific_volume(0.0)) / 1e-5;
    (tangent, specific_volume(1.0))
}

impl Filling {
    /// `None` for ice that fills to a mark, for something that fills and hardly takes room, and for what sits in the cup or floats
    /// on top and fills to a volume.
    pub(super) fn new(
        enclosure: &Enclosure,
        prepared: &Prepared,
        lines: &Lines,
        line: &PreparedLine,
    ) -> Option<Self> {
        let (target, most) = (target_of(line.fill, prepared), most_of(line, prepared));
        let rim = line.fill == Some(Fill::Rim);
        let is_ice = line.per_unit.get(Component::Ice) > 0.0;
        // Ice that is heaped up to a mark reaches it as a bed or as a level, whichever comes first.
        if !rim && (is_ice || matches!(line.stage, Stage::Topping | Stage::OnTop)) {
            return None;
        }
        let tops = if rim {
            Tops::of(lines, &[Over::Toppings, Over::OnTop])
        } else {
            Tops::NONE
        };
        let foods = lines.volume_of_foods(Over::Mixed, 20.0);
        let expansion_of_tops = Expansion::new();
        let any = expansion_of_tops.between(LOWEST_FREEZING_POINT_CELSIUS, 100.0);
        let (tangent, chord) = sugar_between();
        let room = |of_sugar: f64, ratio: f64, of_ice: f64| {
            foods
                .plus(&enclosure.water, specific_volume(0.0))
                .plus(&enclosure.sugar, of_sugar)
                .plus(&tops.volume, 1.0)
                .times(ratio)
                .plus(&enclosure.ice, of_ice)
        };
        let ice_at_least = if prepared.setup.strained { 0.0 } else { 0.95 };
        let least_level = room(tangent, any.low.min(1.0), ice_at_least).plus(&tops.off, -1.1);
        let most_level = room(chord, any.high, ICE_ML_PER_G + ICE_HALF_WIDTH)
            .plus(&enclosure.slack, 1.0)
            .plus(&tops.off, 1.1);
        let solve = |volume: &Form, ice: &Form, celsius: f64| {
            let solution = volume.plus(&foods, -1.0);
            let expansion = expansion::of_solution(enclosure.sugar_fraction, celsius);
            let level = lines
                .volume_of_foods(Over::Mixed, celsius)
                .plus(&solution, expansion)
                .plus(ice, ICE_ML_PER_G)
                .plus(&tops.volume, 1.0);
            let per_unit = level.per[lines.dimensions];
            let light = per_unit > 1e-9 && per_unit * most >= target * 1.02;
            light.then(|| Level {
                form: solved(&level, lines.dimensions, target),
                per_unit,
                solution,
                expansion,
                celsius,
            })
        };
        Some(Self {
            target,
            most,
            least_level,
            most_level,
            melted: solve(
                &enclosure.volume_melted,
                &Form::ZERO,
                enclosure.reference_celsius,
            )?,
            partly: solve(
                &enclosure.volume_partly,
                &enclosure.ice_left(),
                enclosure.freezing_reference(),
            )?,
            bed: (rim && !enclosure.ice.is_zero())
                .then(|| Bed::new(enclosure, prepared, lines, target)),
            tops,
            expansion_of_tops,
            foods,
        })
    }

    /// The amount in a box, before anything is known of heat; `bounds` holds none of it.
    pub(super) fn at_first(&self, bounds: &Bounds) -> Interval {
        let place = bounds.width - 1;
        // What takes no room fills nothing: then the end of the interval is the one that says least.
        let amount = |others: f64, per_unit: f64, otherwise: f64| {
            if per_unit > 0.0 {
                ((self.target - others) / per_unit).clamp(0.0, self.most)
            } else {
                otherwise
            }
        };
        let others = self.least_level.range(bounds).low - 1e-3;
        let mut high = amount(others, self.least_level.per[place], self.most);
        let others = self.most_level.range(bounds).high + 1e-3;
        let mut low = amount(others, self.most_level.per[place], 0.0);
        if let Some(bed) = &self.bed {
            let others = bed.height.range(bounds);
            let off = bed.off(
                self,
                bounds,
                Interval::new(LOWEST_FREEZING_POINT_CELSIUS, 100.0),
            );
            low = low.min(amount(others.high + off.high, bed.per_unit, 0.0));
            if bed.amount.is_some() {
                high = high.min(amount(others.low + off.low, bed.per_unit, self.most));
            }
        }
        Interval::new(low.min(high), high)
    }

    /// The form of the amount in a regime.
    pub(super) fn form(&self, regime: Regime) -> &Form {
        match (regime, &self.bed) {
            (Regime::Bed, Some(bed)) => bed.amount.as_ref().unwrap_or(&self.partly.form),
            (Regime::Melted, _) => &self.melted.form,
            (Regime::Partly | Regime::Bed, _) => &self.partly.form,
        }
    }

    /// Whether there is a regime of the bed.
    pub(super) fn has_bed(&self) -> bool {
        self.bed.as_ref().is_some_and(|bed| bed.amount.is_some())
    }

    /// The range of the amount, its interval against its form, and the regime that the form is of.
    pub(super) fn offset(
        &self,
        enclosure: &Enclosure,
        enclosed: &Enclosed,
    ) -> (Interval, Interval, Regime) {
        let bounds = &enclosed.bounds;
        let level = if enclosed.regime == Regime::Melted {
            &self.melted
        } else {
            &self.partly
        };
        let celsius = enclosure.serving(enclosed);
        let off = self.level_off(level, enclosure, enclosed, celsius);
        let rounding = 1e-5 / level.per_unit;
        let rounding = Interval::new(-rounding, rounding);
        let by_bed = self.bed.as_ref().and_then(|bed| {
            let off = bed.off(self, bounds, celsius).times(-1.0 / bed.per_unit);
            Some((bed.amount.as_ref()?, off.plus(rounding)))
        });
        if let Some((amount, bed_off)) = by_bed
            && enclosed.regime != Regime::Melted
        {
            // How far the drink is below the rim, with the amount that brings the bed there.
            let short = level.form.plus(amount, -1.0).range(bounds);
            let range = amount.range(bounds);
            if short.low - bed_off.high > off.high / level.per_unit + 1e-3
                && range.low + bed_off.low > 0.0
            {
                return (range.plus(bed_off), bed_off, Regime::Bed);
            }
        }
        let mut offset = off.times(-1.0 / level.per_unit).plus(rounding);
        let range = level.form.range(bounds);
        let regime = if enclosed.regime == Regime::Melted {
            Regime::Melted
        } else {
            Regime::Partly
        };
        if let Some(bed) = &self.bed {
            // The bed may come first somewhere in the box; then there is less.
            let most = bed.height_at_most(bounds, self, celsius);
            if most >= self.target * 0.999 {
                let least = by_bed.map_or(0.0, |(amount, bed_off)| {
                    (amount.range(bounds).low + bed_off.low).max(0.0)
                });
                offset.low = offset.low.min(least - range.high);
            }
        }
        // Nothing is taken out where the others already fill it.
        offset.high = offset.high.max(-range.low);
        (range.plus(offset), offset, regime)
    }

    /// How far the level can be from its form, ml.
    fn level_off(
        &self,
        level: &Level,
        enclosure: &Enclosure,
        enclosed: &Enclosed,
        celsius: Interval,
    ) -> Interval {
        let bounds = &enclosed.bounds;
        let solution = level.solution.range(bounds).plus(enclosed.volume);
        let expansion = expansion::of_solutions(enclosed.sugar_fractions, celsius);
        let grown = Interval::new(
            expansion.low - level.expansion,
            expansion.high - level.expansion,
        );
        let foods = expansion::MOST_OF_FOODS * self.foods.range(bounds).high.max(0.0);
        let off = enclosed
            .volume_apart
            .times(level.expansion)
            .plus(grown.times_positive(solution))
            .plus(Interval::new(
                foods * (celsius.low - level.celsius).min(0.0),
                foods * (celsius.high - level.celsius).max(0.0),
            ))
            .plus(self.tops.offset(bounds, &self.expansion_of_tops, celsius));
        if enclosed.regime == Regime::Melted {
            return off;
        }
        // What melts takes less room than it did as ice.
        let of_water = enclosure.volume_per_gram_of_water * level.expansion;
        let of_melting = if enclosure.strained() {
            of_water
        } else {
            of_water - ICE_ML_PER_G
        };
        // More may be left than was poured: the drink's own water freezes where it is cold enough.
        let form = enclosure.ice_left().range(bounds).high - enclosed.melted.low;
        let left = form.max(enclosure.ice.range(bounds).high) * ICE_HALF_WIDTH;
        off.plus(enclosed.melted.times(of_melting))
            .plus(Interval::new(-left, left))
    }
}

impl Bed {
    fn new(enclosure: &Enclosure, prepared: &Prepared, lines: &Lines, target: f64) -> Self {
        let toppings = Tops::of(lines, &[Over::Toppings]);
        let bulk = prepared.setup.ice_bulk_density.max(0.05);
        let height = enclosure.ice.times(1.0 / bulk).plus(&toppings.volume, 1.0);
        let per_unit = height.per[lines.dimensions];
        // In a shaker some of the ice melts before it lies.
        let lies = prepared.setup.shaker.is_none() && per_unit > 0.0;
        Self {
            amount: lies.then(|| solved(&height, lines.dimensions, target)),
            height,
            per_unit,
            toppings,
        }
    }

    fn off(&self, filling: &Filling, bounds: &Bounds, celsius: Interval) -> Interval {
        self.toppings
            .offset(bounds, &filling.expansion_of_tops, celsius)
    }

    fn height_at_most(&self, bounds: &Bounds, filling: &Filling, celsius: Interval) -> f64 {
        self.height.range(bounds).high + self.off(filling, bounds, celsius).high
    }
}

/// The count at a place that brings a form to a target, as a form of the others.
fn solved(form: &Form, place: usize, target: f64) -> Form {
    let per_unit = form.per[place];
    let mut others = form.times(-1.0 / per_unit).plus_constant(target / per_unit);
    others.per[place] = 0.0;
    others
}
