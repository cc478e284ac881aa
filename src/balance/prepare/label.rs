//! The figures of a label per 100 g as plain numbers, and what becomes of them when one of them is off.

use super::kind::Nature;
use crate::balance::assumption::{Assumed, Assumption, Because};
use crate::balance::published::food_components::FoodComponent;
use crate::balance::published::sugar_solution;
use crate::balance::solve::physics::MODEL_VOLUME_UNCERTAINTY;
use crate::book::{Basis, CarbohydrateKind, Figure, Form, Ingredient, Nutrient};
use crate::quantity::{RECTANGULAR, Uncertain};

/// Figures may add up to this much over the whole by their rounding, g per 100 g.
const ROUNDED_UP: f64 = 0.2;

/// What is left to the whole settles what is not stated when it is less than this, g per 100 g (assumed).
const NEXT_TO_NOTHING: f64 = 1.0;

/// What the figures of a table or a sheet may hide together by their rounding, g per 100 g (assumed).
const LEAST_ROUNDING: f64 = 0.1;

/// Part of what a liquid does not state that may be solids, as standard uncertainty: up to two thirds may be sugar, as in a syrup.
pub(super) const UNDECLARED_SOLIDS: f64 = 0.65 * RECTANGULAR;

/// What fills the whole: parts of one another are left out.
const WHOLE: [Nutrient; 8] = [
    Nutrient::Water,
    Nutrient::Fat,
    Nutrient::Carbohydrate,
    Nutrient::Fibre,
    Nutrient::Protein,
    Nutrient::Salt,
    Nutrient::Acid,
    Nutrient::TeaSolids,
];

/// Half of the last place of a label, g per 100 g.
const ROUNDING: f64 = 0.05;

/// Wholes and the parts of them that a label states.
const PARTS_OF: [(Nutrient, &[Nutrient]); 2] = [
    (
        Nutrient::Carbohydrate,
        &[Nutrient::Sugars, Nutrient::Polyols],
    ),
    (Nutrient::Fat, &[Nutrient::Saturates]),
];

/// The figures of a label as plain numbers per 100 g, so that one can be moved and the mix made again.
#[derive(Clone, Copy, Debug)]
pub(super) struct Label {
    /// By nutrient; `None` is neither stated nor assumed.
    pub(super) stated: [Option<f64>; Nutrient::ALL.len()],
    /// Moisture that is taken for a powder that states none.
    pub(super) moisture: f64,
    /// How far the sugars are on the way from one division to another, 0 to 1.
    pub(super) split_shift: f64,
    /// Part of what is not stated in a liquid that is solids instead of water.
    pub(super) undeclared_as_solids: f64,
    /// Whether carbohydrate has fibre in it that nobody has stated.
    pub(super) hides_fibre: bool,
}

/// What the figures of a composition are multiplied with to be per 100 g, and the density that this rests on.
pub(super) fn per_100_grams_factor(item: &Ingredient) -> (f64, Option<Figure>) {
    match item.composition.basis {
        Basis::PerServing(grams) if grams > 0.0 => (100.0 / grams, None),
        Basis::Per100Grams | Basis::PerServing(_) => (1.0, None),
        Basis::Per100Millilitres => {
            // A foam's own density is that of its air; the label is of the liquid.
            let stated = item.density.filter(|_| item.form != Form::Foam);
            let density = stated.unwrap_or_else(|| density_from_label(item));
            (1.0 / density.value.max(0.1), Some(density))
        }
    }
}

