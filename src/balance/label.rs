//! The figures of a label per 100 g as plain numbers, and what becomes of them when one of them is off.

use crate::book::Nutrient;

/// Figures may add up to this much over the whole by their rounding, g per 100 g.
const ROUNDED_UP: f64 = 0.2;

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
#[derive(Clone, Copy)]
pub(super) struct Label {
    /// By nutrient; `None` is not stated.
    pub(super) stated: [Option<f64>; Nutrient::ALL.len()],
    /// Moisture that is taken for a powder that states none.
    pub(super) moisture: f64,
    /// Part of a mixed sugar profile that moves from one sugar to another.
    pub(super) split_shift: f64,
    /// Part of what is not stated in a liquid that is solids instead of water.
    pub(super) undeclared_as_solids: f64,
}

impl Label {
    pub(super) fn get(&self, nutrient: Nutrient) -> Option<f64> {
        self.stated[nutrient as usize]
    }

    fn amount(&self, nutrient: Nutrient) -> f64 {
        self.get(nutrient).unwrap_or(0.0)
    }

    /// The label with one figure off by its standard uncertainty, and what has to go with it so that the label stays possible:
    /// a part takes its whole along, and water gives way to solids (or stops at them), when they fitted before.
    pub(super) fn with_off(&self, nutrient: Nutrient, u: f64, is_own: bool) -> Self {
        let value = self.amount(nutrient);
        let u = if is_own {
            u
        } else {
            possible_uncertainty(nutrient, value, u).min(self.rest_of(nutrient))
        };
        let mut varied = *self;
        varied.stated[nutrient as usize] = Some(value + u);
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
        ((self.amount(nutrient) - stated.iter().sum::<f64>()).max(0.0) + ROUNDING) / 3.0_f64.sqrt()
    }
}

/// The usual uncertainty of a figure per 100 g, as far as it is possible. There are no more than 100 g in 100 g: a figure near that
/// is off by what is left at most, as rectangular distribution. Water is found by drying, so it is as sure as the solids are.
fn possible_uncertainty(nutrient: Nutrient, value: f64, usual: f64) -> f64 {
    let left = (100.0 - value).max(0.0);
    match nutrient {
        Nutrient::Energy | Nutrient::Caffeine => usual,
        Nutrient::Water if value > 0.0 => usual.min(usual * left / value),
        _ => usual.min(left / 3.0_f64.sqrt()),
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
