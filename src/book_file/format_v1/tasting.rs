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

in_file! {
    /// A cup: the drink that it was, and its lines as they were.
    struct TastedCup {
        recipe: Option<String> = nothing,
        version: Option<String> = nothing,
        lines: Resolved,
        tasted_with: Option<TastedWith> = nothing,
        ;
        const MOST: usize = MOST_CUPS;
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
