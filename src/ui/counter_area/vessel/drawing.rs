//! A section through the vessel in its true proportions, with marks of round volumes.

use egui::{Align2, Pos2, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use crate::book::{Vessel, VesselKind};
use crate::quantity::VolumeUnit;
use crate::say::{Speaker, say};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::cup::Frustum;

/// Height of the drawing, in points.
const HEIGHT: f32 = 60.0 * grid::STEP;
/// Room for the marks at the right of the wall, in points.
const MARKS: f32 = 18.0 * grid::STEP;
/// Thickness of the wall, in points.
const WALL: f32 = 2.0;
/// Room above and below, in points.
const MARGIN: f32 = grid::EASY;
/// Volumes between marks, the finest first that gives no more than eight of them, ml.
const MARK_STEPS: [f64; 5] = [50.0, 100.0, 200.0, 500.0, 1000.0];
/// The same, US fluid ounces.
const MARK_STEPS_OUNCES: [f64; 5] = [2.0, 4.0, 8.0, 16.0, 32.0];

pub(super) fn drawing_ui(ui: &mut Ui, vessel: &Vessel, speaker: Speaker<'_>) {
    let unit = speaker.units.of("ml");
    let inside = Frustum::of(Some(vessel));
    let (rect, response) =
        ui.allocate_exact_size(vec2(ui.available_width(), HEIGHT), Sense::hover());
    let words = say!(
        speaker,
        "counter-vessel-drawing",
        capacity: speaker.volume(inside.capacity(), 0),
        height: speaker.in_unit(inside.height(), "mm", 0),
    );
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &words));
    if !ui.is_rect_visible(rect) {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let room = vec2(rect.width() - MARKS - MARGIN, rect.height() - 2.0 * MARGIN);
    let scale = points_per_mm(&inside, room);
    let foot = pos2(rect.left() + MARGIN + room.x / 2.0, rect.bottom() - MARGIN);
    let wall = |height: f64, side: f32| wall_point(&inside, foot, scale, height, side);
    let top = inside.height();
    let painter = ui.painter();
    painter.add(Shape::convex_polygon(
        vec![
            wall(top, -1.0),
            wall(0.0, -1.0),
            wall(0.0, 1.0),
            wall(top, 1.0),
        ],
        palette.stripe,
        Stroke::NONE,
    ));
    let outline = vec![
        wall(top, -1.0),
        wall(0.0, -1.0),
        wall(0.0, 1.0),
        wall(top, 1.0),
    ];
    // An unmeasured shape is drawn with a broken wall.
    if inside.is_stated {
        painter.add(Shape::line(outline, Stroke::new(WALL, palette.outline)));
    } else {
        painter.extend(Shape::dashed_line(
            &outline,
            Stroke::new(WALL, palette.outline),
            6.0,
            4.0,
        ));
    }
    if vessel.kind == VesselKind::Cup {
        for side in [-1.0, 1.0] {
            let rim = wall(top, side);
            painter.line_segment(
                [rim, rim + vec2(side * grid::TIGHT, 0.0)],
                Stroke::new(WALL, palette.outline),
            );
        }
    }
    let capacity = unit.value(inside.capacity());
    let steps = match speaker.units.volume {
        VolumeUnit::Millilitres => MARK_STEPS,
        VolumeUnit::FluidOunces => MARK_STEPS_OUNCES,
    };
    let step = steps
        .into_iter()
        .find(|step| capacity / step <= 8.0)
        .unwrap_or(2.0 * steps[4]);
    let mut volume = step;
    while volume < capacity - step / 4.0 {
        mark(
            ui,
            wall(inside.height_of(unit.metric_from_shown(volume)), 1.0),
            &speaker.number(volume, 0),
            palette.text_quiet,
        );
        volume += step;
    }
    mark(
        ui,
        wall(top, 1.0),
        &speaker.volume(inside.capacity(), 0),
        palette.text_strong,
    );
}

fn mark(ui: &Ui, at: Pos2, words: &str, colour: egui::Color32) {
    let palette = theme::palette(ui.visuals());
    let end = at - vec2(grid::NEAR, 0.0);
    ui.painter()
        .line_segment([end, at], Stroke::new(grid::HAIRLINE, palette.outline));
    let beside = at + vec2(grid::NEAR, 0.0);
    ui.painter().text(
        beside,
        Align2::LEFT_CENTER,
        words,
        TypeStyle::Small.font_id(),
        colour,
    );
}

#[expect(clippy::cast_possible_truncation, reason = "places on the screen")]
fn points_per_mm(inside: &Frustum, room: egui::Vec2) -> f32 {
    (room.y / inside.height() as f32).min(room.x / inside.widest() as f32)
}

#[expect(clippy::cast_possible_truncation, reason = "places on the screen")]
fn wall_point(inside: &Frustum, foot: Pos2, scale: f32, height: f64, side: f32) -> Pos2 {
    let half = inside.diameter_at(height) as f32 / 2.0;
    foot + vec2(side * half, -(height as f32)) * scale
}