/// The density of a liquid whose label is per 100 ml and states none: its fat takes its own room, and the rest is the sugar solution
/// that holds as many grams of solids. Its doubt is that of volumes by components, and what each figure and what is not
/// stated could make of it.
fn density_from_label(item: &Ingredient) -> Figure {
    let composition = &item.composition;
    let stated = |nutrient| composition.get(nutrient).map(|figure| figure.value);
    let doubt = |nutrient| composition.standard_uncertainty(nutrient).unwrap_or(0.0);
    let of_sugars = [Nutrient::Carbohydrate, Nutrient::Sugars]
        .into_iter()
        .filter_map(|nutrient| Some((stated(nutrient)?, doubt(nutrient))))
        .max_by(|one, other| one.0.total_cmp(&other.0));
    // °Brix is a percentage of mass whatever the label is per.
    let soluble = of_sugars.or_else(|| {
        let brix = stated(Nutrient::Brix)?;
        let held = sugar_solution::density_kg_per_m3(brix / 100.0, 20.0) / 1000.0;
        Some((brix * held, doubt(Nutrient::Brix) * held))
    });
    let protein = stated(Nutrient::Protein).unwrap_or(0.0);
    let fat = stated(Nutrient::Fat).unwrap_or(0.0);
    let (carbohydrate, of_carbohydrate) = soluble.unwrap_or_else(|| {
        let rest = 100.0 - protein - fat - stated(Nutrient::Water).unwrap_or(0.0);
        (0.0, UNDECLARED_SOLIDS * rest.max(0.0))
    });
    let solids = carbohydrate + protein;
    let density = density_holding(solids, fat);
    let effects = [
        density_holding(solids + of_carbohydrate, fat) - density,
        density_holding(solids + doubt(Nutrient::Protein), fat) - density,
        density_holding(solids, fat + doubt(Nutrient::Fat)) - density,
        MODEL_VOLUME_UNCERTAINTY * density,
    ];
    let squares: f64 = effects.iter().map(|effect| effect * effect).sum();
    Figure {
        value: density,
        evidence: crate::book::Evidence::Assumed,
        u: Some(squares.sqrt()),
    }
}

/// Density of a liquid that holds so many grams of soluble solids and of fat in 100 ml, g/ml at 20 °C.
fn density_holding(solids: f64, fat: f64) -> f64 {
    let room = (100.0 - fat * 1000.0 / FoodComponent::Fat.density_kg_per_m3(20.0)).max(1.0);
    let mut rest = 1.0;
    for _ in 0..20 {
        let fraction = (solids / room / rest).clamp(0.0, 0.85);
        rest = sugar_solution::density_kg_per_m3(fraction, 20.0) / 1000.0;
    }
    (rest * room + fat.min(100.0)) / 100.0
}

impl Label {
    /// What is printed, per 100 g by `factor`, and nothing else. °Brix is a percentage of mass whatever the label is per.
    pub(super) fn printed(item: &Ingredient, factor: f64, moisture: f64) -> Self {
        let composition = &item.composition;
        let mut stated = [None; Nutrient::ALL.len()];
        for nutrient in Nutrient::ALL {
            let scale = factor_of(nutrient, factor);
            stated[nutrient as usize] =
                composition.get(nutrient).map(|figure| figure.value * scale);
        }
        let has_fibre_in_it = composition.carbohydrate_kind == CarbohydrateKind::WithFibre;
        let fibre = stated[Nutrient::Fibre as usize];
        let carbohydrate = stated[Nutrient::Carbohydrate as usize];
        if let (Some(value), Some(fibre), true) = (carbohydrate, fibre, has_fibre_in_it) {
            // Carbohydrate is without fibre in the engine.
            stated[Nutrient::Carbohydrate as usize] = Some((value - fibre).max(0.0));
        }
        Self {
            stated,
            moisture,
            split_shift: 0.0,
            undeclared_as_solids: 0.0,
            hides_fibre: has_fibre_in_it && fibre.is_none() && carbohydrate.is_some(),
        }
    }

