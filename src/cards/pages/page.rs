//! A page of placed glyphs, rules and fills.

use std::ops::Range;
use std::sync::Arc;

use parley::FontData;

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
    /// What they are of to those who have the page read to them; `None` for what only the eye wants.
    pub part: Option<Part>,
}

/// The place of a run in the order of reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// Which row of the document it stands in; a row that is divided is still one.
    pub row: usize,
    /// Which cell of the row.
    pub cell: usize,
    /// How many cells the row has; one without a letter is none of them on the page.
    pub cells: usize,
    /// What the row is.
    pub kind: RowKind,
    /// Whether the row begins a list or a table, even behind another.
    pub begins: bool,
}

/// What a row is to those who have a page read to them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum RowKind {
    /// A heading; 1 is the title.
    Heading(u8),
    /// Words for themselves.
    #[default]
    Paragraph,
    /// A number or a name, and what belongs to it.
    Item,
    /// The head of a table.
    TableHead,
    /// A row of a table; the first cell names it.
    TableRow,
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

/// A grey between black (0) and white (255): cards are printed, often without colour.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Ink(pub u8);

impl Ink {
    /// Words.
    pub const BLACK: Self = Self(0x1a);
    /// What stands beside the words; 7 : 1 on white.
    pub const QUIET: Self = Self(0x55);
    /// Lines between rows.
    pub const RULE: Self = Self(0xc4);
    /// Behind cautions.
    pub const SHADE: Self = Self(0xf1);
}
