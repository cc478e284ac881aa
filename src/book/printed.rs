//! What a label prints: in which unit, how it is rounded, and how far the law lets it be off.
//!
//! A label is kept as it is printed. This is the one place that turns its figures into the units of the engine and knows what
//! their rounding hides.
//!
//! Two sets of rules hold, and the kind of carbohydrate says which: without fibre for Regulation (EU) 1169/2011, with fibre for
//! 21 CFR 101.9.
//!
//! - EU: rounding and tolerances of the Commission's guidance on tolerances for nutrient values declared on a label, December
//!   2012 (rounding read in summaries; the figures for polyols and sodium are values from memory).
//! - US: rounding by serving of 21 CFR 101.9(c), and the fifth by which a figure may be off, 21 CFR 101.9(g)(5).
//!
//! A published table gives its figures as found, without a tolerance of the law.

use super::label_units::{EnergyUnit, LabelUnits, SALT_PER_SODIUM, SaltUnit};
use super::{Basis, CarbohydrateKind, Composition, Evidence, Figure, Nutrient};
use crate::quantity::{KILOJOULES_PER_KILOCALORIE, RECTANGULAR};

impl Composition {
    /// States a figure that is in [`Nutrient::unit`]; it is kept in the unit that the label prints.
    pub fn state(&mut self, nutrient: Nutrient, figure: Figure) {
        let factor = self.units.factor(nutrient);
        let printed = Figure {
            value: figure.value / factor,
            u: figure.u.map(|u| u / factor),
            ..figure
        };
        self.printed.insert(nutrient, printed);
    }

    /// Prints energy and salt in other units; what is stated stays the same amount.
    pub fn print_in(&mut self, units: LabelUnits) {
        for nutrient in [Nutrient::Energy, Nutrient::Salt] {
            let factor = self.units.factor(nutrient) / units.factor(nutrient);
            // A factor of 1/4.184 and back leaves no trace in the printed figure.
            let rounded = |value: f64| (value * factor * 1e6).round() / 1e6;
            if let Some(printed) = self.printed.get_mut(&nutrient) {
                printed.value = rounded(printed.value);
                printed.u = printed.u.map(rounded);
            }
        }
        self.units = units;
    }

    /// A figure in [`Nutrient::unit`], per the basis; `None` when it isn't stated.
    pub fn get(&self, nutrient: Nutrient) -> Option<Figure> {
        let printed = self.printed.get(&nutrient)?;
        let factor = self.units.factor(nutrient);
        Some(Figure {
            value: printed.value * factor,
            u: printed.u.map(|u| u * factor),
            ..*printed
        })
    }

    /// Standard uncertainty of a stated figure, in [`Nutrient::unit`] per the basis: its own or, for a label, what its rounding
    /// hides and the law allows; the usual one of the evidence otherwise.
    pub fn standard_uncertainty(&self, nutrient: Nutrient) -> Option<f64> {
        let figure = self.get(nutrient)?;
        if figure.u.is_some() {
            return Some(figure.standard_uncertainty());
        }
        let rounding = self.rounding(nutrient) * RECTANGULAR;
        let usual = if figure.evidence == Evidence::Label {
            rounding.hypot(self.tolerance(nutrient) * RECTANGULAR)
        } else {
            figure.standard_uncertainty()
        };
        // A hundred grams hold no more than a hundred: 99.8 g of sugars are not off by ten.
        let room = match self.basis {
            Basis::Per100Grams if nutrient.is_mass() => 100.0 - figure.value,
            Basis::PerServing(grams) if nutrient.is_mass() => grams - figure.value,
            _ => f64::INFINITY,
        };
        Some(usual.min(rounding.hypot(room.max(0.0) * RECTANGULAR)))
    }

    /// How far the true figure can be from the printed one by rounding alone, in [`Nutrient::unit`] per the basis. 0 when the
    /// figure isn't stated or isn't a label's.
    pub fn rounding(&self, nutrient: Nutrient) -> f64 {
        let Some(printed) = self.printed.get(&nutrient) else {
            return 0.0;
        };
        if printed.evidence != Evidence::Label || printed.u.is_some() {
            return 0.0;
        }
        let value = printed.value.abs();
        let by_rule = match self.carbohydrate_kind {
            CarbohydrateKind::WithFibre => rounding_us(nutrient, value, self.units),
            CarbohydrateKind::WithoutFibre => rounding_eu(nutrient, value, self.units),
        };
        // A figure with more places than the rule prints was rounded at its own last place.
        by_rule.min(half_of_last_place(value)) * self.units.factor(nutrient)
    }

