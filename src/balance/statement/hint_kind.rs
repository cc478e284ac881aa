//! What the words of a name or a statement are a hint of.

use crate::book::{HighPotencySweetener, PolyolKind};

/// A polyol that words name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NamedPolyol {
    /// E 420.
    Sorbitol,
    /// E 421.
    Mannitol,
    /// E 422; a polyol by the law's definition, mostly added in small amounts to keep something moist.
    Glycerol,
    /// E 953.
    Isomalt,
    /// E 964.
    Polyglycitol,
    /// E 965.
    Maltitol,
    /// E 966.
    Lactitol,
    /// E 967.
    Xylitol,
    /// E 968.
    Erythritol,
    /// "Polyols" without a name.
    NotNamed,
}

/// A high-potency sweetener that words name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NamedSweetener {
    /// E 950.
    AcesulfameK,
    /// E 951.
    Aspartame,
    /// E 952.
    Cyclamate,
    /// E 954.
    Saccharin,
    /// E 955.
    Sucralose,
    /// E 957.
    Thaumatin,
    /// Neohesperidin dihydrochalcone, E 959.
    Neohesperidin,
    /// E 960 or stevia, whichever of its glycosides.
    SteviolGlycosides,
    /// Rebaudioside A, of E 960.
    RebaudiosideA,
    /// Stevioside, of E 960.
    Stevioside,
    /// E 961.
    Neotame,
    /// The salt of both, E 962.
    AspartameAcesulfame,
    /// E 969.
    Advantame,
    /// Mogrosides of monk fruit.
    MonkFruit,
    /// "Sweetener" without a name, or a name that says "sugar-free".
    NotNamed,
}

/// What a word is a hint of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HintKind {
    /// Caffeine.
    Caffeine,
    /// Solids of tea leaf or of another infusion.
    Tea,
    /// Organic acid.
    Acid,
    /// A polyol.
    Polyol(NamedPolyol),
    /// A high-potency sweetener.
    Sweetener(NamedSweetener),
}

impl NamedPolyol {
    /// The polyol whose figures are known; `None` for the others and for those without a name.
    pub fn kind(self) -> Option<PolyolKind> {
        Some(match self {
            Self::Sorbitol => PolyolKind::Sorbitol,
            Self::Mannitol => PolyolKind::Mannitol,
            Self::Isomalt => PolyolKind::Isomalt,
            Self::Maltitol => PolyolKind::Maltitol,
            Self::Lactitol => PolyolKind::Lactitol,
            Self::Xylitol => PolyolKind::Xylitol,
            Self::Erythritol => PolyolKind::Erythritol,
            Self::Glycerol | Self::Polyglycitol | Self::NotNamed => return None,
        })
    }
}

impl NamedSweetener {
    /// The entries of a composition that are this one; none for one whose potency is not known here.
    pub fn kinds(self) -> &'static [HighPotencySweetener] {
        match self {
            Self::AcesulfameK => &[HighPotencySweetener::AcesulfameK],
            Self::Aspartame => &[HighPotencySweetener::Aspartame],
            Self::Saccharin => &[HighPotencySweetener::Saccharin],
            Self::Sucralose => &[HighPotencySweetener::Sucralose],
            Self::SteviolGlycosides => &[
                HighPotencySweetener::RebaudiosideA,
                HighPotencySweetener::Stevioside,
            ],
            Self::RebaudiosideA => &[HighPotencySweetener::RebaudiosideA],
            Self::Stevioside => &[HighPotencySweetener::Stevioside],
            Self::Cyclamate
            | Self::Thaumatin
            | Self::Neohesperidin
            | Self::Neotame
            | Self::AspartameAcesulfame
            | Self::Advantame
            | Self::MonkFruit
            | Self::NotNamed => &[],
        }
    }
}
