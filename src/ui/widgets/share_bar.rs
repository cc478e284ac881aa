//! A bar of fixed width inside a row, with its number aligned at the decimal sign.

use egui::{
    Color32, Painter, Pos2, Rect, Response, Role, Sense, Shape, Stroke, Ui, WidgetInfo, vec2,
};

use crate::ui::theme::{self, Palette, TypeStyle, grid};

/// Width of the bar itself, in points.
const BAR_WIDTH: f32 = 22.0 * grid::STEP;
/// Thickness of the bar, in points.
const BAR_HEIGHT: f32 = 2.0 * grid::STEP;
/// Room for the digits before the decimal sign, with a minus sign, in points.
const BEFORE_DECIMAL: f32 = 10.0 * grid::STEP;
/// Room for the decimals and the unit, in points.
const AFTER_DECIMAL: f32 = 12.0 * grid::STEP;
/// The least that is drawn of a share that is not zero, in points.
const LEAST: f32 = 1.5;
/// How much of its colour a bar keeps that is not lit.
const UNLIT: f32 = 0.72;

/// Width of the whole widget, for the header of the column, in points.
pub const WIDTH: f32 = BAR_WIDTH + BEFORE_DECIMAL + AFTER_DECIMAL;

/// Shows a share on a scale from nothing to `full_scale` (signed: from −`full_scale`, with zero in the middle), and `text`
/// ("12.3 g") beside it. A share that is not known is a gap with its text.
pub fn share_bar_ui(
    ui: &mut Ui,
    share: Option<f64>,
    full_scale: f64,
    signed: bool,
    text: &str,
    colour: Color32,
    lit: bool,
) -> Response {
    let (rect, response) = ui.allocate_exact_size(vec2(WIDTH, grid::TARGET), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, text));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    let palette = theme::palette(ui.visuals());
    let groove = Rect::from_center_size(
        Pos2::new(rect.left() + BAR_WIDTH / 2.0, rect.center().y),
        vec2(BAR_WIDTH, BAR_HEIGHT),
    );
    let painter = ui.painter();
    if let Some(share) = share.filter(|share| share.is_finite()) {
        painter.rect_filled(groove, f32::from(grid::CORNER) / 2.0, palette.fill);
        let (from, to) = extent(share, full_scale, signed);
        let bar = groove
            .with_max_x(groove.left() + to * BAR_WIDTH)
            .with_min_x(groove.left() + from * BAR_WIDTH);
        let colour = if lit {
            colour
        } else {
            colour.gamma_multiply(UNLIT)
        };
        painter.rect_filled(bar, f32::from(grid::CORNER) / 2.0, colour);
        if signed {
            let zero = groove.center().x;
            let height = groove.y_range().expand(2.0);
            painter.vline(zero, height, Stroke::new(grid::HAIRLINE, palette.outline));
        }
        let at = Pos2::new(groove.right() + BEFORE_DECIMAL, rect.center().y);
        figure_at_decimal(
            painter,
            at,
            text,
            if lit {
                palette.text_strong
            } else {
                palette.text_normal
            },
            palette,
        );
    } else {
        gap(painter, groove, palette);
        let at = Pos2::new(groove.right() + grid::NEAR, rect.center().y);
        let font = TypeStyle::Small.font_id();
        painter.text(
            at,
            egui::Align2::LEFT_CENTER,
            text,
            font,
            palette.text_quiet,
        );
    }
    response
}

/// Beginning and end of a bar as parts of its width.
#[expect(
    clippy::cast_possible_truncation,
    reason = "parts of a width are between 0 and 1"
)]
fn extent(share: f64, full_scale: f64, signed: bool) -> (f32, f32) {
    let part = if full_scale > 0.0 {
        (share / full_scale).clamp(-1.0, 1.0) as f32
    } else {
        0.0
    };
    let least = if share == 0.0 { 0.0 } else { LEAST / BAR_WIDTH };
    if !signed {
        return (
            0.0,
            part.max(0.0).max(if share > 0.0 { least } else { 0.0 }),
        );
    }
    let half = (part.abs() / 2.0).max(least);
    if part < 0.0 {
        (0.5 - half, 0.5)
    } else {
        (0.5, 0.5 + half)
    }
}

/// Draws "12.3 g" so that its decimal sign (or its last digit) stands at `at`; the unit is quieter than the number.
pub(super) fn figure_at_decimal(
    painter: &Painter,
    at: Pos2,
    text: &str,
    colour: Color32,
    palette: &Palette,
) {
    let (number, unit) = text.split_once([' ', '\u{a0}']).unwrap_or((text, ""));
    let (whole, decimals) = number.split_at(decimal_place(number));
    let font = TypeStyle::Body.font_id();
    painter.text(at, egui::Align2::RIGHT_CENTER, whole, font.clone(), colour);
    let end = painter.text(at, egui::Align2::LEFT_CENTER, decimals, font, colour);
    if !unit.is_empty() {
        let beside = Pos2::new(end.right().max(at.x) + grid::TIGHT, at.y);
        painter.text(
            beside,
            egui::Align2::LEFT_CENTER,
            unit,
            TypeStyle::Small.font_id(),
            palette.text_quiet,
        );
    }
}

/// Where the decimal sign of shown digits stands, in bytes; their end where they have none.
pub(super) fn decimal_place(digits: &str) -> usize {
    digits.find(['.', ',']).unwrap_or(digits.len())
}

/// A dashed line where a bar would be.
fn gap(painter: &Painter, groove: Rect, palette: &Palette) {
    let line = [groove.left_center(), groove.right_center()];
    painter.extend(Shape::dashed_line(
        &line,
        Stroke::new(grid::HAIRLINE, palette.outline),
        grid::STEP,
        grid::STEP,
    ));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bar_grows_from_its_zero_and_never_leaves_its_groove() {
        for (share, signed, expected) in [
            (0.0, false, (0.0, 0.0)),
            (5.0, false, (0.0, 0.5)),
            (25.0, false, (0.0, 1.0)),
            (-5.0, true, (0.25, 0.5)),
            (5.0, true, (0.5, 0.75)),
            (-99.0, true, (0.0, 0.5)),
        ] {
            assert_eq!(extent(share, 10.0, signed), expected, "{share}");
        }
    }

    #[test]
    fn a_small_share_can_still_be_seen_and_a_scale_of_nothing_does_no_harm() {
        assert!(extent(1e-9, 10.0, false).1 > 0.0);
        assert!(extent(1.0, 0.0, false).1 <= 1.0);
    }
}
