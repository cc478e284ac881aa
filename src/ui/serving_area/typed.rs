//! What can be typed into the sheets: numbers within their range, amounts, times of day; and the fields for them.

use egui::{Align, Layout, RichText, Ui, vec2};

use crate::edit::Focus;
use crate::quantity::{
    AmountTextError, DisplayUnits, NumberError, TypedUnit, Uncertain, parse_amount,
};
use crate::say::{Speaker, say};
use crate::ui::field::{Field, FieldOutcome, TypingError};
use crate::ui::theme::grid;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::NumberRow;
use crate::workbench::Action;

/// Why a text can't be taken over.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum TypedError {
    /// No number.
    Number(NumberError),
    /// No amount.
    Amount(AmountTextError),
    /// A number that can't be.
    OutOfRange {
        /// What was typed, in the metric unit.
        found: f64,
        /// What can be.
        range: Range,
    },
    /// Neither a mass nor a volume.
    OtherUnit {
        /// What was typed.
        found: String,
    },
    /// No time of day.
    TimeOfDay {
        /// What was typed.
        found: String,
    },
}

impl From<NumberError> for TypedError {
    fn from(error: NumberError) -> Self {
        Self::Number(error)
    }
}

impl From<AmountTextError> for TypedError {
    fn from(error: AmountTextError) -> Self {
        Self::Amount(error)
    }
}

impl TypingError for TypedError {
    fn said(&self, speaker: Speaker<'_>) -> String {
        match self {
            Self::Number(error) => speaker.number_error(error),
            Self::Amount(error) => speaker.amount_text_error(error),
            Self::OutOfRange { found, range } => {
                let unit = speaker.units.of(range.unit);
                say!(
                    speaker,
                    "serving-out-of-range",
                    found: speaker.trimmed(*found, range.unit, 1),
                    from: speaker.digits(&unit.trimmed(range.from, 1)),
                    to: speaker.trimmed(range.to, range.unit, 1)
                )
            }
            Self::OtherUnit { found } => {
                say!(speaker, "serving-no-mass-or-volume", found: found, units: speaker.or(&UNITS))
            }
            Self::TimeOfDay { found } => say!(speaker, "serving-not-a-time", found: found),
        }
    }
}

/// Units of masses and volumes that are read.
const UNITS: [&str; 7] = ["g", "kg", "oz", "lb", "ml", "l", "fl oz"];

/// A range with its unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Range {
    pub(super) from: f64,
    pub(super) to: f64,
    pub(super) unit: &'static str,
}

impl Range {
    /// Reads a number within the range; `None` for an empty text.
    pub(super) fn read(self, text: &str) -> Result<Option<f64>, TypedError> {
        self.read_in(text, DisplayUnits::METRIC)
    }

    /// The same where a bare number is in the unit that the person reads.
    pub(super) fn read_in(
        self,
        text: &str,
        units: DisplayUnits,
    ) -> Result<Option<f64>, TypedError> {
        let Some(found) = units.of(self.unit).read_optional(text)? else {
            return Ok(None);
        };
        if (self.from..=self.to).contains(&found) {
            return Ok(Some(found));
        }
        Err(TypedError::OutOfRange { found, range: self })
    }

    /// Reads a number that has to be there.
    pub(super) fn read_needed_in(self, text: &str, units: DisplayUnits) -> Result<f64, TypedError> {
        self.read_in(text, units)?
            .ok_or(NumberError::Missing.into())
    }
}

/// Reads a mass or a volume as grams, with the grams of a millilitre; `None` for an empty text.
pub(super) fn read_grams(text: &str, grams_per_millilitre: f64) -> Result<Option<f64>, TypedError> {
    let density = Uncertain::exact(grams_per_millilitre);
    Ok(read_mass(text, density)?.map(|grams| grams.value))
}

/// The same where nobody is sure of the grams of a millilitre: what was typed in grams is sure.
pub(super) fn read_mass(
    text: &str,
    grams_per_millilitre: Uncertain,
) -> Result<Option<Uncertain>, TypedError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let amount = parse_amount(text)?;
    let grams = match amount.unit {
        TypedUnit::None | TypedUnit::Grams => Uncertain::exact(amount.number),
        TypedUnit::Millilitres => Uncertain {
            value: amount.number * grams_per_millilitre.value,
            u: amount.number * grams_per_millilitre.u,
        },
        _ => {
            let found = text.trim().to_owned();
            return Err(TypedError::OtherUnit { found });
        }
    };
    Ok(Some(grams))
}

