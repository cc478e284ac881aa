//! Small signs, drawn along the paths of `assets/icons.txt`: the bundled fonts have none, and a path is sharp at every scale.

use std::sync::LazyLock;

use egui::{
    Color32, CornerRadius, Painter, Pos2, Rect, Response, Role, Sense, Shape, Stroke, Ui, Vec2,
    WidgetInfo, pos2,
};
use kurbo::{BezPath, PathEl, SvgParseError};

use super::theme::{self, grid};

/// What a sign stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Icon {
    /// Approved: can't be changed.
    Lock,
    /// One step back.
    Undo,
    /// One step forward again.
    Redo,
    /// One more.
    Add,
    /// Take away.
    Delete,
    /// Drag here to move the row.
    Grip,
    /// Open; what belongs to it is below.
    ChevronDown,
    /// Closed.
    ChevronRight,
    /// One for another.
    Swap,
    /// Something to be careful about; always beside its words.
    Caution,
    /// The appearance by day.
    Sun,
    /// The appearance by night.
    Moon,
    /// The appearance with the most contrast.
    Contrast,
    /// Open a book.
    Folder,
    /// Save the book.
    Save,
    /// A column at the side.
    SideColumn,
    /// Find.
    Find,
}

impl Icon {
    /// All signs, in the order of the list above.
    pub const ALL: [Self; 17] = [
        Self::Lock,
        Self::Undo,
        Self::Redo,
        Self::Add,
        Self::Delete,
        Self::Grip,
        Self::ChevronDown,
        Self::ChevronRight,
        Self::Swap,
        Self::Caution,
        Self::Sun,
        Self::Moon,
        Self::Contrast,
        Self::Folder,
        Self::Save,
        Self::SideColumn,
        Self::Find,
    ];
    /// Its name in the asset.
    fn name(self) -> &'static str {
        match self {
            Self::Lock => "lock",
            Self::Undo => "undo",
            Self::Redo => "redo",
            Self::Add => "add",
            Self::Delete => "delete",
            Self::Grip => "grip",
            Self::ChevronDown => "chevron-down",
            Self::ChevronRight => "chevron-right",
            Self::Swap => "swap",
            Self::Caution => "caution",
            Self::Sun => "sun",
            Self::Moon => "moon",
            Self::Contrast => "contrast",
            Self::Folder => "folder",
            Self::Save => "save",
            Self::SideColumn => "side-column",
            Self::Find => "find",
        }
    }
}

/// Signs are drawn on a square of this many units, y downwards.
const SIDE: f32 = 16.0;
/// Width of the pen, in units.
const PEN_WIDTH: f32 = 1.5;
/// How far the pieces of a curve may lie beside it, in units.
const TOLERANCE: f64 = 0.01;

/// A piece of a sign, in units of its square.
#[derive(Clone, Debug, PartialEq)]
enum Piece {
    /// A line with round ends.
    Line(Vec<Pos2>),
    /// A line that ends where it begins.
    Outline(Vec<Pos2>),
    /// What is filled; it bulges everywhere.
    Filled(Vec<Pos2>),
}

/// The pieces of every sign, in the order of [`Icon::ALL`].
static SIGNS: LazyLock<Vec<Vec<Piece>>> = LazyLock::new(|| {
    let asset = include_str!("../../assets/icons.txt");
    // A test reads the same text: a path that is none does not get as far as this.
    Icon::ALL
        .map(|icon| pieces_of(asset, icon).unwrap_or_default())
        .to_vec()
});

/// The pieces of a sign by the text of the asset.
fn pieces_of(asset: &str, icon: Icon) -> Result<Vec<Piece>, SvgParseError> {
    let lines = asset.lines().skip_while(|line| *line != icon.name());
    let mut pieces = Vec::new();
    for line in lines.skip(1).take_while(|line| line.starts_with("  ")) {
        if let Some(path) = line.strip_prefix("  draw ") {
            pieces.extend(strokes(path)?.into_iter().map(|(points, is_closed)| {
                if is_closed {
                    Piece::Outline(points)
                } else {
                    Piece::Line(points)
                }
            }));
        } else if let Some(path) = line.strip_prefix("  fill ") {
            let filled = strokes(path)?.into_iter();
            pieces.extend(filled.map(|(points, _)| Piece::Filled(points)));
        }
    }
    Ok(pieces)
}

/// The strokes of a path as points, and whether each goes back to where it began.
fn strokes(path: &str) -> Result<Vec<(Vec<Pos2>, bool)>, SvgParseError> {
    let mut strokes: Vec<(Vec<Pos2>, bool)> = Vec::new();
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a place on a square of sixteen units"
    )]
    let place = |point: kurbo::Point| pos2(point.x as f32, point.y as f32);
    kurbo::flatten(BezPath::from_svg(path)?, TOLERANCE, |element| {
        match (element, strokes.last_mut()) {
            (PathEl::MoveTo(to), _) => strokes.push((vec![place(to)], false)),
            (PathEl::LineTo(to), Some((points, _))) => points.push(place(to)),
            (PathEl::ClosePath, Some((points, is_closed))) => {
                // The way back is drawn by closing; a point twice in one place has no direction.
                points.dedup_by(|one, other| one.distance(*other) < 0.01);
                if points.len() > 1 && points[0].distance(points[points.len() - 1]) < 0.01 {
                    points.pop();
                }
                *is_closed = true;
            }
            _ => {}
        }
    });
    Ok(strokes)
}

