//! The figures of one drink of a swap, aligned at the decimal sign, with the change against the standard.

use egui::{Align2, Color32, Painter, Pos2, Sense, Ui, WidgetInfo, pos2, vec2};

use super::model::{self, Compared};
use crate::say::{Speaker, say};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::figure_list::FigureText;
use crate::ui::widgets::name::{self, width_of};

/// Height of a row of figures, in points.
const ROW: f32 = 6.0 * grid::STEP;
/// Room for the digits before the decimal sign, in points.
const BEFORE_DECIMAL: f32 = 12.0 * grid::STEP;
/// Room for decimals and unit, in points.
const AFTER_DECIMAL: f32 = 20.0 * grid::STEP;
/// Room for the change against the standard, in points.
const CHANGE: f32 = 15.0 * grid::STEP;
/// Room behind the decimal sign of the change, in points.
const CHANGE_DECIMALS: f32 = 6.0 * grid::STEP;
/// The widest row of figures, in points: in a wider one the eye loses the row.
const WIDEST: f32 = 110.0 * grid::STEP;

/// The figures of one drink, aligned at the decimal sign, with the change against the standard.
pub(super) fn figures_ui(ui: &mut Ui, speaker: Speaker<'_>, figures: &[Compared]) {
    let palette = theme::palette(ui.visuals());
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let width = ui.available_width().min(WIDEST);
        let room = width - CHANGE - AFTER_DECIMAL - BEFORE_DECIMAL;
        let mut names = figures.iter().map(|compared| &compared.row.name);
        let font = TypeStyle::Body.font_id();
        let fits = |name: &String| width_of(ui, name, &font) <= room;
        let style = if names.all(fits) {
            TypeStyle::Body
        } else {
            TypeStyle::Small
        };
        for Compared { row, change } in figures {
            let (rect, response) = ui.allocate_exact_size(vec2(width, ROW), Sense::hover());
            let change = &change.as_deref().map(|change| model::signed(speaker, change));
            let words = match change {
                Some(change) => {
                    say!(speaker, "swap-screen-figure-and-change", figure: row.words(speaker), change: change)
                }
                None => row.words(speaker),
            };
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Label, true, &words));
            let painter = ui.painter();
            let (y, small) = (rect.center().y, TypeStyle::Small.font_id());
            let decimal = rect.right() - CHANGE - AFTER_DECIMAL;
            let name_room = rect.with_max_x(decimal - BEFORE_DECIMAL);
            let is_cut = name::painted(ui, name_room, &row.name, style, palette.text_normal);
            let (value, colour) = match &row.text {
                FigureText::Known { value, .. } => (speaker.digits(value), palette.text_strong),
                FigureText::AtLeast { value, .. } => {
                    let value = speaker.digits(value);
                    (format!("≥ {value}"), palette.text_strong)
                }
                FigureText::Said(words) => (words.clone(), palette.text_quiet),
                FigureText::NotKnown { .. } => {
                    let words = speaker.word("swap-screen-not-known");
                    (words.to_owned(), palette.text_quiet)
                }
            };
            let end = number_at(painter, pos2(decimal, y), &value, TypeStyle::Body, colour);
            let unit = pos2(end.max(decimal) + grid::TIGHT, y);
            painter.text(
                unit,
                Align2::LEFT_CENTER,
                &row.unit,
                small,
                palette.text_quiet,
            );
            if let Some(change) = change {
                let colour = palette.text_quiet;
                if change.contains(|sign: char| sign.is_ascii_digit()) {
                    let decimal = pos2(rect.right() - CHANGE_DECIMALS, y);
                    number_at(painter, decimal, change, TypeStyle::Small, colour);
                } else {
                    // "the same"
                    let font = TypeStyle::Small.font_id();
                    painter.text(
                        rect.right_center(),
                        Align2::RIGHT_CENTER,
                        change,
                        font,
                        colour,
                    );
                }
            }
            let response = response.explained(Term::of_measurand(row.measurand));
            let response = match row.gap() {
                Some(gap) => response.on_hover_text(gap),
                None => response,
            };
            if is_cut {
                response.on_hover_text(&row.name);
            }
        }
    });
}

/// A number whose decimal sign stands at a place; its right end.
fn number_at(
    painter: &Painter,
    decimal: Pos2,
    number: &str,
    style: TypeStyle,
    colour: Color32,
) -> f32 {
    let decimal_sign = number.find(['.', ',']).unwrap_or(number.len());
    let (whole, decimals) = number.split_at(decimal_sign);
    let font = style.font_id();
    painter.text(decimal, Align2::RIGHT_CENTER, whole, font.clone(), colour);
    let end = painter.text(decimal, Align2::LEFT_CENTER, decimals, font, colour);
    end.right()
}
