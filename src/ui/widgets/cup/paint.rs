//! Draws the cup, its layers and what is written beside them.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Align2, Color32, Mesh, Painter, Pos2, Rect, Shape, Stroke, pos2, vec2};

use super::frustum::Frustum;
use super::layers::{Filling, Layer, Texture};
use super::notes::Notes;
use crate::book::LineId;
use crate::ui::theme::{Palette, TypeStyle, grid};
use crate::ui::widgets::role_colour;

/// Thickness of the wall, in points.
const WALL: f32 = 2.0;
/// How far the rim is rolled out, in points.
pub(super) const LIP: f32 = 4.0;
/// Room above the cup for the rim, and below it for the cup's name, in points.
pub(super) const ABOVE: f32 = 10.0;
/// Height of a line of small text, in points.
pub(super) const TEXT_LINE: f32 = 18.0;
/// Height of the temperature and the words under it, above the names, in points.
const HEAD: f32 = 64.0;
/// Part of the width that the cup may take when there are names beside it.
const CUP_PART: f32 = 0.52;
/// From this width on there are names beside the cup, in points.
const WIDE: f32 = 60.0 * grid::STEP;
/// Colour that a layer keeps which brings nothing to the lens figure.
const LEAST_STRENGTH: f32 = 0.22;
/// Colour of the layer that brings most of the lens figure.
const MOST_STRENGTH: f32 = 0.78;
/// Distance of hatch lines, in points.
const HATCH: f32 = 6.0;
/// Side of a block of ice, in points.
const ICE_BLOCK: f32 = 17.0;
/// Part of a bed of ice that is ice.
const ICE_PACKING: f64 = 0.6;
/// Diameter of a piece of topping, in points.
const PIECE: f32 = 9.0;

/// Height that the names beside a cup of this width want, with the temperature above them and what is written below, in points;
/// 0 where there are none.
pub(super) fn room_for_names(width: f32, filling: &Filling, notes: &Notes) -> f32 {
    if width < WIDE {
        return 0.0;
    }
    let names = filling.layers.len() as f32 * TEXT_LINE;
    HEAD + names + below(notes)
}

/// Height of what is written below a cup, in points.
fn below(notes: &Notes) -> f32 {
    TEXT_LINE * notes.lines() as f32 + grid::NEAR
}

/// A cup with its place on the screen.
pub(super) struct Drawing<'cup> {
    pub(super) rect: Rect,
    cup: &'cup Frustum,
    filling: &'cup Filling,
    pub(super) notes: &'cup Notes,
    /// Middle of the cup's inner bottom.
    pub(super) foot: Pos2,
    points_per_mm: f32,
}

#[expect(clippy::cast_possible_truncation, reason = "places on the screen")]
impl<'cup> Drawing<'cup> {
    pub(super) fn new(
        rect: Rect,
        cup: &'cup Frustum,
        filling: &'cup Filling,
        notes: &'cup Notes,
    ) -> Self {
        let below = below(notes);
        let height = (rect.height() - ABOVE - below).max(1.0);
        let part = if rect.width() >= WIDE { CUP_PART } else { 1.0 };
        let width = (rect.width() * part - 2.0 * LIP).max(1.0);
        let points_per_mm = (height / cup.height() as f32).min(width / cup.widest() as f32);
        let half = cup.widest() as f32 * points_per_mm / 2.0 + LIP;
        let x = if rect.width() >= WIDE {
            rect.left() + half
        } else {
            rect.center().x
        };
        let foot = pos2(x, rect.bottom() - below);
        Self {
            rect,
            cup,
            filling,
            notes,
            foot,
            points_per_mm,
        }
    }

    pub(super) fn has_names(&self) -> bool {
        self.rect.width() >= WIDE
    }

    /// Height on the screen that a volume reaches.
    fn y_of(&self, millilitres: f64) -> f32 {
        self.foot.y - self.cup.height_of(millilitres) as f32 * self.points_per_mm
    }

    /// Half of the inner width at a height on the screen.
    pub(super) fn half_at(&self, y: f32) -> f32 {
        let height =
            f64::from((self.foot.y - y) / self.points_per_mm).clamp(0.0, self.cup.height());
        self.cup.diameter_at(height) as f32 * self.points_per_mm / 2.0
    }

    pub(super) fn rim(&self) -> f32 {
        self.y_of(self.cup.capacity())
    }

    /// Each layer with the rectangle round it.
    pub(super) fn bands(&self) -> impl Iterator<Item = (&'cup Layer, Rect)> {
        self.spans().map(|(layer, (top, bottom))| {
            let half = self.half_at(top).max(self.half_at(bottom));
            (
                layer,
                Rect::from_min_max(
                    pos2(self.foot.x - half, top),
                    pos2(self.foot.x + half, bottom),
                ),
            )
        })
    }

