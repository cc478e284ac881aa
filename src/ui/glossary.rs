//! The terms of this program, each explained once: the same sentence wherever the term heads or names something.

use egui::Response;

use crate::balance::{Lens, Measurand};
use crate::book::Axis;

/// A term that is explained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Term {
    Standard,
    PlainSwap,
    NoticeableStep,
    Level,
    Distance,
    StepFloor,
    SugarFloor,
    Scatter,
    Uncertainty,
    Evidence,
    Sweetness,
    TeaStrength,
    Flavour,
    Creaminess,
    Acidity,
    Body,
    FreeSugars,
    SolubleSolids,
    Dilution,
    DrinkingTemperature,
    ServingWindow,
    Fill,
    HeadRoom,
}

impl Term {
    /// All of them.
    #[cfg(test)]
    const ALL: [Self; 23] = [
        Self::Standard,
        Self::PlainSwap,
        Self::NoticeableStep,
        Self::Level,
        Self::Distance,
        Self::StepFloor,
        Self::SugarFloor,
        Self::Scatter,
        Self::Uncertainty,
        Self::Evidence,
        Self::Sweetness,
        Self::TeaStrength,
        Self::Flavour,
        Self::Creaminess,
        Self::Acidity,
        Self::Body,
        Self::FreeSugars,
        Self::SolubleSolids,
        Self::Dilution,
        Self::DrinkingTemperature,
        Self::ServingWindow,
        Self::Fill,
        Self::HeadRoom,
    ];

    /// What it means, in a sentence or two.
    pub(super) fn sentence(self) -> &'static str {
        match self {
            Self::Standard => {
                "The standard is the latest approval of the version or of the nearest one that it builds on, with today's figures of its ingredients."
            }
            Self::PlainSwap => {
                "The plain swap replaces one ingredient by equal measures (between a powder and a liquid, by equal fat or dry matter) and changes no other line."
            }
            Self::NoticeableStep => {
                "A noticeable step is a difference that a taster just notices: a percentage of the standard's value, but never less than the floor."
            }
            Self::Level => {
                "The level compares a drink with its standard. The line is the standard, the band is one noticeable step either side, and each mark is one axis of taste with its uncertainty."
            }
            Self::Distance => {
                "The overall difference combines all axes into one number of noticeable steps. It can be above 1 even when every single axis is within one step."
            }
            Self::StepFloor => {
                "The floor is the least that a noticeable step is, however little of it the standard has."
            }
            Self::SugarFloor => {
                "The sugar floor is what powders, milk and fruit bring. Leaving out the sweetener can't take the drink below it."
            }
            Self::Scatter => {
                "The counter's own scatter is how much two cups of the same recipe differ, because no two scoops or presses are quite alike."
            }
            Self::Uncertainty => {
                "± is one standard uncertainty: the true value lies within it about two times in three, and almost always within twice that."
            }
            Self::Evidence => {
                "Evidence says where a figure comes from: a label, a specification sheet, a measurement, a published table or an assumption. It decides how far the figure is trusted."
            }
            Self::Sweetness => {
                "Sweetness is sucrose equivalent (SE): the grams of plain sugar in 100 ml that would taste as sweet at this \
                 temperature."
            }
            Self::TeaStrength => {
                "Tea strength is the dissolved solids of the tea in 100 ml of the drink."
            }
            Self::Flavour => {
                "A flavour is measured in house units. The book says how many units one gram of an ingredient has."
            }
            Self::Creaminess => "Creaminess is the fat in 100 ml of the drink.",
            Self::Acidity => {
                "Acidity is the fruit acid in 100 ml of the drink, counted as citric acid."
            }
            Self::Body => {
                "Body is how full the drink feels in the mouth: the dissolved and very fine solids in 100 ml, sugars left out."
            }
            Self::FreeSugars => {
                "Free sugars are added sugars and those of honey, syrups and juices. The sugar of milk does not count."
            }
            Self::SolubleSolids => {
                "Soluble solids are what is dissolved in 100 g of the drink, as a refractometer reads it (°Brix)."
            }
            Self::Dilution => {
                "Dilution is the water, melted ice and tea for each gram of everything else."
            }
            Self::DrinkingTemperature => {
                "The drinking temperature is where tastes are compared: warmth changes how sweet a sugar is."
            }
            Self::ServingWindow => {
                "The serving window is the temperature range in which the shop serves drinks of this kind."
            }
            Self::Fill => {
                "Fill is how much of the cup the drink takes up, with toppings and ice, in percent of its volume to the rim."
            }
            Self::HeadRoom => "Head room is what a lid or film needs to stay free below the rim.",
        }
    }

    /// The term behind an axis of taste.
    pub(super) fn of_axis(axis: &Axis) -> Option<Self> {
        Some(match axis {
            Axis::Sweetness => Self::Sweetness,
            Axis::TeaStrength => Self::TeaStrength,
            Axis::Flavour(_) => Self::Flavour,
            Axis::Creaminess => Self::Creaminess,
            Axis::Acidity => Self::Acidity,
            Axis::Body => Self::Body,
            Axis::Temperature | Axis::Volume => return None,
        })
    }

    /// The term behind a figure.
    pub(super) fn of_measurand(measurand: Measurand) -> Option<Self> {
        Some(match measurand {
            Measurand::Sweetness => Self::Sweetness,
            Measurand::TeaStrength => Self::TeaStrength,
            Measurand::Creaminess => Self::Creaminess,
            Measurand::Acidity => Self::Acidity,
            Measurand::Body => Self::Body,
            Measurand::FreeSugars => Self::FreeSugars,
            Measurand::Brix => Self::SolubleSolids,
            Measurand::Dilution => Self::Dilution,
            Measurand::MinutesToDrinkable => Self::DrinkingTemperature,
            Measurand::Fill => Self::Fill,
            _ => return None,
        })
    }

    /// The term behind what a person looks at.
    pub(super) fn of_lens(lens: Lens) -> Option<Self> {
        match lens {
            Lens::Sweetness => Some(Self::Sweetness),
            Lens::Uncertainty => Some(Self::Uncertainty),
            _ => None,
        }
    }
}

/// What can carry the explanation of a term.
pub(super) trait Explained {
    /// The sentence appears under the pointer and belongs to what a screen reader says of it.
    fn explained(self, term: impl Into<Option<Term>>) -> Self;

    /// The same with what a click does below it.
    fn explained_with(self, term: impl Into<Option<Term>>, click: &str) -> Self;
}

impl Explained for Response {
    fn explained(self, term: impl Into<Option<Term>>) -> Self {
        match term.into() {
            Some(term) => self.on_hover_text(term.sentence()),
            None => self,
        }
    }

    fn explained_with(self, term: impl Into<Option<Term>>, click: &str) -> Self {
        match term.into() {
            Some(term) => self.on_hover_text(format!("{}\nClick: {click}", term.sentence())),
            None => self.on_hover_text(click),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_term_has_sentences_of_its_own_that_end_as_sentences_do() {
        for (at, term) in Term::ALL.into_iter().enumerate() {
            let sentence = term.sentence();
            assert!(sentence.ends_with('.'), "{term:?}");
            assert!(sentence.len() < 200, "{term:?} takes long to read");
            let others = &Term::ALL[at + 1..];
            assert!(others.iter().all(|other| other.sentence() != sentence));
        }
    }
}