    /// Fills in what can be told without being stated, and says what that was.
    ///
    /// The kind of the ingredient comes first; then parts of a whole that is nothing; then what is stated adding up to the
    /// whole, as far as its rounding allows.
    pub(super) fn assume(
        &mut self,
        item: &Ingredient,
        nature: &Nature,
        factor: f64,
    ) -> Vec<Assumption> {
        let mut assumed = Vec::new();
        let mut take = |label: &mut Self, nutrient: Nutrient, figure: Uncertain, because| {
            label.stated[nutrient as usize] = Some(figure.value);
            assumed.push(Assumption {
                what: Assumed::Figure(nutrient),
                figure: Some(figure),
                because,
            });
        };
        // Fibre that hides in carbohydrate is no part of the rest.
        let is_open = |label: &Self, nutrient: Nutrient| {
            label.get(nutrient).is_none() && !(label.hides_fibre && nutrient == Nutrient::Fibre)
        };
        let none = |u: f64| Uncertain { value: 0.0, u };
        for (whole, parts) in PARTS_OF {
            if self.get(whole) != Some(0.0) {
                continue;
            }
            let doubt = item.composition.standard_uncertainty(whole).unwrap_or(0.0) * factor;
            for part in parts.iter().copied() {
                if self.get(part).is_none() {
                    take(self, part, none(doubt), Because::PartOfNothing);
                }
            }
        }
        for nutrient in Nutrient::ALL {
            if is_open(self, nutrient)
                && let Some((figure, because)) = nature.assumed(nutrient, &item.composition)
            {
                take(self, nutrient, figure, because);
            }
        }
        if let Some(most) = self.left_over(item, factor) {
            for nutrient in WHOLE {
                if nutrient != Nutrient::Water && is_open(self, nutrient) {
                    // Carbohydrate is no less than its parts.
                    let parts = if nutrient == Nutrient::Carbohydrate {
                        self.amount(Nutrient::Sugars) + self.amount(Nutrient::Polyols)
                    } else {
                        0.0
                    };
                    let figure = Uncertain {
                        value: parts,
                        u: most * RECTANGULAR,
                    };
                    take(self, nutrient, figure, Because::NothingLeft);
                }
            }
            for (whole, parts) in PARTS_OF {
                for part in parts.iter().copied() {
                    if self.get(whole) == Some(0.0) && self.get(part).is_none() {
                        take(self, part, none(most * RECTANGULAR), Because::NothingLeft);
                    }
                }
            }
        }
        assumed
    }

    /// What may be left of 100 g beside what is stated, g, its rounding included; `None` when that is more than next to
    /// nothing.
    fn left_over(&self, item: &Ingredient, factor: f64) -> Option<f64> {
        let printed =
            |nutrient: Nutrient| item.composition.rounding(nutrient) * factor_of(nutrient, factor);
        let has_carbohydrate = self.get(Nutrient::Carbohydrate).is_some();
        let parts = WHOLE
            .into_iter()
            .chain((!has_carbohydrate).then_some(Nutrient::Sugars));
        let (mut sum, mut rounding) = (0.0, 0.0);
        for nutrient in parts {
            sum += self.amount(nutrient);
            rounding += printed(nutrient);
        }
        let most = (100.0 - sum).max(0.0) + rounding.max(LEAST_ROUNDING);
        (most <= NEXT_TO_NOTHING).then_some(most)
    }

    pub(super) fn get(&self, nutrient: Nutrient) -> Option<f64> {
        self.stated[nutrient as usize]
    }

    pub(super) fn amount(&self, nutrient: Nutrient) -> f64 {
        self.get(nutrient).unwrap_or(0.0)
    }

    /// The label with one figure off by its standard uncertainty, and what has to go with it so that the label stays possible:
    /// a part takes its whole along, and water gives way to solids (or stops at them), when they fitted before. No part
    /// passes the whole.
    pub(super) fn with_off(&self, nutrient: Nutrient, u: f64, is_own: bool) -> Self {
        let value = self.amount(nutrient);
        let u = if is_own {
            u
        } else {
            possible_uncertainty(nutrient, value, u).min(self.rest_of(nutrient))
        };
        let mut varied = *self;
        let most = if nutrient.is_mass() {
            100.0_f64.max(value)
        } else {
            f64::INFINITY
        };
        varied.stated[nutrient as usize] = Some((value + u).min(most));
        for (whole, parts) in PARTS_OF {
            let sum = |label: &Self| parts.iter().map(|part| label.amount(*part)).sum::<f64>();
            if let (Some(before), Some(after)) = (self.get(whole), varied.get(whole))
                && sum(self) <= before
                && sum(&varied) > after
            {
                varied.stated[whole as usize] = Some(sum(&varied));
            }
        }
        let sum = |label: &Self| WHOLE.iter().map(|part| label.amount(*part)).sum::<f64>();
        if let Some(water) = varied.get(Nutrient::Water)
            && sum(self) <= 100.0 + ROUNDED_UP
        {
            let over = (sum(&varied) - sum(self).max(100.0)).max(0.0);
            varied.stated[Nutrient::Water as usize] = Some((water - over).max(0.0));
        }
        varied
    }