    pub(super) fn spans(&self) -> impl Iterator<Item = (&'cup Layer, (f32, f32))> {
        let mut below = 0.0;
        self.filling.layers.iter().map(move |layer| {
            let bottom = self.y_of(below);
            below += layer.millilitres;
            (layer, (self.y_of(below), bottom))
        })
    }

    pub(super) fn paint(&self, painter: &Painter, palette: &Palette, lit: Option<&LineId>) {
        for (layer, span) in self.spans() {
            self.layer(painter, palette, layer, span, lit == Some(&layer.line));
        }
        self.ice(painter, palette, lit);
        self.fill_line(painter, palette);
        self.wall(painter, palette);
        self.words(painter, palette);
    }

    fn layer(
        &self,
        painter: &Painter,
        palette: &Palette,
        layer: &Layer,
        (top, bottom): (f32, f32),
        lit: bool,
    ) {
        let colour = role_colour(palette, layer.role);
        let strength = match layer.lens_part {
            _ if lit => 1.0,
            Some(part) => LEAST_STRENGTH + (MOST_STRENGTH - LEAST_STRENGTH) * part as f32,
            None => LEAST_STRENGTH,
        };
        self.slice(painter, top, bottom, colour.gamma_multiply(strength));
        if layer.lens_part.is_none() {
            self.hatch(painter, top, bottom, colour);
        }
        match layer.texture {
            Texture::Pieces => self.pieces(painter, top, bottom, colour),
            Texture::Foam => self.foam(painter, top, bottom, colour),
            Texture::Smooth => {}
        }
        let seam = Stroke::new(grid::HAIRLINE, palette.sheet);
        let half = self.half_at(top);
        painter.hline(self.foot.x - half..=self.foot.x + half, top, seam);
    }

    /// A slice of the cup. A mesh without feathering, so that no seam shows between slices.
    fn slice(&self, painter: &Painter, top: f32, bottom: f32, colour: Color32) {
        let mut mesh = Mesh::default();
        for y in [top, bottom] {
            let half = self.half_at(y);
            mesh.colored_vertex(pos2(self.foot.x - half, y), colour);
            mesh.colored_vertex(pos2(self.foot.x + half, y), colour);
        }
        mesh.add_triangle(0, 1, 2);
        mesh.add_triangle(1, 2, 3);
        painter.add(Shape::mesh(mesh));
    }

    fn inside(&self, painter: &Painter, top: f32, bottom: f32) -> Painter {
        let half = self.half_at(top).max(self.half_at(bottom));
        let clip = Rect::from_min_max(
            pos2(self.foot.x - half, top),
            pos2(self.foot.x + half, bottom),
        );
        painter.with_clip_rect(clip.intersect(painter.clip_rect()))
    }

    fn hatch(&self, painter: &Painter, top: f32, bottom: f32, colour: Color32) {
        let (inside, height) = (self.inside(painter, top, bottom), bottom - top);
        let half = self.half_at(top);
        let mut x = self.foot.x - half - height;
        while x < self.foot.x + half {
            inside.line_segment(
                [pos2(x, bottom), pos2(x + height, top)],
                Stroke::new(grid::HAIRLINE, colour),
            );
            x += HATCH;
        }
    }

    /// Pieces lie in rows, every other row shifted by half a piece.
    fn pieces(&self, painter: &Painter, top: f32, bottom: f32, colour: Color32) {
        let mut y = bottom - PIECE / 2.0 - 1.0;
        let mut shifted = false;
        while y - PIECE / 2.0 > top - PIECE * 0.4 {
            let half = self.half_at(y) - PIECE / 2.0 - 1.0;
            let mut x = -half + if shifted { PIECE / 2.0 } else { 0.0 };
            while x <= half {
                painter.circle_filled(pos2(self.foot.x + x, y), PIECE / 2.0 - 0.75, colour);
                x += PIECE;
            }
            y -= PIECE * 0.86;
            shifted = !shifted;
        }
    }

    /// Bubbles that get rarer towards the drink.
    fn foam(&self, painter: &Painter, top: f32, bottom: f32, colour: Color32) {
        let stroke = Stroke::new(grid::HAIRLINE, colour);
        let half = self.half_at(top) - 4.0;
        let mut x = -half;
        let mut row = 0;
        while x < half {
            let y = top + 4.0 + (row % 3) as f32 * 4.0;
            if y < bottom - 2.0 {
                painter.circle_stroke(pos2(self.foot.x + x, y), 1.5 + (row % 2) as f32, stroke);
            }
            x += 7.0;
            row += 1;
        }
    }

