//! A figure as it is said: in digits with its uncertainty, as far as it is known, or why it is not.

use crate::balance::{Balance, Margin, Measurand, Reported};
use crate::quantity::{Rounded, ShownUnit, Uncertain, rounded_at_most};
use crate::say::{Speaker, say};

/// A figure in digits, with a decimal point whatever the language: a speaker writes its own sign where the figure is shown.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Value {
    /// The digits, with "≥ " or "≤ " before them when something is missing; `None` when it is not known.
    pub(super) text: Option<String>,
    /// Its standard uncertainty in digits.
    pub(super) u: Option<String>,
    /// What is missing, or why it is not known.
    pub(super) gap: Option<String>,
}

/// "+3.4 ± 0.2": a difference in digits with its sign and its doubt.
pub(super) fn more_words(speaker: Speaker<'_>, difference: Rounded) -> String {
    let doubt = difference.u.map(|u| format!(" ± {}", speaker.digits(&u)));
    let more = match difference.value.strip_prefix('+') {
        Some(digits) => format!("+{}", speaker.digits(digits)),
        None => speaker.digits(&difference.value),
    };
    more + &doubt.unwrap_or_default()
}

/// The same of a difference that is not rounded yet, with at most so many decimals.
pub(super) fn more(speaker: Speaker<'_>, difference: Uncertain, most_decimals: i32) -> String {
    let mut found = rounded_at_most(difference.value, Some(difference.u), most_decimals);
    let is_nothing = !found
        .value
        .chars()
        .any(|digit| ('1'..='9').contains(&digit));
    if difference.value > 0.0 && !is_nothing {
        found.value.insert(0, '+');
    }
    more_words(speaker, found)
}

impl Value {
    /// A figure that is known, with at most so many decimals.
    pub(super) fn known(figure: Uncertain, most_decimals: i32) -> Self {
        Self::rounded(rounded_at_most(figure.value, Some(figure.u), most_decimals))
    }

    /// A figure that is known, in digits already.
    pub(super) fn rounded(rounded: Rounded) -> Self {
        Self {
            text: Some(rounded.value),
            u: rounded.u,
            gap: None,
        }
    }

    /// A metric figure in the unit that a person reads, with at most so many decimals of the metric one.
    pub(super) fn shown(metric: Uncertain, unit: &ShownUnit<'_>, most_decimals: i32) -> Self {
        Self::known(unit.uncertain(metric), unit.decimals(most_decimals))
    }

    /// Digits as they stand.
    pub(super) fn digits(text: impl Into<String>) -> Self {
        Self {
            text: Some(text.into()),
            ..Self::default()
        }
    }

    /// No figure, and why.
    pub(super) fn not_known(reason: impl Into<String>) -> Self {
        Self {
            gap: Some(reason.into()),
            ..Self::default()
        }
    }

    /// A figure of the balance.
    pub(super) fn of(
        speaker: Speaker<'_>,
        balance: &Balance,
        measurand: Measurand,
        most_decimals: i32,
    ) -> Self {
        Self::of_reported(
            speaker,
            &balance.reported(measurand),
            measurand,
            most_decimals,
        )
    }

    /// A figure of a balance that has been reported already.
    pub(super) fn of_reported(
        speaker: Speaker<'_>,
        reported: &Reported,
        measurand: Measurand,
        most_decimals: i32,
    ) -> Self {
        let unit = speaker.units.of(measurand.unit());
        let value = reported.value.map(|value| Uncertain {
            value,
            u: reported.u.unwrap_or(0.0),
        });
        let gap = gap_words(speaker, reported);
        match (value, gap) {
            (Some(value), None) => Self::shown(value, &unit, most_decimals),
            // The known part of nothing says nothing.
            (Some(value), Some(gap)) if value.value > 0.0 => Self {
                u: None,
                ..Self::shown(value, &unit, most_decimals)
            }
            .at_least()
            .with_gap(Some(gap)),
            (_, gap) => Self {
                gap,
                ..Self::default()
            },
        }
    }

    /// What is left of a price; no more than that where a cost is not stated.
    pub(super) fn of_margin(margin: &Margin) -> Self {
        let value = Self::known(margin.margin, 2);
        if margin.is_at_most {
            value.at_most()
        } else {
            value
        }
    }

    /// The same, of which more may be.
    pub(super) fn at_least(self) -> Self {
        Self {
            text: self.text.map(|text| format!("≥ {text}")),
            ..self
        }
    }

