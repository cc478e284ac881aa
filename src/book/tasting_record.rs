//! Tastings that the shop keeps: who tasted which cups against each other when, and what came out.
//!
//! A tasting freezes its cups, as an approval does: their lines, and the revisions of everything that entered them. So it still
//! says the same of a product when the recipe that was tasted has long become another one.

use super::{Axis, Item, RecipeId, Resolved, TastedWith, TastingId, VersionId};

/// Most cups of one tasting: more than anybody tastes with a clear tongue.
pub const MOST_CUPS: usize = 20;

/// A cup that was tasted.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TastedCup {
    /// The drink that it was; none for a cup that was mixed for the tasting alone.
    pub recipe: Option<RecipeId>,
    /// The version of that drink; none for the recipe itself.
    pub version: Option<VersionId>,
    /// Its lines as they were.
    pub lines: Resolved,
    /// What entered it. An edit states it; where a file does not, everything was at its first revision.
    pub tasted_with: Option<TastedWith>,
}

/// What came out of a tasting. Whoever is counted is counted once, however often they tasted.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum TastingOutcome {
    /// Nothing was counted: the notes say what people said.
    #[default]
    Said,
    /// Of three cups, two of them the same, so many people found the odd one.
    Triangle {
        /// People who answered.
        people: u32,
        /// Those who were right.
        right: u32,
    },
    /// Of two cups, so many people found the one that was the same as a reference.
    DuoTrio {
        /// People who answered.
        people: u32,
        /// Those who were right.
        right: u32,
    },
    /// It was agreed on beforehand that the second cup should have more, and so many people said that it has.
    Pair {
        /// People who answered.
        people: u32,
        /// Those who chose the second cup.
        right: u32,
    },
    /// Either cup could have had more, and so many people said that the second one has.
    PairEitherWay {
        /// People who answered.
        people: u32,
        /// Those who chose the second cup.
        right: u32,
    },
    /// The second cup was changed until it was as the first one: "B at 1½ scoops is as sweet as A at 2".
    Matched {
        /// People who agreed.
        people: u32,
    },
    /// The second cup passed as equal to the first one.
    PassedAsEqual {
        /// People who agreed.
        people: u32,
    },
    /// A note at the bench: the second cup has about so many times what the first one has.
    About {
        /// People who agreed.
        people: u32,
        /// How many times as much: 0.8 for "weaker, about 0.8".
        times: f64,
    },
}

/// What somebody said of a cup.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TasteNote {
    /// Who.
    pub person: String,
    /// Which cup, counted from 1.
    pub cup: u32,
    /// On which axis; none where it is about the cup as a whole.
    pub axis: Option<Axis>,
    /// What.
    pub text: String,
}

/// A tasting.
#[derive(Clone, Debug, PartialEq)]
pub struct Tasting {
    /// Its id.
    pub id: TastingId,
    /// Day, `2026-05-04`.
    pub date: String,
    /// Who tasted, by name or initials as the shop writes them.
    pub people: Vec<String>,
    /// Why.
    pub reason: String,
    /// What was tasted: the first cup, and what was held against it.
    pub cups: Vec<TastedCup>,
    /// What was asked about; none where people only had to tell the cups apart.
    pub axis: Option<Axis>,
    /// What came out.
    pub outcome: TastingOutcome,
    /// Whether what came out is evidence of the ingredients. The shop may keep a tasting and leave it out: the milk was off.
    pub counts: bool,
    /// The number that serving orders and codes were drawn from.
    pub seed: Option<u64>,
    /// What people said.
    pub notes: Vec<TasteNote>,
}

impl TastingOutcome {
    /// One of each kind, in which nobody has been counted yet, in the order in which they are offered.
    pub const KINDS: [Self; 8] = [
        Self::Said,
        Self::Matched { people: 0 },
        Self::PassedAsEqual { people: 0 },
        Self::About {
            people: 0,
            times: 1.0,
        },
        Self::Pair {
            people: 0,
            right: 0,
        },
        Self::PairEitherWay {
            people: 0,
            right: 0,
        },
        Self::Triangle {
            people: 0,
            right: 0,
        },
        Self::DuoTrio {
            people: 0,
            right: 0,
        },
    ];

    /// Its key in reports and in the names of messages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Said => "said",
            Self::Triangle { .. } => "triangle",
            Self::DuoTrio { .. } => "duo-trio",
            Self::Pair { .. } => "pair",
            Self::PairEitherWay { .. } => "pair-either-way",
            Self::Matched { .. } => "matched",
            Self::PassedAsEqual { .. } => "passed-as-equal",
            Self::About { .. } => "about",
        }
    }

    /// How many people it counts; `None` when nothing was counted.
    pub const fn people(self) -> Option<u32> {
        match self {
            Self::Said => None,
            Self::Triangle { people, .. }
            | Self::DuoTrio { people, .. }
            | Self::Pair { people, .. }
            | Self::PairEitherWay { people, .. }
            | Self::Matched { people }
            | Self::PassedAsEqual { people }
            | Self::About { people, .. } => Some(people),
        }
    }

    /// How many were right, or chose the second cup; `None` where nobody had to choose.
    pub const fn right(self) -> Option<u32> {
        match self {
            Self::Triangle { right, .. }
            | Self::DuoTrio { right, .. }
            | Self::Pair { right, .. }
            | Self::PairEitherWay { right, .. } => Some(right),
            _ => None,
        }
    }

    /// The same kind of outcome with other counts, as far as it has them.
    #[must_use]
    pub const fn counting(mut self, count_people: u32, count_right: u32) -> Self {
        match &mut self {
            Self::Said => {}
            Self::Triangle { people, right }
            | Self::DuoTrio { people, right }
            | Self::Pair { people, right }
            | Self::PairEitherWay { people, right } => {
                *people = count_people;
                *right = count_right;
            }
            Self::Matched { people }
            | Self::PassedAsEqual { people }
            | Self::About { people, .. } => *people = count_people,
        }
        self
    }
}

impl Tasting {
    /// A tasting of nothing yet.
    pub fn new(id: TastingId, date: String) -> Self {
        Self {
            id,
            date,
            people: Vec::new(),
            reason: String::new(),
            cups: Vec::new(),
            axis: None,
            outcome: TastingOutcome::Said,
            counts: false,
            seed: None,
            notes: Vec::new(),
        }
    }

    /// Whether a drink was in it: any version of the recipe.
    pub fn is_of(&self, recipe: &RecipeId) -> bool {
        let mut cups = self.cups.iter();
        cups.any(|cup| cup.recipe.as_ref() == Some(recipe))
    }
}

impl Item for Tasting {
    type Id = TastingId;
    fn id(&self) -> &TastingId {
        &self.id
    }
}