/// Reads `14:05` as minutes since midnight; `None` for an empty text.
pub(super) fn read_time_of_day(text: &str) -> Result<Option<i64>, TypedError> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let part = |part: &str, below: i64| {
        let is_number =
            (1..=2).contains(&part.len()) && part.bytes().all(|byte| byte.is_ascii_digit());
        part.parse()
            .ok()
            .filter(|number: &i64| is_number && *number < below)
    };
    let minutes = text.split_once([':', '.']).and_then(|(hours, minutes)| {
        let minutes = part(minutes, 60).filter(|_| minutes.len() == 2)?;
        Some(part(hours, 24)? * 60 + minutes)
    });
    minutes.map(Some).ok_or_else(|| TypedError::TimeOfDay {
        found: text.to_owned(),
    })
}

/// Words before the fields of the sheets, in points.
pub(super) const LABEL: f32 = 42.0 * grid::STEP;

/// A field alone, in a row of others.
pub(super) fn cell_ui(
    ui: &mut Ui,
    focus: Focus,
    name: &str,
    shown: String,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) -> FieldOutcome {
    Field::number(focus, name, shown).hint("–").show_in(
        ui,
        vec2(NumberRow::FIELD, grid::TARGET),
        drafts,
        actions,
    )
}

/// Words above a column of fields.
pub(super) fn column_head_ui(ui: &mut Ui, words: RichText) {
    let size = vec2(NumberRow::FIELD, 5.0 * grid::STEP);
    ui.allocate_ui_with_layout(size, Layout::right_to_left(Align::Center), |ui| {
        ui.set_min_width(NumberRow::FIELD);
        ui.label(words);
    });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::TemperatureUnit;

    #[test]
    fn times_of_day_are_read_and_others_refused() {
        for (text, minutes) in [
            ("9:05", 545),
            ("00:00", 0),
            ("23.59", 1439),
            (" 14:30 ", 870),
        ] {
            assert_eq!(read_time_of_day(text), Ok(Some(minutes)), "{text}");
        }
        for text in ["24:00", "9", "9:5", "12:60", "-1:00", "a:bc", "1:+5"] {
            assert!(read_time_of_day(text).is_err(), "{text}");
        }
        assert_eq!(read_time_of_day(" "), Ok(None));
    }

    #[test]
    fn amounts_of_tea_are_read_in_grams() {
        assert_eq!(read_grams("2 l", 1.0), Ok(Some(2000.0)));
        assert_eq!(read_grams("1.5 kg", 1.0), Ok(Some(1500.0)));
        assert_eq!(read_grams("16 ml", 0.25), Ok(Some(4.0)));
        assert_eq!(read_grams("", 1.0), Ok(None));
        let error = read_grams("2 scoops", 1.0).unwrap_err();
        assert_eq!(
            error.said(Speaker::without_book()),
            "“2 scoops” is neither a mass nor a volume: use g, kg, oz, lb, ml, l or fl oz"
        );
    }

    #[test]
    fn numbers_outside_their_range_are_refused_with_it() {
        let celsius = Range {
            from: -10.0,
            to: 110.0,
            unit: "°C",
        };
        assert_eq!(celsius.read("58.5 °C"), Ok(Some(58.5)));
        let error = celsius.read("300").unwrap_err();
        assert_eq!(
            error.said(Speaker::without_book()),
            "300\u{a0}°C is out of range: enter −10 to 110\u{a0}°C"
        );
        let fahrenheit = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        let error = celsius.read_in("300", fahrenheit).unwrap_err();
        assert_eq!(
            error.said(Speaker::without_book().in_units(fahrenheit)),
            "300\u{a0}°F is out of range: enter 14 to 230\u{a0}°F"
        );
        assert_eq!(
            celsius.read_needed_in("", DisplayUnits::METRIC),
            Err(NumberError::Missing.into())
        );
    }
}
