//! A figure in a form: its number or its readings, where it comes from, and how sure it is.

use egui::Ui;

use super::form::{Entry, Sheet, cell_ui, plain, plain_to, words_ui};
use crate::book::{Evidence, Figure};
use crate::edit::{FieldName, FigurePart};
use crate::quantity::{parse_in_unit, parse_in_unit_up_to, parse_readings};
use crate::say::say;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::grid;
use crate::ui::words::{self, quiet_ui};

/// No figure in grams is as large, so that `1,250` can only be a little more than one.
const MOST_GRAMS: f64 = 999.0;

/// Digits of an uncertainty that somebody types.
const TYPED_DIGITS: usize = 3;

/// A figure that is asked for.
pub(in crate::ui) struct Asked<'asked> {
    /// Which figure of the item it is.
    pub field: FieldName,
    /// What a screen reader says.
    pub name: &'asked str,
    /// Its unit.
    pub unit: &'asked str,
    /// Room for the unit, in points.
    pub unit_width: f32,
    /// What is typed is the kept value times this.
    pub factor: f64,
    /// Where a figure comes from that is typed for the first time.
    pub first: Evidence,
}

/// Width of the value of a figure, in points.
pub(in crate::ui) const VALUE: f32 = 19.0 * grid::STEP;
/// Width of the word for its evidence, in points.
pub(in crate::ui) const EVIDENCE: f32 = 36.0 * grid::STEP;
/// Width of its uncertainty, in points.
pub(in crate::ui) const SPREAD: f32 = 12.0 * grid::STEP;

impl<T: Clone> Sheet<'_, T> {
    /// A figure with its evidence and its uncertainty; an empty field is not stated.
    pub(in crate::ui) fn figure(
        &mut self,
        ui: &mut Ui,
        asked: &Asked<'_>,
        figure: Option<Figure>,
        put: impl Fn(&mut T, Option<Figure>),
    ) {
        let usual = figure.map_or(0.0, |figure| figure.standard_uncertainty());
        self.figure_as_sure_as(ui, asked, figure, usual, put);
    }

    /// A figure whose uncertainty, where it states none, follows from more than its evidence: `usual`, in the unit of the figure.
    pub(in crate::ui) fn figure_as_sure_as(
        &mut self,
        ui: &mut Ui,
        asked: &Asked<'_>,
        figure: Option<Figure>,
        usual: f64,
        put: impl Fn(&mut T, Option<Figure>),
    ) {
        let factor = asked.factor;
        let speaker = words::speaker(ui.ctx());
        let entry = Entry::number(asked.field.clone(), asked.name)
            .width(VALUE)
            .hint(speaker.word("counter-not-stated-hint"));
        // A number typed over a measurement is none.
        let kept = figure.filter(|figure| figure.evidence != Evidence::Measured);
        let first = kept.unwrap_or(Figure::new(0.0, asked.first));
        let most = if asked.unit == "g" {
            MOST_GRAMS
        } else {
            f64::INFINITY
        };
        let shown = figure.map(|figure| plain(figure.value * factor));
        let put_typed = |item: &mut T, typed: Option<Figure>| put(item, typed);
        self.read(
            ui,
            &entry,
            &shown.unwrap_or_default(),
            |text| {
                if let Some(readings) = parse_readings(text, asked.unit, most) {
                    return readings.map(|mean| {
                        Some(Figure {
                            value: mean.value / factor,
                            evidence: Evidence::Measured,
                            u: Some(mean.u / factor),
                        })
                    });
                }
                let value = match text.trim() {
                    "" => return Ok(None),
                    // Figures in grams are parts of a hundred grams or of a serving.
                    text if asked.unit == "g" => parse_in_unit_up_to(text, asked.unit, most)?,
                    text => parse_in_unit(text, asked.unit)?,
                };
                Ok(Some(Figure {
                    value: value / factor,
                    ..first
                }))
            },
            put_typed,
        );
        words_ui(ui, asked.unit, asked.unit_width);
        let (name, field) = (
            say!(speaker, "counter-evidence-named", figure: asked.name),
            asked.field.part(FigurePart::Evidence),
        );
        cell_ui(ui, EVIDENCE, |ui| {
            let Some(figure) = figure else { return };
            let entry = Entry::wide(field, &name);
            let word = |evidence: &Evidence| speaker.evidence_kind(*evidence).to_owned();
            // Measured is what has readings: they are typed into the field.
            let is_offered =
                |kind: &Evidence| *kind != Evidence::Measured || figure.evidence == *kind;
            let offered: Vec<Evidence> = Evidence::ALL.into_iter().filter(is_offered).collect();
            self.choice(
                ui,
                &entry,
                &figure.evidence,
                &offered,
                word,
                |item, evidence| {
                    put(item, Some(Figure { evidence, ..figure }));
                },
            )
            .explained(Term::Evidence);
        });
        let Some(figure) = figure else { return };
        let (name, field) = (
            say!(speaker, "counter-uncertainty-named", figure: asked.name),
            asked.field.part(FigurePart::Uncertainty),
        );
        quiet_ui(ui, "±").explained(Term::Uncertainty);
        let usual = plain_to(figure.u.unwrap_or(usual) * factor);
        let entry = Entry::number(field, &name).width(SPREAD).hint(&usual);
        let shown = figure.u.map(|u| uncertainty(u * factor));
        let unit = self.units.of("");
        self.read(
            ui,
            &entry,
            &shown.unwrap_or_default(),
            |text| unit.read_optional(text),
            |item, u| {
                let u = u.map(|u| u / factor);
                put(item, Some(Figure { u, ..figure }));
            },
        );
    }
}

/// An uncertainty as a field shows it: as it was typed or, with the digits that a reckoned one has, rounded.
fn uncertainty(u: f64) -> String {
    let typed = plain(u);
    let digits = typed.trim_start_matches(['0', '.']);
    let digits = digits.chars().filter(char::is_ascii_digit).count();
    if digits > TYPED_DIGITS {
        plain_to(u)
    } else {
        typed
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_uncertainty_has_no_more_digits_than_somebody_types() {
        for (u, shown) in [
            (12.097_123, "12"),
            (0.012_345_6, "0.0123"),
            (0.125, "0.125"),
            (2.0, "2"),
            (150.0, "150"),
            (0.0, "0"),
        ] {
            assert_eq!(uncertainty(u), shown);
        }
    }
}