    /// How far a whole can be off for itself: by what its stated parts leave of it, as rectangular distribution; what is uncertain in
    /// the parts takes it along. Its own rounding stays.
    fn rest_of(&self, nutrient: Nutrient) -> f64 {
        let parts = PARTS_OF
            .iter()
            .find(|(whole, _)| *whole == nutrient)
            .map_or(&[][..], |(_, parts)| parts);
        let stated: Vec<f64> = parts.iter().filter_map(|part| self.get(*part)).collect();
        if stated.is_empty() {
            return f64::INFINITY;
        }
        ((self.amount(nutrient) - stated.iter().sum::<f64>()).max(0.0) + ROUNDING) * RECTANGULAR
    }
}

/// What a figure is multiplied with to be per 100 g.
pub(super) fn factor_of(nutrient: Nutrient, factor: f64) -> f64 {
    if nutrient == Nutrient::Brix {
        1.0
    } else {
        factor
    }
}

/// The usual uncertainty of a figure per 100 g, as far as it is possible. There are no more than 100 g in 100 g: a figure near that
/// is off by what is left at most, as rectangular distribution. Water is found by drying, so it is as sure as the solids are.
fn possible_uncertainty(nutrient: Nutrient, value: f64, usual: f64) -> f64 {
    let left = (100.0 - value).max(0.0);
    match nutrient {
        Nutrient::Energy | Nutrient::Caffeine => usual,
        Nutrient::Water if value > 0.0 => usual.min(usual * left / value),
        _ => usual.min(left * RECTANGULAR),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn label(figures: &[(Nutrient, f64)]) -> Label {
        let mut label = Label {
            stated: [None; Nutrient::ALL.len()],
            moisture: 4.0,
            split_shift: 0.0,
            undeclared_as_solids: 0.0,
            hides_fibre: false,
        };
        for (nutrient, value) in figures {
            label.stated[*nutrient as usize] = Some(*value);
        }
        label
    }

    #[test]
    fn nothing_is_more_than_the_whole() {
        let sugar = label(&[(Nutrient::Carbohydrate, 99.8), (Nutrient::Sugars, 99.8)]);
        let off = sugar.with_off(Nutrient::Sugars, 11.5, false);
        assert!(
            off.amount(Nutrient::Sugars) < 100.0,
            "{:?}",
            off.get(Nutrient::Sugars)
        );
        assert!((off.amount(Nutrient::Carbohydrate) - off.amount(Nutrient::Sugars)).abs() < 1e-12);
    }

    #[test]
    fn tea_of_99_7_percent_water_is_sure_to_a_few_hundredths() {
        let off = label(&[(Nutrient::Water, 99.7), (Nutrient::TeaSolids, 0.3)]).with_off(
            Nutrient::Water,
            9.97,
            false,
        );
        assert!((off.amount(Nutrient::Water) - 99.7) < 0.031);
    }

    #[test]
    fn water_gives_way_to_solids() {
        let syrup = label(&[(Nutrient::Water, 34.0), (Nutrient::Carbohydrate, 66.0)]);
        let off = syrup.with_off(Nutrient::Carbohydrate, 2.0, true);
        assert!((off.amount(Nutrient::Water) - 32.0).abs() < 1e-12);
    }

    #[test]
    fn a_label_that_was_impossible_before_is_left_as_it_is() {
        let milk = label(&[(Nutrient::Carbohydrate, 4.80), (Nutrient::Sugars, 5.06)]);
        let off = milk.with_off(Nutrient::Sugars, 0.1, true);
        assert!((off.amount(Nutrient::Carbohydrate) - 4.80).abs() < 1e-12);
    }
}
