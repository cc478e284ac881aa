//! Tastings as they stand in a file.

use super::super::checker::Checker;
use super::recipe::{Resolved, TastedWith};
use super::settings::Axis;
use super::stored::{Stored, file_group, in_file};
use crate::book::MOST_CUPS;

in_file! {
    struct Tasting named by id {
        id: String,
        date: String,
        people: Vec<String> = nothing,
        reason: String = nothing,
        cups: Vec<TastedCup> = nothing,
        axis: Option<Axis> = nothing,
        outcome: Option<TastingOutcome> = nothing,
        counts: bool = nothing,
        seed: Option<u64> = nothing,
        notes: Vec<TasteNote> = nothing,
    }
}

/// A cup: the drink that it was, and its lines as they were.
#[derive(serde::Deserialize, PartialEq, serde::Serialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TastedCup {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    recipe: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    version: Option<String>,
    lines: Resolved,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tasted_with: Option<TastedWith>,
}

impl Stored<crate::book::TastedCup> for TastedCup {
    const MOST: usize = MOST_CUPS;

    fn from_book(value: &crate::book::TastedCup) -> Self {
        let crate::book::TastedCup {
            recipe,
            version,
            lines,
            tasted_with,
        } = value;
        Self {
            recipe: Stored::from_book(recipe),
            version: Stored::from_book(version),
            lines: Stored::from_book(lines),
            tasted_with: Stored::from_book(tasted_with),
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> crate::book::TastedCup {
        let Self {
            recipe,
            version,
            lines,
            tasted_with,
        } = self;
        crate::book::TastedCup {
            recipe: checker.within("recipe", |checker| recipe.into_book(checker)),
            version: checker.within("version", |checker| version.into_book(checker)),
            lines: checker.within("lines", |checker| lines.into_book(checker)),
            tasted_with: checker.within("tasted_with", |checker| tasted_with.into_book(checker)),
        }
    }
}

in_file! {
    enum TastingOutcome with parts here {
        Said,
        Triangle {
            people: u32,
            right: u32,
        },
        DuoTrio {
            people: u32,
            right: u32,
        },
        Pair {
            people: u32,
            right: u32,
        },
        PairEitherWay {
            people: u32,
            right: u32,
        },
        Matched {
            people: u32,
        },
        PassedAsEqual {
            people: u32,
        },
        About {
            people: u32,
            times: f64,
        },
    }
}

in_file! {
    struct TasteNote {
        person: String = nothing,
        cup: u32,
        axis: Option<Axis> = nothing,
        text: String = nothing,
    }
}
