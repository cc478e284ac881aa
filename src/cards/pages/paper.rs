//! Sizes of paper.

use crate::cards::document::{CardKind, Orientation};
use crate::say::Speaker;

/// A size of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Paper {
    /// 148 × 210 mm (ISO 216).
    #[default]
    A5,
    /// 5.5 × 8.5 in, half of a US letter (ANSI/ASME Y14.1).
    HalfLetter,
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 8.5 × 11 in (ANSI/ASME Y14.1).
    Letter,
    /// A4 that hangs on a wall: read from where one stands.
    Wall,
    /// US letter that hangs on a wall.
    LetterWall,
}

/// Points in a millimetre: 72 in an inch of 25.4 mm.
const POINTS_PER_MILLIMETRE: f32 = 72.0 / 25.4;

impl Paper {
    /// All sizes, in the order in which they are offered.
    pub const ALL: [Self; 6] = [
        Self::A5,
        Self::HalfLetter,
        Self::A4,
        Self::Letter,
        Self::Wall,
        Self::LetterWall,
    ];

    /// The words on screens.
    pub fn words(self, speaker: &Speaker<'_>) -> &'static str {
        match self {
            Self::A5 => "A5",
            Self::HalfLetter => speaker.word("paper-half-letter"),
            Self::A4 => "A4",
            Self::Letter => speaker.word("paper-letter"),
            Self::Wall => speaker.word("paper-wall"),
            Self::LetterWall => speaker.word("paper-letter-wall"),
        }
    }

    /// The word in a command.
    pub fn key(self) -> &'static str {
        match self {
            Self::A5 => "a5",
            Self::HalfLetter => "half-letter",
            Self::A4 => "a4",
            Self::Letter => "letter",
            Self::Wall => "wall",
            Self::LetterWall => "letter-wall",
        }
    }

    /// Width and height in points.
    pub fn points(self, orientation: Orientation) -> (f32, f32) {
        let millimetres = |width: f32, height: f32| {
            (
                width * POINTS_PER_MILLIMETRE,
                height * POINTS_PER_MILLIMETRE,
            )
        };
        let (width, height) = match self {
            Self::A5 => millimetres(148.0, 210.0),
            Self::HalfLetter => (396.0, 612.0),
            Self::A4 | Self::Wall => millimetres(210.0, 297.0),
            Self::Letter | Self::LetterWall => (612.0, 792.0),
        };
        match orientation {
            Orientation::Upright => (width, height),
            Orientation::Wide => (height, width),
        }
    }

    /// The size that a kind of card is usually printed on; `inches` for shops that buy paper in inches.
    pub fn usual(kind: CardKind, inches: bool) -> Self {
        match (kind, inches) {
            (CardKind::Counter | CardKind::Ladder, false) => Self::A5,
            (CardKind::Counter | CardKind::Ladder, true) => Self::HalfLetter,
            (_, false) => Self::A4,
            (_, true) => Self::Letter,
        }
    }

    /// Whether it is measured in inches.
    pub fn is_in_inches(self) -> bool {
        matches!(self, Self::HalfLetter | Self::Letter | Self::LetterWall)
    }

    /// Sizes of the words on it, pt, the smallest first; the largest is taken with which everything goes onto one page. A card
    /// is read from further away than a sheet, and what hangs on a wall from further yet.
    pub(super) fn text_sizes(self, orientation: Orientation) -> &'static [f32] {
        match (self, orientation) {
            (Self::A5 | Self::HalfLetter, Orientation::Upright) => &[9.5],
            (Self::A4 | Self::Letter, Orientation::Upright) => &[10.0],
            (Self::A5 | Self::HalfLetter | Self::A4 | Self::Letter, Orientation::Wide) => &[8.0],
            (Self::Wall | Self::LetterWall, Orientation::Upright) => {
                &[12.5, 14.0, 16.0, 18.0, 20.0]
            }
            (Self::Wall | Self::LetterWall, Orientation::Wide) => &[8.0, 10.0, 12.0, 14.0],
        }
    }

    /// Room that stays free on each side, pt: more than the 18 pt that common printers can't reach.
    pub(super) fn margin(self) -> f32 {
        match self {
            Self::A5 | Self::HalfLetter => 26.0,
            Self::A4 | Self::Letter | Self::Wall | Self::LetterWall => 36.0,
        }
    }
}
