//! What a refractometer reading says.

use super::{Speaker, say};
use crate::balance::published::refraction::SCALE_CELSIUS;
use crate::quantity::Uncertain;
use crate::tasting::{
    BrixCaution, BrixComparison, BrixOutside, BrixReading, Misleading, SolubleSolids,
};

/// The unit of a refractometer.
const BRIX: &str = "°Brix";

impl Speaker<'_> {
    /// What a reading comes to at 20 °C.
    pub fn brix_read(&self, reading: &BrixReading, read: &SolubleSolids) -> String {
        let solids = self.uncertain(read.solids, BRIX);
        let Some(celsius) = reading.celsius else {
            return say!(self, "brix-compensated", solids: solids);
        };
        say!(
            self,
            "brix-corrected",
            solids: solids,
            scale: self.temperature(SCALE_CELSIUS, 0),
            reading: self.in_unit(reading.brix, BRIX, 1),
            correction: self.in_unit(read.correction, BRIX, 2),
            temperature: self.trimmed(celsius, "°C", 1),
        )
    }

    /// What the product holds of which a solution was read.
    pub fn brix_of_product(&self, product: &SolubleSolids) -> String {
        say!(self, "brix-product", solids: self.uncertain(product.solids, ""))
    }

    /// Whether it agrees with the label, or with the drink as it was computed.
    pub fn brix_comparison(&self, comparison: &BrixComparison, of_label: bool) -> String {
        let (part, unit) = if of_label {
            ("label", "g/100 g")
        } else {
            ("drink", BRIX)
        };
        let expected = match comparison.expected {
            Uncertain { value, u: 0.0 } => self.in_unit(value, unit, 1),
            expected => self.uncertain(expected, unit),
        };
        if comparison.agrees() {
            say!(self, "brix-agrees", part: part, expected: expected)
        } else if comparison.apart > 0.0 {
            say!(self, "brix-above", part: part, expected: expected)
        } else {
            say!(self, "brix-below", part: part, expected: expected)
        }
    }

    /// That a drink has no computed °Brix to compare with.
    pub fn brix_not_computed(&self) -> &'static str {
        self.word("brix-not-computed")
    }

    /// What to be careful about.
    pub fn brix_caution(&self, caution: &BrixCaution) -> String {
        match caution {
            BrixCaution::Misled(Misleading::Dairy) => self.word("brix-misled-dairy").to_owned(),
            BrixCaution::Misled(Misleading::Fibre) => self.word("brix-misled-fibre").to_owned(),
            BrixCaution::TooWeak { solids } => {
                say!(self, "brix-too-weak", solids: self.uncertain(*solids, BRIX))
            }
            BrixCaution::MoreThanAll => self.word("brix-more-than-all").to_owned(),
        }
    }

    /// Why a reading says nothing.
    pub fn brix_outside(&self, outside: &BrixOutside) -> String {
        match outside {
            BrixOutside::Temperature(least, most) => {
                let (least, most) = (self.temperature(*least, 0), self.temperature(*most, 0));
                say!(self, "brix-temperature-outside", least: least, most: most)
            }
            BrixOutside::Reading(least, most) => {
                let (least, most) = (self.in_unit(*least, BRIX, 0), self.in_unit(*most, BRIX, 0));
                say!(self, "brix-reading-outside", least: least, most: most)
            }
        }
    }
}