/// Draws a sign into the largest square in the middle of `rect`.
pub fn paint(painter: &Painter, rect: Rect, icon: Icon, colour: Color32) {
    let side = rect.width().min(rect.height());
    let (scale, origin) = (side / SIDE, rect.center() - Vec2::splat(side / 2.0));
    let stroke = Stroke::new((PEN_WIDTH * scale).max(1.0), colour);
    let placed = |points: &[Pos2]| -> Vec<Pos2> {
        let placed = points.iter().map(|point| origin + point.to_vec2() * scale);
        placed.collect()
    };
    for piece in &SIGNS[icon as usize] {
        match piece {
            Piece::Line(points) => {
                let points = placed(points);
                // Two soft edges over each other look thicker than one, hence ends a little slimmer than the line.
                let radius = stroke.width * 0.45;
                for end in [points.first(), points.last()].into_iter().flatten() {
                    painter.circle_filled(*end, radius, colour);
                }
                painter.add(Shape::line(points, stroke));
            }
            Piece::Outline(points) => {
                painter.add(Shape::closed_line(placed(points), stroke));
            }
            Piece::Filled(points) => {
                let filled = Shape::convex_polygon(placed(points), colour, Stroke::NONE);
                painter.add(filled);
            }
        }
    }
}

/// Draws a sign in a line of text.
pub(super) fn sign_ui(ui: &mut Ui, icon: Icon, colour: Color32) {
    let (rect, _) = ui.allocate_exact_size(Vec2::splat(grid::EASY), Sense::hover());
    paint(ui.painter(), rect, icon, colour);
}

/// A button that shows a sign only; `accessible_name` is what a screen reader says, `tooltip` may add the shortcut.
pub fn icon_button(ui: &mut Ui, icon: Icon, accessible_name: &str, tooltip: &str) -> Response {
    let (rect, response) = ui.allocate_exact_size(Vec2::splat(grid::TARGET), Sense::click());
    let enabled = ui.is_enabled();
    response.widget_info(|| WidgetInfo::labeled(Role::Button, enabled, accessible_name));
    if ui.is_rect_visible(rect) {
        let palette = theme::palette(ui.visuals());
        let corner = CornerRadius::same(grid::CORNER);
        let touched = response.hovered() || response.is_pointer_button_down_on();
        if touched {
            ui.painter().rect_filled(rect, corner, palette.hover);
        }
        if response.has_focus() {
            theme::focus_ring(ui, rect);
        }
        let colour = if touched || response.has_focus() {
            palette.text_strong
        } else {
            palette.text_quiet
        };
        let drawing = Rect::from_center_size(rect.center(), Vec2::splat(grid::ICON));
        paint(ui.painter(), drawing, icon, colour);
    }
    response.on_hover_text(tooltip)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sign_is_in_the_asset_and_the_asset_holds_nothing_else() {
        let asset = include_str!("../../assets/icons.txt");
        let mut left: Vec<&str> = asset
            .lines()
            .filter(|line| !line.starts_with([' ', '#']) && !line.is_empty())
            .collect();
        for icon in Icon::ALL {
            let pieces = pieces_of(asset, icon).unwrap();
            assert!(!pieces.is_empty(), "{icon:?} has no path");
            let square = Rect::from_min_size(Pos2::ZERO, Vec2::splat(SIDE));
            for piece in &pieces {
                let (Piece::Line(points) | Piece::Outline(points) | Piece::Filled(points)) = piece;
                assert!(points.len() > 1, "{icon:?}: {piece:?}");
                let is_inside = points.iter().all(|point| square.contains(*point));
                assert!(is_inside, "{icon:?}: {piece:?}");
            }
            left.retain(|name| *name != icon.name());
        }
        assert_eq!(left, [""; 0], "no sign is called so");
        assert!(pieces_of("lock\n  draw M1 one\n", Icon::Lock).is_err());
    }

    #[test]
    fn every_sign_is_drawn_and_stays_inside_its_square() {
        let ctx = egui::Context::default();
        theme::install(&ctx);
        let square = Rect::from_min_size(pos2(20.0, 20.0), Vec2::splat(32.0));
        for icon in Icon::ALL {
            let output = ctx.run_ui(egui::RawInput::default(), |ui| {
                paint(ui.painter(), square, icon, Color32::WHITE);
            });
            let drawn = output
                .shapes
                .iter()
                .map(|clipped| clipped.shape.visual_bounding_rect())
                .filter(|bounds| bounds.is_finite() && bounds.is_positive())
                .fold(Rect::NOTHING, Rect::union);
            output.drop_without_applying_deltas();
            assert!(drawn.is_positive(), "{icon:?} draws nothing");
            assert!(square.contains_rect(drawn), "{icon:?} reaches {drawn}");
        }
    }
}
