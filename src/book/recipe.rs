//! Recipes: lines and instructions in order, versions as named changes, and approvals.

use super::change::Change;
use super::line::Entry;
use super::{
    EarlierStates, FiledReading, Item, LineId, RecipeId, Resolved, TastedWith, Translation,
    VersionId, VesselId,
};

/// Most lines and instructions of a recipe, and most changes of a version: far more than any drink has, and few enough that the
/// uncertainty of each line can be tried out against every figure while somebody types.
pub const MOST_LINES: usize = 1000;

/// How far a version is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum State {
    /// Being worked on.
    #[default]
    Draft,
    /// Made for guests on trial.
    OnTrial,
    /// Approved: changes to it make a new version.
    Approved,
    /// No longer made.
    Retired,
}

impl State {
    /// All states.
    pub const ALL: [Self; 4] = [Self::Draft, Self::OnTrial, Self::Approved, Self::Retired];

    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Draft => "draft",
            Self::OnTrial => "on trial",
            Self::Approved => "approved",
            Self::Retired => "retired",
        }
    }
}

/// Named changes on a recipe.
#[derive(Clone, Debug, PartialEq)]
pub struct Version {
    /// Its id, unique in the recipe.
    pub id: VersionId,
    /// Its name: "vegan", "iced", "with Ketterby chestnut".
    pub name: String,
    /// The version that it builds on; the recipe itself when none is stated.
    pub builds_on: Option<VersionId>,
    /// How far it is.
    pub state: State,
    /// When it is on the menu: "winter".
    pub season: String,
    /// What it changes.
    pub changes: Vec<Change>,
}

/// A dated copy of a version's resolved lines that is never changed.
#[derive(Clone, Debug, PartialEq)]
pub struct Approval {
    /// Which version was approved; `None` is the recipe itself.
    pub version: Option<VersionId>,
    /// Day, `2026-05-04`.
    pub date: String,
    /// Who approved it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// Temperature at which it was tasted, °C.
    pub tasted_at: Option<f64>,
    /// The lines as they were.
    pub resolved: Resolved,
    /// What entered it; `None` when it was approved before that was kept, see [`super::Book::as_tasted`].
    pub tasted_with: Option<TastedWith>,
}

/// A drink, or a batch of what the house makes.
#[derive(Clone, Debug, PartialEq)]
pub struct Recipe {
    /// Its id.
    pub id: RecipeId,
    /// Its name, in any script.
    pub name: String,
    /// How far the recipe itself is.
    pub state: State,
    /// Lines and instructions in order.
    pub entries: Vec<Entry>,
    /// The cup; none for a batch.
    pub cup: Option<VesselId>,
    /// What it is shaken or mixed in before it is poured; none when it is made in the cup.
    pub shaker: Option<VesselId>,
    /// Whether the ice stays behind in the shaker.
    pub strained: bool,
    /// Temperature at which it is tasted, °C; the shop's for hot or iced drinks when none is stated.
    pub drinking_temperature: Option<f64>,
    /// Price on the menu, sales tax included.
    pub menu_price: Option<f64>,
    /// The part of the added sweetness that it is made with, percent; all of it when none is stated.
    pub sugar_level: Option<f64>,
    /// Named changes.
    pub versions: Vec<Version>,
    /// Approvals, the oldest first.
    pub approvals: Vec<Approval>,
    /// What was read of its cups, the oldest first.
    pub readings: Vec<FiledReading>,
    /// A note.
    pub note: String,
    /// The lines that it had before, as far as it is a batch and a drink was approved with that.
    pub earlier: EarlierStates<Resolved>,
    /// What its texts are in other languages.
    pub translations: Vec<Translation>,
}

impl Item for Recipe {
    type Id = RecipeId;
    fn id(&self) -> &RecipeId {
        &self.id
    }
}

impl Recipe {
    /// A draft of nothing.
    pub fn new(id: RecipeId, name: String) -> Self {
        Self {
            id,
            name,
            state: State::Draft,
            entries: Vec::new(),
            cup: None,
            shaker: None,
            strained: false,
            drinking_temperature: None,
            menu_price: None,
            sugar_level: None,
            versions: Vec::new(),
            approvals: Vec::new(),
            readings: Vec::new(),
            note: String::new(),
            earlier: EarlierStates::default(),
            translations: Vec::new(),
        }
    }

    /// The version of this id.
    pub fn version(&self, id: &VersionId) -> Option<&Version> {
        self.versions.iter().find(|version| version.id == *id)
    }

    /// The state of a version, or of the recipe itself.
    pub fn state_of(&self, version: Option<&VersionId>) -> Option<State> {
        match version {
            None => Some(self.state),
            Some(id) => self.version(id).map(|version| version.state),
        }
    }

    /// The standard that a version is held to: the latest approval of the version itself or, when it has none, of the
    /// nearest one that it builds on; when none of them has any, the latest approval of the recipe.
    ///
    /// An iced version has thus a standard of its own once it is approved, and the vegan one follows the dairy one.
    pub fn standard_for(&self, version: Option<&VersionId>) -> Option<&Approval> {
        let latest_of = |id: &Option<VersionId>| {
            self.approvals
                .iter()
                .rev()
                .find(|approval| approval.version == *id)
        };
        self.lineage(version)
            .iter()
            .find_map(latest_of)
            .or_else(|| self.approvals.last())
    }

    /// Whether an id means a line or instruction of the recipe, or is one that a change of a version speaks of: a line that is
    /// gone may still be waited for.
    pub fn has_entry_id(&self, id: &LineId) -> bool {
        let in_versions = self.versions.iter().flat_map(|version| &version.changes);
        let spoken_of = in_versions.flat_map(|change| [change.target(), change.anchor()]);
        self.entries
            .iter()
            .map(Entry::id)
            .chain(spoken_of.flatten())
            .any(|taken| taken == id)
    }
}