    /// The same, of which less may be.
    pub(super) fn at_most(self) -> Self {
        Self {
            text: self.text.map(|text| format!("≤ {text}")),
            ..self
        }
    }

    /// The same with what is missing.
    pub(super) fn with_gap(self, gap: Option<String>) -> Self {
        Self { gap, ..self }
    }

    /// The digits as the language writes them, with what stands before them when something is missing.
    pub(super) fn digits_in(&self, speaker: Speaker<'_>) -> Option<String> {
        let text = self.text.as_deref()?;
        let bound = ["≥ ", "≤ "]
            .into_iter()
            .find(|bound| text.starts_with(bound));
        let bound = bound.unwrap_or_default();
        Some(bound.to_owned() + &speaker.digits(&text[bound.len()..]))
    }

    /// The figure in a sentence, with the reason when it is not known.
    pub(super) fn sentence(&self, speaker: Speaker<'_>, name: &str, unit: &str) -> String {
        let figure = self.figure(speaker, unit);
        let said = match (figure, &self.u) {
            (Some(figure), Some(u)) => {
                let u = speaker.digits(u);
                say!(speaker, "value-with-uncertainty", name: name, figure: figure, u: u)
            }
            (Some(figure), None) => say!(speaker, "value-known", name: name, figure: figure),
            (None, _) => say!(speaker, "value-not-known", name: name),
        };
        match &self.gap {
            Some(gap) => say!(speaker, "clauses", before: said, after: gap),
            None => said,
        }
    }

    /// "ice left 120 g", for a row of several figures.
    pub(super) fn short(&self, speaker: Speaker<'_>, name: &str, unit: &str) -> String {
        let said = match (self.figure(speaker, unit), &self.text) {
            (Some(figure), Some(text)) => {
                // The doubt of a known part says nothing of the whole.
                let is_whole = !text.starts_with(['≥', '≤']);
                let doubt = self.u.as_ref().filter(|_| is_whole);
                let doubt = doubt.map(|u| format!(" ± {}", speaker.digits(u)));
                format!("{name} {figure}{}", doubt.unwrap_or_default())
            }
            _ => say!(speaker, "value-short-not-known", name: name),
        };
        said.trim_start().to_owned()
    }

    /// "at least 20.3 g".
    fn figure(&self, speaker: Speaker<'_>, unit: &str) -> Option<String> {
        let text = self.text.as_deref()?;
        let with_unit = |digits: &str| {
            let digits = speaker.digits(digits);
            format!("{digits} {unit}").trim_end().to_owned()
        };
        Some(match (text.strip_prefix("≥ "), text.strip_prefix("≤ ")) {
            (Some(digits), _) => say!(speaker, "at-least", figure: with_unit(digits)),
            (_, Some(digits)) => say!(speaker, "value-at-most", figure: with_unit(digits)),
            _ => with_unit(text),
        })
    }
}

/// "not stated: Velloom oat creamer", or why there is no value; `None` when nothing is missing.
pub(super) fn gap_words(speaker: Speaker<'_>, reported: &Reported) -> Option<String> {
    if let Some(reason) = reported.reason {
        return Some(speaker.no_figure(reason).to_owned());
    }
    let missing = &reported.missing;
    (!missing.is_empty())
        .then(|| say!(speaker, "value-not-stated", ingredients: speaker.ingredients(missing)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_that_is_not_known_says_why_and_shows_no_digit() {
        let value = Value::not_known("not stated: Ondry creamer");
        assert_eq!(
            value.sentence(Speaker::without_book(), "fat", "g"),
            "fat: not known; not stated: Ondry creamer"
        );
        assert!(value.text.is_none());
    }

    #[test]
    fn a_known_figure_is_said_with_its_unit_and_doubt() {
        let value = Value::known(
            Uncertain {
                value: 7.42,
                u: 1.13,
            },
            1,
        );
        assert_eq!(
            value.sentence(Speaker::without_book(), "until 58 °C", "min"),
            "until 58 °C: 7.4 min, ± 1.1"
        );
        let speaker = Speaker::without_book();
        assert_eq!(value.short(speaker, "fat", "g"), "fat 7.4 g ± 1.1");
        let least = value.at_least();
        assert_eq!(least.short(speaker, "fat", "g"), "fat at least 7.4 g");
    }
}
