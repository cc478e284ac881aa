//! Spoons, cups and pinches that a recipe is written with, where no measure of the shop is meant.

/// A measure of kitchens. What it holds is the legal value where there is one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Household {
    /// A teaspoon.
    Teaspoon,
    /// A tablespoon.
    Tablespoon,
    /// A cup.
    Cup,
    /// The cup of German recipes, which no law knows.
    Tasse,
    /// What three fingers hold.
    Pinch,
    /// What lies on the tip of a knife.
    KnifeTip,
    /// A few drops.
    Dash,
    /// A short pour.
    Splash,
}

impl Household {
    /// What it holds, ml: of spoons and cup as 21 CFR 101.9(b)(5)(viii) has them (5, 15 and 240 ml), of the others by common
    /// practice, no source.
    pub fn millilitres(self) -> f64 {
        match self {
            Self::Teaspoon | Self::Splash => 5.0,
            Self::Tablespoon => 15.0,
            Self::Cup => 240.0,
            Self::Tasse => 200.0,
            Self::Pinch => 0.3,
            Self::KnifeTip => 0.4,
            Self::Dash => 0.6,
        }
    }

    /// Whether a law says what it holds.
    pub fn is_legal(self) -> bool {
        matches!(self, Self::Teaspoon | Self::Tablespoon | Self::Cup)
    }
}
