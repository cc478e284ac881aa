//! What a book may hold at most. Loading refuses more, and so does every edit: what was made can be opened again.

use super::recipe::MOST_LINES;
use super::{Book, MOST_CUPS, Recipe, RecipeId, Tasting, TastingId, VersionId};

/// A list of a recipe that has a limit: each line's doubt is tried out on every figure, which is quadratic.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LimitedList {
    /// Lines and instructions of the recipe itself.
    Lines,
    /// Changes of a version.
    Changes(VersionId),
    /// Lines and instructions of an approval, counted from 1.
    Approved(usize),
}

/// A limit of books that is passed, with what passes it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LimitPassed {
    /// A list of a recipe is too long.
    List {
        /// The recipe.
        recipe: RecipeId,
        /// Which of its lists.
        list: LimitedList,
        /// How many entries it would have.
        count: usize,
    },
    /// A tasting of too many cups.
    Cups {
        /// The tasting.
        tasting: TastingId,
        /// How many it would have.
        count: usize,
    },
    /// A cup of a tasting has too many lines.
    TastedLines {
        /// The tasting.
        tasting: TastingId,
        /// Which of its cups, from 1.
        cup: usize,
        /// How many lines it would have.
        count: usize,
    },
    /// The text of the book is too long.
    Text {
        /// How long it would be, bytes.
        bytes: u64,
        /// The most that is read, bytes.
        most: u64,
    },
    /// Numbers that no file can hold.
    NotFinite {
        /// How many there would be.
        count: usize,
    },
}

/// What a book takes in its file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Written {
    /// Length of its text, bytes.
    pub bytes: u64,
    /// Numbers that the text could not hold.
    pub not_finite: usize,
}

/// How the text of a book is measured. Whoever writes files knows; an edit only has to ask.
#[derive(Clone, Copy, Debug)]
pub struct TextMeasure {
    /// Measures a book; when another one is known with its measure, only what differs has to be looked at.
    pub written: fn(&Book, Option<(&Book, Written)>) -> Written,
    /// The longest text that can be opened again, bytes.
    pub most: u64,
}

impl Recipe {
    /// The first list of the recipe that is longer than a list may be.
    pub fn limit_passed(&self) -> Option<LimitPassed> {
        let lines = std::iter::once((LimitedList::Lines, self.entries.len()));
        let changes = self.versions.iter().map(|version| {
            (
                LimitedList::Changes(version.id.clone()),
                version.changes.len(),
            )
        });
        let approved = self.approvals.iter().enumerate().map(|(at, approval)| {
            (
                LimitedList::Approved(at + 1),
                approval.resolved.entries.len(),
            )
        });
        lines
            .chain(changes)
            .chain(approved)
            .find(|(_, count)| *count > MOST_LINES)
            .map(|(list, count)| LimitPassed::List {
                recipe: self.id.clone(),
                list,
                count,
            })
    }
}

impl Tasting {
    /// The first list of the tasting that is longer than a list may be.
    pub fn limit_passed(&self) -> Option<LimitPassed> {
        let tasting = || self.id.clone();
        if self.cups.len() > MOST_CUPS {
            return Some(LimitPassed::Cups {
                tasting: tasting(),
                count: self.cups.len(),
            });
        }
        let counts = self.cups.iter().map(|cup| cup.lines.entries.len());
        let mut counts = (1..).zip(counts);
        let (cup, count) = counts.find(|(_, count)| *count > MOST_LINES)?;
        Some(LimitPassed::TastedLines {
            tasting: tasting(),
            cup,
            count,
        })
    }
}

impl Book {
    /// The first list that is too long in a recipe or tasting that the book before did not have just so.
    pub fn limit_passed_since(&self, before: &Self) -> Option<LimitPassed> {
        self.recipes
            .unlike(&before.recipes)
            .find_map(|recipe| recipe.limit_passed())
            .or_else(|| {
                let mut tastings = self.tastings.unlike(&before.tastings);
                tastings.find_map(|tasting| tasting.limit_passed())
            })
    }
}
