//! Pages as pictures, for the preview: the same glyphs at the same places as in the PDF.

use vello_cpu::color::AlphaColor;
use vello_cpu::kurbo::{Affine, Rect};
use vello_cpu::{Glyph, Pixmap, RenderContext, Resources};

use super::pages::{GlyphRun, Ink, Mark, Page};

/// A picture of a page on white.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// Pixels in a row.
    pub width: u16,
    /// Rows.
    pub height: u16,
    /// Red, green, blue and opacity of each pixel, row by row.
    pub rgba: Vec<u8>,
}

/// Most pixels along a side: more than any screen shows of a page.
const MOST_PIXELS: f32 = 8000.0;

/// A page at so many pixels per point.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the size is between 1 and 8000"
)]
pub fn picture(page: &Page, pixels_per_point: f32) -> Picture {
    let largest = page.width.max(page.height).max(1.0);
    let scale = pixels_per_point.clamp(0.05, MOST_PIXELS / largest);
    let pixels = |points: f32| (points * scale).round().clamp(1.0, MOST_PIXELS) as u16;
    let (width, height) = (pixels(page.width), pixels(page.height));
    let mut context = RenderContext::new(width, height);
    let mut resources = Resources::new();
    context.set_paint(colour(Ink(0xff)));
    context.fill_rect(&Rect::new(0.0, 0.0, f64::from(width), f64::from(height)));
    context.set_transform(Affine::scale(f64::from(scale)));
    for mark in &page.marks {
        match mark {
            Mark::Glyphs(run) => draw_run(&mut context, &mut resources, run),
            Mark::Fill { corners, ink } => {
                context.set_paint(colour(*ink));
                context.fill_rect(&rect(*corners));
            }
            Mark::Frame {
                corners,
                width,
                ink,
            } => {
                context.set_paint(colour(*ink));
                context.set_stroke(vello_cpu::kurbo::Stroke::new(f64::from(*width)));
                context.stroke_rect(&rect(*corners));
            }
        }
    }
    let mut pixmap = Pixmap::new(width, height);
    context.flush();
    context.render(&mut pixmap, &mut resources);
    // White lies below everything, so that every pixel is opaque and needs no undoing of its opacity.
    let rgba = pixmap
        .data()
        .iter()
        .flat_map(|pixel| [pixel.r, pixel.g, pixel.b, pixel.a])
        .collect();
    Picture {
        width,
        height,
        rgba,
    }
}

fn colour(ink: Ink) -> AlphaColor<vello_cpu::color::Srgb> {
    AlphaColor::from_rgb8(ink.0, ink.0, ink.0)
}

fn rect([left, top, right, bottom]: [f32; 4]) -> Rect {
    Rect::new(
        f64::from(left),
        f64::from(top),
        f64::from(right),
        f64::from(bottom),
    )
}

fn draw_run(context: &mut RenderContext, resources: &mut Resources, run: &GlyphRun) {
    context.set_paint(colour(run.ink));
    let mut pen = run.x;
    let glyphs: Vec<Glyph> = run
        .glyphs
        .iter()
        .map(|glyph| {
            let placed = Glyph {
                id: glyph.id,
                x: pen + glyph.x,
                y: run.baseline + glyph.y,
            };
            pen += glyph.advance;
            placed
        })
        .collect();
    context
        .glyph_run(resources, &run.font)
        .font_size(run.size)
        .normalized_coords(&run.normalized)
        .hint(false)
        .fill_glyphs(glyphs.into_iter());
}
