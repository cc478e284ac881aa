//! Figures of a drink: how they are worked out, what they rest on, and why there is none.

use super::{Speaker, say};
use crate::balance::published::noticeable;
use crate::balance::{Balance, Measurand, NoFigure};
use crate::book::{Axis, Evidence, IngredientId, Nutrient};

/// Volumes are told at this temperature, °C.
const REFERENCE_CELSIUS: f64 = 20.0;

/// Temperatures of food that people tell apart, °C (Engelen et al. 2002, Eur. J. Oral Sci. 110:412).
const TOLD_APART_CELSIUS: [f64; 3] = [10.0, 22.0, 35.0];

impl Speaker<'_> {
    /// What a figure is of: "total sugar". One per 100 ml has the name of that of the whole drink.
    pub fn measurand(&self, measurand: Measurand) -> &'static str {
        self.word(&format!("measurand-{}", measurand.key().replace('_', "-")))
    }

    /// Why a figure can't be given, or only a part of it.
    pub fn no_figure(&self, reason: NoFigure) -> &'static str {
        self.word(match reason {
            NoFigure::CupOrWarmRoom => "no-figure-cup-or-warm-room",
            NoFigure::WarmerOnly => "no-figure-warmer-only",
            NoFigure::Cup => "no-figure-cup",
            NoFigure::Price => "no-figure-price",
            NoFigure::OnlyWater => "no-figure-only-water",
            NoFigure::Empty => "no-figure-empty",
        })
    }

    /// The sum or law behind a figure.
    pub fn formula(&self, measurand: Measurand) -> String {
        let message = match measurand {
            Measurand::Volume => {
                let celsius = self.temperature(REFERENCE_CELSIUS, 0);
                return say!(self, "formula-volume", celsius: celsius);
            }
            Measurand::Sweetness => "formula-sweetness",
            Measurand::ServingTemperature => "formula-serving-temperature",
            Measurand::MinutesToDrinkable => "formula-minutes-to-drinkable",
            Measurand::Fill => "formula-fill",
            Measurand::Dilution => "formula-dilution",
            Measurand::Brix => "formula-brix",
            Measurand::EnergyKj | Measurand::EnergyKcal => "formula-energy",
            Measurand::Cost => "formula-cost",
            Measurand::FreeSugars => "formula-free-sugars",
            Measurand::TotalSugar => "formula-total-sugar",
            _ => "formula-sum",
        };
        self.word(message).to_owned()
    }

    /// "Velloom oat drink (label)": the ingredients of the drink grouped by the evidence of a figure, the strongest first.
    pub fn evidence(&self, balance: &Balance, nutrient: Nutrient) -> Vec<String> {
        let groups = Evidence::ALL.into_iter().filter_map(|evidence| {
            let mut ids: Vec<&IngredientId> = Vec::new();
            for line in &balance.lines {
                let item = self.book.ingredient(&line.ingredient);
                let figure = item.and_then(|item| item.composition.get(nutrient));
                let matters =
                    figure.is_some_and(|figure| figure.evidence == evidence && figure.value != 0.0);
                if matters && !ids.contains(&&line.ingredient) {
                    ids.push(&line.ingredient);
                }
            }
            let names = (!ids.is_empty()).then(|| self.ingredients(ids))?;
            Some(say!(self, "evidence-of", ingredients: names, evidence: self.evidence_kind(evidence)))
        });
        groups.collect()
    }

    /// The name of a row of the nutrition declaration: "of which sugars". A figure that no declaration has goes by its own name.
    pub fn nutrition_row(&self, measurand: Measurand) -> &'static str {
        self.word(match measurand {
            Measurand::EnergyKj | Measurand::EnergyKcal => "nutrition-energy",
            Measurand::Fat => "nutrition-fat",
            Measurand::Saturates => "nutrition-saturates",
            Measurand::Carbohydrate => "nutrition-carbohydrate",
            Measurand::TotalSugar => "nutrition-sugars",
            Measurand::Polyols => "nutrition-polyols",
            Measurand::Fibre => "nutrition-fibre",
            Measurand::Protein => "nutrition-protein",
            Measurand::Salt => "nutrition-salt",
            other => return self.measurand(other),
        })
    }

    /// Where the noticeable step of an axis is from, unless the shop has its own.
    pub fn step_source(&self, axis: &Axis) -> String {
        let message = match axis {
            Axis::Sweetness => "step-source-sweetness",
            Axis::TeaStrength => "step-source-tea-strength",
            Axis::Flavour(_) => "step-source-flavour",
            Axis::Creaminess => "step-source-creaminess",
            Axis::Acidity => "step-source-acidity",
            Axis::Body => "step-source-body",
            Axis::Temperature => {
                let step = self.kelvin(noticeable::TEMPERATURE.floor, 0);
                let apart = TOLD_APART_CELSIUS.map(|celsius| self.temperature(celsius, 0));
                return say!(self, "step-source-temperature", step: step, apart: self.and(&apart));
            }
            Axis::Volume => "step-source-volume",
        };
        self.word(message).to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_figure_has_a_name_and_a_formula() {
        let speaker = Speaker::without_book();
        for measurand in Measurand::ALL {
            assert!(!speaker.measurand(measurand).contains('_'));
            assert!(!speaker.measurand(measurand).is_empty());
            assert!(speaker.formula(measurand).ends_with('.'));
            assert!(!speaker.nutrition_row(measurand).is_empty());
        }
        assert_eq!(
            speaker.measurand(Measurand::FreeSugarsPer100Ml),
            "free sugars"
        );
        assert_eq!(
            speaker.formula(Measurand::Volume),
            "The volumes of water and dissolved solids at 20\u{a0}°C, with the ice that has melted."
        );
    }

    #[test]
    fn steps_that_rest_on_temperatures_are_told_in_the_units_of_the_reader() {
        let source = Speaker::without_book().step_source(&Axis::Temperature);
        assert!(
            source.contains("10\u{a0}°C, 22\u{a0}°C and 35\u{a0}°C are told apart"),
            "{source}"
        );
    }
}
