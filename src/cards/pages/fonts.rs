//! The fonts that cards are set in: those of the program and, for other scripts, those of the machine.

use std::sync::Arc;

use parley::FontContext;
use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};

/// The fonts of the program, licensed for embedding (see `assets/README.md`).
const BUNDLED: [&[u8]; 3] = [
    include_bytes!("../../../assets/fonts/EvensipSans-Regular.ttf"),
    include_bytes!("../../../assets/fonts/EvensipSans-SemiBold.ttf"),
    include_bytes!("../../../assets/fonts/EvensipSerif-SemiBold.ttf"),
];

/// Fonts to set cards in.
#[derive(Clone)]
pub struct Fonts {
    pub(super) context: FontContext,
}

/// A character that no font has, and the text that it was first met in.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct MissingCharacter {
    /// The character.
    pub character: char,
    /// Where it was met: the whole text.
    pub text: String,
}

impl MissingCharacter {
    /// "語 (U+8A9E)".
    pub fn words(&self) -> String {
        format!("{} (U+{:04X})", self.character, u32::from(self.character))
    }
}

impl Fonts {
    /// The fonts of the program and those that are installed. Looking those up takes a while; keep the result.
    pub fn installed() -> Self {
        Self::new(true)
    }

    /// The fonts of the program alone: the same on every machine.
    pub fn bundled() -> Self {
        Self::new(false)
    }

    fn new(system_fonts: bool) -> Self {
        let mut collection = Collection::new(CollectionOptions {
            shared: false,
            system_fonts,
        });
        for bytes in BUNDLED {
            collection.register_fonts(Blob::new(Arc::new(bytes)), None);
        }
        Self {
            context: FontContext {
                collection,
                source_cache: SourceCache::default(),
            },
        }
    }
}

impl std::fmt::Debug for Fonts {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter.debug_struct("Fonts").finish_non_exhaustive()
    }
}
