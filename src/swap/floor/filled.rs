//! Everything that encloses the drink in a box, with the amount that fills.

use crate::balance::Prepared;
use crate::optimiser::Range;

use super::drink::Lines;
use super::enclosure::{Enclosed, Enclosure, Regime};
use super::filling::Filling;
use super::filling_line::filling_line;
use super::form::{Bounds, Form, Interval};

/// What encloses the drink and the amount that fills; made once for a question.
#[derive(Clone, Debug)]
pub(super) struct FilledEnclosure {
    /// What encloses the drink.
    pub(super) drink: Enclosure,
    filling: Option<Filling>,
}

impl FilledEnclosure {
    /// `None` where the drink can't be enclosed, or something fills and hardly takes room.
    pub(super) fn new(
        prepared: &Prepared,
        lines: &Lines,
        ranges: &[Range],
        reference: &[f64],
        reference_celsius: f64,
    ) -> Option<Self> {
        let drink = Enclosure::new(prepared, lines, ranges, reference, reference_celsius)?;
        let filling = match filling_line(prepared) {
            Some(line) => Some(Filling::new(&drink, prepared, lines, line)?),
            None => None,
        };
        Some(Self { drink, filling })
    }

    /// The box with its enclosures; `None` where they do not hold.
    pub(super) fn enclose(&self, low: &[i32], high: &[i32]) -> Option<Enclosed> {
        let mut bounds = Bounds::new(low, high, Interval::ZERO);
        let Some(filling) = &self.filling else {
            return self.drink.offsets(&bounds);
        };
        bounds.set_fill(filling.at_first(&bounds));
        let mut enclosed = self.drink.offsets(&bounds)?;
        for _ in 0..2 {
            let (range, ..) = filling.offset(&self.drink, &enclosed);
            bounds.set_fill(Interval::new(
                range.low.max(0.0),
                range.high.clamp(0.0, filling.most),
            ));
            enclosed = self.drink.offsets(&bounds)?;
        }
        // The form that goes with the regime of the last round.
        (_, enclosed.fill, enclosed.regime) = filling.offset(&self.drink, &enclosed);
        Some(enclosed)
    }

    /// The form of the amount that fills, for the regime.
    pub(super) fn fill_form(&self, regime: Regime) -> Option<&Form> {
        self.filling.as_ref().map(|filling| filling.form(regime))
    }

    /// Whether a bed of ice may reach the rim first.
    pub(super) fn has_bed(&self) -> bool {
        self.filling.as_ref().is_some_and(Filling::has_bed)
    }
}