    /// Blocks of ice from the surface down, or up to where they stand out of the liquid.
    fn ice(&self, painter: &Painter, palette: &Palette, lit: Option<&LineId>) {
        if self.filling.ice < 1.0 {
            return;
        }
        let top = self.filling.ice_top.max(self.filling.surface);
        let bottom = (top - self.filling.ice / ICE_PACKING).max(self.filling.toppings);
        let (top, bottom) = (self.y_of(top), self.y_of(bottom));
        let is_lit = lit.is_some() && lit == self.filling.ice_line.as_ref();
        let fill = palette
            .sheet
            .gamma_multiply(if is_lit { 0.8 } else { 0.45 });
        let stroke = Stroke::new(if is_lit { 2.0 } else { 1.2 }, palette.roles.ice);
        let rows = whole((bottom - top) / ICE_BLOCK);
        let pitch = (bottom - top) / rows as f32;
        for row in 0..rows {
            let y = top + (row as f32 + 0.5) * pitch;
            let half = self.half_at(y) - 3.0;
            let count = whole(2.0 * half / (ICE_BLOCK * 1.15) - 0.5);
            let step = 2.0 * half / count as f32;
            for column in 0..count {
                let x = self.foot.x - half + (column as f32 + 0.5) * step;
                // The same unrest in every frame: angles from -10 to 10 degrees.
                let unrest = ((row * 7 + column * 5) % 9) as f32 - 4.0;
                let side = (ICE_BLOCK * 0.84).min(pitch);
                painter.add(block(
                    pos2(x, y + unrest * 0.3),
                    side,
                    unrest * 0.045,
                    fill,
                    stroke,
                ));
            }
        }
    }

    fn fill_line(&self, painter: &Painter, palette: &Palette) {
        let most = self.y_of(self.notes.most);
        let half = self.half_at(most);
        let line = [
            pos2(self.foot.x - half, most),
            pos2(self.foot.x + half, most),
        ];
        let stroke = Stroke::new(grid::HAIRLINE, palette.text_quiet);
        painter.extend(Shape::dashed_line(&line, stroke, grid::STEP, grid::STEP));
        // The surface itself: the line that is filled to.
        let filled = self.y_of(self.filling.filled);
        let half = self.half_at(filled);
        let stroke = Stroke::new(WALL, palette.accent);
        painter.hline(self.foot.x - half..=self.foot.x + half, filled, stroke);
    }

    fn wall(&self, painter: &Painter, palette: &Palette) {
        let (top, bottom) = (self.rim(), self.foot.y);
        let (upper, lower) = (
            self.half_at(top) + WALL / 2.0,
            self.half_at(bottom) + WALL / 2.0,
        );
        let x = self.foot.x;
        let points = vec![
            pos2(x - upper - LIP, top - 1.0),
            pos2(x - upper, top),
            pos2(x - lower, bottom + WALL / 2.0),
            pos2(x + lower, bottom + WALL / 2.0),
            pos2(x + upper, top),
            pos2(x + upper + LIP, top - 1.0),
        ];
        painter.add(Shape::line(points, Stroke::new(WALL, palette.text_normal)));
    }

    fn words(&self, painter: &Painter, palette: &Palette) {
        let (x, align) = if self.has_names() {
            (self.rect.left(), Align2::LEFT_TOP)
        } else {
            (self.rect.center().x, Align2::CENTER_TOP)
        };
        let mut y = self.foot.y + grid::NEAR;
        let mut line = |text: &str, colour: Color32| {
            let mut job =
                LayoutJob::simple_singleline(text.to_owned(), TypeStyle::Small.font_id(), colour);
            job.wrap = TextWrapping::truncate_at_width(self.rect.width());
            let galley = painter.layout_job(job);
            let place = align.anchor_size(pos2(x, y), galley.size()).min;
            painter.galley(place, galley, colour);
            y += TEXT_LINE;
        };
        if !self.has_names() {
            line(&self.notes.state(), palette.text_strong);
        }
        line(&self.notes.cup, palette.text_quiet);
        if self.has_names() {
            line(self.notes.colours, palette.text_quiet);
            for words in self.notes.poured {
                line(words, palette.text_quiet);
            }
        }
        for remark in &self.notes.remarks {
            line(remark, palette.caution);
        }
    }
}

/// The nearest whole number, at least one.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a small count, at least one"
)]
fn whole(count: f32) -> usize {
    count.round().max(1.0) as usize
}

/// A square with soft corners, turned by an angle in radians.
fn block(centre: Pos2, side: f32, angle: f32, fill: Color32, stroke: Stroke) -> Shape {
    let (half, cut) = (side / 2.0, side * 0.16);
    let turn = egui::emath::Rot2::from_angle(angle);
    let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
    let points = corners
        .iter()
        .enumerate()
        .flat_map(|(index, (x, y))| {
            let along_x = vec2(x * (half - cut), y * half);
            let along_y = vec2(x * half, y * (half - cut));
            if index % 2 == 0 {
                [along_y, along_x]
            } else {
                [along_x, along_y]
            }
        })
        .map(|point| centre + turn * point)
        .collect();
    Shape::convex_polygon(points, fill, stroke)
}
