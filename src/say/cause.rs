//! Causes of uncertainty, and what would narrow them.

use super::{Speaker, say};
use crate::balance::{Balance, Cause, CoolingQuestion, Sweet};
use crate::book::{
    Amount, Evidence, IngredientId, LineId, MeasureId, MeasureKind, Nutrient, VesselId,
};

/// A cause of uncertainty in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CauseWords {
    /// What is uncertain: "the poured density of Tambrel chestnut powder".
    pub what: String,
    /// What would narrow it: "weigh level measures of it".
    pub narrow: Option<String>,
}

impl Speaker<'_> {
    /// A cause of uncertainty of the figures of a drink.
    pub fn cause(&self, balance: &Balance, cause: &Cause) -> CauseWords {
        CauseWords {
            what: self.cause_itself(balance, cause),
            narrow: self.narrowing(balance, cause),
        }
    }

    fn cause_itself(&self, balance: &Balance, cause: &Cause) -> String {
        let of = |id: &IngredientId| self.ingredient(id);
        match cause {
            Cause::Composition(id, nutrient) => {
                let evidence = match self.evidence_of(id, *nutrient) {
                    Some(Evidence::Label) => "label",
                    Some(Evidence::SpecSheet) => "specification",
                    Some(Evidence::Measured) => "measured",
                    Some(Evidence::Published) => "published",
                    Some(Evidence::Assumed) => "assumed",
                    None => "derived",
                };
                say!(
                    self,
                    "cause-composition",
                    evidence: evidence,
                    nutrient: self.nutrient(*nutrient),
                    ingredient: of(id)
                )
            }
            Cause::SugarSplit(id) => say!(self, "cause-sugar-split", ingredient: of(id)),
            Cause::Undeclared(id) => say!(self, "cause-undeclared", ingredient: of(id)),
            Cause::Flavour(id, at) => {
                // The index counts the flavours of the ingredient, not those of the drink.
                let item = self.book.ingredient(id);
                match item.and_then(|item| item.composition.flavours.get(*at)) {
                    Some(flavour) => say!(
                        self,
                        "cause-flavour",
                        flavour: self.shop_word(&flavour.name),
                        ingredient: of(id)
                    ),
                    None => say!(self, "cause-nameless-flavour", ingredient: of(id)),
                }
            }
            Cause::HighPotency(id, _) => say!(self, "cause-high-potency", ingredient: of(id)),
            Cause::Density(id) => say!(self, "cause-density", ingredient: of(id)),
            Cause::BulkDensity(id) => say!(self, "cause-bulk-density", ingredient: of(id)),
            Cause::Calibration(measure, _) if self.book.measure(measure).is_none() => {
                self.word("cause-unknown-measure").to_owned()
            }
            Cause::Calibration(measure, None) => {
                say!(self, "cause-calibration", measure: self.measure(measure))
            }
            Cause::Calibration(measure, Some(id)) => say!(
                self,
                "cause-calibration-with",
                measure: self.measure(measure),
                ingredient: of(id)
            ),
            Cause::Extraction(id) => say!(self, "cause-extraction", ingredient: of(id)),
            Cause::Retention(id) => say!(self, "cause-retention", ingredient: of(id)),
            Cause::FreeSugars(id) => say!(self, "cause-free-sugars", ingredient: of(id)),
            Cause::MeasureTemperature(id) => {
                say!(self, "cause-measure-temperature", measure: self.measure(id))
            }
            Cause::LineTemperature(line) => {
                let name = self.line(balance, line);
                say!(self, "cause-line-temperature", ingredient: name)
            }
            Cause::Batch(id, _) => say!(self, "cause-batch", ingredient: of(id)),
            Cause::PolyolSweetness(Some(kind)) => {
                say!(self, "cause-polyol-sweetness", polyol: self.polyol(*kind))
            }
            Cause::PolyolSweetness(None) => self.word("cause-unknown-polyol-sweetness").to_owned(),
            Cause::TastedSweetness(id) => say!(self, "cause-tasted-sweetness", ingredient: of(id)),
            Cause::PolyolEnergy(id) => say!(self, "cause-polyol-energy", ingredient: of(id)),
            Cause::Potency(_) => self.word("cause-potency").to_owned(),
            Cause::SweetenerMixture => self.word("cause-sweetener-mixture").to_owned(),
            Cause::FreezingPoint => self.word("cause-freezing-point").to_owned(),
            Cause::Melting => self.word("cause-melting").to_owned(),
            Cause::HeatModel => self.word("cause-heat-model").to_owned(),
            Cause::DensityModel => self.word("cause-density-model").to_owned(),
            Cause::Yield(id) => say!(self, "cause-yield", ingredient: of(id)),
            Cause::RoomTemperature => self.word("cause-room-temperature").to_owned(),
            Cause::Temperature(id) => say!(self, "cause-temperature", ingredient: of(id)),
            Cause::VesselHeat(id) => say!(self, "cause-vessel-heat", vessel: self.vessel(id)),
            Cause::Cooling(id) => say!(self, "cause-cooling", vessel: self.vessel(id)),
            Cause::RelativeSweetness(sweet) => {
                let sugar = match sweet {
                    Sweet::Glucose => "glucose",
                    Sweet::Fructose => "fructose",
                    Sweet::Lactose => "lactose",
                    Sweet::Maltose => "maltose",
                    Sweet::OtherSugar => "other",
                };
                let celsius = self.temperature(balance.drinking_temperature, 0);
                say!(self, "cause-relative-sweetness", sugar: sugar, celsius: celsius)
            }
            Cause::UseScatter(line) => {
                let name = self.line(balance, line);
                say!(self, "cause-use-scatter", ingredient: name)
            }
            Cause::Reading(line) => {
                say!(self, "cause-reading", ingredient: self.line(balance, line))
            }
        }
    }

    fn narrowing(&self, balance: &Balance, cause: &Cause) -> Option<String> {
        let message = match cause {
            Cause::Composition(id, nutrient) => match self.evidence_of(id, *nutrient) {
                Some(Evidence::SpecSheet) => return None,
                Some(Evidence::Label) | None => "narrow-specification",
                Some(Evidence::Measured) => "narrow-measure-again",
                Some(Evidence::Published) => "narrow-read-label",
                Some(Evidence::Assumed) => "narrow-label-or-maker",
            },
            Cause::SugarSplit(_) => "narrow-which-sugars",
            Cause::Undeclared(_) | Cause::HighPotency(..) => "narrow-specification",
            Cause::Flavour(..)
            | Cause::TastedSweetness(_)
            | Cause::Potency(_)
            | Cause::SweetenerMixture => "narrow-taste-with-standard",
            Cause::Density(_) => "narrow-weigh-volume",
            Cause::DensityModel => "narrow-weigh-drink-volume",
            Cause::BulkDensity(_) => "narrow-weigh-level-measures",
            Cause::Calibration(measure, with) => {
                return self.narrowing_of_measure(measure, with.as_ref());
            }
            Cause::Extraction(_) => "narrow-soluble-solids",
            Cause::Retention(_) => "narrow-weigh-brew",
            Cause::FreeSugars(_) | Cause::PolyolEnergy(_) => "narrow-ingredient-list",
            Cause::MeasureTemperature(_) => "narrow-thermometer-pouring",
            Cause::LineTemperature(_) | Cause::Temperature(_) => "narrow-thermometer-adding",
            Cause::Batch(..) => "narrow-weigh-into-batch",
            Cause::FreezingPoint | Cause::Melting => "narrow-thermometer-iced",
            Cause::HeatModel => "narrow-thermometer-served",
            Cause::Yield(_) => "narrow-weigh-batches",
            Cause::RoomTemperature => "narrow-thermometer-room",
            Cause::VesselHeat(_) => "narrow-weigh-vessel",
            Cause::Cooling(id) => return self.narrowing_of_cooling(balance, id),
            Cause::UseScatter(line) => self.narrowing_of_scatter(balance, line),
            Cause::PolyolSweetness(_) | Cause::RelativeSweetness(_) | Cause::Reading(_) => {
                return None;
            }
        };
        Some(self.word(message).to_owned())
    }

    fn narrowing_of_measure(
        &self,
        measure: &MeasureId,
        with: Option<&IngredientId>,
    ) -> Option<String> {
        let measure = self.book.measure(measure)?;
        let uses = self.uses_word(measure.kind);
        let calibration = measure.calibration(with);
        let readings = calibration.map_or(0, |calibration| calibration.readings);
        Some(match readings {
            0 => say!(self, "narrow-never-weighed", uses: uses),
            1 => say!(self, "narrow-weighed-once", uses: uses),
            _ => say!(self, "narrow-weigh-more", uses: uses),
        })
    }

    fn narrowing_of_cooling(&self, balance: &Balance, cup: &VesselId) -> Option<String> {
        let cup = self.book.vessel(cup)?;
        let question = CoolingQuestion::of(cup, balance.drinking_temperature);
        Some(self.cooling_question(question).to_owned())
    }

    fn narrowing_of_scatter(&self, balance: &Balance, line: &LineId) -> &'static str {
        let line = balance.resolved.line(line);
        let measure = line.and_then(|line| match &line.amount {
            Amount::Count(_, measure) => self.book.measure(measure),
            _ => None,
        });
        match measure.map(|measure| measure.kind) {
            Some(MeasureKind::Pump | MeasureKind::Button) => "narrow-press-to-stop",
            Some(MeasureKind::Scoop | MeasureKind::Spoon | MeasureKind::IceScoop) => {
                "narrow-strike-level"
            }
            Some(MeasureKind::Jug | MeasureKind::Piece) | None => "narrow-weigh-line",
        }
    }

    fn evidence_of(&self, id: &IngredientId, nutrient: Nutrient) -> Option<Evidence> {
        let figure = self.book.ingredient(id)?.composition.get(nutrient)?;
        Some(figure.evidence)
    }

    /// The ingredient of a line of a drink.
    pub(super) fn line(&self, balance: &Balance, line: &LineId) -> String {
        match balance.resolved.line(line) {
            Some(line) => self.ingredient(&line.ingredient),
            None => self.word("cause-some-line").to_owned(),
        }
    }
}
