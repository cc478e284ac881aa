//! Small signs drawn with the painter: the bundled fonts have none, and a drawn one is sharp at every scale.

use std::f32::consts::{FRAC_PI_2, PI, TAU};

use egui::{
    Color32, CornerRadius, Painter, Pos2, Rect, Response, Role, Sense, Shape, Stroke, StrokeKind,
    Ui, Vec2, WidgetInfo, pos2, vec2,
};

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
}

/// Draws a sign into the largest square in the middle of `rect`.
pub fn paint(painter: &Painter, rect: Rect, icon: Icon, colour: Color32) {
    let pen = Pen::new(painter, rect, colour);
    match icon {
        Icon::Lock => lock(&pen),
        Icon::Undo => turn_back(&pen, |x| x),
        Icon::Redo => turn_back(&pen, |x| SIDE - x),
        Icon::Add => {
            pen.line(&[(8.0, 3.0), (8.0, 13.0)]);
            pen.line(&[(3.0, 8.0), (13.0, 8.0)]);
        }
        Icon::Delete => {
            pen.line(&[(4.0, 4.0), (12.0, 12.0)]);
            pen.line(&[(12.0, 4.0), (4.0, 12.0)]);
        }
        Icon::Grip => {
            for y in [4.0, 8.0, 12.0] {
                pen.dot((6.0, y), 1.1);
                pen.dot((10.0, y), 1.1);
            }
        }
        Icon::ChevronDown => pen.line(&[(4.0, 6.0), (8.0, 10.0), (12.0, 6.0)]),
        Icon::ChevronRight => pen.line(&[(6.0, 4.0), (10.0, 8.0), (6.0, 12.0)]),
        Icon::Swap => swap(&pen),
        Icon::Caution => caution(&pen),
        Icon::Sun => sun(&pen),
        Icon::Moon => moon(&pen),
        Icon::Contrast => contrast(&pen),
        Icon::Folder => folder(&pen),
        Icon::Save => save(&pen),
        Icon::SideColumn => {
            pen.frame((2.0, 3.0), (14.0, 13.0), 1);
            pen.line(&[(6.5, 3.5), (6.5, 12.5)]);
        }
        Icon::Find => {
            pen.line(&arc((7.0, 7.0), 4.2, 0.0, TAU));
            pen.line(&[(10.2, 10.2), (13.5, 13.5)]);
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
            let ring = Stroke::new(grid::FOCUS_RING, palette.focus_ring);
            ui.painter()
                .rect_stroke(rect, corner, ring, StrokeKind::Inside);
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

/// Signs are drawn on a square of this many units, y downwards.
const SIDE: f32 = 16.0;
/// Width of the pen, in units.
const PEN_WIDTH: f32 = 1.5;

type Unit = (f32, f32);

/// Draws in units of the square, whatever its size on the screen.
struct Pen<'a> {
    painter: &'a Painter,
    origin: Pos2,
    scale: f32,
    stroke: Stroke,
}

impl<'a> Pen<'a> {
    fn new(painter: &'a Painter, rect: Rect, colour: Color32) -> Self {
        let side = rect.width().min(rect.height());
        let scale = side / SIDE;
        Self {
            painter,
            origin: rect.center() - Vec2::splat(side / 2.0),
            scale,
            stroke: Stroke::new((PEN_WIDTH * scale).max(1.0), colour),
        }
    }

    fn at(&self, (x, y): Unit) -> Pos2 {
        self.origin + vec2(x, y) * self.scale
    }

    /// An open line with round ends.
    fn line(&self, points: &[Unit]) {
        let points: Vec<Pos2> = points.iter().map(|point| self.at(*point)).collect();
        // Two soft edges over each other look thicker than one, hence ends a little slimmer than the line.
        let radius = self.stroke.width * 0.45;
        for end in [points.first(), points.last()].into_iter().flatten() {
            self.painter.circle_filled(*end, radius, self.stroke.color);
        }
        self.painter.add(Shape::line(points, self.stroke));
    }

    fn outline(&self, points: &[Unit]) {
        let points = points.iter().map(|point| self.at(*point)).collect();
        self.painter.add(Shape::closed_line(points, self.stroke));
    }

    fn dot(&self, centre: Unit, radius: f32) {
        self.painter
            .circle_filled(self.at(centre), radius * self.scale, self.stroke.color);
    }

    fn frame(&self, least: Unit, greatest: Unit, corner: u8) {
        let rect = Rect::from_min_max(self.at(least), self.at(greatest));
        self.painter.rect_stroke(
            rect,
            CornerRadius::same(corner),
            self.stroke,
            StrokeKind::Middle,
        );
    }
}

/// Points of a circle's arc; angles in radians, clockwise from the right since y points down.
fn arc(centre: Unit, radius: f32, from: f32, to: f32) -> Vec<Unit> {
    const PIECES: u8 = 20;
    (0..=PIECES)
        .map(|piece| {
            let share = f32::from(piece) / f32::from(PIECES);
            let (sine, cosine) = (from + (to - from) * share).sin_cos();
            (centre.0 + radius * cosine, centre.1 + radius * sine)
        })
        .collect()
}

fn lock(pen: &Pen<'_>) {
    pen.frame((3.5, 7.5), (12.5, 13.5), 1);
    let mut shackle = vec![(5.5, 7.5)];
    shackle.extend(arc((8.0, 5.0), 2.5, PI, TAU));
    shackle.push((10.5, 7.5));
    pen.line(&shackle);
    pen.dot((8.0, 10.5), 1.1);
}

/// An arrow to the left that turns round; `mirror` maps x, for the arrow to the right.
fn turn_back(pen: &Pen<'_>, mirror: impl Fn(f32) -> f32) {
    let mirrored =
        |points: &[Unit]| -> Vec<Unit> { points.iter().map(|(x, y)| (mirror(*x), *y)).collect() };
    let mut path = vec![(3.0, 6.0)];
    path.extend(arc((9.5, 9.5), 3.5, -FRAC_PI_2, FRAC_PI_2));
    path.push((6.0, 13.0));
    pen.line(&mirrored(&path));
    pen.line(&mirrored(&[(6.0, 3.0), (3.0, 6.0), (6.0, 9.0)]));
}

fn swap(pen: &Pen<'_>) {
    pen.line(&[(2.5, 5.5), (13.5, 5.5)]);
    pen.line(&[(10.5, 2.5), (13.5, 5.5), (10.5, 8.0)]);
    pen.line(&[(13.5, 11.0), (2.5, 11.0)]);
    pen.line(&[(5.5, 8.5), (2.5, 11.0), (5.5, 14.0)]);
}

fn caution(pen: &Pen<'_>) {
    pen.outline(&[(8.0, 2.0), (14.5, 13.5), (1.5, 13.5)]);
    pen.line(&[(8.0, 6.5), (8.0, 9.3)]);
    pen.dot((8.0, 11.4), 0.9);
}

fn sun(pen: &Pen<'_>) {
    pen.outline(&arc((8.0, 8.0), 3.0, 0.0, TAU * 20.0 / 21.0));
    for ray in 0..8_u8 {
        let (sine, cosine) = (TAU * f32::from(ray) / 8.0).sin_cos();
        pen.line(&[
            (8.0 + 5.2 * cosine, 8.0 + 5.2 * sine),
            (8.0 + 6.6 * cosine, 8.0 + 6.6 * sine),
        ]);
    }
}

/// A circle of which one half is hatched.
fn contrast(pen: &Pen<'_>) {
    const RADIUS: f32 = 5.5;
    pen.outline(&arc((8.0, 8.0), RADIUS, 0.0, TAU * 40.0 / 41.0));
    for step in 0..5_u8 {
        let x = 8.0 + 1.1 * f32::from(step);
        let half = (RADIUS * RADIUS - (x - 8.0).powi(2)).sqrt();
        pen.line(&[(x, 8.0 - half), (x, 8.0 + half)]);
    }
}

/// A circle with a second circle taken out of it, both through the same two horns.
fn moon(pen: &Pen<'_>) {
    const HORN: f32 = 1.0;
    // The outer arc goes the long way round, from the upper horn over the left to the lower right one.
    let mut edge = arc((8.0, 8.0), 5.5, -HORN, -HORN - TAU + 1.6);
    let (first, last) = (edge[0], edge[edge.len() - 1]);
    let chord = vec2(first.0 - last.0, first.1 - last.1);
    let middle = pos2(first.0 + last.0, first.1 + last.1) / 2.0;
    let inward = vec2(8.0, 8.0) - middle.to_vec2();
    let centre = middle - inward.normalized() * 0.6;
    let radius = (chord.length() / 2.0).hypot(0.6);
    let start = (vec2(last.0, last.1) - centre.to_vec2()).angle();
    let sweep = (vec2(first.0, first.1) - centre.to_vec2()).angle() - start;
    let inner = arc(
        (centre.x, centre.y),
        radius,
        start,
        start + sweep.rem_euclid(TAU),
    );
    edge.extend(&inner[1..inner.len() - 1]);
    pen.outline(&edge);
}

fn folder(pen: &Pen<'_>) {
    pen.outline(&[
        (2.0, 3.5),
        (6.0, 3.5),
        (7.5, 5.5),
        (14.0, 5.5),
        (14.0, 13.0),
        (2.0, 13.0),
    ]);
}

/// A sheet going down into a tray.
fn save(pen: &Pen<'_>) {
    pen.line(&[(8.0, 2.5), (8.0, 9.5)]);
    pen.line(&[(5.0, 6.8), (8.0, 9.8), (11.0, 6.8)]);
    pen.line(&[(2.5, 9.5), (2.5, 13.5), (13.5, 13.5), (13.5, 9.5)]);
}

#[cfg(test)]
mod tests {
    use super::*;

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