    /// How far the law lets a printed figure be off, in [`Nutrient::unit`] per the basis.
    fn tolerance(&self, nutrient: Nutrient) -> f64 {
        let Some(figure) = self.get(nutrient) else {
            return 0.0;
        };
        let value = figure.value.abs();
        let fifth = 0.2 * value;
        let per_100 = match self.basis {
            Basis::Per100Grams | Basis::Per100Millilitres => 1.0,
            Basis::PerServing(grams) => grams / 100.0,
        };
        if self.carbohydrate_kind == CarbohydrateKind::WithFibre {
            return fifth;
        }
        let least = |below: f64| fifth.max(below * per_100);
        let macronutrient = |below_ten: f64| {
            if value < 10.0 * per_100 {
                below_ten * per_100
            } else {
                fifth.min(8.0 * per_100)
            }
        };
        match nutrient {
            Nutrient::Carbohydrate
            | Nutrient::Sugars
            | Nutrient::Polyols
            | Nutrient::Protein
            | Nutrient::Fibre => macronutrient(2.0),
            Nutrient::Fat => macronutrient(1.5),
            Nutrient::Saturates => least(0.8),
            Nutrient::Salt => least(0.375),
            // The guidance has no tolerance for what a label states of its own accord: a fifth, as for the rest (assumed).
            Nutrient::Energy
            | Nutrient::Water
            | Nutrient::Acid
            | Nutrient::TeaSolids
            | Nutrient::Insoluble
            | Nutrient::Caffeine
            | Nutrient::Brix => fifth,
        }
    }
}

/// Half of the step to which the EU guidance rounds, in the printed unit. Up to 0.5 g (fatty acids 0.1 g) 0 may be printed.
fn rounding_eu(nutrient: Nutrient, value: f64, units: LabelUnits) -> f64 {
    match nutrient {
        Nutrient::Energy | Nutrient::Caffeine => 0.5,
        Nutrient::Saturates => grams_eu(value, 0.1),
        Nutrient::Salt if units.salt == SaltUnit::SodiumMilligrams => match value {
            value if value >= 1000.0 => 50.0,
            _ => 5.0,
        },
        Nutrient::Salt => match value {
            value if value >= 1.0 => 0.05,
            value if value > 0.0 => 0.005,
            _ => 0.0125,
        },
        _ => grams_eu(value, 0.5),
    }
}

fn grams_eu(value: f64, printed_as_zero_up_to: f64) -> f64 {
    if value >= 10.0 {
        0.5
    } else if value > 0.0 {
        0.05
    } else {
        printed_as_zero_up_to
    }
}

/// Half of the step to which 21 CFR 101.9(c) rounds a serving, in the printed unit; for 0 what may be printed as 0.
fn rounding_us(nutrient: Nutrient, value: f64, units: LabelUnits) -> f64 {
    let energy = |kilocalories: f64| match kilocalories {
        kilocalories if kilocalories > 50.0 => 5.0,
        kilocalories if kilocalories > 0.0 => 2.5,
        _ => 5.0,
    };
    let sodium = |milligrams: f64| match milligrams {
        milligrams if milligrams > 140.0 => 5.0,
        milligrams if milligrams > 0.0 => 2.5,
        _ => 5.0,
    };
    match nutrient {
        Nutrient::Energy if units.energy == EnergyUnit::Kilocalories => energy(value),
        Nutrient::Energy => energy(value / KILOJOULES_PER_KILOCALORIE) * KILOJOULES_PER_KILOCALORIE,
        Nutrient::Salt if units.salt == SaltUnit::SodiumMilligrams => sodium(value),
        Nutrient::Salt => sodium(value / SALT_PER_SODIUM * 1000.0) * SALT_PER_SODIUM / 1000.0,
        Nutrient::Fat | Nutrient::Saturates => match value {
            value if value >= 5.0 => 0.5,
            value if value > 0.0 => 0.25,
            _ => 0.5,
        },
        // Carbohydrate, fibre, sugars and protein: to whole grams, and less than half a gram may be 0. Caffeine to milligrams.
        _ => 0.5,
    }
}

