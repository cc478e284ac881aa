//! From the layout model to pages: placed glyphs, rules and fills, which the PDF and the preview both draw.
//!
//! Points (1/72 inch), from the top left. Text is shaped, put in order of direction and given its fonts by `parley`; this
//! module breaks the blocks into rows and the rows into pages.

mod block_rows;
mod flow;
mod fonts;
mod foot;
mod paper;
mod rows;
mod table_rows;
mod typesetter;

pub use fonts::{Fonts, MissingCharacter};
pub use paper::Paper;
pub use typesetter::{Ink, Typesetter};

use parley::FontData;
use std::ops::Range;
use std::sync::Arc;

/// A page with everything that stands on it.
#[derive(Clone, Debug)]
pub struct Page {
    /// Width, pt.
    pub width: f32,
    /// Height, pt.
    pub height: f32,
    /// What stands on it; later marks lie over earlier ones.
    pub marks: Vec<Mark>,
}

/// Something on a page.
#[derive(Clone, Debug)]
pub enum Mark {
    /// Glyphs of one font in a row.
    Glyphs(GlyphRun),
    /// A filled box.
    Fill {
        /// Left, top, right, bottom, pt.
        corners: [f32; 4],
        /// Its colour.
        ink: Ink,
    },
    /// The outline of a box.
    Frame {
        /// Left, top, right, bottom, pt.
        corners: [f32; 4],
        /// Width of the line, pt.
        width: f32,
        /// Its colour.
        ink: Ink,
    },
}

/// Glyphs of one font in a row.
#[derive(Clone, Debug)]
pub struct GlyphRun {
    /// The font.
    pub font: FontData,
    /// Coordinates of a variable font, by the tag of the axis.
    pub variations: Vec<([u8; 4], f32)>,
    /// The same, as the shaper normalised them.
    pub normalized: Vec<i16>,
    /// Size, pt.
    pub size: f32,
    /// Where the first glyph stands, pt.
    pub x: f32,
    /// The base line, pt from the top.
    pub baseline: f32,
    /// Its colour.
    pub ink: Ink,
    /// The text that the glyphs are of.
    pub text: Arc<str>,
    /// The glyphs, from left to right.
    pub glyphs: Vec<PlacedGlyph>,
}

/// A glyph of a run.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedGlyph {
    /// Its number in the font; 0 is "no such glyph".
    pub id: u32,
    /// How far the pen moves, pt.
    pub advance: f32,
    /// Where it stands off the pen, pt to the right.
    pub x: f32,
    /// Where it stands off the base line, pt downwards.
    pub y: f32,
    /// Bytes of the text that it stands for.
    pub bytes: Range<usize>,
}
