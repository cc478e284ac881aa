//! A strip: a hundred cups on one axis of taste, each a dot, beside the band of one noticeable step.
//!
//! The dots are the middles of a hundred equal parts of the cups, so that as many lie outside the band as cups of a hundred do.

use egui::{
    Align2, Color32, Painter, Rect, Response, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2,
};

use super::level::MOST_STEPS;
use crate::cups::AxisCups;
use crate::ui::theme::{self, Palette, TypeStyle, grid};

/// Height of a strip, in points.
const HEIGHT: f32 = 9.0 * grid::STEP;
/// Side of a dot, and the way to the next one, in points.
const DOT: f32 = 2.5;
const PITCH: f32 = 3.0;
/// Room for the name of the axis on the left and for its cups on the right, in points.
const NAME: f32 = 22.0 * grid::STEP;
const COUNT: f32 = 11.0 * grid::STEP;
/// A cup as far off as this many steps, or further, is drawn here.
const REACH: f64 = MOST_STEPS;

/// The words of a strip.
pub(in crate::ui) struct StripWords<'words> {
    /// The name of the axis.
    pub name: &'words str,
    /// The cups of a hundred that are within a step.
    pub count: &'words str,
    /// Everything in a sentence, for the pointer and for a screen reader.
    pub sentence: &'words str,
}

/// Draws the cups of an axis, as wide as there is room.
pub(in crate::ui) fn cup_strip_ui(
    ui: &mut Ui,
    axis: &AxisCups,
    words: &StripWords<'_>,
) -> Response {
    let size = vec2(ui.available_width(), HEIGHT);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, words.sentence));
    if ui.is_rect_visible(rect) {
        let palette = theme::palette(ui.visuals());
        paint(ui.painter(), rect, axis, words, palette);
    }
    response.on_hover_text(words.sentence)
}

fn paint(
    painter: &Painter,
    rect: Rect,
    axis: &AxisCups,
    words: &StripWords<'_>,
    palette: &Palette,
) {
    let plot = rect
        .with_min_x(rect.left() + NAME)
        .with_max_x(rect.right() - COUNT)
        .shrink2(vec2(0.0, 2.0));
    let small = TypeStyle::Small.font_id();
    let name = painter.layout(
        words.name.to_owned(),
        small.clone(),
        palette.text_normal,
        NAME - grid::TIGHT,
    );
    let beside = pos2(rect.left(), rect.center().y - name.size().y / 2.0);
    painter.galley(beside, name, palette.text_normal);
    let right = pos2(rect.right(), rect.center().y);
    painter.text(
        right,
        Align2::RIGHT_CENTER,
        words.count,
        small,
        palette.text_strong,
    );
    let band = Rect::from_x_y_ranges(x(plot, -1.0)..=x(plot, 1.0), plot.y_range());
    painter.rect_filled(band, 0.0, palette.level_band);
    let edge = Stroke::new(grid::HAIRLINE, palette.line);
    for side in [band.left(), band.right()] {
        painter.vline(side, plot.y_range(), edge);
    }
    painter.hline(plot.x_range(), plot.bottom(), edge);
    let middle = Stroke::new(grid::HAIRLINE, palette.accent);
    painter.vline(x(plot, 0.0), plot.y_range(), middle);
    dots(painter, plot, &axis.quantiles, palette);
}

/// Where so many steps lie.
#[expect(clippy::cast_possible_truncation, reason = "a place on the screen")]
fn x(plot: Rect, steps: f64) -> f32 {
    let part = (steps.clamp(-REACH, REACH) / REACH) as f32;
    plot.center().x + part * (plot.width() / 2.0 - DOT)
}

/// The dots, in columns from the line up; they move closer where a column would be higher than the strip.
fn dots(painter: &Painter, plot: Rect, cups: &[f64], palette: &Palette) {
    let columns = columns(plot, cups);
    let highest = columns.iter().map(|column| column.cups.len()).max();
    let room = (plot.height() - DOT) / highest.unwrap_or(1).max(1) as f32;
    let pitch = room.min(PITCH);
    for column in &columns {
        for (at, cup) in column.cups.iter().enumerate() {
            let centre = pos2(column.x, plot.bottom() - DOT / 2.0 - at as f32 * pitch);
            let dot = Rect::from_center_size(centre, vec2(DOT, DOT));
            painter.rect_filled(dot, DOT / 2.0, colour(*cup, palette));
        }
    }
}

struct Column {
    x: f32,
    cups: Vec<f64>,
}

/// The cups beside each other, and those that would cover each other in one column. What is within a step and what is not never
/// share one.
fn columns(plot: Rect, cups: &[f64]) -> Vec<Column> {
    let mut columns: Vec<Column> = Vec::new();
    for cup in cups {
        let at = x(plot, *cup);
        match columns.last_mut() {
            Some(last) if at - last.x < PITCH && is_off(last.cups[0]) == is_off(*cup) => {
                last.cups.push(*cup);
            }
            _ => columns.push(Column {
                x: at,
                cups: vec![*cup],
            }),
        }
    }
    columns
}

fn is_off(steps: f64) -> bool {
    steps.abs() > 1.0
}

fn colour(steps: f64, palette: &Palette) -> Color32 {
    if is_off(steps) {
        palette.off_level
    } else {
        palette.within_level
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_cup_has_its_dot_and_no_column_mixes_what_is_off_with_what_is_not() {
        let plot = Rect::from_min_size(pos2(0.0, 0.0), vec2(200.0, 30.0));
        let cups: Vec<f64> = (0..100).map(|cup| -3.0 + 0.06 * f64::from(cup)).collect();
        let columns = columns(plot, &cups);
        assert_eq!(
            columns
                .iter()
                .map(|column| column.cups.len())
                .sum::<usize>(),
            100
        );
        for column in &columns {
            assert!(
                column
                    .cups
                    .iter()
                    .all(|cup| is_off(*cup) == is_off(column.cups[0]))
            );
            assert!(column.x >= plot.left() && column.x <= plot.right());
        }
    }
}
