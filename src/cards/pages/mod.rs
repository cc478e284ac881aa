//! From the layout model to pages: placed glyphs, rules and fills, which the PDF and the preview both draw.
//!
//! Points (1/72 inch), from the top left. Text is shaped, put in order of direction and given its fonts by `parley`; this
//! module breaks the blocks into rows and the rows into pages.

mod block_rows;
mod flow;
mod fonts;
mod foot;
mod page;
mod paper;
mod reading;
mod rows;
mod table_rows;
mod typesetter;

pub use fonts::{Fonts, MissingCharacter};
pub use page::{GlyphRun, Ink, Mark, Page, Part, PlacedGlyph, RowKind};
pub use paper::Paper;
pub(super) use reading::words;
pub use reading::{Element, Text, reading};
pub use typesetter::Typesetter;
