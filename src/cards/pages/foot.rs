//! The line at the foot of every page: shop, revision and date, and the number of the page.

use super::typesetter::{Look, TextLine, Typesetter};
use crate::cards::document::{Align, Document};
use crate::quantity::excerpt;
use crate::say::say;

/// Size of the words, pt.
const SIZE: f32 = 7.0;

/// Most lines; what takes more is cut with a mark, and stands in full behind the last block.
const MOST_LINES: usize = 3;

/// Most characters of the shop, the revision and the date, each, where the foot is cut.
const MOST_CHARACTERS: usize = 40;

/// What stands at the foot of every page.
pub(super) struct Foot {
    pub(super) lines: Vec<TextLine>,
    /// Whether something had to be left out.
    pub(super) is_cut: bool,
}

impl Foot {
    /// Room for the number of the page, pt.
    pub(super) const NUMBERS: f32 = 56.0;

    /// The foot of a document on paper of this width.
    pub(super) fn of(setter: &mut Typesetter, document: &Document, width: f32) -> Self {
        let look = Look::plain(SIZE).quiet();
        let width = width - Self::NUMBERS - 4.0;
        let text = document.foot();
        // A text that is far too long need not be set to find out.
        if text.len() <= 2000 {
            let lines = setter.lines(&text, look, width);
            if lines.len() <= MOST_LINES {
                return Self {
                    lines,
                    is_cut: false,
                };
            }
        }
        let short = Document {
            shop: excerpt(&document.shop, MOST_CHARACTERS),
            revision: excerpt(&document.revision, MOST_CHARACTERS),
            date: excerpt(&document.date, MOST_CHARACTERS),
            ..Document::default()
        };
        let mut lines = setter.lines(&short.foot(), look, width);
        lines.truncate(MOST_LINES);
        Self {
            lines,
            is_cut: true,
        }
    }

    /// "At the foot, in full: …", for a foot that is cut.
    pub(super) fn in_full(document: &Document) -> String {
        say!(document.speaker(), "card-foot-in-full", foot: document.foot())
    }

    /// "2 / 3".
    pub(super) fn number(setter: &mut Typesetter, at: usize, count: usize) -> Vec<TextLine> {
        let look = Look::plain(SIZE).quiet().aligned(Align::Right);
        setter.lines(&format!("{at} / {count}"), look, Self::NUMBERS)
    }

    /// Height of its lines, pt.
    pub(super) fn height(&self) -> f32 {
        self.lines.iter().map(|line| line.height).sum()
    }
}