/// Half of the last decimal place that a number needs, 0.5 for a whole one; no finer than a millionth.
fn half_of_last_place(value: f64) -> f64 {
    let is_whole = |scaled: f64| (scaled - scaled.round()).abs() < 1e-6 * scaled.abs().max(1.0);
    // A whole number may have been rounded to more than whole numbers.
    if is_whole(value) {
        return f64::INFINITY;
    }
    let place = (1..6)
        .map(|places| 0.1_f64.powi(places))
        .find(|place| is_whole(value / place));
    place.unwrap_or(1e-6) / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn label(kind: CarbohydrateKind, basis: Basis, figures: &[(Nutrient, f64)]) -> Composition {
        Composition {
            basis,
            carbohydrate_kind: kind,
            printed: figures
                .iter()
                .map(|&(nutrient, value)| (nutrient, Figure::new(value, Evidence::Label)))
                .collect(),
            ..Composition::default()
        }
    }

    fn kcal_and_sodium() -> LabelUnits {
        LabelUnits {
            energy: EnergyUnit::Kilocalories,
            salt: SaltUnit::SodiumMilligrams,
        }
    }

    #[test]
    fn a_label_is_kept_as_printed_and_read_in_other_units() {
        let mut us = label(
            CarbohydrateKind::WithFibre,
            Basis::PerServing(22.0),
            &[(Nutrient::Energy, 91.0), (Nutrient::Salt, 45.0)],
        );
        us.units = kcal_and_sodium();
        assert!((us.get(Nutrient::Energy).unwrap().value - 380.744).abs() < 1e-9);
        assert!((us.get(Nutrient::Salt).unwrap().value - 0.1125).abs() < 1e-9);
        assert_eq!(
            us.printed[&Nutrient::Energy].value.to_bits(),
            91.0_f64.to_bits()
        );
        us.print_in(LabelUnits::default());
        us.print_in(kcal_and_sodium());
        assert!((us.printed[&Nutrient::Energy].value - 91.0).abs() < 1e-6);
        assert!((us.printed[&Nutrient::Salt].value - 45.0).abs() < 1e-6);
    }

    #[test]
    fn a_printed_zero_hides_what_the_rule_lets_it_hide() {
        // 21 CFR 101.9(c)(2): less than 0.5 g of fat is printed as 0, on a serving of 2 g as well.
        let us = label(
            CarbohydrateKind::WithFibre,
            Basis::PerServing(2.0),
            &[(Nutrient::Fat, 0.0)],
        );
        assert!((us.rounding(Nutrient::Fat) - 0.5).abs() < 1e-12);
        // EU guidance, December 2012: up to 0.5 g per 100 g.
        let eu = label(
            CarbohydrateKind::WithoutFibre,
            Basis::Per100Grams,
            &[
                (Nutrient::Fat, 0.0),
                (Nutrient::Saturates, 0.0),
                (Nutrient::Salt, 0.0),
            ],
        );
        assert!((eu.rounding(Nutrient::Fat) - 0.5).abs() < 1e-12);
        assert!((eu.rounding(Nutrient::Saturates) - 0.1).abs() < 1e-12);
        assert!((eu.rounding(Nutrient::Salt) - 0.0125).abs() < 1e-12);
    }

    #[test]
    fn the_tolerance_of_the_law_is_that_of_the_figure() {
        let eu = |nutrient, value| {
            let label = label(
                CarbohydrateKind::WithoutFibre,
                Basis::Per100Grams,
                &[(nutrient, value)],
            );
            label.tolerance(nutrient)
        };
        // EU guidance, December 2012, table 1.
        for (nutrient, value, tolerance) in [
            (Nutrient::Protein, 6.4, 2.0),
            (Nutrient::Sugars, 25.0, 5.0),
            (Nutrient::Carbohydrate, 80.0, 8.0),
            (Nutrient::Fat, 3.6, 1.5),
            (Nutrient::Fat, 30.0, 6.0),
            (Nutrient::Saturates, 1.0, 0.8),
            (Nutrient::Saturates, 20.0, 4.0),
            (Nutrient::Salt, 0.4, 0.375),
            (Nutrient::Salt, 2.0, 0.4),
        ] {
            assert!(
                (eu(nutrient, value) - tolerance).abs() < 1e-9,
                "{nutrient:?} {value}"
            );
        }
        // Worked there: protein 6.4 g is 6.35 to 6.44 g before rounding, and 4.35 to 8.44 g with the tolerance.
        let protein = label(
            CarbohydrateKind::WithoutFibre,
            Basis::Per100Grams,
            &[(Nutrient::Protein, 6.4)],
        );
        assert!((protein.rounding(Nutrient::Protein) - 0.05).abs() < 1e-12);
        let u = protein.standard_uncertainty(Nutrient::Protein).unwrap();
        assert!((u - (2.0_f64.hypot(0.05)) / 3.0_f64.sqrt()).abs() < 1e-9);
    }

    #[test]
    fn more_places_than_the_rule_prints_are_rounded_at_their_own_last_place() {
        let label = label(
            CarbohydrateKind::WithoutFibre,
            Basis::Per100Grams,
            &[(Nutrient::Sugars, 61.25), (Nutrient::Fat, 12.0)],
        );
        assert!((label.rounding(Nutrient::Sugars) - 0.005).abs() < 1e-12);
        assert!((label.rounding(Nutrient::Fat) - 0.5).abs() < 1e-12);
    }
}
