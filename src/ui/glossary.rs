//! The terms of this program, each explained once: the same sentence wherever the term heads or names something.

use egui::Response;

use super::words;
use crate::balance::{Lens, Measurand};
use crate::book::Axis;
use crate::say::{Speaker, say};

/// A term that is explained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Term {
    Standard,
    PlainSwap,
    NoticeableStep,
    Level,
    Whisker,
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
    const ALL: [Self; 24] = [
        Self::Standard,
        Self::PlainSwap,
        Self::NoticeableStep,
        Self::Level,
        Self::Whisker,
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
    pub(super) fn sentence(self, speaker: Speaker<'_>) -> &'static str {
        speaker.word(match self {
            Self::Standard => "term-standard",
            Self::PlainSwap => "term-plain-swap",
            Self::NoticeableStep => "term-noticeable-step",
            Self::Level => "term-level",
            Self::Whisker => "term-whisker",
            Self::Distance => "term-distance",
            Self::StepFloor => "term-step-floor",
            Self::SugarFloor => "term-sugar-floor",
            Self::Scatter => "term-scatter",
            Self::Uncertainty => "term-uncertainty",
            Self::Evidence => "term-evidence",
            Self::Sweetness => "term-sweetness",
            Self::TeaStrength => "term-tea-strength",
            Self::Flavour => "term-flavour",
            Self::Creaminess => "term-creaminess",
            Self::Acidity => "term-acidity",
            Self::Body => "term-body",
            Self::FreeSugars => "term-free-sugars",
            Self::SolubleSolids => "term-soluble-solids",
            Self::Dilution => "term-dilution",
            Self::DrinkingTemperature => "term-drinking-temperature",
            Self::ServingWindow => "term-serving-window",
            Self::Fill => "term-fill",
            Self::HeadRoom => "term-head-room",
        })
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
            Some(term) => {
                let sentence = term.sentence(words::speaker(&self.ctx));
                self.on_hover_text(sentence)
            }
            None => self,
        }
    }

    fn explained_with(self, term: impl Into<Option<Term>>, click: &str) -> Self {
        match term.into() {
            Some(term) => {
                let speaker = words::speaker(&self.ctx);
                let sentence = term.sentence(speaker);
                let words = say!(speaker, "term-and-click", sentence: sentence, click: click);
                self.on_hover_text(words)
            }
            None => self.on_hover_text(click),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    #[test]
    fn each_term_has_sentences_of_its_own_that_end_as_sentences_do() {
        for (code, longest) in [("en", 200), ("de", 230)] {
            let speaker = Speaker::without_book().in_language(Language::from_code(code).unwrap());
            for (at, term) in Term::ALL.into_iter().enumerate() {
                let sentence = term.sentence(speaker);
                assert!(sentence.ends_with('.'), "{code}: {term:?}");
                let length = sentence.chars().count();
                assert!(length < longest, "{code}: {term:?} takes {length}");
                let mut others = Term::ALL[at + 1..].iter();
                assert!(others.all(|other| other.sentence(speaker) != sentence));
            }
        }
    }
}
